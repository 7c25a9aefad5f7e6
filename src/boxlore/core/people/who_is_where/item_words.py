"""What the words of one item are, by themselves: whose they are, kin, a description of one, several, small words that
only lead to a name.

A description is of one person if a word of it is (“the tall man”). `somebody` asks all this to tell whom they name.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.kin_of_another import is_kin_of_another
from boxlore.core.people.names.reader import NOTHING_KNOWN
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.words_table import KIN_WORDS, TITLES, WIFE_TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.dictionary_forms import given_of
from boxlore.core.people.who_is_where.groups import is_plural_of_kin
from boxlore.core.people.who_is_where.kin_words import ME, relation, relation_by_its_article, says_my
from boxlore.core.people.who_is_where.remarks import begins_remark, is_absent
from boxlore.core.people.who_is_where.surely_a_name import name_of_form
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.statements import fold

_NOUNS = table.NOUNS


def is_kin_of(words: Sequence[Element]) -> bool:
    """`la mère de Paul`, `die Mutter von Karl`: kin of somebody, by an article, a word of kin and a preposition; `муж
    Анны` by a name in the form that says whose."""
    is_with = bool(given_of(token_of(words[-1].text), NOTHING_KNOWN))  # `córką Ewą`: with her, and not of her
    if len(words) == 2 and relation_by_its_article(words[0]) and is_my(words[1]):
        return True  # `søsteren deres`
    if len(words) == 2 and words[0].plain in KIN_WORDS and words[1].is_large and not is_with:
        return bool(name_of_form(token_of(words[1].text), NOTHING_KNOWN, shortest=4))
    said = words[1:] if words[0].plain in small_words.THE and len(words) > 1 else words
    if is_kin_of_another([token_of(word.text) for word in said]):
        return True  # `oncle de Pierre`
    if len(words) != 4 or said is words or not relation(words[1]):
        return False
    return words[2].plain in ("de", "di", "do", "da", "del", "van", "von", "of") and words[3].is_large


def is_his_kin(words: Sequence[Element]) -> bool:
    """`hans fru`, `hans kone`: small words, of whose and of kin or a wife by her title, that may be a name."""
    if len(words) != len(("hans", "fru")) or any(word.is_large for word in words):
        return False
    whose, kin = words
    return whose.plain in small_words.OF_ANOTHER and (kin.plain in WIFE_TITLES or bool(relation(kin)))


def _common(words: Sequence[Element]) -> list[Element]:
    """The words that are no names: written small, or a noun behind an article (`Der Junge`, `The Man`)."""
    opens = _is_noun_alone(words)
    return [word for word, before in zip(words, (None, *words[:-1]), strict=True) if opens or _is_common(word, before)]


def _is_common(word: Element, before: Element | None) -> bool:
    behind_article = before is not None and (before.plain in small_words.ARTICLES or before.kind == "my")
    return not word.is_large or behind_article


def nouns_of(words: Sequence[Element]) -> set[str]:
    """The kinds of nouns among the words; `one` is a noun behind an article only."""
    common = _common(words[1:] if len(words) > 1 and is_my(words[0]) and relation(words[1]) else words)
    alone = words[0].plain not in small_words.ARTICLES
    return {
        _NOUNS[word.plain]
        for word in common
        if word.plain in _NOUNS
        and word.text.lower() not in small_words.NO_NOUNS
        and not (alone and word.plain in _ANYBODY and not _tells_what_one(words, word))
    }


_ANYBODY = ("one", "other")


def _tells_what_one(words: Sequence[Element], one: Element) -> bool:
    """`Tall one`: a word of every day says which."""
    at = words.index(one)
    return at == len(words) - 1 > 0 and all(word.plain in english_words() for word in words[:at])


def _is_noun_alone(words: Sequence[Element]) -> bool:
    """`Jenta`, `Chłopiec` at the beginning of a sentence: large, but no name that anybody bears."""
    return len(words) == 1 and words[0].plain in _NOUNS and not token_of(words[0].text).is_given


_ARTICLE_MY_KIN = 3
_SHORT_TITLE = 4
"""Letters of a title that may be another word: `dona`."""


def without_article(words: Sequence[Element]) -> Sequence[Element]:
    """`la nonna Elvira` without `la`, `un desconocido` without `un`; but `la nonna`, `the Hill girls` as they are."""
    if len(words) < 2 or words[0].plain not in small_words.ARTICLES or words[0].text.endswith("."):
        return words
    following = words[1]
    if len(words) > _ARTICLE_MY_KIN and following.kind == "my" and relation(words[2]):
        return words[1:]  # `O meu irmão Rui`
    if len(words) > 2 and words[2].start - following.end > 1 and token_of(words[0].text).is_particle:
        return words  # `de Boer, Jan`
    nouns = (word for word in words[1:] if _NOUNS.get(word.plain))
    if following.kind != "my" and any(not (noun.is_large and token_of(noun.text).is_given) for noun in nouns):
        return words
    titled = following.plain in TITLES and following.text.islower() and len(following.plain) > _SHORT_TITLE
    if titled and len(words) > 2 and words[2].is_large:
        return words[1:]  # `le docteur Paul Martin`
    is_kin = bool(relation(following)) and any(word.is_large for word in words[2:])
    if words[0].is_large and not (is_kin or token_of(following.text).is_given):
        return words
    names = following.is_large and not (relation(following) and len(words) == 2)
    if words[0].plain == "the" and len(words) == 2:
        return words  # `the Ford`, `the Morris`
    return words[1:] if names or is_kin or following.kind in ("my", "unknown") else words


def without_leads(words: Sequence[Element]) -> Sequence[Element]:
    """Without words that only go on with the list: `then Ruth`, `but Ruth`, `and then we have Ruth`."""
    if all(word.plain in small_words.LEADS and not word.is_large for word in words):
        return ()
    words = words[_only_known(words) :]
    if token_of(words[0].text).is_initial and words[0].text.endswith("."):
        return words  # `A. M. Figueira`
    at = 0
    while at < len(words) - 1 and not (words[at].is_large and at) and _leads(words[at]):
        if words[at].plain == "to" and words[at + 1].plain in SEVERAL_OF_THE_NORTH:
            break  # `to ukendte`
        at += 1
    while at and not (words[at].is_large or words[at].kind in ("my", "me", "unknown") or relation(words[at])):
        if words[at - 1].kind == "verb" and _leads_to_kin(words[at:]):
            break  # `è il povero zio Beppe`, `is wijlen mijn broer Wim`
        behind = words[at + 1].plain if words[at + 1 :] else ""
        counts = behind in small_words.CARDINALS or (_NOUNS.get(behind) == "one" and words[at].plain != "a")
        if words[at].plain in small_words.ARTICLES and (counts or any(word.kind == "unknown" for word in words[at:])):
            break  # `then an unknown chap`, `then the two Misses Hale`
        at -= 1
    surely_leads = words[0].plain in small_words.SURE_LEADS
    is_somebody = surely_leads or token_of(words[at].text).is_given or relation(words[at])
    if at and words[0].is_large and words[0].kind == "word" and not is_somebody:
        return words
    return words[at:]


SEVERAL_OF_THE_NORTH = ("ukendte", "ukjente")
"""Unknown people of Danish and Norwegian, behind whose `two` stands what is a verb in Polish."""

_MOST_BEFORE_KIN = 3


def _leads_to_kin(words: Sequence[Element]) -> bool:
    """Whether small words that say which, and a word of kin, begin the words: `il povero zio`."""
    at = next((at for at, word in enumerate(words[: _MOST_BEFORE_KIN + 1]) if relation(word)), 0)
    return at > 0 and all(word.kind in ("word", "my") and word.text.islower() for word in words[: at + 1])


def _only_known(words: Sequence[Element]) -> int:
    """How many words `I only know` of `I only know the tall one` takes; 0 where no `only` and such a verb lead."""
    at = next((at for at, word in enumerate(words) if not (word.kind == "me" or word.plain in small_words.LEADS)), 0)
    leads = at > 0 and words[at].plain in small_words.KNOW and not words[at].is_large
    told = words[at + 1 :]
    return at + 1 if leads and told and (told[0].plain in small_words.ARTICLES or begins_person(told)) else 0


def name_and_remark(words: Sequence[Element]) -> tuple[Sequence[Element], Sequence[Element]]:
    """`Ted is the tall one` as `Ted` and `the tall one`; else no remark."""
    at = next((at for at, word in enumerate(words) if word.kind == "verb"), 0)
    name, remark = words[:at], words[at + (at == 0 or words[at].plain not in _ALSO_A_PREPOSITION) :]
    if (
        name
        and remark
        and all(word.kind == "me" or (word.is_large and word.kind == "word") for word in name)
        and not is_absent(remark)
        and not any(word.is_large for word in remark if not _behind_article(word, remark))
    ):
        return name, remark
    return words, ()


def _behind_article(word: Element, words: Sequence[Element]) -> bool:
    """Whether a word stands behind an article, and is no given name: a noun in German (`die Kleine`)."""
    at = words.index(word)
    return at > 0 and words[at - 1].plain in small_words.ARTICLES and not token_of(word.text).is_given


_ALSO_A_PREPOSITION = ("on",)
"""`is` of Estonian and Finnish that is a small word of English, and stays in the remark."""


def without_verbs_behind(words: Sequence[Element]) -> Sequence[Element]:
    """`Kurt steht` without `steht`."""
    end = len(words)
    while end > 1 and words[end - 1].kind == "verb" and not words[end - 1].is_large:
        end -= 1
    return words[:end]


def _leads(word: Element) -> bool:
    if word.text.endswith("."):
        return False  # `A. Finch`
    joins = word.kind in ("verb", "and") and not (word.is_large and token_of(word.text).is_given)  # `Ed`
    return joins or word.plain in small_words.LEADS


def before_place(words: Sequence[Element]) -> list[Element]:
    """Words told before a place, without those that only lead to it: `Elvira è la` | third, `Edna's` | on the left."""
    kept = list(words)
    if len(kept) > 1 and kept[-1].text in ("o", "a") and kept[-2].kind == "verb":
        del kept[-1]  # `O meu pai é o` | segundo
    while kept and (kept[-1].kind == "verb" or kept[-1].plain in table.BEFORE_A_PLACE | small_words.EVERYONE):
        if (
            kept[-1].kind in ("me", "described")
            or kept[-1].text in ("Les", "Al")
            or (kept[-1].is_large and (len(kept) > 1 or relation(kept[-1])))
        ):
            break  # `Pa`
        del kept[-1]
    leads = small_words.ARTICLES.union(small_words.PRONOUNS, small_words.RELATIVES)
    is_name = len(kept) == 1 and kept[0].is_large and token_of(kept[0].text).is_given  # `Una`, of Spanish an article
    is_name = is_name or (kept[:1] != [] and kept[0].text in ("Les", "Al"))  # given names, and articles
    if len(kept) == 1 and kept[0].kind != "me" and not is_name and (kept[0].plain in leads or kept[0].kind == "my"):
        return []
    if kept and kept[-1].is_large and kept[-1].is_genitive and kept[-1].plain.endswith("'s"):
        last = kept[-1]
        kept[-1] = replace(last, text=last.text[:-2], end=last.end - 2)
    return kept


def how_many_in_all(words: Sequence[Element]) -> int:
    """The number of `five people` and `there are six of us`; 0 for any other words."""
    while len(words) > 1 and words[0].kind == "verb":
        words = words[1:]
    behind = words[1:]
    is_total = bool(behind) and all(word.plain in small_words.PEOPLE_IN_ALL or word.kind == "me" for word in behind)
    return how_many(words) if is_total and how_many(words) > 1 else 0


def is_description(words: Sequence[Element]) -> bool:
    """Whether words describe one person and name nobody: `the girl`, `Der Junge`, `the one`."""
    if all(word.kind == "described" for word in words):
        return True
    names = (word for word in words[1:] if word.is_large and word.plain not in _NOUNS and not _holds(word, words))
    opens = not words[0].is_large or words[0].plain in small_words.ARTICLES or len(words) == 1
    opens = opens or not (token_of(words[0].text).is_given or any(word.is_large for word in words[1:]))
    return opens and "one" in nouns_of(words) and not any(names)


def _holds(word: Element, words: Sequence[Element]) -> bool:
    """Whether a word says whose arms or lap it is: `the baby in Mum's arms`."""
    behind = words[words.index(word) + 1 :]
    return word.is_genitive and bool(behind) and behind[0].plain in small_words.HELD_ON


def is_noun_of_one(told: str) -> bool:
    """Whether the words are one noun for a kind of people, alone: `groom`."""
    return _NOUNS.get(fold(told)) == "one" and told.lower() not in small_words.NO_NOUNS


def is_everyone_of(words: Sequence[Element]) -> bool:
    """`all of us`, `alle von uns`."""
    opens = " ".join(word.plain for word in words[:2]).split()  # `all of us` is one element
    return len(opens) > 1 and opens[0] in small_words.EVERYONE and opens[1] in small_words.OF


def is_of_several(words: Sequence[Element]) -> bool:
    """Whether words tell of several people and name none: `the three boys`."""
    if any(word.is_large and word.plain not in _NOUNS for word in words[1:]):
        return False
    bare = words[1:] if words[0].plain in small_words.THE else words[:0]
    if is_everyone_of(words):
        return True
    return "many" in nouns_of(words) or small_words.CARDINALS.get(bare[0].plain if bare else "", 1) > 1


def how_many(words: Sequence[Element]) -> int:
    """How many people `two unknown men` are; 1 for any other words."""
    leads = small_words.ARTICLES | small_words.LEADS
    first = next((word for word in words if word.plain not in leads), words[0])
    return first.value if first.kind == "number" else small_words.CARDINALS.get(first.plain, 1)


def between(words: Sequence[Element], text: str) -> str:
    """The text from the first of the words to the last."""
    return text[words[0].start : words[-1].end] if words else ""


def begins_person(further: Sequence[Element]) -> bool:
    """Whether a person is told next: a name, kin, or somebody unknown."""
    if not further:
        return False
    first = further[0]
    if first.kind == "described":
        return True
    if first.plain.endswith("'s") and len(further) > 1 and further[1].plain in small_words.HELD_ON:
        return False  # `Nana's knee`
    if first.kind == "unsure":
        return begins_person(further[1:])  # `possibly Ada`
    if is_my(first) and len(further) > 1 and (relation(further[1]) or _NOUNS.get(further[1].plain) == "one"):
        return True
    if first.plain in TITLES and not first.is_large and len(further) > 1 and further[1].is_large:
        return True  # `don Anselmo`
    if first.plain in table.BEFORE_A_NAME and len(further) > 1 and further[1].is_large:
        return True
    is_name = first.is_large and token_of(first.text).is_given  # `Una`
    if first.plain in small_words.ARTICLES and len(further) > 1 and first.kind in ("word", "and") and not is_name:
        behind = further[1]
        if len(further) > 2 and behind.is_genitive and _NOUNS.get(behind.plain[:-2]) == "one":
            return _NOUNS.get(further[2].plain) == "one" or _kin(further[2])  # `a neighbour's boy`
        leads = behind.plain in table.BEFORE_A_NAME or behind.plain in TITLES
        if leads and len(further) > 2 and further[2].is_large:
            return True  # `le petit Émile`, `a dona Amélia`
        of_several = _NOUNS.get(behind.plain) == "many" and len(further) > 2 and further[2].is_large
        return (
            of_several
            or behind.is_large
            or behind.kind in ("my", "unknown")
            or _NOUNS.get(behind.plain) == "one"
            or _kin(behind)
        )
    if first.kind == "my":
        near = further[1:3]
        is_thing = any(_NOUNS.get(element.plain) == "thing" for element in near)
        return not is_thing and any(element.is_large or relation(element) for element in near)
    if first.kind == "word":
        several = _NOUNS.get(first.plain) == "many" or is_plural_of_kin(first)
        of_several = several and len(further) > 1 and further[1].is_large
        return first.is_large or _NOUNS.get(first.plain) == "one" or bool(relation(first)) or of_several
    return first.kind == "unknown" or stands_for_me(first, further[1:])


def leads_to_a_thing(told: Sequence[Element]) -> int:
    """How many elements `in the doorway`, `à porta` and `on the horse` take: a small word, an article or one that holds
    it, a thing written small."""
    if len(told) > 1 and told[0].text.lower() in small_words.WITH_AN_ARTICLE and _is_thing_told(told[1]):
        return 2
    leads = told[0].plain in small_words.BEGIN_A_REMARK or told[0].text.lower() == "à"
    if len(told) < 3 or not leads or told[1].plain not in small_words.ARTICLES:
        return 0
    return 3 if _is_thing_told(told[2]) else 0


def _is_thing_told(word: Element) -> bool:
    is_somebody = _NOUNS.get(word.plain) in ("one", "many") or bool(relation(word))
    return word.kind == "word" and word.text.islower() and not is_somebody


_MY = tuple(phrase for kind, phrase in table.WORDS_BETWEEN if kind == "my")
_MY_WHOLE = frozenset(phrase for phrase in _MY if not phrase.endswith("*"))


def is_my(element: Element) -> bool:
    """A word that says whose, also where it is another one of another language (Spanish and Lithuanian `su`)."""
    return element.kind == "my" or element.plain in _MY_WHOLE


def stands_for_me(element: Element, further: Sequence[Element]) -> bool:
    """`me`, also where the word is another one of another language (`ja`, `es`) and stands last."""
    return element.kind == "me" or (element.plain in ME and (not further or further[0].kind in ("end", "comma")))


def _kin(word: Element) -> bool:
    return bool(relation(word))


def is_remark(words: Sequence[Element]) -> bool:
    """Whether the words may be a remark on somebody named before them: `my sister`, `Ruth's cousin`, `aged 5`."""
    first, last = words[0], words[-1]
    if (begins_remark(words) and not first.is_large) or _is_age(words) or _is_kin_of_somebody(words):
        return True
    if last.is_large and token_of(last.text).is_given:
        return False
    if first.kind == "my" and 1 < len(words) < 4 and not any(word.is_large for word in words):
        return _NOUNS.get(last.plain) not in ("many", "thing")  # `Miss Pell, our schoolteacher`
    return (first.kind == "my" or is_of_somebody(words)) and bool(relation(last) or _NOUNS.get(last.plain) == "one")


def _is_kin_of_somebody(words: Sequence[Element]) -> bool:
    """`brother of Tom`, `le frère de Tom`, said of somebody named before."""
    bare = words[1:] if words[0].plain in small_words.THE and len(words) > 3 else words
    is_kin = (
        len(bare) > 2
        and (bool(relation(bare[0])) or bare[0].plain in small_words.WIDOWED)
        and not token_of(bare[0].text).is_given
    )
    names_somebody = is_kin and bare[1].plain in small_words.OF and bare[2].is_large
    return names_somebody and (not bare[0].is_large or token_of(bare[2].text).is_given)  # `Bruder von Emil`


def _is_age(words: Sequence[Element]) -> bool:
    """`5`, `aged 5`, `18 months`."""
    numbers = words[0].text.isdigit() or words[-1].text.isdigit()
    return numbers and not any(word.is_large or word.kind == "unknown" for word in words)


def is_family(word: Element) -> bool:
    """`family`, in any language: a name behind it is not one person's."""
    return word.plain in table.FAMILY


def share_kin(words: Sequence[Element], further: Sequence[Element]) -> bool:
    """Whether `and` stands between two whose kin is told: `Betty and Reg's mother` (but not their wife)."""
    name = words[-1]
    if any(word.is_genitive for word in words):
        return False  # `Jane's daughter Amy and Amy's baby Luke`
    if further and fold(further[0].plain[:-2]) == name.plain:
        return False  # `Nora and Nora's daughter`
    if len(further) < 2 or not (name.is_large and further[0].is_genitive and not name.is_genitive):
        return False
    kin = relation(further[1])
    return kin not in ("wife", "husband") and (bool(kin) or _NOUNS.get(further[1].plain) == "one")


def is_of_somebody(words: Sequence[Element]) -> bool:
    """`Ruth's …`, `Betty and Reg's …`."""
    if len(words) > 2 and words[1].is_genitive and (relation(words[0]) or words[0].plain in TITLES):
        return True  # `Aunt Ivy's boy Len`
    if len(words) > 1 and words[0].is_large and words[0].plain.endswith("n") and relation(words[1]):
        return token_of(words[0].text[:-1]).is_given and not words[1].is_large  # Finnish: `Liisan tytär Anna`
    if len(words) > 2 and words[0].is_large and token_of(words[0].text).is_given and words[1].is_genitive:
        return words[1].is_large  # `Jim Burns's wife`
    if len(words) > 1 and words[-1].plain in small_words.KIN_BEHIND_WHOSE and not words[-1].is_large:
        whose = words[:-1]
        if _is_estonian_genitive(whose[0].text) or (len(whose) == 2 and token_of(whose[0].text).is_given):
            return all(word.is_large for word in whose)  # `Jaani naine`, `Jaan Tamme naine`
    opens = len(words) > 1 and words[0].is_large and token_of(words[0].text).is_given and not words[1].is_large
    if opens and words[1].plain in small_words.KIN_BEHIND_WHOSE and all(word.is_large for word in words[2:]):
        return True  # Estonian: `Salme õde Hilda`
    return words[0].is_genitive or (len(words) > 3 and words[1].kind == "and" and words[2].is_genitive)


def _is_estonian_genitive(text: str) -> bool:
    """`Jaani`, `Mihkli`: of Jaan, of Mihkel."""
    plain = fold(text)
    is_form = token_of(plain[:-1]).is_given or (plain.endswith("li") and token_of(f"{plain[:-2]}el").is_given)
    return is_form and plain.endswith(("i", "u", "e", "a")) and not token_of(text).is_given


def _has_its_article(word: Element) -> bool:
    """`læreren`, `søsteren`, `karlen`: in the languages of the North an article is the end of the word."""
    stems = (word.plain.removesuffix(end) for end in ("en", "et", "n") if word.plain.endswith(end))
    is_noun = _NOUNS.get(word.plain) == "one" and any(_NOUNS.get(stem) == "one" for stem in stems)
    return word.text.islower() and (is_noun or bool(relation_by_its_article(word)))


def _is_article_of_portuguese(words: Sequence[Element]) -> bool:
    """`a vizinha`, `o noivo`: behind `a` of Portuguese stands no English word."""
    return words[0].text in ("a", "o", "A", "O") and len(words) == 2 and words[1].plain not in english_words()


_BEFORE_MY = ("o", "a", "il", "la")
"""Articles that stand before `my` in Portuguese and Italian."""


def definitely(words: Sequence[Element]) -> str:
    """`man`, `woman` or `person` where the words surely say of one person what they are: `my mother`, `the bride`."""
    if len(words) > 2 and words[0].plain in _BEFORE_MY and is_my(words[1]):
        words = words[1:]  # `o meu tio`, `la mia zia`
    is_one = (
        words[0].plain in small_words.THE
        or _is_article_of_portuguese(words)
        or is_my(words[0])
        or is_of_somebody(words)
        or is_kin_of(words)
    )
    own = relation_by_its_article(words[0])
    if len(words) == 1 and says_my(words[0]):
        return small_words.SEX.get(relation(words[0]), "person")
    if (len(words) == 1 and _has_its_article(words[0])) or (len(words) == 2 and own and is_my(words[1])):
        return small_words.SEX.get(own, "person")  # `læreren`, `søsteren deres`
    last = next((word for word in reversed(words) if relation(word) or _NOUNS.get(word.plain) == "one"), None)
    if len(words) < 2 or not is_one or last is None:
        return ""
    return small_words.SEX.get(relation(last) or last.plain, "person")

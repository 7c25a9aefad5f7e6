"""What the words of one item name: somebody by a name, kin and a name, a description, somebody unknown, or nobody.

    item = ["probably"] ([kin] name / description / unknown) ["?"]
    kin  = ("my" / "Ruth's") word of kin / a kind of person            ; “my sister Anna”, “baby Tom”, “the vicar Oakes”

A description is of one person if a word of it is (“the tall man”). Words of several people, of animals and things, and
words of which nothing is known ask, and name nobody.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.fathers_names import marks_child
from boxlore.core.people.names.reader import NOTHING_KNOWN, read_name
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import GIVEN_TITLES, KIN_ALONE, KIN_WORDS, PARTICLES, TITLES, WIFE_TITLES
from boxlore.core.people.names_in_text.ordinary_words import english_words
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.dictionary_forms import both_of_a_family, given_of
from boxlore.core.people.who_is_where.groups import OF_A_FAMILY, group_of, is_plural_of_kin
from boxlore.core.people.who_is_where.kin_words import (
    ME,
    is_given_too,
    is_me,
    is_oblique_kin,
    own_relation,
    owned_relation,
    relation,
)
from boxlore.core.people.who_is_where.remarks import begins_remark, head_and_remark, is_absent, is_somewhere
from boxlore.core.people.who_is_where.surely_a_name import name_behind_with, name_of_form
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.statements import fold

_NOUNS = table.NOUNS


def person_named(
    words: Sequence[Element], text: str, known: KnownNames, *, surely: bool = False
) -> tuple[Placed, bool]:
    """Whom the words of one item name, without a place, and whether by a name. `text` is what they are words of.

    `surely`: whether a person must be told here: behind `with`.
    """
    words, unsure = _without_doubt(words)
    if unknown := _unknown(words, text):
        return unknown, False
    if len(words) == 2 and words[0].plain in _AM and words[1].plain in ME:
        words = words[1:]  # `ben ik`
    if many := _told_as_several(words, text, unsure=unsure):
        return many, False
    several = _is_family_of_several(words, text) or _is_everyone_of(words)
    of_somebody = is_kin_of(words)
    words = words if several else without_article(words)
    if words[0].kind == "unknown":
        return Placed("", 0, note=between(words[1:], text)), False
    if words[0].plain in table.COUPLES and len(words) > 1 and words[1].is_large and token_of(words[1].text).is_given:
        return Placed(between(words[1:], text), 0, note=words[0].text, unsure=unsure), True  # `Brautpaar Anna`
    told = between(words, text)
    nouns = _nouns(words) | {"many" for word in words if several or is_family(word)}
    if of_somebody:
        return Placed(told, 0, unsure=unsure), False
    is_choice = any(word.kind == "or" for word in words[1:])  # `Uncle Ken or Uncle Des`
    kin, name = ("", "") if "," in told or is_choice else _kin_and_name(words, text)
    if name and "thing" not in nouns and read_name(name, known):
        return Placed(name, 0, note=kin, unsure=unsure), True
    head = head_and_remark(words, text, known, surely=surely)
    if said := _said_by_another(words, text):
        asks = f"Is “{said}” in the picture, where “{told}” is told?"
        return Placed(told, 0, unsure=unsure, asks=asks, is_person=False), False
    is_one = not nouns & {"many", "thing"} and not any(word.kind == "or" for word in words)
    is_one = is_one and words[0].plain not in ("half", "part")  # `half of Grandma`
    if is_one and (read := _one_by_all_words(words, text, known, head=head)):
        person, is_name = read
        return replace(person, unsure=unsure), is_name
    if head:
        note, is_name = between(words[head:], text), not (words[0].kind == "my" or is_me(words[0]))
        is_name = is_name and words[head - 1].plain not in KIN_ALONE
        return Placed(between(words[:head], text), 0, note=note, unsure=unsure), is_name
    tells_another = any(_may_be_another(word) for word in words[1:])
    if is_one and ("one" in nouns or relation(words[-1])) and not tells_another:
        return Placed(told, 0, unsure=unsure), False
    asks = _question(words, text, known, are_many="many" in nouns)
    return Placed(told, 0, unsure=unsure, asks=asks, is_person=False), False


def _without_doubt(words: Sequence[Element]) -> tuple[Sequence[Element], bool]:
    """The words without `?`, `probably` and `I think` at their ends, and whether there are such."""
    unsure = words[-1].kind == "unknown" and words[-1].text.startswith("?") and len(words) > 1
    if unsure:
        words = words[:-1]
    if words[0].kind == "unsure" and len(words) > 1:
        words, unsure = words[1:], True
    if words[-1].kind == "unsure" and len(words) > 1:  # `Ivy I think`
        words, unsure = words[:-1], True
    return words, unsure


def _unknown(words: Sequence[Element], text: str) -> Placed | None:
    """Somebody whom nobody knows, or of whom a family name alone is known; None for all else."""
    if words[0].text == "?" and len(words) > 1 and all(word.is_large and word.kind == "word" for word in words[1:]):
        told = between(words, text)
        return Placed(told, 0, asks=f"Who is “{told}”?", is_person=False)  # `? Barnes`
    if words[0].kind == "unknown":
        return Placed("", 0, note=between(words[1:], text))
    if words[-1].kind == "unknown" and len(words) > 1 and _NOUNS.get(words[-2].plain) == "one":
        return Placed("", 0, note=between(words[:-1], text))  # `driver unknown`
    return None


def _told_as_several(words: Sequence[Element], text: str, *, unsure: bool) -> Placed | None:
    """Several people told without a name of each, as a question; None for all else."""
    told = between(words, text)
    group = group_of(words)
    if group and group.led and group.end == len(words):
        who = "Who is" if group.some and how_many(words) == 1 else "Who are"
        return Placed(told, 0, unsure=unsure, asks=f"{who} “{told}”{_both(words)}?", is_person=False)
    if len(words) > 1 and all(_is_own_alone(word) for word in words):
        asks = f"Are “{told}” several people: {'; '.join(word.text for word in words)}?"
        return Placed(told, 0, unsure=unsure, asks=asks, is_person=False)  # `me mum dad`
    if both := _families(words):
        family, note = words[0].text, between(words[1:], text)
        return Placed(family, 0, note=note, asks=f"Who are “{family}”: {both}?", is_person=False)  # `Ивановы`
    return None


def _one_by_all_words(
    words: Sequence[Element], text: str, known: KnownNames, *, head: int
) -> tuple[Placed, bool] | None:
    """The one person whom the words name or describe as a whole, and whether by a name; None where none of them does,
    or a remark follows the `head`."""
    told = between(words, text)
    if len(words) == 1 and (words[0].kind == "me" or words[0].plain in ME):
        return Placed(told, 0), False
    if words[0].kind == "me" and is_description(words[1:]) and not head:  # `moi bébé`
        return Placed(words[0].text, 0, note=between(words[1:], text)), False
    if is_description(words) and not (head and words[0].kind == "me"):  # `me as a baby`
        return Placed(told, 0), False
    is_remark = head and (words[head].plain == "am" or words[0].plain in ME or is_somewhere(words))
    if is_remark or _is_row_of_small_names(words):
        return None
    parts = read_name(told, known)
    return (Placed(told, 0), not own_relation(told) and parts.kin != told) if parts else None


def _question(words: Sequence[Element], text: str, known: KnownNames, *, are_many: bool) -> str:
    """What is asked of words that make nobody."""
    told = between(words, text)
    if words[0].kind == "or" and len(words) > 1:
        return f"Is it “{between(words[1:], text)}”, and not who is told before?"
    if is_oblique_kin(words[0]) and (name := name_behind_with([token_of(word.text) for word in words], known)):
        return f"Is “{told}” {name}?"  # `тётей Валей`
    return f"Who are “{told}”{_both(words)}?" if are_many else f"Is “{told}” someone in the picture?"


def _families(words: Sequence[Element]) -> str:
    """`Иванов; Иванова` of `Ивановы на даче`: a family by its name alone, and small words of where."""
    first = words[0]
    is_alone = first.is_large and all(word.text.islower() for word in words[1:]) and not token_of(first.text).is_given
    return "; ".join(both_of_a_family(first.text)) if is_alone and not first.text.endswith(OF_A_FAMILY) else ""


def _is_own_alone(word: Element) -> bool:
    """`me`, `mum`: the teller or her own, by one word that is small."""
    return word.text.islower() and (word.kind == "me" or word.plain in KIN_ALONE) and not is_my(word)


def _both(words: Sequence[Element]) -> str:
    """`: Dvořák; Dvořáková` of `Manželé Dvořákovi`: a couple told by the name of the family."""
    names = both_of_a_family(words[-1].text) if words[0].plain in table.FAMILY and len(words) == 2 else ()
    return f": {'; '.join(names)}" if names else ""


_AM = frozenset("ben bin olen soy suis sono sou am ar er jestem esmu esu".split())


def _said_by_another(words: Sequence[Element], text: str) -> str:
    """`Wilf` of `Mum says Wilf` and of `Ethel thought that's Wilf`; empty for all else."""
    says = next((at for at, word in enumerate(words) if at and word.plain in small_words.SAYING), 0)
    said = [
        word
        for word in words[says + 1 :]
        if not (word.kind == "verb" or word.plain in small_words.LEAD_TO_WHAT_IS_SAID)
    ]
    told_by = words[0].is_large or words[0].kind == "my"
    is_name = says > 0 and told_by and bool(said) and said[0].is_large and token_of(said[0].text).is_given
    return between(said, text) if is_name else ""


def _may_be_another(word: Element) -> bool:
    """Whether a word of a description is a name: `der Junge neben Otto`; but not in `Otto's boy`."""
    is_name = word.is_large and token_of(word.text).is_given
    return is_name and not word.is_genitive and word.plain not in _NOUNS


def is_kin_of(words: Sequence[Element]) -> bool:
    """`la mère de Paul`, `die Mutter von Karl`: kin of somebody, by an article, a word of kin and a preposition; `муж
    Анны` by a name in the form that says whose."""
    is_with = bool(given_of(token_of(words[-1].text), NOTHING_KNOWN))  # `córką Ewą`: with her, and not of her
    if len(words) == 2 and words[0].plain in KIN_WORDS and words[1].is_large and not is_with:
        return bool(name_of_form(token_of(words[1].text), NOTHING_KNOWN, shortest=4))
    if len(words) != 4 or words[0].plain not in small_words.THE or not relation(words[1]):
        return False
    return words[2].plain in ("de", "di", "do", "da", "del", "van", "von", "of") and words[3].is_large


def _is_row_of_small_names(words: Sequence[Element]) -> bool:
    """`edna percy doreen`: three given names or more, typed small, may be so many people."""
    given = sum(token_of(word.text).is_given for word in words)
    return len(words) > 2 and given > len(words) - 2 and all(word.text.islower() for word in words)


def _is_family_of_several(words: Sequence[Element], text: str) -> bool:
    """`the Finches`, `die Brandts`, `les Dupont`: a family by its name, behind an article of several."""
    article, names = words[0], words[1:]
    if not names or any(not word.is_large or token_of(word.text).is_given for word in names):
        return False
    if words[1].plain in TITLES:
        return False  # `the Rev. Moss`
    if article.text == "Les" and text[: article.start].rstrip().endswith(","):
        return False  # `Hec Todd, Les Todd`
    ends = article.plain in small_words.THE and names[-1].plain.endswith("s") and article.plain in ("the", "die")
    return ends or article.plain in ("les", "los", "las", "os", "gli")


def _common(words: Sequence[Element]) -> list[Element]:
    """The words that are no names: written small, or a noun behind an article (`Der Junge`, `The Man`)."""
    opens = _is_noun_alone(words)
    return [word for word, before in zip(words, (None, *words[:-1]), strict=True) if opens or _is_common(word, before)]


def _is_common(word: Element, before: Element | None) -> bool:
    behind_article = before is not None and (before.plain in small_words.ARTICLES or before.kind == "my")
    return not word.is_large or behind_article


def _nouns(words: Sequence[Element]) -> set[str]:
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


def without_article(words: Sequence[Element]) -> Sequence[Element]:
    """`la nonna Elvira` without `la`, `un desconocido` without `un`; but `la nonna`, `the Hill girls` as they are."""
    if len(words) < 2 or words[0].plain not in small_words.ARTICLES or words[0].text.endswith("."):
        return words
    following = words[1]
    nouns = (word for word in words[1:] if _NOUNS.get(word.plain))
    if following.kind != "my" and any(not (noun.is_large and token_of(noun.text).is_given) for noun in nouns):
        return words
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
    at = 0
    while at < len(words) - 1 and not (words[at].is_large and at) and _leads(words[at]):
        at += 1
    while at and not (words[at].is_large or words[at].kind in ("my", "me", "unknown") or relation(words[at])):
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


_BORN = frozenset("b born geb geboren ne nee ur sund synt f fodt fodd née né р род".split())


def name_and_remark(words: Sequence[Element]) -> tuple[Sequence[Element], Sequence[Element]]:
    """`Ted is the tall one` as `Ted` and `the tall one`, `Ted b. 1902` as `Ted` and `b. 1902`; else no remark."""
    born = next((at for at, word in enumerate(words) if at and word.plain in _BORN and not word.is_large), 0)
    if born and all(word.text.isdigit() for word in words[born + 1 :]) and words[born + 1 :]:
        return words[:born], words[born:]
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


def names_somebody(words: Sequence[Element], text: str) -> bool:
    """Whether the words may be somebody's, so that what follows them may go on with the name."""
    return person_named(words, text, NOTHING_KNOWN)[0].is_person


def is_description(words: Sequence[Element]) -> bool:
    """Whether words describe one person and name nobody: `the girl`, `Der Junge`, `the one`."""
    if all(word.kind == "described" for word in words):
        return True
    names = (word for word in words[1:] if word.is_large and word.plain not in _NOUNS and not _holds(word, words))
    opens = not words[0].is_large or words[0].plain in small_words.ARTICLES or len(words) == 1
    opens = opens or not (token_of(words[0].text).is_given or any(word.is_large for word in words[1:]))
    return opens and "one" in _nouns(words) and not any(names)


def _holds(word: Element, words: Sequence[Element]) -> bool:
    """Whether a word says whose arms or lap it is: `the baby in Mum's arms`."""
    behind = words[words.index(word) + 1 :]
    return word.is_genitive and bool(behind) and behind[0].plain in small_words.HELD_ON


def is_noun_of_one(told: str) -> bool:
    """Whether the words are one noun for a kind of people, alone: `groom`."""
    return _NOUNS.get(fold(told)) == "one"


def _is_everyone_of(words: Sequence[Element]) -> bool:
    """`all of us`, `alle von uns`."""
    opens = " ".join(word.plain for word in words[:2]).split()  # `all of us` is one element
    return len(opens) > 1 and opens[0] in small_words.EVERYONE and opens[1] in small_words.OF


def is_of_several(words: Sequence[Element]) -> bool:
    """Whether words tell of several people and name none: `the three boys`."""
    if any(word.is_large and word.plain not in _NOUNS for word in words[1:]):
        return False
    bare = words[1:] if words[0].plain in small_words.THE else words[:0]
    if _is_everyone_of(words):
        return True
    return "many" in _nouns(words) or small_words.CARDINALS.get(bare[0].plain if bare else "", 1) > 1


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
        if behind.plain in table.BEFORE_A_NAME and len(further) > 2 and further[2].is_large:
            return True  # `le petit Émile`
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


def share_kin(name: Element, further: Sequence[Element]) -> bool:
    """Whether `and` stands between two whose kin is told: `Betty and Reg's mother` (but not their wife)."""
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


def _is_article_of_portuguese(words: Sequence[Element]) -> bool:
    """`a vizinha`, `o noivo`: behind `a` of Portuguese stands no English word."""
    return words[0].text in ("a", "o", "A", "O") and len(words) == 2 and words[1].plain not in english_words()


def definitely(words: Sequence[Element]) -> str:
    """`man`, `woman` or `person` where the words surely say of one person what they are: `my mother`, `the bride`."""
    is_one = (
        words[0].plain in small_words.THE
        or _is_article_of_portuguese(words)
        or is_my(words[0])
        or is_of_somebody(words)
        or is_kin_of(words)
    )
    last = next((word for word in reversed(words) if relation(word) or _NOUNS.get(word.plain) == "one"), None)
    if len(words) < 2 or not is_one or last is None:
        return ""
    return small_words.SEX.get(relation(last) or last.plain, "person")


def _kin_and_name(words: Sequence[Element], text: str) -> tuple[str, str]:
    """`my sister Anna` as `my sister` and `Anna`; two empty texts where the words are not so."""
    if titled := _titles_and_family_name(words):
        return "", between(titled, text)
    has_fathers_name = len(words) > 3 and marks_child(token_of(words[2].text)) and words[1].is_large
    if _has_particles(words) or has_fathers_name:
        return "", ""  # `Kees van der Meulen`, `Leena Jaani tütar Saar`
    opens = is_my(words[0]) or bool(owned_relation(words[0])) or not words[0].is_large or is_of_somebody(words)
    opens = opens or (relation(words[0]) in _CHILDREN_AND_SPOUSES and not token_of(words[0].text).is_given)
    opens = opens or ((not words[1:2] or not words[1].is_large) and not token_of(words[0].text).is_given)
    opens = opens or _are_named_behind(words)
    names_follow = len(words) > 1 and words[1].is_large and token_of(words[1].text).is_given
    opens = opens or (
        _NOUNS.get(words[0].plain) in ("one", "many")
        and names_follow
        and not (_is_kin_of_one(words[0]) or token_of(words[0].text).is_given or words[0].plain in TITLES)
    )  # `Aunties Una and Enid`
    whose = _whose_kin(words)
    at = whose
    while not whose and opens and at < len(words) and not (words[at].is_large and at and not _is_kin(words[at])):
        at += 1
    if at > 2 and is_my(words[0]) and words[at - 1].plain in TITLES and _NOUNS.get(words[at - 2].plain) == "one":
        at -= 1  # `su señora doña Ana`
    before, name = words[:at], _without_remark(words[at:])
    if len(before) > 1 and before[-1].plain in small_words.ARTICLES and not before[-1].is_large:
        before = before[:-1]  # `o noivo o Zé Faria`
    if not before or not name or (before[0].text == "Ma" and not token_of(name[0].text).is_given):
        return "", ""  # `Ma Tull`, where `ma` is `my` in French
    is_titled = before[-1].is_large and before[-1].plain in WIFE_TITLES and len(before) > 1 and not is_my(before[0])
    if is_titled and len(name) == 1 and not token_of(name[0].text).is_given:
        return between(before[:-1], text), between([before[-1], *name], text)  # `die alte Frau Kruse`
    note = ", ".join(filter(None, (between(before, text), between(words[at + len(name) :], text))))
    plains = {word.plain for word in before} - small_words.ARTICLES
    small = bool(plains) and plains <= table.BEFORE_A_NAME
    near = len(before) == 1 and (relation(before[0]) in _NEAR or bool(owned_relation(before[0])))
    if len(before) == 2 and relation(before[0]) and is_my(before[1]):  # Norwegian: `broren sin Nils`
        return note, between(name, text)
    if len(before) == 1 and before[0].kind == "my" and token_of(name[0].text).is_given:  # `our Edna`
        return note, between(name, text)
    if len(before) == 2 and before[0].plain in small_words.ARTICLES and before[1].plain in small_words.LADIES:
        return note.partition(", ")[2], between(words[1 : at + len(name)], text)  # `La signora Bianchi`
    own = (
        is_my(before[0])
        or whose > 0
        or is_of_somebody(before)
        or is_plural_of_kin(before[-1])
        or before[-1].plain in _NOUNS
    )
    return (note, between(name, text)) if small or near or (own and _is_kin(before[-1])) else ("", "")


def _has_particles(words: Sequence[Element]) -> bool:
    """Whether a name is told with particles between its large words, and nothing else small."""
    inside = words[1:-1]
    is_name = len(inside) > 0 and words[0].is_large and words[-1].is_large and not words[1].is_large
    is_name = is_name and not (words[0].plain in _NOUNS or relation(words[0]) or words[0].kind != "word")
    return is_name and all(word.is_large or token_of(word.text).is_particle for word in inside)


def _titles_and_family_name(words: Sequence[Element]) -> Sequence[Element]:
    """`docteur Cottard` of `le docteur Cottard`, `härra õpetaja Kuusk`: titles, of which a noun may be one too, stay
    with a family name; none for all else."""
    at = next((at for at, word in enumerate(words) if word.plain not in small_words.ARTICLES), len(words))
    between_titles = _TITLES_ALONE | {"le", "la"}
    ends = next((end for end in range(at, len(words)) if words[end].plain not in between_titles), len(words))
    name = words[ends:]
    is_led = ends > at and words[ends - 1].plain in _TITLES_ALONE and (at > 0 or not words[ends - 1].is_large)
    is_family = bool(name) and name[-1].is_large and not token_of(name[-1].text).is_given
    is_family = is_family and all(token_of(word.text).plain in PARTICLES for word in name[:-1])
    return words[at:] if is_led and is_family else ()


_TITLES_ALONE = TITLES - KIN_WORDS.keys() - GIVEN_TITLES - WIFE_TITLES


def _whose_kin(words: Sequence[Element]) -> int:
    """How many words `Mihkel Tamme naine` of `Mihkel Tamme naine Leena` takes: in Estonian a whole name stands before a
    word of kin, in a form that says whose."""
    whose, behind = words[:3], words[3:]
    is_kin = len(whose) == 3 and whose[2].plain in small_words.KIN_BEHIND_WHOSE and not whose[2].is_large
    are_names = is_kin and all(word.is_large for word in (*whose[:2], *behind)) and bool(behind)
    return 3 if are_names and token_of(whose[0].text).is_given else 0


def _is_kin_of_one(word: Element) -> bool:
    is_many = _NOUNS.get(word.plain) == "many" and word.text.lower() not in small_words.NO_NOUNS
    return bool(relation(word)) and not is_many  # `Сёстры` are several


def _are_named_behind(words: Sequence[Element]) -> bool:
    """`The Misses Ada …`: an article, a word of several, and a given name."""
    if len(words) < 3 or words[0].plain not in small_words.THE or _NOUNS.get(words[1].plain) != "many":
        return False
    return words[2].is_large and token_of(words[2].text).is_given


_BEGIN_WHAT_FOLLOWS = table.BEFORE_A_PLACE | small_words.BEGIN_A_REMARK


def _without_remark(name: Sequence[Element]) -> Sequence[Element]:
    """`Reg on her knee` without what stands behind the name."""
    small = next((at for at, word in enumerate(name) if at and word.text.islower()), 0)
    behind = name[small:] if small and token_of(name[0].text).is_given else ()
    if behind and all(word.text.islower() and not token_of(word.text).is_particle for word in behind):
        return name[:small]  # `Olli mökin portailla`
    follow = (word.plain in _BEGIN_WHAT_FOLLOWS or word.kind == "verb" for word in name)
    at = next((at for at, follows in enumerate(follow) if at and follows and not name[at].is_large), 0)
    is_remark = at and not any(word.is_large for word in name[at:])
    return name[:at] if is_remark else name


_NEAR = ("son", "daughter", "wife", "husband", "brother", "sister", "grandson", "granddaughter")
"""Kin whom nobody calls by that word: before a name it tells how they are kin."""

_CHILDREN_AND_SPOUSES = frozenset(_NEAR) - {"brother", "sister"}
"""Those of them whose words are no titles, and so tell it written large too (`Tochter Hilde`; but `Schwester Anna`)."""


_WIVES = ("fru", "frue", "rouva", "proua", "pani")
"""Titles that are `wife` behind `his`."""


def _is_kin(word: Element) -> bool:
    """A word of kin or of kinds of people; a genitive counts as one, for more must follow it."""
    if word.text.lower() in small_words.NO_NOUNS:
        return bool(relation(word))
    people = word.plain in _WIVES or (_NOUNS.get(word.plain) in ("one", "many") and not is_family(word))
    if word.is_large and token_of(word.text).is_given and (not relation(word) or is_given_too(word.text)):
        return word.is_genitive  # `jeho žena Marie`, where `marie` is a bride in French
    return bool(relation(word)) or people or word.is_genitive or is_plural_of_kin(word)

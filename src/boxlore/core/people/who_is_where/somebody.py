"""Whom the words of one item name: one table of kinds, asked in order.

    somebody = ["probably"] kind ["?"]
    kind = unknown               ; ?    driver unknown    ? Barnes
         / several               ; the three boys    me mum dad    Ивановы на даче
         / one of a couple       ; Brautpaar Anna
         / kin of somebody       ; la mère de Paul    муж Анны
         / kin and a name        ; my sister Anna    baby Tom    the vicar Oakes
         / said by another       ; Mum says Wilf
         / whole                 ; Anna Tamm    Mum    the tall man: one name, or one description, of all the words
         / named, and a remark   ; Anna at the gate
         / described, and more   ; the boy on the pony
         / words that ask        ; everything else

Each kind looks at the words of the item alone; what stands beside it decides later (`apposition`, `all_accounted`,
`surely_a_name`). A kind that knows the words takes all of them: none is left. Words of several people, of animals and
things, and words of which nothing is known ask, and name nobody; each question offers the names that the words hold.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from boxlore.core.people.names.reader import NOTHING_KNOWN, read_name
from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_ALONE, TITLES
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.dictionary_forms import both_of_a_family
from boxlore.core.people.who_is_where.groups import OF_A_FAMILY, group_of
from boxlore.core.people.who_is_where.item_words import (
    between,
    how_many,
    is_description,
    is_everyone_of,
    is_family,
    is_his_kin,
    is_kin_of,
    is_my,
    nouns_of,
    without_article,
)
from boxlore.core.people.who_is_where.kin_and_name import kin_and_name
from boxlore.core.people.who_is_where.kin_words import ME, is_me, is_oblique_kin, own_relation, relation
from boxlore.core.people.who_is_where.remarks import head_and_remark, is_somewhere
from boxlore.core.people.who_is_where.surely_a_name import name_behind_with
from boxlore.core.people.who_is_where.tokens import Element
from boxlore.core.people.who_is_where.written_out import Placed

Named = tuple[Placed, bool]
"""Somebody without a place, and whether a name tells who it is."""


@dataclass(frozen=True, slots=True)
class _Item:
    """The words of one item, without those of doubt."""

    all_words: Sequence[Element]
    """With the article before them."""
    words: Sequence[Element]
    text: str
    known: KnownNames
    unsure: bool
    nouns: frozenset[str]
    """The kinds of nouns among the words: `one`, `many`, `thing`."""
    head: int
    """How many words name somebody, if a remark follows."""

    @property
    def told(self) -> str:
        return between(self.words, self.text)

    @property
    def is_choice(self) -> bool:
        """`Uncle Ken or Uncle Des`."""
        return any(word.kind == "or" for word in self.words)

    @property
    def is_one(self) -> bool:
        """Whether no word speaks against one person: no several, no thing, no choice, no `half of Grandma`."""
        return not (self.nouns & {"many", "thing"} or self.is_choice or self.words[0].plain in _PARTS)

    def somebody(self, words: str = "", *, note: str = "", is_name: bool) -> Named:
        """A person by these words; by all of them where none are given."""
        return Placed(words or self.told, 0, note=note, unsure=self.unsure), is_name

    def asking(self, asks: str) -> Named:
        """All the words, which ask and make nobody."""
        return Placed(self.told, 0, unsure=self.unsure, asks=asks, is_person=False), False


_PARTS = ("half", "part")


def person_named(words: Sequence[Element], text: str, known: KnownNames, *, surely: bool = False) -> Named:
    """Whom the words of one item name, without a place, and whether by a name. `text` is what they are words of.

    `surely`: whether a person must be told here: behind `with`.
    """
    words, doubts = _without_doubt(words)
    if len(words) == 2 and words[0].plain in _AM and words[1].plain in ME:
        words = words[1:]  # `ben ik`
    are_several = _is_family_of_several(words, text) or is_everyone_of(words)
    bare = words if are_several else without_article(words)
    nouns = nouns_of(bare) | {"many" for word in bare if are_several or is_family(word)}
    head = head_and_remark(bare, text, known, surely=surely)
    item = _Item(words, bare, text, known, bool(doubts), frozenset(nouns), head)
    person, is_name = next(named for kind in _KINDS if (named := kind(item)))
    return replace(person, likely=are_likely(doubts)), is_name


def names_somebody(words: Sequence[Element], text: str) -> bool:
    """Whether the words may be somebody's, so that what follows them may go on with the name."""
    return person_named(words, text, NOTHING_KNOWN)[0].is_person


def are_likely(doubts: Sequence[Element]) -> bool:
    """Whether doubts that are told of somebody say `probably`, all of them."""
    return bool(doubts) and all(doubt.plain in table.LIKELY for doubt in doubts)


def _without_doubt(words: Sequence[Element]) -> tuple[Sequence[Element], list[Element]]:
    """The words without `?`, `probably` and `I think` at their ends, and these."""
    doubts: list[Element] = []
    if words[-1].kind == "unknown" and words[-1].text.startswith("?") and len(words) > 1:
        words, doubts = words[:-1], [words[-1]]
    if words[0].kind == "unsure" and len(words) > 1:
        words, doubts = words[1:], [*doubts, words[0]]
    if words[-1].kind == "unsure" and len(words) > 1:  # `Ivy I think`
        words, doubts = words[:-1], [*doubts, words[-1]]
    return words, doubts


_AM = frozenset("ben bin olen soy suis sono sou am ar er jestem esmu esu".split())


# The kinds


def _unknown(item: _Item) -> Named | None:
    """Somebody whom nobody knows, or of whom a family name alone is known."""
    words, text = item.all_words, item.text
    if words[0].text == "?" and len(words) > 1 and all(word.is_large and word.kind == "word" for word in words[1:]):
        told = between(words, text)
        return Placed(told, 0, asks=f"Who is “{told}”?", is_person=False), False  # `? Barnes`
    if words[0].kind == "unknown" and len(words) > 1 and _NOUNS.get(words[1].plain) == "many":
        told = between(words, text)
        return Placed(told, 0, asks=f"Who are “{told}”?", is_person=False), False  # `unknown girls`, of no number
    if words[0].kind == "unknown":
        return Placed("", 0, note=between(words[1:], text)), False
    if words[-1].kind == "unknown" and len(words) > 1 and _NOUNS.get(words[-2].plain) == "one":
        return Placed("", 0, note=between(words[:-1], text)), False  # `driver unknown`
    return None


def _unknown_behind_an_article(item: _Item) -> Named | None:
    """`un desconocido`."""
    if item.words[0].kind != "unknown":
        return None
    return Placed("", 0, note=between(item.words[1:], item.text)), False


def _several(item: _Item) -> Named | None:
    """Several people told without a name of each."""
    words, told = item.all_words, between(item.all_words, item.text)
    group = group_of(words)
    if group and group.led and group.end == len(words):
        who = "Who is" if group.some and how_many(words) == 1 else "Who are"
        return Placed(told, 0, unsure=item.unsure, asks=f"{who} “{told}”{_both(words)}?", is_person=False), False
    mine = between(words[1:], item.text) if words[0].kind == "me" and len(words) > _ME_AND_MINE else ""
    if own_relation(mine):
        return item.asking(f"Are “{told}” several people: {words[0].text}; {mine}?")  # `me my brother`
    if _are_namesakes(words):
        return item.asking(f"Who are “{told}”?")  # `Las dos Marías`
    if len(words) > 1 and _are_own_or_called(words):
        asks = f"Are “{told}” several people: {'; '.join(word.text for word in words)}?"
        return Placed(told, 0, unsure=item.unsure, asks=asks, is_person=False), False  # `me mum dad`
    if item.head > 1 and len(words) > item.head and _are_own_or_called(words[: item.head]):
        who = "; ".join(word.text for word in words[: item.head])
        return item.asking(f"Are “{told}” several people: {who}?")  # `mum dad all 5 of us`
    if both := _families(words):
        family, note = words[0].text, between(words[1:], item.text)
        return Placed(family, 0, note=note, asks=f"Who are “{family}”: {both}?", is_person=False), False  # `Ивановы`
    return None


def _one_of_a_couple(item: _Item) -> Named | None:
    """`Brautpaar Anna`, behind whom `and Karl` follows."""
    words = item.words
    is_couple = words[0].plain in table.COUPLES and len(words) > 1
    if not (is_couple and words[1].is_large and token_of(words[1].text).is_given):
        return None
    return item.somebody(between(words[1:], item.text), note=words[0].text, is_name=True)


def _kin_of_somebody(item: _Item) -> Named | None:
    return item.somebody(is_name=False) if is_kin_of(item.all_words) else None


def _kin_and_a_name(item: _Item) -> Named | None:
    if "," in item.told or "thing" in item.nouns or any(word.kind == "or" for word in item.words[1:]):
        return None
    kin, name = kin_and_name(item.words, item.text)
    if not name or not read_name(name, item.known):
        return None
    return item.somebody(name, note=kin, is_name=True)


def _said_by_another(item: _Item) -> Named | None:
    """`Mum says Wilf`, `Ethel thought that's Wilf`: whoever says so need not be in the picture."""
    words = item.words
    says = next((at for at, word in enumerate(words) if at and word.plain in small_words.SAYING), 0)
    said = [
        word
        for word in words[says + 1 :]
        if not (word.kind == "verb" or word.plain in small_words.LEAD_TO_WHAT_IS_SAID)
    ]
    told_by = words[0].is_large or words[0].kind == "my"
    if not (says and told_by and said and said[0].is_large and token_of(said[0].text).is_given):
        return None
    return item.asking(f"Is “{between(said, item.text)}” in the picture, where “{item.told}” is told?")


def _whole(item: _Item) -> Named | None:
    """The one person whom all the words together name or describe."""
    words, head, first = item.words, item.head, item.words[0]
    if not item.is_one:
        return None
    if len(words) == 1 and (first.kind == "me" or first.plain in ME):
        return item.somebody(is_name=False)
    if first.kind == "me" and is_description(words[1:]) and not head:  # `moi bébé`
        return item.somebody(first.text, note=between(words[1:], item.text), is_name=False)
    if is_description(words) and not (head and first.kind == "me"):  # `me as a baby`
        return item.somebody(is_name=False)
    is_remark = head and (words[head].plain == "am" or first.plain in ME or is_somewhere(words))
    if is_remark or _is_row_of_small_names(words):
        return None
    parts = read_name(item.told, item.known)
    if not parts:
        return None
    is_name = not (own_relation(item.told) or parts.kin == item.told or is_his_kin(words))
    return item.somebody(is_name=is_name)


def _named_with_a_remark(item: _Item) -> Named | None:
    words, head = item.words, item.head
    if not head:
        return None
    is_name = not (words[0].kind == "my" or is_me(words[0])) and words[head - 1].plain not in KIN_ALONE
    return item.somebody(between(words[:head], item.text), note=between(words[head:], item.text), is_name=is_name)


def _described_and_more(item: _Item) -> Named | None:
    """`the boy on the pony`; but not `der Junge neben Otto`, where a name follows that may be another."""
    is_told = "one" in item.nouns or bool(relation(item.words[-1]))
    if not (item.is_one and is_told) or any(_may_be_another(word) for word in item.words[1:]):
        return None
    return item.somebody(is_name=False)


def _words_that_ask(item: _Item) -> Named:
    words, told = item.words, item.told
    if words[0].kind == "or" and len(words) > 1:
        _, name = kin_and_name(words[1:], item.text)
        asks = f"Is it “{name or between(words[1:], item.text)}”, and not who is told before?"
        return Placed(told, 0, unsure=True, asks=asks, is_person=False), False
    if is_oblique_kin(words[0]) and (name := name_behind_with([token_of(word.text) for word in words], item.known)):
        return item.asking(f"Is “{told}” {name}?")  # `тётей Валей`
    if item.is_choice and len(names := _called(words)) > 1:
        return item.asking(f"Who is meant by “{told}”: {'; '.join(names)}?")  # `Mary or maybe her sister Jane`
    are_many = "many" in item.nouns
    return item.asking(f"Who are “{told}”{_both(words)}?" if are_many else f"Is “{told}” someone in the picture?")


_KINDS: tuple[Callable[[_Item], Named | None], ...] = (
    _unknown, _several, _unknown_behind_an_article, _one_of_a_couple, _kin_of_somebody, _kin_and_a_name,
    _said_by_another, _whole, _named_with_a_remark, _described_and_more, _words_that_ask,
)  # fmt: skip


# What the kinds ask of the words


_NOUNS = table.NOUNS


def _are_namesakes(words: Sequence[Element]) -> bool:
    """`Las dos Marías`, `the two Annas`: an article, a number above one, and a name."""
    counts = len(words) == _NAMESAKES and words[0].plain in small_words.ARTICLES
    several = counts and small_words.CARDINALS.get(words[1].plain, 1) > 1 and words[1].text.islower()
    return several and words[2].is_large and not relation(words[1])


_NAMESAKES = 3
_ME_AND_MINE = 2


def _called(words: Sequence[Element]) -> list[str]:
    """The names among the words: what is written large from a given name or a title on."""
    names: list[list[str]] = []
    goes_on = False
    for word in words:
        opens = word.is_large and (token_of(word.text).is_given or word.plain in TITLES)
        if opens and not goes_on:
            names.append([])
        goes_on = word.is_large and word.kind == "word" and (opens or goes_on)
        if goes_on:
            names[-1].append(word.text)
    return [" ".join(name) for name in names]


def _families(words: Sequence[Element]) -> str:
    """`Иванов; Иванова` of `Ивановы на даче`: a family by its name alone, and small words of where."""
    first = words[0]
    is_alone = first.is_large and all(word.text.islower() for word in words[1:]) and not token_of(first.text).is_given
    return "; ".join(both_of_a_family(first.text)) if is_alone and not first.text.endswith(OF_A_FAMILY) else ""


def _is_own_alone(word: Element) -> bool:
    """`me`, `mum`: the teller or her own, by one word that is small."""
    return word.text.islower() and (word.kind == "me" or word.plain in KIN_ALONE) and not is_my(word)


def _are_own_or_called(words: Sequence[Element]) -> bool:
    """`me mum dad`, `mum dad ronnie`: the teller's own, and given names typed small, of which no kin word leads one."""
    own = [_is_own_alone(word) for word in words]
    called = all(word.text.islower() and token_of(word.text).is_given for word in words[2:])
    return all(own) or (called and own[:2] == [True, True])


def _both(words: Sequence[Element]) -> str:
    """`: Dvořák; Dvořáková` of `Manželé Dvořákovi`: a couple told by the name of the family."""
    names = both_of_a_family(words[-1].text) if words[0].plain in table.FAMILY and len(words) == 2 else ()
    return f": {'; '.join(names)}" if names else ""


def _may_be_another(word: Element) -> bool:
    """Whether a word of a description is a name: `der Junge neben Otto`; but not in `Otto's boy`."""
    is_name = word.is_large and token_of(word.text).is_given
    return is_name and not word.is_genitive and word.plain not in _NOUNS


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

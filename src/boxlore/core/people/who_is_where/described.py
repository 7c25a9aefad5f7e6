"""Somebody described without a noun, and named behind a verb: `La alta es mi hermana Pilar`, `Den høje bagved er …`.

    person = ("the" / "this" / "in") words {place} ["," ] "is" somebody
           / ("she" / "he") place "is" somebody       ; `han til venstre er Tor`
         / word place ("is" / "-") somebody         ; in languages without articles: `Высокий сзади — мой …`

None of the words is a name or kin, so that they only can describe who is told behind the verb. Found before a text is
read, for a word alone tells nothing of this; the words are marked as one description (`described`).
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.who_is_where.item_words import begins_person, leads_to_a_thing
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.position_words_table import DOUBTING, NOUNS
from boxlore.core.people.who_is_where.small_words_table import ARTICLES, BEGIN_A_REMARK, BUT, CARDINALS, SUBJECTS
from boxlore.core.people.who_is_where.tokens import PLACES, Element

_DEMONSTRATIVES = frozenset(
    "this that see too celui celle celui-la ese esa este esta aquel aquella quello quella questo questa aquele "
    "aquela deze dit die den det denne denna tuo tama тот та этот эта ten ta tamten tas sis si sita sa su az "
    "ez".split()
)
_LONGEST = 8
_BEGIN = ("comma", "end", "colon", "and", "dash")
_ALSO_IS = ("ir",)
"""`is` of one language that is `and` of another one."""


def with_described(elements: Sequence[Element], known: KnownNames) -> list[Element]:
    """The elements, the words of such a description marked."""
    marked = list(elements)
    for start in range(len(marked)):
        before = marked[start - 1].kind if start else "end"
        opens = before in _BEGIN or (
            before in PLACES and marked[start].plain in BEGIN_A_REMARK
        )  # `Sitting in the boat`
        if not (opens or marked[start - 1].plain in BUT):
            continue
        end = _end_of_words(marked, start, known)
        if end and _names_somebody(marked, start, end):
            marked[start:end] = [replace(element, kind="described") for element in marked[start:end]]
    return marked


def with_verbs_of_doubt(elements: Sequence[Element]) -> list[Element]:
    """The elements, `may have been` behind small words as a verb, and as the doubt of whoever is told behind it."""
    split: list[Element] = []
    for at, element in enumerate(elements):
        is_verb = element.kind == "unsure" and element.plain.split()[0] in DOUBTING and at > 0
        if is_verb and (elements[at - 1].kind in PLACES or _is_small_word(elements[at - 1])):
            split.append(replace(element, kind="verb"))
        split.append(element)
    return split


def _is_small_word(element: Element) -> bool:
    return element.kind == "word" and not element.is_large


def _end_of_words(elements: Sequence[Element], start: int, known: KnownNames) -> int:
    """Behind the last of the words that may describe; 0 where none do."""
    end = start + leads_to_a_thing(elements[start:])
    while end < len(elements) and end - start < _LONGEST and _may_describe(elements[end], known):
        if end > start and elements[end].plain in CARDINALS:
            return 0  # `The three in the back`
        end += 1
    opens = end > start and (
        elements[start].plain in ARTICLES | _DEMONSTRATIVES or leads_to_a_thing(elements[start:]) > 0
    )
    if not opens:
        first = elements[start]
        alone = end == start + 1 and (first.plain in SUBJECTS or (first.is_large and len(first.text) > 2))
        return end if alone else 0
    return end if end > start + 1 else 0


def _may_describe(element: Element, known: KnownNames) -> bool:
    plain = element.plain
    is_name = element.is_large and (token_of(element.text).is_given or known.is_family(plain) or known.is_given(plain))
    is_somebody = is_name or bool(relation(element)) or plain in NOUNS or plain.endswith("'s")
    return element.kind in ("word", "with", "of", "my") and not is_somebody and element.text[:1].isalpha()


def _names_somebody(elements: Sequence[Element], start: int, end: int) -> bool:
    """Whether a verb, and somebody, follow the words, at once or behind a place."""
    at = end
    while at < len(elements) and elements[at].kind in PLACES:
        at += 1
    has_place, opens = at > end, end - start > 1
    if at + 1 < len(elements) and elements[at].kind == "comma" and "'" in elements[at + 1].plain:
        at += 1  # `Celui au chapeau, c'est Paul`
    if at + 1 >= len(elements):
        return False
    verb, further = elements[at], elements[at + 1 :]
    is_verb = (
        verb.kind == "verb"
        or verb.plain in _ALSO_IS
        or (verb.kind == "dash" and (has_place or further[0].kind == "my"))
    )
    return is_verb and begins_person(further) and (opens or has_place or further[0].kind == "my")

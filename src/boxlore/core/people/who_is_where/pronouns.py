"""A remark that begins with a pronoun is told of whoever stands before it: `Grace. She was the vicar's daughter.`

    remark = mark pronoun verb {word}       ; to the end of the sentence, behind a comma to the next one

Nobody is called `she`, so the words are a note, whatever they go on with. They are none where they tell a place (`She
is second from the left`), or who somebody is (`The girl. She is Anna.`); and a pronoun and a verb alone are none at the
very end of a text. Grammars of the languages, from memory; no source.
"""

from collections.abc import Sequence

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.who_is_where.small_words_table import NOT_IN_IT, RELATIVES, SUBJECTS, SURE_SUBJECTS
from boxlore.core.people.who_is_where.tokens import PLACES, Element, each_as_one, note_over

_TELLS_A_PLACE = (*PLACES, "position", "from the right", "ordinal", "nextto", "from_left", "from_right")


def with_pronoun_remarks(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, each such remark as one note."""
    return each_as_one(elements, _end, lambda told: note_over(told, text))


_SHORTEST = 2
"""A pronoun and a verb."""


def _begins(before: Sequence[Element], further: Sequence[Element]) -> bool:
    """Whether a pronoun and a verb stand behind somebody and a mark, which are the two elements `before`."""
    if len(further) <= _SHORTEST:
        return False
    told, mark = before
    pronoun, verb = further[:2]
    goes_on = told.is_large and mark.kind == "comma"
    if goes_on and pronoun.plain in RELATIVES and not pronoun.is_large:
        return not verb.is_large and _is_of_one_seen(further)
    if goes_on and _ends_with_its_verb(further):
        return True
    if pronoun.plain not in SUBJECTS or (pronoun.is_large and token_of(pronoun.text).is_given):
        return False
    says = verb.kind == "verb" or (pronoun.plain in SURE_SUBJECTS and verb.kind == "word")
    return says and not verb.is_large


def _ends_with_its_verb(further: Sequence[Element]) -> bool:
    """`die ihrer Tante so ähnlich sieht`: a German clause, of which the verb is the last word."""
    end = next((end for end, element in enumerate(further) if element.kind in ("end", "comma")), len(further))
    clause = further[:end]
    opens = end > _SHORTEST and clause[0].text in _RELATIVES_OF_GERMAN and not clause[1].is_large
    return opens and clause[-1].kind in ("word", "verb") and clause[-1].text.islower() and clause[-1].text.isalpha()


_RELATIVES_OF_GERMAN = ("der", "die", "das", "dem", "den", "deren", "dessen")


def _is_of_one_seen(further: Sequence[Element]) -> bool:
    """Whether a clause does not tell that who is told is not in the picture, or took it."""
    end = next((end for end, element in enumerate(further) if element.kind in ("end", "comma", "colon")), len(further))
    return not any(element.plain in NOT_IN_IT for element in further[:end])


def _end(elements: Sequence[Element], at: int) -> int:
    """Behind the remark that begins here; 0 where none does."""
    is_behind = at > 1 and elements[at - 1].kind in ("end", "comma")
    if not (is_behind and _begins(elements[at - 2 : at], elements[at:])):
        return 0
    ends = ("end", "comma", "colon") if elements[at - 1].kind == "comma" else ("end",)
    end = next((end for end in range(at, len(elements)) if elements[end].kind in ends), len(elements))
    return end if _is_a_remark(elements[at:end]) else 0


def _is_a_remark(said: Sequence[Element]) -> bool:
    names_her = len(said) > _SHORTEST and said[2].is_large and token_of(said[2].text).is_given
    is_counted = len(said) == 3 and said[2].kind == "number"  # `She is 4`
    return not (names_her or is_counted) and not any(element.kind in _TELLS_A_PLACE for element in said)

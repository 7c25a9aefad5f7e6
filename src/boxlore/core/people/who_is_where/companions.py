"""Kin beside whom somebody is, told in a note on her: `abikaasaga`, `vaimonsa kanssa`, `med fru`.

    companion = [with] [his] kin in its form behind `with`      ; koos abikaasaga   oma naise ja lastega   med fru
              / kin in a genitive "kanssa"                      ; vaimonsa kanssa   äitinsä ja poikansa kanssa

Each may be in the picture too, so that it is asked. Words of whose alone, and nothing large, stand before the kin.
Common practice, from memory; no source.
"""

from collections.abc import Iterator, Sequence

from boxlore.core.people.names.tokens import Token, tokens_of
from boxlore.core.people.names.words_table import KIN_WORDS, WIFE_TITLES
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.kin_words import is_form_of_kin, owned_relation
from boxlore.core.people.who_is_where.tokens import elements_of

_BEHIND = ("kanssa", "kera")
"""`with` of Finnish, which stands behind whom it is told of."""

_ESTONIAN_WITH = "ga"
_WITH_ENDINGS = (_ESTONIAN_WITH, "neen")
"""Endings that say `with`: `naisega`, `vaimoineen`."""

_LEAD = (
    small_words.WITH
    | small_words.OF_ANOTHER
    | small_words.ARTICLES
    | table.MY_OWN
    | frozenset("oma tema sin sinna sine swoja swoim svou svym savu savo своеи своим".split())
)


def kin_in(note: str) -> Iterator[str]:
    """The kin that is told to be with whoever is noted so, each by its word."""
    for part in note.split(", "):
        tokens = tokens_of(part)
        ends = bool(tokens) and tokens[-1].plain in _BEHIND
        with_whom = tokens[:-1] if ends else tokens
        lead = next((at for at, token in enumerate(with_whom) if token.plain not in _LEAD), len(with_whom))
        said = with_whom[lead:]
        small = bool(said) and all(token.text.islower() for token in said) and not (ends and said[1:])
        if small and (kin := _kin(said[0], told_with=ends or _says_with(with_whom[:lead]))):
            yield kin


def _says_with(leads: Sequence[Token]) -> bool:
    return any(token.plain in small_words.WITH for token in leads)


def _kin(token: Token, *, told_with: bool) -> str:
    """The word of kin in the form that it has by itself, where it is told by its ending or by `with`."""
    stem = token.plain.removesuffix(_ESTONIAN_WITH)
    if stem != token.plain and stem in KIN_WORDS:
        return token.text[: -len(_ESTONIAN_WITH)]
    by_its_ending = is_form_of_kin(token.plain) and (told_with or token.plain.endswith(_WITH_ENDINGS))
    if by_its_ending or (told_with and token.plain in WIFE_TITLES):
        return token.text
    return token.text if told_with and owned_relation(elements_of(token.text)[0]) else ""

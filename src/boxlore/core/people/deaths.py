"""Whether what is told of somebody's death surely ends the life.

Rule kept: only a sure statement does, with a date or without. A guess, what is likely, “perhaps in the war” and “not
yet, he lives in Perth” leave somebody living. So does a date in doubt (`1990?`, “perhaps 1990”, as the reader of dates
understands it: EDTF's `?` and `%`), for it may be the death that is doubted; one that is only rough (“about 1990”)
does not.
"""

from collections.abc import Iterable
from itertools import pairwise

from boxlore.core.dates.reading import DateReading
from boxlore.core.statements import Reading, Statement, Sure, fold

DEATH_FIELDS = ("died", "died_at", "buried", "buried_at")
"""The fields that tell of a death."""

_LIVING_WORDS = frozenset(
    "not never no still alive living lives live lived yet hasn isn didn doesn don wasn won "
    "ei elus elab veel не нет жив жива живы живет живут nicht lebt noch lebend kein en elossa elaa "
    "nav dzivs dziva dzivo ne gyvas gyva gyvena zyje zije vivant vivante vit vive vivo viva lever inte ikke".split()
)
_DOUBT_WORDS = frozenset(
    "maybe perhaps probably possibly might could think believe unsure guess rumour "
    "voibolla vist arvatavasti может вероятно наверное vielleicht wohl vermutlich ehka "
    "luultavasti varbut laikam gal turbut moze chyba snad peut forse quizas kanske maske".split()
)
_UNKNOWN_WORDS = frozenset("know unknown idea teadmata неизвестно unbekannt".split())
"""What is not known beside a date is something else, such as the place; alone it is the death."""
_MISSING_WORDS = frozenset(
    "missing believed presumed supposed reported feared vermisst verschollen kadunud kadonnut savnet saknad "
    "vermist disparu disparue disperso dispersa desaparecido desaparecida zaginiony zaginiona zaginal zaginela "
    "пропал пропала pazudis pazudusi dinges dingusi nezvestny nezvestna".split()
)
"""Folded words, from memory."""
_MAY_HAVE = frozenset({("may", "have"), ("may", "be"), ("may", "well")})
_IN_DOUBT = frozenset("?%")
"""Qualifiers of EDTF that say a part is uncertain (ISO 8601-2, 4.4)."""


def ends_life(statement: Statement, reading: Reading | None) -> bool:
    """Whether a statement about the day, the place or the burial of a death surely says that somebody died."""
    if statement.sure is not Sure.SURE or says_living(statement.words) or _is_missing(statement.words):
        return False
    if "?" in statement.words or _is_doubted(_words(statement.words)):
        return False
    value = reading.value if reading is not None else None
    if isinstance(value, DateReading) and value.edtf is not None:
        return _IN_DOUBT.isdisjoint(value.edtf.text)
    if isinstance(value, DateReading) and value.alternatives:
        return True
    return _UNKNOWN_WORDS.isdisjoint(_words(statement.words))


def _is_doubted(words: list[str]) -> bool:
    """`may` alone is a month."""
    return not _DOUBT_WORDS.isdisjoint(words) or any(pair in _MAY_HAVE for pair in pairwise(words))


def _is_missing(words: str) -> bool:
    """Whether nobody saw the death, which no date makes sure: `missing since 1944`, `believed killed 1944`."""
    return not _MISSING_WORDS.isdisjoint(_words(words))


def says_living(words: str) -> bool:
    """Whether words told of a death say that there was none."""
    folded = _words(words)
    if "nie" in folded and "zyje" in folded:
        return False  # Polish: does not live
    return not _LIVING_WORDS.isdisjoint(folded)


def _words(words: str) -> list[str]:
    return "".join(letter if letter.isalnum() else " " for letter in fold(words)).split()


def doubted(rows: Iterable[tuple[Statement, Reading | None]]) -> str:
    """The last words about a death where none of them surely ends the life; empty where one does, or none are told."""
    given = list(rows)
    if any(ends_life(statement, reading) for statement, reading in given):
        return ""
    return given[-1][0].words.strip() if given else ""

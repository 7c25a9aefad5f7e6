"""Who may see something, as the lines of a form: and of an archive until which day it stays closed."""

from collections.abc import Mapping

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import SHARED, audience_shown, read_audience
from boxlore.tui.screens.forms import Blank

ARCHIVE = "archive"
AUDIENCES = (
    ("anyone", "anyone"),
    ("family", "the family"),
    ("keeper", "the keeper"),
    (ARCHIVE, "an archive, closed until a day"),
    (SHARED, "the family, and an archive that keeps it closed"),
)


def audience_blanks(audience: str, label: str = "Who may see it?") -> list[Blank]:
    """The two lines, beginning with an audience as it stands."""
    level, _, until = audience.partition(":")
    return [
        Blank("audience", label, level if level in dict(AUDIENCES) else "keeper", choices=AUDIENCES),
        Blank("until", "Closed until which day?", until, "2060-01-01. Only for an archive."),
    ]


def audience_read(answers: Mapping[str, str]) -> str:
    """The audience that the two lines answer. Raises WrongUse where a day is missing, or is none."""
    level = answers["audience"]
    if level not in (ARCHIVE, SHARED):
        return level
    if not answers["until"] and level == ARCHIVE:
        raise WrongUse("It is not said until which day it stays closed.", "Write the day as 2060-01-01.")
    return str(read_audience(f"{level}:{answers['until']}".rstrip(":")))


def for_whom(audience: str) -> str:
    """An audience in words: “for the family only”, “for anyone”."""
    return audience_shown(audience) or "for anyone"

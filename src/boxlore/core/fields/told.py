"""What somebody says, as it is kept: the one place that decides what a question mark alone means, in every field and by
every way in.

    "?"                  asked, and not known: no words, and Sure.NOT_KNOWN
    "," "..." "-" ";"    nothing that anybody can have said; only on a print may marks alone be written
    "1968"               nobody, where somebody is named: figures alone are no name, but a year told a line too early
"""

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import check_typed, is_question, says_nothing
from boxlore.core.fields.table import Field
from boxlore.core.statements import Sure

MARKS_MAY_STAND = "inscription"
"""The field of what is written on a print, which is copied as it stands."""


def as_told(field: Field, words: str, sure: Sure) -> tuple[str, Sure]:
    """The words to keep in a field, and how sure they are. Raises WrongUse, saying what may be written."""
    words = words.strip()
    if is_question(words):
        words, sure = "", Sure.NOT_KNOWN
    if not field.told and sure is Sure.NOT_KNOWN:
        raise WrongUse(f"{field.label}: that is not asked of anybody.", "Write what it is, or leave it as it was.")
    if words or sure is not Sure.NOT_KNOWN:
        check_typed(words)
        if says_nothing(words) and field.name != MARKS_MAY_STAND:
            raise WrongUse(
                f"{field.label}: “{words[:40]}” says nothing.", "Write it in words, or ? alone for asked, not known."
            )
        if field.reads == "person" and any(map(str.isdigit, words)) and not any(map(str.isalpha, words)):
            raise WrongUse(
                f"{field.label}: “{words[:40]}” is nobody’s name.", "Write a name, or ? alone for asked, not known."
            )
    return words, sure


def is_untold(field: Field, words: str) -> bool:
    """Whether words that were being typed say nothing yet, so that nothing is lost with them."""
    return not is_question(words) and says_nothing(words) and (field.name != MARKS_MAY_STAND or not words.strip())

"""The guard of the log: what a statement must be before it is added. One function, asked at both doors.

The doors are `tasks.collection.opening.Act.state`, where a row is made and whoever made it can still be told, and
`store.log.append`, through which every row goes. Rows that are read are not checked again: they passed when they came
in, or are older than the guard.
"""

from functools import lru_cache

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import read_audience
from boxlore.core.fields.language import why_no_language
from boxlore.core.fields.plain_values import TEXT
from boxlore.core.fields.table import Field, field_of
from boxlore.core.statements import NEARNESS, SURENESS, Kind, Statement, Sure

_field_of = lru_cache(1024)(field_of)
_read_audience = lru_cache(1024)(read_audience)


def checked(statement: Statement) -> Statement:
    """The statement, if the log may take it. Raises WrongUse with a sentence that says what may be written.

    Checked are its field and kind, who says it, how sure, who may see it, the language (any BCP 47 tag, or none), and
    that the field's codec can read the words. Nothing but told text may be empty where a source does not know.
    """
    field = _field_of(statement.field, _kind(statement.subject.kind))
    if statement.sure not in SURENESS:
        raise WrongUse(f"“{statement.sure}” is no way of being sure.", f"Use one of: {', '.join(SURENESS)}.")
    if statement.source.said not in NEARNESS:
        raise WrongUse(f"“{statement.source.said}” is no kind of source.", f"Use one of: {', '.join(NEARNESS)}.")
    _read_audience(statement.audience)
    check_letters(statement.words)
    check_language(statement.language)
    if field.codec is not TEXT and not (statement.sure is Sure.NOT_KNOWN and not statement.words):
        check_words(field, statement.words)
    return statement


def check_letters(words: str) -> None:
    """Raises WrongUse for bytes of a shell that were no UTF-8: they reach us as lone surrogates (PEP 383)."""
    try:
        words.encode()
    except UnicodeEncodeError:
        raise WrongUse("These words hold bytes that are no letters of UTF-8.", "Write them again in UTF-8.") from None


def check_language(tag: str) -> None:
    """Raises WrongUse for what is neither a language tag nor empty."""
    if tag and (fault := why_no_language(tag)):
        raise WrongUse(fault, "Write a BCP 47 tag, such as en, et, mi or zh-Hant.")


def check_words(field: Field, words: str) -> None:
    """Raises WrongUse for words that the field's codec cannot read."""
    try:
        field.codec.typed(words)
    except WrongUse as error:
        raise WrongUse(f"{field.label}: {error.problem}", error.what_to_do) from None


def _kind(kind: Kind) -> Kind:
    try:
        return Kind(kind)
    except ValueError:
        raise WrongUse(f"“{kind}” is no kind of thing.", f"Use one of: {', '.join(Kind)}.") from None

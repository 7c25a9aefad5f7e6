"""The words by which the keeper keeps a person, an item, or one field of an item to an audience."""

from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.codec import Codec, one_word
from boxlore.core.statements import Audience, read_audience


@dataclass(frozen=True, slots=True)
class KeptTo:
    """Who may see a thing, or with `field` that field of it alone."""

    audience: Audience
    field: str = ""


def _write_kept_to(kept: KeptTo) -> str:
    return f"{kept.field}={kept.audience}" if kept.field else str(kept.audience)


def _parse_kept_to(words: str) -> KeptTo:
    field, equals, audience = words.rpartition("=")
    try:
        return KeptTo(read_audience(audience), one_word(field) if equals else "")
    except WrongUse:
        raise ValueError(words) from None


AUDIENCE_WORDS: Codec[KeptTo] = Codec(
    "audience",
    "Write keeper, family, archive:YYYY-MM-DD or anyone; for one field alone: story=family.",
    _write_kept_to,
    _parse_kept_to,
)
"""`audience`, or `field=audience`."""

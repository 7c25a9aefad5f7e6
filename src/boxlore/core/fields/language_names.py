"""A language by its name: `English`, `eesti`, `te reo Māori`. Apart from `language`: the table is large."""

from boxlore.core.fields.language import is_language
from boxlore.core.fields.language_names_table import LANGUAGE_NAMES
from boxlore.core.statements import fold

_TAGS = {name: tag for tag, names in LANGUAGE_NAMES.items() for name in names.split("|")} | {"te reo maori": "mi"}
"""Folded name -> tag. What Māori is called in New Zealand is from memory; CLDR has the name without “te reo”."""


def language_named(words: str) -> str:
    """The tag of the language that these words name, or the tag that they are; '' where they are neither."""
    asked = words.strip()
    return asked if is_language(asked) else _TAGS.get(fold(asked), "")

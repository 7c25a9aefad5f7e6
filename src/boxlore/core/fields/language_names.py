"""A language by its name: `English`, `eesti`, `te reo Māori`. Apart from `language`: the table is large."""

from boxlore.core.fields.language import is_language
from boxlore.core.fields.language_names_table import LANGUAGE_NAMES
from boxlore.core.statements import fold

_TAGS = {name: tag for tag, names in LANGUAGE_NAMES.items() for name in names.split("|")} | {"te reo maori": "mi"}
"""Folded name -> tag. What Māori is called in New Zealand is from memory; CLDR has the name without “te reo”."""


ENGLISH_NAMES = {
    "cs": "Czech", "cy": "Welsh", "da": "Danish", "de": "German", "el": "Greek", "en": "English", "es": "Spanish",
    "et": "Estonian", "fi": "Finnish", "fr": "French", "ga": "Irish", "gd": "Scottish Gaelic", "he": "Hebrew",
    "hr": "Croatian", "hu": "Hungarian", "is": "Icelandic", "it": "Italian", "ja": "Japanese", "lt": "Lithuanian",
    "lv": "Latvian", "mi": "Māori", "nb": "Norwegian Bokmål", "nl": "Dutch", "nn": "Norwegian Nynorsk",
    "no": "Norwegian", "pl": "Polish", "pt": "Portuguese", "ro": "Romanian", "ru": "Russian", "sk": "Slovak",
    "sv": "Swedish", "uk": "Ukrainian", "yi": "Yiddish", "zh": "Chinese",
}  # fmt: skip
"""Tag -> what Unicode CLDR 49 calls the language in English, of those that a family here most often tells in."""


def language_name(tag: str) -> str:
    """What a language is called: `Estonian` for `et`; the tag of any other, such as de-AT."""
    return ENGLISH_NAMES.get(tag, tag)


def language_named(words: str) -> str:
    """The tag of the language that these words name, or the tag that they are; '' where they are neither."""
    asked = words.strip()
    return asked if is_language(asked) else _TAGS.get(fold(asked), "")

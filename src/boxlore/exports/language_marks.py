"""In which language and script words are, as EAD3 (1.1.1) marks them: `lang` and `script`, which any element may have.

Codes are those that the finding aid declares: ISO 639-2/B, ISO 15924. The script is that of the language's tag, else
that of the letters, by their names in the Unicode Character Database; words in several scripts have none.
"""

import unicodedata

from boxlore.exports.language_codes_table import LANGUAGES

SCRIPTS = {
    "LATIN": "Latn", "CYRILLIC": "Cyrl", "GREEK": "Grek", "HEBREW": "Hebr", "ARABIC": "Arab", "ARMENIAN": "Armn",
    "GEORGIAN": "Geor", "DEVANAGARI": "Deva", "BENGALI": "Beng", "TAMIL": "Taml", "THAI": "Thai", "ETHIOPIC": "Ethi",
    "HANGUL": "Hang", "CJK": "Hani", "HIRAGANA": "Hira", "KATAKANA": "Kana",
}  # fmt: skip
"""How the names of a script's letters begin in Unicode -> its code (ISO 15924)."""
JAPANESE = frozenset({"Hani", "Hira", "Kana"})


def language_marks(words: str, tag: str) -> dict[str, str]:
    """`{"lang": "heb", "script": "Hebr"}` for words with this language tag; nothing for words without one, and no
    `lang` for a language that has no code."""
    if not tag:
        return {}
    marks = (("lang", code_of(tag)), ("script", _script_of_tag(tag) or script_of(words)))
    return {name: value for name, value in marks if value}


def code_of(tag: str) -> str:
    """The ISO 639-2/B code of a language that ISO 639-1 has too; '' for any other."""
    return LANGUAGES.get(tag.split("-")[0].lower(), ("", ""))[1]


def _script_of_tag(tag: str) -> str:
    """The script subtag (BCP 47, 2.2.3): four letters behind the language."""
    return next((part.title() for part in tag.split("-")[1:] if len(part) == 4 and part.isalpha()), "")


def script_of(words: str) -> str:
    """The code of the only script that the letters are of; '' for several, and for none that is known."""
    codes = {SCRIPTS.get(unicodedata.name(letter, "").split(" ")[0], "") for letter in words if letter.isalpha()}
    if codes <= JAPANESE and len(codes) > 1:
        return "Jpan"
    return codes.pop() if len(codes) == 1 else ""

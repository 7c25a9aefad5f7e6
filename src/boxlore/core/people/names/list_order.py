"""The order of names in a list, by the alphabet of a language: capitals count as small letters, marks as nothing, but
for the letters that a language counts as its own, which stand behind another one (Swedish å, ä and ö behind z).

    row = {language} "|" {letter "<" letter}    ; each letter stands behind the one before it, before all others

Which letters are a language's own: the tailorings of the Unicode Common Locale Data Repository (CLDR), from memory.
"""

import unicodedata
from functools import cache

from boxlore.core.statements import fold

_OWN = """
et | s < š < z < ž|v < w < õ < ä < ö < ü < x < y
fi sv | z < å < ä < ö
da nb nn no | z < æ < ø < å
is | a < á|d < ð|e < é|i < í|o < ó|u < ú|y < ý|z < þ < æ < ö < å
es | n < ñ
pl | a < ą|c < ć|e < ę|l < ł|n < ń|o < ó|s < ś|z < ź < ż
cs | c < č|r < ř|s < š|z < ž
lv | c < č|g < ģ|k < ķ|l < ļ|n < ņ|s < š|z < ž
lt | c < č|s < š|z < ž
hu | o < ö|u < ü
ru | е < ё
"""

Key = tuple[tuple[str, int], ...]


@cache
def _own_letters(language: str) -> dict[str, tuple[str, int]]:
    rows = (line.partition(" | ") for line in _OWN.strip().splitlines())
    chains = next((chains for tags, _, chains in rows if language in tags.split()), "")
    return {
        letter: (first, at)
        for first, *behind in (chain.split(" < ") for chain in chains.split("|") if chain)
        for at, letter in enumerate(behind, 1)
    }


def list_key(name: str, language: str) -> tuple[Key, str]:
    """What a name is sorted by in a list of that language (a tag: `et`, `en-NZ`); names alike to the letter come by
    code point."""
    tag = language.partition("-")[0].lower()
    told = unicodedata.normalize("NFC", name).casefold()
    return tuple(place for letter in told for place in _places(letter, tag)), name


@cache
def _places(letter: str, language: str) -> Key:
    own = _own_letters(language)
    return (own[letter],) if letter in own else tuple(own.get(plain, (plain, 0)) for plain in fold(letter))

"""Names in what nobody says aloud: file names, tags, addresses (`scan_gpatterson02.jpg`, `b.hargreaves@example.net`).

Rule kept: an address is somebody's, unless words of every day alone stand before the sign `@` (`info`, `old.photos`). A
word of a file name or a tag that no dictionary has is a name where it is an initial with a family name behind it, or a
given name with a family name or a capital behind it.
"""

import re
from collections.abc import Iterator

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text.borne_names import families
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, languages_with
from boxlore.core.people.names_in_text.ordinary_words import is_english
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary
from boxlore.core.statements import fold

_ADDRESS = re.compile(r"([\w.+'-]+)@[\w-]+(?:\.[\w-]+)+")
ENDINGS_OF_FILES = frozenset("jpg jpeg png tif tiff webp gif bmp heic avif pdf wav flac".split())
_HANDLE = re.compile(rf"(?i)_|[#@]|\d{{3}}|\.(?:{'|'.join(sorted(ENDINGS_OF_FILES))})\b")
"""What a text has that is no sentence."""
_WORD = re.compile(r"[^\W\d_]{6,}")
_LETTERS = re.compile(r"[^\W\d_]+")
_SHORTEST_GIVEN, _SHORTEST_FAMILY = 4, 5
_OFFICES = frozenset("info admin webmaster archiv archives enquiries arhiiv kontakt muuseum museo".split())


def names_in_handles(words: str) -> Iterator[tuple[int, int]]:
    """(start, end) of each."""
    if _HANDLE.search(words) is None:
        return
    for address in _ADDRESS.finditer(words):
        if not all(map(_is_of_an_office, _LETTERS.findall(fold(address[1])))):
            yield address.span()
    for word in _WORD.finditer(words):
        if _is_run_together(word[0], fold(word[0])):
            yield word.span()


def _is_of_an_office(folded: str) -> bool:
    is_word = is_english(folded) or is_ordinary(folded) or bool(languages_with(folded, ("en",)))
    return folded in _OFFICES or (is_word and folded not in CALLED)


def _is_run_together(spelled: str, folded: str) -> bool:
    if folded in CALLED or folded in families() or is_ordinary(folded) or is_known_anywhere(folded):
        return False
    if len(folded) > _SHORTEST_FAMILY and folded[1:] in families():
        return True
    ends = range(_SHORTEST_GIVEN, len(folded))
    return any(
        folded[:end] in CALLED and (spelled[end].isupper() or folded[end:] in families())
        for end in ends
        if end < len(spelled)
    )

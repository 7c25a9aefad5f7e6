"""How the formats that people and programs write escape the letters of a text.

A strike looks for words in files that it does not open, so each way to write them is a spelling to look for. Each row
is one writer's whole way: a file is written by one of them, and none mixes two.
"""

import json
from collections.abc import Callable, Iterator
from html.entities import codepoint2name
from urllib.parse import quote, quote_plus
from xml.sax.saxutils import escape

_QUOTE = {'"': "&quot;"}
_APOSTROPHES = ("&apos;", "&#39;", "&#x27;", "&#039;")


def escaped(text: str) -> Iterator[str]:
    """The text in every other spelling of the formats below, those that differ from it."""
    for write in _WRITERS:
        if (spelled := write(text)) != text:
            yield spelled


def _numbered(text: str) -> str:
    """Numeric references in decimal (XML 1.0, 4.1)."""
    return text.encode("ascii", "xmlcharrefreplace").decode()


def _in_hexadecimal(text: str) -> str:
    return "".join(letter if letter.isascii() else f"&#x{ord(letter):x};" for letter in text)


def _named(text: str) -> str:
    """The names of HTML where it has one (HTML, 13.5), numbers else."""
    named = {letter for letter in text if not letter.isascii() and ord(letter) in codepoint2name}
    known = {letter: f"&{codepoint2name[ord(letter)]};" for letter in named}
    return _numbered("".join(known.get(letter, letter) for letter in text))


def _triples(text: str) -> str:
    """A literal of N-Triples in ASCII: `\\u` and four digits, `\\U` and eight (RDF 1.1 N-Triples, 2.4)."""
    line = _backslashed(text)
    return "".join(
        letter if letter.isascii() else f"\\u{ord(letter):04X}" if ord(letter) < 0x10000 else f"\\U{ord(letter):08X}"
        for letter in line
    )


def _backslashed(text: str) -> str:
    """As N-Triples, Turtle, TOML and JSON in UTF-8 write it."""
    return json.dumps(text, ensure_ascii=False)[1:-1]


def _in_script(text: str) -> str:
    """JSON inside a page, where `<`, `>` and `&` would be read as HTML."""
    line = _backslashed(text)
    return line.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")


def _before_a_tag(text: str) -> str:
    return _backslashed(text).replace("<", "\\u003c")


_MARKUP: tuple[Callable[[str], str], ...] = (
    escape,
    lambda text: escape(text, _QUOTE),
    *((lambda text, sign=sign: escape(text, {**_QUOTE, "'": sign})) for sign in _APOSTROPHES),
    *((lambda text, sign=sign: escape(text, {'"': "&#34;", "'": sign})) for sign in _APOSTROPHES),
)
"""HTML and XML: a text, an attribute, and both as template languages write them."""

_WRITERS: tuple[Callable[[str], str], ...] = (
    *_MARKUP,
    *(
        (lambda text, write=write, rest=rest: rest(write(text)))
        for write in _MARKUP
        for rest in (_numbered, _in_hexadecimal, _named)
    ),
    _backslashed,
    _triples,
    _in_script,
    _before_a_tag,
    lambda text: json.dumps(text)[1:-1],
    lambda text: text.replace('"', '""'),
    lambda text: text.replace("'", "''"),
    lambda text: text.replace("(", "\\(").replace(")", "\\)"),
    lambda text: quote(text, safe=""),
    quote,
    quote_plus,
    lambda text: text.replace(" ", "%20"),
)
"""Besides markup: JSON, linked data, scripts, tables (RFC 4180, 2.7), SQL, strings of a PDF (ISO 32000-1, 7.3.4.2), and
addresses (RFC 3986, 2.1) whole, in part, of a form, and with blanks alone."""

"""Words made safe for XML and N-Triples: what each format has no place for is left out, the rest is escaped.

XML 1.0 (fifth edition) 2.2 and 2.4; RDF 1.1 N-Triples 2.4 and its grammar (STRING_LITERAL_QUOTE, IRIREF).
"""

import re

_NOT_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_MARKUP = re.compile("[&<>\r]")
_ENTITIES = {"&": "&amp;", "<": "&lt;", ">": "&gt;", "\r": "&#13;"}
_HALF = re.compile("[\ud800-\udfff]")
_NOT_IRI = re.compile('[\x00-\x20<>"{}|^`\\\\\ud800-\udfff]')


def clean(words: str) -> str:
    """Words without the characters that XML 1.0 (2.2) has no place for."""
    return words if words.isprintable() else _NOT_XML.sub("", words)


def xml_text(words: str) -> str:
    """Words as the text of an XML element."""
    if not words.isprintable():
        words = _NOT_XML.sub("", words)
    return _MARKUP.sub(lambda found: _ENTITIES[found[0]], words) if _MARKUP.search(words) else words


def xml_attribute(words: str) -> str:
    """Words as an attribute's value between double quotes."""
    return xml_text(words).replace('"', "&quot;").replace("\n", "&#10;").replace("\t", "&#9;")


def literal(words: str) -> str:
    """Words as an N-Triples string in its quotes; half a surrogate pair, which UTF-8 has no place for, is left out."""
    if not words.isprintable():
        words = _HALF.sub("", words).replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r")
    elif "\\" in words:
        words = words.replace("\\", "\\\\")
    if '"' in words:
        words = words.replace('"', '\\"')
    return f'"{words}"'


def iri(words: str) -> str:
    """An IRI in its angle brackets; letters that it may not hold are percent-encoded."""
    if _NOT_IRI.search(words):
        words = _NOT_IRI.sub(lambda found: "".join(f"%{one:02X}" for one in found[0].encode("utf-8", "replace")), words)
    return f"<{words}>"

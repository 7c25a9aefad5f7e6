"""Words made safe for XML and N-Triples: characters that the format does not allow are left out, others escaped.

XML 1.0 (fifth edition) 2.2 and 2.4; RDF 1.1 N-Triples 2.4 and its grammar (STRING_LITERAL_QUOTE, IRIREF).
"""

import re

_NOT_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_MARKUP = re.compile("[&<>\r]")
_ENTITIES = {"&": "&amp;", "<": "&lt;", ">": "&gt;", "\r": "&#13;"}
_HALF = re.compile("[\ud800-\udfff]")
_NOT_IRI = re.compile('[\x00-\x20<>"{}|^`\\\\\ud800-\udfff]')


def clean(words: str) -> str:
    """Words without the characters that XML 1.0 does not allow (2.2)."""
    return words if words.isprintable() else _NOT_XML.sub("", words)


def xml_text(words: str) -> str:
    """Words as the text of an XML element."""
    if not words.isprintable():
        words = _NOT_XML.sub("", words)
    return _MARKUP.sub(lambda match: _ENTITIES[match[0]], words) if _MARKUP.search(words) else words


def literal(words: str) -> str:
    """Words as an N-Triples string in its quotes. Half a surrogate pair is left out, as UTF-8 cannot hold it."""
    if not words.isprintable():
        words = _HALF.sub("", words).replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r")
    elif "\\" in words:
        words = words.replace("\\", "\\\\")
    if '"' in words:
        words = words.replace('"', '\\"')
    return f'"{words}"'


def iri(words: str) -> str:
    """An IRI in its angle brackets; characters that it may not hold are percent-encoded."""
    if _NOT_IRI.search(words):
        words = _NOT_IRI.sub(_percent_encoded, words)
    return f"<{words}>"


def _percent_encoded(match: re.Match[str]) -> str:
    return "".join(f"%{byte:02X}" for byte in match[0].encode("utf-8", "replace"))

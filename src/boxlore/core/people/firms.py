"""Whether words name a photographer's studio or another firm: `Atelier Lind`, `Lind & Sons`, `Pell & Co.`, `Berg GmbH`.

A firm is nobody: it has no given name, and it is listed as it calls itself. *Names of Persons* is of persons alone;
AACR2, 24.1, enters a corporate body under the name by which it is known (both from memory).
"""

import re

from boxlore.core.statements import fold


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


_BUSINESS = _words(
    "atelier atelje ateljee studio studios studija studijas studijo estudio kunstanstalt lichtbildanstalt "
    "lichtbildwerkstatt gallery galerie paevapildistus ателье студия "
    "portraits portraiture portretid portretter portratt portrats portretten ritratti retratos portrety "
    "портреты pictures views lichtbilder lichtbildner"
)
"""Words that each name a business of pictures, folded."""

_OF_PICTURES = ("foto", "photo", "valokuv", "ateljee", "фото")
"""How words of such a business begin in any language: `Foto-Studio`, `Photographie`, `Valokuvaamo`."""

_WHO_TAKES_PICTURES = re.compile(
    r"photographe?r?s?|fotograa?f[a-z]{0,3}|valokuvaaja|фотограф"
    r"|photographed|fotografier[a-z]*|fotografeeri[a-z]*|valokuvasi|фотографир[а-я]*"
)
"""A trade before a name, or what was done, and no firm: `Fotograf Lind`, `Фотографировал Лебедев`."""

_FORMS = _words(
    "ltd limited co company bros inc incorporated corp corporation plc llc pty gmbh cie sarl srl ohg spolka"
)
"""Legal forms behind a name, folded and without points, however they are written."""

_FORMS_AS_WRITTEN = _words("AG KG AB AS A/S ApS Oy OY OÜ TÜ SA S.A. BV NV N.V. B.V. SIA UAB ООО")
"""Legal forms that are a firm's only as they are written here, for folded they may be other words."""

_HEIRS = _words(
    "son sons brother brothers sohn sohne fils hijo hijos figlio figli filho filhos zoon zonen sonner soner pojad "
    "pojat poeg сын сыновья syn synowie synove deli sunus filles daughters"
)
"""Who carries a firm on: `Lind & Sons`."""


def is_firm(words: str) -> bool:
    """Whether the words are the name of a firm, by a word of its business, its legal form, or its heirs."""
    pieces = words.replace(",", " ").split()
    name, _, town = words.partition(",")
    if town and is_firm(name):  # `Lind & Sons, Dunedin`
        return True
    if len(pieces) < 2:
        return False
    if any(_is_business(part) for piece in pieces for part in _plain(piece).split("-")):
        return True
    joins, last = pieces[-2], pieces[-1]
    carried_on = len(pieces) > 2 and _plain(last) in _HEIRS and (joins == "&" or (joins.islower() and last.istitle()))
    return carried_on or _plain(last) in _FORMS or last in _FORMS_AS_WRITTEN


def _plain(piece: str) -> str:
    return fold(piece).replace(".", "")


def _is_business(word: str) -> bool:
    return word in _BUSINESS or (word.startswith(_OF_PICTURES) and not _WHO_TAKES_PICTURES.fullmatch(word))

"""The form under which a name stands in a list, by its tradition.

*Names of Persons* (IFLA, 4th edition, 1996) and AACR2, chapter 22, from memory; each rule is a row of the tests:

- The family name goes first, then a comma, then the given names, whatever the order of the tradition (22.4B2).
- Particles written small go behind the given names (`Pahlen, Peter von der`), but articles and contractions stand
  before the family name (`La Fontaine, Jean de`; 22.5D1). Written large they are a part of the name (`Van Buren`).
- Of two Spanish family names the first leads, of two Portuguese ones the last (22.5C).
- Icelandic and other names of a given name and a father's are not turned about (22.9B), Icelandic ones with a family
  name neither (National and University Library of Iceland, *Íslensk nafnahefð*).
- The Arabic article goes behind (`Masri, Ahmad al-`).
- A title or kin word stands only where there is no given name (`Pell, Mrs. Thomas`; `Mavis, Aunt`; 22.15), and behind
  a name in religion (`Mary Loyola, Mother`; 22.16D).
"""

from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.words_table import ARTICLES, is_one_family_name
from boxlore.core.statements import fold

_ALWAYS_OF_THE_FAMILY = ("neto", "filho", "sobrinho")
_OF_THE_FAMILY = (*_ALWAYS_OF_THE_FAMILY, "junior")
"""Portuguese words of kinship that go with the family name; all but `junior` are Portuguese alone."""

_ARTICLES_OF_FRANCE = ("la ", "le ", "les ", "du ", "des ")
"""They stand before the family name, written large (22.5D1, French)."""

_OF_ENGLAND = frozenset(("sir", "dame", "lord", "lady"))
"""Titles of English names, which are listed by the particle (22.5D1, English)."""


def sort_form(parts: NameParts, name: str) -> str:
    """How `name`, which was taken apart into `parts`, is listed; the name as it is where nothing leads it."""
    if parts.religious and not parts.family:
        return _joined(", ", parts.religious, parts.title, parts.suffix)
    family = parts.family or parts.married_as or parts.born_as
    if parts.tradition is Tradition.ICELANDIC and parts.given and parts.patronymic:
        return _joined(", ", _joined(" ", parts.given, parts.patronymic, parts.family), parts.suffix)
    if family:
        return _by_family(parts, family)
    if parts.given:
        title = "" if parts.patronymic else parts.kin or parts.title
        if parts.suffix and set(parts.suffix) <= set("IVX"):  # `George V, King` (22.17A)
            return _joined(", ", f"{parts.given} {parts.suffix}", title)
        return _joined(", ", _joined(" ", parts.given, parts.patronymic), title, parts.suffix)
    return name


def _by_family(parts: NameParts, family: str) -> str:
    leading, behind = family, ""
    if parts.particle and not _OF_ENGLAND.isdisjoint(fold(parts.title).split()):  # `De la Mare, Sir Walter` (22.5D1)
        leading = family[:1].upper() + family[1:]
        return _joined(", ", leading, _joined(" ", parts.given or parts.title, parts.patronymic), parts.suffix)
    if parts.tradition is Tradition.PORTUGUESE:
        *first, leading = family.split()
        of_two = first and (fold(leading) in _OF_THE_FAMILY or is_one_family_name(first[-1], leading))
        if of_two:  # `Carvalho Filho, José`, `Castelo Branco, Camilo`
            leading = f"{first.pop()} {leading}"
        called = _joined(" ", parts.given or parts.title or parts.kin, *first)
        if fold(parts.suffix) in _OF_THE_FAMILY:
            return _joined(", ", f"{leading} {parts.suffix}", called)
        return _joined(", ", leading, called, parts.suffix)
    if parts.particle and family.startswith(f"{parts.particle} "):
        leading, behind = family[len(parts.particle) + 1 :], parts.particle
    elif parts.particle and family.startswith(parts.particle):  # d'Estaing
        leading, behind = family[len(parts.particle) :], parts.particle
    if family.lower().startswith(ARTICLES):
        leading, behind = family.split("-", 1)[1], f"{family.split('-', 1)[0]}-"
    if leading.startswith(_ARTICLES_OF_FRANCE):
        leading = leading[:1].upper() + leading[1:]
    of_honour = parts.nickname if parts.tradition is Tradition.ARABIC else ""
    called = parts.given or parts.religious or parts.title or parts.kin or of_honour
    called = _joined(" ", called, parts.patronymic, behind)
    if fold(parts.suffix) in _ALWAYS_OF_THE_FAMILY:  # `Lopes Neto, António` (22.5C8)
        return _joined(", ", f"{leading} {parts.suffix}", called)
    return _joined(", ", leading, called, parts.suffix)


def _joined(between: str, *pieces: str) -> str:
    return between.join(piece for piece in pieces if piece)

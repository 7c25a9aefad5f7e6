"""Tree files: the people and families of GEDCOM 5.5.1 and FamilySearch GEDCOM 7.0, and a count of what is not read.

Read are HEAD.GEDC.VERS; INDI with NAME (GIVN SPFX SURN NICK NPFX NSFX TYPE TRAN), SEX, BIRT, DEAT, BURI (DATE, PLAC,
RESN), FAMC (PEDI, STAT), ADOP (FAMC), FAMS, NOTE, RESN, UID, EXID, REFN; FAM with HUSB, WIFE, CHIL, RESN, MARR (DATE,
PLAC). An event says that it happened by a date, a place or a payload (7.0, 3.3: Events); without them it asserts
nothing. It, and every other structure, is counted under its path (`INDI.OCCU`), with the line where it first stands, so
that the keeper hears of all that was not taken.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import NamedTuple

from boxlore.formats.gedcom_lines import Fault, Node, pointed, records, unescaped

SEXES = {"M": "male", "F": "female", "X": "other"}
"""SEX (7.0, enumset-SEX) -> our word. U (not known) gives no fact."""

EVENTS = {"BIRT": ("born", "born_at"), "DEAT": ("died", "died_at"), "BURI": ("buried", "buried_at")}
"""Event -> (our field for its date, our field for its place)."""

RESTRICTED = {"CONFIDENTIAL": "keeper", "PRIVACY": "family"}
"""RESN (7.0, enumset-RESN) -> our audience. LOCKED is not among them: it forbids editing, not reading."""


class Fact(NamedTuple):
    """One thing the file says of a person: our field, the words, the line, and the audience by its own RESN."""

    field: str
    words: str
    line: int
    audience: str = ""


@dataclass(slots=True)
class Individual:
    """One INDI. `links` holds (family, PEDI) of each FAMC, `doubts` the STAT of the link to a family (`DISPROVEN`).

    `audience` comes from RESN and is empty without it.

    `ids` are `uid:…`, `exid:…` and `refn:…`, with the TYPE before the value where there is one.
    """

    xref: str
    line: int
    facts: list[Fact] = field(default_factory=list)
    ids: list[str] = field(default_factory=list)
    links: list[tuple[str, str]] = field(default_factory=list)
    doubts: dict[str, str] = field(default_factory=dict)
    audience: str = ""

    def words(self, name: str) -> str:
        """The words of the first fact of a field, or an empty string."""
        return next((fact.words for fact in self.facts if fact.field == name), "")


@dataclass(slots=True)
class Family:
    """One FAM. `partners` are its HUSB and WIFE as (cross-reference, father or mother).

    `marriages` holds (date, place) of each MARR; either may be empty.
    """

    xref: str
    line: int
    partners: list[tuple[str, str]] = field(default_factory=list)
    children: list[str] = field(default_factory=list)
    marriages: list[tuple[str, str]] = field(default_factory=list)
    audience: str = ""


@dataclass(slots=True)
class UnreadStructure:
    """All structures of one path that are not read: how many, the line of the first, and the text of the first."""

    path: str
    count: int
    line: int
    example: str


@dataclass(slots=True)
class Tree:
    """What a file says. `version` is HEAD.GEDC.VERS; `begun` and `ended` say whether it has HEAD and TRLR.

    `unread` is by path, individuals and families by their cross-reference.
    """

    version: str = ""
    individuals: dict[str, Individual] = field(default_factory=dict)
    families: dict[str, Family] = field(default_factory=dict)
    unread: dict[str, UnreadStructure] = field(default_factory=dict)
    faults: list[Fault] = field(default_factory=list)
    begun: bool = False
    ended: bool = False

    @property
    def seven(self) -> bool:
        """Whether the file is one of GEDCOM 7."""
        return self.version.startswith("7")


_EOL = re.compile(r"\r\n?|\n\r?")


def split_lines(text: str) -> Iterator[str]:
    """The lines, split at CR, LF, CR LF or LF CR and nowhere else (7.0, 1.3: EOL); lazily, for a file may be large."""
    at = 0
    for match in _EOL.finditer(text):
        yield text[at : match.start()]
        at = match.end()
    yield text[at:]


def read_tree(lines: Iterable[str]) -> Tree:
    """Read a whole file; never raises. What is wrong is listed in `faults`, what is not read in `unread`.

        file   = HEAD *record TRLR                        (7.0, chapter 3, Dataset)
        record = INDI / FAM / NOTE / SNOTE / unread       (5.5.1 has NOTE, 7.0 has SNOTE)

    A pointer to a note can stand before the note itself, so notes are given to their people at the end.
    """
    tree = Tree()
    notes: dict[str, str] = {}
    note_pointers: list[tuple[Individual, str, int]] = []
    for record in records(lines, tree.faults):
        match record.tag:
            case "HEAD":
                tree.begun = True
                _head(tree, record)
            case "INDI":
                _individual(tree, record, note_pointers)
            case "FAM":
                _family(tree, record)
            case "NOTE" | "SNOTE":
                notes[record.xref] = unescaped(record.value, seven=tree.seven)
                for child in record.children:
                    _count_unread(tree, record.tag, child)
            case "TRLR":
                tree.ended = True
            case _:
                _count_unread(tree, "", record)
    for xref in notes.keys() - {xref for _, xref, _ in note_pointers}:
        tree.unread.setdefault("NOTE", UnreadStructure("NOTE", 0, 0, " ".join(notes[xref].split())[:80])).count += 1
    for person, xref, line in note_pointers:
        if words := notes.get(xref, "").strip():
            person.facts.append(Fact("note", words, line))
        else:
            tree.faults.append(Fault(line, f"points to a note @{xref}@ that is not there"))
    return tree


def _head(tree: Tree, record: Node) -> None:
    for child in record.children:
        if child.tag == "GEDC":
            tree.version = child.text("VERS")
        elif child.tag not in ("CHAR", "SOUR", "DATE", "FILE", "LANG", "SUBM", "DEST"):
            _count_unread(tree, "HEAD", child)


def _count_unread(tree: Tree, path: str, node: Node) -> None:
    """Count a structure, and all inside it, that is not read; `path` is that of the structure around it."""
    path = f"{path}.{node.tag}" if path else node.tag
    unread = tree.unread.get(path)
    if unread is None:
        tree.unread[path] = UnreadStructure(path, node.lines, node.number, " ".join(node.value.split())[:80])
    else:
        unread.count += node.lines


def _individual(tree: Tree, record: Node, note_pointers: list[tuple[Individual, str, int]]) -> None:
    """Read an INDI (7.0, INDIVIDUAL_RECORD); its pointers to notes are added to `note_pointers` for later."""
    person = Individual(record.xref or f"line{record.number}", record.number)
    if person.xref in tree.individuals:
        tree.faults.append(
            Fault(record.number, f"@{person.xref}@ is given twice; the second is taken as another person")
        )
        person.xref = f"{person.xref}#{record.number}"
    tree.individuals[person.xref] = person
    for child in record.children:
        value = child.value.strip()
        if child.tag == "NAME":
            _name(tree, person, child)
        elif child.tag in EVENTS:
            _event(tree, person, child)
        elif child.tag == "SEX":
            if sex := SEXES.get(value[:1].upper()):
                person.facts.append(Fact("sex", sex, child.number))
            elif value[:1].upper() not in ("U", ""):
                _count_unread(tree, "INDI", child)
        elif child.tag == "FAMC" and pointed(value):
            person.links.append((pointed(value), child.text("PEDI").upper()))
            person.doubts[pointed(value)] = child.text("STAT").upper()
            _count_unread_children(tree, "INDI.FAMC", child, ("PEDI", "STAT"))
        elif child.tag == "ADOP" and pointed(child.text("FAMC")):
            person.links.append((pointed(child.text("FAMC")), "ADOPTED"))
            _count_unread_children(tree, "INDI.ADOP", child, ("FAMC",))
        elif child.tag == "FAMS":
            _count_unread_children(tree, "INDI.FAMS", child, ())
        elif child.tag in ("NOTE", "SNOTE"):
            if xref := pointed(value):
                note_pointers.append((person, xref, child.number))
            elif value:
                person.facts.append(Fact("note", unescaped(value, seven=tree.seven), child.number))
            _count_unread_children(tree, f"INDI.{child.tag}", child, ())
        elif child.tag == "RESN":
            person.audience = stricter(person.audience, _restricted(value))
            if not _restricted(value):
                _count_unread(tree, "INDI", child)
        elif child.tag in ("UID", "EXID", "REFN") and value:
            kind = child.text("TYPE")
            person.ids.append(f"{child.tag.lower()}:{kind + ' ' if kind else ''}{value}")
            _count_unread_children(tree, f"INDI.{child.tag}", child, ("TYPE",))
        else:
            _count_unread(tree, "INDI", child)


def _restricted(value: str) -> str:
    """The audience that a RESN comes to, a list of which all apply (7.0, enumset-RESN); empty for none."""
    audience = ""
    for part in value.upper().split(","):
        audience = stricter(audience, RESTRICTED.get(part.strip(), ""))
    return audience


def stricter(audience: str, other_audience: str) -> str:
    """The one of two audiences (keeper, family, or empty) that fewer people are."""
    return min(audience, other_audience, key=("keeper", "family", "").index)


def _count_unread_children(tree: Tree, path: str, node: Node, understood: tuple[str, ...]) -> None:
    """Count the substructures whose tag is not among those understood."""
    for child in node.children:
        if child.tag not in understood:
            _count_unread(tree, path, child)


_NAME_PARTS = {"NPFX": "honorific", "NICK": "nickname", "NSFX": "suffix"}
_BORN = ("BIRTH", "MAIDEN")
"""Types of a name that was given at birth (7.0 and 5.5.1, NAME.TYPE)."""


def _name(tree: Tree, person: Individual, node: Node) -> None:
    """Read a NAME.

        PersonalName = nameStr / [nameStr] "/" [nameStr] "/" [nameStr]     (7.0, PersonalName)

    The family name stands between the slashes. GIVN and SURN, where they stand below the name, are used instead of
    its parts. A name of TYPE MARRIED gives `married_as`; one of TYPE BIRTH or MAIDEN behind another name gives
    `born_as`. Where their given names are others than those told before, the name is kept whole too. The first of the
    other names gives `given` and `family`, each further one `name`.
    """
    value = unescaped(node.value, seven=tree.seven)
    before, _, from_surname = value.partition("/")
    surname, _, after = from_surname.partition("/")
    kind = node.text("TYPE").upper()
    given = node.text("GIVN") or " ".join(before.split())
    family = " ".join(f"{node.text('SPFX')} {node.text('SURN')}".split() if node.text("SURN") else surname.split())
    add_fact = person.facts.append
    if kind == "MARRIED" or (kind in _BORN and person.words("given")):
        if family:
            add_fact(Fact("married_as" if kind == "MARRIED" else "born_as", family, node.number))
        if given and not person.words("given"):
            add_fact(Fact("given", given, node.number))
        elif not set(given.split()) <= set(person.words("given").split()):
            add_fact(Fact("name", f"{given} {family}".strip(), node.number))
    elif person.words("given") or person.words("family") or not (given or family):
        if full_name := " ".join(value.replace("/", " ").split()):
            add_fact(Fact("name", full_name, node.number))
    else:
        for name, words in (("given", given), ("family", family)):
            if words:
                add_fact(Fact(name, words, node.number))
        if after.strip():
            add_fact(Fact("name", " ".join(value.replace("/", " ").split()), node.number))
    for child in node.children:
        words = child.value.strip()
        if child.tag in _NAME_PARTS and words:
            add_fact(Fact(_NAME_PARTS[child.tag], words, child.number))
        elif child.tag in ("TRAN", "ROMN", "FONE") and words:
            add_fact(Fact("name", " ".join(words.replace("/", " ").split()), child.number))
            _count_unread_children(tree, f"INDI.NAME.{child.tag}", child, ("LANG", "TYPE", "GIVN", "SURN"))
        elif child.tag not in ("TYPE", "GIVN", "SURN", "SPFX"):
            _count_unread(tree, "INDI.NAME", child)


def _event(tree: Tree, person: Individual, node: Node) -> None:
    """Read a BIRT, DEAT or BURI. DEAT and BURI with a payload alone (`DEAT Y`) say that the person is not living; an
    event without a date, a place and a payload asserts nothing, and is counted."""
    date_field, place_field = EVENTS[node.tag]
    path = f"INDI.{node.tag}"
    date_words, place_words = _date(node), _place(node)
    audience = _restricted(node.text("RESN"))
    if date_words:
        person.facts.append(Fact(date_field, date_words, node.number, audience))
    if place_words:
        person.facts.append(Fact(place_field, place_words, node.number, audience))
    if not date_words and not place_words and not node.value.strip():
        _count_unread(tree, "INDI", node)
        return
    if node.tag != "BIRT" and not date_words and not place_words and not person.words("living"):
        person.facts.append(Fact("living", "no", node.number, audience))
    for child in node.children:
        if child.tag == "DATE":
            _count_unread_children(tree, f"{path}.DATE", child, ("PHRASE",))
        elif child.tag == "PLAC":
            _count_unread_children(tree, f"{path}.PLAC", child, ())
        elif child.tag != "RESN" or not audience:
            _count_unread(tree, path, child)


def _date(node: Node) -> str:
    """The words of a DATE, with its PHRASE (7.0) behind them in brackets, as 5.5.1 writes it; empty without a DATE."""
    date = node.first("DATE")
    if date is None:
        return ""
    phrase = date.text("PHRASE")
    return f"{date.value.strip()} ({phrase})".strip() if phrase else date.value.strip()


def _place(node: Node) -> str:
    """The words of a PLAC without its empty levels: `Reval, , Estonia` gives `Reval, Estonia`."""
    parts = [part.strip() for part in node.text("PLAC").split(",")]
    return ", ".join(part for part in parts if part)


def _family(tree: Tree, record: Node) -> None:
    """Read a FAM (7.0, FAMILY_RECORD)."""
    family = Family(record.xref or f"line{record.number}", record.number)
    if family.xref in tree.families:
        tree.faults.append(
            Fault(record.number, f"@{family.xref}@ is given twice; the second is taken as another family")
        )
        family.xref = f"{family.xref}#{record.number}"
    tree.families[family.xref] = family
    for child in record.children:
        xref = pointed(child.value)
        if child.tag in ("HUSB", "WIFE", "CHIL"):
            if xref and child.tag == "CHIL":
                family.children.append(xref)
            elif xref:
                family.partners.append((xref, "father" if child.tag == "HUSB" else "mother"))
            _count_unread_children(tree, f"FAM.{child.tag}", child, ())
        elif child.tag == "RESN" and _restricted(child.value):
            family.audience = stricter(family.audience, _restricted(child.value))
        elif child.tag == "MARR" and (_date(child) or _place(child) or child.value.strip()):
            family.marriages.append((_date(child), _place(child)))
            _count_unread_children(tree, "FAM.MARR", child, ("DATE", "PLAC"))
        else:
            _count_unread(tree, "FAM", child)

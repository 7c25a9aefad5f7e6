"""Tree files: the people and families of GEDCOM 5.5.1 and FamilySearch GEDCOM 7.0, and a count of what is not read.

Read are HEAD.GEDC.VERS; INDI with NAME (GIVN SURN NICK NPFX TYPE TRAN), SEX, BIRT, DEAT, BURI (DATE, PLAC), FAMC
(PEDI), FAMS, NOTE, RESN, UID, EXID, REFN; FAM with HUSB, WIFE, CHIL, MARR (DATE, PLAC). Every other structure is
counted under its path (`INDI.OCCU`), with the line where it first stands, so that the keeper hears of all that was
not taken.
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

BLOOD = ("", "BIRTH")
"""Values of PEDI that mean a parent by blood (7.0, enumset-PEDI); the others are adopted, foster and sealing."""

RESTRICTED = {"CONFIDENTIAL": "keeper", "PRIVACY": "family"}
"""RESN (7.0, enumset-RESN) -> our audience. LOCKED is not among them: it forbids editing, not reading."""


class Fact(NamedTuple):
    """One thing the file says of a person: our field, the words, the line in the file."""

    field: str
    words: str
    line: int


@dataclass(slots=True)
class Individual:
    """One INDI. `links` holds (family, PEDI) of each FAMC; `audience` comes from RESN and is empty without it.

    `ids` are `uid:…`, `exid:…` and `refn:…`, with the TYPE before the value where there is one.
    """

    xref: str
    line: int
    facts: list[Fact] = field(default_factory=list)
    ids: list[str] = field(default_factory=list)
    links: list[tuple[str, str]] = field(default_factory=list)
    audience: str = ""

    def words(self, name: str) -> str:
        """The words of the first fact of a field, or an empty string."""
        return next((fact.words for fact in self.facts if fact.field == name), "")


@dataclass(slots=True)
class Family:
    """One FAM. `marriages` holds (date, place) of each MARR; either may be empty."""

    xref: str
    line: int
    husband: str = ""
    wife: str = ""
    children: list[str] = field(default_factory=list)
    marriages: list[tuple[str, str]] = field(default_factory=list)


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
            _count_unread_children(tree, "INDI.FAMC", child, ("PEDI",))
        elif child.tag == "FAMS":
            _count_unread_children(tree, "INDI.FAMS", child, ())
        elif child.tag in ("NOTE", "SNOTE"):
            if xref := pointed(value):
                note_pointers.append((person, xref, child.number))
            elif value:
                person.facts.append(Fact("note", unescaped(value, seven=tree.seven), child.number))
            _count_unread_children(tree, f"INDI.{child.tag}", child, ())
        elif child.tag == "RESN":
            audiences = [RESTRICTED[part.strip()] for part in value.upper().split(",") if part.strip() in RESTRICTED]
            person.audience = min(audiences, key=("keeper", "family").index) if audiences else person.audience
            if not audiences:
                _count_unread(tree, "INDI", child)
        elif child.tag in ("UID", "EXID", "REFN") and value:
            kind = child.text("TYPE")
            person.ids.append(f"{child.tag.lower()}:{kind + ' ' if kind else ''}{value}")
            _count_unread_children(tree, f"INDI.{child.tag}", child, ("TYPE",))
        else:
            _count_unread(tree, "INDI", child)


def _count_unread_children(tree: Tree, path: str, node: Node, understood: tuple[str, ...]) -> None:
    """Count the substructures whose tag is not among those understood."""
    for child in node.children:
        if child.tag not in understood:
            _count_unread(tree, path, child)


_NAME_PARTS = {"NPFX": "honorific", "NICK": "nickname"}
_BORN = ("BIRTH", "MAIDEN")
"""Types of a name that was given at birth (7.0 and 5.5.1, NAME.TYPE)."""


def _name(tree: Tree, person: Individual, node: Node) -> None:
    """Read a NAME.

        PersonalName = nameStr / [nameStr] "/" [nameStr] "/" [nameStr]     (7.0, PersonalName)

    The family name stands between the slashes. GIVN and SURN, where they stand below the name, are used instead of
    its parts. A name of TYPE MARRIED gives `married_as`; one of TYPE BIRTH or MAIDEN behind another name gives
    `born_as`. The first of the other names gives `given` and `family`, each further one `name`.
    """
    value = unescaped(node.value, seven=tree.seven)
    before, _, from_surname = value.partition("/")
    surname, _, after = from_surname.partition("/")
    kind = node.text("TYPE").upper()
    given = node.text("GIVN") or " ".join(before.split())
    family = " ".join((node.text("SURN") or surname).split())
    add_fact = person.facts.append
    if kind == "MARRIED":
        if family:
            add_fact(Fact("married_as", family, node.number))
    elif kind in _BORN and person.words("given"):
        if family:
            add_fact(Fact("born_as", family, node.number))
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
        elif child.tag not in ("TYPE", "GIVN", "SURN"):
            _count_unread(tree, "INDI.NAME", child)


def _event(tree: Tree, person: Individual, node: Node) -> None:
    """Read a BIRT, DEAT or BURI. A DEAT without date and place still says that the person is not living."""
    date_field, place_field = EVENTS[node.tag]
    path = f"INDI.{node.tag}"
    date_words, place_words = _date(node), _place(node)
    if date_words:
        person.facts.append(Fact(date_field, date_words, node.number))
    if place_words:
        person.facts.append(Fact(place_field, place_words, node.number))
    if node.tag == "DEAT" and not date_words and not place_words and not person.words("living"):
        person.facts.append(Fact("living", "no", node.number))
    for child in node.children:
        if child.tag == "DATE":
            _count_unread_children(tree, f"{path}.DATE", child, ("PHRASE",))
        elif child.tag == "PLAC":
            _count_unread_children(tree, f"{path}.PLAC", child, ())
        else:
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
            if child.tag == "HUSB":
                family.husband = xref
            elif child.tag == "WIFE":
                family.wife = xref
            elif xref:
                family.children.append(xref)
            _count_unread_children(tree, f"FAM.{child.tag}", child, ())
        elif child.tag == "MARR":
            family.marriages.append((_date(child), _place(child)))
            _count_unread_children(tree, "FAM.MARR", child, ("DATE", "PLAC"))
        else:
            _count_unread(tree, "FAM", child)


def links(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, parent, role) for each parent by blood. The role is father or mother: by the parent's SEX, else by
    whether the parent is the HUSB or the WIFE.

    A child is linked by the family's CHIL, by its own FAMC, or by both (7.0 wants both to match; here one is enough).
    A pointer to nobody is added to `faults`.
    """
    yielded: set[tuple[str, str]] = set()
    pedigree = {
        (individual.xref, family): kind for individual in tree.individuals.values() for family, kind in individual.links
    }
    pairs = [(child, family.xref) for family in tree.families.values() for child in family.children]
    pairs += list(pedigree)
    for child, xref in pairs:
        family = tree.families.get(xref)
        if family is None or child not in tree.individuals:
            line = tree.individuals[child].line if child in tree.individuals else family.line if family else 0
            tree.faults.append(Fault(line, f"@{child}@ or @{xref}@ is pointed to and not there"))
            continue
        if pedigree.get((child, xref), "") not in BLOOD:
            continue
        for parent, role in ((family.husband, "father"), (family.wife, "mother")):
            if parent in tree.individuals and (child, parent) not in yielded and parent != child:
                yielded.add((child, parent))
                sex = tree.individuals[parent].words("sex")
                yield child, parent, {"male": "father", "female": "mother"}.get(sex, role)


def not_by_blood(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, family, kind) for each child who is adopted, fostered or sealed; kind is PEDI in small letters."""
    for individual in tree.individuals.values():
        for family, kind in individual.links:
            if kind not in BLOOD:
                yield individual.xref, family, kind.lower()

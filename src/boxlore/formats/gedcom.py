"""Tree files: people and families of GEDCOM 5.5.1 and FamilySearch GEDCOM 7.0, with all that was not understood.

Read: HEAD.GEDC.VERS; INDI with NAME (GIVN SURN NICK NPFX TYPE TRAN), SEX, BIRT, DEAT, BURI (DATE, PLAC), FAMC
(PEDI), FAMS, NOTE, RESN, UID, EXID, REFN; FAM with HUSB, WIFE, CHIL, MARR (DATE, PLAC). Every other structure is
counted under its path (`INDI.OCCU`), with the line where it first stands, so that nothing goes without a word.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import NamedTuple

from boxlore.formats.gedcom_lines import Fault, Node, pointed, records, unescaped

SEXES = {"M": "male", "F": "female", "X": "other"}
"""SEX (7.0, enumset-SEX); U says nothing."""

EVENTS = {"BIRT": ("born", "born_at"), "DEAT": ("died", "died_at"), "BURI": ("buried", "buried_at")}

BLOOD = ("", "BIRTH")
"""PEDI of a parent by blood (7.0, enumset-PEDI); the others are adopted, foster and sealing."""

RESTRICTED = {"CONFIDENTIAL": "keeper", "PRIVACY": "family"}
"""RESN (7.0, enumset-RESN) as an audience; LOCKED is about editing."""


class Fact(NamedTuple):
    """One thing the file says: our field, the words, the line."""

    field: str
    words: str
    line: int


@dataclass(slots=True)
class Individual:
    """One INDI. `links` are FAMC (family, pedigree); `audience` by RESN; `ids` identifiers for life, then REFN."""

    xref: str
    line: int
    facts: list[Fact] = field(default_factory=list)
    ids: list[str] = field(default_factory=list)
    links: list[tuple[str, str]] = field(default_factory=list)
    audience: str = ""

    def words(self, name: str) -> str:
        return next((fact.words for fact in self.facts if fact.field == name), "")


@dataclass(slots=True)
class Family:
    """One FAM; `marriages` are (date, place), either of them perhaps empty."""

    xref: str
    line: int
    husband: str = ""
    wife: str = ""
    children: list[str] = field(default_factory=list)
    marriages: list[tuple[str, str]] = field(default_factory=list)


@dataclass(slots=True)
class Left:
    """Structures of one path that were not understood: how many lines, the first line, and its text."""

    path: str
    count: int
    line: int
    example: str


@dataclass(slots=True)
class Tree:
    """What a file says. `version` is HEAD.GEDC.VERS; `ended` whether it has its TRLR."""

    version: str = ""
    individuals: dict[str, Individual] = field(default_factory=dict)
    families: dict[str, Family] = field(default_factory=dict)
    left: dict[str, Left] = field(default_factory=dict)
    faults: list[Fault] = field(default_factory=list)
    begun: bool = False
    ended: bool = False

    @property
    def seven(self) -> bool:
        return self.version.startswith("7")


_EOL = re.compile(r"\r\n?|\n\r?")


def split_lines(text: str) -> Iterator[str]:
    """Lines at CR, LF or both, and nowhere else (7.0, 1.3: EOL); one at a time, for a file may be large."""
    at = 0
    for match in _EOL.finditer(text):
        yield text[at : match.start()]
        at = match.end()
    yield text[at:]


def read_tree(lines: Iterable[str]) -> Tree:
    """Read a whole file. Any lines give a tree; what is wrong stands in `faults`, what is strange in `left`."""
    tree = Tree()
    notes: dict[str, str] = {}
    waiting: list[tuple[Individual, str, int]] = []
    for record in records(lines, tree.faults):
        match record.tag:
            case "HEAD":
                tree.begun = True
                _head(tree, record)
            case "INDI":
                _individual(tree, record, waiting)
            case "FAM":
                _family(tree, record)
            case "NOTE" | "SNOTE":
                notes[record.xref] = unescaped(record.value, seven=tree.seven)
                for child in record.children:
                    _leave(tree, record.tag, child)
            case "TRLR":
                tree.ended = True
            case _:
                _leave(tree, "", record)
    for person, xref, line in waiting:
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
            _leave(tree, "HEAD", child)


def _leave(tree: Tree, path: str, node: Node) -> None:
    path = f"{path}.{node.tag}" if path else node.tag
    known = tree.left.get(path)
    if known is None:
        tree.left[path] = Left(path, node.lines, node.number, " ".join(node.value.split())[:80])
    else:
        known.count += node.lines


def _individual(tree: Tree, record: Node, waiting: list[tuple[Individual, str, int]]) -> None:
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
                _leave(tree, "INDI", child)
        elif child.tag == "FAMC" and pointed(value):
            person.links.append((pointed(value), child.text("PEDI").upper()))
            _rest(tree, "INDI.FAMC", child, ("PEDI",))
        elif child.tag == "FAMS":
            _rest(tree, "INDI.FAMS", child, ())
        elif child.tag in ("NOTE", "SNOTE"):
            if xref := pointed(value):
                waiting.append((person, xref, child.number))
            elif value:
                person.facts.append(Fact("note", unescaped(value, seven=tree.seven), child.number))
            _rest(tree, f"INDI.{child.tag}", child, ())
        elif child.tag == "RESN":
            said = [RESTRICTED[part.strip()] for part in value.upper().split(",") if part.strip() in RESTRICTED]
            person.audience = min(said, key=("keeper", "family").index) if said else person.audience
            if not said:
                _leave(tree, "INDI", child)
        elif child.tag in ("UID", "EXID", "REFN") and value:
            kind = child.text("TYPE")
            person.ids.append(f"{child.tag.lower()}:{kind + ' ' if kind else ''}{value}")
            _rest(tree, f"INDI.{child.tag}", child, ("TYPE",))
        else:
            _leave(tree, "INDI", child)


def _rest(tree: Tree, path: str, node: Node, understood: tuple[str, ...]) -> None:
    for child in node.children:
        if child.tag not in understood:
            _leave(tree, path, child)


_NAME_PARTS = {"NPFX": "honorific", "NICK": "nickname"}
_BORN = ("BIRTH", "MAIDEN")


def _name(tree: Tree, person: Individual, node: Node) -> None:
    """NAME (7.0, PersonalName: the family name between slashes), with its parts and its type."""
    value = unescaped(node.value, seven=tree.seven)
    before, _, rest = value.partition("/")
    surname, _, after = rest.partition("/")
    kind = node.text("TYPE").upper()
    given = node.text("GIVN") or " ".join(before.split())
    family = " ".join((node.text("SURN") or surname).split())
    say = person.facts.append
    if kind == "MARRIED":
        if family:
            say(Fact("married_as", family, node.number))
    elif kind in _BORN and person.words("given"):
        if family:
            say(Fact("born_as", family, node.number))
    elif person.words("given") or person.words("family") or not (given or family):
        if whole := " ".join(value.replace("/", " ").split()):
            say(Fact("name", whole, node.number))
    else:
        for name, words in (("given", given), ("family", family)):
            if words:
                say(Fact(name, words, node.number))
        if after.strip():
            say(Fact("name", " ".join(value.replace("/", " ").split()), node.number))
    for child in node.children:
        words = child.value.strip()
        if child.tag in _NAME_PARTS and words:
            say(Fact(_NAME_PARTS[child.tag], words, child.number))
        elif child.tag in ("TRAN", "ROMN", "FONE") and words:
            say(Fact("name", " ".join(words.replace("/", " ").split()), child.number))
            _rest(tree, f"INDI.NAME.{child.tag}", child, ("LANG", "TYPE", "GIVN", "SURN"))
        elif child.tag not in ("TYPE", "GIVN", "SURN"):
            _leave(tree, "INDI.NAME", child)


def _event(tree: Tree, person: Individual, node: Node) -> None:
    """BIRT, DEAT, BURI. `DEAT Y` without a date still says that someone has died."""
    day, place = EVENTS[node.tag]
    path = f"INDI.{node.tag}"
    date, where = _date(node), _place(node)
    if date:
        person.facts.append(Fact(day, date, node.number))
    if where:
        person.facts.append(Fact(place, where, node.number))
    if node.tag == "DEAT" and not date and not where and not person.words("living"):
        person.facts.append(Fact("living", "no", node.number))
    for child in node.children:
        if child.tag == "DATE":
            _rest(tree, f"{path}.DATE", child, ("PHRASE",))
        elif child.tag == "PLAC":
            _rest(tree, f"{path}.PLAC", child, ())
        else:
            _leave(tree, path, child)


def _date(node: Node) -> str:
    """The date's words; a 7.0 phrase beside it in brackets, as 5.5.1 wrote it."""
    found = node.first("DATE")
    if found is None:
        return ""
    phrase = found.text("PHRASE")
    return f"{found.value.strip()} ({phrase})".strip() if phrase else found.value.strip()


def _place(node: Node) -> str:
    """A place as told, empty levels of its jurisdictions left out."""
    parts = [part.strip() for part in node.text("PLAC").split(",")]
    return ", ".join(part for part in parts if part)


def _family(tree: Tree, record: Node) -> None:
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
            _rest(tree, f"FAM.{child.tag}", child, ())
        elif child.tag == "MARR":
            family.marriages.append((_date(child), _place(child)))
            _rest(tree, "FAM.MARR", child, ("DATE", "PLAC"))
        else:
            _leave(tree, "FAM", child)


def links(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, parent, role) by blood: role is father or mother, by HUSB and WIFE, or by SEX where it is told.

    A child stands in CHIL, in FAMC, or both (7.0: they should match; here either will do). A pointer to nobody
    is told as a fault.
    """
    seen: set[tuple[str, str]] = set()
    pedigree = {(one.xref, family): kind for one in tree.individuals.values() for family, kind in one.links}
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
            if parent in tree.individuals and (child, parent) not in seen and parent != child:
                seen.add((child, parent))
                sex = tree.individuals[parent].words("sex")
                yield child, parent, {"male": "father", "female": "mother"}.get(sex, role)


def not_by_blood(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, family, kind) of children who are adopted, fostered or sealed."""
    for one in tree.individuals.values():
        for family, kind in one.links:
            if kind not in BLOOD:
                yield one.xref, family, kind.lower()

"""What a finding aid says of the whole collection: the notes of DACS, single-level optimum, in plain paragraphs.

Describing Archives: A Content Standard: 2.7 (biographical history), 3.1, 3.2 (scope, arrangement), 4.1, 4.4 (access,
use), 5.1, 5.2, 5.4 (custody, acquisition, accruals), 6.1, 6.2 (originals, copies), 7.1.5 (citation), 8.1 (sources of
the description); the numbers are from memory. Nothing is said that is not known.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from boxlore.core.crosswalk.dublin_core import CollectionFacts, DcValue, heading_of, years_of
from boxlore.core.crosswalk.extent import Extent, counted_kind
from boxlore.core.crosswalk.rights_statements import rights_label
from boxlore.core.crosswalk.sound import counted
from boxlore.core.findings import several
from boxlore.core.people.kin import Kin
from boxlore.core.people.person import Person
from boxlore.core.wording.catalogue import ENGLISH

MOST_NAMED = 8
"""People, places and occasions that a note of the whole names; the index has them all."""
MOST_CREATORS = 3
"""Photographers who stand as creators of the whole."""
MOST_POINTS = 40
"""Access points of one kind for the whole collection."""

Words = str | DcValue
"""A paragraph: our own in English, or somebody's with its language."""
Note = tuple[str, list[Words]]
"""(element of EAD, paragraphs)."""


def reference_code(facts: CollectionFacts) -> str:
    """The collection's code (DACS 2.1): the archive's own where it has given one, else what its codes begin with, and
    how our numbers begin."""
    return facts.reference or _own_code(facts)


def _own_code(facts: CollectionFacts) -> str:
    """What its codes begin with at the archive, and how our numbers begin: `MS TR`."""
    return " ".join(part for part in (facts.archive.prefix, facts.code or facts.id) if part)


def container_code(path: Sequence[tuple[str, str]], facts: CollectionFacts) -> str:
    """The reference code of a container (DACS 2.1): what the collection's codes begin with, and the labels from the box
    inwards, `MS TR/1/2`; what is neither box nor folder says what it is: `MS TR/1/album 2`. It stays as it is once the
    archive has given the whole a reference of its own, for labels on its shelves and citations have it by then."""
    steps = [label if kind in ("box", "folder") else f"{kind} {label}" for kind, label in path]
    return "/".join([_own_code(facts), *steps])


def collection_notes(facts: CollectionFacts, extent: Extent) -> list[Note]:
    """(element, paragraphs) for the whole collection, in the order of our schema; those without words are left out."""
    notes: tuple[tuple[str, Sequence[Words]], ...] = (
        ("accessrestrict", _access(facts)),
        ("userestrict", _use(facts)),
        ("custodhist", [*(DcValue(words, facts.language) for words in facts.custody), _held(facts)]),
        ("acqinfo", _acquired(facts, extent)),
        ("originalsloc", [] if facts.originals else [f"The originals stay with {facts.held_by}."]),
        ("altformavail", _copies(facts, extent)),
        ("bioghist", [*_history(facts), *_kin_shown(facts, extent)]),
        ("scopecontent", list(_scope(facts, extent))),
        ("arrangement", [_arrangement(extent)]),
        ("accruals", ["More may follow: what is told later comes as an update of this transfer."]),
        ("prefercite", [_citation(facts)]),
        ("processinfo", [PROCESS]),
    )
    return [(name, list(words)) for name, words in notes if words]


PROCESS = (
    "Described from what was told by those who know the pictures, and from what is written on them; each item says who "
    "said what, and how surely. Titles without a source were made from the description."
)


def _access(facts: CollectionFacts) -> list[Words]:
    own = [DcValue(facts.archive.access, facts.archive.language)] if facts.archive.access else []
    return [*own, CLOSED if facts.is_closed else OPEN]


CLOSED = "This describes the closed part: each item says until when it is closed, and why."
OPEN = (
    "What is described here may be shown. What names or shows people taken as living, and what those who gave it have "
    "closed until a day, is in a closed part, item by item, with the day and the reason of each."
)


def _use(facts: CollectionFacts) -> list[Words]:
    own = [DcValue(facts.archive.use, facts.archive.language)] if facts.archive.use else []
    return [*own, rights_label(facts.rights)]


def _held(facts: CollectionFacts) -> str:
    """Custody as it is after the transfer: of the originals, or of scans alone."""
    first = facts.transfers[0].day if facts.transfers else facts.on_day.isoformat()
    if facts.originals:
        return f"The originals were held by {facts.held_by} until the transfer of {first}."
    return f"The originals are held by {facts.held_by}; scans of them were handed over on {first}."


def _acquired(facts: CollectionFacts, extent: Extent) -> list[str]:
    days = [transfer.day for transfer in facts.transfers] or [facts.on_day.isoformat()]
    what = "Originals and scans" if facts.originals else "Scans"
    words = f"{what} from {facts.held_by}, transfer of {days[0]}"
    words += f", with {several(len(days) - 1, 'update')}, the last of {days[-1]}" if len(days) > 1 else ""
    return [f"{words}{extent.lent_words}.", *([f"Accession {facts.accession}."] if facts.accession else [])]


def _copies(facts: CollectionFacts, extent: Extent) -> list[str]:
    if not (facts.originals and extent.scans):
        return []
    return [f"{several(extent.scans, 'scan')} of sides of the items are with this transfer; each item lists its own."]


def _history(facts: CollectionFacts) -> list[Words]:
    """The family's history as it is told."""
    return [DcValue(facts.history, facts.language)] if facts.history else []


def _kin_shown(facts: CollectionFacts, extent: Extent) -> list[str]:
    """Who of those most often shown is kin to whom of them, the eldest first (DACS 2.7: the members of a family are
    named); nothing where nobody is. Nobody is named who is shown in no item of this part."""
    shown = [person for person, _ in most_shown(facts, extent)[:MOST_NAMED]]
    shown.sort(key=lambda person: years_of(person).partition("-")[0] or _YOUNGEST)
    kin = Kin({person.id: person for person in shown})
    lines: dict[str, str] = {}
    in_it: set[str] = set()
    for at, person in enumerate(shown):
        spouses = [other for other in shown[:at] if other.id in kin.spouses(person.id)]
        parents = [other for other in shown if other.id in kin.parents(person.id)]
        told = [(words, others) for words, others in (("married to", spouses), ("child of", parents)) if others]
        in_it |= {ident for _, others in told for ident in (person.id, *(other.id for other in others))}
        years = f" ({years_of(person)})" if years_of(person) else ""
        kin_words = (f", {words} {ENGLISH.listed([other.name for other in others])}" for words, others in told)
        lines[person.id] = f"{person.name}{years}{''.join(kin_words)}"
    lives = [line for ident, line in lines.items() if ident in in_it]
    return [f"Kin among those most often shown: {'; '.join(lives)}."] if lives else []


_YOUNGEST = "9999"
"""Stands for the year of a birth that is not told: behind all others."""


def _scope(facts: CollectionFacts, extent: Extent) -> Iterator[str]:
    """What there is, and who is most often shown, as far as this part may name them."""
    held = extent.words_with(counted(facts.beside))
    yield f"{held}; {extent.years}. Each item is described with what was told of it and by whom."
    most = most_shown(facts, extent)[:MOST_NAMED]
    if shown := [f"{heading_of(person)} ({several(count, 'item')})" for person, count in most]:
        yield f"Most often shown: {'; '.join(shown)}."
    if extent.places:
        yield f"Places: {'; '.join(_named(extent.places.most_common()))}."
    if extent.occasions:
        told = [(f"“{words}”", count) for words, count in extent.occasions.most_common()]
        yield f"Occasions, in the words told: {'; '.join(_named(told))}."


def most_shown(facts: CollectionFacts, extent: Extent) -> list[tuple[Person, int]]:
    """Those who are shown by name, with the number of items, the most often shown first."""
    known = [(facts.people[ident], count) for ident, count in extent.people.most_common() if ident in facts.people]
    return [(person, count) for person, count in known if person.is_named]


def _named(counted: Iterable[tuple[str, int]]) -> list[str]:
    return [f"{words} ({count})" for words, count in list(counted)[:MOST_NAMED]]


_BY_BOX = "in series by box, then by folder or other container, then by the item's place."


def _arrangement(extent: Extent) -> str:
    words = f"As the family keeps it: {_BY_BOX}"
    if extent.series:
        own = "; ".join(extent.series[key] for key in sorted(extent.series))
        words = f"In the family's own series: {own}. What is in none of them: {_BY_BOX} Each item says where it lies."
    if extent.found_in:
        found_in = "; ".join(f"{place} ({count})" for place, count in extent.found_in.items())
        words += f" Before rehousing they were found in: {found_in}."
    return words


def _citation(facts: CollectionFacts) -> str:
    return f"[item number and title], {facts.title} ({reference_code(facts)}), {repository_of(facts)}."


def repository_of(facts: CollectionFacts) -> str:
    """The archive's name (DACS 2.2); as long as there is none, the name of whoever holds the collection."""
    return facts.archive.repository or facts.holder or "Repository not yet named"


def folder_title(extent: Extent, facts: CollectionFacts) -> str:
    """A devised title of what is in a container (DACS 2.3): what it is, of whom, where. The container stands beside."""
    if not extent.kinds:
        return extent.kept_words
    kinds = [kind for kind, _ in extent.kinds.most_common(2)]
    what = ENGLISH.listed([counted_kind(kind, extent.kinds[kind]) for kind in kinds]).capitalize()
    names = [person.name for person, _ in most_shown(facts, extent)[:2]]
    whom = f" of {ENGLISH.listed(names)}{' and others' if len(extent.people) > len(names) else ''}" if names else ""
    return f"{what}{whom}{_of_most(extent.places, extent.given)}"


def _of_most(places: Counter[str], items: int) -> str:
    """`, Dunedin, …`: the place of more than half of the items; that of one is none of the whole."""
    place, count = next(iter(places.most_common(1)), ("", 0))
    return f", {place}" if 2 * count > items else ""

"""What another program has put into a copy since we wrote it, told from what we wrote there ourselves.

Each copy says in `boxlore:wrote` what we wrote into it last: a digest of each text with the name of its field. A text
of one of our fields is ours if its digest stands there, or if we would write it now; any other is another's. What is
another's is kept: members of a list stand behind ours, and a field that has no value of ours keeps theirs. Where both
say something of a field that takes one text, the copy has the record's, and a sentence says what it took the place of.

Dates and places of a scan say when and where it was scanned, so they are never kept, also where another program has
brought them back from the scan; nor are coordinates. Regions of a picture are told apart by their identifiers (see
`merging`).
"""

import hashlib
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk.metadata_values import Alt, Bag, Embedding, ExistingMetadata, Seq, Struct, Text, XmpValue
from boxlore.core.crosswalk.xmp_and_iim import NOT_THE_PICTURES
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, picture_files, places_in_texts, xmp, xmp_merging, xmp_places
from boxlore.formats.xmp_names import LANG, RDF, XML, clark_name

WROTE = "boxlore:wrote"
STRUCK = "boxlore:struck"
"""Which words had been struck when the copy was written, as a digest of what tells the strikes, never of the words.

What another program has put into a copy that was written before a strike may be the struck words, in any field and in
any shape, and nobody can tell any more: so it is not kept.
"""
DIGITS = 8
_ONE_DIGEST = re.compile(r"[0-9a-f]+")
REPEATABLE = frozenset({(2, 25), (2, 80), (2, 122)})
"""Datasets of ours that may come more than once: keywords, by-line, writer (IIM 4.2, chapter 6)."""

OF_DATE_AND_PLACE = (*sorted(iim.NAMED_PLACES), (2, 55), (2, 60))
"""Datasets that say when and where (IIM 4.2, chapter 6)."""

_BY_IDENTIFIER = frozenset({xmp_merging.REGIONS, xmp_merging.FACES})
_BOOKKEEPING = frozenset({WROTE, STRUCK, "xmp:MetadataDate"})
"""What these took the place of says nothing to a person."""
_DAY = "Exif DateTimeOriginal"
_SHOWN = 80
"""Letters of a text that a sentence shows."""


def signed(embedding: Embedding, tombs: Iterable[str] = ()) -> Embedding:
    """The same, with what we write into the copy, and which strikes it has heard of, by the ids of what was struck;
    nothing of it where all other metadata goes."""
    if embedding.drop_text:
        return embedding
    if strikes := " ".join(sorted(tombs)):
        embedding = replace(embedding, xmp=(*embedding.xmp, (STRUCK, Text(_digest(STRUCK, strikes)))))
    return _with_digests(embedding, _digests(embedding))


def struck_since(embedding: Embedding, said: str) -> bool:
    """Whether words were struck since a copy was written. `said` is its STRUCK, '' if it has none."""
    return dict(embedding.xmp).get(STRUCK, Text(said)) != Text(said)


def over_our_own(embedding: Embedding, copy: BinaryIO, scan: BinaryIO) -> tuple[Embedding, list[str]]:
    """The embedding for a copy of ours that another program has changed: what is another's is among its values.

    Also sentences about texts of another program that the record's took the place of. Raises ByteFault.
    """
    merge = _merge_of(embedding, xmp.tree(*picture_files.packets(copy)), picture_files.read(copy), _of_scan(scan))
    return merge.merged(), merge.reports


def over_our_sidecar(embedding: Embedding, packet: bytes, scan: BinaryIO) -> tuple[bytes, list[str]]:
    """As `over_our_own`, for a caption that lies beside its copy: the new packet. Raises ByteFault."""
    merge = _merge_of(embedding, xmp.tree(packet), ExistingMetadata({}, {}, {}), _of_scan(scan))
    root, _ = xmp_merging.captioned(packet, merge.merged())
    return xmp.serialize(root, padding=0), merge.reports


def _with_digests(embedding: Embedding, digests: Iterable[str]) -> Embedding:
    rows = (row for row in embedding.xmp if row[0] != WROTE)
    return replace(embedding, xmp=(*rows, (WROTE, Text(" ".join(sorted(digests))))))


def _digests(embedding: Embedding) -> set[str]:
    """The digests of all texts that an embedding writes."""
    leaves = [leaf for name, value in embedding.xmp if name != WROTE for leaf in _leaves(name, value)]
    leaves += [(_dataset(key), _as_in_iim(key, words)) for key, texts in embedding.iim for words in texts]
    leaves += [(_in_exif(tag), words) for tag, words in embedding.exif]
    leaves += [(_DAY, embedding.original_day)] if embedding.original_day else []
    return {_digest(*leaf) for leaf in leaves}


def _digest(name: str, text: str) -> str:
    """Of a text in its field. How its white space is set is not looked at, as programs set it anew."""
    return hashlib.sha256(f"{name}\0{' '.join(text.split())}".encode("utf-8", "ignore")).hexdigest()[:DIGITS]


def _leaves(name: str, value: XmpValue) -> Iterator[tuple[str, str]]:
    """The texts of a value, each with its path; members of an array have the same path, so their order is free."""
    match value:
        case Text(words):
            yield name, xmp.xml_text(words)
        case Alt(alternatives):
            yield from ((_in_language(name, language), xmp.xml_text(words)) for language, words in alternatives)
        case Bag(items) | Seq(items):
            for item in items:
                yield from _leaves(f"{name}[]", item)
        case Struct(fields):
            for inner_name, inner in fields:
                yield from _leaves(f"{name} {inner_name}", inner)


def _in_language(name: str, language: str) -> str:
    return f"{name}@{language.lower()}"


def _dataset(key: tuple[int, int]) -> str:
    return f"IIM {key[0]}:{key[1]:02d}"


def _in_exif(tag: int) -> str:
    return f"Exif {exif.TEXT_TAGS[tag]}"


def _as_in_iim(key: tuple[int, int], words: str) -> str:
    return iim.shorten(words.encode("utf-8", "ignore"), iim.MAXIMUM.get(key, 32767)).decode()


def value_of(element: etree._Element) -> XmpValue:
    """The value of a property in any shape (ISO 16684-1, 7.5 to 7.9); qualifiers are left out."""
    for kind in (Bag, Seq):
        if (array := element.find(f"{{{RDF}}}{kind.__name__}")) is not None:
            return kind(tuple(value_of(li) for li in array.iterfind(f"{{{RDF}}}li")))
    if (alternatives := element.find(f"{{{RDF}}}Alt")) is not None:
        members = alternatives.iterfind(f"{{{RDF}}}li")
        return Alt(tuple((li.get(LANG, "x-default"), li.text or "") for li in members))
    inner = element.find(f"{{{RDF}}}Description")
    home = element if inner is None else inner
    if (qualified := home.find(f"{{{RDF}}}value")) is not None:
        return value_of(qualified)
    fields: list[tuple[str, XmpValue]] = [
        (xmp.qualified(str(key)) or str(key), Text(str(words)))
        for key, words in home.attrib.items()
        if etree.QName(str(key)).namespace not in (RDF, XML)
    ]
    fields += [(xmp.qualified(child.tag) or child.tag, value_of(child)) for child in home.iterchildren(etree.Element)]
    return Struct(tuple(fields)) if fields else Text(str(element.get(f"{{{RDF}}}resource") or element.text or ""))


def _held(root: etree._Element, names: Iterable[str]) -> dict[str, XmpValue]:
    """The values that the packet has of these properties, but for those that are told apart by identifiers."""
    wanted = [name for name in dict.fromkeys(names) if name not in _BY_IDENTIFIER]
    home = xmp.home_of(root)
    xmp.spell_out(home, wanted)
    elements = ((name, home.find(clark_name(name))) for name in wanted)
    return {name: value_of(element) for name, element in elements if element is not None}


def _merge_of(embedding: Embedding, root: etree._Element, old: ExistingMetadata, of_scan: set[str]) -> "_Merge":
    held = _held(root, [*(name for name, _ in embedding.xmp), *embedding.unfilled, *embedding.remove, WROTE])
    signature = held.pop(WROTE, None)
    written = set(_ONE_DIGEST.findall(signature.words)) if isinstance(signature, Text) else None
    ours = _digests(embedding)
    there = {_digest(*leaf) for name, value in held.items() for leaf in _leaves(name, value)}
    there |= {_digest(_dataset(key), words) for key, texts in old.iim.items() for words in texts}
    # What we would write, and what another has written there already, stays another's; else a word that the record
    # loses again would go with it. Of a copy that does not say what we wrote we cannot tell.
    stays = ours if written is None else ours - (there - written)
    return _Merge(embedding, held, old, (written or set()) | ours | of_scan, stays)


def _of_scan(scan: BinaryIO) -> set[str]:
    """The digests of what the scan's file says of its own date and place; none of a file that cannot be read."""
    try:
        held, old = _held(xmp.tree(*picture_files.packets(scan)), NOT_THE_PICTURES), picture_files.read(scan)
    except ByteFault:
        return set()
    leaves = [leaf for name, value in held.items() for leaf in _leaves(name, value)]
    leaves += [(_dataset(key), words) for key in OF_DATE_AND_PLACE for words in old.iim.get(key, ())]
    return {_digest(*leaf) for leaf in (*leaves, (_DAY, _day(old.exif)))}


def _day(texts: Mapping[str, str]) -> str:
    return texts.get("DateTimeOriginal", "")[:10].replace(":", "-")


@dataclass(slots=True)
class _Merge:
    """One merge. `owned`: the digests of what is not another's; `stays`: those that the copy says are ours."""

    embedding: Embedding
    held: Mapping[str, XmpValue]
    old: ExistingMetadata
    owned: set[str]
    stays: set[str]
    reports: list[str] = field(default_factory=list)
    edited: list[XmpValue] = field(default_factory=list)
    """Structures of ours into which another has written: what of them is another's."""
    said_place: bool = False

    def merged(self) -> Embedding:
        values = dict(self.embedding.xmp)
        for name, value in self.held.items():
            if (theirs := self._rest(name, value)) is not None:
                values[name] = self._joined(name, values.get(name), theirs)
        names_out = (*self.embedding.remove, *self.embedding.unfilled)
        with_theirs = replace(
            self.embedding,
            xmp=tuple(values.items()),
            remove=tuple(name for name in names_out if name not in values),
            iim=tuple(self._datasets()),
            settled=True,
            keeps_day=self._keeps_day(),
        )
        self._say_exif()
        if self.said_place or self.old.has_gps:
            self.reports.append("Another program wrote coordinates into it; a copy carries none.")
        return _with_digests(with_theirs, self.stays)

    def _is_ours(self, name: str, words: str) -> bool:
        return not words.strip() or _digest(name, words) in self.owned

    def _rest(self, name: str, value: XmpValue, *, whole: bool = False) -> XmpValue | None:
        """What of a value is another's, without coordinates; None where nothing is. `whole`: all of it is."""
        match value:
            case Text(words):
                return self._text(name, words, whole=whole)
            case Alt(alternatives):
                left = [row for row in alternatives if whole or not self._is_ours(_in_language(name, row[0]), row[1])]
                return Alt(tuple((tag, places_in_texts.cut_out(words)) for tag, words in left)) if left else None
            case Bag(items) | Seq(items):
                members = [rest for item in items if (rest := self._rest(f"{name}[]", item, whole=whole))]
                return type(value)(tuple(members)) if members else None
            case Struct(fields):
                leaves = list(_leaves(name, value))
                whole = whole or 2 * sum(self._is_ours(*leaf) for leaf in leaves) < len(leaves)
                rests = [
                    (inner_name, rest)
                    for inner_name, inner in fields
                    if (rest := self._rest(f"{name} {inner_name}", inner, whole=whole))
                ]
                if rests and not whole:
                    self.edited.append(Struct(tuple(rests)))
                return Struct(tuple(rests)) if rests else None

    def _text(self, name: str, words: str, *, whole: bool) -> Text | None:
        if not words.strip() or (not whole and self._is_ours(name, words)):
            return None
        property_name = name.replace("[]", "").rsplit(" ", 1)[-1]
        if xmp_places.is_coordinate(clark_name(property_name)) or xmp_places.is_keyword(words):
            self.said_place = True
            return None
        return Text(places_in_texts.cut_out(words))

    def _joined(self, name: str, ours: XmpValue | None, theirs: XmpValue) -> XmpValue:
        match ours, theirs:
            case None, _:
                return theirs
            case ((Bag() | Seq()), (Bag() | Seq())):
                whole = [item for item in theirs.items if item not in self.edited]
                changed = [item for item in theirs.items if item in self.edited]
                return type(ours)((*self._with_fields(name, ours.items, changed), *whole))
            case Alt(alternatives), Alt(others):
                ours_by_language = {language.lower() for language, _ in alternatives}
                replaced = [row for row in others if row[0].lower() in ours_by_language]
                self._say(name, dict.fromkeys(words for _, words in replaced))
                return Alt((*alternatives, *(row for row in others if row not in replaced)))
        assert ours is not None
        self._say(name, dict.fromkeys(words for _, words in _leaves(name, theirs)))
        return ours

    def _with_fields(self, name: str, ours: tuple[XmpValue, ...], changed: list[XmpValue]) -> tuple[XmpValue, ...]:
        """Our structures, the first with the fields that another has put into it."""
        first, fields = (ours[0] if ours else None), dict[str, XmpValue]()
        for struct in changed:
            fields |= dict(struct.fields) if isinstance(struct, Struct) else {}
        if not fields or not isinstance(first, Struct):
            return ours
        mine = dict(first.fields)
        for inner_name in fields.keys() & mine.keys():
            self._say(inner_name, [words for _, words in _leaves(inner_name, fields[inner_name])])
        return (Struct((*first.fields, *((key, value) for key, value in fields.items() if key not in mine))), *ours[1:])

    def _datasets(self) -> Iterator[tuple[tuple[int, int], tuple[str, ...]]]:
        """Our datasets of IIM with what is another's of them."""
        rows = dict(self.embedding.iim) | dict.fromkeys(self.embedding.unfilled_iim, ())
        for key, ours in rows.items():
            texts = (words for words in self.old.iim.get(key, ()) if not self._is_ours(_dataset(key), words))
            theirs = [places_in_texts.cut_out(words) for words in texts if not xmp_places.is_keyword(words)]
            if theirs and ours and key not in REPEATABLE:
                self._say(_dataset(key), theirs)
                theirs = []
            yield key, (*ours, *dict.fromkeys(theirs))

    def _keeps_day(self) -> bool:
        """Whether the day of the picture in Exif is another's, and we have none."""
        day = _day(self.old.exif)
        is_theirs = bool(day) and not self._is_ours(_DAY, day)
        if is_theirs and self.embedding.original_day:
            self._say(_DAY, [day])
        return is_theirs and not self.embedding.original_day

    def _say_exif(self) -> None:
        for tag, _ in self.embedding.exif:
            words = self.old.exif.get(exif.TEXT_TAGS[tag], "")
            if not self._is_ours(_in_exif(tag), words):
                self._say(_in_exif(tag), [words])

    def _say(self, name: str, texts: Iterable[str]) -> None:
        if name not in _BOOKKEEPING:
            self.reports += [
                f"Another program wrote of {name}: “{words[:_SHOWN]}{'…' if len(words) > _SHOWN else ''}”; the copy has"
                " the record's."
                for words in texts
            ]

"""Putting our caption into the XMP that a file has already. Only our own properties are replaced.

Every property that is not ours stays. So do the other languages of a language alternative (ISO 16684-1, 8.2.2.4; no
language is written twice) and the image regions that somebody else marked. A sentence tells each text replaced.
"""

from collections.abc import Collection, Iterator

from lxml import etree

from boxlore.core.crosswalk.metadata_values import OUR_REGION, Alt, Bag, Embedding, Struct, XmpValue
from boxlore.core.errors import ByteFault
from boxlore.formats import xmp_places, xmp_strict
from boxlore.formats.xmp import fill, gathered, home_of, parse, serialize, spell_out, write
from boxlore.formats.xmp_names import LANG, RDF, clark_name

REGIONS, FACES, LOCATION = "Iptc4xmpExt:ImageRegion", "mwg-rs:Regions", "Iptc4xmpExt:LocationShown"
REGION_ID = "Iptc4xmpExt:rId"


def captioned(
    packet: bytes, embedding: Embedding, extended: tuple[bytes, ...] = ()
) -> tuple[etree._Element, list[str]]:
    """The tree of a packet with the caption put in, and sentences about the texts that it replaced.

    Raises ByteFault for a packet that strict readers would refuse even then; they would lose the caption too.
    """
    root, reports = (parse(b""), list[str]()) if embedding.drop_text else gathered(packet, extended)
    # the properties that name a place are told apart by `merge`, which has those of the picture instead
    reports = [*reports, *xmp_places.taken_out(root, named=False).reports, *merge(root, embedding)]
    if packet and (faults := xmp_strict.faults(serialize(root, padding=0))):
        raise ByteFault(0, f"Its metadata cannot be put right: {faults[0].rstrip('.')}", xmp_strict.CLAUSE)
    return root, reports


def merge(root: etree._Element, embedding: Embedding) -> list[str]:
    """Put our properties into the tree in place of those of the same name. Returns sentences about texts replaced.

    `embedding.absent` is put in only where the tree lacks the property; `embedding.remove` is taken out.
    """
    ours = (*(name for name, _ in (*embedding.xmp, *embedding.absent)), *embedding.remove)
    spell_out(home_of(root), ours)
    absent = [(name, value) for name, value in embedding.absent if not _held(root, name)]
    reports, foreign_members = list[str](), dict[str, list[etree._Element]]()
    for name, value in embedding.xmp:
        reports += [] if embedding.settled else _differs(root, name, value)
        languages = [] if embedding.settled else _other_languages(root, name, value)
        foreign_members[name] = [*languages, *_other_regions(root, name, value)]
    for name in embedding.remove:
        foreign_members[name] = list(_other_regions(root, name, None))
    for name in [*(name for name, _ in embedding.xmp), *embedding.remove]:
        _take_out(root, name)
    home = home_of(root)
    for name, value in [*absent, *embedding.xmp]:
        write(home, name, value)
        for member in foreign_members.pop(name, ()):
            _array(home[-1]).append(member)
    for name, regions in foreign_members.items():
        if regions:
            empty = Bag(()) if name != FACES else Struct((("mwg-rs:RegionList", Bag(())),))
            write(home, name, empty)
            _array(home[-1]).extend(regions)
    return reports


def _array(element: etree._Element) -> etree._Element:
    """The array inside a property: its Alt, else the first Bag at any depth (the list of `mwg-rs:Regions`), else a
    new Bag.
    """
    bag = element.find(f".//{{{RDF}}}Bag")
    alternative = element.find(f"{{{RDF}}}Alt")
    held = alternative if alternative is not None else bag
    return held if held is not None else etree.SubElement(element, f"{{{RDF}}}Bag")


def _held(root: etree._Element, name: str) -> list[etree._Element]:
    """The elements of a property. They stand in one description, as `xmp.gathered` has put them there."""
    return home_of(root).findall(clark_name(name))


def _take_out(root: etree._Element, name: str) -> None:
    for element in _held(root, name):
        home_of(root).remove(element)


def _differs(root: etree._Element, name: str, value: XmpValue) -> Iterator[str]:
    """A sentence if the file has another text for a property than ours; none for dates and other bookkeeping."""
    if isinstance(value, Struct) or name.startswith(("xmp", "Iptc4xmpExt:Dig")):
        return
    ours = etree.Element("wanted")
    fill(ours, value)
    our_words = set(_words_of(ours))
    for held in _held(root, name):
        words = _words_of(held, _tags(value))
        if name not in (REGIONS, "Iptc4xmpExt:ArtworkOrObject", LOCATION) and (other_words := set(words) - our_words):
            shown = sorted(other_words)[0]
            yield f"The file said of {name}: “{shown[:80]}{'…' if len(shown) > 80 else ''}”; the copy has the record's."


def _tags(value: XmpValue) -> set[str]:
    """The languages whose texts ours replace; empty if `value` is no language alternative."""
    return {"", *(language.lower() for language, _ in value.words)} if isinstance(value, Alt) else set()


def _words_of(element: etree._Element, tags: Collection[str] = ()) -> list[str]:
    """The texts of a property that are not blank; of an array, those in the languages `tags` if any are given."""
    members = [li for li in element.iter(f"{{{RDF}}}li") if not len(li)]
    texts = [li.text or "" for li in members if not tags or li.get(LANG, "").lower() in tags]
    if members and not texts:
        return []
    return [text for text in texts or [(element.text or "")] if text.strip()]


def _other_languages(root: etree._Element, name: str, value: XmpValue) -> Iterator[etree._Element]:
    """The alternatives in languages that we do not write, each language once."""
    if isinstance(value, Alt):
        languages = {language.lower() for language, _ in value.words} | {"x-default", ""}
        for held in _held(root, name):
            for li in held.iterfind(f"{{{RDF}}}Alt/{{{RDF}}}li"):
                if (language := li.get(LANG, "").lower()) not in languages:
                    languages.add(language)
                    yield li


def _other_regions(root: etree._Element, name: str, value: XmpValue | None) -> Iterator[etree._Element]:
    """The regions that somebody else marked: those without an identifier of ours that name nobody whom we mark."""
    if name not in (REGIONS, FACES):
        return
    ours = etree.Element("ours")
    if value is not None:
        fill(ours, value)
    names = {element.text for element in ours.iter(clark_name("mwg-rs:Name"), clark_name(REGION_ID))}
    for held in _held(root, name):
        for li in _items(held):
            texts = {_simple(li, REGION_ID), _simple(li, "mwg-rs:Name")} - {""}
            if not any(text.startswith(OUR_REGION) for text in texts) and not texts & names:
                yield li


def _items(element: etree._Element) -> list[etree._Element]:
    """The members of the outermost array."""
    for array in element.iter(f"{{{RDF}}}Bag", f"{{{RDF}}}Seq"):
        return list(array.iterfind(f"{{{RDF}}}li"))
    return []


def _simple(element: etree._Element, name: str) -> str:
    """The text of a field at any depth, whether it is an element or an attribute (ISO 16684-1, 7.9.2.2); or empty."""
    tag = clark_name(name)
    for descendant in element.iter(etree.Element):
        if descendant.tag == tag and (descendant.text or "").strip():
            return (descendant.text or "").strip()
        if tag in descendant.attrib:
            return str(descendant.attrib[tag])
    return ""

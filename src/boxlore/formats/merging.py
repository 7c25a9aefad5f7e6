"""Our caption put into the metadata that a file holds already: only our own properties are touched.

Other languages of an alternative stay (ISO 16684-1, 8.2.2.4; the same tag twice is not written), so do regions
that somebody else marked, and every property that is not ours. What is replaced is said.
"""

from collections.abc import Collection, Iterator

from lxml import etree

from boxlore.core.crosswalk.embedding import OUR_REGION, Alt, Bag, Embedding, Struct, XmpValue
from boxlore.formats.xmp import LANG, RDF, fill, home_of, named, parse, tidy, tree, write

REGIONS, FACES, LOCATION = "Iptc4xmpExt:ImageRegion", "mwg-rs:Regions", "Iptc4xmpExt:LocationShown"
REGION_ID = "Iptc4xmpExt:rId"


def captioned(
    packet: bytes, embedding: Embedding, extended: tuple[bytes, ...] = ()
) -> tuple[etree._Element, list[str]]:
    """The tree of a packet with the caption in it, and sentences about what the caption took the place of."""
    root = parse(b"") if embedding.drop_text else tree(packet, extended)
    return root, merge(root, embedding)


def merge(root: etree._Element, embedding: Embedding) -> list[str]:
    """Put our properties into the tree in place of those of the same name; sentences about what they replaced."""
    absent = [(name, value) for name, value in embedding.absent if not _held(root, name)]
    reports, kept = list[str](), dict[str, list[etree._Element]]()
    for name, value in embedding.xmp:
        reports += _differs(root, name, value)
        kept[name] = [*_other_languages(root, name, value), *_other_regions(root, name, value)]
    for name in embedding.remove:
        kept[name] = list(_other_regions(root, name, None))
    for name in [*(name for name, _ in embedding.xmp), *embedding.remove]:
        _take_out(root, name)
    home = home_of(root)
    for name, value in [*absent, *embedding.xmp]:
        write(home, name, value)
        for more in kept.pop(name, ()):
            _array(home[-1]).append(more)
    for name, regions in kept.items():
        if regions:
            empty = Bag(()) if name != FACES else Struct((("mwg-rs:RegionList", Bag(())),))
            write(home, name, empty)
            _array(home[-1]).extend(regions)
    tidy(root)
    return reports


def _array(element: etree._Element) -> etree._Element:
    """The array that a property holds; of the older regions, their list."""
    found = element.find(f".//{{{RDF}}}Bag")
    alternative = element.find(f"{{{RDF}}}Alt")
    held = alternative if alternative is not None else found
    return held if held is not None else etree.SubElement(element, f"{{{RDF}}}Bag")


def _held(root: etree._Element, name: str) -> list[etree._Element]:
    """The property as it stands in the tree; `xmp.tree` has spelt out attributes and gathered descriptions."""
    return home_of(root).findall(named(name))


def _take_out(root: etree._Element, name: str) -> None:
    for found in _held(root, name):
        home_of(root).remove(found)


def _differs(root: etree._Element, name: str, value: XmpValue) -> Iterator[str]:
    """A sentence for a text in the file that says something else than ours (bookkeeping aside)."""
    if isinstance(value, Struct) or name.startswith(("xmp", "Iptc4xmpExt:Dig")):
        return
    wanted = etree.Element("wanted")
    fill(wanted, value)
    ours = set(_words_of(wanted))
    for held in _held(root, name):
        words = _words_of(held, _tags(value))
        if name not in (REGIONS, "Iptc4xmpExt:ArtworkOrObject", LOCATION) and (other := set(words) - ours):
            shown = sorted(other)[0]
            yield f"The file said of {name}: “{shown[:80]}{'…' if len(shown) > 80 else ''}”; the copy has the record's."


def _tags(value: XmpValue) -> set[str]:
    """The languages whose words ours take the place of; the others stay beside them."""
    return {"", *(language.lower() for language, _ in value.words)} if isinstance(value, Alt) else set()


def _words_of(element: etree._Element, tags: Collection[str] = ()) -> list[str]:
    members = [li for li in element.iter(f"{{{RDF}}}li") if not len(li)]
    texts = [li.text or "" for li in members if not tags or li.get(LANG, "").lower() in tags]
    if members and not texts:
        return []
    return [one for one in texts or [(element.text or "")] if one.strip()]


def _other_languages(root: etree._Element, name: str, value: XmpValue) -> Iterator[etree._Element]:
    """Alternatives in languages that we do not write."""
    if isinstance(value, Alt):
        seen = {language.lower() for language, _ in value.words} | {"x-default", ""}
        for held in _held(root, name):
            for li in held.iterfind(f"{{{RDF}}}Alt/{{{RDF}}}li"):
                if (language := li.get(LANG, "").lower()) not in seen:
                    seen.add(language)
                    yield li


def _other_regions(root: etree._Element, name: str, value: XmpValue | None) -> Iterator[etree._Element]:
    """Regions that somebody else marked: without an identifier of ours, and of nobody whom we mark too."""
    if name not in (REGIONS, FACES):
        return
    ours = etree.Element("ours")
    if value is not None:
        fill(ours, value)
    names = {one.text for one in ours.iter(named("mwg-rs:Name"))} | {one.text for one in ours.iter(named(REGION_ID))}
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
    """The text of a field anywhere inside, written as an element or as an attribute (ISO 16684-1, 7.9.2.2)."""
    tag = named(name)
    for one in element.iter(etree.Element):
        if one.tag == tag and (one.text or "").strip():
            return (one.text or "").strip()
        if tag in one.attrib:
            return str(one.attrib[tag])
    return ""

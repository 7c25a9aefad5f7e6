"""Packets of old shapes set right: all properties in one description, each once, nothing let go of in silence.

Strict readers refuse a whole packet for one of these, and with it our caption:

- `about` or `ID` without a prefix, as writers did before 2002, beside the `rdf:about` that everybody writes now;
- descriptions of one picture with differing `rdf:about` (ISO 16684-1, 7.4: all shall have the same);
- a property twice (6.1: names are unique), in one description or in several.

Members of an array that comes twice are joined. Of a single value that comes twice the first is kept, as most
readers do, and a sentence tells the other; the scan still has it.
"""

from collections.abc import Iterable, Iterator

from lxml import etree

from boxlore.formats.xmp_names import ABOUT, LANG, RDF, shown

DESCRIPTION = f"{{{RDF}}}Description"
_ARRAYS = tuple(f"{{{RDF}}}{kind}" for kind in ("Bag", "Seq", "Alt"))
_NAMES_OF_THE_PICTURE = (ABOUT, "about", f"{{{RDF}}}ID", "ID", f"{{{RDF}}}nodeID")
"""Attributes that name what a description is about; the first that has a value is kept, as rdf:about."""


def about_of(description: etree._Element) -> str:
    """What the description is about, in whichever attribute it says so; empty for the picture itself."""
    return next((text for name in _NAMES_OF_THE_PICTURE if (text := description.get(name))), "")


def into_one(home: etree._Element, descriptions: Iterable[etree._Element]) -> list[str]:
    """Gather the properties of `descriptions` in `home`, each once. Returns sentences about values left out.

    `home` may be the first of them. The others are taken out of the tree.
    """
    reports: list[str] = []
    about = about_of(home)
    reports += _once(home)
    for description in descriptions:
        if description is home:
            continue
        about = about or about_of(description)
        for key, text in description.attrib.items():
            if key not in _NAMES_OF_THE_PICTURE:
                reports += _put_attribute(home, str(key), str(text))
        for child in list(description):
            reports += _put(home, child)
        if (parent := description.getparent()) is not None:
            parent.remove(description)
    for name in set(_NAMES_OF_THE_PICTURE) & set(home.attrib):
        del home.attrib[name]
    home.set(ABOUT, about)
    return reports


def _once(home: etree._Element) -> Iterator[str]:
    """Take out of the description what comes in it a second time."""
    children = list(home)
    for child in children:
        home.remove(child)
    for child in children:
        yield from _put(home, child)


def _put_attribute(home: etree._Element, key: str, text: str) -> Iterator[str]:
    held = home.find(key)
    if key in home.attrib or held is not None:
        yield from _left_out(key, home.get(key) or ("" if held is None else _text(held)), text)
    else:
        home.set(key, text)


def _put(home: etree._Element, child: etree._Element) -> Iterator[str]:
    """Add a property, or join it with the one that is there."""
    held = home.find(child.tag) if isinstance(child.tag, str) else None
    if held is not None:
        yield from _joined(held, child)
    elif isinstance(child.tag, str) and child.tag in home.attrib:
        yield from _left_out(child.tag, str(home.get(child.tag)), _text(child))
    else:
        home.append(child)


def _joined(held: etree._Element, further: etree._Element) -> Iterator[str]:
    """Add the members of an array that the other lacks; of an alternative, those in further languages."""
    held_array, further_array = _array(held), _array(further)
    if held_array is None or further_array is None or held_array.tag != further_array.tag:
        yield from _left_out(held.tag, _text(held), _text(further))
        return
    alternative = held_array.tag.endswith("}Alt")
    present = {_key(li, alternative=alternative) for li in held_array}
    for li in list(further_array):
        if (key := _key(li, alternative=alternative)) not in present:
            present.add(key)
            held_array.append(li)
        elif alternative:
            first = next(member for member in held_array if _key(member, alternative=True) == key)
            yield from _left_out(held.tag, _text(first), _text(li))


def _array(element: etree._Element) -> etree._Element | None:
    return next((child for child in element if child.tag in _ARRAYS), None)


def _key(li: etree._Element, *, alternative: bool) -> str:
    """What makes a member of an array the same as another: the language in an alternative, else all of it."""
    if alternative and li.get(LANG):
        return str(li.get(LANG)).lower()
    return etree.tostring(li, method="c14n", exclusive=True, with_tail=False).decode()


def _text(element: etree._Element) -> str:
    return " ".join(" ".join(str(text) for text in element.itertext()).split())


def _left_out(tag: str, held: str, further: str) -> Iterator[str]:
    if held.strip() != further.strip() and further.strip():
        cut = f"{further.strip()[:80]}{'…' if len(further.strip()) > 80 else ''}"
        yield f"The file says {shown(tag)} twice; the second, “{cut}”, was left out of the copy."

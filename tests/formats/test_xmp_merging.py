"""Our caption among what a file says already (ISO 16684-1, 7 and 8; MWG Guidelines 2.0); rdflib reads too."""

import pytest
import rdflib
from lxml import etree

from boxlore.core.crosswalk.metadata_values import NAMESPACES, Alt, Bag, Embedding, Struct, Text, alternative, bag
from boxlore.core.errors import ByteFault
from boxlore.formats import xmp, xmp_merging

HEAD = (
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#" '
    + " ".join(f'xmlns:{name}="{uri}"' for name, uri in NAMESPACES.items() if name not in ("rdf", "x", "xml"))
    + ' xmlns:own="urn:example:own/">'
)
TAIL = "</rdf:RDF></x:xmpmeta>"


def packet(body: str, attributes: str = "") -> bytes:
    return f'{HEAD}<rdf:Description rdf:about="" {attributes}>{body}</rdf:Description>{TAIL}'.encode()


def captioned(before: bytes, embedding: Embedding) -> tuple[bytes, list[str]]:
    """The packet with the caption, proved, the same when done again, and read alike by an RDF library."""
    root, reports = xmp_merging.captioned(before, embedding)
    made = xmp.serialize(root)
    assert xmp.read_back(xmp.parse(made), embedding) == []
    again, _ = xmp_merging.captioned(made, embedding)
    assert xmp.serialize(again) == made
    return made, reports


def graph(made: bytes) -> rdflib.Graph:
    rdf = etree.tostring(next(xmp.parse(made).iter("{http://www.w3.org/1999/02/22-rdf-syntax-ns#}RDF")))
    return rdflib.Graph().parse(data=rdf, format="xml", publicID="urn:picture")


def said(made: bytes, name: str) -> list[str]:
    prefix, _, local = name.partition(":")
    uri = {**NAMESPACES, "own": "urn:example:own/"}[prefix] + local
    return [str(value) for value in graph(made).objects(None, rdflib.URIRef(uri))]


TITLE = Embedding(xmp=(("dc:title", alternative("Nets", "en")),))


def test_properties_in_any_shape_are_replaced_and_others_stay() -> None:
    plain = Embedding(xmp=(("photoshop:City", Text("Haapsalu")),))
    shapes = [
        packet("", 'photoshop:City="Port" own:kept="yes"'),
        packet("<photoshop:City>Port</photoshop:City><own:kept>yes</own:kept>"),
        packet("<own:kept>yes</own:kept></rdf:Description><rdf:Description rdf:about='' photoshop:City='Port'>"),
        packet(
            "</rdf:Description><rdf:Description rdf:about=''><photoshop:City rdf:parseType='Resource'>"
            "<rdf:value>Port</rdf:value></photoshop:City><own:kept>yes</own:kept>"
        ),
    ]
    for shape in shapes:
        made, _ = captioned(shape, plain)
        assert said(made, "photoshop:City") == ["Haapsalu"]
        assert said(made, "own:kept") == ["yes"]
        assert made.count(b"<rdf:Description") == 1


OLD_SHAPES = {
    "bare about": ("<rdf:Description about='uuid:1'><own:kept>yes</own:kept></rdf:Description>", "uuid:1"),
    "bare ID": ("<rdf:Description ID='a1' own:kept='yes'/>", "a1"),
    "no about": ("<rdf:Description><own:kept>yes</own:kept></rdf:Description>", ""),
    "an about that is not the first's": (
        "<rdf:Description rdf:about=''/><rdf:Description rdf:about='urn:other' own:kept='yes'/>",
        "urn:other",
    ),
    "two abouts in one": ("<rdf:Description about='uuid:1' rdf:about='' own:kept='yes'/>", "uuid:1"),
    "the same twice": ("<rdf:Description><own:kept>yes</own:kept><own:kept>yes</own:kept></rdf:Description>", ""),
    "as attribute and element": ("<rdf:Description own:kept='yes'><own:kept>yes</own:kept></rdf:Description>", ""),
    "in two descriptions": ("<rdf:Description own:kept='yes'/><rdf:Description own:kept='yes'/>", ""),
}
"""Shape -> (body of rdf:RDF, what it is about). All are refused by the XMP toolkit, or were by it beside our caption
(ISO 16684-1, 6.1 and 7.4)."""


@pytest.mark.parametrize("shape", OLD_SHAPES)
def test_packets_of_old_shapes_are_repaired_with_everything_kept(shape: str) -> None:
    body, about = OLD_SHAPES[shape]
    made, reports = captioned(f"{HEAD}{body}{TAIL}".encode(), TITLE)
    assert made.count(b"<rdf:Description") == 1
    assert made.count(b"about=") == 1 and f'rdf:about="{about}"'.encode() in made
    assert said(made, "own:kept") == ["yes"] and made.count(b"own:kept") in (1, 2)
    assert reports == []


def test_a_wrapper_of_before_2003_is_renamed() -> None:
    old = f"{HEAD}<rdf:Description about='uuid:1' own:kept='yes'/>{TAIL}".replace("x:xmpmeta", "x:xapmeta")
    assert b"<x:xmpmeta " in captioned(old.encode(), TITLE)[0]


def test_prefixes_are_those_of_the_standards_and_others_are_kept() -> None:
    gain_map = "http://ns.adobe.com/hdr-gain-map/1.0/"
    old = (
        f"<xmp:xmpmeta xmlns:xmp='adobe:ns:meta/'><r:RDF xmlns:r='{NAMESPACES['rdf']}'><r:Description r:about='' "
        f"xmlns:dc='urn:example:own/' xmlns:d='{NAMESPACES['dc']}' xmlns:h='{gain_map}' xmlns:mine='urn:mine' "
        "dc:kept='yes' d:format='image/jpeg' h:Version='1.0' mine:kept='yes'/></r:RDF></xmp:xmpmeta>"
    )
    made, _ = captioned(old.encode(), TITLE)
    assert made.count(b"xmlns:") == len(set(made.split(b"xmlns:"))) - 1  # each is declared once, at the root
    for wanted in (b"<x:xmpmeta ", b' hdrgm:Version="1.0"', b' dc:format="image/jpeg"', b' mine:kept="yes"'):
        assert wanted in made
    assert b'dc:kept="yes"' not in made and said(made, "own:kept") == ["yes"]


def test_attributes_of_others_stay_attributes() -> None:
    """Readers look for the bytes ` hdrgm:Version="` to know a picture with a gain map; ours become elements."""
    given = packet("", 'own:Version="1.0" dc:title="Port"')
    made, _ = captioned(given, TITLE)
    assert b' own:Version="1.0"' in made
    assert b"<dc:title>" in made and b' dc:title="' not in made


def test_members_of_an_array_that_comes_twice_are_joined() -> None:
    bags = [f"<own:b><rdf:Bag>{''.join(f'<rdf:li>{word}</rdf:li>' for word in words)}</rdf:Bag></own:b>"
            for words in (("net", "boat"), ("boat", "quay"))]  # fmt: skip
    made, reports = captioned(packet("".join(bags)), TITLE)
    assert [li.text for li in next(xmp.parse(made).iter("{urn:example:own/}b"))[0]] == ["net", "boat", "quay"]
    assert reports == []


def test_languages_of_an_alternative_that_comes_twice_are_joined() -> None:
    def alt(**words: str) -> str:
        items = "".join(f'<rdf:li xml:lang="{tag}">{text}</rdf:li>' for tag, text in words.items())
        return f"<own:a><rdf:Alt>{items}</rdf:Alt></own:a>"

    made, reports = captioned(packet(alt(en="Nets", et="Võrgud") + alt(EN="Boats", fr="Filets")), TITLE)
    assert [li.text for li in next(xmp.parse(made).iter("{urn:example:own/}a"))[0]] == ["Nets", "Võrgud", "Filets"]
    assert reports == ["The file says a twice; the second, “Boats”, was left out of the copy."]


TWICE = [
    "<own:kept>1</own:kept><own:kept>2</own:kept>",
    "<own:kept><rdf:Bag><rdf:li>1</rdf:li></rdf:Bag></own:kept><own:kept>2</own:kept>",
    "<own:kept><rdf:Bag><rdf:li>1</rdf:li></rdf:Bag></own:kept><own:kept><rdf:Seq><rdf:li>2</rdf:li></rdf:Seq></own:kept>",
    "<own:kept>1</own:kept></rdf:Description><rdf:Description rdf:about='' own:kept='2'>",
    "</rdf:Description><rdf:Description own:kept='1'/><rdf:Description own:kept='2'/><rdf:Description>",
    "</rdf:Description><rdf:Description own:kept='1'/><rdf:Description><own:kept>2</own:kept>",
]


@pytest.mark.parametrize("body", TWICE)
def test_of_a_single_value_that_comes_twice_the_first_is_kept_and_the_other_said(body: str) -> None:
    made, reports = captioned(packet(body), TITLE)
    assert b"2</own" not in made and b'own:kept="2"' not in made
    assert reports == ["The file says kept twice; the second, “2”, was left out of the copy."]


def test_comments_stay_and_instructions_go() -> None:
    made, _ = captioned(packet("<!-- from the scanner --><?own says?><own:kept>yes</own:kept>"), TITLE)
    assert b"<!-- from the scanner -->" in made and b"<?own" not in made


def test_other_languages_stay_once_each() -> None:
    languages = [("x-default", "old"), ("en", "old"), ("fr", "Filets"), ("FR", "Filets"), ("de", "Netze")]
    items = "".join(f'<rdf:li xml:lang="{tag}">{words}</rdf:li>' for tag, words in languages)
    made, reports = captioned(packet(f"<dc:title><rdf:Alt>{items}</rdf:Alt></dc:title>"), TITLE)
    found = next(xmp.parse(made).iter("{http://purl.org/dc/elements/1.1/}title"))
    assert [(li.get("{http://www.w3.org/XML/1998/namespace}lang"), li.text) for li in found[0]] == [
        ("x-default", "Nets"),
        ("en", "Nets"),
        ("fr", "Filets"),
        ("de", "Netze"),
    ]
    assert reports == ["The file said of dc:title: “old”; the copy has the record's."]


NETS, CITY = Embedding(xmp=(("dc:subject", bag("nets")),)), Embedding(xmp=(("photoshop:City", Text("Reval")),))
REPORTS = [
    (NETS, "<dc:subject><rdf:Bag><rdf:li>boats</rdf:li></rdf:Bag></dc:subject>", 1),
    (NETS, "<dc:subject><rdf:Bag><rdf:li>nets</rdf:li></rdf:Bag></dc:subject>", 0),
    (CITY, "<photoshop:City>Port</photoshop:City>", 1),
    (Embedding(xmp=(("xmp:MetadataDate", Text("2026")),)), "<xmp:MetadataDate>2025</xmp:MetadataDate>", 0),
]


@pytest.mark.parametrize(("embedding", "body", "count"), REPORTS)
def test_what_the_caption_takes_the_place_of_is_said(embedding: Embedding, body: str, count: int) -> None:
    assert len(captioned(packet(body), embedding)[1]) == count


def test_a_long_value_is_said_in_short() -> None:
    _, reports = captioned(packet("", f'photoshop:City="{"x" * 200}"'), CITY)
    assert reports == [f"The file said of photoshop:City: “{'x' * 80}…”; the copy has the record's."]


def region(ident: str, name: str) -> Struct:
    fields = (("Iptc4xmpExt:rId", Text(ident)), ("Iptc4xmpExt:Name", alternative(name, "en")))
    return Struct(tuple(one for one in fields if ident or one[0] != "Iptc4xmpExt:rId"))


def face(name: str, ident: str = "") -> Struct:
    extension = (("mwg-rs:Extensions", Struct((("Iptc4xmpExt:rId", Text(ident)),))),) if ident else ()
    return Struct((("mwg-rs:Name", Text(name)), ("mwg-rs:Type", Text("Face")), *extension))


def regions(*names: tuple[str, str]) -> Bag:
    return Bag(tuple(region(ident, name) for ident, name in names))


def faces(*names: tuple[str, str]) -> Struct:
    return Struct((("mwg-rs:RegionList", Bag(tuple(face(name, ident) for ident, name in names))),))


def names_in(made: bytes, prefix: str) -> list[str]:
    found = xmp.parse(made).iter(f"{{{NAMESPACES[prefix]}}}Name")
    return [one.text if one.text and one.text.strip() else one[0][0].text or "" for one in found]


def test_other_peoples_regions_survive_and_ours_of_before_do_not() -> None:
    theirs = (("boxlore-1", "Anna before"), ("theirs-7", "The dog"), ("", "A boat"))
    before = Embedding(xmp=(("Iptc4xmpExt:ImageRegion", regions(*theirs)), ("mwg-rs:Regions", faces(*theirs))))
    old = xmp.serialize(xmp_merging.captioned(b"", before)[0])
    ours = (("boxlore-1", "Anna"), ("boxlore-2", "Helmi"))
    now = Embedding(xmp=(("Iptc4xmpExt:ImageRegion", regions(*ours)), ("mwg-rs:Regions", faces(*ours))))
    made, _ = captioned(old, now)
    assert names_in(made, "Iptc4xmpExt") == ["Anna", "Helmi", "The dog", "A boat"]
    assert names_in(made, "mwg-rs") == ["Anna", "Helmi", "The dog", "A boat"]
    none = Embedding(xmp=TITLE.xmp, remove=("Iptc4xmpExt:ImageRegion", "mwg-rs:Regions"))
    left, _ = captioned(made, none)
    assert names_in(left, "Iptc4xmpExt") == ["The dog", "A boat"]
    assert names_in(left, "mwg-rs") == ["The dog", "A boat"]
    assert names_in(captioned(captioned(b"", now)[0], none)[0], "mwg-rs") == []


def test_someone_whom_we_mark_is_not_marked_twice() -> None:
    old, _ = captioned(b"", Embedding(xmp=(("mwg-rs:Regions", faces(("", "Anna"))),)))
    made, _ = captioned(old, Embedding(xmp=(("mwg-rs:Regions", faces(("boxlore-1", "Anna"))),)))
    assert names_in(made, "mwg-rs") == ["Anna"]


def test_regions_written_with_attributes_are_read() -> None:
    body = (
        "<mwg-rs:Regions rdf:parseType='Resource'><mwg-rs:RegionList><rdf:Seq>"
        "<rdf:li><rdf:Description mwg-rs:Name='Anna' mwg-rs:Type='Face'/></rdf:li>"
        "<rdf:li><rdf:Description mwg-rs:Name='The dog' mwg-rs:Type='Pet'/></rdf:li>"
        "</rdf:Seq></mwg-rs:RegionList></mwg-rs:Regions>"
    )
    made, _ = captioned(packet(body), Embedding(xmp=(("mwg-rs:Regions", faces(("boxlore-1", "Anna"))),)))
    assert made.count(b"Anna") == 1
    assert made.count(b"The dog") == 1


def test_regions_that_are_none_are_replaced() -> None:
    for body in ("<mwg-rs:Regions>text</mwg-rs:Regions>", ""):
        given = packet(body, "" if body else 'mwg-rs:Regions="text"')
        made, _ = captioned(given, Embedding(xmp=(("mwg-rs:Regions", faces(("boxlore-1", "Anna"))),)))
        assert names_in(made, "mwg-rs") == ["Anna"]


def test_what_is_written_only_where_absent() -> None:
    tool = Embedding(xmp=TITLE.xmp, absent=(("xmp:CreatorTool", Text("Boxlore")),))
    assert said(captioned(b"", tool)[0], "xmp:CreatorTool") == ["Boxlore"]
    assert said(captioned(packet("", 'xmp:CreatorTool="a scanner"'), tool)[0], "xmp:CreatorTool") == ["a scanner"]


def test_what_is_to_go_goes_in_any_shape_and_for_outside_all_goes() -> None:
    remove = Embedding(xmp=TITLE.xmp, remove=("exif:GPSLatitude",))
    for body, attribute in (("<exif:GPSLatitude>1</exif:GPSLatitude>", ""), ("", 'exif:GPSLatitude="1"')):
        assert b"GPS" not in captioned(packet(body, attribute), remove)[0]
    outside = Embedding(xmp=TITLE.xmp, drop_text=True)
    assert b"kept" not in captioned(packet("<own:kept>yes</own:kept>"), outside)[0]


def test_a_language_is_written_once() -> None:
    made, _ = captioned(b"", Embedding(xmp=(("dc:title", Alt((("x-default", "a"), ("en", "a"), ("en", "b")))),)))
    assert made.count(b'xml:lang="en"') == 1


@pytest.mark.parametrize("body", ["<own:a rdf:parseType='Literal'><own:b/></own:a>", "<plain xmlns=''>1</plain>"])
def test_what_cannot_be_put_right_is_refused(body: str) -> None:
    """The XMP toolkit refuses a whole packet for either (ISO 16684-1, C.2); the caption then goes beside the copy."""
    with pytest.raises(ByteFault, match="Its metadata cannot be put right"):
        xmp_merging.captioned(packet(body), TITLE)

"""What a copy carries (IPTC Photo Metadata Standard 2025.1, IIM 4.2, DC-008); read back by others in tests/tasks.

The three-letter codes are held against pycountry's ISO 3166-1.
"""

from dataclasses import replace
from typing import Any

import pycountry
import pytest

from boxlore.core.crosswalk import xmp_and_iim as crosswalk
from boxlore.core.crosswalk.metadata_values import Alt, Bag, Embedding, Seq, Struct, Text, alternative
from boxlore.core.crosswalk.xmp_and_iim import CaptionContext, embedding_of
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.in_force import build
from boxlore.core.records.item_record import ALTERED, Material, Record, ScanFile
from boxlore.core.statements import KEEPER, Kind, Reading, ReadingValue, Said, Statement, Subject, Sure
from boxlore.core.statements import Source as SaidBy

SCAN = ScanFile(id="scan", path="scans/a.jpg", sha256="0", bytes=1, width=300, height=200, media_type="image/jpeg")
LEIDA = Person(id="leida", name="Leida Rourke", sort_name="Rourke, Leida", forms=("Leida Rourke",), calls=("Leida",))
SHARED = CaptionContext(collection="Tamm and Rourke", collection_id="c0", holder="Mia Rourke")


def told(name: str, words: str, value: ReadingValue | None = None, **more: Any) -> tuple[Statement, Reading | None]:
    statement = Statement(
        id=f"s-{name}-{words[:5]}",
        act="act",
        subject=Subject(Kind.ITEM, "item"),
        field=name,
        words=words,
        recorded_at="2026-01-01T00:00:00.000Z",
        **more,
    )
    return statement, Reading(name, value, "test") if value else None


def record(*rows: tuple[Statement, Reading | None], **more: Any) -> Record:
    material = Material(id="item", number="TRA-0001", statements=rows, scans=(SCAN,), **more)
    return build(material, {"leida": LEIDA}, {"leida": "Leida Rourke"})


def made(*rows: tuple[Statement, Reading | None], **more: Any) -> Embedding:
    return embedding_of(record(*rows), SCAN, CaptionContext(collection="Tamm and Rourke", **more))


def xmp(embedding: Embedding, name: str) -> Any:
    return dict(embedding.xmp).get(name)


def test_every_row_of_iim_and_exif_has_its_property() -> None:
    properties = {name for name, _ in crosswalk.XMP_ROWS}
    assert {name for _, name, _ in crosswalk.IIM_ROWS} <= properties
    assert {name for _, name, _ in crosswalk.EXIF_ROWS} <= properties
    assert not {"xmp:CreateDate", "xmp:ModifyDate"} & properties


DATES = [
    ("1912-06-14", "1912-06-14", "19120614"),
    ("1912-06", "1912-06", "19120600"),
    ("1912", "1912", "19120000"),
    ("", None, None),
]


@pytest.mark.parametrize(("edtf", "plain", "digits"), DATES)
def test_a_date_is_as_precise_as_known(edtf: str, plain: str | None, digits: str | None) -> None:
    embedding = made(told("date", "then", DateReading.from_edtf(edtf))) if edtf else made()
    assert xmp(embedding, "photoshop:DateCreated") == (Text(plain) if plain else None)
    assert dict(embedding.iim)[2, 55] == ((digits,) if digits else ())
    assert dict(embedding.iim)[2, 60] == ()
    assert (xmp(embedding, "dcterms:created") or Text("")).words == edtf


ORIGINALS = [
    ("1912-06-14", Sure.SURE, "1912-06-14"),
    ("1912-06-14", Sure.LIKELY, ""),
    ("1912-06-14?", Sure.SURE, ""),
    ("1912-06", Sure.SURE, ""),
]


@pytest.mark.parametrize(("edtf", "sure", "day"), ORIGINALS)
def test_the_exif_day_is_written_only_for_a_full_and_sure_date(edtf: str, sure: Sure, day: str) -> None:
    assert made(told("date", "then", DateReading.from_edtf(edtf), sure=sure)).original_day == day


RIGHTS = [
    ("© Mia Rourke", None, "True"),
    ("https://rightsstatements.org/vocab/InC/1.0/", "https://rightsstatements.org/vocab/InC/1.0/", "True"),
    ("Free (https://creativecommons.org/publicdomain/mark/1.0/).", "https://creativecommons.org/publicdomain/mark/1.0/",
     "False"),
    ("In copyright", "http://rightsstatements.org/vocab/InC/1.0/", "True"),
    ("No Copyright - United States.", "http://rightsstatements.org/vocab/NoC-US/1.0/", "False"),
    ("See http://rightsstatements.org/vocab/NoC-US/1.0/", "http://rightsstatements.org/vocab/NoC-US/1.0/", "False"),
    ("https://creativecommons.org/licenses/by/4.0/", "https://creativecommons.org/licenses/by/4.0/", "True"),
    ("nobody knows", None, None),
]  # fmt: skip


@pytest.mark.parametrize(("words", "link", "marked"), RIGHTS)
def test_rights(words: str, link: str | None, marked: str | None) -> None:
    embedding = made(told("rights", words))
    assert xmp(embedding, "dc:rights").words[0] == ("x-default", words)
    assert xmp(embedding, "xmpRights:WebStatement") == (Text(link) if link else None)
    assert xmp(embedding, "xmpRights:Marked") == (Text(marked) if marked else None)
    assert dict(embedding.exif)[0x8298] == words


def test_our_own_words_are_in_the_language_asked_for_and_told_ones_in_theirs() -> None:
    back = replace(SCAN, side="verso", role=ALTERED)
    context = CaptionContext(collection="Tamm and Rourke", language="fr", told_in="et")
    values = dict(embedding_of(record(told("title", "Võrgud"), told("place", "sadam")), back, context).xmp)
    assert values["dc:title"] == alternative("Võrgud", "et")
    assert values["Iptc4xmpCore:AltTextAccessibility"] == alternative(
        "Version modifiée de\u00a0: Le verso de\u00a0: Photographie\u00a0: Võrgud, sadam.", "fr"
    )
    assert values["dc:description"] == alternative("Version modifiée (coloriée ou retouchée). Le verso.", "fr")


def test_words_stand_in_their_own_language() -> None:
    embedding = made(told("title", "Võrgud", language="et"), told("occasion", "Jaanipäev", language="et"))
    assert xmp(embedding, "dc:title") == Alt((("x-default", "Võrgud"), ("et", "Võrgud")))
    assert xmp(embedding, "Iptc4xmpExt:Event") == Alt((("x-default", "Jaanipäev"), ("et", "Jaanipäev")))


def test_the_caption_writer_is_the_narrator_and_never_the_keeper() -> None:
    by_leida = told("story", "It was cold.", source=SaidBy(Said.NARRATOR, "leida"))
    assert xmp(made(by_leida, told("occasion", "x", source=KEEPER)), "photoshop:CaptionWriter") == Text("Leida Rourke")
    assert xmp(made(told("story", "It was cold.")), "photoshop:CaptionWriter") is None


def test_what_is_not_told_is_left_to_the_scan_but_for_when_and_where() -> None:
    embedding = made()
    assert {"dc:creator", "dc:rights", "Iptc4xmpExt:ImageRegion"} <= set(embedding.unfilled)
    assert {"photoshop:DateCreated", "photoshop:City", "exif:GPSLatitude", "Iptc4xmpExt:LocationCreated"} <= set(
        embedding.remove
    )
    assert not set(embedding.unfilled) & set(embedding.remove)
    assert (2, 80) in embedding.unfilled_iim and (2, 80) not in dict(embedding.iim)
    assert dict(embedding.iim)[2, 90] == ()


def test_a_place_of_a_country_without_a_code_in_our_table_leaves_iim_out() -> None:
    place = Place(name="Apia", city="Apia", country="Samoa", country_code="WS", lat=-13.8, lon=-171.7)
    embedding = made(told("place", "Apia", PlaceReading("Apia", "match", (place,))))
    assert xmp(embedding, "Iptc4xmpCore:CountryCode") == Text("WS")
    assert dict(embedding.iim)[2, 100] == ()
    fields = dict(xmp(embedding, "Iptc4xmpExt:LocationShown").items[0].fields)
    assert fields["exif:GPSLatitude"] == Text("-13.8")


def test_the_codes_of_three_letters_are_those_of_iso_3166() -> None:
    for two, three in crosswalk.ALPHA_3.items():
        assert pycountry.countries.get(alpha_2=two).alpha_3 == three


def test_collection_print_and_number() -> None:
    embedding = embedding_of(record(path=(("box", "3"), ("folder", "12")), position=4), SCAN, SHARED)
    collection = dict(xmp(embedding, "mwg-coll:Collections").items[0].fields)
    assert collection["mwg-coll:CollectionURI"] == Text("urn:uuid:c0")
    print_itself = dict(xmp(embedding, "Iptc4xmpExt:ArtworkOrObject").items[0].fields)
    assert print_itself["Iptc4xmpExt:AOSourceInvNo"] == Text("TRA-0001; Box 3 / Folder 12 / Item 4")
    assert print_itself["Iptc4xmpExt:AOSource"] == Text("Mia Rourke")
    assert xmp(embedding, "dc:source") == Text("Mia Rourke; Tamm and Rourke; TRA-0001; Box 3 / Folder 12 / Item 4")
    assert xmp(embedding, "Iptc4xmpExt:DigImageGUID") == Text("urn:uuid:scan")


def test_how_a_copy_was_made_is_said_only_where_it_was_encoded() -> None:
    assert xmp(made(), "xmpMM:History") is None
    history = xmp(made(made="Newly encoded"), "xmpMM:History")
    assert isinstance(history, Seq) and isinstance(history.items[0], Struct)
    assert dict(history.items[0].fields)["stEvt:parameters"] == Text("Newly encoded")


def test_several_photographers() -> None:
    embedding = made(told("photographer", "Karl Akel"), told("photographer", "Eva Akel"))
    assert xmp(embedding, "dc:creator") == Seq((Text("Karl Akel"), Text("Eva Akel")))
    assert dict(embedding.iim)[2, 80] == ("Karl Akel",)
    assert dict(embedding.exif)[0x013B] == "Karl Akel; Eva Akel"
    assert isinstance(xmp(embedding, "Iptc4xmpExt:ImageRegion"), Bag)
    assert xmp(embedding, "Iptc4xmpExt:PersonInImage") is None


def test_who_is_told_without_a_name_is_no_name_of_the_picture() -> None:
    """PersonInImage is the name of a person in it (IPTC Photo Metadata Standard 2025.1); the caption has the words."""
    embedding = made(told("person", "Anna Tamm"), told("person", "the cook"))
    assert xmp(embedding, "Iptc4xmpExt:PersonInImage") == Bag((Text("Anna Tamm"),))
    assert "the cook" in str(xmp(embedding, "dc:description"))


def test_the_archives_reference_finds_the_original_too() -> None:
    """A rule of our own: dc:source holds all that finds the original (IPTC Photo Metadata Standard 2025.1, Source)."""
    xmp = dict(made(told("archive_reference", " P-991 "), holder="Mia Rourke").xmp)
    assert xmp["dc:source"] == Text("Mia Rourke; Tamm and Rourke; TRA-0001; P-991")
    assert dict(made(holder="Mia Rourke").xmp)["dc:source"] == Text("Mia Rourke; Tamm and Rourke; TRA-0001")


def test_an_item_of_which_little_is_known_says_only_that_of_the_print() -> None:
    """IPTC Photo Metadata Standard 2025.1, Artwork or Object: every field may be left out."""
    bare = embedding_of(record(), SCAN, CaptionContext(collection="Tamm and Rourke", collection_id="c0", holder=""))
    (artwork,) = dict(bare.xmp)["Iptc4xmpExt:ArtworkOrObject"].items
    fields = dict(artwork.fields)
    assert "Iptc4xmpExt:AOCircaDateCreated" not in fields and "Iptc4xmpExt:AOSource" not in fields
    assert fields["Iptc4xmpExt:AOSourceInvNo"] == Text("TRA-0001")


def test_a_place_without_a_point_has_no_coordinates() -> None:
    place = PlaceReading("Grandpa's farm", "match", (Place(name="Grandpa's farm"),))
    properties = dict(embedding_of(record(told("place", "Grandpa's farm", place)), SCAN, SHARED).xmp)
    (shown,) = properties["Iptc4xmpExt:LocationShown"].items
    assert not [name for name, _ in shown.fields if name.startswith("exif:GPS")]

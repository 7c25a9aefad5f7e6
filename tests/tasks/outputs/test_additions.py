"""What another program has put into a copy is kept, and what we put there ourselves goes with the record.

The other programs are pyexiv2 and exiv2 (both on libexiv2), which also read what is left. What a property or dataset
takes, one text or many, is told by the IPTC Photo Metadata Standard 2025.1 and IIM 4.2, chapter 6.
"""

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pyexiv2
import pytest
from tests.drawn import some
from tests.made_once import CopyOf
from tests.tasks.outputs.test_copies import FRONT, ON, SETTINGS, scan, take, tell, telling

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.output_paths import COPIES_LIST
from boxlore.tasks.outputs.copies import Copied, copies
from boxlore.tasks.outputs.copies_being_made import FILE_NAME
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.strike import strike_out, targets_everywhere
from boxlore.tasks.telling.undoing import Done, Steps


def make_home(top: Path) -> Path:
    folder = top / "family"
    start(folder, SETTINGS, on_day=ON)
    front = scan(top / "nets_f.jpg")
    edit(front, xmp={"Xmp.photoshop.City": "Dunedin", "Xmp.dc.creator": ["a scanner"]},
         exif={"Exif.Photo.DateTimeOriginal": "2026:03:01 12:00:00"})  # fmt: skip
    take(folder, Planned(key="nets", sides=(ScanSide(front),), box="1", folder="2"))
    for name, words in (("title", "Nets drying"), ("keyword", "nets"), ("keyword", "poles"), ("place", "Haapsalu")):
        tell(folder, name, words)
    return folder


@pytest.fixture
def home(copy_of: CopyOf) -> Path:
    """A collection with one print, beside the folder of its copies; its scan says where and when it was made."""
    return copy_of(make_home)


def edit(path: Path, **parts: Mapping[str, Any]) -> None:
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp(dict(parts.get("xmp", {})))
        image.modify_iptc(dict(parts.get("iptc", {})))
        image.modify_exif(dict(parts.get("exif", {})))


def read(path: Path) -> dict[str, Any]:
    with pyexiv2.Image(str(path)) as image:
        return {**image.read_xmp(), **image.read_iptc(), **image.read_exif()}


def made(folder: Path, *, over: bool = False, **more: Any) -> Copied:
    with open_collection(folder, write=False, on_day=ON) as collection:
        collection.over = over
        return next(iter(copies(collection, folder.parent / "copies", **more)))


def copy_of(folder: Path) -> Path:
    return folder.parent / "copies" / FRONT


def take_back(folder: Path, name: str, words: str) -> None:
    """What was told in these words is taken back."""
    with telling(folder) as (collection, _, item):
        told = [kept.statement for kept in collection.store.history(item.id, name) if kept.statement.words == words]
        Steps(collection).withdraw(Done(told[-1].act, "a word", item.id), undoes=False)


def strike(folder: Path, words: str) -> None:
    """As `boxlore strike everywhere any --words`."""
    with open_collection(folder, on_day=ON) as collection:
        strike_out(collection, [target.statement for target in targets_everywhere(collection, words)[0]])


KEPT: list[tuple[str, dict[str, Any], str, Any]] = [
    ("xmp", {"Xmp.dc.subject": ["nets", "poles", "aunt"]}, "Xmp.dc.subject", ["nets", "poles", "aunt"]),
    ("xmp", {"Xmp.dc.subject": ["aunt"]}, "Xmp.dc.subject", ["nets", "poles", "aunt"]),
    ("iptc", {"Iptc.Application2.Keywords": ["nets", "uncle"]}, "Iptc.Application2.Keywords",
     ["nets", "poles", "uncle"]),
    ("xmp", {"Xmp.dc.creator": ["a scanner", "Karl"]}, "Xmp.dc.creator", ["a scanner", "Karl"]),
    ("xmp", {"Xmp.dc.rights": {'lang="x-default"': "mine"}}, "Xmp.dc.rights", {'lang="x-default"': "mine"}),
    ("xmp", {"Xmp.photoshop.Instructions": "Ask me"}, "Xmp.photoshop.Instructions", "Ask me"),
    ("xmp", {"Xmp.photoshop.DateCreated": "1912-06"}, "Xmp.photoshop.DateCreated", "1912-06"),
    ("xmp", {"Xmp.dcterms.created": "1912-06"}, "Xmp.dcterms.created", "1912-06"),
    ("iptc", {"Iptc.Application2.Writer": ["WE"]}, "Iptc.Application2.Writer", ["WE"]),
    ("iptc", {"Iptc.Application2.DateCreated": "1912-06-14"}, "Iptc.Application2.DateCreated", "1912-06-14"),
    ("exif", {"Exif.Photo.UserComment": "charset=Ascii mine"}, "Exif.Photo.UserComment", "charset=Ascii mine"),
    ("exif", {"Exif.Photo.DateTimeOriginal": "1912:06:14 00:00:00"}, "Exif.Photo.DateTimeOriginal",
     "1912:06:14 00:00:00"),
    ("xmp", {"Xmp.lr.hierarchicalSubject": ["a|b"]}, "Xmp.lr.hierarchicalSubject", ["a|b"]),
]  # fmt: skip


@pytest.mark.parametrize(("part", "written", "name", "wanted"), some(KEPT))
def test_what_another_program_added_stays_through_three_runs(
    part: str, written: dict[str, Any], name: str, wanted: Any, home: Path
) -> None:
    made(home)
    edit(copy_of(home), **{part: written})
    for _ in range(2):
        copied = made(home)
        assert "what it added was kept." in copied.why and "Another program wrote" not in copied.why
        assert read(copy_of(home))[name] == wanted
    assert copied.state == "same"


def test_what_we_wrote_goes_with_the_record_and_what_another_wrote_does_not(home: Path) -> None:
    tell(home, "keyword", "boats")
    tell(home, "rights", "© Mia Rourke")
    made(home)
    edit(copy_of(home), xmp={"Xmp.dc.subject": ["nets", "poles", "boats", "aunt"], "Xmp.xmp.Label": "theirs"})
    take_back(home, "keyword", "boats")
    take_back(home, "rights", "© Mia Rourke")
    made(home)
    there = read(copy_of(home))
    assert there["Xmp.dc.subject"] == ["nets", "poles", "aunt"] and "Xmp.dc.rights" not in there
    assert there["Iptc.Application2.Keywords"] == ["nets", "poles"] and "Iptc.Application2.Copyright" not in there


def test_a_word_that_another_wrote_first_stays_when_the_record_loses_it(home: Path) -> None:
    made(home)
    edit(copy_of(home), xmp={"Xmp.dc.subject": ["nets", "poles", "aunt"]})
    tell(home, "keyword", "aunt")
    made(home)
    take_back(home, "keyword", "aunt")
    made(home)
    assert read(copy_of(home))["Xmp.dc.subject"] == ["nets", "poles", "aunt"]


def test_where_both_say_one_thing_the_record_is_in_the_copy_and_the_others_words_are_said(home: Path) -> None:
    made(home)
    edit(
        copy_of(home),
        xmp={
            "Xmp.photoshop.Credit": "me",
            "Xmp.dc.title": {'lang="x-default"': "Our nets", 'lang="fr"': "Filets"},
            "Xmp.photoshop.City": "Reval",
        },
        iptc={"Iptc.Application2.ObjectName": "Our old nets"},
    )
    tell(home, "title", "Nets on poles")
    copied = made(home)
    for name, words in (
        ("photoshop:Credit", "me"),
        ("dc:title", "Our nets"),
        ("photoshop:City", "Reval"),
        ("IIM 2:05", "Our old nets"),
    ):
        assert f"Another program wrote of {name}: “{words}”; the copy has the record's." in copied.why
    assert copied.why.count("Another program wrote") == 4  # our title of before is none
    there = read(copy_of(home))
    assert there["Xmp.photoshop.Credit"] == "Mia Rourke, Port Chalmers" and there["Xmp.photoshop.City"] == "Haapsalu"
    assert there["Xmp.dc.title"] == {
        'lang="x-default"': "Nets on poles", 'lang="en"': "Nets on poles", 'lang="fr"': "Filets"
    }  # fmt: skip
    assert "Another program wrote" not in made(home).why


def test_structures_of_others_stay_and_what_they_put_into_ours(home: Path) -> None:
    made(home)
    edit(
        copy_of(home),
        xmp={
            "Xmp.mwg-coll.Collections[2]/mwg-coll:CollectionName": "The cousins' album",
            "Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOStyle": "studio",
        },
    )
    for _ in range(2):
        made(home)
    there = read(copy_of(home))
    assert there["Xmp.mwg-coll.Collections[2]/mwg-coll:CollectionName"] == "The cousins' album"
    assert there["Xmp.mwg-coll.Collections[1]/mwg-coll:CollectionName"] == "Tamm and Rourke photographs"
    assert there["Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOStyle"] == "studio"
    assert "Xmp.iptcExt.ArtworkOrObject[2]/Iptc4xmpExt:AOSource" not in there


def test_the_scans_own_day_and_place_are_not_brought_back(home: Path) -> None:
    """All that the scan says is put into its copy, as programs do that “restore” what is missing; and a position."""
    made(home)
    edit(
        copy_of(home),
        xmp={"Xmp.photoshop.City": "Dunedin", "Xmp.exif.GPSLatitude": "45,52.47S"},
        exif={"Exif.Photo.DateTimeOriginal": "2026:03:01 12:00:00", "Exif.GPSInfo.GPSLatitudeRef": "S"},
    )
    copied = made(home)
    there = read(copy_of(home))
    assert there["Xmp.photoshop.City"] == "Haapsalu" and "Exif.Photo.DateTimeOriginal" not in there
    assert not [name for name in there if "GPS" in name and "LocationShown" not in name and "Tag" not in name]
    assert "Another program wrote coordinates into it; a copy carries none." in copied.why


def test_a_copy_that_lost_our_note_keeps_all_that_may_be_anothers(home: Path) -> None:
    tell(home, "keyword", "boats")
    made(home)
    edit(copy_of(home), xmp={"Xmp.boxlore.wrote": ""})
    take_back(home, "keyword", "boats")
    made(home)
    assert read(copy_of(home))["Xmp.dc.subject"] == ["nets", "poles", "boats"]


def test_a_smaller_copy_keeps_what_was_added(home: Path) -> None:
    made(home, longest=100)
    small = copy_of(home).with_name("TRA-0001_f_100.jpg")
    edit(small, xmp={"Xmp.dc.subject": ["aunt"]})
    made(home, longest=100)
    assert read(small)["Xmp.dc.subject"] == ["nets", "poles", "aunt"]


def test_a_caption_beside_its_copy_keeps_what_was_added_and_another_file_is_left(home: Path, tmp_path: Path) -> None:
    take(home, Planned(key="quay", sides=(ScanSide(scan(tmp_path / "quay.gif", "GIF")),), box="1", folder="2"))

    def beside() -> tuple[Copied, str]:
        with open_collection(home, write=False, on_day=ON) as collection:
            copied = list(copies(collection, home.parent / "copies"))[-1]
        return copied, words.read_text("utf-8")

    words = copy_of(home).with_name("TRA-0002_f.gif.xmp")
    plain = beside()[1] if not words.parent.exists() else ""
    added = "<dc:subject><rdf:Bag><rdf:li>aunt</rdf:li></rdf:Bag></dc:subject><photoshop:Credit>me</photoshop:Credit>"
    changed = re.sub("<photoshop:Credit>.*?</photoshop:Credit>", added, plain)
    words.write_text(changed, "utf-8")
    for _ in range(2):
        copied, text = beside()
        assert "<rdf:li>aunt</rdf:li>" in text and "<photoshop:Credit>Mia Rourke, Port Chalmers<" in text
    words.write_text(changed, "utf-8")
    assert "Another program wrote of photoshop:Credit: “me”" in beside()[0].why
    for foreign in ("a letter", "<x:xmpmeta xmlns:x='adobe:ns:meta/'/>"):
        words.write_text(foreign, "utf-8")
        copied, text = beside()
        assert (copied.state, text) == ("refused", foreign)


ADDED_BY_ANOTHER: list[tuple[str, dict[str, Any]]] = [
    ("xmp", {"Xmp.dc.subject": ["nets", "poles", "boats"]}),
    ("xmp", {"Xmp.lr.hierarchicalSubject": ["sea|boats"]}),
    ("xmp", {"Xmp.photoshop.Headline": "The boats!"}),
    ("xmp", {"Xmp.dc.title": {'lang="x-default"': "Nets drying", 'lang="fr"': "Bateaux, boats"}}),
    ("xmp", {"Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOStyle": "boats"}),
    ("iptc", {"Iptc.Application2.Keywords": ["nets", "boats"]}),
    ("iptc", {"Iptc.Application2.Writer": ["boats"]}),
    ("exif", {"Exif.Photo.UserComment": "charset=Ascii boats"}),
]


def test_a_copy_that_is_none_any_more_is_refused_and_not_called_an_earlier_copy(home: Path) -> None:
    """Cut short, emptied, with a fault in its picture, another picture: in the way, untouched, and replaced on wish."""
    made(home)
    whole = copy_of(home).read_bytes()
    for damaged in (whole[:1500], b"", whole[:-400] + bytes(400), (home.parent / "nets_f.jpg").read_bytes()):
        copy_of(home).write_bytes(damaged)
        copied = made(home)
        assert copied.state == "refused" and "is no copy of this scan" in copied.why
        assert "earlier copy" not in copied.why and copy_of(home).read_bytes() == damaged
    assert made(home, over=True).state == "written" and copy_of(home).read_bytes() == whole


@pytest.mark.parametrize(("part", "written"), some(ADDED_BY_ANOTHER))
def test_words_that_were_struck_do_not_stay_as_anothers(part: str, written: dict[str, Any], home: Path) -> None:
    """Another program wrote the same word, before or after it was told, in any field and shape."""
    made(home)
    edit(copy_of(home), **{part: written})
    tell(home, "keyword", "boats")
    assert "what it added was kept." in made(home).why
    strike(home, "boats")
    copied = made(home)
    assert copied.state == "refused" and "what it added may be what was struck." in copied.why
    assert "say --over to replace it" in copied.why
    assert made(home, over=True).state == "written"
    assert b"boats" not in copy_of(home).read_bytes() and "boats" not in str(read(copy_of(home)))
    edit(copy_of(home), xmp={"Xmp.dc.subject": ["aunt"]})
    assert "what it added was kept." in made(home).why  # what is added after the strike stays
    assert read(copy_of(home))["Xmp.dc.subject"] == ["nets", "poles", "aunt"]


def test_a_strike_reaches_a_copy_that_nobody_changed_and_leaves_those_of_other_items(
    home: Path, tmp_path: Path
) -> None:
    take(home, Planned(key="quay", sides=(ScanSide(scan(tmp_path / "quay_f.jpg", shade=9)),), box="1", folder="2"))
    tell(home, "keyword", "boats")
    made(home)
    with open_collection(home, write=False, on_day=ON) as collection:
        list(copies(collection, home.parent / "copies"))
    second = copy_of(home).with_name("TRA-0002_f.jpg")
    edit(second, xmp={"Xmp.dc.subject": ["aunt"]})
    strike(home, "boats")
    with open_collection(home, write=False, on_day=ON) as collection:
        first, other = copies(collection, home.parent / "copies")
    assert first.state == "written" and b"boats" not in copy_of(home).read_bytes()
    assert "what it added was kept." in other.why and read(second)["Xmp.dc.subject"] == ["aunt"]


@pytest.mark.parametrize("longest", [0, 100])
@pytest.mark.parametrize("part", ["xmp", "iptc", "exif"])
def test_nothing_that_another_program_added_is_in_a_copy_for_outside(part: str, longest: int, home: Path) -> None:
    """A copy for outside that was changed is refused, and replaced on wish; names that nobody told stay out too."""
    made(home, to=To.OUTSIDE, longest=longest)
    target = copy_of(home) if not longest else copy_of(home).with_name("TRA-0001_f_100.jpg")
    added = {
        "xmp": {"Xmp.dc.subject": ["Ilse Living"], "Xmp.lr.hierarchicalSubject": ["family|Ilse Living"]},
        "iptc": {"Iptc.Application2.Keywords": ["Ilse Living"]},
        "exif": {"Exif.Photo.UserComment": "charset=Ascii Ilse Living"},
    }
    edit(target, **{part: added[part]})
    copied = made(home, to=To.OUTSIDE, longest=longest)
    assert copied.state == "refused" and "may not be for outside" in copied.why
    assert made(home, to=To.OUTSIDE, longest=longest, over=True).state == "written"
    assert b"Ilse" not in target.read_bytes()
    assert made(home, to=To.OUTSIDE, longest=longest).state == "same"


def test_a_changed_copy_of_the_family_is_not_taken_for_one_for_outside(home: Path) -> None:
    made(home)
    edit(copy_of(home), xmp={"Xmp.dc.subject": ["Ilse Living"]})
    with pytest.raises(WrongUse, match="holds copies for family"):
        made(home, to=To.OUTSIDE)
    for listed in (COPIES_LIST, FILE_NAME):
        (home.parent / "copies" / listed).unlink(missing_ok=True)
    copied = made(home, to=To.OUTSIDE)
    assert copied.state == "refused" and "may not be for outside" in copied.why

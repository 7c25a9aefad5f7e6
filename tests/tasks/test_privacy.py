"""A planted living child: no form of her name in any byte, name, alt text or caption of what goes outside.

Every output that is made for outside is made here; the words of PDFs are read by poppler's pdftotext and pikepdf,
the captions in pictures as bytes and by exiv2. The rule is ours (core/records/audience).
"""

import re
import shutil
import subprocess
import wave
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from functools import partial
from pathlib import Path

import exiv2
import pikepdf
import pytest
from PIL import Image

from boxlore.core.crosswalk.receiving_archive import TAKES, Archive
from boxlore.core.errors import CouldNot
from boxlore.core.records.audience import To
from boxlore.core.statements import KEEPER, Kind, Said, read_source
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.transfer import TransferOrder as Transfer
from boxlore.tasks.archive.transfer import names_left, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import Selection, records, seen_by
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels, sheet, slips, worksheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.recordings import keep_recording
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.time_log import sittings, write_log
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
OUTSIDE = PrintOrder(to=To.OUTSIDE)
WEB = Archive(base_url="https://museum.example", gateway="https://gateway.example/oai", email="archive@museum.example")

FORMS = (
    "tuulikki", "tuulike", "maarja", "t. m. rourke", "t.m. rourke", "t. rourke", "rourke, t.", "rourke t.", "t.m.r.",
    "tuulikki_rourke", "parata-rourke", "pippa", "marlowe",
)  # fmt: skip
"""Given names, the nickname, initials, married name, in any case; none of them is anyone else's in the demo.

The last two are of a child of whom the whole name alone was told: its parts are found too."""

TOLD = (
    ("TRA-0001", "story", "T. M. Rourke asked about this ship at school."),
    ("TRA-0001", "keyword", "for Tuulike"),
    ("TRA-0001", "title", "The harbour that TUULIKKI likes"),
    ("TRA-0002", "occasion", "Maarja’s great-great-grandfather at the studio"),
    ("TRA-0002", "inscription", "for Tuulikki Rourke"),
    ("TRA-0004", "rights", "Mrs Parata-Rourke may have a copy"),
    ("TRA-0005", "photographer", "Tuulikki Parata-Rourke"),
    ("TRA-0005", "process", "copied by Rourke, T."),
    ("TRA-0006", "named", "Tuulike"),
    ("TRA-0006", "care", "Ask Tuulikkile first."),
    ("TRA-0007", "person", "Pippa Marlowe"),
    ("TRA-0008", "story", "Pippa swings on it."),
    ("TRA-0008", "keyword", "the Marlowe swing"),
    ("TRA-0002", "own-clothes", "The dress that Tuulikki has now."),
)


@pytest.fixture(scope="module")
def collection(demo: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Collection]:
    home = tmp_path_factory.mktemp("private") / "c"
    shutil.copytree(demo, home, ignore=shutil.ignore_patterns("copies", "print", "transfer", "pages"))
    picture = home.parent / "tuulikki_rourke_beach.jpg"
    exif = Image.Exif()
    exif[0x010E] = "Tuulike at the beach"
    Image.new("RGB", (600, 400), "grey").save(picture, exif=exif)
    with open_collection(home, on_day=ON) as opened:
        list(take_in(opened, by_suffix([picture]), IntakeOptions(copy=True)))
        _plant(opened)
        yield opened


def _plant(collection: Collection) -> None:
    teller = Teller(collection)
    act = collection.act("a child")
    child = act.new(Kind.PERSON)
    for field, words in (
        ("given", "Tuulikki Maarja"), ("family", "Rourke"), ("married_as", "Parata-Rourke"), ("nickname", "Tuulike"),
        ("born", "3 March 2016"),
    ):  # fmt: skip
        teller.add(act, child, field, words, Telling())
    act.done()
    question = (
        '[[prompt]]\nfield = "story"\nquestion = "Tell me."\n[[prompt]]\nfield = "own-clothes"\nquestion = "Worn?"\n'
    )
    (collection.folder / "prompts.toml").write_text(question, "utf-8")
    for item, field, words in TOLD:
        teller.tell(find_item(collection, item), field, words, Telling(source=KEEPER, audience="anyone"))
    for by in ("narrator:Tuulikki Rourke", "narrator:Maarja Unknown-Neighbour", "document:letter of Tuulikki Rourke"):
        source = read_source(by)
        teller.tell(find_item(collection, "TRA-0007"), "story", f"The farm, as told {len(by)}.", Telling(source=source))
    _sit_with_her(collection)
    number, _ = collection.store.items()[-1]
    teller.tell(find_item(collection, number), "person", "Tuulike", Telling())


def _sit_with_her(collection: Collection) -> None:
    """She tells herself, and her voice is kept under a file name of hers."""
    sitting = Sitting(collection, narrator="Tuulike", interviewer="Maarja Parata-Rourke")
    sitting.begin()
    item = find_item(collection, "TRA-0001").id
    sitting.show(item)
    sitting.keep(sitting.record(item), sitting.prompts[0], "I went there with my class")
    sound = collection.folder.parent / "tuulike_rourke_2026.wav"
    with wave.open(str(sound), "wb") as out:
        out.setparams((1, 2, 8000, 0, "NONE", ""))
        out.writeframes(bytes(16000 * 60))
    keep_recording(collection, sitting.id, sound)


def test_she_is_withheld_and_everything_told_of_her_is_counted(collection: Collection) -> None:
    seen = seen_by(collection, To.OUTSIDE)
    assert any(seen.withheld.finds(form) for form in FORMS)
    counted = {record.number: record.withheld for record in seen.records()}
    assert all(counted[item] for item, _, _ in TOLD)
    inside = " ".join(told.words for record in records(collection) for rows in record.told.values() for told in rows)
    assert "Tuulike" in inside, "the plant is there for the family"


def written_words(path: Path) -> str:
    """Everything that can be read of a file: bytes in two encodings, and what stands inside a PDF or a picture."""
    data = path.read_bytes()
    words = [data.decode("utf-8", "replace"), data.decode("utf-16-le", "replace")]
    if path.suffix == ".pdf":
        words.append(subprocess.run(["pdftotext", str(path), "-"], capture_output=True, text=True, check=True).stdout)
        with pikepdf.open(path) as pdf:
            for one in pdf.objects:
                if isinstance(one, pikepdf.Stream):
                    try:
                        words.append(one.read_bytes().decode("utf-8", "replace"))
                    except pikepdf.PdfError:
                        continue
                elif isinstance(one, pikepdf.Dictionary):
                    words += [str(one.get(key, "")) for key in ("/Alt", "/Title", "/ActualText", "/Contents", "/T")]
    if path.suffix in (".jpg", ".tif", ".png"):
        image = exiv2.ImageFactory.open(str(path))
        image.readMetadata()
        for one in (image.exifData(), image.iptcData(), image.xmpData()):
            words += [datum.toString() for datum in one]
    return " ".join(words).casefold()


_SOUGHT = {form: re.compile(rf"(?<!\w){re.escape(form)}") for form in FORMS}
"""At the beginning of a word: “…present. Rourke family” is not “T. Rourke”."""


def leaks(folder: Path) -> list[str]:
    found = []
    for path in sorted(folder.rglob("*")):
        names = path.relative_to(folder).as_posix().casefold()
        words = written_words(path) if path.is_file() else ""
        found += [
            f"{names}: {form}"
            for form, sought in _SOUGHT.items()
            if (form in words and sought.search(words)) or form in names  # a pattern alone is slow on bytes
        ]
    assert any(folder.rglob("*")), "nothing was made"
    return found


def make_copies(collection: Collection, out: Path) -> None:
    assert list(copies(collection, out, to=To.OUTSIDE))


def make_log(collection: Collection, out: Path) -> None:
    for ident, _ in sittings(collection):
        write_log(collection, ident, out, To.OUTSIDE)


def package(collection: Collection) -> Path:
    """A transfer with everything an archive may take, made once for the rows that look at one file of it."""
    made = collection.folder.parent / "package"
    if not made.exists():
        transfer(collection, made, order=Transfer(archive=WEB.taking(TAKES)))
    return made


def take_from(part: str, collection: Collection, out: Path, names: tuple[str, ...]) -> None:
    """Those files of one part of the package, all of which must be there, alone in `out`."""
    out.mkdir()
    for name in names:
        found = [path for path in (package(collection) / part).rglob(name) if path.is_file()]
        assert found, f"{name} was not made"
        for path in found:
            shutil.copyfile(path, out / path.name)


def make_chapters(collection: Collection, out: Path) -> None:
    make_log(collection, out)
    for path in out.rglob("*.csv"):
        path.unlink()
    assert len(list(out.rglob("*.vtt"))) == 2


IN_THE_PACKAGE = {
    "dublin core": ("oai_dc.xml", "dcterms.xml"),
    "finding aid": ("finding-aid.ead3.xml", "finding-aid.ead2002.xml"),
    "rdf": ("records.nt", "records.ttl"),
    "inventory": ("inventory.csv", "inventory.pdf"),
}
"""Outputs for outside that are made as parts of a transfer, and their files."""


def make_transfer(collection: Collection, out: Path) -> None:
    transfer(collection, out.with_name(f"{out.name}-both"))
    shutil.move(out.with_name(f"{out.name}-both") / "open", out)
    assert list(names_left(seen_by(collection, To.OUTSIDE), out)) == []


OUTPUTS = {
    "copies": make_copies,
    "pages": lambda collection, out: pages(collection, out, OUTSIDE),
    "sheet": lambda collection, out: sheet(collection, out / "album.pdf", OUTSIDE),
    "slips": lambda collection, out: slips(collection, out / "slips.pdf", OUTSIDE, length="full"),
    "labels": lambda collection, out: labels(collection, out / "labels.pdf", OUTSIDE),
    "worksheet": lambda collection, out: worksheet(collection, out / "worksheet.pdf", OUTSIDE),
    "log": make_log,
    "chapters": make_chapters,
    "offer": lambda collection, out: offer(collection, out),
    "transfer": make_transfer,
    **{
        name: partial(lambda files, collection, out: take_from("open", collection, out, files), files)
        for name, files in IN_THE_PACKAGE.items()
    },
}
"""Every output that can be made for outside; one that is added is added here."""

WITH_PDF = ("sheet", "slips", "labels", "worksheet", "transfer", "inventory")


@pytest.mark.parametrize("name", OUTPUTS)
def test_no_form_of_her_name_goes_outside(collection: Collection, tmp_path: Path, name: str) -> None:
    if shutil.which("pdftotext") is None and name in WITH_PDF:
        pytest.skip("pdftotext (poppler) is not here to read the PDF")
    out = tmp_path / name
    OUTPUTS[name](collection, out)  # type: ignore[operator]  # functions and lambdas in one table
    assert leaks(out) == []


def test_the_search_finds_what_is_there(collection: Collection, tmp_path: Path) -> None:
    """The same search over the family's copies finds her: it can fail."""
    list(copies(collection, tmp_path / "family", to=To.FAMILY))
    assert leaks(tmp_path / "family")


@pytest.mark.parametrize("name", IN_THE_PACKAGE)
def test_the_same_file_of_the_closed_part_names_her(collection: Collection, tmp_path: Path, name: str) -> None:
    """So each row above can fail: the very same writer names her to the archive."""
    if shutil.which("pdftotext") is None and name in WITH_PDF:
        pytest.skip("pdftotext (poppler) is not here to read the PDF")
    take_from("closed", collection, tmp_path / name, IN_THE_PACKAGE[name])
    assert leaks(tmp_path / name)


def test_the_familys_chapters_and_log_name_her(collection: Collection, tmp_path: Path) -> None:
    for ident, _ in sittings(collection):
        write_log(collection, ident, tmp_path / "family", To.FAMILY)
    found = leaks(tmp_path / "family")
    assert any(".vtt: " in one for one in found) and any(".csv: " in one for one in found)


def test_a_narrator_told_by_name_is_a_person_and_one_nobody_knows_is_not_named_outside(collection: Collection) -> None:
    item = find_item(collection, "TRA-0007")
    refs = {one.source.ref for one, _ in collection.store.statements(item) if one.words.startswith("The farm, as told")}
    names = {collection.people()[ref].name for ref in refs if ref in collection.people()}
    assert names == {"Tuulikki Maarja Parata-Rourke", "Maarja Unknown-Neighbour"}
    seen = seen_by(collection, To.OUTSIDE)
    (record,) = seen.records(Selection(items=("TRA-0007",)))
    stories = [one for one in record.all("story") if one.words.startswith("The farm, as told")]
    assert {one.said_by for one in stories} == {""}
    assert not any(one.source.ref for one in stories if one.source.said is Said.DOCUMENT)


@pytest.mark.parametrize("name", ["sheet", "slips", "labels", "worksheet", "pages"])
def test_a_collection_called_after_her_is_not_printed_for_outside(
    collection: Collection, tmp_path: Path, name: str
) -> None:
    before = collection.settings
    collection.settings = replace(before, title="Pictures of Tuulikki Rourke")
    try:
        with pytest.raises(CouldNot, match="The collection's title names someone living"):
            OUTPUTS[name](collection, tmp_path / name)  # type: ignore[operator]  # functions and lambdas in one table
    finally:
        collection.settings = before
    assert not [path for path in (tmp_path / name).rglob("*") if path.is_file()]

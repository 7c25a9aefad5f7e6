"""Copies of a folder of odd pictures, read by strangers: exiv2 and the XMP toolkit must say of each what we say.

    python tests/benchmarks/read_by_strangers.py FOLDER [JOBS]

Every file of the folder is given a caption as a family copy. Counted is

- whether the copy is proved by `carrier.verify`, and whether exiv2 and the XMP toolkit read the caption from it;
- whether every property that the toolkit reads from the source, but for ours, is read from the copy with its value,
  and so every Exif tag that exiv2 reads;
- whether exiv2, Pillow or a search of all bytes still finds a place of capture in the copy;
- whether the file as it leaves for outside, without its place, has the same pixels and all other Exif, and is the very
  same where nothing in it says a place.

Each file is read in a process of its own, as a library may die of it. Ends with 1 where a stranger disagrees. Test
sets of image libraries make good folders; nothing of them belongs into the repository.
"""

import io
import re
import sys
from collections import Counter
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path

import exiv2
from libxmp import XMPError, XMPFiles, XMPMeta
from PIL import Image

from boxlore.core.crosswalk.xmp_and_iim import NOT_THE_PICTURES
from boxlore.core.errors import ByteFault
from boxlore.formats import picture_files

DC = "http://purl.org/dc/elements/1.1/"
PLACE = re.compile(r"gps(?!tag)|latitude|longitude", re.IGNORECASE)
IN_BYTES = re.compile(rb"GPSL(?:at|ong)itude|GpsL(?:at|ong)itude", re.IGNORECASE)
exiv2.LogMsg.setLevel(exiv2.LogMsg.Level.mute)


def caption() -> picture_files.Embedding:
    spec = spec_from_file_location("pictures", Path(__file__).parents[1] / "formats" / "conftest.py")
    assert spec is not None and spec.loader is not None
    pictures = module_from_spec(spec)
    spec.loader.exec_module(pictures)
    embedding: picture_files.Embedding = pictures.CAPTION
    return picture_files.Embedding(
        xmp=embedding.xmp, iim=embedding.iim, exif=embedding.exif, remove=tuple(NOT_THE_PICTURES)
    )


CAPTION = caption()
TITLE = "Võrgud kuivavad"


def by_exiv2(data: bytes) -> tuple[str, list[str]]:
    """The title as exiv2 reads it, and the names of what says a place."""
    try:
        image = exiv2.ImageFactory.open(data)
        image.readMetadata()
        xmp, exif = image.xmpData(), image.exifData()
        titles = [datum.print() for datum in xmp if datum.key() == "Xmp.dc.title"]
        places = [datum.key() for datum in (*xmp, *exif) if PLACE.search(datum.key())]
    except Exception as error:  # noqa: BLE001  # the binding raises its own kinds
        return f"error {type(error).__name__}: {str(error)[:60]}", []
    return (TITLE if any(TITLE in title for title in titles) else "no title"), places


CHANGED = re.compile(
    r"GPS|0x8825|Panasonic\.(Location|Country|State|City|Landmark)|Image\.(ImageDescription|Artist|Copyright|XMLPacket|IPTCNAA|ImageResources|ExifTag)|DateTime|SubSec|OffsetTime|JPEGInterchange"
)
"""Exif tags that a copy has anew, without, or at another place; and those where exiv2 shows what is elsewhere."""


def exif_by_exiv2(data: bytes) -> dict[str, str]:
    """The Exif tags that exiv2 reads, of a tag that comes twice the first."""
    tags: dict[str, str] = {}
    try:
        image = exiv2.ImageFactory.open(data)
        image.readMetadata()
        for datum in image.exifData():
            if not CHANGED.search(datum.key()) and 0 < datum.size() < 200:  # a longer one may lie over what changes
                tags.setdefault(datum.key(), datum.toString())
    except Exception:  # noqa: BLE001  # the corpus is of damaged pictures
        return tags
    return tags


def by_toolkit(packet: bytes) -> tuple[str, dict[str, str]]:
    """The title as the XMP toolkit reads it, and every property that it reads, by path."""
    meta = XMPMeta()
    try:
        meta.parse_from_str(packet.decode("utf-8", "replace").strip("\0"), xmpmeta_wrap=False)
        properties = {f"{row[0]} {row[1]}": row[2] for row in meta}
    except (XMPError, ValueError) as error:
        return f"error {str(error)[:60]}", {}
    try:
        title = meta.get_localized_text(DC, "title", None, "et")
    except XMPError:
        title = ""
    return (TITLE if title == TITLE else "no title"), properties


def in_file(path: Path) -> str:
    """The title as the toolkit reads it from a file."""
    try:
        file = XMPFiles(file_path=str(path))
        meta = file.get_xmp()
        title = meta.get_localized_text(DC, "title", None, "et") if meta is not None else ""
        file.close_file()
    except XMPError as error:
        return f"error {str(error)[:60]}"
    return TITLE if title == TITLE else "no title"


def places_in(data: bytes) -> list[str]:
    _, places = by_exiv2(data)
    try:
        with Image.open(io.BytesIO(data)) as image:
            if image.getexif().get_ifd(0x8825):
                places.append("Pillow: GPS directory")
    except Exception:  # noqa: BLE001  # the corpus is of damaged pictures
        pass
    return [*places, *(match[0].decode() for match in IN_BYTES.finditer(data))]


def ours(path: str) -> bool:
    """Whether a path of the toolkit belongs to a property that the copy has anew or without, or is bookkeeping."""
    names = {name for name, _ in CAPTION.xmp} | set(CAPTION.remove) | {"xmpNote:HasExtendedXMP"}
    name = re.split(r"[\[/]", path.split(" ", 1)[1])[0]
    is_of_place = re.search("gps|latitude|longitude|coordinate|[:/](?:geo|wgs84)\\w*:", path, re.IGNORECASE)
    return not name or name in names or bool(is_of_place)


def pixels(data: bytes) -> bytes:
    """What Pillow decodes; empty for no picture."""
    try:
        with Image.open(io.BytesIO(data)) as image:
            return image.tobytes()
    except Exception:  # noqa: BLE001  # the corpus is of damaged pictures
        return b""


def for_outside(path: Path) -> Counter[str]:
    """What is said of one file as it leaves without its place."""
    source_bytes = path.read_bytes()
    source, counted = io.BytesIO(source_bytes), Counter[str]()
    try:
        made = picture_files.without_place(source)
    except ByteFault as fault:
        return Counter({f"outside: refused: {fault.why[:70]}": 1})
    data = b"".join(piece if isinstance(piece, bytes) else source_bytes[piece[0] : sum(piece)] for piece in made.pieces)
    counted["outside: the very same" if data == source_bytes else "outside: without its place"] += 1
    if picture_files.is_whole(made, source) != (data == source_bytes):
        counted["WRONG outside: it is said to be whole, and is not, or the other way"] += 1
    if left := places_in(data):
        counted["WRONG outside: place left"] += 1
        print(path.name, "outside", left[:4])
    if data != source_bytes and pixels(data) != pixels(source_bytes):
        counted["WRONG outside: pixels"] += 1
        print(path.name, "outside: pixels")
    before, after = exif_by_exiv2(source_bytes), exif_by_exiv2(data)
    if changed := [key for key, value in before.items() if after.get(key) != value]:
        counted["WRONG outside: Exif lost or changed"] += 1
        print(path.name, "outside, Exif:", len(changed), changed[:3])
    return counted


def judged(path: Path) -> Counter[str]:
    return as_family_copy(path) + for_outside(path)


def as_family_copy(path: Path) -> Counter[str]:
    """What is said of one file."""
    source_bytes = path.read_bytes()
    source, counted = io.BytesIO(source_bytes), Counter[str]()
    had_place = bool(places_in(source_bytes))
    try:
        made, kind = picture_files.rewrite(source, CAPTION), "captioned"
    except ByteFault as fault:
        try:
            made, kind = picture_files.copy_without_place(source), f"beside: {fault.why[:70]}"
        except ByteFault as second:
            return Counter({f"refused: {second.why[:70]}": 1})
    data = b"".join(piece if isinstance(piece, bytes) else source_bytes[piece[0] : sum(piece)] for piece in made.pieces)
    counted[kind] += 1
    if had_place:
        counted["had a place"] += 1
    if left := places_in(data):
        counted["WRONG place left"] += 1
        print(path.name, kind, left[:4])
    if kind != "captioned":
        return counted
    wrong = picture_files.verify(source, io.BytesIO(data), CAPTION)
    counted["proved by us" if not wrong else "WRONG not proved by us"] += 1
    packet, further = picture_files.packets(io.BytesIO(data))
    said, properties = by_toolkit(packet)
    counted[f"toolkit: {'reads it' if said == TITLE else said}"] += 1
    exiv2_said, _ = by_exiv2(data)
    before, _ = by_exiv2(source_bytes)
    if exiv2_said.startswith("error") and before.startswith("error"):
        counted["exiv2: does not open this file, before and after"] += 1
    else:
        counted[f"exiv2: {'reads it' if exiv2_said == TITLE else exiv2_said}"] += 1
    if not wrong and (said != TITLE or (exiv2_said != TITLE and not before.startswith("error"))):
        counted["WRONG a stranger disagrees"] += 1
        print(path.name, "toolkit:", said, "| exiv2:", exiv2_said)
    for extended in further:
        properties |= by_toolkit(extended)[1]
    try:
        old_packet, old_further = picture_files.packets(source)
        old = {}
        for body in (*reversed(old_further), old_packet):
            old |= by_toolkit(body)[1] if body else {}
    except ByteFault:
        old = {}
    lost = [f"{key}={value[:30]}" for key, value in old.items() if not ours(key) and properties.get(key) != value]
    if old:
        counted["had XMP that the toolkit reads"] += 1
    exif_before, exif_after = exif_by_exiv2(source_bytes), exif_by_exiv2(data)
    if any("was left out" in sentence for sentence in made.reports):
        counted["Exif beyond repair left out, and said"] += 1
    elif changed := [key for key, value in exif_before.items() if exif_after.get(key) != value]:
        counted["WRONG Exif lost or changed"] += 1
        print(
            path.name,
            "Exif:",
            len(changed),
            [(key, exif_before[key][:20], exif_after.get(key, "none")[:20]) for key in changed[:3]],
        )
    if lost:
        counted["WRONG a foreign property lost or changed"] += 1
        print(path.name, "lost:", lost[:3])
    return counted


def run() -> int:
    files = sorted(path for path in Path(sys.argv[1]).iterdir() if path.is_file())
    counted, died = Counter[str](), 0
    left = files
    while left:
        with ProcessPoolExecutor(int(sys.argv[2]) if len(sys.argv) > 2 else 1) as pool:
            futures = [(path, pool.submit(judged, path)) for path in left]
            left = []
            for at, (path, future) in enumerate(futures):
                try:
                    counted += future.result()
                except BrokenProcessPool:
                    died += 1
                    print(f"{path.name}: a library died of it")
                    left = [path for path, _ in futures[at + 1 :]]
                    break
                except Exception as error:  # noqa: BLE001  # what is looked for here
                    counted[f"WRONG {type(error).__name__}: {error}"[:100]] += 1
                    print(path.name, type(error).__name__, error)
    print(f"{len(files)} files, {died} of which a library died")
    for what, count in sorted(counted.items(), key=lambda row: (-row[1], row[0])):
        print(f"  {count:6} {what}")
    return 1 if any(what.startswith("WRONG") for what in counted) else 0


if __name__ == "__main__":
    sys.exit(run())

"""IPTC-NAA Information Interchange Model 4.2: datasets, read and written (chapters 3, 5 and 6).

Unknown datasets are kept. A block that we write is in UTF-8 (dataset 1:90 = ESC % G), so all other text in it is
transcoded. A text longer than IIM allows is cut between two characters, and a sentence says so.
"""

from collections.abc import Iterable, Iterator, Mapping

from boxlore.core.errors import ByteFault
from boxlore.formats import exif, places_in_texts
from boxlore.formats.xmp_places import is_keyword_of_place

Dataset = tuple[int, int, bytes]
"""(record, number, value). The standard writes record and number as `2:120`."""

UTF_8 = b"\x1b%G"
_ALPHABETS: Mapping[bytes, str] = {
    UTF_8: "utf-8",
    b"\x1b.A": "iso8859-1",
    b"\x1b-A": "iso8859-1",
    b"\x1b.B": "iso8859-2",
    b"\x1b-B": "iso8859-2",
    b"\x1b-L": "iso8859-5",
    b"\x1b.b": "iso8859-15",
    b"\x1b-b": "iso8859-15",
}
"""Value of 1:90 -> codec. The value is an ISO 2022 escape for a set of the ISO 8859 family (IIM 4.2, appendix C;
ISO-IR register)."""

CHARACTER_SET, RECORD_2_VERSION = (1, 90), (2, 0)

XMP_HOLDS_ALL = "XMP holds all."
"""The end of the report of a value that is shortened to what IIM takes."""

MAXIMUM: Mapping[tuple[int, int], int] = {
    (2, 5): 64,
    (2, 25): 64,
    (2, 40): 256,
    (2, 55): 8,
    (2, 60): 11,
    (2, 80): 32,
    (2, 90): 32,
    (2, 92): 32,
    (2, 95): 32,
    (2, 100): 3,
    (2, 101): 64,
    (2, 110): 32,
    (2, 115): 32,
    (2, 116): 128,
    (2, 120): 2000,
    (2, 122): 32,
}
"""(record, number) -> the most octets its value may have (IIM 4.2, chapter 6)."""

_BINARY = {(2, 0), (2, 125), (2, 200), (2, 201), (2, 202)}
"""Datasets of record 2 that are not text."""


def split(data: bytes) -> list[Dataset]:
    """The datasets of a block. Raises ByteFault for anything that is no dataset (IIM 4.2, 3.2).

        block    = *dataset *padding                   (padding: zero bytes that some writers leave behind)
        dataset  = 1C record number length value       (3.2.1: one byte each, 2 bytes length)
                 / 1C record number 8000+n size value  (3.2.2, extended: size takes n bytes)

    All numbers are big-endian.
    """
    return [(record, number, data[start : start + length]) for record, number, start, length in _walk(data)]


def _walk(data: bytes) -> Iterator[tuple[int, int, int, int]]:
    """(record, number, offset of the value, its length) of each dataset; see `split`."""
    at = 0
    while at < len(data):
        if data[at] == 0 and not any(data[at:]):
            break
        if data[at] != 0x1C or at + 5 > len(data):
            raise ByteFault(at, "This is no IIM dataset", "IIM 4.2, 3.2.1")
        length, start = int.from_bytes(data[at + 3 : at + 5], "big"), at + 5
        if length & 0x8000:
            count = length & 0x7FFF
            if count > 8 or start + count > len(data):
                raise ByteFault(at, "This extended dataset has no length", "IIM 4.2, 3.2.2")
            length, start = int.from_bytes(data[start : start + count], "big"), start + count
        if start + length > len(data):
            raise ByteFault(at, "This IIM dataset runs past the end", "IIM 4.2, 3.2.1")
        yield data[at + 1], data[at + 2], start, length
        at = start + length


def join(datasets: Iterable[Dataset]) -> bytes:
    """The datasets as a block, in the order given; the inverse of `split`."""
    parts: list[bytes] = []
    for record, number, value in datasets:
        size = len(value)
        length = size.to_bytes(2, "big") if size < 0x8000 else b"\x80\x04" + size.to_bytes(4, "big")
        parts.append(bytes((0x1C, record, number)) + length + value)
    return b"".join(parts)


def texts(datasets: Iterable[Dataset]) -> tuple[dict[tuple[int, int], tuple[str, ...]], list[str]]:
    """The text datasets decoded, by (record, number), and a sentence for each whose alphabet is a guess."""
    datasets = list(datasets)
    alphabet = _alphabet(datasets)
    decoded: dict[tuple[int, int], tuple[str, ...]] = {}
    problems: list[str] = []
    for record, number, value in datasets:
        if _is_text(record, number):
            words, guessed = _decode(value, alphabet)
            problems += [_guess(record, number)] if guessed else []
            decoded[record, number] = (*decoded.get((record, number), ()), words)
    return decoded, problems


def _is_text(record: int, number: int) -> bool:
    return record == 2 and (record, number) not in _BINARY


def _guess(record: int, number: int) -> str:
    return f"IIM {record}:{number:02d} does not say its alphabet; it was read as Western European (Windows-1252)."


def _alphabet(datasets: Iterable[Dataset]) -> str:
    """The codec that 1:90 declares; empty where it is missing or declares one that we do not know."""
    declared = [value for record, number, value in datasets if (record, number) == CHARACTER_SET]
    return _ALPHABETS.get(declared[0], "") if declared else ""


def _decode(value: bytes, alphabet: str) -> tuple[str, bool]:
    """The words, and whether the alphabet is a guess, because the bytes are neither as declared nor UTF-8."""
    for codec in (alphabet, "utf-8"):
        if codec:
            try:
                return value.decode(codec), False
            except UnicodeDecodeError:
                continue
    try:
        return value.decode("cp1252"), True
    except UnicodeDecodeError:
        return value.decode("latin-1"), True


def faults(data: bytes, ours: Iterable[tuple[tuple[int, int], tuple[str, ...]]]) -> list[str]:
    """Sentences about what is wrong with a block of ours: its alphabet, the order of its records, our own texts."""
    try:
        datasets = split(data)
    except ByteFault as fault:
        return [f"{fault.why}."]
    problems: list[str] = []
    if _alphabet(datasets) != "utf-8":
        problems.append("The IIM block does not say that it is in UTF-8.")
    if [record for record, _, _ in datasets] != sorted(record for record, _, _ in datasets):
        problems.append("The records of the IIM block are out of order.")
    for (record, number), values in ours:
        wanted = [shorten(words.encode("utf-8", "ignore"), MAXIMUM.get((record, number), 32767)) for words in values]
        if [value for *key, value in datasets if key == [record, number]] != wanted:
            problems.append(f"IIM {record}:{number:02d} does not read back.")
    return problems


NAMED_PLACES = frozenset({(2, 26), (2, 27), (2, 90), (2, 92), (2, 95), (2, 100), (2, 101)})
"""Datasets that name a place: content location, city, sublocation, state, country (IIM 4.2, chapter 6)."""


def is_place(dataset: Dataset) -> bool:
    """Whether a dataset is a keyword that gives coordinates."""
    return dataset[:2] == (2, 25) and is_keyword_of_place(dataset[2])


def without_places(datasets: Iterable[Dataset]) -> tuple[list[Dataset], list[str]]:
    """The datasets without coordinates and without places by their names; and sentences about texts of a person."""
    kept, reports = list[Dataset](), list[str]()
    for record, number, value in datasets:
        points = places_in_texts.patches(value) if _is_text(record, number) else []
        if (record, number) in NAMED_PLACES:
            reports.append(f"IIM {record}:{number:02d} of the file names a place and was taken out.")
        elif not is_place((record, number, value)):
            reports += [places_in_texts.said(f"IIM {record}:{number:02d} of the file")] if points else []
            kept.append((record, number, exif.apply(value, points)))
    return kept, reports


def named_places(data: bytes) -> list[tuple[int, bytes]]:
    """(offset, spaces) over the values that name a place, for a block whose length must stay; none of a damaged one."""
    try:
        return [
            (start, b" " * length) for record, number, start, length in _walk(data) if (record, number) in NAMED_PLACES
        ]
    except ByteFault:
        return []


def merge(
    existing: Iterable[Dataset], ours: Iterable[tuple[tuple[int, int], tuple[str, ...]]]
) -> tuple[list[Dataset], list[str]]:
    """All datasets, sorted by number, with ours in place of those of the same number and all text in UTF-8.

    Also sentences about texts that were cut, or whose alphabet was guessed.
    """
    ours_by_number = dict(ours)
    datasets = list(existing)
    alphabet = _alphabet(datasets)
    replaced = {*ours_by_number, CHARACTER_SET, RECORD_2_VERSION}
    reports: list[str] = []
    merged: list[Dataset] = []
    for record, number, value in datasets:
        if (record, number) in replaced or is_place((record, number, value)):
            continue
        if _is_text(record, number):
            words, guessed = _decode(value, alphabet)
            reports += [_guess(record, number)] if guessed else []
            if (left := places_in_texts.cut_out(words)) != words:
                reports.append(places_in_texts.said(f"IIM {record}:{number:02d} of the file"))
            value = left.encode("utf-8")
        merged.append((record, number, value))
    merged += [(*CHARACTER_SET, UTF_8), (*RECORD_2_VERSION, b"\x00\x04")]
    for (record, number), values in ours_by_number.items():
        for words in values:
            value = words.encode("utf-8", "ignore")
            cut = shorten(value, MAXIMUM.get((record, number), 32767))
            if cut != value:
                reports.append(f"IIM {record}:{number:02d} holds {len(cut)} of {len(value)} bytes; {XMP_HOLDS_ALL}")
            merged.append((record, number, cut))
    return sorted(merged, key=lambda dataset: dataset[:2]), reports


def shorten(value: bytes, most: int) -> bytes:
    """At most `most` bytes of UTF-8, cut between two characters."""
    return value if len(value) <= most else value[:most].decode("utf-8", "ignore").encode("utf-8")

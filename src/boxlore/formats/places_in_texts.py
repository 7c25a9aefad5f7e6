"""Points on the earth as people and programs write them into texts: comments, captions, keywords, JSON, addresses.

A point is known by how it is written, wherever it stands:

    uri      = "geo:" number "," number …                      (RFC 5870, 3.3)
    iso      = ±DD.D ±DDD.D [±height] [CRS] ["/"]              (ISO 6709, annex H; minutes and seconds too)
    sides    = angle N or S, angle E or W                      (59.4370 N 24.7536 E; N 59° 26' 13" E 24° 45' 13")
    angle    = degrees [minutes [seconds]], of which one alone counts if it is exact and names its side
    degrees  = two exact angles near each other, whatever words say of their sides
    decimals = two decimal numbers of degrees beside each other (59.4370, 24.7536; an address of a map has them so)
    named    = lat, latitude, lon, lng, long or longitude, and a number
    grid     = a code of the Open Location Code in full, MGRS, or UTM
    alone    = a number of degrees with four decimals, where nobody knows what the bytes are for (a private tag or
               chunk, what stands behind a picture, a text under a name of its own)

Exact means minutes, or three decimals: some hundred metres. What reads as two months with their years (06.1954,
07.1954), as parts of a picture (both below 1), or as a number with a negative exponent (5.4509E-05) is no point. The
rules for plain words are our own.
"""

import re
from collections.abc import Iterable, Iterator

_DEGREE = r"(?:Â?[°º]|˚|Ë\x9a|deg(?:rees|\.)?)"
_MINUTE = r"(?:['’′´\x92]|â\x80[²\x99]|min\b\.?)"
_SECOND = r"(?:''|[\"”″\x94]|â\x80[³\x9d]|sec\b\.?)"
"""Marks as letters, and as bytes of UTF-8 and of Windows that were read as Latin-1, letter for byte."""

_DECIMALS = r"\.[0-9]{1,16}"
_MINUTES = rf"[0-9]{{1,2}}(?:{_DECIMALS})?"
_NO_EXPONENT = r"(?![Ee]-[0-9]{1,3}(?![0-9.A-Za-z°º˚]))"
"""What stands behind figures is no negative exponent (ISO 6093, NR3): such a number is below 1, and its E no side."""
_NORTH, _EAST = r"(?:(?-i:[NS])(?![A-Za-z])|(?:north|south)\b)", r"(?:(?-i:[EWO])(?![A-Za-z])|(?:east|west)\b)"
_EXACT = (
    rf"[0-9]{{1,3}} ?{_DEGREE} ?{_MINUTES} ?{_MINUTE}(?: ?{_MINUTES} ?{_SECOND})?"
    rf"|[0-9]{{1,3}}\.[0-9]{{3,16}} ?{_DEGREE}"
)
_ALONE = rf"(?:{_EXACT}|[0-9]{{1,3}}\.[0-9]{{3,16}}|[0-9]{{1,3}},[0-9]{{1,2}}(?:{_DECIMALS}|,[0-9]{{1,2}}))"
"""An exact angle; before or behind the letter of a side it need have no mark, and may be written as XMP has it."""
_LOOSE = (
    rf"[+-]?(?:{_ALONE}|[0-9]{{1,3}}(?:[.,][0-9]{{1,16}}(?: ?{_DEGREE})?| ?{_DEGREE})"
    rf"|[0-9]{{1,3}}[ :][0-9]{{1,2}}(?:[ :][0-9]{{1,2}})?(?:{_DECIMALS})?)"
)
"""An angle that counts only beside another one."""
_LATITUDE = rf"(?:{_NORTH} ?{_LOOSE}|{_LOOSE} ?{_NORTH})"
_LONGITUDE = rf"(?:{_EAST} ?{_LOOSE}|{_LOOSE} ?{_EAST})"
_NUMBER = rf"[+-]?[0-9]{{1,3}}(?:{_DECIMALS})?"
_NAMED = r"m?l(?:at|on|ng|ong)[\"']?(?: ?[:=]|\.?(?= [+-]?[0-9]{1,3}\.[0-9]{3}))|(?:latitude|longitude)[\"']? ?[:=]?"

_POINT = re.compile(
    rf"(?<![0-9A-Za-z.])(?=[0-9+a-z-])(?:geo:{_NUMBER},{_NUMBER}(?:,{_NUMBER})?"
    rf"|[+-][0-9]{{2,6}}(?:{_DECIMALS})?[+-][0-9]{{3,7}}(?:{_DECIMALS})?(?:[+-][0-9]{{1,5}}(?:{_DECIMALS})?)?(?:CRS\w+)?/"
    r"|[+-][0-9]{2,6}\.[0-9]{2,16}[+-][0-9]{3,7}\.[0-9]{2,16}"
    rf"|{_LATITUDE}[ ,;/]*{_LONGITUDE}|{_LONGITUDE}[ ,;/]*{_LATITUDE}"
    rf"|{_ALONE}{_NO_EXPONENT} ?(?:{_NORTH}|{_EAST})|(?:{_NORTH}|{_EAST}) ?{_ALONE}(?![0-9])"
    rf"|(?:{_EXACT})[^0-9\n]{{0,24}}(?:{_EXACT})"
    rf"|(?:{_NAMED}) ?[\"']?[+-]?(?:{_LOOSE}|{_NUMBER})(?: ?(?:{_NORTH}|{_EAST}))?"
    r"|(?P<first>[+-]?[0-9]{1,2}\.[0-9]{3,16}) ?(?:[,;/ ]|%2C) ?(?P<second>[+-]?[0-9]{1,3}\.[0-9]{3,16})(?![0-9])"
    r"|[+-]?[0-9]{1,2},[0-9]{4,16} ?[;/ ] ?[+-]?[0-9]{1,3},[0-9]{4,16}(?![0-9]))",
    re.IGNORECASE | re.ASCII,
)
_GRID = re.compile(
    r"(?<![0-9A-Za-z+.])(?:(?=[0-9]*[A-Z])[23456789CFGHJMPQRVWX]{8}\+[23456789CFGHJMPQRVWX]{2,3}(?![0-9A-Za-z])"
    r"|[0-9]{1,2} ?[C-HJ-NP-X] ?(?:[A-HJ-NP-Z]{2} ?[0-9]{4,5} ?[0-9]{4,5}(?![0-9A-Za-z])"
    r"|[0-9]{6}(?:\.[0-9]+)?(?: ?m?E)? [0-9]{7}(?![0-9])))",
    re.ASCII,
)
_ALONE_NUMBER = re.compile(
    rf"(?<![0-9.])[+-]?(?:[1-9][0-9]?|1[0-7][0-9])\.[0-9]{{4,16}}(?![0-9]|\.[0-9]){_NO_EXPONENT}", re.ASCII
)
_MONTH = re.compile(r"(?:0?[1-9]|1[0-2])\.(?:1[5-9]|20)[0-9]{2}")

OMITTED = "[…]"
"""The usual mark of an omission in a text that somebody else wrote."""


def spans(text: str, *, alone: bool = False) -> list[tuple[int, int]]:
    """(start, end) of every point in a text, in order; with `alone` of numbers too that may be one half of a point."""
    points = [match.span() for match in _POINT.finditer(text) if _is_point(match)]
    points += [match.span() for match in _ALONE_NUMBER.finditer(text)] if alone else []
    merged: list[tuple[int, int]] = []
    for start, end in sorted([*points, *(match.span() for match in _GRID.finditer(text))]):
        if merged and start < merged[-1][1]:
            start, end = merged[-1][0], max(end, merged.pop()[1])
        merged.append((start, end))
    return merged


def _is_point(match: re.Match[str]) -> bool:
    """Whether two decimals beside each other can be degrees, and are neither months nor parts of a picture."""
    if match["first"] is None:
        return True
    latitude, longitude = abs(float(match["first"])), abs(float(match["second"]))
    months = _MONTH.fullmatch(match["first"]) and _MONTH.fullmatch(match["second"])
    return not months and latitude <= 90 and longitude <= 180 and max(latitude, longitude) >= 1


def cut_out(text: str) -> str:
    """The text with an omission in place of each point; the very same where it has none."""
    for start, end in reversed(spans(text)):
        text = text[:start] + OMITTED + text[end:]
    return text


def said(where: str) -> str:
    """The sentence for the keeper about points that were cut out of a text; `where` says which."""
    return f"Coordinates were cut out of {where}."


_ALL = bytes(range(256))
_PLAIN = bytes(1 if 0x20 <= byte < 0x7F or byte in b"\xc2\xb0\xba\xe2\x80\xb2\xb3\xb4\x92\x94" else 0 for byte in _ALL)
_TEXT = bytes(1 if 0x20 <= byte != 0x7F or byte in b"\t\n\r" else 0 for byte in _ALL)
_SHORTEST = bytes([1]) * 7
"""A run of so many plain letters and marks stands in every point: 59°26'N."""


_ZERO_ROW = bytes(1 if byte in b"\x00\x20" else 0 for byte in _ALL)
"""High bytes of the letters and marks of UTF-16 that a point is written with (Latin-1, General Punctuation)."""


def patches(data: bytes, *, alone: bool = False) -> list[tuple[int, bytes]]:
    """(offset, spaces) over every point in bytes that may hold texts: in Latin-1, UTF-8, UTF-16. `alone` as `spans`."""
    blanks = {
        start + begin: b" " * (stop - begin)
        for start, end in _runs(data.translate(_PLAIN), data.translate(_TEXT))
        for begin, stop in spans(data[start:end].decode("latin-1"), alone=alone)
    }
    for odd in (0, 1):
        for start, end, codec in _wide_runs(data[odd::2], data[1 - odd :: 2], odd):
            pairs = data[start:end]
            text = "".join(pairs[at : at + 2].decode(codec, "replace") for at in range(0, len(pairs), 2))
            for begin, stop in spans(text, alone=alone):
                blanks.setdefault(start + 2 * begin, " ".encode(codec) * (stop - begin))
    return sorted(blanks.items())


def _wide_runs(letters: bytes, others: bytes, odd: int) -> list[tuple[int, int, str]]:
    """(start, end, codec) in the whole data of the runs of UTF-16 whose letters' low bytes are `letters`.

    Many a text reads in both byte orders, with one letter less at an end in the wrong one; the longer is right.
    """
    plain, text = letters.translate(_PLAIN), letters.translate(_TEXT)
    rows = others.translate(_ZERO_ROW)
    runs: list[tuple[int, int, str]] = []
    for codec, highs in (("utf-16-le", rows[odd:]), ("utf-16-be", rows if odd else b"\x00" + rows)):
        for start, end in _runs(_both(plain, highs), _both(text, highs)):
            first = odd - (codec == "utf-16-be")
            runs.append((2 * start + first, 2 * end + first, codec))
    chosen: list[tuple[int, int, str]] = []
    for run in sorted(runs, key=lambda run: run[0] - run[1]):
        if not any(run[0] < end and start < run[1] for start, end, _ in chosen):
            chosen.append(run)
    return chosen


def joined(changes: Iterable[tuple[int, bytes]], more: Iterable[tuple[int, bytes]]) -> list[tuple[int, bytes]]:
    """All patches sorted; of `more` only those that none of `changes` reaches, such as that of a whole packet."""
    first = list(changes)
    free = [
        (at, new)
        for at, new in more
        if not any(at < start + len(old) and start < at + len(new) for start, old in first)
    ]
    return sorted([*first, *free])


def _both(first: bytes, second: bytes) -> bytes:
    """1 where both have 1."""
    length = min(len(first), len(second))
    numbers = (int.from_bytes(row[:length], "big") for row in (first, second))
    return (next(numbers) & next(numbers)).to_bytes(length, "big")


def _runs(plain: bytes, text: bytes) -> Iterator[tuple[int, int]]:
    """(start, end) of the runs of text that may hold a point. Both have 1 for a letter of their kind, else 0."""
    at = 0
    while (found_at := plain.find(_SHORTEST, at)) >= 0:
        start, end = text.rfind(b"\x00", at, found_at) + 1, text.find(b"\x00", found_at)
        start, at = max(start, at), len(text) if end < 0 else end
        yield start, at

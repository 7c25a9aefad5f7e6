"""Whether a scan has enough pixels for its original: its pixels an inch are compared with the guidance for its size.

An inch is 25.4 mm exactly (by definition). Pixels = round(mm / 25.4 × ppi). Guidance: 36 CFR 1236.50
(prints at least 400 ppi, text 300 ppi, at the size of the original); family practice by size as in GUIDANCE. A hint
that a picture was enlarged or photographed again is only ever a question, and a telephone picture is welcome.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from boxlore.core.findings import Finding, Severity, make_finding

MM = 25.4
NEAR = 0.97
"""A scan may fall short of the guidance by 3 %, for a measured size is not exact to more."""


def pixels(millimetres: float, ppi: float) -> int:
    """The number of pixels along a length, at `ppi` pixels an inch."""
    return round(millimetres / MM * ppi)


def pixels_an_inch(count: int, millimetres: float) -> float:
    """Pixels an inch, for `count` pixels along a length."""
    return count / (millimetres / MM)


@dataclass(frozen=True, slots=True)
class Guide:
    """Guidance for originals up to a long side in mm: the pixels an inch to aim at, the least, and who says so."""

    up_to_mm: float
    wanted: int
    least: int
    source: str


PRACTICE = "common practice by size, a university guide; 36 CFR 1236.50 for 400 ppi"

GUIDANCE: tuple[Guide, ...] = (
    Guide(3 * MM, 1200, 800, "under 3 inches 800-1200 ppi: " + PRACTICE),
    Guide(6 * MM, 600, 600, "4 × 6 inches and smaller 600 ppi: " + PRACTICE),
    Guide(7 * MM, 600, 400, "5 × 7 inches 600 or 400 ppi: " + PRACTICE),
    Guide(float("inf"), 400, 300, "8 × 10 inches and larger 400 ppi, 300 at least: " + PRACTICE),
)
FILM = Guide(float("inf"), 4000, 2000, "film 2000-4000 ppi: a university guide")
TEXT = Guide(float("inf"), 400, 300, "36 CFR 1236.50(d): text at least 300 ppi")

FILM_KINDS = ("negative", "slide", "transparency")
TEXT_KINDS = ("letter", "note", "document", "clipping")


def guide_for(kind: str, size_mm: tuple[float, ...]) -> Guide:
    """The guidance for an original. An unknown size (empty) is taken as 4 × 6 inches."""
    if kind in FILM_KINDS and max(size_mm, default=0) <= 5 * MM:
        return FILM
    if kind in TEXT_KINDS:
        return TEXT
    long = max(size_mm, default=6 * MM)
    return next(guide for guide in GUIDANCE if long <= guide.up_to_mm + 0.5)


def largest_print(width: int, height: int, ppi: int = 300) -> tuple[float, float]:
    """Width and height in mm of the largest print at `ppi` pixels an inch, without inventing pixels.

    300 pixels an inch print sharp, 200 usable (thresholds seen in several print guides: common practice).
    """
    return width / ppi * MM, height / ppi * MM


@dataclass(frozen=True, slots=True, kw_only=True)
class ScanFacts:
    """What the rules need of one scan. `width` and `height` are pixels of the part that shows the item, `size_mm` is
    width and height of the original (empty: not noted).

    `ppi` is what the file says (0: nothing), `bits` are per channel (0: not looked at), `colours` is the number of
    channels, `profile` whether there is a colour profile (None: not looked at), `turned` the Exif orientation (0 or 1:
    upright), `cut` whether the item is only a part of the scan's picture.
    """

    side: str = "recto"
    kind: str = "print"
    width: int
    height: int
    size_mm: tuple[float, ...] = ()
    ppi: float = 0
    bits: int = 0
    colours: int = 3
    profile: bool | None = None
    turned: int = 0
    cut: bool = False

    @property
    def true_ppi(self) -> float:
        """Pixels an inch from size and pixels, the lower of both directions; 0 where the size is not known."""
        if len(self.size_mm) < 2 or min(self.size_mm) <= 0:
            return 0.0
        return min(
            pixels_an_inch(max(self.width, self.height), max(self.size_mm)),
            pixels_an_inch(min(self.width, self.height), min(self.size_mm)),
        )


def scan_findings(scan: ScanFacts) -> list[Finding]:
    """Every finding about one scan, in the order of RULES."""
    return [finding for rule in RULES for finding in rule(scan)]


def _coarse(scan: ScanFacts) -> Iterator[Finding]:
    guide = guide_for(scan.kind, scan.size_mm)
    ppi, basis = (scan.true_ppi, "size and pixels") if scan.true_ppi else (scan.ppi, "the file's own word")
    if 0 < ppi < guide.least * NEAR:
        message = (
            f"The {scan.side} scan has {ppi:.0f} pixels an inch; {guide.least} at least are the guidance for "
            "this size. Better than none, a telephone picture too: scan it again when the original is out."
        )
        because = f"{scan.width} × {scan.height} pixels for {_size(scan.size_mm)} ({basis})"
        yield make_finding("scan.coarse", Severity.ASK, message, guide.source, because)


def _resized(scan: ScanFacts) -> Iterator[Finding]:
    if scan.ppi and scan.true_ppi and not scan.cut:
        ratio = scan.true_ppi / scan.ppi
        if not 0.8 <= ratio <= 1.25:
            message = (
                f"The {scan.side} scan's file says {scan.ppi:.0f} pixels an inch, its pixels come to "
                f"{scan.true_ppi:.0f}: was it enlarged or photographed again, or is the size noted wrong?"
            )
            because = f"{scan.width} × {scan.height} pixels for {_size(scan.size_mm)}"
            yield make_finding("scan.resized", Severity.NOTE, message, "36 CFR 1236.48(c): no upsampling", because)


def _sideways(scan: ScanFacts) -> Iterator[Finding]:
    if len(scan.size_mm) >= 2 and scan.turned < 2 and not scan.cut:
        original_shape, scan_shape = scan.size_mm[0] / scan.size_mm[1], scan.width / scan.height
        if (original_shape > 1.1 and scan_shape < 0.9) or (original_shape < 0.9 and scan_shape > 1.1):
            message = f"Does the {scan.side} scan lie on its side? The original is {_size(scan.size_mm)}, wide by high."
            because = f"{scan.width} × {scan.height} pixels"
            yield make_finding("scan.sideways", Severity.NOTE, message, "common practice, no source", because)
    if scan.turned > 1:
        message = (
            f"The {scan.side} scan is turned by a flag in its file ({scan.turned}); a program that does not read it "
            "shows it otherwise."
        )
        yield make_finding("scan.turned", Severity.NOTE, message, "Exif 2.32, tag 274 Orientation")


def _depth(scan: ScanFacts) -> Iterator[Finding]:
    if 0 < scan.bits < 8:
        message = f"The {scan.side} scan has {scan.bits} bit a channel: greys are lost. Scan with 8 or 16."
        source = "8 or 16 bits a channel: FADGI 2023 as a university guide gives it"
        yield make_finding("scan.depth", Severity.ASK, message, source, f"{scan.bits} bit, {scan.colours} channels")


def _profile(scan: ScanFacts) -> Iterator[Finding]:
    if scan.profile is False and scan.colours >= 3:
        message = f"The {scan.side} scan carries no colour profile; it is taken as sRGB."
        yield make_finding("scan.profile", Severity.NOTE, message, "common practice, no source")


def _size(size_mm: tuple[float, ...]) -> str:
    return " × ".join(f"{value:g}" for value in size_mm) + " mm" if size_mm else "a size that is not noted"


RULES: tuple[Callable[[ScanFacts], Iterator[Finding]], ...] = (_coarse, _resized, _sideways, _depth, _profile)


def verso_missing(sides: set[str], written: bool) -> list[Finding]:
    """A finding where writing on the back was noted (`written`) and only the front is scanned. `sides` are scanned."""
    if not written or "verso" in sides or "recto" not in sides:
        return []
    message = "Writing on it is noted, and only its front is scanned: does it stand on the back?"
    source = "scan the back whenever it bears writing: common practice, no source"
    return [make_finding("scan.no-verso", Severity.ASK, message, source)]

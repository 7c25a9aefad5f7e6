"""A value for each codec: everything that its writer may be given."""

from datetime import datetime

from hypothesis import strategies as st

from boxlore.core.fields.areas import Area
from boxlore.core.fields.audiences import Audience, KeptTo
from boxlore.core.fields.coordinates import Coordinates
from boxlore.core.fields.fixity import FixityEvent, FixityRun, WrongFile
from boxlore.core.fields.name_answers import NamingAnswer, NamingDecision
from boxlore.core.fields.originals import ClimateFile, ItemNumber, Kept, Measured, Noted, SizeMm
from boxlore.core.fields.pictures import CameFrom, Embedded, FileFacts, Link, RowPosition, Shows
from boxlore.core.fields.sittings import CourseStep, PaperFacts, Passage, RecordingFacts, ShownAt

WORDS = st.text(st.characters(exclude_categories=("Cs",)), max_size=40)
IDS = st.uuids(version=4).map(str)
MOMENTS = st.integers(0, 10_000_000)
DIGESTS = st.text("0123456789abcdef", min_size=64, max_size=64)
PARTS = st.floats(0, 1, allow_subnormal=False)
POINTS = st.builds(Area, PARTS, PARTS)
BOXES = st.builds(Area, PARTS, PARTS, PARTS.filter(bool), PARTS)
AUDIENCES = st.one_of(
    st.sampled_from(["keeper", "family", "anyone"]).map(Audience),
    st.dates().map(lambda day: Audience("archive", day)),
)
LINES = st.lists(
    st.tuples(st.sampled_from(["title", "caption", "problem"]), WORDS.map(lambda words: " ".join(words.split()))),
    max_size=4,
).map(tuple)
WRONG = st.builds(WrongFile, WORDS, st.sampled_from(["gone", "changed", "moved"]), WORDS)

VALUES: dict[str, st.SearchStrategy[object]] = {
    "condition": st.builds(Noted, WORDS.filter(lambda words: not words.startswith("no ")), so=st.booleans()),
    "coordinates": st.builds(
        Coordinates,
        st.integers(-90 * 10**9, 90 * 10**9).map(lambda parts: parts / 10**9),
        st.integers(-180 * 10**9, 180 * 10**9).map(lambda parts: parts / 10**9),
    ),
    "number": st.builds(ItemNumber, st.text("ABCXYZ", min_size=2, max_size=8), st.integers(1, 200_000)),
    "kept": st.builds(Kept, IDS, st.integers(0, 500)),
    "row": st.builds(
        RowPosition, IDS, st.sampled_from(["", "front", "second row", "on the wall"]), st.integers(-9, 40)
    ),
    "audience": st.builds(KeptTo, AUDIENCES, st.sampled_from(["", "story", "own-clothes"])),
    "different": IDS,
    "size": st.lists(st.integers(1, 20_000).map(lambda tenths: tenths / 10), min_size=1, max_size=3).map(
        lambda sides: SizeMm(tuple(sides))
    ),
    "due_back": st.dates(),
    "capacity": st.integers(0, 10_000),
    "climate": st.builds(
        ClimateFile, path=WORDS, sha256=DIGESTS, bytes=MOMENTS, unit=st.sampled_from("CF"), order=WORDS
    ),
    "measured": st.builds(
        Measured,
        st.datetimes(datetime(1900, 1, 1), datetime(2200, 1, 1)).map(lambda when: when.replace(microsecond=0)),
        st.integers(-5000, 6000).map(lambda hundredths: hundredths / 100),
        st.integers(1, 1000).map(lambda tenths: tenths / 10),
    ),
    "file": st.builds(
        FileFacts,
        path=WORDS,
        sha256=DIGESTS,
        bytes=MOMENTS,
        width=MOMENTS,
        height=MOMENTS,
        ppi=st.one_of(st.just(0), st.floats(1, 9600)),
        media_type=st.just("image/jpeg"),
    ),
    "shows": st.builds(Shows, IDS, st.sampled_from(["recto", "verso"]), st.one_of(st.none(), BOXES)),
    "came_from": st.builds(CameFrom, DIGESTS.map(lambda digest: digest[:16]), DIGESTS.map(lambda digest: digest[:16])),
    "looks": st.one_of(st.none(), st.integers(0, 2**64 - 1)),
    "embedded": st.builds(Embedded, LINES),
    "naming": st.builds(
        NamingDecision,
        st.sampled_from(NamingAnswer),
        IDS,
        st.sampled_from(["story", "rights_holder", "found in", "inside the file"]),
        st.just("0123456789abcdef:0:3"),
    ),
    "wanted": st.booleans(),
    "fixity": st.one_of(
        st.builds(
            FixityEvent, event=WORDS, outcome=WORDS, what=WORDS, records=MOMENTS, bytes=MOMENTS, manifest=DIGESTS
        ),
        st.builds(
            FixityRun,
            begun=WORDS,
            ended=st.dates().map(lambda day: f"{day}T10:15:30.250Z"),
            read=MOMENTS,
            bytes=MOMENTS,
            wrong_count=MOMENTS,
            wrong=st.lists(WRONG, max_size=3).map(tuple),
        ),
    ),
    "scan": st.one_of(st.just(""), IDS),
    "area": st.one_of(POINTS, BOXES),
    "link": st.builds(Link, IDS, IDS, st.sampled_from(["attached_to", "same_picture"])),
    "shown": st.builds(ShownAt, IDS, st.one_of(st.none(), MOMENTS)),
    "recording": st.builds(
        RecordingFacts,
        path=WORDS,
        sha256=DIGESTS,
        bytes=MOMENTS,
        name=WORDS,
        start=st.one_of(st.none(), st.integers(-100_000, 100_000)),
        length=MOMENTS,
        because=WORDS,
    ),
    "course": st.builds(CourseStep, WORDS, MOMENTS),
    "closed": st.builds(Passage, MOMENTS, MOMENTS, WORDS),
    "paper": st.builds(PaperFacts, path=WORDS, sha256=DIGESTS, bytes=MOMENTS, name=WORDS, what=WORDS),
    "story": WORDS,
}
"""By the name of a field that has the codec."""

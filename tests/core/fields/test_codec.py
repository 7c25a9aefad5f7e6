"""Every codec, written and read both ways. The words are a rule of our own; JSON is RFC 8259."""

from dataclasses import replace
from datetime import date, datetime
from typing import Any

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from tests.core.fields.strategies import VALUES
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.fields.audiences import AUDIENCE_WORDS, Audience, KeptTo, audience_shown
from boxlore.core.fields.codec import Codec
from boxlore.core.fields.coordinates import COORDINATES_WORDS, Coordinates
from boxlore.core.fields.fixity import FIXITY_WORDS, FixityEvent, FixityRun, WrongFile
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer, NamingDecision
from boxlore.core.fields.originals import (
    CLIMATE_WORDS,
    KEPT_WORDS,
    MEASURED_WORDS,
    NOTED_WORDS,
    NUMBER_WORDS,
    SIZE_WORDS,
    ClimateFile,
    ItemNumber,
    Kept,
    Measured,
    Noted,
    SizeMm,
    typed_size,
)
from boxlore.core.fields.pictures import (
    CAME_FROM_WORDS,
    EMBEDDED_WORDS,
    FILE_WORDS,
    LINK_WORDS,
    LOOKS_WORDS,
    ROW_WORDS,
    SHOWS_WORDS,
    CameFrom,
    Embedded,
    FileFacts,
    Link,
    RowPosition,
    Shows,
)
from boxlore.core.fields.plain_values import COUNT_WORDS, DAY_WORDS, ID_WORDS, OPEN_ID_WORDS, TEXT, YES_NO_WORDS
from boxlore.core.fields.sittings import (
    CLOSED_WORDS,
    COURSE_WORDS,
    PAPER_WORDS,
    RECORDING_WORDS,
    SHOWN_WORDS,
    CourseStep,
    PaperFacts,
    Passage,
    RecordingFacts,
    ShownAt,
    recording_in,
    shown_in,
)
from boxlore.core.fields.table import FIELDS
from boxlore.core.statements import Kind, Statement, Subject

BOX = "0190a1b2-0000-7000-8000-000000000001"
ITEM = "0190a1b2-0000-7000-8000-000000000002"
DIGEST = "ab" * 32

BOTH_WAYS: list[tuple[Codec[Any], Any, str]] = [
    (TEXT, "Isa laev läks siit.", "Isa laev läks siit."),
    (ID_WORDS, BOX, BOX),
    (OPEN_ID_WORDS, "", ""),
    (DAY_WORDS, date(2026, 11, 25), "2026-11-25"),
    (COUNT_WORDS, 40, "40"),
    (YES_NO_WORDS, True, "yes"),
    (YES_NO_WORDS, False, "no"),
    (AUDIENCE_WORDS, KeptTo(Audience("family")), "family"),
    (AUDIENCE_WORDS, KeptTo(Audience("archive", date(2060, 1, 1)), "story"), "story=archive:2060-01-01"),
    (NUMBER_WORDS, ItemNumber("TRA", 42), "TRA-0042"),
    (NUMBER_WORDS, ItemNumber("TRA", 10_000), "TRA-10000"),
    (KEPT_WORDS, Kept(BOX, 3), f"{BOX} 3"),
    (KEPT_WORDS, Kept(BOX), f"{BOX} 0"),
    (SIZE_WORDS, SizeMm((108, 165)), "108 x 165"),
    (SIZE_WORDS, SizeMm((380, 260.5, 130)), "380 x 260.5 x 130"),
    (NOTED_WORDS, Noted("foxing"), "foxing"),
    (NOTED_WORDS, Noted("foxing", so=False), "no foxing"),
    (MEASURED_WORDS, Measured(datetime(2026, 11, 25, 9, 30), 18.5, 52), "2026-11-25T09:30:00 18.50 52.0"),
    (
        CLIMATE_WORDS,
        ClimateFile(path="papers/climate/a.csv", sha256=DIGEST, bytes=7, unit="C", order=""),
        f'{{"path": "papers/climate/a.csv", "sha256": "{DIGEST}", "bytes": 7, "unit": "C", "order": ""}}',
    ),
    (
        FILE_WORDS,
        FileFacts(path="scans/ä.jpg", sha256=DIGEST, bytes=7, width=3, height=2, ppi=300, media_type="image/jpeg"),
        f'{{"path": "scans/ä.jpg", "sha256": "{DIGEST}", "bytes": 7, "width": 3, "height": 2, "ppi": 300, '
        '"media_type": "image/jpeg"}',
    ),
    (
        FILE_WORDS,
        FileFacts(path="a.jpg", sha256=DIGEST, bytes=7, width=3, height=2, media_type="image/jpeg", orientation=6),
        f'{{"path": "a.jpg", "sha256": "{DIGEST}", "bytes": 7, "width": 3, "height": 2, "ppi": 0, '
        '"media_type": "image/jpeg", "orientation": 6}',
    ),
    (
        SHOWS_WORDS,
        Shows(ITEM, "verso", turn=270),
        f'{{"item": "{ITEM}", "side": "verso", "area": null, "turn": 270}}',
    ),
    (
        SHOWS_WORDS,
        Shows(ITEM, "recto", role="altered"),
        f'{{"item": "{ITEM}", "side": "recto", "area": null, "role": "altered"}}',
    ),
    (SHOWS_WORDS, Shows(ITEM, "recto"), f'{{"item": "{ITEM}", "side": "recto", "area": null}}'),
    (
        SHOWS_WORDS,
        Shows(ITEM, "recto", Area(0.1, 0.0, 0.5, 1.0)),
        f'{{"item": "{ITEM}", "side": "recto", "area": [0.1, 0.0, 0.5, 1.0]}}',
    ),
    (CAME_FROM_WORDS, CameFrom(DIGEST[:16], "0123456789abcdef"), f"{DIGEST[:16]} 0123456789abcdef"),
    (AREA_WORDS, Area(0.25, 0.4), "0.25 0.4"),
    (AREA_WORDS, Area(0.25, 0.4, 0.1, 0.2), "0.25 0.4 0.1 0.2"),
    (COORDINATES_WORDS, Coordinates(-45.82, 170.62), "-45.82, 170.62"),
    (COORDINATES_WORDS, Coordinates(0.0, 0.00001), "0, 0.00001"),
    (LINK_WORDS, Link(ITEM, BOX, "attached_to"), f"{ITEM} {BOX} attached_to"),
    (ROW_WORDS, RowPosition(ITEM, "second row", 3), f"{ITEM} second row 3"),
    (ROW_WORDS, RowPosition(ITEM, "", 3), f"{ITEM}  3"),
    (ROW_WORDS, RowPosition(ITEM, "back", -2), f"{ITEM} back -2"),
    (
        NAMING_WORDS,
        NamingDecision(NamingAnswer.OTHER, ITEM, "found in", "0123456789abcdef:0:3"),
        f"other {ITEM} found+in 0123456789abcdef:0:3",
    ),
    (LOOKS_WORDS, 255, "00000000000000ff"),
    (LOOKS_WORDS, None, "-"),
    (EMBEDDED_WORDS, Embedded((("title", "Reval: sadam"), ("by", "A. Tamm"))), "title: Reval: sadam\nby: A. Tamm"),
    (SHOWN_WORDS, ShownAt(ITEM, 4200), f'{{"item": "{ITEM}", "at": 4200}}'),
    (COURSE_WORDS, CourseStep("clap", 10), '{"step": "clap", "at": 10}'),
    (CLOSED_WORDS, Passage(0, 60_000, "tütre soov"), '{"from": 0, "to": 60000, "why": "tütre soov"}'),
    (
        RECORDING_WORDS,
        RecordingFacts(path="recordings/a.wav", sha256=DIGEST, bytes=9, name="a.wav", start=-5, length=8, because="x"),
        f'{{"path": "recordings/a.wav", "sha256": "{DIGEST}", "bytes": 9, "name": "a.wav", "start": -5, "length": 8, '
        '"because": "x"}',
    ),
    (
        PAPER_WORDS,
        PaperFacts(path="papers/a.pdf", sha256=DIGEST, bytes=9, name="a.pdf", what="release"),
        f'{{"path": "papers/a.pdf", "sha256": "{DIGEST}", "bytes": 9, "name": "a.pdf", "what": "release"}}',
    ),
    (
        FIXITY_WORDS,
        FixityEvent(event="replication", outcome="copied", what="closed", records=2, bytes=3, manifest="cd"),
        '{"event": "replication", "outcome": "copied", "what": "closed", "records": 2, "bytes": 3, "manifest": "cd"}',
    ),
    (
        FIXITY_WORDS,
        FixityRun(
            begun="a", ended="2026-11-25T10:15:30.250Z", read=2, bytes=3, wrong_count=1, wrong=(WrongFile("p", "gone"),)
        ),
        '{"begun": "a", "ended": "2026-11-25T10:15:30.250Z", "read": 2, "bytes": 3, "wrong_count": 1, '
        '"wrong": [{"path": "p", "state": "gone", "found": ""}]}',
    ),
]

OLDER: list[tuple[Codec[Any], str, Any]] = [
    (KEPT_WORDS, BOX, Kept(BOX)),
    (SIZE_WORDS, "108x165", SizeMm((108, 165))),
    (SIZE_WORDS, "108 × 165", SizeMm((108, 165))),
    (SIZE_WORDS, "108 165", SizeMm((108, 165))),
    (SIZE_WORDS, " 108.5 X 165 mm ", SizeMm((108.5, 165))),
    (SIZE_WORDS, "380 x 260 x 130MM", SizeMm((380, 260, 130))),
    (SIZE_WORDS, "380", SizeMm((380,))),
    (SHOWN_WORDS, ITEM, ShownAt(ITEM)),
    (SHOWN_WORDS, f'{{"item": "{ITEM}", "moment": 4200}}', ShownAt(ITEM, 4200)),
    (SHOWN_WORDS, f'{{"item": "{{\\"item\\": \\"{ITEM}\\", \\"at\\": 7}}", "moment": 4200}}', ShownAt(ITEM, 4200)),
    (SHOWN_WORDS, f'{{"item": "{{\\"item\\": \\"{ITEM}\\", \\"at\\": 7}}", "moment": null}}', ShownAt(ITEM, 7)),
    (SHOWS_WORDS, f'{{"item": "{ITEM}", "side": "verso"}}', Shows(ITEM, "verso")),
    (AREA_WORDS, "0.25000 0.40000 0.1 0.2", Area(0.25, 0.4, 0.1, 0.2)),
    (COORDINATES_WORDS, "-45.82 170.62", Coordinates(-45.82, 170.62)),
    (
        RECORDING_WORDS,
        f'{{"path": "recordings/a.wav", "sha256": "{DIGEST}", "bytes": 9}}',
        RecordingFacts(path="recordings/a.wav", sha256=DIGEST, bytes=9),
    ),
    (
        FIXITY_WORDS,
        '{"event": "fixity check", "outcome": "as it was"}',
        FixityEvent(event="fixity check", outcome="as it was"),
    ),
    (CLOSED_WORDS, '{"from": 0, "to": 9}', Passage(0, 9)),
    (EMBEDDED_WORDS, "a line without a name", Embedded((("", "a line without a name"),))),
]
"""Words that earlier versions wrote, or took in, and what they mean."""

REFUSALS: list[tuple[Codec[Any], str]] = [
    (ID_WORDS, ""),
    (ID_WORDS, "two words"),
    (OPEN_ID_WORDS, " "),
    (DAY_WORDS, "next week"),
    (DAY_WORDS, "20261125"),
    (DAY_WORDS, "2026-02-30"),
    (COUNT_WORDS, "-1"),
    (COUNT_WORDS, "४०"),
    (COUNT_WORDS, "many"),
    (YES_NO_WORDS, "perhaps"),
    (AUDIENCE_WORDS, "nobody"),
    (AUDIENCE_WORDS, "story=nobody"),
    (AUDIENCE_WORDS, "=family"),
    (AUDIENCE_WORDS, "two words=family"),
    (NUMBER_WORDS, "0042"),
    (NUMBER_WORDS, "-0042"),
    (NUMBER_WORDS, "TRA-00x2"),
    (KEPT_WORDS, ""),
    (KEPT_WORDS, " 3"),
    (KEPT_WORDS, "in the attic"),
    (KEPT_WORDS, f"{BOX} -3"),
    (SIZE_WORDS, ""),
    (SIZE_WORDS, "big"),
    (SIZE_WORDS, "0 x 165"),
    (SIZE_WORDS, "-108 x 165"),
    (SIZE_WORDS, "10,8 x 16,5"),
    (SIZE_WORDS, "1 x 2 x 3 x 4"),
    (SIZE_WORDS, "108 x"),
    (SIZE_WORDS, "nan x inf"),
    (SIZE_WORDS, "1" * 400),
    (MEASURED_WORDS, "yesterday 18 52"),
    (MEASURED_WORDS, "2026-11-25T09:30:00 18.50"),
    (MEASURED_WORDS, "2026-11-25T09:30:00 nan 52.0"),
    (MEASURED_WORDS, "2026-11-25T09:30:00 18.5 0"),
    (MEASURED_WORDS, "2026-11-25T09:30:00 18.5 101"),
    (MEASURED_WORDS, "2026-11-25T09:30:00+02:00 18.5 52"),
    (CLIMATE_WORDS, '{"path": "a"}'),
    (FILE_WORDS, "scans/a.jpg"),
    (FILE_WORDS, "[]"),
    (FILE_WORDS, '{"path": 3}'),
    (FILE_WORDS, '{"path": "a", "sha256": "b", "bytes": true, "width": 1, "height": 1, "media_type": "c"}'),
    (FILE_WORDS, '{"path": "a", "sha256": "b", "bytes": 1, "width": 1, "height": 1, "ppi": "x", "media_type": "c"}'),
    (SHOWS_WORDS, '{"item": "", "side": "recto"}'),
    (SHOWS_WORDS, '{"item": "a", "side": "recto", "role": "painted"}'),
    (SHOWS_WORDS, '{"item": "a", "side": "recto", "area": "left"}'),
    (SHOWS_WORDS, '{"item": "a", "side": "recto", "turn": 45}'),
    (SHOWS_WORDS, '{"item": "a", "side": "recto", "turn": "90"}'),
    (SHOWS_WORDS, '{"item": "a", "side": "recto", "area": [0.1, 0.2, 0.3]}'),
    (SHOWS_WORDS, '{"item": "a", "side": "recto", "area": [0.1, "0.2"]}'),
    (AREA_WORDS, ""),
    (AREA_WORDS, "0.1 0.2 0.3"),
    (AREA_WORDS, "0.1 nan"),
    (AREA_WORDS, "120 80"),
    (AREA_WORDS, "-0.1 0.5"),
    (COORDINATES_WORDS, "91, 0"),
    (COORDINATES_WORDS, "0, 181"),
    (COORDINATES_WORDS, "Port Chalmers"),
    (LINK_WORDS, f"{ITEM} {BOX}"),
    (LINK_WORDS, f"{ITEM} short attached_to"),
    (LINK_WORDS, f"{ITEM} {BOX} "),
    (LINK_WORDS, f"{ITEM} {BOX} attached to"),
    (ROW_WORDS, ITEM),
    (ROW_WORDS, f"{ITEM} front first"),
    (CAME_FROM_WORDS, "scans/harbour.jpg"),
    (CAME_FROM_WORDS, "0123456789abcdef"),
    (CAME_FROM_WORDS, "0123456789abcdef harbour"),
    (CAME_FROM_WORDS, "0123456789ABCDEF 0123456789abcdef"),
    (NAMING_WORDS, "hide"),
    (NAMING_WORDS, f"hide {ITEM} story 0123456789abcdef"),
    (LOOKS_WORDS, "ff"),
    (LOOKS_WORDS, "00000000000000FF"),
    (LOOKS_WORDS, "0x000000000000ff"),
    (LOOKS_WORDS, "0000000000000 ff"),
    (SHOWN_WORDS, ""),
    (SHOWN_WORDS, "two words"),
    (SHOWN_WORDS, "{"),
    (SHOWN_WORDS, '{"at": 3}'),
    (SHOWN_WORDS, '{"item": "a", "at": "noon"}'),
    (COURSE_WORDS, '{"step": "clap"}'),
    (COURSE_WORDS, "[" * 100_000),
    (CLOSED_WORDS, '{"from": 0.5, "to": 1}'),
    (RECORDING_WORDS, '{"path": "a", "sha256": "b"}'),
    (PAPER_WORDS, '"a"'),
    (FIXITY_WORDS, '{"event": "fixity check"}'),
    (FIXITY_WORDS, '{"ended": "b", "begun": "a", "read": 1, "wrong_count": 0}'),
    (FIXITY_WORDS, '{"ended": "2026-11-25", "begun": "a", "read": 1, "wrong_count": 1, "wrong": "p"}'),
    (FIXITY_WORDS, '{"ended": "2026-11-25", "begun": "a", "read": 1, "wrong_count": 1, "wrong": ["p"]}'),
]


@every_row(("codec", "value", "words"), BOTH_WAYS)
def test_words_are_written_and_read(codec: Codec[Any], value: object, words: str) -> None:
    assert codec.write(value) == words
    assert codec.read(words) == codec.typed(words) == codec.or_none(words) == value


@every_row(("codec", "words", "value"), OLDER)
def test_words_of_earlier_versions_are_read(codec: Codec[Any], words: str, value: object) -> None:
    assert codec.read(words) == value


@every_row(("codec", "words"), REFUSALS)
def test_words_that_say_nothing_are_refused_in_a_sentence(codec: Codec[Any], words: str) -> None:
    with pytest.raises(CouldNot) as damaged:
        codec.read(words)
    with pytest.raises(WrongUse) as refused:
        codec.typed(words)
    assert codec.or_none(words) is None
    assert codec.what in str(damaged.value) and "backup" in str(damaged.value)
    assert codec.what in str(refused.value) and codec.hint in str(refused.value)
    assert "\n" not in str(refused.value) and len(str(refused.value)) < 300


def test_each_codec_of_the_table_is_tried_here() -> None:
    used = {id(field.codec) for field in FIELDS.values()}
    assert used == {id(FIELDS[name].codec) for name in VALUES}
    assert used == {id(codec) for codec, _, _ in BOTH_WAYS}


@drawn(40)
@given(st.data())
@pytest.mark.parametrize("name", VALUES)
def test_what_was_written_is_read_back(name: str, data: st.DataObject) -> None:
    value = data.draw(VALUES[name])
    codec = FIELDS[name].codec
    words = codec.write(value)
    assert codec.read(words) == value
    assert codec.write(codec.read(words)) == words


SCRAPS = st.lists(
    st.sampled_from(
        ["{", "}", '"', ":", ",", "item", "at", " ", "-", "=", "x", "1e999", "9" * 30, "null", "[", "]", "é"]
    )
).map("".join)


@drawn(60)
@given(words=st.one_of(st.text(max_size=60), SCRAPS))
@example(words='{"item": {"item": "a"}}')
@example(words='{"area": [' + "9" * 400 + ', 1], "item": "a", "side": "b"}')
@pytest.mark.parametrize("name", VALUES)
def test_any_words_are_read_or_refused(name: str, words: str) -> None:
    codec = FIELDS[name].codec
    try:
        value = codec.read(words)
    except CouldNot:
        assert codec.or_none(words) is None
    else:
        assert codec.read(codec.write(value)) == value


def test_a_size_keeps_what_the_ruler_says() -> None:
    """Millimetres with a decimal point; 0.1 has no exact binary form (IEEE 754) and must not show."""
    assert SIZE_WORDS.write(SizeMm((0.1 + 0.2, 165))) == "0.3 x 165"


@pytest.mark.parametrize(
    ("area", "numbers"), [(Area(0.1, 0.2), (0.1, 0.2)), (Area(0.1, 0.2, 0.3, 0.4), (0.1, 0.2, 0.3, 0.4))]
)
def test_an_area_as_numbers(area: Area, numbers: tuple[float, ...]) -> None:
    assert area.numbers == numbers
    assert area.is_box is (len(numbers) == 4)


def said_in_a_sitting(field: str, words: str, moment: int | None) -> Statement:
    subject = Subject(Kind.SITTING, BOX)
    return Statement(id="s", act="a", subject=subject, field=field, words=words, moment=moment, recorded_at="2026")


@pytest.mark.parametrize(
    ("words", "moment", "at"),
    [
        (f'{{"item": "{ITEM}", "at": 4200}}', 9000, 4200),
        (f'{{"item": "{ITEM}", "at": 0}}', 9000, 0),
        (ITEM, 9000, 9000),
        (ITEM, None, 0),
    ],
)
def test_when_an_item_was_shown(words: str, moment: int | None, at: int) -> None:
    assert shown_in(said_in_a_sitting("shown", words, moment)) == ShownAt(ITEM, at)


@pytest.mark.parametrize(("start", "moment", "begins"), [(-5, 250, -5), (0, 250, 0), (None, 250, 250), (None, None, 0)])
def test_where_a_recording_lies_in_its_sitting(start: int | None, moment: int | None, begins: int) -> None:
    kept = RecordingFacts(path="recordings/a.wav", sha256=DIGEST, bytes=9, start=start)
    statement = said_in_a_sitting("recording", RECORDING_WORDS.write(kept), moment)
    assert recording_in(statement) == replace(kept, start=begins)


def test_the_day_of_a_run() -> None:
    run = FixityRun(begun="a", ended="2026-11-25T10:15:30.250Z", read=2, bytes=3, wrong_count=0)
    assert run.day == date(2026, 11, 25)


@pytest.mark.parametrize(
    ("text", "sides", "sentence"),
    [
        ("108", 2, "“108” is not the whole size: its height is missing. Write millimetres, wide by high: 108 x 165."),
        ("380 x 260", 3, "its depth is missing. Write millimetres, wide by high by deep: 380 x 260 x 130."),
        ("4x6", 2, "“4x6” would be millimetres. If inches are meant, write 102 x 152; if it is as small as that,"),
        ("big", 2, "“big” is no size."),
    ],
)
def test_a_size_that_cannot_be_meant(text: str, sides: int, sentence: str) -> None:
    """An inch is 25.4 mm (international yard and pound agreement, 1959)."""
    with pytest.raises(WrongUse) as refused:
        typed_size(text, sides)
    assert sentence in str(refused.value)


def test_a_size_as_it_is_typed() -> None:
    assert typed_size("8 x 11 mm").sides == (8, 11)
    assert typed_size("108 x 165").sides == (108, 165)
    assert typed_size("380 x 260 x 130", 3).sides == (380, 260, 130)


def test_what_a_file_says_is_parted_into_the_words_of_people() -> None:
    embedded = EMBEDDED_WORDS.read("title: Nets\ndate: 1912\nproblem: cut short\nby: Leida")
    assert embedded.texts == ("Nets", "Leida") and not embedded.are_struck
    assert EMBEDDED_WORDS.read("struck: yes").are_struck and EMBEDDED_WORDS.read("struck: yes").texts == ()


SHOWN = [
    ("anyone", ""),
    ("family", "for the family only"),
    ("keeper", "for the keeper only"),
    ("archive:2060-01-01", "closed in an archive until 2060-01-01"),
    ("family+archive:2060-01-01", "for the family, closed in an archive until 2060-01-01"),
    ("family+archive", "for the family, closed in an archive until it is asked again"),
    ("the neighbours", "for the keeper only"),
]


@pytest.mark.parametrize(("text", "wanted"), SHOWN)
def test_an_audience_in_words(text: str, wanted: str) -> None:
    assert audience_shown(text) == wanted

"""Chapters as W3C's WebVTT wants them (section numbers there); a browser reads them in tests/viewing."""

import pytest

from boxlore.exports.webvtt import Chapter, timestamp, write_chapters


@pytest.mark.parametrize(
    ("milliseconds", "text"),
    [(0, "00:00:00.000"), (252_250, "00:04:12.250"), (360_000_001, "100:00:00.001"), (-4, "00:00:00.000")],
)
def test_timestamps(milliseconds: int, text: str) -> None:
    """4.1: two or more digits of hours, two of minutes and seconds, three of the fraction."""
    assert timestamp(milliseconds) == text


def test_a_whole_file() -> None:
    chapters = [
        Chapter(5000, 9000, "TRA-0002 A & B <wed> --> us\nnext", "TRA-0002"),
        Chapter(0, 5000, "TRA-0001 The harbour", "TRA-0001"),
    ]
    assert write_chapters(chapters, "Sitting --> one") == (
        "WEBVTT\n\nNOTE\nSitting --&gt; one\n\n"
        "TRA-0001\n00:00:00.000 --> 00:00:05.000\nTRA-0001 The harbour\n\n"
        "TRA-0002\n00:00:05.000 --> 00:00:09.000\nTRA-0002 A &amp; B &lt;wed&gt; --&gt; us next\n"
    )


def test_no_cue_is_empty_or_ends_before_it_starts() -> None:
    """4.1: the end time is greater than the start time; a cue's text does not hold a blank line."""
    text = write_chapters([Chapter(7, 3, "\n\n"), Chapter(-90, -50, "x\x00\u2028y")])
    assert text == "WEBVTT\n\n00:00:00.000 --> 00:00:00.001\nx y\n\n00:00:00.007 --> 00:00:00.008\n-\n"
    assert write_chapters([]) == "WEBVTT\n"

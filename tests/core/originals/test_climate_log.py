"""Logger files of different shape (shapes of our own making after what loggers print; no outside source)."""

from datetime import datetime, timedelta

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.originals.climate_log import read_log

ISO = """\
Serial,10482
Site,Hall cupboard
Timestamp,Temperature (°C),Relative Humidity (%),Dew Point (°C)
2026-01-31 23:50:00,18.5,44.0,6.1
2026-02-01 00:00:00,18.4,44.5,6.2
2026-02-01 00:10:00,,,
2026-02-01 00:20:00,18.2,45.0,6.1
"""

AMERICAN = """\
"#","Date Time","Temp, °F","RH, %","Host Connected"
1,"02/27/26 11:50:00 PM","68.0","50.1",""
2,"02/28/26 12:00:00 AM","77.0","50.3",""
3,"02/28/26 12:10:00 AM","-","50.3","Logged"
"""

EUROPEAN = """\
\ufeffDatum;Zeit;Temperatur [°C];Feuchte [%rH]
01.03.2026;14:00;20,5;48,0
02.03.2026;15:00;20,7;47,5
"""

WIDE = """\
Location\tAttic
Min Temp\t1
Date\tTime\tHumidity %RH\tTemperature C
2026/03/01\t9:00\t48 %\t20.5 °C
2026/03/01\t10:00\t47 %\t−2.5 °C
"""


def test_three_shapes_and_one_more_are_read() -> None:
    iso = read_log(ISO)
    assert iso.readings[1] == (datetime(2026, 2, 1, 0, 0), 18.4, 44.5)
    assert (iso.unit, iso.order, iso.left_out, len(iso.readings)) == ("C", "ymd", 1, 3)
    american = read_log(AMERICAN)
    assert (american.unit, american.order, american.left_out) == ("F", "mdy", 1)
    assert american.readings[1] == (datetime(2026, 2, 28, 0, 0), 25.0, 50.3)
    assert american.readings[0][1] == pytest.approx(20)
    european = read_log(EUROPEAN, order="dmy")
    assert european.readings[0] == (datetime(2026, 3, 1, 14, 0), 20.5, 48.0)
    wide = read_log(WIDE)
    assert [one[1:] for one in wide.readings] == [(20.5, 48.0), (-2.5, 47.0)]


def test_a_quotation_mark_left_open_swallows_its_own_line_alone() -> None:
    left_open = read_log(AMERICAN.replace('"50.1",""', '"50.1","'))
    assert (len(left_open.readings), left_open.left_out) == (2, 1)


def test_the_order_of_day_and_month_is_the_one_in_which_time_runs_on() -> None:
    assert read_log(EUROPEAN).order == "dmy"
    again = EUROPEAN.replace("02.03.2026", "13.03.2026")
    assert read_log(again).order == "dmy"


def test_a_row_that_is_no_time_is_left_out_and_does_not_decide_the_order() -> None:
    broken = EUROPEAN + "\n\nswitched off;;20,7;47,5\n02.03.2026;25:00;20,7;47,5\n"
    log = read_log(broken)
    assert (log.order, len(log.readings), log.left_out) == ("dmy", 2, 2)
    assert "2 rows are no reading and were left out" in log.notes


def test_a_day_that_there_is_not_is_left_out() -> None:
    log = read_log(clock("2026-02-27 10:00", "2026-02-29 10:00", "2026-02-28 10:00"))
    assert ([when.day for when, _, _ in log.readings], log.left_out) == ([27, 28], 1)


def test_a_reading_without_humidity_or_beyond_a_house_is_left_out() -> None:
    """Humidity is above 0, at most 100 %; no room has less than -60 or more than 80 °C (common practice, no source)."""
    rows = ["10:00,20,0", "10:10,20,100", "10:20,20,101", "10:30,81,50", "10:40,80,50", "10:50,-60,50", "11:00,-61,50"]
    log = read_log("Time,Temperature (C),Humidity\n" + "".join(f"2026-03-01 {row}\n" for row in rows))
    assert [when.minute for when, _, _ in log.readings] == [10, 40, 50]
    assert log.left_out == 4


def test_a_day_and_a_column_that_holds_both() -> None:
    """“Date and time” beside “Time”: the first holds both already."""
    log = read_log("Date and time;Time;Temp C;RH\n2026-03-01 09:30;x;20;50\n")
    assert [when for when, _, _ in log.readings] == [datetime(2026, 3, 1, 9, 30)]


def test_a_line_doubled_is_one_reading() -> None:
    log = read_log(clock("2026-03-01 10:00", "2026-03-01 10:10", "2026-03-01 10:10", "2026-03-01 10:20"))
    assert [when.minute for when, _, _ in log.readings] == [0, 10, 20]


def test_gaps_beyond_three_are_counted() -> None:
    times = [f"2026-03-0{day} 1{hour}:{minute}0" for day in range(1, 7) for hour in (0, 1) for minute in range(6)]
    log = read_log(clock(*times))
    assert len(log.gaps) == 5
    assert log.notes[-4:] == (
        *(f"a gap of 22.2 hours after 2026-03-0{day} 11:50" for day in (1, 2, 3)),
        "2 further gaps",
    )


def test_what_stays_open_is_asked() -> None:
    one = "Date Time,Temp C,RH\n01/02/2026 10:00,20,50\n01/02/2026 10:10,20,50\n"
    with pytest.raises(WrongUse, match="Which of the two figures is the day"):
        read_log(one)
    assert read_log(one, order="mdy").readings[0][0] == datetime(2026, 1, 2, 10)
    assert read_log(one, order="dmy").readings[0][0] == datetime(2026, 2, 1, 10)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "No line of this file names columns"),
        ("a,b,c\n1,2,3\n", "No line of this file names columns"),
        ("Time,Temperature,Humidity\nlater,20,50\n", "No time in this file"),
        ("Time,Temperature,Humidity\n13/14/2026 10:00,20,50\n", "Days and months are mixed"),
    ],
)
def test_what_cannot_be_read_is_said(text: str, words: str) -> None:
    with pytest.raises(WrongUse, match=words):
        read_log(text)


@pytest.mark.parametrize(
    ("heading", "value", "unit", "wanted"),
    [
        ("Temperature", "68", "F", ""),
        ("Temperature", "20", "C", ""),
        ("Temp_F", "20", "F", ""),
        ("Fahrenheit", "20", "F", ""),
        ("Celsius", "70", "C", ""),
        ("Temperature", "30", "F", "F"),
    ],
)
def test_the_unit_is_what_the_heading_or_else_the_values_say(heading: str, value: str, unit: str, wanted: str) -> None:
    text = f"Time,{heading},Humidity\n2026-01-01 10:00,{value},50\n2026-01-01 11:00,{value},50\n"
    assert read_log(text, unit=wanted).unit == unit


def clock(*times: str) -> str:
    return "Time,Temperature (C),Humidity\n" + "".join(f"{time},20,50\n" for time in times)


def every_ten(start: datetime, count: int) -> list[str]:
    return [f"{start + timedelta(minutes=10) * at:%Y-%m-%d %H:%M}" for at in range(count)]


def test_a_clock_put_back_loses_no_reading_and_makes_no_gap() -> None:
    back = read_log(clock(*every_ten(datetime(2026, 10, 25, 1), 12), *every_ten(datetime(2026, 10, 25, 2), 12)))
    assert (len(back.readings), len(back.clock_changes), back.gaps) == (24, 1, ())
    assert {b[0] - a[0] for a, b in zip(back.readings, back.readings[1:], strict=False)} == {timedelta(minutes=10)}


def test_a_clock_put_forward_is_no_gap() -> None:
    forward = read_log(clock(*every_ten(datetime(2026, 3, 29, 1), 6), *every_ten(datetime(2026, 3, 29, 3), 6)))
    assert (len(forward.clock_changes), forward.gaps) == (1, ())
    night = read_log(clock(*every_ten(datetime(2026, 6, 2, 1), 6), *every_ten(datetime(2026, 6, 2, 5), 6)))
    assert (len(night.clock_changes), night.gaps) == (
        0,
        ((datetime(2026, 6, 2, 1, 50), timedelta(hours=3, minutes=10)),),
    )


def test_a_log_with_its_newest_reading_first_is_turned_round() -> None:
    times = every_ten(datetime(2026, 1, 1), 5)
    assert read_log(clock(*reversed(times))).readings == read_log(clock(*times)).readings

"""Our bounds against PyPI `edtf` 5 (an independent reader), with a list of where it is known to be wrong, and why."""

from time import struct_time

import pytest
from edtf import parse_edtf

from boxlore.core.dates.edtf import parse

TEXTS = """1985-04-12 1985-04 1985 1964/2008 2004-06/2006-08 2004-02-01/2005-02-08 2004-02-01/2005-02 2004-02-01/2005
    2005/2006-02 201X 20XX 2004-XX 1985-04-XX 1985-XX-XX 1985? 2004-06~ 2004-06-11% Y170000002 Y-170000002 -1985
    Y-17E7 1950S2 2001-21 2001-22 2001-23 2001-24 2001-34 2001-25 2001-37 2001-40 156X-12-25 15XX-12-25 1XXX-12
    [1667,1668,1670..1672] {1667,1668,1670..1672} {1960,1961-12} [..1760-12-03] [1760-12..] [1667,1760-12] {..1984}
    1985-04-12/.. 1985/ /1985 ../1985 2004-06-~01/2004-06-~20 2004?-06-11 2004-06-XX/2004-07-03""".split()

KNOWN_WRONG = {
    "1985-04-12/..": "its open end is today, which the specification does not say",
    "1985/": "its unknown end is ten years on; the specification leaves it unknown",
    "/1985": "its unknown start is ten years back",
    "../1985": "its open start is a number, not unbounded",
    "[..1760-12-03]": "its open start is a number, not unbounded",
    "[1760-12..]": "its open end is a number, not unbounded",
    "{..1984}": "its open start is a number, not unbounded",
    "1950S2": "significant digits of a plain year widen both sides there; the specification gives 1900..1999",
    "2001-24": "its winter ends in the same year",
}


def _day(found: struct_time) -> tuple[int, int, int]:
    return found.tm_year, found.tm_mon, found.tm_mday


def _differences() -> dict[str, tuple[object, object]]:
    found: dict[str, tuple[object, object]] = {}
    for text in TEXTS:
        ours = parse(text)
        theirs = parse_edtf(text)
        try:
            bounds = (_day(theirs.lower_strict()), _day(theirs.upper_strict()))
        except Exception as error:  # noqa: BLE001  # the library raises whatever comes up inside it
            found[text] = (ours.earliest, repr(error))
            continue
        mine = tuple(tuple(one) if one else None for one in (ours.earliest, ours.latest))
        if mine != bounds:
            found[text] = (mine, bounds)
    return found


@pytest.fixture(scope="module")
def differences() -> dict[str, tuple[object, object]]:
    return _differences()


def test_only_where_it_is_known_to_be_wrong(differences: dict[str, tuple[object, object]]) -> None:
    assert {text: two for text, two in differences.items() if text not in KNOWN_WRONG} == {}


@pytest.mark.parametrize("text", KNOWN_WRONG)
def test_what_is_known_to_be_wrong_still_is(text: str, differences: dict[str, tuple[object, object]]) -> None:
    assert text in differences, KNOWN_WRONG[text]

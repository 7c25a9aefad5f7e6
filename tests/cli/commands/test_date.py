"""`boxlore date` in sentences and from standard input (our own contract; the dates themselves: tests/core/dates)."""

import io

import pytest

SENTENCES = [
    ("about 1920", "about 1920 → 1920~: approximately 1920, 1920-01-01 to 1920-12-31", 0),
    ("after 1950", "after 1950 → [1951..]: not earlier than 1951, 1951-01-01 to …", 0),
    ("before 1950", "before 1950 → [..1949]: not later than 1949, … to 1949-12-31", 0),
    (
        "7/4/52",
        "7/4/52 → [1952-04-07,1952-07-04]: 1952 April 7 or 1952 July 4, 1952-04-07 to 1952-07-04"
        " (ask: Day or month first?)\n"
        "  1. 7 April 1952                 1952-04-07\n"
        "  2. 4 July 1952                  1952-07-04\n"
        "  3. 7 April 1952 or 4 July 1952  [1952-04-07,1952-07-04]",
        1,
    ),
    ("nonsense", "nonsense → no date: These words are not read as a date; they are kept as told.", 1),
    (
        "29 February 1900",
        "29 February 1900 → no date: There is no day 29 in that month. Which is meant?\n"
        "  1. 28 February 1900  1900-02-28\n"
        "  2. 1 March 1900      1900-03-01\n"
        "  3. February 1900     1900-02",
        1,
    ),
    ("\x1b[31mred", "[31mred → no date: These words are not read as a date; they are kept as told.", 1),
    (
        "\x1b[31m1920",
        "[31m1920 → no date: “[31m1920”: is 1920 meant? Not understood: “[31”.\n  1. 1920",
        1,
    ),
]


@pytest.mark.parametrize(("text", "sentence", "code"), SENTENCES)
def test_a_date_is_answered_in_a_sentence_with_its_choices_in_words(run, text: str, sentence: str, code: int) -> None:  # type: ignore[no-untyped-def]
    assert run("date", text) == (code, sentence + "\n", "")


def test_a_dash_reads_a_date_a_line(run, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    monkeypatch.setattr("sys.stdin", io.StringIO("1920\r\n\n1930\n"))
    code, out, _ = run("date", "1910", "-", "1940")
    assert code == 1  # a blank line is no date
    assert [line.split(" → ")[0] for line in out.splitlines()] == ["1910", "1920", "", "1930", "1940"]


def test_in_a_collection_its_day_order_holds(run, tmp_path) -> None:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm", "--day-order", "mdy")[0] == 0
    assert run("-c", tmp_path / "tamm", "date", "7/4/52")[1].startswith("7/4/52 → 1952-07-04")
    assert run("-c", tmp_path / "tamm", "date", "--order", "dmy", "7/4/52")[1].startswith("7/4/52 → 1952-04-07")


LEANING = [  # options, words, what is answered of the family's dates (reckoned by hand)
    (["--narrator", "Leida Tamm"], "when I was six", "[1926-03-04..1927-03-03]"),
    (["--narrator", "Leida Tamm"], "JUN 47", "1947-06: 1947 June, 1947-06-01 to 1947-06-30\n"),
    ([], "JUN 47", "1947-06: 1947 June, 1947-06-01 to 1947-06-30 (ask"),
    ([], "when I was six", "no date: When were you born?"),
    (["--item", "TRA-0001"], "on her 21st", "1931"),
    ([], "on her 21st", "no date: Who was that"),
    ([], "when Aino Tamm was ten", "1920~"),
    (["--edtf"], "1920~", "1920~"),
]


def test_in_a_collection_a_date_leans_on_the_family(run, bare) -> None:  # type: ignore[no-untyped-def]
    home = bare(1)
    for field, name, born in (("named", "Leida Tamm", "4 March 1920"), ("person", "Aino Tamm", "1910")):
        assert run("-c", home, "tell", "TRA-0001", field, name)[0] == 0
        assert run("-c", home, "people", "tell", name, "born", born)[0] == 0
    for options, words, answer in LEANING:
        assert run("-c", home, "date", *options, words)[1].startswith(f"{words} → {answer}"), words


def test_a_narrator_is_looked_up_in_a_collection(run, bare) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("date", "--narrator", "Leida", "when I was six")
    assert (code, out) == (2, "") and "Name it with -c FOLDER." in err
    assert "Nobody here is called" in run("-c", bare(1), "date", "--narrator", "Nobody", "1920")[2]

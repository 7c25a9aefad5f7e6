"""People and families of tree files; the clauses stand beside the cases (hand-written after the specifications)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.formats.gedcom import Fact, read_tree, split_lines, stricter
from boxlore.formats.gedcom_kin import links, not_by_blood, raised

FIVE = """0 HEAD
1 SOUR MADE_BY_HAND
1 GEDC
2 VERS 5.5.1
2 FORM LINEAGE-LINKED
1 CHAR UTF-8
0 @I1@ INDI
1 NAME Leida Johanna /Tamm/ jr.
2 NPFX Miss
2 NICK Leidi
2 ROMN Leida /Tamm/
3 TYPE roman
1 NAME Leida /Rourke/
2 TYPE married
1 SEX F
1 BIRT
2 DATE 17 MAY 1941
2 PLAC Tallinn,,Estonia
2 SOUR @S1@
3 PAGE 12
1 DEAT Y
1 OCCU nurse
1 FAMC @F1@
2 PEDI birth
1 REFN 42
2 TYPE card
1 RESN privacy
1 NOTE @N1@
1 NOTE She wrote to tui@@example.org
2 CONC  often.
0 @I2@ INDI
1 NAME Arvo /Tamm/
1 FAMS @F1@
1 DEAT
2 DATE ABT 1944
1 BURI
2 PLAC Haapsalu
0 @I3@ INDI
1 NAME /Mägi/
1 SEX F
0 @I4@ INDI
1 NAME Foster Child
1 FAMC @F1@
2 PEDI foster
0 @F1@ FAM
1 HUSB @I2@
1 WIFE @I3@
1 CHIL @I1@
1 MARR
2 DATE 1939
2 PLAC Tallinn
1 NCHI 1
0 @N1@ NOTE Kept from her diary.
0 @S1@ SOUR
1 TITL Register
0 TRLR
"""


def test_a_file_of_551() -> None:
    tree = read_tree(split_lines(FIVE))
    leida = tree.individuals["I1"]
    told = [(fact.field, fact.words) for fact in leida.facts]
    assert told == [
        ("given", "Leida Johanna"), ("family", "Tamm"), ("name", "Leida Johanna Tamm jr."), ("honorific", "Miss"),
        ("nickname", "Leidi"), ("name", "Leida Tamm"), ("married_as", "Rourke"), ("sex", "female"),
        ("born", "17 MAY 1941"), ("born_at", "Tallinn, Estonia"), ("living", "no"),
        ("note", "She wrote to tui@example.org often."), ("note", "Kept from her diary."),
    ]  # fmt: skip
    assert (leida.ids, leida.audience, leida.links) == (["refn:card 42"], "family", [("F1", "BIRTH")])
    assert tree.families["F1"].marriages == [("1939", "Tallinn")]
    assert tree.individuals["I3"].words("family") == "Mägi"
    assert (tree.version, tree.ended, tree.faults) == ("5.5.1", True, [])


def test_nothing_is_dropped_without_a_word() -> None:
    tree = read_tree(split_lines(FIVE))
    left = {(one.path, one.count, one.line) for one in tree.unread.values()}
    assert left == {("INDI.BIRT.SOUR", 2, 19), ("INDI.OCCU", 1, 22), ("FAM.NCHI", 1, 52), ("SOUR", 2, 54)}


def test_parents_by_blood_and_otherwise() -> None:
    tree = read_tree(split_lines(FIVE))
    assert set(links(tree)) == {("I1", "I2", "father"), ("I1", "I3", "mother")}
    assert list(not_by_blood(tree)) == [("I4", "F1", "foster")]


SEVEN = """0 HEAD
1 GEDC
2 VERS 7.0.14
1 SCHMA
2 TAG _X https://example.org/x
0 @I1@ INDI
1 NAME @@home /Tamm/
2 TYPE BIRTH
2 TRAN Лейда /Тамм/
3 LANG ru
1 SEX X
1 UID 0191f1a0-0000-7000-8000-000000000001
1 EXID 77
2 TYPE https://example.org/people
1 RESN CONFIDENTIAL, LOCKED
1 SNOTE @N1@
1 BIRT
2 DATE
3 PHRASE the year of the flood
1 NO MARR
1 FAMC @VOID@
0 @F1@ FAM
1 HUSB @VOID@
1 WIFE @I1@
2 PHRASE mother
0 @N1@ SNOTE Two
1 CONT lines
0 TRLR
"""


def test_a_file_of_70() -> None:
    """UID and EXID; SNOTE; DATE with PHRASE alone; @VOID@; RESN as a list of an enumeration (7.0, 3.3)."""
    tree = read_tree(split_lines(SEVEN))
    person = tree.individuals["I1"]
    assert [(fact.field, fact.words) for fact in person.facts] == [
        ("given", "@home"), ("family", "Tamm"), ("name", "Лейда Тамм"), ("sex", "other"),
        ("born", "(the year of the flood)"), ("note", "Two\nlines"),
    ]  # fmt: skip
    assert person.ids == ["uid:0191f1a0-0000-7000-8000-000000000001", "exid:https://example.org/people 77"]
    assert person.audience == "keeper"
    assert set(tree.unread) == {"HEAD.SCHMA", "INDI.NO", "INDI.FAMC", "FAM.WIFE.PHRASE"}
    assert list(links(tree)) == []


BROKEN = [
    ("0 @I1@ INDI\n0 @I1@ INDI", "given twice"),
    ("0 @F1@ FAM\n0 @F1@ FAM", "given twice"),
    ("0 @I1@ INDI\n1 NOTE @N9@", "is not there"),
]


@pytest.mark.parametrize(("text", "why"), BROKEN)
def test_what_is_wrong_is_told(text: str, why: str) -> None:
    tree = read_tree(split_lines(text))
    assert why in tree.faults[0].why
    assert len(tree.individuals) + len(tree.families) == text.count("@ INDI") + text.count("@ FAM")


def test_a_pointer_to_nobody_is_told() -> None:
    tree = read_tree(split_lines("0 @I1@ INDI\n1 FAMC @F9@\n0 @F1@ FAM\n1 CHIL @I9@"))
    assert list(links(tree)) == []
    assert len(tree.faults) == 2 and all("not there" in one.why for one in tree.faults)


def test_line_ends() -> None:
    """7.0, 1.3: CR, LF or both, and no other character ends a line."""
    assert list(split_lines("a\r\nb\rc\nd\x0b\u2028e")) == ["a", "b", "c", "d\x0b\u2028e"]


LINES = st.lists(st.sampled_from(FIVE.splitlines() + SEVEN.splitlines()) | st.text(max_size=12), max_size=40)


@drawn(100)
@given(LINES)
def test_lines_in_any_order_give_a_tree(lines: list[str]) -> None:
    tree = read_tree(lines)
    assert {child for child, _, _ in links(tree)} <= set(tree.individuals)
    assert len(list(not_by_blood(tree))) <= sum(len(one.links) for one in tree.individuals.values())


@drawn(60)
@given(st.integers(0, len(FIVE)))
def test_a_file_cut_off_anywhere_is_read_to_there_and_says_so(at: int) -> None:
    tree = read_tree(split_lines(FIVE[:at]))
    assert tree.ended is (at >= FIVE.index("0 TRLR") + 6)


KIN = """0 HEAD
1 GEDC
2 VERS 7.0.14
0 @I1@ INDI
1 NAME Mia /Rourke/
2 SPFX van der
2 SURN Velde
2 NSFX MBE
1 FAMC @F1@
2 PEDI ADOPTED
1 FAMC @F2@
2 PEDI FOSTER
1 FAMC @F3@
2 STAT DISPROVEN
1 FAMC @F4@
2 STAT CHALLENGED
1 ADOP
2 FAMC @F1@
2 DATE 1950
0 @I2@ INDI
1 NAME Tom
1 DEAT
2 NOTE was it he?
1 BIRT
2 DATE 1900
2 RESN CONFIDENTIAL
0 @I3@ INDI
1 NAME Leida Anna /Rourke/
2 TYPE MARRIED
1 NAME Leida Johanna /Tamm/
2 TYPE BIRTH
1 BURI Y
0 @I4@ INDI
1 NAME Con
0 @F1@ FAM
1 HUSB @I2@
1 WIFE @I3@
1 RESN PRIVACY, CONFIDENTIAL
1 MARR
0 @F2@ FAM
1 HUSB @I4@
0 @F3@ FAM
1 WIFE @I3@
0 @F4@ FAM
1 HUSB @I2@
1 HUSB @I4@
1 WIFE @I3@
1 MARR Y
1 CHIL @I1@
0 @N1@ SNOTE of a family alone
0 TRLR
"""


def test_links_keep_their_kind_and_none_takes_the_place_of_another() -> None:
    """7.0, enumset-PEDI and enumset-FAMC-STAT; FAM has one HUSB by the grammar, and files have two."""
    tree = read_tree(split_lines(KIN))
    assert set(raised(tree)) == {
        ("I1", "I2", "adoptive_parent"), ("I1", "I3", "adoptive_parent"), ("I1", "I4", "foster_parent"),
    }  # fmt: skip
    assert list(links(tree)) == [("I1", "I2", "father"), ("I1", "I4", "father"), ("I1", "I3", "mother")]
    assert list(not_by_blood(tree)) == [
        ("I1", "F1", "adopted"), ("I1", "F2", "foster"), ("I1", "F3", "disproven"), ("I1", "F4", "challenged"),
    ]  # fmt: skip
    assert tree.families["F4"].partners == [("I2", "father"), ("I4", "father"), ("I3", "mother")]


def test_an_event_without_a_date_a_place_and_a_payload_asserts_nothing_and_is_listed() -> None:
    """7.0, 3.3: Events."""
    tree = read_tree(split_lines(KIN))
    tom, leida = tree.individuals["I2"], tree.individuals["I3"]
    assert tom.facts == [Fact("given", "Tom", 21), Fact("born", "1900", 24, "keeper")]
    assert leida.words("living") == "no", "buried"
    assert [len(tree.families[xref].marriages) for xref in ("F1", "F4")] == [0, 1]
    assert set(tree.unread) == {"INDI.DEAT", "INDI.ADOP.DATE", "FAM.MARR", "NOTE"}
    assert tree.unread["NOTE"].example == "of a family alone"
    assert (tree.families["F1"].audience, tree.families["F2"].audience) == ("keeper", "")


def test_names_of_marriage_and_birth_keep_their_given_names_particles_and_suffixes() -> None:
    tree = read_tree(split_lines(KIN))
    told = {xref: [(fact.field, fact.words) for fact in tree.individuals[xref].facts] for xref in ("I1", "I3")}
    assert told["I1"] == [("given", "Mia"), ("family", "van der Velde"), ("suffix", "MBE")]
    assert told["I3"] == [
        ("married_as", "Rourke"), ("given", "Leida Anna"), ("born_as", "Tamm"), ("name", "Leida Johanna Tamm"),
        ("living", "no"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("one", "other", "audience"), [("keeper", "family", "keeper"), ("family", "", "family"), ("", "", "")]
)
def test_of_two_restrictions_the_stricter_holds(one: str, other: str, audience: str) -> None:
    assert stricter(one, other) == stricter(other, one) == audience

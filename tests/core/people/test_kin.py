"""Kin against published tables of relationship terms.

Terms: HL7 Version 3 RoleCode, value set PersonalRelationshipRoleType (code and definition beside each row).
Degrees: Texas Government Code 573.023 (a) to (c), civil reckoning. Cousins' degree and removal: common practice.
"""

import itertools
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.people.kin import By, Kin, Kinship, called, kin_words, table
from boxlore.core.people.kin_terms import blood_term, said_parts
from boxlore.core.people.person import Person
from boxlore.core.wording.catalogue import Say


def person(ident: str, sex: str = "", parents: str = "", spouses: str = "") -> Person:
    return Person(
        id=ident, name=ident, sort_name=ident, forms=(ident,), calls=(ident,), sex=sex,
        parents=tuple(parents.split()), spouses=tuple(spouses.split()),
    )  # fmt: skip


FAMILY = {
    one.id: one
    for one in (
        person("ggm", "female"), person("ggf", "male", spouses="ggm"),
        person("mgm", "female", "ggm ggf"), person("mgf", "male", spouses="mgm"),
        person("pgm", "female"), person("pgf", "male", spouses="pgm"),
        person("gaunt", "female", "ggm ggf"), person("gauntson", "male", "gaunt"),
        person("mother", "female", "mgm mgf"), person("father", "male", "pgm pgf", "mother stepmother"),
        person("stepmother", "female"), person("stepmothers", "female", "stepmother"),
        person("halfbro", "male", "father stepmother"),
        person("maunt", "female", "mgm mgf"), person("mauntman", "male", spouses="maunt"),
        person("puncle", "male", "pgm pgf"),
        person("cousin", "female", "maunt mauntman"), person("cousinson", "male", "cousin"),
        person("gauntsons", "female", "gauntson"),
        person("ego", "female", "mother father", "husband"),
        person("brother", "male", "mother father"), person("brotherwife", "female", spouses="brother"),
        person("niece", "female", "brother brotherwife"), person("greatnephew", "male", "niece"),
        person("husband", "male", "hmother hfather"), person("hmother", "female"), person("hfather", "male"),
        person("hsister", "female", "hmother hfather"), person("hsisterman", "male", spouses="hsister"),
        person("hsistermanbro", "male", "hsmm"), person("hsmm", "female"),
        person("haunt", "female", "hgm"), person("hgm", "female"),
        person("daughter", "female", "ego husband"), person("sonlaw", "male", spouses="daughter"),
        person("grandson", "male", "daughter sonlaw"), person("greatgrandchild", "", "grandson"),
        person("stepson", "male", "husband firstwife"), person("firstwife", "female"),
        person("stranger", "male"),
    )
}  # fmt: skip
FAMILY["hmother"] = person("hmother", "female", "hgm")
FAMILY["hsisterman"] = person("hsisterman", "male", "hsmm", "hsister")
KIN = Kin(FAMILY)

TERMS = [
    ("mother", "mother", "MTH"), ("father", "father", "FTH"), ("daughter", "daughter", "DAU"),
    ("mgm", "grandmother", "GRMTH / MGRMTH"), ("pgf", "grandfather", "GRFTH / PGRFTH"),
    ("ggm", "great-grandmother", "GGRMTH / MGGRMTH"), ("grandson", "grandson", "GRNDSON"),
    ("greatgrandchild", "great-grandchild", "common practice"),
    ("brother", "brother", "BRO"), ("halfbro", "half-brother", "HBRO: sharing only one biological parent"),
    ("maunt", "aunt", "MAUNT: sister of the biological mother"),
    ("puncle", "uncle", "PUNCLE: brother of the biological father"),
    ("gaunt", "great-aunt", "common practice"), ("mauntman", "uncle by marriage", "common practice"),
    ("cousin", "first cousin", "COUSN: relative descended from a common ancestor, such as a grandparent"),
    ("cousinson", "first cousin once removed", "common practice"),
    ("gauntson", "first cousin once removed", "common practice"),
    ("gauntsons", "second cousin", "common practice"),
    ("niece", "niece", "NIECE"), ("greatnephew", "great-nephew", "common practice"),
    ("husband", "husband", "HUSB"), ("hmother", "mother-in-law", "MTHINLAW: mother of husband or wife"),
    ("hfather", "father-in-law", "FTHINLAW"), ("sonlaw", "son-in-law", "SONINLAW: husband of a child"),
    ("hsister", "sister-in-law", "SISINLAW (1): sister of spouse"),
    ("brotherwife", "sister-in-law", "SISINLAW (2): wife of sibling"),
    ("hsisterman", "brother-in-law", "BROINLAW (3): husband of spouse's sister"),
    ("stepmother", "stepmother", "STPMTH: father's wife, not the biological mother"),
    ("stepmothers", "stepsister", "STPSIS: child of the stepparent, no common parent"),
    ("stepson", "stepson", "STPSON: child of the spouse by another union"),
    ("haunt", "husband's aunt", "no single term"),
    ("hsistermanbro", "sister-in-law's husband's brother", "no single term"),
]  # fmt: skip


@every_row(("other", "term", "code"), TERMS)
def test_terms(other: str, term: str, code: str) -> None:
    found = KIN.between("ego", other)
    assert found is not None
    if other == "hsistermanbro":
        assert found.words == "husband's sister's husband's brother"
    else:
        assert found.term == term


SAID = [
    ("gauntson", "mother's cousin"), ("cousin", "cousin"), ("cousinson", "cousin's son"),
    ("gauntsons", "second cousin"), ("greatnephew", "great-nephew"),
]  # fmt: skip


@pytest.mark.parametrize(("other", "words"), SAID)
def test_what_a_family_says(other: str, words: str) -> None:
    found = KIN.between("ego", other)
    assert found is not None and found.words == words


def test_relative_to_the_one_who_is_shown_it() -> None:
    assert kin_words(KIN, FAMILY["ego"], FAMILY["gauntson"]) == "ego's mother's cousin"
    assert kin_words(KIN, FAMILY["ego"], FAMILY["ego"]) == ""
    assert kin_words(KIN, FAMILY["ego"], FAMILY["stranger"]) == ""


IN_LANGUAGES = [
    ("de", "mgm", "Großmutter von ego"), ("es", "mgm", "abuela de ego"), ("fr", "mgm", "grand-mère d’ego"),
    ("et", "ggm", "ego vanavanaema"), ("de", "gauntson", "Cousin oder Cousine der Mutter von ego"),
    ("es", "cousinson", "hijo del primo o de la prima de ego"),
    ("et", "greatnephew", "ego õe või venna lapselaps"),
    ("fr", "stranger", ""),
]  # fmt: skip
"""What a language has no words for is not said in it. The forms of possession: from memory (Duden; Eesti õigekeelsus;
Diccionario de la lengua española; Grevisse)."""


@every_row(("language", "other", "wanted"), IN_LANGUAGES)
def test_kin_in_other_languages(language: str, other: str, wanted: str) -> None:
    assert kin_words(KIN, FAMILY["ego"], FAMILY[other], Say(language)) == wanted


def test_a_part_without_words_in_the_language_leaves_the_whole_unsaid() -> None:
    assert said_parts(("mother", "great-great-great-aunt"), Say("fr")) == ""
    assert said_parts(("mother-in-law", "sister"), Say("fr")) == ""
    assert said_parts(("sister", "husband", "brother"), Say("et")) == "õe mehe vend"


DEGREES = [
    ("mother", 1), ("daughter", 1), ("brother", 2), ("mgm", 2), ("grandson", 2), ("ggm", 3),
    ("greatgrandchild", 3), ("maunt", 3), ("puncle", 3), ("niece", 3),
]  # fmt: skip


@every_row(("other", "degree"), DEGREES)
def test_degrees_by_the_civil_reckoning(other: str, degree: int) -> None:
    """Texas Government Code 573.023 (a) to (c)."""
    found = KIN.between("ego", other)
    assert found is not None and found.by is By.BLOOD and found.degree == degree


def test_nobody_is_half_where_a_parent_is_not_told() -> None:
    people = {one.id: one for one in (person("m", "female"), person("a", "male", "m"), person("b", "male", "m"))}
    found = Kin(people).between("a", "b")
    assert found is not None and found.term == "brother"


def test_half_relations_go_down_the_line() -> None:
    people = {**FAMILY, "hbd": person("hbd", "female", "halfbro"), "egs": person("egs", "male", "ego")}
    kin = Kin(people)
    found = kin.between("ego", "hbd"), kin.between("egs", "halfbro"), kin.between("egs", "hbd")
    assert [one and one.term for one in found] == ["half-niece", "half-uncle", "half first cousin"]


def test_where_the_sex_is_not_told_the_term_says_so() -> None:
    people = {one.id: one for one in (person("m"), person("a", "", "m"), person("b", "", "m"))}
    found = Kin(people).between("a", "b")
    assert found is not None and found.term == "brother or sister"


def test_loops_are_found_and_borne() -> None:
    people = {one.id: one for one in (person("a", "", "b"), person("b", "", "c"), person("c", "", "a"), person("d"))}
    kin = Kin(people)
    assert kin.own_ancestors() == ["a", "b", "c"]
    assert kin.between("a", "b") is not None
    assert Kin(FAMILY).own_ancestors() == []


def test_a_link_to_nobody_and_to_oneself_is_borne() -> None:
    kin = Kin({"a": person("a", "", "a gone", "a gone")})
    assert (kin.parents("a"), kin.spouses("a"), kin.own_ancestors()) == ((), (), [])


def family(*rows: tuple[str, str]) -> Kin:
    """Kin of women by (id, parents)."""
    return Kin({ident: person(ident, "female", parents) for ident, parents in rows})


def words(kin: Kin, ego: str, other: str) -> tuple[str, str]:
    found = kin.between(ego, other)
    assert found is not None
    return found.term, found.words


def test_where_kin_married_kin_the_learned_term_is_said() -> None:
    """By the nearer line it is a cousin twice removed; but the parent's own nearest line is another one."""
    up = family(
        ("x", ""), ("y", ""), ("p1", "x"), ("m1", "p1"), ("m2", "y"), ("m", "m1 m2"), ("ego", "m"),
        ("oa", "x"), ("oc", "y"), ("ob", "oc"), ("other", "oa ob"),
    )  # fmt: skip
    assert words(up, "ego", "other") == ("first cousin twice removed",) * 2
    down = family(
        ("x", ""), ("y", ""), ("a", "y"), ("c2", "x"), ("b2", "c2"), ("a2", "b2"), ("ego", "a a2"),
        ("r", "y"), ("q", "r"), ("p", "x q"), ("other", "p"),
    )  # fmt: skip
    assert words(down, "ego", "other") == ("first cousin twice removed",) * 2


def test_a_chain_of_more_than_four_parts_says_nothing() -> None:
    """Wife's sister's husband's sister's husband: five parts (MOST_WORDS)."""
    people = [
        person("ego", "male", spouses="w1"), person("w1", "female", "p1"), person("w2", "female", "p1", "h2"),
        person("p1"), person("h2", "male", "p2"), person("s2", "female", "p2", "h3"), person("p2"),
        person("h3", "male"),
    ]  # fmt: skip
    kin = Kin({one.id: one for one in people})
    four = kin.between("ego", "s2")
    assert four is not None and four.words == "wife's sister's husband's sister"
    assert kin.between("ego", "h3") is None


def test_beyond_fourteen_generations_nobody_is_called_kin() -> None:
    """Fourteen links are the most (MOST_STEPS)."""
    kin = family(*((f"g{at}", f"g{at - 1}" if at else "") for at in range(17)))
    assert words(kin, "g16", "g2")[0] == "great-" * 12 + "grandmother"
    assert kin.between("g16", "g1") is None
    everyone = [person(f"g{at}", "female") for at in range(17)]
    assert {one.id for one, _ in table(kin, "g16", everyone)} == {f"g{at}" for at in range(2, 16)}


def test_a_marriage_told_of_both_is_one() -> None:
    kin = Kin({"a": person("a", "", "", "b"), "b": person("b", "", "", "a")})
    assert (kin.spouses("a"), kin.spouses("b")) == (("b",), ("a",))


def test_the_whole_kin_nearest_first() -> None:
    rows = table(KIN, "ego", FAMILY.values())
    assert {one.id for one, _ in rows} == set(FAMILY) - {"ego", "stranger"}
    assert rows[0][1].term in ("mother", "father", "daughter", "husband")


@drawn(60)
@given(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40), st.integers(0, 60)), min_size=3, max_size=25))
def test_symmetry(rows: list[tuple[int, int, int]]) -> None:
    """Each is to the other what the reversed generations say, by blood; by marriage stays by marriage."""
    people = {}
    for at, (one, other, wed) in enumerate(rows):
        parents = " ".join(str(p) for p in {one % (at + 1), other % (at + 1)} if p < at and one + other > 20)
        people[str(at)] = person(str(at), "fm"[at % 2], parents, str(wed % at) if at and wed > 40 else "")
    kin = Kin(people)
    assert kin.own_ancestors() == []
    for one, other in itertools.combinations(people, 2):
        there, back = kin.between(one, other), kin.between(other, one)
        assert (there is None) == (back is None)
        if there and back and there.by is By.BLOOD:
            assert there.degree == back.degree
            if (there.up, there.down) != (back.down, back.up):  # aunt and niece at once: they married among themselves
                assert (there.up, there.down) == (back.up, back.down)
            else:
                assert there.half == back.half
            assert there.term == blood_term(there.up, there.down, people[other].sex, half=there.half)
        elif there and back:
            assert back.by is not By.BLOOD


@every_row(("up", "down"), list(itertools.product(range(2, 8), range(2, 8))))
def test_cousins_degree_and_removal(up: int, down: int) -> None:
    """Degree: generations of the nearer one, less one; removal: the difference (common practice)."""
    ordinal = ["", "first", "second", "third", "fourth", "fifth", "sixth"][min(up, down) - 1]
    times = ["", " once removed", " twice removed", " three times removed"]
    more = times[abs(up - down)] if abs(up - down) < 4 else f" {['four', 'five'][abs(up - down) - 4]} times removed"
    assert blood_term(up, down, "f") == f"{ordinal} cousin{more}"


@pytest.mark.parametrize("great", range(1, 6))
def test_greats_count_up_both_ways(great: int) -> None:
    assert blood_term(great + 2, 0, "f") == "great-" * great + "grandmother"
    assert blood_term(great + 2, 1, "m") == "great-" * great + "uncle"
    assert blood_term(1, great + 2, "f") == "great-" * great + "niece"


COUSINS = Kin(
    {
        member.id: member
        for member in (
            person("granny", "female"), person("mum", "female", "granny"), person("aunt", "female", "granny"),
            person("dad", "male"), person("uncle", "male"),
            person("leida", "female", "dad mum"), person("helmi", "female", "uncle aunt"),
            person("tom", "male", "uncle2 helmi"), person("uncle2", "male"), person("liisi", "female", "dad2 leida"),
            person("dad2", "male"),
        )
    }
)  # fmt: skip


@pytest.mark.parametrize(
    ("ego", "relative", "words"),
    [
        ("leida", "tom", "cousin's son"),
        ("liisi", "helmi", "mother's cousin"),
        ("liisi", "tom", "second cousin"),
    ],
)
def test_the_parent_told_first_may_be_the_one_who_is_no_kin(ego: str, relative: str, words: str) -> None:
    """Cousins' degree and removal: common practice, no source."""
    kinship = COUSINS.between(ego, relative)
    assert kinship is not None and kinship.words == words


def chain(length: int, *, spouses: bool) -> dict[str, Person]:
    """p0, p1, …: each the child of the one before; or by turns the spouse and the child of the one before."""
    people = {"p0": person("p0", "female")}
    for at in range(1, length):
        before = f"p{at - 1}"
        wed = spouses and at % 2
        people[f"p{at}"] = person(f"p{at}", "female", "" if wed else before, before if wed else "")
    return people


def test_what_takes_too_many_words_is_not_said() -> None:
    people = chain(12, spouses=True)
    kin = Kin(people)
    assert kin.between("p0", "p3") is not None
    assert kin.between("p0", "p11") is None


def test_what_is_too_many_links_away_is_not_sought() -> None:
    people = chain(20, spouses=True)
    kin = Kin(people)
    assert kin.between("p0", "p19") is None
    assert "p19" not in {relative.id for relative, _ in table(kin, "p0", people.values())}


SEXES_IN_LAW = [("female", "sister-in-law"), ("m", "brother-in-law"), ("", "brother- or sister-in-law")]


@pytest.mark.parametrize(("sex", "term"), [*SEXES_IN_LAW, ("x", "brother- or sister-in-law")])
def test_in_law_of_someone_whose_sex_is_told_or_not(sex: str, term: str) -> None:
    family = (
        person("m"),
        person("brother", "male", "m", "wife"),
        person("wife", sex),
        person("ego", "", "m"),
    )
    kinship = Kin({member.id: member for member in family}).between("ego", "wife")
    assert kinship is not None and kinship.term == term


@pytest.mark.parametrize("lone", ["a", "b"])
def test_nobody_is_half_where_either_has_one_parent_told(lone: str) -> None:
    parents = {"a": "m f", "b": "m f2", lone: "m"}
    family = [person("m"), person("f"), person("f2"), *(person(child, "male", parents[child]) for child in "ab")]
    kinship = Kin({member.id: member for member in family}).between("a", "b")
    assert kinship is not None and kinship.term == "brother"


CALLED = [
    (("Leida Johanna", "Leidi"), "Leida"),
    ((), "Leida Rourke"),
    ((" ",), "Leida Rourke"),
]


@pytest.mark.parametrize(("calls", "name"), CALLED)
def test_how_a_person_is_called_in_a_sentence_about_kin(calls: tuple[str, ...], name: str) -> None:
    leida = Person(id="l", name="Leida Rourke", sort_name="Rourke, Leida", forms=("Leida Rourke",), calls=calls)
    assert called(leida) == name


WHOLE = [
    ("ego", Kinship(term="self", parts=("self",), by=By.SELF)),
    ("stepmother", Kinship(term="stepmother", parts=("stepmother",), by=By.STEP)),
    ("stepson", Kinship(term="stepson", parts=("stepson",), by=By.STEP)),
    ("stepmothers", Kinship(term="stepsister", parts=("stepsister",), by=By.STEP)),
    ("halfbro", Kinship(term="half-brother", parts=("half-brother",), by=By.BLOOD, up=1, down=1, half=True)),
    ("cousin", Kinship(term="first cousin", parts=("cousin",), by=By.BLOOD, up=2, down=2)),
    ("brotherwife", Kinship(term="sister-in-law", parts=("sister-in-law",), by=By.MARRIAGE)),
]


@pytest.mark.parametrize(("relative", "kinship"), WHOLE)
def test_all_that_is_said_of_a_kinship(relative: str, kinship: Kinship) -> None:
    assert KIN.between("ego", relative) == kinship


def kin_of(*people: Person) -> Kin:
    return Kin({member.id: member for member in people})


def words_between(kin: Kin, ego: str, relative: str) -> str:
    kinship = kin.between(ego, relative)
    return kinship.words if kinship else ""


COUSINS_WED = kin_of(
    person("top"), person("a1", "female", "top"), person("b1", "male", "top"),
    person("a2", "female", "a1"), person("b2", "male", "b1"), person("b2wife", "female", "", "b2"),
    person("a3", "female", "a2"), person("b3", "", "b2"), person("a2man", "male", "", "a2"),
    person("b3wed", "", "", "b3"),
)  # fmt: skip


@every_row(
    ("ego", "relative", "words"),
    [
        ("a2", "b2wife", "cousin's wife"),
        ("a2man", "b2", "wife's cousin"),
        ("a3", "b3", "second cousin"),
        ("a3", "b3wed", "second cousin's spouse"),
        ("a1", "b2wife", "nephew's wife"),
        ("a3", "b2", "mother's cousin"),
        ("a2", "b3", "cousin's child"),
        ("b3", "a1", "great-aunt"),
    ],
)
def test_what_is_said_of_cousins_and_whom_they_married(ego: str, relative: str, words: str) -> None:
    """Common practice, no source."""
    assert words_between(COUSINS_WED, ego, relative) == words


def test_step_and_half_of_someone_whose_sex_is_not_told() -> None:
    kin = kin_of(
        person("dad", "male", "", "second"), person("mum", "female"), person("second", "female"),
        person("ego", "", "dad mum"), person("hers", "", "second"), person("theirs", "", "dad second"),
    )  # fmt: skip
    assert words_between(kin, "ego", "hers") == "stepsister or stepbrother"
    assert words_between(kin, "ego", "theirs") == "half-brother or half-sister"


@pytest.mark.parametrize(
    ("up", "down", "term"),
    [
        (14, 14, "13th cousin"),
        (2, 12, "first cousin 10 times removed"),
        (12, 12, "11th cousin"),
    ],
)
def test_beyond_the_words_of_the_table_numbers_are_said(up: int, down: int, term: str) -> None:
    assert blood_term(up, down, "f") == term


def test_nobody_of_a_family_without_loops_is_their_own_ancestor() -> None:
    assert KIN.own_ancestors() == []
    looped = kin_of(person("a", "", "b"), person("b", "", "c"), person("c", "", "b"), person("d", "", "a c"))
    assert looped.own_ancestors() == ["b", "c"]


def test_a_link_to_somebody_whom_the_registry_has_not() -> None:
    kin = kin_of(person("ego", "", "gone"), person("sister", "female", "gone"))
    assert kin.parents("gone") == ()
    assert words_between(kin, "ego", "gone") == ""


RAISED = {
    one.id: one
    for one in (
        person("helmi", "female"), person("arvo", "male", spouses="helmi"), person("con", "male", parents="helmi"),
        replace(person("leida", "female"), adoptive_parents=("helmi", "gone")),
        replace(person("mia", "female"), adoptive_parents=("helmi",), foster_parents=("arvo",)),
        replace(person("tom"), foster_parents=("arvo",)),
    )
}  # fmt: skip
RAISED_AS = [
    ("leida", "helmi", "adoptive mother", By.ADOPTION), ("helmi", "leida", "adopted daughter", By.ADOPTION),
    ("leida", "con", "adoptive brother", By.ADOPTION), ("con", "leida", "adoptive sister", By.ADOPTION),
    ("leida", "mia", "adoptive sister", By.ADOPTION), ("tom", "arvo", "foster father", By.FOSTERING),
    ("arvo", "tom", "foster child", By.FOSTERING), ("tom", "mia", "foster sister", By.FOSTERING),
]  # fmt: skip
"""RoleCode: ADOPTF, CHLDADOPT, CHLDFOST, PRNFOST; brothers and sisters: common practice, from memory."""


@every_row(("ego", "relative", "words", "by"), RAISED_AS)
def test_those_who_raised_a_child_are_called_so(ego: str, relative: str, words: str, by: By) -> None:
    kinship = Kin(RAISED).between(ego, relative)
    assert kinship is not None and (kinship.words, kinship.by) == (words, by)


def test_the_adopted_are_in_the_table_of_kin() -> None:
    near = {relative.id: kinship.words for relative, kinship in table(Kin(RAISED), "helmi", RAISED.values())}
    assert {"leida": "adopted daughter", "con": "son", "arvo": "husband"}.items() <= near.items()

"""What comes of one wrong claim is one disagreement; what comes of two is two."""

from tests.core.evidence.family import item, person, row, shown, told, worked_out

from boxlore.core.evidence.disagreements import by_day, disagreements


def test_a_wrong_date_that_several_lives_speak_against_is_one() -> None:
    people = [person("Ada"), person("Bea"), person("Cy")]
    rows = [row("Ada", "born", "1910"), row("Bea", "born", "1912"), row("Cy", "born", "1914")]
    wrong = item("i", told("date", "1890"), people=[shown(each.name) for each in people])
    met = worked_out([wrong], people, rows).circles
    (one,) = disagreements(met)
    assert by_day([one])["item i"] == [one] and "item k" not in by_day([one])
    assert len(met) == 3 and len(one.others) == 2 and len(one.circle.claims) == 3
    assert {claim.words for claim in one.besides if "born “" in claim.words} == {
        f"{each} was born “{year}”" for each, year in (("Ada", 1910), ("Bea", 1912), ("Cy", 1914))
    } - {claim.words for claim in one.circle.claims}


def test_two_pictures_that_speak_against_one_death_are_two() -> None:
    ada = person("Ada", died="1920")
    late = [item(ident, told("date", words), people=[shown("Ada")]) for ident, words in (("i", "1930"), ("k", "1940"))]
    met = worked_out(late, [ada], [row("Ada", "died", "1920")]).circles
    assert [each.others for each in disagreements(met)] == [(), ()]


def test_two_pictures_that_speak_against_the_day_of_a_third_are_two() -> None:
    first = item("a1", told("date", "1912"))
    later = [item(ident, told("date", "1920"), told("story", "the same day as A1")) for ident in ("i", "k")]
    met = worked_out([first, *later]).circles
    assert [each.others for each in disagreements(met)] == [(), ()]


def test_what_comes_of_a_wrong_date_by_way_of_another_picture_is_the_same() -> None:
    people = [person("Ada"), person("Bea")]
    rows = [row("Ada", "born", "1960"), row("Bea", "born", "1950")]
    wrong = item("i", told("date", "1940"), people=[shown("Ada")])
    both = item("k", told("story", "Ada was three, Bea was thirteen"), people=[shown("Ada"), shown("Bea")])
    met = worked_out([wrong, both], people, rows).circles
    (one,) = disagreements(met)
    assert len(met) == 3 and len(one.circle.claims) == 3


def test_a_circle_without_a_picture_is_one_of_its_own() -> None:
    ada = person("Ada", died="1920")
    rows = [row("Ada", "died", "1920"), row("Ada", "born", "1930")]
    assert len(disagreements(worked_out([], [ada], rows).circles)) == 1

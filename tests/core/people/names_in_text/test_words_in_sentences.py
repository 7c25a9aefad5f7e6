"""Words of every day that living people of one collection are called by: where the sentence tells that none is meant.

What a word can be is counted in WordNet 3.0; the sentences are invented, and the rules are our own. In the first table
nobody is meant; in the second somebody may be, so that each is a question.
"""

from pathlib import Path

import pytest
from tests.core.people.names_in_text.test_search import answer, finder, person
from tests.every_row import every_row
from tests.made_tables import check_table

GIVEN = (
    "May June August April Will Mark Rose Grace Hope Grant Bill Faith Drew Pat Don Daisy Robin Frank Sandy Rich Miles "
    "Dean Jack Amber Ivy Summer"
).split()
FAMILY = (
    "Box Place Title Hill Church Stone Field Wood Rivers Young Black White Brown Green Day Knight Page Print Label "
    "King Bishop Market"
).split()
PEOPLE = [
    *(person(f"given {name}", given=name, family="Xylander") for name in GIVEN),
    *(person(f"family {name}", given="Xerxes", family=name) for name in FAMILY),
]
FINDER = finder(PEOPLE, [])

NOBODY = [
    "The King's visit, with flags", "Old King Cole at the pageant", "Green paint on the door", "Ivy covers the porch",
    "Ivy grew over the wall", "Ivy has grown over the lower windows.", "Daisy in flower",
    "Frank and open, the letter says so",
    "Church picnic, 1932", "Church Picnic at Long Beach", "CHURCH PICNIC, 1932", "Stone walls around the yard",
    "Hill farm in the snow", "Daisy chains on every child", "Rose bushes along the fence", "Young women at the mill",
    "Young people’s picnic", "Black and white print, torn", "White and blue dress", "Sandy track down to the bay",
    "Rich soil, good potatoes", "Rich farmers of the plain", "Box of glass plates", "Miles of bottles",
    "Title of the album", "BOX OF THE HALL", "Mark the back in pencil only.", "Place the lamp behind you.",
    "Place it with care.", "Chase them home", "Hope you are all well.", "Hope to see the boat",
    "Will anyone know this house?", "May God keep them", "Place unknown", "Label on the tin", "Title on the back",
    "Wood under the boats", "Rivers and islands, a map", "The Church was full.", "our Church", "the King", "the Hill",
    "the King will read it", "last May", "One May evening the barn burned.", "a hot August day", "in late June",
    "from April to August he fished", "By August the boat was finished.", "School closed for the May holidays.",
    "May morning mist", "Signal Hill from the harbour", "at Knox Church, after the service", "St Paul’s Church",
    "Anzac Day parade", "The Ohio River", "Of the Catholic Church little is told.", "King George visits",
    "Rose petals", "Rose petals, Simon van Booy",
    "May holidays", "Ivy-covered porch", "Roses by the gate", "Roses and tulips", "Roses 1932",
    "Marked with a cross", "Fields under snow", "the sun rose over the harbour", "we may go home",
    "Mark my words, said the smith.", "Grace was said before every meal.", "Bill after bill came.", "Hope to win it",
    "Will yield little", "May help us", "June that year brought hail.", "Faith, hope and charity", "Drew a line",
    "The Union Jack flew.", "Green fields of rye",
    "Miles of whitewashed fences", "Young white women", "Black deep lakes", "Pat him gently",
    "Summer temperatures rose", "Don’t be late", "may be the old wharf", "a mark on the wall", "the page is torn",
    "he will come", "no place for a boat", "Robin eggs were blue.", "The Ivy hedges ran down to the gate.",
    "Place your bets, says the sign.", "Field side of the wall", "Field mushrooms in a hat",
    "White caps on the harbour",
    "Hill 60, a crib above the bay", "Knox Church choir stalls", "Mark V tank", "Mark 2 of the engine",
    "Frank Duncan & Co. postcard", "Place de la République", "Label stand by the door", "Jack Frost & Sons",
]  # fmt: skip
SOMEBODY = [
    "The King’s eldest has it.", "Ivy covers the cake.", "Ivy grew up here.", "Ivy has grown since.",
    "Ivy has grown a beard.", "Daisy in the garden", "Green helps with hay.",
    "Rose in the garden", "Rose school photo 1979", "Grace kitchen table", "Mark captain of the team", "Daisy pram",
    "Hill wedding, 1990", "Hill weddings", "Field family picnic", "Church girls", "Daisy chains up the dog",
    "Ivy petal dress", "Daisy chains the dog", "Stone bells a cat", "Mark the baker next door", "Mark the elder",
    "Mark the", "Frank the youngest", "Rich farmer that he is", "Sandy beach girl", "Black, White and Green",
    "Mark of the shop", "Place of Timaru won", "Box of", "Hope to the left", "Hope swims", "May was wet", "Will left",
    "the Mark I knew", "the Hill girl", "the Hill farm", "the Box place", "our Rose", "my Will", "Hill on the left",
    "Hill on the captain", "Hill at the helm", "Young and his sister", "the Hills next door", "The Kings came to tea",
    "Rivers and his lakes", "One May Brown came", "our late May", "from May with love", "to June", "with late May",
    "by May", "By May, with love", "after June had left", "in Hill", "old Mrs Church", "Aunt Rose petals",
    "little Rose bushes", "Ruth Hill", "Bunny Hill on a horse", "Poor Hill was ill", "Daisy Hill", "by Knox Church",
    "a hill, Hill", "Box Hill", "Grass Hill", "Roses", "Roses Brown", "Roses hat", "Rosie at the gate",
    "we saw Roses by him", "mark and will", "that is may by the door", "a rose girl", "the baby is grace",
    "with will at bluff", "rose is mine", "King Street’s Hill", "Mark-Anthony", "Jack up the tree", "Summer at Nan’s",
    "Xerxes Box plates", "the Mark Stone", "Grace was said to be ill.", "Faith, hens and cat", "Faith, hope",
    "Mark my man",
    "Drew a man, that Drew", "June that I knew", "Will yields nothing", "Hope to Bluff", "Bill after tea",
    "Young late home",
    "Hill 1950, at sea", "Xanthe Church photo", "Frank Duncan & Ann", "Frank & Co",
    "Hill prints on the table", "Mark and V", "Frank duncan & Co",
]  # fmt: skip


@every_row(("words",), [(words,) for words in NOBODY])
def test_nobody_is_meant(words: str) -> None:
    assert answer(words, FINDER) == ("none", "-")


OTHERS = [
    person("pat", name="Pat Bishop"), person("lee", name="Lee Read"), person("claire", name="Claire Petit"),
    person("victoria", name="Victoria Paris"), person("sydney", name="Sydney Holland"), person("mai", name="Mai Põld"),
    person("van", family="Van"), person("ruth", name="Ruth Hallam"),
]  # fmt: skip
OTHERS_NOBODY = [
    "A pat of butter on the dish.", "a pat in the boat", "In the lee of the hill.", "Le petit chat sur le mur.",
    "12. mai 1912",
    "Queen Victoria was on the stamp.", "Sydney Harbour from the ship.", "В тот день был мороз.", "V for the win",
]  # fmt: skip
OTHERS_SOMEBODY = ["The hallam girl in the boat.", "Pat, a sister"]


@every_row(("words",), [(words,) for words in OTHERS_NOBODY])
def test_nobody_is_meant_where_other_names_live(words: str) -> None:
    assert answer(words, finder(OTHERS, [])) == ("none", "-")


@every_row(("words",), [(words,) for words in OTHERS_SOMEBODY])
def test_somebody_may_be_meant_where_other_names_live(words: str) -> None:
    assert answer(words, finder(OTHERS, []))[0] != "none"


@every_row(("words",), [(words,) for words in SOMEBODY])
def test_somebody_may_be_meant(words: str) -> None:
    assert answer(words, FINDER)[0] != "none"


def test_the_table_is_what_the_script_makes() -> None:
    if not Path("/usr/share/wordnet/data.noun").is_file():
        pytest.skip("WordNet 3.0 is needed for making the table only (Debian's wordnet-base)")
    check_table(Path(__file__).parent / "make_word_classes.py", "another release of WordNet")

"""Who is in a picture, and where, by the rows of `cases/who.txt`, which names its source."""

from pathlib import Path

from tests.drawn import some
from tests.every_row import every_row

from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where import small_words_table as small_words
from boxlore.core.people.who_is_where.kin_words import name_in, own_kin_in, own_relation
from boxlore.core.people.who_is_where.reader import forget_names, names_nobody, one_by_one, read_who, tells_a_name
from boxlore.core.people.who_is_where.what_is_not_known import says_nobody
from boxlore.core.people.who_is_where.words_left import leaves_words, words_in
from boxlore.core.people.who_is_where.written_out import Placed

CASES = [
    tuple(line.split(" => "))
    for line in (Path(__file__).parent / "cases" / "who.txt").read_text(encoding="utf-8").splitlines()
    if line and not line.startswith("#")
]


LEFT = [
    ("Cousin Kit, twice removed, can't remember his surname", False),
    ("Ann, Bea, don't know who lent us the pram", True),
    ("Standing behind Lottie is her son Max", True),
    ("Tagareas vasakult: Jaan Kask; ees istub ema, süles väike Tiiu", True),
    ("Clockwise from top left: Ruby, Pearl", False),
    ("Diagonally from top left: Ruby, Pearl", True),
    ("Clockwise: Ruby, Pearl", False),
    ("Back row, left to right: Anna Tamm, my sister, and Juhan; 3rd from left in front: Tom with the dog", True),
    ("Tom is kneeling in the front row on the far left.", True),
    ("Anna (on the left), Ruth (in white)", False),
    ("1 Anna, 2 unknown", False),
    ("Anna, 1 unknown at the back", False),
    ("Ma's the one kneeling, Pa is standing behind her", True),
    ("Aunt Vi (far left) and Tom", True),
    ("Far left Anna, next Tom, right Ruth", True),
    ("Left Anna, middle Tom, right Ruth", False),
    ("Lt. J. Rusk (seated, centre), Anna, Tom", True),
    ("In the middle Anna, with Ruth and Tom", False),
    ("Between Anna and Ruth stands Tom", True),
    ("Anna and Ruth are twins", False),
    ("Tom d. in the war, Anna", True),
    ("It could be Anna - no, it's Ruth, she's on the right", True),
    ("Perhaps Anna, Tom", False),
    ("Anna, then Tom", False),
    ("Anna, only Tom is missing", True),
    ("only Anna and Tom", True),
    ("Perhaps the one is Ruth, or Anna", False),
    ("Anna on vasakult teine, teisi ei tea", True),
    ("De tweede van links is Anna, wie ernaast zit weet ik niet", True),
    ("Foran: Anna og to ukjente", True),
    ("2nd row: Anna; row 1: Tom", False),
    ("Til venstre Anna, til høyre Tom", False),
    ("1 Anna, 2 ? (in white), 3 Tom", True),
]


@every_row(("words", "left"), LEFT)
def test_an_answer_of_which_words_are_left_is_known(words: str, left: bool) -> None:
    who = read_who(words)
    assert leaves_words(words, who.people, placed=who.placed) is left


_TABLES = " ".join(Path(source.__file__).read_text(encoding="utf-8") for source in (table, small_words))
JOINED_OR_ENDED = {"vord", "hint", "iii", "seduta", "linksboven", "rechtsboven"}
"""Words of the table that are shortened, a number in letters, a word with another ending, two written as one."""
OF_THE_TABLES = JOINED_OR_ENDED.union(words_in(_TABLES))
STEMS = tuple(words_in(" ".join(word for word in _TABLES.replace("|", " ").split() if word.endswith("*"))))


@every_row("case", some(CASES))
def test_every_word_is_held_or_the_answer_is_kept_whole(case: tuple[str, str]) -> None:
    text = case[0].replace(r"\n", "\n")
    who = read_who(text)
    if leaves_words(text, who.people, placed=who.placed):
        return
    held = words_in(" ".join(f"{person.words} {person.note}" for person in who.people if person.words))
    dropped = {word for word in words_in(text) if len(word) > 2 and not word[0].isdigit()}.difference(held)
    assert [word for word in dropped - OF_THE_TABLES if not word.startswith(STEMS)] == []


def told(person: Placed, placed: bool) -> str:
    name = ("" if person.is_person else "!") + person.words or "?"
    note = f" ({person.note})" if person.note else ""
    return f"{name}{note}/{person.row}/{person.position}" if placed else f"{name}{note}"


def test_the_cases_are_all_there() -> None:
    assert len(CASES) > 720


@every_row("case", CASES)
def test_who_stands_where(case: tuple[str, str]) -> None:
    text, people = case
    who = read_who(text.replace(r"\n", "\n"))
    takers = [f"@{person.words}" for person in who.takers]
    assert [told(person, who.placed) for person in who.people] + takers == people.split("; ")


def test_a_name_typed_small_is_one_if_the_family_has_it() -> None:
    assert [person.asks != "" for person in read_who("zelophehad, barley").people] == [True, True]
    known = KnownNames(frozenset({"zelophehad"}))
    assert [person.asks != "" for person in read_who("zelophehad, barley", known).people] == [False, True]


DOUBTED = [
    ("The girl on the left might well be Ann", True), ("It may be Ann", True), ("Ann, but I'm not certain", True),
    ("The girl on the left is Ann", False),
]  # fmt: skip


@every_row(("words", "doubted"), DOUBTED)
def test_a_verb_of_doubt_makes_the_name_unsure(words: str, doubted: bool) -> None:
    assert [(person.words, person.unsure) for person in read_who(words).people] == [("Ann", doubted)]


OWN_SIDES = [
    ("Anna seisab tema paremal käel", "tema paremal käel"),
    ("Karl zu ihrer Rechten", "zu ihrer Rechten"),
]


@every_row(("words", "told"), OWN_SIDES)
def test_a_side_of_somebody_is_asked_about(words: str, told: str) -> None:
    asks = [person.asks for person in read_who(words).people]
    assert f"Is “{told}” the own side, or that of the picture?" in asks


def test_names_one_by_one_are_those_of_people_known() -> None:
    assert one_by_one("Anna (Ruth's cousin), ?, Tom") == ["Anna (Ruth's cousin)", "Tom"]


IN_THE_PICTURE_TOO = [
    ("Me, second left, next to my best friend Carol Dunn", "Carol Dunn"), ("a noiva não me lembro do nome", ""),
    ("Babička s dědou", "dědou"), ("babička s mámou", "mámou"),
    ("Nora (holding Dot) and Harold", "Dot"), ("Anna leans over Bob", "Bob"), ("Hugo seisab Salme taga", "Salme"),
    ("Ülo seisab Kaarlon taga", "Kaarlo"), ("the boy behind Anna is Tom", "Anna"),
    ("Mum with her arm round Sis", "Sis"), ("Ruth (sister of Ann and Tom)", ""),
    ("Pa with his arm round Aunt Vi", "Vi"), ("Nora (hugging Dot and Bob)", "Dot and Bob"),
    ("I'm on Dad's shoulders", "Dad"), ("Edie peers over Walter's shoulder", "Walter"), ("Ida on Zilpah's knee", ""),
    ("Dad can just be seen at the back behind Uncle Perc", "Perc"), ("Anna and Ruth without Tom", ""),
    ("Hildegard steht neben ihrem Bruder Walter", ""), ("Ida with Mrs. Oakapple", ""),
    ("The little girl in front of Great-Gran is Betty", "Great-Gran"), ("Mum with the new baby (that's me!)", "me"),
    ("La nonna con i nipoti Marco e Lucia", ""),
    ("Les deux garçons sont Luc et Rémi", ""), ("Peg peeks round Dot's skirt", "Dot"),
    ("Ruth, wife of Joe", ""), ("Anna in Florence", ""), ("Nora with her pony Daisy", ""), ("Vi (Violet May)", ""),
    ("Hilda in Nan's arms", "Nan"), ("Nora between her parents", "her parents"), ("Stan with the twins", "the twins"),
    ("Ivy with Hugo's boys", ""),
    ("proua Kask oma poja Tõnuga", "Tõnu"), ("Jan Kask poja Jaaniga", "Jaan"),
    ("John and the cat Biscuit on Granny's lap", "Granny"), ("Rex the dog on the big chair's back", ""),
    ("Das ist nicht Opa, sondern sein Bruder Max", ""),
    ("Rose Fleury devant la maison des Martin", ""),
    ("Mrs Orr's maid Bridget", ""), ("Ivy on Mrs Orr's knee", "Orr"), ("Harold, according to Ethel", ""),
    ("Hilda in her mother's arms", "her mother"), ("папа с мамой", "мамой"),
    ("Stojí dědeček s malým Toníkem", "Toníkem"), ("Sėdi močiutė su mažuoju Kaziuku", "Kaziuku"),
    ("Mari koos väikese Jaanikesega", "Jaanikesega"),
    ("dziadek z psem Burkiem", ""),
    ("Jaan koos abikaasaga", "abikaasa"), ("Jaan oma naisega", "naisega"), ("Jaan koeraga", ""),
    ("Matti vaimonsa kanssa", "vaimonsa"), ("Matti poikansa ja äitinsä kanssa", ""), ("Erik Lund med sin fru", "fru"),
    ("Jaan tütrega rannas", "tütrega"), ("Matti naapurin kanssa", ""), ("Matti vaimoineen", "vaimoineen"),
    ("Nils med hans fru Elsa", ""),
    ("siostra z mężem (Tadek?)", ""),
    ("Ida in her Easter hat", ""), ("Ida (with the dog Rex)", ""), ("Anna (Ruth's cousin)", ""), ("Ida (in May)", ""),
]  # fmt: skip


@every_row(("words", "names"), IN_THE_PICTURE_TOO)
def test_who_is_told_in_a_remark_only_is_asked_about(words: str, names: str) -> None:
    too = read_who(words).too
    assert [person.words for person in too] == (names.split(" and ") if names else [])
    begins = [_begins_asking(person.words) for person in too]
    assert [person.asks.split(",")[0] for person in too] == begins


def _begins_asking(words: str) -> str:
    if words.endswith(("parents", "twins")):
        return f"Who are “{words}”"
    return f"Is {'the teller' if words == 'me' else f'“{words}”'} in the picture too"


OWN = [
    ("me", "self"), ("mina", "self"), ("ja", "self"), ("Mere", ""), ("mère", "mother"),
    ("Mamma", "mother"), ("Mum", "mother"), ("my mother", "mother"), ("minu ema", "mother"),
    ("mein Bruder", "brother"), ("vanaema", "grandmother"), ("her mother", ""), ("Aunt Mavis", ""), ("Anna", ""),
    ("la nonna", "grandmother"), ("der Opa", "grandfather"), ("a avó", "grandmother"),
    ("o avô", "grandfather"), ("Vovó", "grandmother"), ("amma", "grandmother"),
    ("дедушка", "grandfather"), ("deda", "grandfather"), ("прадедушка", "great-grandfather"),
    ("nagyapám", "grandfather"), ("felesége", ""), ("die Mutter", ""), ("a mother", ""), ("the mother", ""),
    ("my friend", ""), ("Ma", ""), ("Mor", "mother"), ("far", "father"),
    ("māte", "mother"), ("mate", ""), ("Mor Lien", ""), ("", ""), (".", ""),
]  # fmt: skip


OWN_IN_A_LANGUAGE = [
    ("Isa", "et", "father"), ("Isa", "en", ""), ("Tata", "pl", "father"), ("tata", "fr-CA", "aunt"), ("Tata", "", ""),
    ("mój tata", "pl", "father"), ("mój tata", "", "father"), ("ma tata", "", "aunt"), ("my Nan", "en", "grandmother"),
    ("Pa", "en", "father"), ("Ma", "et", ""), ("moja siostra", "pl", "sister"),
]  # fmt: skip


@every_row(("words", "language", "relation"), OWN_IN_A_LANGUAGE)
def test_a_word_of_kin_is_what_it_is_in_the_language_told(words: str, language: str, relation: str) -> None:
    assert own_relation(words, language) == relation


@every_row(("words", "relation"), OWN)
def test_who_is_the_tellers_own(words: str, relation: str) -> None:
    assert own_relation(words) == relation


KIN_IN_A_NOTE = [
    ("my mother", "mother"), ("Moren min", "mother"), ("minu isa, in white", "father"), ("mother", ""),
    ("my late husband", "husband"), ("my great aunt", ""),
    ("in white", ""),
]  # fmt: skip


@every_row(("note", "nobody"), [("", True), ("sorry", True), ("man", False), ("my aunt", False), ("in Leith", False)])
def test_what_is_told_of_nobody_known(note: str, nobody: bool) -> None:
    assert says_nobody(note) is nobody


NAMES_IN_NOTES = [
    ("Hilda Tamm", "Hilda Tamm"),
    ("Hilda Tamm, in white", "Hilda Tamm"),
    ("Karl", ""),
    ("in white", ""),
    ("", ""),
    ("Hilda in white", ""),
]


@every_row(("note", "name"), NAMES_IN_NOTES)
def test_a_note_on_kin_may_be_a_whole_name(note: str, name: str) -> None:
    assert name_in(note) == name


@every_row(("note", "relation"), KIN_IN_A_NOTE)
def test_a_note_tells_whose_kin_a_name_is(note: str, relation: str) -> None:
    assert own_kin_in(note) == relation


NAMELESS = [
    ("the minister", True), ("his wife", True), ("her mother", True), ("a neighbour", True), ("Ruth's cousin", True),
    ("his mother", True), ("la vicina", True), ("a neighbour's boy", True), ("naabripoiss", False),
    ("Anna", False), ("my mother", False), ("la mamma", False), ("Aunt Mavis", False), ("Ma", False),
    ("Ruth's mother", False), ("la mère de Paul", False), ("me", False), ("the family", False), ("?", False),
]  # fmt: skip


@every_row(("words", "nameless"), NAMELESS)
def test_who_is_told_without_a_name_is_of_one_picture(words: str, nameless: bool) -> None:
    assert [person.is_nameless for person in read_who(words).people] == [nameless]


WHOSE = [
    ("Tom Pike and wife", ["wife"]), ("Tom and Mum", []), ("Wife and daughter of Tom", ["Wife", "daughter of Tom"]),
    ("farbror Erik och hans fru", ["hans fru"]),
    ("Tom and his mum and dad", ["his mum", "dad"]), ("Tom and mate", ["mate"]), ("Mum and dad", []),
    ("Hans og hans kone", ["hans kone"]), ("Иван, жена и дети", ["жена"]),
    ("Tom, wife and son", ["wife", "son"]), ("My sister Hania and husband", ["husband"]), ("My sister and son", []),
    ("Mum and husband", ["husband"]), ("My mother and brother", []), ("Wife and Anna", []), ("Tom, wife; son", []),
    ("Tom and Bro", []),
    ("oncle de Pierre", ["oncle de Pierre"]), ("Mutter von Karl", []), ("O mais alto é o Zeca, ao lado dele a mulher",
     ["mulher"]), ("Tom, Mum", []), ("Tom and Auntie", []), ("Ruth, son and Mum", []),
]  # fmt: skip


@every_row(("words", "nameless"), WHOSE)
def test_kin_of_somebody_named_is_of_one_picture(words: str, nameless: list[str]) -> None:
    assert [person.words for person in read_who(words).people if person.is_nameless] == nameless


QUESTIONS = [
    ("Zorb, Anna", "Is “Zorb, Anna” one person, Anna Zorb?"),
    ("Zorb, Anna and Tom", "“Zorb”: who is that?"),
    ("Huber Sepp", "“Huber Sepp”: who is that: Sepp Huber, or Sepp?"),
    ("Alice, Beatrice, Cecil and Doris Snoad", "Are “Alice” and “Beatrice” and “Cecil” of the family Snoad too?"),
    ("Anna Tamm, Alice, Cecil and Doris Snoad", "Are “Alice” and “Cecil” of the family Snoad too?"),
    ("Fred Moss Nell Tighe", "Are “Fred Moss Nell Tighe” several people: Fred Moss; Nell Tighe?"),
    ("Dot, Flo in front", "Does “in front” tell where “Dot” is too, or “Flo” alone?"),
    ("Tom, partly hidden, Ann", "Is “partly hidden” told of “Tom”, or somebody else of the picture?"),
    ("Manželé Dvořákovi s dcerou Evou", "Who are “Manželé Dvořákovi”: Dvořák; Dvořáková?"),
    ("Manželé Dvořákovi s dcerou Evou", "Is “Evou” Eva?"),
    ("Супруги Зуевы", "Who are “Супруги Зуевы”: Зуев; Зуева?"),
    ("Ron Les Vic, Joan", "Are “Ron Les Vic” several people: Ron; Les; Vic?"),
    ("Kesslers: Emil, Rosa und Paul", "Who are “Kesslers”: Kessler; Kesslers?"),
    ("Jan a Eva Havlovi", "What is “Jan” of the family Havlovi called?"),
    ("Мама с Ниной и Олегом Крыловыми у дома", "Is “Олегом Крыловыми” Олег Крылов?"),
    ("Jan Vlk s Marií Husovou", "Is “Marií Husovou” Marie Husová?"),
    ("Aleksander z Janem Nowakiem i Marią Kowalską", "Is “Janem Nowakiem” Jan Nowak?"),
    ("Anna z córką Ewą", "Is “Ewą” Ewa?"),
    ("Anna s Toníčkem", "Is “Toníčkem” Toníček?"),
    ("Antanas su teta Brone", "Is “teta Brone” Bronė?"),
    ("Anna s Zorbor", "What is “Zorbor” called, told by itself?"),
    ("Tom Pell 3b and Ida", "Is “Tom Pell 3b” someone in the picture?"),
    ("Sittande: mormor Stina m. Greta", "Are “mormor Stina m. Greta” several people: mormor Stina; Greta?"),
    ("top row Ethel Ada Winnie, Tom", "Are “Ethel Ada Winnie” several people: Ethel; Ada; Winnie?"),
    ("Hugo y", "Is “Hugo y” Hugo?"),
    ("Vlk Jan ml.", "“Vlk Jan ml.”: who is that: Jan Vlk ml., or Jan ml.?"),
    ("the man I know, Ida", "Who is meant by “the man I know”?"),
    (
        "the old man in the long grey coat by the old wooden gate",
        "Who is meant by “the old man in the long grey coat by the old wooden gate”?",
    ),
    ("Jānis ar meitu Annu", "Is “Annu” Anna?"),
    ("Ema ja tädi Salmega", "Is “tädi Salmega” Salme?"),
    ("мама с тётей Валей", "Is “тётей Валей” Валя?"),
    ("Anna, Tom on her left", "Is “on her left” the own side, or that of the picture?"),
    ("Au milieu Jean, à sa gauche Marie", "Is “à sa gauche” the own side, or that of the picture?"),
    ("Three of the Hale boys", "Who are “Three of the Hale boys”?"),
    ("Ivy Pratt, or her sister Olive", "Is it “Olive”, and not who is told before?"),
    ("Aunt Flo thinks this is Percy, but Mum says Wilf", "Is “Wilf” in the picture, where “Mum says Wilf” is told?"),
]


@every_row(("words", "question"), QUESTIONS)
def test_what_is_asked_has_the_likely_answer(words: str, question: str) -> None:
    assert question in [person.asks for person in read_who(words).people]


NOBODYS = [
    ("The picnic at Brighton", True), ("It isn't Ivy Pratt", True), ("Ivy Pratt took the picture", True),
    ("Ted Gower (missing)", True), ("Ted Gower (not sure)", False), ("Ted Gower (in white)", False),
    ("the whole family", False), ("Zorb", False), ("his wife", False), ("Anna", False), ("Anna, Tom", False),
    ("", False), ("nobody I know", True), ("no one I recognise", True), ("unknown", False),
]  # fmt: skip


OWN_BESIDE = [
    ("Ma and Pa", ["mother", "father"]), ("Pa and Ma, Tom", ["father", "mother", ""]), ("Ma, Tom", ["", ""]),
    ("Tom, Ma, Pa", ["", "mother", "father"]),
    ("Ma and Tom", ["", ""]), ("Nan and Grandad", ["grandmother", ""]), ("Nan, Pop", ["grandmother", "grandfather"]),
    ("My wife and son", ["", "son"]), ("Me and wife", ["", "wife"]), ("My mother and brother", ["", "brother"]),
    ("Nan, Tom", ["", ""]), ("Tom, Nan (her sister)", ["", ""]),
]  # fmt: skip


@every_row(("words", "own"), OWN_BESIDE)
def test_ma_is_the_tellers_mother_beside_pa(words: str, own: list[str]) -> None:
    assert [person.own for person in read_who(words).people] == own


NAMED = [("the cook", False), ("nobody I know", False), ("Anna, the cook", True), ("my mother", True), ("", True)]


@every_row(("words", "named"), NAMED)
def test_who_is_told_by_a_name_is_known_from_who_is_not(words: str, named: bool) -> None:
    assert tells_a_name(words) is named


@every_row(("words", "nobodys"), NOBODYS)
def test_words_of_nobody_are_no_name(words: str, nobodys: bool) -> None:
    assert names_nobody(words) is nobodys


def test_every_language_has_every_class() -> None:
    languages: dict[str, set[str]] = {}
    for language, kind, _ in table._rows(table._ROWS):
        languages.setdefault(language, set()).add(kind)
    assert len(languages) == 21
    wanted = {*table.ROW_CLASSES, *table.DIRECTIONS, *table.SIDES, "row", "from_left", "from_right", "ordinals", "weak"}
    assert all(kinds == wanted for kinds in languages.values())


def test_what_was_read_is_forgotten_when_words_are_struck() -> None:
    read_who("Anna and Ruth")
    assert read_who.cache_info().currsize
    forget_names()
    assert not read_who.cache_info().currsize


GUESSES = [
    ("(I think) Muriel", [True]), ("(perhaps) Muriel, Ann", [True, False]),
    ("Tilly, and (I think) Muriel", [False, True]),
    ("Muriel (I think), Ann", [True, False]), ("Muriel, I think, Ann", [True, False]),
    ("Edna (or is it Vi?), Ann", [True, False]),
]  # fmt: skip


@every_row(("words", "unsure"), GUESSES)
def test_a_name_told_as_a_guess_is_one(words: str, unsure: list[bool]) -> None:
    assert [person.unsure for person in read_who(words).people] == unsure


SHARED = [
    ("Tom and Leida Rourke", ["Rourke", ""]),
    ("Mia, Tom and Leida Rourke", ["", "", ""]),
    ("Tom, and Leida Rourke", ["", ""]),
    ("Uncle Stan and Leida Rourke", ["", ""]),
    ("Tom Pell and Leida Rourke", ["", ""]),
    ("Tom and Aunt Leida Rourke", ["", ""]),
    ("the Tamm brothers Juhan and Karl", ["Tamm", "Tamm"]),
    ("The Tamm brothers: Juhan, Karl and Otto; Mia", ["Tamm", "Tamm", "Tamm", ""]),
    ("Helmi with the Tamm sisters Anna and Liis, and Joe", ["", "Tamm", "Tamm", ""]),
    ("her sisters Liis and Mari Kask", ["Kask", ""]),
    ("Anna Tamm, née Kask, and her sisters Liis and Mari", ["", "", ""]),
    ("Mr. and Mrs. Pell with their son Tom", ["", "", ""]),
    ("the Pell family and Tom", ["", ""]),
    ("the Pell girls in white", [""]),
    ("My grandparents, Albert and Rose Tully", ["Tully", ""]),
    ("De drie zusjes de Boer: Toos en Jopie", ["de Boer", "de Boer"]),
    ("Три сестры Петровы: Ольга, Нина и Вера", ["Петрова", "Петрова", "Петрова"]),
    ("Виктор и Павел Зуевы", ["Зуев", "Зуев"]),
    ("Сергей и Анна Крыловы", ["Крылов", "Крылова"]),
    ("Manželé Josef a Marie Dvořákovi", ["Dvořák", "Dvořáková"]),
    ("Jan a Eva Havlovi", ["", "Havlová"]),
    ("Jan i Ewa Kowalscy", ["Kowalski", "Kowalska"]),
    ("Семья Кузнецовых: отец Иван, мать Анна, Коля и Оля", ["Кузнецов", "Кузнецова", "Кузнецов", "Кузнецова"]),
    ("Семья Кузнецовых: Саша", [""]), ("Rodzina Nowaków: ojciec Piotr", ["Nowak"]),
    ("Jaan Oja, tema õde Anu ja Rein Saks", ["", "", ""]),
    ("Familie Kessler: Vater Emil, Mutter Rosa, Oma Trude", ["Kessler", "Kessler", ""]),
    ("Virtasen veljekset Antti, Jussi ja Heikki", ["", "", ""]),
    ("Mum's sisters Fay and Gwen", ["", ""]),
    ("Between Ada and Florrie is Walter Sim", ["", "", ""]),
    ("Rechts van Griet staat Dirk Visser, links haar zus Neeltje", ["", "", ""]),
]  # fmt: skip


@every_row(("text", "families"), SHARED)
def test_a_family_name_told_once_for_several(text: str, families: list[str]) -> None:
    assert [person.family for person in read_who(text).people] == families


def test_a_word_of_points_alone_is_read() -> None:
    assert [person.is_person for person in read_who("  … and 2 more.").people] == [False, False]


def test_what_is_said_may_end_in_any_word() -> None:
    for last in some(sorted({word.rstrip("*") for _, words in table.WORDS_BETWEEN for word in words.split()})):
        assert read_who(f"Anna Pell {last}").people, last
        assert read_who(f"in the front row Anna Pell, in the back row {last}").people, last


BEHIND_A_NAME = (
    ("Aunt Lou (Louisa Garrod)", ""),
    ("Pater Bonifatius OSB (Anton Huber)", ""),
    ("Mrs. John Ashworth (Florence)", ""),
    ("Opa Piet (Pieter de Wit)", ""),
    ("Lou Garrod (Louisa Mary Garrod)", ""),
    ("Tom (Anna Tamm)", "Anna Tamm"),
    ("Anna (Tom Tamm)", "Tom Tamm"),
    ("Ann Pell (from Tartu)", "from Tartu"),
    ("Ann Pell (the baker)", "the baker"),
)
"""A whole name in brackets belongs to the name; one of the other sex is somebody else's, and a note."""


@every_row(("words", "note"), BEHIND_A_NAME)
def test_a_whole_name_behind_a_name_is_of_the_same_person(words: str, note: str) -> None:
    assert [person.note for person in read_who(words).people] == [note]


LIKELY = [
    ("probably Karl Holm, Anna Holm", [True, False]), ("perhaps Karl Holm, Anna Holm", [False, False]),
    ("tõenäoliselt Karl Holm", [True]), ("wahrscheinlich Karl Holm", [True]), ("probably Karl Holm?", [False]),
    ("Aunt Flo, probably", [True]), ("Aunt Flo, I think", [False]), ("probably Karl Holm (I think)", [False]),
    ("a baby, probably Colin", [True]),
]  # fmt: skip


@every_row(("told", "likely"), LIKELY)
def test_probably_says_more_than_perhaps(told: str, likely: list[bool]) -> None:
    assert [person.likely for person in read_who(told).people] == likely

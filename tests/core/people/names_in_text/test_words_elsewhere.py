"""Names that are words of other languages than English: where the sentence tells that nobody is meant.

The sentences are invented, the words from memory of each language; the rules are our own.
"""

from tests.core.people.names_in_text.test_search import finder, person
from tests.every_row import every_row

PEOPLE = [
    person("raud", given="Liisu", family="Raudkivi"),
    person("roos", given="Liis", family="Põldroos"),
    person("pihl", given="Jaan", family="Pihlakas"),
    person("baer", given="Friederike", family="Bär"),
    person("hobe", given="Aare", family="Hõbesaar"),
    person("ernst", given="Ernst", family="Xylander"),
    person("lark", given="Дмитрий", family="Жаворонков"),
    person("rosa", given="Роза", family="Ксилова"),
    person("wrob", given="Adam", family="Wróbel"),
    person("koit", given="Koit", family="Xylander"),
    person("mroz", given="Ewa", family="Mróz", sex="female"),
    person("zima", given="Pavel", family="Zima", sex="m"),
    person("strom", given="Gunnar", family="Ström"),
    person("seppa", given="Jorma", family="Seppä"),
    person("bos", given="Grietje", family="Bos"),
    person("kovar", given="Zdeněk", family="Kovář"),
    person("ek", given="Kerstin", family="Berglund-Ek"),
    person("hein", given="Heather", family="Kuusemets"),
]
FINDER = finder(PEOPLE, [])

NOBODY = [
    "Taga kasvas põldroos.", "Suur raudkivi värava ees", "Pihlakas õitses värava juures.", "Ein Bär aus dem Zirkus",
    "Der Ernst der Lage war allen klar.", "Жаворонков было не слышно.", "Роза завяла.", "Maja ees kasvas pihlakas.",
    "Auf dem Bär lag Schnee.", "Ein großer Bär vor dem Zelt", "En ström av folk till kyrkan", "Kylän seppä työssään",
    "Klein bos achter de dijk", "Starý kovář u výhně",
    "Pod dachem siedział wróbel.", "Mróz był wielki.", "Zima byla dlouhá.", "Kuusemetsa ääres oli kaev.",
]  # fmt: skip
ASKED = [
    "Pildi tegi hõbesaar.",
    "Raudkivi tõi pildi.",
    "härra raudkivi tõi pildi", "raudkivi talu", "Bär war auch da.", "Der Bär hat es.",
    "Mit dem Bär im Garten", "Der Bär ist da.", "Ein Foto Bär zeigt.", "Den gamle herr ström satt där.",
    "Fru Ek bjöd på kaffe.", "Herr Ek.",
    "Der Ernst hat es.", "Жаворонков принёс письмо.", "Роза смеётся.", "Pihlakas naerab.", "Koit tõusis.",
    "Ernst der Lage",
    "Siis tuli härra pihlakas.", "Mróz była w domu.", "Mróz przyszedł.", "Wróbel był tu.", "Zima byl doma.",
    "Mrozowi był",
    "Heather blooms in that dress.", "Kuusemetsa kaev",
]  # fmt: skip


@every_row(("words",), [(words,) for words in NOBODY])
def test_nobody_is_meant(words: str) -> None:
    assert not FINDER.hits(words)


@every_row(("words",), [(words,) for words in ASKED])
def test_somebody_may_be(words: str) -> None:
    assert FINDER.hits(words)

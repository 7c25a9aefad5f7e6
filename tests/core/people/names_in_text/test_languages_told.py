"""Which languages a sentence may be of, and English words in sentences that may be of another (rules of our own).

The sentences are invented.
"""

from tests.core.people.names_in_text.test_search import finder, person
from tests.every_row import every_row

from boxlore.core.people.names_in_text.languages_told import languages_told
from boxlore.core.people.names_in_text.text_normalising import read_text

TOLD = [
    ("Stark bar korgen.", 0, "sv", "en et"),
    ("Stark bar by the window.", 0, "en", "sv et"),
    ("Svart katt på trappan.", 0, "sv nb", "en et fi"),
    ("Must auto kiriku ees.", 0, "et", "en sv"),
    ("We left. Stark bar på ryggen. The end.", 2, "sv", "en"),
]  # fmt: skip


@every_row(("words", "at", "possible", "impossible"), TOLD)
def test_small_words_tell_the_language(words: str, at: int, possible: str, impossible: str) -> None:
    told = languages_told(read_text(words).words, at)
    assert told.issuperset(possible.split()) and told.isdisjoint(impossible.split())


FINDER = finder([person("will", given="Will", family="Stark"), person("may", given="May", family="Brown")], [])
NOBODY = [
    "Will we win the race?", "Will he come again?", "May I have it back?", "May we all meet again.",
    "Brown dog asleep.",    "Stark bar in the window of the shop.", "Brown bar of soap by the tub.",
]  # fmt: skip
ASKED = ["Will i hagen.", "Will we Wrocławiu.", "Will bar korgen.", "May hade hatten.", "Brown", "Stark, bar"]


@every_row(("words",), [(words,) for words in NOBODY])
def test_english_words_decide_in_english(words: str) -> None:
    assert not FINDER.hits(words)


@every_row(("words",), [(words,) for words in ASKED])
def test_english_words_decide_nothing_elsewhere(words: str) -> None:
    assert FINDER.hits(words)

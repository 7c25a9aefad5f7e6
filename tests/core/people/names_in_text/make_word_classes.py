"""Makes `core/people/names_in_text/word_classes_table.py`: which common English words are things, people, qualities.

How often a word is a noun, a verb, an adjective or an adverb, and of which kind a noun is, are counts of the tagged
texts of WordNet 3.0 (Princeton University; package `wordnet-base` of Debian; formats: cntlist(5WN), lexnames(5WN)).
Run with the folder of its files: python tests/core/people/names_in_text/make_word_classes.py [FOLDER]
"""

import sys
from collections import Counter, defaultdict
from pathlib import Path
from textwrap import wrap

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED

TABLE = Path(__file__).parents[4] / "src" / "boxlore" / "core" / "people" / "names_in_text" / "word_classes_table.py"
WORDNET = Path("/usr/share/wordnet")
NOUN, VERB = 1, 2
PARTS = {"noun": NOUN, "verb": VERB, "adj": 3, "adv": 4, "satellite": 5}
FOOD, LOCATION, PERSON, PLANT, SUBSTANCE = 13, 15, 18, 20, 27
"""The numbers of `noun.food` … among WordNet's files (lexnames(5WN))."""
ABSTRACT = (7, 9, 10, 12, 16, 26)
"""noun.attribute, noun.cognition, noun.communication, noun.feeling, noun.motive, noun.state."""
SELDOM = 10
"""A noun is a verb so many times more seldom, where its plural is taken for no verb."""


class Words:
    """The words of WordNet that are written small, with how often each is what in its tagged texts."""

    def __init__(self, folder: Path) -> None:
        self.parts: dict[str, Counter[int]] = defaultdict(Counter)
        self.kinds: dict[str, Counter[int]] = defaultdict(Counter)
        for line in (folder / "cntlist.rev").read_text("ascii").splitlines():
            sense, _, count = line.split()
            word, _, where = sense.partition("%")
            part, kind = map(int, where.split(":")[:2])
            self.parts[word][part] += int(count)
            if part == NOUN:
                self.kinds[word][kind] += int(count)
        self.small: dict[str, set[str]] = {name: set() for name in ("noun", "verb", "adj", "adv")}
        for name, small in self.small.items():
            for line in (folder / f"data.{name}").read_text("ascii").splitlines():
                cells = line.split()
                every = cells[4 : 4 + 2 * int(cells[3], 16) : 2] if not line.startswith(" ") else ()
                small.update(word.partition("(")[0] for word in every)
        self.odd_verbs = {line.split()[0] for line in (folder / "verb.exc").read_text("ascii").splitlines()}

    def share(self, word: str, *kinds: int) -> float:
        """How much of the noun is of these kinds."""
        return sum(self.kinds[word][kind] for kind in kinds) / max(1, self.parts[word][NOUN])

    def is_base_of_a_verb(self, word: str) -> bool:
        """Whether it is a verb before all, in a form that is no past: `yield`, not `cut`."""
        count = self.parts[word]
        return count[VERB] > count.total() - count[VERB] and word in self.small["verb"] and word not in self.odd_verbs

    def is_thing(self, word: str) -> bool:
        """Whether it is a noun before all, of nobody and no place beside another, and not what somebody did."""
        count = self.parts[word]
        others = count.total() - count[NOUN] - count[VERB]
        is_noun = count[NOUN] > count[VERB] and count[NOUN] >= 3 * others
        is_of_nobody = self.share(word, PERSON) <= 0.1 and self.share(word, LOCATION) <= 0.5
        return is_noun and is_of_nobody and word in self.small["noun"] and word not in self.odd_verbs


def table(folder: Path = WORDNET) -> str:
    """The text of the module."""
    words = Words(folder)
    common = sorted(w for w in words.parts if w.isascii() and w.isalpha() and w.islower() and 2 < len(w) < 14)
    common = [word for word in common if word not in CALLED - EVERYDAY]
    things = [word for word in common if words.is_thing(word)]
    people = [word for word in common if words.share(word, PERSON) >= 0.5 and word in words.small["noun"]]
    lists = {
        "THINGS": (
            [word for word in things if SELDOM * words.parts[word][VERB] <= words.parts[word][NOUN]],
            "Nouns of things that are hardly ever verbs, so that their plural is none either.",
        ),
        "THINGS_DONE": (
            [word for word in things if SELDOM * words.parts[word][VERB] > words.parts[word][NOUN]],
            "Nouns of things that are verbs too.",
        ),
        "GROWN": (
            [word for word in things if words.share(word, PLANT, FOOD, SUBSTANCE) >= 0.5],
            "Those of both that are plants, food and stuff.",
        ),
        "PEOPLE": (people, "Nouns of people."),
        "QUALITIES": (
            [word for word in common if 2 * (words.parts[word][3] + words.parts[word][5]) > words.parts[word].total()],
            "Adjectives before all.",
        ),
        "COMMANDS": (
            sorted(
                word for word in EVERYDAY if word in words.small["verb"] - words.odd_verbs and words.parts[word][VERB]
            ),
            "Names that are verbs too: what somebody is told to do.",
        ),
        "VERBS": (
            [word for word in common if words.is_base_of_a_verb(word)],
            "Verbs in the form that stands behind `may`, `will` and `to`, and behind no name.",
        ),
        "ABSTRACT": (
            [word for word in common if words.is_thing(word) and words.share(word, *ABSTRACT) >= 0.7],
            "Nouns of what nobody sees: feelings, states, thoughts.",
        ),
    }
    lines = ['"""Common English words by what they are: WordNet 3.0; made by make_word_classes.py beside the tests."""']
    for name, (row, said) in lists.items():
        lines += [
            "",
            f"{name} = frozenset(",
            '    """',
            *(f"    {line}" for line in wrap(" ".join(row), 114)),
            '    """.split()',
            ")",
            f'"""{said}"""',
        ]
    return "\n".join((*lines, ""))


if __name__ == "__main__":
    TABLE.write_text(table(Path(sys.argv[1]) if sys.argv[1:] else WORDNET), encoding="utf-8")

"""Makes `core/people/names_in_text/compounds_table.py`: things with a name in them (`May Day`, `Union Jack`).

They are the nouns of more than one word in WordNet 3.0 (Princeton University; package `wordnet-base` of Debian) of
which the first is a name of our lists, or the second of two is one that is a word of every day, without those that are
people, families of plants, or two names. A plural is kept where the last word is no verb, for `Poppy seeds the lawn`
tells of somebody. Beside them the commonest words of its tagged texts. Run with the folder of its files:
python tests/core/people/names_in_text/make_compounds.py [FOLDER]
"""

import sys
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from textwrap import wrap

from boxlore.core.people.names.lists_table import GIVEN
from boxlore.core.people.names.short_forms_table import EVERYDAY, SHORT_FORMS

TABLE = Path(__file__).parents[4] / "src" / "boxlore" / "core" / "people" / "names_in_text" / "compounds_table.py"
WORDNET = Path("/usr/share/wordnet")
RAREST = 1
"""How often a word stands in WordNet's tagged texts to be a common one (cntlist(5WN))."""
PERSON = 18
"""The number of `noun.person` among WordNet's files (lexnames(5WN))."""
GROUPS = {"family", "families", "order", "genus", "dynasty"}


def nouns(folder: Path) -> Iterator[tuple[int, list[str]]]:
    """(file of WordNet, words) of every noun that has more than one word (the format: wndb(5WN))."""
    for line in (folder / "data.noun").read_text("ascii").splitlines():
        if not line.startswith(" "):
            cells = line.split()
            for noun in cells[4 : 4 + 2 * int(cells[3], 16) : 2]:
                if "_" in noun:
                    yield int(cells[1]), noun.lower().replace("'", "").replace("-", " ").replace("_", " ").split()


def common_words(folder: Path) -> list[str]:
    """Words of three to seven letters that are written small and common."""
    names = {name for row in SHORT_FORMS for name in row} - EVERYDAY
    small: set[str] = set()
    for name in ("noun", "verb", "adj", "adv"):
        for line in (folder / f"data.{name}").read_text("ascii").splitlines():
            cells = line.split()
            small.update(cells[4 : 4 + 2 * int(cells[3], 16) : 2] if not line.startswith(" ") else ())
    counts: dict[str, int] = defaultdict(int)
    for line in (folder / "cntlist.rev").read_text("ascii").splitlines():
        sense, _, count = line.split()
        counts[sense.partition("%")[0]] += int(count)
    return sorted(
        word
        for word, count in counts.items()
        if count >= RAREST and word in small - names and word.isascii() and word.isalpha() and 3 <= len(word) <= 7
    )


def table(folder: Path = WORDNET) -> str:
    """The text of the module."""
    given = {*GIVEN, *(name for row in SHORT_FORMS for name in row)}
    given_alone, firsts = given - EVERYDAY, given | EVERYDAY
    verbs = {line.split()[0] for line in (folder / "index.verb").read_text("ascii").splitlines() if line[0] != " "}
    people = {tuple(words) for file, words in nouns(folder) if file == PERSON}
    rests: dict[str, set[str]] = defaultdict(set)
    for _, words in nouns(folder):
        first, last = words[0], words[-1]
        is_thing = tuple(words) not in people and GROUPS.isdisjoint(words) and words[1] not in given_alone
        if first in firsts and is_thing and all(word.isalpha() and word.isascii() for word in words):
            rests[first].add(" ".join(words[1:]))
            if last not in verbs and len(words) == 2 and not last.endswith(("s", "y", "ch", "sh", "x", "god")):
                rests[first].add(f"{last}s")
    twos = {(words[0], words[1]) for file, words in nouns(folder) if len(words) == 2 and file != PERSON}
    ends = {two for two in twos if two[1] in EVERYDAY and two[0].isalpha() and two[0] not in given | {"the"}}
    lines = [
        '"""Things that begin or end with a name: WordNet 3.0; made by make_compounds.py beside the tests."""',
        "",
    ]
    lines += ['THINGS = """']
    lines += [f"{first}: {', '.join(sorted(of))}" for first, of in sorted(rests.items())]
    lines += ['"""', '"""The first word, and what may follow it, folded and without apostrophes, line by line."""', ""]
    lines += ['ENDS = """', *wrap(", ".join(" ".join(end) for end in sorted(ends)), 118), '"""']
    lines += ['"""Things of two words that end with one."""', ""]
    lines += ['WORDS = """', *wrap(" ".join(common_words(folder)), 118), '"""']
    lines += ['"""Common words that are written small, of three to seven letters."""', ""]
    return "\n".join(lines)


if __name__ == "__main__":
    TABLE.write_text(table(Path(sys.argv[1]) if sys.argv[1:] else WORDNET), encoding="utf-8")

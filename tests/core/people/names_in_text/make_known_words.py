"""Makes `core/people/names_in_text/known_words_table.py`: common words of many languages, as they are written small.

A word is taken where it is among the COMMON ones of a language by `wordfreq` and stands, written small, in the
dictionary of forms of `simplemma`, which has no names so; of German, what stands there written large alone is a noun.
Estonian words nobody counted: there it is the words of a dictionary's head, of LENGTHS letters, that Vabamorf knows;
nouns and adjectives in the nominative. Run in an environment that has these packages:
python tests/core/people/names_in_text/make_known_words.py
"""

from collections.abc import Iterable
from pathlib import Path
from textwrap import wrap

import wordfreq
from estnltk.vabamorf.morf import Vabamorf
from simplemma.strategies.dictionaries.dictionary_factory import DefaultDictionaryFactory
from tests.core.people.names_in_text.shortened_words import shortened

from boxlore.core.people.names_in_text.text_normalising import read_text

PACKAGE = Path(__file__).parents[4] / "src" / "boxlore"
TABLE = PACKAGE / "core" / "people" / "names_in_text" / "known_words_table.py"
HEAD = """\
Common words of many languages as they are written small, folded; made by make_known_words.py beside the tests.

Which words are common, and which of them a dictionary has, is all that was taken; they stand here under the licences of
their sources, not under the project's own:

    which words are common
                Robyn Speer's `wordfreq` 3.1.1: lists under CC BY-SA 4.0 (its program: Apache License 2.0)
    which are in a dictionary
                `simplemma` 2.0.0: MIT licence; its lists are made of Michal Měchura's (Open Database License), of
                Wiktionary's by Kaikki (CC BY-SA), of FreeLing's, spaCy's and UniMorph's, and of Eleni Metheniti's
                Wikinflection corpus (CC BY 4.0)
    Estonian    Vabamorf's lexicon too, by `estnltk` 1.7.5: Apache License 2.0 (or GPL 2.0)
"""
LANGUAGES = "cs da de en es et fi fr hu it lt lv nb nl pl ru sv uk".split()
COMMON = 20_000
LENGTHS, NOUN_LENGTHS = range(2, 10), range(2, 12)
"""Letters of a word; of a German noun more, since families are called by trades of two words."""
NOUNS = "de nouns"
"""Where German nouns stand, which are written large."""


def folded(word: str) -> str:
    """A word as a text's words are read; nothing where it is several."""
    words = read_text(word).words
    return words[0].folded if len(words) == 1 else ""


def estonian(dictionary: Iterable[str]) -> set[str]:
    known = [word for word in dictionary if word.islower() and word.isalpha() and len(word) in LENGTHS]
    read = Vabamorf().analyze(known, disambiguate=False, guess=False, propername=False)
    return {
        of["text"]
        for of in read
        if any(way["partofspeech"] not in "SA" or way["form"] in ("sg n", "pl n") for way in of["analysis"])
    }


def words_of(language: str) -> tuple[set[str], set[str]]:
    """The words that are written small, and those that are written large alone."""
    dictionary = DefaultDictionaryFactory().get_dictionary(language)
    if language == "et":
        return estonian(word for word, lemma in dictionary.items() if word == lemma), set()
    common = [word for word in wordfreq.top_n_list(language, COMMON) if word.isalpha()]
    small = {word for word in common if word in dictionary and len(word) in LENGTHS}
    if language != "de":
        return small, set()
    large = {word for word in common if word.capitalize() in dictionary and len(word) in NOUN_LENGTHS}
    return small - large, large


def table() -> str:
    """The text of the module."""
    lines = [f'"""{HEAD}"""', "", "KNOWN: dict[str, str] = {"]
    for language in LANGUAGES:
        for name, words in zip((language, NOUNS), words_of(language), strict=True):
            if words:
                row = " ".join(shortened({folded(word) for word in words} - {""}))
                lines += [f'    "{name}": """', *(f"        {line}" for line in wrap(row, 110)), '    """,']
    said = '"""By language; each without the letters that it has in common with the one before."""'
    return "\n".join([*lines, "}", said, ""])


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")

"""Whether a name alone is a word of a dictionary where it stands, in a text that writes names large.

Rule kept: a word passes by its own spelling and by the language that its sentence is told in.

    written small   it is the word, if a dictionary of that language has it (`En falk satt på stolpen.`, `I muri
                    bianchi`), and the text begins with a capital. Of a given name, which is written small in haste
                    more often, that is not enough (`ask penny`): there an article decides.
    another form    it is the word, where the language inflects its nouns so and no names: `Vintern`, `Zwei Könige`,
                    `Kleine Kinder`, `Zające`
    one slip away   `Hinter dem Haus` is no Mr Vinter, where a sentence begins with a word of its language
    by what is told `Mäki oli jyrkkä` (`things_told`)

What a language is told by is in `languages_told`; where nothing tells it, nothing passes but what is written small.
"""

from collections.abc import Collection, Sequence, Set

from boxlore.core.people.names.words_table import FAMILY_WORDS, TITLES
from boxlore.core.people.names_in_text.agreeing_words import begins_a_sentence
from boxlore.core.people.names_in_text.known_words import is_noun_in, languages_with
from boxlore.core.people.names_in_text.languages_told import is_any_told, languages_told
from boxlore.core.people.names_in_text.text_normalising import Word
from boxlore.core.people.names_in_text.things_told import is_copula, is_thing_by_what_is_told

_NO_NAMES_END_SO = {
    "de": "e en n er em ern",
    "nl": "e en",
    "sv": "en et n t ar er or arna erna orna na ens ets arnas ernas ornas nas a e",
    "nb": "en et er ene ens enes e a",
    "da": "en et er erne ens ernes e ene",
    "pl": "y e i",
    "cs": "y",
}
"""By language, endings of nouns and adjectives that no family name has there, nor a family: these say `Bergs`, `Falks`,
`Zającowie`. The school grammars of each (from memory)."""
_LOSE_A_VOWEL = frozenset(("de", "nl", "sv", "nb", "da"))
"""Where a vowel at the end of a name goes before such an ending; Polish `Wrony` may be the genitive of Wrona."""

_PRONOUNS = {
    "en": frozenset("i you he she it we they".split()), "sv": frozenset("jag du han hon vi ni de man".split()),
    "nb": frozenset("jeg du han hun vi dere de man".split()), "da": frozenset("jeg du han hun vi i de man".split()),
}  # fmt: skip
_TO_DO = {
    "sv": frozenset("ska skall skulle vill ville kan kunde maste far fick".split()),
    "nb": frozenset("skal skulle vil ville kan kunne ma matte far fikk".split()),
    "da": frozenset("skal skulle vil ville kan kunne ma matte far fik".split()),
    "en": frozenset("can could should would must shall".split()),
}
"""Who does something, and verbs behind which what is to be done stands, by language (school grammars, from memory)."""

_BEFORE_GERMAN_NOUNS = frozenset("der die das dem den des ein eine einen einem einer eines vom zum beim im am".split())
_GERMAN_ARTICLES = frozenset(("der", "die", "das"))


def is_word_written_small(words: Sequence[Word], at: int, bases: Set[str], *, is_called: bool) -> bool:
    """Whether a word written small is the word of a language that the sentence may be of: it, or one of `bases`, the
    names that it may be a form of. Where somebody is called so, only what something is: `La luce era chiara`."""
    is_anothers = at > 0 and words[at - 1].folded in TITLES | FAMILY_WORDS
    is_familys = at + 1 < len(words) and words[at + 1].folded in FAMILY_WORDS
    if is_anothers or is_familys or _begins_small(words):
        return False
    languages = told = languages_told(words, at)
    if _is_done_by_a_pronoun(words, at, told, bases):
        return True
    if is_called:
        languages = frozenset(language for language in told if at and is_copula(words[at - 1].folded, language))
    if languages_with(words[at].unelided, languages):
        return True
    return is_any_told(told) and any(languages_with(base, languages) for base in bases - {words[at].folded})


def _is_done_by_a_pronoun(words: Sequence[Word], at: int, languages: Collection[str], bases: Set[str]) -> bool:
    """`He tucked the paper`, `Vi ska bo här`: behind who does it, or who is to do it, stands what is done."""
    before = [word.folded for word in words[max(0, at - 2) : at]]
    if not before or words[at].before != " ":
        return False
    folded = words[at].folded
    if "en" in languages and before[-1] in _PRONOUNS["en"] and folded.endswith("ed"):
        return any(languages_with(base, ("en",)) and folded.startswith(base[:-1]) for base in bases - {folded})
    is_to_be_done = len(before) > 1 and words[at - 1].before == " "
    return is_to_be_done and any(
        before[0] in _PRONOUNS[language] and before[1] in _TO_DO[language] and bool(languages_with(folded, (language,)))
        for language in languages
        if language in _TO_DO
    )


def are_words_written_small(words: Sequence[Word], first: int, last: int) -> bool:
    """Whether each of several words is written small, and all are words of one language that the sentence may be of."""
    run = words[first : last + 1]
    if _begins_small(words) or not all(word.is_small for word in run):
        return False
    languages = languages_told(words, first)
    return any(all(languages_with(word.unelided, (language,)) for word in run) for language in languages)


def _begins_small(words: Sequence[Word]) -> bool:
    return words[0].spelled[0].islower()


def is_another_form(words: Sequence[Word], at: int, bases: Collection[str]) -> bool:
    """Whether a word is a noun or an adjective in a form that no name has: of one of `bases`, which are such words."""
    if not bases:
        return False
    languages = languages_told(words, at)
    return is_any_told(languages) and all(_is_form_in_each(words[at].folded, base, languages) for base in bases)


def _is_form_in_each(folded: str, base: str, languages: Collection[str]) -> bool:
    """Whether it is such a form in each of the languages that have the base as a word, and one has."""
    having = [language for language in languages if is_noun_in(base, language)]
    return bool(having) and all(
        language in _NO_NAMES_END_SO and _ends_as_a_word(folded, base, language) for language in having
    )


def _ends_as_a_word(folded: str, base: str, language: str) -> bool:
    stems = {base, base[:-1]} if base[-1] in "aeo" and language in _LOSE_A_VOWEL else {base}
    return any(f"{stem}{ending}" == folded for stem in stems for ending in _NO_NAMES_END_SO[language].split())


def is_a_word_one_slip_away(words: Sequence[Word], at: int) -> bool:
    """Whether a word that is only like a name is one that a sentence begins with in its language, or a German noun
    behind an article."""
    is_behind = at > 0 and words[at].before == " " and words[at - 1].folded in _BEFORE_GERMAN_NOUNS
    begins = begins_a_sentence(words, at)
    if not (begins or is_behind):
        return False
    languages = languages_told(words, at)
    asked = languages if begins else languages & {"de"}
    return is_any_told(languages) and any(is_noun_in(words[at].folded, language) for language in asked)


def is_told_as_a_thing(words: Sequence[Word], at: int) -> bool:
    """Whether a word that begins a sentence, and calls nobody, is a thing by what is told of it."""
    is_behind_the = at > 0 and words[at].before == " " and words[at - 1].folded in _GERMAN_ARTICLES
    if not begins_a_sentence(words, at - 1 if is_behind_the else at):
        return False
    return is_thing_by_what_is_told(words, at, languages_told(words, at))

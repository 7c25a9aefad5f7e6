"""Pet forms that a language makes of any given name by an ending: `Верочка` of `Вера`, `Rosina` of `Rosa`.

What a table of names has (`short_forms_table`) is not repeated here. Endings of the school grammars, from memory.
"""

from collections.abc import Mapping

from boxlore.core.people.names.forms import full_names_of, pet_forms
from boxlore.core.statements import fold

ENDINGS: Mapping[str, str] = {
    "ru": "очка ечка енька онька ушка юшка уша юша уся ик ка",
    "pl": "ka eczka unia usia ek uś",
    "cs": "ka enka inka uška ek ík íček ička",
    "lt": "utė ytė elė ėlė ukas iukas elis",
    "lv": "iņa iņš īte ītis ulis",
    "de": "chen lein i le erl",
    "es": "ita ito illa illo cita cito",
    "it": "ina ino etta etto uccia ella",
    "pt": "inha inho zinha zinho ita",
    "nl": "je tje pje etje ke",
    "fr": "ette ot ou",
    "et": "ke kene",
    "en": "y ie ey",
}
"""By language: what stands in the place of a name's last vowel, or behind the name."""

_VOWELS = "aeiouyáéíóúąęėįųūāēīаеёиоуыэюяь"
_SHORTEST_STEM, _ALIKE = 2, 3


def names_behind(form: str, language: str) -> set[str]:
    """The given names in small letters for which a word may be said: what it is a pet form of, what is said for it, and
    another pet form that begins alike (`tommy`, `tom`)."""
    short = fold(form)
    full = full_names_of(short)
    names = full | pet_forms(short)
    names |= {other for name in full for other in pet_forms(name) if other[:_ALIKE] == short[:_ALIKE]}
    for end in ENDINGS.get(language, "").split():
        stem = form.removesuffix(end)
        if stem != form and len(stem) >= _SHORTEST_STEM:
            names |= {stem, *(stem + vowel for vowel in _VOWELS)}
            names |= {stem[:-1]} if stem[-1] == stem[-2] else set()
    return names - {form}

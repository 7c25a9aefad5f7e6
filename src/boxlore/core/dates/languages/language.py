"""What one language brings to the reader of dates: words by what they mean, as rows of data.

Months and days of the week come from Unicode CLDR (`core.dates.cldr_table`); here stands what CLDR does not have. Words
of a row are separated by `|`; everything is written small. `LANGUAGES` (in `all` beside this) holds them all, so that
another language is one file and one name there.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True, kw_only=True)
class Language:
    """The words of one language.

    `code` is its ISO 639-1 code, under which CLDR's names are found. `months` and `weekdays` are rows of twelve or
    seven further forms, `*_endings` what may follow a form of such a row; `counted_weekdays` are rows of the forms that
    only a day of the week of something has (`június második vasárnapja`), `several_weekdays` is one of those of more than
    one (“two Sundays before Easter”). `words` are the words by kind (the kinds
    stand in `core.dates.lexicon`). `centuries` are names by the first two digits of their
    years (`ottocento`), `decades` words for the decade that begins with a number (`fifties`).
    `numbers` and `ordinals` are spoken numbers by value; `decade_endings` follow a year's digits at once (`1950s`);
    `ordinal_endings` a day's (`3rd`). `feasts` are names by the first name of the feast in
    `core.dates.holidays_table`, `feast_endings` what may follow one (`jaanipäeval`), `feast_days` words for a day of a
    feast that is numbered (`[zweiter] Pfingsttag`); `age_endings` words of age written as one
    with their number (`seitsmeaastane`), `aged_endings` those that also say that somebody was of that age
    (`kuusivuotiaana`), `birthday_endings` those of a birthday (`tioårsdag`), `decade_word_endings` words of decades
    (`viisikymmentäluvun`), `about_age_endings` those of an age that is told about (`trettioårsåldern`). `age_decades`
    are words for ten years of a life that are none of a century's (`trentaine`), `of_wars` those for a year, a season or
    Christmas of a war in one (`Kriegswinter`).
    `month_names` are further names of a month by its number, of several words or without the endings of `months`: old
    ones (`küünlakuu`), and two for one month. `number_endings` are what may follow a year's digits at once, by the kind
    of word that it stands for (`1914-től 1918-ig`; `noise` where it says no more than “in”: `1938:ssa`). `case_endings`
    are the same behind a month, a season or a feast (`januárjától`, `märtsini`), and parts of one as one word with it
    (`Septembermitte`). `fractions` are the words for a half, a
    quarter and a third, before which an ordinal stands, or its number (`2. Hälfte`, `II poł.`). `neither` are the words
    before the first of several dates that are all denied, `nor` those before each other one (`weder 1935 noch 1936`);
    from grammars, from memory.
    """

    code: str
    months: tuple[str, ...] = ()
    month_endings: str = ""
    month_names: Mapping[int, str] = field(default_factory=dict)
    weekdays: tuple[str, ...] = ()
    weekday_endings: str = ""
    counted_weekdays: tuple[str, ...] = ()
    several_weekdays: str = ""
    words: Mapping[str, str] = field(default_factory=dict)
    neither: str = ""
    nor: str = ""
    centuries: Mapping[int, str] = field(default_factory=dict)
    decades: Mapping[int, str] = field(default_factory=dict)
    numbers: Mapping[int, str] = field(default_factory=dict)
    ordinals: Mapping[int, str] = field(default_factory=dict)
    decade_endings: str = ""
    ordinal_endings: str = ""
    number_endings: Mapping[str, str] = field(default_factory=dict)
    case_endings: Mapping[str, str] = field(default_factory=dict)
    fractions: Mapping[str, str] = field(default_factory=dict)
    feast_endings: str = ""
    age_endings: str = ""
    aged_endings: str = ""
    birthday_endings: str = ""
    decade_word_endings: str = ""
    about_age_endings: str = ""
    age_decades: Mapping[int, str] = field(default_factory=dict)
    of_wars: Mapping[str, str] = field(default_factory=dict)
    feasts: Mapping[str, str] = field(default_factory=dict)
    feast_days: Mapping[str, str] = field(default_factory=dict)

"""Clues of a date that is printed on the thing itself: in the border of a print, or written on it and nothing else.

Laboratories printed the month in which a film was developed. So the picture is not later, and as a rule not much
older: a film lies in its camera for two years at most (`IN_THE_CAMERA`, common practice, no source). Two digits are a
year of the twentieth century: such borders are known from after 1945 (Historical Clothing, *Snapshots*). The same
holds of words written on it that are a month and a year and nothing else. What is told is likely, and never sure. The
words are ours, from what is said in each language.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from boxlore.core.dates import phrases
from boxlore.core.dates.edtf import parsed
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.dates.phrases import PhraseSettings
from boxlore.core.evidence.claims import Claim, dated, of_item, weaker
from boxlore.core.evidence.denials import denials, held_against
from boxlore.core.evidence.even_years import YEAR
from boxlore.core.evidence.leaning import may_be_meant, pieces
from boxlore.core.evidence.network import ORIGIN, Limit
from boxlore.core.evidence.object_clues import POSTED, is_a_copy
from boxlore.core.evidence.sentences import Sentence
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure, fold

IN_THE_CAMERA = 2 * YEAR
TOLD = ("condition", "process")
_BORDER = re.compile(
    r"\b(?:borders?|edges?|margins?|rims?|rand\w*|kante\w?|serv\w{0,4}|ääris\w*|äärel|bords?|marges?|bordes?|márgen\w*|bordi|"
    r"bordo|margini|margine|bordas?|margem|kant\w{0,3}|reuna\w{0,3}|kra[jй]\w{0,3}|край|краю|поле|полях|brzeg\w{0,2}|margines\w{0,2}|"
    r"okraj\w{0,2})\b",
    re.IGNORECASE,
)
_PRINTED = re.compile(
    r"\b(?:print\w*|stamped|says?|reads?|dated?|marked|gedruckt|steht|datiert|gestempelt|aufgedruckt|trüki\w*|kirjas|"
    r"imprimée?|porte|datée?|impreso|impresa|dice|fecha\w*|stampat\w|datat\w|impress\w|tryckt|stämplad|trykt|stemplet|gedrukt|"
    r"painettu|напечатан\w*|wydrukowan\w*|vytištěn\w*|lautet)\b",
    re.IGNORECASE,
)
_IN_PRINT = re.compile(
    r"(?<!\w)(?:(?P<month>[^\W\d_]{3,12})[\s.,•·*'’-]{1,4}(?P<year>(?:19|20)\d\d|\d\d)|(?P<alone>(?:19|20)\d\d))(?![\w'’])"
)


def clues(record: Record, sentences: Sequence[Sentence], settings: PhraseSettings) -> Iterator[Claim]:
    denied = denials(record)
    of_the_thing = [(one_line(view.words), view) for name in TOLD for view in record.all(name)]
    for words, view in (*((sentence.words, sentence.view) for sentence in sentences), *of_the_thing):
        clause = next(filter(_is_of_a_border, re.split(r"[,;]\s", words)), "")
        if (edtf := printed(clause, settings)) is not None:
            yield from held_against(record, denied, _developed(record, view, words, edtf), view)
    for view in record.all("inscription"):
        words = one_line(view.words)
        edtf = _written(words, settings) or _written(_without_who(words, record), settings)
        if view.source.said is Said.INSCRIPTION and edtf is not None:
            yield from held_against(record, denied, _developed(record, view, words, edtf), view)


def _without_who(words: str, record: Record) -> str:
    """What stands behind the names of those in the picture: “Otto 1935”."""
    names = {piece for shown in record.shown() for piece in pieces(shown.name)}
    said = words.split(" ")
    while said and names and set(pieces(said[0])) <= names | _JOINED:
        del said[0]
    return " ".join(said)


_JOINED = frozenset("and und ja et y e och og & with mit".split())


def _written(words: str, settings: PhraseSettings) -> Edtf | None:
    """The date that words are and no more, “AUG 57” too."""
    read = phrases.read(words, settings)
    if read.edtf is not None and not read.ask and _is_a_date_alone(words):
        return read.edtf
    if numbers := _IN_NUMBERS.fullmatch(words.strip(" .•·*")):
        return parsed(numbers["year"])
    match = _IN_PRINT.fullmatch(words.strip(" .•·*"))
    return (_month_in(match, settings) if match else None) or _in_a_part(words, settings)


def _in_a_part(words: str, settings: PhraseSettings) -> Edtf | None:
    """The one date that stands by itself between commas of a longer inscription: “Mrs. Margaret Hall, 1866”. Where
    another year is written, or more than one part is a date, nobody knows of what."""
    *parts, last = re.split(r"[,;:]\s+|\s[–—-]\s", words)
    if not parts or _OF_SOMETHING_ELSE.search(words) or POSTED.search(fold(words)) or len(_YEARS.findall(words)) != 1:
        return None
    part = next(part for part in (*parts, last.rstrip(".")) if _YEARS.search(part))
    read = phrases.read(part, settings)
    return read.edtf if not read.ask and _has_words_of_dates_alone(part) else None


def _is_a_date_alone(words: str) -> bool:
    """Whether a year is written with words of a date alone: “Tel. 1938” and “Neg. 1922” are none."""
    return bool(_IN_PRINT.search(words)) and _has_words_of_dates_alone(words)


def _has_words_of_dates_alone(words: str) -> bool:
    text = nfc(words)
    said = [token for token in lex(text) if any(sign.isalpha() for sign in text[token.start : token.end])]
    return all(token.is_any(_OF_A_DATE) for token in said)


_IN_NUMBERS = re.compile(r"\d{1,2}[./-] ?(?:\d{1,2}|[IVX]{1,4})[./-] ?(?P<year>(?:18|19|20)\d\d)")
"""A day in numbers, of which no more than the year is taken: which is the month depends on who wrote it."""
_OF_SOMETHING_ELSE = re.compile(
    r"[†©*]|\b(?:medals?|prizes?|awards?|exhibitions?|exposition\w*|expo|est|established|founded|since|patent\w*|copyright|"
    r"born|died|buried|copied|copy|reprint\w*|letter|medaill\w*|ausstellung|gegründet|seit|geb|geboren|gest|gestorben|"
    r"sündinud|surnud|asutatud|fondée?|depuis|mort|morte|nacid[oa]|murió|fundad[oa]|desde|premio|medalla|född|död|født)\b",
    re.IGNORECASE,
)
"""Words beside which a year is that of a medal, a firm, a birth, a death or a copy, and not that of the picture."""
_YEARS = re.compile(r"(?<!\d)(?:1[89]|20)\d\d(?!\d)")
_OF_A_DATE = frozenset(("month", "feast", "season", "weekday", "about"))


def _is_of_a_border(words: str) -> bool:
    return bool(_BORDER.search(words) and _PRINTED.search(words) and _IN_PRINT.search(words))


def printed(words: str, settings: PhraseSettings) -> Edtf | None:
    """The one date that words tell, in the way in which a border has it."""
    found: dict[str, Edtf] = {}
    for match in _IN_PRINT.finditer(words):
        year, month = _year_in(match), _month_in(match, settings)
        if month is not None or len(match["year"] or year) == len(year):
            edtf = month or parsed(year)
            found[edtf.text] = edtf
    return next(iter(found.values())) if len(found) == 1 else None


def _month_in(match: re.Match[str], settings: PhraseSettings) -> Edtf | None:
    """The month that is meant, if there is one; “JUL” is no Christmas here, as it is in the North."""
    dates = may_be_meant(phrases.read(f"{match['month']} {_year_in(match)}", settings)) if match["month"] else ()
    months = [edtf for edtf in dates if edtf.single and edtf.single.month in _MONTHS and not edtf.single.day]
    return months[0] if len(months) == 1 else None


def _year_in(match: re.Match[str]) -> str:
    """The year in four digits; of two it is one of the twentieth century."""
    return match["alone"] or f"19{match['year']}"[-4:]


_MONTHS = frozenset(f"{month:02d}" for month in range(1, 13))


def _developed(record: Record, view: StatementView, words: str, edtf: Edtf) -> Claim:
    """A later print of an old negative bears the date of the print: its picture is older by nobody knows how much."""
    claim = told(view, f"{record.number}: “{one_line(words)}”")
    if _YEAR_ALONE.fullmatch(words) or not _is_a_date_alone(words):
        claim = replace(claim, sure=Sure.GUESS)  # a number may be of something else
    claim = dated(replace(claim, sure=weaker(claim.sure, Sure.LIKELY)), of_item(record.id), edtf)
    is_copy = is_a_copy(record)
    limits = [
        limit._replace(days=limit.days + IN_THE_CAMERA) if _is_a_beginning(limit) else limit
        for limit in claim.limits
        if not (is_copy and _is_a_beginning(limit))
    ]
    return replace(claim, limits=tuple(limits))


_YEAR_ALONE = re.compile(r"\W*\d{4}\W*")


def _is_a_beginning(limit: Limit) -> bool:
    return limit.later == ORIGIN

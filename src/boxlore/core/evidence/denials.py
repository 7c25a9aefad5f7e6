"""That what is written on a picture, or was told of its day, is denied: “it wasn't 1948, whatever the back says”.

A date that is denied is not weighed away in silence: it and the denial are one circle, and the day is bounded by
neither until somebody has said which is so. A denial need not be understood as a date to be one: “the back is wrong”
denies every year that is written there. The words are ours, from what is said in each language (common practice, no
source).
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from boxlore.core.evidence.claims import PHOTOGRAPHIC_YEARS, Choice, Claim, of_item
from boxlore.core.evidence.even_years import number_of
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record, StatementView

TOLD = ("story", "note", "title", "occasion", "date")
_YEAR = re.compile(r"(?<![\d.,/-])(?:18|19|20)\d\d(?![\d.,/-]\d|\w)")
_NOT = (
    r"(?:(?:is|was|ca|could|did|does|would)n['’]t|cannot|can ?not|(?:is|was|could|did|does) not|not|never|nicht|"
    r"no way|(?:do(?:es)?n['’]t|do not|can['’]t|never) (?:think|believe|see)|doubt|"
    r"kein\w*|(?:ei|pole|polnud|mitte)(?: olnud| saanud olla)?|n['’](?:est|était) pas|pas|no (?:es|era|fue|puede ser)|"
    r"no|non (?:è|era)|non|inte|ikke|niet)"
)
_SMALL = (
    r"(?:(?:be|have|been|really|quite|taken|made|possibly|right|in|of|from|the|year|as early as|as late as|it|this|"
    r"that(?:['’]s)?|was|is|could|sein|gewesen|im|jahr|aus|von|aastal|aasta|en|de|del|du|dès|il|nel|det|var|år|"
    r"året|het|uit)\W+){0,5}"
)
_NOT_THEN = re.compile(rf"\b{_NOT}\W+{_SMALL}(?P<year>(?:18|19|20)\d\d)(?!\d)", re.IGNORECASE)
_WRONG = (
    r"(?:(?:is|are|was|must be|has to be|ist|sind|on|est|es|está|è|är|er) (?:(?:all|quite|simply|just|surely) )?"
    r"(?:wrong|too (?:early|late)|mistaken|false|a mistake|an error|nonsense|not right|not true|falsch|"
    r"zu (?:früh|spät)|ein irrtum|verkehrt|vale|eksitus|fausse?|une erreur|falso|falsa|errónea?|equivocad[oa]|mal|"
    r"sbagliat[oa]|fel|feil|forkert|fout)|(?:is|was)n['’]t (?:right|true)|can(?:no|['’])t be right|"
    r"(?:kann|stimmt|passt)(?: so| aber)* nicht(?: stimmen)?|ei (?:ole õige|klapi|vasta tõele)|lies|stämmer inte|"
    r"stemmer ikke|klopt niet|n['’]est pas (?:juste|exacte?)|no es correct[oa])"
)
_WRITING = (
    r"(?:back|writing|inscription|caption|label|note on (?:it|the back)|date|year|pencil|rückseite|aufschrift|"
    r"beschriftung|jahr|jahreszahl|datum|tagakülg|tagaküljel|kiri|kuupäev|aasta|aastaarv|dos|verso|légende|année|"
    r"dorso|reverso|fecha|año|retro|data|baksida\w*|årtal\w*|bagside\w*|årstall\w*|achterkant|jaartal)"
)
_THE_BACK_IS_WRONG = re.compile(
    rf"\b{_WRITING}\b[^.;!?]{{0,30}}?\b{_WRONG}"
    rf"|\b(?:whatever|no matter what|egal was|ükskõik mis)\b[^.;!?]{{0,20}}\b{_WRITING}\b"
    rf"|\b(?:don['’]t|never|do not) (?:trust|believe|mind) (?:the )?{_WRITING}\b"
    rf"|\b{_WRONG} (?:on|written on) the {_WRITING}\b"
    rf"|\b(?:wrong|false|mistaken|falsche[sn]?|mauvaise|vale|fel|feil|forkert|verkeerde) {_WRITING}\b"
    r"|\b(?:later|earlier|older) than (?:what )?(?:it |is |says |the |written |on )*(?:back|writing|label)\b",
    re.IGNORECASE,
)
_YEAR_IS_WRONG = re.compile(
    r"(?P<year>(?:18|19|20)\d\d)(?!\d)(?:,? (?:but |men |aber )?(?:that|which|das|see|aga see|cela|c['’]|eso|pero eso|"
    rf"det))? ?{_WRONG}"
    r"|(?P<then>(?:18|19|20)\d\d)(?!\d)(?: on (?:it|the back))?(?:\?+ (?:no|never|nein|nie|ei|non|nej)\b"
    r"|,? (?:which|that) (?:can['’]t|cannot)\b"
    r"|,? (?:but|aber|aga|mais|pero|men) (?:\w+ ){0,4}?(?:years?|jahre?|aastat|ans|años|år) "
    r"(?:earlier|later|before|after|früher|später|varem|hiljem|plus t(?:ôt|ard)|antes|después|tidigare|senare))",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Denial:
    """A statement that denies years; none for all that is written."""

    view: StatementView
    years: frozenset[int]


def denials(record: Record) -> list[Denial]:
    return [
        Denial(view, frozenset() if _THE_BACK_IS_WRONG.search(words) and not years else years)
        for name in TOLD
        for view in record.all(name)
        for words in (one_line(view.words),)
        for years in (frozenset(_years_denied(words)),)
        if years or _THE_BACK_IS_WRONG.search(words)
    ]


def _years_denied(words: str) -> Iterator[int]:
    for pattern in (_NOT_THEN, _YEAR_IS_WRONG):
        for match in pattern.finditer(words):
            yield int(match["year"] or match["then"])


def years_written(words: str) -> frozenset[int]:
    return frozenset(map(int, _YEAR.findall(words)))


def held_against(record: Record, denied: Sequence[Denial], claim: Claim, view: StatementView) -> Iterator[Claim]:
    """A claim of a date, as far as it goes beside what denies it: of a year that is denied no more than that year is
    claimed, and the denial is claimed beside it."""
    against = [
        (denial, years)
        for denial in denied
        if denial.view.statement != view.statement
        if (years := years_written(view.words) & denial.years if denial.years else years_written(view.words))
    ]
    if not against:
        yield claim
        return
    day = of_item(record.id)
    years = frozenset[int]().union(*(years for _, years in against))
    yield replace(claim, limits=(), chosen=day, choices=tuple(map(_of_year, sorted(years))))
    for denial, not_then in against:
        words = f"{record.number}: “{one_line(denial.view.words)}”"
        yield replace(told(denial.view, words), chosen=day, choices=_but(sorted(not_then)))


def _of_year(year: int) -> Choice:
    return number_of(year, 1, 1), number_of(year, 12, 31)


def _but(years: Sequence[int]) -> tuple[Choice, ...]:
    """The spans of all years but these; the first begins before any day that is looked for, and bounds nothing."""
    begins = (number_of(1, 1, 1) - 1, *(number_of(year + 1, 1, 1) for year in years))
    ends = (*(number_of(year - 1, 12, 31) for year in years), number_of(PHOTOGRAPHIC_YEARS.stop, 1, 1))
    return tuple((first, last) for first, last in zip(begins, ends, strict=True) if first <= last)

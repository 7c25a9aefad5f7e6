"""Years of a reign, as deeds and backs of old prints have them: `4 Geo. V` is the fourth year from the accession on.

Accessions of the kings and queens of Great Britain since 1760: from memory. The second year begins on the first
anniversary of the accession.
"""

import re
from datetime import date, timedelta
from typing import NamedTuple

from boxlore.core.dates.languages.english import ENGLISH
from boxlore.core.dates.lexicon import ROMAN

_ACCESSIONS = {
    "geo iii": (1760, 10, 25, 60), "geo iv": (1820, 1, 29, 11), "will iv": (1830, 6, 26, 7), "vict": (1837, 6, 20, 64),
    "edw vii": (1901, 1, 22, 10), "geo v": (1910, 5, 6, 26), "edw viii": (1936, 1, 20, 1), "geo vi": (1936, 12, 11, 16),
    "eliz ii": (1952, 2, 6, 71),
}  # fmt: skip
"""Year, month, day, and how many years of the reign were begun."""

_NAMES = {"george": "geo", "william": "will", "wm": "will", "victoria": "vict", "vic": "vict", "edward": "edw",
          "elizabeth": "eliz"}  # fmt: skip
_ORDINALS = [ENGLISH.ordinals[nth] for nth in range(1, 13)]
_REGNAL = re.compile(
    rf"(?:in )?(?:the )?(?:regnal year )?([0-9]{{1,2}}|{'|'.join(_ORDINALS)})(?:st|nd|rd|th)?(?: year)?(?: of)? "
    r"(?:(?:the )?reign of )?"
    r"(?:king |queen )?"
    r"(geo(?:rge)?|will(?:iam)?|wm|vict?(?:oria)?|edw(?:ard)?|eliz(?:abeth)?)\b\.? ?([ivx]*)\.?"
    r"(?:['’]s (?:reign|time))?",
    re.IGNORECASE,
)


_ERA_FASCISTA = re.compile(
    r"(?:anno |a\. ?)?([ivx]{1,5}|[0-9]{1,2})\.? (?:e\. ?f\.?|(?:del(?:la |l['’]))?era fascista)", re.IGNORECASE
)
_LAST_FASCIST_YEAR = 21
_BESIDE = re.compile(
    r"(?P<date>.*?(?P<year>\d{4})?)[ ,(–—-]+"
    rf"(?:(?P<era>{_ERA_FASCISTA.pattern})|(?:anno )?(?P<only>[IVX]{{1,5}}))[.)]*",
    re.IGNORECASE,
)
_LAST_LETTERS = frozenset("IVXFAivxfa.)")
"""What such words end with: a Roman digit, the era, or a sign."""


class BesideEra(NamedTuple):
    """The words of a date, the EDTF of the year of the era behind them, whether that era is named, as it is not in
    `Natale 1938 XVII`, and whether the date has a year of its own (`15 agosto XVI E.F.` has none)."""

    date: str
    year: str
    is_named: bool
    has_year: bool

    @property
    def years(self) -> tuple[int, int]:
        """The two years that the year of the era lies in."""
        return int(self.year[1:5]), int(self.year[1:5]) + 1


def beside_era(words: str) -> BesideEra | None:
    """`20 sett. 1937 – XV E.F.`: a date and a year of that era; None for other words."""
    match = _BESIDE.fullmatch(words) if words[-1] in _LAST_LETTERS else None
    if match is None or not match["date"]:
        return None
    year = regnal_year(match["era"] or f"{match['only']} E.F.")
    return BesideEra(match["date"], year, bool(match["era"]), bool(match["year"])) if year else None


def regnal_year(words: str) -> str:
    """The EDTF of a year of a reign, or of the era of Italy's prints from 29 October 1922 on (`anno XV E.F.`; from
    memory); empty for other words, and for a year that the reign did not have."""
    if era := _ERA_FASCISTA.fullmatch(words):
        year = ROMAN.get(era[1].lower()) or (int(era[1]) if era[1].isdigit() else 0)
        return f"[{1921 + year}-10-29..{1922 + year}-10-28]" if 1 <= year <= _LAST_FASCIST_YEAR else ""
    match = _REGNAL.fullmatch(words)
    if match is None:
        return ""
    name = match[2].lower()
    key = f"{_NAMES.get(name, name)} {match[3].lower()}".strip()
    year, month, day, years = _ACCESSIONS.get(key, (0, 0, 0, 0))
    nth = int(match[1]) if match[1].isdigit() else _ORDINALS.index(match[1].lower()) + 1
    if not 1 <= nth <= years:
        return ""
    following = [date(*row[:3]) for row in _ACCESSIONS.values() if row[:3] > (year, month, day)]
    last = min([date(year + nth, month, day) - timedelta(1), *following])
    return f"[{date(year + nth - 1, month, day)}..{last}]"

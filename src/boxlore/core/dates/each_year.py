"""“Every Christmas from 1930 to 1935”: the same of each year, taken apart into what it is and the first and last year.

The words for “every” and between the years are everyday usage of each language (common practice, no source).
"""

import re

MOST_YEARS = 20

_EVERY = (
    "every|each|jeden|jedes|jede|chaque|tous les|toutes les|cada|ogni|todos os|todas as|todos los|todas las|elke|elk|"
    "iedere|ieder|hver|hvert|varje|iga|igal|joka|каждый|каждое|каждую|każde|każdy|każdą|każdej|katru|katrā|"
    "kiekvieną|každý|každé|každou|minden|ia"
)
_NAMES = "Elke|Minden|Ia"
"""Words for “every” that are names too, where they are written large: “Elke Sommer 1930–1932” is asked about."""
_FROM = "from|between|in|von|zwischen|de|entre|du|del|dal|tra|van|fra|från|с|от|od|no|nuo|mellem|mellom|mellan"
_TO = (
    "to|until|till|through|and|bis|und|à|et|a|y|e|al|hasta|até|tot|en|til|till|och|og|kuni|ja|по|до|i|do|līdz|iki|ir|až"
)
_OF_EACH = re.compile(
    rf"(?!(?-i:{_NAMES}) )(?:{_EVERY}) (?P<what>[^\d,]+?),? (?:(?:{_FROM}) )?(?P<first>\d{{4}}) ?"
    rf"(?:[-–]|(?<= )(?:{_TO})(?= )) ?(?P<last>\d{{4}})",
    re.IGNORECASE,
)


def of_each_year(words: str) -> tuple[str, ...]:
    """“Christmas 1930”, “Christmas 1931” …, of such words; none of others, and where there are too many years."""
    match = _OF_EACH.fullmatch(words)
    if match is None:
        return ()
    first, last = int(match["first"]), int(match["last"])
    if not first < last < first + MOST_YEARS:
        return ()
    return tuple(f"{match['what']} {year}" for year in range(first, last + 1))

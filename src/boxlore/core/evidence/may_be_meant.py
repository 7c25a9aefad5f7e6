"""Who is in a picture by a name that still asks who is meant: “Edith”, told alone, where the family has one Edith.

The question stands until the keeper has answered it. Until then the only one who bears the name is taken to be meant,
which is likely at most; of several who bear it nobody is. A name with whose she is (“their Edith”) is nobody's here,
nor one of somebody who is told to be in the picture beside it. No output has anything of this.
"""

from dataclasses import replace

from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.evidence.claims import weaker
from boxlore.core.people.who_is_meant import ByName, named_in
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.statements import Sure


def with_who_may_be_meant(record: Record, names: ByName) -> Record:
    if not any(map(_asks, record.people)):
        return record
    there = {shown.person for shown in record.people}
    return replace(record, people=tuple(_as_meant(shown, names, there) for shown in record.people))


def _asks(shown: PersonShown) -> bool:
    return shown.told.asks and not shown.person and shown.role == "person" and not shown.in_question


def _as_meant(shown: PersonShown, names: ByName, there: set[str]) -> PersonShown:
    if not _asks(shown) or _says_whose(shown.told.words):
        return shown
    bearers = named_in(names, shown.name)
    if len(bearers) != 1 or bearers[0].id in there:
        return shown
    told = replace(shown.told, sure=weaker(shown.told.sure, Sure.LIKELY))
    return replace(shown, told=told, person=bearers[0].id, name=bearers[0].name)


def _says_whose(words: str) -> bool:
    return any("possessive" in token.kinds for token in lex(nfc(words))) or "'s" in words.replace("’", "'")

"""Whether words name a street, which lies in a town and is none, by language (common practice, no source)."""

import re

from boxlore.core.places.taking_apart import fold_place

_WORDS = frozenset(
    map(
        fold_place,
        (
            "street road rd lane avenue ave terrace crescent parade boulevard blvd embankment esplanade quay mews "
            "ul ulica ulicy al aleja alei plac placu rynek rynku ulice ulici náměstí třída třídě námestie "
            "tänav tänaval tänavas tn puiestee puiesteel pst maantee maanteel mnt turg turul "
            "katu kadulla kadun tie tiellä gata gatan gatunr gate gaten gade gaden vej vei veien vägen väg "
            "torget torv torg "
            "iela ielā gatve gatvė gatvėje g bulvāris bulvārī laukums alėja alėjoje aikštė prospektas "
            "straße strasse platz allee gasse straat laan plein gracht rue place avenue quai via viale piazza corso "
            "calle avenida plaza rua praça utca utcában út úton tér téren körút "
            "ул улица улице пр проспект проспекте пер переулок площадь площади бульвар набережная вул вулиця "
            "ulica ulici trg cesta"
        ).split(),
    )
)
_ENDS = tuple(
    map(
        fold_place,
        "straße strasse str gasse platz allee damm chaussee markt katu kadulla gatan gata gade gaden vej vägen veien "
        "straat laan plein gracht".split(),
    )
)
"""How one word ends that names a street."""


def is_street(words: str) -> bool:
    """`Princes Street`, `ul. Mickiewicza`, `Gartenstraße`; a saint before a name is none (`St Giles`)."""
    tokens = [re.sub(r"\W", "", token) for token in fold_place(words).split()]
    if len(tokens) > 1 and (tokens[-1] == "st" or not _WORDS.isdisjoint(tokens)):
        return True
    return any(token.endswith(end) and len(token) > len(end) + 2 for token in tokens for end in _ENDS)

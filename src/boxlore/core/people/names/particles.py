"""Given names and a family name, and the particles of it that go behind in a list."""

import re
from collections.abc import Sequence

from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.parts import NameParts, Tradition
from boxlore.core.people.names.tokens import Token, written

Tokens = Sequence[Token]


def with_particle(given: Tokens, family: Tokens, tradition: Tradition = Tradition.EUROPEAN) -> NameParts:
    """Given names and a family name, with the particles that go behind in a list."""
    return NameParts(
        given=written(given), family=written(family), particle=particle_of(family, tradition), tradition=tradition
    )


def particle_of(family: Tokens, tradition: Tradition) -> str:
    """The particles at the beginning of a family name under which it is not listed."""
    at = 0
    while (
        at < len(family) - 1
        and family[at].is_particle
        and (not _leads(family[at], tradition) or (at and tradition is Tradition.SPANISH))
    ):
        at += 1
    if at == 0 and family and (match := re.match(r"[dl]['’](?=[^\W\d_])", family[0].text)):
        return match[0]
    return written(family[:at])


_OF_OTHERS_TOO = words_of.ITALIAN_ONLY - words_of.ITALIAN_FOR_CERTAIN - {"la", "le", "dal"}
"""Particles of Italian that other languages have as well."""


def _leads(particle: Token, tradition: Tradition) -> bool:
    """Whether a name is listed under this particle."""
    if tradition in (Tradition.ITALIAN, Tradition.SPANISH, Tradition.PORTUGUESE):
        return tradition is Tradition.ITALIAN or particle.plain in ("la", "las", "los", "el")
    return particle.plain in words_of.UNDER_PARTICLE and particle.plain not in _OF_OTHERS_TOO

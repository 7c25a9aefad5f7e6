"""A strike lets go of every name and told word that is kept in memory from earlier questions (a rule of our own).

Read from memory: each cache of `core/people` that has a bound keeps told words; one without keeps our own tables.
"""

import functools
import sys

from boxlore.core.people.event_clauses import clauses, forget_clauses
from boxlore.core.people.names.forms import soundex
from boxlore.core.people.names_in_text.finder import forget_finders, name_finder
from boxlore.core.people.names_in_text.hits import Hit
from boxlore.core.people.names_in_text.names_by_shape import forget_shapes, names_by_shape
from boxlore.core.people.names_in_text.names_of_the_living import names_of_the_living
from boxlore.core.people.person import build_person
from boxlore.core.people.who_is_where.reader import forget_names, read_who
from boxlore.core.people.who_is_where.seen_in_story import forget_sentences, names_seen
from boxlore.core.statements import Kind, Statement, Subject


def test_no_cache_of_told_words_outlives_a_strike() -> None:
    words = "On the left Quilla Brandlacher, born 2001"
    hit = Hit(12, 30, frozenset({"quilla"}))
    about = Subject(Kind.PERSON, "quilla")
    told = Statement(id="s1", act="", subject=about, field="name", words="Quilla Brandlacher", recorded_at="")
    quilla = build_person("quilla", [(told, None)])
    assert list(names_seen(words, [hit])) == [hit]
    assert names_of_the_living(words, "story", 2026, 100) == ("Quilla Brandlacher",)
    assert name_finder((quilla,), frozenset({"quilla"})).hits(words)
    assert names_by_shape("Rose by the gate")
    assert clauses("quilla married tom")
    assert read_who(words).people and soundex("Brandlacher")
    assert len(_kept()) >= 10
    forget_finders()
    forget_names()
    forget_sentences()
    forget_shapes()
    forget_clauses()
    assert _kept() == set()


def _kept() -> set[str]:
    """The names of the caches of told words that hold some."""
    modules = {name: module for name, module in sys.modules.items() if name.startswith("boxlore.core.people.")}
    return {
        f"{cache.__module__}.{cache.__qualname__}"
        for module in modules.values()
        for cache in vars(module).values()
        if isinstance(cache, functools._lru_cache_wrapper) and cache.cache_info().maxsize is not None
        if cache.cache_info().currsize and cache.__module__ in modules
    }

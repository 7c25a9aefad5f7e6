"""Words that take a name back where no comma parts them from it: `that's Vi no wait it's Flo`.

Two such words side by side, or one of them before `it's`, end what stands before them. Common practice, from memory; no
source.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.small_words_table import CORRECTIONS
from boxlore.core.people.who_is_where.tokens import Element


def with_corrections(elements: Sequence[Element]) -> list[Element]:
    """The elements, with a comma before and behind each run of such words that stands within a part."""
    kept: list[Element] = []
    at = 0
    while at < len(elements):
        end = at
        while end < len(elements) and elements[end].kind == "word" and elements[end].plain in CORRECTIONS:
            end += 1
        run = elements[at:end]
        goes_on = elements[end : end + 1]
        takes_back = len(run) > 1 or (bool(run) and bool(goes_on) and goes_on[0].kind == "verb")
        if takes_back and kept and kept[-1].kind == "word" and kept[-1].is_large and goes_on:
            kept += [_comma(run[0]), *run]
            kept += [] if goes_on[0].kind == "comma" else [_comma(goes_on[0])]
            at = end
        else:
            kept.append(elements[at])
            at += 1
    return kept


def _comma(before: Element) -> Element:
    return replace(before, kind="comma", text=",", end=before.start)

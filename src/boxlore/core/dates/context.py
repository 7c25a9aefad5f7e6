"""What a form of a date takes and gives: shared by every form of `core.dates.forms`."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class DateContext:
    """What a reading may lean on: the collection's settings, and dates already told (folded name → EDTF)."""

    order: str | None = None
    hemisphere: str = "north"
    countries: tuple[str, ...] = ()
    births: Mapping[str, str] = field(default_factory=dict)
    events: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Proposed:
    """The result of one form. `edtf` is empty where the words are about a date but name none (`undated`, `31 June`);
    `ask` is the question to put then. `alternatives` are the other dates that may be meant, as EDTF."""

    edtf: str
    ask: str | None = None
    alternatives: tuple[str, ...] = ()
    note: str = ""


MaybeProposed = Proposed | None
ReadPart = Callable[[str, DateContext], MaybeProposed]
"""Reads a part of a date by the same table: what a form gets to read the dates that it holds."""

FormReader = Callable[[re.Match[str], DateContext, ReadPart], MaybeProposed]


def qualified(edtf: str, mark: str) -> str:
    """The EDTF with a qualifier: on a date, or on both ends of an interval; a set has no place for one."""
    if not mark or not edtf or edtf[0] in "[{":
        return edtf
    if "/" in edtf:
        return "/".join(qualified(end, mark) if end not in ("", "..") else end for end in edtf.split("/"))
    if edtf[-1] in "?~%":
        return edtf if edtf[-1] in (mark, "%") else f"{edtf[:-1]}%"
    return edtf + mark

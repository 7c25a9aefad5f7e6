"""Two dates told of one thing: whether both can be so, which of them says more, and one date that leaves it open.

A date that is approximate or uncertain means the days around it too, as far as `lifetime.possible` goes, so that
“about 1931” and “1932” do not contradict each other.
"""

from collections.abc import Sequence

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.against_a_life import possible
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.errors import TextFault


def can_both_be(first: Edtf, second: Edtf) -> bool:
    """Whether there is a day that both may mean."""
    (begins, ends), (other_begins, other_ends) = possible(first), possible(second)
    is_before = ends is not None and other_begins is not None and ends < other_begins
    is_after = other_ends is not None and begins is not None and other_ends < begins
    return not (is_before or is_after)


def is_narrower(inner: Edtf, outer: Edtf) -> bool:
    """Whether every day that `inner` may mean is one that `outer` may mean, and not the other way round."""
    (begins, ends), (outer_begins, outer_ends) = possible(inner), possible(outer)
    begins_within = outer_begins is None or (begins is not None and begins >= outer_begins)
    ends_within = outer_ends is None or (ends is not None and ends <= outer_ends)
    return begins_within and ends_within and (begins, ends) != (outer_begins, outer_ends)


def one_of(dates: Sequence[Edtf]) -> Edtf | None:
    """One date that says “one of these”: a set (EDTF level 2, `[1931,1932]`), the earliest first.

    Where a set cannot hold them, all days from the first to the last; None where there is no first or no last.
    """
    in_order = sorted(dates, key=lambda date: (date.earliest is not None, date.earliest or (0, 0, 0)))
    members = dict.fromkeys(_member(date) for date in in_order)
    earliest = [date.earliest for date in dates]
    latest = [date.latest for date in dates]
    days = f"[{min(filter(None, earliest))}..{max(filter(None, latest))}]" if None not in (*earliest, *latest) else ""
    for text in (f"[{','.join(members)}]", days):
        try:
            return standard.parse(text)
        except TextFault:
            continue
    return None


def _member(date: Edtf) -> str:
    """A date as a member of a set: an interval with two dots, a set without its brackets."""
    if date.kind != "interval":
        return date.text.strip("[]")
    return "..".join(side.strip(".") for side in date.text.split("/"))


def doubted(date: Edtf) -> Edtf | None:
    """The date marked as uncertain (`1931?`); None where a mark at its end would not be of all of it."""
    if date.kind != "date" or date.qualified:
        return None
    try:
        return standard.parse(f"{date.text}?")
    except TextFault:
        return None

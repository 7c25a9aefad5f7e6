"""Forms that hold other dates: spans, either-or, before and after, near a feast, by an age or an event."""

import re
from dataclasses import replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import from_number
from boxlore.core.dates.context import DateContext, MaybeProposed, Proposed, ReadPart
from boxlore.core.dates.edtf_values import Day, Edtf
from boxlore.core.dates.single import number as number_of
from boxlore.core.dates.single import single
from boxlore.core.dates.words import SEASON_OF, spoken_number
from boxlore.core.dates.words_table import WARS


def span(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    first, last = match["first"], match["last"]
    if len(last) == 2:
        last = first[:2] + last
    if int(last) < int(first):
        return None
    return Proposed(f"{first}/{last}")


def two_years(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """1648/49: a dual year of the old English calendar, or a span.

    The last dual year is 1750/51: 1752 began on 1 January (Calendar (New Style) Act 1750, 24 Geo. 2 c. 23, s. 1).
    """
    first, last = int(match["first"]), match["last"]
    following = first + 1
    if str(following)[-len(last) :] != last:
        return span(match, context, read) if len(last) == 2 else None
    if first > 1750:
        return Proposed(f"{first}/{following}")
    return Proposed(f"[{first},{following}]", "A dual year: old or new style?", (str(first), str(following)))


def between(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return joined(match, context, read, "[{}..{}]")


def from_to(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return joined(match, context, read, "{}/{}")


def joined(match: re.Match[str], context: DateContext, read: ReadPart, shape: str) -> MaybeProposed:
    last = read(match["last"], context)
    first = read(completed(match["first"], match["last"]), context)
    if first is None or last is None or not first.edtf or not last.edtf:
        return None
    one, other = end(first.edtf, last=False), end(last.edtf, last=True)
    if not one or not other:
        return None
    if len(one) != len(other):
        shape = "{}/{}"  # GEDCOM's BET of two precisions; a set would claim the coarser one's finest
    return Proposed(shape.format(one, other), first.ask or last.ask)


def completed(first: str, last: str) -> str:
    """`June` beside `July 1952` is June 1952; `3` beside `5 June 1952` is 3 June 1952."""
    if re.search(r"\d{4}|'\d\d", first):
        return first
    if re.fullmatch(r"\d{1,2}", first) and (rest := re.fullmatch(r"\d{1,2}( .+)", last)):
        return first + rest[1]
    year = re.search(r"(\d{4}|'\d\d)\s*$", last)
    return f"{first} {year[1]}" if year else first


def end(edtf: str, *, last: bool) -> str:
    """One end of a range as one date: of a range of its own, the outer end."""
    if edtf[0] in "[{":
        return ""
    if "/" in edtf:
        edtf = edtf.split("/")[1 if last else 0]
    return edtf if edtf not in ("", "..") else ""


def either(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    first, last = match["first"], match["last"]
    if re.fullmatch(r"\d{4}", first) and re.fullmatch(r"'?\d\d", last):
        last = first[:2] + last.lstrip("'")
    elif re.fullmatch(r"\d{4}", first) and re.fullmatch(r"\d", last):
        last = first[:3] + last
    one, other = read(completed(first, last), context), read(last, context)
    if one is None or other is None or not one.edtf or not other.edtf:
        return None
    if any(part[0] in "[{" or "/" in part for part in (one.edtf, other.edtf)):
        return None
    return Proposed(f"[{one.edtf},{other.edtf}]", one.ask or other.ask)


def before(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    if inner is None or not inner.edtf:
        return None
    edge = end(inner.edtf, last=False)
    return replace(inner, edtf=f"[..{edge}]", alternatives=()) if edge else None


def after(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    if inner is None or not inner.edtf:
        return None
    edge = end(inner.edtf, last=True)
    return replace(inner, edtf=f"[{edge}..]", alternatives=()) if edge else None


def gedcom_from(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """`from 1900` is open towards us; from a decade or a summer only says when it is from."""
    inner = read(match["rest"], context)
    if inner and not re.fullmatch(r"-?\d{4}(-\d\d){0,2}", inner.edtf):
        return inner
    return Proposed(f"{inner.edtf}/..", inner.ask) if inner and inner.edtf and "/" not in inner.edtf else None


def gedcom_to(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    return Proposed(f"../{inner.edtf}", inner.ask) if inner and inner.edtf and "/" not in inner.edtf else None


def limited(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """`the thirties, not after 1936`: the part of the first that the limit leaves."""
    inner, limit = read(match["rest"], context), read(match["limit"], context)
    if inner is None or limit is None or not inner.edtf or not limit.edtf:
        return None
    whole, edge = standard.parse(inner.edtf), standard.parse(limit.edtf)
    first, last = whole.earliest, whole.latest
    if first is None or last is None or edge.earliest is None or edge.latest is None:
        return None
    if match["side"] in ("after", "later than"):
        last = min(last, edge.latest)
    else:
        first = max(first, edge.earliest)
    if first > last:
        return Proposed("", "These two limits leave no day. Which is right?")
    return Proposed(f"[{short(first, start=True)}..{short(last, start=False)}]", inner.ask)


def short(day: Day, *, start: bool) -> str:
    edge = (1, 1) if start else (12, 31)
    return f"{day.year:04d}" if (day.month, day.day) == edge else str(day)


def near_holiday(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    if inner is None or not re.fullmatch(r"\d{4}-\d\d-\d\d", inner.edtf):
        return None
    unit, count = match["unit"], match["count"]
    days = {"day": 1, "week": 7, "month": 30}[unit]
    sign = -1 if match["side"] == "before" else 1
    centre = number_of(single(inner.edtf))
    if count in ("the", "a", "one", "") or count is None:
        near, far = 1 * sign, days * sign
    elif count in ("a few", "some", "several"):
        near, far = 2 * sign, days * 6 * sign
    else:
        near = far = days * sign * int(count)
    first, last = sorted((from_number(centre + near), from_number(centre + far)))
    ask = inner.ask
    if unit == "day" and first == last:
        return Proposed(str(first), ask)
    return Proposed(f"[{first}..{last}]", ask)


def war(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """`before the war`: which one is asked, with what each would come to."""
    shape = {"before": "[..{first}]", "after": "[{last}..]", "since": "[{last}..]"}.get(match["side"], "{first}/{last}")
    made = [shape.format(first=one[:7], last=one[-7:]) for one in WARS[match["war"]]]
    return Proposed(made[0]) if len(made) == 1 else Proposed("", "Which war?", tuple(made))


def age(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """`when Ruth was five`: reckoned from her birth, about that year."""
    years = spoken_number(match["age"])
    if years < 0:
        return None
    name = match["name"].strip()
    born = context.births.get(name)
    if born is None:
        return Proposed("", f"When was {name.title()} born?")
    day = standard.parse(born).earliest
    return Proposed(f"{day.year + years}~") if day else None


_SHIFT = {"before": -1, "after": 1, "of": 0, "": 0}


def event(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """`the year after the wedding`: from the event's own date; asked for where that is not known."""
    name = match["event"].strip()
    told = context.events.get(name) or context.events.get(f"the {name}")
    if told is not None:
        return around(standard.parse(told), match["unit"] or "", _SHIFT[match["side"] or ""])
    if name.removeprefix("the ") in WARS:
        return Proposed("", "Which war?" if len(WARS[name.removeprefix("the ")]) > 1 else "When exactly?")
    return Proposed("", f"When was {name}?") if match["unit"] else None


def around(edtf: Edtf, unit: str, shift: int) -> MaybeProposed:
    day = edtf.earliest
    if day is None:
        return None
    if unit in ("year", "") or not re.fullmatch(r"\d{4}-\d\d-\d\d", edtf.text):
        return Proposed(f"{day.year + shift}~" if unit else edtf.text)
    if unit in ("summer", "spring", "autumn", "winter"):
        return Proposed(f"{day.year}-{SEASON_OF[unit]}~")
    if unit == "month":
        month = day.year * 12 + day.month - 1 + shift
        return Proposed(f"{month // 12:04d}-{month % 12 + 1:02d}~")
    return Proposed(f"{from_number(number_of(day) + 7 * shift)}~")

"""Numbers told as words: `nineteen thirty-eight`, `nineteen oh five`, `tuhat üheksasada kolmkümmend`, `twenty-first`.

A year is told as two numbers (`nineteen forty`), with hundreds (`nineteen hundred and five`) or with thousands. Two
numbers below fifteen hundred are a time of day (`ten thirty`), and no year.
"""

from boxlore.core.dates.lexicon import Node, Sense, number_words

JOINS = frozenset(("and", "und", "en", "og", "och", "y", "e", "et", "ja", "-", "i"))
Piece = tuple[str, str | None, int, int]


def spoken(pieces: list[Piece], at: int, root: Node) -> tuple[tuple[Sense, ...], int] | None:
    """The number that begins at a piece, as senses, and the piece after it; None if there is none.

    number  = value *( [ join ] value )        value = a word of the table of numbers, or several written as one
    """
    total = current = 0
    count, following, ordinal, pair, languages = 0, at, False, False, -1
    joined, last = False, at
    while following < len(pieces) and not ordinal:
        parsed = _value(pieces, following, root)
        if parsed is None:
            if count and pieces[following][0] in JOINS and following - last < 3:
                joined, following = True, following + 1
                continue
            break
        values, is_ordinal, after, bits = parsed
        if count and not languages & bits:
            break
        state = _added(total, current, values, count, joined)
        if state is None:
            break
        total, current, paired = state
        pair, count, ordinal, joined, following = pair or paired, count + 1, is_ordinal, False, after
        languages &= bits
        last = following
    if not count:
        return None
    value = total + current
    if value >= 1000:
        return (Sense("year", f"{value:04d}", languages),) if 1500 <= value <= 2099 else (Sense("name"),), last
    if value > 100 or (pair and value < 1500):
        return None
    if value == 0:
        return None
    return (Sense("ordinal" if ordinal else "day", value if ordinal else (value, 0), languages),), last


def _value(pieces: list[Piece], at: int, root: Node) -> tuple[list[int], bool, int, int] | None:
    """The values of one word (several if it is a compound), whether it is an ordinal, the piece after it, languages."""
    word = pieces[at][0]
    node, best, best_at = root.following.get(word), None, at
    following = at + 1
    while node is not None:
        for sense in node.senses:
            if sense.kind in ("number", "ordinal_word"):
                best, best_at = sense, following
        if following >= len(pieces):
            break
        node = node.following.get(pieces[following][0])
        following += 1
    if best is not None:
        return [int(str(best.value))], best.kind == "ordinal_word", best_at, best.languages
    if pieces[at][1] == "word" and len(word) > 8 and (values := _taken_apart(word)):
        return values, False, at + 1, -1
    return None


def _taken_apart(word: str) -> list[int]:
    """The numbers of which a word is made (`fünfundvierzig` → 5, 45 is told by 5, 40); none if something is left
    over."""
    table = number_words()
    if word in table:
        return [table[word]]
    for size in range(len(word) - 1, 2, -1):
        if word[:size] in table:
            rest = word[size:]
            for join in ("und", "en", "og", "ën", ""):
                if join and not rest.startswith(join):
                    continue
                if values := _taken_apart(rest.removeprefix(join)):
                    return [table[word[:size]], *values]
    return []


def _added(total: int, current: int, values: list[int], count: int, joined: bool) -> tuple[int, int, bool] | None:
    """The sum with further values, and whether they made a year of two numbers; None where they do not go on from
    it."""
    pair = False
    for value in values:
        under = current % 100
        if value == 1000:
            total, current = total + max(current, 1) * 1000, 0
        elif value == 100:
            if current > 20:
                return None
            current = max(current, 1) * 100
        elif value >= 200:
            current += value
        elif not count and not current and not total:
            current = value
        elif value == 0 and 15 <= current <= 20:
            current, pair = current * 100, True
        elif value < 10 and current % 10 == 0 and (under >= 20 or under == 0) and value:
            current += value
        elif value >= 20 and value % 10 == 0 and 0 < under < 10:
            current += value  # the unit stands first: fünfundvierzig
        elif value >= 10 and under == 0 and (current or total):
            current += value
        elif 10 <= value < 20 and under in (60, 80):
            current += value  # soixante-quinze
        elif 15 <= current <= 20 and value >= 10 and not total:
            current, pair = current * 100 + value, True
        else:
            return None
        count = 1
    return total, current, pair

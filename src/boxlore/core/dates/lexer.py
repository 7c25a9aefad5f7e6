"""Text → tokens, each with every sense that it may have: the first of the three steps of reading a date.

The text is cut into pieces (`core.dates.pieces`). Words walk the trie of `core.dates.lexicon`, the longest entry is
taken; digits get the senses that their form allows; numbers told as words become numbers. What is in no table is a
`name`: only a relative date (“the year after …”) has a use for it, so that no word is ever passed over.
"""

import re
import unicodedata
from collections.abc import Container
from dataclasses import dataclass

from boxlore.core.dates import lexicon
from boxlore.core.dates.lexicon import BY_NEIGHBOURS, ENGLISH_ORDINALS, POSTMARK_MONTHS, ROMAN, Node, Sense
from boxlore.core.dates.numbers_in_digits import (
    PLAIN_NUMBERS,
    ROMAN_YEAR,
    compound,
    numeral,
    roman_number,
    year_ending,
)
from boxlore.core.dates.numbers_in_words import number_and_ending, spoken
from boxlore.core.dates.pieces import Piece, normal, pieces_of
from boxlore.core.dates.wars_table import SPAN_NAMES

Senses = tuple[Sense, ...]


@dataclass(slots=True)
class Token:
    """Senses, and where the token stands in the text as it was told. It is not frozen, since it is made of every word:
    a frozen one takes four times as long."""

    senses: Senses
    start: int
    end: int

    @property
    def kinds(self) -> set[str]:
        """The kinds of words that it may be."""
        return {sense.kind for sense in self.senses}

    def is_any(self, kinds: frozenset[str]) -> bool:
        """Whether it may be a word of one of these kinds."""
        for sense in self.senses:  # noqa: SIM110  # a generator costs twice as much, of every word
            if sense.kind in kinds:
                return True
        return False


SIGNS: dict[str, Senses | None] = {
    ",": (Sense("comma"),), ";": (Sense("comma"),), "-": (Sense("dash"),), "/": (Sense("slash"),),
    "?": (Sense("query"),), "&": (Sense("and"),), "+": (Sense("and"),), "~": (Sense("about"), Sense("about_behind")),
    "±": (Sense("about"), Sense("about_behind")), "≈": (Sense("about"), Sense("about_behind")),
    "<": (Sense("before"),), ">": (Sense("after"),),
    "%": (Sense("measured"),),
    "£": (Sense("numbered"),), "$": (Sense("numbered"),), "€": (Sense("numbered"),), "№": (Sense("numbered"),),
} | dict.fromkeys(".'\"()[]:!•·*|…#^@", None)  # fmt: skip
"""What a sign means between dates; None is passed over."""

_JOINTS = (".", "-")
"""Signs that may stand within an entry, told or not."""

_YEAR_AND_DAY = re.compile(r"(\d{4}) ?([-/]) ?(\d{1,2})")
"""`31 Dec 1938/1 Jan 1939`: before a month the second number is a day."""
_DAYS_AND_YEAR = re.compile(r"(\d{1,2})(?: ?([-/]) ?(\d{1,2}))? ?[ ,/] ?('?\d{4}|'?\d\d)")
"""`Dec. 25/26 1948`: behind a month these are days and a year."""

_NAME = (Sense("name"),)
_CLOCK = (Sense("clock"),)
_HOURS = re.compile(r"0\d[0-5]\d")
_GENITIVE = (Sense("genitive"),)
_BRACKETS = {"(": ")", "[": "]"}


def lex(text: str, own: Node | None = None) -> list[Token]:
    """The tokens of a text. `own` is a trie of names that the family has told dates for. Text must be in form NFC."""
    words = normal(text)
    pieces = pieces_of(words)
    tokens: list[Token] = []
    root, at, count = lexicon.trie(), 0, len(pieces)
    named = own.following if own is not None else ()
    while (at := _simple(tokens, pieces, at, root, named)) < count:
        if (behind := _by_neighbours(tokens, pieces, at, text, words)) > at:
            at = behind
            continue
        piece, group, start, _ = told = pieces[at]
        entry, following = (_NOTHING, at) if own is None else _longest(own, pieces, at)
        senses: Senses | None
        if entry.senses and not _is_month_here(pieces, at, text, following):
            senses, at = entry.senses, following
        elif group == "sign":
            senses, at = _sign(tokens, pieces, at, words, root)
        elif group == "numeral":
            senses, at = _numeral(tokens, pieces, at, root), at + 1
        elif piece == "s" and words[start - 1 : start] == "'" and words[start - 2 : start - 1].isalpha():
            senses, at = _GENITIVE, at + 1
        else:
            senses, at = _word_or_number(words, text, pieces, at, root)
        if senses is None:
            continue
        end = pieces[at - 1][3]
        if senses is _NAME and group == "word":
            senses = _by_its_ending(tokens, told, end, root)
        _append(tokens, senses, start, end)
    return tokens


def _is_numbered(tokens: list[Token], pieces: list[Piece], at: int) -> bool:
    """“No. 1936”, “12 May 1938 no 3”: whether a number stands behind “no”; without a full stop one of three digits at
    most, behind a date."""
    if at + 1 < len(pieces) and pieces[at + 1][0] == ".":
        return at + 2 < len(pieces) and pieces[at + 2][1] == "digits"
    is_number = at + 1 < len(pieces) and pieces[at + 1][1] == "digits" and len(pieces[at + 1][0]) < len("1938")
    return is_number and bool(tokens) and tokens[-1].is_any(_BEFORE_A_NUMBER)


_BEFORE_A_NUMBER = frozenset(("month", "year", "short", "dates"))


_SMALL_O = frozenset("ºª")
_BEFORE_A_CORRECTION = frozenset(("comma", "dash", "query", "correction"))


def _by_neighbours(tokens: list[Token], pieces: list[Piece], at: int, text: str, words: str) -> int:
    """Add the tokens of a piece that is what it is by what stands beside it, whatever the family calls so. Returns the
    place behind it; `at` for any other piece."""
    piece, group, start, end = pieces[at]
    if len(piece) == 2 and piece in POSTMARK_MONTHS and (month := _of_postmark(pieces, at, text)):
        tokens.append(Token(month, start, end))
        return at + 1
    if group == "digits" and piece in ("18", "19") and (end_of_year := _rest_of_year(tokens, pieces, at)):
        tokens.append(Token((Sense("year", piece + end_of_year[0]),), start, end_of_year[3]))  # “8 Dec 19 38”
        return at + 2
    if group == "digits" and len(piece) == 4:
        if piece[0] == "0" and _HOURS.fullmatch(piece):
            tokens.append(Token(_CLOCK, start, end))  # a postmark's 0915; no picture is of the year 915
            return at + 1
        if at + 1 < len(pieces) and pieces[at + 1][2] == end and (ending := year_ending(words, piece, end)):
            said, last = ending  # before the year, as other languages have it
            tokens += (Token(said, start, last), Token((Sense("year", piece),), start, last))
            at += 1
            while at < len(pieces) and pieces[at][2] < last:
                at += 1
            return at
    if piece in ENGLISH_ORDINALS and tokens and (nth := _ordinal_before(tokens[-1], piece, words)):
        tokens[-1] = Token((nth,), tokens[-1].start, end)  # “12 th June”
        return at + 1
    if (
        piece == "no"
        and (not tokens or tokens[-1].senses[0].kind not in _BEFORE_A_CORRECTION)
        and _is_numbered(tokens, pieces, at)
    ):
        tokens.append(Token((Sense("numbered"),), start, end))  # “No. 1936”
        return at + 1
    if piece in _SMALL_O and tokens and tokens[-1].senses[0].kind == "month":
        return at + 1  # “Dez.º”
    return at


def _sign(tokens: list[Token], pieces: list[Piece], at: int, words: str, root: Node) -> tuple[Senses | None, int]:
    """What a sign says, None for one that is passed over, and the place behind it."""
    piece = pieces[at][0]
    at += 1
    if piece == "(" and tokens:
        if _is_doubt(pieces, at, root) or _is_month_of_season(tokens, pieces, at, root):
            return SIGNS[","], at  # “1938 (maybe 1939)”
        if _is_another_day(pieces, at) or _is_another_date(tokens, pieces, at, root):
            return SIGNS["/"], at  # “11 (24) June 1912”, “10 April (23 April) 1905”
    elif piece == "-" and (short := _short_year(pieces, at, words)):
        return short, at + 1
    elif piece == "#" and at < len(pieces) and pieces[at][1] == "digits":
        return (Sense("numbered"),), at  # “May 1938 #3”
    return SIGNS.get(piece, _NAME), at


def _numeral(tokens: list[Token], pieces: list[Piece], at: int, root: Node) -> Senses | None:
    """What numbers written together say; None where the months beside them tell them apart, and tokens are added."""
    piece, _, start, end = pieces[at]
    if _between_months(tokens, pieces, at + 1, root) and (apart := _YEAR_AND_DAY.fullmatch(piece)):
        year, sign, day = apart.groups()
        told = [(Sense("year", year),), SIGNS[sign] or (), (Sense("day", (int(day), len(day))),)]
    elif _is_of_month(tokens) and (days := _DAYS_AND_YEAR.fullmatch(piece)):
        told = _days_and_year(*days.groups())
    else:
        return compound(piece)
    tokens += [Token(senses, start, end) for senses in told]
    return None


def _by_its_ending(tokens: list[Token], word: Piece, last: int, root: Node) -> Senses:
    """What a word in no table is by its ending: a number, or a month, a season or a feast, with a token more for what
    the ending says (`1914-től`, `januárjától`); a name where it has none. `last` is where its token ends."""
    piece, _, start, end = word
    if parted := number_and_ending(piece):
        tokens += [Token((sense,), start, last) for sense in parted[:-1]]
        return (parted[-1],)
    inflected = _inflected(piece, root)
    if inflected is None:
        return _NAME
    case, senses = inflected
    if case.kind != "noise":  # “1938 januárjától”: the year is of the month
        is_of_month = bool(tokens) and tokens[-1].senses[0].kind in _OF_THE_MONTH.get(case.kind, ("year",))
        tokens.insert(len(tokens) - is_of_month, Token((case,), start, end))
    return senses


def _rest_of_year(tokens: list[Token], pieces: list[Piece], at: int) -> Piece | None:
    """The last two digits of a year that is written apart, behind a day and a month: `8 Dec 19 38`."""
    behind = [token.kinds for token in tokens[-2:]]
    if len(behind) < 2 or "month" not in behind[1] or not behind[0] & {"day", "ordinal"} or at + 1 >= len(pieces):
        return None
    following = pieces[at + 1]
    return following if following[1] == "digits" and len(following[0]) == 2 else None


def _ordinal_before(token: Token, ending: str, words: str) -> Sense | None:
    """The number before an English ending as an ordinal; “5 St Mary's Road” has none."""
    (sense, *others) = token.senses
    if others or sense.kind != "day" or not words[token.start].isdigit():
        return None
    value = sense.value[0]  # type: ignore[index]  # a number and its count of digits
    fits = {"st": 1, "nd": 2, "rd": 3}.get(ending, 0) in (0, value % 10)
    return Sense("ordinal", value) if fits else None


def _append(tokens: list[Token], senses: Senses, start: int, end: int) -> None:
    """Add a token; “prewar” is two, “before” and the war."""
    if senses and senses[0].kind == "beside_war":
        tokens.append(Token((Sense(str(senses[0].value)),), start, end))
        senses = (Sense("span", SPAN_NAMES["war"]),)
    tokens.append(Token(senses, start, end))


_INFLECTED = frozenset(("month", "season", "feast", "weekday"))
_OF_THE_MONTH = dict.fromkeys(("from", "until"), ("year", "day", "ordinal"))
"""What stands before a month and goes with it: “18. märtsist”, “1938 januárjától”."""
_SHORTEST_STEM, _LONG_ENDING = 3, 4
"""A stem of three letters has only a long ending: “Maihälfte”."""


def _inflected(word: str, root: Node) -> tuple[Sense, Senses] | None:
    """What the ending of a month, a season or a feast says (`januárjától`, `märtsini`), and the word's own senses."""
    longest, rows = lexicon.case_endings()
    for length in range(min(longest, len(word) - _SHORTEST_STEM), 0, -1):
        if len(word) - length == _SHORTEST_STEM and length < _LONG_ENDING:
            break
        node = root.following.get(word[:-length])
        senses = [sense for sense in node.senses if sense.kind in _INFLECTED] if node else []
        for case in rows.get(word[-length:], ()) if senses else ():
            if own := tuple(sense for sense in senses if sense.languages & case.languages):
                return case, own
    return None


_OF_DAYS = frozenset(("day", "ordinal", "slash", "comma", "dash", "and", "or"))


def _is_of_month(tokens: list[Token]) -> bool:
    """Whether a month stands before a numeral, with no number before it that may be its day: `June 3/4/5 1950`."""
    at = len(tokens) - 1
    while at > 0 and tokens[at].senses[0].kind in _OF_DAYS:
        at -= 1
    if at < 0 or all(sense.kind != "month" for sense in tokens[at].senses):
        return False
    return at == 0 or tokens[at - 1].senses[0].kind not in ("day", "ordinal", "year", "short")


def _days_and_year(day: str, sign: str | None, last: str | None, year: str) -> list[Senses]:
    whole = year.lstrip("'")
    told: list[Senses] = [(Sense("day", (int(day), len(day))),)]
    if sign and last:
        told += [SIGNS[sign] or (), (Sense("day", (int(last), len(last))),)]
    return [*told, (Sense("year" if len(whole) == 4 else "short", whole),)]


def _between_months(tokens: list[Token], pieces: list[Piece], at: int, root: Node) -> bool:
    """Whether a month stands before and after a numeral."""
    if at >= len(pieces) or not tokens or all(sense.kind != "month" for sense in tokens[-1].senses):
        return False
    node = root.following.get(pieces[at][0])
    return node is not None and any(sense.kind == "month" for sense in node.senses)


def _is_month_here(pieces: list[Piece], at: int, text: str, following: int) -> bool:
    """Whether a word that is somebody's name too is a month: it stands beside a number (“August 1938 in the garden”),
    or is written small (“1938. a. august”)."""
    node = lexicon.trie().following.get(pieces[at][0])
    if following != at + 1 or node is None or all(sense.kind != "month" for sense in node.senses):
        return False
    if text[pieces[at][2]].islower():
        return True
    before, behind = (pieces[place][0] if 0 <= place < len(pieces) else "" for place in (at - 1, at + 1))
    return (before.isdigit() and len(before) in (1, 2, 4)) or (behind.isdigit() and len(behind) == len("1938"))


def _is_doubt(pieces: list[Piece], at: int, root: Node) -> bool:
    """Whether words of doubt begin at a piece."""
    return any(sense.kind == "doubt" for sense in _longest(root, pieces, at)[0].senses)


def _is_month_of_season(tokens: list[Token], pieces: list[Piece], at: int, root: Node) -> bool:
    """“Spring ’48 (April?)”: a month alone in brackets behind a season and its year."""
    behind = [token.senses[0].kind for token in tokens[-2:]]
    if behind[:1] != ["season"] or behind[-1] not in ("year", "short"):
        return False
    node, last = _longest(root, pieces, at)
    return any(sense.kind == "month" for sense in node.senses) and last < len(pieces) and pieces[last][0] in ")?"


def _is_another_day(pieces: list[Piece], at: int) -> bool:
    """Whether a number stands alone in brackets, behind a number: a day in two calendars."""
    inside = [piece[1] if piece[1] == "digits" else piece[0] for piece in (pieces[at - 2], *pieces[at : at + 2])]
    return inside == ["digits", "digits", ")"] and len(pieces[at - 2][0]) < 3


def _is_another_date(tokens: list[Token], pieces: list[Piece], at: int, root: Node) -> bool:
    """Whether a day and a month stand alone in brackets, behind a month: the same day in another calendar."""
    if not any(sense.kind == "month" for sense in tokens[-1].senses):
        return False
    inside = [piece for piece in pieces[at : at + 5] if piece[0] != "."][:3]
    if [piece[1] for piece in inside] != ["digits", "word", "sign"] or inside[2][0] != ")":
        return False
    node = root.following.get(inside[1][0])
    return node is not None and any(sense.kind == "month" for sense in node.senses)


def _short_year(pieces: list[Piece], at: int, words: str) -> Senses | None:
    """`sommaren -25`, as it is written in the north: two digits behind a dash that stands with them, after a word."""
    if at < 2 or at == len(pieces) or pieces[at - 2][1] != "word" or words[pieces[at - 1][2] - 1] != " ":
        return None
    piece, group, start, _ = pieces[at]
    if group != "digits" or len(piece) != 2 or start != pieces[at - 1][3]:
        return None
    return (Sense("short", piece),)


_BY_WHAT_FOLLOWS = ("(", "-", "#")
"""Signs that say by what stands behind them what they are."""
_NO_PIECE: Piece = ("", None, -1, -1)


def _simple(tokens: list[Token], pieces: list[Piece], at: int, root: Node, named: Container[str]) -> int:
    """Add the tokens of pieces from here on whose senses hang on nothing beside them, as those of most do: of words
    and longer entries, of a year and of a day or a short year with no ending, of signs.
    Returns the place of the first other piece; a piece that is `named` by the family is one."""
    count = len(pieces)
    while at < count:
        piece, group, start, end = pieces[at]
        if piece in named:
            break
        if group == "sign":
            if piece in _BY_WHAT_FOLLOWS:
                break
            if senses := SIGNS.get(piece, _NAME):
                tokens.append(Token(senses, start, end))
            at += 1
            continue
        beside, _, begin, _ = pieces[at + 1] if at + 1 < count else _NO_PIECE
        node = root.following.get(piece)
        following = at + 1
        if node and beside in _JOINTS:
            break
        if group == "word":
            if node and beside in node.following:
                node, following = _longest(root, pieces, at)
                if piece in BY_NEIGHBOURS:
                    break
                end = pieces[following - 1][3]
            senses = node.senses if node and node.alone else None
        elif node and (node.senses or beside in node.following):
            break
        elif begin == end and beside != "," and (beside != "." or piece[-1] == "0"):
            break  # an ending may follow, of decades also behind a full stop
        else:
            senses = PLAIN_NUMBERS.get(piece)
        if not senses:
            break
        tokens.append(Token(senses, start, end))
        at = following
    return at


def _word_or_number(words: str, text: str, pieces: list[Piece], at: int, root: Node) -> tuple[Senses, int]:
    piece, group, start, end = pieces[at]
    entry, following = _longest(root, pieces, at)
    senses = entry.senses
    if group == "digits":
        if senses:
            return senses, following
        senses, last = numeral(words, piece, start, end)
        at += 1
        while at < len(pieces) and pieces[at][2] < last:  # an ending belongs to the number
            at += 1
        return senses, at
    if entry.alone and following > at + 1:
        return senses, following
    if group == "word" and (month := _first_of_two_months(pieces, at, root)):
        return month
    if following == at + 1 < len(pieces) and pieces[following][0] == "." and (short := _months_of(senses)):
        return short, following  # “août ou sept. 1947”: no seven has a full stop
    number = spoken(pieces, at, root) if _may_be_number(senses, piece) else None
    if number is not None and (number[1] > following or not senses or _counts(senses)):
        value, following = number
        others = tuple(sense for sense in senses if sense.kind not in ("number", "ordinal_word"))
        return ((*others, *value) if following == at + 1 or not others else value), following
    if any(sense.kind in ("number", "ordinal_word") for sense in senses):
        senses = tuple(sense for sense in senses if sense.kind not in ("number", "ordinal_word"))
    if not senses and ROMAN_YEAR.fullmatch(text, start, end):
        return (Sense("year", str(roman_number(piece))),), following
    roman = ROMAN.get(piece) or ROMAN.get(piece.removesuffix("e"))
    upper = text[start:end].isupper() and (len(piece) > 1 or piece != "i" or _is_one(pieces, at, root))
    if roman and following == at + 1 and (roman > 12 or upper or _between_day_and_year(pieces, at)):
        senses = (*senses, Sense("roman", roman))
        if roman >= _FIRST_CENTURY and piece.endswith("e"):
            senses = (*senses, Sense("year", f"{roman - 1}XX"))  # “fin XIXe”
    return senses or _NAME, following


_FIRST_CENTURY = 15
"""A Roman numeral with the French ending is a century from here on, where no other word follows it."""


def _months_of(senses: Senses) -> Senses:
    return tuple(sense for sense in senses if sense.kind == "month")


def _counts(senses: Senses) -> bool:
    """Whether a word is a number, and cannot be passed over in its own language, as the one of “one Sunday in June” can
    (“dos” is two in Spanish, and passed over in French)."""
    numbers = passed_over = 0
    for sense in senses:
        numbers |= sense.languages if sense.kind in ("number", "ordinal_word") else 0
        passed_over |= sense.languages if sense.kind == "noise" else 0
    return numbers & ~passed_over != 0


def _of_postmark(pieces: list[Piece], at: int, text: str) -> Senses | None:
    """`3 JY 1911`, `JY 3 11`: two capital letters with numbers about them are a month."""
    piece, _, start, end = pieces[at]
    month = POSTMARK_MONTHS.get(piece)
    if month is None or not text[start:end].isupper():
        return None
    about = [pieces[beside][1] if 0 <= beside < len(pieces) else "" for beside in (at - 1, at + 1, at + 2)]
    between = about[:2] == ["digits", "digits"] and len(pieces[at - 1][0]) < 3
    before = about[1:] == ["digits", "digits"] and len(pieces[at + 1][0]) < 3
    return (Sense("month", month),) if between or before else None


_SHARED_END = "kuu"
"""What two Finnish months share: `kesä-heinäkuussa`, `kesä- ja heinäkuu`."""


def _first_of_two_months(pieces: list[Piece], at: int, root: Node) -> tuple[Senses, int] | None:
    if at + 2 >= len(pieces) or pieces[at + 1][0] != "-":
        return None
    joined = pieces[at + 2][0] == "ja"
    last = pieces[at + 3][0] if joined and at + 3 < len(pieces) else pieces[at + 2][0]
    month = root.following.get(pieces[at][0] + _SHARED_END) if _SHARED_END in last else None
    return (month.senses, at + 1 + joined) if month else None


def _is_one(pieces: list[Piece], at: int, root: Node) -> bool:
    """Whether a lone I is a number: January, or before a half (“XX saj. I pool”)."""
    following = next((piece[0] for piece in pieces[at + 1 : at + 3] if piece[0] != "."), "")
    node = root.following.get(following)
    return _is_january(pieces, at) or (node is not None and any(sense.kind == "fraction" for sense in node.senses))


def _is_january(pieces: list[Piece], at: int) -> bool:
    """Whether a lone I stands between numbers: in “1938 when I was seven” it is a word."""
    beside = []
    for step in (-1, 1):
        place = at + step
        while 0 <= place < len(pieces) and pieces[place][0] in (".", "/", "-", "'"):
            place += step
        beside.append(0 <= place < len(pieces) and pieces[place][0].isdigit())
    return all(beside)


def _between_day_and_year(pieces: list[Piece], at: int) -> bool:
    """`12 vi 1926`: small Roman numerals are a month only between a day and a year."""
    if at == 0 or at + 1 == len(pieces) or len(pieces[at][0]) == 1:
        return False  # “12 x 1938” may be a size
    day, year = pieces[at - 1], pieces[at + 1]
    whole = len(year[0]) == 4 or (len(year[0]) == 2 and year[0] > "31")  # “16 ix 41”
    return day[1] == year[1] == "digits" and len(day[0]) < 3 and whole


def _may_be_number(senses: Senses, piece: str) -> bool:
    if not senses:
        return len(piece) > 2
    return any(sense.kind in ("number", "ordinal_word") for sense in senses)


_NOTHING = Node()


def _longest(root: Node, pieces: list[Piece], at: int) -> tuple[Node, int]:
    """The longest entry that begins here, and the piece after it; one without senses where none does, also behind the
    last piece. Full stops within may be told or not."""
    count = len(pieces)
    node = root.following.get(pieces[at][0]) if at < count else None
    at += 1
    best = _NOTHING, at
    while node is not None:
        if node.senses:
            best = node, at
        if at == count or not node.following:
            break
        piece = pieces[at][0]
        following = node.following.get(piece)
        if following is None and piece in _JOINTS and at + 1 < count:
            at += 1
            following = node.following.get(pieces[at][0])
        node = following
        at += 1
    return best


def balanced(text: str) -> bool:
    """Whether every bracket is closed."""
    if not ("(" in text or "[" in text or ")" in text or "]" in text):
        return True  # most
    open_brackets: list[str] = []
    for letter in text:
        if letter in _BRACKETS:
            open_brackets.append(_BRACKETS[letter])
        elif letter in ")]" and (not open_brackets or open_brackets.pop() != letter):
            return False
    return not open_brackets


def nfc(text: str) -> str:
    """The text in one normal form of Unicode."""
    return text if text.isascii() else unicodedata.normalize("NFC", text)

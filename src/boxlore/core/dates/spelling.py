"""Words of dates that are spelled with a slip: “Septmber 1938”, “chrismas 1938”. What is found is only ever
asked about.

A slip is one letter left out, added, changed or exchanged with its neighbour (the four of F. Damerau, *A technique for
computer detection and correction of spelling errors*, 1964). The first letter stands, and the last unless the last two
are exchanged or it is a consonant that is left out (“autum”): so “Mary” is no month.
"""

import itertools
import re
from bisect import bisect_left
from functools import cache, lru_cache

from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import Node, languages_of, trie

FEWEST_LETTERS = 5
"""Shorter words have neighbours everywhere; four letters are enough where two are exchanged (“Juen”)."""

FEWEST_LETTERS_OF_A_MONTH = 6
"""Among other unknown words, so that “Marta” is no month."""

_WITHIN = re.compile(r"(?<=\w)\[(\w+)\]|\[(\w+)\](?=\w)|(?<=\d)\((\d{1,2})\??\)")
_LIKE_A_YEAR = re.compile(r"(?<![\w/.-])[0-9lIiOoQSsBbgqZz|]{4}(?!\w)")
_LIKE_A_DAY = re.compile(
    r"(?<![\w'’])(?:[0-3][Oo]|[12][lI|SZB]|3[lI|]|(?<!0)[lI|Z][0-9]|[OQ][1-9]|[lI]O)(?!(?!(?:st|nd|rd|th)\b)\w)"
)
_HEARD = re.compile(r"(?<![\w.])b4(?=\s)")
_NEW_YEARS_EVE = re.compile(r"\bNYE\b(?! (?:going )?into)")
_AND_A_HALF = re.compile(r"(?<![\d/.])(\d\d?) 1/2(?![\d/])(?!.*\d{3})")
_MIXED = re.compile(r"[0-9O](?:[a-zA-Z|]|(?<=[a-zA-Z|].))")
"""What both have in common, and little else has: a digit, or an O for one, beside a letter. It begins with the signs
that it needs, to pass quickly over the others."""
ORDINAL_O = re.compile(r"\do(?!\w)")
_LOOKALIKES = str.maketrans("lIi|OoQSsBbgqZz", "111100055869922")
_YEAR = re.compile("(?:1[89]|20)[0-9]{2}")


def as_meant(words: str) -> str:
    """The words with what somebody added in brackets within a word (`19[3]8`, `Sep[tember]`, `193(8?)`), and with
    letters that look like digits as digits; the same words where there is neither."""
    return as_typed(_WITHIN.sub(lambda match: match[1] or match[2] or match[3], words))


def as_typed(words: str) -> str:
    """The words with letters that look like digits as digits, in a year (`l938`, `19O8`) and in a day (`3O June`), and
    with a word for a digit that is heard as one (“b4 the war”)."""
    if "b4 " in words:
        words = _HEARD.sub("before", words)
    if "NYE" in words:  # written small it is “new” in Danish
        words = _NEW_YEARS_EVE.sub("New Year's Eve", words)
    if " 1/2" in words:
        words = _AND_A_HALF.sub(r"\1 and a half", words)
    if not _MIXED.search(words):
        return words  # most
    words = _LIKE_LETTERS.sub(lambda match: _LETTERS[match[0]], words)
    days = _LIKE_A_DAY.sub(lambda match: match[0].translate(_LOOKALIKES), words)
    return _LIKE_A_YEAR.sub(_as_digits, days)


_LIKE_LETTERS = re.compile(r"(?<![\w'])0(?=[A-Za-z]{3})|(?<=[A-Za-z])[015](?=[a-z])|(?<=[A-Za-z]{3})[01](?!\w)")
_LETTERS = {"0": "o", "1": "l", "5": "s"}


def _as_digits(match: re.Match[str]) -> str:
    digits = match[0].translate(_LOOKALIKES)
    told = sum(letter.isdigit() for letter in match[0])
    return digits if told > 1 and _YEAR.fullmatch(digits) else match[0]


_VOWELS = "aeiouyäöüõåæø"
_NOT_REPAIRED = frozenset(("noise", "undated", "life", "name", "measured", "numbered", "street"))
"""Kinds of words without which no date is told, and which names are near to."""
_BY_THEMSELVES = frozenset(("month", "weekday", "season", "feast", "feast_day", "span"))
"""Kinds of words that say what they say in whatever language the words beside them are."""


def repairs(tokens: list[Token], words: str) -> list[str]:
    """The text with its one unknown word as each known word that it may be a slip of; none where more is unknown."""
    unknown = [token for token in tokens if token.senses[0].kind == "name"]
    if len(unknown) != 1:
        return []
    start, end = unknown[0].start, unknown[0].end
    slip = words[start:end].lower()
    if not slip.isalpha() or slip in trie().following:
        return []  # a known word is no slip, though it be none of a date
    said = languages_of(sense for token in tokens if token is not unknown[0] for sense in token.senses)
    near = [word for word in _known_words_near(slip) if _goes_with(trie().following[word], said)]
    near = [*near, *_season_within(slip)] or (_begun(slip) if words[end : end + 1] == "." else [])
    return [f"{words[:start]}{word}{words[end:]}" for word in near]


def _goes_with(node: Node, languages: int) -> bool:
    """Whether a word says what stands by itself (a month, a feast), or is of a language of the words beside it: nobody
    slips into another language for “about” (“im Felde” is no Hungarian “felé”)."""
    return not languages or any(
        sense.kind in _BY_THEMSELVES or sense.languages & languages
        for sense in node.senses
        if sense.kind not in _NOT_REPAIRED
    )


def _season_within(word: str) -> list[str]:
    """The season with which a compound ends: “Kriegswinter”, “hungersommer”."""
    if not word.endswith(_seasons()):
        return []  # most
    ending = next(name for name in _seasons() if word.endswith(name))
    first = trie().following.get(word.removesuffix(ending))
    if first is not None and any(sense.kind == "season" for sense in first.senses):
        return []  # “kevättalvi” is between two seasons
    return [ending]


@cache
def _seasons() -> tuple[str, ...]:
    """The words for seasons, the longest first."""
    words = (word for word, node in trie().following.items() if any(sense.kind == "season" for sense in node.senses))
    return tuple(sorted((word for word in words if len(word) >= FEWEST_LETTERS), key=len, reverse=True))


def _begun(short: str) -> list[str]:
    """The words of one meaning that an abbreviation begins (“omstr.”), one for each meaning; none where they are too
    many."""
    if len(short) < FEWEST_LETTERS - 1:
        return []
    meant: dict[object, str] = {}
    words = _in_order()
    at = bisect_left(words, (short, 0))
    begun = itertools.takewhile(lambda row: row[0].startswith(short), itertools.islice(words, at, None))
    for word, _ in sorted(begun, key=lambda row: row[1]):
        sense = trie().following[word].senses[0]
        if sense.kind in _SHORTENED:
            meant.setdefault((sense.kind, sense.value), word)
    return list(meant.values()) if len(meant) <= MOST_MEANT else []


def is_short_for(short: str, kind: str) -> bool:
    """Whether a word of three letters or more begins a known one of a kind: “Fernspr.” is short for a telephone."""
    if len(short) < _FEWEST_OF_A_SHORT_WORD:
        return False
    words = _in_order()
    begun = itertools.islice(words, bisect_left(words, (short, 0)), None)
    longer = itertools.takewhile(lambda row: row[0].startswith(short), begun)
    return any(sense.kind == kind for word, _ in longer for sense in trie().following[word].senses)


_FEWEST_OF_A_SHORT_WORD = 3


@cache
def _in_order() -> list[tuple[str, int]]:
    """The known words in the order of their letters, each with its place in the trie."""
    return sorted((word, place) for place, (word, node) in enumerate(trie().following.items()) if node.senses)


_SHORTENED = frozenset(
    ("month", "weekday", "season", "about", "doubt", "before", "after", "feast", "at_latest", "at_earliest")
)
"""Kinds of words that are written short, with a full stop."""

MOST_MEANT = 3


def months_mended(tokens: list[Token], words: str) -> str:
    """The text with its one slip of a month's name mended, or its one compound of a season, among other words that are
    unknown (“Ruth in Septmber 1938”); empty where there is none, or several."""
    mended = [
        f"{words[: token.start]}{month}{words[token.end :]}"
        for token in tokens
        if token.senses[0].kind == "name" and token.end - token.start >= FEWEST_LETTERS_OF_A_MONTH
        for month in (
            *(
                word
                for word in _known_words_near(words[token.start : token.end].lower())
                if any(sense.kind == "month" for sense in trie().following[word].senses)
            ),
            *_season_within(words[token.start : token.end].lower()),
        )
    ]
    return mended[0] if len(mended) == 1 else ""


def one_mended(tokens: list[Token], words: str, language: int) -> tuple[str, str]:
    """The text with its one word mended that is a slip of a month, a day of the week, a season or a feast, in the
    languages of the words beside it or, beside none, in that of the collection; and that word as it was told. Empty
    where there is none, or what it means is not sure."""
    names = [token for token in tokens if token.senses[0].kind == "name" and token.end - token.start >= FEWEST_LETTERS]
    slips = ((token, _known_words_near(words[token.start : token.end].lower())) for token in names)
    near = [(token, known_words) for token, known_words in slips if known_words]
    if not near:
        return "", ""  # most
    known = (sense for token in tokens if token.senses[0].kind != "name" for sense in token.senses)
    said = languages_of(known) or language
    mended: dict[object, tuple[str, str]] = {}
    for token, known_words in near:
        slip = words[token.start : token.end]
        for word in known_words:
            for sense in trie().following[word].senses:
                is_long = (
                    sense.kind != "month"
                    or len(slip) >= FEWEST_LETTERS_OF_A_MONTH
                    or _is_between_numbers(tokens, token)
                )  # “ferry” is no “Febry”
                if is_long and sense.kind in _DATED and (not said or sense.languages & said):
                    text = f"{words[: token.start]}{word}{words[token.end :]}"
                    mended.setdefault((token.start, sense.kind, sense.value), (text, slip))
    return next(iter(mended.values())) if len(mended) == 1 else ("", "")


def _is_between_numbers(tokens: list[Token], token: Token) -> bool:
    """“The 3rd of agust 1937”: whether a word stands between a day and a year."""
    at = next(place for place, other in enumerate(tokens) if other is token)
    before = [other for other in tokens[:at] if not other.is_any(_NOISE)][-1:]
    behind = [other for other in tokens[at + 1 :] if not other.is_any(_NOISE)][:1]
    return any(other.is_any(_DAY) for other in before) and any(other.is_any(_YEAR_TOLD) for other in behind)


_NOISE, _DAY, _YEAR_TOLD = frozenset(("noise", "comma")), frozenset(("day", "ordinal")), frozenset(("year", "short"))
_DATED = frozenset(("month", "weekday", "season", "feast"))


@lru_cache(1024)
def _known_words_near(slip: str) -> tuple[str, ...]:
    """The known words that a word may be a slip of; kept, since the same word is looked at for one and for another."""
    if len(slip) < FEWEST_LETTERS - 1:
        return ()
    table = _shortened()
    near = dict.fromkeys(word for form in (slip, *_one_less(slip)) for word in table.get(form, ()))
    return tuple(word for word in near if is_slip(slip, word))


def is_slip(slip: str, word: str) -> bool:
    """Whether one slip makes a word another; both begin alike."""
    if slip == word:
        return False
    if len(slip) == len(word) and _is_misread(slip, word):
        return True
    if slip[0] != word[0]:
        return False
    at = next((at for at, (one, two) in enumerate(zip(slip, word, strict=False)) if one != two), None)
    if at is not None and slip[at : at + 2] == word[at : at + 2][::-1] and slip[at + 2 :] == word[at + 2 :]:
        return True
    if at is None:  # one begins with the whole of the other
        return len(slip) >= FEWEST_LETTERS and word[:-1] == slip and word[-1] not in _VOWELS
    if max(len(slip), len(word)) < FEWEST_LETTERS:
        return False
    if slip[-1] != word[-1]:
        return False
    return slip[at + 1 :] == word[at:] or slip[at:] == word[at + 1 :] or slip[at + 1 :] == word[at + 1 :]


def _is_misread(slip: str, word: str) -> bool:
    """Whether one letter is another that looks like it: “Jnne”, “Junc”, “Sepf”."""
    changed = [(one, two) for one, two in zip(slip, word, strict=True) if one != two]
    return len(changed) == 1 and any(changed[0] in (pair, pair[::-1]) for pair in _ALIKE)


_ALIKE = tuple((pair[0], pair[1]) for pair in "nu ce eo ft gq hb ij li vy nm fs".split())
"""Letters that a reader of writing or of print takes one for the other (common practice, no source)."""


def _one_less(word: str) -> list[str]:
    return [word[:at] + word[at + 1 :] for at in range(len(word))]


@cache
def _shortened() -> dict[str, list[str]]:
    """Every known word under its own spelling and under each that lacks one letter."""
    table: dict[str, list[str]] = {}
    for word, node in trie().following.items():
        if len(word) >= FEWEST_LETTERS - 1 and word.isalpha() and _may_be_meant(node):
            for form in (word, *_one_less(word)):
                table.setdefault(form, []).append(word)
    return table


def _may_be_meant(node: Node) -> bool:
    return any(sense.kind not in _NOT_REPAIRED for sense in node.senses)

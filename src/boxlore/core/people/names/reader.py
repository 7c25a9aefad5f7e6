"""A name read: `Mrs. Anna Pell née von der Pahlen` taken apart into its parts.

Theory of operation
===================

The problem. People are told by whole names, in the order and with the words of many languages. What searches for a
living child, lists people and compares them needs the parts. A list of patterns, one for each shape of a name, never
ends; and a wrong guess must not take the place of what was told.

The idea. Three steps, each a table beside a short reader:

1. Tokens and classes (`tokens`, `words_table`). Every word is looked up once: a title, a word of kin, a
   suffix, a particle, a marker (`née`, `known as`, `in religion`), an initial, else a name.
2. A frame that all traditions share:

       name   = [aside] {title / kin} core {marker core} {suffix}
       aside  = “nickname” / (in brackets: a marker and a name, a name, or a note)
       name   = family "," name                     ; turned about, as in a list

3. The core, which is names and particles alone, goes to the traditions (`traditions`), in the order of their
   table. The first that knows the names as its own says which are given and which the family's. The last one, for
   names of Europe, takes everything: the last word and its particles are the family name.

What always holds:

- The words stay as told; the parts are a proposal beside them.
- The names that the family has already decide before any table does (`KnownNames`).
- Words that describe (“the tall man”, “Ruth's friend”) and firms (“Atelier Lind”) have no parts.
- Where two readings are as likely, `asks` says so, and whoever searches takes every word as a possible given name.

An example. “Mrs. Anna Pell née von der Pahlen”: `Mrs.` is a title, `née` a marker of birth; the core `Anna Pell` is
given and family name; the core behind the marker is wholly a family name, with the particles `von der`.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Any

from boxlore.core.people.firms import is_firm
from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.another_family_name import NOUNS_OF_BIRTH, another_family_name
from boxlore.core.people.names.fathers_names import marks_child, tells_father
from boxlore.core.people.names.forms import full_names_of, may_be_called
from boxlore.core.people.names.frame import Frame
from boxlore.core.people.names.kin_of_another import is_kin_of_another
from boxlore.core.people.names.lists_table import ITALIAN_GIVEN, JAPANESE_GIVEN, MEN_ALONE
from boxlore.core.people.names.particles import with_particle
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.short_forms_table import TIMES
from boxlore.core.people.names.titles import OF_WOMEN_IN_RELIGION, is_in_religion, is_title, with_title, without_titles
from boxlore.core.people.names.tokens import Token, first_word, starts_with, token_of, tokens_of, written
from boxlore.core.people.names.traditions import KnownNames, read_core

READER_VERSION = "names 1"

NOTHING_KNOWN = KnownNames()

_QUOTED = re.compile(r"""(?<![^\s(])[“”"„«»‘‚'’](?=\S)([^“”"„«»()]{1,40}?)[“”"»«’‘'](?![^\s,.;)])""")
_SQUARE = re.compile(r"\[([^\[\]]*)\]")
_YEARS = re.compile(r"(?<=[^\W\d_]{2}) (?:\d{4}|\d{4} ?[-–] ?\d{2,4})\s*$")
"""A year, or those of a life, behind a name."""
_SPACED = re.compile(r"« ([^«»]*) »")
"""A quotation as French prints it."""
_BRACKETS = re.compile(r"\(([^()]*)\)")

_LONGEST = 12
"""Words of a name; more is a sentence."""


@lru_cache(maxsize=16384)
def read_name(words: str, known: KnownNames = NOTHING_KNOWN) -> NameParts:
    """The parts of a name; none for words that are no name. `known`: the names that the family has already."""
    if is_firm(words):
        return NameParts()
    frame = Frame({}, known)
    main = _asides(frame, " ".join(words.split()))
    pieces = [tokens for piece in main.split(",") if (tokens := tokens_of(_YEARS.sub("", piece)))]
    if not pieces or sum(map(len, pieces)) > _LONGEST:
        return NameParts()
    if any(token.plain.endswith("'s") for token in pieces[0]):
        return NameParts()  # `Ruth Garland née Pell's mother`
    if is_kin_of_another(pieces[0]):
        return NameParts()  # `moglie di Luigi`
    first, given = _commas(frame, pieces)
    if len(first) == len(pieces) + 1 == _GIVEN_AND_FAMILY and first[0].plain == first[1].plain and first[0].is_given:
        parts = NameParts(given=first[0].text, family=first[1].text)
        return replace(parts, asks=f"Is “{first[1].text}” the family name too?")  # `Marie Marie`
    core = _turned(frame, first, given) if given else _straight(frame, first)
    if core is None:
        return NameParts()
    if full := frame.parts.pop("full", ""):  # `Jim Barnes, christened James`
        frame.parts.setdefault("nickname", core.given)
        frame.parts["given"] = " ".join(word for word in full.split() if word != core.family)
    aside: dict[str, Any] = {"born_as": _behind_a_hyphen(core), **frame.parts}
    if core.given and not core.family and _is_of_an_order(aside):  # `Fr. Pius OFM`
        core, aside = replace(core, given=""), {"religious": core.given} | aside
    if _is_a_clan_alone(core):
        core = replace(core, given="", family=core.given)
    if core.title and aside.get("title"):
        aside["title"] = f"{aside['title']} {core.title}"
    return replace(core, **aside)


def _is_a_clan_alone(core: NameParts) -> bool:
    """`O'Malley`, `McRae` told alone: a family name by its beginning."""
    return not (core.family or core.kin) and bool(_CLAN.fullmatch(core.given))


_CLAN = re.compile(r"(?:O['’]|M[ac]c?|Fitz)[A-Z][^\W\d_]+")


def _is_of_an_order(parts: Mapping[str, str]) -> bool:
    """Whether a title of religion, and letters of an order behind the name, are told."""
    titled = any(token.plain in words_of.RELIGIOUS_TITLES for token in tokens_of(parts.get("title", "")))
    return titled and any(token.plain in _ORDERS for token in tokens_of(parts.get("suffix", "")))


_ORDERS = frozenset("ofm osb sj op ocd ocarm osa cssr svd cp ocso sdb omi sm ofmcap ofmconv".split())


def _behind_a_hyphen(core: NameParts) -> str:
    """The name at birth of a Dutch wife, which stands with its particle behind a hyphen: `de Vries` of `Anna Bakker-de
    Vries`; else what is known of it."""
    _, hyphen, own = core.family.rpartition("-")
    tokens = tokens_of(own)
    is_hers = bool(hyphen) and len(tokens) > 1 and tokens[0].is_particle and tokens[0].is_small
    is_man = bool(core.given) and not MEN_ALONE.isdisjoint(token.plain for token in tokens_of(core.given))
    return own if is_hers and not (core.born_as or is_man) else core.born_as


def _asides(frame: Frame, words: str) -> str:
    """The words without nicknames in quotes and without brackets, whose parts are kept."""

    def quoted(match: re.Match[str]) -> str:
        frame.put("nickname", match[1].strip())
        return " "

    words = _SQUARE.sub(r"(\1)", words)
    words = _QUOTED.sub(quoted, _SPACED.sub("«\\1»", words))
    for match in _BRACKETS.finditer(words):
        behind = bool(tokens_of(words[match.end() :]))
        pieces = [tokens for piece in match[1].split(",") if (tokens := tokens_of(piece))]
        if not all(_marker(piece, in_brackets=True) for piece in pieces):  # `(Mrs. James Whelan, née Tobin)`
            pieces = [tokens_of(match[1])]
        for piece in pieces:
            _bracket(frame, piece, inside=behind, before=tokens_of(words[: match.start()]))
    return _BRACKETS.sub(" ", words)


def _is_short_for(short: Token, names: Sequence[Token]) -> bool:
    """Whether a name begins as a given name told before it does: `Juku` behind `Juhan Kask`."""
    return any(short.plain[:2] == token.plain[:2] and len(short.plain) < 7 for token in names[:-1])


def _is_latin(token: Token) -> bool:
    return "a" <= token.plain[0] <= "z" or "\u00c0" <= token.plain[0] <= "\u024f"


def _tells_whole(tokens: Sequence[Token], before: Sequence[Token]) -> bool:
    """Whether brackets tell the whole name of whoever is told by kin or one name before: `Aunt Lou (Louisa Beck)`."""
    names = [token for token in before if token.plain not in words_of.KIN_WORDS]
    is_whole = len(tokens) > 1 and tokens[0].is_given and not tokens[-1].is_given
    return is_whole and len(names) < 2 and bool(before) and before[0].plain not in words_of.RELIGIOUS_TITLES


def _tells_full(tokens: Sequence[Token], before: Sequence[Token]) -> bool:
    """Whether brackets tell a name of two words before them again, and fuller: `Lou Beck (Louisa Mary Beck)`."""
    is_fuller = len(tokens) > 1 and tokens[0].is_given and tokens[-1].plain == before[-1].plain if before else False
    return is_fuller and len(before) == _GIVEN_AND_FAMILY and not is_title(before[0])


_GIVEN_AND_FAMILY = 2
"""Words of a name without titles."""


def _is_by_husband(before: Sequence[Token]) -> bool:
    """Whether a wife is told by her husband's whole name: `Mrs. John Beck`."""
    main = read_name(written(before))
    return bool(main.married_as and not main.given and " " in main.title)


def _is_full_form(token: Token, before: Sequence[Token]) -> bool:
    """Whether the one name before is a pet form of this one: known as one, or, where no name is known, begun alike
    (`Dulcie (Dulcibella)`); not `Johanna (Johansson)`."""
    if not before:
        return False
    begins_alike = before[0].plain[:_ALIKE] == token.plain[:_ALIKE] and len(token.plain) > len(before[0].plain)
    return (begins_alike and not before[0].is_given) or token.plain in full_names_of(before[0].plain)


def _is_full_form_of_first(token: Token, before: Sequence[Token]) -> bool:
    """Whether the first of a given and a family name is a pet form of this one: `Peggy Daly (Margaret)`."""
    is_whole = len(before) == _GIVEN_AND_FAMILY and not is_title(before[0])
    return is_whole and token.plain in full_names_of(before[0].plain) and token.plain != before[0].plain


def _may_be_called(call: str, name: str) -> bool:
    """Whether a given name and what somebody is called by are one: `Piet` and `Pieter`."""
    return call[:_ALIKE] == name[:_ALIKE] or may_be_called(call, name)


_ALIKE = 3
"""Letters at the beginning that a given name and its pet form have in common."""


_RETIRED = ("retd", "rtd", "ret", "hons", "hon", "emeritus", "emerita")


def _bracket(frame: Frame, tokens: Sequence[Token], *, inside: bool, before: Sequence[Token]) -> None:
    """What stands in brackets: a marked name, a people, a call name, a maiden name (before the married one), a note."""
    single = len(before) < 2
    if part_and_length := _marker(tokens, in_brackets=True):
        part, length = part_and_length
        _put_marked(frame, part, tokens[length:] if part != "belongs" else tokens)
        return
    if _another(frame, tokens):
        return
    if _is_called(tokens):
        frame.put("nickname", tokens[-1].text)
        return
    if tokens[0].plain in OF_WOMEN_IN_RELIGION and len(tokens) > 1 and not single and not tokens[0].is_small:
        _put_marked(frame, "religious", tokens)  # `Edith Gaunt (Sister Mary Clare)`
        return
    if tells_father(tokens):
        frame.put("patronymic", written(tokens))  # `Jaan Tamm (Mihkli poeg)`
        return
    if any(token.plain in words_of.FAMILY_WORDS for token in tokens):
        return  # `Emil (Familie Kessler)`
    if all(token.plain in _RETIRED or (_is_suffix(token) and not single) for token in tokens):
        frame.put("suffix", written(tokens))
    elif before and _is_latin(tokens[0]) != _is_latin(before[0]):
        return  # `Lin Mei-hua (林美華)`
    elif not inside and (_tells_whole(tokens, before) or _tells_full(tokens, before)):
        whole = read_name(written(tokens), frame.known)
        for part in ("given", "family", "particle"):
            frame.put(part, getattr(whole, part))
        called = before[:-1] if _tells_full(tokens, before) else before
        calls = [token for token in called if token.plain not in words_of.KIN_WORDS]
        frame.put("nickname", written(calls))
        if calls and not any(_may_be_called(call.plain, token.plain) for call in calls for token in tokens[:-1]):
            frame.parts["asks"] = f"Is “{written(tokens)}” the whole name of {written(before)}?"
    elif not inside and len(tokens) == 1 and tokens[0].is_given and _is_by_husband(before):
        frame.put("given", tokens[0].text)  # `Mrs. John Ashworth (Florence)`
    elif inside and before and all(is_title(token) for token in before):
        frame.put("given", written(tokens))  # `Lady (Winifred) Tarrant`
    elif not inside and len(tokens) == 1 and _is_full_form_of_first(tokens[0], before):
        frame.put("given", tokens[0].text)  # `Peggy Daly (Margaret)`
        frame.put("nickname", before[0].text)
    elif tokens[0].plain in ("ngai", "ngati", "ngapuhi", "nga", "kai") and not tokens[0].is_small:
        frame.put("belongs", written(tokens))
    elif len(tokens) > 2 or any(token.is_small or token.is_describing for token in tokens):
        return
    elif len(tokens) == 2 and tokens[0].is_given and before and before[0].plain in words_of.RELIGIOUS_TITLES:
        frame.put("given", tokens[0].text)  # `Sister Mary Benedict (Kathleen Foy)`
        frame.put("family", tokens[1].text)
        names = [token for token in before if not is_title(token) and not _is_suffix(token)]
        frame.put("religious", written(names))  # `Pater Bonifatius OSB (Anton Huber)`
    elif inside and single and len(tokens) == 1 and _is_full_form(tokens[0], before):
        frame.put("given", tokens[0].text)  # `Peggy (Margaret) Loftus`
        frame.put("nickname", written(before))
    elif tokens[0].is_given or (inside and single and (len(tokens[0].plain) < 4 or before[0].plain in MEN_ALONE)):
        frame.put("nickname", written(tokens))  # `Fred (Tiny) Oakes`: a man has no maiden name
    elif inside:
        frame.put("born_as", written(tokens))
    elif not single and _is_short_for(tokens[0], before):
        frame.put("nickname", written(tokens))
    elif not single:
        frame.put("born_as", written(tokens))
        frame.parts["asks"] = f"Is “{written(tokens)}” the name at birth?"


def _commas(frame: Frame, pieces: Sequence[tuple[Token, ...]]) -> tuple[tuple[Token, ...], tuple[Token, ...]]:
    """The tokens before the first comma that parts a family name from a given one, and those behind it (or none)."""
    main, *further = pieces
    given: tuple[Token, ...] = ()
    for piece in further:
        letters = (
            len(main) > 1 and all(_are_letters(token) for token in piece) and "." in piece[0].text
        )  # `W. F. Massey, P.C.`
        if given and all(is_title(token) for token in piece):
            frame.put("title", written(piece))  # `Burns, Mary Ellen, Mrs.`
        elif letters or all(_is_suffix(token) for token in piece) or _is_joined_suffix(piece):
            frame.put("suffix", written(piece))
        elif not given and _is_title_and_given(main, piece):
            given = piece  # `Crosbie, Mrs. Annie`
        elif tells_father(piece) and len(main) > 1:
            frame.put("patronymic", written(piece))  # `Jaan Tamm, Mihkli poeg`
        elif (marked := _marker(piece, in_brackets=True)) and marked[0] != "belongs" and _may_be_named(main, piece):
            _put_further(frame, marked[0], piece, marked[1])
        elif _may_tell_another(piece) and _another(frame, piece):
            continue  # `Elsie Crane, a Tuttle before she married`
        elif _is_called(piece):
            frame.put("nickname", piece[-1].text)
        elif not given and not piece[0].is_describing and not _is_note(piece):
            given = piece
    return main, given


def _may_tell_another(piece: Sequence[Token]) -> bool:
    """Whether words are no name before the small ones: `a Tuttle before she married`, `Mädchenname Vogel`."""
    return piece[0].is_small or (piece[-1].is_small and not piece[0].is_given) or piece[0].plain in NOUNS_OF_BIRTH


def _is_called(piece: Sequence[Token]) -> bool:
    """`always called Tiny`, `known to all as Tiny`: small words, of which one begins a marker of a nickname, and a
    name."""
    *said, name = piece
    small = bool(said) and all(token.is_small for token in said) and not name.is_small
    return small and any(token.plain in _CALLED_SO for token in said)


_CALLED_SO = frozenset(words.split()[0] for words, part in words_of.MARKERS if part == "nickname") - {
    "or",
    "a",
    "we",
    "also",
}


def _is_joined_suffix(piece: Sequence[Token]) -> bool:
    return piece[0].is_small and " ".join(token.plain for token in piece) in words_of.JOINED_SUFFIXES


def _are_letters(token: Token) -> bool:
    """Whether a word is letters of an honour, each with its point: `P.C.`, `C.St.J.`"""
    if token.plain in ("and", "&", "bar", "bars"):
        return True  # `D.S.O. and Bar`
    return len(token.plain) > 1 and token.text.endswith(".") and token.text.count(".") > 1 and not token.is_small


def _is_title_and_given(main: Sequence[Token], piece: Sequence[Token]) -> bool:
    """Whether titles and given names alone stand behind a family name: so a list turns them."""
    begins = next((at for at, token in enumerate(piece) if not is_title(token)), len(piece))
    is_family = len(main) < _LONGEST // 3 and not any(token.is_given for token in main)
    return is_family and 0 < begins < len(piece) and all(token.is_given for token in piece[begins:])


def _may_be_named(main: Sequence[Token], piece: Sequence[Token]) -> bool:
    """Whether a name is written behind a marker as the one before it is: `onkel Jens, os børn` is of children."""
    return not piece[-1].is_small or all(token.is_small for token in main)


def _is_note(piece: Sequence[Token]) -> bool:
    """`the baker`, `my sister`, `aged 5`: words of which the first is small, and is no particle."""
    return piece[0].is_small and not piece[0].is_particle and not piece[0].is_given


def _is_suffix(token: Token) -> bool:
    """Whether a word is a suffix; so are letters of an honour, which have no vowel (`RRC`)."""
    is_honour = 2 < len(token.text) < 5 and token.is_capitals and not set(token.plain) & set("aeiouy")
    if token.plain in words_of.KIN_WORDS and not (token.text.isupper() or token.is_small or "." in token.text[:-1]):
        return False  # `Len, Ma`: a degree is `MA` or `M.A.`
    is_joined = token.text in ("st.", "d.e.", "d.æ.", "d.ä.", "d.y.", "d.Ä.", "d.J.")
    return token.plain in words_of.SUFFIXES or is_joined or (is_honour and token.plain.isascii())


def _marker(tokens: Sequence[Token], *, in_brackets: bool = False) -> tuple[str, int] | None:
    """The part that a marker at the beginning of the tokens announces, and how many tokens it takes."""
    best: tuple[str, int] | None = None
    if len(tokens[0].plain) < 6 and not tokens[0].plain.isalpha():
        letters = token_of("".join(filter(str.isalpha, tokens[0].text)))  # `ne'e`, an accent that slipped
        tokens = (letters, *tokens[1:]) if letters.plain == "nee" else tokens
    for marker, part in words_of.MARKERS_BY_FIRST_WORD.get(first_word(tokens[0]), ()):
        length = starts_with(tokens, marker)
        if len(marker) == 1 and not tokens[0].is_small:
            continue  # `A. Finch, B. Cole`
        if not length or length + (part != "belongs") > len(tokens) or (best is not None and length <= best[1]):
            continue
        if not in_brackets and marker in words_of.NOT_IN_OPEN and not _opens(tokens, length):
            continue
        if in_brackets and marker == "in" and tokens[length].is_small and len(tokens) > 1:
            continue  # `Jack (in white)`
        best = part, length
    return best


def _opens(tokens: Sequence[Token], length: int) -> bool:
    """Whether a marker that may be a name (`f.`, `in`) is none: small, a letter with its point, before a name."""
    if len(tokens) == length:
        return False
    marker, name = tokens[0], tokens[length]
    return marker.is_small and (len(marker.plain) > 1 or marker.text.endswith(".") or length > 1) and not name.is_small


def _another(frame: Frame, tokens: Sequence[Token]) -> bool:
    """Keep another family name that a sentence tells, as a question; whether it tells one."""
    part, name = another_family_name(tokens)
    if part:
        _put_marked(frame, part, name)
    told = frame.parts.get(part, "")
    if told:
        when = "at birth" if part == "born_as" else "by marriage"
        frame.parts["asks"] = f"Is “{told}” the name {when}?"
    return told != ""


_OF_A_PLACE = frozenset("in at near on a en em i im bei na no w we v ve на в во из".split())
"""Small words behind `born` that a place stands behind."""


def _goes_before_a_family(token: Token) -> bool:
    return token.is_given or (token.is_initial and not token.is_particle)


_FORMERLY = frozenset("formerly previously fruher varem end endine ent kuni until bis".split())
"""Markers of a name that somebody had before, at birth or by an earlier marriage."""


def _put_further(frame: Frame, part: str, piece: Sequence[Token], length: int) -> None:
    """A marked name behind a comma: of two of birth, the one that was only had before is of an earlier marriage."""
    first, behind = piece[0].plain, piece[length:]
    if first == "s" and behind and behind[-1].plain.endswith("a") and behind[-1].plain[:-1] in MEN_ALONE:
        frame.put("patronymic", written(piece))  # `Jan Kowalski s. Piotra`
        return
    if first == "or" and behind and not behind[0].is_given:
        frame.parts["asks"] = f"Is “{written(behind)}” another family name, or what somebody is called?"
    if part == "born_as" and frame.parts.get("born_as"):
        if piece[0].plain in _FORMERLY:
            part = "married_as"
        else:
            frame.put("married_as", frame.parts.pop("born_as"))  # `formerly Wells, née Pitt`
    is_wife = first in ("epouse", "ep") and length == 1
    if is_wife and len(behind) == 1 and behind[0].plain in MEN_ALONE:
        frame.parts["asks"] = f"Is “{written(behind)}” a family name, or the husband's given name?"
    _put_marked(frame, part, behind, is_family=is_wife)


def _put_marked(frame: Frame, part: str, tokens: Sequence[Token], *, is_family: bool = False) -> None:
    """The name behind a marker: of birth and marriage the family name, and a given one where that is told too.

    `is_family`: whether no husband's given name may stand there alone.
    """
    tokens = [token for token in tokens if not _is_suffix(token)]
    tokens = tokens[1:] if tokens and tokens[0].plain.isdigit() else tokens  # `kuni 1937 Berg`
    if not tokens or any(token.is_describing for token in tokens):
        return
    if tokens[0].plain in words_of.RELIGIOUS_TITLES - words_of.PRIESTS and len(tokens) > 1 and not tokens[0].is_small:
        part = "religious"  # `later Sister Mary Clare`
    if part == "religious":
        titles = [token for token in tokens[:1] if token.plain in words_of.RELIGIOUS_TITLES]
        frame.put("title", written(titles))
        frame.put("religious", written(tokens[len(titles) :]))
    elif part == "belongs":
        frame.put("belongs", written(tokens[1:]))
    elif part == "full":
        frame.put("full", written(tokens))
    elif part == "nickname":
        frame.put("nickname", written(token for token in tokens if token.text not in ('"', "'")))
    else:
        large = next((at for at, token in enumerate(tokens) if not token.is_small or token.is_particle), 0)
        if any(token.plain in _OF_A_PLACE for token in tokens[:large]) or tokens[large].plain in TIMES:
            return  # `born in Tartu`, `until May`
        tokens = tokens[large:]  # `maiden name was Tuttle`
        if tokens[0].plain in words_of.TITLES and len(tokens) > 1:
            tokens = tokens[1:]
        if part == "married_as" and len(tokens) == 1 and tokens[0].plain in MEN_ALONE and not is_family:
            return  # `widow of Arthur`
        names = [token for token in tokens if not _goes_before_a_family(token) or token is tokens[-1]]
        frame.put(part, written(names))


def _straight(frame: Frame, tokens: Sequence[Token]) -> NameParts | None:
    """A name in the order in which it is said; None for words that are no name."""
    tokens = tokens[1:] if len(tokens) > 3 and tokens[0].plain == "the" and tokens[2].text == "of" else tokens
    if len(tokens) > 2 and tokens[1].text == "of" and tokens[0].plain in _OF_A_LAND:
        return NameParts(title=written(tokens))  # `Duke of Edinburgh`
    if _is_called_by_family_first(tokens):  # `Der Huber Sepp`
        asks = f"Is “{tokens[1].text}” the family name of {tokens[2].text}?"
        return NameParts(given=tokens[2].text, family=tokens[1].text, asks=asks)
    if religious := _of_a_mystery(tokens):
        return religious
    core = _without_respect(frame, without_titles(frame, _suffixes(frame, _segments(frame, tokens))))
    if len(core) > _GIVEN_AND_FAMILY and core[-2].text == "tou":  # `Nikolaos Pappas tou Georgiou`: his father's name
        frame.put("patronymic", written(core[-2:]))
        core = core[:-2]
    if not core:
        return NameParts() if frame.parts.get("kin") or frame.parts.get("nickname") else None
    last = token_of(frame.parts.get("title", "").split(" ")[-1]).plain
    of_a_mystery = last in words_of.RELIGIOUS_TITLES and is_in_religion(core, frame.known)  # `Mary of the Sacred Heart`
    if not of_a_mystery and (_describes(core) or _is_sentence(core, frame.known)):
        return None
    if len(core) > 1 and not core[0].is_initial and all(token.is_initial for token in core[1:]):
        family_first = not core[0].is_given or frame.known.is_family(core[0].plain)
        if family_first and core[0].plain not in words_of.BOUND:
            return with_particle(core[1:], core[:1])  # `Соколов А. П.`
    return with_title(frame, core)


def _of_a_mystery(tokens: Sequence[Token]) -> NameParts | None:
    """`Fr. Damian of the Cross`, `Sister Teresa a Jesu`: a name in religion whose end says of which mystery it is."""
    at = next((at for at, token in enumerate(tokens) if not is_title(token)), len(tokens))
    names = tokens[at:]
    letters = tuple(token for token in names[1:] if token.plain in _ORDERS)
    names = tuple(token for token in names if token not in letters)
    is_titled = at > 0 and tokens[at - 1].plain in words_of.RELIGIOUS_TITLES and len(names) > _GIVEN_AND_FAMILY
    if not is_titled or names[0].is_small or names[-1].is_small:
        return None
    leads = [n for n, token in enumerate(names[1:-1], 1) if token.text in ("of", "a", "ab")]
    is_latin = bool(leads) and names[leads[0]].text != "of"
    if not leads or not (is_latin or names[leads[0] + 1].plain in ("the", *words_of.MYSTERIES)):
        return None
    return NameParts(title=written(tokens[:at]), religious=written(names), suffix=written(letters))


_FAMILY_FIRST = 3


def _is_called_by_family_first(tokens: Sequence[Token]) -> bool:
    """Whether an article stands before a family name and a given one, as Bavaria says them."""
    if len(tokens) != _FAMILY_FIRST or tokens[0].plain not in ("der", "die") or any(token.is_small for token in tokens):
        return False
    return tokens[2].is_given and not (tokens[1].is_given or tokens[1].is_initial or is_title(tokens[1]))


_OF_A_LAND = frozenset("duke duchess earl countess marquess marquis prince princess king queen bishop dean".split())
"""Titles that `of` and a land or a see make whole."""

_RESPECT = ("-san", "-sama", "-sensei", "-chan", "-kun")
"""What stands behind a Japanese name; `-chan` and `-kun` behind a given one."""


def _without_respect(frame: Frame, core: Sequence[Token]) -> Sequence[Token]:
    """The names without a word of respect: `Tanaka-san` is a family name behind a title."""
    ending = next((end for end in _RESPECT if core and core[-1].plain.endswith(end)), "")
    if not ending:
        return core
    bare = token_of(core[-1].text[: -len(ending)])
    of_given = ending in ("-chan", "-kun") or bare.plain in JAPANESE_GIVEN
    frame.put("suffix" if of_given else "title", ending[1:])
    return (*core[:-1], bare)


def _describes(tokens: Sequence[Token]) -> bool:
    """Whether the words describe somebody: `der Nachbar`, `Ruth's friend`, `Mihkli poeg`."""
    opens = tokens[0].is_small and tokens[0].plain in words_of.DESCRIBING
    opens = opens or (tells_father(tokens) and tokens[1].plain in words_of.KIN_WORDS)
    return opens or any(token.is_describing for token in tokens)


def _turned(frame: Frame, family: Sequence[Token], given: Sequence[Token]) -> NameParts | None:
    """A name as in a list: `Gogh, Vincent van`; the family name, a comma, titles, given names, particles."""
    family = _suffixes(frame, family)
    if len(family) > 1 and is_title(family[0]) and family[0].text.endswith("."):
        family = without_titles(frame, family)  # `Cpl. Pell, J.`
    given = without_titles(frame, _suffixes(frame, _segments(frame, given)))
    if len(family) > _LONGEST // 3 or any(token.is_describing for token in (*family, *given)):
        return None
    at = len(given)
    while at > 1 and given[at - 1].is_particle:
        at -= 1
    if all(is_title(token) and not token.is_initial for token in given):
        frame.put("title", written(given))
        return with_particle((), family)
    return read_core((*given, *family), frame.known, family_from=at)


def _segments(frame: Frame, tokens: Sequence[Token]) -> Sequence[Token]:
    """The tokens before the first marker; the names behind each marker are kept as the part that it announces."""
    for at in range(1, len(tokens)):
        if is_title(tokens[at]) and all(is_title(token) for token in tokens[:at]):
            continue
        if _is_born_of(tokens, at):  # `Anna z Nowaków Zielińska`
            frame.put("born_as", _family_of_one(tokens[at + 1].text))
            return (*tokens[:at], *tokens[at + 2 :])
        if marked := _marker(tokens[at:]):
            if tokens[at].plain == "in" and tokens[0].plain not in ITALIAN_GIVEN and marked[0] == "married_as":
                continue  # `Easter in Leith`
            part, length = marked
            behind = _segments(frame, tokens[at + (0 if part == "belongs" else length) :])
            if part == "nickname" and len(behind) > 1 and _is_inserted(tokens[:at], behind):
                frame.put(part, behind[0].text)
                return (*tokens[:at], *behind[1:])
            if part in ("born_as", "married_as") and at == 1 and _is_family_first(tokens[0], behind):
                _put_marked(frame, part, behind[:1])
                return (*behind[1:], *tokens[:1])  # `Wrona z d. Sikora Janina`
            _put_further(frame, part, (*tokens[at : at + length], *behind), length)
            return tokens[:at]
        if tokens[at].is_small and not tokens[at].is_particle and _another(frame, tokens[at:]):
            return tokens[:at]  # `Elsie Crane who married a Kettering`
    return tokens


def _is_family_first(first: Token, behind: Sequence[Token]) -> bool:
    """Whether a family name stands before a marker, and a given one behind the name that it marks."""
    return len(behind) > 1 and not first.is_given and not behind[0].is_given and all(it.is_given for it in behind[1:])


def _is_inserted(before: Sequence[Token], behind: Sequence[Token]) -> bool:
    """Whether a call name stands between the given names and the family's: `Giuseppe detto Peppino Amato`."""
    names = [token for token in before if not (is_title(token) or token.plain in words_of.KIN_WORDS)]
    is_given = bool(names) and all(token.is_given or token.is_initial for token in names)
    return is_given and not behind[-1].is_given and not behind[1].is_small


def _is_born_of(tokens: Sequence[Token], at: int) -> bool:
    """Whether a Polish `z`, and a family name of several behind it, tell of which family somebody was born."""
    behind = tokens[at + 1 : at + 2]
    return tokens[at].text in ("z", "ze") and bool(behind) and not behind[0].is_small and is_family_in_polish(behind[0])


def _family_of_one(family: str) -> str:
    """`Nowak` of `Nowaków`, `Zieliński` of `Zielińskich`: the family name of one of them."""
    return family.removesuffix("ch") if family.endswith("ich") else family.removesuffix("ów")


def is_family_in_polish(token: Token) -> bool:
    """`Nowaków`, `Zielińskich`: the family as a whole, in the form behind `z`."""
    return token.plain.endswith(("ow", "skich", "ckich", "dzkich"))


def _suffixes(frame: Frame, tokens: Sequence[Token]) -> Sequence[Token]:
    """The tokens without those suffixes at their end, and without kin words that stand behind (`Mari néni`)."""
    suffixes: list[Token] = []
    large_behind_small = len(tokens) > 2 and tokens[-2].is_small and not tokens[-1].is_small
    if large_behind_small and (
        (len(tokens) < 5 and tokens[-2].text in ("of", "z", "ze"))  # `Jan z Tarnowa`
        or tokens[-2].text in ("frá", "í", "á")  # `Sigga í Koti`
        or (tokens[-2].text in ("i", "på") and tokens[-3].plain.endswith(("son", "dotter", "datter")))
        or (len(tokens) > 3 and tokens[-2].plain == "the")  # `Dai Jones the Milk`
    ):
        suffixes[:0] = tokens[-2:]
        tokens = tokens[:-2]
    if len(tokens) > 3 and " ".join(token.plain for token in tokens[-3:]) == "of that ilk":
        suffixes[:0] = tokens[-3:]
        tokens = tokens[:-3]
    if len(tokens) > 3 and tokens[-1].plain in ("bar", "bars") and tokens[-2].plain in ("&", "and", "two"):
        suffixes[:0] = tokens[-2:]  # `D.F.C. & Bar`
        tokens = tokens[:-2]
    stem, hyphen, last = tokens[-1].text.rpartition("-")
    if hyphen and stem and len(tokens) > 1 and token_of(last).plain in ("младшии", "старшии"):
        suffixes[:0] = [token_of(last)]  # `Толстой-младший`
        tokens = (*tokens[:-1], token_of(stem))
    elif hyphen and stem and last.islower() and token_of(last).plain in words_of.KIN_BEHIND:
        frame.put("kin", last)  # `Aino-tädi`
        tokens = (*tokens[:-1], token_of(stem))
    while len(tokens) > 1:
        plain = " ".join(token.plain for token in tokens[-2:])
        if len(tokens) > 2 and plain in words_of.JOINED_SUFFIXES and tokens[-2].is_small:
            suffixes[:0] = tokens[-2:]
            tokens = tokens[:-2]
        elif (
            (_is_suffix(tokens[-1]) or _is_of_a_corps(tokens) or _ends_in_letters(tokens))
            and (len(tokens) > 2 or tokens[-1].text.endswith((".", "II", "III")) or _is_of_the_elder(tokens))
        ) or _is_number_of_a_king(tokens):
            suffixes[:0] = tokens[-1:]
            tokens = tokens[:-1]
        elif tokens[-1].plain in words_of.KIN_BEHIND and (
            tokens[-1].is_small or tokens[-1].plain in words_of.TURKISH_RESPECT
        ):
            frame.put("kin", tokens[-1].text)
            tokens = tokens[:-1]
        else:
            break
    behind = frame.parts.pop("suffix", "")
    frame.put("suffix", written(suffixes))
    frame.put("suffix", behind)
    return tokens


def _is_number_of_a_king(tokens: Sequence[Token]) -> bool:
    """`George V` behind `King`: the number, which would be an initial elsewhere."""
    return tokens[0].plain in words_of.SOVEREIGNS and len(tokens) > 2 and set(tokens[-1].text) <= set("IVX")


def _is_of_the_elder(tokens: Sequence[Token]) -> bool:
    """`Tull jr`; `Ned Senior`, which behind a family name is one of its own."""
    last = tokens[-1].plain
    return last in ("jr", "sr", "jnr", "snr") or (last in ("senior", "junior") and tokens[0].is_given)


def _ends_in_letters(tokens: Sequence[Token]) -> bool:
    """Whether a whole name stands before letters with points: `Edmund Tait K.G.`; but `Sokolov A.P.`"""
    names = [token for token in tokens[:-1] if not is_title(token)]
    return _are_letters(tokens[-1]) and len(names) > 1 and not names[-1].is_initial


def _is_of_a_corps(tokens: Sequence[Token]) -> bool:
    """Whether a name ends in letters, behind a family name that is not of letters: `Len Drury NZE`."""
    last, before = tokens[-1], tokens[-2]
    is_letters = last.is_capitals and len(last.text) < 5 and last.text.isalpha() and not last.is_given
    return is_letters and len(tokens) > 2 and not (before.is_given or before.is_small or before.text.isupper())


def _is_sentence(core: Sequence[Token], known: KnownNames) -> bool:
    """Whether the words are too many, or small where a name would not be: `gardening`, `by the sea`."""

    def is_known(token: Token) -> bool:
        return token.is_given or known.is_given(token.plain) or known.is_family(token.plain)

    names = [token for token in core if not token.is_particle]
    small = [token for token in names if token.is_small and not (token.is_filiation or marks_child(token))]
    if not names or len(names) > _LONGEST // 2 + 1:
        return True
    half = not names[0].is_small and any(not is_known(token) for token in small)  # `Aino veneessä`
    return bool(small) and (
        half or not is_known(names[0]) or any(not is_known(t) and t is not names[-1] for t in small)
    )

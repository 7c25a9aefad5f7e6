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
from collections.abc import Container, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any

from boxlore.core.people.firms import is_firm
from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.another_family_name import another_family_name
from boxlore.core.people.names.forms import full_names_of
from boxlore.core.people.names.given_names_table import GIVEN_OR_FAMILY
from boxlore.core.people.names.lists_table import GIVEN_IN_PICTURES, ITALIAN_GIVEN, JAPANESE_GIVEN, MEN, WOMEN
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.short_forms_table import TIMES
from boxlore.core.people.names.tokens import Token, first_word, starts_with, token_of, tokens_of, written
from boxlore.core.people.names.traditions import (
    GIVEN_ELSEWHERE,
    KnownNames,
    marks_child,
    read_core,
    tells_father,
    with_particle,
)

READER_VERSION = "names 1"

NOTHING_KNOWN = KnownNames()

_QUOTED = re.compile(r"""(?<![^\s(])[“”"„«»‘‚'’](?=\S)([^“”"„«»()]{1,40}?)[“”"»«’‘'](?![^\s,.;)])""")
_BRACKETS = re.compile(r"\(([^()]*)\)")
_MARKERS: dict[str, list[tuple[str, str]]] = {}
for _words, _part in words_of.MARKERS:
    _MARKERS.setdefault(_words.split()[0], []).append((_words, _part))

_LONGEST = 12
"""Words of a name; more is a sentence."""


@dataclass(slots=True)
class _Frame:
    """What is gathered while a name is read: its parts so far, as field names and words."""

    parts: dict[str, str]
    known: KnownNames

    def put(self, part: str, words: str) -> None:
        """Set a part, or add to it."""
        if words:
            self.parts[part] = f"{self.parts[part]} {words}" if self.parts.get(part) else words


@lru_cache(maxsize=16384)
def read_name(words: str, known: KnownNames = NOTHING_KNOWN) -> NameParts:
    """The parts of a name; none for words that are no name. `known`: the names that the family has already."""
    if is_firm(words):
        return NameParts()
    frame = _Frame({}, known)
    main = _asides(frame, " ".join(words.split()))
    pieces = [tokens for piece in main.split(",") if (tokens := tokens_of(piece))]
    if not pieces or sum(map(len, pieces)) > _LONGEST:
        return NameParts()
    if any(token.plain.endswith("'s") for token in pieces[0]):
        return NameParts()  # `Ruth Garland née Pell's mother`
    first, given = _commas(frame, pieces)
    core = _turned(frame, first, given) if given else _straight(frame, first)
    if core is None:
        return NameParts()
    if full := frame.parts.pop("full", ""):  # `Jim Barnes, christened James`
        frame.parts.setdefault("nickname", core.given)
        frame.parts["given"] = " ".join(word for word in full.split() if word != core.family)
    aside: dict[str, Any] = dict(frame.parts)
    if core.title and aside.get("title"):
        aside["title"] = f"{aside['title']} {core.title}"
    return replace(core, **aside)


def _asides(frame: _Frame, words: str) -> str:
    """The words without nicknames in quotes and without brackets, whose parts are kept."""

    def quoted(match: re.Match[str]) -> str:
        frame.put("nickname", match[1].strip())
        return " "

    words = _QUOTED.sub(quoted, words)
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


def _is_full_form(token: Token, before: Sequence[Token]) -> bool:
    """Whether the one name before is a pet form of this one: known as one, or, where no name is known, begun alike
    (`Dulcie (Dulcibella)`); not `Johanna (Johansson)`."""
    if not before:
        return False
    begins_alike = before[0].plain[:_ALIKE] == token.plain[:_ALIKE] and len(token.plain) > len(before[0].plain)
    return (begins_alike and not before[0].is_given) or token.plain in full_names_of(before[0].plain)


_ALIKE = 3
"""Letters at the beginning that a given name and its pet form have in common."""


_RETIRED = ("retd", "rtd", "ret", "hons", "hon", "emeritus", "emerita")


def _bracket(frame: _Frame, tokens: Sequence[Token], *, inside: bool, before: Sequence[Token]) -> None:
    """What stands in brackets: a marked name, a people, a call name, a maiden name (before the married one), a note."""
    single = len(before) < 2
    if part_and_length := _marker(tokens, in_brackets=True):
        part, length = part_and_length
        _put_marked(frame, part, tokens[length:] if part != "belongs" else tokens)
        return
    if _another(frame, tokens):
        return
    if tokens[0].plain in _OF_WOMEN_IN_RELIGION and len(tokens) > 1 and not single and not tokens[0].is_small:
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
    elif not inside and _tells_whole(tokens, before):
        frame.put("given", written(tokens[:-1]))
        frame.put("family", tokens[-1].text)
        frame.put("nickname", written(token for token in before if token.plain not in words_of.KIN_WORDS))
    elif inside and before and all(_is_title(token) for token in before):
        frame.put("given", written(tokens))  # `Lady (Winifred) Tarrant`
    elif tokens[0].plain in ("ngai", "ngati", "ngapuhi", "nga", "kai") and not tokens[0].is_small:
        frame.put("belongs", written(tokens))
    elif len(tokens) > 2 or any(token.is_small or token.is_describing for token in tokens):
        return
    elif len(tokens) == 2 and tokens[0].is_given and before and before[0].plain in words_of.RELIGIOUS_TITLES:
        frame.put("given", tokens[0].text)  # `Sister Mary Benedict (Kathleen Foy)`
        frame.put("family", tokens[1].text)
    elif inside and single and len(tokens) == 1 and _is_full_form(tokens[0], before):
        frame.put("given", tokens[0].text)  # `Peggy (Margaret) Loftus`
        frame.put("nickname", written(before))
    elif tokens[0].is_given or (inside and single and len(tokens[0].plain) < 4):
        frame.put("nickname", written(tokens))
    elif inside:
        frame.put("born_as", written(tokens))
    elif not single and _is_short_for(tokens[0], before):
        frame.put("nickname", written(tokens))
    elif not single:
        frame.put("born_as", written(tokens))
        frame.parts["asks"] = f"Is “{written(tokens)}” the name at birth?"


def _commas(frame: _Frame, pieces: Sequence[tuple[Token, ...]]) -> tuple[tuple[Token, ...], tuple[Token, ...]]:
    """The tokens before the first comma that parts a family name from a given one, and those behind it (or none)."""
    main, *further = pieces
    given: tuple[Token, ...] = ()
    for piece in further:
        letters = (
            len(main) > 1 and all(_are_letters(token) for token in piece) and "." in piece[0].text
        )  # `W. F. Massey, P.C.`
        if given and all(_is_title(token) for token in piece):
            frame.put("title", written(piece))  # `Burns, Mary Ellen, Mrs.`
        elif letters or all(_is_suffix(token) for token in piece) or _is_joined_suffix(piece):
            frame.put("suffix", written(piece))
        elif not given and _is_title_and_given(main, piece):
            given = piece  # `Crosbie, Mrs. Annie`
        elif tells_father(piece) and len(main) > 1:
            frame.put("patronymic", written(piece))  # `Jaan Tamm, Mihkli poeg`
        elif (marked := _marker(piece, in_brackets=True)) and marked[0] != "belongs" and _may_be_named(main, piece):
            _put_further(frame, marked[0], piece, marked[1])
        elif (piece[0].is_small or piece[-1].is_small) and _another(frame, piece):
            continue  # `Elsie Crane, a Tuttle before she married`
        elif not given and not piece[0].is_describing and not _is_note(piece):
            given = piece
    return main, given


def _is_joined_suffix(piece: Sequence[Token]) -> bool:
    return piece[0].is_small and " ".join(token.plain for token in piece) in words_of.JOINED_SUFFIXES


def _are_letters(token: Token) -> bool:
    """Whether a word is letters of an honour, each with its point: `P.C.`, `C.St.J.`"""
    if token.plain in ("and", "&", "bar", "bars"):
        return True  # `D.S.O. and Bar`
    return len(token.plain) > 1 and token.text.endswith(".") and token.text.count(".") > 1 and not token.is_small


def _is_title_and_given(main: Sequence[Token], piece: Sequence[Token]) -> bool:
    """Whether titles and given names alone stand behind a family name: so a list turns them."""
    begins = next((at for at, token in enumerate(piece) if not _is_title(token)), len(piece))
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
    is_joined = token.text in ("d.e.", "d.æ.", "d.ä.", "d.y.", "d.Ä.", "d.J.")
    return token.plain in words_of.SUFFIXES or is_joined or (is_honour and token.plain.isascii())


def _marker(tokens: Sequence[Token], *, in_brackets: bool = False) -> tuple[str, int] | None:
    """The part that a marker at the beginning of the tokens announces, and how many tokens it takes."""
    best: tuple[str, int] | None = None
    if len(tokens[0].plain) < 6 and not tokens[0].plain.isalpha():
        letters = token_of("".join(filter(str.isalpha, tokens[0].text)))  # `ne'e`, an accent that slipped
        tokens = (letters, *tokens[1:]) if letters.plain == "nee" else tokens
    for marker, part in _MARKERS.get(first_word(tokens[0]), ()):
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
    marker, name = tokens[0], tokens[length]
    return marker.is_small and (len(marker.plain) > 1 or marker.text.endswith(".") or length > 1) and not name.is_small


def _another(frame: _Frame, tokens: Sequence[Token]) -> bool:
    """Keep another family name that a sentence tells, as a question; whether it tells one."""
    part, name = another_family_name(tokens)
    if part:
        _put_marked(frame, part, name)
        when = "at birth" if part == "born_as" else "by marriage"
        frame.parts["asks"] = f"Is “{frame.parts[part]}” the name {when}?"
    return part != ""


_OF_A_PLACE = frozenset("in at near on a en em i im bei na no w we v ve на в во из".split())
"""Small words behind `born` that a place stands behind."""


def _goes_before_a_family(token: Token) -> bool:
    return token.is_given or (token.is_initial and not token.is_particle)


_FORMERLY = frozenset("formerly previously fruher varem end endine ent kuni until bis".split())
"""Markers of a name that somebody had before, at birth or by an earlier marriage."""


def _put_further(frame: _Frame, part: str, piece: Sequence[Token], length: int) -> None:
    """A marked name behind a comma: of two of birth, the one that was only had before is of an earlier marriage."""
    if part == "born_as" and frame.parts.get("born_as"):
        if piece[0].plain in _FORMERLY:
            part = "married_as"
        else:
            frame.put("married_as", frame.parts.pop("born_as"))  # `formerly Wells, née Pitt`
    _put_marked(frame, part, piece[length:])


def _put_marked(frame: _Frame, part: str, tokens: Sequence[Token]) -> None:
    """The name behind a marker: of birth and marriage the family name, and a given one where that is told too."""
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
        names = [token for token in tokens if not _goes_before_a_family(token) or token is tokens[-1]]
        frame.put(part, written(names))


def _straight(frame: _Frame, tokens: Sequence[Token]) -> NameParts | None:
    """A name in the order in which it is said; None for words that are no name."""
    tokens = tokens[1:] if len(tokens) > 3 and tokens[0].plain == "the" and tokens[2].text == "of" else tokens
    if len(tokens) > 2 and tokens[1].text == "of" and tokens[0].plain in _OF_A_LAND:
        return NameParts(title=written(tokens))  # `Duke of Edinburgh`
    core = _without_respect(frame, _titles(frame, _suffixes(frame, _segments(frame, tokens))))
    if not core:
        return NameParts() if frame.parts.get("kin") or frame.parts.get("nickname") else None
    last = token_of(frame.parts.get("title", "").split(" ")[-1]).plain
    of_a_mystery = last in words_of.RELIGIOUS_TITLES and _in_religion(core, frame.known)  # `Mary of the Sacred Heart`
    if not of_a_mystery and (_describes(core) or _is_sentence(core, frame.known)):
        return None
    if len(core) > 1 and not core[0].is_initial and all(token.is_initial for token in core[1:]):
        family_first = not core[0].is_given or frame.known.is_family(core[0].plain)
        if family_first and core[0].plain not in words_of.BOUND:
            return with_particle(core[1:], core[:1])  # `Соколов А. П.`
    return _with_title(frame, core)


_OF_A_LAND = frozenset("duke duchess earl countess marquess marquis prince princess king queen bishop dean".split())
"""Titles that `of` and a land or a see make whole."""

_RESPECT = ("-san", "-sama", "-sensei", "-chan", "-kun")
"""What stands behind a Japanese name; `-chan` and `-kun` behind a given one."""


def _without_respect(frame: _Frame, core: Sequence[Token]) -> Sequence[Token]:
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


def _turned(frame: _Frame, family: Sequence[Token], given: Sequence[Token]) -> NameParts | None:
    """A name as in a list: `Gogh, Vincent van`; the family name, a comma, titles, given names, particles."""
    family = _suffixes(frame, family)
    given = _titles(frame, _suffixes(frame, _segments(frame, given)))
    if len(family) > _LONGEST // 3 or any(token.is_describing for token in (*family, *given)):
        return None
    at = len(given)
    while at > 1 and given[at - 1].is_particle:
        at -= 1
    if all(_is_title(token) and not token.is_initial for token in given):
        frame.put("title", written(given))
        return with_particle((), family)
    return read_core((*given, *family), frame.known, family_from=at)


def _segments(frame: _Frame, tokens: Sequence[Token]) -> Sequence[Token]:
    """The tokens before the first marker; the names behind each marker are kept as the part that it announces."""
    for at in range(1, len(tokens)):
        if _is_title(tokens[at]) and all(_is_title(token) for token in tokens[:at]):
            continue
        if _is_born_of(tokens, at):  # `Anna z Nowaków Zielińska`
            frame.put("born_as", tokens[at + 1].text)
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
    names = [token for token in before if not (_is_title(token) or token.plain in words_of.KIN_WORDS)]
    is_given = bool(names) and all(token.is_given or token.is_initial for token in names)
    return is_given and not behind[-1].is_given and not behind[1].is_small


def _is_born_of(tokens: Sequence[Token], at: int) -> bool:
    """Whether a Polish `z`, and a family name of several behind it, tell of which family somebody was born."""
    behind = tokens[at + 1 : at + 2]
    return tokens[at].text in ("z", "ze") and bool(behind) and not behind[0].is_small and is_family_in_polish(behind[0])


def is_family_in_polish(token: Token) -> bool:
    """`Nowaków`, `Zielińskich`: the family as a whole, in the form behind `z`."""
    return token.plain.endswith(("ow", "skich", "ckich", "dzkich"))


def _suffixes(frame: _Frame, tokens: Sequence[Token]) -> Sequence[Token]:
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
            and (len(tokens) > 2 or tokens[-1].text.endswith(".") or _is_of_the_elder(tokens))
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
    names = [token for token in tokens[:-1] if not _is_title(token)]
    return _are_letters(tokens[-1]) and len(names) > 1 and not names[-1].is_initial


def _is_of_a_corps(tokens: Sequence[Token]) -> bool:
    """Whether a name ends in letters, behind a family name that is not of letters: `Len Drury NZE`."""
    last, before = tokens[-1], tokens[-2]
    is_letters = last.is_capitals and len(last.text) < 5 and last.text.isalpha() and not last.is_given
    return is_letters and len(tokens) > 2 and not (before.is_given or before.is_small or before.text.isupper())


_BEFORE_TITLES = frozenset("1st 2nd first second rt right very most nursing ward acting dowager".split())
"""What stands before some titles, and alone is none: `2nd Lieutenant`, `Rt. Rev.`."""


def _titles(frame: _Frame, tokens: Sequence[Token]) -> Sequence[Token]:
    """The tokens without titles and kin words at their beginning."""
    at = _leads_to_title(tokens, ("the", "an"))  # `The Hon. Mrs. Carew`
    if at and tokens[0].plain == "an":
        frame.put("title", tokens[0].text)  # `An tAthair Peadar`
    if len(tokens) == 3 and tokens[0].plain == "bean" and tokens[1].plain in ("ui", "mhic", "mhac"):
        frame.put("title", tokens[0].text)  # `Bean Uí Mhurchú`
        return (token_of(f"{tokens[1].text}\u00a0{tokens[2].text}"),)
    if _leads_to_title(tokens[at:], _BEFORE_TITLES):
        frame.put("title", tokens[at].text)
        at += 1
    if len(tokens) > at + 2 and tokens[at].plain in _MAKE_KIN and tokens[at + 1].plain in words_of.KIN_WORDS:
        frame.put("kin", written(tokens[at : at + 2]))  # `Great Aunt Sophie`
        return tokens[at + 2 :]
    while at < len(tokens) and (part := _title_part(tokens[at:], frame)):
        frame.put(part, tokens[at].text)
        at += 1
        for before in (("the",), ("le", "la"), _BEFORE_TITLES):  # `Capt. the Hon.`, `M. le curé`
            if _leads_to_title(tokens[at:], before) and (before != ("le", "la") or tokens[at].is_small):
                frame.put(part, tokens[at].text)
                at += 1
    return tokens[at:]


_MAKE_KIN = ("great", "grand", "step", "half", "foster", "gross", "stief")
"""Words before one of kin, that make another one with it."""


def _leads_to_title(tokens: Sequence[Token], words: Container[str]) -> int:
    """1 where one of these words and then a title, or another such word, open the tokens; else 0."""
    behind = tokens[1:]
    is_led = len(behind) > 1 and (_is_title(behind[0]) or _leads_to_title(behind, _BEFORE_TITLES) > 0)
    return int(is_led and tokens[0].plain in words)


def _title_part(tokens: Sequence[Token], frame: _Frame) -> str:
    """`title` or `kin` for a word that is one here, or an empty string."""
    first, *behind = tokens
    if first.plain in ("superior", "oberin", "superieure", "superiora") and frame.parts.get("title"):
        return "title"  # `Mother Superior`
    if first.text == "Man":  # `Old Man Crabbe`, but no husband of another language
        return "title" if frame.parts.get("title", "").endswith("Old") and behind else ""
    if not frame.parts.get("title") and _is_short_title(tokens) and first.plain not in words_of.KIN_WORDS:
        return "title"
    is_kin = first.plain in words_of.KIN_WORDS
    before = frame.parts.get("title", "").split(" ")[-1]
    if len(first.plain) == 1 and behind and (behind[0].is_initial or token_of(before).plain in _OF_WOMEN_IN_RELIGION):
        return ""  # `M. S. Rao`, `Sister M. Benedicta`
    if not (is_kin or _is_title(first)) or frame.known.is_given(first.plain):
        return ""
    if first.plain in words_of.KIN_WITH_AN_ACCENT and first.text.isascii() and not first.is_small and behind:
        return ""  # `Mere Tipene`
    has_accent = first.plain in words_of.KIN_WITH_AN_ACCENT and not first.text.isascii()
    also_given = first.is_given and not first.is_small and first.plain not in words_of.GRANDPARENTS and not has_accent
    if is_kin and also_given and len(behind) > 1:
        return ""  # `Mere Te Awa`, `Mari Anna Kask`: given names, and words of kin of other languages
    if not behind:
        if is_kin and frame.parts.get("title") and first.plain in words_of.RELIGIOUS_TITLES:
            return "title"  # `Reverend Mother`
        alone = first.is_small or (first.plain in words_of.KIN_ALONE and not (also_given and first.text.isascii()))
        return "kin" if is_kin and alone else ""
    if first.plain == "d" and len(behind) == 1 and not behind[0].is_given:
        return ""  # `D. Shaw`, an initial; `D. Amélia` is a lady
    leads = (
        first.text.endswith(".")
        or token_of(before).plain in ("rev", "reverend", "very")
        or (first.is_small and not behind[0].is_small)
    )  # `don Julián`
    may_be_given = not leads and (first.plain in words_of.EITHER or first.is_given)
    may_be_given = may_be_given and first.plain not in words_of.KIN_WITH_AN_ACCENT | words_of.GRANDPARENTS
    if may_be_given and len(behind) == 1 and not (is_kin and behind[0].is_given):
        return ""
    is_surely_kin = first.is_small or not _is_title(first) or first.plain in words_of.KIN_BEFORE_RELIGION
    return "kin" if is_kin and is_surely_kin else "title"


def _is_short_title(tokens: Sequence[Token]) -> bool:
    """Whether a small word with a point stands before a name written large: `kun. Juozas Tumas`, `id. Varga Pál`."""
    first, *behind = tokens
    is_short = first.is_small and first.text.endswith(".") and first.text.count(".") == 1 and len(first.plain) < 6
    return is_short and len(behind) > 1 and not any(token.is_small for token in behind)


def _is_title(token: Token) -> bool:
    if token.text == "Mª":
        return False
    joined = token.plain.removeprefix("l'").split("-")  # `l'abbé`
    if token.plain.rpartition("/")[2] in words_of.TITLES and "/" in token.plain:
        return True  # `L/Cpl.`
    joined = joined[1:] if joined[0] in ("rear", "sub", "under") and len(joined) > 1 else joined  # `Rear-Admiral`
    return all(word in words_of.TITLES for word in joined) or token.plain in words_of.RELIGIOUS_TITLES


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


def _with_title(frame: _Frame, core: Sequence[Token]) -> NameParts:
    """The core, with what a title before it says of it."""
    core = _title_inside(frame, core)
    last = token_of(frame.parts.get("title", "").split(" ")[-1]).plain
    if kin := frame.parts.get("kin"):
        of_respect = token_of(kin).plain in words_of.TURKISH_RESPECT
        if of_respect and not frame.known.is_family(core[-1].plain):
            return NameParts(given=written(core))  # `Mehmet Ali Bey`, who has no family name
        return _kin_alone(token_of(kin.split(" ")[-1]).plain, core, frame.known)
    if not last and frame.parts.get("nickname") and len(core) == 1 and not core[0].is_given:
        return with_particle((), core)  # `“Snowy” Tidmarsh`
    if not last:
        return read_core(core, frame.known)
    in_religion = last in words_of.ALWAYS_RELIGIOUS or _in_religion(core, frame.known)
    if in_religion and last not in words_of.ALWAYS_RELIGIOUS and _may_be_secular(last, core):
        asks = f"Is “{core[1].text}” a family name, or a part of the name in religion?"
        return replace(with_particle(core[:1], core[1:]), asks=asks)
    if last in words_of.RELIGIOUS_TITLES and last not in words_of.PRIESTS and in_religion:
        return NameParts(religious=written(core))
    if len([token for token in core if not token.is_particle]) == 1:
        of_an_order = token_of(frame.parts.get("suffix", "")).plain in _ORDERS
        return _titled_alone(last, core, frame.known, of_an_order=of_an_order)
    is_bound = core[0].plain in words_of.BOUND and not (core[0].is_given or core[0].is_initial)
    if is_bound and len(core) == 2:
        return with_particle((), core)  # `pastoor Van Dijk`
    read = read_core(core, frame.known)
    first = read.given.split()[:1]
    if last in _OF_WOMEN_IN_RELIGION and len(core) == 2 and core[0].plain in _MARY and read.family:
        return replace(read, asks=f"Is “{read.family}” a family name, or a part of the name in religion?")
    if last in words_of.WIFE_TITLES and first and token_of(first[0]).plain in MEN - WOMEN and read.family:
        frame.put("title", read.given)
        return replace(read, given="", family="", married_as=read.family)
    return read


_BY_GIVEN_NAME = ("abbot", "abbess", "prioress", "frater")
"""Titles in religion that no family name stands behind alone."""

_OF_WOMEN_IN_RELIGION = frozenset("sister sr schwester soeur suor sor hermana irma zuster siostra сестра".split())
_GIVEN_OR_FAMILY = frozenset(GIVEN_OR_FAMILY.split())
_MARY = frozenset("mary maria marie m".split())


def _may_be_secular(title: str, core: Sequence[Token]) -> bool:
    """`Sister Philippa Bruce`: a man's name behind a woman's, which may be her family name, but not behind `Mary`; and
    `Sister Mary Kelly`."""
    if title not in _OF_WOMEN_IN_RELIGION or len(core) != 2:
        return False
    is_of_a_man = core[1].plain in MEN - WOMEN and core[0].plain not in (*MEN, *_MARY)
    return is_of_a_man or core[1].plain in _GIVEN_OR_FAMILY - words_of.MYSTERIES


def _title_inside(frame: _Frame, core: Sequence[Token]) -> Sequence[Token]:
    """The core without a title before a particle: `Otto Graf von Lambsdorff`."""
    for at in range(1, len(core) - 2):
        is_noble = core[at].plain in words_of.NOBLE and core[at + 1].is_particle
        is_wife = core[at].plain == "bean" and core[at + 1].plain.split("\u00a0")[0] in ("ui", "mhic", "mhac")
        if is_noble or is_wife:  # `Máire Bean Uí Néill`
            frame.put("title", core[at].text)
            return (*core[:at], *core[at + 1 :])
    return core


def _kin_alone(kin: str, core: Sequence[Token], known: KnownNames) -> NameParts:
    """Names behind a kin word. A parent and a grandparent go by the family name as well (`Grandma Lomax`)."""
    name = core[0]
    is_given = name.is_given or known.is_given(name.plain) or name.plain in GIVEN_IN_PICTURES
    is_given = is_given or any(name.plain in names for names in GIVEN_ELSEWHERE)
    if len(core) > 1 or is_given:
        return read_core(core, known)
    kin = kin.removeprefix("great-").removeprefix("ur")
    by_family = kin in words_of.GRANDPARENTS or kin in words_of.ELDERS_BY_FAMILY_NAME
    if by_family or known.is_family(name.plain):
        return with_particle((), core)
    read = read_core(core, known)
    is_elder = words_of.KIN_WORDS.get(kin) in _ELDERS and read.given
    return replace(read, asks=f"Is “{name.text}” a given name or a family name?") if is_elder else read


_ELDERS = frozenset("mother father grandmother grandfather great-grandmother great-grandfather".split())

_ORDERS = frozenset("osb sj op ofm csc rsm".split())


def _titled_alone(title: str, core: Sequence[Token], known: KnownNames, *, of_an_order: bool) -> NameParts:
    """One name behind a title: a family name, but a given one behind some titles and where it is known as one."""
    name = core[-1]
    given = known.is_given(name.plain) and not known.is_family(name.plain)
    if title in words_of.GIVEN_TITLES:
        given = given or title not in words_of.DOUBTFUL_GIVEN_TITLES or name.is_given
    elif title in words_of.RELIGIOUS_TITLES:
        given = given or name.is_given or of_an_order or title in _BY_GIVEN_NAME
    is_of_both = not given and name.plain in _GIVEN_OR_FAMILY and title in _OF_WOMEN_IN_RELIGION
    if is_of_both and not known.is_family(name.plain):  # `Sr. Clare`
        return NameParts(religious=written(core), asks=f"Is “{name.text}” a family name, or the name in religion?")
    if given and title in words_of.RELIGIOUS_TITLES and title not in words_of.PRIESTS:
        return NameParts(religious=written(core))
    return NameParts(given=written(core)) if given else with_particle((), core)


def _in_religion(core: Sequence[Token], known: KnownNames) -> bool:
    """Whether names behind `Sister` are all given ones: a name in religion."""
    last = core[-1]
    if known.is_family(last.plain):
        return False
    return all(_is_of_religion(token) for token in core)


def _is_of_religion(token: Token) -> bool:
    plain = token.plain.removeprefix("l'")
    of_a_saint = (plain, f"{plain[:-1]}us", plain[:-1], f"{plain[:-1]}e")  # `Benedicta`, `Aloysia`, `Ignatia`
    named = (
        token.is_given
        or token.is_particle
        or token.is_initial
        or any(word in words_of.MYSTERIES for word in of_a_saint)
    )
    return named or plain.startswith(("saint-", "sainte-", "st-")) or plain in ("the", "most", "st", "saint", "sainte")

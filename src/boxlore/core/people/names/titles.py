"""Titles and words of kin before a name, and what they say of it: which of its words are given, the family's, or a name
in religion."""

from collections.abc import Container, Sequence
from dataclasses import replace

from boxlore.core.people.names import words_table as words_of
from boxlore.core.people.names.frame import Frame
from boxlore.core.people.names.lists_table import (
    FAMILY_TOO,
    GIVEN_ELSEWHERE,
    GIVEN_IN_PICTURES,
    ITALIAN_GIVEN,
    MEN,
    MEN_ALONE,
    PORTUGUESE_GIVEN,
    SPANISH_GIVEN,
)
from boxlore.core.people.names.particles import with_particle
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.tokens import Token, token_of, written
from boxlore.core.people.names.traditions import KnownNames, read_core

_BEFORE_TITLES = frozenset("1st 2nd first second rt right very most nursing ward acting dowager".split())
"""What stands before some titles, and alone is none: `2nd Lieutenant`, `Rt. Rev.`."""


def without_titles(frame: Frame, tokens: Sequence[Token]) -> Sequence[Token]:
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


_GIVEN_OF_DONS = SPANISH_GIVEN | PORTUGUESE_GIVEN | ITALIAN_GIVEN

_MAKE_KIN = ("great", "grand", "step", "half", "foster", "gross", "stief")
"""Words before one of kin, that make another one with it."""


def _leads_to_title(tokens: Sequence[Token], words: Container[str]) -> int:
    """1 where one of these words and then a title, or another such word, open the tokens; else 0."""
    behind = tokens[1:]
    is_led = len(behind) > 1 and (is_title(behind[0]) or _leads_to_title(behind, _BEFORE_TITLES) > 0)
    return int(is_led and tokens[0].plain in words)


def _title_part(tokens: Sequence[Token], frame: Frame) -> str:
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
    if len(first.plain) == 1 and behind and (behind[0].is_initial or token_of(before).plain in OF_WOMEN_IN_RELIGION):
        return ""  # `M. S. Rao`, `Sister M. Benedicta`
    if not (is_kin or is_title(first)) or frame.known.is_given(first.plain):
        return ""
    if first.plain in words_of.KIN_WITH_AN_ACCENT and first.text.isascii() and not first.is_small and behind:
        return ""  # `Mere Tipene`
    has_accent = first.plain in words_of.KIN_WITH_AN_ACCENT and not first.text.isascii()
    also_given = first.is_given and not first.is_small and first.plain not in words_of.GRANDPARENTS and not has_accent
    if is_kin and also_given and len(behind) > 1:
        return ""  # `Mere Te Awa`, `Mari Anna Kask`: given names, and words of kin of other languages
    if not behind:
        if is_kin and frame.parts.get("kin") and not first.is_small:
            return ""  # `tante Mies`, where `mies` is a husband of another language
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
    is_don = first.plain in ("don", "dona") and behind[0].plain in _GIVEN_OF_DONS and behind[0].plain not in MEN_ALONE
    if may_be_given and len(behind) == 1 and not (is_kin and behind[0].is_given) and not is_don:
        return ""
    if first.plain == "padre" and behind[0].is_given:
        return "title"  # `el padre Ángel`
    is_surely_kin = first.is_small or not is_title(first) or first.plain in words_of.KIN_BEFORE_RELIGION
    return "kin" if is_kin and is_surely_kin else "title"


def _is_short_title(tokens: Sequence[Token]) -> bool:
    """Whether a small word with a point stands before a name written large: `kun. Juozas Tumas`, `id. Varga Pál`."""
    first, *behind = tokens
    is_short = first.is_small and first.text.endswith(".") and first.text.count(".") == 1 and len(first.plain) < 6
    return is_short and len(behind) > 1 and not any(token.is_small for token in behind)


def is_title(token: Token) -> bool:
    if token.text == "Mª":
        return False
    joined = token.plain.removeprefix("l'").split("-")  # `l'abbé`
    if token.plain.rpartition("/")[2] in words_of.TITLES and "/" in token.plain:
        return True  # `L/Cpl.`
    joined = joined[1:] if joined[0] in ("rear", "sub", "under") and len(joined) > 1 else joined  # `Rear-Admiral`
    return all(word in words_of.TITLES for word in joined) or token.plain in words_of.RELIGIOUS_TITLES


def with_title(frame: Frame, core: Sequence[Token]) -> NameParts:
    """The core, with what a title before it says of it."""
    core = _with_younger(_title_inside(frame, core))
    last = token_of(frame.parts.get("title", "").split(" ")[-1]).plain
    if kin := frame.parts.get("kin"):
        of_respect = token_of(kin).plain in words_of.TURKISH_RESPECT
        if of_respect and not frame.known.is_family(core[-1].plain):
            return NameParts(given=written(core))  # `Mehmet Ali Bey`, who has no family name
        return _kin_alone(token_of(kin.split(" ")[-1]).plain, core, frame.known)
    if not last and frame.parts.get("nickname") and len(core) == 1 and not core[0].is_given:
        return with_particle((), core)  # `“Snowy” Tidmarsh`
    if _is_a_family_name(core):
        return with_particle((), core)
    if not last:
        read = read_core(core, frame.known)
        is_rank = core[0].plain in _RANKS_AND_NAMES and not core[0].is_small and len(core) == 2 and read.family != ""
        asks = f"Is “{core[0].text}” a given name, or a title?" if is_rank and not read.asks else read.asks
        return replace(read, asks=asks)  # `Earl Rourke`
    in_religion = last in words_of.ALWAYS_RELIGIOUS or is_in_religion(core, frame.known)
    if in_religion and last not in words_of.ALWAYS_RELIGIOUS and _may_be_secular(last, core):
        asks = f"Is “{core[1].text}” a family name, or a part of the name in religion?"
        return replace(with_particle(core[:1], core[1:]), asks=asks)
    if last == "sr" and core[0].plain in MEN_ALONE:
        return read_core(core, frame.known)  # `Sr. António`, and no sister
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
    if last in OF_WOMEN_IN_RELIGION and len(core) == 2 and core[0].plain in _MARY and read.family:
        return replace(read, asks=f"Is “{read.family}” a family name, or a part of the name in religion?")
    if last in words_of.WIFE_TITLES and first and token_of(first[0]).plain in MEN_ALONE and read.family:
        frame.put("title", read.given)
        return replace(read, given="", family="", married_as=read.family)
    return read


def _is_a_family_name(core: Sequence[Token]) -> bool:
    """`Mevrouw Van der Linden`, `Van den Akker`: particles alone before the last word, the first of them large."""
    first, *others = core
    particles = first.plain in words_of.BOUND & words_of.PARTICLES and not (first.is_small or first.is_initial)
    return particles and len(others) > 1 and all(token.is_particle for token in others[:-1])


_RANKS_AND_NAMES = ("earl", "duke", "baron", "graf", "count", "king", "prince")
"""Ranks of nobles, which are given names, and what somebody is called, too."""

_BY_GIVEN_NAME = ("abbot", "abbess", "prioress", "frater")
"""Titles in religion that no family name stands behind alone."""

OF_WOMEN_IN_RELIGION = frozenset("sister sr schwester soeur suor sor hermana irma zuster siostra сестра".split())
_MARY = frozenset("mary maria marie m".split())


def _may_be_secular(title: str, core: Sequence[Token]) -> bool:
    """`Sister Philippa Bruce`: a man's name behind a woman's, which may be her family name, but not behind `Mary`; and
    `Sister Mary Kelly`."""
    if title not in OF_WOMEN_IN_RELIGION or len(core) != 2:
        return False
    is_of_a_man = core[1].plain in MEN_ALONE and core[0].plain not in (*MEN, *_MARY)
    return is_of_a_man or core[1].plain in FAMILY_TOO - words_of.MYSTERIES


def _with_younger(core: Sequence[Token]) -> Sequence[Token]:
    """The core with `Óg` (the younger) and the like as one with the given name before them: `Patrick Óg Ó Briain`."""
    for at in range(1, len(core) - 1):
        if core[at].text in _TOLD_APART and core[at + 1].text in _OF_THE_IRISH:
            return (*core[: at - 1], token_of(written(core[at - 1 : at + 1])), *core[at + 1 :])
    return core


_NOBLE_ALONE = words_of.NOBLE - {"baron", "edler", "ritter", "parun"}

_TOLD_APART = ("Óg", "Mór", "Beag", "Rua", "Bán")
_OF_THE_IRISH = ("Ó", "Mac", "Mc", "Ní", "Nic", "Uí", "De")


def _title_inside(frame: Frame, core: Sequence[Token]) -> Sequence[Token]:
    """The core without a title before a particle, `Otto Graf von Lambsdorff`, or, where a given name leads and it
    is no name, before the family name: `Otto Graf Lambsdorff`."""
    for at in range(1, len(core) - 1):
        is_noble = core[at].plain in words_of.NOBLE and core[at + 1].is_particle
        is_noble = is_noble or (core[at].plain in _NOBLE_ALONE and core[0].is_given and not core[at + 1].is_given)
        is_wife = (
            len(core) > at + 2
            and core[at].plain == "bean"
            and core[at + 1].plain.split("\u00a0")[0] in ("ui", "mhic", "mhac")
        )
        if is_noble or is_wife:  # `Máire Bean Uí Néill`
            frame.put("title", core[at].text)
            return (*core[:at], *core[at + 1 :])
    return core


def _kin_alone(kin: str, core: Sequence[Token], known: KnownNames) -> NameParts:
    """Names behind a kin word. A parent and a grandparent go by the family name as well (`Grandma Lomax`)."""
    name = core[0]
    is_given = name.is_given or known.is_given(name.plain)
    is_given = is_given or name.plain in GIVEN_IN_PICTURES or name.plain in GIVEN_ELSEWHERE
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
    is_known = name.is_given or known.is_given(name.plain) or known.is_family(name.plain)
    if title in ("prince", "princess") and not is_known:
        asks = f"Is “{name.text}” a given name, or the family's?"  # `Prince Rourke`
        return NameParts(given=written(core), asks=asks)
    if is_title(name) and name.plain == title and not known.is_family(name.plain):
        return replace(with_particle((), core), asks=f"Is “{name.text}” a name, or a title?")  # `Major Major`
    given = known.is_given(name.plain) and not known.is_family(name.plain)
    if title in words_of.GIVEN_TITLES:
        given = given or title not in words_of.DOUBTFUL_GIVEN_TITLES or name.is_given
    elif title in words_of.RELIGIOUS_TITLES:
        given = given or name.is_given or of_an_order or title in _BY_GIVEN_NAME
    is_of_both = not given and name.plain in FAMILY_TOO and title in OF_WOMEN_IN_RELIGION
    if is_of_both and not known.is_family(name.plain):  # `Sr. Clare`
        return NameParts(religious=written(core), asks=f"Is “{name.text}” a family name, or the name in religion?")
    if given and title in words_of.RELIGIOUS_TITLES and title not in words_of.PRIESTS:
        return NameParts(religious=written(core))
    return NameParts(given=written(core)) if given else with_particle((), core)


def is_in_religion(core: Sequence[Token], known: KnownNames) -> bool:
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

"""Places as they are told: the words taken apart, and a name as the index knows it."""

import re
import unicodedata
from dataclasses import dataclass
from itertools import islice, product

from boxlore.core.places.doubt import without_doubt
from boxlore.core.places.nearness import near_of
from boxlore.core.statements import fold


@dataclass(frozen=True, slots=True)
class Parts:
    """Told words taken apart: parts from small to large; other names of the smallest; how far from it.

    `near_words` are the words of nearness themselves, such as `about 3 miles from`.
    """

    parts: tuple[str, ...]
    names: tuple[str, ...] = ()
    sublocation: str = ""
    unsure: bool = False
    near_km: float = 0
    near_words: str = ""


_DATE_TAIL = re.compile(r"[,;]?\s+(?:c\.?|ca\.?|circa|about|in)?\s*1[5-9]\d\d(?:s|\?|[-/]\d{2,4})?\s*$", re.IGNORECASE)
_CLAUSE = re.compile(
    r",\s+(?:where|when|which|who|while|before we|after we|wo|als|où|quand|kus|kui|gdzie|kiedy|где|когда|ahol|amikor|"
    r"jossa|där|när|hvor|waar|kde|když|dove|quando|donde|cuando|onde)\s.*$"
)
"""What is told of the place in a clause: `Waipu, where the settlers came`."""
_NOW = re.compile(
    r"^(?P<one>[^,(]+?)\s*(?:\(\s*(?:now|today|formerly|later|nyní|heute|jetzt|nüüd)\s+(?P<two>[^)]+)\)|,\s*now\s+(?P<three>[^,]+))(?P<rest>.*)$",
    re.IGNORECASE,
)
_BY_A_LETTER = re.compile(r"(?<=\b\w)/(?=\w)|/(?=\w\b)")
"""A stroke in an abbreviation, which parts no names: `Halle a/S`, `Neisse O/S`, `Frankfurt a/Main`."""
_SHIP_STROKE = re.compile(r"(?:^|,\s*)[A-Za-z]/[A-Za-z]\.?\s")
"""The letters before the name of a ship (`s/s Arcturus`), which part no names either."""
_BRACKET = re.compile(r"^(?P<one>[^(]+?)\s*\((?P<two>[^)]+)\)(?P<rest>.*)$")
MOST_LETTERS = 400


def take_apart(text: str, *, is_near: bool = True) -> Parts:
    """The parts of told words: qualifiers off, “near”, several names of one place, commas from small to large.

    Without `is_near` words of nearness are part of a name (`Bernau bei Berlin`).
    """
    words = " ".join("".join(" " if unicodedata.category(letter)[0] == "C" else letter for letter in text).split())
    if not words or len(words) > MOST_LETTERS:
        return Parts(())
    words = _DATE_TAIL.sub("", _CLAUSE.sub("", words))
    unsure = "?" in words or (words.startswith("[") and words.endswith("]"))
    words, in_doubt = without_doubt(words.strip("[]").replace("?", "").strip())
    unsure = unsure or in_doubt
    near_km, sublocation, near_words = 0.0, "", ""
    if is_near and (near := near_of(words)) is not None:
        near_km, sublocation, near_words, words = near.km, near.before, near.words, near.anchor
    words, names = _names(words)
    parts = tuple(part.strip() for part in words.split(",") if part.strip(" ."))
    return Parts(parts, names, sublocation, unsure, near_km, near_words)


def _names(words: str) -> tuple[str, tuple[str, ...]]:
    """`A (now B), C` → `A, C` and (B,); `A / B` → `A` and (B,); a bracketed area becomes context."""
    if (now := _NOW.match(words)) is not None:
        rest = now["rest"].strip(" ,")
        return f"{now['one']}, {rest}" if rest else now["one"], ((now["two"] or now["three"]).strip(),)
    if (bracket := _BRACKET.match(words)) is not None:
        rest = bracket["rest"].strip(" ,")
        joined = ", ".join(part for part in (bracket["one"], bracket["two"], rest) if part)
        return joined, ()
    if _SHIP_STROKE.search(words):
        return words, ()
    first, slash, second = _BY_A_LETTER.sub(". ", words).partition("/")
    words = first + slash + second
    if slash and first.strip() and second.strip():
        name, comma, rest = second.partition(",")
        return first.strip() + (f", {rest.strip()}" if comma else ""), (name.strip(),)
    return words, ()


_MARKS = str.maketrans({"-": " "} | dict.fromkeys(".'’ʼ`ʻ", ""))
_SHORTENED = {"saint": "st", "sainte": "st", "ste": "st", "sankt": "st", "sint": "st", "mount": "mt", "fort": "ft"}


def fold_place(name: str) -> str:
    """A place's name as the index knows it: folded, no dots or apostrophes, saint, mount and fort shortened."""
    first, *more = fold(name).translate(_MARKS).split() or [""]
    return " ".join((_SHORTENED.get(first, first) if more else first, *more))


_DIRECTIONS = frozenset("north south east west upper lower nord sud ost ober unter norra sodra ostra vastra".split())


def directions_in(folded: str) -> list[str]:
    """The words of a folded name that tell it from another of the same name: `south` of `palmerston south`."""
    return [word for word in folded.split() if word in _DIRECTIONS]


_WRITTEN_OUT = {
    "is": ("Island", "Islands"), "isl": ("Island", "Islands"), "i": ("Island",), "sth": ("South",), "nth": ("North",),
    "pt": ("Point", "Port"), "hbr": ("Harbour",), "harb": ("Harbour",), "r": ("River",), "riv": ("River",),
    "l": ("Lake",), "lk": ("Lake",), "ck": ("Creek",), "cr": ("Creek",), "hd": ("Head",), "hds": ("Heads",),
    "pen": ("Peninsula",), "jn": ("Junction",), "junc": ("Junction",), "hts": ("Heights",), "gt": ("Great",),
    "lr": ("Lower",), "lwr": ("Lower",), "upr": ("Upper",), "mtn": ("Mountain",), "mts": ("Mountains",),
    "mtns": ("Mountains",), "spgs": ("Springs",), "rds": ("Roads",), "vly": ("Valley",), "vall": ("Valley",),
    "bch": ("Beach",), "b": ("Bay",), "c": ("Cape",), "n": ("North",), "s": ("South",), "e": ("East",), "w": ("West",),
    "gr": ("Groß", "Great"), "kl": ("Klein",), "wlkp": ("Wielkopolski",), "maz": ("Mazowiecki",),
    "nw": ("Nowy",), "co": ("County",), "pr": ("Preußisch",),
}  # fmt: skip
"""Words of names as they are shortened, in small letters, and what each may be (common practice, no source)."""
_NTH = re.compile(r"\b([NS]th)\b\.?(?=\s+[^\W\d_]|\s*(?:,|$))", re.IGNORECASE)


def with_directions(words: str) -> str:
    """The words with `nth` and `sth` written out, which can be nothing else: `nth Otago` → `North Otago`."""
    return _NTH.sub(lambda match: _WRITTEN_OUT[match[1].casefold()][0], words)


_MOUNTAIN = re.compile(r"(?<=\w\s)Mt\.?(?=,|$)")
"""`Table Mt.` is no mount."""
MOST_WRITTEN_OUT = 4


def written_out(told: str) -> tuple[str, ...]:
    """The words with their shortened ones written out, in each way that they may be: `Kaka Pt` → Point, Port."""
    words = _MOUNTAIN.sub("Mountain", told)
    tokens = [(token, token.rstrip(",")) for token in words.split()]
    may_be = [
        [full + token[len(bare) :] for full in _WRITTEN_OUT.get(bare.rstrip(".").casefold(), ())]
        if bare[:1].isupper() and len(tokens) > 1
        else []
        for token, bare in tokens
    ]
    if not any(may_be):
        return (words,) if words != told else ()
    ways = product(*(full or [token] for full, (token, _) in zip(may_be, tokens, strict=True)))
    return tuple(map(" ".join, islice(ways, MOST_WRITTEN_OUT)))


_TWO_JOINED = re.compile(
    r"^(?P<town>[^\W\d_][^,/-]{2,}?)(?:\s*[-–]\s*)(?P<part>(?-i:[^\W\da-z])[^,/-]{2,})(?P<rest>(?:,.*)?)$"
)


def part_of_town(words: str) -> tuple[str, str] | None:
    """`Szczecin-Dąbie` → `Dąbie` and `Szczecin`: a part and its town, joined; None for other words."""
    joined = _TWO_JOINED.match(words)
    if joined is None or not all(word[0].isupper() for word in f"{joined['town']} {joined['part']}".split()):
        return None
    return joined["part"], joined["town"] + joined["rest"]


_DISTRICT = re.compile(
    r"^(?:(?:land)?kreis|kr\.?|amt|powiat|pow\.?|bezirk|bez\.|(?:ritter)?gut|herrenhaus|majątek|имение|мыза|"
    r"(?:haupt)?bahnhof|kurhaus|rathaus|hafen|(?:dp-|durchgangs|flüchtlings)?lager|kloster|fliegerhorst|flugplatz|(?:ost|nord)?seebad|schlo(?:ss|ß)|pastorat|kirchspiel|dorf|stadt|flecken|gmina|wieś|okres|obec|vesnice|dworzec|stacja|"
    r"станция|ст\.|село|деревня|дер\.|город|гор\.|г\.|посёлок|пос\.)\s+(?P<after>\S.*)$"
    r"|^(?P<before>.*\S)\s+(?:губерния|губернии|губ\.|область|области|обл\.|уезд|уезде|уезда|uyezd|uezd|ujezd|kreis|powiat|rayon|raion|rajon|volost|vald|kihelkond|parish|mõis|manor)$",
    re.IGNORECASE,
)


def without_district(words: str) -> str:
    """`Kreis Heilsberg`, `Kunda manor` -> `Heilsberg`, `Kunda`: the town after which they are called."""
    district = _DISTRICT.match(words)
    return district["after"] or district["before"] if district else words


def is_district(words: str) -> bool:
    """Whether the words name a district, or an estate, after its town."""
    return without_district(words) != words


_CLOSE = re.compile(r"(?<=\b[a-zäöü])\.(?=[^\W\d_])")


def spaced(words: str) -> str:
    """The words with a blank behind the dot of a small letter: `Rothenburg o.d.T.` → `Rothenburg o. d. T.`"""
    return _CLOSE.sub(". ", words)


_BEFORE_RIVER = re.compile(r"(?<=[a-zäöüß])/(?=[A-ZÄÖÜ]\.(?:,|$))")
"""A stroke before the letter of a river, in German (common practice, no source)."""


def at_river(words: str) -> str:
    """The words with such a stroke written out: `Frankfurt/O.` → `Frankfurt a. O.`, which is not in Ohio."""
    return _BEFORE_RIVER.sub(" a. ", words)


_STROKE = re.compile(r"^(?P<town>[^\W\d_][^,/()]*[^\s,/()])/(?P<behind>[^\W\d_][^,/()]+)(?P<rest>(?:,.*)?)$")


def with_epithets(words: str) -> tuple[str, ...]:
    """A town and what tells it from others behind a stroke, as such names are written out: `Frankfurt/Oder` →
    `Frankfurt (Oder)`, `Frankfurt an der Oder` and more; none where the words have no stroke.
    """
    told = _STROKE.match(words)
    if told is None:
        return ()
    joining = ("{} ({})", "{} an der {}", "{} am {}", "{} im {}", "{} in {}")
    return tuple(form.format(told["town"], told["behind"]) + told["rest"] for form in joining)


_GERMAN_QUALIFIER = re.compile(
    r"^(?P<town>[^\W\d_][^,/()]*?)\s+(?P<joining>[aio])\.\s?(?:d\.\s?)?(?P<short>[^\W\d_]+)\.?(?P<rest>(?:,.*)?)$"
)
_GERMAN_REGIONS = {
    "w": ("Westfalen",), "h": ("Holstein",), "holst": ("Holstein",), "m": ("Mecklenburg",), "meckl": ("Mecklenburg",),
    "th": ("Thüringen",), "thür": ("Thüringen",), "sa": ("Sachsen",), "v": ("Vogtland",), "vogtl": ("Vogtland",),
    "b": ("Böhmen", "Bayern", "Baden"), "pom": ("Pommern",), "pomm": ("Pommern",), "pos": ("Posen",),
    "schl": ("Schlesien",), "erzgeb": ("Sachsen",), "e": ("Elsass", "Sachsen"), "els": ("Elsass",), "o": ("Odenwald",),
    "r": ("Riesengebirge", "Rheinland"), "rhld": ("Rheinland",), "westf": ("Westfalen",), "hann": ("Hannover",),
    "württ": ("Württemberg",), "bad": ("Baden",), "bay": ("Bayern",), "fr": ("Franken",), "opf": ("Oberpfalz",),
    "p": ("Pommern", "Pfalz"), "pr": ("Preußen",),
}  # fmt: skip
_GERMAN_RIVERS = {
    "w": ("Warthe", "Weser"), "l": ("Lech", "Lahn"), "s": ("Saale",), "h": ("Havel",), "m": ("Main",), "o": ("Oder",),
    "rh": ("Rhein",), "d": ("Donau",), "e": ("Elbe",), "n": ("Neckar", "Netze"), "t": ("Tauber",), "i": ("Inn",),
    "r": ("Ruhr", "Rhein"), "a": ("Aller", "Aisch"), "rbge": ("Rübenberge",),
}  # fmt: skip
"""What German names have behind `i.` and `a.` to tell them from others (common practice, no source)."""


def with_qualifier(words: str) -> tuple[str, ...]:
    """A town with what tells it from others, shortened in the German way, as it may be written out: `Schwerin i. M.` →
    `Schwerin, Mecklenburg`, `Landsberg a. W.` → `Landsberg an der Warthe`; none for other words.
    """
    told = _GERMAN_QUALIFIER.match(words)
    if told is None:
        return ()
    town, short, rest = told["town"], told["short"].casefold(), told["rest"]
    if told["joining"] == "i":
        return tuple(f"{town}, {region}{rest}" for region in _GERMAN_REGIONS.get(short, ()))
    forms = ("{} an der {}", "{} am {}", "{} ({})") if told["joining"] == "a" else ("{} ob der {}",)
    rivers = _GERMAN_RIVERS.get(short, (told["short"],))
    return tuple(form.format(town, river) + rest for river in rivers for form in forms)


_ON_THE_WAY = re.compile(
    r"^(?:(?:way|right|just|back|away|somewhere|here|there)\s+)*"
    r"(?:up|down|out|over|along|back|away|home|here|there|somewhere(?=\s+(?:in|at|on)\b))\s+"
    r"(?:(?P<small>(?:in|at|on|to|from|the)\b.*)|(?-i:(?P<name>[^\W\d_a-z].*)))$",
    re.IGNORECASE,
)
"""Words that say which way one went, and nothing of the place: `up at Lake George`, `way down the Catlins`."""


def without_way(words: str) -> str:
    """The words without those that only say which way one went."""
    told = _ON_THE_WAY.match(words)
    rest = (told["small"] or ("" if words[0].isupper() else told["name"])) if told is not None else words
    return rest if any(letter.isupper() for letter in rest) else words


_IN = re.compile(
    r"^(?:(?P<before>\S.*)\s)?(?:in|at|im|auf|am|à|dans|w|we|в|во|на|på|(?-i:na|i|te|em|en|a|u))\s+(?P<place>\S.*)$",
    re.IGNORECASE,
)
_OF = re.compile(r"^(?P<before>(?:the|our|my|his|her|their)\s+[a-z].*)\s+of\s+(?P<place>\S.*)$")


def parted_at_in(words: str) -> tuple[str, ...] | None:
    """`the wharf at Lyttelton` -> what it is, and the place that it is in; None where no place stands behind."""
    told = _IN.match(words) or _OF.match(words)
    if told is None or not told["place"][0].isupper():
        return None
    return tuple(part for part in (told["before"], told["place"]) if part)

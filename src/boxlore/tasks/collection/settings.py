"""`boxlore.toml`: what a keeper may set for a collection, read with every fault said in a sentence."""

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, fields, replace
from datetime import date
from pathlib import Path

from boxlore.core.dates import phrases
from boxlore.core.dates.family_display import FamilyWay
from boxlore.core.errors import WrongUse
from boxlore.core.fields.guard import check_language
from boxlore.core.fields.language import language_tag
from boxlore.core.fields.letters import is_blank
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not, write_whole

FILE_NAME = "boxlore.toml"

_COUNTRIES = re.compile(r"([A-Z]{2}( [A-Z]{2})*)?")
_PREFIX = re.compile(r"[A-Z][A-Z0-9]{1,6}")  # it begins names of files, so nothing else may stand in it


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """One collection's settings. Each is explained in the file that `as_toml` writes."""

    title: str = "Family photographs"
    prefix: str = "FAM"
    series: str = "A"
    holder: str = ""
    contact: str = ""
    family: str = ""
    history: str = ""
    custody: str = ""
    language: str = "en"
    day_order: str = ""
    hemisphere: str = "north"
    countries: str = ""
    living_years: int = 100
    bracketed_titles: bool = False
    paper: str = "a4"
    fixity_days: int = 365
    backups_mb: int = 1000
    clock_right_on: str = ""
    meeting: str = ""


_ALLOWED: Mapping[str, tuple[object, ...]] = {
    "day_order": ("", "dmy", "mdy"),
    "hemisphere": ("north", "south"),
    "paper": ("a4", "letter"),
}

_WHY: Mapping[str, str] = {
    "title": "The collection's title, as archives and albums shall carry it.",
    "prefix": "Two to seven capital letters or digits, a letter first, that begin every number.",
    "series": "The letter of this working copy; a copy on another desk has another, so numbers never clash.",
    "holder": "Who holds the originals.",
    "contact": "How an archive reaches whoever holds them: address, telephone, mail. Only its closed part has it.",
    "family": "Whose photographs they are, as a finding aid has it: “Tamm family” (DACS 2.6).",
    "history": "The family in a few sentences: where it lived and moved, what it lived by (DACS 2.7).",
    "custody": "How the photographs came down to whoever holds them (DACS 5.1).",
    "language": "The language told in when nothing else is said (a BCP 47 tag: en, et, mi).",
    "day_order": "How 7/4/52 is meant: dmy, mdy, or empty to be asked each time.",
    "hemisphere": "Where summers are meant: north or south.",
    "countries": "Whose holidays are meant, and whose places come first: “NZ EE” (ISO 3166-1); empty to be asked.",
    "living_years": "Someone born longer ago than this, no death known, is presumed dead.",
    "bracketed_titles": "true: titles made by us stand in square brackets; false: they do not (DACS 2.3.3).",
    "paper": "a4 or letter.",
    "fixity_days": "After so many days the scans are due to be read again (boxlore verify).",
    "backups_mb": "Megabytes that the backups of the database may take; the oldest thin out, the newest always stays.",
    "meeting": "Where desks meet (boxlore meet): postgresql://NAME@HOST/DATABASE, never with a password; or empty.",
    "clock_right_on": "A day on which this machine's clock was found right, though Boxlore doubts it; or empty.",
}


def as_toml(settings: Settings) -> str:
    """The settings as the file a keeper reads: every line with its reason above it."""
    lines = ["# Settings of this collection. Change the right-hand sides; keep the names.", ""]
    for field in fields(Settings):
        lines += [f"# {_WHY[field.name]}", f"{field.name} = {toml_value(getattr(settings, field.name))}", ""]
    return "\n".join(lines)


def toml_value(value: object) -> str:
    """A truth, a whole number, a text or a list of them, as TOML writes it."""
    if isinstance(value, tuple):
        return f"[{', '.join(map(toml_value, value))}]"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int):
        return str(value)
    escaped = str(value).replace("\\", "\\\\").replace('"', '\\"')
    return '"' + "".join(letter if letter.isprintable() else f"\\U{ord(letter):08x}" for letter in escaped) + '"'


def read_settings(folder: Path) -> Settings:
    """Read `boxlore.toml` of a collection. Raises WrongUse naming the line or the setting at fault."""
    path = folder / FILE_NAME
    try:
        with open_regular(path) as file:
            values = tomllib.loads(file.read().decode("utf-8-sig"))  # some editors begin with a mark
    except FileNotFoundError:
        return Settings()
    except OSError as error:
        raise could_not(error, path, reading=True) from error
    except (tomllib.TOMLDecodeError, UnicodeDecodeError, RecursionError) as error:
        raise WrongUse(f"{path} cannot be read: {error}.", "Mend that line; nothing else was touched.") from error
    known = {field.name: field.type for field in fields(Settings)}
    for name, value in values.items():
        if name not in known:
            raise WrongUse(f"{path} has a setting “{name}” that there is none of.", f"Known: {', '.join(known)}.")
        _check(f"{path}: ", name, value)
    settings = Settings(**values)
    return replace(settings, language=language_tag(settings.language) or settings.language)


def keep_setting(folder: Path, name: str, words: str) -> Settings:
    """Write one setting into the file, and leave its other lines as they are. Returns the settings as they are then.
    Raises WrongUse for words that no setting may have, or where the line cannot be found by its name."""
    path, line = folder / FILE_NAME, f"{name} = {toml_value(words)}"
    before = read_settings(folder)
    try:
        with open_regular(path) as file:
            text = file.read().decode("utf-8-sig")
    except FileNotFoundError:
        text = as_toml(before)
    changed, count = re.subn(rf"(?m)^{name}[ \t]*=.*$", lambda _: line, text, count=1)
    changed = changed if count else f"{line}\n{text}"
    settings = replace(before, **{name: words})  # type: ignore[arg-type]  # only settings that are texts are kept so
    check_settings(settings)
    try:
        is_so = tomllib.loads(changed).get(name) == words
    except tomllib.TOMLDecodeError:
        is_so = False
    if not is_so:
        raise WrongUse(f"“{name}” could not be written into {path}.", "Write it there by hand.")
    write_whole(path, changed.encode())
    return settings


ALWAYS = ("title", "prefix")
"""Settings that every collection has been started with; a file that lacks them has lost more than these."""


def lost_settings(folder: Path) -> str:
    """A sentence where the file is gone, is empty or ends too early, so that what is usual stands for what it said."""
    path = folder / FILE_NAME
    try:
        with open_regular(path) as file:
            values = tomllib.loads(file.read().decode("utf-8-sig"))
    except FileNotFoundError:
        values = {}
    if not (lost := [name for name in ALWAYS if name not in values]):
        return ""
    what = "is empty or not there" if not values else f"lacks {' and '.join(lost)}"
    usual = ", ".join(f"{name} {getattr(Settings(), name)}" for name in lost)
    return f"{path} {what}; what is usual stands for it ({usual}). Bring it back, or write these lines anew."


def check_settings(settings: Settings) -> None:
    """Raises WrongUse, naming the setting at fault, for values that a new collection cannot have."""
    for field in fields(Settings):
        _check("", field.name, getattr(settings, field.name))
    if is_blank(settings.title):
        raise WrongUse("The title is empty.", "Write what the collection is called.")
    try:
        check_language(settings.language)
    except WrongUse as error:
        raise WrongUse(f"language: {error.problem}", error.what_to_do) from None


def _check(where: str, name: str, value: object) -> None:
    wanted = type(getattr(Settings(), name))
    if type(value) is not wanted:
        raise WrongUse(f"{where}{name} must be {_KINDS[wanted]}, not {value!r}.")
    if isinstance(value, str) and any("\ud800" <= letter <= "\udfff" for letter in value):
        raise WrongUse(f"{where}{name} has letters that are no text (a name that is not in UTF-8).", "Write it anew.")
    if name in _ALLOWED and value not in _ALLOWED[name]:
        choices = " or ".join(str(choice) or "empty" for choice in _ALLOWED[name])
        raise WrongUse(f"{where}{name} is “{value}”.", f"It may be {choices}.")
    if name == "fixity_days" and not 1 <= int(str(value)) <= 36_500:
        raise WrongUse(f"{where}fixity_days is {value}.", "It must be 1 or more days; 365 is usual.")
    if name == "living_years" and not 70 <= int(str(value)) <= 150:
        raise WrongUse(f"{where}living_years is {value}.", "It must be 70 to 150 years; 100 is usual.")
    if name == "backups_mb" and int(str(value)) < 1:
        raise WrongUse(f"{where}backups_mb is {value}.", "It must be 1 or more megabytes; 1000 is usual.")
    if name == "countries" and not _COUNTRIES.fullmatch(str(value)):
        raise WrongUse(
            f"{where}countries is “{value}”.", "It must be two capital letters a country with blanks between: NZ EE."
        )
    if name == "prefix" and not _PREFIX.fullmatch(str(value)):
        raise WrongUse(
            f"{where}prefix is “{value}”.",
            "It must be two to seven capital letters or digits that begin with a letter, such as TR.",
        )
    if name == "clock_right_on" and value and not _is_day(str(value)):
        raise WrongUse(f"{where}clock_right_on is “{value}”.", "It must be a date such as 2038-01-19, or empty.")
    if name == "series" and not (len(str(value)) == 1 and "A" <= str(value) <= "Z"):
        raise WrongUse(f"{where}series is “{value}”.", "It must be one capital letter.")


def _is_day(words: str) -> bool:
    try:
        return date.fromisoformat(words).isoformat() == words
    except ValueError:
        return False


_KINDS = {bool: "true or false", int: "a whole number", str: "text in quotes"}


def family_way(settings: Settings) -> FamilyWay:
    """How the family writes its dates: in the collection's language, and its order of day and month."""
    return FamilyWay(settings.language, settings.day_order)


def phrase_settings(settings: Settings) -> phrases.PhraseSettings:
    """The collection's settings as the reader of dates takes them."""
    return phrases.PhraseSettings(
        order=settings.day_order or None,
        hemisphere=settings.hemisphere,
        countries=tuple(settings.countries.split()),
        language=settings.language.partition("-")[0],
    )

"""`archive.toml`: what an archive hands out about itself, so that a package suits it without a telephone call."""

import re
import tomllib
from collections.abc import Iterator
from dataclasses import fields
from pathlib import Path

from boxlore.core.crosswalk.receiving_archive import NOT_SAID, TAKES, Archive
from boxlore.core.errors import WrongUse
from boxlore.core.fields.guard import check_language
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.disk.tables import read_text
from boxlore.tasks.archive.transfer_updates import bags_of
from boxlore.tasks.collection.settings import toml_value

FILE_NAME = "archive.toml"
IN_A_BAG = f"metadata/{FILE_NAME}"
"""Where each part of a transfer keeps the settings that it was made by, below `data/`."""

_WHY = {
    "repository": "The archive's name, as its finding aids give it (DACS 2.2).",
    "agency": "Its own code (DACS 2.1), such as an ISIL (ISO 15511).",
    "repository_code": "The code of the repository in reference codes (DACS 2.1), where it is not the agency's.",
    "country": "Two capital letters (ISO 3166-1).",
    "prefix": "What its reference codes begin with, such as MS or PA; it stands before the collection's own code.",
    "contact": "Who to write to; it stands with the name on the deed of gift.",
    "base_url": "The address under which it shows the open part (https://…); IIIF and OAI-PMH need it.",
    "gateway": "The address of the gateway that harvesters ask for the static repository (OAI-PMH).",
    "email": "The mailbox that a static repository names (OAI-PMH).",
    "language": "The language of the three texts below (BCP 47), such as en.",
    "terms": "What it wants a donor to know before signing; it stands on the deed of gift.",
    "access": "What it says of who may see a collection (DACS 4.1); it stands first in the finding aid.",
    "use": "What it says of copying and publishing (DACS 4.4).",
    "takes": f"What it takes, any of: {', '.join(TAKES)}.",
}


def as_toml(archive: Archive = NOT_SAID) -> str:
    """An archive's settings as a file, empty ones for it to fill in: every line with its reason above it."""
    lines = ["# What this archive is called and takes. Hand it to whoever prepares a transfer.", ""]
    for field in fields(Archive):
        lines += [f"# {_WHY[field.name]}", f"{field.name} = {toml_value(getattr(archive, field.name))}", ""]
    return "\n".join(lines)


_IN_UTF_8 = "Open it in an editor and save it with the encoding UTF-8, as TOML files have it; nothing else was touched."


def read_archive(path: Path) -> Archive:
    """Read an archive's settings, in UTF-8 or UTF-16, with a byte order mark or without. Raises WrongUse naming the
    line or the setting at fault."""
    if not path.exists():
        raise WrongUse(f"There is no file {path}.", "Ask the archive for its settings, or leave --archive out.")
    try:
        values = tomllib.loads(read_text(path, _IN_UTF_8))
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        raise WrongUse(f"{path} cannot be read: {error}.", "Mend that line; nothing else was touched.") from error
    known = {field.name for field in fields(Archive)}
    for name, value in values.items():
        if name not in known:
            raise WrongUse(
                f"{path} has a setting “{name}” that there is none of.", f"Known: {', '.join(sorted(known))}."
            )
        if name == "takes":
            _check_takes(path, value)
        elif not isinstance(value, str):
            raise WrongUse(f"{path}: {name} must be text in quotes, not {value!r}.")
    if values.get("country") and not re.fullmatch("[A-Z]{2}", values["country"]):
        raise WrongUse(f"{path}: country is “{values['country']}”.", "It must be two capital letters, such as NZ.")
    for name in ("base_url", "gateway"):
        if (url := values.get(name)) and not re.fullmatch(r"https?://[^\s?#]+", url):
            raise WrongUse(f"{path}: {name} is “{url[:60]}”.", "It must begin with https:// and have no ? or #.")
    if (email := values.get("email")) and not re.fullmatch(r"\S+@(\S+\.)+\S+", email):  # OAI-PMH 2.0, emailType
        raise WrongUse(f"{path}: email is “{email[:60]}”.", "Write it like archive@example.org.")
    if language := values.get("language"):
        check_language(language)
    return Archive(**values | ({"takes": tuple(values["takes"])} if "takes" in values else {}))


_ISIL = re.compile(r"(?P<prefix>[A-Z]{2}|[A-Za-z]|[A-Za-z]{3,4})-[A-Za-z0-9:/-]{1,11}")
"""ISO 15511, as the Schematron of EAD3 has it: a prefix, which of two letters is a country's, a hyphen, and the
archive's own code."""


_PREFIX = re.compile(r"[^\W_]+(?:[ ./-][^\W_]+)*[./-]?")
"""Letters and digits, parted by single blanks, points, strokes or hyphens."""


def doubtful_codes(archive: Archive) -> Iterator[Finding]:
    """A note where what reference codes begin with has other signs than codes have, and where the agency's code is no
    ISIL, or is one of another country than the archive says: it goes as it is, for other lists of codes are in use."""
    if (prefix := archive.prefix) and not _PREFIX.fullmatch(prefix):
        words = (
            f"What the archive's reference codes begin with, “{prefix[:40]}”, has signs that such codes hardly have. "
            f"It goes as it is; ask the archive, or mend {FILE_NAME}."
        )
        yield make_finding("archive.prefix", Severity.NOTE, words, "common practice, no source")
    if not archive.agency:
        return
    isil = _ISIL.fullmatch(archive.agency)
    why = ""
    if isil is None:
        why = "is no ISIL (ISO 15511): a country's two letters, a hyphen and the archive's own code"
    elif archive.country and len(isil["prefix"]) == 2 and isil["prefix"] != archive.country:
        why = f"is one of another country than {archive.country}, which stands as its country"
    if why:
        words = (
            f"The archive's code “{archive.agency[:40]}” {why}. It goes as it is; ask the archive, or mend {FILE_NAME}."
        )
        yield make_finding("archive.code", Severity.NOTE, words, "ISO 15511; DACS 2.1")


def _check_takes(path: Path, value: object) -> None:
    if not isinstance(value, list) or not all(part in TAKES for part in value):
        raise WrongUse(f"{path}: takes is {value!r}.", f"It may hold: {', '.join(TAKES)}.")


def archive_of(folder: Path, named: Path | None, earlier: Path | None = None) -> Archive:
    """The archive named, else the one that the transfer in `earlier` was made for, else the one whose settings lie in
    the collection, else none."""
    if named is not None:
        return read_archive(named)
    if earlier is not None and (before := archive_before(earlier)) != NOT_SAID:
        return before
    return read_archive(folder / FILE_NAME) if (folder / FILE_NAME).is_file() else NOT_SAID


def archive_before(earlier: Path) -> Archive:
    """What the archive had said of itself when the transfer in this folder was made for it."""
    for bag in bags_of(earlier):
        if (path := bag / "data" / IN_A_BAG).is_file():
            return read_archive(path)
    return NOT_SAID

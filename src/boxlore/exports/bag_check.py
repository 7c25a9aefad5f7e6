"""Is a bag whole and valid? By RFC 8493, 3: complete, and every file as its manifests say; each fault in a sentence.

A bag needs `bagit.txt`, `data/` and a payload manifest (2.1). Every manifest lists every file of the payload (3), each
once (2.1.3), every tag manifest what is there (2.2.1); Payload-Oxum, if it is said, is right (2.2.2). Tag files that we
read are in the encoding that `bagit.txt` declares (2.1.1). Beyond the standard, a bag that would have files fetched
from elsewhere (2.2.3), or that holds links, is named: what we make holds all that it lists.
"""

import codecs
import hashlib
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path, PurePosixPath

from boxlore.core.findings import Finding, Severity, make_finding

SYSTEM_FILES = {"Thumbs.db", "desktop.ini", ".DS_Store"}
"""Files that a system adds by itself when a folder is opened (from memory). In the payload they are a fault as any
other file that no manifest lists (3); what is to be done is said."""
_DECLARED = re.compile(r"BagIt-Version: ?(\d+\.\d+)[ \t]*(?:\r\n|\r|\n)Tag-File-Character-Encoding: ?(\S+)\s*")
VERSIONS = ("0.93", "0.94", "0.95", "0.96", "0.97", "1.0")
_MANIFEST = re.compile(r"(?P<tag>tag)?manifest-(?P<algorithm>[0-9a-z]+)\.txt", re.IGNORECASE)
_LINE = re.compile(r"(?P<digest>[0-9A-Fa-f]+)[ \t]+\*?(?P<path>\S.*?)[ \t]*")
_OXUM = re.compile(r"(?P<bytes>\d+)\.(?P<files>\d+)")
_INFO_LINE = re.compile(r"[^:\s][^:]*:.*|[ \t].*|")
_COUNT = re.compile(r"(?P<nth>\d+) of (?P<of>\d+|\?)")
_INFO_VALUES = {
    "Bagging-Date": (re.compile(r"\d{4}-\d\d-\d\d"), "a day, such as 2026-11-25"),
    "Bag-Count": (_COUNT, "two numbers, such as 2 of 5"),
}
"""Reserved names of `bag-info.txt` whose values have a form."""
_ESCAPED = {"%0D": "\r", "%0A": "\n", "%25": "%"}
CHUNK = 1 << 20


def is_bag(folder: Path) -> bool:
    """Whether a folder is a bag, or what is left of one: it has a declaration or a manifest."""
    return (folder / "bagit.txt").is_file() or any(
        _MANIFEST.fullmatch(path.name) for path in folder.glob("*manifest-*.txt")
    )


@dataclass(slots=True)
class _Bag:
    folder: Path
    version: str = "1.0"
    encoding: str = "utf-8"
    findings: list[Finding] = field(default_factory=list)
    manifests: dict[str, dict[str, str]] = field(default_factory=dict)
    """Name of a manifest -> path -> digest, of those that can be checked."""

    def say(self, rule: str, clause: str, message: str) -> None:
        self.findings.append(make_finding(f"bag.{rule}", Severity.ERROR, message, f"RFC 8493, {clause}"))


def bag_info(bag: Path) -> dict[str, str]:
    """The lines of `bag-info.txt` by their names (2.2.2), the first of a name; none where it is not there."""
    path = bag / "bag-info.txt"
    lines = path.read_text(encoding="utf-8-sig", errors="replace").splitlines() if path.is_file() else []
    return _values(lines)


def _values(lines: Iterable[str]) -> dict[str, str]:
    values: dict[str, str] = {}
    for line in lines:
        name, parted, value = line.partition(":")
        if parted and not line[:1].isspace():
            values.setdefault(name.strip(), value.strip())
    return values


def payload_of(manifest: Path) -> dict[str, str]:
    """Path -> digest, as a payload manifest in UTF-8 has them (2.1.3); none where it is not there."""
    return _lines(_Bag(manifest.parent), manifest, is_tag=False) if manifest.is_file() else {}


def verify_bag(folder: Path) -> list[Finding]:
    """A finding for each way in which a bag is not whole or not as the standard has it; every listed file is read."""
    bag = _Bag(folder)
    if not folder.is_dir():
        bag.say("none", "2", f"{folder} is no folder.")
        return bag.findings
    _declaration(bag)
    present = dict(_present(bag))
    payload = {path for path in present if path.startswith("data/")}
    if not (folder / "data").is_dir():
        bag.say("payload", "2.1.2", f"{folder.name} has no folder data: what was packed is not there.")
    _manifests(bag)
    own = {name: lines for name, lines in bag.manifests.items() if not name.startswith("tag")}
    if not own and not any(finding.rule == "bag.algorithm" for finding in bag.findings):
        bag.say(
            "unlisted", "2.1.3", f"{folder.name} has no manifest-sha512.txt, nor any other: nothing can be checked."
        )
    _unlisted(bag, own, payload)
    _files(bag, present)
    if (folder / "fetch.txt").exists():
        words = "fetch.txt asks that files be fetched from elsewhere; a transfer holds them all. Do not fetch them."
        bag.say("fetch", "2.2.3", words)
    _info(bag, {path: present[path] for path in payload})
    return bag.findings


def _declaration(bag: _Bag) -> None:
    """`bagit.txt` has two lines, the version and the encoding of the tag files, in UTF-8 without a mark."""
    path = bag.folder / "bagit.txt"
    if not path.is_file():
        bag.say("none", "2.1.1", f"{bag.folder} is no bag: it has no bagit.txt.")
        return
    data = path.read_bytes()
    if data.startswith(codecs.BOM_UTF8):
        bag.say("declaration", "2.1.1", "bagit.txt begins with a byte order mark, which it may not: it was changed.")
    text = data.decode("utf-8-sig", "replace")
    match = _DECLARED.fullmatch(text)
    if match is None:
        words = "bagit.txt does not say, in two lines, its version and the encoding of its tag files: it was changed."
        bag.say("declaration", "2.1.1", words)
        return
    bag.version, bag.encoding = match.groups()
    if bag.version not in VERSIONS:
        bag.say("declaration", "2.1.1", f"bagit.txt says version {bag.version}, which there is none of.")
    try:
        codecs.lookup(bag.encoding)
    except LookupError:
        bag.say("declaration", "2.1.1", f"bagit.txt says an encoding “{bag.encoding[:20]}” that there is none of.")
        bag.encoding = "utf-8"


def _present(bag: _Bag) -> Iterator[tuple[str, int]]:
    """(path, bytes) of every file of the bag; links are named, and not followed."""
    for path in sorted(bag.folder.rglob("*")):
        name = path.relative_to(bag.folder).as_posix()
        if path.is_symlink():
            bag.say("link", "5.1", f"{name} is a link, and may lead out of the package.")
        elif path.is_file():
            yield name, path.stat().st_size


def _manifests(bag: _Bag) -> None:
    for path in sorted(bag.folder.glob("*manifest-*.txt")):
        match = _MANIFEST.fullmatch(path.name)
        if match is None:
            continue
        algorithm = match["algorithm"].lower()
        if algorithm not in hashlib.algorithms_available or algorithm.startswith("shake"):
            words = f"{path.name} cannot be checked: no digest is called {algorithm}."
            bag.say("algorithm", "2.4", words)
            continue
        bag.manifests[path.name] = _lines(bag, path, is_tag=bool(match["tag"]))


def _lines(bag: _Bag, path: Path, *, is_tag: bool) -> dict[str, str]:
    """manifest = *(digest 1*blank path newline)     (RFC 8493, 2.1.3)"""
    text = _text(bag, path)
    digests: dict[str, str] = {}
    for number, line in enumerate(re.split(r"\r\n|\r|\n", text), 1):
        if not line.strip():
            continue
        match = _LINE.fullmatch(line)
        if match is None:
            words = f"{path.name}, line {number}, is no digest with a path: “{line[:40]}”."
            bag.say("manifest", "2.1.3", words)
            continue
        name, digest = _unescaped(match["path"].removeprefix("./")), match["digest"].lower()
        if is_tag == name.startswith("data/"):
            what = "a file of the payload" if is_tag else "a file outside data/"
            bag.say("manifest", "2.2.1" if is_tag else "2.1.3", f"{path.name} lists {name}, {what}.")
        if name in digests:
            how = "." if digests[name] == digest else ", with two digests."
            bag.say("manifest", "2.1.3", f"{path.name} lists {name} twice{how}")
        digests.setdefault(name, digest)
    return digests


def _text(bag: _Bag, path: Path) -> str:
    """The words of a tag file, in the encoding of `bagit.txt`; bytes that are none of it are named."""
    data = path.read_bytes()
    try:
        return data.decode(bag.encoding)
    except UnicodeDecodeError:
        bag.say("manifest", "2.1.1", f"{path.name} has bytes that are no {bag.encoding}: it was changed.")
        return data.decode(bag.encoding, "replace")


def _unescaped(path: str) -> str:
    """A path as it is on the disk: CR, LF and % are written as %0D, %0A, %25 (2.1.3)."""
    return re.sub("%0[DA]|%25", lambda match: _ESCAPED[match[0].upper()], path, flags=re.IGNORECASE)


def _unlisted(bag: _Bag, manifests: Mapping[str, Mapping[str, str]], payload: set[str]) -> None:
    """Every file of the payload is in every manifest (RFC 8493, 3), and tag manifests agree on what they list."""
    for path in sorted(payload):
        lacking = [name for name, lines in manifests.items() if path not in lines]
        if manifests and len(lacking) == len(manifests):
            bag.say(
                "unlisted", "3", f"{path} is in no manifest.{_WHAT_TO_DO[PurePosixPath(path).name in SYSTEM_FILES]}"
            )
        elif lacking:
            bag.say("unlisted", "3", f"{path} is not in {' and '.join(lacking)}, and is in another manifest.")
    tags = {name: lines for name, lines in bag.manifests.items() if name.startswith("tag")}
    every = set().union(*tags.values()) if tags else set()
    for name, lines in tags.items():
        for path in sorted(every - set(lines)):
            bag.say("unlisted", "2.2.1", f"{path} is not in {name}, and is in another tag manifest.")


_WHAT_TO_DO = {
    False: " If somebody has put it there since, take it out; else ask for the package again.",
    True: " The computer added it when the folder was opened. Delete this file, and verify again.",
}
"""What to do about a file of the payload that nobody listed; by whether a system adds files of that name."""


def _files(bag: _Bag, present: Mapping[str, int]) -> None:
    """Read every listed file once, by all algorithms of the manifests that list it."""
    listed: dict[str, list[tuple[str, str]]] = {}
    for manifest, lines in bag.manifests.items():
        algorithm = manifest[:-4].rpartition("-")[2].lower()
        for path, digest in lines.items():
            listed.setdefault(path, []).append((algorithm, digest))
    for path, digests in sorted(listed.items()):
        if PurePosixPath(path).is_absolute() or ".." in PurePosixPath(path).parts or path.startswith("~"):
            bag.say("outside", "5.1", f"{path} is listed, but leads out of the package.")
        elif path in present:
            _hashed(bag, path, digests)
        else:
            bag.say("missing", "3", f"{path} is listed but not there.")


def _hashed(bag: _Bag, path: str, digests: list[tuple[str, str]]) -> None:
    running = [hashlib.new(algorithm) for algorithm, _ in digests]
    try:
        with open(bag.folder / path, "rb") as file:
            while data := file.read(CHUNK):
                for counting in running:
                    counting.update(data)
    except OSError as error:
        bag.say("unreadable", "3", f"{path} cannot be read: {error.strerror}.")
        return
    for (algorithm, digest), counted in zip(digests, running, strict=True):
        if counted.hexdigest() != digest:
            bag.say("changed", "3", f"{path} has changed: its {algorithm} is not the one in the manifest.")
            return


def _info(bag: _Bag, payload: Mapping[str, int]) -> None:
    """What `bag-info.txt` says of how much there is."""
    path = bag.folder / "bag-info.txt"
    if not path.is_file():
        return
    lines = re.split(r"\r\n|\r|\n", _text(bag, path).removeprefix("\ufeff"))
    info = _values(lines)
    for number, line in enumerate(lines, 1):
        if not _INFO_LINE.fullmatch(line):
            bag.say("info", "2.2.2", f"bag-info.txt, line {number}, is no label with a value: “{line[:40]}”.")
    for name, (pattern, words) in _INFO_VALUES.items():
        if (value := info.get(name, "")) and not pattern.fullmatch(value):
            bag.say("info", "2.2.2", f"{name} is “{value[:30]}”, and not {words}.")
    counted = _COUNT.fullmatch(info.get("Bag-Count", ""))
    if counted and counted["of"] != "?" and int(counted["nth"]) > int(counted["of"]):
        bag.say("info", "2.2.2", f"Bag-Count is “{counted[0]}”: there is no such bag of so many.")
    said = [
        line.partition(":")[2].strip() for line in lines if line.partition(":")[0].strip().lower() == "payload-oxum"
    ]
    if len(said) > 1:
        bag.say("oxum", "2.2.2", "bag-info.txt says Payload-Oxum twice.")
    for words in said:
        match = _OXUM.fullmatch(words)
        if match is None:
            bag.say("oxum", "2.2.2", f"Payload-Oxum is “{words[:30]}”, and not bytes and files, such as 4096.12.")
            continue
        size, count = sum(payload.values()), len(payload)
        if (int(match["bytes"]), int(match["files"])) != (size, count):
            told = f"Payload-Oxum says {int(match['bytes']):,} bytes in {int(match['files']):,} files"
            bag.say("oxum", "2.2.2", f"{told}; there are {size:,} bytes in {count:,}.")

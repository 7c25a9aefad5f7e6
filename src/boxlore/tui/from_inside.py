"""What a sentence tells somebody to do, said for who sits inside: a place in the menu instead of a command.

Sentences of errors, findings and reports are made for all fronts and name commands of the shell and their options.
Inside, the same thing is a line of the menu, a key or a line of a form. A command stands in a sentence as `boxlore`,
its name, and arguments: capitals (`MARK`) and the field behind them belong to it alone, from a quoted word or an
option on all up to the next mark of punctuation does. What can only be done at the shell is said to be there.
"""

import re

from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import ANSWER
from boxlore.core.rules.one_item import SETTLE, SETTLE_AT_MARKER

PLACES: dict[str, str] = {
    "copies": "“Hand on”, “Captioned copies”",
    "events": "“Put right”, “What happened when”",
    "find": "“List and find” (F3)",
    "housing": "“Keep safe”, “Originals”",
    "housing box": "“Keep safe”, “A box or folder”",
    "housing lend": "“Keep safe”, “On loan to you”",
    "housing move": "“Keep safe”, “Move things”",
    "housing off": "“Keep safe”, “A note taken off a print”",
    "housing place": "“Keep safe”, “A room or shelf”",
    "housing what": "“List and find” (F3)",
    "intake": "“Take in”, “Scans”",
    "intake --find-prints": "“Take in”, “Prints on a sheet”",
    "join": "“Take in”, “From a working copy”",
    "meet": "“Take in”, “From other desks”",
    "new": "“Start a collection”",
    "new --from": "“Make one again from a transfer”",
    "new --join": "“Hand on”, “A working copy”",
    "offer": "“Hand on”, “The archive’s answer”",
    "people": "“Put right”, “People”",
    "people audience": "“Put right”, “People”, “Who may see them”",
    "people audience --item": "“Who says so” (F4), “Who may see it”",
    "people consent": "“Put right”, “People”, “Consent”",
    "people shown": "“Who is in it?”",
    "places": "“Put right”, “A place of the family’s own”",
    "recording": "“Sit”, “This sitting”",
    "recording --log": "“Sit”, “Log of a sitting”",
    "restore": "“Keep safe”, “Bring back a backup”",
    "scan add": "“Take in”, “A scan for one photograph”",
    "scan altered": "F2, then a",
    "scan heads": "F2, then h",
    "scan replace": "“Take in”, “A scan for one photograph”",
    "scan turn": "F2, then r",
    "show": "“Who says so” (F4)",
    "sit": "“Who says so” (F4)",
    "strike everywhere": "“Put right”, “Strike words everywhere”",
    "strike": "“Who says so” (F4), “Strike for good”",
    "tell": "at the photograph, under that question",
    "tell --help": "the guide (F1)",
    "tell --from": "“Take in”, “Answers on paper”",
    "transfer": "“Hand on”, “Transfer to an archive”",
    "verify": "“Keep safe”, “Check the scans”",
}
"""Command, with its second word or an option where that matters -> where its task is inside, as the menu calls it."""

LINES: dict[str, str] = {
    "--archive": "“The archive’s own settings”",
    "--backs apart": "“numbers of their own”",
    "--backs": "“Backs of photographs that are in already?”",
    "--box": "“Box”",
    "--box 7": "7 in “Box”,",
    "--copy": "“copied into the collection”",
    "--due": "“Due back on”",
    "--folder": "“Folder in that box”",
    "--folder 1": "1 in “Folder in that box”",
    "--for family": "“the family”",
    "--for": "“For whom?”",
    "--inside": "“In or near which town?”",
    "--kin-of": "“Kinship told from whose side?”",
    "--new-numbers": "“new numbers”",
    "--look-in": "“A further folder to look in”",
    "--mend": "“Note the new place of moved ones?”",
    "--originals yes": "yes to “Are the originals (the prints) handed over too?”",
    "--originals": "“Are the originals (the prints) handed over too?”",
    "--order dmy": "“7 April”",
    "--order mdy": "“July 4”",
    "--order": "“How is 7/4 read in it?”",
    "--replace": "“each takes its place”",
    "--unit": "“Celsius or Fahrenheit?”",
    "--longest": "“How large?”",
    "--pairs suffix": "“by name: _f, _b, _front, _back”",
    "--pairs": "“How do fronts and backs belong together?”",
    "--update": "“An earlier transfer to update”",
    "--voice": "“With recorded voices?”",
    "--words": "“Which words?”",
}
"""Option, with its value where that matters -> the line of a form that asks the same, or the answer to it."""

OF_TWO_WORDS = ("events", "housing", "people", "places", "scan")
"""Commands whose second word is a part of their name."""

_FIELD = "|".join(FIELDS)
_COMMAND = re.compile(
    r"`?\bboxlore (?:-c \S+ )?(?P<name>[a-z]+)(?P<second> [a-z]+\b)?"
    r"(?P<more>(?: [A-Z][A-Z\d.-]*[A-Z\d]\b(?:\.csv)?)*"
    rf"(?:(?<=[A-Z\d]) (?:{_FIELD})\b| (?:{_FIELD})(?= --))?"
    r"(?: (?=--|[“\"])(?:“[^”]*”|\"[^\"]*\"|\.\w|[^.,;:()`“\"])*)?)`?"
)
SETTLED = (
    (SETTLE, "To settle it: Ctrl+P at that question."),
    (SETTLE_AT_MARKER, "To settle it: F4, then Enter on one of the names."),
)
"""How a disagreement is settled: as it is said at the shell, and inside."""
_ANSWERED = re.compile(rf"boxlore tell \S+ {ANSWER} TEXT")
"""How an archive's remark is answered."""
SIDES = {"recto": "front", "verso": "back"}
"""What the two sides are called on the screen."""
_SIDE = re.compile(r"\b(recto|verso) scan\b")
_OPTION = re.compile(r"`?(?P<name>(?<![\w-])--[a-z][a-z-]*)(?P<value> (?:[a-z]+|[A-Z]+|\d+)\b)?(?P<end>`?)")


def from_inside(words: str) -> str:
    """A sentence with each command, each option, each step of a sitting and each side as it is called inside."""
    for at_the_shell, inside in SETTLED:
        words = words.replace(at_the_shell, inside)
    if "boxlore " in words:
        words = _ANSWERED.sub("“Hand on”, “An answer to the archive”", words)
        words = _COMMAND.sub(_place, words)
    words = _SIDE.sub(lambda side: f"{SIDES[side[1]]} scan", words)
    return _OPTION.sub(_line, words) if "--" in words else words


def _place(command: re.Match[str]) -> str:
    name, second = command["name"], command["second"] or ""
    option = next(iter(re.findall(r" --[a-z-]+", command["more"])), "")
    for key in (name + second + option, name + option, name + second):
        if key in PLACES and key != name:
            return PLACES[key]
    if name not in PLACES:
        return command[0]
    return PLACES[name] if name in OF_TWO_WORDS else PLACES[name] + second  # which goes on with the sentence


def _line(option: re.Match[str]) -> str:
    name, value = option["name"], option["value"] or ""
    if name + value in LINES:
        return LINES[name + value]
    word = value if value.islower() and not option["end"] else ""  # which goes on with the sentence
    if name in LINES:
        return LINES[name] + word
    word = "" if option.string[option.end() :][:1] in tuple(".,;:)") else word
    shell = "" if "shell" in option.string[: option.start()] else " (at the shell)"
    return f"{name}{value.removesuffix(word)}{shell}{word}"

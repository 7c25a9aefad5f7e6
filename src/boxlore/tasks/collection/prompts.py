"""What a sitting asks about each item, in the order that good interviewers use: the open question first.

Order: what is seen and told freely, then who (by rows), when, where, why that day, what is written, who took
it. No question names anyone: a leading name ("Is this Aunt Ida?") is answered with yes. Source: the University
of Alberta's guide to interviewing with photographs, and common practice for the wording.
"""

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import WrongUse, in_words
from boxlore.core.fields.table import FIELDS, OWN
from boxlore.core.statements import Kind
from boxlore.core.wording.catalogue import say_in, to_say
from boxlore.disk.writing import write_whole

FILE_NAME = "prompts.toml"


@dataclass(frozen=True, slots=True, kw_only=True)
class Prompt:
    """One question about an item. `gathers`: each answer is a statement of its own (names of people)."""

    field: str
    question: str
    hint: str
    lines: int = 1
    gathers: bool = False

    @property
    def reads(self) -> str:
        """How the words are read: date, place, person, event or nothing."""
        return FIELDS[self.field].reads


PROMPTS: tuple[Prompt, ...] = (
    Prompt(
        field="story",
        question=to_say("Tell me about this photograph."),
        hint=to_say("In the teller's own words. Wait; silence helps."),
        lines=4,
    ),
    Prompt(
        field="person",
        question=to_say("Who is in it?"),
        hint=to_say("From the left, row by row. Enter after each name."),
        gathers=True,
    ),
    Prompt(
        field="date",
        question=to_say("When was it?"),
        hint=to_say("A day, a year, a season, “about 1938”, “before the war”."),
    ),
    Prompt(
        field="place",
        question=to_say("Where was it?"),
        hint=to_say("Town or village; street or farm if known. As it was called then."),
    ),
    Prompt(
        field="occasion",
        question=to_say("What was the occasion?"),
        hint=to_say("A wedding, a visit, the day before leaving."),
    ),
    Prompt(
        field="inscription",
        question=to_say("What is written on it?"),
        hint=to_say("Letter for letter, front or back; [...] where it cannot be read."),
        lines=3,
    ),
    Prompt(
        field="photographer",
        question=to_say("Who took it?"),
        hint=to_say("A person, or the studio stamped on the mount."),
    ),
)


LINES_AT_MOST, PROMPTS_AT_MOST = 20, 40

_HEAD = """\
# What a sitting asks about each photograph, in this order. Change and translate the questions and hints as you like,
# move whole blocks, take blocks away. The open question comes first; no question should name anyone.
# field: what the answer is kept as. A question of your own has a field that begins with own-, such as own-clothes.
# lines: how high the answer's box is. gathers: true where each answer is one of many (names).
"""


def as_toml(prompts: tuple[Prompt, ...] = PROMPTS) -> str:
    """The prompts as the file a keeper edits."""
    blocks = [_HEAD]
    for prompt in prompts:
        lines = ["[[prompt]]", f"field = {_quoted(prompt.field)}", f"question = {_quoted(prompt.question)}"]
        lines += [f"hint = {_quoted(prompt.hint)}"] if prompt.hint else []
        lines += [f"lines = {prompt.lines}"] if prompt.lines > 1 else []
        lines += ["gathers = true"] if prompt.gathers else []
        blocks.append("\n".join(lines) + "\n")
    return "\n".join(blocks)


def _quoted(words: str) -> str:
    escaped = words.replace("\\", "\\\\").replace('"', '\\"')
    return '"' + "".join(letter if letter.isprintable() else f"\\U{ord(letter):08x}" for letter in escaped) + '"'


def write_prompts(folder: Path, language: str = "") -> Path:
    """The file to edit; made with the built-in prompts of that language if there is none yet."""
    path = folder / FILE_NAME
    if not path.exists():
        write_whole(path, as_toml(prompts_in(language)).encode())
    return path


def prompts_in(language: str) -> tuple[Prompt, ...]:
    """The built-in prompts in the language of a BCP 47 tag, in which a teller is asked."""
    say = say_in(language)
    return tuple(replace(prompt, question=say(prompt.question), hint=say(prompt.hint)) for prompt in PROMPTS)


def read_prompts(folder: Path, language: str = "") -> tuple[Prompt, ...]:
    """The collection's own prompts, or the built-in ones in its language.

    Raises WrongUse saying which block is at fault.
    """
    path = folder / FILE_NAME
    try:
        tables = tomllib.loads(path.read_text(encoding="utf-8"))
    except FileNotFoundError:
        return prompts_in(language)
    except (OSError, tomllib.TOMLDecodeError, UnicodeDecodeError, RecursionError) as error:
        raise WrongUse(
            f"{path.name} cannot be read: {in_words(error)}.", "Mend that line. The usual questions are asked."
        ) from error
    blocks = tables.get("prompt")
    if not isinstance(blocks, list) or not 1 <= len(blocks) <= PROMPTS_AT_MOST or set(tables) != {"prompt"}:
        raise WrongUse(f"{path.name} must hold one to {PROMPTS_AT_MOST} [[prompt]] blocks and nothing else.")
    prompts = tuple(_prompt(path, number, block) for number, block in enumerate(blocks, 1))
    if len({prompt.field for prompt in prompts}) < len(prompts):
        raise WrongUse(f"{path.name} asks twice for the same field.", "Give each question a field of its own.")
    return prompts


def own_fields(folder: Path) -> tuple[str, ...]:
    """The fields of the collection's own questions; none where its prompts cannot be read, and the usual are asked."""
    return tuple(own_lines(folder))


def own_lines(folder: Path) -> dict[str, int]:
    """The same, with how many lines an answer has."""
    try:
        return {prompt.field: prompt.lines for prompt in read_prompts(folder) if prompt.field.startswith(OWN)}
    except WrongUse:
        return {}


_KINDS = {"field": str, "question": str, "hint": str, "lines": int, "gathers": bool}


def _prompt(path: Path, number: int, block: object) -> Prompt:
    where = f"{path.name}, prompt {number}"
    if not isinstance(block, Mapping):
        raise WrongUse(f"{where} is no block.")
    for name, value in block.items():
        if name not in _KINDS or type(value) is not _KINDS[name]:
            raise WrongUse(f"{where}: “{name}” cannot be {value!r}.", f"Known: {', '.join(_KINDS)}.")
    field, question = str(block.get("field", "")), str(block.get("question", "")).strip()
    if not question or not field:
        raise WrongUse(f"{where} lacks its question or its field.")
    own = re.fullmatch(rf"{OWN}[a-z0-9]+(-[a-z0-9]+)*", field) is not None
    known = FIELDS.get(field)
    if not own and (known is None or not known.told or Kind.ITEM not in known.kinds):
        raise WrongUse(f"{where}: there is no field “{field}”.", f"A field of your own begins with {OWN}.")
    return Prompt(
        field=field,
        question=question,
        hint=str(block.get("hint", "")),
        lines=min(max(int(block.get("lines", 1)), 1), LINES_AT_MOST),
        gathers=bool(block.get("gathers", False)) and known is not None and known.many,
    )

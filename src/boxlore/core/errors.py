"""What can go wrong, sorted by what the caller can do about it.

One base, few children. Each carries fields and an exit code for the command line; the sentence a
person reads is made in `__str__`, says what to do, and never quotes more than a line of input.
A person's record is not refused with these: rules about records return `findings`.
"""

from dataclasses import dataclass


class BoxloreError(Exception):
    """The base of every error of ours. `exit_code` is what a command returns when it meets one."""

    exit_code = 3


@dataclass(eq=False)
class WrongUse(BoxloreError):
    """Somebody asked for something that cannot be meant; `what_to_do` says what would be."""

    problem: str
    what_to_do: str = ""
    exit_code = 2

    def __str__(self) -> str:
        return f"{self.problem} {self.what_to_do}".strip()


@dataclass(eq=False)
class CouldNot(BoxloreError):
    """The world refused: a full disk, a lock, a missing file, a damaged database.

    `everywhere` says that the next file would meet the same, so that a long task had better stop.
    """

    problem: str
    what_to_do: str = ""
    everywhere: bool = False

    def __str__(self) -> str:
        return f"{self.problem} {self.what_to_do}".strip()


NO_TEMPORARY = "no usable temporary directory"
"""How Python's `tempfile` begins to say so; its error names no file."""


def in_words(error: Exception) -> str:
    """An error of the system or of a library without its number, to stand in the midst of a sentence."""
    words = str(getattr(error, "strerror", None) or error)
    if words.lower().startswith(NO_TEMPORARY):
        return "there is no folder for temporary files that can be written to; set TMPDIR to one"
    return words[:1].lower() + words[1:]


@dataclass(eq=False)
class TextFault(BoxloreError):
    """A text that breaks its grammar: `start` and `end` are 0-based character offsets into `text`."""

    text: str
    start: int
    end: int
    why: str
    exit_code = 1

    @property
    def column(self) -> int:
        """The 1-based column where the fault begins."""
        return self.start + 1

    def __str__(self) -> str:
        width = max(1, self.end - self.start)
        shown = self.text.replace("\n", " ").replace("\t", " ")
        if len(shown) > 200:
            return f"{self.why} (column {self.column})"
        return f"{self.why}\n  {shown}\n  {' ' * self.start}{'^' * width}"


@dataclass(eq=False)
class ByteFault(BoxloreError):
    """Bytes that break their format: `offset` in bytes from the start, `clause` of the standard."""

    offset: int
    why: str
    clause: str

    def __str__(self) -> str:
        return f"{self.why} (at byte {self.offset}; {self.clause})"

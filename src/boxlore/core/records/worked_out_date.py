"""A date that nobody has told and that follows from what is told: a proposal, for those who may see all of that."""

from dataclasses import dataclass

from boxlore.core.dates.reading import DateReading


@dataclass(frozen=True, slots=True)
class Because:
    """One reason: in words, who or which publication says it, and the id of the statement; '' where it is none."""

    words: str
    source: str
    statement: str = ""


@dataclass(frozen=True, slots=True)
class WorkedOutDate:
    """`edtf` is every day that it can be (`[1921..1926]`), `because` what that follows from."""

    edtf: str
    because: tuple[Because, ...] = ()

    @property
    def reading(self) -> DateReading:
        return DateReading.from_edtf(self.edtf)

    @property
    def display(self) -> str:
        """`[between 1921 and 1926]`: as DACS 2.4 displays it, in the brackets of what whoever describes supplies (from
        memory)."""
        return f"[{self.reading.display}]"

    @property
    def reasons(self) -> str:
        """Each reason with who says it: `Liisi was born “1918” (Leida); …`."""
        return "; ".join(f"{because.words} ({because.source})" for because in self.because)

"""What a sitting asks about each item, in the order that good interviewers use: the open question first.

Order: what is seen and told freely, then who (by rows), when, where, why that day, what is written, who took
it. No question names anyone: a leading name ("Is this Aunt Ida?") is answered with yes. Source: the University
of Alberta's guide to interviewing with photographs, and common practice for the wording.
"""

from dataclasses import dataclass

from boxlore.core.statements import FIELDS


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
        question="Tell me about this photograph.",
        hint="In the teller's own words. Wait; silence helps.",
        lines=4,
    ),
    Prompt(
        field="person",
        question="Who is in it?",
        hint="From the left, row by row. Enter after each name.",
        gathers=True,
    ),
    Prompt(
        field="date",
        question="When was it?",
        hint="A day, a year, a season, “about 1938”, “before the war”.",
    ),
    Prompt(
        field="place",
        question="Where was it?",
        hint="Town or village; street or farm if known. As it was called then.",
    ),
    Prompt(
        field="occasion",
        question="Why that day?",
        hint="A wedding, a visit, the day before leaving.",
    ),
    Prompt(
        field="inscription",
        question="What is written on it?",
        hint="Letter for letter, front or back; [...] where it cannot be read.",
        lines=3,
    ),
    Prompt(
        field="photographer",
        question="Who took it?",
        hint="A person, or the studio stamped on the mount.",
    ),
)

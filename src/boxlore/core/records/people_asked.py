"""Whether told words may be nobody's: what is noted as to be asked of them, and what the words themselves say.

A question quotes the words that it is about (`Is “Rex” someone in the picture?`), or those of a remark (`Is “Dot” in
the picture too, where “leaning on Dot” is told of Anna?`). What brackets say of somebody stands behind those words.
"""

import re
from collections.abc import Iterable

from boxlore.core.people.who_is_where.reader import names_nobody

OF_A_REMARK = re.compile(
    r"(?:Is (?:“(.+?)”|the teller) in the picture too|Who are “.+?”), where “(.+)” is told of (.+)\?"
)
_OF_SEVERAL = "Who are"


def asked_by(question: str, told: str) -> str:
    """The words in question, if it asks about what was told: all, or those before what brackets say of somebody."""
    asked = [told, before_brackets(told)]
    if question.startswith("Is it “"):
        said = before_brackets(told).split()  # `or Betty`, of which it is asked whether it is Betty
        asked += [told.partition(" ")[2], *(" ".join(said[at:]) for at in range(1, len(said)))]
    return next((name for name in asked if f"“{name}”" in question and not OF_A_REMARK.match(question)), "")


_PROPOSES = re.compile(r"”(?::| is? that:|: who is that:)? ([^“”]+)\?$")
_OR_ANOTHER = re.compile(r",? who was named before, or somebody else\?$|, or (?:somebody|someone) else\?$")
"""`Is “l'instituteur” M. Lemoine, or somebody else?`"""

_NO_PROPOSAL = re.compile(r"\b(?:in the picture|somebody|someone|told by itself|of the family)\b")


def proposed(question: str) -> list[str]:
    """The names that a question offers: `Нина` of `Is “Ниной” Нина?`, both of `Who are “Manželé Dvořákovi”: Dvořák;
    Dvořáková?`."""
    told = _PROPOSES.search(_OR_ANOTHER.sub("?", question))
    if told is None or _NO_PROPOSAL.search(told[1]):
        return []
    offered = told[1].removeprefix("who is that: ").removeprefix("several people: ")
    names = re.split(r"; |, or | or ", offered)
    return [name.strip() for name in names if name[:1].isupper()]


def is_in_a_remark(question: str, told: str) -> bool:
    """Whether a question is about somebody who is named only in a remark of these told words."""
    remark = OF_A_REMARK.match(question)
    return remark is not None and remark[3] in told and all(part in told for part in remark[2].split(", "))


def is_of_several(question: str) -> bool:
    """Whether it asks who several are, who are told by no name: `their three children`."""
    return question.startswith(_OF_SEVERAL)


_EITHER: tuple[tuple[re.Pattern[str], tuple[str, ...]], ...] = (
    (re.compile(r"Is “(.+)” the own side, or that of the picture\?"), ("the own side", "the side of the picture")),
    (re.compile(r"Does “.+” tell where “(.+)” is too, or “.+” alone\?"), ("of both", "of the last one alone")),
    (re.compile(r"(?:Is|Are) (“.+”) of the family .+ too\?"), ("yes", "no")),
    (re.compile(r"What is “(.+)” of the family .+ called\?"), ()),
)
"""Questions about somebody who is known -> what may be answered, besides that the words stay as told."""


def answers_about(question: str, told: str) -> tuple[str, ...] | None:
    """What may be answered to a question about somebody known, of whom these words were told; None for another one."""
    for pattern, answers in _EITHER:
        if (about := pattern.fullmatch(question)) and about[1].strip("“”").split("” and “")[0] in told:
            return answers
    return None


def before_brackets(told: str) -> str:
    """`Ruth` of `Ruth (still alive then)`."""
    return told.partition(" (")[0]


def may_be_nobody(told: str, questions: Iterable[str]) -> bool:
    """Whether words of which nobody was made are in question, or name nobody: no title, no caption and no list of names
    has them. So it is with several of whom it is asked who they are (`the twins`)."""
    return any(asked_by(question, told) for question in questions) or names_nobody(told)

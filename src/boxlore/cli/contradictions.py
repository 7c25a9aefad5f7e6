"""What cannot all be so, in lines: for `boxlore evidence` and for the record of one item."""

from collections.abc import Iterable, Sequence

from boxlore.cli import output
from boxlore.core.evidence.claims import Claim
from boxlore.core.evidence.disagreements import Disagreement
from boxlore.core.evidence.proposals import Proposal


def shown(worked: Proposal, of_it: Sequence[Disagreement]) -> str:
    """The date that is worked out, with that it is contradicted."""
    return f"{worked.display or 'nothing'}{'  (but see the contradiction below)' if of_it else ''}"


def write_left_out(claims: Iterable[Claim], indent: str) -> None:
    """What bounds nothing until it is settled."""
    for claim in claims:
        output.say(f"{indent}left out, for not all can be so that is told of that life: {said(claim)}")


def said(claim: Claim) -> str:
    return output.safe(f"{claim.words}  [{claim.source}; {claim.sure}]")


MOST_BESIDES = 4
"""So many more claims are written of what tells of the same."""


def write(each: Disagreement, indent: str) -> None:
    output.say(f"{indent}These cannot all be so; which of them is not?")
    for claim in each.circle.claims:
        output.say(f"{indent}  {said(claim)}")
    if each.others:
        ways = "one more way" if len(each.others) == 1 else f"{len(each.others)} more ways"
        output.say(f"{indent}  (it shows in {ways}, also by:")
        for claim in each.besides[:MOST_BESIDES]:
            output.say(f"{indent}    {said(claim)}")
        output.say(f"{indent}  )" if len(each.besides) <= MOST_BESIDES else f"{indent}    and more)")

"""Names that stand within words about a place: “behind the pub at Waikouaiti”, “Pärnu rannas”, “up the Matterhorn”.

A name is a run of words with a large letter, with small words of names between them (`Stoke on Trent`). It stands
within words only beside a word with a small letter, which tells what there was. A run that tells whose it was
(`Aunt Edie's`) is none; a word behind it that is cut short belongs to it (`Halle a. S.`). Scripts without large letters
have no such runs.
"""

import re
from dataclasses import dataclass

JOINING = frozenset(
    "am an auf bei d da das de del della den der des di do dos du ob of on sous sur the unter upon van von vor y zu "
    "nad pod na над на под ved og".split()
)
"""Small words that may stand in a name."""
LEADING = JOINING | frozenset(
    "a an and at by dem das ins from in near over to up with im in der die ab nach von beim zum zur à au aux en dans "
    "chez près w we u v ve z ze k ku ke o во в у к из от с í á við hjá hos i på til fra från vid bij te aan "
    "iz kod pie prie off out naby em no nos nas".split()
)
"""Small words that lead to a name, and say nothing without it."""


@dataclass(frozen=True, slots=True)
class Within:
    """A name with the words before and behind it."""

    before: str
    name: str
    behind: str

    @property
    def words(self) -> str:
        """What was told beside the name, without the small words that lead to it."""
        return " ".join(part for part in (without_leading(self.before), self.behind) if part)


def without_leading(words: str) -> str:
    """The words without the small ones at their end, which lead to a name: `halfway up the` is `halfway`."""
    tokens = words.split()
    while tokens and tokens[-1].casefold() in LEADING:
        tokens.pop()
    return " ".join(tokens)


def names_within(words: str) -> tuple[Within, ...]:
    """The runs, the last first; none where the words are one name themselves, or tell of no name."""
    tokens = words.split()
    runs = [run for run in _runs(tokens) if not is_whose(tokens[run[1] - 1])]
    small = [at for at in range(len(tokens)) if not any(first <= at < end for first, end in runs)]
    cut_short = any(at > runs[0][0] and tokens[at].endswith(".") for at in small if runs)
    if cut_short or not any(tokens[at][0].islower() for at in small):
        return ()
    return tuple(_within(tokens, first, end) for first, end in reversed(runs))


def is_joined(words: str) -> bool:
    """Whether small words of names stand in these."""
    return any(token in JOINING for token in words.split())


def pieces_of(within: Within) -> tuple[Within, ...]:
    """What a run of several words may be made of: what stands between its small words (`Hapsal` in
    `Strand von Hapsal`), the last first; where there are none, its first word, which may be told inflected
    (`Tallinnas Raekoja`).
    """
    before, tokens, behind = (part.split() for part in (within.before, within.name, within.behind))
    whole, start = [*before, *tokens, *behind], len(before)
    joined = [at for at, token in enumerate(tokens) if token in JOINING]
    spans = list(zip((0, *(at + 1 for at in joined)), (*joined, len(tokens)), strict=True))
    spans = list(reversed(spans)) if joined else [(0, 1)]
    pieces = [_within(whole, start + first, start + end) for first, end in spans if 0 < end - first < len(tokens)]
    return tuple(piece for piece in pieces if piece.name[:1].isupper())


def _within(tokens: list[str], first: int, end: int) -> Within:
    name = " ".join(tokens[first:end]).strip("“”„\"'()[]:;")
    return Within(" ".join(tokens[:first]), name, " ".join(tokens[end:]))


def _runs(tokens: list[str]) -> list[tuple[int, int]]:
    """First and end of every run."""
    runs: list[tuple[int, int]] = []
    for at in (at for at, token in enumerate(tokens) if token.lstrip("“„\"'([")[:1].isupper()):
        joined = runs and all(token in JOINING for token in tokens[runs[-1][1] : at])
        if joined and not is_whose(tokens[runs[-1][1] - 1]):
            runs[-1] = (runs[-1][0], at + 1)
        else:
            runs.append((at, at + 1))
    return runs


_WHOSE = re.compile(r"(?:['’ʼ]s|s['’ʼ])$", re.IGNORECASE)


def is_whose(words: str) -> bool:
    """Whether words end as those that tell whose something is (`Aunt Edie's`, `the Rourkes'`)."""
    return bool(_WHOSE.search(words))

"""Which care notes stand before a picture: those about what it shows, not those about how the print is handled.

Common practice, no source. A note that cannot be told apart stands before the picture: it is better to wait once too
often.
"""

from boxlore.core.statements import fold

HANDLING = (
    "support", "handle", "handling", "gloves", "brittle", "fragile", "crack", "cracked", "torn", "tear", "flaking",
    "curl", "curled", "flatten", "unfold", "fold", "emulsion", "glass", "cased", "mount", "mounted", "tape", "glue",
    "stuck", "sleeve", "enclosure", "corner", "edge", "edges", "beneath", "mould", "mold", "damp", "rust", "staple",
    "pin", "light", "lift", "heavy", "both hands",
)  # fmt: skip
SHOWN = (
    "dead", "death", "died", "dying", "funeral", "coffin", "grave", "burial", "corpse", "body", "killed", "murder",
    "war", "violence", "violent", "wound", "wounded", "blood", "hanging", "sacred", "secret", "ceremony", "restricted",
    "tapu", "ancestor", "naked", "nude", "abuse", "prison", "camp", "accident", "suicide", "illness", "hospital",
    "distress", "distressing", "upset", "sad", "cry", "cries", "grief", "ask first", "permission",
)  # fmt: skip


def stands_before(note: str) -> bool:
    """Whether the picture stays covered until this note was read: not where it only says how to handle the print."""
    words = f" {' '.join(''.join(letter if letter.isalnum() else ' ' for letter in fold(note)).split())} "
    if not words.strip() or any(f" {word} " in words for word in SHOWN):
        return bool(words.strip())
    return not any(f" {word} " in words for word in HANDLING)

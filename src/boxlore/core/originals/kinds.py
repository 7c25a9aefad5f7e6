"""What an original is: the kinds that the rules of housing, scanning and survey know (common practice, no source)."""

from boxlore.core.errors import WrongUse

ITEM_KINDS = (
    "print", "card", "postcard", "photograph", "negative", "slide", "transparency", "tintype", "album-page", "letter",
    "note", "document", "clipping", "envelope",
)  # fmt: skip


def typed_kind(text: str) -> str:
    """The kind that somebody wrote, in any case. Raises WrongUse, naming all."""
    kind = "-".join(text.casefold().split())
    if kind not in ITEM_KINDS:
        raise WrongUse(f"“{text.strip()[:40]}” is no kind of original.", f"Write one of: {', '.join(ITEM_KINDS)}.")
    return kind

"""Language tags as a keeper writes them (BCP 47, RFC 5646: letters and digits of at most eight, joined by hyphens)."""

from boxlore.tui.screens.cards import Blank


def is_language(tag: str) -> bool:
    """Whether `tag` has the shape of a language tag; whether such a language exists is not asked."""
    return bool(tag) and all(part.isalnum() and part.isascii() and len(part) <= 8 for part in tag.split("-"))


def language_blank(now: str) -> Blank:
    """The line of a form that asks for a language tag; `now` is the tag that it begins with."""
    return Blank("tag", "Language tag", now, "en English, et Estonian, mi te reo Māori, de German")

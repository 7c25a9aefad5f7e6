"""A form's line for a language tag, and what is said of one that is none."""

from boxlore.core.fields.language import is_language
from boxlore.tui.screens.forms import Blank


def language_fault(tag: str) -> str:
    """What to write in place of `tag`, or an empty string where it has the shape of a language tag."""
    return "" if is_language(tag) else "Write a language tag: en, et, mi, de-AT."


def language_blank(now: str) -> Blank:
    """The line of a form that asks for a language tag; `now` is the tag that it begins with."""
    return Blank("tag", "Language tag", now, "en English, et Estonian, mi te reo Māori, de German")

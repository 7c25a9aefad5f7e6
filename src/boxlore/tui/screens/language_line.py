"""A form's line for a language tag, and what is said of one that is none."""

from boxlore.core.fields.language import why_no_language
from boxlore.tui.screens.forms import Blank


def language_fault(tag: str) -> str:
    """What is wrong with `tag`, and what to write in its place; an empty string where it is a language tag."""
    why = why_no_language(tag)
    return f"{why if tag else ''} Write a language tag: en, et, mi, de-AT.".strip() if why else ""


def language_blank(now: str) -> Blank:
    """The line of a form that asks for a language tag; `now` is the tag that it begins with."""
    return Blank("tag", "Language tag", now, "en English, et Estonian, mi te reo Māori, de German")

"""A form's line for a language, by its tag or its name, and what is said of one that is neither."""

from boxlore.core.fields.language import why_no_language
from boxlore.core.fields.language_names import language_name, language_named
from boxlore.tui.screens.forms import Blank


def language_read(words: str) -> tuple[str, str]:
    """The tag of the language meant, and '' or what is wrong with the words."""
    if tag := language_named(words):
        return tag, ""
    why = why_no_language(words) if words else ""
    return "", f"{why} Write its name, such as Estonian, or its letters: en, et, mi, de-AT.".strip()


def language_blank(now: str) -> Blank:
    """The line of a form that asks for a language; `now` is the tag that it begins with."""
    hint = "Its name or its letters: English or en, Estonian or et, te reo Māori or mi."
    return Blank("tag", "Language", language_name(now), hint)

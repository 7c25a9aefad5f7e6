"""The order `.name` of the plain sitting: how a name is taken apart, where its words leave that open."""

from boxlore.cli.plain_sitting import Plain, name_lines
from boxlore.core.errors import WrongUse
from boxlore.tasks.sitting.which_name import open_name, take_name


def name(plain: Plain, words: str) -> None:
    """`.name`: the ways again; `.name 1`: the first is right."""
    question = open_name(plain.sitting, plain.record)
    if question is None:
        raise WrongUse("No name is in question here.", "boxlore people names shows how each is taken apart.")
    if not words:
        for line in name_lines(question):
            plain.say(line)
        return
    if not (words.isascii() and words.isdigit()):
        raise WrongUse(f"“{words[:20]}” is no choice.", "Say .name 1.")
    taken = take_name(plain.sitting, plain.record, question, int(words))
    plain.read_again()
    plain.say(f"Noted: {taken}.")

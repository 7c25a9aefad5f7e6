"""The order `.person` of the plain sitting: who is meant, where the words told leave it open."""

from boxlore.cli.plain_sitting import Plain, person_lines
from boxlore.core.errors import WrongUse
from boxlore.tasks.sitting.which_person import open_person, take_person


def person(plain: Plain, words: str) -> None:
    """`.person`: the choices again; `.person 2`: the second is meant."""
    question = open_person(plain.sitting, plain.record)
    if question is None:
        raise WrongUse("Nobody is in question here.", ".who shows everything told of this item.")
    if not words:
        for line in person_lines(question):
            plain.say(line)
        return
    if not (words.isascii() and words.isdigit()):
        raise WrongUse(f"“{words[:20]}” is no choice.", "Say .person 1.")
    taken = take_person(plain.sitting, plain.record, question, int(words))
    plain.read_again()
    plain.say(f"Noted: {taken}.")

"""The orders `.name` and `.person` of the plain sitting: how a name is taken apart, and who is meant, where words leave
that open."""

from collections.abc import Callable, Sequence
from functools import partial

from boxlore.cli.plain_sitting import Plain, name_lines, person_lines
from boxlore.core.errors import WrongUse
from boxlore.tasks.sitting.which_name import open_name, take_name
from boxlore.tasks.sitting.which_person import open_people, take_person


def name(plain: Plain, words: str) -> None:
    """`.name`: the ways again; `.name 1`: the first is right."""
    question = open_name(plain.sitting, plain.record)
    if question is None:
        raise WrongUse("No name is in question here.", "boxlore people names shows how each is taken apart.")
    _choose(plain, ".name", words, name_lines(question), partial(take_name, plain.sitting, plain.record, question))


def person(plain: Plain, words: str) -> None:
    """`.person`: the choices again; `.person 2`: the second is meant."""
    questions = list(open_people(plain.sitting, plain.record))
    if not questions:
        raise WrongUse("Nobody is in question here.", ".who shows everything told of this photograph.")
    take = partial(take_person, plain.sitting, plain.record, questions[0])
    _choose(plain, ".person", words, person_lines(questions), take)
    for line in person_lines(list(open_people(plain.sitting, plain.record))) if words else ():
        plain.say(line)  # the next question, so that none is left unseen


def _choose(plain: Plain, order: str, words: str, lines: Sequence[str], take: Callable[[int], str]) -> None:
    """Say the lines of a question again, or take the choice of a number (from 1). Raises WrongUse."""
    if not words:
        for line in lines:
            plain.say(line)
        return
    if not (words.isascii() and words.isdigit()):
        raise WrongUse(f"“{words[:20]}” is no choice.", f"Say {order} 1.")
    taken = take(int(words))
    plain.read_again()
    plain.say(f"Noted: {taken}.")

"""The order `.place` of the plain sitting: which place is meant, where the words told leave it open."""

from boxlore.cli.plain_sitting import Plain, choice_lines
from boxlore.core.errors import WrongUse
from boxlore.core.places.reading import full_name
from boxlore.tasks.sitting.which_place import OpenPlace, choose, make_own, open_place


def place(plain: Plain, words: str) -> None:
    """`.place`: the choices again; `.place 2`: the second is meant; `.place near 2`; `.place own`."""
    question = _open(plain)
    order, _, behind = words.partition(" ")
    near = order == "near"
    number_words = behind.strip() if near else words
    if not words:
        for line in choice_lines(question):
            plain.say(line)
        return
    if words == "own":
        chosen = make_own(plain.sitting, plain.record, question)
    elif number_words.isascii() and number_words.isdigit():
        chosen = choose(plain.sitting, plain.record, question, int(number_words), near=near)
    else:
        raise WrongUse(f"“{words[:20]}” is no choice.", "Say .place 2, .place near 2 or .place own.")
    plain.read_again()
    plain.say(f"Noted: {full_name(chosen)}.")


def _open(plain: Plain) -> OpenPlace:
    """The open question about a place of this item, of the prompt asked now before others."""
    prompts = sorted(plain.sitting.prompts, key=lambda prompt: prompt is not plain.prompt)
    asked = (open_place(plain.sitting, plain.record, prompt) for prompt in prompts)
    question = next((question for question in asked if question is not None), None)
    if question is None:
        raise WrongUse("No place is in question here.", "Tell where it was first.")
    return question

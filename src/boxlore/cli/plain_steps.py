"""Orders of the plain sitting about the sitting itself: agreement, consent, rest, private minutes, stories, closing."""

from boxlore.cli.plain_sitting import Plain
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.sitting.stages import Step
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.linking import story_about


def story(plain: Plain, words: str) -> None:
    """`.story person Jaan Tamm: He kept bees.`"""
    about, _, text = words.partition(":")
    kind, _, name = about.strip().partition(" ")
    if kind not in ("person", "event", "place", "sitting"):
        raise WrongUse("A story of whom or what?", "Say .story person Jaan Tamm: the story.")
    story_about(plain.sitting, kind, name, text, plain.record.id)
    plain.say("The story is kept.")


def step(plain: Plain, taken: Step) -> None:
    """Rest, go on or close, here and on the teller's page."""
    course.step(plain.sitting, taken)
    plain.showing.say({Step.REST: "A rest.", Step.CLOSE: "Thank you."}.get(taken, ""))
    plain.say({Step.REST: "A rest. .resume goes on.", Step.GO_ON: "Going on."}.get(taken, "Closing."))


def agreement(plain: Plain, words: str) -> None:
    """`.agreement 2 Leida Rourke`: note the terms agreed to, and who agreed. Alone, it reads the terms out."""
    terms, _, agreed_by = words.partition(" ")
    if not words:
        plain.say(f"Read out: {course.READ_OUT}")
        for key, term in course.TERMS.items():
            plain.say(f"{key}: {term}.")
        plain.say("Then say .agreement, the number, and who gave it.")
        return
    answers = {"narrator": plain.sitting.narrator or agreed_by, "terms": terms, "agreed_by": agreed_by}
    before = len(plain.sitting.teller.unsaid)
    course.prepare(plain.sitting, answers)
    for words in plain.sitting.teller.unsaid[before:]:
        plain.say(words)
    told_for = course.told_for(plain.sitting)
    plain.say(f"The agreement is noted.{f' What is told now is {told_for}.' if told_for else ''}")


def consent(plain: Plain, words: str) -> None:
    """`.consent` asks about the next person who is due; `.consent yes`, `no` or `later` answers for that person.

    After `yes` may follow the witness, where somebody else speaks for the person.
    """
    due = [person for person in course.consent_due(plain.sitting) if person.id not in plain.consent_later]
    if not due:
        plain.say("Nobody’s consent is to be asked for again.")
        return
    answer, _, witness = words.partition(" ")
    if answer == "later":
        plain.consent_later.add(due.pop(0).id)
        plain.say("It stays as it was, and is asked again at the next sitting.")
    elif answer in ("yes", "no"):
        noted, *more = course.answer_consent(plain.sitting, due.pop(0), given=answer == "yes", witness=witness)
        for sentence in (f"Noted: {noted}", *more):
            plain.say(sentence)
    elif answer:
        raise WrongUse("Does it stand?", "Say .consent yes, .consent no, or .consent later.")
    if due:
        plain.say(f"May it stay so, outside the family? {course.due_words(due[0])}. .consent yes, no, or later.")


def close(plain: Plain, words: str) -> None:
    """Close, with what to ask next time, and the summary."""
    step(plain, Step.CLOSE)
    course.ask_next_time(plain.sitting, words)
    for line in course.summary(plain.sitting).lines():
        plain.say(line)


def private(plain: Plain, words: str) -> None:
    """`.private 5 of the neighbours`: keep the last minutes from outside, with a reason."""
    minutes, _, why = words.partition(" ")
    if not minutes.isascii() or not minutes.isdigit():
        raise WrongUse("How many minutes, up to now?", "Say .private 5.")
    told = course.close_passage(plain.sitting, int(minutes), why)
    kept = f"{several(told, 'answer')}, and the sound"
    plain.say(f"The last {several(int(minutes), 'minute is', 'minutes are')} kept from outside: {kept}.")

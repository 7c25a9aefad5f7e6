"""Orders of the plain sitting about what was told: read out, change, settle, strike, history."""

from boxlore.cli.plain_sitting import Plain
from boxlore.core.errors import WrongUse
from boxlore.core.fields.guard import check_language
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import StatementView
from boxlore.tasks.sitting import correcting
from boxlore.tasks.strike import carriers, named, still_standing, words_about


def who(plain: Plain, _: str) -> None:
    """Read out everything told of this item, numbered."""
    plain.read_out = [view for name in FIELDS.in_order(plain.record.told) for view in plain.record.all(name)]
    for number, view in enumerate(plain.read_out, 1):
        speaker = view.said_by or str(view.source)
        plain.say(f"{number}. {FIELDS[view.field].label}: {view.words} ({speaker}, {view.sure}, for {view.audience})")
    for conflict in plain.record.conflicts:
        plain.say(f"Disputed: {conflict.field}, {conflict.words}.")
    for conflict in plain.record.undecided:
        plain.say(f"Weighed and left open: {conflict.field}, {conflict.words}.")
    if not plain.read_out:
        plain.say("Nothing is told of this photograph yet.")


def _meant(plain: Plain, number: str) -> StatementView:
    """The statement with this number in the last `.who`; without a number, this teller's last answer to the question,
    else the answer just given.

    Raises WrongUse where neither is there.
    """
    if not number:
        for prompt in filter(None, (plain.prompt, plain.just_told)):
            if (own := plain.sitting.last_own(plain.record, prompt)) is not None:
                return own
    if not (number.isascii() and number.isdigit() and 1 <= int(number) <= len(plain.read_out)):
        raise WrongUse("It is not clear which statement is meant.", "Say .who first, then the order and its number.")
    return plain.read_out[int(number) - 1]


def change(plain: Plain, words: str, aspect: str, allowed: tuple[str, ...] = ()) -> None:
    """`.audience family 3`: give statement 3 (or the answer to this question) another `aspect`.

    `aspect` is audience, sure or language; `allowed` lists its values, and is empty where any value will do.
    """
    value, _, number = words.partition(" ")
    if not value or (allowed and value not in allowed and not value.startswith("archive:")):
        choices = [*allowed, "archive:YYYY-MM-DD"] if aspect == "audience" else allowed
        problem = f"“{value[:20]}” cannot be meant." if value else f"Which {aspect}?"
        raise WrongUse(problem, f"One of: {', '.join(choices)}." if choices else f"Say .{aspect} et, or such a tag.")
    if aspect == "language":
        check_language(value)
    number = number.strip()
    if number and not number.isdigit():
        raise WrongUse(
            f"“{number[:20]}” is no number of a statement.", f"Say .{aspect} {value}, or .{aspect} {value} 3."
        )
    view = _meant(plain, number)
    correcting.change(plain.sitting, plain.record, view, **{aspect: value})
    plain.read_again()
    plain.say(f"Noted: {value}, for “{' '.join(view.words.split())[:40]}”.")


def settle(plain: Plain, words: str) -> None:
    """`.settle 3`, `.settle 3 both`, `.settle 3 doubtful`: which of several answers holds."""
    number, _, how = words.partition(" ")
    view = _meant(plain, number)
    views = correcting.to_settle(plain.record, view.field)
    if not views:
        raise WrongUse("Nothing else is said there, so there is nothing to settle.")
    if how not in ("", "both", "doubtful"):
        raise WrongUse("It can be settled as this one, both, or doubtful.", "Say .settle 3 both.")
    correcting.settle(plain.sitting, plain.record, view.field, views, "" if how else view.statement, outcome=how)
    plain.read_again()
    plain.say("Settled. What the others said stays on record.")


def strike(plain: Plain, words: str) -> None:
    """`.strike 3`: take the words out for good. The order is to be given twice; the first time it only warns."""
    view = _meant(plain, words)
    if plain.warned_of != view.statement:
        plain.warned_of = view.statement
        plain.say(f"“{view.words}” will be taken out for good. Say .strike{words and f' {words}'} again to do it.")
        return
    report = plain.sitting.strike(view.statement)
    plain.read_out = []
    plain.read_again()
    plain.say("Struck." if report.finished else "Struck; the last traces go when the other program closes.")
    for path in carriers(plain.sitting.collection, report):
        plain.say(words_about(path))
    for sentence in still_standing(plain.sitting.collection, report):
        plain.say(sentence)
    named(plain.sitting.collection)


def history(plain: Plain, words: str) -> None:
    """Read out every answer that this question ever had, and whether it still holds."""
    name = words or plain.prompt.field
    for past in plain.sitting.history(plain.record.id, name):
        plain.say(f"{past.statement.recorded_at[:16]}, {past.shown}: {past.statement.words or 'asked, not known'}")

"""`boxlore tell`: one statement from the shell, or many from a table."""

import sys
from functools import partial
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import field_of
from boxlore.core.statements import Source, Statement, Subject, Sure
from boxlore.tasks.collection.items_by_mark import find_told
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.sitting.which_date import asked_of
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import NoOrigin, TableTaken, is_told, read_sure, tell_from
from boxlore.tasks.telling.told_instead import tell_instead, told_before


@click.command()
@click.argument("item", required=False)
@click.argument("field", required=False)
@click.argument("text", required=False)
@click.option(
    "--from",
    "table",
    type=GivenPath(dir_okay=False),
    help="A CSV of statements, or a worksheet's answers.",
)
@click.option(
    "--printed-here", is_flag=True, help="The worksheet was printed from this collection, though the file says not."
)
@click.option("--instead", is_flag=True, help="In the place of what the same source told of it before: a correction.")
@click.option("--again", is_flag=True, help="Tell also what is told already, such as a second Anna.")
@options.by
@click.option("--sure", default="sure", show_default=True, help="sure, likely, guess or not-known.")
@options.told_to
@options.language
@options.as_json
@click.pass_context
def tell(
    ctx: click.Context,
    item: str | None,
    field: str | None,
    text: str | None,
    table: Path | None,
    printed_here: bool,
    instead: bool,
    again: bool,
    source: Source,
    sure: str,
    audience: str,
    language: str,
    as_json: bool,
) -> None:
    """Keep one statement: TEXT about FIELD of ITEM (a number, a mark, or “whole” for the collection).

    With --from, a CSV with the columns item, field, text, by, sure, audience, language: every row that can be
    taken is taken, the others are named with their line. A filled worksheet comes back by its codes: a column code
    in place of item and field, or a .txt file with one answer a line, such as A42-W3-B: the quay. A question mark
    alone means asked, not known. A table that is taken again, mended or not, adds only what is new. What the same
    source told before stands beside it, unless it is told --instead.

    A worksheet's file of answers says of which collection it is, a table with codes in a column collection. Answers
    that do not say it are asked about, and answers of another collection are refused.
    """
    said = ("source", "sure", "audience", "language", "as_json")
    if table is not None:
        options.refuse_others(ctx, "with --from", "table", "printed_here", "again", *said)
    else:
        options.refuse_others(ctx, "without --from", "item", "field", "text", "again", "instead", *said)
    how = Telling(source=source, sure=read_sure(sure), audience=audience, language=language)
    with open_for_writing(ctx.obj) as collection:
        if table is not None:
            taken = _taken(collection, table, how, again=again, printed_here=printed_here)
            _report_table(taken, as_json=as_json)
            ctx.exit(1 if taken.refused else 0)
        if not item or not field or (text is None and how.sure is not Sure.NOT_KNOWN):
            raise WrongUse("Which item, which field, which words?", "boxlore tell ITEM FIELD TEXT, or --from FILE.csv")
        subject = find_told(collection, item, field)
        if not (again or instead) and is_told(collection, subject, field, text or "", how):
            talk.say(f"Told already: {field} of {item}. --again keeps it a second time.")
            return
        teller = Teller(collection)
        before = [] if instead else _told_otherwise(collection, subject, field, how)
        tell_it = partial(tell_instead, teller) if instead else teller.tell
        statement = tell_it(subject, field, text or "", how)
        _report(statement, as_json=as_json)
        for words in teller.unsaid:
            talk.say(words)
        if not as_json:
            asked = ": asked, not known" if statement.sure is Sure.NOT_KNOWN and not statement.words else ""
            talk.say(f"Kept: {field} of {item}{asked}.")
            for question in teller.to_ask:
                talk.say(f"To ask: {question}")
            for words in asked_of(collection, statement):
                talk.say(words)
            if before:
                told = " and ".join(f"“{output.safe(row.words[:60])}”" for row in before)
                talk.say(f"The same source told {told} before, and both stand. --instead puts it in that place.")


def _told_otherwise(collection: Collection, subject: Subject, field: str, how: Telling) -> list[Statement]:
    """What the same source has told before, where the field has one answer."""
    if field_of(field, subject.kind).many:
        return []
    return told_before(collection, subject, field, how)


def _taken(collection: Collection, table: Path, how: Telling, *, again: bool, printed_here: bool) -> TableTaken:
    """What the table came to. Whoever sits there is asked whether a worksheet was printed from this collection."""
    try:
        return tell_from(collection, table, how, again=again, printed_here=printed_here)
    except NoOrigin as error:
        if not sys.stdin.isatty():
            raise NoOrigin(error.problem, f"{error.what_to_do} Or say --printed-here.") from None
        talk.say(output.safe(error.problem))
        question = f"Was it printed from “{output.safe(collection.settings.title)}”?"
        if not talk.agreed(question, "Nothing was told."):
            raise
    return tell_from(collection, table, how, again=again, printed_here=True)


def _report(statement: Statement, *, as_json: bool) -> None:
    """The statement as a row, where rows are asked for."""
    if as_json:
        subject = statement.subject.id
        output.row({"statement": statement.id, "subject": subject, "field": statement.field, "words": statement.words})


def _report_table(taken: TableTaken, *, as_json: bool) -> None:
    for words in taken.faults:
        talk.say(words)
    talk.say(f"{len(taken.told)} told, {taken.known} known already, {len(taken.refused)} refused.")
    for words in taken.unsaid:
        talk.say(words)
    for statement in taken.told:  # on the disk by now, whoever reads no further
        _report(statement, as_json=as_json)

"""`boxlore strike`: takes words out for good, when the teller wishes it."""

import sys

import click

from boxlore.cli import options, output, talk
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.struck_in_pdfs import not_searched, pdfs_read
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.strike import (
    ANY,
    BEYOND,
    EVERYWHERE,
    StrikeReport,
    Target,
    carriers,
    left_words,
    meant,
    named,
    own_files,
    proved,
    still_standing,
    strike_out,
    target_line,
    targets,
    targets_everywhere,
    words_about,
)

NOTHING = "Nothing was struck; all is as it was."


@click.command()
@click.argument("about", metavar="ITEM|PERSON")
@click.argument("field")
@click.option("--words", default=None, help="Only statements that hold these words.")
@click.option("--yes", is_flag=True, help="Do it without asking.")
@options.as_json
@click.pass_context
def strike(ctx: click.Context, about: str, field: str, words: str | None, yes: bool, as_json: bool) -> None:
    """Take what is told in a FIELD out for good: from the log, every draft, index and backup.

    ITEM is a number or a mark, PERSON a name, a part of one, or the end of an id. “everywhere any” with --words takes
    those words out of all that is told: of items, people, places, occasions, boxes and sittings. Copies, sheets, pages
    and packages in the collection's folder that still carry the words are listed. The field embedded is what the files
    of an item's scans say.
    """
    if words is not None and not words.strip():
        raise WrongUse("--words is empty.", "Say which words, or leave --words out to strike all that is told there.")
    with open_for_writing(ctx.obj) as collection:
        left: list[Target] = []
        asked: list[str] = []
        if about.lower() == EVERYWHERE:
            to_strike, left = targets_everywhere(collection, words or "", field)
            asked = [words or ""] if field == ANY else []
            for target in to_strike:
                talk.say(output.safe(target_line(collection, target)))
        else:
            to_strike = targets(collection, meant(collection, about, field), field, words or "")
        for sentence in sorted({left_words(target) for target in left}):
            talk.say(output.safe(sentence))
        if not to_strike:
            talk.say("Nothing was struck.")
            ctx.exit(1)
        talk.say(f"{several(len(to_strike), 'statement')} would be struck. This cannot be undone.")
        if not yes and not sys.stdin.isatty():
            talk.say("Nothing was struck. Add --yes where nobody can be asked.")
            ctx.exit(1)
        if not yes and not talk.agreed("Strike them?", NOTHING):
            talk.say(NOTHING)
            ctx.exit(1)
        own = own_files(collection, to_strike)
        with talk.progress() as bar:
            report = strike_out(
                collection,
                [target.statement for target in to_strike],
                asked=asked,
                waiting=talk.say,
                stopped=bar.stopped,
            )
        printed = pdfs_read(collection, [words] if words else [target.words for target in to_strike])
        carrying = _report(collection, report, printed, as_json=as_json)
        for said in own:
            talk.say(output.safe(said))
        named(collection)
    ctx.exit(1 if carrying or (asked and report.standing) or not report.finished else 0)


def _report(collection: Collection, report: StrikeReport, printed: dict[str, bool], *, as_json: bool) -> list[str]:
    """Say what was struck, and which files still carry the words; the paths of these. `printed` are PDFs that were
    read, and whether the words stand in them."""
    carrying = list(dict.fromkeys([*carriers(collection, report), *(path for path in printed if printed[path])]))
    unsearched = [path for path in not_searched(collection) if path not in printed]
    if as_json:
        row = {"struck": report.struck, "finished": report.finished, "still_in": carrying, "not_searched": unsearched}
        output.row({**row, "standing": len(report.standing)})
    standing = still_standing(collection, report)
    if report.finished and standing:
        talk.say(f"Struck. The words stand on elsewhere in the collection, as said below. {BEYOND}")
    elif report.finished:
        talk.say(" ".join(filter(None, ("Struck.", proved(report, carrying), BEYOND))))
    else:
        talk.say("The words are out of use; their last traces go when the other program closes the collection.")
    for sentence in standing:
        talk.say(output.safe(sentence))
    for path in carrying:
        talk.say(words_about(path))
    for path in unsearched:
        talk.say(f"Not searched: {path} is compressed. If it was made with the words in it, make it again.")
    return carrying

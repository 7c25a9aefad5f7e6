"""`boxlore find`: a search of everything told, accents and case aside."""

import click

from boxlore.cli import options, output, talk
from boxlore.core.fields.guard import check_letters
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.finding import found, near


@click.command()
@click.argument("words", nargs=-1, required=True)
@click.option("--limit", type=click.IntRange(1, 100_000), default=50, show_default=True)
@options.as_json
@click.pass_context
def find(ctx: click.Context, words: tuple[str, ...], limit: int, as_json: bool) -> None:
    """Find statements that hold all of WORDS, what is being typed included; a date also finds what was told in other
    words of days within it.

    The exit code is 1 where nothing is found.
    """
    check_letters(" ".join(words))
    with open_collection(ctx.obj, write=False) as collection:
        hits = found(collection, " ".join(words), limit)
        meant = [] if hits else near(collection, " ".join(words))
    for hit in hits:
        if as_json:
            output.row(
                {
                    "number": hit.number or None,
                    "mark": hit.mark or None,
                    "field": hit.field,
                    "words": hit.words,
                    "source": hit.source,
                    "draft": hit.draft,
                }
            )
        else:
            where = " · ".join(part for part in (hit.number, hit.mark) if part) or "-"
            output.say(f"{where:20}  {hit.field}: {output.safe(hit.words)}{' (being typed)' if hit.draft else ''}")
    if not hits:
        talk.say(f"Nothing told has all of these words: {' '.join(words)}")
        if meant:
            talk.say(f"Did you mean {' or '.join(map(output.safe, meant))}?")
    ctx.exit(0 if hits else 1)

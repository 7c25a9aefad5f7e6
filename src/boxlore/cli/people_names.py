"""`boxlore people names`: how names told whole are taken apart; the keeper confirms or corrects."""

import click

from boxlore.cli import options, output, talk
from boxlore.core.errors import WrongUse
from boxlore.core.people.names.parts import PARTS
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.people.names_taken_apart import names_told, settle_name
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.telling.understanding import parts_words


@click.command()
@click.argument("person_words", metavar="[PERSON]", required=False)
@click.option("--confirm", is_flag=True, help="The name is taken apart rightly.")
@click.option("--part", "corrections", multiple=True, help="A part as it should be, such as family=Hīroa.")
@options.as_json
@click.pass_context
def names(
    ctx: click.Context, person_words: str | None, confirm: bool, corrections: tuple[str, ...], as_json: bool
) -> None:
    """How names told whole are taken apart, those that are in doubt first; or confirm and correct that of PERSON."""
    if confirm or corrections:
        if not person_words:
            raise WrongUse("Whose name?", "boxlore people names PERSON --confirm")
        parted = dict(_correction(words) for words in corrections)
        with open_for_writing(ctx.obj) as collection:
            person = find_person(collection, person_words)
            parts = settle_name(collection, person, parted)
        talk.say(f"Kept: {person.name}: {parts_words(parts) or 'a name of no parts'}.")
        return
    with open_collection(ctx.obj, write=False) as collection:
        names = list(names_told(collection, find_person(collection, person_words) if person_words else None))
    for name in names:
        asks = name.parts.asks
        if as_json:
            values = {part: getattr(name.parts, part) for part in PARTS if getattr(name.parts, part)}
            output.row({"id": name.person.id, "name": name.statement.words, "sort_name": name.person.sort_name,
                        "parts": values, "confirmed": name.confirmed, "asks": asks or None})  # fmt: skip
        else:
            state = f"  {asks}" if asks else "  (confirmed)" if name.confirmed else ""
            output.say(output.safe(f"{name.statement.words}: {parts_words(name.parts) or 'kept as told'}{state}"))
    if not names:
        talk.say("No name is told whole.")
    ctx.exit(1 if any(name.parts.asks for name in names) or not names else 0)


def _correction(words: str) -> tuple[str, str]:
    part, equals, value = words.partition("=")
    if not equals:
        raise WrongUse(f"“{words[:40]}” says no part.", "Write it as family=Hīroa.")
    return part.strip(), value.strip()

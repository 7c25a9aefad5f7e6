"""`boxlore people`: the registry, kin, tree files, one of two and two of one, consent and who may see whom."""

from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.consent import Capacity, Matter, make_consent
from boxlore.core.people.kin import Kin, called, kin_words, possessive
from boxlore.core.people.person import Person
from boxlore.core.statements import KEEPER, Kind, Subject, read_source
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records import lives_of, record_of
from boxlore.tasks.people import registry
from boxlore.tasks.people.trees import import_tree
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.telling.statements import Teller, Telling


@click.group()
def people() -> None:
    """Who is who, and how they are kin. PERSON is a name, a part of one, or the end of an id as `list` shows it."""


def _row(one: Person) -> dict[str, object]:
    return {
        "id": one.id,
        "uri": one.uri,
        "name": one.name,
        "sort_name": one.sort_name,
        "born": one.born.get("edtf") or None,
        "died": one.died.get("edtf") or None,
        "also": list(one.also),
    }


@people.command("list")
@click.argument("words", nargs=-1)
@options.as_json
@click.pass_context
def list_people(ctx: click.Context, words: tuple[str, ...], as_json: bool) -> None:
    """Everyone in the registry, or those whose names hold WORDS, by sort form."""
    with open_collection(ctx.obj, write=False) as collection:
        asked = " ".join(words).casefold()
        everyone = sorted(collection.people().values(), key=lambda one: (one.sort_name, one.id))
    found = [one for one in everyone if not asked or any(asked in form.casefold() for form in (one.name, *one.forms))]
    for one in found:
        if as_json:
            output.row(_row(one))
        else:
            dates = "-".join(str(value.get("display") or "") for value in (one.born, one.died))
            click.echo(f"{one.id[-12:]}  {output.safe(one.sort_name)}{f', {dates}' if dates != '-' else ''}")
    ctx.exit(0 if found else 1)


@people.command()
@click.argument("person")
@options.as_json
@options.on_day
@click.pass_context
def show(ctx: click.Context, person: str, as_json: bool, on_day: object) -> None:
    """Everything told of PERSON, by whom; living or not and why; links, and the items they are in."""
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:  # type: ignore[arg-type]  # a date by options.on_day
        one = registry.find_person(collection, person)
        known = registry.known_of(collection, one)
        links = list(registry.links_of(one, collection))
    if as_json:
        told = [
            {"id": s.id, "field": s.field, "words": s.words, "source": str(s.source), "audience": s.audience}
            for s, _ in known.statements
        ]
        life = {"living": known.life.living, "because": known.life.because, "items": list(known.numbers)}
        output.row({**_row(one), **life, "statements": told, "links": [[role, other.name] for role, other in links]})
        return
    click.echo(f"{output.safe(one.name)}  ({one.uri})")
    click.echo(f"  {'Taken as living' if known.life.living else 'Taken as dead'}: {known.life.because}")
    for statement, _ in known.statements:
        label = FIELDS[statement.field].label
        click.echo(
            f"  {label}: {output.safe(statement.words)}  ({output.safe(str(statement.source))}) [{statement.id[-12:]}]"
        )
    for role, other in links:
        click.echo(f"  {role.capitalize()}: {output.safe(other.name)}")
    if known.numbers:
        click.echo(f"  In: {', '.join(known.numbers)}")


@people.command()
@click.argument("person")
@click.argument("other", required=False)
@options.as_json
@click.pass_context
def kin(ctx: click.Context, person: str, other: str | None, as_json: bool) -> None:
    """What everyone, or OTHER, is to PERSON, worked out from parents, children and spouses."""
    with open_collection(ctx.obj, write=False) as collection:
        ego = registry.find_person(collection, person)
        rows = registry.kin_of(collection, ego)
        wanted = registry.find_person(collection, other) if other else None
        words = kin_words(Kin(collection.people()), ego, wanted) if wanted else ""
    if wanted:
        rows = [row for row in rows if row[0].id == wanted.id]
        if not as_json:
            click.echo(output.safe(f"{wanted.name}: {words}") if words else f"No kinship of {wanted.name} is known.")
            ctx.exit(0 if words else 1)
    for one, found in rows:
        if as_json:
            output.row({"id": one.id, "name": one.name, "term": found.term, "words": found.words, "by": str(found.by),
                        "degree": found.degree or None})  # fmt: skip
        else:
            click.echo(output.safe(f"{one.name}: {possessive(called(ego))} {found.words}"))
    ctx.exit(0 if rows else 1)


@people.command()
@click.argument("item")
@click.argument("text", required=False)
@click.option("--by", default="", help="Who says so: narrator:NAME, inscription:verso, document:WHAT, keeper.")
@click.pass_context
def shown(ctx: click.Context, item: str, text: str | None, by: str) -> None:
    """Who stands where in ITEM: keep TEXT (“back row, left to right: Anna, ?, Ruth”), or write it back without TEXT."""
    if text is None:
        with open_collection(ctx.obj, write=False) as collection:
            line = registry.written_back(record_of(collection, find_item(collection, item).id))
        click.echo(output.safe(line)) if line else talk.say("Nobody's place in it is told.")
        ctx.exit(0 if line else 1)
    with open_for_writing(ctx.obj) as collection:
        how = Telling(source=read_source(by) if by else KEEPER)
        placed = registry.tell_placed(Teller(collection), collection, find_item(collection, item), text, how)
    talk.say(f"Kept: {len(placed)} people, {sum(1 for one in placed if not one.words)} of them not known.")


@people.command("tell")
@click.argument("person")
@click.argument("field")
@click.argument("text")
@click.option("--by", default="", help="Who says so: narrator:NAME, document:WHAT, keeper.")
@click.option("--audience", default="", help="keeper, family, archive:YYYY-MM-DD or anyone.")
@click.pass_context
def tell_person(ctx: click.Context, person: str, field: str, text: str, by: str, audience: str) -> None:
    """Keep one statement about PERSON: TEXT about FIELD (born, nickname, mother, …)."""
    with open_for_writing(ctx.obj) as collection:
        one = registry.find_person(collection, person)
        how = Telling(source=read_source(by) if by else KEEPER, audience=audience)
        Teller(collection).tell(Subject(Kind.PERSON, one.id), field, text, how)
    talk.say(f"Kept: {field} of {one.name}.")


@people.command("import")
@click.argument("file", type=click.Path(path_type=Path, dir_okay=False))
@click.option(
    "--name", default="", help="What the file is called in sources (else its own name); the same for an update."
)
@options.as_json
@click.pass_context
def import_file(ctx: click.Context, file: Path, name: str, as_json: bool) -> None:
    """Take a tree file (GEDCOM 5.5.1 or 7.0) in; a second time it is brought up to date. What was not
    understood is listed."""
    with open_for_writing(ctx.obj) as collection, talk.progress() as bar:
        taken = import_tree(collection, file, name=name, progress=bar)
    if as_json:
        output.row({"new": taken.new, "changed": taken.changed, "same": taken.same, "marriages": taken.marriages,
                    "statements": taken.statements, "version": taken.version, "encoding": taken.encoding})  # fmt: skip
    for left in taken.left:
        if as_json:
            output.row({"not_understood": left.path, "lines": left.count, "line": left.line, "example": left.example})
        else:
            click.echo(
                output.safe(
                    f"not understood: {left.path}, {left.count} lines, first in line {left.line}: {left.example}"
                )
            )
    for fault in taken.faults:
        if as_json:
            output.row({"fault": fault.why, "line": fault.number})
        else:
            click.echo(output.safe(f"line {fault.number}: {fault.why}"))
    for words in taken.said:
        talk.say(words)
    talk.say(f"{taken.new} people new, {taken.changed} changed, {taken.same} as before; {taken.marriages} marriages.")
    ctx.exit(3 if taken.stopped else 1 if taken.left or taken.faults else 0)


@people.command()
@click.argument("keep")
@click.argument("other")
@click.pass_context
def merge(ctx: click.Context, keep: str, other: str) -> None:
    """Say that OTHER is the same person as KEEP; `unmerge` takes it back. No statement is lost."""
    with open_for_writing(ctx.obj) as collection:
        first, second = registry.find_person(collection, keep), registry.find_person(collection, other)
        registry.merge(collection, first, second)
    talk.say(f"{second.name} is {first.name} now. boxlore people unmerge takes it back.")


@people.command()
@click.argument("person")
@click.pass_context
def unmerge(ctx: click.Context, person: str) -> None:
    """Take back every merging that made PERSON."""
    with open_for_writing(ctx.obj) as collection:
        one = registry.find_person(collection, person)
        count = registry.unmerge(collection, one)
    talk.say(f"{count} mergings taken back." if count else f"{one.name} was not merged.")
    ctx.exit(0 if count else 1)


@people.command()
@click.argument("person")
@click.argument("name")
@click.option("--statement", "statements", multiple=True, help="A statement that is about the new one (end of its id).")
@click.option("--item", "items", multiple=True, help="An item in which the new one is meant.")
@click.pass_context
def split(ctx: click.Context, person: str, name: str, statements: tuple[str, ...], items: tuple[str, ...]) -> None:
    """Make a second person, NAME, of what was taken for one PERSON."""
    with open_for_writing(ctx.obj) as collection:
        one = registry.find_person(collection, person)
        told = [s.id for s, _ in registry.known_of(collection, one).statements]
        chosen = [ident for ident in told for end in statements if len(end) >= 8 and ident.endswith(end)]
        made = registry.split(
            collection, one, name, statements=chosen, items=[find_item(collection, item).id for item in items]
        )
    talk.say(f"{name} is a person of their own now ({made.id[-12:]}).")


@people.command("duplicates")
@options.as_json
@click.pass_context
def list_duplicates(ctx: click.Context, as_json: bool) -> None:
    """People who may be one and the same, and why; nothing is merged."""
    with open_collection(ctx.obj, write=False) as collection:
        found = registry.duplicates(collection)
        names = collection.people().names()
    for one in found:
        if as_json:
            output.row({"one": one.one, "other": one.other, "names": [names[one.one], names[one.other]],
                        "weight": one.weight, "because": list(one.because)})  # fmt: skip
        else:
            pair = f"{names[one.one]} ({one.one[-12:]}) and {names[one.other]} ({one.other[-12:]})"
            click.echo(output.safe(f"{pair}: {', '.join(one.because)}"))
    ctx.exit(1 if found else 0)


@people.command()
@click.argument("one")
@click.argument("other")
@click.pass_context
def apart(ctx: click.Context, one: str, other: str) -> None:
    """Say that ONE and OTHER are two people; they are proposed no more."""
    with open_for_writing(ctx.obj) as collection:
        registry.apart(collection, registry.find_person(collection, one), registry.find_person(collection, other))
    talk.say("Kept: they are two people.")


@people.command()
@click.argument("person")
@click.option(
    "--for", "matters", multiple=True, type=click.Choice([str(one) for one in Matter]), help="To what; may be repeated."
)
@click.option("--as", "capacity", type=click.Choice([str(one) for one in Capacity]), default="self", show_default=True)
@click.option("--by", default="", help="Who gives it, where it is not the person.")
@click.option("--witness", default="", help="Before whom.")
@click.option("--withdraw", is_flag=True, help="Take it back.")
@options.on_day
@click.pass_context
def consent(
    ctx: click.Context,
    person: str,
    matters: tuple[str, ...],
    capacity: str,
    by: str,
    witness: str,
    withdraw: bool,
    on_day: object,
) -> None:
    """Note what PERSON allows outside the family, who gave it and when; or take it back. Without --for, list it.

    This is a record, no legal advice; local law and the archive's own forms go first.
    """
    if not matters:
        with open_collection(ctx.obj, write=False, on_day=on_day) as collection:  # type: ignore[arg-type]  # a date by options.on_day
            told = registry.find_person(collection, person).consents
        for one in told:
            click.echo(output.safe(one.words))
        ctx.exit(0 if told else 1)
    with open_for_writing(ctx.obj) as collection:
        meant = registry.find_person(collection, person)
        day = str(on_day or collection.clock.today())
        made = make_consent(matters, day, given=not withdraw, capacity=capacity, by=by, witness=witness)
        registry.consent(collection, meant, made)
    talk.say(f"Kept: {meant.name}: {made.words}. It is asked again at the next sitting.")


@people.command("audience")
@click.argument("who")
@click.argument("audience")
@click.option("--item", "is_item", is_flag=True, help="WHO is an item (a number or a mark).")
@click.option("--field", default="", help="Only this field of the item.")
@click.pass_context
def keep_to(ctx: click.Context, who: str, audience: str, is_item: bool, field: str) -> None:
    """Keep a person (or, with --item, an item or one field of it) to keeper, family, archive:DATE or anyone."""
    with open_for_writing(ctx.obj) as collection:
        if is_item or field:
            subject = find_item(collection, who)
        else:
            subject = Subject(Kind.PERSON, registry.find_person(collection, who).id)
        registry.set_audience(collection, subject, audience, field)
    talk.say(f"Kept: {who} is for {audience}.")


@people.command()
@options.as_json
@options.on_day
@click.pass_context
def living(ctx: click.Context, as_json: bool, on_day: object) -> None:
    """Everyone taken as living or dead, and why: what outputs for outside go by."""
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:  # type: ignore[arg-type]  # a date by options.on_day
        names, lives = collection.people().names(), lives_of(collection)
    for ident, life in sorted(lives.items(), key=lambda pair: (not pair[1].living, names[pair[0]])):
        if as_json:
            output.row({"id": ident, "name": names[ident], "living": life.living, "because": life.because})
        else:
            click.echo(output.safe(f"{'living' if life.living else 'dead':6}  {names[ident]}: {life.because}"))

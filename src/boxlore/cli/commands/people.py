"""`boxlore people`: the registry, kin, tree files, merging and splitting people, consent, and who may see whom."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.cli.people_names import names
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.people.consent import Capacity, Matter, allowed, make_consent
from boxlore.core.people.kin import Kin, called, kin_words, possessive
from boxlore.core.people.person import Person
from boxlore.core.statements import Kind, Source, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import lives_of, record_of
from boxlore.tasks.outputs.made_before import to_make_again
from boxlore.tasks.people import registry
from boxlore.tasks.people.tree_import import import_tree
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.sitting.which_date import asked_of
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import is_told


@click.group()
def people() -> None:
    """Who is who, and how they are kin. PERSON is a name, a part of one, or the end of an id as `list` shows it."""


def _row(person: Person) -> dict[str, object]:
    return {
        "id": person.id,
        "uri": person.uri,
        "name": person.name,
        "sort_name": person.sort_name,
        "born": _edtf(person.born),
        "died": _edtf(person.died),
        "also": list(person.also),
    }


def _edtf(date: DateReading | None) -> str | None:
    return date.edtf.text if date and date.edtf else None


@people.command("list")
@click.argument("words", nargs=-1)
@options.as_json
@click.pass_context
def list_people(ctx: click.Context, words: tuple[str, ...], as_json: bool) -> None:
    """Everyone in the registry, or those whose names hold WORDS, by sort form, in the alphabet of the collection.

    The exit code is 1 where WORDS are in no name.
    """
    with open_collection(ctx.obj, write=False) as collection:
        sought = " ".join(words).casefold()
        everyone = registry.in_list_order(collection)
    matching = [
        person
        for person in everyone
        if not sought or any(sought in form.casefold() for form in (person.name, *person.forms))
    ]
    for person in matching:
        if as_json:
            output.row(_row(person))
        else:
            dates = "-".join(date.display if date else "" for date in (person.born, person.died))
            output.say(f"{person.id[-12:]}  {output.safe(person.sort_name)}{f', {dates}' if dates != '-' else ''}")
    if not matching:
        talk.say(f"Nobody here is called “{' '.join(words)[:60]}”." if sought else "Nobody is known here yet.")
    ctx.exit(1 if sought and not matching else 0)


@people.command()
@click.argument("person_words", metavar="PERSON")
@options.as_json
@options.on_day
@click.pass_context
def show(ctx: click.Context, person_words: str, as_json: bool, on_day: date | None) -> None:
    """Everything told of PERSON, by whom; living or not and why; links, and the items they are in."""
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
        person = registry.find_person(collection, person_words)
        facts = registry.known_of(collection, person)
        links = list(registry.links_of(person, collection))
        names = collection.people().names()
    if as_json:
        statement_rows = [
            {"id": s.id, "field": s.field, "words": s.words, "source": str(s.source), "audience": s.audience}
            for s, _ in facts.statements
        ]
        life = {"living": facts.life.living, "because": facts.life.because, "items": list(facts.numbers)}
        output.row(
            {
                **_row(person),
                **life,
                "statements": statement_rows,
                "links": [[role, relative.name] for role, relative in links],
            }
        )
        return
    output.say(f"{output.safe(person.name)}  ({person.uri})")
    output.say(f"  {'Taken as living' if facts.life.living else 'Taken as dead'}: {facts.life.because}")
    for statement, _ in facts.statements:
        label, source = FIELDS[statement.field].label, statement.source
        said_by = names.get(source.ref) or str(source)
        kept = output.kept_to(statement.audience)
        output.say(f"  {label}: {output.safe(statement.words)}  ({output.safe(said_by)}{kept}) [{statement.id[-12:]}]")
    for role, relative in links:
        output.say(f"  {role.capitalize()}: {output.safe(relative.name)}")
    if facts.numbers:
        output.say(f"  In: {', '.join(facts.numbers)}")


@people.command()
@click.argument("person_words", metavar="PERSON")
@click.argument("other_words", metavar="[OTHER]", required=False)
@options.as_json
@click.pass_context
def kin(ctx: click.Context, person_words: str, other_words: str | None, as_json: bool) -> None:
    """What everyone, or OTHER, is to PERSON, worked out from parents, children and spouses."""
    with open_collection(ctx.obj, write=False) as collection:
        ego = registry.find_person(collection, person_words)
        rows = registry.kin_of(collection, ego)
        relative = registry.find_person(collection, other_words) if other_words else None
        words = kin_words(Kin(collection.people()), ego, relative) if relative else ""
    if relative:
        rows = [row for row in rows if row[0].id == relative.id]
        if not as_json:
            output.say(
                output.safe(f"{relative.name}: {words}") if words else f"No kinship of {relative.name} is known."
            )
            ctx.exit(0 if words else 1)
    for person, kinship in rows:
        if as_json:
            output.row({"id": person.id, "name": person.name, "term": kinship.term, "words": kinship.words,
                        "by": str(kinship.by), "degree": kinship.degree or None})  # fmt: skip
        else:
            output.say(output.safe(f"{person.name}: {possessive(called(ego))} {kinship.words}"))
    if not rows:
        talk.say(f"No kin of {ego.name} is known.")
    ctx.exit(0 if rows else 1)


@people.command()
@click.argument("item")
@click.argument("text", required=False)
@options.by
@click.pass_context
def shown(ctx: click.Context, item: str, text: str | None, source: Source) -> None:
    """Who stands where in ITEM: keep TEXT (“back row, left to right: Anna, ?, Ruth”), or write it back without TEXT."""
    if text is None:
        options.refuse_others(ctx, "without TEXT", "item")
        with open_collection(ctx.obj, write=False) as collection:
            line = registry.written_back(record_of(collection, find_item(collection, item).id))
        output.say(output.safe(line)) if line else talk.say("Nobody's place in it is told.")
        ctx.exit(0 if line else 1)
    with open_for_writing(ctx.obj) as collection:
        how = Telling(source=source)
        teller = Teller(collection)
        placed = registry.tell_placed(teller, collection, find_item(collection, item), text, how)
    talk.say(
        f"Kept: {several(len(placed), 'person', 'people')}, "
        f"{sum(1 for placing in placed if not placing.words)} of them not known."
    )
    for words in teller.unsaid:
        talk.say(words)
    for placing in placed:
        if placing.asks:
            talk.say(f"To ask: {placing.asks}")


@people.command("tell")
@click.argument("person_words", metavar="PERSON")
@click.argument("field")
@click.argument("text")
@options.by
@options.told_to
@click.pass_context
def tell_person(ctx: click.Context, person_words: str, field: str, text: str, source: Source, audience: str) -> None:
    """Keep one statement about PERSON: TEXT about FIELD (born, nickname, mother, …)."""
    with open_for_writing(ctx.obj) as collection:
        person = registry.find_person(collection, person_words)
        how = Telling(source=source, audience=audience)
        teller, subject = Teller(collection), Subject(Kind.PERSON, person.id)
        if is_told(collection, subject, field, text, how):
            talk.say(f"Told already: {field} of {person.name}.")
            return
        asks = asked_of(collection, teller.tell(subject, field, text, how))
    for words in (*teller.unsaid, f"Kept: {field} of {person.name}.", *asks):
        talk.say(words)


@people.command("import")
@click.argument("file", type=GivenPath(dir_okay=False))
@click.option(
    "--name", default="", help="What the file is called in sources (else its own name); the same for an update."
)
@options.as_json
@click.pass_context
def import_file(ctx: click.Context, file: Path, name: str, as_json: bool) -> None:
    """Take a tree file (GEDCOM 5.5.1 or 7.0) in; a second time it is brought up to date. What was not
    understood is listed."""
    with open_for_writing(ctx.obj) as collection, talk.progress() as bar:
        report = import_tree(collection, file, name=name, progress=bar)
    if as_json:
        columns = ("new", "changed", "same", "marriages", "statements", "version", "encoding")
        output.row({name: getattr(report, name) for name in columns})
    for gap in report.left:
        if as_json:
            output.row(
                {
                    "not_understood": gap.path,
                    "lines": gap.count,
                    "line": gap.line,
                    "example": gap.example,
                }
            )
        else:
            output.say(
                output.safe(
                    f"not understood: {gap.path}, {several(gap.count, 'line')}, first in line {gap.line}: {gap.example}"
                )
            )
    for fault in report.faults:
        if as_json:
            output.row({"fault": fault.why, "line": fault.number})
        else:
            output.say(output.safe(f"line {fault.number}: {fault.why}"))
    for words in report.said:
        talk.say(words)
    talk.say(
        f"{several(report.new, 'person', 'people')} new, {report.changed} changed, {report.same} as "
        f"before; {several(report.marriages, 'marriage')}."
    )
    ctx.exit(3 if report.stopped else 1 if report.left or report.faults else 0)


@people.command()
@click.argument("keep_words", metavar="KEEP")
@click.argument("other_words", metavar="OTHER")
@click.pass_context
def merge(ctx: click.Context, keep_words: str, other_words: str) -> None:
    """Say that OTHER is the same person as KEEP; `unmerge` takes it back. No statement is lost."""
    with open_for_writing(ctx.obj) as collection:
        first, second = registry.find_person(collection, keep_words), registry.find_person(collection, other_words)
        registry.merge(collection, first, second)
    talk.say(f"{second.name} is {first.name} now. boxlore people unmerge takes it back.")


@people.command()
@click.argument("person_words", metavar="PERSON")
@click.pass_context
def unmerge(ctx: click.Context, person_words: str) -> None:
    """Take back every merging that made PERSON."""
    with open_for_writing(ctx.obj) as collection:
        person = registry.find_person(collection, person_words)
        count = len(registry.unmerge(collection, person))
    taken_back = f"{several(count, 'merging')} taken back. What was closed while they were one is closed for each."
    talk.say(taken_back if count else f"{person.name} was not merged.")
    ctx.exit(0 if count else 1)


@people.command()
@click.argument("person_words", metavar="PERSON")
@click.argument("name")
@click.option("--statement", "statements", multiple=True, help="A statement that is about the new one (end of its id).")
@click.option("--item", "items", multiple=True, help="An item in which the new one is meant.")
@click.pass_context
def split(
    ctx: click.Context, person_words: str, name: str, statements: tuple[str, ...], items: tuple[str, ...]
) -> None:
    """Make a second person, NAME, of what was taken for one PERSON."""
    with open_for_writing(ctx.obj) as collection:
        person = registry.find_person(collection, person_words)
        statement_ids = [s.id for s, _ in registry.known_of(collection, person).statements]
        for end in statements:
            if len(end) < 8 or not any(ident.endswith(end) for ident in statement_ids):
                raise WrongUse(
                    f"Nothing told of {person.name} has an id that ends in “{end[:40]}”.",
                    f"boxlore people show “{person.name}” lists the ids; write eight letters of the end, or more.",
                )
        chosen = [ident for ident in statement_ids for end in statements if len(end) >= 8 and ident.endswith(end)]
        new_person = registry.split(
            collection, person, name, statements=chosen, items=[find_item(collection, item).id for item in items]
        )
    talk.say(f"{name} is a person of their own now ({new_person.id[-12:]}).")


@people.command("duplicates")
@options.as_json
@click.pass_context
def list_duplicates(ctx: click.Context, as_json: bool) -> None:
    """People who may be one and the same, and why; nothing is merged."""
    with open_collection(ctx.obj, write=False) as collection:
        pairs = registry.duplicates(collection)
        names_by_id = collection.people().names()
    for pair in pairs:
        if as_json:
            output.row({"one": pair.one, "other": pair.other, "names": [names_by_id[pair.one], names_by_id[pair.other]],
                        "weight": pair.weight, "because": list(pair.because)})  # fmt: skip
        else:
            words = f"{names_by_id[pair.one]} ({pair.one[-12:]}) and {names_by_id[pair.other]} ({pair.other[-12:]})"
            output.say(output.safe(f"{words}: {', '.join(pair.because)}"))
    if not pairs:
        talk.say("Nobody seems to be there twice.")
    ctx.exit(1 if pairs else 0)


@people.command()
@click.argument("first_words", metavar="ONE")
@click.argument("second_words", metavar="OTHER")
@click.pass_context
def apart(ctx: click.Context, first_words: str, second_words: str) -> None:
    """Say that ONE and OTHER are two people; they are proposed no more."""
    with open_for_writing(ctx.obj) as collection:
        first, second = registry.find_person(collection, first_words), registry.find_person(collection, second_words)
        is_new = registry.apart(collection, first, second)
    talk.say("Kept: they are two people." if is_new else "That they are two people was said already.")


@people.command()
@click.argument("person_words", metavar="PERSON")
@click.option(
    "--for", "matters", multiple=True, type=click.Choice(list(map(str, Matter))), help="To what; may be repeated."
)
@click.option("--as", "capacity", type=click.Choice(list(map(str, Capacity))), default="self", show_default=True)
@click.option("--by", default="", callback=options.filled, help="Who gives it, where it is not the person.")
@click.option("--witness", default="", callback=options.filled, help="Before whom.")
@click.option("--withdraw", is_flag=True, help="Take it back.")
@options.on_day
@click.pass_context
def consent(
    ctx: click.Context,
    person_words: str,
    matters: tuple[str, ...],
    capacity: str,
    by: str,
    witness: str,
    withdraw: bool,
    on_day: date | None,
) -> None:
    """Note what PERSON allows outside the family, who gave it and when; or take it back. Without --for, list it.

    This is a record, no legal advice; local law and the archive's own forms go first.
    """
    if not matters and withdraw:
        raise _what_is_taken_back(ctx.obj, person_words)
    if not matters:
        options.refuse_others(ctx, "without --for", "person_words", "on_day")
        with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
            consents = registry.find_person(collection, person_words).consents
            name = registry.find_person(collection, person_words).name
        for given in consents:
            output.say(output.safe(given.words))
        if not consents:
            talk.say(f"Nothing is noted of what {name} allows.")
        ctx.exit(0 if consents else 1)
    with open_for_writing(ctx.obj) as collection:
        person = registry.find_person(collection, person_words)
        day = str(on_day or collection.clock.today())
        new_consent = make_consent(matters, day, given=not withdraw, capacity=capacity, by=by, witness=witness)
        registry.consent(collection, person, new_consent)
        if withdraw:
            said = to_make_again(collection, [collection.people()[person.id]])
        else:
            said = registry.still_hidden(collection, person, new_consent)
    closed = " No answer that she or he may be named holds any more." if Matter.NAME in new_consent.matters else ""
    asked = closed if withdraw else " It is asked again at the next sitting."
    talk.say(f"Kept: {person.name}: {new_consent.words}.{asked}")
    for sentence in said:
        talk.say(sentence)


def _what_is_taken_back(folder: Path, person_words: str) -> WrongUse:
    """The error for a withdrawal that does not say of what: with what the person allows now."""
    with open_collection(folder, write=False) as collection:
        person = registry.find_person(collection, person_words)
        allows = sorted(allowed(person.consents))
    if not allows:
        return WrongUse(f"{person.name} allows nothing that could be taken back.", "boxlore people consent lists it.")
    every = " ".join(f"--for {matter}" for matter in allows)
    return WrongUse(f"It is not said what {person.name} takes back.", f"All that is allowed now: {every} --withdraw.")


@people.command("audience")
@click.argument("target", metavar="WHO")
@click.argument("audience")
@click.option("--item", "is_item", is_flag=True, help="WHO is an item (a number or a mark).")
@click.option("--field", default="", help="Only this field of the item.")
@click.pass_context
def keep_to(ctx: click.Context, target: str, audience: str, is_item: bool, field: str) -> None:
    """Keep a person (or, with --item, an item or one field of it) to keeper, family, archive:DATE or anyone."""
    with open_for_writing(ctx.obj) as collection:
        if field and not is_item:
            raise WrongUse(
                f"{field}: a field is kept for an item, and “{target[:40]}” is taken for a person.",
                "Say --item for an item; a person is kept whole, without --field.",
            )
        if is_item:
            subject = find_item(collection, target)
        else:
            subject = Subject(Kind.PERSON, registry.find_person(collection, target).id)
        before = collection.store.last_acts(1)
        registry.set_audience(collection, subject, audience, field)
        is_new = collection.store.last_acts(1) != before
    what = f"{field} of {target}" if field else target
    talk.say(f"{'Kept' if is_new else 'Known already'}: {what} is for {audience}.")


@people.command()
@options.as_json
@options.on_day
@click.pass_context
def living(ctx: click.Context, as_json: bool, on_day: date | None) -> None:
    """Everyone taken as living or dead, and why: what outputs for outside go by."""
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
        names_by_id, lives = collection.people().names(), lives_of(collection)
    for ident, life in sorted(lives.items(), key=lambda pair: (not pair[1].living, names_by_id[pair[0]])):
        if as_json:
            output.row({"id": ident, "name": names_by_id[ident], "living": life.living, "because": life.because})
        else:
            output.say(output.safe(f"{'living' if life.living else 'dead':6}  {names_by_id[ident]}: {life.because}"))
    if not lives:
        talk.say("Nobody is known here yet.")


people.add_command(names)

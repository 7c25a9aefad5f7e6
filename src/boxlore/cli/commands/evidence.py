"""`boxlore evidence`: what can be worked out of everything told, why, what cannot be all so, and what to ask next."""

from collections.abc import Callable, Iterable, Sequence
from datetime import date
from typing import Any

import click

from boxlore.cli import contradictions, options, output, talk
from boxlore.core.dates.edtf_values import Day
from boxlore.core.evidence.asking import Question
from boxlore.core.evidence.claims import Claim, of_birth, of_death, of_item
from boxlore.core.evidence.disagreements import Disagreement, by_day, disagreements
from boxlore.core.evidence.even_years import first_day, last_day
from boxlore.core.evidence.proposals import Proposal
from boxlore.core.findings import one_line, several
from boxlore.tasks.collection.items_by_mark import find_items
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.people.evidence import Evidence, to_ask_next
from boxlore.tasks.people.evidence import evidence as gather


@click.command()
@click.argument("items", nargs=-1, metavar="[ITEM]...")
@click.option("--why", is_flag=True, help="With every reason, in words, and who says it.")
@click.option("--all", "everything", is_flag=True, help="Also what is dated to the year already, and lives.")
@click.option("--ask", "teller", default="", callback=options.filled, metavar="TELLER", help="What to ask this teller.")
@click.option("--minutes", type=click.IntRange(1, 600), default=45, show_default=True, help="With --ask: her minutes.")
@options.as_json
@options.on_day
@click.pass_context
def evidence(ctx: click.Context, /, items: tuple[str, ...], on_day: date | None, **chosen: Any) -> None:
    """Work out when pictures can have been taken, of ITEMs or of everything.

    From what is told: dates, lives, kin, ages, occasions, relations, names written on it, and the thing itself
    (process, mount, postcard back). It is a proposal; nothing told is changed. Exit 1 if something cannot be all so.
    """
    if chosen["teller"]:
        options.refuse_given(ctx, "with --ask", "items", "why", "everything")
    else:
        options.refuse_given(ctx, "without --ask", "minutes")
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
        wanted = {subject.id for item in items for subject in find_items(collection, item)}
        found = gather(collection)
        if chosen["teller"]:
            questions = to_ask_next(collection, found, chosen["teller"], chosen["minutes"])
            _ask(questions, as_json=chosen["as_json"])
            return
    everything = disagreements(found.worked.circles)
    days = by_day(everything)
    met = _items(found, days, wanted, chosen)
    if chosen["everything"] and not wanted:
        met |= _lives(found, days, chosen)
        if chosen["as_json"]:
            _of_no_item(each for each in everything if id(each) not in met)
        met = {id(each): each for each in everything}
    if met and not chosen["as_json"]:
        output.say(f"{several(len(met), 'contradiction')}:")
        for each in met.values():
            contradictions.write(each, "  ")
    ctx.exit(1 if met else 0)


Met = dict[int, Disagreement]


def _items(found: Evidence, days: dict[str, list[Disagreement]], wanted: set[str], chosen: dict[str, Any]) -> Met:
    """Write a line or a paragraph for each item; the contradictions in what was written, each once."""
    met: Met = {}
    count = 0
    for record in found.records:
        if wanted and record.id not in wanted:
            continue
        worked, of_it = found.of_item(record.id), days.get(of_item(record.id), [])
        met |= {id(each): each for each in of_it}
        if not (wanted or chosen["everything"] or chosen["as_json"]) and (
            not worked.edtf or worked.is_told(record.edtf)
        ):
            continue
        count += bool(worked.edtf)
        mark = record.mark.short if record.mark else ""
        if chosen["as_json"]:
            output.row({"number": record.number, "mark": mark or None, **_json(worked, of_it)})
        else:
            head = " · ".join(filter(None, (record.number, mark, record.date_display)))
            _lines(head, worked, of_it, why=chosen["why"])
            contradictions.write_left_out(found.left_out(record), "    ")
            for view in record.all("date"):
                if view.date is None or view.date.edtf is None:
                    output.say(f"    its date “{output.safe(one_line(view.words))}” waits for an answer: boxlore check")
    if not chosen["as_json"]:
        talk.say(f"{several(count, 'item')} with something worked out." if count else "Nothing more can be worked out.")
    return met


def _lives(found: Evidence, days: dict[str, list[Disagreement]], chosen: dict[str, Any]) -> Met:
    met: Met = {}
    for person in found.people.values():
        for word, told, worked, day in (
            ("born", person.born, found.of_birth(person.id), of_birth(person.id)),
            ("died", person.died, found.of_death(person.id), of_death(person.id)),
        ):
            of_it = days.get(day, [])
            is_plain = told is not None or (worked.years is None and not chosen["as_json"])
            if of_it or (worked.edtf and not is_plain):
                met |= {id(each): each for each in of_it}
                if chosen["as_json"]:
                    output.row({"person": person.name, "fact": word, **_json(worked, of_it)})
                else:
                    _lines(f"{person.name}, {word}", worked, of_it, why=chosen["why"])
    return met


def _of_no_item(left: Iterable[Disagreement]) -> None:
    """A row for each contradiction that stands in the row of no item and no life."""
    for each in left:
        output.row({"contradiction": [_claim(claim) for claim in each.circle.claims]})


def _json(worked: Proposal, of_it: Sequence[Disagreement]) -> dict[str, object]:
    return {
        "earliest": _day(first_day, worked.first),
        "latest": _day(last_day, worked.last),
        "edtf": worked.edtf or None,
        "because": [_claim(claim) for claim in worked.because],
        "contradiction": [_claim(one) for one in dict.fromkeys(one for each in of_it for one in each.circle.claims)],
        "contradictions": [[_claim(claim) for claim in each.circle.claims] for each in of_it],
        "told_also": [len(each.others) for each in of_it],
    }


def _day(meant: Callable[[int], Day], number: int | None) -> str | None:
    return str(meant(number)) if number is not None else None


def _claim(claim: Claim) -> dict[str, str]:
    return {"words": claim.words, "source": claim.source, "strength": str(claim.sure)}


def _lines(head: str, worked: Proposal, of_it: Sequence[Disagreement], *, why: bool) -> None:
    output.say(output.safe(f"{head}: worked out: {contradictions.shown(worked, of_it)}"))
    for claim in worked.because if why else ():
        output.say(f"    because {contradictions.said(claim)}")


def _ask(questions: Sequence[Question], *, as_json: bool) -> None:
    """The questions in order. Nothing that anybody has said is among them: she is asked first."""
    for place, question in enumerate(questions, 1):
        if as_json:
            output.row({"number": question.number or None, "ask": question.kind, "question": question.words,
                        "settles_years": round(question.settles, 1), "sad": question.is_sad})  # fmt: skip
        else:
            sad = "  (sad: ask it gently, and read the care note if there is one)" if question.is_sad else ""
            about = f"{question.number}: " if question.number else ""
            output.say(output.safe(f"{place:3}. {about}{question.words}{sad}"))
    if not questions:
        talk.say("There is nothing that an answer of hers would date better.")

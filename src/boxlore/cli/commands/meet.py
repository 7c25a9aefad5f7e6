"""`boxlore meet`: what is told at several desks, exchanged at a meeting place on PostgreSQL."""

import click

from boxlore.cli import options, output, talk
from boxlore.tasks.collection.meeting import ROLES, Met, admit_desk, prepare_place
from boxlore.tasks.collection.meeting import meet as meet_there
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.said_of_meeting import said_of_admitting, said_of_meeting, said_of_preparing


@click.command()
@click.argument("address", default="")
@click.option("--prepare", "do_prepare", is_flag=True, help="Make the tables there, or bring them up to date.")
@click.option("--admit", "role", metavar="LOGIN", default="", help="Let a login of the server be a desk.")
@click.option(
    "--as",
    "rights",
    type=click.Choice(ROLES),
    default="desk",
    show_default=True,
    help="With --admit: a keeper has all; a desk what the family may see, and adds; a reader only sees.",
)
@click.option(
    "--by", "names", multiple=True, help="With --admit: by whose name it tells (its login's; may be repeated)."
)
@click.option("--new-numbers", is_flag=True, help="Number anew what was numbered at two desks, the later item.")
@click.option(
    "--wished",
    type=click.Choice(["strike", "refuse"]),
    default=None,
    help="What a keeper says to what other desks wish struck.",
)
@options.as_json
@click.pass_context
def meet(
    ctx: click.Context,
    /,
    address: str,
    do_prepare: bool,
    role: str,
    rights: str,
    names: tuple[str, ...],
    new_numbers: bool,
    wished: str | None,
    as_json: bool,
) -> None:
    """Exchange what is told with other desks, at ADDRESS: a database of a PostgreSQL server that all of you reach.

    Each desk has a working copy of its own (boxlore new FOLDER --join) and works without the server. Whoever owns the
    database prepares it, in two lines:

    \b
      boxlore meet --prepare postgresql://leida@archive.example/family
      boxlore meet --admit anna --as desk

    From then on boxlore meet, without an address, meets there; an open sitting does so by itself. ADDRESS never holds
    a password: PostgreSQL finds it in the file .pgpass of your home folder. Off this machine the connection is
    encrypted and the server's certificate proved, or nothing is sent. Scans do not go: join a folder or a parcel.
    """  # \b is click's
    with open_collection(ctx.obj) as collection:
        if do_prepare:
            said = said_of_preparing(prepare_place(collection, address or collection.settings.meeting))
        elif role:
            is_new = admit_desk(collection, address, role, rights, names)
            said = said_of_admitting(role, rights, names, is_new=is_new)
        else:
            met = meet_there(collection, address, new_numbers=new_numbers, wished=wished or "")
            said = said_of_meeting(collection, met)
            if as_json:
                output.row(_row(met))
        for words in said:
            talk.say(words)


def _row(met: Met) -> dict[str, object]:
    return {
        "came": met.log.statements, "by": list(met.log.by), "went": met.brought.statements,
        "not_sent": met.brought.of_others, "struck": sum(report.struck for report in met.struck),
        "opened": met.opened, "closed": met.closed, "wished": len(met.wished),
        "numbered_anew": dict(met.numbered_anew), "scans_elsewhere": met.scans_elsewhere,
    }  # fmt: skip

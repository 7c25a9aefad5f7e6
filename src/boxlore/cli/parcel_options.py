"""The passphrase of a parcel, asked for where it stands in no file and no list of processes."""

from pathlib import Path

import click

from boxlore.tasks.collection.parcels import passphrase_for

ASKED = "Passphrase"


def passphrase_of(parcel: Path) -> str:
    """The passphrase of a parcel that is locked, asked for; empty for one that is not."""
    return passphrase_for(parcel, lambda: str(click.prompt(f"{ASKED} of {parcel.name}", hide_input=True, err=True)))


def new_passphrase() -> str:
    """A passphrase for a new parcel, asked for twice."""
    return str(click.prompt(ASKED, hide_input=True, confirmation_prompt="The same again", err=True))

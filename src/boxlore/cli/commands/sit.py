"""`boxlore sit`: the sitting, in the terminal, with the page that the teller looks at."""

import sys
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from functools import partial
from pathlib import Path

import click

from boxlore.cli import interrupts, talk
from boxlore.cli.loading import loading
from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.last_opened import last_collection
from boxlore.tasks.collection.opening import check_ahead, has_collection, open_collection
from boxlore.tasks.sitting.tellers_page import Showing


@click.command()
@click.option("--narrator", default="", help="Who tells; without it nobody is named yet (--plain asks first).")
@click.option("--interviewer", default="", help="Who asks.")
@click.option("--plain", is_flag=True, help="Line by line, for a screen reader or a slow link.")
@click.option("--no-viewing", is_flag=True, help="Without the page for the teller's browser.")
@click.option("--lan", is_flag=True, help="Let a tablet on the local network show the page (not encrypted).")
@click.pass_context
def sit(ctx: click.Context, narrator: str, interviewer: str, plain: bool, no_viewing: bool, lan: bool) -> None:
    """Sit with a narrator: picture, questions and answers, each word kept as it is typed."""
    if lan and no_viewing:
        raise WrongUse("--lan is about the page, and --no-viewing leaves it out.", "Give one of them.")
    if lan:
        from boxlore.viewing.addresses import of_this_machine

        of_this_machine()  # raises where there is no network, before the screen is drawn
    if plain:
        with interrupts.watched(), shown(lan=lan, page=not no_viewing) as showing:
            _plain(ctx.obj, narrator, interviewer, showing)
        return
    ctx.exit(hold(ctx.obj, narrator=narrator, interviewer=interviewer, lan=lan, page=not no_viewing))


def hold(
    folder: Path | None,
    *,
    narrator: str = "",
    interviewer: str = "",
    lan: bool = False,
    page: bool = True,
    door: bool = False,
) -> int:
    """Hold a sitting in the terminal interface, with the teller's page beside it. Returns an exit code.

    `door` asks first who tells and where to begin; `folder` None means the collection that was open last.
    """
    likely = folder if folder is not None and has_collection(folder) else last_collection()
    if likely is not None:
        check_ahead(likely)
    with shown(lan=lan, page=page) as showing:
        with loading():
            from boxlore.tui.app import run
        return run(folder, narrator=narrator, interviewer=interviewer, showing=showing, door=door)


@contextmanager
def shown(*, lan: bool, page: bool) -> Iterator[Showing]:
    """Context: what is out, and (`page`) the server of the teller's page, which begins when the screen stands."""
    showing = Showing()
    with ExitStack() as here, ExitStack() as network:

        def serve(to_network: bool) -> None:
            from boxlore.viewing.server import serving

            network.close()
            if to_network:
                network.enter_context(serving(showing, lan=True))
            elif not showing.address:
                here.enter_context(serving(showing))

        if page:
            showing.opening = partial(serve, lan)
            showing.to_network = serve
        yield showing


def _plain(folder: Path, narrator: str, interviewer: str, showing: Showing) -> None:
    """Hold the sitting line by line; it ends where the input ends, or with Ctrl+C, after the line at hand."""
    from boxlore.cli.plain_orders import sit_plain
    from boxlore.tasks.sitting.session import Sitting

    with open_collection(folder, fallback_read_only=True) as collection:
        showing.collection = collection
        showing.opening()
        sitting = Sitting(collection, narrator=narrator, interviewer=interviewer)
        try:
            sit_plain(sitting, showing, _listen, click.echo, _hearing, asks=sys.stdin.isatty())
        except KeyboardInterrupt:
            talk.say("Stopped. Every answer that was saved is kept; a line that was not entered is not.")


def _listen() -> str | None:
    try:
        return input("> " if sys.stdin.isatty() else "")
    except EOFError:
        return None


class _Line:
    """A line that is being obeyed, as Ctrl+C sees it: the answer is kept before the sitting ends."""

    looked = False

    def __init__(self) -> None:
        self._is_asked = False

    def stop(self) -> None:
        """Note that the sitting is to end after this line."""
        self._is_asked = True

    def stopped(self) -> bool:
        """Whether it is."""
        return self._is_asked


@contextmanager
def _hearing() -> Iterator[None]:
    """Context: obey one line. Raises KeyboardInterrupt at its end if Ctrl+C was pressed meanwhile."""
    line = _Line()
    with interrupts.task(line):
        yield
    if line.stopped():
        raise KeyboardInterrupt

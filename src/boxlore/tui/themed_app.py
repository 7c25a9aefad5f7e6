"""An app in our colours, which a signal or a closed terminal ends: the base of all that draw on the whole terminal."""

from textual.app import App

from boxlore.tasks.collection.last_opened import colours_chosen
from boxlore.tui import colours
from boxlore.tui.signals import Leaving


class ThemedApp(App[int]):
    """`signals.hear` is called in `on_mount`, before anything is shown."""

    TITLE = "Boxlore"
    CSS = colours.SHEET
    ENABLE_COMMAND_PALETTE = False

    def __init__(self) -> None:
        super().__init__()
        self.signals = Leaving(self.signalled, self.at_last)
        for theme in (colours.LAMP, colours.PAPER):
            self.register_theme(theme)
        chosen = colours_chosen()
        self.theme = chosen if chosen in (colours.LAMP.name, colours.PAPER.name) else colours.theme_for_terminal()

    def get_theme_variable_defaults(self) -> dict[str, str]:
        return dict(colours.LAMP.variables)

    def on_unmount(self) -> None:
        self.signals.stop()

    def signalled(self) -> None:
        """Leave, after a signal: nobody can be asked any more."""
        self.exit(1)

    def at_last(self) -> None:
        """Called in a thread of its own at the very end, for what `signalled` should have done."""

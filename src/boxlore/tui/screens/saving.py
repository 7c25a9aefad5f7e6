"""How the words in the prompts are kept, and what the top line says of them. It is true at every moment.

Each change goes to the disk as a draft before it is drawn, and becomes a statement when its prompt is left. Where the
disk refuses both, the words stay on the screen, the top line says NOT SAVED for as long as that is so, whatever else is
drawn meanwhile, and they are tried again every AGAIN seconds, so that a disk that has room again, or is plugged in
again, has them without a key.
"""

from collections.abc import Iterator
from contextlib import contextmanager

from textual.screen import Screen
from textual.timer import Timer

from boxlore.core.errors import BoxloreError, CouldNot
from boxlore.core.records.item_record import Record
from boxlore.core.sitting.stages import Stage
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.prompt_block import Block

NOT_SAVED = "NOT SAVED"
AGAIN = 2.0
"""Seconds between two tries to keep what could not be kept."""


class KeepingScreen(Screen[None]):
    """The half of the sitting's screen that keeps."""

    sitting: Sitting
    record: Record
    blocks: list[Block]
    top: Top
    _note: str

    def __init__(self) -> None:
        super().__init__()
        self._unsaved: set[Block] = set()
        self._retry: Timer | None = None

    def say(self, words: str, *, bad: bool = False) -> None:
        """Show one sentence above the keys; '' takes it away. `bad`: it is an error."""
        raise NotImplementedError

    def refresh_record(self) -> None:
        """Read the item's record again and show it, after a change. Words being typed stay."""
        raise NotImplementedError

    def understand(self, block: Block) -> None:
        """Show below the words what is understood of them."""
        raise NotImplementedError

    def place(self) -> str:
        """Where the item stands in the list, or on a way through it."""
        raise NotImplementedError

    @contextmanager
    def said(self) -> Iterator[None]:
        """Context: an error of ours is said on the screen; for what runs without a key (those of keys: `tui.app`)."""
        try:
            yield
        except BoxloreError as error:
            self.say(str(error), bad=True)

    # what the top line says

    @property
    def unsaved(self) -> list[str]:
        """The words in the prompts that could not be kept, not even as a draft."""
        self._unsaved = {block for block in self._unsaved if block.changed}
        return [block.text for block in self.blocks if block in self._unsaved]

    def stand(self, saved: str = "all saved") -> None:
        """Say in the top line who tells, the item's place in the list, and whether the words are safe.

        `saved` is said of them if they are.
        """
        myself = "you tell" if self.sitting.myself else "no teller yet"
        tells = " · ended" if self.sitting.stage is Stage.CLOSING else " tells"  # short: what is saved has to be seen
        teller = f"{self.sitting.teller_named}{tells}" if self.sitting.id else myself
        state = saved if self.sitting.writable else "read only"
        self.top.tell(right=f"{teller} · {self.place()} · {NOT_SAVED if self.unsaved else state}")

    # keeping

    def typed(self, block: Block) -> None:
        """Keep the changed words as a draft on the disk, before they are drawn."""
        if self._draft(block) and self._note:
            self.say("")
        self.stand("saved")
        with self.said():
            self.understand(block)

    def left(self, block: Block) -> None:
        """Keep the block's words when the focus went elsewhere by the mouse."""
        if block.changed and block.words is not self.focused:
            self.keep(block)

    def keep(self, block: Block, *, person: str = "", redraw: bool = True) -> bool:
        """Make the block's words a statement. False, with the reason shown, if they could not be kept."""
        if not block.changed and not person:
            return True
        try:
            changed = self.sitting.keep(self.record, block.prompt, block.text, person=person)
        except BoxloreError as error:
            if isinstance(error, CouldNot):
                self._draft(block)  # which the disk may take where it does not take a statement
            self.say(str(error), bad=True)
            self.stand()
            return False
        self._unsaved.discard(block)
        if changed:
            block.baseline = block.text
            if redraw:
                self.refresh_record()
        elif block.prompt.gathers:
            told = block.text.strip()
            block.words.load(block.baseline)
            self.say(f"“{told}” is told here already. Another one of that name is told apart: “{told} the elder”.")
        self.stand("saved")
        return True

    def _draft(self, block: Block) -> bool:
        """Keep the block's words as a draft. False, with the reason shown, if the disk refuses."""
        try:
            words = block.text if block.changed else ""
            self.sitting.draft(self.record.id, block.prompt, words, block.replaces)
        except BoxloreError as error:
            self._unsaved.add(block)
            self.say(str(error), bad=True)
            if self._retry is None:
                self._retry = self.set_interval(AGAIN, self._try_again)
            return False
        self._unsaved.discard(block)
        return True

    def _try_again(self) -> None:
        """Try to keep what could not be kept; when all is, say so and stop."""
        waiting = [block for block in self.blocks if block in self._unsaved and block.changed]
        were_kept = [self._draft(block) for block in waiting]
        if not all(were_kept):
            return
        if waiting:
            self.say("The words that could not be kept are kept now.")
        self.stand("saved")
        if self._retry is not None:
            self._retry.stop()
            self._retry = None

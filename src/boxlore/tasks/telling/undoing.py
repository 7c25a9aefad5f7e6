"""What was done in a sitting, step by step, and how a step is taken back and done again.

A step is an act of the log; taking it back withdraws the act, doing it again withdraws that withdrawal.
"""

from dataclasses import dataclass, field

from boxlore.store.values import Change, Settlement
from boxlore.tasks.collection.opening import Act, Collection


@dataclass(frozen=True, slots=True)
class Done:
    """One undoable step: its act, what it was in words, the item to look at."""

    act: str
    what: str
    item: str


@dataclass(slots=True)
class Steps:
    """The steps of one sitting, the last one first to be taken back."""

    collection: Collection
    _done: list[Done] = field(default_factory=list)
    _undone: list[tuple[Done, str]] = field(default_factory=list)
    _own: set[str] = field(default_factory=set)

    def finish(self, act: Act, item: str) -> None:
        """Write an act; it is now the last step."""
        act.done()
        self._own.add(act.id)
        self.remember(Done(act.id, act.what, item))

    def remember(self, done: Done) -> None:
        """A step that is already written."""
        self._done.append(done)
        self._undone.clear()

    def made(self, act: str) -> bool:
        """Whether an act is one of this sitting's own."""
        return act in self._own

    def undo(self) -> Done | None:
        """Take back the last step; None if there is none."""
        if not self._done:
            return None
        self.withdraw(done := self._done[-1])
        self._done.pop()
        return done

    def redo(self) -> Done | None:
        """Do again what was just taken back; None if nothing was."""
        if not self._undone:
            return None
        done, undoing = self._undone[-1]
        self.write(self.collection.clock.new_id(), f"again: {done.what}", withdraws=(undoing,))
        self._undone.pop()
        self._done.append(done)
        return done

    def withdraw(self, done: Done, *, undoes: bool = True) -> None:
        """Withdraw an act: as the taking back of a step, or (not `undoes`) as a step of its own."""
        act = self.collection.clock.new_id()
        self.write(act, f"taken back: {done.what}", withdraws=(done.act,))
        if undoes:
            self._undone.append((done, act))
        else:
            self.remember(Done(act, done.what, done.item))

    def write(
        self, act: str, what: str, *, withdraws: tuple[str, ...] = (), settlements: tuple[Settlement, ...] = ()
    ) -> None:
        """An act of withdrawals or settlements."""
        self.collection.store.write(
            Change(
                act=act,
                what=what,
                by=self.collection.by,
                recorded_at=self.collection.clock.now(),
                withdraws=withdraws,
                settlements=settlements,
            )
        )

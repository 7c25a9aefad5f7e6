"""What was done in a sitting, step by step, and how a step is taken back and done again.

A step is an act of the log, or all acts of one run of an intake; taking it back withdraws them, doing it again
withdraws that withdrawal. What a step made is not taken back while something stands on it that is none of this
sitting's later steps, as a move of a box that was taken in.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field

from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.store.values import Change, Settlement
from boxlore.tasks.collection.opening import Act, Collection


@dataclass(frozen=True, slots=True)
class Done:
    """One undoable step: its act, what it was in words, the item to look at, the acts that belong to it too, and
    whether it may make items, so that a list of them is read again."""

    act: str
    what: str
    item: str
    with_acts: tuple[str, ...] = ()
    makes_items: bool = False

    @property
    def acts(self) -> tuple[str, ...]:
        return (self.act, *self.with_acts)

    @property
    def in_words(self) -> str:
        """What it was, for whoever did it: a field by its label (`Who: Jaan Tamm`)."""
        field, colon, rest = self.what.partition(": ")
        return f"{FIELDS[field].label}: {rest}" if colon and field in FIELDS else self.what


@dataclass(slots=True)
class Steps:
    """The steps of one sitting, the last one first to be taken back."""

    collection: Collection
    _done: list[Done] = field(default_factory=list)
    _undone: list[tuple[Done, str]] = field(default_factory=list)
    _own: set[str] = field(default_factory=set)
    items_turned: int = 0
    """How often a step that makes items was taken back or done again."""

    def finish(self, act: Act, item: str) -> None:
        """Write an act; it is now the last step."""
        act.done()
        self._own.add(act.id)
        self.remember(Done(act.id, act.what, item))

    def remember(self, done: Done) -> None:
        """A step that is already written."""
        self._done.append(done)
        self._undone.clear()

    @contextmanager
    def one_step(self, what: list[str]) -> Iterator[None]:
        """Whatever is written meanwhile is one step, also where it ends in a fault. `what` is what it was in words,
        filled in meanwhile."""
        store = self.collection.store
        since = store.last_time()
        before = set(store.acts_since(since))
        try:
            yield
        finally:
            acts = [act for act in store.acts_since(since) if act not in before]
            if acts:
                self.remember(Done(acts[0], what[0], "", tuple(acts[1:]), makes_items=True))

    def made(self, act: str) -> bool:
        """Whether an act is one of this sitting's own."""
        return act in self._own

    def undo(self) -> Done | None:
        """Take back the last step; None if there is none. Raises WrongUse where something else stands on it."""
        if not self._done:
            return None
        if standing := self.collection.store.told_besides(self._done[-1].acts):
            numbers = filter(None, map(self.collection.store.number_of, standing))
            raise WrongUse(
                f"Not taken back: {self._done[-1].in_words}. Something was told or moved since that stands on it"
                f"{f' ({number})' if (number := next(numbers, '')) else ''}.",
                "Take that back first; or boxlore restore brings back the collection as it was before.",
            )
        self.withdraw(done := self._done[-1])
        self._done.pop()
        self.items_turned += done.makes_items
        return done

    def redo(self) -> Done | None:
        """Do again what was just taken back; None if nothing was."""
        if not self._undone:
            return None
        done, undoing = self._undone[-1]
        self.write(self.collection.clock.new_id(), f"again: {done.what}", withdraws=(undoing,))
        self._undone.pop()
        self._done.append(done)
        self.items_turned += done.makes_items
        return done

    def withdraw(self, done: Done, *, undoes: bool = True) -> None:
        """Withdraw an act: as the taking back of a step, or (not `undoes`) as a step of its own."""
        act = self.collection.clock.new_id()
        self.write(act, f"taken back: {done.what}", withdraws=done.acts)
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

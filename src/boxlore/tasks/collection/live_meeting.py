"""A desk at its meeting place for as long as it is open: what is told is there at once, and what others tell is here.

A thread of its own keeps the connection. It hears when others bring something, sees when something was told here, and
exchanges then; it says who has which photograph out. Where the connection is lost there is a line about it, and nothing
else: what is told stays here, and goes when the server is reached again.
"""

import threading
from contextlib import suppress
from time import monotonic

from boxlore.core.errors import BoxloreError
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.store.database_file import errors_in_words
from boxlore.store.meeting_exchange import OUT, ROWS, have_out, heard, listen, who_has_out
from boxlore.store.meeting_place import MeetingPlace, NotReached, meeting_place
from boxlore.tasks.collection.meeting import Meeting, Met, check_name
from boxlore.tasks.collection.opening import Collection

PAUSE = 0.5
"""Seconds between two looks at what was told here."""
BEAT = 60.0
"""Seconds after which it is said again what is out here; what was said three beats ago is not shown any more."""
MARKS = 600.0
"""Seconds between two times when a keeper's desk puts right what is open there."""
AGAIN, LATER = 10.0, 60.0
"""Seconds until a server that was not reached is tried again; and one that refused."""
LAST_WORDS = 5.0
"""Seconds that closing waits for the last exchange."""

NOT_REACHED = "The meeting place is not reached; what is told here goes there later."


class LiveMeeting:
    """The thread. `out` is the item that is out here (its id, '' for none), which whoever shows it sets; `came` counts
    the meetings in which something came."""

    def __init__(self, collection: Collection) -> None:
        self._collection = Collection(
            collection.folder, collection.settings, collection.store, collection.clock, collection.by
        )  # with what it keeps in memory for itself
        self.out = ""
        self.came = 0
        self._trouble = ""
        self._others: list[tuple[str, str]] = []
        self._ended = threading.Event()
        self._thread = threading.Thread(target=self._run, name="boxlore-meeting", daemon=True)

    def begin(self) -> None:
        self._thread.start()

    def end(self) -> None:
        """Bring what was told last, if that is soon done, and leave."""
        self._ended.set()
        self._thread.join(LAST_WORDS)

    @property
    def line(self) -> str:
        """What stands at the top: what is wrong, or who has which photograph out; '' where nothing is to be said."""
        if self._trouble:
            return self._trouble
        number = self._collection.store.number_of
        return ENGLISH.listed([f"{by} has {shown} out" for by, item in self._others if (shown := number(item))])

    def _run(self) -> None:
        while not self._ended.is_set():
            pause = AGAIN
            try:
                with meeting_place(self._collection.settings.meeting, self._collection.id) as place:
                    check_name(self._collection, place)
                    listen(place)
                    with errors_in_words(self._collection.store.path):
                        self._sit(place)
            except NotReached:
                self._trouble = NOT_REACHED
            except BoxloreError as error:
                self._trouble, pause = f"{error}", LATER
            if not self._ended.is_set():
                self._ended.wait(pause)
        with suppress(BoxloreError):
            self._collection.store.release_readers()

    def _sit(self, place: MeetingPlace) -> None:
        meeting = Meeting(self._collection, place)
        told, marked = "", -MARKS
        shown, shown_at = "", -BEAT
        news = {ROWS, OUT}
        while True:
            is_last = self._ended.is_set()
            if meeting.told_so_far() != told:
                met = meeting.exchange()
                told = met.brought.state  # what is told meanwhile is told since
                self._hear(met)
                if monotonic() - marked >= MARKS:
                    meeting.put_right(Met())
                    marked = monotonic()
            elif ROWS in news:
                self._hear(meeting.hear())
            if is_last or self.out != shown or monotonic() - shown_at >= BEAT:
                shown, shown_at = "" if is_last else self.out, monotonic()
                have_out(place, shown, self._collection.by)
                news.add(OUT)
            if OUT in news:
                self._others = who_has_out(place, 3 * BEAT)
            self._trouble = ""
            if is_last:
                return
            news = heard(place, PAUSE)

    def _hear(self, met: Met) -> None:
        self.came += bool(met.log.acts or met.log.tombstones or met.struck)

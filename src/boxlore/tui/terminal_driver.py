"""The way to the terminal: it is asked what it can draw. Textual's own driver for POSIX does everything else."""

import fcntl
import os
import selectors
import struct
import termios
import time
from codecs import getincrementaldecoder
from collections.abc import Iterable
from typing import TextIO

from textual import events
from textual._ansi_sequences import ANSI_SEQUENCES_KEYS
from textual._xterm_parser import XTermParser
from textual.drivers.linux_driver import LinuxDriver
from textual.message import Message

from boxlore.tasks.sitting.sharp_picture import Graphics, all_forgotten
from boxlore.tui.terminal_answers import QUESTIONS, Answers

SILENT = ("dumb", "linux")
"""Terminals (TERM) that draw no pictures; older ones of these would write the questions on the screen."""
MOMENT = 0.1
"""Seconds after which a key that could begin an answer is a key."""
LATE = 1.0
"""Seconds after the questions in which leaving waits for the last answer, so that it is not typed into the shell."""


class Answered(Message):
    """The terminal has answered; posted to the app."""


class TypedKeys(XTermParser):
    """What is typed, as keys. Esc and a letter or digit that come together are these two, one after the other: somebody
    who knows the menu types ahead, or the machine was busy. Textual takes them as Alt with that key, which no screen
    here has, and which would write `∞` for a 5."""

    def _sequence_to_key_events(self, sequence: str, alt: bool = False) -> Iterable[events.Key]:
        typed = sequence if alt else sequence[1:] if sequence[:1] == "\x1b" else ""
        is_alone = len(typed) == 1 and typed.isprintable()
        if is_alone and (alt or isinstance(ANSI_SEQUENCES_KEYS.get(sequence), str)):
            yield events.Key("escape", "\x1b")
            sequence, alt = typed, False
        yield from super()._sequence_to_key_events(sequence, alt)


class AskingDriver(LinuxDriver):
    """Asks the terminal when the program begins to draw, and takes its answers out of what is typed."""

    answers: Answers | None = None
    _asked_at = 0.0

    def start_application_mode(self) -> None:
        """Begin to draw. What a terminal may make of questions that it does not know is cleared, before the first
        screen is drawn."""
        if self._may_ask():
            self.answers, self._asked_at = Answers(), time.monotonic()
        super().start_application_mode()  # type: ignore[no-untyped-call]  # Textual leaves it untyped
        if self.answers is not None and self._writer_thread is not None:
            self.write(f"\x1b[H{QUESTIONS}\x1b[H\x1b[2J")
            self.flush()

    def stop_application_mode(self) -> None:
        """Give the terminal back, without pictures on it, and with no answer on its way."""
        if self.answers is not None:
            while not self.answers.over and time.monotonic() < self._asked_at + LATE:
                time.sleep(0.02)
            if self.answers.kitty:
                self.write(all_forgotten())
        super().stop_application_mode()

    def graphics(self) -> Graphics | None:
        """What the terminal can draw, with the size that its cells have now."""
        return None if self.answers is None or not self.answers.over else self.answers.graphics(self._cell())

    def _may_ask(self) -> bool:
        is_asked = os.environ.get("BOXLORE_PICTURES", "") != "blocks"
        is_known = os.environ.get("TERM", "dumb") not in SILENT and os.environ.get("TERM_PROGRAM") != "Apple_Terminal"
        return is_asked and is_known and self.input_tty and _is_terminal(self._file)

    def _cell(self) -> tuple[int, int]:
        """The size of a cell in pixels, as the system knows it of the window; (0, 0) where it does not."""
        try:
            window_size = fcntl.ioctl(self.fileno, termios.TIOCGWINSZ, bytes(8))
        except OSError:
            return 0, 0
        rows, columns, wide, high = struct.unpack("HHHH", window_size)
        return (wide // columns, high // rows) if rows and columns else (0, 0)

    def run_input_thread(self) -> None:
        """Read what comes from the terminal: its answers are taken out, the rest are keys."""
        parser, answers = TypedKeys(self._debug), self.answers or Answers(over=True)
        decode = getincrementaldecoder("utf-8")("replace").decode
        waiting = not answers.over
        with selectors.SelectSelector() as selector:
            selector.register(self.fileno, selectors.EVENT_READ)
            while not self.exit_event.is_set():
                if selector.select(MOMENT):
                    text = decode(os.read(self.fileno, 4096))
                    typed = answers.taken_out(text) if self.answers is not None else text
                else:
                    typed = answers.given_back()
                if typed:
                    for event in parser.feed(typed):
                        self.process_message(event)
                for event in parser.tick():
                    self.process_message(event)
                if waiting and answers.over:
                    waiting = False
                    self.send_message(Answered())


def _is_terminal(drawn_on: TextIO | None) -> bool:
    """Whether what is drawn goes to a terminal, and not into a file."""
    return drawn_on is not None and drawn_on.isatty()

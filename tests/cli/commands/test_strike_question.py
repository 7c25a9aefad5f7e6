"""The question of `boxlore strike` at a terminal, answered by Ctrl+C or the end of what is typed (our own contract)."""

import os
import pty
import select
import sys
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

import pytest
from tests.cli.test_interrupts import unmeasured
from tests.drawn import some

from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.statements import Teller, Telling

SILENCES = 60
"""How many waits of two seconds without a word are borne: a busy machine is waited for, a program that hangs fails."""


def at_a_terminal(arguments: list[str], question: bytes, answer: bytes) -> tuple[int, str]:
    """Run a command at a terminal of its own and type the answer when the question stands; the exit code, the text.

    A key that comes while the program sets its terminal up to read a line is lost, as in any terminal: it is typed
    again then.
    """
    process, handle = pty.fork()
    if process == 0:
        program = [sys.executable, "-c", "from boxlore.cli.entry import run; run()", *arguments]
        os.execve(sys.executable, program, unmeasured())
    text, silent = b"", 0
    with os.fdopen(handle, "r+b", buffering=0) as terminal, suppress(OSError):  # the terminal goes with the process
        while True:
            if not select.select([terminal], [], [], 2)[0]:
                silent += 1
                assert silent < SILENCES, f"it goes on waiting: {text!r}"
                if question in text:
                    terminal.write(answer)
                continue
            if not (data := terminal.read(1000)):
                break
            is_asked = question in text
            text += data
            if question in text and not is_asked:
                terminal.write(answer)
    return os.waitstatus_to_exitcode(os.waitpid(process, 0)[1]), text.decode()


@pytest.mark.parametrize(("answer", "code"), some([(b"\x03", 130), (b"\x04", 1), (b"n\n", 1)]))
def test_a_question_that_is_not_answered_changes_nothing(bare: Callable[[int], Path], answer: bytes, code: int) -> None:
    home = bare(1)
    with open_collection(home) as collection:
        Teller(collection).tell(find_item(collection, "TRA-0001"), "story", "It rained", Telling())
    ended, text = at_a_terminal(["-c", str(home), "strike", "TRA-0001", "story"], b"[y/N]: ", answer)
    assert ended == code and text.splitlines()[-1].strip() == "Nothing was struck; all is as it was."
    with open_collection(home, write=False) as collection:
        assert collection.store.search("rained")

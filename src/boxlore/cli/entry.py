"""Where the program begins. Ctrl+C ends it with a sentence from the first moment on, while its modules load too.

The handler stands before anything else is imported. `_signal` is the part of `signal` that the interpreter has built
in; `signal` itself takes ten milliseconds to import, in which Ctrl+C would show a traceback.
"""

import _signal  # type: ignore[import-not-found]  # CPython and PyPy have it; the stubs name `signal` alone
import os
import sys


def _ended(number: int, frame: object) -> None:
    try:
        os.write(2, b"Stopped. What was finished is kept.\n")
        sys.stdout.flush()
    except (OSError, ValueError, RuntimeError):  # nobody reads, or we came in the midst of a write
        os._exit(130)
    os._exit(130)


_before = _signal.getsignal(_signal.SIGINT)
_is_ours = _before is _signal.default_int_handler  # else whoever started us wants it ignored
if _is_ours:
    _signal.signal(_signal.SIGINT, _ended)


def run() -> None:
    """Load the command and run it; ends the program."""
    from boxlore.cli import interrupts
    from boxlore.cli.main import main

    try:
        _signal.signal(_signal.SIGINT, _before)
        main()
    except KeyboardInterrupt:
        _ended(_signal.SIGINT, None)
    except SystemExit as left:
        if left.code == interrupts.EXIT:
            interrupts.end(interrupts.EXIT)
        raise
    finally:
        if _is_ours:  # the interpreter takes itself apart now, and would show a traceback again
            _signal.signal(_signal.SIGINT, _ended)

"""Where the program begins. Ctrl+C ends it with a sentence from the first moment on, while its modules load too."""

import os
import signal
from typing import NoReturn


def run() -> NoReturn:
    """Load the command and run it."""
    before = signal.getsignal(signal.SIGINT)
    if before is signal.default_int_handler:  # else whoever started us wants it ignored
        signal.signal(signal.SIGINT, _ended)
    from boxlore.cli import interrupts
    from boxlore.cli.main import main

    try:
        signal.signal(signal.SIGINT, before)
        main()
    except KeyboardInterrupt:
        _ended(signal.SIGINT, None)
    except SystemExit as left:
        if left.code == interrupts.EXIT:
            interrupts.end(interrupts.EXIT)
        raise


def _ended(number: int, frame: object) -> NoReturn:
    os.write(2, b"Stopped. What was finished is kept.\n")
    os._exit(130)

"""Loading what a command needs, without looking for garbage meanwhile: a tenth of a start is else spent on that."""

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def loading() -> Iterator[None]:
    """Context: import with garbage collection off, then freeze what is there.

    These objects live to the end of the program, and scanning them again delays keys.
    """
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.enable()

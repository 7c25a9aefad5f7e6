"""Typesetting in a process of its own, which gives back all the memory that a long table takes: about 100 KB a row.

Run as `python -m boxlore.sheets.typeset_apart`: what to set comes in as a pickle of ours, the PDF goes out.
"""

import pickle
import subprocess
import sys
from collections.abc import Mapping
from typing import Any

from boxlore.core.errors import CouldNot


def typeset_apart(sources: Mapping[str, bytes], fonts: Mapping[str, Any], how: Mapping[str, Any]) -> bytes:
    """The PDF of these sources, with what `typst.Fonts` and `typst.compile` take. Raises CouldNot where it was not
    made."""
    command = [sys.executable, "-P", "-m", "boxlore.sheets.typeset_apart"]  # -P: no module of the folder one is in
    wanted = pickle.dumps((dict(sources), dict(fonts), dict(how)))
    done = subprocess.run(command, input=wanted, capture_output=True, check=False)
    if done.returncode:
        raise CouldNot(
            f"A PDF was not made: {done.stderr.decode(errors='replace').strip()[-300:]}", "Try again with fewer items."
        )
    return done.stdout


def main() -> None:
    """Set what comes in."""
    import typst  # noqa: PLC0415  # whoever only asks for it has no need of it

    compile_it: Any = typst.compile  # its type hints lack the dict of sources that the documentation describes
    sources, fonts, how = pickle.load(sys.stdin.buffer)
    sys.stdout.buffer.write(compile_it(sources, font_paths=typst.Fonts(**fonts), **how))


if __name__ == "__main__":
    main()

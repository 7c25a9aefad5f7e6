"""How long `boxlore --help` takes, against `python -c "import click"` in the same run. Budget: at most 2 times."""

import statistics
import subprocess
import sys
import time

RUNS = 15


def seconds(code: str) -> float:
    """The median of RUNS fresh interpreters."""
    taken = []
    for _ in range(RUNS):
        start = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], check=True, stdout=subprocess.DEVNULL)
        taken.append(time.perf_counter() - start)
    return statistics.median(taken)


peer = seconds("import click")
ours = seconds(
    "import sys; sys.argv = ['boxlore', '--help']\n"
    "from boxlore.cli.main import main\n"
    "try:\n    main()\nexcept SystemExit:\n    pass"
)
print(f"import click {peer * 1000:.0f} ms, boxlore --help {ours * 1000:.0f} ms, ratio {ours / peer:.2f} (budget 2)")

"""EDTF strings a second beside PyPI `edtf`, phrases beside PyPI `dateparser`, in the same run.

Budgets: 100,000 common strings a second, 300 times `edtf`; of ordinary phrases (`ordinary_dates.txt`) 20,000 a second
read and 15,000 answered with bounds and display; any of them 1 ms at the 95th percentile; any single string 5 ms.
Beside them stands, without a budget, what it is for the phrases of the case files, which are there because they were
hard: long ones, what is kept unread, and what is asked about with its choices. Processor time of this process, and how
long a fixed loop took in the same run, since others may run beside it.
Run: python tests/benchmarks/bench_dates.py
"""

from pathlib import Path
from time import process_time

import dateparser
from edtf import parse_edtf

from boxlore.core.dates.edtf import check, parse
from boxlore.core.dates.phrases import read
from boxlore.core.dates.reading import DateReading

COMMON = ["1985", "1985-04", "1985-04-12", "1920~", "1948?", "195X", "[1915..1918]", "1915/1918", "1962-22", "[..1950]"]
CASES = Path(__file__).parents[1] / "core" / "dates" / "cases"
ORDINARY = Path(__file__).with_name("ordinary_dates.txt")
LONG = "[" + "1985," * 2_000
HARD = [
    "1" * 10_000,
    "[" + "1985," * 2_000,
    "9" * 300,
    "between " * 40,
    "a few days after " * 17,
    "X" * 10_000,
    "?" * 299,
]


def rate(reader: object, times: int) -> float:
    start = process_time()
    for _ in range(times):
        for text in COMMON:
            reader(text)  # type: ignore[operator]
    return times * len(COMMON) / (process_time() - start)


def answer(text: str) -> tuple[object, ...]:
    """A phrase read, with what the command shows of it."""
    reading: DateReading = read(text)
    return reading.earliest, reading.latest, reading.display


def a_second(phrases: list[str], reader: object, times: int) -> float:
    """Phrases a second in the best of several passes."""
    best = float("inf")
    for _ in range(times):
        start = process_time()
        for text in phrases:
            reader(text)  # type: ignore[operator]
        best = min(best, process_time() - start)
    return len(phrases) / best


def fixed_loop() -> float:
    """Milliseconds of a loop that is always the same, in the best of several passes: how fast the machine is now."""
    best = float("inf")
    for _ in range(7):
        start = process_time()
        seen: dict[int, str] = {}
        for number in range(100_000):
            seen[number % 97] = str(number)[:2]
        best = min(best, process_time() - start)
    return best * 1000


def phrases_of(*paths: Path) -> list[str]:
    lines = [line for path in paths for line in path.read_text("utf-8").splitlines()]
    return [line.split("|")[0].strip() for line in lines if line.strip() and not line.startswith("#")]


def milliseconds(text: str, reader: object) -> float:
    best = float("inf")
    for _ in range(3):
        start = process_time()
        reader(text)  # type: ignore[operator]
        best = min(best, process_time() - start)
    return best * 1000


def main() -> None:
    ours, theirs = rate(parse, 20_000), rate(parse_edtf, 20)
    print(f"EDTF: {ours:,.0f}/s, edtf {theirs:,.0f}/s, ratio {ours / theirs:,.0f} (budgets 100,000 and 300)")
    ordinary, phrases = phrases_of(ORDINARY), phrases_of(*CASES.glob("*.txt"))
    for text in (*ordinary, *phrases):
        read(text)
    theirs = a_second(ordinary[::20], dateparser.parse, 2)  # the first pass loads its languages
    print(f"a fixed loop: {fixed_loop():.1f} ms")
    ours = a_second(ordinary, read, 25)
    print(f"ordinary phrases: {ours:,.0f}/s (budget 20,000), dateparser {theirs:,.0f}/s, ratio {ours / theirs:,.0f}")
    print(f"ordinary answers: {a_second(ordinary, answer, 25):,.0f}/s (budget 15,000)")
    print(f"case files: {a_second(phrases, read, 5):,.0f}/s read, {a_second(phrases, answer, 5):,.0f}/s answered")
    for what, texts in (("ordinary", ordinary), ("case files", phrases)):
        taken = sorted(milliseconds(text, read) for text in texts)
        at95 = taken[len(taken) * 95 // 100]
        budget = " (budget 1)" if texts is ordinary else ""
        print(f"{what}, one by one: {len(taken)}, 95th percentile {at95:.3f} ms{budget}, slowest {taken[-1]:.2f} ms")
    worst = max((milliseconds(text, reader), text[:20]) for text in [*HARD, *phrases] for reader in (read, check))
    print(f"worst single string: {worst[0]:.2f} ms, “{worst[1]}…” (budget 5)")
    print(f"a set of 2,000 years, 10,000 letters: {milliseconds(LONG, check):.1f} ms (linear in its length)")


if __name__ == "__main__":
    main()

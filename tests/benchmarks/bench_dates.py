"""EDTF strings a second beside PyPI `edtf`, phrases beside PyPI `dateparser`, in the same run.

Budgets: 100,000 common strings a second, 300 times `edtf`; 20,000 phrases a second read and 15,000 answered with bounds
and display; a phrase 1 ms at the 95th percentile; any single string 5 ms. The phrases are those of the case files, hard
ones and ones that are kept unread among them. Processor time of this process, since others may run beside it.
Run: python tests/benchmarks/bench_dates.py
"""

from pathlib import Path
from time import perf_counter, process_time

import dateparser
from edtf import parse_edtf

from boxlore.core.dates.edtf import check, parse
from boxlore.core.dates.phrases import read
from boxlore.core.dates.reading import DateReading

COMMON = ["1985", "1985-04", "1985-04-12", "1920~", "1948?", "195X", "[1915..1918]", "1915/1918", "1962-22", "[..1950]"]
CASES = Path(__file__).parents[1] / "core" / "dates" / "cases"
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
    start = perf_counter()
    for _ in range(times):
        for text in COMMON:
            reader(text)  # type: ignore[operator]
    return times * len(COMMON) / (perf_counter() - start)


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


def milliseconds(text: str, reader: object) -> float:
    best = float("inf")
    for _ in range(3):
        start = perf_counter()
        reader(text)  # type: ignore[operator]
        best = min(best, perf_counter() - start)
    return best * 1000


def main() -> None:
    ours, theirs = rate(parse, 20_000), rate(parse_edtf, 20)
    print(f"EDTF: {ours:,.0f}/s, edtf {theirs:,.0f}/s, ratio {ours / theirs:,.0f} (budgets 100,000 and 300)")
    lines = [line for path in CASES.glob("*.txt") for line in path.read_text("utf-8").splitlines()]
    phrases = [line.split("|")[0].strip() for line in lines if line.strip() and not line.startswith("#")]
    ours = a_second(phrases, read, 7)
    theirs = a_second(phrases[::20], dateparser.parse, 1)
    print(f"phrases: {ours:,.0f}/s (budget 20,000), dateparser {theirs:,.0f}/s, ratio {ours / theirs:,.0f}")
    print(f"answers: {a_second(phrases, answer, 7):,.0f}/s (budget 15,000)")
    taken = sorted(milliseconds(text, read) for text in phrases)
    at95 = taken[len(taken) * 95 // 100]
    print(f"one by one: {len(taken)}, 95th percentile {at95:.3f} ms, slowest {taken[-1]:.2f} ms (budget 1)")
    worst = max((milliseconds(text, reader), text[:20]) for text in [*HARD, *phrases] for reader in (read, check))
    print(f"worst single string: {worst[0]:.2f} ms, “{worst[1]}…” (budget 5)")
    print(f"a set of 2,000 years, 10,000 letters: {milliseconds(LONG, check):.1f} ms (linear in its length)")


if __name__ == "__main__":
    main()

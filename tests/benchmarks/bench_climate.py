"""A year at ten-minute steps, 52,560 rows, read and judged. Budget: 2 seconds. Peer: the csv module alone.

Run: python tests/benchmarks/bench_climate.py
"""

import csv
import io
import math
import time
from datetime import datetime, timedelta

from boxlore.core.originals.climate import climate_findings, figures_of
from boxlore.core.originals.climate_log import read_log

ROWS = 52_560
SHAPES = {
    "iso": ("Timestamp,Temperature (°C),Relative Humidity (%)", "%Y-%m-%d %H:%M:%S", ","),
    "american, °F": ("Date Time,Temp °F,RH %", "%m/%d/%y %I:%M:%S %p", ","),
    "european, comma": ("Datum;Temperatur °C;Feuchte %rH", "%d.%m.%Y %H:%M", ";"),
}


def year(heading: str, form: str, delimiter: str) -> str:
    """A year with its seasons and days."""
    lines = [heading]
    for at in range(ROWS):
        when = datetime(2026, 1, 1) + timedelta(minutes=10) * at
        season, day = math.sin(at / ROWS * 2 * math.pi), math.sin(at / 144 * 2 * math.pi)
        t, rh = 15 + 8 * season + 2 * day, 55 - 12 * season + 4 * day
        t = t * 9 / 5 + 32 if "°F" in heading else t
        values = [f"{t:.1f}", f"{rh:.1f}"]
        if delimiter == ";":
            values = [value.replace(".", ",") for value in values]
        lines.append(delimiter.join([when.strftime(form), *values]))
    return "\n".join(lines)


def main() -> None:
    for name, (heading, form, delimiter) in SHAPES.items():
        text = year(heading, form, delimiter)
        began = time.perf_counter()
        rows = sum(1 for _ in csv.reader(io.StringIO(text), delimiter=delimiter))
        peer = time.perf_counter() - began
        began = time.perf_counter()
        log = read_log(text)
        read = time.perf_counter() - began
        findings = climate_findings(figures_of(log.readings))
        took = time.perf_counter() - began
        assert len(log.readings) == ROWS == rows - 1, len(log.readings)
        assert len(findings) > 1, findings
        print(
            f"{name}: {ROWS} rows read in {read:.2f} s, judged in {took - read:.2f} s, {took:.2f} s in all "
            f"(budget 2 s); {took / peer:.0f} × splitting the rows alone"
        )


if __name__ == "__main__":
    main()

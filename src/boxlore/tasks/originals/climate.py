"""The climate of a location: logs kept with their fixity, readings typed by hand, the verdict, the chart."""

import json
import re
import shutil
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.climate import Climate, Measurement, celsius_of, climate_findings, summed
from boxlore.core.originals.climate_chart import text_chart
from boxlore.core.originals.climate_log import ClimateLog, read_log
from boxlore.core.statements import Kind, Subject
from boxlore.disk.charts import climate_png
from boxlore.disk.fixity import sha256_of
from boxlore.disk.writing import CHUNK, replacing, write_whole
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.originals.housing import House, gather, house_of

FOLDER = "papers/climate"
BYTES_SOURCE = "SHA-256 (FIPS 180-4) noted when the log was taken in"


@dataclass(frozen=True, slots=True)
class Judged:
    """What is known of one location: its readings, the figures, the findings, and how its files were read."""

    where: str
    readings: tuple[Measurement, ...]
    climate: Climate | None
    findings: tuple[Finding, ...]
    notes: tuple[str, ...] = ()


def read_file(path: Path, *, unit: str = "", order: str = "") -> ClimateLog:
    """Read one logger's CSV. Raises WrongUse naming what it lacks."""
    try:
        data = path.read_bytes()
    except OSError as error:
        raise CouldNot(f"{path} cannot be read: {error.strerror}.", "Name the logger's CSV file.") from error
    return read_log(_text(data), unit=unit, order=order)


def _text(data: bytes) -> str:
    """Loggers write UTF-8, UTF-16 with its mark, or an 8-bit code page, where only the degree sign matters."""
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return data.decode("utf-16", errors="replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", errors="replace")


def judge(where: str, readings: Sequence[Measurement], notes: Iterable[str] = ()) -> Judged:
    """The verdict on a log."""
    climate = summed(readings)
    return Judged(where, tuple(readings), climate, tuple(climate_findings(climate)), tuple(notes))


def keep_log(collection: Collection, path: Path, location: str, *, unit: str = "", order: str = "") -> Judged:
    """Take a log in: it is read first, then copied beside the papers, and noted at its location. A log that is
    there already is not taken twice."""
    log = read_file(path, unit=unit, order=order or collection.settings.day_order)
    where = house_of(collection).location(location)
    digest = sha256_of(path)
    target = collection.folder / FOLDER / f"{digest[:12]}-{path.name}"
    if not target.exists():
        with open(path, "rb") as source, replacing(target) as out:
            shutil.copyfileobj(source, out, CHUNK)
    facts = {
        "path": target.relative_to(collection.folder).as_posix(),
        "sha256": digest,
        "bytes": path.stat().st_size,
        "unit": log.unit,
        "order": "" if log.order == "ymd" else log.order,
    }
    act = collection.act(f"climate log {path.name}")
    gather(act, Subject(Kind.LOCATION, where.id), "climate", [json.dumps(facts, ensure_ascii=False)])
    act.done()
    return judge(" / ".join(where.path), log.readings, log.notes)


_VALUE = re.compile(r"\s*(-?\d+(?:[.,]\d+)?)\s*(?:°\s*)?([CFcf]|%)?\s*(?:rh)?\s*\Z", re.IGNORECASE)


def typed(temperature: str, humidity: str) -> tuple[float, float]:
    """`68F`, `20 C`, `45%` → °C and percent. Raises WrongUse for what is none."""
    t, rh = _VALUE.match(temperature), _VALUE.match(humidity)
    if t is None or t[2] not in ("C", "F", "c", "f"):
        raise WrongUse(f"“{temperature[:20]}” is no temperature.", "Write it with its unit: 20C or 68F.")
    if rh is None or rh[2] not in (None, "%") or not 0 < float(rh[1].replace(",", ".")) <= 100:
        raise WrongUse(f"“{humidity[:20]}” is no humidity.", "Write percent: 45%.")
    value = float(t[1].replace(",", "."))
    return (celsius_of(value) if t[2] in "Ff" else value), float(rh[1].replace(",", "."))


def note_reading(collection: Collection, location: str, when: datetime, temperature: str, humidity: str) -> None:
    """Keep one reading typed by hand."""
    celsius, percent = typed(temperature, humidity)
    where = house_of(collection).location(location)
    act = collection.act(f"reading at {where.name}")
    words = f"{when:%Y-%m-%dT%H:%M:%S} {celsius:.2f} {percent:.1f}"
    gather(act, Subject(Kind.LOCATION, where.id), "measured", [words])
    act.done()


def judged(collection: Collection, house: House | None = None) -> list[Judged]:
    """The verdict on every location that has readings."""
    house = house or house_of(collection)
    found: list[Judged] = []
    for ident, facts in collection.store.subjects("location"):
        logs = [json.loads(one.words) for one, _ in facts if one.field == "climate"]
        hand = [_reading(one.words) for one, _ in facts if one.field == "measured"]
        if logs or hand:
            where = " / ".join(house.locations[ident].path)
            found.append(_judge_all(collection, where, logs, hand))
    return found


def _reading(words: str) -> Measurement:
    when, celsius, percent = words.split()
    return datetime.fromisoformat(when), float(celsius), float(percent)


def _judge_all(
    collection: Collection, where: str, logs: Sequence[dict[str, str]], hand: Sequence[Measurement]
) -> Judged:
    readings = list(hand)
    notes: list[str] = []
    lost: list[Finding] = []
    for facts in logs:
        path = collection.folder / facts["path"]
        try:
            same = sha256_of(path) == facts["sha256"]
        except CouldNot:
            lost.append(_lost(f"The log {facts['path']} is not there."))
            continue
        if not same:
            lost.append(_lost(f"The log {facts['path']} has changed since it was taken in; it is left out."))
            continue
        log = read_file(path, unit=facts["unit"], order=facts["order"])
        readings += log.readings
        notes += [f"{path.name}: {note}" for note in log.notes]
    by_time = dict(sorted({one[0]: one for one in readings}.items()))
    result = judge(where, list(by_time.values()), notes)
    return Judged(where, result.readings, result.climate, (*lost, *result.findings), result.notes)


def _lost(message: str) -> Finding:
    return Finding(rule="climate.log-changed", severity=Severity.ERROR, message=message, source=BYTES_SOURCE)


def humidity_at(found: Iterable[Judged], location: Sequence[str]) -> float | None:
    """The mean humidity where a container stands, if a log of that place, or of one around it, is long enough."""
    means = {one.where: one.climate.mean_rh for one in found if one.climate is not None and one.climate.judged}
    for depth in range(len(location), 0, -1):
        if (mean := means.get(" / ".join(location[:depth]))) is not None:
            return mean
    return None


def chart_lines(one: Judged, width: int) -> list[str]:
    """The chart for a terminal."""
    return text_chart(one.readings, width)


def write_chart(one: Judged, out: Path) -> None:
    """The chart as a PNG file."""
    write_whole(out, climate_png(one.readings, one.where))

"""The climate of a location: logs that are kept with their fixity, readings typed by hand, the findings, the chart."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.originals import CLIMATE_WORDS, MEASURED_WORDS, ClimateFile, Measured
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.originals.climate import Climate, Measurement, celsius_of, climate_findings, figures_of
from boxlore.core.originals.climate_chart import text_chart
from boxlore.core.originals.climate_log import ClimateLog, read_log
from boxlore.core.statements import Kind, Subject
from boxlore.disk.climate_chart import climate_png
from boxlore.disk.digests import copy_proved, sha256_of
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import Outputs, write_output
from boxlore.tasks.originals.housing_changes import gather
from boxlore.tasks.originals.housing_now import House, house_of

FOLDER = "papers/climate"
BYTES_SOURCE = "SHA-256 (FIPS 180-4) noted when the log was taken in"


@dataclass(frozen=True, slots=True)
class Judged:
    """The climate of one location: its readings, their figures, the findings, and notes on how the files were read.

    `where` is the location's path, such as `House / Hall`, or the name of a log that is not kept.
    """

    where: str
    readings: tuple[Measurement, ...]
    climate: Climate | None
    findings: tuple[Finding, ...]
    notes: tuple[str, ...] = ()


def read_file(path: Path, *, unit: str = "", order: str = "") -> ClimateLog:
    """Read one logger's CSV. Raises CouldNot if there is no such file, WrongUse if it is no log (see `read_log`)."""
    try:
        data = path.read_bytes()
    except OSError as error:
        raise CouldNot(f"{path} cannot be read: {error.strerror}.", "Name the logger's CSV file.") from error
    return read_log(_text(data), unit=unit, order=order)


def _text(data: bytes) -> str:
    """The text of a log: UTF-16 if it begins with a byte order mark, else UTF-8, else Windows-1252.

    Of an 8-bit code page only the degree sign matters here.
    """
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return data.decode("utf-16", errors="replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", errors="replace")


def judge(where: str, readings: Sequence[Measurement], notes: Iterable[str] = ()) -> Judged:
    """The figures and findings of readings that stand in the order of their times."""
    climate = figures_of(readings)
    return Judged(where, tuple(readings), climate, tuple(climate_findings(climate)), tuple(notes))


def keep_log(collection: Collection, path: Path, location: str, *, unit: str = "", order: str = "") -> Judged:
    """Take a log in: read it, copy it into FOLDER, and note it at its location.

    A log whose bytes are there already is not taken twice. Raises WrongUse, CouldNot (see `read_file`).
    """
    log = read_file(path, unit=unit, order=order or collection.settings.day_order)
    where = house_of(collection).location(location)
    digest = sha256_of(path)
    target = collection.folder / FOLDER / f"{digest[:12]}-{path.name}"
    if not target.exists():
        copy_proved(path, target, digest)
    kept = ClimateFile(
        path=target.relative_to(collection.folder).as_posix(),
        sha256=digest,
        bytes=target.stat().st_size,
        unit=log.unit,
        order="" if log.order == "ymd" else log.order,
    )
    act = collection.act(f"climate log {path.name}")
    gather(act, Subject(Kind.LOCATION, where.id), "climate", [CLIMATE_WORDS.write(kept)])
    act.done()
    return judge(" / ".join(where.path), log.readings, log.notes)


_VALUE = re.compile(r"\s*(-?\d+(?:[.,]\d+)?)\s*(?:°\s*)?([CFcf]|%)?\s*(?:rh)?\s*\Z", re.IGNORECASE)


def read_typed(temperature: str, humidity: str) -> tuple[float, float]:
    """(°C, percent) of a reading typed by hand, such as `68F` or `20 C`, and `45%`. Raises WrongUse."""
    t, rh = _VALUE.match(temperature), _VALUE.match(humidity)
    if t is None or t[2] not in ("C", "F", "c", "f"):
        raise WrongUse(f"“{temperature[:20]}” is no temperature.", "Write it with its unit: 20C or 68F.")
    if rh is None or rh[2] not in (None, "%") or not 0 < float(rh[1].replace(",", ".")) <= 100:
        raise WrongUse(f"“{humidity[:20]}” is no humidity.", "Write percent: 45%.")
    value = float(t[1].replace(",", "."))
    return (celsius_of(value) if t[2] in "Ff" else value), float(rh[1].replace(",", "."))


def note_reading(collection: Collection, location: str, when: datetime, temperature: str, humidity: str) -> None:
    """Keep one reading typed by hand. Raises WrongUse for a value that is none, or an unknown location."""
    celsius, percent = read_typed(temperature, humidity)
    where = house_of(collection).location(location)
    act = collection.act(f"reading at {where.name}")
    words = MEASURED_WORDS.write(Measured(when, celsius, percent))
    gather(act, Subject(Kind.LOCATION, where.id), "measured", [words])
    act.done()


def judge_locations(collection: Collection, house: House | None = None) -> list[Judged]:
    """The climate of every location that has readings."""
    house = house or house_of(collection)
    judgements: list[Judged] = []
    for ident, facts in collection.store.subjects("location"):
        logs = [CLIMATE_WORDS.read(statement.words) for statement, _ in facts if statement.field == "climate"]
        hand = [_reading(statement.words) for statement, _ in facts if statement.field == "measured"]
        if logs or hand:
            where = " / ".join(house.locations[ident].path)
            judgements.append(_judge_all(collection, where, logs, hand))
    return judgements


def _reading(words: str) -> Measurement:
    measured = MEASURED_WORDS.read(words)
    return measured.at, measured.celsius, measured.percent


def _judge_all(collection: Collection, where: str, logs: Sequence[ClimateFile], hand: Sequence[Measurement]) -> Judged:
    """The climate of one location from its kept logs and the readings typed by `hand`, in one line of time.

    A log that is gone or has changed is left out, with a finding.
    """
    readings = list(hand)
    notes: list[str] = []
    lost: list[Finding] = []
    for kept in logs:
        path = collection.folder / kept.path
        try:
            unchanged = sha256_of(path) == kept.sha256
        except CouldNot:
            lost.append(_lost(f"The log {kept.path} is not there."))
            continue
        if not unchanged:
            lost.append(_lost(f"The log {kept.path} has changed since it was taken in; it is left out."))
            continue
        log = read_file(path, unit=kept.unit, order=kept.order)
        readings += log.readings
        notes += [f"{path.name}: {note}" for note in log.notes]
    by_time = dict(sorted({reading[0]: reading for reading in readings}.items()))
    result = judge(where, list(by_time.values()), notes)
    return Judged(where, result.readings, result.climate, (*lost, *result.findings), result.notes)


def _lost(message: str) -> Finding:
    return make_finding("climate.log-changed", Severity.ERROR, message, BYTES_SOURCE)


def humidity_at(judgements: Iterable[Judged], location: Sequence[str]) -> float | None:
    """The mean humidity (% RH) at a location, given by its names from the house inward.

    Taken from the log of that location, or else of the nearest around it, that is long enough; None without one.
    """
    means = {
        judgement.where: judgement.climate.mean_rh
        for judgement in judgements
        if judgement.climate is not None and judgement.climate.judged
    }
    for depth in range(len(location), 0, -1):
        if (mean := means.get(" / ".join(location[:depth]))) is not None:
            return mean
    return None


def chart_lines(judgement: Judged, width: int) -> list[str]:
    """The chart as lines of text for a terminal, at most `width` letters wide."""
    return text_chart(judgement.readings, width)


def write_chart(judgement: Judged, out: Path, outputs: Outputs) -> None:
    """Write the chart to `out` as a PNG."""
    write_output(outputs, out, climate_png(judgement.readings, judgement.where))

"""`boxlore climate`: temperature and humidity where the originals are, judged with the computation shown."""

from datetime import datetime
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.originals.source_names import source_in_full
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.output_paths import Unopened
from boxlore.tasks.originals.climate import (
    Judged,
    chart_lines,
    judge,
    judge_locations,
    keep_log,
    note_reading,
    read_file,
    write_chart,
)
from boxlore.tasks.sitting.recovering import open_for_writing

WIDTH = 78


@click.command()
@click.argument("log", required=False, type=GivenPath(dir_okay=False))
@click.option("--at", "location", default="", help="The location; the log, or the reading, is kept with it.")
@click.option("--reading", nargs=2, metavar="T RH", help="A reading by hand, such as: 68F 45%")
@click.option("--when", default="", metavar="TIME", help="When the reading was taken (2026-03-01T14:10); else now.")
@click.option("--unit", type=click.Choice(["C", "F"]), default=None, help="The unit, where the log does not say.")
@click.option("--order", type=click.Choice(["dmy", "mdy"]), default=None, help="Day or month first, where it is open.")
@click.option("--png", type=GivenPath(dir_okay=False), help="Write the chart to this file.")
@click.option("--chart/--no-chart", default=True, show_default=True, help="The chart in the terminal.")
@options.over
@options.as_json
@click.pass_context
def climate(
    ctx: click.Context, /, log: Path | None, location: str, reading: tuple[str, str] | None, when: str, **how: object
) -> None:
    """Judge a logger's CSV file LOG, or all that is kept of the locations.

    Time, temperature and humidity are known by the words of the heading; °F and °C, gaps and clock changes are
    understood. With --at, the log is copied into the collection and kept with its location. A log of less than a
    day gets no verdict; a full year is wanted.
    """
    drawn = ("png", "chart", "over", "as_json")
    if reading is not None:
        options.refuse_others(ctx, "with --reading", "reading", "location", "when")
    elif log is None:
        options.refuse_others(ctx, "without a LOG or --reading", *drawn)
    else:
        options.refuse_others(ctx, "without --reading", "log", "location", "unit", "order", *drawn)
    if how["png"] is None:
        options.refuse_given(ctx, "without --png", "over")
    unit, order = str(how["unit"] or ""), str(how["order"] or "")
    if reading is not None:
        _note(ctx.obj, location, when, reading)
        return
    if log is None:
        with open_collection(ctx.obj, write=False) as collection:
            judgements = judge_locations(collection)
    elif location:
        with open_for_writing(ctx.obj) as collection:
            judgements = [keep_log(collection, log, location, unit=unit, order=order)]
    else:
        read = read_file(log, unit=unit, order=order)
        judgements = [judge(log.name, read.readings, read.notes)]
    if not judgements:
        talk.say("No log is kept yet. boxlore climate FILE.csv --at LOCATION takes one in.")
    for judgement in judgements:
        _show(judgement, as_json=bool(how["as_json"]), chart=bool(how["chart"]))
    _draw(judgements, how["png"], Unopened(ctx.obj, over=bool(how["over"])))
    asks = any(finding.severity != "note" for judgement in judgements for finding in judgement.findings)
    ctx.exit(1 if asks else 0)


def _note(folder: Path, location: str, when: str, reading: tuple[str, str]) -> None:
    if not location:
        raise WrongUse("Where was that read?", "Say --at LOCATION.")
    try:
        at = datetime.fromisoformat(when) if when else datetime.now().replace(microsecond=0)
    except ValueError:
        raise WrongUse(f"“{when[:40]}” is no time.", "Write it as 2026-03-01T14:10.") from None
    with open_for_writing(folder) as collection:
        note_reading(collection, location, at.replace(tzinfo=None), *reading)
    talk.say(f"Kept: {' '.join(reading)} at {location}.")


def _draw(judgements: list[Judged], png: object, outputs: Unopened) -> None:
    """Write the chart to the file `png`, if one was named. Raises WrongUse unless exactly one log has readings."""
    if not isinstance(png, Path):
        return
    drawn = [judgement for judgement in judgements if judgement.readings]
    if len(drawn) != 1:
        raise WrongUse("One chart is drawn of one log.", "Name the log, or keep one location.")
    write_chart(drawn[0], png, outputs)
    talk.say(f"The chart is in {png}.")


def _show(judgement: Judged, *, as_json: bool, chart: bool) -> None:
    if as_json:
        output.row(_json(judgement))
        return
    output.say(output.safe(judgement.where))
    if chart and judgement.readings:
        output.say("\n".join(chart_lines(judgement, WIDTH)))
    for note in judgement.notes:
        output.say(f"  {output.safe(note)}")
    for finding in judgement.findings:
        output.say(
            f"{finding.severity:5}  {output.safe(finding.message)}  [{finding.rule}; {source_in_full(finding.source)}]"
        )
        for because in finding.because:
            output.say(f"         {output.safe(because)}")


def _json(judgement: Judged) -> dict[str, object]:
    figures: dict[str, object] = {}
    if judgement.climate is not None:
        summary = judgement.climate
        figures = {
            "count": summary.count,
            "since": summary.since.isoformat(),
            "until": summary.until.isoformat(),
            "longest_gap_hours": round(summary.longest_gap.total_seconds() / 3600, 2),
            "mean_celsius": round(summary.mean_t, 2),
            "mean_humidity": round(summary.mean_rh, 2),
            "mean_dew_point": round(summary.mean_dew, 2),
            "longest_damp_run_hours": round(summary.damp.lasts.total_seconds() / 3600, 2) if summary.damp else 0,
            "judged": summary.judged,
        }
    findings = [
        {
            "rule": finding.rule,
            "severity": finding.severity,
            "message": finding.message,
            "because": list(finding.because),
            "source": finding.source,
        }
        for finding in judgement.findings
    ]
    return {"where": judgement.where, "figures": figures or None, "notes": list(judgement.notes), "findings": findings}

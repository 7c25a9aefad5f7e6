"""Words taken out for good: of everything that is told, and what is said of a strike when it is done."""

from boxlore.core.findings import several
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.strike import (
    BEYOND,
    StrikeReport,
    carriers,
    left_words,
    named,
    own_files,
    proved,
    still_standing,
    strike_out,
    target_line,
    targets_everywhere,
    words_about,
)
from boxlore.tui.menu_tasks.task import NOT_YET, YES_NO, FormAnswers, Group, Task
from boxlore.tui.screens.forms import Blank

SHOWN = 40
"""So many of the statements to be struck are listed."""


def struck_lines(collection: Collection, report: StrikeReport) -> list[str]:
    """What was struck, where it still stands, and what only the keeper can reach."""
    carrying = carriers(collection, report)
    traces = [words_about(path) for path in carrying]
    if not report.finished:
        return [
            "The words are erased. Another program still reads the collection;",
            "the last traces go when it closes.",
            *traces,
        ]
    traces += still_standing(collection, report)
    gone = proved(report, carrying)
    return [f"Struck. {gone}" if gone else "Struck from the records.", *traces, BEYOND]


def _strike(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    words = answers["words"]
    to_strike, left = targets_everywhere(collection, words)
    said = sorted({left_words(target) for target in left})
    if not to_strike:
        return ["Nothing was struck.", *said]
    listed = [target_line(collection, target) for target in to_strike[:SHOWN]]
    if len(to_strike) > SHOWN:
        listed.append(f"  … and {len(to_strike) - SHOWN} more.")
    if answers["do"] != "yes":
        count = several(len(to_strike), "answer")
        return [f"{count} would be struck; {NOT_YET}.", *listed, *said]
    progress.begin("Striking the words", 0)
    own = own_files(collection, to_strike)
    report = strike_out(
        collection,
        [target.statement for target in to_strike],
        asked=[words],
        waiting=lambda why: progress.begin(why, 0),
        stopped=progress.stopped,
    )
    named(collection)
    return [*struck_lines(collection, report), *said, *own]


TASKS = {
    "strike": Task(
        Group.PUT_RIGHT,
        "Strike words everywhere",
        "out of all that is told, for good",
        lambda collection: [
            Blank("words", "Which words?", "", "Every answer that holds them goes, in all backups too."),
            Blank("do", "Strike them now? It cannot be undone.", "no", "No: show what would go.", choices=YES_NO),
        ],
        _strike,
        writes=True,
    ),
}

"""All tasks of the menu, by their keys. A task's module imports what loads heavy libraries when it is started."""

from boxlore.tui.menu_tasks import (
    handing_on,
    keeping_safe,
    keeping_scans,
    other_desks,
    printing,
    putting_right,
    sitting_logs,
    striking,
    taking_in,
)
from boxlore.tui.menu_tasks.task import Group, Task

TASKS: dict[str, Task] = {
    **taking_in.TASKS,
    **putting_right.TASKS,
    **striking.TASKS,
    **sitting_logs.TASKS,
    **printing.TASKS,
    **handing_on.TASKS,
    **other_desks.TASKS,
    **keeping_scans.TASKS,
    **keeping_safe.TASKS,
}


def of_group(group: Group) -> dict[str, Task]:
    """The tasks of one group, in the order in which the menu lists them."""
    return {key: task for key, task in TASKS.items() if task.group is group}

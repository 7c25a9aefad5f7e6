"""What is in question of an item, a date or a place, and one way to take a choice of it by its number."""

from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_date import OpenDate, choose_date, open_date
from boxlore.tasks.sitting.which_place import OpenPlace, choose, open_place

OpenQuestion = OpenDate | OpenPlace


def open_question(sitting: Sitting, record: Record, prompt: Prompt) -> OpenQuestion | None:
    """The open question about the answer to this prompt; None if there is none."""
    return open_date(sitting, record, prompt) or open_place(sitting, record, prompt)


def choose_meant(sitting: Sitting, record: Record, question: OpenQuestion, number: int) -> str:
    """Keep that choice `number` (from 1) is meant. Returns it in words. Raises WrongUse for a number without one."""
    if isinstance(question, OpenDate):
        return choose_date(sitting, record, question, number)
    return full_name(choose(sitting, record, question, number))

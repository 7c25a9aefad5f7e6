"""Whether what was told last describes somebody, whom a name behind it names: `the girl in front is Ruth`."""

from boxlore.core.people.who_is_where.item_words import is_description, is_of_several, without_leads
from boxlore.core.people.who_is_where.reader_state import Reader


def describes_somebody(reader: Reader) -> bool:
    """Whether what was told last describes somebody whom a name may follow: `the girl in front`."""
    words = without_leads(reader.words) if reader.words else reader.words
    words = words[1:] if words[1:] and words[0].kind == "unsure" else words
    if [word.plain for word in words[:2]] == ["the", "only"]:
        return True  # `The only one I know is Fay`
    if words:
        return is_description(words) or is_of_several(words)
    return describes_last(reader)


def describes_last(reader: Reader) -> bool:
    return len(reader.items) > reader.part_begins and reader.items[-1].is_described

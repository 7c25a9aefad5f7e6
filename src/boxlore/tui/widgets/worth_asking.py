"""What to ask about an item, in the room that there is: questions whole, and how many more there are."""

from collections.abc import Sequence

from boxlore.tui.widgets.plain_text import Line, StyledText, content, short

Question = tuple[StyledText, ...]
"""A question as parts of styled text, without a line break."""

HEAD = "What to ask"
MORE = "… and {count} more: Esc, “This photograph”, “What to ask here”"


class WorthAsking(Line):
    """The questions. Where there are none it is not seen."""

    DEFAULT_CSS = "WorthAsking { height: auto; background: $surface; color: $secondary; padding: 0 1; }"

    def tell(self, questions: Sequence[Question], columns: int, rows: int) -> None:
        """Show as many of the questions as there is room for."""
        self.say(*fitted(questions, columns, rows))
        self.display = bool(questions)


def fitted(questions: Sequence[Question], columns: int, rows: int) -> list[StyledText]:
    """The heading, and as many questions whole as have room in so many columns and rows; then how many more there are.
    The first stands there in any case, cut where it has no room."""
    parts: list[StyledText] = [(HEAD, "bold"), " "]
    for count, question in enumerate(questions):
        last = count + 1 == len(questions)
        longer = [*parts, *(["\n"] if count else []), *question]
        if height(longer, columns) + (not last) > rows:
            if count == 0:
                room = columns * (rows - (not last)) - len(HEAD) - columns // 4  # lines end before the last column
                parts.append(short("".join(_letters(part) for part in question), max(room, columns // 2)))
                count = 1
            if rest := len(questions) - count:
                parts.append(f"\n{MORE.format(count=rest)}")
            return parts
        parts = longer
    return parts


def height(parts: Sequence[StyledText], columns: int) -> int:
    """How many rows the parts take."""
    return len(content(*parts).wrap(max(columns, 1)))


def _letters(part: StyledText) -> str:
    return part if isinstance(part, str) else part[0]

"""Dates told by an age or a birthday: “when Ruth was five”, “aged 5”, “on her 21st”, “als ich sechs war”.

An age is one number beside words of age, in any order; whatever else is said must be the person. The narrator is “I”;
“she”, “he” or nobody is the one person in the picture.
"""

from boxlore.core.dates.context import DateContext, NoSuchDate
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.relative import at_age, birthday

_AGE = frozenset(
    "when was aged at_years years_old birthday possessive i they about about_behind noise unit comma doubt or "
    "genitive".split()
)


AGE_WORDS = frozenset("when aged at_years years_old birthday possessive".split())
"""Kinds of words without which no age is told."""


def age(tokens: list[Token], text: str, context: DateContext) -> str | None:
    """The EDTF of an age, or None if none is told. Raises NoSuchDate where it is not known when the person was born."""
    kinds: set[str] = set()
    numbers: list[tuple[int, bool]] = []
    born: list[str] = []
    unknown: list[Token] = []
    for token in tokens:
        here = {sense.kind for sense in token.senses}
        sense = token.senses[0]
        number = next((sense for sense in token.senses if sense.kind in ("day", "ordinal")), None)
        if number is not None:
            value = number.value if number.kind == "ordinal" else number.value[0]  # type: ignore[index]
            numbers.append((int(str(value)), number.kind == "ordinal"))
        elif sense.kind == "person":
            born.append(str(sense.value))
        elif here & _AGE:
            kinds |= here & _AGE
        elif here == {"name"}:
            unknown.append(token)
        else:
            return None
    if len(numbers) != 1 or not 0 < numbers[0][0] <= 120 or len(born) > 1:
        return None
    (years, is_ordinal) = numbers[0]
    birthdays = "birthday" in kinds or (is_ordinal and ("possessive" in kinds))
    ages = "aged" in kinds or {"when", "was"} <= kinds or {"at_years", "years_old"} <= kinds
    if not (birthdays or ages) or (is_ordinal and not birthdays) or (unknown and born):
        return None
    return (birthday if birthdays else at_age)(_born(born, unknown, kinds, text, context), years)


def _born(born: list[str], unknown: list[Token], kinds: set[str], text: str, context: DateContext) -> str:
    if born:
        return born[0]
    if unknown:
        name = text[unknown[0].start : unknown[-1].end]
        raise NoSuchDate(f"When was {name.removesuffix('’s').removesuffix(chr(39) + 's')} born?")
    if "i" in kinds or ("possessive" in kinds and " my " in f" {text.casefold()} "):
        if not context.narrator:
            raise NoSuchDate("When were you born?")
        return context.narrator
    if len(context.pictured) == 1:
        return context.pictured[0]
    raise NoSuchDate("Who was that, and when were they born?")

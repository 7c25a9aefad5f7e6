"""Ages as they are told, alone and beside other words: “Grete mit 14, zur Konfirmation”, “when Tom was nobbut three”.

What is told beside an age and not understood makes a question of it; where that is a date, no age is asked about.
"""

from dataclasses import replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages import NUMBERS, age, in_months, nth_feast, with_birthdays, with_halves
from boxlore.core.dates.ages_in_captions import ages_told, together
from boxlore.core.dates.ages_in_tens import ask_of_tens
from boxlore.core.dates.asked_words import asked, not_understood
from boxlore.core.dates.context import DateContext, Life, NoSuchDate, Outcome
from boxlore.core.dates.dated_at_an_age import dated_at_an_age
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.event_question import when_born
from boxlore.core.dates.guards import guarded
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import Sense, words_of_several
from boxlore.core.dates.proposing import Decided
from boxlore.core.dates.told_apart import between_commas


def age_with_a_word(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    """“When Tom was nobbut three”: the question whether the age is meant, where one word that nobody knows stands
    between “was” and its number."""
    for at in range(1, len(tokens) - 1):
        unknown = tokens[at].kinds == {"name"} and words[tokens[at].start].islower()
        if unknown and tokens[at - 1].is_any(_WAS) and tokens[at + 1].is_any(NUMBERS):
            if words[tokens[at].start : tokens[at].end].casefold() in _LESS_THAN_NOTHING:
                return Outcome(None, f"“{words}”: that is before the birth. When was it?")
            outcome = of_age([*tokens[:at], *tokens[at + 1 :]], words, context)
            if outcome and outcome.edtf:
                return _asked((outcome.edtf.text,), context, [words[tokens[at].start : tokens[at].end]])
    return None


_WAS = frozenset(("was",))
_LESS_THAN_NOTHING = frozenset("minus moins menos meno min miinus минус mínus mīnus".split())


def beside_a_birthday(tokens: list[Token], context: DateContext, decided: Decided) -> Outcome | None:
    """What is told with somebody's birthday without its number: a date of any year, or beside it (“the day before
    Mary's birthday, 1940”); None for other words, and for a year before the birth."""
    tokens = _of_the_next(tokens)
    dated = with_birthdays(tokens)
    outcome = decided(dated) if dated is not tokens else _last_birthday(tokens)
    told = [text for text in outcome.alternatives if "XXXX" not in text] if outcome else []
    if outcome and outcome.edtf is None and 0 < len(told) <= 2:  # “my last birthday before we sailed”
        return _asked(tuple(told), context, [])
    if outcome is None or outcome.edtf is None:
        return None
    lives = (token.senses[0].value for token in tokens if token.senses[0].kind == "person")
    births = [standard.parsed(life.born).earliest for life in lives if life.born]  # type: ignore[attr-defined]  # a life
    last = outcome.edtf.latest
    return None if last is not None and any(birth and last < birth for birth in births) else outcome


def of_the_teller(tokens: list[Token], context: DateContext) -> list[Token]:
    """The tokens with the teller for “my” right before “birthday”, or before the how-manieth of them."""
    for at in range(len(tokens) - 1):
        behind = at + 1 + tokens[at + 1].is_any(_WHICH)
        is_mine = tokens[at].is_any(_MY) and behind < len(tokens) and tokens[behind].is_any(_BIRTHDAY)
        if is_mine and context.narrator:
            return [
                *tokens[:at],
                replace(tokens[at], senses=(Sense("person", Life(context.narrator)),)),
                *tokens[at + 1 :],
            ]
    return tokens


_MY, _BIRTHDAY = frozenset(("possessive",)), frozenset(("birthday",))
_WHICH = frozenset(("last", "ordinal"))


def _of_the_next(tokens: list[Token]) -> list[Token]:
    """The tokens without “last” where something follows that it is before, and “first” where it is after it: the day
    next to it is meant anyway."""
    at = next((at for at, token in enumerate(tokens) if token.is_any(_BIRTHDAY)), 0)
    sides = [next_to_it for kind, next_to_it in _NEXT_TO_IT.items() for token in tokens[at:] if kind in token.kinds]
    which = tokens[at - 1] if at and sides else None
    is_next = which and any(sense.kind == sides[0] and sense.value in (None, -1, 1) for sense in which.senses)
    return [*tokens[: at - 1], *tokens[at:]] if is_next else tokens


_NEXT_TO_IT = {"before": "last", "after": "ordinal"}


def _last_birthday(tokens: list[Token]) -> Outcome | None:
    """“Jaan's last birthday”: the one before the death, asked about; None for other words."""
    lives = [token.senses[0].value for token in tokens if token.senses[0].kind == "person"]
    if len(lives) != 1 or not any(token.is_any(_LAST) for token in tokens):
        return None
    if any(not token.is_any(_OF_A_LAST_BIRTHDAY) for token in tokens) or not lives[0].died:  # type: ignore[attr-defined]
        return None
    born, died = (standard.parsed(text) for text in (lives[0].born, lives[0].died))  # type: ignore[attr-defined]
    if born.earliest is None or born.earliest != born.latest or died.latest is None:
        return None
    day, last = born.earliest, died.latest
    year = last.year - ((last.month, last.day) < (day.month, day.day))
    return Outcome(None, None, (f"{year:04d}-{day.month:02d}-{day.day:02d}",))


_LAST = frozenset(("last",))
_OF_A_LAST_BIRTHDAY = frozenset(("person", "last", "birthday", "genitive", "possessive", "noise"))


def of_no_birth(tokens: list[Token], words: str) -> Outcome | None:
    """“The Christmas Walter was sixteen”, of whose life only the end is known: the question when he was born; None for
    other words. Else the number would be taken for a year."""
    for whose, was, age_told in zip(tokens, tokens[1:], tokens[2:], strict=False):
        sense = whose.senses[0]
        if sense.kind == "person" and not sense.value.born and was.is_any(_WAS) and age_told.is_any(NUMBERS):  # type: ignore[attr-defined]  # a life, by its kind
            return Outcome(None, when_born(words[whose.start : whose.end]))
    return None


def age_beside_words(tokens: list[Token], words: str, context: DateContext, decided: Decided) -> Outcome | None:
    """“Grete mit 14, zur Konfirmation”, “Leida leeripäev, ta oli siis 18”: the question whether the one age is meant
    that is told between commas, of the one person who is named, or of one of several who is named again with it; beside
    a year among words that are not understood, which of both. None where another part is a date."""
    persons = [token for token in tokens if token.senses[0].kind == "person"]
    parts = _with_number_of_person([tokens[first:last] for first, last in between_commas(tokens)])
    lives = [token.senses[0].value for token in persons]
    is_somebody = len(persons) == 1 or any(lives.count(life) > 1 for life in lives)  # “Liisa ja Maie, Maie aastane”
    if not is_somebody or len(parts) < 2:
        return None
    alone = persons[0] if len(persons) == 1 else None
    told_apart = alone is not None and any(part == [alone] for part in parts)  # “George, 6 ft, aged 19”
    ages: list[Edtf] = []
    left: list[str] = []
    for part in parts:
        if alone and alone not in part:
            part = [replace(token, senses=alone.senses) if token.is_any(_THEY) else token for token in part]
        outcome = of_age(part, words, context)
        if outcome is None and told_apart and alone and any(token.is_any(_AGED) for token in part):
            outcome = of_age([alone, *part], words, context)
        if outcome and (outcome.edtf or len(outcome.alternatives) == 1):
            ages.append(outcome.edtf or standard.parsed(outcome.alternatives[0]))
        elif (told := decided(part)) and told.edtf and told.edtf.text.startswith("XXXX"):
            continue  # “Xmas, Ruth 4”
        elif told and told.edtf:
            return None
        else:
            left.append(words[part[0].start : part[-1].end])
    if len(ages) != 1:
        return None
    years = [outcome.edtf for token in tokens if token.is_any(_YEARS) and (outcome := decided([token]))]
    if dates := [edtf for edtf in years if edtf]:  # “Peggy about 4, so 1935”
        return _asked(tuple(edtf.text for edtf in (*dates, *ages)), context, [])
    texts: tuple[str, ...] = (ages[0].text,)
    named = [token for part in parts if persons[0] not in part for token in part if token.is_any(_NAMED)]
    if len(named) == 1:  # “Christmas dinner, Peggy was seven”
        age_told = replace(persons[0], senses=(Sense("event", ages[0].text),))
        dated = dated_at_an_age([*named, age_told], context, decided)
        texts = dated.choices if dated else texts
    return _asked(texts, context, left)


def _asked(texts: tuple[str, ...], context: DateContext, unread: list[str]) -> Outcome:
    """The question which of these is meant, with the runs of words that are left over."""
    shown = " or ".join(asked(text, context) for text in texts)
    return Outcome(None, f"“{context.text}”: is {shown} meant?{not_understood(unread)}", texts)


def of_whom(tokens: list[Token]) -> list[Token]:
    """“Ada before she was 20”: the tokens with the one person told ahead for “she”, where that is another's age."""
    whom = tokens[0]
    if whom.senses[0].kind != "person" or not any(token.is_any(_THEY) for token in tokens[1:]):
        return tokens
    return [replace(token, senses=whom.senses) if token.is_any(_THEY) else token for token in tokens[1:]]


def _with_number_of_person(parts: list[list[Token]]) -> list[list[Token]]:
    """“Ada, 19, before she wed”, “Ada, aged 19, at the mill”: an age that is all between two commas is of the person
    that is all before them."""
    for at in range(1, len(parts)):
        if len(parts[at - 1]) == 1 and all(token.is_any(_OF_AN_AGE) for token in parts[at]):
            return [*parts[: at - 1], [*parts[at - 1], *parts[at]], *parts[at + 1 :]]
    return parts


_OF_AN_AGE = NUMBERS | {"aged", "years_old", "about", "about_behind", "unit", "doubt"}


_NAMED = frozenset(("month", "season", "feast"))
_AGED = frozenset(("aged", "years_old"))
_YEARS = frozenset(("year", "short"))
_THEY = frozenset(("they",))


def of_age(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    """What words come to that tell an age, the ages of several or a feast by its number; None for other words."""
    tokens = with_one_year(in_months(with_halves(_of_several(_between(tokens), words))))
    try:
        text = nth_feast(tokens, words, context) or age(tokens, words, context) or ages_told(tokens, words, context)
        if not text:
            ask_of_tens(tokens, words, context)
            _ask_of_two_ages(tokens, words, context)
            text = _of_two(tokens, words, context)
    except NoSuchDate as none:
        return Outcome(None, none.ask, none.choices)
    return guarded(Outcome(standard.parsed(text)), context) if text else None


def _between(tokens: list[Token]) -> list[Token]:
    """The tokens with “two or three” for “between two and three”."""
    at = next((at for at, token in enumerate(tokens) if token.is_any(_BETWEEN)), -1)
    run = tokens[at + 1 : at + 4]
    if at < 0 or len(run) < 3 or not run[1].is_any(_AND):
        return tokens
    return [*tokens[:at], run[0], replace(run[1], senses=(Sense("or"),)), *tokens[at + 3 :]]


_BETWEEN = frozenset(("between",))


def _ask_of_two_ages(tokens: list[Token], words: str, context: DateContext) -> None:
    """Raises NoSuchDate with the question whether an age is meant: “Edith 7 or 8”, “Edith 7?? or 8”."""
    told = [token for token in tokens if not token.kinds <= _SIGNS]
    if len(told) != len(_TWO_AGES) or not all(
        token.is_any(kinds) for token, kinds in zip(told, _TWO_AGES, strict=True)
    ):
        return
    aged = Token(_AGED_SENSE, told[0].end, told[0].end)
    if text := age([told[0], aged, *told[1:]], words, context):
        raise NoSuchDate(f"“{words}”: is {asked(text, context)} meant?", (text,))


_SIGNS = frozenset(("query", "comma", "noise"))
_TWO_AGES = (frozenset(("person",)), frozenset(("day",)), frozenset(("or", "dash")), frozenset(("day",)))
_AGED_SENSE = (Sense("aged"),)


def _of_two(tokens: list[Token], words: str, context: DateContext) -> str | None:
    """“When the twins were five and Mary was thirty”: the days on which both were so old; None for other words. Raises
    NoSuchDate where there are none."""
    at = next((at for at, token in enumerate(tokens) if token.is_any(_AND)), 0)
    parts = (tokens[:at], tokens[at + 1 :])
    if not at or not all(any(token.senses[0].kind == "person" for token in part) for part in parts):
        return None
    if not all(any(token.is_any(_WAS) for token in part) for part in parts):
        return None
    led = [token for token in parts[0] if token.is_any(_WHEN)]
    first, second = age(parts[0], words, context), age([*led, *parts[1]], words, context)
    return together([first, second], words) if first and second else None


_AND, _WHEN = frozenset(("and",)), frozenset(("when",))


def _of_several(tokens: list[Token], words: str) -> list[Token]:
    """The tokens with “were” as “was”, where it stands behind those whose age it is: “when the twins were three”."""
    if not any(token.senses[0].kind == "person" for token in tokens):
        return tokens
    were = words_of_several()
    return [
        replace(token, senses=_IT_WAS)
        if token.kinds == {"name"} and words[token.start : token.end].casefold() in were
        else token
        for token in tokens
    ]


_IT_WAS = (Sense("was"),)


def with_one_year(tokens: list[Token]) -> list[Token]:
    """The tokens with the number that an article or nothing tells: “when Tom was a year old”, “als Otto ein Jahr alt
    war”, `когда Вере был год`."""
    if any(token.is_any(NUMBERS) for token in tokens if token.senses[0].kind != "person"):
        return tokens
    ages = [at for at, token in enumerate(tokens) if token.is_any(_YEARS_OLD)]
    if len(ages) != 1 or ages[0] == 0:
        return tokens
    (at,) = ages
    is_led = at > 1 and tokens[at - 1].is_any(_UNIT) and tokens[at - 2].is_any(_ARTICLE)
    if is_led and not (tokens[at].is_any(_UNIT) or str(tokens[at - 1].senses[0].value).endswith("s")):
        return [*tokens[: at - 1], _one_at(tokens[at - 1]), *tokens[at - 1 :]]  # “a week old”
    before, year = tokens[at - 1], tokens[at]
    is_unit = any(sense.kind == "unit" for sense in year.senses)
    if before.is_any(_COMMA) and at > 1 and not is_unit:
        before = tokens[at - 2]  # “Zosia, roczek”
    led = is_unit and not any(token.is_any(_LEADS) for token in tokens)
    several = any(sense.kind == "unit" and sense.value != "year" for sense in year.senses)
    if year.is_any(_PLAIN_ADJECTIVE):
        return tokens  # “she was old then”
    if led or several or not (before.is_any(_ARTICLE_OR_WAS) or before.senses[0].kind == "person"):
        return tokens
    return [*tokens[:at], _one_at(year), *tokens[at:]]


def _one_at(token: Token) -> Token:
    return Token((Sense("day", (1, 1)),), token.start, token.start)


_YEARS_OLD = frozenset(("years_old",))
_UNIT, _ARTICLE = frozenset(("unit",)), frozenset(("noise",))
_COMMA = frozenset(("comma",))
_LEADS = frozenset(("was", "aged", "at_years"))
_PLAIN_ADJECTIVE = frozenset(("numbered",))
"""What may lead a number of anything, as “old” may, says no unit of its own."""
_ARTICLE_OR_WAS = frozenset(("noise", "was", "at_years"))

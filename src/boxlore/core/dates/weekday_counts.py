"""The how-manieth weekday of a month where the month is named before it: “lokakuun toisena lauantaina 1937”,
“pirmąjį birželio sekmadienį 1938”, “January last Sunday 1938”."""

from boxlore.core.dates.lexicon import ANY_LANGUAGE, DAY_AS_AN_ORDER, MONTH_WITHIN_A_COUNT, Sense

_MOST = 5


def counts_weekdays(senses: list[Sense], at: int, languages: int) -> bool:
    """Whether the ordinal before the weekday at a place counts the weekdays of a month that is named: it is a word (a
    figure is the day, “kesäkuun 5. sunnuntaina”) which stands directly before it, or before its month in some
    languages. In a language that says the day by the same word, only what can be no day."""
    before = at - 1
    here = languages & senses[at].languages
    if senses[before].kind == "month":
        before -= 1
        if senses[before].kind == "ordinal" and here & ~MONTH_WITHIN_A_COUNT:
            return False
    if before < 0 or senses[before].kind == "last":
        return before >= 0
    order = senses[before]
    told_by_a_word = order.kind == "ordinal" and order.languages != ANY_LANGUAGE
    return told_by_a_word and int(str(order.value)) <= _MOST and bool(here & ~DAY_AS_AN_ORDER)

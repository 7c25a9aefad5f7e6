"""How it is told that two pictures belong together. How far apart they may be is common practice, no source; the words are
ours, from what is said in each language."""

import re

from boxlore.core.evidence.even_years import YEAR, days
from boxlore.core.statements import Sure

APART: tuple[tuple[int, Sure, str], ...] = (
    (0, Sure.SURE,
     "same day|same morning|same afternoon|same evening|same night|same occasion|same moment|am selben tag|am gleichen tag|"
     "samal päeval|sama päev|samana päivänä|samma dag|samme dag|dezelfde dag|même jour|mismo día|stesso giorno|mesmo dia|"
     "в тот же день|tego samego dnia|tajā pašā dienā|tą pačią dieną|ten samý den|stejný den"),
    (days(3), Sure.LIKELY, "same weekend|samal nädalavahetusel|am selben wochenende"),
    (days(7), Sure.LIKELY, "same week|same trip|same outing|same sitting|samal nädalal|in derselben woche"),
    (days(31), Sure.LIKELY, "same month|same holiday|same holidays|samal kuul|im selben monat|taken with|taken together with"),
    (days(100), Sure.LIKELY,
     "same summer|same winter|same spring|same autumn|samal suvel|samal talvel|im selben sommer|im selben winter"),
    (YEAR - 1, Sure.LIKELY, "same year|samal aastal|im selben jahr|samma år|samme år|samana vuonna|même année|mismo año"),
    (YEAR, Sure.GUESS, "same sheet|same contact sheet|same strip|samal kontaktlehel"),
    (2 * YEAR, Sure.GUESS, "same film|same roll|same roll of film|same camera film|samal filmil|samalt filmilt|derselbe film|"
     "same envelope|same packet|same wallet|samas ümbrikus"),
    (10 * YEAR, Sure.GUESS, "same page|same album page|samal leheküljel|samal albumilehel"),
)  # fmt: skip
"""How many days two pictures may lie apart, how sure that is, and the words."""

ONE_BEFORE = re.compile(
    r"\b(?:the one before|the previous (?:one|picture|photo|photograph)|the last one|eelmine|eelmisega|das vorige|dem vorigen)\b",
    re.IGNORECASE,
)
"""The picture with the number before."""

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
    (0, Sure.LIKELY,
     "copy of|another copy of|print of|another print of|enlargement of|same picture as|same photograph as|same photo as|"
     "same shot as|kopie von|abzug von|koopia|copie de|tirage de|copia de|copia di|kopio|kopia av|kopi af|kopi av"),
    (days(3), Sure.LIKELY, "same party|same wedding|same do|same visit|samal peol|auf demselben fest|même fête|misma fiesta"),
    (days(3), Sure.LIKELY, "same weekend|samal nädalavahetusel|am selben wochenende"),
    (days(7), Sure.LIKELY, "same week|same trip|same outing|same sitting|samal nädalal|in derselben woche"),
    (days(31), Sure.LIKELY, "same month|same holiday|same holidays|samal kuul|im selben monat|taken with|taken together with|"
     "taken along with|goes with|belongs with|aufgenommen mit|zusammen mit|koos|ensemble avec|prise avec|junto con|insieme a"),
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

PICTURE = re.compile(
    r"(?<![\w-])(?:(?:picture|pic|photo|photograph|snap|snapshot|print|image|card|postcard|"
    r"bild\w{0,2}|foto\w{0,5}|aufnahme|billede\w?|pilt|pildi\w{0,3}|pilti|ülesvõt\w+|kuva\w{0,3}|valokuva\w{0,3}|"
    r"cliché|carte|imagen|immagine|imagem|фото\w{0,8}|снимо?к\w{0,3}|карточк\w{1,2}|zdjęci\w{1,3}|fotografi\w{1,3}|attēl\w{0,3}|"
    r"nuotrauk\w{1,3}|sním\w{2,4}|obráz\w{2,4})\s+)?"
    r"(?:(?:numbers?|number|no|nr|num|numero|número|numéro|n|nummer|numm?er\w{0,2}|numbri\w{0,2}|номер\w{0,2}|nro|č|čís\w{0,3})\b\.?\s*|[#№]\s*|n°\s*|nº\s*)?"
    r"(?P<number>\d{1,6})(?![\w/°]|[.,:-]\d)",
    re.IGNORECASE,
)
"""How another picture is called by its number alone, with the words of pictures and numbers in each language that may
stand before it (`number 6`, `Bild 7`, `pildiga 7`, `12`); what stands in none of these is only a number."""

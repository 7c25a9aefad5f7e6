"""What is told of somebody in a picture beside an age: how old whoever is so can be, or what had happened and what had
not. The years are common practice, no source; the words are ours, from what is said in each language."""

from typing import NamedTuple

from boxlore.core.evidence.even_years import YEAR


class State(NamedTuple):
    """Of whoever is so, a picture is `least` to `most` days after the day `of`: their birth, wedding, death, the death
    of the one they were married to (`widowed`), or the births of all children but the one who is shown (`others`)."""

    ways: str
    of: str
    least: int | None
    most: int | None


STATES: tuple[State, ...] = (
    State(
        "not yet walking|could not walk yet|couldn't walk yet|not walking yet|still crawling|babe in arms|baby in arms|newborn|new-born|"
        "just born|a few weeks old|a few days old|a few months old|some months old|neugeboren|konnte noch nicht laufen|"
        "ei kõndinud veel|sülelaps|vastsündinu|sylilapsi|vastasyntynyt|nyfödd|nyfødt|nouveau-né|recién nacid[oa]|neonat[oa]",
        "birth", 0, 2 * YEAR,
    ),
    State("not (?:yet |even )?(?:a|one) year old|under a year old|not yet one|noch kein jahr alt|noch nicht ein jahr alt|polnud veel aastane|"
          "pas encore un an|no tenía un año|inte ett år än", "birth", 0, 2 * YEAR),
    State("in nappies|in diapers|noch in windeln|mähkmetes", "birth", 0, 4 * YEAR),
    State("toddler|toddling|learning to walk|just walking|kleinkind|väikelaps", "birth", 0, 5 * YEAR),
    State(
        "first year at school|first term at school|just started school|esimene aasta koolis|im ersten schuljahr", "birth", 3 * YEAR, 11 * YEAR
    ),
    State("short trousers|short pants|knickerbockers|pinafore|pinafores|kurzen hosen|lühikestes pükstes", "birth", YEAR, 18 * YEAR),
    State("teenager|in (?:his|her) teens|still a schoolboy|still a schoolgirl|still at school|backfisch|teismeline", "birth", 4 * YEAR, 22 * YEAR),
    State("a widow|a widower|widowed|witwe|witwer|lesk|leskena|änka|enke|veuve|veuf|viuda|viudo|vedova|vedovo|wdowa|wdowiec|вдова|вдовец",
          "widowed", 0, None),
    State("not yet married|wasn't married yet|was not married yet|still single|still unmarried|before (?:she|he) was married|noch ledig|"
          "noch nicht verheiratet|veel vallaline|polnud veel abielus", "wedding", None, 0),
    State("newly married|newlyweds?|newly wed|just married|frisch verheiratet|värskelt abiellunud|jeunes mariés|recién casad[oa]s?|"
          "nygifta?|sposi novelli|recem-casad[oa]s?|pas getrouwd|vastanaineet|новобрачные|nowożency|novomanzele",
          "wedding", 0, 3 * YEAR),
    State("died within the year|died within a year|died within months|died soon after|died shortly after|died a few months later|"
          "died the same year|died not long after|starb kurz darauf|suri varsti pärast|suri samal aastal", "death", -2 * YEAR, 0),
    State(r"(?:(?<=['’]s )|(?:his|her) )(?:very )?last (?:christmas|birthday|easter|summer|winter|spring|autumn)(?! (?:before|in|at|on|of)(?!\w))|"
          "(?:sein|ihr)(?:e|en|em)? letzter? (?:weihnachten|geburtstag|sommer|winter)|(?:tema|oma) (?:viimased jõulud|viimane (?:suvi|talv|sünnipäev))|"
          "son dernier (?:noël|été|hiver|anniversaire)", "death", -YEAR, 0),
    State("only (?:the )?one child|only the one|before the others were born|only had the one|noch das einzige kind|ainult üks laps",
          "others", None, 0),
)  # fmt: skip

MARRIED_FOR: tuple[tuple[str, str], ...] = (
    (r"(?:had |have )?been married (?:for )?(?P<count>\w+ years?)", "{count} after {name} married"),
    (r"married (?P<count>\w+ years)", "{count} after {name} married"),
    (r"(?P<count>\w+) jahre verheiratet", "{count} jahre nach {name}s hochzeit"),
    (r"(?P<count>\w+) aastat abielus", "{count} aastat pärast seda kui {name} abiellus"),
)
"""How it is told that two have been married so long, and the same as a time after a wedding."""

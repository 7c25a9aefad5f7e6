"""“The following summer after the wedding” is the next one after it, so that the first word adds nothing; and languages
that tell it the other way about: `häitä edeltävänä kesänä`, “the summer preceding the wedding”.
"""

from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import Sense

_NEXT = frozenset(
    "next following nächsten nächste nächster nächstes folgenden järgmisel järgmise järgmine nästa næste neste "
    "volgende seuraavana следующее следующую следующий следующим następnego następne następną nākamajā nākamo kitą "
    "příští následující próximo próxima siguiente prossimo prossima seguinte prochain prochaine".split()
)
_BESIDE = {
    word: side
    for side, words in (
        ("before", "edeltävänä edeltävä edeltäneenä edeltänyt eelnenud eelneval eelnev"),
        ("after", "seuraavana seuraava seuranneena seurannut järgnenud järgneval järgnev"),
    )
    for word in words.split()
}
_FOLLOWING = ("next", "perhaps")
"""Values of a word for “after” that is one for the next: “the following”."""
_NAMED = frozenset(("season", "feast", "month", "weekday", "unit"))
_AFTER = frozenset(("after",))


def beside_an_event(tokens: list[Token], words: str) -> list[Token]:
    """The tokens without a word for the next one, where what it is after is told behind it; and with the side before
    its event, where it stands behind."""
    for at in range(len(tokens) - 1):
        told = words[tokens[at].start : tokens[at].end].casefold()
        named = tokens[at + 1].is_any(_NAMED)
        is_next = told in _NEXT or any(sense.value in _FOLLOWING for sense in tokens[at].senses)
        if named and is_next and at + 2 < len(tokens) and tokens[at + 2].is_any(_AFTER):
            return [*tokens[:at], *tokens[at + 1 :]]
        if named and told in _BESIDE and at and tokens[at - 1].senses[0].kind == "event":
            side = Token((Sense(_BESIDE[told]),), tokens[at].start, tokens[at].end)
            return [*tokens[: at - 1], tokens[at + 1], side, tokens[at - 1], *tokens[at + 2 :]]
    return tokens

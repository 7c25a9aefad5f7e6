"""Whether “in front of” and “behind” tell of a thing, and so where somebody was: `in front of the Martins' house`.

thing = {article / whose / how} noun ["of" whose]        ; no kin, no kind of people; large in German only
"""

from collections.abc import Sequence

from boxlore.core.people.names.tokens import token_of
from boxlore.core.people.who_is_where import position_words_table as table
from boxlore.core.people.who_is_where.kin_words import relation
from boxlore.core.people.who_is_where.small_words_table import ARTICLES, GERMAN_ARTICLES, OF, SIDE_OF
from boxlore.core.people.who_is_where.tokens import Element


def is_before_a_thing(further: Sequence[Element]) -> bool:
    """Whether a thing is told, and nobody: a small word that is no kin and no kind of people, or in German a noun
    behind an article; before it an article, whose it is, small words of how it is; behind it `of` and whose it is."""
    ends = next((at for at, piece in enumerate(further) if piece.kind not in ("word", "my", "of")), len(further))
    told = further[:ends]
    led = next((at for at, piece in enumerate(told) if not _leads_to_a_thing(piece, told[at + 1 :])), len(told))
    if led == len(told):
        return False
    thing, behind = told[led], told[led + 1 :]
    is_noun = thing.is_large and led > 0 and told[led - 1].plain in GERMAN_ARTICLES
    if thing.is_large and (not is_noun or token_of(thing.text).is_given):
        return False
    is_somebody = bool(relation(thing)) or (thing.plain in table.NOUNS and table.NOUNS[thing.plain] != "thing")
    if is_somebody or (not led and thing.plain.endswith("ing")):
        return False
    named = next((at for at, piece in enumerate(behind) if piece.is_large), 0 if not behind else len(behind))
    return not behind or named == len(behind) or (named > 0 and behind[named - 1].text.islower())


def _leads_to_a_thing(piece: Element, behind: Sequence[Element]) -> bool:
    if piece.text in _APOSTROPHES:
        return True
    is_whose = piece.kind == "my" or piece.is_genitive
    ends = next((at for at, word in enumerate(behind) if word.text.islower()), len(behind))
    is_whose = is_whose or any(word.is_genitive for word in behind[:ends])  # `St Mary's church`
    is_whose = is_whose or [following.text in _APOSTROPHES for following in behind[:1]] == [True]  # `the Martins'`
    says_how = piece.plain in table.BEFORE_A_NAME and [word.text.islower() for word in behind[:1]] == [True]
    return is_whose or says_how or piece.kind == "of" or piece.plain in ARTICLES | SIDE_OF | OF


_APOSTROPHES = ("'", "’")

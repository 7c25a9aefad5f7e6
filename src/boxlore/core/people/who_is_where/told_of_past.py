"""Whether a story tells of somebody what was, or what is now, and so of somebody elsewhere than on the picture.

Rule kept: only words of the clause say that: `Jaan had lent it`, `Jaan remembers the dog`. Where none of them is known
the clause is a caption (`Jaan with the dog`, `Jaan mängib lõõtsa`), and whom it names is taken to be seen: a scan is
closed once too often, not too seldom.

    in the clause   English verbs of the past, and of what somebody knows or says now
    beside a name   verbs of other languages, which may be other words elsewhere (`war`, `tuli`), and endings
    in two words    hat … gebaut, a mangé, ha mangiato, has told

Behind `from`, `by` or `for`, and where something is theirs (`Jaan's dog`), it is not they who are seen either. The
forms are those of school grammars, from memory. Where an ending is of nouns too (Estonian, Finnish) common verbs are
known alone.
"""

import re

_IN_THE_CLAUSE = frozenset(
    "had was were did went came fell gave lent sold bought brought built made took told said sent married died wrote "
    "drove ran grew knew taught sang won hid broke stole ate drank drew flew rode slept spent spoke swore woke "
    "fought caught thought sought swam began beat bent bit blew crept dug fled flung forgot froze rose shook shot shut "
    "stuck struck swept threw wept wound remembers knows lives owns thinks believes says".split()
)
_BESIDE = frozenset(
    # English words that are others too
    "left lost found kept paid hurt "
    # German, Dutch
    "hatte hatten war waren wurde wurden ging gingen kam kamen fiel gab nahm sah fuhr lief blieb trug fand schrieb "
    "starb schlief sass saß rief zog verlor gewann brachte wusste wohnt lebt weiss weiß erinnert "
    "werd werden kwam gaf bleef vond schreef stierf woont "
    # Danish, Norwegian, Swedish
    "hade havde hadde var blev ble gick gikk gik kom fick fikk fik gav tok skrev døde minns husker "
    # French, Italian, Spanish, Portuguese
    "était étaient eut vint tomba habite era erano ebbe fu fece venne andò vive eran fue hizo tuvo fez "
    "veio teve foi "
    # Estonian
    "oli olid tegi läks tuli sai käis sündis elas andis ostis ehitas kukkus õppis töötas rääkis ütles jäi suri kinkis "
    "laenas tõi jooksis kirjutas õpetas armastas elab mäletab teab "
    # Finnish
    "olivat teki meni antoi osti rakensi putosi opetti kertoi kuoli syntyi muutti lähti kävi asui lainasi asuu "
    "muistaa tietää "
    # Polish, Czech, Russian, Latvian, Lithuanian
    "pamięta mieszka bydlí pamatuje помнит живет живёт знает bija nomira buvo mirė dzīvo gyvena".split()
)
_ENDINGS = re.compile(
    r"[^\W\d_]{3,}(?:ed|ait|aient|ava|eva|iva|avano|evano|ivano|aba|aban|ade|sime)|"
    r"[а-яёіїє]{2,}(?:л|ла|ло|ли|лся|лась|лось|лись)|[^\W\d_]{2,}(?:ł|ła|ło|ły)"
)
_GERMAN_ENDINGS = re.compile(r"[^\W\d_]{2,}(?<!s)ten?")
_GERMAN = frozenset(
    "der die das den dem des ein eine einen einem einer und mit im am auf sich damals immer nicht".split()
)
"""One of these says that the clause is German: French `porte` is of now."""
_NO_PAST = frozenset(
    "portrait attrait souhait heute bitte rechte aged called dressed seated "
    "covered wrapped perched crowned armed surrounded photographed pictured "
    "школа стол стул кукла скала футбол угол село одеяло зеркало".split()
)
"""What ends so and is no past, and what somebody seen is (`Jaan dressed as a shepherd`)."""
_IN_TWO = re.compile(
    r"\b(?:hat|haben|heeft)\b.*\b(?:[^\W\d_]{0,5}ge|be|ver|er|zer|ent)[^\W\d_]{2,}(?:t|en)\W*$|"
    r"\b(?:a|ont)\s+(?!café)[^\W\d_]{2,}ée?s?\b|\b(?:ha|hanno)\s+[^\W\d_]{2,}[aiu]to\b|"
    r"\b(?:ha|han)\s+[^\W\d_]{2,}[ai]do\b|\b(?:has|have)\s+(?:[^\W\d_]{2,}ed|been|had|got|told|said)\b|"
    r"\b(?:on|oli)\s+[^\W\d_]{2,}n[uy][dt]\b",
    re.IGNORECASE,
)
_WORD = re.compile(r"[^\W\d_]+")
_PARTS = re.compile(
    r"[,;:–—()]|\b(?:because|when|while|that|who|which|weil|als|dass|parce|que|qui|quand|che|perché|quando|kui|sest|et|"
    r"että|kun|koska|bo|gdy|kiedy|protože|když|что|когда|потому)\b",
    re.IGNORECASE,
)
"""What parts a sentence into clauses. What parts too much closes a scan, no more."""
_BESIDE_BEHIND = 3
"""Words behind a name among which a verb is its own (`Mia and Con rowed`); before it, one."""
_OWNER = re.compile(r"['’]s?(?!\w)")
_AWAY = re.compile(
    r"\b(?:by|from|for|to|of|ask|see|von|für|bei|para|pour|par|chez|per|dla|od|для|от|från|fra|van|voor|till|til)\s+"
    r"(?:[^\W\d_]{2,}\.?\s+)?$",
    re.IGNORECASE,
)
"""Behind these stands who gave, has, is asked or is told of; a title or a word of kin may stand between."""


def is_elsewhere(sentence: str, start: int, end: int) -> bool:
    """Whether the clause says no more of whom it names from `start` to `end` than what was, or is theirs now."""
    name = sentence[start:end]
    before = _PARTS.split(sentence[:start])[-1]
    behind = _PARTS.split(sentence[end:])[0]
    if _AWAY.search(before) or _OWNER.match(behind) or _OWNER.search(name):
        return True
    around = [_WORD.findall(part) for part in (before, behind)]
    if around[1][:1] and around[1][0].endswith("ing"):
        return False  # `Jaan holding the eel he caught`
    if not _IN_THE_CLAUSE.isdisjoint(around[0] + around[1]) or _IN_TWO.search(f"{before} {behind}"):
        return True
    endings = [_ENDINGS, *([] if _GERMAN.isdisjoint(around[0] + around[1]) else [_GERMAN_ENDINGS])]
    beside = set(around[0][-1:] + around[1][:_BESIDE_BEHIND]) - _NO_PAST
    return any(
        word in _BESIDE or (word.islower() and any(ending.fullmatch(word) for ending in endings)) for word in beside
    )

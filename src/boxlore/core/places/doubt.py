"""Words of a told place that are of no place: `I think`, `vielleicht`, `I don't know` (common practice, no source).

told = [not known [","]] [doubt] place [[","] doubt]          ; Dunedin, I think     ehk Tartus
     / not known                                             ; Je ne sais pas       ei tea
"""

import re

_DOUBT = (
    "prob(?:ably|\\.)?|poss(?:ibly|\\.)?|perhaps|maybe|i think|i believe|i guess|i suppose|vielleicht|"
    "wahrscheinlich|vermutlich|wohl|ich glaube|glaube ich|ich denke|denke ich|võib-olla|vist|ilmselt|arvatavasti|"
    "ehk|ma arvan|peut-être|sans doute|probablement|je crois|je pense|quizás?|tal vez|creo(?: que)?|"
    "probablemente|forse|probabilmente|credo(?: che)?|mi pare|talvez|acho(?: que)?|provavelmente|misschien|"
    "waarschijnlijk|denk ik|ik denk|måske|tror jeg|jeg tror|kanskje|trolig|kanske|troligen|tror jag|jag tror|"
    "ehkä|luultavasti|luulen|возможно|наверное|наверно|кажется|может быть|вероятно|думаю|może|chyba|"
    "prawdopodobnie|myślę|varbūt|laikam|domāju|galbūt|turbūt|manau|možná|snad|asi|myslím"
)
_FIRST = re.compile(rf"^(?:{_DOUBT})[\s,]+(?=\S)", re.IGNORECASE)
_LAST = re.compile(rf"[\s,(]+(?:{_DOUBT})\)?[.!]?$", re.IGNORECASE)
_NOT_KNOWN = re.compile(
    r"^(?:(?:i|we)\s+)?(?:(?:really\s+)?(?:don['’]?t|do not|can['’]?t|cannot)\s+(?:know|remember|recall|say|tell)|"
    r"have no idea|no idea|not sure|haven['’]t a clue|nobody knows|no one knows|unknown|"
    r"je ne (?:sais|me souviens)(?: plus| pas)?|aucune idée|inconnu|(?:das )?(?:weiß|weiss) (?:ich )?nicht|"
    r"ich (?:weiß|weiss)(?: es| das)? nicht|keine ahnung|unbekannt|(?:ma )?ei (?:tea|mäleta)|pole aimugi?|teadmata|"
    r"no (?:lo )?(?:sé|recuerdo)|ni idea|desconocido|non (?:lo )?(?:so|ricordo)|sconosciuto|não (?:sei|me lembro)|"
    r"desconhecido|(?:ik )?weet (?:ik )?(?:het )?niet|geen idee|onbekend|(?:jeg |det )?ved (?:jeg )?ikke|"
    r"(?:jeg |det )?vet (?:jeg )?ikke|aner ikke|ukendt|ukjent|(?:jag |det )?vet (?:jag )?(?:inte|ej)|ingen aning|okänd|"
    r"(?:minä )?en (?:tiedä|muista)|tuntematon|(?:я )?не (?:знаю|помню)|неизвестно|nie (?:wiem|pamiętam)|nieznane|"
    r"nezinu|neatceros|nežinau|neprisimenu|nevím|nepamatuji(?: se)?|kāore au e mōhio)\b[\s,;.–-]*"
    r"(?:but |aga |aber |mais )?",
    re.IGNORECASE,
)


def without_doubt(words: str) -> tuple[str, bool]:
    """The words of the place alone, and whether they are in doubt; no words where no more is told than that it is not
    known."""
    left = words
    if unknown := _NOT_KNOWN.match(words):
        rest = words[unknown.end() :]
        left = rest if any(token[:1].isupper() for token in rest.split()) else ""
    left = _LAST.sub("", _FIRST.sub("", left)).strip()
    return left, left != words

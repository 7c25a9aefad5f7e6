"""Every language that the reader of dates knows; another one is its file and its name here."""

from boxlore.core.dates.languages.czech import CZECH
from boxlore.core.dates.languages.danish import DANISH
from boxlore.core.dates.languages.dutch import DUTCH
from boxlore.core.dates.languages.english import ENGLISH
from boxlore.core.dates.languages.estonian import ESTONIAN
from boxlore.core.dates.languages.finnish import FINNISH
from boxlore.core.dates.languages.french import FRENCH
from boxlore.core.dates.languages.german import GERMAN
from boxlore.core.dates.languages.hungarian import HUNGARIAN
from boxlore.core.dates.languages.italian import ITALIAN
from boxlore.core.dates.languages.language import Language
from boxlore.core.dates.languages.latvian import LATVIAN
from boxlore.core.dates.languages.lithuanian import LITHUANIAN
from boxlore.core.dates.languages.maori import MAORI
from boxlore.core.dates.languages.norwegian import NORWEGIAN
from boxlore.core.dates.languages.polish import POLISH
from boxlore.core.dates.languages.portuguese import PORTUGUESE
from boxlore.core.dates.languages.russian import RUSSIAN
from boxlore.core.dates.languages.spanish import SPANISH
from boxlore.core.dates.languages.swedish import SWEDISH

LANGUAGES: tuple[Language, ...] = (
    ENGLISH, ESTONIAN, GERMAN, FRENCH, SPANISH, ITALIAN, PORTUGUESE, DUTCH, DANISH, SWEDISH, NORWEGIAN, FINNISH, RUSSIAN,
    POLISH, LATVIAN, LITHUANIAN, CZECH, HUNGARIAN, MAORI,
)  # fmt: skip

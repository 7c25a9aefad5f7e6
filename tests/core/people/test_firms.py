"""Which names are a studio's or a firm's. The names are invented; common practice, no source."""

from tests.every_row import every_row

from boxlore.core.people.firms import is_firm
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.sort_form import sort_form

FIRMS = [
    "Atelier Lind", "Lind & Sons", "Lind and Sons", "Foto-Studio Berg", "Photographie Dupont", "Hargreaves Ltd",
    "Pell & Co.", "Pell and Company", "Fotohaus Brandt GmbH", "Berg AG", "Lind & Sons, Dunedin",
    "Studio Harcastle, Dunedin", "Rusk Bros.",
    "Dupont et Fils", "Krüger & Söhne", "Ателье Орлов", "Фотография Иванова", "Valokuvaamo Lahti",
    "Päevapildistus Kask", "Kask OÜ", "Rourke Studios", "Foto Kask", "Oakes Photographic Company",
    "Morel & Cie", "Romero e Hijos", "Zealandia Portraits", "Thames Views",
]  # fmt: skip
PEOPLE = [
    "Fotograf Otto Lind", "Photographe Dupont", "Fotograaf Kask", "Anna Lind", "Studio", "Ag Lind", "Anna and sons",
    "Sons", "J. As", "Reg Mason", "Fotini Pappas",
]  # fmt: skip


@every_row("words", FIRMS)
def test_a_firm_has_no_parts_and_is_listed_as_it_calls_itself(words: str) -> None:
    assert is_firm(words)
    assert read_name(words) == NameParts()
    assert sort_form(read_name(words), words) == words


@every_row("words", PEOPLE)
def test_who_is_no_firm(words: str) -> None:
    assert not is_firm(words)

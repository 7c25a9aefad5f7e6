"""Forms of names of places as they stand in sentences (school grammars of the languages, from memory)."""

from tests.every_row import every_row

from boxlore.core.places.inflections import uninflected
from boxlore.core.places.taking_apart import fold_place

FORMS = [
    ("Tallinnas", "Tallinn", "EE"), ("Narva-Jõesuus", "Narva-Jõesuu", "EE"), ("Rakverest", "Rakvere", "EE"),
    ("Haapsalus", "Haapsalu", "EE"), ("Peterburis", "Peterburi", "EE"),
    ("Tampereella", "Tampere", "FI"), ("Helsingissä", "Helsinki", "FI"), ("Lahdessa", "Lahti", "FI"),
    ("Hangossa", "Hanko", "FI"), ("Rovaniemellä", "Rovaniemi", "FI"), ("Terijoella", "Terijoki", "FI"),
    ("Turussa", "Turku", "FI"), ("Vaasaan", "Vaasa", "FI"),
    ("Ревеле", "Ревель", "EE"), ("Ревелем", "Ревель", "EE"), ("Юрьеве", "Юрьев", "EE"), ("Нарвой", "Нарва", "EE"),
    ("Казани", "Казань", "RU"), ("Нижнем Новгороде", "Нижний Новгород", "RU"), ("Царском Селе", "Царское Село", "RU"),
    ("Старой Руссе", "Старая Русса", "RU"), ("Иркутске", "Иркутск", "RU"), ("Львові", "Львів", "UA"),
    ("Krakowie", "Kraków", "PL"), ("Wilnem", "Wilno", "LT"), ("Poznaniu", "Poznań", "PL"),
    ("Zakopanem", "Zakopane", "PL"), ("Katowicach", "Katowice", "PL"), ("Nowym Sączu", "Nowy Sącz", "PL"),
    ("Praze", "Praha", "CZ"), ("Plzni", "Plzeň", "CZ"), ("Táboře", "Tábor", "CZ"), ("Liberci", "Liberec", "CZ"),
    ("Hradci Králové", "Hradec Králové", "CZ"), ("Karlových Varech", "Karlovy Vary", "CZ"),
    ("Kutné Hoře", "Kutná Hora", "CZ"), ("Košicích", "Košice", "SK"),
    ("Zagrebu", "Zagreb", "HR"), ("Sarajevu", "Sarajevo", "BA"), ("Rijeci", "Rijeka", "HR"),
    ("Szegedtől", "Szeged", "HU"), ("Kolozsvárott", "Kolozsvár", "RO"), ("Kassán", "Kassa", "SK"),
    ("Daugavpilī", "Daugavpils", "LV"), ("Tukumā", "Tukums", "LV"), ("Kaune", "Kaunas", "LT"),
    ("Vilniuje", "Vilnius", "LT"), ("Šiauliuose", "Šiauliai", "LT"), ("Klaipėdoje", "Klaipėda", "LT"),
    ("Selfossi", "Selfoss", "IS"), ("Ísafirði", "Ísafjörður", "IS"), ("Egilsstöðum", "Egilsstaðir", "IS"),
    ("İstanbul'da", "İstanbul", "TR"), ("Θεσσαλονίκης", "Θεσσαλονίκη", "GR"), ("Revals", "Reval", "DE"),
]  # fmt: skip


@every_row(("told", "name", "land"), FORMS)
def test_the_name_of_a_form(told: str, name: str, land: str) -> None:
    assert land in uninflected(told)[fold_place(name)]


def test_no_form_is_the_told_name_nor_very_short() -> None:
    assert "tartu" not in uninflected("Tartu")
    assert all(len(form) >= 3 for told in ("Ahja", "Ufa", "Tartus") for form in uninflected(told))
    assert not uninflected("one two three four five") and not uninflected("")

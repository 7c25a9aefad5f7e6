"""Fond forms that nobody told: by the rules of languages, and by tables.

The forms are from memory (common practice, no source), English ones that the rules do not make from the package
`nicknames` (Apache License 2.0); words that only look like fond forms are from `stopwordsiso` (MIT licence),
WordNet 3.0 and GeoNames.
"""

from importlib.util import find_spec
from pathlib import Path

import pytest
from tests.core.people.names_in_text.test_search import finder, person
from tests.every_row import every_row
from tests.made_tables import check_table

from boxlore.core.people.names_in_text.fond_names import FondNames
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC, GREEK, LATIN

FOND = [
    ("Лукерья", "Луша Лушенька Лукеша Лукерьюшка"), ("Тимофей", "Тимоша Тима Тимошка Тимофейка Тимоху Timosha"),
    ("Глеб", "Глебушка Глебчик Глебушкой Glebushka"), ("Ростислав", "Ростик Слава Ростя"), ("Олег", "Олежка Олежкой"),
    ("Матвей", "Матвейка Мотя Матюша"), ("Софья", "Соня Сонечка Софьюшка"), ("Анастасия", "Настёна Стася Ася Настюша"),
    ("Grażyna", "Grażka Grażynka Grażunia"), ("Bogusława", "Bogusia Boguśka"), ("Wiesław", "Wiesiek Wiesio"),
    ("Ludmila", "Liduška Lída Lidka"), ("Věra", "Věruška"), ("Zdeněk", "Zdenda Zdenoušek"), ("Miroslav", "Mireček"),
    ("Ilona", "Ica Ili Ilka Ilonka Icuka"), ("Erzsébet", "Bözsi Zsóka Erzsi Böskének"), ("Gábor", "Gáborka Gabikával"),
    ("Jānis", "Jancis Jānītis Jancim"), ("Dzidra", "Dzidrīte"), ("Vytautas", "Vytukas"),
    ("Aleksander", "Sass Aleks Sassi"), ("Maimu", "Maimuke Maimukesega"), ("Antti", "Antsa"), ("Päivi", "Päivikki"),
    ("Christina", "Kirsty Chrissie Tina"), ("Philippa", "Pippa Pip Philly"), ("Bronwen", "Bron Bronny"),
    ("Gwyneth", "Gwyn Gwen Gwynnie"), ("Desmond", "Des Dessie Dessie’s"), ("Gareth", "Gaz Gazza"), ("Anna", "Anuška"),
    ("Hannelore", "Hanne"), ("Jürgen", "Jürgi Jürg"), ("Maria da Graça", "Gracinha"), ("Lucian", "Lulu"),
    ("Elfriede", "Elfi Elfie"), ("Hannelore", "Lore Lores"), ("Gertrud", "Trudi Trudl Trude"), ("Theresia", "Resi"),
    ("Sabine", "Bine Bini"), ("Mathilde", "Tilde Tilda"), ("Edeltraud", "Traudl Traudi"), ("Ferdinand", "Nandl"),
    ("Marguerite", "Rita"), ("Etelka", "Etus"), ("Friederike", "Rieke"), ("Rhiannon", "Rhi"),
    ("Marguerite", "Margot Guite Guiguite Goton"), ("Pierre", "Pierrot"), ("Jacques", "Jacquot"), ("Odette", "Dette"),
    ("Françoise", "Fanchon"), ("Madeleine", "Madelon"), ("Jeanne", "Jeannette Jeanneton"), ("Antoine", "Toinou Toinon"),
    ("Simone", "Momone"), ("Ernst", "Ernstl Ernstls"), ("Kurt", "Kurtl"), ("Hendrik", "Henk"), ("Katharine", "Kitty"),
    ("May", "Maisie"), ("Wim", "Wimpie"), ("Bram", "Brammetje"), ("Jan", "Jantie"), ("Anna", "Andulka"),
    ("Imogen", "Imo Immy Imog"), ("Eevi", "Eevu"), ("Raivo", "Raiks"), ("Lembit", "Lemps"), ("Dieter", "Didi"),
    ("Hazel", "Haze Hazy"), ("Hans-Jürgen", "HaJü"), ("Luca", "Luchino Luchetto"), ("Cécile", "Cécilou"),
    ("Vera", "Verotška"), ("Vigdis", "Vigga"), ("Grant", "Garnt Grannt Grart Grnt"), ("Björn", "Bjön Björrn"),
    ("Ernst", "Enrst"), ("Õie", "Õiie"), ("Frank", "Franck Frnak"), ("Karel", "Karlík"), ("Johan", "Janne"),
    ("María José", "Marijó Majo MJ M.J."), ("María Isabel", "Maribel"),
    ("Juan José", "Juanjo"), ("Juan Manuel", "Juanma"), ("José María", "Josemari Josema"), ("María Luisa", "Marisa"),
    ("Luis Fernando", "Luisfer"), ("Σοφία", "Σοφούλα Σοφούλας"),
    ("Γιώργος", "Γιωργάκης Γιωργάκη"), ("Ελένη", "Ελενίτσα"),
    ("Siobhán", "Shivaun Chevonne"), ("Niamh", "Neeve"),
    ("Saoirse", "Seersha"), ("Róisín", "Rosheen"), ("Sinéad", "Shinade"),
]  # fmt: skip
NOBODY = [
    ("Derek", "Der Zug fuhr ab."), ("Kasia", "Kas sa nägid?"), ("Тамара", "Там стоит дом."), ("Tamara", "Thames"),
    ("Leida", "Leiden, Holland"), ("Maria", "Mama baked"), ("Holly", "Holy water"), ("Mart", "They left"),
    ("Martin", "Martina Brown"), ("Adelaide", "Adding to it"), ("Rufus", "Russia, 1914"), ("Ruth", "ruthka by the sea"),
    ("Christina", "christabel and"), ("Ro", "Ross Sea"), ("Hannelore", "the lore of the sea"), ("Gertrud", "rud"),
    ("Grant", "Grand Hotel"), ("Grant", "a garnt of land"), ("Ernst", "Erst kam der Regen."),
    ("Frank", "Flank of hill"), ("Pierre", "Dans le jardin un pierrot"), ("Kurt", "Kurz vor Weihnachten"),
    ("Hazel", "Hazy days of summer"), ("Hazel", "a haze over the hills"), ("Katharine", "Kateri mission"),
    ("Marco", "Mare calmo a Pesaro"), ("Theodore", "They went home"), ("Pierre", "The Pier at Deal"),
    ("Õie", "Iõe talu"), ("Grant", "Gantx"), ("Vera", "Vara"), ("Grant", "Brand"),
    ("Grace May", "The grammar school"), ("Siobhán", "Shaving foam"), ("Siobhán", "the shivaun"),
    ("Niamh", "Keeva Lind"),
    ("Σοφία", "Σοφό παιδί"), ("Pieter Jan", "He didn't, P.S. and R.S.A."), ("Dirk Evert", "HAVEN VAN DE STAD"),
]  # fmt: skip


def alone(name: str, words: str) -> bool:
    return bool(finder([person("x", given=name, family="Xylander")], []).hits(words))


@every_row(("name", "fond"), FOND)
def test_a_fond_form_is_a_question(name: str, fond: str) -> None:
    by = finder([person("x", given=name, family="Xylander")], [])
    assert [word for word in fond.split() if not (hits := by.hits(f"Meil oli {word} kodus")) or not hits[0].doubt] == []


@every_row(("name", "words"), NOBODY)
def test_what_only_looks_like_one(name: str, words: str) -> None:
    assert not alone(name, words)


def test_what_is_left_of_a_name_where_somebody_is_called_is_a_question() -> None:
    """Vocatives of Italian speech: common practice, no source."""
    by = finder([person("x", given="Fiorenzo", family="Xylander"), person("y", given="Luca", family="Ystad")], [])
    called = [
        [hit.people for hit in by.hits(words)] for words in ("«Fiore', vieni!»", "Lu’! gridava", "Fi' Lu", "'lu',")
    ]
    assert called == [[{"x"}], [{"y"}], [], []]


def test_other_scripts_have_none() -> None:
    assert FondNames([("gleb", LATIN), ("σοφια", GREEK)]).of("σοφκα", GREEK) == set()
    assert FondNames([("глеб", CYRILLIC)]).of("glebka", LATIN) == {"глеб"}


def test_the_tables_are_what_the_scripts_make() -> None:
    if find_spec("nicknames") is None or find_spec("stopwordsiso") is None:
        pytest.skip("nicknames and stopwordsiso are needed for making the tables only")
    here = Path(__file__).parent
    check_table(here.parent / "names" / "make_nicknames.py", "another release of nicknames")
    if Path("/usr/share/wordnet/data.noun").is_file():
        check_table(here / "make_small_words.py", "another release of a source")

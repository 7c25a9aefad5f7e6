"""Places told as one of two, or as not meant (common practice, no source)."""

from tests.every_row import every_row

from boxlore.core.places.alternatives import either_of, without_denied

EITHER = [
    ("Oamaru or Timaru", ("", "Oamaru", "Timaru")),
    ("either Oamaru or maybe Timaru", ("", "Oamaru", "Timaru")),
    ("the farm at Milton or Gore, Southland", ("the farm at", "Milton, Southland", "Gore, Southland")),
    ("Reval oder Dorpat", ("", "Reval", "Dorpat")),
    ("Narvas või Tallinnas", ("", "Narvas", "Tallinnas")),
    ("the shop or the wharf", None),
    ("Milton", None),
]


@every_row(("words", "pair"), EITHER)
def test_one_of_two_places(words: str, pair: tuple[str, str, str] | None) -> None:
    told = either_of(words)
    assert (told and (told.before, *told.places)) == pair


DENIED = [
    ("Christchurch not Dunedin", "Christchurch"),
    ("London, not the Ontario one", "London"),
    ("not Dunedin but Port Chalmers", "Port Chalmers"),
    ("not in Reval but in Dorpat", "Dorpat"),
    ("Milton (not Gore), Otago", "Milton, Otago"),
    ("nicht Reval sondern Dorpat", "Dorpat"),
    ("not far from Milton", "not far from Milton"),
    ("Königsberg (now Kaliningrad)", "Königsberg (now Kaliningrad)"),
    ("not Dunedin", ""),
]


@every_row(("words", "left"), DENIED)
def test_places_that_are_not_meant(words: str, left: str) -> None:
    assert without_denied(words) == left

"""The table of mountains, lakes and rivers: its boxes lie on the earth, and no name is there twice."""

import pycountry

from boxlore.core.places.features_table import FEATURES
from boxlore.core.places.taking_apart import fold_place


def test_boxes_and_countries() -> None:
    wrong = []
    for feature in FEATURES:
        south, west, north, east = feature.region.box
        on_earth = -90 <= south < north <= 90 and -180 <= west < east <= 180
        if not (on_earth and all(pycountry.countries.get(alpha_2=code) for code in feature.region.now)):
            wrong.append(feature.name)
    assert wrong == []


def test_no_name_means_two() -> None:
    names = [
        fold_place(name) for feature in FEATURES for name in dict.fromkeys(map(fold_place, feature.region.aliases))
    ]
    assert sorted(name for name in set(names) if names.count(name) > 1) == []

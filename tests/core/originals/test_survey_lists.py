"""Lists from a survey (common practice, no source; an inch is 25.4 mm)."""

from tests.every_row import every_row

from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.survey_lists import SLEEVES, Surveyed, scan_order, shop_list, sleeve_for, work_list


def finding(rule: str, message: str = "Why.") -> Finding:
    return Finding(rule=rule, severity=Severity.ASK, message=message)


def item(number: str, *rules: str, **more: object) -> Surveyed:
    return Surveyed(number=number, findings=tuple(map(finding, rules)), **more)  # type: ignore[arg-type]  # fields of it


@every_row(
    ("size", "name"),
    [
        ((101.6, 152.4), "4 × 6 in"),
        ((152.4, 101.6), "4 × 6 in"),
        ((108, 165), "4¼ × 6½ in"),
        ((57, 100), "2½ × 4¼ in"),
        ((60.6, 100), "3½ × 5 in"),
        ((127, 177.8), "5 × 7 in"),
        ((300, 400), "made to measure, over 300 × 400 mm"),
        ((), "size not noted: measure first"),
    ],
)
def test_a_sleeve_is_larger_than_the_item(size: tuple[float, ...], name: str) -> None:
    assert sleeve_for(size) == name


def test_every_sleeve_is_larger_than_the_print_it_is_named_for() -> None:
    """The inches in its name, by definition of the inch, and a little more."""
    for name, wide, high in SLEEVES:
        first, second = name.removesuffix(" in").split(" × ")
        for words, millimetres in ((first, wide), (second, high)):
            inches = int(words.rstrip("¼½")) + {"¼": 0.25, "½": 0.5}.get(words[-1], 0)
            assert millimetres >= round(inches * 25.4, 1) or name == "2½ × 4¼ in"


def test_what_harms_comes_first_and_items_of_one_need_share_a_line() -> None:
    jobs = work_list([item("A", "scan.coarse", "housing.tape"), item("B", "housing.tape"), item("C", "hazard.mould")])
    assert [(job.what, job.count, job.items) for job in jobs] == [
        ("Leave it, keep it apart, and call", 1, ("C",)),
        ("Leave tape to a conservator", 2, ("A", "B")),
        ("Scan again", 1, ("A",)),
    ]


def test_sleeves_are_counted_by_size() -> None:
    size = (101.6, 152.4)
    jobs = shop_list(
        [
            item("A", size_mm=size),
            item("B", "housing.pvc", size_mm=size, enclosure="PVC pocket"),
            item("C", size_mm=size, enclosure="polyester sleeve"),
            item("D", "housing.tape", size_mm=size, enclosure="polyester sleeve"),
            item("E", kind="tintype", size_mm=size),
            item("F", enclosure="none"),
        ]
    )
    assert [(job.what, job.items) for job in jobs] == [
        ("Sleeves, 4 × 6 in", ("A", "B")),
        ("Sleeves, size not noted: measure first", ("F",)),
    ]


def test_the_shop_gets_what_is_not_scanned_and_no_hazard() -> None:
    orders = scan_order(
        [
            item("A", size_mm=(108, 165), kind="card", writing=True),
            item("B", sides=frozenset({"recto"})),
            item("C", "scan.coarse", sides=frozenset({"recto"}), size_mm=(101.6, 152.4)),
            item("D", "scan.no-verso", sides=frozenset({"recto"}), writing=True),
            item("E", "hazard.nitrate", kind="negative"),
            item("F", size_mm=(24, 36), kind="negative"),
        ]
    )
    rows = {one.number: (one.sides, one.ppi, one.pixels) for one in orders}
    assert rows == {
        "A": ("front and back", 600, "2551 × 3898"),
        "C": ("front", 600, "2400 × 3600"),
        "D": ("back", 600, ""),
        "F": ("front", 4000, "3780 × 5669"),
    }

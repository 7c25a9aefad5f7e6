"""Finding aids against the published Schematron of EAD3 1.1.1 (Society of American Archivists).

The lists of codes that it reads from files beside it are those of pycountry (ISO 639-2, ISO 3166-1, ISO 15924).
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

import pycountry
from lxml import etree
from tests.exports import published
from tests.exports.schematron import broken
from tests.exports.test_finding_aid import ARRANGED, E3, WHOLE, harbour, written

from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.tasks.archive.archive_settings import doubtful_codes


def listed(tag: str, attribute: str, values: Sequence[str]) -> etree._Element:
    root = etree.Element("list")
    for value in values:
        etree.SubElement(root, tag, {attribute: value})
    return root


CODES: dict[str, Any] = {
    "active-language-code-key": "iso639-2b",
    "language-code-lookup": [language.alpha_3 for language in pycountry.languages],
    "countrycodes": listed("iso_3166_entry", "alpha_2_code", [country.alpha_2 for country in pycountry.countries]),
    "scriptcodes": listed("iso_15924_entry", "alpha_4_code", [script.alpha_4 for script in pycountry.scripts]),
}


def faults(root: etree._Element) -> list[str]:
    return list(broken(published.folder() / "ead3" / "ead3.sch", root, CODES))


def whole() -> etree._Element:
    _, root = written([harbour(), *ARRANGED], replace(WHOLE, archive=replace(WHOLE.archive, agency="NZ-PCM")))
    return root


def test_a_finding_aid_keeps_every_rule_of_the_schematron() -> None:
    assert faults(whole()) == []


def attribute(path: str, name: str, value: str) -> Callable[[etree._Element], None]:
    def plant(root: etree._Element) -> None:
        found = root.find(f".//{E3}{path}")
        assert found is not None and found.get(name) is not None, path
        found.set(name, value)

    return plant


def another_dsc(root: etree._Element) -> None:
    dsc = root.find(f".//{E3}dsc")
    dsc.getparent().append(etree.Element(f"{E3}dsc"))


PLANTED = [
    ("agencycode", lambda root: setattr(root.find(f".//{E3}agencycode"), "text", "xx")),
    ("langcode", attribute("langmaterial/{*}language", "langcode", "xyz")),
    ("countrycode", attribute("maintenanceagency", "countrycode", "UK")),
    ("scriptcode", attribute("languagedeclaration/{*}script", "scriptcode", "Lat")),
    ("iso8601", attribute("fromdate", "standarddate", "1912-13")),
    ("otherlevel", attribute("c", "level", "otherlevel")),
    ("multiple <dsc>", another_dsc),
]
"""What a rule says where it is broken, and a fault that breaks it."""


def test_each_rule_is_heard_where_it_is_broken() -> None:
    root = whole()
    for _, plant in PLANTED:
        plant(root)
    found = faults(root)
    assert [said for said, _ in PLANTED if not any(said in words for words in found)] == []
    assert [words for words in found if not any(said in words for said, _ in PLANTED)] == []


AGENCIES = ("NZ-PCM", "EE-TLA/1", "OCLC-NPM", "xx", "NZ-", "NZ-PCM Museum")


def test_what_we_take_for_an_isil_is_what_the_schematron_takes_for_one() -> None:
    root = whole()
    described = root.find(f"{E3}archdesc")
    described.getparent().remove(described)  # no code of an agency stands in it, and each rule goes through it
    agency = root.find(f".//{E3}maintenanceagency")
    for at, code in enumerate(AGENCIES):
        agency.insert(at, etree.Element(f"{E3}agencycode", id=f"a{at}"))
        agency[at].text = code
    refused = {at for at in range(len(AGENCIES)) if any(f"'a{at}'" in words for words in faults(root))}
    ours = {
        at
        for at, code in enumerate(AGENCIES)
        if any("no ISIL" in found.message for found in doubtful_codes(Archive(agency=code)))
    }
    assert refused == ours == {3, 4, 5}

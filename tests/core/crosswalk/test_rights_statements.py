"""Rights statements by their addresses and labels (rightsstatements.org), licences by theirs."""

from boxlore.core.crosswalk.rights_statements import OF_RIGHTS, RIGHTS, rights_address, rights_label, rights_name

LICENCES = {
    "http://creativecommons.org/licenses/by/4.0/": "Creative Commons Attribution 4.0",
    "https://creativecommons.org/licenses/by-nc-sa/4.0": "Creative Commons Attribution-NonCommercial-ShareAlike 4.0",
    "https://creativecommons.org/licenses/by-nd/3.0/nz/deed.en": "Creative Commons Attribution-NoDerivatives 3.0 (NZ)",
    "http://creativecommons.org/publicdomain/zero/1.0/": "CC0 1.0 Universal (public domain)",
    "http://creativecommons.org/publicdomain/mark/1.0/": "Public Domain Mark 1.0",
}
"""The names on the deeds of creativecommons.org, from memory."""


def test_every_rights_statement_has_its_label() -> None:
    assert len(RIGHTS) == 12  # rightsstatements.org has twelve
    for name, label in RIGHTS.items():
        assert rights_label(f"{OF_RIGHTS}{name}/1.0/") == f"{label} ({OF_RIGHTS}{name}/1.0/)"
        assert rights_address(label) == f"{OF_RIGHTS}{name}/1.0/"
    assert rights_label("all rights reserved") == "all rights reserved"
    assert rights_address("no known copyright.") == f"{OF_RIGHTS}NKC/1.0/"
    assert rights_address("all rights reserved") == "all rights reserved"
    for address, name in LICENCES.items():
        assert rights_name(address) == name and rights_label(address) == f"{name} ({address})"
    assert rights_label("http://creativecommons.org/licenses/sa/4.0/").startswith("http")  # there is none
    secure = "https://rightsstatements.org/page/NKC/1.0/?language=en"
    assert rights_label(secure) == f"No Known Copyright ({secure})"
    assert rights_label("http://rightsstatements.org/vocab/XX/1.0/") == "http://rightsstatements.org/vocab/XX/1.0/"

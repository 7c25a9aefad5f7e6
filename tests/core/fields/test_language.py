"""Language tags against RFC 5646 (BCP 47): the examples of its appendix A, from memory, and the type xs:language."""

import pycountry
from hypothesis import given
from hypothesis import strategies as st
from lxml import etree
from tests.every_row import every_row

from boxlore.core.fields.language import is_language, language_tag, why_no_language

WELL_FORMED = """
de fr ja i-enochian zh-Hant zh-Hans sr-Cyrl sr-Latn zh-cmn-Hans-CN cmn-Hans-CN zh-yue-HK yue-HK zh-Hans-CN sr-Latn-RS
sl-rozaj sl-rozaj-biske sl-nedis de-CH-1901 sl-IT-nedis hy-Latn-IT-arevela de-DE en-US es-419 de-CH-x-phonebk
az-Arab-x-AZE-derbend x-whatever qaa-Qaaa-QM-x-southern de-Qaaa sr-Latn-QM sr-Qaaa-RS en-US-u-islamcal
zh-CN-a-myext-x-private en-a-myext-b-another en et mi ET en-NZ sgn-BE-FR en-GB-oed
""".split()

ILL_FORMED = ("de-419-DE", "a-DE", "", "-", "en-", "-en", "en--NZ", "et_EE", "e", "12345678", "englishish-x",
              "not a language", "en\n", "eñ", "en-x", "x-", "en-u", "en-abcdefghi", "??",
              "English", "klingon", "eesti", "lang")  # fmt: skip
"""The first two are the appendix's own; the others break the grammar of 2.1 by one rule each, and the
last have four to eight letters, of which no language is registered (2.2.1)."""


@every_row("tag", WELL_FORMED)
def test_tags_of_the_standard(tag: str) -> None:
    assert is_language(tag)
    assert language_tag(tag) == tag


@every_row("tag", ILL_FORMED)
def test_what_is_no_tag(tag: str) -> None:
    assert not is_language(tag)


XS_LANGUAGE = etree.XMLSchema(
    etree.XML(
        """<s:schema xmlns:s="http://www.w3.org/2001/XMLSchema"><s:element name="tag" type="s:language"/></s:schema>"""
    )
)


@given(st.one_of(st.from_regex(r"[A-Za-z]{1,9}(-[a-z0-9]{1,9}){0,4}", fullmatch=True), st.sampled_from(WELL_FORMED)))
def test_every_tag_is_one_for_xml_too(text: str) -> None:
    """XML Schema, Datatypes, 3.3.3: the type takes every tag of RFC 3066, and a little more."""
    element = etree.Element("tag")
    element.text = text
    assert not is_language(text) or XS_LANGUAGE.validate(element)


UNREGISTERED = {
    "xx": "xx", "qzz": "qzz", "xx-NZ": "xx", "en-Abcd": "abcd", "en-QB": "qb", "en-999": "999", "de-1902": "1902",
    "sl-nedys": "nedys", "zh-xyz": "xyz", "en-QB-x-own": "qb",
}  # fmt: skip
"""Tags of a right shape, each with the code in it that nothing has (RFC 5646, 2.2.9: such tags are not valid)."""


@every_row(("tag", "code"), UNREGISTERED.items())
def test_codes_that_nothing_has(tag: str, code: str) -> None:
    assert not is_language(tag)
    assert why_no_language(tag) == f"“{tag}” is no language tag: nothing has the code “{code}”."


def test_what_is_wrong_with_a_tag_is_said() -> None:
    assert why_no_language("English") == "“English” is no language tag."
    assert why_no_language("est-EE") == "“est-EE” is no language tag: “et” is written for “est”."
    assert why_no_language("et-EE") == ""


def test_every_language_of_the_standard_has_one_code() -> None:
    """ISO 639-3 by pycountry; of a language with two codes the shorter counts (RFC 5646, 2.2.1)."""
    codes = [(getattr(row, "alpha_2", row.alpha_3), row.alpha_3) for row in pycountry.languages]
    assert len(codes) > 7000
    assert [code for code, _ in codes if not is_language(code)] == []
    assert [(short, long) for short, long in codes if language_tag(long) != short] == []


OLDER = [("en_NZ", "en-NZ"), (" et ", "et"), ("est_EE", "et-EE"), ("ger", "de"), ("en-QB", "en"), ("xx", ""),
         ("not a language", ""), ("", "")]  # fmt: skip


@every_row(("text", "tag"), OLDER)
def test_tags_of_older_collections_are_mended(text: str, tag: str) -> None:
    assert language_tag(text) == tag

"""Linked data read back (W3C, RDF 1.1 Turtle and N-Triples)."""

from pathlib import Path

import pytest

from boxlore.exports.linked_data_check import faults_of

GOOD = '<https://example.org/a> <http://purl.org/dc/terms/title> "Reval"@en .\n'
WRONG = [
    ("records.nt", "<https://example.org/a> <http://purl.org/dc/terms/title> Reval .\n", "does not read"),
    ("records.ttl", GOOD + "@prefix dcterms: <", "does not read"),
    ("records.ttl", "", "says nothing"),
]


@pytest.mark.parametrize("name", ["records.nt", "records.ttl", "other.csv"])
def test_what_reads_has_no_fault(tmp_path: Path, name: str) -> None:
    (tmp_path / name).write_text(GOOD, encoding="utf-8")
    assert faults_of(tmp_path / name) == []


@pytest.mark.parametrize(("name", "text", "why"), WRONG)
def test_what_does_not_read_is_said(tmp_path: Path, name: str, text: str, why: str) -> None:
    (tmp_path / name).write_text(text, encoding="utf-8")
    (finding,) = faults_of(tmp_path / name)
    assert why in finding.message

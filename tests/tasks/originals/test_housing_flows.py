"""Condition, enclosure and custody go out with the record (EAD3 phystech and custodhist, DCMI terms), to whom they may.

Held against our own schemas and the published EAD3 schema of the Society of American Archivists.
"""

import io
import os
import shutil
from datetime import date
from pathlib import Path

import pytest
from lxml import etree

from boxlore.core.crosswalk.dublin_core import dcterms, oai_dc
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import Record
from boxlore.disk.shipped import shipped
from boxlore.exports.ead_dialects import Dialect, Ead2002
from boxlore.exports.finding_aid import FindingAid
from boxlore.tasks.archive.transfer import facts_of
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import Selection, seen_by
from boxlore.tasks.originals.housing_changes import lend
from boxlore.tasks.originals.survey import SurveyAnswer, note
from boxlore.tasks.telling.statements import Teller, Telling

NUMBER = "TRA-0001"


@pytest.fixture
def told(demo: Path, tmp_path: Path) -> Path:
    """The demo with one item surveyed, given by one person and lent by another."""
    folder = tmp_path / "mine"
    shutil.copytree(demo, folder)
    with open_collection(folder) as collection:
        item = find_item(collection, NUMBER)
        note(collection, item.id, SurveyAnswer(enclosure="polyester sleeve", condition=("foxing",), attached=("tape",)))
        Teller(collection).tell(item, "donor", "the parish of Port Chalmers", Telling(audience="anyone"))
        lend(collection, [item], "Aino Tamm", date(2027, 1, 1))
    return folder


def seen(collection: Collection, to: To) -> Record:
    (record,) = seen_by(collection, to).records(Selection(items=(NUMBER,)))
    return record


@pytest.mark.parametrize("dialect", [Dialect(), Ead2002()], ids=["EAD3", "EAD 2002"])
def test_the_finding_aid_carries_condition_and_custody_and_is_valid(told: Path, dialect: Dialect) -> None:
    with open_collection(told, write=False) as collection:
        record, facts = seen(collection, To.OUTSIDE), facts_of(collection)
        holding = Extent()
        holding.add(record)
        schema = (shipped("schemas") / f"finding-aid.{dialect.name}.rng").read_bytes()
        aid = FindingAid(facts, holding, dialect, schema)
        out = io.BytesIO()
        aid.write([record], out)
    assert aid.findings == []
    text = out.getvalue().decode()
    assert "Condition: foxing" in text and "Enclosure: polyester sleeve" in text
    assert "Given by: the parish of Port Chalmers" in text
    assert "Aino" not in text, "the lender is for the family"
    published = os.environ.get("BOXLORE_PUBLISHED_SCHEMAS")
    if published and not isinstance(dialect, Ead2002):
        check = etree.RelaxNG(etree.parse(str(Path(published) / "ead3" / "ead3.rng")))
        assert check.validate(etree.fromstring(out.getvalue())), check.error_log.last_error


def test_dublin_core_carries_them_and_the_lender_stays_in_the_family(told: Path) -> None:
    with open_collection(told, write=False) as collection:
        facts = facts_of(collection)
        outside, family = seen(collection, To.OUTSIDE), seen(collection, To.FAMILY)
    simple = [value.words for name, value in oai_dc(outside, facts) if name == "description"]
    assert "Condition: foxing" in simple and "Attached: tape" in simple
    custody = [value.words for name, value in dcterms(outside, facts) if name == "provenance"]
    assert "Given by: the parish of Port Chalmers" in custody and not any("Aino" in words for words in custody)
    assert "Lent by: Aino Tamm" in [value.words for name, value in dcterms(family, facts) if name == "provenance"]

"""Dublin Core from database to file, against a plain lxml serialisation of the same number of small records.

    python tests/benchmarks/bench_xml.py [RECORDS]

Budget: at least 10,000 records a second each for oai_dc and dcterms, memory flat.
"""

import json
import resource
import sys
import tempfile
import time
from io import BytesIO
from pathlib import Path

from lxml import etree

from boxlore.core.audience import To
from boxlore.core.statements import Kind, Reading
from boxlore.disk.shipped import shipped
from boxlore.exports.dublin_core import FULL, SIMPLE, write_records
from boxlore.tasks.opening import open_collection, start
from boxlore.tasks.records import seen_by
from boxlore.tasks.settings import Settings
from boxlore.tasks.transfer import facts_of

RECORDS = int(sys.argv[1]) if len(sys.argv) > 1 else 5000
DATE = json.dumps({"edtf": "1912~", "earliest": "1912-01-01", "latest": "1912-12-31", "display": "approximately 1912"})


def most_mb() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


with tempfile.TemporaryDirectory() as folder:
    home = Path(folder)
    start(home, Settings())
    with open_collection(home) as collection:
        for begin in range(0, RECORDS, 1000):
            act = collection.act("made for measuring")
            for at in range(begin, min(begin + 1000, RECORDS)):
                item = act.new(Kind.ITEM)
                act.state(item, "number", f"FAMA-{at + 1:05d}")
                act.state(item, "title", f"Harbour {at}")
                act.state(item, "story", "You could walk across the harbour on the decks, he used to say.")
                told = act.state(item, "date", "about 1912")
                act.readings.append((told.id, Reading("date", DATE, "bench")))
            act.done()

        begun = time.perf_counter()
        out = BytesIO()
        with etree.xmlfile(out, encoding="utf-8") as file, file.element("records"):
            for at in range(RECORDS):
                record = etree.Element("record")
                for name in ("title", "description", "date", "type", "identifier", "source", "relation", "rights"):
                    etree.SubElement(record, name).text = f"Harbour {at}, by the sea"
                file.write(record)
        peer = RECORDS / (time.perf_counter() - begun)

        seen, facts = seen_by(collection, To.ARCHIVE), facts_of(collection)
        for name, schema, flavour in (("oai_dc", "oai_dc.rng", SIMPLE), ("dcterms", "dcterms.rng", FULL)):
            before = most_mb()
            begun = time.perf_counter()
            with open(home / f"{name}.xml", "wb") as target:
                findings = write_records(
                    seen.records(), facts, target, (shipped("schemas") / schema).read_bytes(), flavour
                )
            rate = RECORDS / (time.perf_counter() - begun)
            assert not findings, findings[0]
            print(
                f"{name}: {rate:,.0f} records/s from database to file, checked; plain lxml {peer:,.0f}/s, "
                f"ratio {rate / peer:.2f}; +{most_mb() - before:.0f} MB"
            )

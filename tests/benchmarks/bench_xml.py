"""Dublin Core and linked data from database to file.

The peer is a plain lxml serialisation of the same number of small records.

    python tests/benchmarks/bench_xml.py [RECORDS]

Budget: at least 10,000 records a second each for oai_dc, dcterms and N-Triples, memory flat. Processor time
is given too: on a machine that others use it says more than the clock.
"""

import resource
import sys
import tempfile
import time
from io import BytesIO
from pathlib import Path

from lxml import etree

from boxlore.core.dates.reading import DateReading
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Reading
from boxlore.disk.shipped import shipped
from boxlore.exports.dublin_core import FULL, SIMPLE, write_records
from boxlore.exports.rdf import write_triples
from boxlore.exports.required_fields import read_required
from boxlore.tasks.archive.transfer import facts_of
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.collection.settings import Settings

RECORDS = int(sys.argv[1]) if len(sys.argv) > 1 else 5000
DATE = DateReading.from_edtf("1912~")


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
        files = shipped("schemas")
        table = read_required((files / "required.csv").read_text(encoding="utf-8"))
        writers = (
            (
                "oai_dc",
                lambda out: write_records(seen.records(), facts, out, (files / "oai_dc.rng").read_bytes(), SIMPLE),
            ),
            (
                "dcterms",
                lambda out: write_records(seen.records(), facts, out, (files / "dcterms.rng").read_bytes(), FULL),
            ),
            ("N-Triples", lambda out: write_triples(seen.records(), facts, out, table)),
        )
        for name, write in writers:
            before = most_mb()
            begun, worked = time.perf_counter(), time.process_time()
            with open(home / name, "wb") as target:
                findings = write(target)
            rate = RECORDS / (time.perf_counter() - begun)
            alone = RECORDS / (time.process_time() - worked)
            assert not findings, findings[0]
            print(
                f"{name}: {rate:,.0f} records/s from database to file, checked ({alone:,.0f} by processor time); "
                f"plain lxml {peer:,.0f}/s, ratio {rate / peer:.2f}; +{most_mb() - before:.0f} MB"
            )

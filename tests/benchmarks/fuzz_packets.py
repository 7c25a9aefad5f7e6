"""XMP packets of every odd shape by the ten thousand: captioned and taken by the XMP toolkit, or refused; never lost.

    python tests/benchmarks/fuzz_packets.py [PACKETS] [SEED]

A packet is built of properties, structures and arrays at random, in several descriptions, with old and bare names of
what it is about, doubled properties, foreign prefixes, and XML that RDF allows and XMP does not. Ends with 1 where a
packet that we call sound is refused by the toolkit, where a caption put in is not read by it, or where a second time
does not give the same bytes.
"""

import random
import sys
import time
from collections import Counter

from libxmp import XMPError, XMPMeta

from boxlore.core.crosswalk.metadata_values import NAMESPACES, Embedding, Text, alternative
from boxlore.core.errors import ByteFault
from boxlore.formats import xmp, xmp_merging, xmp_strict

PACKETS = int(sys.argv[1]) if len(sys.argv) > 1 else 20_000
SEED = int(sys.argv[2]) if len(sys.argv) > 2 else 20261126
CAPTION = Embedding(xmp=(("dc:title", alternative("Võrgud", "et")), ("dc:source", Text("TRA-0001"))))
ABOUTS = ("rdf:about=''", "rdf:about='uuid:1'", "about='uuid:1'", "ID='a'", "", "about='' rdf:about=''", "rdf:ID='a'")
BINDINGS = {"x": NAMESPACES["x"], "xmp": NAMESPACES["xmp"], "dc": NAMESPACES["dc"], "own": "urn:own", "u": "urn:u"}


class Builder:
    """Packets made of one stream of chance."""

    def __init__(self, seed: int) -> None:
        self.chance = random.Random(seed)

    def name(self) -> str:
        names = "dc:title dc:source dc:subject xmp:Label xmp:Rating own:a own:b own:c u:a rdf:value plain"
        return self.chance.choice(names.split())

    def attribute(self) -> str:
        return f"{self.name()}='{self.chance.randrange(9)}'"

    def value(self, depth: int) -> str:
        """What stands in a property."""
        if depth > 2 or self.chance.random() < 0.5:
            return self.chance.choice(("", "words", " ", "a &amp; b"))
        match self.chance.randrange(8):
            case 0 | 1 | 2:
                kind, language = self.chance.choice(("Bag", "Seq", "Alt")), self.chance.choice(("", " xml:lang='et'"))
                members = "".join(
                    f"<rdf:li{language}>{self.value(depth + 1)}</rdf:li>" for _ in range(self.chance.randrange(4))
                )
                return f"<rdf:{kind}>{members}</rdf:{kind}>"
            case 3 | 4 | 5:
                return f"<rdf:Description>{self.properties(depth + 1)}</rdf:Description>"
            case 6:
                return f"<own:Type>{self.properties(depth + 1)}</own:Type>"
        return f"words{self.properties(depth + 1)}"

    def properties(self, depth: int) -> str:
        made = ""
        for _ in range(self.chance.randrange(4)):
            name, kind = self.name(), self.chance.random()
            if kind < 0.15:
                made += f"<{name} rdf:parseType='Resource'>{self.properties(depth + 1) if depth < 3 else ''}</{name}>"
            elif kind < 0.2:
                odd = self.chance.choice(
                    ("rdf:parseType='Literal'", "rdf:resource='urn:x'", "rdf:nodeID='n'", "own:q='1'")
                )
                made += f"<{name} {odd}/>"
            else:
                made += f"<{name}>{self.value(depth)}</{name}>"
        return made

    def packet(self) -> bytes:
        bindings = dict(BINDINGS)
        if self.chance.random() < 0.3:
            first, second = self.chance.sample(("dc", "xmp", "own", "u"), 2)
            bindings[first], bindings[second] = bindings[second], bindings[first]
        bound = " ".join(f"xmlns:{prefix}='{uri}'" for prefix, uri in bindings.items())
        nodes = "".join(
            f"<rdf:Description {self.chance.choice(ABOUTS)} {self.attribute() if self.chance.random() < 0.4 else ''}>"
            f"{self.properties(0)}</rdf:Description>"
            for _ in range(self.chance.randrange(4))
        )
        wrapper = self.chance.choice(("x:xmpmeta", "x:xapmeta", "u:wrapper"))
        return f"<{wrapper} {bound}><rdf:RDF xmlns:rdf='{NAMESPACES['rdf']}'>{nodes}</rdf:RDF></{wrapper}>".encode()


def taken(packet: bytes) -> XMPMeta | None:
    meta = XMPMeta()
    try:
        meta.parse_from_str(packet.decode(), xmpmeta_wrap=False)
    except XMPError:
        return None
    return meta


def judged(packet: bytes) -> str:
    """What becomes of one packet."""
    if not xmp_strict.faults(packet) and taken(packet) is None:
        return "WRONG called sound, and the toolkit refuses it"
    try:
        root, _ = xmp_merging.captioned(packet, CAPTION)
    except ByteFault as fault:
        assert fault.clause
        return "refused: " + ("not XML" if "well-formed" in fault.why else "cannot be put right")
    written = xmp.serialize(root)
    meta = taken(written)
    if meta is None or meta.get_localized_text(NAMESPACES["dc"], "title", None, "et") != "Võrgud":
        return "WRONG captioned, and the toolkit does not read it"
    if xmp.serialize(xmp_merging.captioned(written, CAPTION)[0]) != written:
        return "WRONG a second time gives other bytes"
    return "captioned and read by the toolkit"


def run() -> int:
    builder, counted, start = Builder(SEED), Counter[str](), time.perf_counter()
    for _ in range(PACKETS):
        packet = builder.packet()
        try:
            what = judged(packet)
        except Exception as error:  # noqa: BLE001  # what is looked for here
            what = f"WRONG {type(error).__name__}: {error}"[:100]
        if what.startswith("WRONG") and not counted[what]:
            print(what, packet.decode())
        counted[what] += 1
    print(f"{PACKETS} packets in {time.perf_counter() - start:.0f} s")
    for what, count in counted.most_common():
        print(f"  {count:8} {what}")
    return 1 if any(what.startswith("WRONG") for what in counted) else 0


if __name__ == "__main__":
    sys.exit(run())

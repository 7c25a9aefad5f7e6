"""The tables behind the rules of housing. Each row has its reason and its source, and says where sources disagree.

The sources were read in 2026.

NARA: US National Archives, Family Archives, “How should I store my photographic prints?”. LC: Library of Congress,
Care, Handling, and Storage of Photographs. NEDCC 5.5, 5.6: Northeast Document Conservation Center leaflets on storage
enclosures. KOD-D31: Eastman Kodak D-31 (June 2002) p. 10. Wilhelm 1993: H. Wilhelm, The Permanence and Care of Color
Photographs, ch. 14. NPS: National Park Service, National Register Bulletin, photographs, part V. ISO 18902:2013
enclosures (the excerpt of 2001 read), ISO 18916:2007 photographic activity test. Weaver 2006, Nishimura 2012:
letters to the Conservation DistList. SIA 2010: Smithsonian Institution Archives, You Asked, We Answered.
"""

from dataclasses import dataclass
from enum import StrEnum

PRACTICE = "common practice, no source"


class Good(StrEnum):
    """What a material is worth as an enclosure."""

    GOOD = "good"
    BAD = "bad"
    DISPUTED = "disputed"


@dataclass(frozen=True, slots=True)
class EnclosureMaterial:
    """One material: the words that name it, its worth, whether it is a plastic, why, and who says so.

    `otherwise` names the sources that disagree. Words match as in `core.originals.housing_rules.holds`.
    """

    name: str
    words: tuple[str, ...]
    good: Good
    plastic: bool
    why: str
    source: str
    otherwise: str = ""


MATERIALS: tuple[EnclosureMaterial, ...] = (
    EnclosureMaterial("pvc", ("pvc", "vinyl", "polyvinyl"), Good.BAD, True, "it gives off acid and plasticiser, which stick to and stain pictures", "KOD-D31; NPS; ISO 18902 (shall not be used)"),
    EnclosureMaterial("acetate", ("acetate", "cellulose acetate"), Good.BAD, True, "it breaks down to acetic acid", "Wilhelm 1993"),
    EnclosureMaterial("glassine", ("glassine",), Good.BAD, False, "its additives and acid attack the picture, and it sticks when damp", "NPS; KOD-D31; ISO 18902 (shall not be used)"),
    EnclosureMaterial("kraft", ("kraft", "brown paper", "brown envelope", "manila"), Good.BAD, False, "it is acid and gives off what fades silver", "NPS; KOD-D31; Wilhelm 1993"),
    EnclosureMaterial("black paper", ("black paper", "construction paper", "groundwood", "newsprint"), Good.BAD, False, "its ground wood turns acid", "NPS; KOD-D31"),
    EnclosureMaterial("magnetic page", ("magnetic", "self-adhesive page", "sticky page"), Good.BAD, True, "its glue hardens and its film is often PVC; photograph each page with its words first, then lift the prints with dental floss, or leave them to a conservator", "NPS; SIA 2010"),
    EnclosureMaterial("polyethylene", ("polyethylene",), Good.DISPUTED, True, "high-density polyethylene is accepted, low-density is not by all", "Wilhelm 1993 (against low-density)", "KOD-D31 and NEDCC 5.5 list polyethylene among the good ones, without a grade"),
    EnclosureMaterial("polyester", ("polyester", "pet sleeve"), Good.GOOD, True, "", "KOD-D31; NEDCC 5.5"),
    EnclosureMaterial("polypropylene", ("polypropylene",), Good.GOOD, True, "", "KOD-D31; NEDCC 5.5"),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Attached:
    """Something that is still attached to a print: the words that name it, why it harms, what to do, who says so."""

    name: str
    words: tuple[str, ...]
    why: str
    do: str
    source: str


ATTACHED: tuple[Attached, ...] = (
    Attached("rubber-band", ("rubber band", "elastic"), "its sulphur stains silver, and it sticks", "Cut it and lift it away; if it sticks, leave it to a conservator.", "LC; KOD-D31"),
    Attached("fastener", ("clip", "staple", "pin ", "pins ", "fastener", "brad"), "metal rusts, marks and dents", "Slip a piece of polyester under it, then ease it off; the picture bends before the metal does.", "LC; KOD-D31"),
    Attached("tape", ("tape", "sticker", "adhesive", "glue", "rubber cement", "sticky note"), "its glue creeps and stains", "Do not pull: leave it to a conservator, and keep what is under and on it in words now.", "LC; KOD-D31"),
    Attached("note", ("note", "letter", "clipping", "cutting", "paper"), "acid paper stains what it lies on, and a loose note is soon lost", "Write down that it was there, then house it beside the print as an item of its own (boxlore housing off).", PRACTICE),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Surrounding:
    """A place that harms what stands in it: the words that name it, why, and who says so."""

    name: str
    words: tuple[str, ...]
    why: str
    source: str


SURROUNDINGS: tuple[Surrounding, ...] = (
    Surrounding("attic", ("attic", "loft"), "it is hot in summer and swings day and night", "NARA; LC"),
    Surrounding("basement", ("basement", "cellar"), "it is damp and floods; a finished one only if it is dehumidified", "NARA; LC"),
    Surrounding("garage", ("garage", "shed", "outbuilding"), "nothing steadies its heat and damp", "NARA (an interior above-ground closet instead)"),
    Surrounding("floor", ("=floor", "on the floor", "on floor", "under the bed"), "water comes there first", "trade guidance on stacking cartons: off the floor; common practice"),
    Surrounding("pipes", ("pipe",), "a pipe that leaks, leaks on it", "common practice, no source"),
    Surrounding("radiator", ("radiator", "vent", "heater", "fireplace", "stove"), "heat dries, curls and quickens decay", "LC (away from radiators and vents)"),
    Surrounding("light", ("light", "window", "sun", "on show", "on the wall"), "light fades for good; a total of 50,000 lux hours a year is the most for very light-sensitive pictures", "Wagner, McCabe, Lemmen, Guidelines for Exhibition Light Levels for Photographs (2001)"),
    Surrounding("outer-wall", ("outer wall", "outside wall", "masonry"), "it is cold and damp behind a box; keep 10 inches (25 cm) away", "trade guidance on storage; common practice"),
)  # fmt: skip

DAMP_WORDS = ("damp", "basement", "cellar", "bathroom", "wet")
"""Surroundings that are taken as damp where no log says more (common practice, no source)."""

DAMP_SOURCE = (
    "Swan 1981 as cited by Neugebauer 2005 (polyester avoided above 65 % RH); Jefferson County guide to storage"
)

BUFFERED_SIDES = (
    "Cautious: unbuffered for colour, cyanotype and albumen (NEDCC 5.5).",
    "Otherwise: no evidence that buffered paper harms any process while dry; the standards recommend buffered for all "
    "(Weaver 2006; Nishimura 2012).",
)

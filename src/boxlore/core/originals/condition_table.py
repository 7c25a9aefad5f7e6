"""The terms of condition that the trade uses, each with what to do next; for hazards the caution, which comes first.

LC: Library of Congress, Care, Handling, and Storage of Photographs. NEDCC 5.1, 5.3: Northeast Document Conservation
Center leaflets. NPS 14/9: National Park Service, Conserve O Gram 14/9 (Sept 1999). NPS-TREE: Film Base Identification,
Decision Tree. NIEHS 2013: Mold Remediation Guidance, May 2013. A hazard is never met with a test to do at home.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """One term: the words that show it in a note, what it means, what to do next.

    A hazard has a `caution`, and in `call` the person to call. Words match as in `core.originals.housing_rules.holds`.
    """

    name: str
    words: tuple[str, ...]
    means: str
    next: str
    source: str
    caution: str = ""
    call: str = ""


CONSERVATOR = "a photograph conservator"
LOCAL = "Local codes and licensed practice go before anything said here."

TERMS: tuple[Term, ...] = (
    Term(name="nitrate", words=("nitrate", "sticky film", "brown powder", "honey-coloured film"), means="film on cellulose nitrate, made until the early 1950s", next="Do not open, unroll, project or scan it. Leave the room aired and note which container it is in.", source="NPS 14/9; NEDCC 5.1",
         caution="Nitrate film burns even without air and gives off toxic gas; old film can take fire by itself. Keep it from heat and flame, never test it in any way.", call="the fire authority and a photograph conservator"),
    Term(name="mould", words=("mould", "mold", "mildew", "fuzzy", "furry growth"), means="growth of mould, living or dormant", next="Do not brush or wipe. Put it in a closed bag, wash your hands, keep it from the other boxes, and dry the room.", source="NIEHS 2013 (small: up to 10 square feet); common practice",
         caution="Mould is a health hazard, more so to those with asthma or weak lungs.", call="a photograph conservator, and a doctor if anyone feels ill"),
    Term(name="vinegar", words=("vinegar", "acetic", "acetate film", "channelling"), means="vinegar smell: acetate film breaking down, which spreads to other film", next="House it apart from all other film, in paper, in a cool and aired place; copy it while it still lies flat.", source="NEDCC 5.1; Image Permanence Institute figures",
         caution="The vapour irritates eyes and lungs: work with the window open.", call=CONSERVATOR),
    Term(name="broken-glass", words=("broken glass", "cracked glass", "glass negative cracked", "broken plate", "sharp glass"), means="a glass plate or cover glass that is broken", next="Do not tape or press it together. Lay the pieces flat, apart, on padding in a box that says GLASS.", source="NEDCC 5.3; common practice",
         caution="Broken glass cuts: wear gloves that it cannot cut through, and mark the box.", call=CONSERVATOR),
    Term(name="weeping-glass", words=("weeping glass", "glass weeps", "crystals on the glass"), means="cover glass of a cased picture that weeps alkali", next="Leave the case closed and upright; keep it in a dry room.", source="common practice, no source",
         caution="The drops on old cover glass are caustic: do not touch or wipe them.", call=CONSERVATOR),
    Term(name="flaking", words=("flaking", "lifting emulsion", "loose emulsion", "powdery"), means="picture layer coming away from its base", next="Lay it face up in a shallow box. Do not clean, sleeve or slide anything over it.", source="LC",
         caution="Every touch takes something away for good.", call=CONSERVATOR),
    Term(name="foxing", words=("foxing", "foxed", "brown spots"), means="rust-brown spots in paper or mount", next="Keep it dry and from other paper; spots do not come out at home.", source="common practice, no source"),
    Term(name="silver mirroring", words=("silver mirroring", "silvering", "mirrored", "bluish sheen"), means="a bluish metal sheen in the darks of a silver picture", next="Leave it: it is part of the picture now. Better enclosure, drier room; scan it with the light from one side.", source="common practice, no source"),
    Term(name="curl", words=("curl", "rolled"), means="a print that does not lie flat", next="Do not press or bend it back. Keep it in a larger folder; a conservator can relax it.", source="LC; common practice"),
    Term(name="cracking", words=("crack",), means="cracks in the picture layer", next="Support it with a stiff card behind; do not flex it.", source="common practice, no source"),
    Term(name="fading", words=("fading", "faded", "yellowed", "colour shift", "color shift"), means="loss of density or of one dye", next="Keep it dark and cool and scan it soon: what is lost does not come back.", source="LC"),
    Term(name="brittle", words=("brittle",), means="a base that breaks when bent", next="Do not flex it. Give it a stiff support, handle it with both hands.", source="NARA as widely repeated: brittle below 15 % RH"),
    Term(name="torn", words=("torn", "tear", "missing corner", "in pieces"), means="a tear or a loss", next="Keep every piece in one folder. No tape.", source="LC"),
    Term(name="adhesive", words=("adhesive", "glue", "tape stain", "stuck to"), means="glue or tape, or its stain", next="Do not pull or soak it. Leave it to a conservator; scan it as it is.", source="LC"),
    Term(name="water stain", words=("water stain", "tide line", "tideline"), means="the edge of an old wetting", next="See that it is dry and that the cause is over.", source="common practice, no source"),
    Term(name="fingerprints", words=("fingerprint", "grease mark"), means="marks of handling", next="Do not wipe. Clean dry hands or gloves from now on, and a sleeve.", source="LC"),
)  # fmt: skip

NITRATE_UNTIL = 1951
"""Kodak made nitrate film until 1951; others until the early 1950s (NEDCC 5.1)."""

ASSUME_NITRATE_UNTIL = 1920
"""Undated flexible film before 1920 is taken as nitrate (NPS-TREE)."""

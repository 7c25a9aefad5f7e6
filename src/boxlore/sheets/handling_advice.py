"""The advice printed with each output, on paper, ink, pencil and what never to write on; each with its source."""

from boxlore.core.wording.catalogue import Say, to_say

PRINTING = (
    (
        to_say(
            "Print on permanent paper (ISO 9706: pH 7.5 to 10, an alkali reserve of at least 20 g of "
            "calcium carbonate to the kilogram) with pigment ink."
        ),
        to_say("ISO 9706"),
    ),
    (
        to_say(
            "Ask for paper and enclosures that pass the Photographic Activity Test (ISO 18916). The "
            "word “archival” alone promises nothing."
        ),
        to_say("ISO 18916"),
    ),
)

MARKING = (
    (
        to_say(
            "Write on the enclosure, not on the photograph. If a print must be marked: a soft pencil, "
            "lightly, on the back along the edge, on a clean hard surface."
        ),
        to_say("US National Archives, captioning photographs; the Library of Congress prefers no mark at all"),
    ),
    (
        to_say(
            "Resin-coated paper does not take pencil: use a film-marking pen and let it dry. Never "
            "ball-point, never felt tip, never a sticking label, never paste or tape on an original."
        ),
        to_say("US National Archives, captioning photographs; adhesives: common practice, no source"),
    ),
)

MOUNTING = (
    (
        to_say(
            "Mount a slip under a copy print, never on an original; use photo corners or a window "
            "mat, not glue on the picture."
        ),
        to_say("common practice, no source"),
    ),
)

ADVICE = {
    "slips": (*MOUNTING, *PRINTING, *MARKING),
    "labels": (*PRINTING, *MARKING),
    "worksheet": MARKING,
    "pages": MARKING,
}


def advice_for(output: str, say: Say) -> list[dict[str, str]]:
    """The advice for an output (a key of ADVICE), as the templates take it."""
    return [{"words": say(words), "source": say(source)} for words, source in ADVICE[output]]

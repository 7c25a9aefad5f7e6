"""Originals that were handed over and that the family has come to keep, or that turned out to be lent: what is asked of
the keeper and of the archive.

What a signed deed has given goes back only by another word that both sign: common practice, no source.
"""

from collections.abc import Iterator

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.tasks.archive.item_states import EarlierItem
from boxlore.tasks.archive.transfer_updates import Earlier


def newly_asked_back(earlier: Earlier, facts: CollectionFacts) -> Iterator[tuple[str, EarlierItem]]:
    """The items, each with its id, whose originals were handed over, and which the family has come to keep since, or of
    which it is told since that somebody lent them."""
    for ident, item in earlier.items.items():
        if facts.asked_back(ident) and not item.is_asked_back:
            yield ident, item


def given_again(earlier: Earlier, facts: CollectionFacts) -> Iterator[tuple[str, EarlierItem]]:
    """The items, each with its id, whose originals an earlier update asked back, and which are given again now."""
    for ident, item in earlier.items.items():
        if item.is_asked_back and facts.gives(ident):
            yield ident, item


def _denied(earlier: Earlier, facts: CollectionFacts) -> list[EarlierItem]:
    """The items whose originals were handed over, where an update says now that none is."""
    given = (item for item in earlier.items.values() if item.given_on and not item.is_asked_back)
    return [] if facts.originals else list(given)


def asked_of_the_keeper(earlier: Earlier, facts: CollectionFacts) -> Iterator[Finding]:
    """What the keeper must decide of each such original."""
    if denied := _denied(earlier, facts):
        words = (
            f"By the deed of {denied[0].given_on} {several(len(denied), 'original is', 'originals are')} given, and "
            "this update says that none is: its deed is right only if none of them ever went. If they are with the "
            "archive, make the update again with --originals yes; one that is to come back, keep to the family first."
        )
        yield make_finding("original.denied", Severity.ASK, words, "common practice, no source")
    for ident, item in newly_asked_back(earlier, facts):
        asked = "this update asks the archive to return it, and the addendum to the deed says so."
        if ident in facts.not_given:
            words = (
                f"The original of {item.number} was handed over on {item.given_on}, and the family keeps it now: "
                f"{asked} If it may stay there unseen, close it instead, for example until 2070, and make the update "
                f"again: boxlore people audience --item {item.number} archive:2070-01-01."
            )
        else:
            words = (
                f"The original of {item.number} was handed over on {item.given_on}, and somebody lent it: {asked} "
                f"If its lender lets it stay, tell that first, and make the update again: boxlore tell "
                f"{item.number} lender “no loan”."
            )
        yield make_finding("original.asked_back", Severity.ASK, words, "common practice, no source")
    for _, item in given_again(earlier, facts):
        words = (
            f"An earlier update asked the original of {item.number} back, and it is given again now: if the archive "
            "has returned it, hand it over anew."
        )
        yield make_finding("original.given_again", Severity.NOTE, words, "common practice, no source")


def asked_in_the_deed(earlier: Earlier, facts: CollectionFacts) -> str:
    """What the addendum to a deed says of all that is asked back, and of what is no more, or of originals that were not
    handed over though they were to be; '' for nothing."""
    if _denied(earlier, facts):
        return " The originals that the earlier deed gives were never handed over, and stay with the donor."
    back = sorted((item.number, ident) for ident, item in earlier.items.items() if facts.asked_back(ident))
    kept = [number for number, ident in back if ident in facts.not_given]
    lent = [number for number, ident in back if ident not in facts.not_given]
    said = ""
    if kept:
        said += (
            f" What was given before of {ENGLISH.listed(kept)}, and the family keeps now, is the donor's again from "
            "the day on which both have signed, and the archive returns it."
        )
    if lent:
        said += (
            f" What was given before of {ENGLISH.listed(lent)} belongs to somebody who lent it: it was not the "
            "donor's to give, and the archive returns it."
        )
    if again := sorted(item.number for _, item in given_again(earlier, facts)):
        said += (
            f" {ENGLISH.listed(again)}, which an earlier update asked back, is given again: the archive keeps it, or, "
            "where it has returned it, gets it anew."
        )
    return said

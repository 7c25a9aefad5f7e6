"""Consent: what someone living allows, who gave it, when and before whom, and that it may be taken back.

Rule kept: consent belongs to the person; she gives it herself, or someone who may act for her does, before a
witness. The last word on a matter stands, a withdrawal like any other. It is asked again at each sitting
(Oral History Association, Best Practices, 2018: consent is ongoing). None of this is legal advice; local law
and the archive's own forms go first.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from boxlore.core.errors import WrongUse


class Matter(StrEnum):
    """What may be asked for, for outputs that leave the family."""

    NAME = "name"
    """Named outside, with words that name her."""
    PICTURE = "picture"
    """Pictures and backs that show or name her."""
    VOICE = "voice"
    """Recordings."""


class Capacity(StrEnum):
    """As what the consent is given."""

    SELF = "self"
    ATTORNEY = "attorney"
    GUARDIAN = "guardian"


@dataclass(frozen=True, slots=True, kw_only=True)
class Consent:
    """One word on it. `day` is ISO; `by` who gave it where it was not she herself; `sitting` an id or empty."""

    given: bool
    matters: frozenset[Matter]
    day: str
    capacity: Capacity = Capacity.SELF
    by: str = ""
    witness: str = ""
    sitting: str = ""

    def to_json(self) -> dict[str, object]:
        """The consent as a JSON object."""
        return {
            "given": self.given,
            "matters": sorted(self.matters),
            "day": self.day,
            "capacity": str(self.capacity),
            "by": self.by,
            "witness": self.witness,
            "sitting": self.sitting,
        }

    @classmethod
    def from_json(cls, data: Mapping[str, object]) -> "Consent":
        """Inverse of `to_json`. Raises ValueError for an object of another shape."""
        matters = data.get("matters")
        if not isinstance(matters, list):
            raise ValueError("A consent says to what.")
        return cls(
            given=data.get("given") is True,
            matters=frozenset(Matter(str(matter)) for matter in matters),
            day=str(data.get("day", "")),
            capacity=Capacity(str(data.get("capacity", "self"))),
            by=str(data.get("by", "")),
            witness=str(data.get("witness", "")),
            sitting=str(data.get("sitting", "")),
        )

    @property
    def words(self) -> str:
        """The sentence that is kept."""
        what = ", ".join(sorted(self.matters))
        told_by = f", as {self.by} tells" if self.by else ""
        who = f"in person{told_by}" if self.capacity is Capacity.SELF else f"by {self.by}, {self.capacity}"
        before = f", witness {self.witness}" if self.witness else ""
        return f"{'given' if self.given else 'withdrawn'} {who}{before}, {self.day}: {what}"


def make_consent(
    matters: Iterable[str],
    day: str,
    *,
    given: bool = True,
    capacity: str = "self",
    by: str = "",
    witness: str = "",
    sitting: str = "",
) -> Consent:
    """A consent as the keeper notes it. Raises WrongUse where something is missing that must be told."""
    try:
        asked = frozenset(Matter(matter.strip().lower()) for matter in matters)
        as_what = Capacity(capacity.strip().lower())
        date.fromisoformat(day)
    except ValueError as error:
        raise WrongUse(
            f"That is no consent: {error}.",
            f"For: {', '.join(Matter)}. As: {', '.join(Capacity)}. The day as YYYY-MM-DD.",
        ) from None
    if not asked:
        raise WrongUse("Consent to what?", f"Say one or more of: {', '.join(Matter)}.")
    if as_what is not Capacity.SELF and given and not (by and witness):
        raise WrongUse(
            f"Consent by {'an' if as_what is Capacity.ATTORNEY else 'a'} {as_what} needs their name and a witness.",
            "Say who gives it and before whom.",
        )
    return Consent(given=given, matters=asked, day=day, capacity=as_what, by=by, witness=witness, sitting=sitting)


def allows(consents: Iterable[Consent], matter: Matter) -> bool:
    """Whether the last word on a matter is yes; without a word it is no."""
    return bool(_last_word(consents, matter))


def is_taken_back(consents: Iterable[Consent], matter: Matter) -> bool:
    """Whether the last word on a matter is no; without a word it is neither."""
    return _last_word(consents, matter) is False


def _last_word(consents: Iterable[Consent], matter: Matter) -> bool | None:
    words = [consent.given for consent in consents if matter in consent.matters]
    return words[-1] if words else None


def to_ask_again(consents: Iterable[Consent], sitting: str) -> bool:
    """Whether someone must be asked (again) in this sitting."""
    return not any(consent.sitting == sitting for consent in consents if sitting)


def allowed(consents: Sequence[Consent]) -> frozenset[Matter]:
    """The matters on which the last word is yes."""
    return frozenset(matter for matter in Matter if allows(consents, matter))


def due(consents: Sequence[Consent], sitting: str) -> bool:
    """Whether something is allowed that must be asked about again in this sitting. A no is not asked again."""
    return bool(sitting and allowed(consents)) and to_ask_again(consents, sitting)


def answered(consents: Sequence[Consent], *, given: bool, day: str, sitting: str, witness: str = "") -> Consent:
    """What is noted when all that is allowed is asked about again: it stands, or it is withdrawn.

    Who may speak for her is as before; a new word of an attorney or a guardian needs a witness of its own day.
    """
    last = [consent for consent in consents if consent.given][-1]
    if given and last.capacity is not Capacity.SELF and not witness:
        raise WrongUse(f"{last.by}, {last.capacity}, says so before a witness.", "Say before whom.")
    return replace(last, given=given, matters=allowed(consents), day=day, sitting=sitting, witness=witness)

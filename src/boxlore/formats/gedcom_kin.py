"""The kin of a tree file: who is whose child by blood, who was raised by whom, and what is told of other links.

PEDI says which of the three a child's link to a family is, STAT whether it is challenged or disproven (7.0,
enumset-PEDI and enumset-FAMC-STAT).
"""

from collections.abc import Iterator

from boxlore.formats.gedcom import Family, Tree
from boxlore.formats.gedcom_lines import Fault

BLOOD = ("", "BIRTH")
"""Values of PEDI that mean a parent by blood (7.0, enumset-PEDI); the others are adopted, foster and sealing."""

RAISED = {"ADOPTED": "adoptive_parent", "FOSTER": "foster_parent"}
"""PEDI of a child that somebody raised (7.0, enumset-PEDI) -> our field."""


def links(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, parent, role) for each parent by blood. The role is father or mother: by the parent's SEX, else by
    whether the parent is the HUSB or the WIFE.

    A child is linked by the family's CHIL, by its own FAMC, or by both (7.0 wants both to match; here one is enough).
    A link that is DISPROVEN is none. A pointer to nobody is added to `faults`.
    """
    yielded: set[tuple[str, str]] = set()
    for child, family, kind in _pedigree(tree):
        if kind not in BLOOD or tree.individuals[child].doubts.get(family.xref) == "DISPROVEN":
            continue
        for parent, role in family.partners:
            if parent in tree.individuals and (child, parent) not in yielded and parent != child:
                yielded.add((child, parent))
                sex = tree.individuals[parent].words("sex")
                yield child, parent, {"male": "father", "female": "mother"}.get(sex, role)


def raised(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, parent, our field) for each adoptive and foster parent whose link is not disproven."""
    for individual in tree.individuals.values():
        for xref, kind in dict.fromkeys(individual.links):
            family = tree.families.get(xref)
            if family and kind in RAISED and individual.doubts.get(xref) != "DISPROVEN":
                for parent, _ in family.partners:
                    if parent in tree.individuals and parent != individual.xref:
                        yield individual.xref, parent, RAISED[kind]


def _pedigree(tree: Tree) -> Iterator[tuple[str, Family, str]]:
    """(child, family, PEDI) of each child that is there; the others are faults."""
    kinds: dict[tuple[str, str], str] = {}
    for individual in tree.individuals.values():
        for xref, kind in individual.links:
            kinds[individual.xref, xref] = kind or kinds.get((individual.xref, xref), "")
    pairs = [(child, family.xref) for family in tree.families.values() for child in family.children]
    for child, xref in [*pairs, *kinds]:
        family = tree.families.get(xref)
        if family is None or child not in tree.individuals:
            line = tree.individuals[child].line if child in tree.individuals else family.line if family else 0
            tree.faults.append(Fault(line, f"@{child}@ or @{xref}@ is pointed to and not there"))
            continue
        yield child, family, kinds.get((child, xref), "")


def not_by_blood(tree: Tree) -> Iterator[tuple[str, str, str]]:
    """(child, family, kind) of each link that is not by blood: PEDI in small letters, or `disproven`, `challenged`."""
    for individual in tree.individuals.values():
        for family, kind in dict.fromkeys(individual.links):
            doubt = individual.doubts.get(family, "")
            if doubt in ("DISPROVEN", "CHALLENGED"):
                yield individual.xref, family, doubt.lower()
            elif kind not in BLOOD:
                yield individual.xref, family, kind.lower()

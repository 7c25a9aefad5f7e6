"""Kin worked out, never typed: from parent, child and spouse links to “great-aunt” and “Ruth's mother's cousin”.

Rule kept: two people are kin by blood if they have a common ancestor; they are then as many generations from the
nearest one as `up` and `down` say, and the civil degree is the sum of the two (Texas Government Code 573.023).
The terms are those of the HL7 Version 3 RoleCode system, PersonalRelationshipRoleType, where it has one; cousins'
degree and removal: common practice. A half relation hangs by one common ancestor where another is told for both;
where a parent is not told, nobody is called half. Step: by a parent's or a spouse's marriage, without blood. Adoptive
and foster: between those who raised a child, the child, and their other children.
"""

from collections import deque
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from boxlore.core.people.kin_terms import blood_term, gendered, is_told, said_parts
from boxlore.core.people.person import Person
from boxlore.core.wording.catalogue import ENGLISH, Say

MOST_STEPS = 14
"""Links between two people beyond which nobody is called kin."""

MOST_WORDS = 4
"""Parts of “her sister's husband's brother” beyond which a chain says nothing to anyone."""


class By(StrEnum):
    """How two people are kin."""

    SELF = "self"
    BLOOD = "blood"
    MARRIAGE = "marriage"
    STEP = "step"
    ADOPTION = "adoption"
    FOSTERING = "fostering"


@dataclass(frozen=True, slots=True, kw_only=True)
class Kinship:
    """What `other` is to somebody: `term` is one word or the learned form (“first cousin once removed”), `parts` what a
    family says, from whoever it is said to (`mother`, `cousin`: the mother's cousin). `up` and `down` are the
    generations by blood, `degree` their sum."""

    term: str
    parts: tuple[str, ...]
    by: By
    up: int = 0
    down: int = 0
    half: bool = False

    @property
    def degree(self) -> int:
        return self.up + self.down

    @property
    def words(self) -> str:
        """`mother's cousin`."""
        return said_parts(self.parts, ENGLISH)


@dataclass(frozen=True, slots=True)
class _Blood:
    up: int
    down: int
    half: bool


_RAISED = (
    ("adoptive_parents", "adoptive", "adopted", By.ADOPTION),
    ("foster_parents", "foster", "foster", By.FOSTERING),
)
"""(links of a person, word for parents and siblings, word for children, how)."""


class Kin:
    """The links of everyone in a registry, and what follows from them. Unknown ids and loops are borne."""

    def __init__(self, people: Mapping[str, Person]) -> None:
        self._people = people
        self._parents: dict[str, tuple[str, ...]] = {}
        self._children: dict[str, list[str]] = {}
        self._spouses: dict[str, list[str]] = {}
        self._brought_up: dict[str, list[str]] = {}
        self._told_mothers = {ident for person in people.values() for ident in person.mothers}
        self._told_fathers = {ident for person in people.values() for ident in person.parents} - self._told_mothers
        for person in people.values():
            self._parents[person.id] = tuple(dict.fromkeys(p for p in person.parents if p in people and p != person.id))
            for parent in self._parents[person.id]:
                self._children.setdefault(parent, []).append(person.id)
            for parent in (*person.adoptive_parents, *person.foster_parents):
                self._brought_up.setdefault(parent, []).append(person.id)
            for spouse in person.spouses:
                if spouse in people and spouse != person.id:
                    _both(self._spouses, person.id, spouse)

    def parents(self, ident: str) -> tuple[str, ...]:
        return self._parents.get(ident, ())

    def children(self, ident: str) -> tuple[str, ...]:
        return tuple(self._children.get(ident, ()))

    def spouses(self, ident: str) -> tuple[str, ...]:
        return tuple(self._spouses.get(ident, ()))

    def siblings(self, ident: str) -> tuple[str, ...]:
        """Everyone who shares a parent, half siblings too."""
        siblings = (child for parent in self.parents(ident) for child in self.children(parent) if child != ident)
        return tuple(dict.fromkeys(siblings))

    def is_half(self, sibling: str, other_sibling: str) -> bool:
        """Whether two siblings share one parent and each has another one told."""
        mine, theirs = set(self.parents(sibling)), set(self.parents(other_sibling))
        return len(mine & theirs) == 1 and len(mine) > 1 and len(theirs) > 1

    def ancestors(self, ident: str) -> dict[str, int]:
        """Everyone above, and themselves, with the fewest generations to each."""
        generations = {ident: 0}
        waiting = deque([ident])
        while waiting:
            person = waiting.popleft()
            for parent in self.parents(person):
                if parent not in generations and generations[person] < MOST_STEPS:
                    generations[parent] = generations[person] + 1
                    waiting.append(parent)
        return generations

    def own_ancestors(self) -> list[str]:
        """People who come out as their own ancestors: impossible, and so a mistake in the links."""
        state: dict[str, int] = {}
        looped: set[str] = set()
        for start in self._parents:
            if start not in state:
                self._climb(start, state, looped)
        return sorted(looped)

    def _climb(self, start: str, state: dict[str, int], looped: set[str]) -> None:
        """Depth-first over parents, without recursion: 1 on the way, 2 done."""
        path: list[tuple[str, int]] = [(start, 0)]
        state[start] = 1
        while path:
            person, at = path[-1]
            if at == len(self.parents(person)):
                state[person] = 2
                path.pop()
                continue
            path[-1] = (person, at + 1)
            parent = self.parents(person)[at]
            if state.get(parent) == 1:
                looped |= {ident for ident, _ in path[[ident for ident, _ in path].index(parent) :]}
            elif parent not in state:
                state[parent] = 1
                path.append((parent, 0))

    def between(self, ego: str, relative: str) -> Kinship | None:
        """What `relative` is to `ego`; None if no kinship is known, or it is too far to say."""
        if ego == relative:
            return Kinship(term="self", parts=("self",), by=By.SELF)
        kinship = self._by_blood(ego, relative) or self._by_marriage(ego, relative) or self._by_raising(ego, relative)
        kinship = kinship or self._by_step(ego, relative)
        return kinship or self._in_law(ego, relative) or self._chain(ego, relative)

    # by blood

    def _blood(self, ego: str, relative: str) -> _Blood | None:
        mine, theirs = self.ancestors(ego), self.ancestors(relative)
        shared = [
            (mine[ancestor] + theirs[ancestor], min(mine[ancestor], theirs[ancestor]), mine[ancestor])
            for ancestor in theirs
            if ancestor in mine
        ]
        if not shared:
            return None
        degree, _, up = min(shared)
        down = degree - up
        tops = [
            (child, other_child)
            for nearest in theirs
            if up and down and mine.get(nearest) == up and theirs[nearest] == down
            for child in self._below(nearest, ego, up - 1)
            for other_child in self._below(nearest, relative, down - 1)
            if child != other_child
        ]
        return _Blood(up, down, bool(tops) and all(self.is_half(child, other_child) for child, other_child in tops))

    def _below(self, ancestor: str, ident: str, generations: int) -> list[str]:
        """The children of an ancestor that stand that many generations above someone."""
        depth = self.ancestors(ident)
        return [child for child in self.children(ancestor) if depth.get(child) == generations]

    def _by_blood(self, ego: str, relative: str) -> Kinship | None:
        blood = self._blood(ego, relative)
        if blood is None:
            return None
        term = blood_term(blood.up, blood.down, self._sex(relative), half=blood.half)
        return Kinship(
            term=term, parts=self._said(ego, relative, blood, term), by=By.BLOOD, up=blood.up, down=blood.down,
            half=blood.half,
        )  # fmt: skip

    def _said(self, ego: str, relative: str, blood: _Blood, term: str) -> tuple[str, ...]:
        """A cousin once removed upwards is said as the parent's cousin; other terms as they are."""
        if min(blood.up, blood.down) < 2:
            return (term,)
        if blood.up == blood.down:
            return (term if blood.up > 2 else term.replace("first cousin", "cousin"),)
        if blood.up > blood.down:
            depths = self.ancestors(relative)
            for parent in self.parents(ego):
                between = self._blood(parent, relative)
                if between and parent not in depths and (between.up, between.down) == (blood.up - 1, blood.down):
                    inner = self._said(
                        parent, relative, between, blood_term(between.up, between.down, self._sex(relative))
                    )
                    return (gendered("parent", self._sex(parent)), *inner)
            return (term,)
        for parent in self.parents(relative):
            between = self._blood(ego, parent)
            if between and (between.up, between.down) == (blood.up, blood.down - 1):
                inner = self._said(ego, parent, between, blood_term(between.up, between.down, self._sex(parent)))
                return (*inner, gendered("child", self._sex(relative)))
        return (term,)

    # by marriage and step

    def _by_marriage(self, ego: str, relative: str) -> Kinship | None:
        if relative in self.spouses(ego):
            return _wed(gendered("spouse", self._sex(relative)))
        return None

    def near(self, ident: str) -> tuple[str, ...]:
        """Everyone who is linked to somebody."""
        raised = (*self.raised_by(ident), *self.raised(ident))
        return (*self.parents(ident), *self.children(ident), *self.spouses(ident), *raised)

    def raised(self, ident: str) -> tuple[str, ...]:
        """Adopted and foster children."""
        return tuple(self._brought_up.get(ident, ()))

    def raised_by(self, ident: str) -> tuple[str, ...]:
        """Adoptive and foster parents."""
        return tuple(parent for row in _RAISED for parent in self._raised(ident, row[0]))

    def _raised(self, ident: str, field: str) -> tuple[str, ...]:
        return tuple(parent for parent in getattr(self._people.get(ident), field, ()) if parent in self._people)

    def _by_raising(self, ego: str, relative: str) -> Kinship | None:
        sex = self._sex(relative)
        for field, of_parents, of_children, by in _RAISED:
            mine, theirs = self._raised(ego, field), self._raised(relative, field)
            if relative in mine:
                return Kinship(term=(t := f"{of_parents} {gendered('parent', sex)}"), parts=(t,), by=by)
            if ego in theirs:
                return Kinship(term=(t := f"{of_children} {gendered('child', sex)}"), parts=(t,), by=by)
            if set(mine) & {*theirs, *self.parents(relative)} or set(theirs) & set(self.parents(ego)):
                return Kinship(term=(t := f"{of_parents} {gendered('sibling', sex)}"), parts=(t,), by=by)
        return None

    def _by_step(self, ego: str, relative: str) -> Kinship | None:
        sex = self._sex(relative)
        if any(relative in self.spouses(parent) for parent in self.parents(ego)):
            return Kinship(term=(t := f"step{gendered('parent', sex)}"), parts=(t,), by=By.STEP)
        if any(parent in self.spouses(ego) for parent in self.parents(relative)):
            return Kinship(term=(t := f"step{gendered('child', sex)}"), parts=(t,), by=By.STEP)
        married = {spouse for parent in self.parents(ego) for spouse in self.spouses(parent)}
        if married & set(self.parents(relative)):
            term = "stepsister or stepbrother" if not is_told(sex) else f"step{gendered('sibling', sex)}"
            return Kinship(term=term, parts=(term,), by=By.STEP)
        return None

    def _in_law(self, ego: str, relative: str) -> Kinship | None:
        sex = self._sex(relative)
        for spouse in self.spouses(ego):
            blood = self._blood(spouse, relative)
            if blood and (blood.up, blood.down) == (1, 0):
                return _wed(f"{gendered('parent', sex)}-in-law")
            if blood and (blood.up, blood.down) == (1, 1):
                return _wed(_sibling_in_law(sex))
        for spouse in self.spouses(relative):
            blood = self._blood(ego, spouse)
            if blood and (blood.up, blood.down) == (0, 1):
                return _wed(f"{gendered('child', sex)}-in-law")
            if blood and (blood.up, blood.down) == (1, 1):
                return _wed(_sibling_in_law(sex))
            if blood and blood.up > 1 and blood.down == 1:
                return _wed(f"{blood_term(blood.up, 1, sex)} by marriage")
            if blood:
                theirs = self._by_blood(ego, spouse)
                assert theirs is not None  # found by blood just above
                return _wed(*theirs.parts, gendered("spouse", sex))
        for spouse in self.spouses(ego):
            theirs = self._by_blood(spouse, relative)
            if theirs:
                return _wed(gendered("spouse", self._sex(spouse)), *theirs.parts)
        return self._spouses_sibling_wed(ego, relative)

    def _spouses_sibling_wed(self, ego: str, relative: str) -> Kinship | None:
        """The husband of a spouse's sister is a brother-in-law too (RoleCode BROINLAW, third sense)."""
        for spouse in self.spouses(ego):
            for sibling in self.siblings(spouse):
                if relative in self.spouses(sibling):
                    return _wed(_sibling_in_law(self._sex(relative)))
        return None

    def _chain(self, ego: str, relative: str) -> Kinship | None:
        """The shortest way over the links, said part by part: “sister's husband's brother”."""
        path = self._path(ego, relative)
        if not path:
            return None
        parts: list[str] = []
        start = 0
        while start < len(path) - 1:
            end = len(path) - 1
            while end > start + 1 and not self._plain(path[start], path[end]):
                end -= 1
            step = self._plain(path[start], path[end])
            assert step is not None  # neighbours on a path are parent and child, or married
            parts += step.parts
            start = end
        if len(parts) > MOST_WORDS:
            return None
        return _wed(*parts)

    def _plain(self, ego: str, relative: str) -> Kinship | None:
        return self._by_blood(ego, relative) or self._by_marriage(ego, relative) or self._by_step(ego, relative)

    def _path(self, ego: str, relative: str) -> list[str]:
        before: dict[str, str] = {ego: ""}
        waiting = deque([(ego, 0)])
        while waiting:
            person, steps = waiting.popleft()
            if person == relative:
                path = [person]
                while before[path[-1]]:
                    path.append(before[path[-1]])
                return path[::-1]
            if steps == MOST_STEPS:
                continue
            for near in (*self.parents(person), *self.children(person), *self.spouses(person)):
                if near not in before:
                    before[near] = person
                    waiting.append((near, steps + 1))
        return []

    def _sex(self, ident: str) -> str:
        sex = self._people[ident].sex if ident in self._people else ""
        return sex or ("f" if ident in self._told_mothers else "m" if ident in self._told_fathers else "")


def _both(links: dict[str, list[str]], person: str, spouse: str) -> None:
    for here, there in ((person, spouse), (spouse, person)):
        known = links.setdefault(here, [])
        if there not in known:
            known.append(there)


def _wed(*parts: str) -> Kinship:
    return Kinship(term=said_parts(parts, ENGLISH), parts=parts, by=By.MARRIAGE)


def _sibling_in_law(sex: str) -> str:
    return f"{gendered('sibling', sex)}-in-law" if is_told(sex) else "brother- or sister-in-law"


def possessive(name: str) -> str:
    """Ruth's; James's (as most style books have it)."""
    return f"{name}'s"


def kin_words(kin: Kin, ego: Person, relative: Person, say: Say = ENGLISH) -> str:
    """“Ruth's mother's cousin”, or an empty string where no kinship is known, or the language has no word for it."""
    kinship = kin.between(ego.id, relative.id)
    if kinship is None or kinship.by is By.SELF:
        return ""
    if say == ENGLISH:
        return f"{possessive(called(ego))} {kinship.words}"
    term = said_parts(kinship.parts, say)
    return say("{kin} of {names}", kin=term, names=called(ego)) if term else ""


def called(person: Person) -> str:
    """How a person is called in a sentence about kin: by the first given name, else the whole name."""
    return person.calls[0].split()[0] if person.calls and person.calls[0].split() else person.name


def table(kin: Kin, ego: str, people: Iterable[Person]) -> list[tuple[Person, Kinship]]:
    """Everyone who is kin to `ego`, the nearest first, then by name."""
    near = {ego: 0}
    waiting = deque([ego])
    while waiting:
        person = waiting.popleft()
        if near[person] == MOST_STEPS:
            continue
        for relative in kin.near(person):
            if relative not in near:
                near[relative] = near[person] + 1
                waiting.append(relative)
    pairs = [(person, kinship) for person in people if person.id in near and (kinship := kin.between(ego, person.id))]
    return sorted((pair for pair in pairs if pair[1].by is not By.SELF), key=lambda p: (near[p[0].id], p[0].sort_name))

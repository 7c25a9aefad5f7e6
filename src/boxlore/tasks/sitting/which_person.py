"""Who is meant, where told words leave it open: several bear the name, or the words may be nobody's name.

The choices are those of the registry who may be meant, the teller or the teller's own kin where the words say so (“me”,
“Mum”), somebody new, and nobody, who stands first where the words rule somebody out. As with places (`which_place`) a
choice is kept as the confirmed reading of the same statement: the words stay as they were told, and undo brings the
question back. “Nobody” takes only the question away. Whoever was named only in a remark (“Anna leaning on Dot”) is told
by the choice, in words of their own. What a voice calls somebody in several pictures is asked in the first of them, and
the choice is kept for all that wait for it.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import takewhile
from typing import Any

from boxlore.core.errors import WrongUse
from boxlore.core.fields.language import language_tag
from boxlore.core.findings import several
from boxlore.core.people.kin import possessive
from boxlore.core.people.names.tokens import Token, token_of, tokens_of, written
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.names.words_table import KIN_ALONE, KIN_WORDS, TITLES
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_meant import known_by, named, told_apart, with_birth
from boxlore.core.people.who_is_where.frames import says_before
from boxlore.core.people.who_is_where.kin_words import ME_ALONE, may_be_own, own_relation, relation
from boxlore.core.people.who_is_where.nobody_seen import tells_of_nobody
from boxlore.core.people.who_is_where.position_words_table import BEFORE_A_NAME, NOUNS
from boxlore.core.people.who_is_where.reader import read_who
from boxlore.core.people.who_is_where.remarks import is_absent
from boxlore.core.people.who_is_where.tokens import Element, elements_of
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.records.people_asked import (
    OF_A_REMARK,
    answers_about,
    asked_by,
    is_in_a_remark,
    is_of_several,
    proposed,
)
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Act
from boxlore.tasks.sitting.numbered_choice import numbered
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.same_given_name import waiting_alike, without_whose
from boxlore.tasks.telling.understanding import person_reading

MOST_KNOWN = 6
"""So many of the registry are offered."""


@dataclass(frozen=True, slots=True)
class Meant:
    """One choice in words: somebody of the registry (`person`, an id), the teller's own or somebody new (`name`), or
    nobody (neither), of whom something may be noted."""

    words: str
    person: str = ""
    name: str = ""
    own: str = ""
    """What the name tells of the one who says it: `self` for `me`, `mother` for `Mum`."""
    several: tuple[str, ...] = ()
    """The names of several new people, all of whom are meant."""
    note: str = ""
    """What is noted where nobody is meant by it: on which side somebody known stands."""


@dataclass(frozen=True, slots=True)
class OpenPerson:
    """A statement about somebody that asks who that is. `note` is the statement that notes the question; it may be
    empty where several of the registry bear the name. `remarked` is a name that stands only in a remark of it. `alike`
    are the statements (ids) that the same voice told in the same words and that wait for the same answer."""

    view: StatementView
    asks: str
    note: str
    choices: tuple[Meant, ...]
    remarked: str = ""
    alike: tuple[str, ...] = ()

    @property
    def asked_before(self) -> bool:
        """Whether an earlier picture asks the same, so that it need not be put again."""
        return bool(self.alike) and self.alike[0] != self.view.statement

    @property
    def names(self) -> list[str]:
        """The choices as one reads them, in their order: the first is number 1."""
        return [choice.words for choice in self.choices]


def open_person(sitting: Sitting, record: Record) -> OpenPerson | None:
    """The first question that is open about who is in the picture; None if there is none."""
    return next(open_people(sitting, record), None)


def open_people(sitting: Sitting, record: Record) -> Iterator[OpenPerson]:
    """Every question that is open about who is in the picture."""
    rows = [said for said, _ in sitting.collection.store.statements(Subject(Kind.ITEM, record.id))]
    notes = [said for said in rows if said.field == "asked" and said.words]
    people = sitting.collection.people().values()
    for view in record.all("person"):
        note, name = next(
            ((said, asked) for said in notes if (asked := asked_by(said.words, view.words))), (None, view.words)
        )
        if view.meant or not (view.asks or note):
            continue
        offered = proposed(note.words) if note else []
        if view.asks:
            name = without_whose(view.words)
            names = sitting.teller.understanding.known_names
            known = named(people, view.words, names)
            name = view.words if known else name
            known = known or named(people, name, names) or named(people, _head(name, names), names)
            asks = f"“{view.words}”: who is that?"
            if len(known) == 1:
                asks = f"“{view.words}”: is that {known[0].name}, told before, or somebody else?"
            elif known:
                asks = f"“{view.words}” may be {several(len(known), 'person', 'people')}: who is meant?"
        else:
            known, asks = list(_who_may_be(people, name, *offered)), ""
        nobody = (_NOBODY,) if note and not view.asks else ()
        together = offered or _named_together(name)
        of_group = note is not None and is_of_several(note.words)
        all_of_them = (Meant(f"All of them: {', '.join(together)}", several=tuple(together)),)
        is_row = note is not None and "several people" in note.words and len(offered) > 1
        somebody = (
            *(all_of_them if is_row else ()),
            *_known(known),
            *_new(name, sitting.teller.narrator(view.source)[1], *offered, whole=not of_group),
            *(all_of_them if note is not None and not offered and len(together) > 1 else ()),
        )
        choices = (*nobody, *somebody) if (of_group and not offered) or _rules_out(view.words) else (*somebody, *nobody)
        alike: list[str] = []
        if view.asks and not note:
            ids = [person.id for person in known]
            alike = waiting_alike(sitting.collection, view.statement, view.source, view.words, ids)
        yield OpenPerson(view, note.words if note else asks, note.id if note else "", choices, alike=tuple(alike))
    yield from _of_remarks(sitting, record, notes)
    yield from _about_known(record, notes)


_NOBODY = Meant("Nobody: the words stay as told")
_AS_TOLD = Meant("Not known: the words stay as told")


def _head(words: str, names: KnownNames) -> str:
    """The name alone of words that tell more of one person: `Anna` of `Anna with some girls from school`."""
    people = read_who(words, names).people
    return people[0].words if len(people) == 1 else ""


def _rules_out(words: str) -> bool:
    """Whether the words say that somebody is not in the picture (`Mum took it`, `Tom (missing)`), or no word of them is
    of somebody (`half cut off`, `just the house`)."""
    elements = elements_of(words)
    is_out = any(is_absent(told) for told in (elements, *(element.inside for element in elements)))
    return (
        is_out
        or tells_of_nobody(elements)
        or not (_names_within(words) or any(_may_be_somebody(elements, at) for at in range(len(elements))))
    )


def _may_be_somebody(elements: Sequence[Element], at: int) -> bool:
    """Whether a word may be of somebody: a name, kin, a kind of people, or one large where no sentence begins."""
    element, behind = elements[at], elements[at + 1 : at + 2]
    is_name = token_of(element.text).is_given or (element.is_large and (at > 0 or not behind or behind[0].is_large))
    is_own = (
        element.plain in KIN_WORDS or element.plain in ME_ALONE or element.plain in TITLES or relation(element) != ""
    )
    return is_name or is_own or NOUNS.get(element.plain) in ("one", "many")


def _of_remarks(sitting: Sitting, record: Record, notes: Sequence[Statement]) -> Iterator[OpenPerson]:
    """The questions about those who are named only in what is told of somebody else."""
    people = sitting.collection.people().values()
    for note in notes:
        asked = OF_A_REMARK.match(note.words)
        view = next((view for view in record.all("person") if is_in_a_remark(note.words, view.words)), None)
        if asked and view:
            name = asked[1] or "me"
            teller = sitting.teller.narrator(view.source)[1]
            somebody = () if is_of_several(note.words) else (*_known(known_by(people, name)), *_new(name, teller))
            was_said = says_before(elements_of(asked[2]))  # `We always said it was Vera`
            choices = (_NOBODY, *somebody) if was_said else (*somebody, _NOBODY)
            yield OpenPerson(view, note.words, note.id, choices, name)


def _about_known(record: Record, notes: Sequence[Statement]) -> Iterator[OpenPerson]:
    """The questions about those who are known: on which side one stands, of which family one is."""
    for note in notes:
        views = (*record.all("person"), *record.all("note"))
        told = ((view, answers_about(note.words, view.words)) for view in views)
        view, answers = next(((view, answers) for view, answers in told if answers is not None), (None, ()))
        if view is not None:
            noted = (Meant(answer[0].upper() + answer[1:], note=f"{note.words} {answer}") for answer in answers)
            yield OpenPerson(view, note.words, note.id, (*noted, _AS_TOLD))


def _who_may_be(people: Iterable[Person], words: str, *offered: str) -> Iterator[Person]:
    """Everyone known by a name that the question offers, by the words, by the last of them (`Cyril Dawes` of `Batsman
    Cyril Dawes`), or by a name in them (`Anna` and `Ruth` of `Either Anna or Ruth`)."""
    tokens = tokens_of(words)
    everyone = list(people)
    seen: set[str] = set()
    for name in (*offered, *(written(tokens[at:]) for at in range(len(tokens))), *_names_within(words)):
        for person in known_by(everyone, name):
            if person.id not in seen:
                seen.add(person.id)
                yield person


def _known(people: Sequence[Person]) -> Iterator[Meant]:
    """Some of the registry; an id stands only behind those that else read alike."""
    shown = people[:MOST_KNOWN]
    names = [with_birth(person) for person in shown]
    for person, name in zip(shown, names, strict=True):
        yield Meant(told_apart(person) if names.count(name) > 1 else name, person=person.id)


def _new(words: str, teller: str, *offered: str, whole: bool = True) -> Iterator[Meant]:
    """Somebody new of each name that the question offers, the teller and the teller's own kin of each word within that
    says so, else somebody new of each name, and of all the words (`whole`), which several are not; but nobody is called
    “me”: where no teller is named yet, that waits for one."""
    for name in dict.fromkeys((*offered, *_names_within(words), *((words,) if whole else ()))):
        own = own_relation(name)
        if teller and (kin := may_be_own(name)):
            yield Meant(f"{possessive(teller)} {kin}", name=name, own=kin)
        if own == "self" and not teller:
            continue
        if not (own and teller):
            yield Meant(f"Somebody new: {name}", name=name)
        elif own == "self":
            yield Meant(f"{teller}, who tells", name=name, own=own)
        else:
            yield Meant(f"{possessive(teller)} {own}", name=name, own=own)


def _names_within(words: str) -> list[str]:
    """The names that are not all of the words: a given name, a title or a family's own word of kin, and what is written
    large behind it (`Ruth Gower` of `Wedding of Ruth Gower`, `Fred Moss` of `Fred Moss Nell Moss`, `Mum` of `Mum's
    hand`, `Mr Sugden` of `old Mr Sugden`), else the last words that are large (`Tormod Lien` of `i døra står Tormod
    Lien`)."""
    names: list[list[Token]] = []
    goes_on = False
    tokens = tokens_of(words)
    for at, token in enumerate(tokens):
        bare = token_of(token.text.rstrip(",;").removesuffix("'s").removesuffix("’s"))
        is_large = bare.text[:1].isupper()
        behind = tokens[at + 1].text[:1].isupper() if at + 1 < len(tokens) else False
        leads = behind and bare.plain in _LEADS and bare.text == token.text and not goes_on
        opens = (is_large and (bare.is_given or bare.plain in KIN_ALONE)) or bare.plain in ME_ALONE or leads
        belongs = opens or (goes_on and is_large)
        if opens and not (goes_on and (names[-1][-1].is_given or _leads(names[-1]))):
            names.append([bare])
        elif belongs:
            names[-1].append(bare)
        goes_on = belongs and bare.text == token.text
    told = (written(name) for name in names or [_last_large(tokens)])
    return [name for name in dict.fromkeys(told) if name and name != words]


def _named_together(words: str) -> list[str]:
    """The names within that are joined: `Leida` and `Juhan Tamm` of `peal Leida ja Juhan Tamm`; none where one of them
    may be meant."""
    kinds = [element.kind for element in elements_of(words)]
    return _names_within(words) if "and" in kinds and "or" not in kinds else []


_LEADS = TITLES.union(KIN_WORDS) - BEFORE_A_NAME


def _leads(name: Sequence[Token]) -> bool:
    """Whether a name is only a title or a word of kin as yet, behind which the name itself follows."""
    return len(name) == 1 and name[0].plain in _LEADS


def _last_large(tokens: Sequence[Token]) -> list[Token]:
    """The words at the end that are written large, behind one that is not."""
    large = list(takewhile(lambda token: token.text[:1].isupper(), reversed(tokens)))
    return large[::-1] if len(large) < len(tokens) else []


def take_person(sitting: Sitting, record: Record, question: OpenPerson, number: int) -> str:
    """Keep that choice `number` (from 1) is meant. Returns it in words. Raises WrongUse for a number without one."""
    choice = numbered(question.choices, number)
    act = sitting.collection.act(f"who is meant: {(question.remarked or question.view.words)[:40]}")
    item, view = Subject(Kind.ITEM, record.id), question.view
    further: list[str] = []
    if choice.several:
        first, *others = choice.several
        act.readings.append((view.statement, person_reading(_made(sitting, view, first, act))))
        for name in others:
            told = act.state(item, "person", name, **_as_told(view), sitting=sitting.id)
            act.readings.append((told.id, person_reading(_made(sitting, view, name, act))))
    elif choice.person or choice.name:
        told = _told_too(sitting, question, item, act) if question.remarked else _said(sitting, view, item)
        if choice.own:
            if not sitting.teller.read_own(act, told, choice.name, choice.own):
                raise WrongUse(f"Several people are {choice.words}.", "Say the name of the one who is meant.")
        else:
            somebody = Subject(Kind.PERSON, choice.person) if choice.person else _made(sitting, view, choice.name, act)
            act.readings.append((told.id, person_reading(somebody)))
            further = [ident for ident in question.alike if ident != told.id]
            act.readings += [(ident, person_reading(somebody)) for ident in further]
    if choice.note:
        act.state(item, "note", choice.note, audience="keeper", sitting=sitting.id)
    if question.note:
        act.state(item, "asked", "", replaces=question.note, audience="keeper", sitting=sitting.id)
    sitting.finish(act, record.id)
    if further:
        return f"{choice.words}; in {several(len(further), 'further picture')} too"
    return choice.words


def _said(sitting: Sitting, view: StatementView, item: Subject) -> Statement:
    return next(said for said, _ in sitting.collection.store.statements(item) if said.id == view.statement)


def _told_too(sitting: Sitting, question: OpenPerson, item: Subject, act: Act) -> Statement:
    """A new statement that the one named in a remark is in the picture, said by whoever said the remark."""
    return act.state(item, "person", question.remarked, sitting=sitting.id, **_as_told(question.view))


def _as_told(view: StatementView) -> dict[str, Any]:
    return {
        "source": view.source,
        "audience": view.audience,
        "language": language_tag(view.language),
        "sure": view.sure,
    }


def _made(sitting: Sitting, view: StatementView, name: str, act: Act) -> Subject:
    person = act.new(Kind.PERSON)
    language = language_tag(view.language)
    name_told = act.state(person, "name", name, source=view.source, audience=view.audience, language=language)
    sitting.teller.read_into(act, name_told)
    return person

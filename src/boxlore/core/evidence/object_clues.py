"""Clues of the thing itself, by what is told of it and the table of `object_table`.

The years are those of the thing. A picture was taken before its print was made, so that the last years bound it always;
the first years do where the thing was in the camera, or where nothing says that it is a copy of another. Often nobody
tells that a print was made later from an old negative, so that all of it is likely and never sure. What is said not to
be such a thing, or to be a copy or an imitation of one, tells nothing of its years. Of words on a back, and of those
that tell of one, only what is printed or stuck there counts: writing may name anything else.
"""

import re
from collections.abc import Iterator, Sequence
from functools import cache

from boxlore.core.evidence.claims import Claim, not_after, not_before, of_item
from boxlore.core.evidence.even_years import number_of
from boxlore.core.evidence.object_table import BACK, BACKS, OBJECTS, Made
from boxlore.core.evidence.sentences import Sentence
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure, fold

TOLD = ("process", "note", "condition")
_IS_THIS = re.compile(
    r"^(?:(?:it|this|see|das|dies|ceci|c['’]|esto|questo|det|tama) ?(?:is|was|on|ist|est|es|e|ar|er)? )?"
    r"(?:an?|the|old|eine?|une?|vana) "
)
"""How a sentence begins, folded, that says what the thing itself is: others tell of things that somebody had."""
_FIRST_WORDS = re.compile(r"(?:\S+\s*){1,6}")
COPIES = ("same_picture", "print_from", "detail_of")
"""Kinds of relation that say that the thing may be a later copy."""

_CLAUSES = re.compile(r"[;.]\s")
_IS_ANOTHER = re.compile(
    r"\b(?:not|no|never|neither|nor|cannot|\w+n['’]t|cop(?:y|ies|ied)|modern|reprint\w*|reproduc\w+|facsimile\w*|"
    r"replica\w*|imitation\w*|fake\w*|instead|like|as if)\b"
)
"""Words that say that something is not the thing that is named beside them."""


def clues(record: Record, sentences: Sequence[Sentence]) -> Iterator[Claim]:
    is_copy = is_a_copy(record)
    said = [(words, view.speaker) for name in TOLD for view in record.all(name) for words in _CLAUSES.split(view.words)]
    said += [
        (_FIRST_WORDS.findall(sentence.words)[0], sentence.view.speaker)
        for sentence in sentences
        if sentence.view.field in ("title", "story") and _IS_THIS.match(fold(sentence.words) + " ")
    ]
    on_it = [(words, view.speaker) for view in record.all("inscription") for words in _CLAUSES.split(view.words)]
    on_it += [
        (sentence.words, sentence.view.speaker)
        for sentence in sentences
        if sentence.view.field in ("title", "story") and BACK.search(fold(sentence.words))
    ]
    told = [(*row, kinds_in(row[0])) for row in (*said, (record.kind, "the keeper"))]
    told += [(*row, _kinds_of_a_back(row[0])) for row in on_it if row not in said]
    posted = _posted(record)
    if posted:
        yield Claim(
            words=f"{record.number} was posted in {posted[0]}",
            source=posted[1],
            sure=Sure.LIKELY,
            limits=(not_after(of_item(record.id), number_of(posted[0], 12, 31)),),
        )
    for words, speaker, kinds in told:
        for made in kinds:
            last = max(made.last, posted[0]) if made.last and posted else made.last
            limits = [not_after(of_item(record.id), number_of(last, 12, 31))] if last else []
            if made.direct or not is_copy:
                limits.append(not_before(of_item(record.id), number_of(made.first, 1, 1)))
            yield Claim(
                words=f"{record.number}: “{one_line(words)}” ({speaker}), {in_years(made)}",
                source=made.source,
                sure=Sure.LIKELY,
                limits=tuple(limits),
            )


def _posted(record: Record) -> tuple[int, str] | None:
    """The year in which a card was posted, as it is told or stamped, and who says so: old stock was sold on for years,
    and a picture on it may be as young as the stamp."""
    found = [
        (int(match["year"]), view.speaker)
        for name in (*TOLD, "inscription", "story", "title")
        for view in record.all(name)
        for match in POSTED.finditer(fold(view.words))
    ]
    return max(found) if len({year for year, _ in found}) == 1 else None


POSTED = re.compile(
    r"\b(?:posted|postmark\w*|post mark|mailed|cancelled|franked|gelaufen|abgestempelt|poststempel|gestempelt|"
    r"postitempel|postitatud|postitempliga|oblitere\w*|cachet postal|circulada|matasellos|franqueada|timbro postale|"
    r"spedita|viaggiata|poststamplad|poststampel|poststempel\w*|afgestempeld)"
    r"(?:[ ,:.]+(?:[^\W\d_]{1,12}|\d{1,2}))*?[ ,:.]+(?P<year>(?:18|19|20)\d\d)(?!\d)"
)
"""How it is told, folded, in which year a card was posted; ours, common practice, no source."""

_COPY = re.compile(
    r"(?<!not )(?<!no )(?<!not a )(?<!kein )(?<!keine )\b(?:reprint\w*|(?:copy|later|modern|new) print|"
    r"(?:a|the|this|photo|modern) copy|copied|cop(?:y|ies) of|made from (?:the|an) old (?:negative|picture|photo\w*)|"
    r"neuabzug|nachdruck|abzug vom alten|reproduktion|koopia|retirage|reproduction|reimpresion|copia|ristampa|"
    r"reproducao|kopia|kopie|kopi)\b"
)
"""How it is told, folded, that a thing is a later print or a copy of another; ours, common practice, no source."""


def is_a_copy(record: Record) -> bool:
    """Whether a thing is related to its picture's other prints, or told to be a later print: it may be younger then."""
    told = (fold(view.words) for name in (*TOLD, "story", "title", "inscription") for view in record.all(name))
    return any(relation.kind in COPIES for relation in record.related) or any(map(_COPY.search, told))


def _kinds_of_a_back(words: str) -> tuple[Made, ...]:
    """The rows of what is printed or stuck on a back, as it is copied or told: writing on it may name anything else."""
    return tuple(made for made in kinds_in(words) if made.called[0].startswith(_ON_A_BACK))


_STAMP_BOX = ("azo", "velox")
_ON_A_BACK = (*_STAMP_BOX, "revenue stamp", "divided back", "undivided back")


@cache
def _boxes() -> tuple[tuple[frozenset[str], Made], ...]:
    """The stamp boxes, whose words may stand in any order and apart (“AZO, four small triangles, all up”)."""
    return tuple(
        (frozenset(re.findall(r"\w+", fold(name))), made)
        for made in OBJECTS
        for name in made.called
        if name.startswith(_STAMP_BOX)
    )


def _box_in(folded: str) -> list[Made]:
    """The stamp box most of whose words are told."""
    told = frozenset(re.findall(r"\w+", folded))
    meant = [(len(names), made) for names, made in _boxes() if names <= told]
    most = max((count for count, _ in meant), default=0)
    rows = dict.fromkeys(made for count, made in meant if count == most)
    return list(rows) if len(rows) == 1 else []


def kinds_in(words: str) -> tuple[Made, ...]:
    """The rows whose name stands in the words; a name that is part of a longer one there (“divided back” in “undivided
    back” and the like) is left out."""
    folded = fold(words)
    backs = _backs_in(folded)
    if not _any_name().search(folded) or _IS_ANOTHER.search(folded):
        return backs
    named = [(match.span(), made) for pattern, made in _patterns() for match in pattern.finditer(folded)]
    whole = [
        made
        for (begins, ends), made in named
        if not any(b <= begins and ends <= e and (b, e) != (begins, ends) for (b, e), _ in named)
    ]
    return tuple(dict.fromkeys((*whole, *_box_in(folded), *backs)))


def _backs_in(folded: str) -> tuple[Made, ...]:
    """The row of a postcard whose back is told in words (“a line down the middle of the back”)."""
    if not BACK.search(folded):
        return ()
    name = next((name for name, way in BACKS if way.search(folded)), "")
    return tuple(made for made in OBJECTS if name in made.called)


@cache
def _patterns() -> list[tuple[re.Pattern[str], Made]]:
    names = [(fold(name), made) for made in OBJECTS for name in made.called]
    return [(re.compile(rf"(?<!\w){re.escape(name)}(?!\w)"), made) for name, made in names]


@cache
def _any_name() -> re.Pattern[str]:
    """One search for all of them, which tells fast of most words that none is there."""
    return re.compile("|".join((*_STAMP_BOX, *(re.escape(fold(name)) for made in OBJECTS for name in made.called))))


def in_years(made: Made) -> str:
    """“made 1863 to 1924, mostly 1867 to 1900”"""
    mostly = f", mostly {made.usual_first} {f'to {made.usual_last}' if made.usual_last else 'on'}"
    where = f" in the {made.where}" if made.where else ""
    return f"made{where} {f'{made.first} to {made.last}' if made.last else f'from {made.first} on'}{mostly}"

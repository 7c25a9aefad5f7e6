"""The index of places: the shipped data as one SQLite file in the user's cache folder, shared by all collections.

It is built under a temporary name and renamed in one step. So two programs that start at once, or a full disk, leave
either no index or a whole one; the second one waits for the first. The version of the data is part of the file's name.
"""

import errno
import hashlib
import lzma
import os
import shutil
import sqlite3
import sys
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing
from pathlib import Path

from boxlore.core.errors import CouldNot, in_words
from boxlore.core.places.area_names_table import AREA_NAMES, REPLACED
from boxlore.core.places.other_names_table import ALSO, NICKNAMES
from boxlore.core.places.quarters import quarters
from boxlore.core.places.quarters_table import QUARTERS
from boxlore.core.places.renamed_cities_table import RENAMED
from boxlore.core.places.taking_apart import fold_place
from boxlore.disk.unfinished import PART, clear_remains, is_worked_at, unfinished_folder

DATA = Path(__file__).parent / "data"
FORMAT = "4"
"""Changed with `_TABLES`, so that an index of the old shape is not opened."""

BuildProgress = Callable[[str, int, int], None]
"""Called as (sentence about the stage, steps done, steps in all)."""

_TABLES = """
CREATE TABLE place (
    id INTEGER PRIMARY KEY, name TEXT, country TEXT, area1 TEXT, area2 TEXT, lat REAL, lon REAL, population INTEGER
) STRICT;
CREATE TABLE area (code TEXT PRIMARY KEY, name TEXT) STRICT, WITHOUT ROWID;
CREATE TABLE area_name (folded TEXT, code TEXT, PRIMARY KEY (folded, code)) STRICT, WITHOUT ROWID;
CREATE TABLE quarter (id INTEGER PRIMARY KEY, city INTEGER) STRICT;
CREATE TABLE name (
    folded TEXT, place INTEGER, main INTEGER, PRIMARY KEY (folded, place)
) STRICT, WITHOUT ROWID;
"""


ELSEWHERE = "It needs about 60 MB; set BOXLORE_CACHE to another folder."


def cache_folder() -> Path:
    """The user's folder for files that can be made again, as each system has it; BOXLORE_CACHE overrides it.

    Raises CouldNot for a user without a home.
    """
    if override := os.environ.get("BOXLORE_CACHE"):
        return Path(override)
    if sys.platform != "win32" and sys.platform != "darwin" and (named := os.environ.get("XDG_CACHE_HOME")):
        return Path(named) / "boxlore"
    try:
        home = Path.home()
    except RuntimeError as error:
        raise CouldNot(
            "The index of places cannot be kept, for you have no home folder.", "Set HOME or BOXLORE_CACHE to a folder."
        ) from error
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", home / "AppData" / "Local")) / "boxlore"
    return home / ("Library/Caches" if sys.platform == "darwin" else ".cache") / "boxlore"


def index_path(folder: Path, data: Path = DATA, extra: Path | None = None) -> Path:
    """The path of the index for this version of the data and of our tables of names, and this state (size, time) of
    the keeper's own file.
    """
    version = (
        (data / "version.txt").read_text(encoding="utf-8")
        + FORMAT
        + repr((ALSO, NICKNAMES, RENAMED, AREA_NAMES, QUARTERS))
    )
    if extra is not None:
        status = extra.stat()
        version += f"{extra.resolve()} {status.st_size} {status.st_mtime_ns}"
    return folder / f"places-{hashlib.sha256(version.encode()).hexdigest()[:12]}.sqlite"


def make_index(path: Path, progress: BuildProgress, data: Path = DATA, extra: Path | None = None) -> None:
    """Build the index at `path`. Raises CouldNot when the disk refuses, and leaves nothing behind then."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        if path.is_dir():  # said before the seconds that the index takes, not after them
            raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR), str(path))
        clear_remains(path.parent)  # of another version too: nobody builds that again
        if _was_built_meanwhile(path):
            return
        with unfinished_folder(path) as folder:  # SQLite may keep files of its own beside a database
            unfinished = folder / path.name
            if extra is None or not _widened(index_path(path.parent, data), unfinished, extra):
                with closing(sqlite3.connect(unfinished, isolation_level=None)) as db:
                    _fill(db, progress, data, extra)
            os.replace(unfinished, path)
    except (OSError, sqlite3.OperationalError) as error:
        full = getattr(error, "errno", None) == errno.ENOSPC or "full" in str(error)
        why = "the disk is full" if full else in_words(error)
        raise CouldNot(
            f"The index of places could not be made in {path.parent}: {why}.",
            ELSEWHERE,
        ) from error


def _was_built_meanwhile(path: Path) -> bool:
    """Wait while another program builds this index, which takes seconds. Whether it has."""
    part = path.with_name(path.name + PART)
    was_begun = False
    while is_worked_at(part):
        was_begun = True
        time.sleep(0.05)
    return was_begun and path.is_file()


def _widened(shipped: Path, to: Path, extra: Path) -> bool:
    """Copy the index of the shipped data to `to` and add the keeper's own file, which takes seconds less than to begin
    anew. False, with nothing left at `to`, if that index is not there or is damaged. A place that the file calls
    otherwise keeps the names that it had.
    """
    if not shipped.is_file():
        return False
    shutil.copyfile(shipped, to)
    try:
        with closing(sqlite3.connect(to, isolation_level=None)) as db:
            db.execute("PRAGMA synchronous = OFF")
            db.execute("BEGIN")
            _add_extra(db, extra)
            add_names_of_tables(db)
            add_quarters(db)
            db.execute("COMMIT")
            db.execute("ANALYZE")
    except sqlite3.DatabaseError:
        to.unlink()
        return False
    return True


def _fill(db: sqlite3.Connection, progress: BuildProgress, data: Path, extra: Path | None) -> None:
    db.execute("PRAGMA journal_mode = OFF")
    db.execute("PRAGMA synchronous = OFF")
    db.execute("PRAGMA cache_size = -32768")  # 32 MB: names come in no order, each into another page
    db.executescript(_TABLES)
    cities = _lines(data / "cities.tsv.xz")
    total = len(cities)
    db.execute("BEGIN")
    for start in range(0, total, 20_000):
        rows = [line.split("\t") for line in cities[start : start + 20_000]]
        add_places(db, rows)
        progress("Making the index of places", min(start + 20_000, total), total)
    if extra is not None:
        _add_extra(db, extra)
    add_names_of_tables(db)
    add_quarters(db)
    shipped = dict(line.split("\t") for line in _lines(data / "areas.tsv.xz"))
    areas = list(({code: name for code, name in shipped.items() if code[:2] not in REPLACED} | AREA_NAMES).items())
    db.executemany("INSERT OR IGNORE INTO area VALUES (?, ?)", areas)
    names = ((fold_place(name), code) for code, name in areas)
    db.executemany("INSERT OR IGNORE INTO area_name VALUES (?, ?)", names)
    db.execute("COMMIT")
    db.execute("ANALYZE")


def _add_extra(db: sqlite3.Connection, extra: Path) -> None:
    with open(extra, encoding="utf-8") as file:
        add_places(db, (line.rstrip("\n").split("\t") for line in file))


def add_places(db: sqlite3.Connection, rows: Iterable[list[str]]) -> None:
    """Add places with all their names. A row has the columns that `make.city_lines` writes."""
    places = list(rows)
    db.executemany("INSERT OR REPLACE INTO place VALUES (?, ?, ?, ?, ?, ?, ?, ?)", (row[:8] for row in places))
    db.executemany("INSERT OR IGNORE INTO name VALUES (?, ?, ?)", _names(places))


def add_names_of_tables(db: sqlite3.Connection) -> None:
    """Add the names of our own tables (`other_names_table`, `renamed_cities_table`), each to the largest place of its
    name and country.
    """
    renamed = [(row.now, row.country, tuple(name for name, _, _ in row.names)) for row in RENAMED]
    query = """INSERT OR IGNORE INTO name
        SELECT ?, id, 0 FROM place WHERE name = ? AND country = ? ORDER BY population DESC LIMIT 1"""
    db.execute("CREATE INDEX IF NOT EXISTS by_name ON place (name)")
    spellings = ((fold_place(name), now, country) for now, country, names in (*ALSO, *renamed) for name in names)
    db.executemany(query, spellings)
    nicknames = ((fold_place(name), now, country) for now, country, names in NICKNAMES for name in names)
    db.executemany(_NICKNAMED, nicknames)


def add_quarters(db: sqlite3.Connection) -> None:
    """Add the quarters of `quarters_table` anew, as places with ids below 0, without people, where their city is.

    One that the gazetteer has itself near its city only gets its other names there. A name that a place of SHARED_WITH
    people bears too, or that another city's quarter has, gets main = 0: `matching` takes it for the quarter only where
    the family is at home.
    """
    for table in ("quarter", "place", "name"):
        db.execute(f"DELETE FROM {table} WHERE {'place' if table == 'name' else 'id'} < 0")
    city_of = """SELECT id, area1, area2, lat, lon FROM place WHERE name = ? AND country = ?
        ORDER BY population DESC LIMIT 1"""
    bearing = """SELECT p.lat, p.lon, p.population, p.id FROM name n JOIN place p ON p.id = n.place
        WHERE n.folded = ? AND n.place > 0 AND n.place <> ?"""
    for number, quarter in enumerate(quarters(), start=1):
        city = db.execute(city_of, (quarter.city, quarter.country)).fetchone()
        if city is None:
            continue
        ident, area1, area2, lat, lon = city
        rows_of = {folded: db.execute(bearing, (folded, ident)).fetchall() for folded in map(fold_place, quarter.names)}
        is_own = [any(abs(row[0] - lat) + abs(row[1] - lon) < NEAR_CITY for row in rows) for rows in rows_of.values()]
        if is_own[0]:
            first = next(iter(rows_of.values()))
            itself = next(row[3] for row in first if abs(row[0] - lat) + abs(row[1] - lon) < NEAR_CITY)
            db.executemany("INSERT OR IGNORE INTO name VALUES (?, ?, 0)", ((folded, itself) for folded in rows_of))
            continue
        place = (-number, quarter.names[0], quarter.country, area1, area2, lat, lon, 0)
        db.execute("INSERT INTO place VALUES (?, ?, ?, ?, ?, ?, ?, ?)", place)
        db.execute("INSERT INTO quarter VALUES (?, ?)", (-number, ident))
        names = [
            (folded, -number, int(not quarter.shared and all(row[2] < SHARED_WITH for row in rows)))
            for (folded, rows), is_near in zip(rows_of.items(), is_own, strict=True)
            if not is_near
        ]
        db.executemany("INSERT INTO name VALUES (?, ?, ?)", names)


NEAR_CITY, SHARED_WITH = 0.4, 1_000
"""Degrees, north and east added, within which a place is the city's own part; people of a place worth asking about."""

_NICKNAMED = """INSERT INTO name
    SELECT * FROM (SELECT ?, id, 2 FROM place WHERE name = ? AND country = ? ORDER BY population DESC LIMIT 1)
    WHERE true
    ON CONFLICT (folded, place) DO UPDATE SET main = 2 WHERE main = 0"""
"""A nickname has 2 where a main name has 1 and others 0."""


def _names(rows: Iterable[list[str]]) -> Iterator[tuple[str, str, int]]:
    """(folded name, id of the place, 1 for its main name and 0 for others)."""
    for row in rows:
        yield fold_place(row[1]), row[0], 1
        for alternative in row[8].split("|") if row[8] else ():
            yield fold_place(alternative), row[0], 0


def _lines(path: Path) -> list[str]:
    return lzma.decompress(path.read_bytes()).decode("utf-8").split("\n")

"""A meeting place reached: its address, the connection, what this desk is there, and how one is prepared.

The address is one that PostgreSQL's own library reads (libpq, 34.1.1), without a password: that comes from where the
library looks for it (`~/.pgpass`, the environment, a certificate), so that it stands in no file of ours and in no list
of processes. Off this machine the connection is encrypted, and whose server it is is proved, or there is none.
"""

import ipaddress
import os
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from types import ModuleType
from typing import TYPE_CHECKING, Any

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.store.meeting_tables import MIGRATIONS, VERSION, grants

if TYPE_CHECKING:
    import psycopg

SCHEMES = ("postgresql://", "postgres://")

ENCRYPTED = ("require", "verify-ca", "verify-full")
"""The values of `sslmode` with which nothing goes unencrypted (libpq, 34.19)."""

READER, DESK, KEEPER, NO_DESK = "reader", "desk", "keeper", "nobody"

SAFE_HERE = "What was told is safe here; the next meeting goes on."

_PATIENCE = {
    "connect_timeout": 10, "keepalives_idle": 10, "keepalives_interval": 5, "keepalives_count": 3,
    "tcp_user_timeout": 20_000, "application_name": "boxlore", "client_encoding": "utf8",
}  # fmt: skip

_SESSION = (
    "SET search_path = pg_catalog",
    "SET idle_in_transaction_session_timeout = '60s'",
    "SET lock_timeout = '30s'",
    "SET default_transaction_isolation = 'read committed'",
)


@dataclass(eq=False)
class NotReached(CouldNot):
    """The server does not answer, or the connection broke: what was being done there is as if it had not begun."""


@dataclass(slots=True)
class MeetingPlace:
    """An open connection. `id` is another after each preparing; `rights` and `names` are this desk's; `is_alone` while
    other desks wait."""

    db: "psycopg.Connection[Any]"
    id: str
    rights: str
    names: tuple[str, ...]
    is_alone: bool = False

    @property
    def writes(self) -> bool:
        return self.rights != READER

    def may_bring(self, by: str) -> bool:
        """Whether what somebody of that name told goes there from this desk."""
        return self.rights == KEEPER or (self.rights == DESK and by in self.names)


def _library() -> ModuleType:
    try:
        import psycopg  # noqa: PLC0415  # an extra that few have
    except ImportError as error:
        raise CouldNot(
            "The part that reaches a meeting place is not installed.", "Install it: pip install boxlore[meet]"
        ) from error
    return psycopg


@contextmanager
def in_words() -> Iterator[None]:
    """Turn an error of the server or of the way to it into one of ours."""
    errors = _library()
    try:
        yield
    except (errors.errors.UndefinedTable, errors.errors.InvalidSchemaName, errors.errors.UndefinedFunction) as error:
        raise CouldNot(
            "Nothing is prepared there.", "Whoever owns the database runs: boxlore meet --prepare."
        ) from error
    except errors.errors.InsufficientPrivilege as error:
        raise CouldNot(f"The meeting place refuses it: {_first_line(error)}.", "Ask whoever prepared it.") from error
    except errors.errors.LockNotAvailable as error:
        raise NotReached("Another desk is at the meeting place for long.", SAFE_HERE) from error
    except errors.OperationalError as error:
        raise NotReached(f"The meeting place cannot be reached: {_first_line(error)}.", SAFE_HERE) from error
    except errors.Error as error:
        raise CouldNot(f"The meeting place could not take or give it: {_first_line(error)}.", SAFE_HERE) from error


def _first_line(error: Exception) -> str:
    lines = str(error).strip().splitlines()
    return lines[0].rstrip(".") if lines else type(error).__name__


def settings_of(address: str) -> dict[str, Any]:
    """The connection that an address means. Raises WrongUse for one with a password in it, and for one that would go
    unencrypted over a network."""
    if not address.startswith(SCHEMES):
        raise WrongUse("A meeting place has an address such as postgresql://anna@archive.example/family.")
    library = _library()
    try:
        told: dict[str, Any] = library.conninfo.conninfo_to_dict(address)
    except library.ProgrammingError as error:
        raise WrongUse("That address cannot be read.", "Write it as postgresql://NAME@HOST/DATABASE.") from error
    if told.keys() & {"password", "sslpassword", "passfile"} - {"passfile"}:
        raise WrongUse(
            "There is a password in the address, where others can read it.",
            "Leave it out; write it into the file .pgpass in your home folder, as HOST:5432:DATABASE:NAME:PASSWORD.",
        )
    if not is_on_this_machine(told):
        mode = told.get("sslmode") or os.environ.get("PGSSLMODE") or "verify-full"
        if mode not in ENCRYPTED:
            raise WrongUse(
                f"With sslmode={mode} what is told could go over the network unencrypted.",
                f"Leave it out, or write one of {', '.join(ENCRYPTED)}.",
            )
        told |= {"sslmode": mode, "gssencmode": "disable"}
        if mode == "verify-full" and not _has_root(told):
            told["sslrootcert"] = "system"
    return told | _PATIENCE


def is_on_this_machine(told: dict[str, Any]) -> bool:
    """Whether every host that may be meant is this machine itself: a socket in a folder, or a loopback address."""
    if told.get("service") or os.environ.get("PGSERVICE"):
        return False
    hosts = told.get("hostaddr") or os.environ.get("PGHOSTADDR") or told.get("host") or os.environ.get("PGHOST") or ""
    return all(map(_is_loopback, str(hosts).split(",")))


def _is_loopback(host: str) -> bool:
    if host in ("", "localhost") or host.startswith(("/", "@")):
        return True
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return False


def _has_root(told: dict[str, Any]) -> bool:
    own = Path.home() / ".postgresql" / "root.crt"
    return bool(told.get("sslrootcert") or os.environ.get("PGSSLROOTCERT") or own.is_file())


@contextmanager
def _connected(address: str) -> Iterator["psycopg.Connection[Any]"]:
    told = settings_of(address)
    with in_words():
        db = _library().connect(**told, autocommit=True)
        try:
            if not (is_on_this_machine(told) or db.pgconn.ssl_in_use):
                raise WrongUse("That server takes unencrypted connections alone.", "Nothing was sent. Let it have TLS.")
            for words in _SESSION:
                db.execute(words)
            yield db
        finally:
            db.close()


@contextmanager
def meeting_place(address: str, collection: str) -> Iterator[MeetingPlace]:
    """Context: the meeting place of a collection (its id). Raises NotReached, CouldNot, WrongUse."""
    with _connected(address) as db:
        rights, names = _own_rights(db)
        if not rights:
            raise CouldNot(
                f"{db.info.user} is no desk of that meeting place.",
                f"Whoever prepared it runs: boxlore meet --admit {db.info.user}.",
            )
        about = dict(db.execute("SELECT name, value FROM boxlore.about").fetchall())
        _check_version(int(about["version"]))
        _check_collection(about["collection"], collection)
        yield MeetingPlace(db, about["meeting"], rights, tuple(names))


def _own_rights(db: "psycopg.Connection[Any]") -> tuple[str, Sequence[str]]:
    rights, names = db.execute("SELECT boxlore.rights(), boxlore.names()").fetchall()[0]
    return rights or "", names or ()


def _check_version(version: int) -> None:
    if version < VERSION:
        raise CouldNot("The meeting place is of an older Boxlore.", "Whoever owns it runs: boxlore meet --prepare.")
    if version > VERSION:
        raise CouldNot("The meeting place is of a newer Boxlore.", "Install the newest; nothing was touched.")


def _check_collection(there: str, here: str) -> None:
    if there != here:
        raise WrongUse("Another collection meets there.", "Each collection has a database of its own on the server.")


def prepare(address: str, collection: str, ident: str, names: Sequence[str]) -> int:
    """Make the tables, or bring them up to date, and admit whoever does it as a keeper. `ident` is what the meeting
    place is called from now on, so that each desk asks for everything anew. Returns how many migrations were run."""
    with _connected(address) as db, db.transaction():
        (has_some,) = db.execute("SELECT to_regclass('boxlore.about') IS NOT NULL").fetchall()[0]
        about = dict(db.execute("SELECT name, value FROM boxlore.about").fetchall()) if has_some else {}
        version = int(about.get("version", 0))
        if version > VERSION:
            _check_version(version)
        _check_collection(about.get("collection", collection), collection)
        for script in MIGRATIONS[version:]:
            db.execute(script)
        noted = {"version": str(VERSION), "collection": collection, "meeting": ident}
        for name, value in noted.items():
            db.execute(
                "INSERT INTO boxlore.about VALUES (%s, %s) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
                (name, value),
            )
        _admit(db, db.info.user, KEEPER, names)
        return len(MIGRATIONS) - version


def admit(address: str, role: str, rights: str, names: Sequence[str]) -> bool:
    """Let a login of the server be a desk with these rights, which tells by these names; with the rights of nobody it
    is one no more. Returns whether the login was made, which has no password yet."""
    with _connected(address) as db, db.transaction():
        is_there = db.execute("SELECT 1 FROM pg_roles WHERE rolname = %s", (role,)).fetchone()
        if not is_there:
            db.execute(_library().sql.SQL("CREATE ROLE {} LOGIN").format(_library().sql.Identifier(role)))
        _admit(db, role, rights, names)
        return not is_there


def _admit(db: "psycopg.Connection[Any]", role: str, rights: str, names: Sequence[str]) -> None:
    quoted = _library().sql.Identifier(role)
    if rights == NO_DESK:
        db.execute("DELETE FROM boxlore.desk WHERE role = %s", (role,))
        db.execute(_library().sql.SQL("REVOKE ALL ON ALL TABLES IN SCHEMA boxlore FROM {}").format(quoted))
        return
    (owner,) = db.execute(
        "SELECT relowner::regrole::text = quote_ident(%s) FROM pg_class WHERE oid = 'boxlore.about'::regclass", (role,)
    ).fetchall()[0]
    for words in () if owner else grants(rights, quoted.as_string(db)):
        db.execute(words)
    db.execute(
        "INSERT INTO boxlore.desk VALUES (%s, %s, %s) ON CONFLICT (role) DO UPDATE SET rights = excluded.rights, "
        "names = (SELECT array_agg(DISTINCT name) FROM unnest(boxlore.desk.names || excluded.names) name)",
        (role, rights, list(names)),
    )

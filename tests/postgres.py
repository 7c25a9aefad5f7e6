"""A PostgreSQL cluster of the tests' own, from Debian's package `postgresql`: a socket in a folder, no network.

PostgreSQL refuses to run as root, so that where the tests do, it runs as the package's user.
"""

import os
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

OWNER = "keeper"
"""The login of whoever owns the databases."""


def _programs() -> Path | None:
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda path: int(path.parts[-3]))
    return found[-1].parent if found else None


class Cluster:
    """One running server, and databases made of it."""

    def __init__(self, programs: Path, folder: Path) -> None:
        self.programs, self.folder = programs, folder
        self._user = "postgres" if os.getuid() == 0 else None
        self._made = 0

    def run(self, program: str, *arguments: str) -> None:
        subprocess.run(
            [self.programs / program, *arguments], user=self._user, check=True, cwd="/", stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip

    def begin(self) -> None:
        if self._user:
            shutil.chown(self.folder, self._user)
        self.run("initdb", "-D", f"{self.folder}/data", "-U", OWNER, "-A", "trust", "-E", "UTF8", "--no-sync", "-N")
        self.start()

    def start(self) -> None:
        options = f"-k {self.folder} -c listen_addresses= -c fsync=off -c shared_buffers=16MB -c max_connections=30"
        self.run("pg_ctl", "-D", f"{self.folder}/data", "-w", "-l", f"{self.folder}/log", "-o", options, "start")

    def stop(self, how: str = "immediate") -> None:
        """As a power cut does, unless told otherwise."""
        self.run("pg_ctl", "-D", f"{self.folder}/data", "-m", how, "-w", "stop")

    def address(self, database: str, login: str = OWNER) -> str:
        return f"postgresql://{login}@/{database}?host={self.folder}"

    def new_database(self) -> str:
        self._made += 1
        self.run("createdb", "-h", str(self.folder), "-U", OWNER, "-T", "template0", name := f"meeting{self._made}")
        return name


@contextmanager
def running_cluster() -> Iterator[Cluster]:
    """Context: a cluster, gone at the end. Skips where the package, or psycopg, is missing."""
    pytest.importorskip("psycopg", reason="psycopg is not installed (the extra meet)")
    programs = _programs()
    if programs is None:
        pytest.skip("Debian's package postgresql is not installed")
    with tempfile.TemporaryDirectory(prefix="meet", ignore_cleanup_errors=True) as folder:  # short: it holds a socket
        cluster = Cluster(programs, Path(folder))
        cluster.begin()
        try:
            yield cluster
        finally:
            cluster.stop()

"""What several tests share: the demo family, built once for all processes; a cache of its own for the places."""

import functools
import gc
import os
import shutil
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

import pytest
from hypothesis import settings
from tests import drawn, made_once
from tests.postgres import Cluster, running_cluster
from tests.small_family import make_small_family

from boxlore.core.statements import Kind
from boxlore.disk.unfinished import lock
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.demo.every_task import run

ON = date(2026, 11, 25)

settings.load_profile(drawn.PROFILE)

os.environ.pop("PYTHONDONTWRITEBYTECODE", None)  # of processes that tests start: none is compiled at every start

if "BOXLORE_CACHE" not in os.environ:
    os.environ["BOXLORE_CACHE"] = str(Path(tempfile.gettempdir()) / "boxlore-test-cache")


def pytest_sessionstart() -> None:
    """Forget every answer kept in this process: a mutation run forks from one in which the tests have run already."""
    gc.disable()  # until all is loaded, of which nothing is garbage
    gc.unfreeze()
    for kept in gc.get_objects():
        if type(kept) is functools._lru_cache_wrapper and (kept.__module__ or "").startswith("boxlore."):
            kept.cache_clear()


def pytest_collection_finish() -> None:
    """Leave what was loaded out of every later search for garbage: it is millions of objects, and all of them stay.

    Later searches are made after more objects than Python's 700: they were 6 % of the processor time of a test.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 20)
    gc.enable()


ROOM = 4 << 30
"""Bytes that must be free in memory for the files of a run; at most 0.16 GB were there at once, in two processes."""


def pytest_configure(config: pytest.Config) -> None:
    """Keep the run's files in memory where there is room: much of a run is else the wait for a disk to flush them."""
    shared = Path("/dev/shm")
    if config.getoption("basetemp") or "PYTEST_XDIST_WORKER" in os.environ or not os.access(shared, os.W_OK):
        return
    if shutil.disk_usage(shared).free > ROOM and _free_memory() > ROOM:
        os.environ.setdefault("PYTEST_DEBUG_TEMPROOT", str(shared))


def _free_memory() -> int:
    """Bytes that the system says programs can still have (Linux, `proc(5)`)."""
    lines = Path("/proc/meminfo").read_text("ascii").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("MemAvailable:")) * 1024


@pytest.fixture(scope="session")
def cluster() -> Iterator[Cluster]:
    """A PostgreSQL server, begun when the first test asks for it."""
    with running_cluster() as running:
        yield running


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo collection with all its outputs. Tests read it; one that writes takes a copy.

    It is made once for all processes of a run, in the run's own folder, which pytest makes anew; each has its copy of
    it, as only one program at a time may write to a collection.
    """
    own = tmp_path_factory.mktemp("demo") / "tamm_family"
    run_folder = tmp_path_factory.getbasetemp()
    if "PYTEST_XDIST_WORKER" in os.environ:  # each worker has a folder in that of the run
        run_folder = run_folder.parent
    first = run_folder / "demo_for_all" / "tamm_family"
    with alone(run_folder / "demo_for_all.lock"):
        if not first.exists():  # it takes its name when it is whole, also after a kill
            for _ in run(first, lambda words: None, on_day=ON):
                pass
    shutil.copytree(first, own)
    return own


@pytest.fixture(scope="session")
def small_family(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A collection of three items, one of which shows somebody living. Tests that write take a copy."""
    home = tmp_path_factory.mktemp("small") / "tamm_family"
    make_small_family(home, ON)
    return home


@contextmanager
def alone(path: Path) -> Iterator[None]:
    """Waits until no other process is in here by the same file; the system lets one out that is killed."""
    handle = os.open(path, os.O_RDWR | os.O_CREAT)
    try:
        while True:
            try:
                lock(handle)
            except OSError:
                time.sleep(0.05)
            else:
                break
        yield
    finally:
        os.close(handle)


Swaps = dict[str, list[bytes]]
_swaps: Swaps = {}
"""Path of a file -> the bytes that each opening of it finds in turn, the last of them from then on."""


def _swap(event: str, arguments: tuple[object, ...]) -> None:
    """As somebody who puts another file in its place just before it is opened (audit event `open`, PEP 578)."""
    if event != "open" or not _swaps or not isinstance(arguments[0], str | os.PathLike):
        return
    path = os.path.realpath(arguments[0])
    if versions := _swaps.get(path):
        data = versions.pop(0)
        if versions:
            later = _swaps.pop(path)  # the opening that follows is our own
            with open(f"{path}.swap", "wb") as file:
                file.write(data)
            os.replace(f"{path}.swap", path)
            _swaps[path] = later
        else:
            del _swaps[path]
            Path(path).write_bytes(data)  # in the same file


@pytest.fixture
def swaps() -> Iterator[Swaps]:
    """Files to be swapped whenever they are opened: see `_swaps`. The hook stays, as no hook can be taken away."""
    if not hasattr(_swap, "is_there"):
        sys.addaudithook(_swap)
        _swap.is_there = True  # type: ignore[attr-defined]
    yield _swaps
    _swaps.clear()


@pytest.fixture
def copy_of(tmp_path: Path, tmp_path_factory: pytest.TempPathFactory) -> made_once.CopyOf:
    """`copy_of(make, ...)`: what `make(folder, ...)` makes, in this test's `tmp_path` (see `tests/made_once.py`)."""
    return functools.partial(made_once.copy, folders=tmp_path_factory, to=tmp_path)


def make_bare(folder: Path, count: int) -> Path:
    """A collection of so many items without scans, TRA-0001 and on."""
    made = folder / "tamm_family"
    start(made, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(made) as collection:
        act = collection.act("intake")
        for at in range(1, count + 1):
            act.state(act.new(Kind.ITEM), "number", f"TRA-{at:04d}")
        act.done()
    return made


@pytest.fixture
def bare(copy_of: made_once.CopyOf) -> Callable[[int], Path]:
    """Makes a collection of so many items without scans, TRA-0001 and on."""
    return functools.partial(copy_of, make_bare)

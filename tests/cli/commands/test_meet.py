"""`boxlore meet` as it is typed, with a real server. Rules of our own, no outside source."""

import getpass
import json
from collections.abc import Callable
from pathlib import Path

import pytest
from tests.postgres import Cluster

pytest.importorskip("psycopg", reason="psycopg is not installed (the extra meet)")

Runs = Callable[..., tuple[int, str, str]]


def test_two_desks_meet(cluster: Cluster, tmp_path: Path, bare: Callable[[int], Path], run: Runs) -> None:
    here, there = bare(2), tmp_path / "there"
    assert run("new", there, "--join", here)[0] == 0
    database = cluster.new_database()
    anna = cluster.address(database, f"anna_{database}")
    code, _, err = run("-c", here, "meet", "--prepare", cluster.address(database))
    assert code == 0 and "you are a keeper there" in err
    _, _, err = run("-c", here, "meet", "--admit", f"anna_{database}", "--by", getpass.getuser())
    assert f"\\password anna_{database}" in err
    assert "Nothing new came; " in run("-c", here, "meet")[2]
    run("-c", there, "tell", "TRA-0001", "story", "Ants at the harbour")
    assert "1 statement went there." in run("-c", there, "meet", anna)[2]
    assert f'meeting = "{anna}"' in (there / "boxlore.toml").read_text("utf-8")
    assert json.loads(run("-c", here, "meet", "--json")[1])["came"] == 1
    assert "Ants at the harbour" in run("-c", here, "show", "TRA-0001")[1]
    assert "no desk any more" in run("-c", here, "meet", "--admit", f"anna_{database}", "--as", "nobody")[2]
    code, _, err = run("-c", there, "meet")
    assert code == 3 and "is no desk of that meeting place" in err

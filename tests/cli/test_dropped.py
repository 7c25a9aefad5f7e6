"""Nothing that is given to a command is dropped without a word: what a way of using it has no use for is refused.

Each row is a command, and what it must name as not used. Our own contract.
"""

from pathlib import Path

import pytest

TABLE = "item,field,text\nTRA-0001,story,Nets drying\n"

ROWS = [
    ("tell TRA-0001 story Nets --from {table}", "ITEM"),
    ("tell TRA-0001 --from {table}", "ITEM"),
    ("verify --receipt {table} --mend", "--mend"),
    ("verify --events --anew", "--anew"),
    ("verify {folder} --look-in {folder}", "--look-in"),
    ("verify --when --mend", "--mend"),
    ("verify --archive Town", "--archive"),
    ("intake {folder} --without-scan 2", "PATHS"),
    ("intake --without-scan 2 --copy", "--copy"),
    ("intake --table {table} --pairs alternating", "--pairs"),
    ("intake --table {table} --list", "--list"),
    ("new {folder}/again --from {folder} --title Nets", "--title"),
    ("climate --reading 20C 45% --at attic --png {folder}/x.png", "--png"),
    ("climate --at attic", "--at"),
    ("climate {table} --when 2026-03-01T14:10", "--when"),
    ("climate --over", "--over"),
    ("survey --person Leida", "--person"),
    ("survey 3 --note TRA-0001={{}}", "MARK"),
    ("survey 3 --box 4 --json", "--box"),
    ("survey --json --over", "--over"),
    ("recording --paper", "--paper"),
    ("recording --sitting 2026", "--sitting"),
    ("recording {table} --paper --clap 0:12", "--clap"),
    ("recording {table} --which-clap 2", "--which-clap"),
    ("recording {table} --for family", "--for"),
    ("offer {folder}/out --answer {table}", "OUT"),
    ("offer --answer {table} --box 3", "--box"),
    ("people shown TRA-0001 --by narrator:Leida", "--by"),
    ("date --edtf 1912 --order dmy", "--order"),
    ("restore --yes", "--yes"),
    ("housing --json what", "--json"),
    ("places --json add Farm", "--json"),
    ("housing lend TRA-0001 --by Mia --over", "--over"),
]


def test_what_would_be_dropped_is_refused(run, bare, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    home, table, folder = bare(1), tmp_path / "table.csv", tmp_path / "folder"
    table.write_text(TABLE)
    folder.mkdir()
    for row, named in ROWS:
        code, out, err = run("-c", home, *row.format(table=table, folder=folder).split())
        assert (code, out) == (2, ""), (row, err)
        assert err.startswith((f"{named} is not used with", f"{named} is not used before")), (row, err)
        assert "nothing was done" in err
    assert run("-c", home, "find", "Nets")[0] == 1
    assert list(folder.iterdir()) == []


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["intake", "--table", "{table}", "{folder}", "{home}"], "several are named"),
        (["survey", "3/12/4", "--json"], "is no box and no folder"),
    ],
)
def test_what_cannot_be_meant_together(run, bare, tmp_path: Path, arguments: list[str], words: str) -> None:  # type: ignore[no-untyped-def]
    home, table = bare(1), tmp_path / "table.csv"
    table.write_text(TABLE)
    code, _, err = run("-c", home, *(part.format(table=table, folder=tmp_path, home=home) for part in arguments))
    assert code == 2 and words in err

"""What tests of the places share."""

import lzma
from pathlib import Path

import pytest

SHIPPED = [
    "588335\tTartu\tEE\t18\t793\t58.38\t26.73\t91407\tDorpat|Yuryev",
    "1\tPärnu\tEE\t11\t624\t58.39\t24.5\t50643\tParnu|Pernau",
]


@pytest.fixture
def small_data(tmp_path: Path) -> Path:
    """A folder as the one that is shipped, with two towns in it: their index is made in no time."""
    data = tmp_path / "data"
    data.mkdir()
    (data / "version.txt").write_text("1\n", "utf-8")
    (data / "cities.tsv.xz").write_bytes(lzma.compress("\n".join(SHIPPED).encode()))
    (data / "areas.tsv.xz").write_bytes(lzma.compress(b"EE.18\tTartu\nEE.11\tP\xc3\xa4rnumaa"))
    return data

"""The parsed source is kept as long as tests of this folder run."""

import gc
from collections.abc import Iterator

import pytest
from tests.architecture import parsed


@pytest.fixture(scope="package", autouse=True)
def forgotten_at_the_end() -> Iterator[None]:
    gc.disable()  # until then there is no garbage, and a search for it walks all trees
    yield
    parsed.forget()
    gc.enable()

"""The parsed source is kept as long as tests of this folder run."""

from collections.abc import Iterator

import pytest
from tests.architecture import parsed


@pytest.fixture(scope="package", autouse=True)
def forgotten_at_the_end() -> Iterator[None]:
    yield
    parsed.forget()

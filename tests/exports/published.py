"""The published schemas of other bodies, found through BOXLORE_PUBLISHED_SCHEMAS; tests skip without them."""

import os
from functools import lru_cache
from pathlib import Path

import pytest
from lxml import etree

NAME = "BOXLORE_PUBLISHED_SCHEMAS"


def folder() -> Path:
    if not os.environ.get(NAME):
        pytest.skip(f"{NAME} does not name a folder with the published schemas")
    return Path(os.environ[NAME])


def wanted(name: str) -> Path:
    """A published file that not every copy of the folder holds; the test skips without it."""
    path = folder() / name
    if not path.is_file():
        pytest.skip(f"{NAME} holds no {name}")
    return path


@lru_cache
def xsd(name: str) -> etree.XMLSchema:
    """A schema with its imports found among the published files."""

    class Local(etree.Resolver):
        def resolve(self, url, public_id, context):  # type: ignore[no-untyped-def]
            found = next(folder().rglob(url.rsplit("/", 1)[-1]), None)
            return self.resolve_filename(str(found), context) if found else None

    parser = etree.XMLParser()
    parser.resolvers.add(Local())
    return etree.XMLSchema(etree.parse(str(folder() / name), parser))


@lru_cache
def rng(name: str) -> etree.RelaxNG:
    return etree.RelaxNG(etree.parse(str(folder() / name)))

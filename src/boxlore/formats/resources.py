"""Image resource blocks (Photoshop File Formats, “Image Resource Blocks”): kept whole, two of them ours.

0x0404 holds the IIM block, 0x0425 the MD5 of it: a wrong or missing pair decides who wins in other readers,
so both are always written together. Other signatures, names, thumbnails and any tail survive.
"""

import hashlib
from dataclasses import dataclass

from boxlore.core.crosswalk.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim

IIM, DIGEST, EXIF_DATA = 0x0404, 0x0425, 0x0422
CLAUSE = "Photoshop File Formats, Image Resource Blocks"


@dataclass(frozen=True, slots=True)
class Resource:
    """One block: signature, id, Pascal name (its bytes, without length), data."""

    signature: bytes
    id: int
    name: bytes
    data: bytes


def split(block: bytes) -> tuple[list[Resource], bytes]:
    """The resources of a block, and a tail that is none. Raises ByteFault if one runs past the end."""
    found: list[Resource] = []
    at = 0
    while at + 12 <= len(block) and block[at : at + 4].isalnum():
        name_length = block[at + 6]
        start = at + 7 + name_length
        start += (name_length + 1) % 2
        if start + 4 > len(block):
            raise ByteFault(at, "This image resource has no length", CLAUSE)
        length = int.from_bytes(block[start : start + 4], "big")
        end = start + 4 + length
        if end > len(block):
            raise ByteFault(at, "This image resource runs past the end", CLAUSE)
        name = block[at + 7 : at + 7 + name_length]
        number = int.from_bytes(block[at + 4 : at + 6], "big")
        found.append(Resource(block[at : at + 4], number, name, block[start + 4 : end]))
        at = end + length % 2
    return found, block[at:]


def join(resources: list[Resource], tail: bytes = b"") -> bytes:
    """The resources as a block, every field padded to even length."""
    parts: list[bytes] = []
    for one in resources:
        name = bytes((len(one.name),)) + one.name
        name += b"\x00" * (len(name) % 2)
        size = len(one.data).to_bytes(4, "big")
        parts.append(one.signature + one.id.to_bytes(2, "big") + name + size + one.data + b"\x00" * (len(one.data) % 2))
    return b"".join(parts) + tail


def iim_of(resources: list[Resource]) -> tuple[bytes, list[str]]:
    """The IIM block, and sentences about a digest that does not fit or several blocks.

    Of several blocks the datasets are joined, those of the first before those that only a later one has.
    """
    blocks = [one.data for one in resources if one.id == IIM and one.signature == b"8BIM"]
    digests = [one.data for one in resources if one.id == DIGEST and one.signature == b"8BIM"]
    problems: list[str] = []
    if not blocks:
        return b"", problems
    if digests and digests[0] != hashlib.md5(blocks[0], usedforsecurity=False).digest():
        problems.append("The IIM block was changed by a program that left its digest as it was.")
    if len(blocks) == 1:
        return blocks[0], problems
    joined = iim.split(blocks[0])
    for block in blocks[1:]:
        first = {one[:2] for one in joined}
        more = iim.split(block)
        joined += [one for one in more if one[:2] not in first]
        if apart := sorted({f"{one[0]}:{one[1]:02d}" for one in more if one[:2] in first and one not in joined}):
            problems.append(f"A further IIM block says something else of {', '.join(apart)}; the first was used.")
    problems.append(f"The file holds {len(blocks)} IIM blocks; they were joined.")
    return iim.join(sorted(joined, key=lambda one: one[:2])), problems


def with_iim(resources: list[Resource], block: bytes) -> list[Resource]:
    """The resources with this IIM block and its digest, in place of those there were."""
    digest = hashlib.md5(block, usedforsecurity=False).digest()
    kept = [one for one in resources if one.signature != b"8BIM" or one.id not in (IIM, DIGEST)]
    ours = [Resource(b"8BIM", IIM, b"", block), Resource(b"8BIM", DIGEST, b"", digest)] if block else []
    return [*ours, *kept]


def captioned(block: bytes, embedding: Embedding, other: bytes = b"") -> tuple[bytes, bytes, list[str]]:
    """The block with our datasets, the IIM block alone, and what was cut or in conflict.

    `other` is an IIM block that stands elsewhere in the file (a TIFF's tag 33723) and is used before the one here.
    """
    held, left = split(b"" if embedding.drop_text else block)
    inner, reports = iim_of(held)
    if other and inner and iim.texts(iim.split(other))[0] != iim.texts(iim.split(inner))[0]:
        reports.append("The file holds two IIM blocks that differ; that of tag 33723 was used.")
    datasets, cuts = iim.merge(iim.split(other or inner), embedding.iim)
    made = iim.join(datasets)
    cleaned = [_without_place(one) for one in held]
    return join(with_iim(cleaned, made), left), made, [*reports, *cuts]


def _without_place(one: Resource) -> Resource:
    """An Exif block inside the resources loses the place of capture too."""
    if one.id != EXIF_DATA or one.signature != b"8BIM":
        return one
    try:
        return Resource(one.signature, one.id, one.name, exif.captioned(one.data, Embedding()))
    except ByteFault:
        return one  # it cannot be read as Exif by anyone

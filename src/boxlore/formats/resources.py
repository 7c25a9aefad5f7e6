"""Image resource blocks (Photoshop File Formats, “Image Resource Blocks”): kept whole, two of them ours.

0x0404 holds the IIM block, 0x0425 the MD5 of it: a wrong or missing pair decides who wins in other readers,
so both are always written together. Other signatures, names, thumbnails and any tail survive.
"""

import hashlib
from dataclasses import dataclass

from boxlore.core.errors import ByteFault

IIM, DIGEST = 0x0404, 0x0425
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
    """The IIM block, and sentences about a digest that does not fit or several blocks."""
    blocks = [one.data for one in resources if one.id == IIM and one.signature == b"8BIM"]
    digests = [one.data for one in resources if one.id == DIGEST and one.signature == b"8BIM"]
    problems: list[str] = []
    if len(blocks) > 1:
        problems.append(f"The file holds {len(blocks)} IIM blocks; the first was used.")
    if blocks and digests and digests[0] != hashlib.md5(blocks[0], usedforsecurity=False).digest():
        problems.append("The IIM block was changed by a program that left its digest as it was.")
    return (blocks[0] if blocks else b""), problems


def with_iim(resources: list[Resource], block: bytes) -> list[Resource]:
    """The resources with this IIM block and its digest, in place of those there were."""
    digest = hashlib.md5(block, usedforsecurity=False).digest()
    kept = [one for one in resources if one.signature != b"8BIM" or one.id not in (IIM, DIGEST)]
    ours = [Resource(b"8BIM", IIM, b"", block), Resource(b"8BIM", DIGEST, b"", digest)] if block else []
    return [*ours, *kept]

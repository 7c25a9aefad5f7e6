"""Image resource blocks (Photoshop File Formats, “Image Resource Blocks”): two of them are ours, the others are kept.

Resource 0x0404 holds the IIM block, 0x0425 its MD5 digest. Other readers prefer IIM or XMP by whether the digest
fits, so both are always written together. Resources with other signatures or names, thumbnails, and a tail that is
no resource are kept.
"""

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass, replace

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, places_unread

IIM, DIGEST, EXIF_DATA = 0x0404, 0x0425, 0x0422
CLAUSE = "Photoshop File Formats, Image Resource Blocks"


@dataclass(frozen=True, slots=True)
class Resource:
    """One resource: signature, id, name (without its length byte), data."""

    signature: bytes
    id: int
    name: bytes
    data: bytes


def split(block: bytes) -> tuple[list[Resource], bytes]:
    """The resources of a block, and the tail that is none. Raises ByteFault if one runs past the end.

        block    = *resource tail
        resource = signature id name size data     (4 letters or digits, 2 bytes, Pascal string, 4 bytes, `size` bytes)

    Name and data are each padded to even length. Numbers are big-endian.
    """
    resources: list[Resource] = []
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
        resources.append(Resource(block[at : at + 4], number, name, block[start + 4 : end]))
        at = end + length % 2
    return resources, block[at:]


def join(resources: list[Resource], tail: bytes = b"") -> bytes:
    """The resources and the tail as a block; the inverse of `split`."""
    parts: list[bytes] = []
    for resource in resources:
        name = bytes((len(resource.name),)) + resource.name
        name += b"\x00" * (len(name) % 2)
        size = len(resource.data).to_bytes(4, "big")
        parts += [resource.signature, resource.id.to_bytes(2, "big"), name, size, resource.data]
        parts.append(b"\x00" * (len(resource.data) % 2))
    return b"".join(parts) + tail


def iim_of(resources: list[Resource]) -> tuple[bytes, list[str]]:
    """The IIM block among the resources, and sentences about a digest that does not fit or about several blocks.

    Several blocks are joined: all datasets of the first, and of each later one the datasets that are new.
    """
    blocks = [resource.data for resource in resources if resource.id == IIM and resource.signature == b"8BIM"]
    digests = [resource.data for resource in resources if resource.id == DIGEST and resource.signature == b"8BIM"]
    problems: list[str] = []
    if not blocks:
        return b"", problems
    if digests and digests[0] != hashlib.md5(blocks[0], usedforsecurity=False).digest():
        problems.append("The IIM block was changed by a program that left its digest as it was.")
    if len(blocks) == 1:
        return blocks[0], problems
    joined = iim.split(blocks[0])
    for block in blocks[1:]:
        numbers = {dataset[:2] for dataset in joined}
        further = iim.split(block)
        joined += [dataset for dataset in further if dataset[:2] not in numbers]
        repeated = [dataset for dataset in further if dataset[:2] in numbers and dataset not in joined]
        if differing := sorted({f"{record}:{number:02d}" for record, number, _ in repeated}):
            problems.append(f"A further IIM block says something else of {', '.join(differing)}; the first was used.")
    problems.append(f"The file holds {len(blocks)} IIM blocks; they were joined.")
    return iim.join(sorted(joined, key=lambda dataset: dataset[:2])), problems


def with_iim(resources: list[Resource], block: bytes) -> list[Resource]:
    """The resources with this IIM block and its digest in place of the old ones; with neither if it is empty."""
    digest = hashlib.md5(block, usedforsecurity=False).digest()
    kept = [resource for resource in resources if resource.signature != b"8BIM" or resource.id not in (IIM, DIGEST)]
    ours = [Resource(b"8BIM", IIM, b"", block), Resource(b"8BIM", DIGEST, b"", digest)] if block else []
    return [*ours, *kept]


def captioned(block: bytes, embedding: Embedding, elsewhere: bytes = b"") -> tuple[bytes, bytes, list[str]]:
    """The block with our datasets, the IIM block alone, and sentences about texts cut, in conflict or left out.

    `elsewhere` is an IIM block from another part of the file (tag 33723 of a TIFF); it is used instead of this one.
    """
    image_resources, tail = split(b"" if embedding.drop_text else block)
    own_iim, reports = iim_of(image_resources)
    if elsewhere and own_iim and iim.texts(iim.split(elsewhere))[0] != iim.texts(iim.split(own_iim))[0]:
        reports.append("The file holds two IIM blocks that differ; that of tag 33723 was used.")
    datasets, cuts = iim.merge(iim.split(elsewhere or own_iim), embedding.iim)
    iim_block = iim.join(datasets)
    cleaned, left_out = _without_places(image_resources, only_place=False)
    return join(with_iim(cleaned, iim_block), tail), iim_block, [*reports, *cuts, *left_out]


def without_place(block: bytes) -> tuple[bytes, list[str]]:
    """The block without what says where the file was made, the very same where nothing does; and sentences about
    resources that were left out. Raises ByteFault as `split`.
    """
    image_resources, tail = split(block)
    cleaned, left_out = _without_places(image_resources, only_place=True)
    own_iim = next((resource.data for resource in cleaned if _is_iim(resource)), b"")
    datasets = iim.split(own_iim)
    kept, reports = iim.without_places(datasets)
    if kept != datasets:
        cleaned = with_iim(cleaned, iim.join(kept))
    return (join(cleaned, tail) if cleaned != image_resources else block), [*left_out, *reports]


def named_places(block: bytes) -> list[tuple[int, bytes]]:
    """As `iim.named_places`, for the IIM blocks among the resources; none of a damaged block."""
    try:
        blocks = [resource.data for resource in split(block)[0] if _is_iim(resource) and resource.data]
    except ByteFault:
        return []
    return [(block.find(data) + at, new) for data in blocks for at, new in iim.named_places(data)]


def _is_iim(resource: Resource) -> bool:
    return resource.signature == b"8BIM" and resource.id == IIM


def _without_places(resources: Iterable[Resource], *, only_place: bool) -> tuple[list[Resource], list[str]]:
    """The resources, Exif, XMP and thumbnails among them without a place of capture; and sentences about those that
    could not be cleaned and are left out.
    """
    cleaned, reports = list[Resource](), list[str]()
    for resource in resources:
        try:
            data = resource.data if _is_iim(resource) else places_unread.cleaned(resource.data, only_place=only_place)
        except ByteFault as fault:
            reports.append(f"Image resource {resource.id} was left out: {fault.why}.")
            continue
        if (resource.signature, resource.id) == (b"8BIM", EXIF_DATA) and not only_place:
            data = _exif(data)
        cleaned.append(replace(resource, data=data))
    return cleaned, reports


def _exif(data: bytes) -> bytes:
    """The Exif block as a copy has it; as it is where it is none, so that no reader finds a place in it."""
    try:
        return exif.captioned(data, Embedding())
    except ByteFault:
        return data


def faults(block: bytes, embedding: Embedding) -> list[str]:
    """Sentences about what a strict reader would refuse or miss in a block of ours."""
    try:
        image_resources, _ = split(block)
    except ByteFault as fault:
        return [f"{fault.why}."]
    iim_blocks = [resource.data for resource in image_resources if (resource.signature, resource.id) == (b"8BIM", IIM)]
    digests = [resource.data for resource in image_resources if (resource.signature, resource.id) == (b"8BIM", DIGEST)]
    if len(iim_blocks) > 1 or digests != [hashlib.md5(data, usedforsecurity=False).digest() for data in iim_blocks]:
        return ["The file does not have one IIM block with its digest."]
    return iim.faults(b"".join(iim_blocks), embedding.iim) if iim_blocks or embedding.iim else []

"""The Exif of a copy: captioned, without a place in it or in what it holds, or left out where it cannot be read."""

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, opaque


def captioned_or_left_out(data: bytes, embedding: Embedding, most: int = 1 << 30) -> tuple[bytes, list[str]]:
    """As `exif.captioned`, and with `drop_text` how the picture looks alone; nothing, with a sentence, for a block that
    cannot be read. The mark `Exif` that some writers put before the block stays before it.

    XMP and further structures inside the block, such as those of a maker's note, lose their place too.
    """
    body = data.removeprefix(exif.MARK)
    mark = data[: len(data) - len(body)]
    if embedding.drop_text:
        looks = exif.only_looks(body)
        return (mark + looks if looks else b""), []
    try:
        return mark + opaque.cleaned(exif.captioned(body, embedding, most), only_place=True), []
    except ByteFault as fault:
        return b"", [f"The Exif in the file cannot be read ({fault.why}) and was left out."]

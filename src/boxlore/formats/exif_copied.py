"""The Exif of a copy: captioned, without a place in it or in what it holds, or left out where it cannot be read."""

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, places_in_texts, places_unread


def captioned_or_left_out(data: bytes, embedding: Embedding, most: int = 1 << 30) -> tuple[bytes, list[str]]:
    """As `exif.captioned`, and with `drop_text` how the picture looks alone; nothing, with a sentence, for a block that
    cannot be read. The mark `Exif` that some writers put before the block stays before it.

    XMP and further structures inside the block, such as those of a maker's note, lose their place too. So does every
    text that the file has; one that we put in its place is the record's, and stays as it was told.
    """
    body = data.removeprefix(exif.MARK)
    mark = data[: len(data) - len(body)]
    if embedding.drop_text:
        looks = exif.only_looks(body)
        return (mark + looks if looks else b""), []
    try:
        points = places_in_texts.joined(exif.text_patches(exif.block(body)), places_in_texts.patches(body))
        changed = exif.captioned(exif.apply(body, points), embedding, most)
        reports = [places_in_texts.said("a text in the Exif of the file")] if points else []
        return mark + places_unread.cleaned(changed, only_place=True, texts=False), reports
    except ByteFault as fault:
        return b"", [f"The Exif in the file cannot be read ({fault.why}) and was left out."]

"""What `bag-info.txt` of a package says: who gives it, what it is, and which package it belongs to."""

from boxlore import __version__
from boxlore.tasks.archive.transfer_files import Making
from boxlore.tasks.collection.opening import Collection


def bag_info(collection: Collection, making: Making) -> dict[str, str]:
    """What `bag-info.txt` says by its reserved names (RFC 8493, 2.2.2); `exports/bag` adds the sizes."""
    settings, archive = collection.settings, making.archive
    open_part = making.seen.to.is_public
    part = "open part" if open_part else "closed part: not to be shown before the dates in its records"
    return {
        "Source-Organization": making.seen.holder or settings.title,
        "Contact-Name": making.seen.holder,
        "External-Identifier": f"urn:uuid:{collection.id}",
        "External-Description": f"{settings.title}: photographs with what was told of them ({part})",
        "Internal-Sender-Description": f"for {archive.repository}" if archive.repository else "",
        "Bagging-Date": collection.clock.today().isoformat(),
        "Bagging-Time": collection.clock.now(),
        "Bag-Group-Identifier": f"urn:uuid:{collection.id}",
        "Bag-Software-Agent": f"Boxlore {__version__}",
    }

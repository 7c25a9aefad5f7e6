"""Where previews of very large pictures lie (see `disk.previews`): beside the index of places, in the cache folder."""

from boxlore.core.errors import CouldNot
from boxlore.disk.previews import Previews
from boxlore.gazetteer.index import cache_folder


def previews() -> Previews | None:
    """The user's previews; None for a user without a folder for them."""
    try:
        return Previews(cache_folder() / "previews")
    except CouldNot:
        return None

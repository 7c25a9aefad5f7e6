"""What the pages' script says, in the language of the pages: a file of data that is loaded before it.

The script itself is the same in every language. A message that is not in the file is said in English.
"""

import json

from boxlore.core.wording.catalogue import Say

SAID_BY_SCRIPT = (
    "{count} photograph found", "{count} photographs found", ", the first {count} shown", ", {count} person",
    ", {count} people", "Enlarged picture", "Close", "Full size", "Picture; the arrow keys move it", "Fit the window",
    "Show as slides", "Slides", "Previous", "Next", "{number} of {count}: {title}",
)  # fmt: skip
"""Every message of `templates/pages/pages.js`."""


def words_file(say: Say) -> str:
    """The script's messages as data in a script, because a page opened from a disk may not load JSON."""
    said = {message: say.pattern(message) for message in SAID_BY_SCRIPT}
    return f"window.boxloreWords = {json.dumps(said, ensure_ascii=False, indent=1)};\n"

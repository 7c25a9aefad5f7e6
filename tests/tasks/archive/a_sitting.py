"""A sitting for tests: of it one recording is kept."""

import wave
from pathlib import Path

from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.sitting.recordings import keep_recording
from boxlore.tasks.telling.statements import Teller, Telling


def a_sitting(collection: Collection, folder: Path) -> str:
    """A sitting with Mia Rourke, of which a recording of three seconds is kept; its id."""
    folder.mkdir()
    with wave.open(str(folder / "told.wav"), "wb") as sound:
        sound.setparams((1, 2, 8000, 0, "NONE", ""))
        sound.writeframes(bytes(2) * 24000)
    act = collection.act("a sitting")
    sitting = act.new(Kind.SITTING)
    Teller(collection).add(act, sitting, "narrator", "Mia Rourke", Telling())
    act.done()
    keep_recording(collection, sitting.id, folder / "told.wav")
    return sitting.id

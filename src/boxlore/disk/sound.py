"""Sound cut by time: a stretch of a WAV file with linear samples (RIFF WAVE, format 1) as a file of its own."""

import io
import wave
from pathlib import Path


def cut_wave(path: Path, start: int, end: int) -> bytes | None:
    """What is heard from `start` to `end` (milliseconds), as the bytes of a WAV file; what lies behind the recording's
    end is left out. None for a file of another kind, a damaged one, and where nothing is left.
    """
    try:
        with wave.open(str(path), "rb") as sound:
            first = min(max(start, 0) * sound.getframerate() // 1000, sound.getnframes())
            sound.setpos(first)
            frames = sound.readframes(max(0, end * sound.getframerate() // 1000 - first))
            settings = sound.getnchannels(), sound.getsampwidth(), sound.getframerate()
    except (wave.Error, EOFError, OSError):
        return None
    if not frames:
        return None
    cut = io.BytesIO()
    with wave.open(cut, "wb") as out:
        out.setnchannels(settings[0])
        out.setsampwidth(settings[1])
        out.setframerate(settings[2])
        out.writeframes(frames)
    return cut.getvalue()

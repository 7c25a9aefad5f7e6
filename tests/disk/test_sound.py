"""Cutting sound by time, read back by the standard library's `wave` (RIFF WAVE, linear samples)."""

import io
import wave
from pathlib import Path

import pytest

from boxlore.disk.sound import cut_wave


def recording(path: Path, seconds: int = 5, rate: int = 8000) -> Path:
    """Every second of it is one sample value, so that what is cut tells where it was."""
    with wave.open(str(path), "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(rate)
        sound.writeframes(b"".join(second.to_bytes(2, "little") * rate for second in range(seconds)))
    return path


@pytest.mark.parametrize(("start", "end", "frames"), [(1000, 3000, 16000), (4000, 9000, 8000), (-500, 1000, 8000)])
def test_what_is_cut_is_what_was_heard_then(start: int, end: int, frames: int, tmp_path: Path) -> None:
    data = cut_wave(recording(tmp_path / "a.wav"), start, end)
    assert data is not None
    with wave.open(io.BytesIO(data)) as sound:
        assert (sound.getnframes(), sound.getframerate(), sound.getsampwidth()) == (frames, 8000, 2)
        first = int.from_bytes(sound.readframes(1), "little")
    assert first == max(start, 0) // 1000


@pytest.mark.parametrize("data", [b"", b"RIFF\x00\x00\x00\x00WAVE", b"ID3\x03 an mp3"])
def test_another_kind_of_file_and_nothing_left_give_none(data: bytes, tmp_path: Path) -> None:
    (tmp_path / "a.wav").write_bytes(data)
    assert cut_wave(tmp_path / "a.wav", 0, 1000) is None
    assert cut_wave(tmp_path / "gone.wav", 0, 1000) is None
    assert cut_wave(recording(tmp_path / "b.wav"), 9000, 12000) is None

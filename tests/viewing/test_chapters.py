"""Our WebVTT as Chromium reads it: an independent reader of the standard."""

import base64
from typing import Any

from boxlore.exports.webvtt import Chapter, write_chapters

READ = """new Promise((done) => {{
  const sound = document.createElement("audio"), track = document.createElement("track");
  track.kind = "chapters"; track.src = "data:text/vtt;base64,{data}";
  track.onload = () => done([...track.track.cues].map((cue) => [cue.id, cue.startTime, cue.endTime, cue.text]));
  track.onerror = () => done("refused");
  sound.append(track); document.body.append(sound); track.track.mode = "hidden"; }})"""


def test_a_browser_reads_the_chapters(browser: Any) -> None:
    titles = ["The harbour", "A & B <i>wed</i> --> us", "WEBVTT", "NOTE no", "名前", "00:00:01.000"]
    text = write_chapters([Chapter(n * 1500, n * 1500 + 1500, title, f"TRA-{n:04d}") for n, title in enumerate(titles)])
    page = browser.page()
    page.open("about:blank")
    page.wait_for("location.href === 'about:blank' && Boolean(document.body)")
    cues = page.ask(READ.format(data=base64.b64encode(text.encode()).decode()))
    page.close()
    escaped = [title.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") for title in titles]
    assert cues == [[f"TRA-{n:04d}", n * 1.5, n * 1.5 + 1.5, title] for n, title in enumerate(escaped)]

"""Whether the terminal can draw pictures: what it is asked, and what of its input is an answer and not a key.

The terminal answers on the same line as the keyboard. Answers are taken out before keys are read from it, whenever they
come; what was typed between them stays. A terminal that answers nothing draws half blocks, and nobody waits for it.

Asked are, each in its own standard's words: whether kitty's graphics are understood (sw.kovidgoyal.net/kitty/
graphics-protocol, “Querying support”); the terminal's name (XTVERSION, XTerm Control Sequences: iTerm2 gives its own);
for 256 colours in sixel pictures, then how many there are, and how large such a picture may be (XTSMGRAPHICS, there);
how many pixels a cell has (`CSI 16 t`, there); and last what the terminal is (primary device attributes; 4 among them
is sixel, DEC VT340). Nearly every terminal answers the last question, so that its answer says that no other will come.
"""

import re
from dataclasses import dataclass, field

from boxlore.tasks.sitting.sharp_picture import COLOURS, Graphics, Language

QUESTIONS = "\x1b_Gi=31,s=1,v=1,a=q,t=d,f=24;AAAA\x1b\\\x1b[>0q\x1b[?1;3;256S\x1b[?1;1;0S\x1b[?2;1;0S\x1b[16t\x1b[c"
FEW_COLOURS = 32
"""Below so many, a photograph is better in half blocks, which have all colours."""

ANSWER = re.compile(
    r"\x1b_Gi=31;(?P<kitty>[^\x1b]*)\x1b\\"
    r"|\x1bP>\|(?P<name>[^\x1b]*)\x1b\\"
    r"|\x1b\[\?1;(?P<failed>\d+)(?:;(?P<colours>\d+))?S"
    r"|\x1b\[\?2;\d+(?:;(?P<wide>\d+);(?P<high>\d+))?S"
    r"|\x1b\[6;(?P<cell_high>\d+);(?P<cell_wide>\d+)t"
    r"|\x1b\[\?(?P<attributes>[\d;]*)c"
)
BEGUN = re.compile(r"\x1b(?:_(?:G[^\x1b]*\x1b?)?|P(?:>[^\x1b]*\x1b?)?|\[(?:[?6][\d;]*)?)?\Z")
"""The end of what was read, if it may be the beginning of an answer. Esc, Alt+Shift+P and such begin so too."""
SHORT = 3
"""So many letters may be a key: they are given back when nothing follows them."""


@dataclass(slots=True)
class Answers:
    """What the terminal has answered so far. `over`: it has answered the last question."""

    kitty: bool = False
    sixel: bool = False
    name: str = ""
    colours: int = COLOURS
    largest: tuple[int, int] = (0, 0)
    cell: tuple[int, int] = (0, 0)
    over: bool = False
    _held: str = field(default="")

    def taken_out(self, text: str) -> str:
        """What was read, without the answers in it. An answer that has only begun is held until the rest comes."""
        text = self._held + text
        self._held = ""
        if not self.over and (begun := BEGUN.search(text)):
            self._held, text = begun[0], text[: begun.start()]
        return ANSWER.sub(self._heard, text)

    def given_back(self) -> str:
        """What was held, when nothing has followed it for a moment, and it may be a key."""
        if not 0 < len(self._held) < SHORT:
            return ""
        held, self._held = self._held, ""
        return held

    def _heard(self, answer: "re.Match[str]") -> str:
        said = answer.groupdict()
        if said["kitty"] is not None:
            self.kitty = said["kitty"] == "OK"
        elif said["name"] is not None:
            self.name = said["name"]
        elif said["failed"] is not None:
            self.colours = int(said["colours"] or COLOURS) if said["failed"] == "0" else COLOURS
        elif said["wide"] is not None:
            self.largest = int(said["wide"]), int(said["high"])
        elif said["cell_high"] is not None:
            self.cell = int(said["cell_wide"]), int(said["cell_high"])
        elif said["attributes"] is not None:
            self.sixel = "4" in said["attributes"].split(";")
            self.over = True
        return ""

    def graphics(self, cell: tuple[int, int] = (0, 0)) -> Graphics | None:
        """What the terminal can draw; None if no picture. `cell` is its size as the system tells it, which is newer
        than the answer; without any size a picture could not be fitted."""
        cell = cell if all(cell) else self.cell
        if not all(cell):
            return None
        if self.name.startswith("iTerm2"):  # it knows sixels too; its own language has all colours
            return Graphics(Language.ITERM, cell)
        if self.kitty:
            return Graphics(Language.KITTY, cell)
        if self.sixel and self.colours >= FEW_COLOURS:
            return Graphics(Language.SIXEL, cell, self.colours, self.largest)
        return None

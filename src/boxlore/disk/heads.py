"""Where faces are in a picture, so that a number can be put on each: proposed only, and never whose they are.

Theory of operation
===================

Three models of a face seen from before (Viola and Jones, 2001; Lienhart and others, 2003), which OpenCV 4 carries, look
at the picture in grey, its contrast evened out. Each errs often and by itself: in gravel, curtains, leaves. A face is
what all three see; and, in a group, what two of them see and is as large as the faces that all three saw. What is much
larger or smaller than the others of a group is none. Faces seen from the side, or turned away, are not found.

Nothing is kept but places. OpenCV is the optional extra `see`.
"""

from dataclasses import dataclass, field
from pathlib import Path
from statistics import median
from typing import Any

import cv2

from boxlore.core.errors import CouldNot
from boxlore.disk.outlines import Head

MODELS = ("frontalface_default", "frontalface_alt", "frontalface_alt2")
"""What OpenCV 4 calls the three."""
SMALLEST = 20
"""Pixels of a face at least: the models were made of faces of that size."""
NEAR = 0.4
"""Two finds are one where their middles are nearer than this part of their width."""
GROUP = 3
"""From so many faces on they are a group, whose faces are about as large as each other."""
ALIKE, RATHER = 2.0, 1.5
"""By how much a face of a group may be larger or smaller than the middle one; and one that two models see alone."""

Array = Any
"""An array of numpy, whose types OpenCV does not tell."""


@dataclass(slots=True)
class _Find:
    """Finds of several models at one place: middle and width in pixels, and which models."""

    x: float
    y: float
    width: float
    models: set[str] = field(default_factory=set)

    def is_here(self, x: float, y: float, width: float) -> bool:
        most = NEAR * max(self.width, width)
        return abs(self.x - x) < most and abs(self.y - y) < most and 0.5 < self.width / width < 2


def find_heads(grey: Array) -> list[Head]:
    """The faces of an upright picture in grey (height, width), from the left. Raises CouldNot without the models."""
    even = cv2.createCLAHE(2.0, (8, 8)).apply(grey)
    finds: list[_Find] = []
    for name in MODELS:
        for left, top, wide, high in _model(name).detectMultiScale(even, 1.1, 3, minSize=(SMALLEST, SMALLEST)):
            x, y, width = float(left + wide / 2), float(top + high / 2), float(wide)
            here = next((find for find in finds if find.is_here(x, y, width)), None)
            if here is None:
                finds.append(here := _Find(x, y, width))
            here.models.add(name)
    high, wide = grey.shape
    return sorted(Head(find.x / wide, find.y / high, find.width / wide, find.width / high) for find in _faces(finds))


def _faces(finds: list[_Find]) -> list[_Find]:
    """Those of the finds that are faces."""
    sure = [find for find in finds if len(find.models) == len(MODELS)]
    if len(sure) < GROUP:
        return sure
    usual = median(find.width for find in sure)
    return [
        find
        for find in finds
        if len(find.models) > 1
        and max(find.width / usual, usual / find.width) < (ALIKE if len(find.models) == len(MODELS) else RATHER)
    ]


def _model(name: str) -> Any:
    path = Path(cv2.__file__).parent / "data" / f"haarcascade_{name}.xml"
    model = cv2.CascadeClassifier(str(path)) if path.is_file() and hasattr(cv2, "CascadeClassifier") else None
    if model is None or model.empty():
        raise CouldNot(
            "The OpenCV that is installed carries no models of faces.",
            "Install the one that does (`pip install boxlore[see]`), or set the markers by hand.",
        )
    return model

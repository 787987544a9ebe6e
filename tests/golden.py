"""Finished drawings as a person can read them, in mm, kept beside the tests.

Run the tests with RENEW_GOLDEN=1 in the environment to write them anew; look at what changed before keeping it.
"""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Part

FOLDER = Path(__file__).parent / "golden"


def listed(part: Part) -> str:
    """One line for each shape of a part: its pen and places in mm; words with where they begin and their size."""
    left, bottom, right, top = part.box
    head = [
        f"{part.name}: {part.title}",
        *(f"  {note}" for note in part.notes),
        f"from {left:.3f} {bottom:.3f} to {right:.3f} {top:.3f}",
        f"crosses at {_places(part.datum)}",
        "",
    ]
    return "\n".join([*head, *map(_line, part.shapes), ""])


def _line(shape: Shape) -> str:
    if isinstance(shape, Text):
        return f"words    {_places([shape.at])}  {shape.size:.3f}  {shape.words}"
    if isinstance(shape, Region):
        return f"{shape.pen.value:8} {' | '.join(_places(contour.points()) for contour in shape.contours)}"
    return f"{shape.pen.value:8} {_path(shape)}"


def _path(path: Curve) -> str:
    return _places(path.points()) + ("  closed" if path.closed else "")


def _places(points: Iterable[Point]) -> str:
    return "  ".join(f"{x + 0.0:.3f} {y + 0.0:.3f}" for x, y in points)


def matches(name: str, text: str) -> bool:
    """Whether the golden file `name` holds `text`; written anew where that is asked for."""
    file = FOLDER / f"{name}.txt"
    if os.environ.get("RENEW_GOLDEN"):
        FOLDER.mkdir(exist_ok=True)
        file.write_text(text, encoding="utf-8", newline="\n")
    return file.read_text(encoding="utf-8") == text

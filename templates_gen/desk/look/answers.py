"""What the desk shows beside the slip, as values: numbers, the frame, strips, and the pile of sheets."""

from __future__ import annotations

from typing import Literal, NamedTuple

How = Literal["measured", "computed", "assumed"]


class Number(NamedTuple):
    """One row of the numbers.

    `value` is what is shown first and `second` beside it, in the other unit or another count; `value` is empty where an
    input is lacking, and `needs` then names the field to fill in, `needs_said` the words of the link ("needs picks").
    `how` it is known, and in words. `why` are whole sentences. `gives` is the field that changes it most, under the
    words `gives_said`. `low`, `high` and `taken` are plain numbers, None where there are none, `range` their drawing as
    SVG. `warnings` are sentences that concern this number.
    """

    id: str
    name: str
    value: str
    second: str
    how: How
    how_said: str
    why: tuple[str, ...] = ()
    low: float | None = None
    high: float | None = None
    taken: float | None = None
    range: str = ""
    gives: str = ""
    gives_said: str = ""
    needs: str = ""
    needs_said: str = ""
    warnings: tuple[str, ...] = ()


class PassLine(NamedTuple):
    """One end of the warp as it lies on the frame, in mm of the drawing's view box, y down.

    It runs from (`x1`, `y1`) at the near end of the frame to (`x2`, `y2`) at the far end, in `layer` at the near end
    and `far_layer` at the far end. `near` and `far` are the places of its marks on the strips (`StripView.marks`).
    """

    end: int
    x1: float
    y1: float
    x2: float
    y2: float
    layer: Literal["face", "back"]
    far_layer: Literal["face", "back"]
    near: int
    far: int


class FrameDrawing(NamedTuple):
    """The frame to scale: an inline SVG, each end of the warp, and one sentence for each end, counted from 1.

    `about` says what is seen, for who cannot see it.
    """

    svg: str
    passes: tuple[PassLine, ...]
    said: tuple[str, ...]
    about: str


class StripView(NamedTuple):
    """A marking strip or template alone: its SVG, its size in mm, where its marks are, and what is printed at them.

    `marks` are x in mm from the left edge of the SVG, in the order of winding; `labels` are numbers, or words such as
    "tie-on". `span` is how far a mark reaches, from the top and to the bottom, in mm of the view box.
    Where there is no picture `why` says so in a sentence.
    """

    svg: str
    mm: tuple[float, float]
    marks: tuple[float, ...]
    labels: tuple[str, ...]
    span: tuple[float, float]
    about: str
    why: str = ""


class SheetView(NamedTuple):
    """One sheet as it is seen: its SVG, what it is called, which `number` it is of how many `sheets` of its file.

    Where it cannot be drawn `sheets` is 0, `why` says it in a sentence, and `gives` is the field that would change it.
    """

    svg: str
    title: str
    number: int
    sheets: int
    why: str = ""
    gives: str = ""


class SheetName(NamedTuple):
    """One file of the pile: its `file`, what it is called, of how many `sheets` it is.

    Where `sheets` is 0 it is left out: `why` says it in a sentence, and `gives` is the field that would change it.
    """

    file: str
    title: str
    sheets: int
    why: str = ""
    gives: str = ""

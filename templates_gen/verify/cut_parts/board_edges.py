"""The outline of the sheet on a board: for reference alone, once, and as large as the stock says."""

from __future__ import annotations

import math

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof_cut import Board
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, finding


def prove_edges(stock: Stock, sheet: Sheet) -> Findings:
    """Whether one closed path for reference runs through the four corners of the stock, and no other pen draws them."""
    corners = [(0.0, 0.0), (0.0, stock.height), (stock.width, 0.0), (stock.width, stock.height)]
    paths = [shape for shape in sheet.shapes if isinstance(shape, Curve)]
    there = [path for path in paths if _through(path, corners)]
    if [path.pen for path in there] == [Pen.REFERENCE] and there[0].closed:
        return NOTHING
    return Findings(0.0, (finding(Board.EDGES, found=len(there)),))


def _through(path: Curve, corners: list[tuple[float, float]]) -> bool:
    """Whether a path has four straight sides between these corners."""
    points = path.points()
    straight = len(points) == len(corners) and all(step.through is None for step in path.steps)
    return straight and all(any(math.dist(corner, at) <= LIMIT for at in points) for corner in corners)

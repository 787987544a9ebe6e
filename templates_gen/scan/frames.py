"""From millimetres of a sheet to pixels of a picture and back, and what a map says of scale."""

from __future__ import annotations

from math import atan2, cos, degrees, sin
from typing import NamedTuple

import numpy

from layout.drawing.correction import Scale
from templates_gen.scan.picture import MM, Numbers


class Map(NamedTuple):
    """An affine map of points: `matrix` @ point + `origin`."""

    matrix: Numbers
    origin: Numbers

    def to(self, points: Numbers) -> Numbers:
        """Where points (rows of x, y) come to lie."""
        found: Numbers = points @ self.matrix.T + self.origin
        return found

    def back(self, points: Numbers) -> Numbers:
        """The points that come to lie there."""
        found: Numbers = (points - self.origin) @ numpy.linalg.inv(self.matrix).T
        return found


def bed(dpi: tuple[float, float]) -> Map:
    """From pixels (column, row) to mm of the scanner's bed, y up."""
    return Map(numpy.diag([MM / dpi[0], -MM / dpi[1]]), numpy.zeros(2))


def after(second: Map, first: Map) -> Map:
    """Both maps, the first one first."""
    return Map(second.matrix @ first.matrix, second.matrix @ first.origin + second.origin)


def scale_and_turn(matrix: Numbers) -> tuple[Scale, float]:
    """What a map from the sheet to the bed makes of a millimetre, and by how many degrees it turns it to the left."""
    turn = atan2(matrix[1, 0], matrix[0, 0])
    straight = numpy.array([[cos(turn), sin(turn)], [-sin(turn), cos(turn)]]) @ matrix
    return Scale(float(straight[0, 0]), float(straight[1, 1]), float(straight[0, 1])), degrees(turn)


def best_map(places: Numbers, found: Numbers, weights: Numbers | None = None) -> Map:
    """The affine map by least squares of places to where they are found; `weights` of 0 leave a point out."""
    weight = numpy.ones(len(places)) if weights is None else weights
    rows = numpy.column_stack([places, numpy.ones(len(places))]) * weight[:, None]
    solved = numpy.linalg.lstsq(rows, found * weight[:, None], rcond=None)[0]
    return Map(solved[:2].T.copy(), solved[2].copy())


def similarity(places: Numbers, found: Numbers, *, mirrored: bool = False) -> Map:
    """Turn, size and shift by least squares of places to where they are found, y up in both; or of a mirror image."""
    sign = -1 if mirrored else 1
    one = (places - places.mean(0)) * (sign, 1)
    two = found - found.mean(0)
    real = (one * two).sum() / (one**2).sum()
    turned = (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]).sum() / (one**2).sum()
    matrix = numpy.array([[real, -turned], [turned, real]]) @ numpy.diag([sign, 1.0])
    return Map(matrix, found.mean(0) - matrix @ places.mean(0))

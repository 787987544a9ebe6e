"""How sure the scale of a sheet is: the 95 % of each share, from what its targets and marks are off.

Targets alone do not see that a carriage runs unevenly between them; marks do. Where there are none in a direction, a
scanner is taken to be as uneven as common ones are.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot
from typing import NamedTuple

import numpy

from layout.drawing.correction import Scale
from templates_gen.scan.affine import Fit, spreads
from templates_gen.scan.picture import Numbers

LEAST, UNSEEN = 0.008, 0.030
"""Mm that a target may be off at least: as read, and where no marks show how even the scanner is."""

WIDER = 1.25
"""By how much marks' and all limits are widened; set by simulated scans, docs/scan.md."""

_LEAST_MARKS = 6
_FACING, _SPAN = 0.5, 0.5  # of a mark's direction, and of the rectangle of the targets
_CLIP = 4.0
_STUDENT = (12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179)
"""Student's t at 97.5 % for 1, 2, 3 ... degrees of freedom, as in any table of it."""


class Mark(NamedTuple):
    """Where a mark's middle is on the sheet, the direction across it, and how far it is off that way, in mm."""

    at: Numbers
    across: Numbers
    off: float


class Surety(NamedTuple):
    """95 % of scale and ratio, and the size in mm of what no scale explains."""

    within: Scale
    ratio: float
    uneven: float


def surety(fit: Fit, scale: Scale, marks: Sequence[Mark]) -> Surety:
    """Of a fit whose marks were read."""
    t = _student(fit)
    seen = [_uneven(fit, marks, axis) for axis in (0, 1)]
    x, y = (max(fit.rms, UNSEEN if each is None else WIDER * each, LEAST) * WIDER * t for each in seen)
    of_x, of_y = spreads(fit)
    across, up = float(x * of_x[0, 0] ** 0.5 * scale.x), float(y * of_y[1, 1] ** 0.5 * scale.y)
    skew = hypot(x * of_x[1, 1] ** 0.5 * scale.x, y * of_y[0, 0] ** 0.5 * scale.y)
    ratio = scale.x / scale.y * hypot(across / scale.x, up / scale.y)
    return Surety(Scale(across, up, skew), ratio, max([fit.rms, *(each for each in seen if each is not None)]))


def placed(fit: Fit, mark: Mark) -> float:
    """The 95 % of how far the fit itself may be off at a mark, across it, in mm: what the targets are off, by the
    normal equations."""
    row = numpy.append(mark.at, 1.0)
    variance = sum(float(way**2 * (row @ spread @ row)) for way, spread in zip(mark.across, spreads(fit), strict=True))
    return float(_student(fit) * max(fit.rms, LEAST) * variance**0.5)


def _student(fit: Fit) -> float:
    return _STUDENT[min(max(fit.free, 1), len(_STUDENT)) - 1]


def _uneven(fit: Fit, marks: Sequence[Mark], axis: int) -> float | None:
    """The rms of what marks are off along an axis; None where they show too little of the sheet."""
    facing = [mark for mark in marks if abs(mark.across[axis]) >= _FACING]
    if len(facing) < _LEAST_MARKS:
        return None
    along = numpy.array([mark.at[axis] for mark in facing])
    if along.max() - along.min() < _SPAN * (fit.places[:, axis].max() - fit.places[:, axis].min()):
        return None
    off = numpy.array([mark.off for mark in facing])
    far = max(_CLIP * 1.4826 * float(numpy.median(numpy.abs(off))), LEAST)
    return float(numpy.sqrt((off[numpy.abs(off) <= far] ** 2).mean()))

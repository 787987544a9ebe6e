"""The map from a sheet to the bed by its targets: least squares, targets that are far off dropped, refusals."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

import numpy

from templates_gen.messages.roles.scan import ScanSheet
from templates_gen.scan.frames import Map, after
from templates_gen.scan.nominal import Target
from templates_gen.scan.picture import Numbers
from templates_gen.scan.seen import ScanError

LEAST = 5
"""Targets that are needed."""

MOST_DROPPED = 1
"""One target may be spoilt; where more of them are off their places, the sheet or the carriage moved."""

FAR, ROUGH = 0.3, 0.10
"""Mm: a target further off than the first is dropped, a sheet whose targets are off by more than the second refused."""

_ALONE, _SMALL = 0.35, 0.015  # a target without which what is left of rms over 15 um is so small a share is dropped
_BROAD, _SHARE = 60.0, 0.3  # mm, or of a small sheet's shorter side: smallest spread of the targets without one


class Fit(NamedTuple):
    """The map from the sheet to the bed, and how well the targets lie on it.

    `places` and `off` are mm of the sheet, one row a target that is used; `weights` say which of x and y count, `used`
    which targets these are. `rms` has the degrees of freedom `free`.
    """

    map: Map
    places: Numbers
    off: Numbers
    weights: Numbers
    used: tuple[int, ...]
    rms: float
    free: int


def fit(targets: Sequence[Target], found: Sequence[Numbers | None], start: Map) -> Fit:
    """From where the targets were found on the bed, in mm; ScanError where that can say nothing that is sure."""
    used = [k for k, at in enumerate(found) if at is not None]
    if len(used) < LEAST:
        raise _few(len(used), len(targets))
    best = _fit(targets, found, used, start)
    while True:
        off = numpy.hypot(*best.off.T)
        if len(used) - len(best.used) == MOST_DROPPED or len(best.used) == LEAST:
            break
        if off.max() > FAR:
            best = _without(targets, found, best, int(off.argmax()), start)
            continue
        if best.rms > _SMALL:
            others = [_without(targets, found, best, k, start) for k in range(len(best.used))]
            other = min(others, key=lambda each: each.rms)
            if other.rms < _ALONE * best.rms:
                best = other
                continue
        break
    off = numpy.hypot(*best.off.T)
    if off.max() > FAR:
        agree = int((off <= FAR).sum())
        raise _few(agree, len(targets)) if agree < LEAST else ScanError(ScanSheet.NOT_FLAT, off=f"{off.max():.2f}")
    _refuse_line(best, targets)
    if best.rms > ROUGH:
        raise ScanError(ScanSheet.NOT_FLAT, off=f"{best.rms:.2f}")
    return best


def _few(found: int, wanted: int) -> ScanError:
    return ScanError(ScanSheet.FEW, found=found, wanted=wanted, least=LEAST)


def _without(targets: Sequence[Target], found: Sequence[Numbers | None], was: Fit, row: int, start: Map) -> Fit:
    return _fit(targets, found, [k for place, k in enumerate(was.used) if place != row], start)


def _fit(targets: Sequence[Target], found: Sequence[Numbers | None], used: Sequence[int], start: Map) -> Fit:
    seen = numpy.array([found[k] for k in used])
    places = numpy.array([targets[k].at for k in used], float)
    weights = numpy.array([[0.0 if targets[k].slides == axis else 1.0 for axis in (0, 1)] for k in used])
    now = start
    for _ in range(3):
        back = now.back(seen)
        places = numpy.where(weights > 0, places, back)
        matrix, origin = numpy.eye(2), numpy.zeros(2)
        for axis in (0, 1):
            rows = numpy.column_stack([places, numpy.ones(len(used))]) * weights[:, axis, None]
            *matrix[axis], origin[axis] = numpy.linalg.lstsq(rows, back[:, axis] * weights[:, axis], rcond=None)[0]
        now = after(now, Map(matrix, origin))
    off = (now.back(seen) - places) * weights
    free = int(weights.sum()) - 6
    return Fit(now, places, off, weights, tuple(used), float((off**2).sum() / max(free, 1)) ** 0.5, free)


def _refuse_line(fit: Fit, targets: Sequence[Target]) -> None:
    """ScanError if the targets lie too near one line once any one of them is left out."""
    all_places = numpy.array([target.at for target in targets])
    broad = min(_BROAD, _SHARE * float((all_places.max(0) - all_places.min(0)).min()))
    for axis in (0, 1):
        for out in range(len(fit.places)):
            kept = [k for k in range(len(fit.places)) if k != out and fit.weights[k, axis] > 0]
            rest = fit.places[kept]
            if len(rest) < 3 or numpy.linalg.svd(rest - rest.mean(0), compute_uv=False)[1] < broad:
                raise ScanError(ScanSheet.IN_LINE)


def spreads(fit: Fit) -> tuple[Numbers, Numbers]:
    """For x and for y, the inverse of the normal equations: variances of the shares for each mm2 of a target's."""
    found = []
    for axis in (0, 1):
        rows = numpy.column_stack([fit.places, numpy.ones(len(fit.places))]) * fit.weights[:, axis, None]
        found.append(numpy.linalg.inv(rows.T @ rows))
    return found[0], found[1]

"""Where exactly the middle of a target is: its drawing is fitted to the pixels by Gauss and Newton's method."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

import numpy

from templates_gen.scan.drawn_ring import Profile, profiles
from templates_gen.scan.frames import Map
from templates_gen.scan.picture import Grey, Numbers

_REACH = 1.8  # mm round the middle that are looked at
_ROUNDS, _END = 10, 1e-4  # mm
_MOST_MOVED = 0.6  # mm
_LEAST_SEEN = 0.85  # of the disc must be on the picture
_LEAST_EXPLAINED = 0.75  # of the variance of the pixels
_LEAST_CONTRAST = 12.0  # grey levels
_TUKEY = 4.685


class Fitted(NamedTuple):
    """The middle in pixels, by how much ink is darker than paper in grey levels, and the share that is explained."""

    at: Numbers
    contrast: float
    explained: float


def fitted(grey: Grey, to_pixels: Map, starts: Sequence[Numbers | None]) -> list[Fitted | None]:
    """The middles of the targets that seem to be at `starts`, in pixels; None where there is none.

    `to_pixels` takes mm of the sheet to pixels. Blur and spread are those that suit the clearest three best.
    """
    seen = [None if start is None else _Window.of(grey, to_pixels, start) for start in starts]
    windows = [window for window in seen if window is not None]
    if not windows:
        return [None] * len(seen)
    first = sorted(windows, key=lambda window: -window.spread)[:3]
    best = min(profiles(), key=lambda profile: sum(_fit(window, profile)[1] for window in first))
    return [None if window is None else _accepted(window, best) for window in seen]


class _Window(NamedTuple):
    """Pixels of a disc: mm from its middle (in axes of the sheet), and how dark they are."""

    near: Numbers
    dark: Numbers
    middle: Numbers
    to_pixels: Map

    @property
    def spread(self) -> float:
        return float(self.dark.std())

    @classmethod
    def of(cls, grey: Grey, to_pixels: Map, middle: Numbers) -> _Window | None:
        size = float(abs(numpy.linalg.det(to_pixels.matrix))) ** 0.5
        half = int(numpy.ceil(_REACH * size * 1.15)) + 1
        column, row = (round(float(each)) for each in middle)
        rows = numpy.arange(max(0, row - half), min(grey.shape[0], row + half + 1))
        columns = numpy.arange(max(0, column - half), min(grey.shape[1], column + half + 1))
        if not len(rows) or not len(columns):
            return None
        across, down = numpy.meshgrid(columns, rows)
        away = numpy.column_stack([across.ravel() - middle[0], down.ravel() - middle[1]])
        near = away @ numpy.linalg.inv(to_pixels.matrix).T
        inside = numpy.hypot(*near.T) <= _REACH
        if inside.sum() < _LEAST_SEEN * numpy.pi * (_REACH * size) ** 2:
            return None
        dark = 255.0 - grey[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1].ravel()[inside]
        return cls(near[inside], dark, middle, to_pixels)


def _fit(window: _Window, profile: Profile) -> tuple[Numbers, float, float]:
    """How far the middle moves in mm, the sum of squares that is left, and the contrast."""
    moved, weight = numpy.zeros(2), numpy.ones(len(window.dark))
    contrast, ground = float(window.dark.std() * 2.5), numpy.ones((len(window.dark), 1))
    left = window.dark - window.dark.mean()
    for turn in range(_ROUNDS):
        from_middle = window.near - moved
        away = numpy.maximum(numpy.hypot(*from_middle.T), 1e-9)
        dark, slope = profile.at(away)
        towards = -contrast * (slope / away)[:, None] * from_middle
        rows = numpy.hstack([towards, ground, window.near, dark[:, None]])
        heavy = rows * weight[:, None]
        solved = numpy.linalg.lstsq(heavy.T @ rows, heavy.T @ window.dark, rcond=None)[0]
        left = window.dark - rows @ solved
        step, contrast = numpy.clip(solved[:2], -0.2, 0.2), float(solved[5])
        moved = moved + step
        if contrast <= 0 or numpy.hypot(*moved) > _MOST_MOVED:
            break
        if turn >= 2:
            if numpy.abs(step).max() < _END:
                break
            size = max(1.4826 * float(numpy.median(numpy.abs(left))), 1.0) * _TUKEY
            weight = numpy.clip(1 - (left / size) ** 2, 0, None) ** 2  # a pencil line or a hole has no say
    return moved, float((left**2).sum()), contrast


def _accepted(window: _Window, profile: Profile) -> Fitted | None:
    moved, left, contrast = _fit(window, profile)
    explained = 1 - left / max(float(((window.dark - window.dark.mean()) ** 2).sum()), 1e-9)
    if contrast < _LEAST_CONTRAST or explained < _LEAST_EXPLAINED or numpy.hypot(*moved) > _MOST_MOVED:
        return None
    return Fitted(window.middle + window.to_pixels.matrix @ moved, contrast, explained)

"""How dark a target is at each distance from its middle, once ink has spread and a scanner has blurred it."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

import numpy

from layout.paper.targets import DOT_R, RING_PEN, RING_R
from templates_gen.scan.picture import Numbers

BLURS = (0.05, 0.075, 0.10, 0.14, 0.20)
SPREADS = (0.0, 0.04, 0.08)
"""Deviation of the blur, and by how much ink stands past the edge on both sides together, in mm."""

STEP = 0.02
_HALF = 130  # steps


class Profile(NamedTuple):
    """Darkness, 0 to 1, and its slope for each mm, at distances of 0, 1, 2 ... `STEP` from the middle."""

    dark: Numbers
    slope: Numbers

    def at(self, away: Numbers) -> tuple[Numbers, Numbers]:
        """Darkness and slope at distances in mm."""
        grid = numpy.arange(len(self.dark)) * STEP
        return numpy.interp(away, grid, self.dark), numpy.interp(away, grid, self.slope)


@cache
def profiles() -> tuple[Profile, ...]:
    """One for each blur and spread."""
    return tuple(_profile(blur, spread) for blur in BLURS for spread in SPREADS)


def _profile(blur: float, spread: float) -> Profile:
    side = numpy.arange(-_HALF, _HALF + 1) * STEP
    away = numpy.hypot(side[:, None], side[None, :])
    sharp = numpy.maximum(
        _edge(RING_PEN.ink.width / 2 + spread / 2 - numpy.abs(away - RING_R)), _edge(DOT_R + spread / 2 - away)
    )
    kernel = numpy.exp(-((side / blur) ** 2) / 2)
    kernel /= kernel.sum()
    rows = numpy.stack([numpy.convolve(row, kernel, "same") for row in sharp])
    dark = numpy.stack([numpy.convolve(column, kernel, "same") for column in rows.T[_HALF : _HALF + 1]])[0]
    outward = dark[_HALF:]
    return Profile(outward, numpy.gradient(outward, STEP))


def _edge(inside: Numbers) -> Numbers:
    """How much of a step is inked whose middle is so far inside an edge."""
    inked: Numbers = numpy.clip(inside / STEP + 0.5, 0, 1)
    return inked

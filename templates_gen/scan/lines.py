"""How far each straight mark of a sheet is off its place, across itself."""

from __future__ import annotations

from collections.abc import Sequence
from math import atan2, cos, dist, hypot, pi, sin
from typing import NamedTuple

import numpy

from templates_gen.scan.frames import Map
from templates_gen.scan.picture import Flags, Grey, Numbers
from templates_gen.scan.seen import Line

_ALONG, _MIDDLE = 0.4, 0.7  # mm between rows, and the share of a line's length that they cover
_AVERAGE = 4  # rows that are averaged to one, between which noise differs
_ACROSS = 1.1  # mm to both sides
_WINDOW, _BESIDE = 0.45, 0.3  # mm to both sides of a line's middle, and beside a wide line
_STEP = 0.05  # mm across
_FLOOR = 0.12  # of the darkest: less is paper
_FAINT = 0.2  # of the ink of targets: fainter is no line
_ROUNDS, _FARTHEST = 4, 0.4  # mm
_MADS = 3.0
_LEAST_ROWS, _LEAST_SHARE = 4, 0.5
_SURE, _OF_PIXEL = 0.002, 0.02  # mm, and of a pixel: what rows that are misread alike do not show
_BLUR, _BLURRED = 0.15, 1.5  # mm, and pixels more, beside a line that are blurred ink
_BAND, _GROUND = 0.4, 0.04  # mm beyond that where the ground is looked at; a step of it, as a share of the ink
_UNSURE = 0.05  # mm that a line may be off for a step as dark as the ink
_PARALLEL = 0.05  # radians


class Off(NamedTuple):
    """How far a line is off its place, to the left of its direction positive, and the 95 % of that, in mm."""

    off: float
    within: float


def lines_off(grey: Grey, to_pixels: Map, lines: Sequence[Line], ink: float) -> list[Off | None]:
    """For each line; None where it cannot be read. `to_pixels` takes mm of the sheet to pixels; `ink` is the contrast
    of targets in grey levels."""
    return [_line_off(grey, to_pixels, line, room, ink) for line, room in zip(lines, _rooms(lines), strict=True)]


def _rooms(lines: Sequence[Line]) -> list[float]:
    """How far each line is alone to both sides: half the way to a neighbour, at most so far as is looked at all."""
    found = []
    for line in lines:
        room = _ACROSS
        length, direction = dist(line.start, line.end), _direction(line)
        middle = ((line.start.x + line.end.x) / 2, (line.start.y + line.end.y) / 2)
        for other in lines:
            if other is line:
                continue
            apart = abs((_direction(other) - direction + pi / 2) % pi - pi / 2)
            if apart > _PARALLEL:
                continue
            away = ((other.start.x + other.end.x) / 2 - middle[0], (other.start.y + other.end.y) / 2 - middle[1])
            along = away[0] * cos(direction) + away[1] * sin(direction)
            across = abs(away[1] * cos(direction) - away[0] * sin(direction))
            if abs(along) < (length + dist(other.start, other.end)) / 2 and across > 1e-6:
                room = min(room, (across + line.width / 2 - other.width / 2) / 2)
        found.append(room)
    return found


def _direction(line: Line) -> float:
    return atan2(line.end.y - line.start.y, line.end.x - line.start.x)


def _line_off(grey: Grey, to_pixels: Map, line: Line, room: float, ink: float) -> Off | None:
    window, length = min(room, max(_WINDOW, line.width / 2 + _BESIDE)), dist(line.start, line.end)
    many = int(_MIDDLE * length / _ALONG) + 1
    if many < _LEAST_ROWS or window < line.width / 2 + 0.05:
        return None
    direction = _direction(line)
    way, left = numpy.array([cos(direction), sin(direction)]), numpy.array([-sin(direction), cos(direction)])
    middle = (numpy.array(line.start) + numpy.array(line.end)) / 2
    along = (numpy.arange(many) - (many - 1) / 2) * _ALONG
    fine = (along[:, None] + ((numpy.arange(_AVERAGE) + 0.5) / _AVERAGE - 0.5) * _ALONG).ravel()
    across = numpy.arange(-_ACROSS, _ACROSS + _STEP / 2, _STEP)
    points = middle + fine[:, None, None] * way + across[None, :, None] * left
    seen = _sampled(grey, to_pixels.to(points.reshape(-1, 2)))
    if seen is None:
        return None
    rows = seen.reshape(many, _AVERAGE, len(across)).mean(1)
    paper = numpy.percentile(rows, 85, axis=1)[:, None]
    pixel = 1 / float(abs(numpy.linalg.det(to_pixels.matrix))) ** 0.5
    clear = line.width / 2 + _BLUR + _BLURRED * pixel
    grounds = _grounds(paper - rows, across, (clear, min(room, clear + _BAND)), ink)
    centres, good = _centres(paper - rows, across, window, ink, (*grounds, line.width))
    found = _straight(along, centres, good, pixel)
    return found and Off(found.off, hypot(found.within, _UNSURE * (grounds[1] - grounds[0])))


def _grounds(dark: Numbers, across: Numbers, band: tuple[float, float], ink: float) -> tuple[float, float]:
    """How dark the paper is at the right and at the left of a line, as a share of the ink: it may end a grey area."""
    near = (numpy.abs(across) >= band[0]) & (numpy.abs(across) <= band[1])
    right, left = near & (across < 0), near & (across > 0)
    if not right.any() or not left.any():
        return 0.0, 0.0
    sides = tuple(float(numpy.median(dark[:, side])) / ink for side in (right, left))
    return (sides[0], sides[1]) if abs(sides[0] - sides[1]) >= _GROUND else (0.0, 0.0)


def _sampled(grey: Grey, pixels: Numbers) -> Numbers | None:
    """The grey at places between pixels; None if some are not on the picture."""
    low = numpy.floor(pixels).astype(int)
    if low.min() < 0 or (low.max(0) >= numpy.array(grey.shape[::-1]) - 1).any():
        return None
    part = pixels - low
    column, row = low.T
    right, down = part.T
    upper = grey[row, column] * (1 - right) + grey[row, column + 1] * right
    lower = grey[row + 1, column] * (1 - right) + grey[row + 1, column + 1] * right
    found: Numbers = upper * (1 - down) + lower * down
    return found


def _centres(
    seen: Numbers, across: Numbers, window: float, ink: float, beside: tuple[float, float, float]
) -> tuple[Numbers, Flags]:
    """The ink's middle in each row, and which rows show it; `beside` are the grounds at its sides, and its width."""
    right, left, width = beside
    centre = numpy.zeros(len(seen))
    good = numpy.ones(len(seen), bool)
    for _ in range(_ROUNDS):
        inside = numpy.clip((window - numpy.abs(across[None, :] - centre[:, None])) / _STEP + 0.5, 0, 1)
        way = numpy.clip((across[None, :] - centre[:, None]) / width + 0.5, 0, 1)
        ground = right + (left - right) * way
        shown = numpy.clip(seen - ground * ink, 0, None) / (1 - ground) * inside
        peak = shown.max(1)
        good = peak >= _FAINT * ink
        weight = numpy.clip(shown - _FLOOR * peak[:, None], 0, None)  # no step: it would move with the pixels
        total = numpy.maximum(weight.sum(1), 1e-9)
        centre = numpy.where(good, (weight * across).sum(1) / total, centre)
    return centre, good & (numpy.abs(centre) < _FARTHEST)


def _straight(along: Numbers, centres: Numbers, good: Flags, pixel: float) -> Off | None:
    """The straight line through the middles of rows, far ones dropped; its value half way."""
    needed = max(_LEAST_ROWS, _LEAST_SHARE * len(along))
    kept = good
    for _ in range(5):
        if kept.sum() < needed:
            return None
        slope, value = numpy.polyfit(along[kept], centres[kept], 1)
        left = centres - value - slope * along
        mad = max(1.4826 * float(numpy.median(numpy.abs(left[kept]))), _SURE / 2)
        now = good & (numpy.abs(left) <= _MADS * mad)
        if (now == kept).all():
            break
        kept = now
    count = int(kept.sum())
    if count < needed:
        return None
    spread = along[kept] - along[kept].mean()
    sigma = float((left[kept] ** 2).sum() / (count - 2)) ** 0.5
    share = 1 / count + float(along[kept].mean()) ** 2 / float((spread**2).sum())
    return Off(float(value), 2 * hypot(sigma * share**0.5, _SURE, _OF_PIXEL * pixel))

"""What is taken on a template, and what finds room beside it: crosses, dots, numbers, scissors. Boxes in mm."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from layout.drawing.shapes import Box

_WHITE, _STEP = 0.15, 0.5


def around(x: float, v: float, half: float, high: float | None = None) -> Box:
    """A box about a place, `half` its width and, if that is another one, `high` half its height."""
    up = half if high is None else high
    return x - half, v - up, x + half, v + up


def clear(box: Box, taken: Iterable[Box], white: float = _WHITE) -> bool:
    """Whether nothing that is taken comes closer than `white` to a box."""
    left, low, right, high = box
    left, low, right, high = left - white, low - white, right + white, high + white
    return all(x >= right or left >= to or y >= high or low >= up for x, y, to, up in taken)


def near_to(wanted: float, span: tuple[float, float]) -> Iterator[float]:
    """Places from a wanted one on, to both sides by turns, within a span."""
    low, high = span
    for k in range(int(2 * (high - low) / _STEP) + 1):
        x = wanted + (k + 1) // 2 * (_STEP if k % 2 else -_STEP)
        if low <= x <= high:
            yield x


def inward(begin: float, toward: float) -> Iterator[float]:
    """Places from `begin` on, up to `toward`."""
    way = _STEP if toward > begin else -_STEP
    return (begin + way * k for k in range(int(abs(toward - begin) / _STEP) + 1))


def first_clear(xs: Iterable[float], v: float, half: float, taken: Sequence[Box]) -> float | None:
    """The first of the places where a square about it is clear."""
    return next((x for x in xs if clear(around(x, v, half), taken)), None)

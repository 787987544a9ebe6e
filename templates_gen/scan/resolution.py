"""What resolution a picture has, by what its file says and by what scanners have."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from templates_gen.messages.language import message
from templates_gen.messages.roles.scan import ScanPicture
from templates_gen.scan.seen import ScanError

LEAST, MOST = 150, 4800
"""Dots per inch: coarser scans are refused, and no bed is finer."""

USUAL = (75, 100, 150, 200, 240, 300, 400, 600, 1200, 2400)
_NEAR = 0.003  # a page box in whole points, or whole dots a centimetre, is so far off
_SAME = 0.00001
_SCREEN = 100  # programs that know nothing write 72 or 96


class Resolution(NamedTuple):
    """Dots per inch across and down, or None, and what is to be said of that."""

    dpi: tuple[float, float] | None
    remarks: tuple[str, ...] = ()


def asked(dpi: float) -> float:
    """The resolution that somebody gave; ScanError if no scan has it."""
    if not LEAST <= dpi <= MOST:
        raise ScanError(ScanPicture.DPI_OPTION, least=LEAST, most=MOST, got=f"{dpi:g}")
    return dpi


def of_tag(tag: Sequence[float] | None, page: int) -> Resolution:
    """What the tag of a picture means. Whole dots a centimetre are rounded, so they are taken for the usual number."""
    if tag is None or not all(0 < float(each) < 1e6 for each in tag):
        return Resolution(None, (message(ScanPicture.NO_DPI),))
    x, y = map(float, tag)
    if min(x, y) < _SCREEN:
        return Resolution(None, (message(ScanPicture.SCREEN_DPI, dpi=f"{min(x, y):g}"),))
    return _fine_enough(_snapped(x) or x, _snapped(y) or y, page, (x, y))


def of_box(width: float, height: float, page: int) -> Resolution:
    """What pixels per inch of a PDF's box mean: a box in whole points is rounded, so only usual numbers are taken."""
    x, y = _snapped(width), _snapped(height)
    if x is None or y is None:
        if min(width, height) < LEAST * (1 - _NEAR):
            return _fine_enough(width, height, page, (width, height))
        return Resolution(None, (message(ScanPicture.ODD_DPI, found=f"{width:.2f} x {height:.2f}"),))
    return _fine_enough(x, y, page, (width, height))


def _fine_enough(x: float, y: float, page: int, found: tuple[float, float]) -> Resolution:
    if min(x, y) < LEAST * (1 - _NEAR):
        raise ScanError(ScanPicture.COARSE, least=LEAST, page=page, dpi=f"{min(x, y):.0f}")
    far = max(abs(was / taken - 1) for was, taken in zip(found, (x, y), strict=True))
    said = _both(x, y)
    return Resolution((x, y), (message(ScanPicture.SNAPPED, found=_both(*found), dpi=said),) if far > _SAME else ())


def _both(x: float, y: float) -> str:
    return f"{x:.6g}" if abs(x / y - 1) < _SAME else f"{x:.6g} x {y:.6g}"


def _snapped(dpi: float) -> float | None:
    return next((float(each) for each in USUAL if abs(dpi / each - 1) <= _NEAR), None)

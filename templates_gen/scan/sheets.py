"""Sheets on a picture: from codes and rings to what is seen of each."""

from __future__ import annotations

from collections.abc import Sequence
from math import atan2, cos, sin
from typing import NamedTuple

import numpy

from layout.drawing.correction import Scale
from layout.drawing.shapes import Point
from templates_gen.messages.language import message
from templates_gen.messages.roles.scan import ScanSheet
from templates_gen.scan.affine import LEAST, Fit, fit
from templates_gen.scan.agreement import RATIO, SKEW, Agreement, agreement, stray
from templates_gen.scan.codes import Code, codes_on
from templates_gen.scan.frames import Map, after, bed, scale_and_turn
from templates_gen.scan.lines import Off, lines_off
from templates_gen.scan.nominal import Target, code_places, nominal_paper, nominal_targets
from templates_gen.scan.picture import MM, Numbers, Picture
from templates_gen.scan.resolution import LEAST as LEAST_DPI
from templates_gen.scan.ring_fit import Fitted, fitted
from templates_gen.scan.rings import Rings, rings_on
from templates_gen.scan.seen import Label, Line, OnBed, ScanError, Seen, SeenLine, SeenTarget
from templates_gen.scan.surety import Mark, placed, surety

_CODE_SIDE = 10.8  # mm, without its white
_CODE_OFF = 1.2  # mm
_TAG_OFF = 0.15  # further off than this by the size of the code, a resolution is that of another picture
_LEAST_LINES = 0.8


class SheetSeen(NamedTuple):
    """A sheet whose code was read, what rings are round it, and the resolution to go by.

    `known` says whether that is the picture's own; `remarks` what is odd about it.
    """

    label: Label
    code: Numbers
    rings: Rings
    dpi: tuple[float, float]
    known: bool
    remarks: tuple[str, ...]


def sheets(picture: Picture) -> list[SheetSeen]:
    """One for each code of a sheet."""
    codes = codes_on(picture)
    found: dict[tuple[float, float], Rings] = {}
    seen = []
    for code in codes:
        dpi, known, remarks = _resolution(picture, code)
        if dpi not in found:
            found[dpi] = rings_on(picture, dpi, len(codes))
        seen.append(SheetSeen(code.label, code.corners, found[dpi], dpi, known, remarks))
    return seen


def _resolution(picture: Picture, code: Code) -> tuple[tuple[float, float], bool, tuple[str, ...]]:
    """That of the picture if the code is of its size in it; else that by the code."""
    sides = numpy.roll(code.corners, -1, 0) - code.corners
    if picture.dpi is not None:
        size = float(numpy.hypot(*(sides * MM / numpy.array(picture.dpi)).T).mean()) / _CODE_SIDE
        if abs(size - 1) <= _TAG_OFF:
            return picture.dpi, True, ()
    found = float(numpy.hypot(*sides.T).mean()) / _CODE_SIDE * MM
    about = f"{found:.0f}"
    if picture.asked and picture.dpi is not None:
        raise ScanError(ScanSheet.WRONG_OPTION, dpi=f"{picture.dpi[0]:g}", found=about)
    if found < LEAST_DPI * (1 - _TAG_OFF / 3):
        raise ScanError(ScanSheet.COARSE, least=LEAST_DPI, dpi=about)
    if picture.dpi is None:
        return (found, found), False, ()
    return (found, found), False, (message(ScanSheet.WRONG_DPI, dpi=f"{picture.dpi[0]:g}", found=about),)


def seen(picture: Picture, sheet: SheetSeen, places: Sequence[Point] | None, lines: Sequence[Line]) -> Seen:
    """What is seen of a sheet; ScanError where no number can be trusted."""
    paper = nominal_paper(sheet.label.rectangle)
    targets = nominal_targets(paper) if places is None else [Target(at) for at in places]
    to_bed = bed(sheet.dpi)
    corners = to_bed.to(sheet.code)
    agreed, code = _agreed(targets, sheet.rings, corners, [numpy.array(each) for each in code_places(paper)])
    if off := stray(targets, sheet.rings, agreed):
        raise ScanError(ScanSheet.NOT_FLAT, off=f"{off:.1f}")
    marks = _exact(picture, agreed, to_bed)
    fitted_map = fit(targets, [None if each is None else to_bed.to(each.at) for each in marks], agreed.map)
    code_off = float(numpy.hypot(*(fitted_map.map.back(corners) - code).T).max())
    if code_off > _CODE_OFF:
        raise ScanError(ScanSheet.CODE_OFF, off=f"{code_off:.1f}")
    scale, turn = scale_and_turn(fitted_map.map.matrix)
    if abs(scale.x / scale.y - 1) > RATIO or abs(scale.skew / scale.y) > SKEW:
        ratio, skew = 100 * (scale.x / scale.y - 1), 100 * scale.skew / scale.y
        raise ScanError(ScanSheet.STRETCHED, ratio=f"{ratio:.1f}", skew=f"{skew:.1f}")
    return _put(picture, sheet, fitted_map, marks, to_bed, lines, scale, turn)


def _agreed(
    targets: Sequence[Target], rings: Rings, corners: Numbers, codes: Sequence[Numbers]
) -> tuple[Agreement, Numbers]:
    """The rings of the targets, and the place of the code that they agree with."""
    both = [(agreement(targets, rings, (code, corners)), code) for code in codes]
    found = [(each, code) for each, code in both if each is not None]
    if found:
        best = max(found, key=lambda each: each[0].agreeing)
        if best[0].agreeing >= LEAST:
            return best
    turned = corners[[2, 1, 0, 3]]  # a mirror image of a code is read with these two corners exchanged
    for code in codes:
        mirrored = agreement(targets, rings, (code, turned), mirrored=True)
        if mirrored is not None and mirrored.agreeing >= LEAST:
            raise ScanError(ScanSheet.MIRRORED)
    count = max((each.agreeing for each, _ in found), default=0)
    raise ScanError(ScanSheet.FEW, found=count, wanted=len(targets), least=LEAST)


def _exact(picture: Picture, agreed: Agreement, to_bed: Map) -> list[Fitted | None]:
    """The middles of the rings in pixels."""
    to_pixels = _pixels(agreed.map, to_bed)
    starts = [None if ring is None else to_bed.back(ring[None])[0] for ring in agreed.rings]
    return fitted(picture.grey, to_pixels, starts)


def _pixels(sheet_to_bed: Map, to_bed: Map) -> Map:
    inverse = numpy.linalg.inv(to_bed.matrix)
    return after(Map(inverse, -inverse @ to_bed.origin), sheet_to_bed)


def _put(
    picture: Picture,
    sheet: SheetSeen,
    fit: Fit,
    marks: Sequence[Fitted | None],
    to_bed: Map,
    lines: Sequence[Line],
    scale: Scale,
    turn: float,
) -> Seen:
    ink = float(numpy.median([each.contrast for each in marks if each is not None]))
    offs = lines_off(picture.grey, _pixels(fit.map, to_bed), lines, ink)
    if sum(each is not None for each in offs) < _LEAST_LINES * len(lines):
        offs = [None] * len(lines)
    across = _marks(lines, offs)
    sure = surety(fit, scale, [mark for mark in across if mark is not None])
    found = fit.places + fit.off
    seen_targets = tuple(
        SeenTarget(Point(*map(float, place)), Point(*map(float, at)))
        for place, at in zip(fit.places, found, strict=True)
    )
    seen_lines = tuple(
        SeenLine(line, off.off, off.within, placed(fit, mark)) if off and mark else SeenLine(line, None, None)
        for line, off, mark in zip(lines, offs, across, strict=True)
    )
    within = sure.within
    if not sheet.known:
        mean = (scale.x * scale.y) ** 0.5
        half = sure.ratio * scale.y / scale.x / 2
        scale = Scale(scale.x / mean, scale.y / mean, scale.skew / mean)
        within = Scale(scale.x * half, scale.y * half, within.skew / mean)
    dpi = min(sheet.dpi) if sheet.known else None
    there = _on_bed(fit.map)
    return Seen(sheet.label, scale, within, sure.ratio, seen_targets, seen_lines, sure.uneven, dpi, turn, there)


def _on_bed(lies: Map) -> OnBed:
    across, up = lies.matrix.T
    return OnBed(*(Point(float(x), float(y)) for x, y in (lies.origin, across, up)))


def _marks(lines: Sequence[Line], offs: Sequence[Off | None]) -> list[Mark | None]:
    return [off and _mark(line, off.off) for line, off in zip(lines, offs, strict=True)]


def _mark(line: Line, off: float) -> Mark:
    direction = atan2(line.end.y - line.start.y, line.end.x - line.start.x)
    middle = (numpy.array(line.start) + numpy.array(line.end)) / 2
    return Mark(middle, numpy.array([-sin(direction), cos(direction)]), off)

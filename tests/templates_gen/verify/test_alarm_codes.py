"""What makes codes and targets is exchanged for what makes them wrongly; the proof of a whole file says so."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from math import dist
from typing import Any

import pytest
from alarms import alarm_of
from kits import font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from layout.paper import targets
from layout.paper.code import Modules
from templates_gen.codes import modules as codes
from templates_gen.codes.digest import digest_of
from templates_gen.codes.payload import payload
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.verify.printed.furniture import check_furniture

BEADS: Mapping[str, object] = {"weft": {"beads": {"number": 26, "over": "5 cm"}}}
MADE, SIDES = codes.codes_for, targets.rectangle


def flipped(rows: Modules) -> Modules:
    """A code with one module of another colour."""
    row = rows[9]
    return (*rows[:9], row[:9] + ("." if row[9] == "#" else "#") + row[10:], *rows[10:])


def shifted(which: int, x: float, y: float) -> Callable[..., tuple[Point, ...]]:
    """The places of the targets, one of them elsewhere."""
    right = targets.centres

    def places(*given: Any) -> tuple[Point, ...]:
        there = list(right(*given))
        there[which] = Point(there[which].x + x, there[which].y + y)
        return tuple(there)

    return places


def other_file(inputs: str, *rest: Any) -> str:
    """The code of another file of the same kit."""
    return payload(inputs.replace("kit.pdf", "strip-near.pdf"), *rest)


WRONG: Mapping[str, tuple[str, Any, str]] = {
    "a module flipped": (
        "templates_gen.files.coded.codes_for",
        lambda *given: tuple(map(flipped, MADE(*given))),
        "the code cannot be read: a module or more is not as it was written",
    ),
    "codes swapped": (
        "templates_gen.files.coded.codes_for",
        lambda *given: MADE(*given)[::-1],
        "where sheet 1 of",
    ),
    "no codes": ("templates_gen.files.coded.codes_for", lambda _, __, total: (None,) * total, "0 codes found"),
    "another file's code": ("templates_gen.codes.modules.payload", other_file, "the code is not that of this file"),
    "another digest": (
        "templates_gen.codes.payload.digest_of",
        lambda inputs: digest_of(inputs)[::-1],
        "the code is not that of this file",
    ),
    "sides exchanged": (
        "templates_gen.codes.modules.rectangle",
        lambda paper: SIDES(paper)[::-1],
        "the code says that the targets are",
    ),
    "a sheet more": (
        "templates_gen.codes.modules.payload",
        lambda inputs, number, total, sides: payload(inputs, number, total + 1, sides),
        "the code is that of sheet 1 of",
    ),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_code_is_found(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever draws it so, writes and reads it well, and the second proof says what is wrong."""
    place, wrong, said = WRONG[name]
    assert alarm_of(plan_of(), "kit.pdf") == ""
    monkeypatch.setattr(place, wrong)
    assert said in alarm_of(plan_of(), "kit.pdf")


MOVES = [(0.1, 0.0), (0.0, -0.1)]
OFF = [(which, move) for which in range(8) for move in MOVES if which not in ((6, 7) if move[0] else (4, 5))]


@pytest.mark.parametrize(("which", "move"), OFF)
def test_a_target_drawn_off_its_place_is_found(
    which: int, move: tuple[float, float], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Ring and dot 0.1 mm off; a middle one may stand anywhere along its side, where something else needs its place."""
    monkeypatch.setattr("layout.paper.targets.centres", shifted(which, *move))
    assert "target" in alarm_of(plan_of(), "frame-check.pdf")


@pytest.mark.parametrize("which", range(8))
@pytest.mark.parametrize("move", MOVES)
def test_a_target_off_its_place_in_a_file_is_found(which: int, move: tuple[float, float]) -> None:
    """Every one counts: a file whose ring and dot are not where the plan has them is not right."""
    planned = plan_of()
    wanted = Outputs(planned, font_metrics()).output("frame-check.pdf")
    found = read(wanted, write(wanted))
    (sheet,) = found.sheets
    rings = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    start = rings[which % len(rings)].start
    target = [shape for shape in sheet.shapes if _near(shape, Point(start.x - targets.RING_R, start.y))]
    assert len(target) == 2
    moved = dict(zip(map(id, target), Placing(dx=move[0], dy=move[1]).shapes(target), strict=True))
    spoilt = replace(sheet, shapes=tuple(moved.get(id(shape), shape) for shape in sheet.shapes))
    assert findings(planned, wanted, found).sound
    assert not findings(planned, wanted, found._replace(sheets=(spoilt,))).sound


def _near(shape: Shape, at: Point) -> bool:
    if isinstance(shape, Text):
        return False
    paths = shape.contours if isinstance(shape, Region) else (shape,)
    return all(dist(point, at) < targets.HALF for path in paths for point in path.points())


def _without(sheet: Sheet, gone: Callable[[Shape], bool]) -> list[Sheet]:
    """The same sheet without each one of what is meant, in turn."""
    return [
        replace(sheet, shapes=tuple(s for s in sheet.shapes if s is not each)) for each in sheet.shapes if gone(each)
    ]


def _is_target(shape: Shape) -> bool:
    return shape.pen is Pen.TARGET


def test_a_target_that_lost_its_ring_is_found() -> None:
    """Though enough others are left."""
    (sheet,) = Outputs(plan_of(), font_metrics()).output("strip-near.pdf").sheets
    assert check_furniture(sheet, ("strip-near",)).sound
    rings = sum(map(_is_target, sheet.shapes))
    spoilt = _without(sheet, _is_target)
    assert len(spoilt) == rings >= 7
    for each in spoilt:
        assert not check_furniture(each, ("strip-near",)).sound


SCALED: Mapping[str, Mapping[str, object]] = {
    "strips.pdf": {},
    "weaving-grid.pdf": {},
    "strip-near.pdf": {"weaving.width": "30 cm", "frame.outer_width": "40 cm"},
}


@pytest.mark.parametrize("file", SCALED)
def test_a_wrong_number_at_a_check_scale_is_found(file: str) -> None:
    """A scale that calls its middle 60, or has no numbers, says that a right print is wrong."""
    outputs = Outputs(plan_of({**BEADS, **SCALED[file]}), font_metrics())
    output = outputs.output(file)
    parts = output.parts
    sheet = output.sheets[0]
    assert check_furniture(sheet, parts).sound
    numbers = [s for s in sheet.shapes if isinstance(s, Text) and _by_a_scale(s, sheet)]
    assert len(numbers) == 12
    for number in numbers:
        for other in (number._replace(words="7"), number._replace(at=Point(number.at.x + 4, number.at.y + 4))):
            shapes = tuple(other if shape is number else shape for shape in sheet.shapes)
            assert not check_furniture(replace(sheet, shapes=shapes), parts).sound, number.words


def _by_a_scale(text: Text, sheet: Sheet) -> bool:
    blocks = [s for s in sheet.shapes if isinstance(s, Region) and len(s.contours) in (4, 5) and s.pen is Pen.SOLID]
    places = [point for block in blocks for path in block.contours for point in path.points()]
    small = text.words in ("0", "2", "50", "4 in", "100 mm")
    return small and min(dist(text.at, place) for place in places) < 14.0

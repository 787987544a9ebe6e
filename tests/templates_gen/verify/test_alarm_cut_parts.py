"""The alarm for what is cut: a part that is not what kit and stock ask for must ring, whoever drew it wrong."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

import pytest
from cut_plans import file_of, stock_with
from kits import NOTCHED, PEGGED, plan_of

import layout.cutting.parts.blank as blank_module
import layout.cutting.parts.comb as comb_module
import layout.cutting.parts.comb_body as body_module
import layout.cutting.parts.teeth as teeth_module
from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.kerf import Kerf
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Message
from layout.plan import Plan
from templates_gen.verify.cut_parts.prove_cut import CUT_PROOFS, prove_cut
from templates_gen.verify.finding import Findings

# Pitches that are no whole number of tenths of a millimetre, and strips unlike their mirror image.
CHANGES: dict[str, object] = {
    "sett": {"readings": [{"pairs": 13, "window": "5 cm"}], "marking_unit": "1 in"},
    "weaving.slant": "face straight",
}
STOCKS = {grain: stock_with(grain=grain, kerf_x=0.22, kerf_y=0.18) for grain in ("x", "y", "none")}


def found(name: str, stock: Stock, spoil: Callable[[Sheet], Sheet] | None = None, of: Plan | None = None) -> Findings:
    """What the proof says of a product's file, after it was spoilt."""
    planned = of or plan_of(CHANGES)
    sheet, laid = file_of(name, planned, stock)
    return prove_cut(planned, stock, spoil(sheet) if spoil else sheet, laid)


@pytest.mark.parametrize("name", CUT_PRODUCTS)
@pytest.mark.parametrize(
    "stock", [*STOCKS.values(), stock_with(kerf_drawn=False), stock_with(too_fine="every second end")]
)
@pytest.mark.parametrize(
    "changes",
    [
        CHANGES,
        NOTCHED | {"weaving.tie_off": "far end"},
        PEGGED,
        {"weaving.start": "right", "sett.given": "7 epi", "cut": {"comb": "every second end"}},
        {
            "name": "Ünïçødé  10 · frame",
            "sett.given": "3 ends/cm",
            "warp": {"count": 12, "system": "ne", "plies": 6, "fibre": "cotton"},
        },
    ],
)
def test_what_was_not_spoilt_does_not_ring(name: str, stock: Stock, changes: dict[str, object]) -> None:
    """Every product on every grain passes, and nothing in it lies a micrometre off."""
    planned = plan_of(changes)
    if name in cut_suiting(planned):
        result = found(name, stock, of=planned)
        assert result.problems == ()
        assert result.deviation < 1e-6


def test_every_part_that_is_cut_has_a_proof() -> None:
    """A part without one would pass unseen."""
    for changes in ({}, NOTCHED, PEGGED):
        planned = plan_of(changes)
        for name in cut_suiting(planned):
            _, laid = file_of(name, planned, STOCKS["x"])
            assert {piece.part.name for piece in laid} <= CUT_PROOFS.keys()


# 1. Drawings changed after they were made.


def moved(pen: Pen, number: int, dx: float, dy: float = 0.0) -> Callable[[Sheet], Sheet]:
    """A whole path of a pen, moved."""

    def change(sheet: Sheet) -> Sheet:
        paths = [k for k, shape in enumerate(sheet.shapes) if isinstance(shape, Curve) and shape.pen is pen]
        return _changed(sheet, paths[number], lambda path: _shifted(path, dx, dy))

    return change


def _changed(sheet: Sheet, at: int, change: Callable[[Curve], Curve]) -> Sheet:
    shapes: list[Shape] = list(sheet.shapes)
    path = shapes[at]
    assert isinstance(path, Curve)
    shapes[at] = change(path)
    return replace(sheet, shapes=tuple(shapes))


def _shifted(path: Curve, dx: float, dy: float) -> Curve:
    def put(point: Point) -> Point:
        return Point(point.x + dx, point.y + dy)

    steps = tuple(Step(put(end), through and put(through)) for end, through in path.steps)
    return path._replace(start=put(path.start), steps=steps)


def bent(which: int, dx: float) -> Callable[[Sheet], Sheet]:
    """One end of a straight side of the widest outline, moved."""

    def change(sheet: Sheet) -> Sheet:
        at, path = _outline(sheet)
        steps = list(path.steps)
        at_step = [k for k, step in enumerate(steps) if step.through is None][which]
        end = steps[at_step].end
        steps[at_step] = Step(Point(end.x + dx, end.y + dx))
        return _changed(sheet, at, lambda old: old._replace(steps=tuple(steps)))

    return change


def _outline(sheet: Sheet) -> tuple[int, Curve]:
    paths = [(k, s) for k, s in enumerate(sheet.shapes) if isinstance(s, Curve) and s.pen is Pen.THROUGH]
    return max(paths, key=lambda each: len(each[1].steps))


def opened(sheet: Sheet) -> Sheet:
    """The widest outline, no longer closed."""
    at, _ = _outline(sheet)
    return _changed(sheet, at, lambda path: path._replace(closed=False))


def without(pen: Pen) -> Callable[[Sheet], Sheet]:
    """One path of a pen left out."""

    def change(sheet: Sheet) -> Sheet:
        gone = next(s for s in sheet.shapes if isinstance(s, Curve) and s.pen is pen and len(s.steps) == 1)
        return replace(sheet, shapes=tuple(shape for shape in sheet.shapes if shape is not gone))

    return change


def scaled(share: float) -> Callable[[Sheet], Sheet]:
    """Everything a little larger or smaller."""

    def change(sheet: Sheet) -> Sheet:
        def put(point: Point) -> Point:
            return Point(point.x * share, point.y * share)

        shapes = []
        for shape in sheet.shapes:
            if isinstance(shape, Curve):
                steps = tuple(Step(put(end), through and put(through)) for end, through in shape.steps)
                shapes.append(shape._replace(start=put(shape.start), steps=steps))
        return replace(sheet, shapes=tuple(shapes))

    return change


@pytest.mark.parametrize("grain", STOCKS)
@pytest.mark.parametrize("name", ["comb", "winding-comb"])
@pytest.mark.parametrize(
    ("spoil", "says"),
    [
        (moved(Pen.SCORE, 1, 0.01, 0.01), "scored mark: 10.0 micrometres off"),
        (without(Pen.SCORE), "scored mark: 9 found, kit and stock ask for 10"),
        (opened, "an outline that is cut is open"),
        (scaled(1.001), "not true to scale"),
        (scaled(0.97), "not true to scale"),
        (without(Pen.REFERENCE), "register crosses where"),
        (bent(20, 0.01), "slot wall"),
    ],
)
def test_a_comb_that_was_changed_rings(grain: str, name: str, spoil: Callable[[Sheet], Sheet], says: str) -> None:
    """Ten micrometres, one mark, one open outline, one scale: each is found on every grain."""
    assert says in "; ".join(found(name, STOCKS[grain], spoil).sentences)


@pytest.mark.parametrize("grain", STOCKS)
def test_a_shed_stick_that_was_changed_rings(grain: str) -> None:
    """Too short, or another size."""
    stock = STOCKS[grain]
    other = plan_of(CHANGES | {"frame.outer_width": "41 cm"})
    sheet, laid = file_of("shed-stick", other, stock)
    assert "way that the stick passes a side: " in _said(prove_cut(plan_of(CHANGES), stock, sheet, laid))
    assert "not true to scale" in _said(found("shed-stick", stock, scaled(1.001)))


def _said(findings: Findings) -> str:
    return "; ".join(findings.sentences)


# 2. Builders that are wrong, in drawing and plan alike.


@pytest.mark.parametrize("grain", STOCKS)
def test_a_builder_that_draws_for_another_kerf_rings(grain: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The kerf forgotten, drawn to the wrong side, or with its two ways mistaken for each other."""
    for factor, swapped in ((0, False), (1, True), (2, False)):

        def wrong(x: float, y: float, factor: float = factor, swapped: bool = swapped) -> Kerf:
            return Kerf(factor * y, factor * x) if swapped else Kerf(factor * x, factor * y)

        monkeypatch.setattr(blank_module, "Kerf", wrong)
        assert "slot wall: " in _said(found("comb", STOCKS[grain]))


@pytest.mark.parametrize("name", ["comb", "winding-comb"])
def test_a_builder_with_other_slots_rings(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Slots too wide by 10 micrometres, or set for every second end without need."""
    honest = teeth_module.slot_for

    def wider(plan: Plan, stock: Stock) -> tuple[float, Message]:
        slot, why = honest(plan, stock)
        return slot + 0.02, why

    for module in ("comb", "winding_comb"):
        monkeypatch.setattr(f"layout.cutting.parts.{module}.slot_for", wider)
    assert "slot wall: 10.0 micrometres off" in _said(found(name, STOCKS["x"]))


def test_a_builder_that_leaves_every_second_end_out_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """The count of slots is said."""
    monkeypatch.setattr(comb_module, "step_of", lambda *_: 2)
    assert re.search(r"slot wall: \d+ found, kit and stock ask for", _said(found("comb", STOCKS["x"])))


def test_a_builder_with_long_teeth_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """Teeth of four times their width would break."""
    monkeypatch.setattr(teeth_module, "SLENDER", 4.0)
    assert "more than 3 times their" in _said(found("comb", STOCKS["x"]))


def test_a_builder_of_teeth_too_narrow_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """Under 1 mm nothing is cut."""
    monkeypatch.setattr(teeth_module, "LEAST", 0.1)
    narrow = plan_of(CHANGES | {"sett": {"given": "5 ends/cm"}})
    assert re.search(r"slot wall: \d+ found, kit and stock ask for", _said(found("comb", STOCKS["x"], of=narrow)))
    winding = plan_of(CHANGES | {"sett": {"given": "15 ends/cm"}})
    assert "under 1 mm" in _said(found("winding-comb", STOCKS["x"], of=winding))


def test_a_builder_with_marks_elsewhere_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """The limits half a pitch out."""
    honest = body_module.marks
    monkeypatch.setattr(
        comb_module, "marks", lambda centre, units, limits: honest(centre, units, (limits[0] - 1, limits[1]))
    )
    assert "scored mark: 1000.0 micrometres off" in _said(found("comb", STOCKS["x"]))


def test_a_builder_of_teeth_across_the_grain_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """The comb laid the other way round has no upright slots where they are looked for."""
    monkeypatch.setattr(blank_module, "turned", lambda *_: False)
    assert _said(found("comb", STOCKS["x"]))
    assert not _said(found("comb", STOCKS["y"]))


OTHERS: dict[str, dict[str, object]] = {
    "wrap-gauge-cut": CHANGES,
    "spacing-guide-cut": CHANGES,
    "end-bars": NOTCHED,
    "peg-jig": PEGGED | {"weaving.tie_off": "far end"},  # an odd number of ends: no end looks like its mirror image
}


@pytest.mark.parametrize("name", OTHERS)
@pytest.mark.parametrize("grain", ["x", "y"])
def test_bars_and_gauges_drawn_for_another_kerf_ring(name: str, grain: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The kerf forgotten, or its two ways mistaken for each other (a guide is scored, where no kerf matters)."""
    for wrong in (lambda *_: Kerf(0, 0), lambda x, y: Kerf(y, x)):
        monkeypatch.setattr(blank_module, "Kerf", wrong)
        said = _said(found(name, STOCKS[grain], of=plan_of(OTHERS[name])))
        assert bool(said) == (name != "spacing-guide-cut")


@pytest.mark.parametrize(
    ("name", "where", "wrong", "says"),
    [
        (
            "wrap-gauge-cut",
            "gauge_board.WINDOWS",
            ((25.4, "1 in"), (50.8, "2 in"), (50.01, "5 cm")),
            "window: 10.0",
        ),
        ("spacing-guide-cut", "guide_bar.TEN", 5.0, "tenth mark: 0 found"),
        ("spacing-guide-cut", "guide_bar.FACE", 3.0, "face mark: 0 found"),
        ("end-bars", "end_bars.toothed_edge", None, "notch wall: 10.0"),
        ("end-bars", "end_bars._HOLE", 2.01, "size of a screw hole: 20.0"),
        ("peg-jig", "peg_jig.way_up", lambda *_: 1, "hole: "),
        ("peg-jig", "peg_jig.in_outer_row", lambda number: number % 2 == 0, "row of holes: 12000.0"),
    ],
)
def test_bars_and_gauges_from_a_wrong_builder_ring(
    name: str, where: str, wrong: object, says: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Windows, marks, notches and holes that are wrong in drawing and plan alike."""
    if wrong is None:
        honest = teeth_module.toothed_edge

        def wrong(centres: list[float], *rest: object) -> object:
            return honest([x + 0.01 for x in centres], *rest)  # type: ignore[arg-type]

    monkeypatch.setattr(f"layout.cutting.parts.{where}", wrong)
    assert says in _said(found(name, STOCKS["x"], of=plan_of(OTHERS[name])))

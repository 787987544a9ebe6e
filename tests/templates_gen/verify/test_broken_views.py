"""A plain stick on paper that is too short for it: both ends at exact scale, and the proof of each by its crosses."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from alarms import alarm_on
from cut_plans import stock_with
from ink import meetings
from kits import font_metrics, plan_of

import layout.cutting.parts.shed_stick as stick_module
import layout.paper.broken as broken_module
from layout.cutting.parts.outline import Corner
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs

PATCH = pytest.MonkeyPatch
STOCKS: dict[str, dict[str, object]] = {
    "along": {"grain": "x"},
    "upright, two kerfs": {"grain": "y", "kerf_x": 0.3, "kerf_y": 0.1},
    "kerf left": {"kerf_drawn": False},
}
PAPERS = ("common", "a4", "letter", "a3", "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")


def drawing(changes: dict[str, object] | None = None, stock: Stock | None = None) -> Output:
    """The drawing of the shed stick of the test kit."""
    planned = plan_of(changes or {})
    made = Outputs(planned, font_metrics(), ["shed-stick.pdf"], stock or stock_with(height=900.0))
    return made.output(made.files[0])


@pytest.mark.parametrize("stock", STOCKS)
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", ["Heron", "Long name " * 3])
def test_a_long_stick_is_proven_on_every_paper(stock: str, paper: str, name: str) -> None:
    """Broken, in tiles where even its ends need more, or whole on large paper; nothing is found wrong."""
    changes: dict[str, object] = {"paper.size": paper, "name": name.strip()}
    given = stock_with(height=900.0, **STOCKS[stock])
    output = drawing(changes, given)
    assert alarm_on(plan_of(changes), output) == ""
    assert all(meetings(sheet, 0.25) == [] for sheet in output.sheets if not output.tiled)


@pytest.mark.parametrize(("paper", "broken"), [("common", True), ("a3", True), ("600 x 3000 mm", False)])
def test_a_broken_view_takes_one_sheet_and_says_both_sizes(paper: str, broken: bool) -> None:
    """480 mm and 30 mm, with the kerf of 0.2 mm; where the stick fits it is whole."""
    output = drawing({"paper.size": paper})
    (sheet,) = output.sheets
    words = {shape.words for shape in sheet.shapes if isinstance(shape, Text)}
    assert ({"480.2 mm", "30.2 mm"} <= words) is broken
    cuts = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.THROUGH]
    assert all(path.closed for path in cuts) is not broken


def _swapped(module: Any, name: str, other: Callable[[Any], Any]) -> Callable[[PATCH], None]:
    return lambda patch: patch.setattr(module, name, other(getattr(module, name)))


def _left_twice(right: Any) -> Any:
    """The left end in the place of the right one too."""
    calls: list[Any] = []

    def end(drawing: Any, *rest: Any) -> Any:
        calls.append(rest)
        return right(drawing, *calls[(len(calls) - 1) // 2 * 2])

    return end


WRONG: dict[str, tuple[Callable[[PATCH], None], str]] = {
    "corners of 12 mm": (
        _swapped(stick_module, "boxed", lambda right: lambda *box: right(*box[:4], 12.0)),
        "not half round",
    ),
    "a stick that is longer on the left": (
        _swapped(
            stick_module,
            "boxed",
            lambda right: (
                lambda left, *rest: [
                    Corner(corner.x - (0.01 if corner.x < 0 else 0), *corner[1:]) for corner in right(left, *rest)
                ]
            ),
        ),
        "way that the stick passes a side: 10.0 micrometres off",
    ),
    "another size": (
        _swapped(broken_module, "say_number", lambda right: lambda size, places: right(size + 1, places)),
        "does not say the size 480.2 mm",
    ),
    "its left end twice": (_swapped(broken_module, "_end", _left_twice), "not its left and its right one"),
    "another name": (
        _swapped(stick_module, "wrap", lambda right: lambda text, *rest: right(text.replace("stick", "staff"), *rest)),
        "something is engraved",
    ),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_broken_view_rings(name: str, monkeypatch: PATCH) -> None:
    """What is wrong in drawing and plan alike is found from kit and stock alone."""
    spoil, said = WRONG[name]
    assert alarm_on(plan_of({}), drawing()) == ""
    spoil(monkeypatch)
    assert said in alarm_on(plan_of({}), drawing())

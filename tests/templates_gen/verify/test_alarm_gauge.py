"""The alarm of the wrap gauge: a builder that is wrong, in drawing and plan alike, must ring by the kit's numbers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest
from alarms import alarm_of
from kits import NAILS, NOTCHED, PEGGED, kit_of

import layout.parts.gauge_table as table_module
import layout.parts.wrap_gauge as gauge_module
import layout.products as products
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text
from layout.drawing.sheet import Part
from layout.plan import Plan, plan

KITS: dict[str, dict[str, object]] = {
    "cm": {"sett": {"readings": [{"pairs": 13, "window": "5 cm"}]}},
    "inch": {"sett": {"readings": [{"pairs": 9, "window": "1 in"}, {"pairs": 18, "window": "2 in"}]}},
    "given": {"sett.given": "7/3 ends/cm"},
    "loose": {"sett": {"readings": [{"pairs": 9, "window": "1 in"}, {"pairs": 40, "window": "5 cm"}], "loosest": True}},
    "as measured": {"sett": {"readings": [{"pairs": 11, "window": "4 cm"}], "as_measured": True}},
    "own unit": {"sett": {"readings": [{"pairs": 11, "window": "4 cm"}], "marking_unit": "3 cm"}},
    "coarse": {"sett.given": "0.2 ends/cm"},
    "notched": NOTCHED | {"sett": {"readings": [{"pairs": 13, "window": "5 cm"}]}},
    "notched already": NOTCHED | {"frame.notch_density": "7/3 per cm", "sett.given": "14/3 per cm"},
    "nails": NAILS | {"sett": {"readings": [{"pairs": 9, "window": "1 in"}]}},
    "pegged": PEGGED | {"sett": {"readings": [{"pairs": 9, "window": "1 in"}]}},
}


@cache
def planned(name: str = "cm") -> Plan:
    """The plan of one of the kits."""
    return plan(kit_of(KITS[name]))


def alarm(form: str = "pdf", name: str = "cm") -> str:
    """What the proof says against the gauge as it is drawn now; nothing if it passes. Written and read it is sound."""
    return alarm_of(planned(name), f"wrap-gauge.{form}")


@pytest.mark.parametrize("form", ["pdf", "svg"])
@pytest.mark.parametrize("name", KITS)
def test_what_is_right_does_not_ring(name: str, form: str) -> None:
    """The gauge of every kit passes in both kinds of file."""
    assert alarm(form, name) == ""


Change = Callable[[list[Shape]], list[Shape]]


def windows(top: object = None, bottom: object = None) -> Callable[[pytest.MonkeyPatch], None]:
    """Other windows in the builder."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        patch.setattr(gauge_module, "TOP", top or gauge_module.TOP)
        patch.setattr(gauge_module, "BOTTOM", bottom or gauge_module.BOTTOM)

    return apply


def wider(window: tuple[float, float, str], by: float, moved: float = 0.0, label: str = "") -> tuple[object, ...]:
    """A window that is `by` mm wider and `moved` to the right."""
    start, wide, words = window
    return (start + moved, wide + by, label or words)


def drawn(change: Change) -> Callable[[pytest.MonkeyPatch], None]:
    """A builder whose shapes come out changed."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = products.wrap_gauge

        def wrong(of: Plan, metrics: object) -> Part:
            part = right(of, metrics)  # type: ignore[arg-type]
            return replace(part, shapes=tuple(change(list(part.shapes))))

        builds = products._in_one_form(wrong)
        patch.setitem(products.PRODUCTS, "wrap-gauge", products.PRODUCTS["wrap-gauge"]._replace(builds=builds))  # type: ignore[misc]

    return apply


def edge(change: Callable[[Curve], Curve | None], which: int = 0) -> Callable[[pytest.MonkeyPatch], None]:
    """One bold edge changed, or left out."""

    def apply(shapes: list[Shape]) -> list[Shape]:
        at = [k for k, shape in enumerate(shapes) if isinstance(shape, Curve) and shape.pen is Pen.EDGE][which]
        old = shapes[at]
        assert isinstance(old, Curve)
        new = change(old)
        return [*shapes[:at], *([new] if new else []), *shapes[at + 1 :]]

    return drawn(apply)


def moved(dx: float, dy: float = 0.0) -> Callable[[Curve], Curve]:
    """A path elsewhere."""

    def apply(path: Curve) -> Curve:
        (shape,) = Placing(0, dx, dy).shapes([path])
        assert isinstance(shape, Curve)
        return shape

    return apply


def words(old: str, new: str, which: int = 0) -> Callable[[pytest.MonkeyPatch], None]:
    """Other words in one place where `old` stands."""

    def apply(shapes: list[Shape]) -> list[Shape]:
        at = [k for k, shape in enumerate(shapes) if isinstance(shape, Text) and shape.words == old][which]
        return [shape._replace(words=new) if k == at else shape for k, shape in enumerate(shapes)]  # type: ignore[call-arg]

    return drawn(apply)


ONE, TWO = gauge_module.TOP
(FIVE,) = gauge_module.BOTTOM
LINES: dict[str, Callable[[pytest.MonkeyPatch], None]] = {
    "1 in 0.05 mm narrow": windows((wider(ONE, -0.05), TWO)),
    "2 in 0.05 mm narrow": windows((ONE, wider(TWO, -0.05))),
    "5 cm 0.05 mm narrow": windows(bottom=(wider(FIVE, -0.05),)),
    "5 cm 2 micrometres wide": windows(bottom=(wider(FIVE, 0.002),)),
    "5 cm as wide as 2 in": windows(bottom=(wider(FIVE, 0.8),)),
    "1 in and 2 in changed round": windows((wider(ONE, 25.4), wider(TWO, -25.4, 25.4))),
    "a window missing": windows((ONE,)),
    "a window more": windows(bottom=(FIVE, (5.0, 20.0, "2 cm"))),
    "5 cm begins elsewhere": windows(bottom=(wider(FIVE, 0, 0.1),)),
    "windows from middle to middle of the ink": lambda patch: patch.setattr(gauge_module, "_INK", 0.0),
    "windows to the outer side of the ink": lambda patch: patch.setattr(gauge_module, "_INK", -0.7),
    "a thin edge": edge(lambda path: path._replace(pen=Pen.TEN)),
    "a grey edge": edge(lambda path: path._replace(pen=Pen.HELP), 3),
    "a dashed edge": edge(lambda path: path._replace(pen=Pen.CUT), 5),
    "an edge missing": edge(lambda _: None, 2),
    "an edge aside": edge(moved(0.002), 4),
    "an edge that does not reach the fold": edge(moved(0, -0.5)),
    "an edge that does not reach the cut": edge(moved(0, 0.5), 4),
    "an edge that leans": edge(lambda path: path._replace(start=Point(path.start.x + 0.01, path.start.y)), 1),
}


@pytest.mark.parametrize("form", ["pdf", "svg"])
@pytest.mark.parametrize("name", LINES)
def test_wrong_windows_ring(name: str, form: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A window that is not its width between two bold inks is found in both kinds of file."""
    LINES[name](monkeypatch)
    assert alarm(form)


def _one_more_wind(patch: pytest.MonkeyPatch) -> None:
    right = table_module.offer

    def offer(low: object, unit: object, by: object) -> object:
        made = right(low, unit, by)  # type: ignore[arg-type]
        return replace(made, per_mm=made.per_mm + 2 / made.unit.mm)

    patch.setattr(table_module, "offer", offer)


WORDS: dict[str, Callable[[pytest.MonkeyPatch], None]] = {
    "a sett wrong": words("2.5", "2.6"),
    "a number of winds wrong": words("5", "4", -1),
    "a count wrong": words("13", "14"),
    "a unit wrong": words("to 4 cm", "to 5 cm"),
    "counted in another window": words("5 cm", "2 in", -1),
    "ends for winds": words("winds", "ends", 1),
    "sett in another system": words("per cm", "epi", 1),
    "labels changed round": words("2 in", "5 cm"),
    "a label wrong": words("1 in", "2 in"),
    "a row missing": drawn(lambda shapes: [s for s in shapes if not (isinstance(s, Text) and s.at.y == 19.3)]),
    "fewer rows": lambda patch: patch.setattr(table_module, "ROWS", 5),
    "rows of other counts": lambda patch: patch.setattr(table_module, "_BELOW", 1),
    "another rule for the sett": _one_more_wind,
    "neighbours that are not next": lambda patch: patch.setattr(
        table_module, "neighbours", lambda unit: (table_module.USUAL[False][0], unit, table_module.USUAL[False][4])
    ),
}


@pytest.mark.parametrize("name", WORDS)
def test_wrong_words_ring(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A table or a label that does not follow from the kit is found where words are words."""
    WORDS[name](monkeypatch)
    assert alarm()

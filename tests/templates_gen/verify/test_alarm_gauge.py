"""The alarm of the wrap gauge: a builder that is wrong, in drawing and plan alike, must ring by the kit's numbers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from functools import cache

import pytest
from alarms import alarm_of
from kits import NAILS, NOTCHED, PEGGED, kit_of

import layout.parts.gauge_form as form_module
import layout.parts.gauge_table as table_module
import layout.parts.wrap_gauge as gauge_module
import layout.products as products
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text
from layout.drawing.sheet import Part
from layout.parts.gauge_form import Form, Window
from layout.plan import Plan, plan
from layout.values.units import Length

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


def windows(change: Callable[[list[Window]], list[Window]]) -> Callable[[pytest.MonkeyPatch], None]:
    """Other windows in the builder."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = gauge_module.wide_form

        def wrong(half: float) -> Form:
            form = right(half)
            return form._replace(windows=tuple(change(list(form.windows))))

        patch.setattr(gauge_module, "wide_form", wrong)

    return apply


def wider(window: Window, by: float, moved: float = 0.0) -> Window:
    """A window that is `by` mm wider and `moved` to the right."""
    length = Length(window.length.mm + Fraction(by), window.length.unit)
    return window._replace(length=length, start=window.start + moved)


def one_wider(which: int, by: float) -> Callable[[pytest.MonkeyPatch], None]:
    """One of the windows is wider."""
    return windows(lambda all_: [wider(each, by) if k == which else each for k, each in enumerate(all_)])


def drawn(change: Change) -> Callable[[pytest.MonkeyPatch], None]:
    """A builder whose shapes come out changed."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        for name in ("wrap_gauge", "gauge_card"):
            patch.setattr(products, name, changed(getattr(products, name)))

    def changed(right: Callable[..., Part]) -> Callable[..., Part]:
        def wrong(*of: object, **how: bool) -> Part:
            part = right(*of, **how)
            return replace(part, shapes=tuple(change(list(part.shapes))))

        return wrong

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


def notch(change: Callable[[Curve], Curve | None], which: int) -> Callable[[pytest.MonkeyPatch], None]:
    """One notch changed, or left out: first those of the fold and the edges of the first bold line, and so on."""

    def apply(shapes: list[Shape]) -> list[Shape]:
        cuts = [k for k, shape in enumerate(shapes) if isinstance(shape, Curve) and shape.pen is Pen.CUT][1:]
        old = shapes[cuts[which]]
        assert isinstance(old, Curve)
        new = change(old)
        return [*shapes[: cuts[which]], *([new] if new else []), *shapes[cuts[which] + 1 :]]

    return drawn(apply)


def folds(change: Callable[[Curve], Curve]) -> Callable[[pytest.MonkeyPatch], None]:
    """The fold elsewhere."""
    return drawn(lambda shapes: [change(s) if isinstance(s, Curve) and s.pen is Pen.FOLD else s for s in shapes])


LINES: dict[str, Callable[[pytest.MonkeyPatch], None]] = {
    "1 in 0.05 mm narrow": one_wider(0, -0.05),
    "2 in 0.05 mm narrow": one_wider(1, -0.05),
    "5 cm 0.05 mm narrow": one_wider(2, -0.05),
    "5 cm 2 micrometres wide": one_wider(2, 0.002),
    "5 cm as wide as 2 in": one_wider(2, 0.8),
    "1 in and 2 in changed round": windows(lambda w: [wider(w[0], 25.4), wider(w[1], -25.4, 25.4), w[2]]),
    "a window missing": windows(lambda w: w[:2]),
    "a window more": windows(lambda w: [*w, w[2]._replace(start=w[2].start + 2)]),
    "windows from middle to middle of the ink": lambda patch: patch.setattr(form_module, "INK", 0.0),
    "windows to the outer side of the ink": lambda patch: patch.setattr(form_module, "INK", -0.7),
    "a thin edge": edge(lambda path: path._replace(pen=Pen.TEN)),
    "an edge of the pen for helper lines": edge(lambda path: path._replace(pen=Pen.HELP), 3),
    "an edge to be cut": edge(lambda path: path._replace(pen=Pen.CUT), 5),
    "an edge missing": edge(lambda _: None, 2),
    "an edge aside": edge(moved(0.002), 4),
    "an edge off its notch": edge(moved(0, -0.5)),
    "an edge off its notch above": edge(moved(0, 0.5), 4),
    "an edge that leans": edge(lambda path: path._replace(start=Point(path.start.x + 0.01, path.start.y)), 1),
    "a notch in one layer only": notch(lambda _: None, 1),
    "a notch of the fold in one layer only": notch(moved(0, 1), 0),
    "a notch aside": notch(moved(0.01), 2),
    "a notch missing at the fold": notch(lambda _: None, 0),
    "a notch that does not reach the edge": notch(moved(0, -0.2), 1),
    "a notch of another width": notch(lambda path: path._replace(start=Point(path.start.x - 0.2, path.start.y)), 1),
    "the fold not in the middle": folds(moved(0, 0.01)),
    "no fold": folds(lambda path: path._replace(pen=Pen.HELP)),
    "no outline": drawn(
        lambda shapes: [s for s in shapes if not (isinstance(s, Curve) and s.pen is Pen.CUT and s.start.x == 0)]
    ),
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


def exchanged(shapes: list[Shape], one: str, other: str) -> list[Shape]:
    """Two words each where the other stands."""
    swap = {one: other, other: one}
    return [s._replace(words=swap.get(s.words, s.words)) if isinstance(s, Text) else s for s in shapes]


def without_row(shapes: list[Shape], count: str) -> list[Shape]:
    """The table without the row of a count."""
    (y,) = (s.at.y for s in shapes if isinstance(s, Text) and s.words == count)
    return [s for s in shapes if not (isinstance(s, Text) and s.at.y == y)]


WORDS: dict[str, Callable[[pytest.MonkeyPatch], None]] = {
    "a sett wrong": words("2.5", "2.6"),
    "a number of winds wrong": words("5", "4"),
    "a count wrong": words("13", "14"),
    "a unit wrong": words("mark every 4 cm", "mark every 5 cm"),
    "units exchanged": drawn(lambda shapes: exchanged(shapes, "mark every 2 cm", "mark every 5 cm")),
    "counted in another window": words("pairs in the 5 cm", "pairs in the 2 in"),
    "ends for winds": words("winds", "ends", 1),
    "sett in another system": words("per cm", "epi", 1),
    "labels changed round": words("2 in", "5 cm"),
    "a label wrong": words("1 in", "2 in"),
    "a row missing": drawn(lambda shapes: without_row(shapes, "14")),
    "the yarns exchanged": drawn(lambda shapes: exchanged(shapes, "seine twine 12/6", "three strands of wool")),
    "the two halves exchanged": drawn(lambda shapes: exchanged(shapes, "Front", "Back")),
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

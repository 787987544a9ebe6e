"""Notch templates, drilling templates and strips for bars that are notched already."""

from __future__ import annotations

import math

import pytest
from golden import listed, matches
from kits import NAILS, NOTCHED, PEGGED, plan_of, strip_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.values.errors import FieldError
from layout.warps.warp import End

HELD = NOTCHED | {"frame.notch_density": "5 per cm"}
IN_PAIRS = NOTCHED | {"frame.notch_density": "1.25 per cm"}
SHORT: dict[str, object] = {"weaving.width": "44 mm"}  # 11 ends of 4 mm: limits at -22 and 22
GOLDEN: dict[str, tuple[dict[str, object], End]] = {
    "notch-template-near": (NOTCHED | SHORT, "near"),
    "notches-held-far-every-second": (HELD | SHORT, "far"),
    "notches-held-far-two-ends": (IN_PAIRS | SHORT, "far"),
    "nail-template-near": (NAILS | SHORT | {"frame.nail_length": "10 mm"}, "near"),
    "drilling-template-far": (PEGGED | SHORT | {"weaving.doubled_selvedges": 1}, "far"),
}


def words(part: Part) -> str:
    """All words of a part, one after the other."""
    return " ".join(shape.words for shape in part.shapes if isinstance(shape, Text))


def outlines(part: Part) -> list[Curve]:
    """Notches and holes: register lines of more than one step."""
    return [s for s in part.shapes if isinstance(s, Curve) and s.pen is Pen.REGISTER and len(s.steps) > 1]


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_templates(name: str) -> None:
    """The template is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, end = GOLDEN[name]
    assert matches(name, listed(strip_of(changes, end)))


@pytest.mark.parametrize(("near_end", "up"), [("bottom", 1), ("top", -1)])
def test_notches_by_hand(near_end: str, up: int) -> None:
    """Eleven notches from -20 by 4 mm, 1.2 mm wide and 6 mm deep from the outer edge toward the weaving."""
    part = strip_of(NOTCHED | SHORT | {"weaving.near_end": near_end})
    found = [path.points() for path in outlines(part)]
    assert [(a.x + d.x) / 2 for a, _, _, d in found] == pytest.approx([-20 + 4 * k for k in range(11)])
    for a, b, c, d in found:
        assert (d.x - a.x, a.y, d.y) == (pytest.approx(1.2), 0, 0)
        assert (b.y, c.y, b.x, c.x) == (6 * up, 6 * up, a.x, d.x)


def test_holes_by_hand() -> None:
    """Near pegs from -22 by 8 mm: the first 22 mm from the edge (10 + 12), the next 10 mm, and so on; 2.5 mm wide."""
    part = strip_of(PEGGED | SHORT)
    marks = sorted(p.start.x for p in part.shapes if isinstance(p, Curve) and p.pen in (Pen.MARK, Pen.TEN))
    assert marks == [-22, -14, -6, 2, 10, 18]
    for number, path in enumerate(outlines(part)):
        x, y = marks[number], 10.0 if number % 2 else 22.0
        assert path.closed
        assert all(math.dist(point, (x, y)) == pytest.approx(1.25) for point in path.points())


@pytest.mark.parametrize(("near_end", "up"), [("bottom", 1), ("top", -1)])
def test_nails_by_hand(near_end: str, up: int) -> None:
    """Near nails from -22 by 8 mm in one row, 10 mm from the edge; circles of 1.8 mm, each with its cross."""
    part = strip_of(NAILS | SHORT | {"weaving.near_end": near_end})
    marks = [p for p in part.shapes if isinstance(p, Curve) and p.pen in (Pen.MARK, Pen.TEN)]
    assert [mark.start.x for mark in marks] == [-22, -14, -6, 2, 10, 18]
    assert [(mark.start.y + mark.steps[0].end.y) / 2 for mark in marks] == pytest.approx([10 * up] * 6)
    for mark, path in zip(marks, outlines(part), strict=True):
        assert path.closed
        assert all(math.dist(point, (mark.start.x, 10 * up)) == pytest.approx(0.9) for point in path.points())
    rows = [p.start.y for p in part.shapes if isinstance(p, Curve) and p.pen is Pen.REGISTER and p.start.x < -23]
    assert 10 * up in rows


def test_every_cross_is_in_its_hole() -> None:
    """The upright of a peg is centred on its row, and the row's long line crosses it there."""
    part = strip_of(PEGGED | SHORT)
    lines = [p for p in part.shapes if isinstance(p, Curve) and len(p.steps) == 1]
    rows = {p.start.y for p in lines if p.pen is Pen.REGISTER and p.start.y == p.steps[0].end.y and p.start.x < -23}
    assert rows >= {10.0, 22.0}
    middles = [(p.start.y + p.steps[0].end.y) / 2 for p in lines if p.pen is Pen.MARK]
    assert middles == pytest.approx([22, 10] * 3)


def test_notches_that_stay_empty_are_grey() -> None:
    """With an end in every second notch of 2 mm, the ten between eleven marks have a short grey tick each."""
    part = strip_of(HELD | SHORT)
    ticks = [p.start.x for p in part.shapes if isinstance(p, Curve) and p.pen is Pen.HELP]
    assert ticks == [-18 + 4 * k for k in range(10)]
    assert not [p for p in strip_of(IN_PAIRS | SHORT).shapes if isinstance(p, Curve) and p.pen is Pen.HELP]


def test_an_odd_warp_is_tied_off_at_the_far_end() -> None:
    """Eleven ends: the near end has the tie-on alone, the far end the tie-off at the other side."""
    for kind in (NOTCHED, PEGGED):
        near, far = (words(strip_of(kind | SHORT, end)) for end in ("near", "far"))  # type: ignore[arg-type]
        assert "tie on here \N{MIDDLE DOT} left" in near
        assert "tie off" not in near
        assert "right \N{MIDDLE DOT} tie off here" in far
        assert "tie on" not in far


def test_doubled_ends_are_said_on_the_strip() -> None:
    """The strip says which ends are doubled, and no mark moves."""
    plain, doubled = (
        strip_of(NOTCHED | SHORT),
        strip_of(NOTCHED | SHORT | {"weaving.doubled_selvedges": 2, "weaving.doubled_warp": True}),
    )
    for said in ("every end of two threads", "the outer 2 ends at each side doubled"):
        assert said in words(doubled)
    marks = [
        [p.start.x for p in part.shapes if isinstance(p, Curve) and p.pen in (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.EDGE)]
        for part in (plain, doubled)
    ]
    assert marks[0] == marks[1]


@pytest.mark.parametrize(("kind", "caution"), [(NOTCHED, "saw as its maker says"), (PEGGED, "drill as its maker says")])
def test_tools_have_their_caution(kind: dict[str, object], caution: str) -> None:
    """Whoever saws or drills reads to clamp the board and to mind the tool."""
    (note,) = strip_of(kind).notes
    assert "Clamp the board" in note
    assert caution in note


def test_nails_have_their_caution() -> None:
    """Whoever nails reads to shield the eyes and to keep the fingers off."""
    (note,) = strip_of(NAILS).notes
    assert "Shield your eyes" in note
    assert "with pliers and not with fingers" in note


def test_a_notch_keeps_a_tooth_beside_it() -> None:
    """A notch every 4 mm may be 3 mm wide, and leaves a millimetre; wider is refused, and the advice works."""
    plan_of(NOTCHED | {"frame.notch_width": "3 mm"})
    with pytest.raises(
        FieldError, match=r"^frame\.notch_width: needs a notch and a tooth of 1 mm to fit in the 4 mm"
    ) as no:
        plan_of(NOTCHED | {"frame.notch_width": "3.1 mm"})
    plan_of(NOTCHED | {"frame.notch_width": no.value.example.split('"')[1]})
    plan_of(HELD | {"frame.notch_width": "2 mm"})
    with pytest.raises(FieldError, match=r"^frame\.notch_width: needs a notch to fit in the 2 mm"):
        plan_of(HELD | {"frame.notch_width": "2.1 mm"})


def test_a_peg_with_its_thread_is_held_against_the_pitch() -> None:
    """A peg of 3.5 mm fits in a pitch of 4 mm; with a warp that wraps 10 turns in a centimetre it does not."""
    thin = plan_of(PEGGED | {"frame.peg_diameter": "3.5 mm"})
    assert thin.warnings == ()
    wrapped = plan_of(PEGGED | {"frame.peg_diameter": "3.5 mm", "warp": {"wrap": {"turns": 10, "window": "1 cm"}}})
    assert any(w.startswith("Peg and thread together (4.5 mm) exceed the pitch (4 mm)") for w in wrapped.warnings)

"""The winding picture: what stands on it, by hand, and golden drawings of every kind of frame."""

from __future__ import annotations

from itertools import pairwise

import pytest
from golden import listed, matches
from kits import font_metrics, plan_of
from pictures import EVERY, KINDS

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Part
from layout.parts.winding.face import Face
from layout.parts.winding.scale import FULL, LOW
from layout.parts.winding.winding import winding

GOLDEN: dict[str, tuple[dict[str, object], bool]] = {
    **{f"winding-{kind.replace(' ', '-')}": (changes, False) for kind, changes in KINDS.items()},
    "winding-low-top-back-first": (
        {"weaving.near_end": "top", "weaving.start": "right", "weaving.first_pass": "back"},
        True,
    ),
}


def picture(changes: dict[str, object] | None = None, *, low: bool = False) -> Part:
    """The winding picture of such a kit."""
    return winding(plan_of(changes), font_metrics(), low=low)


def words(part: Part) -> list[str]:
    """Everything the part says."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text)]


def long_lines(part: Part, pen: Pen) -> list[Curve]:
    """Lines of one step that lead from end to end of the frame as it is seen from the face."""
    lines = (shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and len(shape.steps) == 1)
    return [line for line in lines if abs(line.start.y - line.steps[0].end.y) > 20 and line.start.x < part.datum[1].x]


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_pictures(name: str) -> None:
    """The picture is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, low = GOLDEN[name]
    assert matches(name, listed(picture(changes, low=low)))


def test_counts_by_hand() -> None:
    """25 winds: eight passes before the gap and eight after it, half of them behind, 17 winds left out."""
    part = picture()
    assert (len(long_lines(part, Pen.THREAD)), len(long_lines(part, Pen.THREAD_BACK))) == (8, 8)
    said = words(part)
    assert "25 winds, 50 ends" in said
    assert said[said.index("17") : said.index("17") + 3] == ["17", "winds", "more"]
    beyond = [shape for shape in part.shapes if isinstance(shape, Text) and shape.at.y > part.datum[2].y]
    numbers = [int(text.words) for text in sorted(beyond, key=lambda text: text.at.x) if text.words.isdigit()]
    assert numbers == [1, 2, 3, 4, 22, 23, 24, 25]


def test_thread_behind_is_hidden_by_both_ends() -> None:
    """A pass behind is drawn between the frame ends only, one on the face from outermost line to outermost line."""
    part = picture()
    high = part.datum[2].y
    assert {tuple(sorted(p.y for p in line.points())) for line in long_lines(part, Pen.THREAD)} == {(0, high)}
    ((low, top),) = {tuple(sorted(p.y for p in line.points())) for line in long_lines(part, Pen.THREAD_BACK)}
    assert 0 < low < top < high


def test_nothing_runs_behind_between_pegs() -> None:
    """All passes lie on the face, and the legend has no broken line."""
    part = picture(KINDS["pegged ends"])
    assert not [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.THREAD_BACK]
    assert "behind a tooth" not in words(part)
    assert "38 ends" not in words(part)
    assert words(part).count("more") == 1


@pytest.mark.parametrize("name", list(EVERY)[::7])
def test_a_mirrored_kit_gives_a_mirrored_picture(name: str) -> None:
    """Begun on the other side, every thread lies where the mirror shows it."""
    changes = EVERY[name]
    other = {"left": "right", "right": "left"}[str(changes["weaving.start"])]
    one, mirrored = picture(changes), picture(changes | {"weaving.start": other})

    def ends(part: Part, side: int) -> set[tuple[float, ...]]:
        lines = long_lines(part, Pen.THREAD) + long_lines(part, Pen.THREAD_BACK)
        return {
            tuple(
                round(value, 6) + 0.0
                for point in sorted(line.points(), key=lambda p: p.y)
                for value in (side * point.x, point.y)
            )
            for line in lines
        }

    assert ends(one, 1) == ends(mirrored, -1)


@pytest.mark.parametrize("name", EVERY)
def test_knots_stand_on_the_face_of_their_ends(name: str) -> None:
    """The tie-on at the near end where winding starts; the tie-off at the far end after an odd number of ends.

    Of a warp from a loose rod both are on the rod, between both frame ends.
    """
    plan = plan_of(EVERY[name])
    part = winding(plan, font_metrics())
    near, far = part.datum[0].y, part.datum[2].y
    discs = [shape for shape in part.shapes if isinstance(shape, Region) and len(shape.contours[0].steps) == 8]
    inside = [disc for disc in discs if part.datum[0].x < disc.contours[0].start.x < part.datum[1].x]
    knots = [Point(each.contours[0].start.x - 1.15, each.contours[0].start.y) for each in inside]
    on, off = [at for at in knots if min(near, far) < at.y < max(near, far)]
    if plan.kit.weaving.near_hold == "loose rod":
        assert on.y == off.y == pytest.approx(near + 0.75 * (far - near))
        assert (off.x - on.x) * plan.warp.toward > 0
        return
    assert abs(on.y - near) < abs(on.y - far)
    assert (abs(off.y - near) < abs(off.y - far)) == (plan.warp.ends % 2 == 0)
    assert (off.x - on.x) * plan.warp.toward >= 0  # two ends in a pair of notches begin and end in one


@pytest.mark.parametrize("name", EVERY)
@pytest.mark.parametrize("low", [False, True])
def test_no_pass_leans_into_the_gap(name: str, *, low: bool) -> None:
    """Every end of a drawn pass lies between a side of the frame and a break line."""
    face = Face.of(plan_of(EVERY[name]), LOW if low else FULL)
    spans, inner = face.spans, face.scale.inner / 2
    edges = [-inner, *(x for one, other in pairwise(spans) for x in (one[1], other[0])), inner]
    rooms = list(zip(edges[::2], edges[1::2], strict=True))
    for leg in face.way.legs:
        for x in (leg.near, leg.far):
            assert any(left < x < right for left, right in rooms)

"""The winding sheet: what stands on it, by hand, and golden drawings of every kind of frame."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from golden import listed, matches
from hypothesis import given, settings
from hypothesis import strategies as st
from ink import Ink, ink_of, meetings
from kits import FLAT, NOTCHED, font_metrics, kit_of, plan_of
from languages import made_up
from pictures import EVERY, KINDS
from test_look import outside

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.messages.roles import Shed, Winding
from layout.paper.sheets import lay, printed
from layout.parts.winding.heading_rows import heading_rows
from layout.parts.winding.winding import small_winding, winding
from layout.plan import plan
from layout.products import PRODUCTS

GOLDEN: dict[str, tuple[dict[str, object], bool]] = {
    **{f"winding-{kind.replace(' ', '-')}": (changes, False) for kind, changes in KINDS.items()},
    "winding-low-top-back-first": (
        {"weaving.near_end": "top", "weaving.start": "right", "weaving.first_pass": "back"},
        True,
    ),
}


def picture(changes: dict[str, object] | None = None, *, small: bool = False) -> Part:
    """The winding picture of such a kit."""
    planned = plan_of(changes)
    return small_winding(planned, font_metrics(), room=lambda _: 100.0) if small else winding(planned, font_metrics())


def words(part: Part) -> list[str]:
    """Everything the part says."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text)]


def long_lines(part: Part, pen: Pen) -> list[Curve]:
    """Lines of one step that lead from end to end of the frame as it is seen from the face."""
    lines = (shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and len(shape.steps) == 1)
    return [line for line in lines if abs(line.start.y - line.steps[0].end.y) > 20 and line.start.x < part.datum[1].x]


def rings(part: Part) -> list[tuple[Point, float, str]]:
    """The middle and radius of every ring, and what stands in it."""
    found = []
    for shape in part.shapes:
        if isinstance(shape, Curve) and shape.pen in (Pen.RING, Pen.OUTLINE) and len(shape.steps) == 8:
            xs, ys = zip(*shape.points(), strict=True)
            at, radius = Point((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2), (max(xs) - min(xs)) / 2
            said = [each for each in part.shapes if isinstance(each, Text) and math.dist(each.at, at) < radius]
            found += [(at, radius, text.words) for text in said]
    return found


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_pictures(name: str) -> None:
    """The picture is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, small = GOLDEN[name]
    assert matches(name, listed(picture(changes, small=small)))


def test_counts_by_hand() -> None:
    """25 winds: the first three and the last three, half of their passes behind, and the others between three dots."""
    part = picture()
    assert (len(long_lines(part, Pen.THREAD)), len(long_lines(part, Pen.THREAD_BACK))) == (6, 6)
    assert {"winds", "4 to 22"} <= set(words(part))
    high = part.datum[2].y
    numbered = [s for s in part.shapes if isinstance(s, Text) and s.pen is Pen.STRONG and s.words.isdigit()]
    ringed = {each for _, _, each in rings(part)}
    plain = [text for text in numbered if min(math.dist(text.at, at) for at, _, _ in rings(part)) > 3.2]
    far = [int(text.words) for text in sorted(plain, key=lambda t: t.at.x) if text.at.y > high]
    near = [int(text.words) for text in sorted(plain, key=lambda t: t.at.x) if -6 < text.at.y < 0]
    assert far == [1, 2, 3, 23, 24, 25]
    assert near == [0, 1, 2, 3, 22, 23, 24, 25]
    assert ringed == {*"12345678", "a", "b"}


def test_steps_by_hand() -> None:
    """What is to be done with 25 winds round bars, and with 9 ends in notches from the right, to the far end."""
    assert picture().steps == (
        "Tie on at near 0 with two half hitches.",
        "Go along the face to far 1.",
        "Round the far bar, and back behind.",
        "Round the near bar at near 1, on to far 2.",
        "Go on so to the last far mark, 25.",
        "Come to near 25. Clip the thread to the bar.",
        "From the first wind on, pull the slack along.",
        "Cut it 10 cm past the bar. Tie off: two half hitches, the last a bow.",
    )
    nine = picture(NOTCHED | {"weaving.width": "36 mm", "weaving.tie_off": "far end", "warp": {"knot": "6 in"}})
    assert nine.steps == (
        "Tie on at near 1 with two half hitches.",
        "Go along the face to far 1.",
        "Through the notch, behind the tooth, and out at far 2.",
        "In at near 2, behind the tooth, out at near 3.",
        "Go on so to the last near mark, 9.",
        "Come to far 9. Clip the thread to the bar.",
        "From the first end on, pull the slack along.",
        "Cut it 6 in past the bar. Tie off: two half hitches, the last a bow.",
    )


@pytest.mark.parametrize("name", KINDS)
def test_all_rings_lie_in_the_box_of_the_picture(name: str) -> None:
    """However small it is, and whatever its rings must keep clear of."""
    planned = plan_of(KINDS[name] | {"weaving.height": "as high as fits", "frame.outer_height": "21 3/16 in"})
    metrics = font_metrics()
    small = [
        small_winding(planned, metrics, wide=wide, low=low, room=lambda _: 100.0)
        for wide in (False, True)
        for low in (False, True)
    ]
    for part in (winding(planned, metrics), *small):
        left, low, right, high = part.box
        for at, radius, words in rings(part):
            assert left <= at.x - radius < at.x + radius <= right + 0.01, words
            assert low <= at.y - radius < at.y + radius <= high + 0.01, words


def test_a_warp_of_one_wind_has_fewer_things_to_do() -> None:
    """Two ends: there, back, and no more; every step has its ring."""
    part = picture({"weaving.width": "8 mm"})
    assert len(part.steps) == 6
    assert {each for _, _, each in rings(part) if each.isdigit()} == set("123456")


def test_thread_behind_is_hidden_by_both_ends() -> None:
    """A pass behind is drawn between the frame ends only, one on the face from outermost line to outermost line."""
    part = picture()
    high = part.datum[2].y
    assert {tuple(sorted(p.y for p in line.points())) for line in long_lines(part, Pen.THREAD)} == {(0, high)}
    ((low, top),) = {tuple(sorted(p.y for p in line.points())) for line in long_lines(part, Pen.THREAD_BACK)}
    assert 0 < low < top < high


def test_nothing_runs_behind_between_pegs() -> None:
    """All passes lie on the face, and there is no broken line, nor one in the legend."""
    part = picture(KINDS["pegged ends"])
    clip = max(s.start.y for s in part.shapes if isinstance(s, Curve) and s.pen is Pen.THREAD_BACK)
    behind = [s for s in part.shapes if isinstance(s, Curve) and s.pen is Pen.THREAD_BACK and s.start.y < clip]
    assert behind == []
    assert "behind a tooth" not in words(part)


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
def test_knots_stand_inside_their_ends(name: str) -> None:
    """The tie-on at the near end where winding starts; the tie-off at the far end after an odd number of ends.

    Of a warp from a loose rod both are on the rod, between both frame ends.
    """
    planned = plan_of(EVERY[name])
    part = winding(planned, font_metrics())
    near, far = part.datum[0].y, part.datum[2].y
    discs = [shape for shape in part.shapes if isinstance(shape, Region) and len(shape.contours[0].steps) == 8]
    knots = [Point(each.contours[0].start.x - 1.5, each.contours[0].start.y) for each in discs if is_knot(each)]
    inside = [at for at in knots if at.x < part.datum[1].x and min(near, far) < at.y < max(near, far)]
    on, off = sorted(inside, key=lambda at: planned.warp.toward * at.x)
    if planned.kit.weaving.near_hold == "loose rod":
        assert on.y == off.y == pytest.approx(near + 0.75 * (far - near))
        assert (off.x - on.x) * planned.warp.toward > 0
        return
    if on.x == off.x:  # two ends in a pair of notches begin and end in one
        on, off = sorted(inside, key=lambda at: abs(at.y - near))
    assert abs(on.y - near) < abs(on.y - far)
    assert (abs(off.y - near) < abs(off.y - far)) == (planned.warp.ends % 2 == 0)


def is_knot(shape: Region) -> bool:
    """A filled disc of 1.5 mm radius."""
    xs = [point.x for point in shape.contours[0].points()]
    return math.isclose(max(xs) - min(xs), 3.0, abs_tol=1e-6)


@pytest.mark.parametrize("name", list(EVERY)[::3])
@pytest.mark.parametrize("small", [False, True])
def test_no_ring_lies_on_anything(name: str, *, small: bool) -> None:
    """Every ring keeps clear of all ink, its own letter left out: of threads, lines, words and other rings."""
    part = picture(EVERY[name], small=small)
    found = rings(part)
    for at, radius, said in found:
        others = [shape for shape in part.shapes if not _belongs(shape, at, radius)]
        assert _gap(ink_of(others), at) > radius + 0.17, said


def _belongs(shape: Curve | Region | Text, at: Point, radius: float) -> bool:
    if isinstance(shape, Text):
        return math.dist(shape.at, at) < radius
    if shape.pen in (Pen.TINT, Pen.PAPER):
        return True
    path = shape.contours[0] if isinstance(shape, Region) else shape
    round_or_from_it = len(path.steps) == 8 or shape.pen is Pen.OUTLINE  # itself, or the arrow that begins at it
    return round_or_from_it and math.dist(path.start, at) == pytest.approx(radius, abs=1e-6)


def _gap(ink: Ink, at: Point) -> float:
    """From a place to the nearest ink."""
    gaps = []
    for (x0, y0, x1, y1), half in zip(ink.ends.tolist(), ink.half.tolist(), strict=True):
        dx, dy = x1 - x0, y1 - y0
        t = min(1.0, max(0.0, ((at.x - x0) * dx + (at.y - y0) * dy) / (dx * dx + dy * dy or 1.0)))
        gaps.append(math.dist(at, (x0 + t * dx, y0 + t * dy)) - half)
    return min(gaps)


@given(st.integers(2, 60), st.sampled_from(list(KINDS)), st.sampled_from(["left", "right"]), st.booleans())
@settings(max_examples=25, deadline=None)
def test_every_thing_to_do_has_its_ring(ends: int, kind: str, start: str, small: bool) -> None:
    """Whatever the number of ends: each step of the list stands in a ring on the frame, and no other number does."""
    changes = KINDS[kind] | {"weaving.width": f"{ends * 4 + 1} mm", "weaving.start": start}
    if "pairs" in kind:
        changes |= {"weaving.width": f"{ends * 4 + 1} mm"}
    part = picture(changes, small=small)
    on_frame = {said for at, _, said in rings(part) if at.x < part.datum[1].x and at.y > part.datum[0].y - 20}
    assert on_frame - {"a", "b"} == {str(k) for k in range(1, len(part.steps) + 1)}


def test_the_room_decides_how_high_the_frame_is() -> None:
    """The taller the room, the higher the frame, and the part fills what it is given within its bounds."""
    planned, highs = plan_of({}), (150.0, 176.0, 190.0, 205.0)
    parts = [winding(planned, font_metrics(), high=high) for high in highs]
    assert [part.height for part in parts] == pytest.approx(highs)
    frames = [part.datum[2].y for part in parts]
    assert [frames[-1] - frame for frame in frames] == pytest.approx([highs[-1] - high for high in highs])
    assert winding(planned, font_metrics(), high=900.0).datum[2].y == 130.0


@pytest.mark.parametrize("paper", ["common", "148 x 210 mm", "210 x 148 mm"])
@pytest.mark.parametrize("kind", list(KINDS)[::2])
def test_words_of_any_length_find_room(kind: str, paper: str) -> None:
    """In a made-up language with single words four times as long nothing meets and nothing leaves the sheet."""
    planned = plan(kit_of(KINDS[kind] | {"paper.size": paper}), made_up(ENGLISH))
    layings = [lay(planned, build, font_metrics()) for build in PRODUCTS["winding"].builds(planned, font_metrics())]
    pages = printed(planned, layings, font_metrics())
    assert [meeting for page in pages for meeting in meetings(page.sheet, 0.3)] == []
    assert [each for page in pages for each in outside(page.sheet)] == []


@pytest.mark.parametrize(
    ("room", "role", "count"),
    [({}, Shed.ROWS, 4), ({"heading_rows": 1}, Shed.ROWS, 2), ({"heading": "half hitches"}, Shed.HITCHED, 2)],
)
def test_heading_rows_are_those_of_the_kit(room: dict[str, object], role: Shed, count: int) -> None:
    """A dot for each row at both bars, and the sentence that goes with them."""
    planned = plan_of({"room": {**room, "hand": "5 mm", "slope": 1}})
    part = heading_rows(planned, font_metrics())
    dots = [shape for shape in part.shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    assert len(dots) == count
    values = {"rows": room.get("heading_rows", 2)} if role is Shed.ROWS else {}
    assert planned.words.say(role, **values) in " ".join(words(part))


def test_a_board_that_is_notched_already_takes_its_numbers_from_strips() -> None:
    """Notches that are still to be made have theirs from templates."""
    made, there = picture(NOTCHED), picture(NOTCHED | {"frame.notch_density": "2.5 per cm"})
    say = plan_of({}).words.say
    assert say(Winding.BY_TEMPLATES) in words(made)
    assert say(Winding.BY_STRIPS) in words(there)


@pytest.mark.parametrize("first", ["face", "back"])
def test_threads_between_marks_do_not_cross_on_one_layer(first: str) -> None:
    """Round boards, no two passes on the face cross."""
    part = picture(FLAT | {"weaving.first_pass": first})
    faces = sorted((min(line.points(), key=lambda p: p.y).x, line) for line in long_lines(part, Pen.THREAD))
    tops = [max(line.points(), key=lambda p: p.y).x for _, line in faces]
    assert all(one < other for one, other in pairwise(tops))


def test_it_is_the_same_twice() -> None:
    """Drawn again, it is the same shape for shape."""
    again = plan(kit_of({}))
    assert winding(again, font_metrics()) == picture()

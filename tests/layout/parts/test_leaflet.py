"""The leaflet: its words by hand, its folds as paper folds, and every kind of frame, on every paper, proven."""

from __future__ import annotations

from math import dist

import pytest
from alarms import alarm_on
from golden import listed, matches
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from ink import meetings
from kits import CROSSED, KINDS, NAILS, ROD, font_metrics, kit_of, parts_of, plan_of
from languages import made_up
from test_look import GAP, NAMES, outside

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Sheet
from layout.messages.english import ENGLISH
from layout.paper.folded import folded_room
from layout.parts.leaflet.in_box import beside_the_steps
from layout.parts.leaflet.leaflet import bare_leaflet, leaflet
from layout.parts.leaflet.pictures.ground import HIGH, WIDE
from layout.parts.leaflet.pictures.pictures import STEP_PICTURES
from layout.parts.leaflet.steps import leaflet_steps
from layout.plan import Plan, plan
from layout.products import made_by_default
from templates_gen import words
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file
from templates_gen.verify.whole import lacking

DEMO = plan(kit_file.demo())
PAPERS = ("common", "a4", "letter", "a3", "11x17", "230 x 345 mm", "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")
TURNS: tuple[dict[str, object], ...] = (
    {},
    {"weaving.near_end": "top"},
    {"weaving.start": "right"},
    {"weaving.first_pass": "back"},
    {"weaving.start": "right", "weaving.near_end": "top"},
)
BOXES: tuple[list[str], ...] = (
    ["strips", "spacing-guide", "wrap-gauge", "leaflet", "label"],
    ["leaflet", "comb", "shed-stick", "winding-comb", "help"],
    ["leaflet", "wrap-gauge-cut", "spacing-guide-cut", "comb", "winding", "frame-check", "start-here"],
    ["leaflet"],
)
ROWS: tuple[dict[str, object], ...] = (
    {"room.heading": None},
    {"room.heading": None, "room.heading_rows": 1},
    {"room.heading_rows": 0},
    {"room.heading": None, "room.heading_rows": 5},
    {"room.heading": "half hitches"},
)


def proven(planned: Plan) -> tuple[Sheet, ...]:
    """The leaves of a plan's leaflet, whose proof finds nothing."""
    output = Outputs(planned, font_metrics(), ("leaflet",)).output("leaflet.pdf")
    assert alarm_on(planned, output) == ""
    return tuple(output.sheets)


def test_the_words_of_the_demo_by_hand() -> None:
    """24 cm at 2.5 ends per cm are 60 ends in 30 winds, whose last mark is 30; 30 ends lie behind.

    The stick is as long as the frame is wide, 40 cm, and 4 cm longer at both sides.
    """
    said = [each.words for each in leaflet_steps(DEMO)]
    assert said[2] == "At near 0, on the left, with two half hitches."
    assert said[3] == "Along the face, round the far bar, back behind, on to the last mark: 30 winds, 60 ends."
    assert said[4] == "From the first wind on, pull the slack along. Tie off at near 30 with a bow."
    assert said[5].startswith("A flat stick, 480 mm long.")
    assert "30 in all" in said[8]
    assert said[10].endswith("244 beads make 339 mm.")


def test_nobody_gets_it_unasked() -> None:
    """A kit without a box has no leaflet but by name, and no kit has it in the one file of all guides."""
    assert "leaflet" not in made_by_default(DEMO)
    boxed = Outputs(plan_of({"box": {"spare_ends": 3}}), font_metrics())
    assert "leaflet.pdf" in boxed.files
    assert "leaflet" not in boxed.output("kit.pdf").parts


def test_a_whole_kit_without_its_leaflet_is_not_whole() -> None:
    """Where the kit says that it lies in the box."""
    kit = kit_of({"box": {"holds": ["leaflet"]}})
    outputs = Outputs(plan(kit), font_metrics())
    made = parts_of(outputs)
    assert lacking(kit, made, outputs.without) == ()
    del made["leaflet.pdf"]
    (missed,) = lacking(kit, made, outputs.without)
    assert str(missed) == "leaflet.pdf is missing, which this kit must have"


def folded(at: Point, sheet: Sheet) -> tuple[Point, int]:
    """A place on a sheet that is folded across its height, then across its width, and how many layers lie under it.

    Each fold turns the part beyond it over, on what lies on this side: two reflections.
    """
    x, y, layer = at.x, at.y, 0
    if y < sheet.height / 2:
        y, layer = sheet.height - y, 1
    if x > sheet.width / 2:
        x, layer = sheet.width - x, 3 - layer
    return Point(x, y), layer


def test_each_panel_is_one_leaf_of_the_folded_sheet() -> None:
    """The four panels come to lie in four layers, each whole in one of them.

    Printed inside, no panel is upside down when the sheet is opened flat.
    """
    (sheet,) = proven(DEMO)
    titles = {text.words: text.at for text in sheet.shapes if isinstance(text, Text) and text.pen is Pen.STRONG}
    layers = [folded(titles[name], sheet)[1] for name in ("Tie on", "Wind", "Heading rows", "First rows")]
    assert sorted(layers) == [0, 1, 2, 3]
    assert all(text.angle == 0 for text in sheet.shapes if isinstance(text, Text))
    folds = [shape.points() for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.FOLD]
    places = [(one.x - sheet.width / 2, one.y - sheet.height / 2) for one, other in folds if dist(one, other) > 20]
    assert len(places) == 2
    assert all(min(abs(x), abs(y)) < 1e-6 for x, y in places)


def test_a_golden_leaflet() -> None:
    """The leaflet of the demo kit as a drawing that a person can read."""
    room = folded_room(DEMO, bare_leaflet(DEMO), font_metrics())
    (part,) = leaflet(DEMO, room, font_metrics())
    matches("leaflet", listed(part))


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_is_made_and_proven(kind: str) -> None:
    """Whatever the frame ends and the winding, on the usual sheet: two leaves at most, and a good drawing."""
    sheets = proven(plan_of(KINDS[kind]))
    assert len(sheets) <= 2
    for sheet in sheets:
        assert meetings(sheet, GAP) == []
        assert outside(sheet) == []


@settings(max_examples=25, phases=(Phase.explicit, Phase.generate))
@given(
    st.sampled_from(sorted(KINDS)),
    st.sampled_from(PAPERS),
    st.sampled_from(TURNS),
    st.sampled_from(ROWS),
    st.sampled_from(NAMES),
    st.sampled_from(BOXES),
    st.sampled_from((False, True)),
)
def test_every_way_of_warping_on_every_paper(
    kind: str,
    paper: str,
    turn: dict[str, object],
    rows: dict[str, object],
    name: dict[str, object],
    held: list[str],
    stretched: bool,
) -> None:
    """Near end, starting side, first pass, heading, odd counts, doubled warps, in any language, on any paper."""
    changes = {**KINDS[kind], **turn, **rows, **name, "paper.size": paper, "box": {"holds": held}}
    if "weaving.first_pass" in turn and not kind.startswith(("round bars", "flat ends", "figure eight")):
        del changes["weaving.first_pass"]
    for sheet in proven(plan(kit_of(changes), made_up(ENGLISH) if stretched else ENGLISH)):
        assert meetings(sheet, GAP) == []
        assert outside(sheet) == []


def test_long_words_take_a_second_leaf() -> None:
    """In a language of longer sentences no size shrinks; what has no room goes to another leaf."""
    assert len(proven(DEMO)) == 1
    assert len(proven(plan(kit_file.demo(), made_up(ENGLISH)))) > 1


@pytest.mark.parametrize("language", ["es", "de", "fr"])
@pytest.mark.parametrize("kind", ["round bars", "figure eight", "loose rod", "notched ends", "pegged ends", "nails"])
def test_every_language_has_room_on_one_sheet(language: str, kind: str) -> None:
    """Each way of warping, in words of that language alone: twelve steps in four panels, and a good drawing."""
    (sheet,) = proven(plan(kit_of(KINDS[kind]), words(language)))
    assert meetings(sheet, GAP) == []
    english = {each.title for each in leaflet_steps(plan_of(KINDS[kind]))}
    assert not english & {shape.words for shape in sheet.shapes if isinstance(shape, Text)}


@pytest.mark.parametrize("held", BOXES, ids=lambda held: f"{len(held)} things")
@pytest.mark.parametrize("kind", ["round bars", "notched ends", "pegged ends", "nails"])
def test_it_names_what_lies_in_the_box_and_nothing_else(held: list[str], kind: str) -> None:
    """Guides, combs, sticks, strips and gauges are named where they are there, and where they are not, what then."""
    planned = plan_of(KINDS[kind] | {"box": {"holds": held, "once": ["weaving-grid"]}})
    assert "leaflet" in made_by_default(planned)
    said = " ".join(shape.words for sheet in proven(planned) for shape in sheet.shapes if isinstance(shape, Text))
    guides = "spacing-guide" in held or "spacing-guide-cut" in held
    assert ("With the guides" in said) == guides
    assert ("With the spacing comb" in said) == ("comb" in held and not guides)
    assert ("By eye" in said) == (not guides and "comb" not in held)
    assert ("templates" in said or "strips" in said) == ("strips" in held)
    assert ("A flat stick" in said) == ("shed-stick" not in held)
    assert ("Wrap gauge" in said) == ("wrap-gauge" in held or "wrap-gauge-cut" in held)
    assert ("Winding combs" in said) == ("winding-comb" in held and kind == "round bars")
    assert ("Spare ends" in said) == ("Tapestry needle" in said) == ("help" not in held)
    assert ("Card, Help and finish" in said) == ("help" in held)


def test_it_does_not_name_what_cannot_be_had() -> None:
    """A grid asks for picks; spare ends and a needle lie in the box where the kit does not say otherwise."""
    held = {"holds": ["leaflet", "weaving-grid"]}
    assert [*beside_the_steps(plan_of({"box": held}))] == [
        "Spare ends: for an end that breaks.",
        "Tapestry needle: to darn in the tails of the weft.",
    ]
    bare: dict[str, object] = {"box": held | {"spare_ends": 0, "also": []}}
    assert [*beside_the_steps(plan_of(bare | {"weft": {"beads": {"number": 36, "over": "5 cm"}}}))] == [
        "Weaving grid: draw on it, or lay it under the warp."
    ]


@pytest.mark.parametrize("name", STEP_PICTURES)
@pytest.mark.parametrize("kind", ["round bars", "loose rod", "notched ends", "nails, odd"])
def test_a_picture_stays_in_its_box(name: str, kind: str) -> None:
    """34 x 26 mm; pins at an edge may reach half a thread past it."""
    for shape in STEP_PICTURES[name](plan_of(KINDS[kind]), font_metrics()):
        paths = [] if isinstance(shape, Text) else [shape] if isinstance(shape, Curve) else shape.contours
        for at in (point for path in paths for point in path.points()):
            assert -0.9 <= at.x <= WIDE + 0.9
            assert -0.9 <= at.y <= HIGH + 0.9


@pytest.mark.parametrize("changes", [{}, CROSSED, ROD, NAILS], ids=["round", "eight", "rod", "nails"])
@pytest.mark.parametrize("width", ["20 mm", "60 cm"])
def test_few_ends_and_many(changes: dict[str, object], width: str) -> None:
    """A weaving of a few ends has pictures with as many, and one of many has no more than have room."""
    size = {"weaving.width": width, "frame.outer_width": "70 cm"}
    assert len(proven(plan_of(changes | size))) <= 2


def test_inches_are_said_in_inches() -> None:
    """A frame in inches has its lengths by a ruler in inches."""
    inches = {"frame.outer_width": "16 in", "frame.outer_height": "22 in", "weaving.width": "8 in"}
    said = " ".join(each.words for each in leaflet_steps(plan_of(inches | {"sett.given": "8 epi"})))
    assert " in long" in said
    assert " mm" not in said


@pytest.mark.parametrize("kind", [kind for kind in KINDS if "peg" in kind or "nail" in kind])
def test_thread_round_thick_pegs_stays_by_its_picture(kind: str) -> None:
    """Close ends round pegs that almost meet reach past the bars."""
    assert proven(plan_of({"sett.given": "10 epi"} | KINDS[kind]))

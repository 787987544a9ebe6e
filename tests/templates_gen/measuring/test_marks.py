"""The measured marks of printed sheets: all of them, at their places, each a line that is drawn."""

from __future__ import annotations

import math
from functools import cache
from itertools import pairwise

import pytest
from cases import crossed, one_in
from hand_seen import known_of, straight
from kits import KINDS, font_metrics, kit_of

from layout.drawing.shapes import Curve
from layout.drawing.sheet import Piece
from layout.drawing.spans import spans_of
from layout.paper.targets import rectangle
from layout.parts.strip import numbered_marks
from layout.plan import Plan
from layout.products import laid
from templates_gen.codes.digest import digest_of
from templates_gen.files.kept import planned
from templates_gen.files.printer_check import CheckAsked, check_output
from templates_gen.inputs.printer_check_options import check_paper
from templates_gen.measuring.check_sheet import carried_check, check_sources
from templates_gen.measuring.groups import Group
from templates_gen.measuring.known_sheets import Finder
from templates_gen.measuring.marks import groups_on
from templates_gen.messages.roles.measure import MarkName
from templates_gen.scan.seen import Label

LONG: dict[str, object] = {"frame.outer_width": "90 cm", "weaving.width": "70 cm"}
TILES: dict[str, object] = {"paper.lay": "tiles"}


@cache
def groups_of(plan: Plan, product: str) -> list[tuple[Piece, Group]]:
    """Every row of marks of a product, with the piece that it is on."""
    pieces = [piece for laying in laid(product, plan, font_metrics()) for sheet in laying.sheets for piece in sheet]
    every = [piece.part for piece in pieces]
    return [(piece, group) for piece in pieces for group in groups_on([piece], plan, every)]


@pytest.mark.parametrize("kind", KINDS)
def test_every_wind_and_end_is_a_mark(kind: str) -> None:
    """Of strips and guides of every kind of frame, in the plan's numbers, where the plan has them, each shown once."""
    plan = planned(kit_of(KINDS[kind]))
    strips = {group.part: group for _, group in groups_of(plan, "strips")}
    for end in ("near", "far"):
        wanted = sorted((x, number) for number, x in numbered_marks(plan, end))
        marks = strips[f"strip-{end}"].marks
        assert [(mark.at, mark.name.values["number"]) for mark in marks] == wanted
    guides = [group for _, group in groups_of(plan, "spacing-guide")]
    assert [[mark.at for mark in group.marks] for group in guides] == [list(map(float, plan.warp.end_positions))] * 2


@pytest.mark.parametrize("changes", one_in(3, [LONG | TILES, *KINDS.values(), {"paper.lay": "diagonal"}]))
def test_marks_lie_where_they_are_drawn(changes: dict[str, object]) -> None:
    """The middle of its lines is `at` along the part as it lies on the sheet, which is to the left of each of them."""
    plan = planned(kit_of(changes))
    for product in ("strips", "spacing-guide", "wrap-gauge"):
        for piece, group in groups_of(plan, product):
            (zero,) = piece.placing.points([(0.0, 0.0)])
            for mark in group.marks:
                middles = [straight(line) for line in mark.lines]
                x, y = (sum(at[axis] for at in middles) / len(middles) for axis in (0, 1))
                along = (x - zero.x) * group.along.x + (y - zero.y) * group.along.y
                assert along == pytest.approx(mark.at, abs=1e-6)
                for line in mark.lines:
                    left = (line.start.y - line.end.y, line.end.x - line.start.x)
                    assert left[0] * group.along.x + left[1] * group.along.y == pytest.approx(
                        math.dist(line.start, line.end)
                    )


@pytest.mark.parametrize(("product", "size"), crossed(2, ["strips", "spacing-guide"], ["common", "letter", "a4"]))
def test_pieces_share_out_their_marks(product: str, size: str) -> None:
    """Between their joints, the pieces of a long strip have every mark once; they meet at the joints."""
    plan = planned(kit_of(LONG | {"paper.lay": "tiles", "paper.size": size}))
    found: dict[str, list[Group]] = {}
    for _, group in groups_of(plan, product):
        found.setdefault(group.part, []).append(group)
    assert len(found) == 2
    for part, groups in found.items():
        assert len(groups) > 1
        ordered = sorted(groups, key=lambda group: group.joints)
        assert ordered[0].joints[0] == -math.inf
        assert ordered[-1].joints[1] == math.inf
        assert all(one.joints[1] == pytest.approx(other.joints[0]) for one, other in pairwise(ordered))
        own = [mark.at for group in ordered for mark in group.marks if group.joints[0] <= mark.at < group.joints[1]]
        end = "near" if part.endswith("near") else "far"
        wanted = plan.warp.marks(end) if product == "strips" else plan.warp.end_positions
        assert own == sorted(map(float, wanted))
        assert {len(group.crosses) for group in ordered} == {3, 6}


def test_the_grid_has_a_line_for_each_end_and_row() -> None:
    """On four sheets that go on past each other, all numbers, in steps of a pitch and of a bead.

    A line that stands close beside grey or a line to cut by cannot be read alone, and is left out: one row here.
    """
    lines: dict[str, set[tuple[object, float]]] = {}
    for number in (1, 2, 3, 4):
        for group in known_of(None, "weaving-grid.pdf", number)[1].groups:
            assert group.kind is not None
            role = group.marks[0].name.role
            lines.setdefault(role, set()).update((mark.name.values["number"], mark.at) for mark in group.marks)
    columns, rows = lines[MarkName.COLUMN], lines[MarkName.ROW]
    assert sorted(columns) == [(k, pytest.approx(4.0 * k - 120)) for k in range(61)]
    numbered = dict(rows)
    bead = 100 / 72  # mm: two picks, of which the demo kit's weft has 14.4 to the cm
    assert sorted({*range(245)} - {*numbered}) == [109]
    assert all(at == pytest.approx(number * bead) for number, at in numbered.items() if isinstance(number, int))


def test_the_edges_of_a_gauge_stand_a_window_and_their_ink_apart() -> None:
    """1 in, 2 in and 5 cm are what is free between the inks of 0.9 mm."""
    (group,) = known_of(number=3)[1].groups
    places = [mark.at for mark in group.marks]
    free = [other - one - 0.9 for one, other in zip(places[::2], places[1::2], strict=True)]
    assert free == pytest.approx([25.4, 50.8, 50.0])
    assert [mark.name.values["window"] for mark in group.marks[::2]] == ["1 in", "2 in", "5 cm"]


def test_sheets_without_marks_have_none() -> None:
    """The first sheet, the frame check and the winding sheet show pictures, which nobody measures by."""
    assert [len(known_of(number=number)[1].groups) for number in (1, 2, 3, 4, 5, 6)] == [0, 0, 1, 2, 0, 2]


def test_targets_are_those_of_the_drawn_sheet() -> None:
    """Eight on each sheet, the corners first, a rectangle of 190.5 x 249 mm apart."""
    for number in range(1, 7):
        label, sheet = known_of(number=number)
        assert len(sheet.targets) == 8
        (left, high), (right, _), (_, low) = sheet.targets[:3]
        assert (right - left, high - low) == pytest.approx(label.rectangle)


@pytest.mark.parametrize("paper", ["common", "a4", "letter", "148 x 210 mm"])
def test_the_spans_of_a_printer_check_are_its_marks(paper: str) -> None:
    """Each from end to end as long as the sheet says, and the lines are those that are drawn."""
    asked = CheckAsked(check_paper(paper, "de"))
    output = check_output(asked, font_metrics())
    source = carried_check(output.about.inputs, font_metrics())
    label = Label(digest_of(output.about.inputs), 1, len(output.sheets), rectangle(asked.paper))
    sheet = Finder([source])(label)
    assert sheet is not None
    assert (sheet.file, len(sheet.targets)) == ("printer-check.pdf", 8)
    spans = spans_of(asked.paper.width, asked.paper.height)
    assert [group.length for group in sheet.groups] == pytest.approx([*spans[:2], spans.diagonal, spans.diagonal])
    fine = {frozenset(shape.points()) for shape in output.sheets[0].shapes if isinstance(shape, Curve)}
    close = [
        min(math.dist(a, b) for ends in fine for a in ends for b in (line.start, line.end))
        for group in sheet.groups
        for line in group.lines
    ]
    assert max(close) < 1e-9


def test_a_printer_check_is_known_without_a_kit() -> None:
    """On any paper with a name and in any language, each by a digest of its own."""
    sources = list(check_sources(font_metrics()))
    assert len({source.digest for source in sources}) == len(sources) == 5 * 4

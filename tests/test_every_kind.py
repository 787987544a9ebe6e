"""Every kind of frame on every paper, laid in every way: sheets that are good drawings, or one clear sentence."""

from __future__ import annotations

import math
from collections.abc import Sequence
from pathlib import Path

import pytest
from ink import meetings
from kits import KINDS, font_metrics, kit_of, parts_of, sheets_of
from test_look import GAP, LEAST, drawn, outside

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.inputs import BY_KEY
from layout.plan import plan
from layout.values.errors import FieldError
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file as kitfile
from templates_gen.verify.whole import lacking

SAMPLE_KITS = Path(__file__).with_name("sample_kits")
PAPERS = (*BY_KEY["paper.size"].choices, "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")
LAYS = BY_KEY["paper.lay"].choices
WIDTHS = ("20 mm", "20 cm", "12 in", "60 cm")
TURNS: tuple[dict[str, object], ...] = ({}, {"weaving.near_end": "top"}, {"weaving.start": "right"})


def test_the_table_has_every_kind_of_frame_ends() -> None:
    """No kind of frame ends is left out of the table."""
    named = {str(changes.get("frame.ends", "round bars")) for changes in KINDS.values()}
    assert named == set(BY_KEY["frame.ends"].choices)


@pytest.mark.parametrize("path", sorted(SAMPLE_KITS.glob("*.toml")), ids=lambda path: path.stem)
def test_a_sample_kit_is_whole(path: Path) -> None:
    """Each sample kit has every file and part that its kind of frame asks for, on the paper that it names."""
    planned = plan(kitfile.load(path))
    outputs = Outputs(planned, font_metrics())
    assert lacking(planned.kit, parts_of(outputs), outputs.without) == ()


def test_a_sample_kit_shows_a_travel() -> None:
    """One of the sample kits can be adjusted in height."""
    assert any(kitfile.load(path).frame.travel for path in SAMPLE_KITS.glob("*.toml"))


def test_the_sample_kits_show_what_others_do_not() -> None:
    """Beside the demo kit there are notches to be made, and there already, pegs, nails, a figure eight, a loose rod."""
    kits = [kitfile.load(path) for path in SAMPLE_KITS.glob("*.toml")]
    frames = [kit.frame.ends for kit in kits]
    assert {kit.weaving.how_wound for kit in kits} == {"round", "figure eight", "loose rod"}
    shown = {(ends.name, isinstance(ends, NotchedEnd) and ends.density is not None) for ends in frames}
    assert shown >= {("notched ends", False), ("notched ends", True), ("pegged ends", False), ("nails", False)}


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_on_every_paper(kind: str, paper: str) -> None:
    """Laid as it may be, and in one other way, each way in its turn, there are good sheets."""
    number = PAPERS.index(paper) + list(KINDS).index(kind)
    others = [lay for lay in LAYS if lay != "auto"]
    _is_well_drawn(kind, paper, ["auto", others[number % len(others)]])


@pytest.mark.slow
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_on_every_paper_in_every_way(kind: str, paper: str) -> None:
    """The same in all ways of laying."""
    _is_well_drawn(kind, paper, LAYS)


def _is_well_drawn(kind: str, paper: str, lays: Sequence[str]) -> None:
    """Laid as it may be there are sheets, and good ones; laid one way only, sheets or a sentence on the paper."""
    number = PAPERS.index(paper) + list(KINDS).index(kind)
    width, turn = WIDTHS[number % len(WIDTHS)], TURNS[number % len(TURNS)]
    frame = {"frame.outer_width": "75 cm", "weaving.width": width}
    for lay in lays:
        sheets = drawn(
            KINDS[kind] | frame | turn | {"paper.size": paper, "paper.lay": lay}
        )  # refuses on paper.lay only
        assert sheets or lay != "auto"
        for sheet in sheets if lay == "auto" else sheets[:1]:
            assert meetings(sheet, GAP) == []
            assert outside(sheet) == []
            sizes = {shape.size for shape in sheet.shapes if isinstance(shape, Text)}
            assert len(sizes) <= 4
            assert min(sizes) >= LEAST - 1e-9


@pytest.mark.parametrize("kind", KINDS)
def test_the_advice_of_a_refusal_works(kind: str) -> None:
    """Where a way of laying is refused, what the sentence offers first gives sheets."""
    frame: dict[str, object] = {"frame.outer_width": "75 cm", "weaving.width": "60 cm", "paper.lay": "straight"}
    with pytest.raises(FieldError) as caught:
        sheets_of(plan(kit_of(KINDS[kind] | frame)))
    assert caught.value.field == "paper.lay"
    leaf, value = caught.value.example.split(" or ")[0].split(" = ")
    assert len(sheets_of(plan(kit_of(KINDS[kind] | frame | {f"paper.{leaf}": value.strip('"')})))) > 1


def test_a_large_peg_stands_whole_in_tiles() -> None:
    """Holes of 25 mm, the widest there are, are each whole on some piece, however the joints fall."""
    pegs = {"frame.peg_diameter": "25 mm", "frame.edge_distance": "20 mm", "frame.row_distance": "60 mm"}
    wide = {"sett.given": "0.5 per cm", "frame.outer_width": "2 m", "weaving.width": "as wide as fits"}
    planned = plan(kit_of(KINDS["pegged ends"] | pegs | wide | {"paper.lay": "tiles", "paper.size": "a3"}))
    circles = set()
    for printed in sheets_of(planned):
        for part in (part for part, _ in printed.pieces if part.name.startswith("strip-")):
            for shape in part.shapes:
                if isinstance(shape, Curve) and shape.pen is Pen.HOLE:
                    assert shape.closed
                    xs = [point.x for point in shape.points()]
                    assert math.isclose(max(xs) - min(xs), 25, abs_tol=1e-6)
                    circles.add((part.name, round((max(xs) + min(xs)) / 2, 3)))
    assert len(circles) == len(planned.warp.near) + len(planned.warp.far)

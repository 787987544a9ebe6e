"""The alarm on the weaving grid: a grid drawn wrong rings, though its file is exactly as it was drawn."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest
from kits import NAILS, NOTCHED, PEGGED, font_metrics, plan_of

import layout.paper.panes as panes_module
import layout.parts.grid as grid_module
import layout.parts.grid_key as key_module
from layout.drawing.pane import OnSheet, Pane
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Text
from layout.drawing.sheet import Part
from layout.parts.grid import _Draft
from layout.parts.grid_size import Grid
from layout.plan import Plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.verify.compare import compare

BEADS: dict[str, object] = {"weft": {"beads": {"number": 26, "over": "5 cm"}}}
KITS: dict[str, dict[str, object]] = {
    "one sheet": BEADS | {"weaving.width": "12 cm", "weaving.height": "15 cm"},
    "pieces": BEADS,
    "inches": BEADS | {"sett.given": "7 epi", "weaving.width": "8 in", "weaving.height": "11 in"},
    "picks": {"weft": {"picks": {"number": 45, "over": "2 in"}}},
    "a guess": {"weft": {"wrap": {"turns": 11, "window": "2 cm"}}, "paper.size": "a3"},
    "notched, odd": BEADS | NOTCHED | {"weaving.width": "10 cm", "weaving.tie_off": "far end"},
    "as high as fits": BEADS | {"weaving.height": "as high as fits", "paper.size": "a3", "room": {}},
    "mirrored": BEADS | {"weaving.woven_from": "back", "weaving.cartoon": "mirrored"},
    "from its back": BEADS | {"weaving.woven_from": "back", "weaving.width": "12 cm", "weaving.height": "15 cm"},
    "nails": BEADS | NAILS,
    "pegged": BEADS | PEGGED | {"weaving.doubled_selvedges": 2},
    "turned": BEADS | {"weaving.width": "18 cm", "weaving.height": "10 cm"},
    "words apart": BEADS | {"paper.size": "210 x 148 mm"},
    "large": BEADS | {"weaving.width": "60 cm", "frame.outer_width": "70 cm", "weaving.start": "right"},
}
PATCH = pytest.MonkeyPatch


def alarm(plan: Plan, form: str) -> str:
    """What the proof says against the grid of `plan` as it is drawn, written and read back now."""
    wanted = Outputs(plan, font_metrics()).output(f"weaving-grid.{form}")
    found = read(wanted, write(wanted))
    assert compare(wanted.sheets, found.sheets).sound
    result = findings(plan, wanted, found)
    assert result.problems or result.deviation <= 0.001
    return "; ".join(result.sentences)


@pytest.mark.parametrize("kit", ["pieces", "turned", "words apart", "large"])
def test_which_piece_it_is_may_be_said_in_two_lines(kit: str, monkeypatch: PATCH) -> None:
    """Of a hundred pieces the last figure begins a line; a narrow column breaks it off from few. It is still read."""
    right = key_module.wrap

    def narrow(words: str, size: float, width: float, *others: Any) -> list[str]:
        heading = words.startswith("Piece ")
        return right(words, size, font_metrics().width(words, size) - 1 if heading else width, *others)

    monkeypatch.setattr(key_module, "wrap", narrow)
    assert alarm(plan_of(KITS[kit]), "pdf") == ""


@pytest.mark.parametrize("form", ["pdf", "svg"])
@pytest.mark.parametrize("kit", KITS)
def test_what_was_drawn_right_does_not_ring(kit: str, form: str) -> None:
    """Whole and in pieces, in cm and in inches, counted and guessed, the grid passes."""
    assert alarm(plan_of(KITS[kit]), form) == ""


def _grid(patch: PATCH, change: Callable[[Grid], Grid]) -> None:
    right = grid_module.grid_of
    patch.setattr(grid_module, "grid_of", lambda plan: change(right(plan)))  # type: ignore[arg-type]


def _drawn(patch: PATCH, method: str, change: Callable[[list[Any]], list[Any]]) -> None:
    right = getattr(_Draft, method)

    def changed(draft: _Draft, pane: Pane, **how: bool) -> Iterator[Shape]:
        yield from change(list(right(draft, pane, **how)))

    patch.setattr(_Draft, method, changed)


def _pen(old: Pen, new: Pen) -> Callable[[list[Curve]], list[Curve]]:
    return lambda lines: [one._replace(pen=new) if one.pen is old else one for one in lines]


def _upright(change: Callable[[float], float]) -> Callable[[list[Curve]], list[Curve]]:
    """Every upright line at another x."""

    def moved(one: Curve) -> Curve:
        (x, y), ((end, _),) = one.start, one.steps
        if x != end.x:
            return one
        return one._replace(start=Point(change(x), y), steps=(one.steps[0]._replace(end=Point(change(x), end.y)),))

    return lambda lines: [moved(one) for one in lines]


def _short(lines: list[Curve]) -> list[Curve]:
    """The third line ends a little before it should."""
    one = lines[2]
    end = one.steps[0].end
    return [*lines[:2], one._replace(steps=(one.steps[0]._replace(end=Point(end.x, end.y - 0.01)),)), *lines[3:]]


def _numbered(change: Callable[[int], int]) -> Callable[[list[Text]], list[Text]]:
    return lambda texts: [one._replace(words=str(change(int(one.words)))) for one in texts]


BUILDERS: dict[str, Callable[[PATCH], None]] = {
    "one column too many": lambda patch: _grid(patch, lambda g: replace(g, columns=g.columns + 1)),
    "one column too few": lambda patch: _grid(patch, lambda g: replace(g, columns=g.columns - 1)),
    "one row too many": lambda patch: _grid(patch, lambda g: replace(g, rows=g.rows + 1)),
    "one row too few": lambda patch: _grid(patch, lambda g: replace(g, rows=g.rows - 1)),
    "a row to every pick": lambda patch: _grid(patch, lambda g: replace(g, rows=2 * g.rows, bead=g.bead / 2)),
    "columns 0.1 % wide": lambda patch: _grid(patch, lambda g: replace(g, pitch=g.pitch * Fraction(1001, 1000))),
    "rows rounded to hundredths": lambda patch: _grid(patch, lambda g: replace(g, bead=round(g.bead, 2))),
    "columns as high as wide": lambda patch: _grid(patch, lambda g: replace(g, bead=g.pitch)),
    "columns half a pitch aside": lambda patch: _drawn(patch, "lines", _upright(lambda x: x + 2)),
    "columns 2 micrometres aside": lambda patch: _drawn(patch, "lines", _upright(lambda x: x + 0.002)),
    "a line missing": lambda patch: _drawn(patch, "lines", lambda lines: [*lines[:3], *lines[4:]]),
    "a line twice": lambda patch: _drawn(patch, "lines", lambda lines: [lines[0], *lines]),
    "a line too short": lambda patch: _drawn(patch, "lines", _short),
    "tens not stronger": lambda patch: _drawn(patch, "lines", _pen(Pen.GRID_TEN, Pen.GRID)),
    "all lines strong": lambda patch: _drawn(patch, "lines", _pen(Pen.GRID, Pen.GRID_TEN)),
    "no bold limits": lambda patch: _drawn(patch, "lines", _pen(Pen.LIMIT, Pen.GRID_TEN)),
    "no centre": lambda patch: _drawn(patch, "lines", lambda lines: lines[:-2]),
    "no numbers": lambda patch: _drawn(patch, "numbers", lambda _: []),
    "numbers one too high": lambda patch: _drawn(patch, "numbers", _numbered(lambda n: n + 1)),
    "numbers ten too high": lambda patch: _drawn(patch, "numbers", _numbered(lambda n: n + 10)),
    "a number missing": lambda patch: _drawn(patch, "numbers", lambda texts: [t for t in texts if t.words != "30"]),
    "numbers at the next line": lambda patch: _drawn(
        patch, "numbers", lambda texts: [one._replace(at=Point(one.at.x + 4, one.at.y + 4)) for one in texts]
    ),
}
ON_PAPER_ONLY = [name for name in BUILDERS if "number" in name]


@pytest.mark.parametrize("kit", ["one sheet", "pieces"])
@pytest.mark.parametrize("name", BUILDERS)
def test_a_wrong_grid_rings(name: str, kit: str, monkeypatch: PATCH) -> None:
    """Drawing and file agree, and only the kit's own numbers speak against them."""
    BUILDERS[name](monkeypatch)
    assert alarm(plan_of(KITS[kit]), "pdf")


@pytest.mark.parametrize("name", [name for name in BUILDERS if name not in ON_PAPER_ONLY])
def test_a_wrong_grid_rings_alone(name: str, monkeypatch: PATCH) -> None:
    """So it does in SVG, where words are outlines and are not read."""
    BUILDERS[name](monkeypatch)
    assert alarm(plan_of(KITS["pieces"]), "svg")


def _pieces(patch: PATCH, change: Callable[[list[Pane]], list[Pane]]) -> None:
    right = panes_module._panes
    patch.setattr(panes_module, "_panes", lambda paned, cuts: change(list(right(paned, cuts))))


PIECES: dict[str, Callable[[PATCH], None]] = {
    "a piece missing": lambda patch: _pieces(patch, lambda panes: panes[1:]),
    "a piece short of its joint": lambda patch: _pieces(
        patch, lambda panes: [replace(panes[0], top=panes[0].top - 20), *panes[1:]]
    ),
    "a piece twice, another missing": lambda patch: _pieces(patch, lambda panes: [panes[0], *panes[:-1]]),
}


@pytest.mark.parametrize("name", PIECES)
def test_wrong_pieces_ring(name: str, monkeypatch: PATCH) -> None:
    """Pieces that are each right, and yet do not show the whole grid."""
    PIECES[name](monkeypatch)
    assert "leave a part of the grid out" in alarm(plan_of(KITS["pieces"]), "pdf")


def test_a_moved_cross_rings(monkeypatch: PATCH) -> None:
    """A joint whose crosses stand elsewhere than on the neighbour makes a piece that is not true to scale."""
    right = _Draft.part

    def part(draft: _Draft, pane: Pane, on: OnSheet | None = None) -> Part:
        made = right(draft, pane, on)
        if on is None or on.number != 2:
            return made
        first = next(k for k, s in enumerate(made.shapes) if isinstance(s, Curve) and s.pen is Pen.REGISTER)
        moved = [_moved(shape) if k in (first, first + 1) else shape for k, shape in enumerate(made.shapes)]
        return replace(made, shapes=tuple(moved))

    monkeypatch.setattr(_Draft, "part", part)
    assert "not true to scale" in alarm(plan_of(KITS["pieces"]), "pdf")


def _moved(shape: Shape) -> Shape:
    assert isinstance(shape, Curve)
    return shape._replace(
        start=Point(shape.start.x + 0.01, shape.start.y),
        steps=tuple(step._replace(end=Point(step.end.x + 0.01, step.end.y)) for step in shape.steps),
    )

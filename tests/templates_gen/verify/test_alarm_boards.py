"""The alarm for boards, job sheet and trial cut: builders that are wrong in drawing and plan alike must ring too."""

from __future__ import annotations

from collections.abc import Callable
from copy import copy
from dataclasses import replace
from fractions import Fraction
from functools import cache
from typing import Any

import pytest
from kits import font_metrics, plan_of

import layout.cutting.job.boards as boards_module
import layout.cutting.job.job as job_module
import layout.cutting.job.lists as lists_module
import layout.cutting.job.operations as operations_module
import layout.cutting.job.parts_list as parts_module
import layout.cutting.job.picture as picture_module
import layout.cutting.job.safety as safety_module
import layout.cutting.parts.trial_cut as trial_module
import templates_gen.files.board_drawings as drawings_module
from layout.cutting.job.boards import Boards
from layout.cutting.job.work import Work
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape
from layout.drawing.sheet import Piece
from layout.messages.catalogue import Figure, Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Colour
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, prove_cut_file, read, write
from templates_gen.inputs.stock_file import built_in

PATCH = pytest.MonkeyPatch
STOCK = replace(
    built_in(),
    width=600.0,
    height=400.0,
    grain="x",
    speeds={"engrave": 200.0, "score": 60.0, "cut": 12.0},
    kerf_x=0.21,
    kerf_y=0.19,
)


def outputs(stock: Stock = STOCK) -> Outputs:
    """All files of the test kit, its parts cut from the stock."""
    return Outputs(plan_of(), font_metrics(), stock=stock)


@cache
def right() -> Outputs:
    """The same, as nothing has spoilt it; its drawings are kept."""
    return outputs()


def job() -> Output:
    """The job sheet as it is made now, of right parts, which are drawn once; boards and sheet are drawn again."""
    cut = copy(right().cut)
    vars(cut).pop("boards", None)
    return Outputs(plan_of(), font_metrics(), ["job"], STOCK, cut=cut).output("job.pdf")


@cache
def without_fault(file: str) -> bool:
    """Whether the second computation finds nothing in a file that is right."""
    return wrong(right().output(file)) == ""


def file_of(beginning: str, ending: str) -> str:
    """The full name of a file."""
    return next(file for file in names() if file.startswith(beginning) and file.endswith(ending))


@cache
def names() -> tuple[str, ...]:
    """Every file of the test kit."""
    return right().files


FILES = [("board", ".svg"), ("board", ".dxf"), ("job", ".pdf"), ("trial-cut", ".svg"), ("trial-cut", ".dxf"),
         ("trial-cut", ".pdf")]  # fmt: skip


@pytest.mark.parametrize("name", FILES)
def test_what_was_not_spoilt_does_not_ring(name: tuple[str, str]) -> None:
    """Every file is read back and passes both proofs."""
    output = right().output(file_of(*name))
    result = findings(plan_of(), output, read(output, write(output)))
    assert (result.problems, result.sound) == ((), True)


def wrong(output: Output) -> str:
    """What the second computation alone says of a drawing that agrees with its own plan."""
    return "; ".join(prove_cut_file(plan_of(), output, output.sheets).sentences)


def _changed(module: Any, name: str, change: Callable[[Any], Any]) -> Callable[[PATCH], None]:
    """Changes what a function gives, or a value of its module."""

    def apply(patch: PATCH) -> None:
        old = getattr(module, name)
        patch.setattr(module, name, (lambda *given: change(old(*given))) if callable(old) else change(old))

    return apply


def _boards(**changes: Any) -> Callable[[PATCH], None]:
    return _changed(drawings_module, "boards_of", lambda boards: replace(boards, **changes))


def _overlapping(boards: Boards) -> Boards:
    """The second part pushed onto the first."""
    (first, second, *others), *rest = boards.sheets
    shifted = Placing(second.placing.degrees, first.placing.dx, first.placing.dy)
    return replace(boards, sheets=((first, Piece(second.part, shifted), *others), *rest))


def _without_one(boards: Boards) -> Boards:
    (_, *others), *rest = boards.sheets
    (_, *kits), *more = boards.kits
    return replace(boards, sheets=(tuple(others), *rest), kits=(tuple(kits), *more))


def _longer(share: float) -> Callable[[Work], Work]:
    return lambda work: replace(work, cut=work.cut * (1 + share))


def _swapped(module: Any, name: str, other: Callable[[Any], Any]) -> Callable[[PATCH], None]:
    """Puts `other(what stood there)` in the place of a function."""
    return lambda patch: patch.setattr(module, name, other(getattr(module, name)))


def _squeezed(patch: PATCH) -> None:
    """The reference square drawn narrower than it is."""
    honest = picture_module._square
    patch.setattr(picture_module, "_square", lambda box, *rest: honest((box[0], box[1], box[2] - 2, box[3]), *rest))


def _exchanged(title: str) -> str:
    """The title of the part for the other end."""
    return title.replace("near", "?").replace("far", "near").replace("?", "far")


def replaced(shape: Any, **fields: Any) -> Any:
    """A shape with other fields."""
    return shape._replace(**fields)


JOBS: dict[str, tuple[Callable[[PATCH], None], str]] = {
    "a length 1 % too long": (_changed(drawings_module, "work_of", _longer(0.01)), "cut is not said to be"),
    "an engraved area too large": (
        _changed(drawings_module, "work_of", lambda work: replace(work, engrave=work.engrave + 12)),
        "engrave is not said to be",
    ),
    "a part that is on no board": (_changed(drawings_module, "boards_of", _without_one), "is listed 0 times"),
    "parts that overlap": (_changed(drawings_module, "boards_of", _overlapping), "overlap"),
    "half of the time": (_changed(job_module, "seconds", lambda time: time / 2), "min, an estimate"),
    "a kerf left to the machine": (
        _changed(safety_module, "kerf_words", lambda words: words.replace("is drawn in", "is not drawn in")),
        "is drawn in",
    ),
    "another kerf": (_changed(safety_module, "kerf_words", lambda words: words.replace("0.21", "0.12")), "0.21 mm"),
    "a missing rule": (_changed(safety_module, "CARES", lambda rules: rules[:1] + rules[2:]), "extinguisher"),
    "a step left out": (_changed(safety_module, "STEPS", lambda rules: rules[1:]), "Trained people only"),
    "steps in another order": (_changed(safety_module, "STEPS", lambda rules: rules[::-1]), "step 3"),
    "a grain across": (
        _changed(lists_module, "grain_words", lambda said: said._replace(values={"axis": "y"})),
        "The grain runs along x",
    ),
    "operations out of order": (
        _changed(operations_module, "OPERATION_WORDS", lambda each: dict(list(each.items())[::-1])),
        "the operation engrave does not stand in its place",
    ),
    "another colour": (
        _changed(operations_module, "called", lambda _: Message(Colour.RED)),
        "engrave is not said to be #c39a6b",
    ),
    "the sign of another operation": (
        _swapped(operations_module, "swatch", lambda right: lambda _, at: right("cut", at)),
        "engrave has not its own sign",
    ),
    "two blanks, not three": (
        _changed(operations_module, "_blanks", lambda each: [each[0], each[1], (300.0, 300.1)]),
        "engrave has not its three blanks",
    ),
    "a part of another size": (
        _changed(parts_module, "_row_words", lambda row: (row[0], row[1].replace("480.2", "490.2"), row[2])),
        "other parts than its list",
    ),
    "another number of parts": (
        _changed(parts_module, "_row_words", lambda row: (row[0], row[1], row[2].replace("1", "2"))),
        "other parts than its list",
    ),
    "titles exchanged": (
        _changed(parts_module, "_row_words", lambda row: (_exchanged(row[0]), *row[1:])),
        "other parts than its list",
    ),
    "rings with other numbers": (
        _swapped(picture_module, "ring", lambda right: lambda at, words, *rest: right(at, str(7 - int(words)), *rest)),
        "other parts than its list",
    ),
    "a part missing in the picture": (
        _changed(picture_module, "_outlines", lambda paths: [replaced(path, pen=Pen.OUTLINE) for path in paths]),
        "picture of a board",
    ),
    "parts that are not filled": (
        _changed(picture_module, "_filled", lambda region: replaced(region, pen=Pen.HELD)),
        "a part that is not filled",
    ),
    "a square of 40 mm": (_squeezed, "not one square of 50 mm"),
    "the origin at the wrong corner": (
        _swapped(picture_module, "_origin", lambda right: lambda at, most: right(Point(at.x + 20, at.y), most)),
        "no dot on the corner",
    ),
    "another board's file": (_changed(drawings_module, "settings_in_name", lambda _: "no-kerf"), "kerf-0.21x0.19"),
    "another free piece": (_changed(lists_module, "say_number", lambda _: Figure("50")), "Largest free piece"),
    "a free piece that is too wide": (
        _changed(boards_module, "largest_free", lambda box: (*box[:2], box[2] + 1.0, box[3])),
        "Largest free piece",
    ),
}  # fmt: skip


def test_the_rules_name_every_danger() -> None:
    """The proof asks for the rules word for word; what a rule must name stands here."""
    rules = " ".join(map(ENGLISH.say, [*safety_module.STEPS, *safety_module.CARES]))
    dangers = (
        "own rules", "law", "Trained", "stay by it", "ever left alone", "extinguisher", "extraction", "Interlocks",
        "glasses", "beam", "PVC or vinyl", "hydrogen chloride", "no plastic", "children",
    )  # fmt: skip
    assert [danger for danger in dangers if danger not in rules] == []


@pytest.mark.parametrize("name", JOBS)
def test_a_wrong_job_sheet_rings(name: str, monkeypatch: PATCH) -> None:
    """Whatever the job sheet says wrongly of kit and stock is said, though its file agrees with its drawing."""
    spoil, said = JOBS[name]
    assert without_fault("job.pdf")
    spoil(monkeypatch)
    assert said in wrong(job())


def _wider(rungs: list[Fraction]) -> list[Fraction]:
    return [rungs[0], rungs[1] + Fraction(1, 100), *rungs[2:]]


def _without_kerf(patch: PATCH) -> None:
    """The plate drawn at its edges."""
    patch.setattr(trial_module, "drawn", lambda outer, *_: (outer,))


TRIALS: dict[str, tuple[Callable[[PATCH], None], str]] = {
    "a hole of another width": (_changed(trial_module, "HOLE", lambda _: (12.01, 20.0)), "hole of plug 0"),
    "a hole of another height": (_changed(trial_module, "HOLE", lambda _: (12.0, 20.01)), "height of a plug"),
    "a rung too wide": (_changed(trial_module, "kerfs", _wider), "do not rise evenly"),
    "a slot too wide": (_changed(trial_module, "eases", _wider), "do not rise evenly"),
    "slots that forget the kerf": (_without_kerf, "is not engraved"),
    "a window too few": (
        lambda patch: patch.setattr(
            trial_module, "STEPS", 6
        ),
        "windows where",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", TRIALS)
@pytest.mark.parametrize("ending", [".svg", ".pdf"])
def test_a_wrong_trial_cut_rings(name: str, ending: str, monkeypatch: PATCH) -> None:
    """A trial whose sizes are not what they are taken for is said."""
    spoil, said = TRIALS[name]
    file = file_of("trial-cut", ending)
    assert without_fault(file)
    spoil(monkeypatch)
    made = Outputs(plan_of(), font_metrics(), ["trial-cut"], STOCK)
    again = next(each for each in made.files if each.startswith("trial-cut") and each.endswith(ending))
    assert said in wrong(made.output(again))


def test_a_part_turned_on_its_board_is_the_same_part() -> None:
    """Without a grain, on a sheet that asks for it, parts lie turned and are proven as they lie."""
    stock = replace(STOCK, grain="none", kerf_x=0.2, kerf_y=0.2, width=520.0, height=120.0)
    made = outputs(stock)
    boards = [made.output(file) for file in made.files if file.startswith("board") and file.endswith("svg")]
    assert all(wrong(board) == "" for board in boards)


def _redrawn(output: Output, change: Callable[[Shape], Shape | None]) -> Output:
    sheet = output.sheets[0]
    shapes = tuple(new for shape in sheet.shapes if (new := change(shape)) is not None)
    return replace(output, sheets=(replace(sheet, shapes=shapes), *output.sheets[1:]))


def _wall_aside(shape: Shape) -> Shape:
    if isinstance(shape, Curve) and shape.pen is Pen.THROUGH and len(shape.steps) > 50:
        step = shape.steps[10]
        moved = step._replace(end=step.end._replace(x=step.end.x + 0.01, y=step.end.y + 0.01))
        return shape._replace(steps=(*shape.steps[:10], moved, *shape.steps[11:]))
    return shape


EDGES: dict[str, Callable[[list[Shape]], list[Shape]]] = {
    "no outline": lambda shapes: [shape for shape in shapes if not _is_edge(shape)],
    "an outline that is cut": lambda shapes: [_with_pen(s, Pen.THROUGH) if _is_edge(s) else s for s in shapes],
    "an outline twice": lambda shapes: [*filter(_is_edge, shapes), *shapes],
    "another sheet's outline": lambda shapes: [_longer_edge(s) if _is_edge(s) else s for s in shapes],
    "an open outline": lambda shapes: [s._replace(closed=False) if _is_edge(s) else s for s in shapes],
}  # fmt: skip


def _is_edge(shape: Shape) -> bool:
    return isinstance(shape, Curve) and shape.start == (0.0, 0.0)


def _with_pen(shape: Shape, pen: Pen) -> Shape:
    return shape._replace(pen=pen)


def _longer_edge(shape: Shape) -> Shape:
    assert isinstance(shape, Curve)
    first, corner, last = shape.steps
    return shape._replace(steps=(first, corner._replace(end=Point(STOCK.width, STOCK.height + 0.01)), last))


@pytest.mark.parametrize("name", EDGES)
def test_the_outline_of_the_sheet_stands_on_a_board_once(name: str) -> None:
    """For reference alone, and 10 micrometres are too much."""
    output = outputs().output(file_of("board", ".svg"))
    sheet = replace(output.sheets[0], shapes=tuple(EDGES[name](list(output.sheets[0].shapes))))
    assert sheet != output.sheets[0]
    assert "outline of the sheet" in wrong(replace(output, sheets=(sheet,)))


SPOILT: dict[str, Callable[[Shape], Shape | None]] = {
    "a slot 10 micrometres aside": _wall_aside,
    "an outline that is open": lambda s: s._replace(closed=False) if isinstance(s, Curve) and s.closed else s,
    "a scored mark missing": lambda s: None if isinstance(s, Curve) and s.pen is Pen.SCORE else s,
    "words not engraved": lambda s: None if s.pen is Pen.ENGRAVE else s,
}  # fmt: skip


@pytest.mark.parametrize("name", SPOILT)
def test_a_spoilt_board_rings(name: str) -> None:
    """A board's file that differs from its drawing in one line is said."""
    output = right().output(file_of("board", ".svg"))
    spoilt = _redrawn(output, SPOILT[name])
    result = findings(plan_of(), output, read(output, write(output))._replace(sheets=spoilt.sheets))
    assert result.problems

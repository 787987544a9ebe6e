"""Boards of a run: all copies of all kits together, each proven from its own crosses, counted from the range alone."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest
from kits import font_metrics, kit_of
from shapely import box as rectangle
from shapely.geometry.base import BaseGeometry

from layout.box.shop import Shop
from layout.cutting.job.boards import BoardPart, Boards, boards_of_run, box_of
from layout.cutting.stock.drawn_scale import drawn_against
from layout.drawing.correction import TRUE, Scale
from layout.drawing.shapes import Placing
from layout.drawing.sheet import Part, Piece
from layout.messages.english import ENGLISH
from templates_gen.files import board_drawings, run_boards
from templates_gen.files.board_drawings import BoardDrawings
from templates_gen.files.kept import planned, with_stock
from templates_gen.files.proof import read, write
from templates_gen.files.run_about import SoldKit
from templates_gen.files.run_boards import RunBoards
from templates_gen.inputs.stock_file import built_in
from templates_gen.verify.whole_boards import boards_missing, times_in

STOCK = replace(built_in(), width=600.0, height=400.0, grain="x")
METRICS = font_metrics()
NOTCHED = {
    "name": "Heron frame, notched",
    "frame.ends": "notched ends",
    "frame.bar_diameter": None,
    "frame.end_width": "30 mm",
    "frame.thickness": "9 mm",
    "frame.notch_width": "1.5 mm",
    "frame.notch_depth": "6 mm",
    "box": {"holds": ["shed-stick"], "once": ["wrap-gauge-cut"]},
}


def sold_of(name: str, copies: int, holds: list[str], changes: dict[str, object] | None = None) -> SoldKit:
    """So many boxes of a kit that holds these."""
    kit = kit_of({"name": name, "box": {"holds": holds}, **(changes or {})})
    return SoldKit(planned(kit), copies, Shop())


def of_two() -> tuple[SoldKit, ...]:
    """Two kits that differ, the second less often."""
    holds = ["shed-stick", "wrap-gauge-cut", "spacing-guide-cut"]
    return sold_of("Heron frame, small", 10, holds, {"weaving.width": "12 cm"}), sold_of("Heron frame", 4, holds)


def boards_for(*sold: SoldKit) -> RunBoards:
    """The boards of a run of these."""
    return RunBoards("Heron frames", sold, STOCK, METRICS)


@cache
def right() -> RunBoards:
    """Those of the two."""
    return boards_for(*of_two())


def wrong(boards: RunBoards, file: str) -> str:
    """What a file's own proof says once it was written and read back."""
    output = boards.output(file)
    return "; ".join(boards.findings(output, read(output, write(output))).sentences)


def test_every_file_is_read_back_and_proven() -> None:
    """Boards in both forms, and the job sheet with the name of the kit beside each part."""
    boards = right()
    assert boards.names[-1] == "job.pdf"
    for name in boards.names:
        assert wrong(boards, name) == ""


def test_boards_of_a_cutter_that_is_off_are_drawn_against_its_scale(monkeypatch: pytest.MonkeyPatch) -> None:
    """Board and job sheet pass; drawn against another scale, or none, each board rings."""
    few = boards_for(sold_of("Heron frame", 2, ["wrap-gauge-cut", "spacing-guide-cut"]))
    off = replace(few, stock=replace(STOCK, scale=Scale(1.0021, 0.9987, -0.0004)))
    assert all("-corrected." in name for name in off.board_names)
    for name in (off.names[0], off.names[-1]):
        assert wrong(off, name) == ""
    for other in (TRUE, Scale(0.9987, 1.0021, -0.0004), Scale(1.0021, 0.9987, 0.0004)):
        monkeypatch.setattr(board_drawings, "drawn_against", lambda sheet, _, other=other: drawn_against(sheet, other))
        del off.drawn.drawn
        assert wrong(off, off.board_names[0])


def test_all_copies_of_all_kits_lie_together() -> None:
    """As often as the boxes hold them, counted by hand; on fewer boards than one for each box, none over another."""
    drawn = right().drawn
    counts: Counter[tuple[int, str]] = Counter()
    for pieces, kits, times in zip(drawn.boards.sheets, drawn.boards.kits, drawn.boards.times, strict=True):
        for piece, kit in zip(pieces, kits, strict=False):
            counts[kit, piece.part.name] += times
        taken = [rectangle(*box_of(piece)) for piece in pieces[:-1]]
        assert _apart(taken) >= 3.0 - 1e-6
    parts = ("shed-stick", "wrap-gauge-cut", "spacing-guide-cut")
    assert counts == {(kit, part): (10, 4)[kit] for kit in (0, 1) for part in parts}
    assert right().count == drawn.boards.count == sum(drawn.boards.times) < 14
    assert drawn.boards.least <= right().count
    assert any({0, 1} <= set(kits) for kits in drawn.boards.kits)


def _apart(taken: list[BaseGeometry]) -> float:
    return min(one.distance(other) for k, one in enumerate(taken) for other in taken[:k])


def test_equal_boards_are_one_file_that_is_cut_several_times() -> None:
    """Its name says how often, its job sheet too, and no part of it is one of many."""
    boards = boards_for(sold_of("Heron frame", 22, ["shed-stick"]))
    assert boards.count == 2
    assert boards.board_names == tuple(f"board-1of1-2x-600x400mm-kerf-0.20.{form}" for form in ("svg", "dxf"))
    assert [wrong(boards, name) for name in boards.names] == ["", "", ""]
    words = [shape.words for shape in boards.output("job.pdf").sheets[0].shapes if hasattr(shape, "words")]
    assert "Cut this board 2 times. Amounts and time are those of one." in words
    assert "x 11" in words
    assert not [each for each in words if each.endswith("of 22")]


def test_bars_of_the_frame_are_cut_for_each_box_in_layers() -> None:
    """A bar of 9 mm takes three layers of 3 mm; what is there once for the run is cut once."""
    kit = kit_of(NOTCHED)
    tall = replace(STOCK, height=500.0)
    boards = RunBoards("Heron frames", (SoldKit(planned(kit), 5, Shop()),), tall, METRICS)
    counts: Counter[str] = Counter()
    for pieces, times in zip(boards.drawn.boards.sheets, boards.drawn.boards.times, strict=True):
        counts.update({name: times * number for name, number in Counter(p.part.name for p in pieces[:-1]).items()})
    assert counts == {"shed-stick": 5, "end-bar-near": 15, "end-bar-far": 15, "wrap-gauge-cut": 1}
    assert [wrong(boards, name) for name in boards.names] == [""] * len(boards.names)
    without = kit_of({**NOTCHED, "box": {"holds": ["shed-stick"], "frame": False}})
    bare = RunBoards("Heron frames", (SoldKit(planned(without), 5, Shop()),), tall, METRICS)
    assert {piece.part.name for pieces in bare.drawn.boards.sheets for piece in pieces[:-1]} == {"shed-stick"}


def test_what_the_stock_refuses_is_said_with_the_name_of_its_kit() -> None:
    """And is on no board; where nothing is left there is no board."""
    small = replace(STOCK, width=300.0)
    sold = sold_of("Heron frame, small", 2, ["wrap-gauge-cut", "shed-stick"]), sold_of("Heron frame", 1, ["shed-stick"])
    known = tuple(replace(each, plan=with_stock(each.plan, small, METRICS)) for each in sold)  # as a run knows it
    for kits in (sold, known):
        boards = RunBoards("Heron frames", kits, small, METRICS)
        assert [wrong(boards, name) for name in boards.names] == [""] * 3
        assert [each.partition(":")[0] for each in boards.drawn.refused] == ["Heron frame, small", "Heron frame"]
    assert RunBoards("Heron frames", sold[1:], small, METRICS).names == ()


def _swapped(boards: Boards) -> Boards:
    """A board cut once more than it is needed."""
    return replace(boards, times=(boards.times[0] + 1, *boards.times[1:]))


def _without_one(boards: Boards) -> Boards:
    (_, *pieces), *others = boards.sheets
    (_, *kits), *more = boards.kits
    return replace(boards, sheets=(tuple(pieces), *others), kits=(tuple(kits), *more))


def _another_kit(boards: Boards) -> Boards:
    """The first part that differs by kit is taken for one of the other."""
    place = next(k for k, piece in enumerate(boards.sheets[0]) if piece.part.name != "wrap-gauge-cut")
    kits = tuple(1 - kit if k == place else kit for k, kit in enumerate(boards.kits[0]))
    return replace(boards, kits=(kits, *boards.kits[1:]))


def _onto_another(boards: Boards) -> Boards:
    """Of two parts side by side, one 1.5 mm closer to the other than a cutter may have it."""
    first, *rest = boards.sheets
    boxes = [box_of(piece) for piece in first[:-1]]
    place, way = next(
        (k, way)
        for k, one in enumerate(boxes)
        for other in boxes
        for way in (0, 1)
        if abs(one[way] - other[way + 2] - 3.0) < 0.01
        and one[1 - way] < other[3 - way]
        and other[1 - way] < one[3 - way]
    )
    part, placing = first[place]
    dx, dy = (-1.5, 0.0) if way == 0 else (0.0, -1.5)
    moved = Piece(part, Placing(placing.degrees, placing.dx + dx, placing.dy + dy))
    return replace(boards, sheets=((*first[:place], moved, *first[place + 1 :]), *rest))


def _over_the_edge(boards: Boards) -> Boards:
    (first, *others), *rest = boards.sheets
    moved = Placing(first.placing.degrees, first.placing.dx - 60.0, first.placing.dy)
    return replace(boards, sheets=((Piece(first.part, moved), *others), *rest))


def _aside(boards: Boards) -> Boards:
    """One line of one copy 10 micrometres aside of its crosses."""
    (first, *others), *rest = boards.sheets
    shapes = list(first.part.shapes)
    place = next(k for k, shape in enumerate(shapes) if shape.pen.name == "THROUGH")
    shapes[place] = Placing(0, 0.01, 0).shapes([shapes[place]])[0]
    left, low, right_, high = first.part.box
    part = replace(first.part, shapes=tuple(shapes), box=(left - 0.1, low - 0.1, right_ + 0.1, high + 0.1))
    return replace(boards, sheets=((Piece(part, first.placing), *others), *rest))


ALARMS: dict[str, tuple[Callable[[Boards], Boards], str]] = {
    "a board once too often": (_swapped, "is cut"),
    "a copy missing": (_without_one, "is cut"),
    "a copy of another kit": (_another_kit, 'of "Heron frame'),
    "parts on each other": (_onto_another, "too close"),
    "a part over the edge": (_over_the_edge, "over the edge"),
    "a copy aside": (_aside, 'of "Heron frame'),
}


@pytest.mark.parametrize("name", ALARMS)
def test_a_wrong_board_rings(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Though its file is what was drawn."""
    spoil, said = ALARMS[name]
    honest = boards_of_run
    monkeypatch.setattr("templates_gen.files.board_drawings.boards_of_run", lambda *given: spoil(honest(*given)))
    boards = boards_for(*of_two())
    assert said in wrong(boards, boards.board_names[0])


@pytest.mark.parametrize("name", ["a board once too often", "a copy missing", "a copy of another kit"])
def test_a_wrong_job_sheet_of_a_run_rings(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """It counts the copies of each kit too."""
    honest = boards_of_run
    spoil = ALARMS[name][0]
    monkeypatch.setattr("templates_gen.files.board_drawings.boards_of_run", lambda *given: spoil(honest(*given)))
    assert "is listed" in wrong(boards_for(*of_two()), "job.pdf")


def test_a_name_that_says_another_number_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """A board that is cut twice and named as cut three times: copies and job sheet are wrong then."""
    honest = BoardDrawings.stem
    monkeypatch.setattr(BoardDrawings, "stem", lambda self, number: honest(self, number).replace("2x-", "3x-", 1))
    boards = boards_for(sold_of("Heron frame", 22, ["shed-stick"]))
    assert "is cut 33 times, where 22 were wanted" in wrong(boards, boards.board_names[0])
    assert wrong(boards, "job.pdf") != ""


def test_a_kit_that_is_lost_rings(monkeypatch: pytest.MonkeyPatch) -> None:
    """What the run leaves out is missed, since the range asks for it."""
    honest = run_boards.each_cut
    monkeypatch.setattr(run_boards, "each_cut", lambda plan: honest(plan)[1:])
    boards = boards_for(*of_two())
    assert "is cut 0 times" in wrong(boards, boards.board_names[0])


def plain(name: str, width: float, height: float) -> Part:
    """A part of that size."""
    return Part(name, name, (), (), (0.0, 0.0, width, height))


def test_many_parts_are_placed_in_batches() -> None:
    """Five hundred boxes of four parts: every copy once, and near to what area alone asks for."""
    sizes = (380.0, 30.0), (158.0, 40.0), (178.0, 22.0), (170.0, 28.0)
    parts = [BoardPart(plain(f"p{k}", *size), 0, 1, 500) for k, size in enumerate(sizes)]
    boards = boards_of_run(parts, (0,), STOCK, METRICS, ENGLISH)
    counts: Counter[str] = Counter()
    for pieces, times in zip(boards.sheets, boards.times, strict=True):
        for piece in pieces[:-1]:
            counts[piece.part.name] += times
    assert counts == {f"p{k}": 500 for k in range(4)}
    assert boards.count <= 1.15 * boards.least
    assert len(boards.sheets) < 20


def test_a_board_that_a_run_lacks_is_missed() -> None:
    """In each form, by how many boards the others say there are; how often one is cut stands in its name."""
    names = list(right().board_names)
    assert list(boards_missing(names, ("svg", "dxf"))) == []
    gone = names[1]
    number, _, count = gone.partition("-")[2].partition("-")[0].partition("of")
    assert list(boards_missing([name for name in names if name != gone], ("svg", "dxf"))) == [
        f"board-{number}of{count} (dxf)"
    ]
    assert times_in("board-2of3-12x-600x400mm-kerf-0.20.svg") == 12
    assert times_in("board-2of3-600x400mm-no-kerf.dxf") == 1
    assert times_in("comb-28x171mm-kerf-0.20.svg") == 0


def test_sticks_as_long_as_the_board_lie_at_its_edge() -> None:
    """With no room for a margin; the job sheet shows them so."""
    long = sold_of("Heron frame, wide", 30, ["shed-stick"], {"frame.outer_width": "512 mm"})
    boards = boards_for(long)
    assert min(box_of(piece)[0] for piece in boards.drawn.boards.sheets[0][:-1]) == pytest.approx(0.0, abs=1e-6)
    assert [wrong(boards, name) for name in boards.names] == [""] * len(boards.names)

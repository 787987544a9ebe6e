from __future__ import annotations

import json
import re
from dataclasses import replace
from io import StringIO
from pathlib import Path

import ezdxf
import pytest
from cases import one_in
from click.testing import CliRunner
from ezdxf.bbox import extents
from ezdxf.entities import DXFEntity
from kits import font_metrics, plan_of

from layout.cutting.stock.stock import Stock
from templates_gen.files.board_drawings import BoardDrawings
from templates_gen.files.board_records import JOB_FILE
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs.stock_file import built_in, write_starter
from templates_gen.screen.cli import main

FAST = replace(
    built_in(),
    width=600.0,
    height=400.0,
    speeds={"engrave": 200.0, "score": 60.0, "cut": 12.0},
    prices={"sheet": 4.5, "minute": 0.8},
)
SMALL = replace(FAST, grain="none", width=500.0, height=60.0)


def boards(stock: Stock = FAST, changes: dict[str, object] | None = None) -> Outputs:
    """The files of its boards and its job sheet alone."""
    return Outputs(plan_of(changes), font_metrics(), ("board", "job"), stock)


def drawn(made: Outputs) -> BoardDrawings:
    """What is drawn for them."""
    assert made.boards is not None
    return made.boards


def test_one_sheet_is_one_file_of_each_kind_and_a_job_sheet() -> None:
    """The name tells the number, the sheet's size and the kerf; the job sheet lies beside it."""
    stem = "board-1of1-600x400mm-kerf-0.20"
    assert boards().files == (f"{stem}.svg", f"{stem}.dxf", "job.pdf")


def test_several_sheets_are_numbered() -> None:
    """A small stock needs several; each is a file, all are on the job sheet, and all are proven."""
    made = boards(SMALL)
    count = len(drawn(made).boards.sheets)
    assert count > 1
    assert len(made.files) == 2 * count + 1
    assert made.files[0].startswith(f"board-1of{count}-500x60mm-")
    for file in made.files:
        output = made.output(file)
        result = findings(plan_of(), output, read(output, write(output)))
        assert (result.problems, result.sound) == ((), True)


@pytest.mark.parametrize(
    "size", one_in(3, ["common", "a4", "letter", "210 x 148 mm", "a3", "11x17", "600 x 3000 mm", "148 x 210 mm"])
)
def test_the_job_sheet_fits_every_paper(size: str) -> None:
    """Picture and lists of a board share a sheet where they fit, and take several where they do not."""
    made = boards(SMALL, {"paper.size": size})
    output = made.output(JOB_FILE)
    result = findings(plan_of({"paper.size": size}), output, read(output, write(output)))
    assert (result.problems, result.sound) == ((), True)


def test_long_lists_go_on_on_further_sheets() -> None:
    """What the stock cannot give is said in lines that stand as high as those of another sheet: none are mixed up."""
    for width, grain in ((420.0, "none"), (210.0, "x")):
        made = boards(replace(FAST, grain=grain, width=width, height=297.0), {"paper.size": "148 x 210 mm"})
        output = made.output(JOB_FILE)
        assert len(output.sheets) > len(drawn(made).boards.sheets)
        result = findings(made.plan, output, read(output, write(output)))
        assert (result.sentences, result.sound) == ((), True)


def test_a_part_that_was_asked_for_alone_comes_without_boards() -> None:
    """--only makes that part's files and nothing else."""
    only = Outputs(plan_of(), font_metrics(), ("comb",), FAST)
    assert only.boards is None
    assert all(file.startswith("comb") for file in only.files)


def test_the_trial_cut_is_on_no_board() -> None:
    """It is cut before anything else."""
    assert "trial-cut" not in {piece.part.name for pieces in drawn(boards()).boards.sheets for piece in pieces}


def test_what_the_stock_cannot_give_is_told_on_the_job_sheet() -> None:
    """Nothing is dropped silently: the stick that is longer than the sheet is named with what it needs."""
    made = boards(replace(FAST, width=400.0, height=400.0))
    words = [shape.words for sheet in made.output(JOB_FILE).sheets for shape in sheet.shapes if hasattr(shape, "words")]
    assert any(each.startswith("Not here: shed-stick is not made: sheet.width: needs") for each in words)


def test_a_cutter_s_program_reads_a_board() -> None:
    """ezdxf finds nothing to mend, millimetres, the four layers, and everything within the outline of the sheet."""
    made = boards()
    output = made.output(made.files[1])
    document = ezdxf.read(StringIO(write(output).decode()))
    assert not document.audit().has_errors
    assert document.units == ezdxf.units.MM
    layers = {entity.dxf.layer for entity in document.modelspace()}
    assert layers == {"engrave", "score", "cut", "reference"}
    edges = [path for path in document.modelspace().query('LWPOLYLINE[layer=="reference"]') if _wide(path) > 500]
    assert [sorted(path.vertices()) for path in edges] == [[(0, 0), (0, 400), (600, 0), (600, 400)]]
    box = extents(entity for entity in document.modelspace() if entity not in edges)
    assert box.extmin.x > 0
    assert box.extmin.y > 0
    assert box.extmax.x < 600
    assert box.extmax.y < 400


def _wide(entity: DXFEntity) -> float:
    return float(extents([entity]).size.x)


@pytest.mark.parametrize("file", [0, 1, 2])
def test_no_file_says_a_price(file: int) -> None:
    """Speeds are carried, since the time on the job sheet hangs on them; money is not, nor on any page."""
    made = boards()
    output = made.output(made.files[file])
    carried = json.loads(output.about.inputs)["stock"]
    assert carried["prices"] == {}
    assert carried["speeds"] == FAST.speeds
    assert b"4.5" not in output.about.inputs.encode()


def test_sheets_free_piece_time_and_price_are_said_on_the_screen(tmp_path: Path) -> None:
    """One sheet at 4.50 and the minutes at 0.80; without prices nothing is said of money."""
    (note,) = boards().notes
    found = re.fullmatch(
        r"Boards: 1 sheet of 600 x 400 mm, by area at least 1\. The largest free piece is (\d+ x \d+) mm, on board 1\. "
        r"Time: about ([\d.]+) min, an estimate; moves between lines and slow corners come on top\. "
        r"About ([\d.]+) in the money of the stock file\.",
        note,
    )
    assert found
    assert float(found[3]) == pytest.approx(4.5 + 0.8 * float(found[2]), abs=0.05)
    assert "money" not in boards(replace(FAST, prices={})).notes[0]
    assert "the cutter's time left out" in boards(replace(FAST, speeds={})).notes[0]


def test_make_and_check(tmp_path: Path) -> None:
    """The files are made with the rest of the kit, and pass when they are read back later."""
    stock, out = tmp_path / "stock.toml", tmp_path / "out"
    write_starter(stock)
    stock.write_text(stock.read_text().replace("# cut = 12", "cut = 12").replace("# minute = 0.80", "minute = 0.80"))
    run = CliRunner().invoke(main, ["make", "--stock", str(stock), "-o", str(out)])
    assert run.exit_code == 0
    made = [path for path in out.iterdir() if path.name.startswith(("board", "job"))]
    assert len(made) == 3
    assert CliRunner().invoke(main, ["check", *map(str, made)]).exit_code == 0
    assert CliRunner().invoke(main, ["check", "--stock", str(stock), str(out / JOB_FILE)]).exit_code == 0
    stock.write_text(stock.read_text().replace('thickness = "3 mm"', 'thickness = "4 mm"'))
    other = CliRunner().invoke(main, ["check", "--stock", str(stock), str(out / JOB_FILE)])
    assert other.exit_code == 1

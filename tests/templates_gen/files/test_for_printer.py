"""Files for a printer: what is printed is corrected and says so, what is cut is not, and a check needs no profile."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from commands import run
from kits import font_metrics, kit_of
from printers import SLANTED, USUAL, printer_of

import templates_gen
from layout.drawing.correction import Scale, corrected
from layout.drawing.printer import Printer
from layout.drawing.shapes import Curve, Text
from layout.plan import plan
from layout.values.errors import FieldError
from templates_gen.codes.digest import digest_of
from templates_gen.files.for_printer import printer_notes, with_printer
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import printer_store
from templates_gen.readers.pdf import read as read_pdf

WHAT = ("frame-check", "strips", "comb")


@pytest.fixture(scope="module")
def folders(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """Some files of a kit for no printer, and for one."""
    plain, own = tmp_path_factory.mktemp("plain"), tmp_path_factory.mktemp("own")
    templates_gen.make(kit_of(), plain, WHAT)
    templates_gen.make(kit_of(), own, WHAT, printer=SLANTED)
    return plain, own


def outputs(printer: Printer | None, changes: dict[str, object] | None = None) -> Outputs:
    """The files of a kit, for a printer."""
    return Outputs(with_printer(plan(kit_of(changes)), printer), font_metrics(), stock=templates_gen.load_stock())


def test_what_is_cut_is_the_same_bytes(folders: tuple[Path, Path]) -> None:
    """A cutter is no printer: every SVG and DXF is the one without."""
    plain, own = folders
    cut = [path for path in plain.iterdir() if path.suffix in (".svg", ".dxf")]
    assert len(cut) >= 3
    assert all(path.read_bytes() == (own / path.name).read_bytes() for path in cut)


def test_every_printed_file_differs_and_names_the_printer(folders: tuple[Path, Path]) -> None:
    """At the top of its inputs, with nothing else about it."""
    plain, own = folders
    printed = [path for path in plain.iterdir() if path.suffix == ".pdf"]
    assert len(printed) >= 5
    for path in printed:
        inputs = json.loads(read_pdf((own / path.name).read_bytes()).about.inputs)
        printer = inputs.pop("printer")
        assert list(printer) == ["name", "x", "y", "skew", "within", "paper", "day"]
        assert Scale(printer["x"], printer["y"], printer["skew"]) == SLANTED.scale
        assert inputs == json.loads(read_pdf(path.read_bytes()).about.inputs)


def test_the_code_is_that_of_the_sheet_for_no_printer(folders: tuple[Path, Path]) -> None:
    """So a scan is measured by what the sheet should be."""
    plain, own = folders
    for path in plain.glob("*.pdf"):
        one, other = (read_pdf((folder / path.name).read_bytes()).about.inputs for folder in (plain, own))
        assert one != other
        assert digest_of(one) == digest_of(other)


def test_check_needs_the_files_alone(folders: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch) -> None:
    """No profile is looked up: what a file carries is enough."""
    monkeypatch.setattr(printer_store, "folder", lambda: pytest.fail("a profile was looked up"))
    checked = templates_gen.check(folders[1])
    assert checked
    assert [each.problems for each in checked if each.problems] == []
    assert max(each.deviation for each in checked) < 0.001
    (alone,) = templates_gen.check(folders[1] / "strips.pdf", kit=kit_of())
    assert alone.problems == ()


def test_a_cut_file_that_names_a_printer_is_wrong(tmp_path: Path) -> None:
    """It is corrected for none."""
    data = templates_gen.sheet(kit_of(), "strip-near.svg")
    file = tmp_path / "strip-near.svg"
    carried = json.dumps({"name": "x", "x": 1.0, "y": 1.0, "skew": 0.0, "within": {"x": 0, "y": 0, "skew": 0}})
    values = carried[:-1] + ', "paper": "a4", "day": "2026-03-01"}'
    text = data.decode().replace('\\"kit\\"', '\\"printer\\":' + values.replace('"', '\\"') + ',\\"kit\\"', 1)
    text = text.replace("&quot;", '"')
    assert text != data.decode()
    file.write_text(text, encoding="utf-8", newline="")
    (checked,) = templates_gen.check(file)
    assert checked.problems


def test_the_sheets_lie_as_they_do_for_no_printer() -> None:
    """A printer adds one sentence and moves nothing before all is moved together."""
    for name in ("frame-check.pdf", "strips.pdf", "winding.pdf"):
        found, plain = outputs(SLANTED).output(name), outputs(None).output(name)
        assert found.plain is not None
        assert found.plain.sheets == plain.sheets
        for sheet, bare in zip(found.sheets, plain.sheets, strict=True):
            moved = corrected(bare, SLANTED.scale)
            known = set(moved.shapes)
            added = [shape for shape in sheet.shapes if shape not in known]
            assert [shape for shape in sheet.shapes if shape in known] == list(moved.shapes)
            assert all(isinstance(shape, Text) for shape in added)
            said = "".join(shape.words for shape in added if isinstance(shape, Text))
            assert "Office printer" in said
            assert "0.99350" in said
            assert "1.00610" in said
            assert "0.00400" in said
            assert "0.00004." in said


def test_a_circle_keeps_its_radius_and_words_their_size() -> None:
    """They move as a whole."""
    found, plain = outputs(SLANTED).output("frame-check.pdf"), outputs(None).output("frame-check.pdf")
    pairs = list(zip(_without_sentence(found), plain.sheets[0].shapes, strict=True))
    sizes = [(one.size, two.size) for one, two in pairs if isinstance(one, Text) and isinstance(two, Text)]
    assert len(sizes) > 20
    assert all(one == two for one, two in sizes)
    circles = [(one, two) for one, two in pairs if isinstance(two, Curve) and len(two.steps) == 8 and two.closed]
    assert len(circles) >= 5
    for one, two in circles:
        assert isinstance(one, Curve)
        assert _width(one) == pytest.approx(_width(two), abs=1e-9)


def _without_sentence(found: Output) -> list[object]:
    assert found.plain is not None
    known = set(corrected(found.plain.sheets[0], SLANTED.scale).shapes)
    return [shape for shape in found.sheets[0].shapes if shape in known]


def _width(path: Curve) -> float:
    xs = [point.x for point in path.points()]
    return max(xs) - min(xs)


def test_notes_on_other_paper_and_on_a_setting() -> None:
    """On other paper a printer may be off by more; over 1 % a print setting is the likelier cause."""

    def notes(printer: Printer | None, size: str = "a4") -> str:
        return " ".join(printer_notes(with_printer(plan(kit_of({"paper.size": size})), printer)))

    assert notes(None) == notes(USUAL) == ""
    assert "was measured on a4 and these sheets are letter" in notes(USUAL, "letter")
    assert "is off by 1.10 %, and a print setting is the likelier cause" in notes(printer_of(1.011, 1, 0))
    assert "setting" not in notes(printer_of(1.01, 0.99, 0.01))


def test_over_three_per_cent_is_refused() -> None:
    """Also where it comes from no file."""
    for scale in ((1.0301, 1, 0), (1, 0.9699, 0), (1, 1, -0.0301)):
        with pytest.raises(FieldError, match="needs a printer that is off by 3 % at most"):
            templates_gen.sheet(kit_of(), "frame-check.pdf", printer=printer_of(*scale))


def test_the_command_takes_a_printer_by_its_name(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """From the store, for a kit and for a gauge; a name that is none is refused."""
    monkeypatch.setenv(printer_store.FOLDER, str(tmp_path / "printers"))
    printer_store.store(SLANTED)
    done = run("make", "-o", tmp_path / "out", "--only", "frame-check", "--printer", "office PRINTER")
    assert done.exit_code == 0, done.output
    assert "was measured on a4 and these sheets are common" in done.stdout
    assert run("check", tmp_path / "out").exit_code == 0
    gauge = run("gauge", "-o", tmp_path / "gauge", "--printer", "Office printer")
    assert gauge.exit_code == 0, gauge.output
    assert "was measured on a4 and these sheets are common" in gauge.stdout
    assert "Office printer" in read_pdf((tmp_path / "gauge" / "gauge.pdf").read_bytes()).about.inputs
    assert "Office printer" not in (tmp_path / "gauge" / "gauge.svg").read_text("utf-8")
    wrong = run("make", "-o", tmp_path / "none", "--printer", "Ofice printer")
    assert wrong.exit_code == 2
    assert wrong.stderr.startswith("--printer: needs a printer that was stored")
    assert "did you mean Office printer?" in wrong.stderr
    assert not (tmp_path / "none").exists()

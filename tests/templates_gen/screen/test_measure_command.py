"""The command `measure` on pictures of whole pages, as pdfium draws them, turned on a larger bed."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

import pypdfium2
import pytest
from commands import run
from kits import font_metrics, kit_of
from PIL import Image, ImageOps

from templates_gen.files.kept import planned
from templates_gen.files.outputs import kept_outputs
from templates_gen.files.proof import write
from templates_gen.inputs import printer_store

DPI = 200
Scans = Callable[[int], Image.Image]


@pytest.fixture(scope="module")
def scan_of(demo_folder: Path) -> Scans:
    """A sheet of the demo kit by its number, on a bed, turned by a degree."""
    pages = pypdfium2.PdfDocument((demo_folder / "kit.pdf").read_bytes())

    def scanned(number: int) -> Image.Image:
        return on_bed(pages, number)

    return scanned


def on_bed(pages: pypdfium2.PdfDocument, number: int) -> Image.Image:
    """A page as pdfium draws it; it makes it a whole number of pixels wide and high."""
    shown = pages[number - 1].render(scale=DPI / 72, grayscale=True).to_pil().convert("L")
    return ImageOps.expand(shown, 30, 255).rotate(1.2, Image.Resampling.BICUBIC, fillcolor=255)


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder of its own, with the demo kit in it, and one for printers."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv(printer_store.FOLDER, str(tmp_path / "printers"))
    run("new", "demo.toml")
    return tmp_path


def saved(picture: Image.Image, name: str) -> str:
    """The scan as a file."""
    picture.save(name, dpi=(DPI, DPI))
    return name


def values_of(*words: str) -> Any:
    """What the command says to programs."""
    done = run("measure", *words, "--json")
    assert done.exit_code == 0, done.stderr
    return json.loads(done.stdout)


def worst_of(sheet: dict[str, Any]) -> float:
    """How far the worst mark of a sheet is off, in mm."""
    return max(abs(mark["off_mm"]) for row in sheet["rows"] for mark in row["marks"])


def test_a_strip_is_measured_by_its_kit(here: Path, scan_of: Scans, demo_folder: Path) -> None:
    """Every wind of both strips, within a fiftieth of a pixel; the same from kit, folder and file."""
    scan = saved(scan_of(4), "scan.png")
    found = [values_of(scan, "--kit", str(kit)) for kit in ("demo.toml", demo_folder / "kit.pdf")]
    assert found[0] == found[1]
    (sheet,) = found[0]["sheets"]
    assert (sheet["file"], sheet["number"], sheet["total"]) == ("kit.pdf", 4, 6)
    assert [(row["part"], len(row["marks"])) for row in sheet["rows"]] == [("strip-near", 31), ("strip-far", 30)]
    assert worst_of(sheet) < 0.01
    assert sheet["scale_x"]["value"] == pytest.approx(1.0, abs=0.0005)
    assert sheet["rows"][0]["length"]["mm"] == pytest.approx(240 * sheet["scale_y"]["value"], abs=0.01)
    assert not sheet["scale_x"]["free_of_scanner"]


def test_several_sheets_on_one_bed_and_pages_in_one_file(here: Path, scan_of: Scans) -> None:
    """Two sheets side by side on the first page, a gauge on the second: three sheets, each with its marks."""
    one, two, three = (scan_of(number) for number in (4, 6, 3))
    both = Image.new("L", (one.width + two.width, one.height), 255)
    both.paste(one, (0, 0))
    both.paste(two, (one.width, 0))
    both.save("scan.tif", save_all=True, append_images=[three], dpi=(DPI, DPI))
    sheets = values_of("scan.tif", "--kit", "demo.toml")["sheets"]
    assert [(each["page"], each["number"]) for each in sheets] == [(1, 4), (1, 6), (2, 3)]
    assert [len(each["rows"]) for each in sheets] == [2, 2, 1]
    assert max(map(worst_of, sheets)) < 0.025  # the edges of a gauge have grey beside them


def test_a_sheet_of_another_kit_is_refused(here: Path, scan_of: Scans) -> None:
    """One sentence, code 2, no figures, and nothing is written."""
    text = Path("demo.toml").read_text(encoding="utf-8")
    Path("other.toml").write_text(text.replace("Willow frame, small", "Alder frame"), encoding="utf-8")
    scan = saved(scan_of(4), "scan.png")
    done = run("measure", scan, "--kit", "other.toml", "--picture", "dev.pdf", "--store", "office")
    assert (done.exit_code, done.stdout) == (2, "")
    (said,) = done.stderr.splitlines()
    assert said.startswith("scan.png: sheet 4 of 6 with the digest ")
    assert "is not of other.toml as that is now" in said
    assert not Path("dev.pdf").exists()
    assert printer_store.names() == ()


def test_a_covered_strip_is_not_reported(here: Path, scan_of: Scans) -> None:
    """With a third of its marks under a card its scale is said, not its marks."""
    scan = scan_of(4)
    scan.paste(128, (scan.width // 3, scan.height // 2, scan.width - 250, scan.height - 700))
    done = run("measure", saved(scan, "scan.png"), "--kit", "demo.toml")
    assert done.exit_code == 2
    assert "fewer than four in five" in done.stderr
    assert "come out" in done.stdout
    assert "Worst mark" not in done.stdout


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("none.png",), "none.png cannot be read: there is no such file or folder"),
        ((".",), ". cannot be read: it is a folder, not a file"),
        (("/dev/null",), "/dev/null cannot be read: "),
        (("demo.toml",), "demo.toml: this is no PNG, JPEG, TIFF or PDF file"),
        (("empty.png", "none.png"), "empty.png: no code of a sheet can be read"),
        (("empty.png", "--kit", "none.toml"), "none.toml"),
        (("empty.png", "--kit", "empty.pdf"), "empty.pdf"),
        (("empty.png", "--dpi", "0"), "--dpi: needs the dots per inch of the scan, from 150 to 4800, got '0'"),
        (("empty.png", "--known", "wide"), "--known: needs a length"),
        (("empty.png", "--scanner-scale", "1", "nan"), "--scanner-scale: needs"),
        (("empty.png", "--picture", "a.svg"), "--picture: needs a file that ends in .pdf or .png"),
    ],
)
def test_what_cannot_be_measured_is_one_sentence(words: Sequence[str], said: str, here: Path) -> None:
    """Each with code 2, and no figures."""
    Image.new("L", (800, 800), 255).save("empty.png", dpi=(DPI, DPI))
    Image.new("L", (800, 800), 255).save("empty.pdf")
    done = run("measure", *words)
    assert (done.exit_code, done.stdout) == (2, "")
    assert said in done.stderr
    scans = [word for word in words if word.endswith(".png") and not word.startswith("-")]
    assert len(done.stderr.splitlines()) <= max(1, len(scans))


def test_distances_on_the_paper_make_a_printer(here: Path, scan_of: Scans) -> None:
    """Both sides by a rule: stored, and taken by its name; the picture is drawn."""
    scan = saved(scan_of(4), "scan.png")
    known = ("--known", "190.4 mm", "--known", "left 249.2 mm")
    done = run("measure", scan, "--kit", "demo.toml", *known, "--store", "office", "--picture", "dev.png")
    assert done.exit_code == 0, done.stderr
    assert "Stored as office in " in done.stdout
    assert "Drew dev.png." in done.stdout
    assert printer_store.load("office").scale.x == pytest.approx(190.4 / 190.503, abs=0.0002)
    with Image.open("dev.png") as picture:
        assert picture.size[0] == 1240
    wrong = run("measure", scan, "--known", "180 mm", "--store", "other")
    assert (wrong.exit_code, wrong.stdout) == (2, "")
    assert "--known: needs the distance of the two at the top" in wrong.stderr
    alone = run("measure", scan, "--store", "other")
    assert alone.exit_code == 2
    assert "free of the scanner's own error" in alone.stderr
    assert "come out" in alone.stdout
    assert "--kit my-kit.toml" in alone.stdout
    assert "wind" not in alone.stdout, "without a kit there are no marks"
    assert printer_store.names() == ("office",)


def test_a_scanners_own_scale_is_taken_out(here: Path, scan_of: Scans) -> None:
    """One that makes 1.004 mm of 1 mm across and 0.997 along has shown a print that is so much smaller and larger."""
    scan = saved(scan_of(4), "scan.png")
    (alone,) = values_of(scan)["sheets"]
    (known,) = values_of(scan, "--scanner-scale", "1.004", "0.997")["sheets"]
    assert known["scale_x"]["value"] == pytest.approx(alone["scale_x"]["value"] / 1.004, abs=0.00001)
    assert known["scale_y"]["value"] == pytest.approx(alone["scale_y"]["value"] / 0.997, abs=0.00001)
    assert known["scale_x"]["free_of_scanner"]
    assert known["scale_x"]["within"] > 0.001


def test_a_long_strip_is_put_together_from_its_sheets(here: Path) -> None:
    """Its pieces on two sheets, in two scans: all winds, over the whole length."""
    kit = kit_of({"frame.outer_width": "70 cm", "weaving.width": "45 cm", "paper.lay": "tiles"})
    output = kept_outputs(planned(kit), font_metrics()).output("strip-near.pdf")
    Path("near.pdf").write_bytes(write(output))
    pages = pypdfium2.PdfDocument(Path("near.pdf").read_bytes())
    scans = [saved(on_bed(pages, number), f"{number}.png") for number in range(1, len(pages) + 1)]
    (strip,) = values_of(*scans, "--kit", "near.pdf")["joined"]
    assert (strip["part"], strip["joints_seen"]) == ("strip-near", 0)
    assert strip["length"]["nominal_mm"] == pytest.approx(8 * (len(strip["marks"]) - 1))
    assert abs(strip["length"]["mm"] / strip["length"]["nominal_mm"] - 1) < 0.001
    assert strip["length"]["within_mm"] > 0.25


def test_without_the_extra_one_sentence_says_how_to_install_it(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever of it is missing."""
    Image.new("L", (800, 800), 255).save("empty.png")
    monkeypatch.setattr("templates_gen.scan.reader.find_spec", lambda name: None if name == "zxingcpp" else name)
    done = run("measure", "empty.png")
    assert (done.exit_code, done.stdout) == (2, "")
    (said,) = done.stderr.splitlines()
    assert 'pip install "templates-gen[scan]"' in said

"""From files to grey pictures and their resolution: every kind that scanners write, and what is refused."""

from __future__ import annotations

import io
import struct
import zlib
from contextlib import suppress
from pathlib import Path

import numpy
import pytest
from PIL import Image, ImageOps

from templates_gen.files.outputs import KIT_FILE
from templates_gen.scan import limits
from templates_gen.scan.picture import Picture
from templates_gen.scan.reader import read_picture
from templates_gen.scan.resolution import of_box, of_tag
from templates_gen.scan.seen import ScanError

RAMP = numpy.add.outer(numpy.arange(40) * 3, numpy.arange(60) * 2).astype(numpy.uint8)
GREY = Image.fromarray(RAMP)


def only(path: Path, dpi: float | None = None) -> Picture:
    """The one picture of a file."""
    (picture,) = read_picture(path, dpi)
    return picture


def off(found: Picture, wanted: numpy.ndarray[tuple[int, ...], numpy.dtype[numpy.uint8]] = RAMP) -> int:
    """By how many levels two pictures differ at most."""
    assert found.grey.dtype == numpy.uint8
    assert found.grey.shape == wanted.shape
    return int(numpy.abs(found.grey.astype(int) - wanted).max())


def refused(path: Path, dpi: float | None = None) -> str:
    """Why a file is refused: one line."""
    with pytest.raises(ScanError) as caught:
        list(read_picture(path, dpi))
    assert "\n" not in str(caught.value)
    return str(caught.value)


@pytest.mark.parametrize("mode", ["L", "RGB", "RGBA", "LA", "P", "CMYK", "YCbCr"])
@pytest.mark.parametrize("kind", ["png", "tif", "jpg"])
def test_any_colours_become_the_same_grey(mode: str, kind: str, tmp_path: Path) -> None:
    """Palette, alpha, CMYK and so on, in each kind of file that holds them; JPEG to a few levels."""
    holds = {"png": {"L", "RGB", "RGBA", "LA", "P"}, "jpg": {"L", "RGB", "CMYK", "YCbCr"}}
    if mode not in holds.get(kind, {"L", "RGB", "RGBA", "LA", "P", "CMYK"}):
        return
    GREY.convert("RGB" if mode in ("CMYK", "YCbCr") else "L").convert(mode).save(tmp_path / f"a.{kind}", dpi=(300, 300))
    assert off(only(tmp_path / f"a.{kind}")) <= (6 if kind == "jpg" else 1)


def test_what_is_clear_is_paper(tmp_path: Path) -> None:
    """Black that cannot be seen is white, half seen is half grey."""
    clear = numpy.zeros((20, 30, 4), numpy.uint8)
    clear[:, 10:20, 3], clear[:, 20:, 3] = 128, 255
    Image.fromarray(clear).save(tmp_path / "a.png", dpi=(300, 300))
    assert only(tmp_path / "a.png").grey[0, ::10].tolist() == [255, 127, 0]


@pytest.mark.parametrize("kind", ["png", "tif"])
def test_sixteen_bits_are_scaled(kind: str, tmp_path: Path) -> None:
    """65535 is white, whatever is in the picture; 0 is black."""
    deep = Image.fromarray(RAMP.astype(numpy.uint16) * 257)
    deep.save(tmp_path / f"a.{kind}", dpi=(300, 300))
    assert off(only(tmp_path / f"a.{kind}")) == 0


def test_numbers_without_a_white_are_refused(tmp_path: Path) -> None:
    """Floating point, and 32 bits."""
    Image.fromarray(RAMP.astype(numpy.float32)).save(tmp_path / "a.tif", dpi=(300, 300))
    Image.fromarray(RAMP.astype(numpy.int32) * 70000).save(tmp_path / "b.tif", dpi=(300, 300))
    assert "32 bits" in refused(tmp_path / "a.tif")
    assert "32 bits" in refused(tmp_path / "b.tif")


def test_black_and_white_is_grey(tmp_path: Path) -> None:
    """One bit a pixel, packed as faxes are."""
    drawn = GREY.point(lambda level: 255 * (level > 90)).convert("1")
    drawn.save(tmp_path / "a.tif", compression="group4", dpi=(300, 300))
    assert off(only(tmp_path / "a.tif"), numpy.where(RAMP > 90, 255, 0).astype(numpy.uint8)) == 0


@pytest.mark.parametrize("orientation", range(1, 9))
def test_a_picture_lies_as_its_tag_says(orientation: int, tmp_path: Path) -> None:
    """All eight orientations of Exif; resolutions across and down change places with the sides."""
    tags = Image.Exif()
    tags[0x0112] = orientation
    GREY.save(tmp_path / "a.png", exif=tags, dpi=(300, 200))
    with Image.open(tmp_path / "a.png") as image:
        right = numpy.asarray(ImageOps.exif_transpose(image))
    found = only(tmp_path / "a.png")
    assert off(found, right) == 0
    assert found.dpi == ((200, 300) if orientation > 4 else (300, 200))


def test_every_page_of_a_tiff_is_read_in_turn(tmp_path: Path) -> None:
    """Each with its own size, colours and resolution."""
    pages = [GREY, GREY.rotate(180).convert("RGB"), GREY.resize((80, 70))]
    pages[0].save(tmp_path / "a.tif", save_all=True, append_images=pages[1:], dpi=(300, 300))
    found = list(read_picture(tmp_path / "a.tif"))
    assert [picture.page for picture in found] == [1, 2, 3]
    assert [picture.grey.shape for picture in found] == [(40, 60), (40, 60), (70, 80)]
    assert off(found[1], RAMP[::-1, ::-1]) == 0


@pytest.mark.parametrize(
    ("tag", "dpi", "said"),
    [
        ((299.9994, 299.9994), (300, 300), ""),  # a PNG says whole dots a metre
        ((299.72, 299.72), (300, 300), "rounded"),  # and JFIF 118 dots a centimetre
        ((320, 320), (320, 320), ""),
        ((600, 300), (600, 300), ""),
        ((72, 72), None, "72 dpi"),
        ((96, 96), None, "96 dpi"),
        ((0, 0), None, "does not say"),
        (None, None, "does not say"),
    ],
)
def test_what_a_tag_means(tag: tuple[float, float] | None, dpi: tuple[float, float] | None, said: str) -> None:
    """What no scanner means is not taken for a resolution, and a sentence says so."""
    found = of_tag(tag, 1)
    assert found.dpi == dpi
    assert said in " ".join(found.remarks)
    assert bool(found.remarks) == bool(said)


@pytest.mark.parametrize("usual", [150, 200, 240, 300, 400, 600, 1200])
def test_a_box_in_whole_points_means_a_usual_resolution(usual: int) -> None:
    """595 for 595.28 points of A4 is 0.046 % off: snapped, and said; one that no scanner has is not known."""
    pixels = round(595.28 / 72 * usual), round(841.89 / 72 * usual)
    found = of_box(pixels[0] * 72 / 595, pixels[1] * 72 / 842, 1)
    assert found.dpi == (usual, usual)
    assert "rounded" in found.remarks[0]
    odd = of_box(usual * 1.02, usual * 1.02, 1)
    assert odd.dpi is None
    assert "--dpi" in odd.remarks[0]


def test_too_coarse_a_scan_is_refused(tmp_path: Path) -> None:
    """By its tag, and by the box of its PDF; 300 dpi helps."""
    for name in ("a.png", "a.pdf"):
        GREY.save(tmp_path / name, dpi=(120, 120), resolution=120)
        assert "needs 150 dpi or more" in refused(tmp_path / name)


@pytest.mark.parametrize("dpi", [0, -300, 149, 5000, float("nan")])
def test_a_resolution_that_no_scan_has_cannot_be_given(dpi: float, tmp_path: Path) -> None:
    """The option, what it needs, what came and an example."""
    GREY.save(tmp_path / "a.png")
    assert refused(tmp_path / "a.png", dpi).startswith("--dpi: needs a number from 150 to 4800, got ")


def test_a_resolution_that_is_given_counts(tmp_path: Path) -> None:
    """Whatever the file says, and where it says nothing."""
    GREY.save(tmp_path / "a.png", dpi=(72, 72))
    GREY.save(tmp_path / "b.tif")
    GREY.save(tmp_path / "c.pdf", resolution=100)
    for name in ("a.png", "b.tif", "c.pdf"):
        found = only(tmp_path / name, 240)
        assert (found.dpi, found.remarks) == ((240, 240), ())


@pytest.mark.parametrize("mode", ["L", "RGB", "1"])
def test_the_pages_of_a_pdf_are_its_pictures(mode: str, tmp_path: Path) -> None:
    """In order, their pixels as they are."""
    pages = [GREY.resize((600, 400)).convert(mode), GREY.rotate(180).resize((600, 400)).convert(mode)]
    pages[0].save(tmp_path / "a.pdf", save_all=True, append_images=pages[1:], resolution=300)
    found = list(read_picture(tmp_path / "a.pdf"))
    assert [(picture.page, picture.dpi) for picture in found] == [(1, (300, 300)), (2, (300, 300))]
    for picture, page in zip(found, pages, strict=True):
        assert off(picture, numpy.asarray(page.convert("L"))) <= 12


def test_a_pdf_that_is_drawn_is_no_scan(demo_folder: Path) -> None:
    """Our own file is refused: it holds no picture."""
    assert "exactly one picture, and page 1 is not" in refused(demo_folder / KIT_FILE)


@pytest.mark.parametrize("kind", ["png", "jpg", "tif", "pdf"])
def test_a_file_that_is_cut_short_is_refused(kind: str, tmp_path: Path) -> None:
    """At any place: never read as if it were whole, never a traceback."""
    whole = tmp_path / f"a.{kind}"
    noisy = Image.fromarray(numpy.random.default_rng(1).integers(0, 255, (80, 90), numpy.uint8))
    noisy.save(whole, dpi=(300, 300), resolution=300)
    data, cut = whole.read_bytes(), tmp_path / f"b.{kind}"
    for share in (0.02, 0.1, 0.4, 0.7, 0.9):
        cut.write_bytes(data[: int(len(data) * share)])
        if kind != "pdf" or share < 0.7:
            refused(cut)
        else:  # pdfium finds the objects of a PDF without their table
            with suppress(ScanError):
                assert off(only(cut), numpy.asarray(noisy)) <= 40


def test_what_is_no_picture_is_refused(tmp_path: Path) -> None:
    """Text, nothing, and kinds that no scanner writes."""
    (tmp_path / "a.png").write_text("no picture")
    (tmp_path / "b.tif").write_bytes(b"")
    GREY.save(tmp_path / "c.gif")
    for name in ("a.png", "b.tif", "c.gif"):
        assert refused(tmp_path / name).startswith("this is no PNG, JPEG, TIFF or PDF file")


def test_a_file_that_is_too_large_is_not_read(tmp_path: Path) -> None:
    """Over a thousand million bytes."""
    with (tmp_path / "a.tif").open("wb") as file:
        file.write(b"II*\0")
        file.truncate(limits.MOST_MB * 1_000_000 + 1)
    assert "1000 MB at most" in refused(tmp_path / "a.tif")


@pytest.mark.parametrize(("side", "said"), [((40_001, 10), "40,000 pixels"), ((39_000, 39_000), "300 million pixels")])
def test_a_picture_that_is_too_large_is_not_unpacked(side: tuple[int, int], said: str, tmp_path: Path) -> None:
    """A few bytes that say they are 1.5 thousand million pixels."""

    def chunk(name: bytes, data: bytes) -> bytes:
        return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))

    header = struct.pack(">IIBBBBB", *side, 8, 0, 0, 0, 0)
    rows = zlib.compress(bytes(2_000_000))
    data = b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")
    (tmp_path / "a.png").write_bytes(data)
    assert said in refused(tmp_path / "a.png")


def test_a_pdf_with_a_picture_that_is_too_large_is_not_unpacked(tmp_path: Path) -> None:
    """Its sides are found before its pixels are."""
    kept = io.BytesIO()
    GREY.convert("1").save(kept, "PDF", resolution=300)
    data = kept.getvalue().replace(b"/Width 60", b"/Width 60000").replace(b"/Height 40", b"/Height 40000")
    (tmp_path / "a.pdf").write_bytes(data)
    assert "40,000 pixels" in refused(tmp_path / "a.pdf")


def test_a_file_of_too_many_pages_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In TIFF and in PDF."""
    monkeypatch.setattr(limits, "MOST_PAGES", 2)
    for kind in ("tif", "pdf"):
        GREY.save(tmp_path / f"a.{kind}", save_all=True, append_images=[GREY, GREY], resolution=300)
        assert "2 pages at most, and this one has 3" in refused(tmp_path / f"a.{kind}")


def test_reading_changes_no_limit_of_pillow(tmp_path: Path) -> None:
    """Others in the same process keep theirs."""
    before = Image.MAX_IMAGE_PIXELS
    GREY.save(tmp_path / "a.png", dpi=(300, 300))
    only(tmp_path / "a.png")
    assert before == Image.MAX_IMAGE_PIXELS


def test_without_the_libraries_one_sentence_says_how_to_get_them(monkeypatch: pytest.MonkeyPatch) -> None:
    """Before any file is looked at."""
    monkeypatch.setattr("templates_gen.scan.reader.find_spec", lambda _: None)
    with pytest.raises(ScanError, match=r'pip install "templates-gen\[scan\]"'):
        read_picture("nowhere.png")

"""From a file to its pictures: PNG, JPEG, TIFF of several pages, PDF of pictures. Each is read when it is its turn."""

from __future__ import annotations

import warnings
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from PIL import ExifTags, Image, UnidentifiedImageError

from templates_gen.messages.roles.scan import ScanPicture
from templates_gen.scan.greys import grey_of
from templates_gen.scan.limits import MOST_MB, refuse_large, refuse_many
from templates_gen.scan.pdf_pictures import pdf_pictures
from templates_gen.scan.picture import Picture
from templates_gen.scan.resolution import asked, of_tag
from templates_gen.scan.seen import ScanError

_KINDS = ("PNG", "JPEG", "TIFF")
_MILLION = 1_000_000
_BEGIN = 1024  # bytes within which a PDF says that it is one (ISO 32000-1, annex H)
_TURNED = (5, 6, 7, 8)  # orientations of Exif that swap across and down


def pictures(path: Path, dpi: float | None) -> Iterator[Picture]:
    """The pages of the file at `path`; OSError if it cannot be opened, ScanError if it is no scan."""
    dpi = None if dpi is None else asked(dpi)
    if path.stat().st_size > MOST_MB * _MILLION:
        raise ScanError(ScanPicture.FILE_SIZE, most=MOST_MB)
    with path.open("rb") as file:
        begin = file.read(_BEGIN)
    if b"%PDF-" in begin:
        yield from pdf_pictures(path, dpi)
    else:
        yield from _of_image(path, dpi)


def _of_image(path: Path, dpi: float | None) -> Iterator[Picture]:
    with _any_size():
        try:
            image = Image.open(path, formats=_KINDS)
        except UnidentifiedImageError:
            raise ScanError(ScanPicture.KIND) from None
        except (OSError, ValueError, SyntaxError):
            raise ScanError(ScanPicture.BROKEN, page=1) from None
    with image:
        pages = _count(image)
        for number in range(pages):
            with _any_size():
                picture = _page(image, number, dpi)
            yield picture


def _count(image: Image.Image) -> int:
    if image.format != "TIFF":
        return 1
    try:
        pages = int(getattr(image, "n_frames", 1))
    except (OSError, ValueError, SyntaxError, EOFError):
        raise ScanError(ScanPicture.BROKEN, page=1) from None
    refuse_many(pages)
    return pages


def _page(image: Image.Image, number: int, dpi: float | None) -> Picture:
    page = number + 1
    try:
        if number:
            image.seek(number)
        refuse_large(*image.size, page)
        tag = _tag(image)
        resolution = None if dpi is not None else of_tag(tag, page)
        grey = grey_of(image, page)
    except ScanError:
        raise
    except (
        OSError,
        ValueError,
        SyntaxError,
        EOFError,
        IndexError,
        KeyError,
        TypeError,
        MemoryError,
        ZeroDivisionError,
    ):
        raise ScanError(ScanPicture.BROKEN, page=page) from None
    if dpi is not None:
        return Picture(grey, (dpi, dpi), page, asked=True)
    assert resolution is not None  # noqa: S101 (for the type alone)
    return Picture(grey, resolution.dpi, page, resolution.remarks)


def _tag(image: Image.Image) -> Sequence[float] | None:
    """Dots per inch across and down as the picture will lie once it is the right way up."""
    tag = image.info.get("dpi")
    if tag is None or len(tag) != 2:
        return None
    x, y = tag
    return (y, x) if image.getexif().get(ExifTags.Base.Orientation) in _TURNED else (x, y)


@contextmanager
def _any_size() -> Iterator[None]:
    """Pillow's own limit is smaller than a good scan; sizes are checked here, before any pixel is read."""
    was = Image.MAX_IMAGE_PIXELS
    Image.MAX_IMAGE_PIXELS = None
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # of odd tags, which change no pixel
            yield
    finally:
        Image.MAX_IMAGE_PIXELS = was

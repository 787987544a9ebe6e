"""The way in: pictures of a file, sheets on a picture, and what is seen of a sheet.

The libraries for it are the extra `scan`; they are imported here when they are needed.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING

from layout.drawing.shapes import Point
from templates_gen.messages.roles.scan import ScanPicture
from templates_gen.scan.seen import Line, ScanError, Seen

if TYPE_CHECKING:
    from templates_gen.scan.picture import Picture
    from templates_gen.scan.sheets import SheetSeen

NEEDED = ("numpy", "PIL", "pypdfium2", "zxingcpp")


def read_picture(path: str | Path, dpi: float | None = None) -> Iterator[Picture]:
    """Each page of a scan in grey: PNG, JPEG, TIFF of several pages, PDF whose pages are each one picture.

    `dpi` overrides what the file says. ScanError, which does not name the file, where it is no scan; OSError where it
    cannot be opened.
    """
    _all_there()
    from templates_gen.scan.pictures import pictures

    return pictures(Path(path), dpi)


def sheets_on(picture: Picture) -> list[SheetSeen]:
    """Every sheet whose code is on a picture, in the order of digest and number; ScanError where there is none."""
    from templates_gen.scan.sheets import sheets

    return sheets(picture)


def measured(
    picture: Picture, sheet: SheetSeen, places: Sequence[Point] | None = None, lines: Sequence[Line] = ()
) -> Seen:
    """What is seen of a sheet; ScanError where no number can be trusted.

    `places` are the middles of the sheet's targets; without them they are taken to be where nothing stood in their
    way, and of those that may have moved along an edge only the distance from it counts. `lines` are its marks.
    """
    from templates_gen.scan.sheets import seen

    return seen(picture, sheet, places, lines)


def _all_there() -> None:
    if any(find_spec(name) is None for name in NEEDED):
        raise ScanError(ScanPicture.EXTRA)

"""How large a scan may be: files and pictures that are larger are refused before they are read."""

from __future__ import annotations

from templates_gen.messages.roles.scan import ScanPicture
from templates_gen.scan.seen import ScanError

MOST_MB, MOST_SIDE, MOST_MILLIONS, MOST_PAGES = 1000, 40_000, 300, 200
"""A3 in grey at 1200 dpi has 278 million pixels."""


def refuse_large(width: int, height: int, page: int) -> None:
    """ScanError if a picture has too many pixels a side, or in all."""
    if max(width, height) > MOST_SIDE:
        raise ScanError(ScanPicture.SIDE, most=f"{MOST_SIDE:,}", page=page, width=f"{width:,}", height=f"{height:,}")
    if width * height > MOST_MILLIONS * 1_000_000:
        raise ScanError(ScanPicture.PIXELS, most=MOST_MILLIONS, page=page, millions=f"{width * height / 1e6:,.0f}")


def refuse_many(pages: int) -> None:
    """ScanError if a file has too many pages."""
    if pages > MOST_PAGES:
        raise ScanError(ScanPicture.PAGES, most=MOST_PAGES, pages=f"{pages:,}")

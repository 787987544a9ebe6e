"""Reading a scan: the roles of what is said of pictures and of the sheets on them."""

from __future__ import annotations

from layout.messages.catalogue import Role


class ScanPicture(Role):
    """Why a file gives no picture, and what is odd about one that does."""

    EXTRA = "scan.picture.extra"
    FILE_SIZE = "scan.picture.file_size"
    KIND = "scan.picture.kind"
    BROKEN = "scan.picture.broken"
    PAGES = "scan.picture.pages"
    SIDE = "scan.picture.side"
    PIXELS = "scan.picture.pixels"
    DEPTH = "scan.picture.depth"
    COARSE = "scan.picture.coarse"
    PDF_PAGE = "scan.picture.pdf_page"
    PDF_LOCKED = "scan.picture.pdf_locked"
    DPI_OPTION = "scan.picture.dpi_option"
    NO_DPI = "scan.picture.no_dpi"
    SCREEN_DPI = "scan.picture.screen_dpi"
    SNAPPED = "scan.picture.snapped"
    ODD_DPI = "scan.picture.odd_dpi"


class ScanSheet(Role):
    """Why a sheet on a picture gives no number."""

    NO_CODE = "scan.sheet.no_code"
    FOREIGN = "scan.sheet.foreign"
    MIRRORED = "scan.sheet.mirrored"
    FEW = "scan.sheet.few"
    IN_LINE = "scan.sheet.in_line"
    CODE_OFF = "scan.sheet.code_off"
    NOT_FLAT = "scan.sheet.not_flat"
    STRETCHED = "scan.sheet.stretched"
    COARSE = "scan.sheet.coarse"
    WRONG_DPI = "scan.sheet.wrong_dpi"
    WRONG_OPTION = "scan.sheet.wrong_option"

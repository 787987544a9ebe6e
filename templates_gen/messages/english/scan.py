"""English: reading a scan."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.scan import ScanPicture, ScanSheet

MESSAGES: dict[Role, str | Plural] = {
    ScanPicture.EXTRA: (
        'reading scans needs libraries that are not installed; install them with: pip install "templates-gen[scan]"'
    ),
    ScanPicture.FILE_SIZE: "a scan may be {most} MB at most, and this file is larger; scan at 300 dpi in grey",
    ScanPicture.KIND: "this is no PNG, JPEG, TIFF or PDF file; save the scan as PNG",
    ScanPicture.BROKEN: "the picture of page {page} is damaged or cut short; scan the sheet again",
    ScanPicture.PAGES: "a scan may have {most} pages at most, and this one has {pages}; split it",
    ScanPicture.SIDE: (
        "a picture may be {most} pixels wide and high at most, and that of page {page} is {width} x {height}; scan "
        "at 300 dpi"
    ),
    ScanPicture.PIXELS: (
        "a picture may have {most} million pixels at most, and that of page {page} has {millions}; scan at 300 dpi"
    ),
    ScanPicture.DEPTH: (
        "the picture of page {page} is of a kind with 32 bits a pixel; save it in grey with 8 bits a pixel"
    ),
    ScanPicture.COARSE: "a scan needs {least} dpi or more, and page {page} has {dpi}; scan at 300 dpi",
    ScanPicture.PDF_PAGE: (
        "each page of a scanned PDF must be exactly one picture, and page {page} is not; scan a printed sheet, as "
        "PNG or TIFF"
    ),
    ScanPicture.PDF_LOCKED: "the PDF asks for a password; save the scan without one",
    ScanPicture.DPI_OPTION: "--dpi: needs a number from {least} to {most}, got {got}; for example --dpi 300",
    ScanPicture.NO_DPI: (
        "the picture does not say its resolution, so that only the ratio of x to y and the skew are known; give it "
        "with --dpi, for example --dpi 300"
    ),
    ScanPicture.SCREEN_DPI: (
        "the picture says {dpi} dpi, which programs write that do not know it, so that only the ratio of x to y and"
        " the skew are known; give it with --dpi, for example --dpi 300"
    ),
    ScanPicture.SNAPPED: "the file says {found} dpi, which is {dpi} dpi rounded; {dpi} was taken",
    ScanPicture.ODD_DPI: (
        "the PDF says {found} dpi, which no scanner has, so that only the ratio of x to y and the skew are known; "
        "give it with --dpi, for example --dpi 300"
    ),
    ScanSheet.NO_CODE: (
        "no code of a sheet can be read; the square code near a lower corner must be on the scan, whole and sharp"
    ),
    ScanSheet.FOREIGN: "the code on this scan is none of our sheets",
    ScanSheet.MIRRORED: (
        "the sheet is a mirror image; scan its printed side, and turn off mirroring in the printer's settings"
    ),
    ScanSheet.FEW: (
        "{found} of the sheet's {wanted} targets agree, and {least} are needed; scan the whole sheet, flat and "
        "uncovered"
    ),
    ScanSheet.IN_LINE: "the targets that are found lie almost in one line; scan the whole sheet, flat and uncovered",
    ScanSheet.CODE_OFF: (
        "code and targets do not fit together, {off} mm apart; the sheet did not lie flat, or parts of two sheets "
        "are on the scan"
    ),
    ScanSheet.NOT_FLAT: (
        "the targets are {off} mm off a flat sheet; it did not lie flat, the scanner slipped, or this is a photograph"
    ),
    ScanSheet.STRETCHED: (
        "x and y differ by {ratio} % and the skew is {skew} %, more than a scan of a print can have; the picture "
        "was changed after it was scanned"
    ),
    ScanSheet.COARSE: (
        "a scan needs {least} dpi or more, and by the size of its code this one has about {dpi}; scan at 300 dpi"
    ),
    ScanSheet.WRONG_DPI: (
        "the picture says {dpi} dpi, but by its code it has about {found}, so that only the ratio of x to y and the"
        " skew are known; give the resolution with --dpi"
    ),
    ScanSheet.WRONG_OPTION: "--dpi: {dpi} cannot be right: by the size of its code the picture has about {found} dpi",
}

"""Makes output_samples again: the finished files of sample kits and of a run, and pictures of their sheets.

Run it from anywhere: python tests/samples.py, or with a folder to make them in that one.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from collections.abc import Iterable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from contact_sheets import contact_sheet, drawing, save_small

from layout.cutting.products import CUT_PRODUCTS
from layout.kit.kit import Kit
from layout.plan import plan
from layout.products import PRODUCTS
from templates_gen import printer_check
from templates_gen.files.generate import make
from templates_gen.files.manifest import MANIFEST
from templates_gen.files.one_file import proven_bytes
from templates_gen.files.outputs import Outputs
from templates_gen.files.run import make_run
from templates_gen.inputs import kit_file, stock_file
from templates_gen.inputs.range_file import Range, load_range
from templates_gen.lettering.fonts import metrics

SAMPLES = Path(__file__).parents[1] / "output_samples"
KITS = Path(__file__).with_name("sample_kits")
"""A kit for each kind of frame end that the built-in demo kit does not show."""
RANGE = Path(__file__).with_name("sample_ranges") / "weir-frames.toml"
DEMO = "willow-frame"
OF_ONE_KIND = ("end-bars", "peg-jig")
"""Parts to cut that the demo kit does not have."""
IN_EVERY_FORM = "comb"
"""The one part to cut that is kept as SVG, DXF and PDF: of others these say nothing new, and are large."""
_CUT_ALONE = CUT_PRODUCTS.keys() - PRODUCTS.keys()
LEAFLET = "leaflet"
PRINTER_CHECK = "printer-check"
WINDING, SHEETS = "winding.png", "sheets.png"
BOXED, BOX_SHEETS = "weir-frame-middle", ("leaflet.pdf", "help.pdf", "label.pdf")
"""The kit of the run whose sheets for the box are kept."""
FEW_PAGES = 2
"""So many pages of each file of the run are shown, the first ones."""


def sample_kits() -> dict[str, Kit]:
    """Every sample kit by the name of its folder."""
    return {DEMO: kit_file.demo()} | {path.stem: kit_file.load(path) for path in sorted(KITS.glob("*.toml"))}


def sample_range() -> Range:
    """The sample range."""
    return load_range(RANGE)


def asked_for(name: str, kit: Kit) -> tuple[str, ...]:
    """What is made of the kit `name`, as `make --only` takes it.

    That is all of the demo kit, parts to cut other than the comb and the board as SVG alone. Of the others it is what
    shows something new: kit.pdf, and as SVG parts to cut that the demo kit does not have. Each has its leaflet.
    """
    records = Outputs(plan(kit), metrics(), stock=stock_file.built_in()).records.values()
    files = [f"{record.product}.{record.form}" for record in records if _is_kept(name, record.product, record.form)]
    return (*dict.fromkeys(files), LEAFLET)


def _is_kept(name: str, product: str, form: str) -> bool:
    if name == DEMO:
        return form == "svg" or product == IN_EVERY_FORM or (form == "pdf" and product not in _CUT_ALONE)
    return product == "kit" or (product in OF_ONE_KIND and form == "svg")


def is_kept_of_run(file: str) -> bool:
    """Which files of a run, beside the folders of its kits, are samples: sheets and tables, no boards."""
    return file.endswith((".pdf", ".csv"))


def shown_first(files: Iterable[str]) -> list[str]:
    """The PDF files that together show every sheet once, all guides first."""
    return sorted(
        (file for file in files if file.endswith(".pdf") and _shows_more(file)),
        key=lambda file: (file != "kit.pdf", file),
    )


def _shows_more(file: str) -> bool:
    """Whether a PDF file holds sheets that are not in kit.pdf as well."""
    product = PRODUCTS.get(file.removesuffix(".pdf"))
    return product is None or not product.in_kit


def sample(name: str, kit: Kit, folder: Path) -> None:
    """The sample files of one kit and their two pictures, in a folder that is emptied first."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    planned, stock = plan(kit), stock_file.built_in()
    with tempfile.TemporaryDirectory() as work:
        make(planned, Path(work), metrics(), asked_for(name, kit), stock=stock)
        files = [path.name for path in Path(work).iterdir() if path.is_file()]
        for file in files:
            if file != MANIFEST or name == DEMO:
                shutil.copyfile(Path(work, file), folder / file)
        save_small(contact_sheet([Path(work, file) for file in shown_first(files)]), folder / SHEETS)
        picture = Path(work, "winding.svg")
        picture.write_bytes(proven_bytes(planned, picture.name, lambda: stock, metrics()))
        save_small(drawing(picture), folder / WINDING)


def sample_run(found: Range, folder: Path) -> None:
    """The sample files of the run and a picture of their sheets, in a folder that is emptied first."""
    shutil.rmtree(folder, ignore_errors=True)
    (folder / BOXED).mkdir(parents=True)
    with tempfile.TemporaryDirectory() as work:
        make_run(found, Path(work), metrics(), stock=stock_file.built_in())
        files = [path.name for path in Path(work).iterdir() if path.is_file() and is_kept_of_run(path.name)]
        for file in (*files, *(f"{BOXED}/{sheet}" for sheet in BOX_SHEETS)):
            shutil.copyfile(Path(work, file), folder / file)
        save_small(contact_sheet([folder / file for file in shown_first(files)], most=FEW_PAGES), folder / SHEETS)


def sample_printer_check(folder: Path) -> None:
    """The sheet by which a printer is measured, and a picture of it, in a folder that is emptied first."""
    shutil.rmtree(folder, ignore_errors=True)
    (made,) = printer_check(folder).made
    save_small(contact_sheet([folder / made.file]), folder / SHEETS)


def main(samples: Path = SAMPLES) -> None:
    """Every sample kit and the sample range, each file that they are made from beside its folder."""
    for path in (*sorted(KITS.glob("*.toml")), RANGE):
        shutil.copyfile(path, samples / path.name)
    for name, kit in sample_kits().items():
        sample(name, kit, samples / name)
    sample_run(sample_range(), samples / RANGE.stem)
    sample_printer_check(samples / PRINTER_CHECK)


if __name__ == "__main__":
    main(*map(Path, sys.argv[1:]))

"""Makes output_samples again: the finished files of sample kits and pictures of their sheets.

Run it from anywhere: python tests/samples.py
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from collections.abc import Iterable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from contact_sheets import contact_sheet, drawing, save_small

from layout.kit.kit import Kit
from layout.plan import plan
from layout.products import PRODUCTS
from templates_gen.files.generate import make
from templates_gen.inputs import kit_file, stock_file
from templates_gen.lettering.fonts import metrics

SAMPLES = Path(__file__).parents[1] / "output_samples"
KITS = Path(__file__).with_name("sample_kits")
"""A kit for each kind of frame end that the built-in demo kit does not show."""
DEMO = "willow-frame"
OF_ONE_KIND = ("end-bars", "peg-jig")
"""Parts to cut that the demo kit does not have."""
WINDING, SHEETS = "winding.png", "sheets.png"


def sample_kits() -> dict[str, Kit]:
    """Every sample kit by the name of its folder."""
    return {DEMO: kit_file.demo()} | {path.stem: kit_file.load(path) for path in sorted(KITS.glob("*.toml"))}


def kept(name: str, files: Iterable[str]) -> list[str]:
    """Which of the files of the kit `name` are samples: all of the demo kit, what shows something new of the others.

    Of these that is kit.pdf, and as SVG parts to cut that the demo kit does not have; pictures show every sheet.
    """
    return [file for file in files if name == DEMO or file == "kit.pdf" or _is_cut_alone(file)]


def _is_cut_alone(file: str) -> bool:
    return file.startswith(OF_ONE_KIND) and file.endswith(".svg")


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
    with tempfile.TemporaryDirectory() as work:
        make(plan(kit), Path(work), metrics(), stock=stock_file.built_in())
        files = [path.name for path in Path(work).iterdir() if path.is_file()]
        for file in kept(name, files):
            shutil.copyfile(Path(work, file), folder / file)
        save_small(drawing(Path(work, "winding.svg")), folder / WINDING)
        save_small(contact_sheet([Path(work, file) for file in shown_first(files)]), folder / SHEETS)


def main(samples: Path = SAMPLES) -> None:
    """Every sample kit, and its kit file beside its folder."""
    for path in sorted(KITS.glob("*.toml")):
        shutil.copyfile(path, samples / path.name)
    for name, kit in sample_kits().items():
        sample(name, kit, samples / name)


if __name__ == "__main__":
    main()

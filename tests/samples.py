"""Makes output_samples again: the finished files of sample kits and pictures of their sheets.

Run it from anywhere: python tests/samples.py
"""

from __future__ import annotations

import shutil
from pathlib import Path

import pypdfium2
import resvg_py

from layout.plan import plan
from templates_gen.files.generate import make
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import stock_file as stockfile
from templates_gen.lettering.fonts import metrics

SAMPLES = Path(__file__).parents[1] / "output_samples"
KITS = Path(__file__).with_name("sample_kits")
"""A kit for each kind of frame that the built-in demo kit and the kits beside the samples do not show."""

SCALE = 110 / 72  # pixels to a PDF unit
SMALL = 75  # pixels to an inch of a picture that stands beside others


def picture(pdf: Path, page: int, to: Path) -> None:
    """One page of `pdf` as a grey picture."""
    document = pypdfium2.PdfDocument(pdf)
    document[page].render(scale=SCALE, grayscale=True).to_pil().save(to, optimize=True)
    document.close()


def drawing(svg: Path, to: Path) -> None:
    """A drawing as a picture for a page that shows several."""
    png = resvg_py.svg_to_bytes(
        svg_string=svg.read_text("utf-8"), background="white", skip_system_fonts=True, dpi=SMALL
    )
    to.write_bytes(bytes(png))


def main() -> None:
    """Every sample kit: the built-in demo kit, and the kits that lie beside its folder, the sample kits among them."""
    for path in sorted(KITS.glob("*.toml")):
        shutil.copyfile(path, SAMPLES / path.name)
    kits = {"willow-frame": kitfile.demo()}
    kits |= {path.stem: kitfile.load(path) for path in sorted(SAMPLES.glob("*.toml"))}
    for name, kit in kits.items():
        folder = SAMPLES / name
        for old in folder.glob("*"):
            old.unlink()
        make(plan(kit), folder, metrics(), stock=stockfile.built_in())
        picture(folder / "strip-near.pdf", 0, folder / "strip-near.png")
        drawing(folder / "winding.svg", folder / "winding.png")


if __name__ == "__main__":
    main()

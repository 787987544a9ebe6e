"""A run for a printer: every sheet of all kits is corrected, says so in its own language, and is checked by itself."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from kits import font_metrics, kit_of
from printers import SLANTED, USUAL

import templates_gen
from layout.drawing.shapes import Text
from templates_gen.files.for_printer import with_printer
from templates_gen.files.kept import planned
from templates_gen.files.proof import read, write
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.inputs.range_file import NO_SHOP, Range, RangeKit

KITS = (
    RangeKit(kit_of({"name": "Heron frame, one", "weaving.width": "12 cm"}), 3, 1),
    RangeKit(kit_of({"name": "Heron frame, two", "weaving.width": "12 cm", "paper.language": "de"}), 2, 2),
)
FOUND = Range("Some frames", KITS, NO_SHOP, copies_said=True)
LOCAL = {"Heron frame, two": "Für den Drucker", "Some frames": "Corrected for printer"}


@pytest.fixture(scope="module")
def outputs() -> RunOutputs:
    """What the run has beside its kits."""
    plans = [with_printer(planned(each.kit), SLANTED) for each in KITS]
    return RunOutputs(FOUND, plans, font_metrics(), None)


def test_every_file_is_proven_and_says_its_printer(outputs: RunOutputs, tmp_path: Path) -> None:
    """The print run with pages of two languages, overview and cards; and each is right alone, without the range."""
    files = outputs.files
    assert len(files) >= 4
    for file in files:
        output = file.draw()
        data = write(output)
        found = read(output, data)
        assert file.prove(output, found).sentences == ()
        assert json.loads(found.about.inputs)["printer"]["x"] == SLANTED.scale.x
        spoken = set()
        for sheet in found.sheets:
            words = [shape.words for shape in sheet.shapes if isinstance(shape, Text)]
            said = [part for part in LOCAL.values() if any(text.startswith(part) for text in words)]
            assert len(said) == 1, (file.name, sheet.name)
            spoken |= set(said)
        assert file.name != "print-1-time.pdf" or spoken == set(LOCAL.values())
        (tmp_path / file.name).write_bytes(data)
        (alone,) = templates_gen.check(tmp_path / file.name)
        assert alone.problems == ()


def test_a_run_for_another_printer_is_another_run(outputs: RunOutputs) -> None:
    """Asked for once more it is the same; a file of one is wrong for the other."""
    other = outputs.for_printer(USUAL)
    assert other is outputs.for_printer(USUAL)
    assert outputs.for_printer(SLANTED) is outputs
    mine = next(file for file in outputs.files if file.name == "shop-card.pdf")
    theirs = next(file for file in other.files if file.name == "shop-card.pdf")
    asked, drawn = theirs.draw(), mine.draw()
    assert theirs.prove(asked, read(drawn, write(drawn))).sentences == (
        "the file names another printer than it is corrected for",
    )

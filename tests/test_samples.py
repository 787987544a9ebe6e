"""The finished samples are what the project makes today, and `python tests/samples.py` makes them all."""

from __future__ import annotations

import hashlib
import re
from pathlib import Path

import numpy as np
import pytest
from contact_sheets import contact_sheet
from PIL import Image
from samples import (
    BOX_SHEETS,
    BOXED,
    DEMO,
    KITS,
    PRINTER_CHECK,
    RANGE,
    SAMPLES,
    SHEETS,
    WINDING,
    asked_for,
    is_kept_of_run,
    sample_kits,
    sample_range,
    shown_first,
)  # fmt: skip

from layout.plan import plan
from templates_gen.files.check import Against, check
from templates_gen.files.check_run import checked_in_run
from templates_gen.files.manifest import MANIFEST
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.files.run_plans import plans_of
from templates_gen.inputs import stock_file
from templates_gen.lettering.fonts import metrics

NAMES = sorted(sample_kits())
RUN = SAMPLES / RANGE.stem
MOST_BYTES = 4_000_000


def outputs(name: str) -> Outputs:
    """What the project makes today of a sample kit, of what is asked for."""
    kit = sample_kits()[name]
    return Outputs(plan(kit), metrics(), asked_for(name, kit), stock=stock_file.built_in())


def samples_of(name: str) -> list[Path]:
    """The sample files of a kit that are written for use, not for looking."""
    return sorted(path for path in (SAMPLES / name).iterdir() if path.name not in (SHEETS, WINDING))


@pytest.mark.parametrize("name", NAMES)
def test_every_sample_is_there_and_right(name: str) -> None:
    """A kit's folder holds its sample files and nothing else, and each reads back right against its kit."""
    expected = {*outputs(name).files, *([MANIFEST] if name == DEMO else [])}
    assert {path.name for path in samples_of(name)} == expected
    paths = [SAMPLES / name] if name == DEMO else samples_of(name)
    checked = check(paths, Against(sample_kits()[name]), metrics())
    assert len(checked) == len(expected - {MANIFEST})
    assert [each.problems for each in checked if each.problems] == []


@pytest.mark.parametrize("name", NAMES)
def test_every_way_of_warping_has_its_leaflet(name: str) -> None:
    """Whatever else is kept of a kit, its leaflet is, and the sheet of all guides."""
    assert {"kit.pdf", "leaflet.pdf"} <= set(outputs(name).files)


@pytest.mark.parametrize("name", NAMES)
def test_vector_samples_are_what_is_written_today(name: str) -> None:
    """The SVG samples, which no compression may alter, are the same to the byte."""
    today = outputs(name)
    for path in samples_of(name):
        if path.suffix == ".svg":
            assert path.read_bytes() == write(today.output(path.name)), path.name


def test_the_run_is_there_and_right() -> None:
    """Its folder holds what the range makes today beside the kits, and the sheets of one box; all of it is right."""
    found = sample_range()
    today = RunOutputs(found, plans_of(found), metrics(), stock_file.built_in())
    made = [*(each.name for each in today.files), *(each.record.name for each in today.tables)]
    kept = sorted(filter(is_kept_of_run, made))
    assert sorted(path.name for path in RUN.iterdir() if path.is_file()) == sorted([*kept, SHEETS])
    for name in kept:
        digest = hashlib.sha256((RUN / name).read_bytes()).hexdigest()
        assert checked_in_run(RUN / name, digest, today, metrics()).problems == (), name
    boxed = [RUN / BOXED / sheet for sheet in BOX_SHEETS]
    assert sorted(path.name for path in (RUN / BOXED).iterdir()) == sorted(BOX_SHEETS)
    assert [each.problems for each in check(boxed, Against(found=found), metrics()) if each.problems] == []


def test_the_printer_check_is_right() -> None:
    """The sheet alone, with its picture, as it is made today."""
    assert sorted(path.name for path in (SAMPLES / PRINTER_CHECK).iterdir()) == ["printer-check.pdf", SHEETS]
    (checked,) = check([SAMPLES / PRINTER_CHECK / "printer-check.pdf"], Against(), metrics())
    assert checked.problems == ()


def test_the_run_is_of_ten_boxes_of_three_sizes() -> None:
    """What the page about samples says of the range."""
    found = sample_range()
    assert [each.copies for each in found.kits] == [10, 10, 10]
    assert len({each.kit.frame.outer_width for each in found.kits}) == 3
    assert found.shop.margin is not None
    assert found.shop.people == 10


def test_the_page_names_every_folder() -> None:
    """The table of README is of the folders that there are, no more and no fewer."""
    text = (SAMPLES / "README.md").read_text("utf-8")
    named = re.findall(r"^\| `([\w-]+)` \|", text, re.MULTILINE)
    assert sorted(named) == sorted(path.name for path in SAMPLES.iterdir() if path.is_dir())


def test_pictures_show_every_sheet() -> None:
    """The demo kit's contact sheet is what its PDF files look like, but for the rounding of greys."""
    shown = Image.open(SAMPLES / DEMO / SHEETS).convert("L")
    fresh = contact_sheet([SAMPLES / DEMO / file for file in shown_first(path.name for path in samples_of(DEMO))])
    assert shown.size == fresh.size
    assert np.abs(np.asarray(shown, dtype=float) - np.asarray(fresh, dtype=float)).mean() < 2


@pytest.mark.parametrize(
    "picture", [f"{RANGE.stem}/{SHEETS}", *(f"{name}/{file}" for name in NAMES for file in (WINDING, SHEETS))]
)
def test_every_folder_has_its_pictures(picture: str) -> None:
    """Both pictures of a kit and that of the run open, and are not one flat colour."""
    low, high = Image.open(SAMPLES / picture).convert("L").getextrema()
    assert (low, high) == (0, 255)


def test_kit_files_beside_the_samples_are_those_they_are_made_from() -> None:
    """Whoever makes a sample again from the file beside it gets the same."""
    beside = {path.name: path.read_text("utf-8") for path in SAMPLES.glob("*.toml")}
    assert beside == {path.name: path.read_text("utf-8") for path in (*KITS.glob("*.toml"), RANGE)}


def test_samples_are_small() -> None:
    """The samples weigh no more than their limit, so that everybody who fetches the project can have them."""
    assert sum(path.stat().st_size for path in SAMPLES.rglob("*") if path.is_file()) <= MOST_BYTES

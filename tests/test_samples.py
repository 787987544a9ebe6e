"""The finished samples are what the project makes today, and `python tests/samples.py` makes them all."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from contact_sheets import contact_sheet
from PIL import Image
from samples import DEMO, KITS, SAMPLES, SHEETS, WINDING, kept, sample_kits, shown_first

from layout.plan import plan
from templates_gen.files.check import Against, check
from templates_gen.files.manifest import MANIFEST
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.inputs import stock_file
from templates_gen.lettering.fonts import metrics

NAMES = sorted(sample_kits())
MOST_BYTES = 4_040_000


def outputs(name: str) -> Outputs:
    """What the project makes today of a sample kit."""
    return Outputs(plan(sample_kits()[name]), metrics(), stock=stock_file.built_in())


def samples_of(name: str) -> list[Path]:
    """The sample files of a kit that are written for use, not for looking."""
    return sorted(path for path in (SAMPLES / name).iterdir() if path.name not in (SHEETS, WINDING))


@pytest.mark.parametrize("name", NAMES)
def test_every_sample_is_there_and_right(name: str) -> None:
    """A kit's folder holds its sample files and nothing else, and each reads back right against its kit."""
    expected = {*kept(name, outputs(name).files), *([MANIFEST] if name == DEMO else [])}
    assert {path.name for path in samples_of(name)} == expected
    paths = [SAMPLES / name] if name == DEMO else samples_of(name)
    checked = check(paths, Against(sample_kits()[name]), metrics())
    assert len(checked) == len(expected - {MANIFEST})
    assert [each.problems for each in checked if each.problems] == []


@pytest.mark.parametrize("name", NAMES)
def test_vector_samples_are_what_is_written_today(name: str) -> None:
    """The SVG samples, which no compression may alter, are the same to the byte."""
    today = outputs(name)
    for path in samples_of(name):
        if path.suffix == ".svg":
            assert path.read_bytes() == write(today.output(path.name)), path.name


def test_pictures_show_every_sheet() -> None:
    """The demo kit's contact sheet is what its PDF files look like, but for the rounding of greys."""
    shown = Image.open(SAMPLES / DEMO / SHEETS).convert("L")
    fresh = contact_sheet([SAMPLES / DEMO / file for file in shown_first(path.name for path in samples_of(DEMO))])
    assert shown.size == fresh.size
    assert np.abs(np.asarray(shown, dtype=float) - np.asarray(fresh, dtype=float)).mean() < 2


@pytest.mark.parametrize("name", NAMES)
def test_every_kit_has_its_pictures(name: str) -> None:
    """Both pictures of a kit open, and are not one flat colour."""
    for file in (WINDING, SHEETS):
        low, high = Image.open(SAMPLES / name / file).convert("L").getextrema()
        assert (low, high) == (0, 255)


def test_kit_files_beside_the_samples_are_those_they_are_made_from() -> None:
    """Whoever makes a sample again from the kit file beside it gets the same."""
    beside = {path.name: path.read_text("utf-8") for path in SAMPLES.glob("*.toml")}
    assert beside == {path.name: path.read_text("utf-8") for path in KITS.glob("*.toml")}


def test_samples_are_small() -> None:
    """The samples weigh no more than their limit, so that everybody who fetches the project can have them."""
    assert sum(path.stat().st_size for path in SAMPLES.rglob("*") if path.is_file()) <= MOST_BYTES

"""The finished samples are what the project makes today."""

from __future__ import annotations

from pathlib import Path

import pytest

from layout.plan import plan
from templates_gen.files.check import Against, check
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import stock_file as stockfile
from templates_gen.lettering.fonts import metrics

SAMPLES = Path(__file__).parents[1] / "output_samples"
KITS = [None, *sorted(SAMPLES.glob("*.toml"))]


@pytest.mark.parametrize("path", KITS, ids=lambda path: path.stem if path else "demo")
def test_sample_is_fresh(path: Path | None) -> None:
    """Every sample file reads back right against its kit, and its folder is whole."""
    kit = kitfile.load(path) if path else kitfile.demo()
    folder = SAMPLES / (path.stem if path else "willow-frame")
    checked = check([folder], Against(kit), metrics())
    assert len(checked) == len(Outputs(plan(kit), metrics(), stock=stockfile.built_in()).files)
    assert [each.problems for each in checked if each.problems] == []
    assert (folder / "winding.png").is_file()


def test_sample_drawings_are_what_is_written_today() -> None:
    """The SVG samples, which no compression may alter, are the same to the byte."""
    outputs = Outputs(plan(kitfile.demo()), metrics(), stock=stockfile.built_in())
    for file in outputs.files:
        if file.endswith(".svg"):
            assert (SAMPLES / "willow-frame" / file).read_bytes() == write(outputs.output(file)), file

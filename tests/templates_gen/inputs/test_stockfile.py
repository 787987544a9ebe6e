"""Stock files: the starter, the built-in stock, and refusals that name the file."""

from __future__ import annotations

import re
import tomllib
from importlib import resources
from pathlib import Path

import pytest
from click.testing import CliRunner

from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.fields import read_field
from layout.kit.inputs import Input
from layout.values.errors import FieldErrors
from templates_gen.inputs.stock_file import StockFileError, built_in, load, write_starter
from templates_gen.lettering.fonts import metrics
from templates_gen.screen.cli import main


def starter_text() -> str:
    """The stock file as it stands in the package."""
    return resources.files("templates_gen").joinpath("data/stock.toml").read_text(encoding="utf-8")


def test_the_built_in_stock_is_birch_plywood() -> None:
    """3 mm with a kerf of about 0.20 mm: cutting services' tables."""
    stock = built_in()
    assert (stock.material, stock.thickness, stock.kerf_x, stock.kerf_y) == ("birch plywood", 3.0, 0.2, 0.2)
    assert stock.kerf_drawn


def test_a_starter_is_the_built_in_stock(tmp_path: Path) -> None:
    """What is written is a stock file that says the built-in stock, byte for byte as packed."""
    path = tmp_path / "stock.toml"
    write_starter(path)
    assert path.read_bytes() == starter_text().encode()
    assert load(path) == built_in()


@pytest.mark.parametrize("spec", STOCK.inputs, ids=lambda spec: spec.key)
def test_the_starter_shows_every_key(spec: Input) -> None:
    """Each key stands in its own table, live or behind a #, and what stands there would be taken."""
    table, _, leaf = spec.key.rpartition(".")
    text = starter_text()
    part = text.split(f"[{table}]")[1].split("\n[")[0] if table else text.split("\n[")[0]
    line = re.search(rf"^(?:# )?{leaf} = .*", part, re.MULTILINE)
    assert line is not None
    value = tomllib.loads(line[0].removeprefix("# "))[leaf]
    read_field(spec, value, spec.key, metrics())


@pytest.mark.parametrize("spec", STOCK.inputs, ids=lambda spec: spec.key)
def test_every_example_and_default_works(spec: Input) -> None:
    """What a refusal offers would be taken, and so is what stands when a key is left out."""
    read_field(spec, tomllib.loads(f"x = {spec.example}")["x"], spec.key, metrics())
    if isinstance(spec.default, str):
        read_field(spec, spec.default, spec.key, metrics())


def test_the_command_writes_a_starter_and_never_over_a_file(tmp_path: Path) -> None:
    """`new-stock FILE`: once it is written, a second time it is refused with code 2."""
    path = tmp_path / "birch.toml"
    first = CliRunner().invoke(main, ["new-stock", str(path)])
    assert first.exit_code == 0
    assert path.read_text() == starter_text()
    path.write_text("mine")
    second = CliRunner().invoke(main, ["new-stock", str(path)])
    assert second.exit_code == 2
    assert second.output.strip() == f"{path} already exists and stays as it is; choose another name"
    assert path.read_text() == "mine"


def test_a_slip_in_the_writing_is_shown_by_line_and_column(tmp_path: Path) -> None:
    """The sentence calls it a stock file and shows a line that is right."""
    path = tmp_path / "stock.toml"
    path.write_text("version = 1\nthickness = 3 mm\n")
    with pytest.raises(StockFileError) as caught:
        load(path)
    said = str(caught.value)
    assert said.startswith(f"{path} is no stock file yet, line 2, column 15: ")
    assert 'write thickness = "3 mm"\n' in said
    assert said.splitlines()[1:] == ["  thickness = 3 mm", "                ^"]


def test_a_kit_is_no_stock(tmp_path: Path) -> None:
    """A file of the other kind is refused key by key, not half taken."""
    path = tmp_path / "kit.toml"
    path.write_text(resources.files("templates_gen").joinpath("data/demo.toml").read_text(encoding="utf-8"))
    with pytest.raises(FieldErrors, match="thickness: needs"):
        load(path)

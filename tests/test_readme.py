"""README and docs show what the project does today. RENEW=1 writes outputs and tables into them."""

from __future__ import annotations

import os
import re
import tomllib
from pathlib import Path

import pytest
from example_scan import write_scan
from pages import (
    BLOCK,
    PAGES,
    README,
    ROOT,
    Runs,
    blocks_of,
    broken_links,
    key_rows,
    renewed,
    table_between,
    write_files,
)  # fmt: skip
from speed_block import with_speed

from layout.box.shop_inputs import SHOP
from layout.cutting.products import CUT_PRODUCTS
from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.box_inputs import BOX_INPUTS
from layout.kit.inputs import INPUTS
from layout.kit.range_values import RANGE_INPUTS
from layout.plan import plan
from layout.products import PRODUCTS
from templates_gen.files.outputs import Outputs
from templates_gen.files.overview_table import OVERVIEW, OVERVIEW_HEAD
from templates_gen.files.tables import TO_BUY, TO_BUY_HEAD
from templates_gen.inputs import kit_file, stock_file
from templates_gen.lettering.fonts import metrics
from templates_gen.screen.cli import main

KEYS = {
    "keys": (ROOT / "docs" / "keys.md", [spec for spec in INPUTS if spec not in BOX_INPUTS]),
    "range keys": (ROOT / "docs" / "ranges.md", RANGE_INPUTS),
    "box keys": (ROOT / "docs" / "box.md", BOX_INPUTS),
    "stock keys": (ROOT / "docs" / "stock.md", STOCK.inputs),
    "shop keys": (ROOT / "docs" / "buying.md", SHOP.inputs),
}


def test_pages_show_real_output(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each command of README and docs prints exactly what stands under it, and every command is shown."""
    monkeypatch.chdir(tmp_path)
    write_scan(tmp_path / "scan.png")
    runs = Runs()
    for page in PAGES:
        text = page.read_text(encoding="utf-8")
        write_files(text, tmp_path)
        if os.environ.get("RENEW"):
            text = renewed(text, runs)
            page.write_text(text, encoding="utf-8")
        for block in BLOCK.finditer(text):
            assert block["output"] == runs.shown(block["command"]), page.name
    assert runs.commands == set(main.commands) - {"desk"}  # it ends when it is stopped, and shows a new key each time


@pytest.mark.parametrize("name", KEYS)
def test_pages_explain_every_key(name: str) -> None:
    """The tables of keys are what the inputs say of themselves, and all of them."""
    page, inputs = KEYS[name]
    text = page.read_text(encoding="utf-8")
    table = "\n".join(key_rows(inputs))
    if os.environ.get("RENEW"):
        found = table_between(text, name)
        text = text[: found.start(2)] + table + "\n" + text[found.start(3) :].lstrip("\n")
        page.write_text(text, encoding="utf-8")
    assert table_between(text, name)[2] == table


@pytest.mark.parametrize(("file", "columns"), [(TO_BUY, TO_BUY_HEAD), (OVERVIEW, OVERVIEW_HEAD)])
def test_every_column_is_explained(file: str, columns: tuple[str, ...]) -> None:
    """The page about buying names each column of the maker's tables once, and no other."""
    text = (ROOT / "docs" / "buying.md").read_text("utf-8")
    table = text[text.index(f"| `{file}` |") :].split("\n\n")[0].splitlines()[2:]
    named = [name for row in table for name in re.findall("`([^`]+)`", row.split("|")[1])]
    assert sorted(named) == sorted(columns)


def test_every_product_is_explained() -> None:
    """The page of the commands says of everything that can be made what it is for."""
    rows = [
        line.split("|")[1] for line in (ROOT / "docs" / "commands.md").read_text("utf-8").splitlines() if "|" in line
    ]
    named = {word.strip("`, ") for row in rows for word in row.split()}
    assert {*PRODUCTS, *CUT_PRODUCTS} <= named


def test_first_kit_is_whole(tmp_path: Path) -> None:
    """The kit file that the README shows is read as it stands, and gives strips and parts to cut."""
    (text,) = blocks_of(README.read_text("utf-8"), "toml")
    path = tmp_path / "first.toml"
    path.write_text(text, encoding="utf-8")
    files = Outputs(plan(kit_file.load(path)), metrics(), stock=stock_file.built_in()).files
    assert {"kit.pdf", "strip-near.pdf", "strip-far.svg", "job.pdf"} <= set(files)


def test_the_page_about_boxes_shows_every_key(tmp_path: Path) -> None:
    """Its example is read with a kit, and says each key of a box and of legal words once."""
    (text,) = blocks_of((ROOT / "docs" / "box.md").read_text("utf-8"), "toml")
    (kit,) = blocks_of(README.read_text("utf-8"), "toml")
    path = tmp_path / "boxed.toml"
    path.write_text(kit + text, encoding="utf-8")
    found = kit_file.load(path)
    assert found.legal.age == "14 years and over"
    assert found.box.has("help")
    said = {f"{table}.{key}" for table, keys in tomllib.loads(text).items() for key in keys}
    assert said == {spec.key for spec in BOX_INPUTS if "[]" not in spec.key}


@pytest.mark.parametrize("page", [*PAGES, ROOT / "DEVELOPERS.md", ROOT / "CHANGELOG.md"], ids=lambda page: page.stem)
def test_links_lead_somewhere(page: Path) -> None:
    """Every link within the project leads to a file, and to a heading of it where it names one."""
    assert broken_links(page) == []


def test_readme_leads_to_every_page() -> None:
    """No page of docs is hidden."""
    text = README.read_text("utf-8")
    assert [page.name for page in PAGES[1:] if f"](docs/{page.name})" not in text] == []


def test_measured_speed_has_its_place() -> None:
    """What the benches print replaces what they printed before, and nothing else of the README."""
    text = README.read_text("utf-8")
    once = with_speed(text, "make / import: 2.00\n")
    assert "```text\nmake / import: 2.00\n```\n<!-- end of speed -->" in once
    assert with_speed(once, "make / import: 3.00") == once.replace("2.00", "3.00")
    assert once.split("<!-- speed -->")[0] == text.split("<!-- speed -->")[0]
    assert once.split("<!-- end of speed -->")[1] == text.split("<!-- end of speed -->")[1]

"""The same kit gives the same bytes: in any process, time zone, language, hash seed, and in workers."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from multiprocessing import get_context
from pathlib import Path

import pytest

from layout.drawing.metrics import FontMetrics
from layout.plan import Plan
from templates_gen.files.generate import make
from templates_gen.files.manifest import MANIFEST, product_of
from templates_gen.inputs import stock_file as stockfile

ROOT = Path(__file__).parents[3]
MAKE = "import sys; from templates_gen.screen.cli import main; main(['make', '-o', *sys.argv[1:]])"
FEW = ("strip-far", "weaving-grid", "comb")  # files of every form
SURROUNDINGS = {
    "all at once": {
        "PYTHONHASHSEED": "2",
        "TZ": "America/Lima",
        "LANG": "de_DE.UTF-8",
        "LC_ALL": "de_DE.UTF-8",
        "SOURCE_DATE_EPOCH": "1234567890",
        "PYTHONOPTIMIZE": "2",
    },
    "east": {"PYTHONHASHSEED": "1", "TZ": "Asia/Tokyo", "LANG": "C", "LC_ALL": "C"},
    "optimised": {"PYTHONHASHSEED": "3", "TZ": "UTC", "PYTHONOPTIMIZE": "2"},
}


def digests(folder: Path) -> dict[str, str]:
    """What every file amounts to, the manifest too."""
    return {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in folder.iterdir()}


def few(found: dict[str, str]) -> dict[str, str]:
    """The digests of the products in `FEW`."""
    chosen = {name: digest for name, digest in found.items() if product_of(name) in FEW}
    assert {name.rpartition(".")[2] for name in chosen} == {"pdf", "svg", "dxf"}
    return chosen


@pytest.fixture(scope="module")
def here(demo_folder: Path) -> dict[str, str]:
    """The demo kit as a process of the tests makes it."""
    found = digests(demo_folder)
    assert {name.rpartition(".")[2] for name in found} == {"pdf", "svg", "dxf", "json"}
    return found


def made_in(name: str, place: Path, *options: str) -> dict[str, str]:
    """What a process of its own makes of the demo kit in those surroundings."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT), **SURROUNDINGS[name]}
    command = [sys.executable, "-c", MAKE, str(place / name), *options]
    subprocess.run(command, env=environment, cwd=place, capture_output=True, check=True)
    return digests(place / name)


@pytest.mark.parametrize("name", ["all at once", pytest.param("east", marks=pytest.mark.slow)])
def test_the_same_whole_kit_in_any_surroundings(name: str, tmp_path: Path, here: dict[str, str]) -> None:
    """No hash seed, time zone, language or date shows in any file, nor the folder it is made in."""
    assert made_in(name, tmp_path) == here


@pytest.mark.slow
@pytest.mark.parametrize("name", ["east", "optimised"])
def test_the_same_few_files_in_any_surroundings(name: str, tmp_path: Path, here: dict[str, str]) -> None:
    """The same of files of every form."""
    assert few(made_in(name, tmp_path, *(word for each in FEW for word in ("--only", each)))) == few(here)


@pytest.mark.parametrize("only", [FEW, pytest.param(None, marks=pytest.mark.slow)], ids=["few", "whole"])
def test_the_same_bytes_from_spawned_workers(
    only: tuple[str, ...] | None, tmp_path: Path, here: dict[str, str], demo_plan: Plan, metrics: FontMetrics
) -> None:
    """A worker that starts afresh and is given the plan makes the same files, and once more when it has made them."""
    folders = [tmp_path / "one", tmp_path / "two"]
    wanted = few(here) if only else {name: digest for name, digest in here.items() if name != MANIFEST}
    with ProcessPoolExecutor(1, mp_context=get_context("spawn")) as pool:
        given = partial(make, only=only, stock=stockfile.built_in())
        for report in pool.map(given, [demo_plan] * 2, folders, [metrics] * 2):
            assert {made.file for made in report.made} == set(wanted)
    for folder in folders:
        assert {name: digest for name, digest in digests(folder).items() if name != MANIFEST} == wanted

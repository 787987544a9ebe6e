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
from templates_gen.inputs import stock_file as stockfile

ROOT = Path(__file__).parents[3]
MAKE = "import sys; from templates_gen.screen.cli import main; main(['make', '-o', sys.argv[1]])"
SURROUNDINGS = {
    "east": {"PYTHONHASHSEED": "1", "TZ": "Asia/Tokyo", "LANG": "C", "LC_ALL": "C"},
    "west": {
        "PYTHONHASHSEED": "2",
        "TZ": "America/Lima",
        "LANG": "de_DE.UTF-8",
        "LC_ALL": "de_DE.UTF-8",
        "SOURCE_DATE_EPOCH": "1234567890",
    },
    "optimised": {"PYTHONHASHSEED": "3", "TZ": "UTC", "PYTHONOPTIMIZE": "2"},
}


def digests(folder: Path) -> dict[str, str]:
    """What every file amounts to, the manifest too."""
    return {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in folder.iterdir()}


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory, demo_plan: Plan, metrics: FontMetrics) -> dict[str, str]:
    """The demo kit as this process makes it."""
    folder = tmp_path_factory.mktemp("here")
    make(demo_plan, folder, metrics, stock=stockfile.built_in())
    assert {name.rpartition(".")[2] for name in digests(folder)} == {"pdf", "svg", "dxf", "json"}
    return digests(folder)


@pytest.mark.parametrize("name", SURROUNDINGS)
def test_the_same_bytes_in_any_surroundings(name: str, tmp_path: Path, here: dict[str, str]) -> None:
    """No hash seed, time zone, language or date shows in any file, nor the folder it is made in."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT), **SURROUNDINGS[name]}
    command = [sys.executable, "-c", MAKE, str(tmp_path / name)]
    subprocess.run(command, env=environment, cwd=tmp_path, capture_output=True, check=True)
    assert digests(tmp_path / name) == here


def test_the_same_bytes_from_spawned_workers(
    tmp_path: Path, here: dict[str, str], demo_plan: Plan, metrics: FontMetrics
) -> None:
    """Two workers that start afresh, each given the plan, make the same files."""
    folders = [tmp_path / "one", tmp_path / "two"]
    with ProcessPoolExecutor(2, mp_context=get_context("spawn")) as pool:
        given = partial(make, stock=stockfile.built_in())
        for report in pool.map(given, [demo_plan] * 2, folders, [metrics] * 2):
            assert len(report.made) == len(here) - 1
    assert [digests(folder) for folder in folders] == [here, here]

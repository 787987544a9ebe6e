"""What every test may ask for, how Hypothesis runs here, and which tests are kept for a thorough run."""

from __future__ import annotations

import gc
import os
from itertools import count
from pathlib import Path

import pytest
from commands import run
from filelock import FileLock
from hypothesis import settings

from layout.drawing.metrics import FontMetrics
from layout.plan import Plan, plan
from templates_gen.files.kept import forget
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import printer_store
from templates_gen.lettering import fonts

# Imported modules live until the end, and tests leave little to collect: seldom is often enough.
gc.freeze()
gc.set_threshold(200_000)


def pytest_addoption(parser: pytest.Parser) -> None:
    """The switch for the tests that take long."""
    parser.addoption("--thorough", action="store_true", help="the slow tests too, and more examples by Hypothesis")


def pytest_configure(config: pytest.Config) -> None:
    """The mark of slow tests, and how many examples Hypothesis tries; a busy machine is no fault of the code."""
    config.addinivalue_line("markers", "slow: more cases of a truth that another test shows; run by --thorough")
    settings.register_profile("usual", deadline=None, max_examples=40)
    settings.register_profile("thorough", deadline=None, max_examples=200)
    settings.load_profile("thorough" if config.getoption("thorough") else "usual")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave out the slow tests, unless they are asked for."""
    if config.getoption("thorough"):
        return
    slow = [item for item in items if item.get_closest_marker("slow")]
    if slow:
        config.hook.pytest_deselected(items=slow)
        items[:] = [item for item in items if not item.get_closest_marker("slow")]


@pytest.fixture(autouse=True)
def _nothing_kept() -> None:
    """Each test begins as a new process does: what it changes in the code must not meet what was drawn before."""
    forget()


_folders = count()


@pytest.fixture(autouse=True)
def _no_printers_yet(tmp_path_factory: pytest.TempPathFactory) -> None:
    """No test sees the printers of another one, nor those that whoever runs it has measured."""
    os.environ[printer_store.FOLDER] = str(tmp_path_factory.getbasetemp() / f"printers-{next(_folders)}")


@pytest.fixture(scope="session")
def metrics() -> FontMetrics:
    """The measures of the print font."""
    return fonts.metrics()


@pytest.fixture(scope="session")
def demo_plan() -> Plan:
    """The plan of the built-in demo kit."""
    return plan(kitfile.demo())


@pytest.fixture(scope="session")
def demo_made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demo kit as the command makes it, in `strips`, and what it said, in `said`; made once for all workers."""
    shared = tmp_path_factory.getbasetemp()
    if "PYTEST_XDIST_WORKER" in os.environ:
        shared = shared.parent
    place = shared / "demo-made"
    with FileLock(shared / "demo-made.lock"):
        if not (place / "said").exists():
            place.mkdir(exist_ok=True)
            result = run("make", "-o", place / "strips")
            assert result.exit_code == 0, result.output
            (place / "said").write_text(result.stdout, encoding="utf-8")
    return place


@pytest.fixture(scope="session")
def demo_folder(demo_made: Path) -> Path:
    """The folder of the demo kit's files, to be read only."""
    return demo_made / "strips"

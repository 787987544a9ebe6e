"""One desk and one browser for all tests of a worker; each test begins with a slip of its own."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from desk_browser import Person, browser, let_in, served


@pytest.fixture(scope="session")
def kits(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of kits that the desk is opened on."""
    return tmp_path_factory.mktemp("kits")


@pytest.fixture(scope="session")
def downloads(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Where the browser saves."""
    return tmp_path_factory.mktemp("downloads")


@pytest.fixture(scope="session")
def _person(kits: Path, downloads: Path) -> Iterator[Person]:
    with browser(downloads) as person, served(kits) as desk:
        person.driver.get(desk.address)
        person.home = desk.home
        yield person


@pytest.fixture
def person(_person: Person) -> Person:
    """At a slip with the numbers of the example."""
    _person.screen().fresh()
    _person.complaints()
    return _person


@pytest.fixture(scope="session")
def _without_scripts(_person: Person, downloads: Path) -> Iterator[Person]:
    with browser(downloads, scripts=False) as other:
        let_in(_person, other)
        yield other


@pytest.fixture
def without_scripts(_without_scripts: Person) -> Person:
    """The same without JavaScript."""
    other = _without_scripts
    other.screen().open("kits").click('form[action="/new"] button')
    other.until(lambda: "/?k=" in other.driver.current_url and other.all(".langs"))
    return other

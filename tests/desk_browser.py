"""The desk in a real browser: the command that serves it, Chromium that opens it, and what a person does there.

Where a program is missing the tests that need it are skipped, or fail in `.ci/run` (`print_programs`).
"""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from time import monotonic, sleep
from typing import Any

import pytest
from print_programs import program
from selenium.webdriver import Chrome, ChromeOptions
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys
from selenium.webdriver.remote.webelement import WebElement

PATIENCE = 30.0
DESKTOP, PHONE = (1440, 900), (390, 844)
AXE = "AXE_CORE"
"""The environment variable with the path of axe.min.js, of the package axe-core."""
_ROOT = Path(__file__).resolve().parent.parent
_FLAGS = (
    "--headless=new",
    "--hide-scrollbars",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--force-device-scale-factor=1",
)
_NO_SCRIPTS = 2  # of a content setting: blocked


class Served:
    """A desk that runs: the address that lets a browser in, and how to close it."""

    def __init__(self, running: subprocess.Popen[str], address: str) -> None:
        self._running, self.address = running, address

    @property
    def home(self) -> str:
        """Its address without the key."""
        return self.address.partition("?")[0]

    def close(self) -> None:
        """Ends it as Ctrl-C does."""
        if self._running.poll() is None:
            self._running.send_signal(signal.SIGINT)
            self._running.wait(PATIENCE)


@contextmanager
def served(folder: Path) -> Iterator[Served]:
    """The command `desk` on a folder of kits, as it is installed."""
    command = [sys.executable, "-m", "templates_gen", "desk", "--no-browser", "--folder", str(folder)]
    environment = {**os.environ, "PYTHONUNBUFFERED": "1", "PYTHONPATH": str(_ROOT)}
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, env=environment
    ) as run:
        assert run.stdout
        try:
            found = next(found for line in run.stdout if (found := re.search(r"http://\S+\?key=[\w-]+", line)))
            desk = Served(run, found[0])
            yield desk
        finally:
            Served(run, "").close()


class Person:
    """Who sits before the browser: what she types, clicks and sees."""

    def __init__(self, driver: Chrome, home: str = "") -> None:
        self.driver, self.home = driver, home

    def open(self, path: str = "") -> Person:
        """Goes to a page of the desk."""
        self.driver.get(self.home + path)
        return self

    def fresh(self) -> Person:
        """A new slip with the numbers of the example, whatever lies on the desk."""
        self.open("kits")
        self.click('form[action="/new"] button')
        self.until(lambda: "/?k=" in self.driver.current_url)
        return self.ready()

    def ready(self) -> Person:
        """Waits until the scripts of the page run."""
        self.until(lambda: self.script("return document.documentElement.dataset.ready === 'yes'"))
        return self

    def script(self, text: str, *given: Any) -> Any:
        """What a script says in the page."""
        return self.driver.execute_script(text, *given)

    def find(self, selector: str) -> WebElement:
        """The element; it must be there."""
        return self.driver.find_element(By.CSS_SELECTOR, selector)

    def all(self, selector: str) -> list[WebElement]:
        """Every such element."""
        return self.driver.find_elements(By.CSS_SELECTOR, selector)

    def text(self, selector: str) -> str:
        """All text of the first such element, seen or not; "" where there is none."""
        found = self.script("return document.querySelector(arguments[0])?.textContent ?? ''", selector)
        return " ".join(str(found).split())

    def click(self, selector: str) -> None:
        """Clicks, wherever it is on the page."""
        element = self.find(selector)
        self.script("arguments[0].scrollIntoView({block: 'center'})", element)
        element.click()

    def line(self, name: str) -> WebElement:
        """The control of a line of the slip."""
        return self.find(f'#slip [name="{name}"]')

    def type(self, name: str, text: str, *, leave: bool = True) -> None:
        """Types over what is in a line, and leaves it."""
        line = self.line(name)
        self.script(
            "const d = arguments[0].closest('details'); if (d) d.open = true;"
            "arguments[0].scrollIntoView({block: 'center'})",
            line,
        )
        line.click()
        self.script("arguments[0].select()", line)
        line.send_keys(text or Keys.DELETE)
        if leave:
            line.send_keys(Keys.TAB)
            self.settled()

    def settled(self) -> Person:
        """Waits until no question is on its way."""
        self.until(lambda: not self.all("#desk-sheet[aria-busy]"))
        return self

    def value(self, name: str) -> str:
        """What stands in a line."""
        return str(self.line(name).get_property("value"))

    def until(self, truth: Any, said: str = "") -> Any:
        """Waits until it is true, and gives it; the test fails where it never is."""
        end = monotonic() + PATIENCE
        while monotonic() < end:
            try:
                if found := truth():
                    return found
            except Exception as error:
                if type(error).__module__.partition(".")[0] != "selenium":
                    raise
            sleep(0.03)
        pytest.fail(said or f"never came true on {self.driver.current_url}: {self.text('body')[:400]}")
        return None

    def sees(self, selector: str, text: str) -> None:
        """Waits until an element says it."""
        self.until(
            lambda: text in self.text(selector), f"{selector} never says {text!r}, but {self.text(selector)[:300]!r}"
        )

    def wrong(self) -> list[str]:
        """The lines that are shown as wrong."""
        return [str(each.get_attribute("data-key")) for each in self.all(".f.wrong")]

    def screen(self, size: tuple[int, int] = DESKTOP, *, dark: bool = False, forced: bool = False) -> Person:
        """As large a window, light or dark, with the system's own colours where `forced`."""
        width, height = size
        phone = size == PHONE
        values = {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": phone}
        self.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", values)
        features = {
            "prefers-color-scheme": "dark" if dark else "light",
            "forced-colors": "active" if forced else "none",
        }
        asked = {"features": [{"name": name, "value": value} for name, value in features.items()]}
        self.driver.execute_cdp_cmd("Emulation.setEmulatedMedia", asked)
        return self

    def complaints(self) -> list[str]:
        """What the browser says went wrong since it was last asked: scripts, policies, files that are not there.

        That nobody is asked on leaving, where a driver leaves and no hand does, is no fault.
        """
        said = [entry["message"] for entry in self.driver.get_log("browser") if entry["level"] == "SEVERE"]
        return [each for each in said if "beforeunload" not in each]


@contextmanager
def browser(downloads: Path, *, scripts: bool = True) -> Iterator[Person]:
    """Chromium, which saves into `downloads`; without scripts by its own setting."""
    options = ChromeOptions()
    options.binary_location = program("chromium")
    options.page_load_strategy = "eager"  # small pictures of sheets may come later
    for flag in _FLAGS:
        options.add_argument(flag)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    wanted: dict[str, object] = {
        "download.default_directory": str(downloads),
        "plugins.always_open_pdf_externally": True,
    }
    if not scripts:
        wanted["profile.managed_default_content_settings.javascript"] = _NO_SCRIPTS
    options.add_experimental_option("prefs", wanted)
    driver = Chrome(options=options, service=Service(program("chromedriver")))
    try:
        person = Person(driver)
        yield person.screen()
    finally:
        driver.quit()


def let_in(person: Person, other: Person) -> None:
    """Lets a second browser in with the cookies of the first: the key is for one."""
    other.home = person.home
    for cookie in person.driver.execute_cdp_cmd("Network.getAllCookies", {})["cookies"]:
        kept = {name: cookie[name] for name in ("name", "value", "path", "httpOnly", "sameSite") if name in cookie}
        other.driver.execute_cdp_cmd("Network.setCookie", {**kept, "url": person.home})


def axe_path() -> Path:
    """The accessibility engine; the test is skipped where it is not, and fails in `.ci/run`."""
    path = Path(os.environ.get(AXE, ""))
    if not path.is_file():
        said = f"axe-core is not there: npm pack axe-core, and the path of its axe.min.js in {AXE}"
        if os.environ.get("NEED_PROGRAMS"):
            pytest.fail(said)
        pytest.skip(said)
    return path

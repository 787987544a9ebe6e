"""Every state that the desk can be in, brought about as a person would; pictures and accessibility are of these."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from desk_browser import Person
from selenium.webdriver.common.keys import Keys

from templates_gen.data import text_of

_WIDTH = "frame.outer_width"


def two_kits(folder: Path) -> None:
    """Puts two kits that are unlike into a folder, and a file that cannot be read."""
    starter = text_of("demo.toml")
    (folder / "willow.toml").write_text(starter, "utf-8")
    other = starter.replace("Willow frame, small", "Heron frame").replace(
        'outer_width = "40 cm"', 'outer_width = "18 in"'
    )
    (folder / "heron.toml").write_text(other.replace('outer_height = "55 cm"', 'outer_height = "24 in"'), "utf-8")
    (folder / "unfinished.toml").write_text('name = "Half a kit"\n[frame]\nouter_width = "40 c"\n', "utf-8")


def copied_kit(person: Person, name: str = "Willow frame, small") -> Person:
    """A copy of a kit of the table, so that what is done to it does not meet what was done before."""
    person.open("kits")
    person.click(f'[aria-label="Copy {name}"]')
    person.until(lambda: "/?k=" in person.driver.current_url)
    return person.ready()


def _kits(person: Person) -> None:
    person.open("kits").ready()


def _compared(person: Person) -> None:
    _kits(person)
    for box in person.all('[name="compare"]')[:2]:
        box.click()
    person.click("#compare")
    person.until(lambda: person.all("#compared"))


def _first_minute(person: Person) -> None:
    person.fresh()


def _changing(person: Person) -> None:
    changed(copied_kit(person))


def changed(person: Person) -> None:
    """A line is changed and an end of the warp pointed at."""
    person.type(_WIDTH, "42 cm", leave=False)
    person.until(lambda: "42 cm" in str(person.find("svg.frame").get_attribute("aria-label")))
    person.script("document.querySelector('svg.frame').focus({preventScroll: true})")
    person.find("svg.frame").send_keys(Keys.HOME, Keys.PAGE_DOWN, Keys.PAGE_DOWN, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT)
    person.line(_WIDTH).click()


def _reasons(person: Person) -> None:
    copied_kit(person)
    person.click('[data-keep="num-sett"] summary')
    person.click('[data-keep="num-bending"] summary')


def _all_lines(person: Person) -> None:
    copied_kit(person)
    person.script("for (const each of document.querySelectorAll('#slip details')) each.open = true")


def _error(person: Person) -> None:
    copied_kit(person)
    person.type(_WIDTH, "40 c", leave=False)
    person.until(lambda: person.wrong() == [_WIDTH])


def _asked(person: Person) -> None:
    person.fresh()
    person.click('button[value="make"]')
    person.until(lambda: person.all(".asked"))


def _made(person: Person) -> None:
    copied_kit(person)
    person.click('button[value="strips"]')
    person.until(lambda: person.all(".proof"))


def _stale(person: Person) -> None:
    _made(person)
    person.type("weaving.height", "30 cm")
    person.sees("#away", "changed after")
    person.script("document.querySelector('#away').scrollIntoView()")


def _sheet(person: Person) -> None:
    copied_kit(person)
    person.click('.pile a[data-view^="strip-near"]')
    person.until(lambda: person.all(".shows-one .glass svg"))
    person.settled()


def _calibration(person: Person) -> None:
    _sheet(person)
    person.click("#calibrate")


STATES: Mapping[str, Callable[[Person], None]] = {
    "kits": _kits,
    "compared": _compared,
    "first-minute": _first_minute,
    "changing": _changing,
    "reasons": _reasons,
    "all-lines": _all_lines,
    "error": _error,
    "asked": _asked,
    "made": _made,
    "stale": _stale,
    "sheet": _sheet,
    "calibration": _calibration,
}
"""By name; each begins wherever the person is. The table of kits comes first, before there are copies in it."""

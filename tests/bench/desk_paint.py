"""How soon a change on the slip is seen: from the question sent to numbers and strip painted, in a real browser.

    python tests/bench/desk_paint.py --quick | --full

Each change is typed into the demo kit as a person would; 120 ms after the last key the question is sent. Painted is the
second animation frame after the answer was put into the page. The driver asks for the times only when all is painted:
asked every few milliseconds, the browser would be busy with that. Nothing is asserted: the times are this machine's.
"""

from __future__ import annotations

import sys
from itertools import cycle, islice
from pathlib import Path
from shutil import which
from tempfile import TemporaryDirectory
from time import sleep

sys.path.insert(0, str(Path(__file__).parents[1]))

from desk_browser import Person, browser, served

CHANGES = {"--quick": 20, "--full": 100}
_WAIT = """
window.seen = [];
document.addEventListener('answered', event => {
  const {sent, came} = event.detail;
  requestAnimationFrame(() => requestAnimationFrame(() => window.seen.push([sent, came, performance.now()])));
});
"""
_PAINTED = 0.6
"""Seconds in which a change is painted, with the pause before its question."""
_SINCE = "return window.seen.slice(arguments[0])"
_LINES = (
    ("frame.outer_width", "{} cm", (41, 42, 43, 44)),
    ("weaving.width", "{} cm", (22, 23, 25, 26)),
    ("frame.bar_diameter", "{} mm", (14, 16, 18, 20)),
    ("sett.readings[1].over", "{} mm", (49, 51, 50, 52)),
    ("weaving.height", "{} cm", (30, 31, 32, 33)),
)


def measured(person: Person, changes: int) -> list[tuple[float, float]]:
    """For each change the ms until the answer had come, and until it was painted."""
    person.fresh()
    person.script(_WAIT)
    found = []
    lines = [(name, text.format(numbers[k])) for k in range(4) for name, text, numbers in _LINES]
    for name, text in islice(cycle(lines), changes):
        seen = len(person.script("return window.seen"))
        person.type(name, text, leave=False)
        sleep(_PAINTED)
        sent, came, painted = person.until(lambda seen=seen: person.script(_SINCE, seen))[0]
        found.append((came - sent, painted - sent))
    return found


def main(how: str) -> None:
    """Prints the times that 50 and 95 of 100 changes stay within."""
    if not (which("chromium") and which("chromedriver")):
        print("desk, to paint: no browser here")
        return
    with (
        TemporaryDirectory() as kits,
        TemporaryDirectory() as saved,
        browser(Path(saved)) as person,
        served(Path(kits)) as desk,
    ):
        person.driver.get(desk.address)
        person.home = desk.home
        measured(person, 5)
        times = measured(person, CHANGES[how])
    for name, values in (("answer", [each for each, _ in times]), ("paint", [each for _, each in times])):
        ordered = sorted(values)
        middle, most = (ordered[min(len(ordered) - 1, int(part * len(ordered)))] for part in (0.5, 0.95))
        within = sum(each <= 150 for each in ordered)
        print(f"desk, question to {name}: half within {middle:.0f} ms, 95 % within {most:.0f} ms,", end=" ")
        print(f"{within} of {len(ordered)} within 150 ms")


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else "--quick")

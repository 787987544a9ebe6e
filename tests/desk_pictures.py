"""Pictures of the desk in every state, on a desktop and a phone, light and dark.

    PYTHONPATH=.:tests python tests/desk_pictures.py FOLDER [STATE...]

They end at the window, as a person sees it. For the README, one picture of at most 120 KB:

    PYTHONPATH=.:tests python tests/desk_pictures.py --readme docs/desk.png
"""

from __future__ import annotations

import sys
from io import BytesIO
from pathlib import Path
from tempfile import TemporaryDirectory

from desk_browser import DESKTOP, PHONE, Person, browser, let_in, served
from desk_states import STATES, changed, two_kits
from PIL import Image

from templates_gen.data import text_of

_COLOURS = 64
_SMALL_ONES_ARE_THERE = (
    "return [...document.querySelectorAll('.pile img')].every(e => e.dataset.shown === e.dataset.of)"
)
_SIZES = {"desktop": DESKTOP, "phone": PHONE}


def taken(folder: Path, names: list[str]) -> None:
    """Writes a picture of each of these states, size and theme into a folder."""
    folder.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory() as kits, TemporaryDirectory() as saved, browser(Path(saved)) as person:
        two_kits(Path(kits))
        with served(Path(kits)) as desk:
            person.driver.get(desk.address)
            person.home = desk.home
            for name in names:
                STATES[name](person)
                _all_sizes(person, folder, name)
            with browser(Path(saved), scripts=False) as other:
                let_in(person, other)
                other.open()
                _all_sizes(other, folder, "no-javascript")
            for message in person.complaints():
                print(message)
            person.fresh()
        person.type("frame.outer_width", "41 cm")
        person.until(lambda: person.find("#closed").is_displayed())
        _all_sizes(person, folder, "closed")


def for_readme(file: Path) -> None:
    """Writes the picture of the README: a kit that is being changed, with an end of its warp pointed at."""
    with TemporaryDirectory() as kits, TemporaryDirectory() as saved, browser(Path(saved)) as person:
        (Path(kits) / "willow.toml").write_text(text_of("demo.toml"), "utf-8")
        with served(Path(kits)) as desk:
            person.driver.get(desk.address)
            person.home = desk.home
            person.open("kits").click("button.link")
            person.until(lambda: "/?k=" in person.driver.current_url)
            changed(person.ready())
            person.until(lambda: person.script(_SMALL_ONES_ARE_THERE))
            picture = Image.open(BytesIO(person.driver.get_screenshot_as_png())).convert("RGB")
    picture.quantize(_COLOURS, dither=Image.Dither.NONE).save(file, optimize=True)
    print(f"{file}: {file.stat().st_size / 1000:.0f} KB")


def _all_sizes(person: Person, folder: Path, name: str) -> None:
    from time import sleep

    for size, window in _SIZES.items():
        for theme in ("light", "dark"):
            person.screen(window, dark=theme == "dark")
            sleep(0.5)
            person.driver.save_screenshot(str(folder / f"{name}-{size}-{theme}.png"))
    person.screen()


if __name__ == "__main__" and sys.argv[1] == "--readme":
    for_readme(Path(sys.argv[2]))
elif __name__ == "__main__":
    taken(Path(sys.argv[1]), sys.argv[2:] or list(STATES))

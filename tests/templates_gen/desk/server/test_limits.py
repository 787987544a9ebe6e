"""Limits of the desk: large enough for the largest kit, and a sentence beyond them."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

import pytest
from desk_client import Visitor

from templates_gen.desk.server import looking, pages
from templates_gen.desk.server.drawing import Drawing
from templates_gen.desk.server.forms import LETTERS, LETTERS_OF_WORDS
from templates_gen.desk.server.guard import FIELDS
from templates_gen.desk.server.refusals import FORM_BYTES
from templates_gen.desk.slip.fields import LISTS, SPECS
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.shape import most_of
from templates_gen.desk.slip.typed import example
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.roles.desk_server import DeskRefusal


def full() -> dict[str, str]:
    """A slip with every list as long as it may be; a list within a list has one row."""
    typed = example()
    for place in LISTS:
        inner = [name for name in SPECS if name.startswith(f"{place}[].") and "[]" not in name[len(place) + 3 :]]
        for row in range(1, most_of(place.replace("[]", "[1]")) + 1):
            at = place.replace("[]", f"[{row}]") + ("[1]" if "[]" in place else f"[{row}]")
            typed |= {f"{at}{name[len(place) + 2 :]}": "12.5 cm" for name in inner}
    return {name: typed.get(name, "") for name in lines(typed)}


def test_the_largest_kit_has_room(tmp_path: Path) -> None:
    """Its form is within both limits, and is answered."""
    form = full()
    assert 1000 < len(form) + 50 < FIELDS
    assert len(urlencode(form)) + 10_000 < FORM_BYTES
    here = Visitor(tmp_path)
    assert here.post("/slip", form).status_code == 303
    slip = here.desk.slips.get(here.slip)
    assert slip
    assert len(slip.typed) > 1000


@pytest.mark.parametrize(("line", "most"), [("frame.outer_width", LETTERS), ("yarns.warp", LETTERS_OF_WORDS)])
def test_a_line_that_is_too_long_is_refused(tmp_path: Path, line: str, most: int) -> None:
    """In a sentence that says how long it may be, and nothing is changed; one letter less is the kit's own matter."""
    here = Visitor(tmp_path)
    answer = here.post("/look", {"nr": "1", line: "1" * (most + 1)}, accept="application/json")
    assert answer.status_code == 413
    assert str(most) in (answer.json or {})["say"]
    assert here.look({line: "1" * most})["lines"][line]["say"]


def test_what_takes_too_long_to_draw_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The lines are answered all the same, and what was typed is kept; the page too comes without its drawings."""
    here = Visitor(tmp_path)
    within = Drawing.within

    def slowly(drawing: Drawing, seconds: float, draw: Callable[[], Any]) -> Any:
        return within(drawing, seconds, lambda: (time.sleep(1.0), draw())[1])

    monkeypatch.setattr(Drawing, "within", slowly)  # what is kept is drawn in no time
    monkeypatch.setattr(looking, "WHILE_TYPING", 0.01)
    said = here.look({"frame.outer_width": "41 cm"})
    why = ENGLISH.say(DeskRefusal.TOO_LARGE_TO_DRAW)
    assert why in said["parts"]["notes"]
    assert said["lines"]["frame.outer_width"]["source"] == "yours"
    assert "frame" not in said["parts"]
    monkeypatch.setattr(pages, "OF_A_PAGE", 0.01)
    page = here.get("/").text
    assert why in page
    assert 'value="41 cm"' in page

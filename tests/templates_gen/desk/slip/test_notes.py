"""What asks for care stands at a line that is there."""

from __future__ import annotations

import pytest

from layout.kit.kit import kit_values
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.notes import Note
from templates_gen.desk.slip.reading import read
from templates_gen.desk.slip.typed import example, typed_of
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.english import ENGLISH
from tests.kits import KINDS, NAILS, PEGGED, TRAVEL, kit_of

CASES: dict[str, tuple[dict[str, str], str]] = {
    "a window in another unit": ({"sett.readings[1].over": "55 cm", "sett.readings[1].pairs": "149"},
                                 "sett.readings[1].over"),
    "a very wide frame": ({"frame.outer_width": "2500 mm"}, "frame.outer_width"),
    "very wide sides": ({"frame.side_width": "160 mm", "frame.outer_width": "80 cm"}, "frame.side_width"),
    "a wrap that its label does not allow": ({"warp.wrap.turns": "60"}, "warp.wrap.turns"),
    "a thin bar of wood": ({"frame.material": "pine", "frame.bar_diameter": "8 mm"}, "frame.bar_diameter"),
    "a travel too short": ({"frame.tensioner": "rods", "frame.travel": "1 mm"}, "frame.travel"),
    "threads counted for pairs": ({"sett.readings[1].pairs": "26", "sett.readings[2].pairs": "53"},
                                  "sett.readings[1].pairs"),
    "one reading alone": ({"sett.readings[2].pairs": "37", "sett.loosest": "yes"}, "sett.loosest"),
}  # fmt: skip


@pytest.mark.parametrize("what", CASES)
def test_a_warning_stands_at_its_line(what: str) -> None:
    """A number that can be read and is hardly meant asks for care where it was typed."""
    changes, field = CASES[what]
    found = read({**example(), **changes}, ENGLISH)
    assert found.troubles == ()
    assert field in [note.about for note in found.notes]


@pytest.mark.parametrize("kind", KINDS)
def test_every_warning_is_at_a_line_of_the_slip(kind: str) -> None:
    """Whatever the frame, each warning is of a line that is there, or of none, and is said in the page's language."""
    for extra in ({"frame.material": "pine"}, {"frame.tension": "3 kg"}, {"sett.given": "7 per inch"}):
        typed = typed_of(kit_values(kit_of({**KINDS[kind], "warp": {"grams": 50, "length": "60 m"}}))) | extra
        found = read(typed, catalogue_of("de"))
        assert found.plan is not None or found.troubles
        assert found.plan is None or len(found.notes) == len(found.plan.warnings)
        assert {note.about for note in found.notes} <= {*lines(typed), ""}


@pytest.mark.parametrize(("keys", "field"), [
    (NAILS | {"frame.nail_length": "30 mm", "frame.tension": "2 kg"}, "frame.nail_length"),
    (PEGGED | {"frame.peg_diameter": "4 mm", "sett.given": "3 per cm"}, "frame.peg_diameter"),
    (TRAVEL | {"frame.travel": "1 mm"}, "frame.travel"),
])  # fmt: skip
def test_what_a_kind_of_frame_warns_of_stands_at_its_own_line(keys: dict[str, object], field: str) -> None:
    """Nails that bend, pegs that are thick for their pitch, a travel that is short."""
    notes: tuple[Note, ...] = read(typed_of(kit_values(kit_of(keys))), ENGLISH).notes
    assert field in [note.about for note in notes]

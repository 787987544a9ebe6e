"""The verifier's own computation for notches, pegs and odd warps, against sums done by hand."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from kits import NAILS, NOTCHED, PEGGED, kit_of

from layout.values.units import Sett
from templates_gen.verify.printed.expected import expected, sett_is_sound

F = Fraction
HELD = NOTCHED | {"frame.notch_density": "5 per cm"}

# Three and four ends at a pitch of 4 mm, contacts written down one by one. Four: W = 16, ends at -6, -2, 2, 6.
BY_HAND: dict[str, tuple[dict[str, object], int, tuple[int, ...], tuple[int, ...]]] = {
    "notched": (NOTCHED, 4, (-6, -2, 2, 6), (-6, -2, 2, 6)),
    "notched, odd": (NOTCHED, 3, (-4, 0, 4), (-4, 0, 4)),
    "held, every second": (HELD, 4, (-6, -2, 2, 6), (-6, -2, 2, 6)),
    "held, two ends": (NOTCHED | {"frame.notch_density": "1.25 per cm"}, 4, (-6, 2), (-6, 2, 10)),
    "pegged": (PEGGED, 4, (-8, 0, 8), (-4, 4)),
    "pegged, odd": (PEGGED, 3, (-6, 2), (-2, 6)),
    "nailed": (NAILS, 4, (-8, 0, 8), (-4, 4)),
    "nailed, odd": (NAILS, 3, (-6, 2), (-2, 6)),
    "wound, odd": ({"weaving.tie_off": "far end"}, 3, (-6, 2), (-2, 6)),
    "wound, odd, face straight": (
        {"weaving.tie_off": "far end", "weaving.slant": "face straight"},
        3,
        (-4, 4),
        (-4, 4),
    ),
}


@pytest.mark.parametrize("name", BY_HAND)
def test_marks_by_hand(name: str) -> None:
    """The notches, pegs and contacts that the kit's numbers ask for, from either side."""
    changes, ends, near, far = BY_HAND[name]
    kit = kit_of(changes | {"weaving.width": f"{4 * ends} mm"})
    found = expected(kit, F(1, 4), F(10))
    assert (found.near, found.far) == (near, far)
    assert found.limits == (-2 * ends, 2 * ends)
    turned = expected(kit_of(changes | {"weaving.width": f"{4 * ends} mm", "weaving.start": "right"}), F(1, 4), F(10))
    assert sorted(turned.near) == sorted(-x for x in near)
    assert sorted(turned.far) == sorted(-x for x in far)


@pytest.mark.parametrize(
    ("tie_off", "wound", "notched"), [(None, 4, 5), ("near end", 4, 4), ("far end", 5, 5), ("either end", 5, 5)]
)
def test_how_many_ends_there_are(tie_off: str | None, wound: int, notched: int) -> None:
    """Room for five ends and a half: even where the thread comes back, odd where it must not."""
    for kind, ends in (({}, wound), (NOTCHED, notched)):
        kit = kit_of(kind | {"weaving.width": "22 mm"} | ({"weaving.tie_off": tie_off} if tie_off else {}))
        assert expected(kit, F(1, 4), F(10)).limits[1] == 2 * ends


ROUGH = {"sett.given": None, "sett.readings": [{"pairs": 13, "window": "5 cm"}, {"pairs": 27, "measure": "10 cm"}]}


CLOSE = {"sett.given": None, "sett.readings": [{"pairs": 26, "window": "5 cm"}]}


@pytest.mark.parametrize(
    ("changes", "per_cm", "unit_mm", "sound"),
    [
        (NOTCHED | ROUGH, F(5, 2), 20, True),  # at least 2.7 per cm: five single ends to 2 cm
        (NOTCHED | ROUGH, F(5, 2), 40, True),  # ten of the 10.8 to 4 cm
        (NOTCHED | ROUGH, F(2), 20, False),  # not the largest that counts off
        (PEGGED | ROUGH, F(5, 2), 40, True),  # five pegs to 4 cm are ten ends, six would be twelve: too many
        (PEGGED | ROUGH, F(5, 2), 20, False),  # the lines would fall on a peg and between two by turns
        (PEGGED | CLOSE, F(4), 10, True),  # 26 pairs in 5 cm are 5.2 per cm: two pegs to 1 cm
        (PEGGED | CLOSE, F(5), 10, False),
        (PEGGED | CLOSE, F(5), 20, True),
        (NAILS | ROUGH, F(5, 2), 40, True),  # as with pegs
        (NAILS | ROUGH, F(5, 2), 20, False),
        (HELD | ROUGH, F(5, 2), 20, True),  # every second notch of 5 per cm
        (HELD | ROUGH, F(5), 20, False),  # more than was measured
        (NOTCHED | ROUGH | {"frame.notch_density": "1.3 per cm"}, F(13, 5), 20, True),  # two to a notch
        (NOTCHED | ROUGH | {"frame.notch_density": "1.3 per cm"}, F(13, 10), 20, False),
    ],
)
def test_whether_a_sett_follows(changes: dict[str, object], per_cm: Fraction, unit_mm: int, sound: bool) -> None:
    """Counted off singly, or the largest of half, once and twice the density that was measured."""
    assert sett_is_sound(kit_of(changes), per_cm / 10, F(unit_mm)) is sound


def test_a_sett_given_must_fall_on_the_notches() -> None:
    """The notches allow 2.5 per cm, the one given; no other is sound, be it allowed by them or not."""
    kit = kit_of(HELD)
    assert sett_is_sound(kit, F(1, 4), F(20))
    assert not sett_is_sound(kit, F(1, 2), F(20))
    off = replace(kit, sett=replace(kit.sett, given=Sett(F(3, 10), "cm")))  # no kit file can say this
    assert not sett_is_sound(off, F(3, 10), F(20))

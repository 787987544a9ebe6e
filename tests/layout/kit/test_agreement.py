"""Inputs that do not go together."""

from __future__ import annotations

from typing import Any

import pytest

from tests.plain_kits import FLAT, LEFT_OUT, NAILS, NOTCHED, PEGGED, ROUND, changed, only_refusal


@pytest.mark.parametrize(
    ("changes", "key", "says"),
    [
        ({"weaving__width": "32.1 cm"}, "weaving.width", "at most the 32 cm"),
        ({"weaving__height": "52 cm"}, "weaving.height", "less than the 52 cm that the frame ends leave"),
        ({"frame__side_width": "19 cm"}, "frame.outer_width", "both sides and both margins together, 40 cm"),
        ({"frame__margin": "17 cm"}, "frame.outer_width", "both sides and both margins together, 40 cm"),
        ({"frame__outer_width": "60 mm"}, "frame.outer_width", "both margins together, 80 mm"),
        (
            {"frame__bar_diameter": "12 cm", "frame__outer_height": "24 cm"},
            "frame.outer_height",
            "that both frame ends take and 10 mm to weave in, 25 cm",
        ),
        ({"frame__edge_radius": "3 mm"}, "frame.edge_radius", 'left out with ends = "round bars"'),
        ({"frame__thickness": "18 mm"}, "frame.thickness", 'left out with ends = "round bars"'),
        ({"frame__bar_diameter": LEFT_OUT}, "frame.bar_diameter", 'given with ends = "round bars"'),
        ({"sett__given": "6 epi"}, "sett.given", "the only one of given and readings"),
        ({"sett": {}}, "sett", "got neither"),
        ({"sett": {"given": "6 epi", "loosest": True}}, "sett.loosest", "nothing beside given"),
        ({"sett": {"given": "6 epi", "as_measured": True}}, "sett.as_measured", "nothing beside given"),
        ({"sett__readings": [{"pairs": 1, "window": "2 m"}]}, "sett.readings[1]", "0.1 to 60 ends per cm"),
        ({"sett__readings": [{"pairs": 99, "window": "1 cm"}]}, "sett.readings[1]", "0.1 to 60 ends per cm"),
        ({"sett__readings": [{"window": "1 cm"}]}, "sett.readings[1]", "needs pairs"),
        (
            {"sett__readings": [{"pairs": 9, "window": "1 in", "measure": "1 in"}]},
            "sett.readings[1]",
            "either the window",
        ),
        ({"sett__marking_unit": "2 mm"}, "sett.marking_unit", "holds one wind"),
        ({"frame": 5}, "frame", "table of keys"),
        ({"yarns": "wool"}, "yarns", "table of keys"),
    ],
)
def test_inputs_that_do_not_go_together_are_refused(changes: dict[str, Any], key: str, says: str) -> None:
    """A refusal names the input to change and what it would have to be beside the others."""
    assert says in only_refusal(changed(ROUND, **changes), key)


@pytest.mark.parametrize(
    ("base", "changes", "key", "says"),
    [
        (NOTCHED, {"frame__notch_width": LEFT_OUT}, "frame.notch_width", 'given with ends = "notched ends"'),
        (NOTCHED, {"frame__notch_depth": LEFT_OUT}, "frame.notch_depth", 'given with ends = "notched ends"'),
        (NOTCHED, {"frame__thickness": LEFT_OUT}, "frame.thickness", 'given with ends = "notched ends"'),
        (NOTCHED, {"frame__peg_diameter": "3 mm"}, "frame.peg_diameter", 'left out with ends = "notched ends"'),
        (NOTCHED, {"frame__end_width": "6 mm"}, "frame.end_width", "more than the 6 mm that its notches take"),
        (NOTCHED, {"weaving__slant": "face straight"}, "weaving.slant", "all ends lie straight on the face"),
        (NOTCHED, {"weaving__first_pass": "back"}, "weaving.first_pass", "all ends lie straight on the face"),
        (NOTCHED, {"weaving__height": "54 cm"}, "weaving.height", "less than the 53.8 cm that the frame ends leave"),
        (NOTCHED, {"frame__notch_density": "8 per cm"}, "frame.notch_density", "at most 6.8 notches per cm"),
        (
            NOTCHED,
            {"frame__notch_density": "4 per cm", "sett": {"given": "3 per cm"}},
            "sett.given",
            "2 ends per cm (an end in every second notch), 4 ends per cm (an end in every notch)",
        ),
        (
            NOTCHED,
            {"frame__notch_density": "5 per cm", "sett__as_measured": True},
            "sett.as_measured",
            "left out with a notch_density",
        ),
        (PEGGED, {"frame__row_distance": LEFT_OUT}, "frame.row_distance", 'given with ends = "pegged ends"'),
        (PEGGED, {"frame__peg_diameter": LEFT_OUT}, "frame.peg_diameter", 'given with ends = "pegged ends"'),
        (PEGGED, {"frame__edge_distance": LEFT_OUT}, "frame.edge_distance", 'given with ends = "pegged ends"'),
        (PEGGED, {"frame__notch_density": "5 per cm"}, "frame.notch_density", 'left out with ends = "pegged ends"'),
        (PEGGED, {"frame__bar_bore": "5 mm"}, "frame.bar_bore", 'left out with ends = "pegged ends"'),
        (PEGGED, {"frame__end_width": "2 cm"}, "frame.end_width", "more than the 2.3 cm that its pegs take"),
        (
            PEGGED,
            {"frame__outer_height": "46 mm"},
            "frame.outer_height",
            "that both frame ends take and 10 mm to weave in",
        ),
        (NAILS, {"frame__nail_diameter": LEFT_OUT}, "frame.nail_diameter", 'given with ends = "nails"'),
        (NAILS, {"frame__row_distance": "9 mm"}, "frame.row_distance", 'left out with ends = "nails"'),
        (NAILS, {"frame__end_width": "10 mm"}, "frame.end_width", "more than the 10.5 mm that its nails take"),
        (NAILS, {"weaving__slant": "face straight"}, "weaving.slant", "where all ends lie straight on the face"),
        (PEGGED, {"frame__nail_length": "9 mm"}, "frame.nail_length", 'left out with ends = "pegged ends"'),
        (ROUND, {"frame__notch_depth": "5 mm"}, "frame.notch_depth", 'left out with ends = "round bars"'),
        (FLAT, {"frame__edge_distance": "5 mm"}, "frame.edge_distance", 'left out with ends = "flat ends"'),
        (ROUND, {"weaving__tie_off": "nowhere"}, "weaving.tie_off", '"near end", "far end" or "either end"'),
        (ROUND, {"weaving__doubled_selvedges": 11}, "weaving.doubled_selvedges", "a whole number from 0 to 10"),
    ],
)
def test_every_kind_of_ends_has_its_own_inputs(
    base: dict[str, Any], changes: dict[str, Any], key: str, says: str
) -> None:
    """What an end needs must be given, what belongs to another kind left out, each in one sentence."""
    assert says in only_refusal(changed(base, **changes), key)


@pytest.mark.parametrize(
    ("changes", "key", "says"),
    [
        ({"frame__edge_radius": "9.1 mm"}, "frame.edge_radius", "half the thickness, 9 mm"),
        ({"frame__bar_diameter": "15 mm"}, "frame.bar_diameter", 'left out with ends = "flat ends"'),
        ({"frame__thickness": LEFT_OUT}, "frame.thickness", 'given with ends = "flat ends"'),
        ({"weaving__height": "55 cm"}, "weaving.height", "less than the 55 cm that the frame ends leave"),
    ],
)
def test_flat_ends_have_their_own_inputs(changes: dict[str, Any], key: str, says: str) -> None:
    """What belongs to round bars is refused beside flat ends, and the other way round."""
    assert says in only_refusal(changed(FLAT, **changes), key)

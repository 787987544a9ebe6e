"""A strip for a 12 in weaving comes out in one piece on the sheets that most people have."""

from __future__ import annotations

import pytest
from kits import FLAT, laying_of, plan_of

from layout.paper.choice import Laying

ENDS: tuple[dict[str, object], ...] = (
    *({"frame.bar_diameter": f"{mm} mm"} for mm in (6, 8, 10, 12, 15, 20, 28, 40)),
    FLAT | {"frame.thickness": "4 mm"},
    FLAT | {"frame.thickness": "20 mm", "frame.edge_radius": "3 mm"},
)
SETTS = ("4 epi", "5 epi", "6 epi", "8 epi", "10 epi", "12 epi", "2/cm", "2.5/cm", "3/cm", "4/cm", "5/cm")
SLANTS = ("shared", "face straight")


def strips_of(changes: dict[str, object]) -> list[Laying]:
    """How both strips of a kit lie on its paper."""
    return [laying_of(plan_of(changes), name) for name in ("strip-near", "strip-far")]


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize("number", range(len(ENDS)))
def test_twelve_inches_lie_in_one_piece(paper: str, number: int) -> None:
    """Both strips lie on one sheet each, in one piece; a low one is at most 10 mm high and says that it is low."""
    for k, sett in enumerate(SETTS):
        twelve = {"weaving.width": "12 in", "frame.outer_width": "18 in", "sett.given": sett, "paper.size": paper}
        turned = {"weaving.slant": SLANTS[(k + number) % 2], "weaving.start": ("left", "right")[k % 2]}
        for laying in strips_of({**twelve, **turned, **ENDS[number]}):
            assert [len(pieces) for pieces in laying.sheets] == [1]
            assert laying.part.length >= 304.8 - 25.4  # whole winds of a coarse sett may leave less than an inch
            low = any("Low form" in note for note in laying.notes)
            assert low == any("Low form" in note for note in laying.part.notes)
            if low:
                assert laying.part.height <= 10.0 + 1e-9


@pytest.mark.parametrize("number", range(len(ENDS)))
def test_twelve_inches_lie_on_one_common_sheet(number: int) -> None:
    """The sheet that fits both papers may be too short between its targets: then two pieces lie side by side."""
    twelve = {"weaving.width": "12 in", "frame.outer_width": "18 in", "sett.given": SETTS[number]}
    for laying in strips_of({**twelve, **ENDS[number]}):
        assert sum(map(len, laying.sheets)) in (1, 2)
        assert len(laying.sheets) <= 2  # the pieces of a thick bar have no room beside each other


def test_a_tall_strip_stays_whole_where_the_sheet_allows_it() -> None:
    """On a large sheet the same strip is the full one, as high as the half turn and its gluing edge."""
    twelve = {"weaving.width": "12 in", "frame.outer_width": "18 in", "paper.size": "a3"}
    assert [laying.part.height > 25 for laying in strips_of(twelve)] == [True, True]
    assert all(laying.notes == () for laying in strips_of(twelve))

"""What a frame check says, said alike by the drawing and by its proof, over many frames and every tie among them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from kits import FLAT, font_metrics, plan_of

from templates_gen.files.outputs import Outputs
from templates_gen.verify.prove import prove

LEAST, MOST = 350, 450  # mm


def complaints(changes: dict[str, object]) -> tuple[str, ...]:
    """What the proof says of the check sheet of a kit, as it is drawn."""
    planned = plan_of(changes)
    output = Outputs(planned, font_metrics(), ["frame-check"]).output("frame-check.pdf")
    return prove(planned, output.sheets, output.laid, on_paper=True).sentences


def refused(widths: list[str], changes: dict[str, object]) -> dict[str, tuple[str, ...]]:
    """The widths of a frame whose check sheet is refused."""
    found = {width: complaints(changes | {"frame.outer_width": width}) for width in widths}
    return {width: wrong for width, wrong in found.items() if wrong}


IN_MM = [f"{Fraction(k, 2)} mm" for k in range(2 * LEAST, 2 * MOST + 1)]
IN_INCHES = [f"{Fraction(k, 16)} in" for k in range(14 * 16, 18 * 16 + 1)]
WAYS: dict[str, dict[str, object]] = {
    "round bars": {},
    "sides of 1 3/8 in": {"frame.side_width": "1 3/8 in"},
    "a board that bends": FLAT | {"frame.material": "oak", "frame.end_width": "30 mm", "frame.tension": "2 N"},
}


@pytest.mark.parametrize("way", WAYS)
def test_no_width_of_a_frame_is_refused(way: str) -> None:
    """Widths by 3.5 mm and by seven sixteenths of an inch, which meet every half millimetre and every sixteenth."""
    first = list(WAYS).index(way)
    assert refused(IN_MM[first::7] + IN_INCHES[first::7], WAYS[way]) == {}


@pytest.mark.slow
@pytest.mark.parametrize("way", WAYS)
def test_no_width_of_a_frame_is_refused_at_all(way: str) -> None:
    """Widths by half a millimetre and by a sixteenth of an inch."""
    assert refused(IN_MM + IN_INCHES, WAYS[way]) == {}


@pytest.mark.parametrize("width", ["400.5 mm", "18 1/16 in"])
def test_ties_are_among_them(width: str) -> None:
    """Frames whose half lies midway between two lines of a rule, in mm or in sixteenths, are proven as well."""
    planned = plan_of({"frame.outer_width": width})
    half = planned.kit.frame.outer_width.mm / 2
    lines = half / (Fraction(127, 80) if width.endswith("in") else Fraction(1, 2))
    assert lines.denominator == 2
    assert complaints({"frame.outer_width": width}) == ()


PAPERS = ("148 x 210 mm", "210 x 148 mm", "199 x 210 mm", "200 x 260 mm", "210 x 259 mm", "297 x 210 mm", "letter")
WIDE_NAMES: dict[str, object] = {
    "name": "MW " * 13,
    "yarns": {"warp": "M W " * 10, "weft": "W M " * 10},
    "warp": {"count": 300, "system": "tex", "fibre": "cotton"},
    "frame.material": "pine",
    "weaving.doubled_selvedges": 2,
    "weaving.doubled_warp": True,
}


@pytest.mark.parametrize("size", PAPERS)
@pytest.mark.parametrize("names", [{}, WIDE_NAMES], ids=["short names", "the widest names"])
def test_the_check_sheet_fits_every_paper(size: str, names: dict[str, object]) -> None:
    """In one part or in two, with the highest head that a kit can ask for."""
    assert complaints(names | {"paper.size": size}) == ()

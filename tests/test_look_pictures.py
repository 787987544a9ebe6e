"""Pictures and check sheets keep the promise of every sheet, for every kind of frame, in every turn, on every paper."""

from __future__ import annotations

import pytest
from ink import meetings
from kits import font_metrics, plan_of
from pictures import EVERY
from test_look import GAP, LEAST, NAMES, PAPERS, outside

from layout.drawing.shapes import Text
from layout.paper.sheets import lay, printed
from layout.products import PRODUCTS

STRONG: tuple[dict[str, object], ...] = (
    {},
    {"weaving.doubled_warp": True, "weaving.doubled_selvedges": 1},
    {"warp": {"count": 300, "system": "tex"}, "frame.material": "pine", "frame.end_width": None},
)


@pytest.mark.parametrize("number", range(len(EVERY)))
@pytest.mark.parametrize("product", ["winding", "frame-check"])
def test_every_picture_is_a_good_drawing(product: str, number: int) -> None:
    """Words keep 0.3 mm of white around them, nothing leaves the margins, and no words are under 7.5 pt."""
    changes = list(EVERY.values())[number]
    for size in (PAPERS[number % len(PAPERS)], PAPERS[(number + 3) % len(PAPERS)]):
        plan = plan_of(changes | size | NAMES[number % len(NAMES)] | STRONG[number % len(STRONG)])
        layings = [lay(plan, build, font_metrics()) for build in PRODUCTS[product].builds(plan, font_metrics())]
        for page in printed(plan, layings, font_metrics()):
            assert meetings(page.sheet, GAP) == []
            assert outside(page.sheet) == []
            sizes = {shape.size for shape in page.sheet.shapes if isinstance(shape, Text)}
            assert len(sizes) <= 4
            assert min(sizes) >= LEAST - 1e-9

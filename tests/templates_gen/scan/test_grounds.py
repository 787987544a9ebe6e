"""Lines that end a grey area: the edges of a gauge's windows, the sides of a notch."""

from __future__ import annotations

import numpy
import pytest
from PIL import Image, ImageFilter

from layout.drawing.shapes import Point
from templates_gen.scan.frames import Map
from templates_gen.scan.lines import lines_off
from templates_gen.scan.seen import Line

FINE, SCAN = 40, 8  # pixels in a mm as it is drawn, and as it is scanned
LEAN = 0.03  # mm to the right in 1 mm up: no sheet lies so straight that its lines are those of the pixels


@pytest.mark.parametrize("grey", [255, 230, 200])
@pytest.mark.parametrize("width", [0.2, 0.35, 0.9])
def test_a_line_at_the_edge_of_grey_is_found_at_its_middle(width: float, grey: int) -> None:
    """Within 6 micrometres and within what is stated, white or grey beside it, whichever side it is on."""
    for side in (-1, 1):
        drawn = numpy.full((20 * FINE, 10 * FINE), 255, numpy.uint8)
        high = 20 - (numpy.arange(drawn.shape[0]) + 0.5) / FINE
        away = (numpy.arange(drawn.shape[1]) + 0.5)[None, :] / FINE - (5.0 + LEAN * (high - 10))[:, None]
        drawn[away * side > 0] = grey
        drawn[abs(away) <= width / 2] = 0
        blurred = Image.fromarray(drawn).filter(ImageFilter.GaussianBlur(0.09 * FINE))
        pixels = numpy.asarray(blurred.resize((10 * SCAN, 20 * SCAN), Image.Resampling.BOX))
        to_pixels = Map(numpy.array([[SCAN, 0.0], [0.0, -SCAN]]), numpy.array([-0.5, 20 * SCAN - 0.5]))
        line = Line(Point(5.0 + 8 * LEAN, 18), Point(5.0 - 8 * LEAN, 2), width)
        (found,) = lines_off(pixels, to_pixels, [line], 255.0)
        assert found is not None
        assert abs(found.off) < 0.006
        assert abs(found.off) < 2 * found.within

"""Every input of a stock file, once: its key, kind, limits, default, help and an example. All limits are our own."""

from __future__ import annotations

from fractions import Fraction

from layout.cutting.stock.stock import OPERATIONS
from layout.drawing.printer import MOST
from layout.kit.input import Input
from layout.kit.lookup import catalogue
from layout.messages.catalogue import Role
from layout.messages.roles import StockHelp
from layout.values.units import Length

_COLOURS = {"engrave": "#c39a6b", "score": "#7a6f8f", "cut": "#4a2c2a", "reference": "#a19a8e"}
_COLOUR = {
    "engrave": StockHelp.COLOURS_ENGRAVE,
    "score": StockHelp.COLOURS_SCORE,
    "cut": StockHelp.COLOURS_CUT,
    "reference": StockHelp.COLOURS_REFERENCE,
}
_WIDTH = {
    "engrave": StockHelp.WIDTHS_ENGRAVE,
    "score": StockHelp.WIDTHS_SCORE,
    "cut": StockHelp.WIDTHS_CUT,
    "reference": StockHelp.WIDTHS_REFERENCE,
}
_SPEED = {
    "engrave": StockHelp.SPEEDS_ENGRAVE,
    "score": StockHelp.SPEEDS_SCORE,
    "cut": StockHelp.SPEEDS_CUT,
}


def _mm(mm: int | str) -> Length:
    return Length(Fraction(mm))


def _length(key: str, what: Role, example: str, bounds: tuple[int | str, int | str], default: str = "") -> Input:
    low, high = map(_mm, bounds)
    return Input(key, "length", what, example, default=default or None, low=low, high=high)


def _needed(key: str, what: Role, example: str, bounds: tuple[int | str, int | str]) -> Input:
    low, high = map(_mm, bounds)
    return Input(key, "length", what, example, required=True, low=low, high=high)


def _share(key: str, what: Role, example: str, least: int) -> Input:
    return Input(key, "deviation", what, example, least=Fraction(least), most=Fraction(MOST_OFF))


_KERF, _SIDES = (0, 5), (20, 3500)

MOST_OFF = round(100 * MOST)
"""No cutter is further off than so many per cent: more is a file that was not opened at its size."""

STOCK = catalogue(
    (
        Input("version", "version", StockHelp.VERSION, "1", required=True),
        Input("name", "name", StockHelp.NAME, '"birch 3 mm"', required=True),
        Input("material", "name", StockHelp.MATERIAL, '"birch plywood"', required=True),
        _needed("thickness", StockHelp.THICKNESS, '"3 mm"', ("0.1", 50)),
        Input("bending", "number", StockHelp.BENDING, "30"),
        _needed("sheet.width", StockHelp.SHEET_WIDTH, '"600 mm"', _SIDES),
        _needed("sheet.height", StockHelp.SHEET_HEIGHT, '"400 mm"', _SIDES),
        Input(
            "sheet.grain",
            "choice",
            StockHelp.SHEET_GRAIN,
            '"y"',
            default="none",
            choices=("x", "y", "none"),
        ),
        _length("cutting.kerf", StockHelp.CUTTING_KERF, '"0.20 mm"', _KERF),
        _length("cutting.kerf_x", StockHelp.CUTTING_KERF_X, '"0.21 mm"', _KERF),
        _length("cutting.kerf_y", StockHelp.CUTTING_KERF_Y, '"0.19 mm"', _KERF),
        _length("cutting.kerf_uncertainty", StockHelp.CUTTING_KERF_UNCERTAINTY, '"0.02 mm"', (0, 1)),
        Input(
            "cutting.kerf_drawn",
            "flag",
            StockHelp.CUTTING_KERF_DRAWN,
            "true",
            default=True,
        ),
        _length("cutting.ease", StockHelp.CUTTING_EASE, '"0.15 mm"', (0, 5), "0.15 mm"),
        Input(
            "cutting.too_fine",
            "choice",
            StockHelp.CUTTING_TOO_FINE,
            '"every second end"',
            default="say so",
            choices=("say so", "every second end", "printed guide"),
        ),
        _length(
            "trial.kerf",
            StockHelp.TRIAL_KERF,
            '"0.20 mm"',
            _KERF,
        ),
        _length(
            "trial.slot",
            StockHelp.TRIAL_SLOT,
            '"0.30 mm"',
            (0, 10),
        ),
        _share("scale.x", StockHelp.SCALE_X, '"0.21 %"', -MOST_OFF),
        _share("scale.y", StockHelp.SCALE_Y, '"-0.13 %"', -MOST_OFF),
        _share("scale.skew", StockHelp.SCALE_SKEW, '"0.05 %"', -MOST_OFF),
        _share("scale.uncertainty", StockHelp.SCALE_UNCERTAINTY, '"0.03 %"', 0),
        *(
            Input(
                f"colours.{each}",
                "colour",
                _COLOUR[each],
                f'"{_COLOURS[each]}"',
                default=_COLOURS[each],
            )
            for each in OPERATIONS
        ),
        *(_length(f"widths.{each}", _WIDTH[each], '"0.1 mm"', ("0.001", 2), "0.1 mm") for each in OPERATIONS),
        *(Input(f"speeds.{each}", "number", _SPEED[each], "20") for each in _SPEED),
        Input("prices.sheet", "number", StockHelp.PRICES_SHEET, "4.50"),
        Input("prices.minute", "number", StockHelp.PRICES_MINUTE, "0.80"),
    )
)
"""The inputs of a stock file."""

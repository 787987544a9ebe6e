"""Every input of a stock file, once: its key, kind, limits, default, help and an example. All limits are our own."""

from __future__ import annotations

from fractions import Fraction

from layout.cutting.stock.stock import OPERATIONS
from layout.kit.input import Input
from layout.kit.lookup import catalogue
from layout.values.units import Length

_COLOURS = {"engrave": "#27358d", "score": "#2f9a74", "cut": "#c9391f", "reference": "#a19a8e"}
_RUN = OPERATIONS[:-1]
_TABLE_HELP = {
    "colours": "The colour that shows the cutter what to {operation}.",
    "widths": "The width of lines in the group {operation}.",
    "speeds": "How fast the head moves when it runs {operation}, in mm/s.",
}


def _mm(mm: int | str) -> Length:
    return Length(Fraction(mm))


def _length(key: str, words: str, example: str, bounds: tuple[int | str, int | str], default: str = "") -> Input:
    low, high = map(_mm, bounds)
    return Input(key, "length", words, example, default=default or None, low=low, high=high)


def _needed(key: str, words: str, example: str, bounds: tuple[int | str, int | str]) -> Input:
    low, high = map(_mm, bounds)
    return Input(key, "length", words, example, required=True, low=low, high=high)


_KERF, _SIDES = (0, 5), (20, 3500)

STOCK = catalogue(
    (
        Input("version", "version", "The version of the stock file; this one is 1.", "1", required=True),
        Input("name", "name", "What you call this stock; it stands in the files.", '"birch 3 mm"', required=True),
        Input("material", "name", "What it is made of.", '"birch plywood"', required=True),
        _needed("thickness", "How thick the sheet is, measured.", '"3 mm"', ("0.1", 50)),
        Input("bending", "number", "Its bending strength along the face grain, in N/mm2.", "30"),
        _needed("sheet.width", "The sheet from left to right.", '"600 mm"', _SIDES),
        _needed("sheet.height", "The sheet from bottom to top.", '"400 mm"', _SIDES),
        Input(
            "sheet.grain",
            "choice",
            "Which way the face grain runs: along x (the width), along y (the height), or there is none.",
            '"y"',
            default="none",
            choices=("x", "y", "none"),
        ),
        _length("cutting.kerf", "The full width of the cut.", '"0.20 mm"', _KERF),
        _length("cutting.kerf_x", "The width of a cut that runs up the sheet.", '"0.21 mm"', _KERF),
        _length("cutting.kerf_y", "The width of a cut that runs across the sheet.", '"0.19 mm"', _KERF),
        _length("cutting.kerf_uncertainty", "By how much the kerf may be off.", '"0.02 mm"', (0, 1)),
        Input(
            "cutting.kerf_drawn",
            "flag",
            "Whether the lines are drawn for the kerf; false leaves that to the machine.",
            "true",
            default=True,
        ),
        _length("cutting.ease", "What a slot is wider than its yarn.", '"0.15 mm"', (0, 5), "0.15 mm"),
        Input(
            "cutting.too_fine",
            "choice",
            "What to make where the pitch is too fine for a comb of this stock.",
            '"every second end"',
            default="say so",
            choices=("say so", "every second end", "printed guide"),
        ),
        _length(
            "trial.kerf",
            "The kerf that the trial cut was drawn for, kept when it is measured; leave it out for a new trial.",
            '"0.20 mm"',
            _KERF,
        ),
        _length(
            "trial.slot",
            "What is engraved at the slot of the trial cut that holds the yarn; the ease follows from it.",
            '"0.30 mm"',
            (0, 10),
        ),
        *(
            Input(
                f"colours.{each}",
                "colour",
                _TABLE_HELP["colours"].format(operation=each),
                f'"{_COLOURS[each]}"',
                default=_COLOURS[each],
            )
            for each in OPERATIONS
        ),
        *(
            _length(f"widths.{each}", _TABLE_HELP["widths"].format(operation=each), '"0.1 mm"', ("0.001", 2), "0.1 mm")
            for each in OPERATIONS
        ),
        *(Input(f"speeds.{each}", "number", _TABLE_HELP["speeds"].format(operation=each), "20") for each in _RUN),
        Input("prices.sheet", "number", "What one sheet costs, in your own money.", "4.50"),
        Input("prices.minute", "number", "What a minute of the cutter costs, in the same money.", "0.80"),
    )
)
"""The inputs of a stock file."""

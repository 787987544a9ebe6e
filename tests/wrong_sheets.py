"""Wrong builders of what is read: spacing guides, the frame check, the wrap gauge, the weaving grid."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from kits import NOTCHED, PEGGED, TRAVEL
from wrong_builders import Spoil, Wrong, returns, swap, value

import layout.frames.load as load_module
import layout.frames.tension as tension_module
import layout.paper.panes as panes_module
import layout.parts.check_items as items_module
import layout.parts.frame_check as check_module
import layout.parts.frame_figure as figure_module
import layout.parts.frame_pull as pull_module
import layout.parts.gauge_columns as columns_module
import layout.parts.gauge_table as table_module
import layout.parts.grid as grid_module
import layout.parts.grid_key as key_module
import layout.parts.guide_sheet as guide_sheet_module
import layout.parts.guide_words as guide_module
import layout.parts.spacing_guide as spacing_module
import layout.parts.wrap_gauge as gauge_module
import layout.plan as plan_module
import layout.products as products_module
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Part
from layout.messages.catalogue import Catalogue, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Beam, Gauge, Grid, Guide, Marking

GUIDE, CHECK, GAUGE, GRID = "spacing-guide.pdf", "frame-check.pdf", "wrap-gauge.pdf", "weaving-grid.pdf"
TOP = {"weaving.near_end": "top", "weaving.first_pass": "back"}
STIFF = {"frame.material": "oak", "frame.tension": "2 N", "weaving.doubled_selvedges": 2}
BACK = {"weaving.woven_from": "back"}
PAIRS: Mapping[str, object] = {"sett": {"readings": [{"pairs": 13, "window": "5 cm"}]}}
MIRRORED = BACK | {"weaving.cartoon": "mirrored"}
MEASURED: Mapping[str, object] = {
    "warp": {"count": 300, "system": "tex", "fibre": "cotton"},
    "frame.material": "beech",
    "frame.dip": {"load": "20 g", "length": "40 cm", "depth": "6 mm"},
}
SMALL: Mapping[str, object] = {"paper.size": "148 x 210 mm"}
BEADS: Mapping[str, object] = {"weft": {"beads": {"number": 26, "over": "5 cm"}}}


EXCHANGED = guide_sheet_module._PUSH | {
    "odd": guide_sheet_module._PUSH["even"],
    "even": guide_sheet_module._PUSH["odd"],
}


def instead(module: Any, old: Role, new: Role) -> Spoil:
    """A builder that says `new` where it should say `old`."""
    other = Catalogue({**ENGLISH.messages, old: ENGLISH.messages[new]})
    return value(module, "ENGLISH", other)


def reworded(module: Any, role: Role, **values: Callable[[Any], str]) -> Spoil:
    """A builder that says `role` with other values."""

    class Other(Catalogue):
        def say(self, asked: Role, **given: object) -> str:
            changed = {name: change(given[name]) for name, change in values.items()} if asked is role else {}
            return ENGLISH.say(asked, **given | changed)

    return value(module, "ENGLISH", Other(ENGLISH.messages))


def worded(changed: Mapping[Role, str]) -> Spoil:
    """A gauge whose messages are `changed`."""
    other = Catalogue({**ENGLISH.messages, **changed})
    return returns(gauge_module, "_said_of", lambda said: said._replace(words=other))


def own_row(change: Callable[[Any], Any]) -> Spoil:
    """A gauge that picks another row out."""
    return returns(gauge_module, "gauge_table", lambda table: table._replace(own_row=change(table.own_row)))


def remarked(name: str, change: Callable[[Any], Any]) -> Spoil:
    """A grid whose columns and rows are said with another value."""
    wide = "4 mm" if name != "wide" else change("4 mm")
    rows = 176 if name != "rows" else change(176)
    said = (
        ENGLISH.say(Grid.COLUMNS, columns=50, wide=wide),
        ENGLISH.say(Grid.ROWS, rows=rows, picks=2 * rows, high="1.923 mm"),
        ENGLISH.say(Grid.LESS, less="1.5 mm"),
    )
    return returns(grid_module, "remarks_for", lambda _: said)


def _third(on: Any) -> Any:
    """The fourth piece as the third."""
    return on._replace(number=3) if on.number == 4 else on


def more(text: object) -> str:
    """A whole number one too high."""
    return str(int(str(text)) + 1)


def less(text: object) -> str:
    """A whole number one too low."""
    return str(int(str(text)) - 1)


def without_last(part: Part) -> Part:
    """A part without the last line of its words."""
    last = max(place for place, shape in enumerate(part.shapes) if isinstance(shape, Text))
    return replace(part, shapes=(*part.shapes[:last], *part.shapes[last + 1 :]))


def sides_exchanged(phrases: Any) -> Any:
    """Left at the right, and right at the left."""
    words = {ENGLISH.say(Marking.LEFT): "right", ENGLISH.say(Marking.RIGHT): "left"}
    return [phrase._replace(stand=words.get(phrase.words, phrase.stand)) for phrase in phrases]


def aside(texts: Any) -> Any:
    """Words 30 mm to the left and as far down."""
    return [text._replace(at=Point(text.at.x - 30, text.at.y - 30)) for text in texts]


def pull_said(old: str, new: str) -> Spoil:
    """A check that says other figures of the pull."""
    return returns(pull_module, "_pull", lambda said: said.replace(old, new))


def blanks_exchanged(checks: Any) -> Any:
    """The diagonals with the names of the sides, and the other way round."""
    one, other, *rest = checks
    return (one._replace(blanks=other.blanks), other._replace(blanks=one.blanks), *rest)


SHEETS: Mapping[str, Wrong] = {
    "another marking unit than the kit asks for": Wrong(
        {"sett.marking_unit": "5 cm"},
        GAUGE,
        swap(
            plan_module, "take_sett", lambda right: lambda stated, *how: right(replace(stated, marking_unit=None), *how)
        ),
    ),
    # spacing guides
    "the guide of the other heading": Wrong(
        {}, GUIDE, value(guide_module, "SEEN", {"near": Guide.FAR_FROM_FACE, "far": Guide.NEAR_FROM_FACE})
    ),
    "left and right of a guide exchanged": Wrong({}, GUIDE, returns(spacing_module, "phrases_for", sides_exchanged)),
    "the arrow of a guide away from the weaving": Wrong(
        TOP,
        GUIDE,
        returns(spacing_module, "phrases_for", lambda all_: [p._replace(arrow="up" if p.arrow else "") for p in all_]),
    ),
    "odd and even ends exchanged": Wrong({}, GUIDE, value(guide_sheet_module, "_PUSH", EXCHANGED)),
    "ends pushed from the other side": Wrong(
        {},
        GUIDE,
        value(guide_sheet_module, "_PUSH", {kind: two[::-1] for kind, two in guide_sheet_module._PUSH.items()}),
    ),
    "ends said to lie behind where none does": Wrong(
        NOTCHED, GUIDE, returns(guide_sheet_module, "has_back", lambda _: True)
    ),
    "a push said not to be needed": Wrong(
        {}, GUIDE, returns(guide_sheet_module, "lies", lambda lie: lie._replace(off=""))
    ),
    "guides without their caution": Wrong(
        {}, GUIDE, returns(spacing_module, "guide_sheet", lambda said: said._replace(cautions=()))
    ),
    "steps in another order": Wrong(
        {}, GUIDE, returns(spacing_module, "guide_sheet", lambda said: said._replace(steps=said.steps[::-1]))
    ),
    # the frame check
    "pounds of force as kilograms": Wrong(STIFF, CHECK, value(pull_module, "NEWTONS", {"lb": Fraction("9.80665")})),
    "newtons ten times too many": Wrong(STIFF, CHECK, pull_said(" N, ", "0 N, ")),
    "the greatest pull one too low": Wrong({}, CHECK, pull_said("to 400 N", "to 399 N")),
    "a pull that was measured said to be assumed": Wrong(
        MEASURED, CHECK, reworded(load_module, Beam.TENSION_RANGE, origin=lambda _: "assumed")
    ),
    "a dip whose stretch is not taken off": Wrong(MEASURED, CHECK, value(tension_module, "COTTON", (0.0, 0.0, 0.0))),
    "threads of one layer alone": Wrong(PEGGED, CHECK, pull_said("50 threads", "25 threads")),
    "the weight of half a dip": Wrong(MEASURED, CHECK, value(pull_module, "MOST_DIP", Fraction(1, 120))),
    "pitches of another length": Wrong(
        MEASURED, CHECK, returns(items_module, "measuring_words", lambda said: said.replace("550 mm", "400 mm"))
    ),
    "rows of the table exchanged": Wrong(
        MEASURED, CHECK, returns(items_module, "measuring_table", lambda rows: rows[:1] + rows[:0:-1])
    ),
    "a column of the table left out": Wrong(
        MEASURED, CHECK, returns(items_module, "measuring_table", lambda rows: tuple(row[:-1] for row in rows))
    ),
    "no table of pulls": Wrong(MEASURED, CHECK, returns(items_module, "measuring_table", lambda _: ())),
    "the caution left out of the second card": Wrong(
        MEASURED | SMALL,
        CHECK,
        returns(check_module, "_cards", lambda part: without_last(part) if part.name == "pull-check" else part),
    ),
    "no second card": Wrong(SMALL, CHECK, returns(products_module, "frame_check", lambda parts: parts[:1])),
    "nothing said of the lowest height": Wrong(TRAVEL, CHECK, value(check_module, "at_lowest", lambda _, part: part)),
    "checked at the greatest height": Wrong(
        TRAVEL,
        CHECK,
        returns(check_module, "at_lowest", lambda part: replace(part, notes=(part.notes[0].replace("55", "57"),))),
    ),
    "both cards with the title of one": Wrong(
        MEASURED | SMALL,
        CHECK,
        value(check_module, "_NAMED", dict.fromkeys(("frame-check", "pull-check"), check_module._NAMED["frame-check"])),
    ),
    "the diagonal of another frame": Wrong(
        {}, CHECK, returns(items_module, "root_by_rule", lambda said: said.replace("6", "9"))
    ),
    "another height in the picture": Wrong(
        {}, CHECK, returns(figure_module, "by_rule", lambda said: said.replace("550", "540"))
    ),
    "figures finer than a rule": Wrong(
        {}, CHECK, returns(items_module, "root_by_rule", lambda said: said.replace("680", "680.1"))
    ),
    "a caution left out": Wrong(
        {}, CHECK, returns(check_module, "_signed", lambda shown: shown._replace(shapes=shown.shapes[:-1]))
    ),
    "what is to be written down exchanged": Wrong({}, CHECK, returns(check_module, "checks", blanks_exchanged)),
    "boards called bars on a check": Wrong(
        NOTCHED, CHECK, value(items_module, "ends_words", lambda _: items_module._BARS)
    ),
    "remedies exchanged": Wrong(
        {},
        CHECK,
        returns(check_module, "remedies", lambda rows: ((rows[0][0], rows[1][1]), (rows[1][0], rows[0][1]), rows[2])),
    ),
    "the rings of the diagonals beside them": Wrong(
        {}, CHECK, returns(figure_module, "_on_diagonals", lambda two: tuple(Point(at.x + 2, at.y) for at in two))
    ),
    "rings of other numbers": Wrong(
        {},
        CHECK,
        swap(
            figure_module,
            "ring",
            lambda right: (
                lambda at, words, metrics, *size: right(at, {"1": "2", "2": "1"}.get(words, words), metrics, *size)
            ),
        ),
    ),
    "a frame of other proportions": Wrong({}, CHECK, value(figure_module, "_STEEPEST", 1)),
    # the wrap gauge
    "winds said where single ends are counted": Wrong(
        NOTCHED, GAUGE, value(table_module, "_COUNTED", dict.fromkeys(table_module._COUNTED, Gauge.WINDS))
    ),
    "inches said where centimetres are counted": Wrong(
        {}, GAUGE, returns(gauge_module, "gauge_table", lambda table: table._replace(heads=("epi", table.heads[1])))
    ),
    "warp and weft exchanged": Wrong(
        {},
        GAUGE,
        worded({Gauge.WARP: "Weft", Gauge.WEFT: "Warp"}),
    ),
    "whole pairs not asked for": Wrong({}, GAUGE, worded({Gauge.STEP_COUNT: "Catch the warp in a notch."})),
    "no word of blades": Wrong({}, GAUGE, worded({Gauge.CAUTION: "Cut with care."})),
    "more pairs in the other windows": Wrong(
        PAIRS,
        GAUGE,
        returns(gauge_module, "_said_of", lambda said: said._replace(names=said.names._replace(more="1 in holds 9."))),
    ),
    "a kit's count one too high": Wrong(
        PAIRS, GAUGE, returns(gauge_module, "_said_of", lambda said: said._replace(kit=said.kit.replace("13", "14")))
    ),
    "the row of another count picked out": Wrong(PAIRS, GAUGE, own_row(lambda row: row + 1)),
    "no row picked out": Wrong(PAIRS, GAUGE, own_row(lambda _: None)),
    "a row picked out that is not the kit's": Wrong({}, GAUGE, own_row(lambda _: 2)),
    "the column of another unit picked out": Wrong(
        PAIRS, GAUGE, returns(gauge_module, "gauge_table", lambda table: table._replace(own=0))
    ),
    "columns of the table exchanged": Wrong(
        PAIRS, GAUGE, returns(columns_module._Needs, "middles", lambda both: (both[1], both[0]))
    ),
    "a yarn left out of the card": Wrong(
        PAIRS,
        GAUGE,
        returns(gauge_module, "_said_of", lambda said: said._replace(names=said.names._replace(weft=said.names.warp))),
    ),
    "another table's window named": Wrong(
        PAIRS, GAUGE, returns(gauge_module, "gauge_table", lambda table: table._replace(over="2 in"))
    ),
    # the weaving grid
    "one row more than there is in words": Wrong(BEADS, GRID, remarked("rows", lambda rows: rows + 1)),
    "columns as wide as two ends in words": Wrong(BEADS, GRID, remarked("wide", lambda _: "8 mm")),
    "a guess said to be counted": Wrong(
        {"weft": {"wrap": {"turns": 11, "window": "2 cm"}}}, GRID, returns(grid_module, "notes_for", lambda n: n[:1])
    ),
    "a mirrored grid numbered from the left": Wrong(
        BEADS | MIRRORED, GRID, returns(grid_module, "grid_of", lambda grid: replace(grid, mirrored=False))
    ),
    "woven from its face, said of a back": Wrong(
        BEADS | BACK, GRID, returns(grid_module, "notes_for", lambda _: (ENGLISH.say(Grid.FROM_FACE),))
    ),
    "a mirrored grid not said to be one": Wrong(
        BEADS | MIRRORED, GRID, returns(grid_module, "notes_for", lambda _: (ENGLISH.say(Grid.FROM_BACK),))
    ),
    "a fourth piece that calls itself the third": Wrong(
        BEADS, GRID, swap(grid_module, "key_of", lambda right: lambda on, *rest: right(_third(on), *rest))
    ),
    "a map that fills another piece": Wrong(
        BEADS, GRID, swap(key_module, "_map", lambda right: lambda on, metrics: right(_third(on), metrics))
    ),
    "no legend": Wrong(BEADS, GRID, returns(key_module, "signs", lambda _: ())),
    "grey where nothing is laid over": Wrong(
        BEADS, GRID, returns(grid_module._Draft, "under", lambda grey: [*grey, grid_module._grey(-20, 10, 0, 20)])
    ),
    "no grey": Wrong(BEADS, GRID, returns(grid_module._Draft, "under", lambda _: ())),
    "not said where to cut": Wrong(BEADS, GRID, returns(grid_module, "trims", lambda _: ())),
    "cut at the right": Wrong(
        BEADS,
        GRID,
        swap(grid_module, "trims", lambda right: lambda pane: right(replace(pane, left=pane.right - 10))),
    ),
    "joined on the centre line": Wrong(BEADS, GRID, value(panes_module, "_FROM_MIDDLE", 0.0)),
    "steps of a grid in another order": Wrong(
        BEADS, GRID, returns(grid_module._Draft, "with_words", lambda part: replace(part, steps=part.steps[::-1]))
    ),
    "one bead less than fits": Wrong(
        BEADS | {"weaving.height": "as high as fits"},
        GRID,
        returns(grid_module, "grid_of", lambda grid: replace(grid, rows=grid.rows - 1)),
    ),
    "the centre named at a limit": Wrong(BEADS, GRID, returns(grid_module._Draft, "centres", aside)),
}
"""By a name that says what is wrong."""

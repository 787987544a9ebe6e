"""What the command `yarn` says: one yarn in every system and how thick it is, for people and for programs."""

from __future__ import annotations

from fractions import Fraction

from layout.values.limits import plain
from layout.values.numerals import say_number
from layout.values.quantity import Quantity
from layout.yarns.diameter import INCH
from layout.yarns.yarn import Yarn
from layout.yarns.yarn_counts import OUNCE_G, SYSTEMS, YARD_M, rounded_tex
from templates_gen.inputs.yarn_options import YarnQuestion
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.screen import Measure, YarnRow
from templates_gen.screen.ranges import THICK, about
from templates_gen.screen.report import number
from templates_gen.screen.tables import Line, aligned

_BALLS = (
    (50, Measure.GRAMS, Fraction(50)),
    (100, Measure.GRAMS, Fraction(100)),
    (4, Measure.OUNCES, 4 * OUNCE_G),
)
_KEYS = {"m/100g": "m_per_100g", "yd/lb": "yd_per_lb"}


def yarn_values(asked: YarnQuestion) -> dict[str, object]:
    """The yarn for programs: null for what was not asked; lengths in mm, weights in g."""
    yarn, wrap, hard = asked.yarn, asked.wrap, asked.compressed
    numbers, thick = yarn.numbers() if yarn else {}, asked.thickness
    return {
        **{_KEYS.get(key, key): number(numbers[key]) if yarn else None for key in SYSTEMS},
        "how": yarn.origin.value if yarn else None,
        "because": list(asked.reasons),
        "specific_volume_cm3_per_g": _figure(asked.volume) if asked.volume else None,
        "compressed_diameter_mm": _figure(hard.figure) if hard else None,
        "soft_diameter_mm": _figure(wrap.diameter.figure) if wrap else None,
        "wraps_per_inch": number(asked.wraps_per_inch) if asked.wraps_per_inch else None,
        "craft_yarn_classes": list(asked.classes) if wrap else None,
        "pressed_mm": _figure(thick.pressed) if thick else None,
        "soft_mm": _figure(thick.soft) if thick else None,
        "warnings": list(thick.soft.conflicts) if thick else [],
    }


def _figure(figure: Quantity) -> dict[str, object]:
    return {
        "value": figure.value,
        "low": figure.low,
        "high": figure.high,
        "how": figure.origin.value,
        "because": figure.reason,
        "assumptions": list(figure.assumptions),
    }


def yarn_table(asked: YarnQuestion) -> str:
    """The yarn for people: every system, some balls, both kinds of thickness, and how each was obtained."""
    thick, reasons = _thickness(asked)
    rows = [*_systems(asked.yarn), *_balls(asked.yarn)] if asked.yarn else []
    lines = aligned([*rows, *thick])
    head = [*asked.reasons, ""] if asked.yarn else []
    gap = [""] if rows else []
    return "\n".join([*head, *lines[: len(rows)], *gap, *lines[len(rows) :], "", *(f"  {why}" for why in reasons)])


def _systems(yarn: Yarn) -> list[Line]:
    """The number in every system, and what it counts."""
    rows = []
    for key, value in yarn.numbers().items():
        name, counted = message(SYSTEMS[key].name), SYSTEMS[key].counts
        counts = message(counted) if counted else ""
        if key == "tex":
            counts = message(YarnRow.TEX, meaning=counts, rounded=plain(rounded_tex(value)))
        rows.append((name, plain(value), counts))
    return rows


def _balls(yarn: Yarn) -> list[Line]:
    """What is on balls of the usual weights."""
    rows = []
    for weight, unit, grams in _BALLS:
        metres = grams * yarn.metres_per_gram
        length = message(Measure.METRES, number=say_number(metres, 1))
        yards = message(Measure.YARDS, number=say_number(metres / YARD_M, 1))
        rows.append((message(YarnRow.BALL, weight=message(unit, number=weight)), length, yards))
    return rows


def _thickness(asked: YarnQuestion) -> tuple[list[Line], list[str]]:
    """Both kinds of thickness, each labelled, and the reasons for them."""
    rows: list[Line] = []
    reasons: list[str] = []
    for diameter in (asked.compressed, asked.wrap and asked.wrap.diameter):
        if diameter:
            name, figure = message(YarnRow.DIAMETER, kind=diameter.named), diameter.figure
            turns = say_number(INCH / Fraction(diameter.mm), 1)
            side = message(YarnRow.SIDE_BY_SIDE, origin=figure.origin, number=turns)
            rows.append((name, message(Measure.MM, number=f"{diameter.mm:.3f}"), side))
            reasons += [figure.reason, *figure.assumptions]
    if asked.wraps_per_inch:
        found = listed(list(map(str, asked.classes))) or message(YarnRow.NO_CLASS)
        remark = YarnRow.CLASSES_ARE if len(asked.classes) > 1 else YarnRow.CLASS_IS
        rows.append((message(YarnRow.CLASS), found, message(remark, wraps=plain(asked.wraps_per_inch))))
    return [*rows, *_ranges(asked)], [*reasons, *_lies(asked)]


def _ranges(asked: YarnQuestion) -> list[Line]:
    """Between what the yarn lies, pressed and soft."""
    thick = asked.thickness
    named = ((YarnRow.PRESSED, thick.pressed), (YarnRow.SOFT, thick.soft)) if thick else ()
    return [(message(name), about(figure, THICK), figure.origin.value) for name, figure in named]


def _lies(asked: YarnQuestion) -> list[str]:
    thick = asked.thickness
    return [message(YarnRow.LIES), *thick.soft.conflicts] if thick else []

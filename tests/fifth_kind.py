"""A kind of frame end that only the tests know: boards with one row of thin pins on the face, each turning two ends.

Run as a program it adds one piece to every table of kinds, before anything reads them, and makes and proves a kit of
it in memory. It prints what it found as JSON: problems by file, and what a wrong builder and a missing key bring.
"""

from __future__ import annotations

import copy
import json
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, ClassVar

from layout.frames.bar import Board
from layout.frames.kinds.frame_end import FrameEnd, board
from layout.frames.strength import Strength
from layout.kit.input import Input, of_mm
from layout.kit.kinds.all_keys import END_KEYS
from layout.kit.kinds.end_keys import THICKNESS, EndKeys
from layout.messages.catalogue import Role
from layout.messages.roles import EndNeed
from layout.sett.marking_units import PEGS
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class PinnedEnd(FrameEnd):
    """Pins stand `pin_distance` from the outer edge."""

    kind: ClassVar[str] = "pinned"
    name: ClassVar[str] = "pinned ends"
    thickness: Length
    pin_distance: Length

    @property
    def inset_mm(self) -> Fraction:
        """From the outer edge to the pins."""
        return self.pin_distance.mm

    @property
    def deep_mm(self) -> Fraction:
        """From face to back."""
        return self.thickness.mm

    def pass_mm(self, high: float) -> float:
        """From pin to pin."""
        return high - 2 * float(self.pin_distance.mm)

    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """To the pins and back."""
        return 2 * (wide - float(self.pin_distance.mm))

    def beam(self, strength: Strength, span: Fraction) -> Board | Role:
        """A board."""
        return board(self.thickness, strength, span)


class PinHelp(Role):
    """What is said of the keys of this kind."""

    PIN_DISTANCE = "help.pin_distance"


DISTANCE = Input("frame.pin_distance", "length", PinHelp.PIN_DISTANCE, '"12 mm"', low=of_mm(3), high=of_mm(60))
FIELDS = {"thickness": "thickness", "pin_distance": "pin_distance"}
END_KEYS.add(
    PinnedEnd.name,
    EndKeys(PinnedEnd, (THICKNESS, DISTANCE), FIELDS, PEGS, inside=EndNeed.PEGS_IN_WIDTH),
)

# The table of inputs is made of the keys of all kinds when it is first imported; all else follows.

from layout.drawing.metrics import FontMetrics  # noqa: E402
from layout.drawing.pens import Pen  # noqa: E402
from layout.drawing.shapes import Point, Shape, circle, line  # noqa: E402
from layout.drawing.sheet import Block  # noqa: E402
from layout.drawing.symbols import block  # noqa: E402
from layout.frames.frame import Frame  # noqa: E402
from layout.kit.kit import Kit, Weaving, kit_values, read_kit  # noqa: E402
from layout.messages.roles import Count, Gauge, SheetName, Template, Winding  # noqa: E402
from layout.parts.template.kinds import TEMPLATES  # noqa: E402
from layout.parts.template.levels import Levels, Opening, rows  # noqa: E402
from layout.parts.template.template_kind import Numbered, TemplateKind  # noqa: E402
from layout.parts.winding.kinds.picture_kind import BOARD, PictureKind, Section, wood  # noqa: E402
from layout.parts.winding.kinds.pictures import PICTURES  # noqa: E402
from layout.parts.winding.shown_passes import ShownPass  # noqa: E402
from layout.parts.winding.view import ENDS, View  # noqa: E402
from layout.plan import Plan, plan  # noqa: E402
from layout.sett.sett import SettTaken  # noqa: E402
from layout.values.errors import FieldErrors  # noqa: E402
from layout.values.quantity import Quantity, computed  # noqa: E402
from layout.warps.layout_result import LayoutResult  # noqa: E402
from layout.warps.warp import End, Pass, Warp  # noqa: E402
from layout.warps.way import Way  # noqa: E402
from layout.warps.ways import WAYS  # noqa: E402
from templates_gen.desk.look.frames import frame  # noqa: E402
from templates_gen.desk.look.numbers import numbers  # noqa: E402
from templates_gen.desk.look.strips import strip  # noqa: E402
from templates_gen.files.outputs import Outputs  # noqa: E402
from templates_gen.files.proof import findings, read, write  # noqa: E402
from templates_gen.inputs import stock_file  # noqa: E402
from templates_gen.lettering import fonts  # noqa: E402
from templates_gen.messages.english import ENGLISH  # noqa: E402
from templates_gen.messages.roles.proof_printed import Mark  # noqa: E402
from templates_gen.screen.report import plan_table  # noqa: E402
from templates_gen.verify.kinds.opening import Opening as Seen  # noqa: E402
from templates_gen.verify.kinds.truth import Asked, Form, Marks, Says, Sheets, Truth, board_inertia  # noqa: E402
from templates_gen.verify.kinds.truths import TRUTHS  # noqa: E402
from templates_gen.verify.whole import lacking  # noqa: E402

PIN = 0.5  # mm: the radius of a pin


class PinnedWay(Way[PinnedEnd]):
    """There and back from pin to pin, twice the pitch apart."""

    def lay(
        self, count: int, sett: SettTaken, ends: PinnedEnd, weaving: Weaving, thread: Fraction | None
    ) -> LayoutResult:
        """Near pins from the limit on, far ones between them."""
        pitch = 1 / sett.per_mm
        near = tuple(2 * j * pitch - count * pitch / 2 for j in range(count // 2 + 1))
        far = tuple((2 * j + 1) * pitch - count * pitch / 2 for j in range((count + 1) // 2))
        passes = tuple(Pass(near[(k + 1) // 2], far[k // 2], "face", "down" if k % 2 else "up") for k in range(count))
        return LayoutResult(near, far, passes, 2 * pitch)

    def thread(self, ends: PinnedEnd, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """Straight from pin to pin."""
        one = (ends.pass_mm(float(frame.outer_height.mm)) ** 2 + float(warp.pitch) ** 2) ** 0.5
        return computed(2 * one, "Up and down between pins."), computed(warp.ends * one, "Every end.")


class PinnedTemplate(TemplateKind[PinnedEnd]):
    """On the face, from the outer edge past the pins."""

    work = "marking"
    reading = (Template.A_PEG, Template.NUMBER_PEG, Template.DOTS)
    cautions = (Template.CAUTION_DRILL,)

    def first(self, end: End) -> int:
        """Near pins count from 0."""
        return 0 if end == "near" else 1

    def levels(self, ends: PinnedEnd, *, low: bool) -> Levels:
        """From the outer edge, or from just outside the pins."""
        return rows((float(ends.pin_distance.mm),), PIN, from_edge=not low)

    def openings(self, ends: PinnedEnd, marks: Numbered, plan: Plan, *, low: bool) -> Iterator[Opening]:
        """A hole for every pin."""
        for number, x in marks:
            yield Opening(number, x, float(ends.pin_distance.mm), 2 * PIN, 2 * PIN, is_round=True)

    def steps(self, ends: PinnedEnd, plan: Plan, *, low: bool) -> Iterator[str]:
        """Drill by it."""
        yield plan.words.say(Template.STEP_PRICK)

    def pictures(self, ends: PinnedEnd, plan: Plan, metrics: FontMetrics, *, low: bool) -> Iterator[Block]:
        """None."""
        return iter(())


class PinnedPicture(PictureKind):
    """Boards with a row of pins."""

    def source(self, plan: Plan) -> Winding:
        """From the strips."""
        return Winding.BY_STRIPS

    def number(self, warp: Warp, k: int, end: End) -> int:
        """The first pin is 0."""
        return (k + 1) // 2 if end == "near" else k // 2 + 1

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """At a pin."""
        return Point(leg.near if end == "near" else leg.far, view.inside(end, 0.5))

    def fittings(self, view: View) -> list[Shape]:
        """Every pin."""
        places = dict.fromkeys(self.meets(view, leg, end) for leg in view.way.legs for end in ENDS)
        return [circle(at, 0.4, Pen.HELP) for at in places]

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """On its pin."""
        return self.meets(view, leg, end)

    def section(self, view: View) -> Section:
        """A pin at both ends with the thread between them."""
        x, half = view.side_x, BOARD * view.scale.bar / 2
        near, far = (view.inside(end, 0.5) for end in ENDS)
        pins = [shape for y in (near, far) for shape in block(x - half - 6, y - 0.4, x - half, y + 0.4)]
        thread = line(Point(x - half - 3, near), Point(x - half - 3, far), Pen.THREAD)
        return Section([*wood(view), *pins, thread], half + 3, Point(x - half - 3, near))


class PinnedTruth(Truth[PinnedEnd]):
    """What must be true between pins."""

    laid = 2
    counted = Gauge.PEGS
    sett = (Count.SETT_INCH_PEGS, Count.SETT_CM_PEGS)
    legend = (Winding.ON_FACE, Winding.KNOT)
    first_near = 0
    opening = Mark.HOLE
    full_is_flush = True

    def follow(self, ends: PinnedEnd, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """A pin stands half a pitch beside the ends that it turns."""
        pins = [middles[0] - pitch / 2, *(middle + pitch / 2 for middle in middles)]
        return tuple(pins[0::2]), tuple(pins[1::2])

    def leans(self, ends: PinnedEnd, kit: Kit, pitch: Fraction, *, in_pairs: bool) -> Iterator[Fraction]:
        """A pitch on at every pass."""
        while True:
            yield pitch
            yield -pitch

    def lines(self, ends: PinnedEnd, form: str) -> list[tuple[float, Pen]]:
        """The row."""
        return [(float(ends.pin_distance.mm), Pen.HELP)]

    def sheets(self, ends: PinnedEnd) -> Sheets:
        """Strips that mark."""
        names = SheetName.NAME_STRIPS, SheetName.NAME_STRIP_NEAR, SheetName.NAME_STRIP_FAR
        return Sheets(*names, Template.PURPOSE_HELD)

    def says(self, ends: PinnedEnd, asked: Asked) -> Says:
        """Drill by it."""
        say = asked.words.say
        steps = [say(Template.STEP_CUT), say(Template.STEP_PRICK)]
        beside = [say(Template.READING), say(Template.A_PEG)]
        counts = {"near": asked.ends // 2, "far": (asked.ends + 1) // 2}
        beside.append(say(Template.NUMBER_PEG, **counts))
        return Says(steps, beside, [say(Template.CAUTION_DRILL)], [])

    def filled(self, ends: PinnedEnd, marks: Sequence[Fraction], to_weaving: int, form: Form) -> list[Seen]:
        """A hole for every pin, 1 mm across."""
        return [Seen(float(x), to_weaving * float(ends.pin_distance.mm), 1.0, 1.0, True) for x in marks]

    def together(self, ends: PinnedEnd, kit: Kit, inside: float) -> float:
        """From the pins on."""
        return max(inside, float(ends.pin_distance.mm))

    def way_mm(self, ends: PinnedEnd, high: float) -> float:
        """From pin to pin."""
        return high - float(ends.pin_distance.mm) - float(ends.pin_distance.mm)

    def inertia(self, ends: PinnedEnd, kit: Kit) -> float | None:
        """A board."""
        return board_inertia(kit, float(ends.thickness.mm))


WAYS.add(PinnedEnd.name, PinnedWay())
TEMPLATES.add(PinnedEnd.name, PinnedTemplate())
PICTURES.add(PinnedEnd.name, PinnedPicture())
TRUTHS.add(PinnedEnd.name, PinnedTruth())

VALUES: dict[str, Any] = {
    "version": 1,
    "name": "Plover frame",
    "yarns": {"warp": "seine twine 12/6", "weft": "three strands of wool"},
    "sett": {"given": "2.5 ends/cm"},
    "frame": {
        "ends": "pinned ends",
        "thickness": "15 mm",
        "pin_distance": "12 mm",
        "material": "beech",
        "end_width": "40 mm",
        "outer_width": "40 cm",
        "outer_height": "55 cm",
        "side_width": "25 mm",
    },
    "weaving": {"width": "20 cm", "height": "30 cm", "start": "right"},
}


def found_in(planned: Plan, file: str, outputs: Outputs) -> list[str]:
    """What the proof says against a file as it is drawn, written and read back."""
    output = outputs.output(file)
    return list(findings(planned, output, read(output, write(output))).sentences)


def at_the_desk(planned: Plan) -> dict[str, Any]:
    """What the desk shows of it: the fields of the measures in its drawing, the sentence of an end, its numbers."""
    drawn = frame(planned, ENGLISH, "cm")
    shown = numbers(planned, ENGLISH, "cm")
    return {
        "measures": re.findall(r'data-dim="([^"]+)"', drawn.svg),
        "said": drawn.said[2],
        "lacking": [row.id for row in shown if not row.value and not row.needs],
        "strip": bool(strip(planned, "near", ENGLISH).svg),
    }


def main() -> None:
    """Make, prove, spoil."""
    metrics = fonts.metrics()
    kit = read_kit(VALUES, metrics)
    planned = plan(kit)
    outputs = Outputs(planned, metrics, stock=stock_file.built_in())
    problems = {file: found_in(planned, file, outputs) for file in outputs.files}
    parts = {file: outputs.output(file).parts for file in outputs.files}
    lost = lacking(kit, parts, outputs.without, outputs.cut.stock if outputs.cut else None)

    incomplete = copy.deepcopy(VALUES)
    del incomplete["frame"]["pin_distance"]
    try:
        read_kit(incomplete, metrics)
        refused = ""
    except FieldErrors as error:
        refused = str(error)

    right = PinnedTemplate.openings
    PinnedTemplate.openings = lambda *how, **low: [o._replace(x=o.x + 0.01) for o in right(*how, **low)]  # type: ignore
    wrong = found_in(planned, "strip-near.svg", Outputs(planned, metrics))
    again = read_kit(kit_values(kit), metrics) == kit
    said = {"problems": problems, "lost": lost, "refused": refused, "wrong": wrong, "again": again}
    said["table"] = plan_table(planned, ())
    said["desk"] = at_the_desk(planned)
    print(json.dumps(said | {"ends": planned.warp.ends, "near": [float(x) for x in planned.warp.near[:2]]}))


if __name__ == "__main__":
    main()

"""Sheets as a scan would show them, made by hand: for tests of what follows from what was seen."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache

from kits import font_metrics

from layout.drawing.correction import Scale
from layout.drawing.shapes import Point
from layout.kit.kit import Kit, Paper
from layout.kit.paper_size import named_size
from layout.paper.targets import centres, rectangle
from templates_gen.codes.digest import digest_of
from templates_gen.files.kept import planned
from templates_gen.files.outputs import kept_outputs
from templates_gen.inputs import kit_file, stock_file
from templates_gen.measuring.groups import Group, Mark
from templates_gen.measuring.known_sheets import Finder, KnownSheet, sources_of
from templates_gen.measuring.measured import MeasuredSheet, measured_groups
from templates_gen.measuring.scales import Reference, scales_of
from templates_gen.scan.seen import Label, Line, Seen, SeenLine, SeenTarget

COMMON = Paper(named_size("common"))
ALONE = Reference()
TRUE = Scale(1.0, 1.0, 0.0)
SURE = Scale(0.0001, 0.0002, 0.0001)

Off = Callable[[Group, Mark], float | None]


def nothing_off(group: Group, mark: Mark) -> float:
    """Every mark at its place."""
    return 0.0


def seen_of(
    scale: Scale = TRUE,
    *,
    within: Scale = SURE,
    dpi: float | None = 300.0,
    label: Label | None = None,
    lines: tuple[SeenLine, ...] = (),
    uneven: float = 0.005,
    moved: Callable[[Point], Point] = lambda at: at,
) -> Seen:
    """A sheet of common paper with this scale; each target is found where `moved` puts it."""
    targets = tuple(SeenTarget(at, moved(at)) for at in centres(COMMON))
    label = label or Label("ABCDEFGHI", 1, 6, rectangle(COMMON))
    return Seen(label, scale, within, 0.0002, targets, lines, uneven, dpi, 0.0)


@cache
def known_of(kit: Kit | None = None, file: str = "kit.pdf", number: int = 4) -> tuple[Label, KnownSheet]:
    """A sheet of a file of a kit, by its number, and what its code says."""
    plan = planned(kit or kit_file.demo())
    output = kept_outputs(plan, font_metrics()).output(file)
    label = Label(digest_of(output.about.inputs), number, len(output.sheets), rectangle(plan.kit.paper))
    found = Finder(sources_of(plan, font_metrics(), stock_file.built_in()))(label)
    assert found is not None
    return label, found


def measured_sheet(
    scale: Scale = TRUE,
    *,
    kit: Kit | None = None,
    file: str = "kit.pdf",
    number: int = 4,
    off: Off = nothing_off,
    reference: Reference = ALONE,
    sure: float = 0.004,
    scan: str = "scan.png",
    dpi: float | None = 300.0,
    uneven: float = 0.005,
) -> MeasuredSheet:
    """A sheet of a kit as it is measured when its marks are so far off."""
    label, known = known_of(kit, file, number)
    lines = tuple(
        SeenLine(line, shift := off(group, mark), None if shift is None else sure)
        for group in known.groups
        for mark in group.marks
        for line in mark.lines
    )
    seen = seen_of(scale, label=label, lines=lines, dpi=dpi, uneven=uneven)
    scales = scales_of(seen, reference)
    return MeasuredSheet(scan, 1, seen, scales, known, measured_groups(known.groups, lines, scales))


def straight(line: Line) -> Point:
    """The middle of a line."""
    return Point((line.start.x + line.end.x) / 2, (line.start.y + line.end.y) / 2)

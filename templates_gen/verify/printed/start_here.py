"""The first sheet of a kit proven: every step with the sheets that show its tile, and every number of the kit."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import Kit
from layout.messages.catalogue import Role
from layout.messages.roles import SheetName, Start
from layout.plan import Plan
from templates_gen.messages.roles.proof import Furnished
from templates_gen.messages.roles.proof_printed import First
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads, unnumbered
from templates_gen.verify.printed.held import holds
from templates_gen.verify.printed.start_in_run import Step, steps_in_run
from templates_gen.verify.printed.start_numbers import numbers_of
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.said import Word, account

_GRID = "weaving-grid.pdf"
_APART = 10_000.0  # mm: the words of several sheets are looked at as if these lay one under the other
_PIECES = 9  # of threads in the mark of plain weave
_TILES = ("1", "G", "2", "3", "4", "5", "6", "7", "8")
_MARKS: Mapping[str, tuple[Role, Role]] = {
    "notched ends": (SheetName.NAME_NOTCHES, Start.NOTCHES),
    "pegged ends": (SheetName.NAME_PEGS, Start.PEGS),
    "nails": (SheetName.NAME_NAILS, Start.NAILS),
}


def prove_start_here(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """All that the sheet says, each message once; each step beside its tile, the tiles in the order of the work."""
    if not on_paper:
        return Findings(0.0, ())
    words = [(Point(at.x, at.y - k * _APART), said) for k, seen in enumerate(pieces) for at, said in seen.words()]
    shown = sorted((said for seen in pieces for said in _tiles_on(seen)), key=_TILES.index)
    ways = _ways(plan, pieces[0].file)
    wrong = [] if shown == [step.tile for step in ways[0]] else [finding(First.TILES)]
    found = [[*_unlike(plan, words, steps)] for steps in ways]
    steps, faults = min(zip(ways, found, strict=True), key=lambda way: len(way[1]))
    wrong += faults or list(_beside(words, _tile_places(pieces), steps))
    wrong += [finding(Furnished.TILE) for seen in pieces if not _has_mark(seen.sheet)]
    say = plan.words.say
    warp = said_of(plan.kit, plan.warp.sett.per_mm, plan.warp.sett.unit)
    about = About("", say(SheetName.PURPOSE_START_HERE))
    return Findings(0.0, tuple(wrong)) + check_heads(
        pieces, say(SheetName.NAME_START_HERE), warp, [], joined=False, more=about
    )


def _ways(plan: Plan, file: Sequence[Sheet]) -> list[list[Step]]:
    """What the steps may say: with a grid or without; in a run, where no other sheet stands beside, in one way."""
    if all(map(_has_mark, file)):
        return [steps_in_run(plan, _steps(plan, (), grid=holds(plan, "weaving-grid")))]
    return [_steps(plan, file, grid=grid) for grid in ((True, False) if _may_have_grid(plan) else (False,))]


def _may_have_grid(plan: Plan) -> bool:
    return plan.amounts.picks_per_cm is not None


def _steps(plan: Plan, file: Sequence[Sheet], *, grid: bool) -> list[Step]:
    """Every step of the work with what must be said of it."""
    kit, say = plan.kit, plan.words.say
    ends = kit.frame.ends.name
    name, marks = _MARKS.get(ends, (SheetName.NAME_STRIPS, Start.STRIPS))
    if kit.weaving.near_hold == "loose rod":
        marks = Start.STRIPS_ENDS
    if getattr(kit.frame.ends, "density", None):
        marks = Start.NOTCHES_THERE
    layers, rod = _has_layers(kit), kit.weaving.near_hold == "loose rod"
    said: dict[str, tuple[Role, Role]] = {
        "1": (SheetName.NAME_FRAME_CHECK, Start.CHECK_BARS if ends == "round bars" else Start.CHECK_BOARDS),
        "G": (SheetName.NAME_WRAP_GAUGE, Start.GAUGE),
        "2": (name, marks),
        "3": (SheetName.NAME_WINDING, Start.WINDING),
        "4": (Start.NAME_HEADING, Start.HEADING if layers else Start.HEADING_ON_FACE),
        "5": (SheetName.NAME_GUIDES, Start.GUIDES),
        "6": (Start.NAME_LEASHES, Start.LEASHES if layers else Start.LEASHES_ON_FACE),
        "7": (SheetName.NAME_GRID, Start.GRID) if grid else (Start.NAME_WEAVING, Start.WEAVING),
        "8": (Start.NAME_FINISH, Start.FINISH_ON_ROD if rod else Start.FINISH),
    }
    where = _sheets_by_tile(plan, file) | ({"7": say(Start.OWN_FILE, file=_GRID)} if grid else {})
    return [Step(tile, say(one), say(other), where.get(tile, "")) for tile, (one, other) in said.items()]


def _has_layers(kit: Kit) -> bool:
    """Whether half of the ends lie behind the others, as on a warp that is wound round both frame ends."""
    return kit.frame.ends.name in ("round bars", "flat ends") and kit.weaving.near_hold == "bar"


def _sheets_by_tile(plan: Plan, file: Sequence[Sheet]) -> dict[str, str]:
    """The sheets that show the tile of each step, as they were read; the first sheets, which show all, left out."""
    numbers: dict[str, list[int]] = {}
    for number, sheet in enumerate(file, 1):
        if not _has_mark(sheet):
            for tile in _on_black(sheet):
                numbers.setdefault(tile, []).append(number)
    said = {}
    for tile, all_ in numbers.items():
        first, last = min(all_), max(all_)
        one = plan.words.say(Start.SHEET, number=first)
        said[tile] = one if first == last else plan.words.say(Start.SHEETS, first=first, last=last)
    return said


def _on_black(sheet: Sheet) -> list[str]:
    return [shape.words for shape in sheet.shapes if isinstance(shape, Text) and shape.pen is Pen.ON_BLACK]


def _has_mark(sheet: Sheet) -> bool:
    """Whether its tile is the mark of plain weave: a square with a hole for every piece of a thread."""
    solids = (shape for shape in sheet.shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID)
    return any(len(shape.contours) == 1 + _PIECES and _is_square(shape) for shape in solids)


def _is_square(shape: Region) -> bool:
    left, low, right, high = box_of(shape.contours[0])
    return math.isclose(right - left, 12.0, abs_tol=1e-3) and math.isclose(high - low, 12.0, abs_tol=1e-3)


def _tiles_on(seen: FoundPart) -> list[str]:
    return [tile for tile in _on_black(seen.sheet) if tile in _TILES]


def _tile_places(pieces: Sequence[FoundPart]) -> list[Word]:
    """Where the number of each tile stands, in the same coordinates as the words."""
    return [
        (Point(at.x, at.y - k * _APART), shape.words)
        for k, seen in enumerate(pieces)
        for shape in seen.shapes()
        if isinstance(shape, Text) and shape.pen is Pen.ON_BLACK
        for at in (shape.at,)
    ]


def _unlike(plan: Plan, words: Sequence[Word], steps: Sequence[Step]) -> Iterator[Finding]:
    """What is not said, or said and not asked for."""
    say = plan.words.say
    wanted = [said for step in steps for said in step[1:] if said]
    wanted += [say(role) for role in (Start.BEFORE, Start.PRINT, Start.RULER, Start.KNIFE)]
    letters = [step.tile for step in steps if not step.tile.isdigit()]
    accounted = account(words, [*wanted, *numbers_of(plan), *letters], (), plan.words)
    yield from accounted.wrong
    yield from unnumbered(list(map(say, (Start.PRINT, Start.RULER, Start.KNIFE))), accounted, words)


def _beside(words: Sequence[Word], tiles: Sequence[Word], steps: Sequence[Step]) -> Iterator[Finding]:
    """Steps whose name, or whose sheets, stand nearer to the tile of another step; and tiles out of their order."""
    places = {tile: at for at, tile in tiles}
    for step in steps:
        for said in filter(None, (step.name.split()[0], step.where)):
            near = [_nearest(at, places) for at, found in words if found.startswith(said)]
            if step.tile not in near:
                yield finding(First.ASIDE, words=said, tile=step.tile)


def _nearest(at: Point, tiles: Mapping[str, Point]) -> str:
    """The tile to the left of some words whose number stands nearest by height."""
    return min(
        (tile for tile, place in tiles.items() if place.x < at.x),
        key=lambda tile: abs(tiles[tile].y - at.y) + (at.x - tiles[tile].x) / 10,
        default="",
    )

"""Everything that a weaving grid and its sheets say: sizes and counts of its cells, its centres, how it is joined."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Region, Text
from layout.messages.roles import Grid, SheetName
from layout.plan import Plan
from layout.values.numerals import say_fixed
from layout.values.units import Length, say_length
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof import Words
from templates_gen.messages.roles.proof_printed import Cells
from templates_gen.verify.alike import in_rows
from templates_gen.verify.boxes import box_around
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.printed.grid_axes import Axis, Span
from templates_gen.verify.printed.height import asked_mm
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.said import account

_WORD, _AT_LINE = 14.0, 0.5  # the word at a centre begins so near to its piece, its middle so near to the line, in mm
_SMALL = 7.5 * 25.4 / 72
_SIGNS = (Grid.IS_ONE, Grid.IS_TEN, Grid.IS_LIMIT, Grid.IS_CENTRE, Grid.IS_SMALL_CROSS)
_OF_PIECES = (Grid.NUMBERED, Grid.IS_CUT, Grid.IS_CROSS, Grid.IS_UNDER)


def check_grid_words(
    plan: Plan, axes: tuple[Axis, Axis], windows: Sequence[tuple[Span, Span]], pieces: Sequence[FoundPart]
) -> Findings:
    """Every word of all pieces and sheets; what is said once stands beside the first piece, or before it."""
    say, total = plan.words.say, len(pieces)
    upward = in_rows(range(total), lambda k: Point(windows[k][0][0], -windows[k][1][0]))
    ranks = [k for row in upward for k in row]
    key = [say(role) for role in (*_SIGNS, *(_OF_PIECES if total > 1 else ()))] + list(_remarks(plan, axes))
    wrong, centres, beside = list[Finding](), set[str](), list[str]()
    for number, k in enumerate(ranks, 1):
        seen, window = pieces[k], windows[k]
        rest = []
        counted = _above_map(seen)
        for at, words in seen.words():
            if words == say(Grid.CENTRE) and (centre := _centre_at(axes, window, at, words)):
                centres.add(centre)
            elif not words.isdigit() or at in counted:
                rest.append((_as_it_lies(seen, at), words))
        label = [say(Grid.PIECE, number=number, total=total)] if total > 1 else []
        found = account(rest, label).wrong
        if found and number == 1 and not (found := account(rest, [*label, *key]).wrong):
            beside = key
        wrong += [each.at(seen.where) for each in found]
        if total > 1 and not _mapped(seen, number, total):
            wrong.append(finding(Cells.MAP).at(seen.where))
    if len(centres) != len(axes):
        wrong.append(finding(Words.CENTRES))
    first, *others = (pieces[k] for k in ranks)
    warp = said_of(plan.kit, plan.warp.sett.per_mm, plan.warp.sett.unit)
    title, purpose = say(SheetName.NAME_GRID), say(SheetName.PURPOSE_GRID)
    steps = tuple(_steps(plan, pieces))
    notes = [*_notes(plan), *([] if beside else key)]
    heads = check_heads([first], title, warp, notes, joined=False, more=About("", purpose, steps))
    if others:
        heads += check_heads(others, title, warp, [], joined=False, more=About("", purpose))
    return Findings(0.0, tuple(wrong)) + heads


def _as_it_lies(seen: FoundPart, at: Point) -> Point:
    """A place of a piece as its sheet shows it, apart from a shift: words beside a turned piece are upright."""
    zero, along = seen.lie.back(Point(0, 0)), seen.lie.back(Point(1, 0))
    return Point(-at.y, at.x) if abs(along.y - zero.y) > abs(along.x - zero.x) else at


def _above_map(seen: FoundPart) -> list[Point]:
    """Where figures stand that belong to a sentence: in the letters of a heading, and in no cell of the map."""
    held = [_box(shape) for shape in seen.shapes() if isinstance(shape, Region) and shape.pen is Pen.HELD]
    strong = [shape.at for shape in seen.shapes() if isinstance(shape, Text) and shape.pen is Pen.STRONG]
    return [at for at in strong if not any(box[0] < at.x < box[2] and box[1] < at.y < box[3] for box in held)]


def _mapped(seen: FoundPart, number: int, total: int) -> bool:
    """Whether the map has a cell for every piece and fills that of this one, with its number if there is room."""
    cells = [path for path in seen.paths(Pen.OUTLINE) if path.closed and len(path.points()) == 4]
    held = [_box(shape) for shape in seen.shapes() if isinstance(shape, Region) and shape.pen is Pen.HELD]
    if len(held) != 1 or len(cells) != total:
        return False
    left, low, right, high = held[0]
    inside = [words for at, words in seen.words() if left < at.x < right and low < at.y < high]
    return inside in ([str(number)], [])


def _box(region: Region) -> Box:
    return box_around(point for path in region.contours for point in path.points())


def _centre_at(axes: tuple[Axis, Axis], window: tuple[Span, Span], at: Point, words: str) -> str:
    """Which centre a word names: under the middle column line, or to the left of the middle row line; or neither."""
    (left, _), (low, _) = window
    across, up = (axis.at(axis.count / 2) for axis in axes)
    half = metrics().width(words, _SMALL) / 2
    if 0 < low - at.y < _WORD and abs(at.x + half - across) < _AT_LINE:
        return "across"
    return "up" if 0 < left - at.x < _WORD and abs(abs(at.y - up) - half) < _AT_LINE else ""


def _remarks(plan: Plan, axes: tuple[Axis, Axis]) -> Iterator[str]:
    kit, (columns, rows), say = plan.kit, axes, plan.words.say
    unit = "in" if plan.warp.sett.unit.imperial else "mm"
    wide, high = (say_length(Length(abs(axis.cell), unit), plan.words) for axis in axes)
    role = Grid.COLUMNS_MIRRORED if kit.weaving.cartoon == "mirrored" else Grid.COLUMNS
    yield say(role, columns=columns.count, wide=wide)
    yield say(Grid.ROWS, rows=rows.count, picks=2 * rows.count, high=high)
    like = kit.weaving.height
    inches = like.imperial if like else unit == "in"
    step = Fraction(127, 80) if inches else Fraction(1, 10)  # what a rule shows
    if less := round((asked_mm(kit) - rows.count * rows.cell) / step):
        yield say(Grid.LESS, less=say_length(Length(less * step, "in" if inches else "mm"), plan.words))


def _notes(plan: Plan) -> Iterator[str]:
    kit, say = plan.kit, plan.words.say
    face = Grid.FROM_FACE if kit.weaving.woven_from == "face" else Grid.FROM_BACK
    yield say(Grid.MIRRORED if kit.weaving.cartoon == "mirrored" else face)
    if not (kit.amounts.weft.picks or kit.amounts.weft.beads):
        yield say(Grid.GUESS)


def _steps(plan: Plan, pieces: Sequence[FoundPart]) -> Iterator[str]:
    """What is done with the pieces: how far apart the outermost crosses are is measured on all of them."""
    say = plan.words.say
    if len(pieces) > 1:
        points = [point for seen in pieces for point in seen.part.datum]
        sides = [max(each) - min(each) for each in zip(*points, strict=True)]
        wide, high = (say_fixed(side, 1) for side in sides)
        yield say(Grid.STEP_CUT)
        yield say(Grid.STEP_TAPE, count=len(pieces), wide=wide, high=high)
    yield say(Grid.STEP_DRAW)

"""What each piece of a part shows on its sheet: found by its crosses, and turned back to the part's coordinates."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Step, Text, straight_to
from layout.drawing.sheet import Part, Piece, Sheet
from layout.messages.catalogue import Catalogue, Message
from layout.messages.english import ENGLISH
from templates_gen.messages.roles.proof import Laid
from templates_gen.verify import LIMIT
from templates_gen.verify.crosses import Lie, crosses_on, lie_of
from templates_gen.verify.finding import NOTHING, Findings, finding


@dataclass(frozen=True)
class FoundPart:
    """One piece of `part` on a sheet that was read; `where` is the sheet that holds it.

    Of a sheet of paper, `outside` are the words outside all parts and where they begin, `words_alone` those of the
    sheets of the file that hold words only, by their number, `number` the sheet's and how many there are, and `file`
    all of them; `spoken` is the language of its words. On the sheet of a print run, `in_run`, the words outside are not
    about this part alone, and others prove them. `most` is how many pieces the part has, or that of the other frame
    end, whichever has more.
    """

    part: Part
    sheet: Sheet
    lie: Lie
    where: Message
    outside: tuple[tuple[Point, str], ...] = ()
    words_alone: tuple[tuple[int, tuple[tuple[Point, str], ...]], ...] = ()
    number: tuple[int, int] = (1, 1)
    file: tuple[Sheet, ...] = ()
    spoken: Catalogue = ENGLISH
    in_run: bool = False
    most: int = 1

    def holds(self, point: Point) -> bool:
        """Whether a point in the part's coordinates lies in its box."""
        left, bottom, right, top = self._reach
        return left <= point.x <= right and bottom <= point.y <= top

    def holds_all(self, points: Iterable[Point]) -> bool:
        """Whether all of these points do."""
        left, bottom, right, top = self._reach
        for x, y in points:  # noqa: SIM110 (of two points or three a generator is most of the work)
            if not (left <= x <= right and bottom <= y <= top):
                return False
        return True

    @cached_property
    def _reach(self) -> Box:
        left, bottom, right, top = self.part.box
        return left - LIMIT, bottom - LIMIT, right + LIMIT, top + LIMIT

    def lines(self) -> tuple[Curve, ...]:
        """Straight lines of one step that lie inside the part's box, in its coordinates."""
        return self._lines

    @cached_property
    def _lines(self) -> tuple[Curve, ...]:
        drawn = [shape for shape in self.sheet.shapes if isinstance(shape, Curve) and len(shape.steps) == 1]
        starts = self.lie.all_back([shape.start for shape in drawn])
        ends = self.lie.all_back([shape.steps[0].end for shape in drawn])
        pairs = zip(starts, ends, drawn, strict=True)
        return tuple([Curve(one, (Step(end),), shape.pen) for one, end, shape in pairs if self.holds_all((one, end))])

    def words(self) -> Iterator[tuple[Point, str]]:
        """Words that begin inside the part's box, and where; none where words are outlines."""
        return iter(self._words)

    @cached_property
    def _words(self) -> tuple[tuple[Point, str], ...]:
        texts = [shape for shape in self.sheet.shapes if isinstance(shape, Text)]
        places = self.lie.all_back([text.at for text in texts])
        return tuple([(at, text.words) for at, text in zip(places, texts, strict=True) if self.holds(at)])

    def shapes(self) -> tuple[Shape, ...]:
        """Every shape that lies inside the part's box, in its coordinates; of words only where they begin."""
        return self._shapes

    @cached_property
    def _shapes(self) -> tuple[Shape, ...]:
        return tuple(self._inside(self.sheet.shapes))

    def paths(self, pen: Pen) -> Iterator[Curve]:
        """Every path of one pen that lies inside the part's box, in its coordinates."""
        if pen not in self._paths:
            drawn = [shape for shape in self.sheet.shapes if isinstance(shape, Curve) and shape.pen is pen]
            self._paths[pen] = tuple([path for path in self._inside(drawn) if isinstance(path, Curve)])
        return iter(self._paths[pen])

    @cached_property
    def _paths(self) -> dict[Pen, tuple[Curve, ...]]:
        return {}

    def _inside(self, shapes: Sequence[Shape]) -> Iterator[Shape]:
        firsts = zip(self.lie.all_back(list(map(first_of, shapes))), shapes, strict=True)
        near = [(first, shape) for first, shape in firsts if self.holds(first)]  # enough for most that lies elsewhere
        back = self.lie.all_back([at for _, shape in near for path in _contours(shape) for at in path.points()])
        begin = 0
        for first, shape in near:
            if isinstance(shape, Text):
                yield shape._replace(at=first)
                continue
            inside, paths = True, []
            for path in _contours(shape):
                end = begin + len(path.steps) + 1
                found, begin = back[begin:end], end
                inside = inside and self.holds_all(found)
                if inside:
                    paths.append(self._path(path, found))
            if inside:
                yield Region(tuple(paths), shape.pen) if isinstance(shape, Region) else paths[0]

    def _path(self, path: Curve, found: Sequence[Point]) -> Curve:
        """A path whose start and ends of steps are `found` in the part's coordinates."""
        start, *ends = found
        throughs = [through for _, through in path.steps if through]
        if not throughs:
            return Curve(start, straight_to(ends), path.pen, path.closed)
        back = iter(self.lie.all_back(throughs))
        steps = [Step(end, through and next(back)) for end, (_, through) in zip(ends, path.steps, strict=True)]
        return Curve(start, tuple(steps), path.pen, path.closed)


def first_of(shape: Shape) -> Point:
    """Where a shape begins: its first point, or that of its first contour."""
    if isinstance(shape, Text):
        return shape.at
    return shape.start if isinstance(shape, Curve) else shape.contours[0].start


def _contours(shape: Shape) -> Sequence[Curve]:
    if isinstance(shape, Curve):
        return (shape,)
    return shape.contours if isinstance(shape, Region) else ()


def found_on(sheet: Sheet, pieces: Sequence[Piece], where: Message) -> tuple[list[FoundPart], Findings]:
    """Every piece that was laid on `sheet`, found by its crosses; and what is not true to scale."""
    crosses = crosses_on(sheet)
    count = sum(len(piece.part.datum) for piece in pieces)
    if len(crosses) != count:
        return [], Findings(0.0, (finding(Laid.CROSSES, found=len(crosses), wanted=count).at(where),))
    found, total = [], NOTHING
    for part, _ in pieces:
        own, crosses = crosses[: len(part.datum)], crosses[len(part.datum) :]
        lie, rest = lie_of(part.datum, own)
        total += Findings(rest, () if rest <= LIMIT else (finding(Laid.SCALE, part=part.name).at(where),))
        found.append(FoundPart(part, sheet, lie, where))
    return found, total

"""From a page's content stream back to shapes, one instruction after the other. Knows no file structure.

Eighteen operators are known, each in its place. Any other operator, place or operand is refused. So is any
transformation except the identity at the beginning of every page, since coordinates are absolute.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping, Sequence
from functools import partial

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, points_at, straight_to
from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Page, Read
from templates_gen.readers.arcs import middle_of_curve
from templates_gen.readers.tokens import LINE, Font, Numbers, dashes, instructions, words

MM = 25.4 / 72
"""Millimetres in one PDF unit, stated here on purpose a second time: ISO 32000 makes it 1/72 inch."""

_new_point, _new_step = partial(tuple.__new__, Point), partial(tuple.__new__, Step)  # there are thousands
_new_curve = partial(tuple.__new__, Curve)
_IDENTITY = re.compile(rb"1 0 0 1 0 0 cm(?=[\t\n\f\r ]|\Z)")


class _Place:
    """Where in a page an operator stands: what that is called, and the operators that may stand there."""

    def __init__(self, called: Page) -> None:
        self.called = called
        self.operators: dict[bytes, tuple[_Act, bytes, int]] = {}


_PAGE, _MOVED, _OPEN, _SHUT, _TEXT = map(_Place, (Page.BETWEEN, Page.MOVED, Page.IN_PATH, Page.CLOSED, Page.IN_WORDS))


def _look(width: float, grey: float, dash: Sequence[float]) -> tuple[float, ...]:
    """What differs from one line pen to another, in mm to a micrometre."""
    return tuple([round(number, 3) for number in (width, grey, *dash)])


_LINE_PENS = {_look(pen.ink.width, pen.ink.grey, pen.ink.dash): pen for pen in Pen if not pen.ink.fills}
_FILL_PENS = {pen.ink.grey: pen for pen in Pen if pen.ink.fills and not (pen.ink.words or pen.ink.operation)}
_SWATCHES = {pen.ink.operation: pen for pen in Pen if pen.ink.operation}
_NO_GREY = -1.0  # what is set as a colour
_WORD_PENS = {(pen.ink.grey, pen.ink.face): pen for pen in Pen if pen.ink.words}
_WORD_GREYS = {grey for grey, _ in _WORD_PENS}


def walked(content: bytes, fonts: Mapping[str, Font], colours: Mapping[str, str], most: int) -> tuple[Shape, ...]:
    """The shapes of one page in mm, in the order they are painted; `ReadError` for whatever is not ours.

    `colours` are those of a cutter's operations, which may fill their signs. `most` is how many instructions are read
    before the page is given up.
    """
    walk = _Walk(fonts, colours)
    begun = _IDENTITY.match(content)
    for number, (operator, other, numbers) in enumerate(instructions(content[begun.end() :] if begun else content)):
        if number >= most:
            raise ReadError(message(Read.DRAWS))
        act, kind, count = walk.place.operators.get(operator, _UNKNOWN)
        if len(numbers) != count or other[:1] != kind:
            raise ReadError(message(Page.USES, operator=shown(operator.decode()), place=message(walk.place.called)))
        act(walk, other, numbers)
    if walk.place is not _PAGE:
        raise ReadError(message(Page.ENDS, place=message(walk.place.called)))
    return tuple(walk.shapes)


class _Walk:
    """The state that a page's operators change, and the shapes they have painted so far."""

    def __init__(self, fonts: Mapping[str, Font], colours: Mapping[str, str]) -> None:
        self.fonts = fonts
        self.swatches = {colours[name]: pen for name, pen in _SWATCHES.items() if name in colours}
        self.colour = ""
        self.shapes: list[Shape] = []
        self.place = _PAGE
        self.width, self.line_grey, self.fill_grey = 1.0, 0.0, 0.0  # as every page begins
        self.dash: Numbers = []
        self.subpaths: list[tuple[Point, Sequence[Step], bool]] = []
        self.start = self.at = Point(0, 0)
        self.steps: list[Step] = []
        self.font: Font | None = None
        self.font_name, self.size = "", 0.0
        self.matrix: Numbers = []
        self.said_in: str | None = None  # the font in which the text at this matrix was begun

    def set_width(self, _: bytes, numbers: Numbers) -> None:
        self.width = numbers[0] * MM

    def set_line_grey(self, _: bytes, numbers: Numbers) -> None:
        self.line_grey = numbers[0]

    def set_fill_grey(self, _: bytes, numbers: Numbers) -> None:
        self.fill_grey = numbers[0]

    def set_fill_colour(self, _: bytes, numbers: Numbers) -> None:
        levels = [round(each * 255) for each in numbers]
        exact = all(abs(each * 255 - level) < 0.01 for each, level in zip(numbers, levels, strict=True))
        self.colour = "#" + "".join(f"{level:02x}" for level in levels)
        if not exact or self.colour not in self.swatches:
            raise ReadError(message(Page.NO_COLOUR, colour=" ".join(f"{each:g}" for each in numbers)))
        self.fill_grey = _NO_GREY

    def set_dash(self, array: bytes, numbers: Numbers) -> None:
        if numbers[0] != 0:
            raise ReadError(message(Page.DASH))
        self.dash = [part * MM for part in dashes(array)]

    def move(self, _: bytes, numbers: Numbers) -> None:
        if self.place is _OPEN:
            self.subpaths.append((self.start, self.steps, False))
        x, y = numbers
        self.start = self.at = _new_point((x * MM, y * MM))
        self.steps = []
        self.place = _MOVED

    def line(self, _: bytes, numbers: Numbers) -> None:
        x, y = numbers
        self.at = _new_point((x * MM, y * MM))
        self.steps.append(_new_step((self.at, None)))
        self.place = _OPEN

    def move_and_line(self, _: bytes, numbers: Numbers) -> None:
        if self.place is _OPEN:
            self.subpaths.append((self.start, self.steps, False))
        x, y, end_x, end_y = numbers
        self.start = _new_point((x * MM, y * MM))
        self.at = _new_point((end_x * MM, end_y * MM))
        self.steps = [_new_step((self.at, None))]
        self.place = _OPEN

    def rectangle(self, _: bytes, numbers: Numbers) -> None:
        if self.place is _OPEN:
            self.subpaths.append((self.start, self.steps, False))
        x, y, wide, high = (number * MM for number in numbers)
        corners = points_at((x + wide, x + wide, x), (y, y + high, y + high))
        self.subpaths.append((_new_point((x, y)), straight_to(corners), True))
        self.place = _SHUT

    def curve(self, _: bytes, numbers: Numbers) -> None:
        ax, ay, bx, by, x, y = numbers
        end = _new_point((x * MM, y * MM))
        middle = middle_of_curve(self.at, (ax * MM, ay * MM), (bx * MM, by * MM), end)
        self.steps.append(_new_step((end, middle)))
        self.at = end
        self.place = _OPEN

    def close(self, _: bytes, __: Numbers) -> None:
        self.subpaths.append((self.start, self.steps, True))
        self.place = _SHUT

    def _no_pen(self) -> str:
        look = {"width": f"{self.width:.3f}", "grey": f"{self.line_grey:g}"}
        if not self.dash:
            return message(Page.NO_PEN, **look)
        return message(Page.NO_DASHED_PEN, dash=" ".join(f"{part:.3f}" for part in self.dash), **look)

    def stroke(self, _: bytes, __: Numbers) -> None:
        if self.place is _OPEN:
            self.subpaths.append((self.start, self.steps, False))
        pen = _LINE_PENS.get(_look(self.width, self.line_grey, self.dash))
        if pen is None:
            raise ReadError(self._no_pen())
        self.shapes += [_new_curve((start, tuple(steps), pen, closed)) for start, steps, closed in self.subpaths]
        self.subpaths = []
        self.place = _PAGE

    def fill(self, _: bytes, __: Numbers) -> None:
        pen = self.swatches[self.colour] if self.fill_grey == _NO_GREY else _FILL_PENS.get(self.fill_grey)
        if pen is None:
            raise ReadError(message(Page.NO_FILL, grey=self.fill_grey))
        if not all(closed for _, _, closed in self.subpaths):
            raise ReadError(message(Page.OPEN))
        contours = tuple([_new_curve((start, tuple(steps), pen, True)) for start, steps, _ in self.subpaths])
        self.shapes.append(Region(contours, pen))
        self.subpaths = []
        self.place = _PAGE

    def begin_text(self, _: bytes, __: Numbers) -> None:
        if self.fill_grey not in _WORD_GREYS:
            raise ReadError(message(Page.GREY_WORDS, grey=self.fill_grey))
        self.font, self.font_name, self.matrix, self.said_in = None, "", [], None
        self.place = _TEXT

    def set_matrix(self, _: bytes, numbers: Numbers) -> None:
        a, b, c, d = numbers[:4]
        if abs(math.hypot(a, b) - 1) > 1e-6 or abs(a - d) > 1e-6 or abs(b + c) > 1e-6:
            raise ReadError(message(Page.SLANTED))
        self.matrix, self.said_in = numbers, None

    def set_font(self, name: bytes, numbers: Numbers) -> None:
        self.font_name, self.size = name[1:].decode(), numbers[0] * MM
        self.font = self.fonts.get(self.font_name)
        if self.font is None or self.size <= 0:
            raise ReadError(message(Page.NO_FONT, font=shown(self.font_name)))

    def show(self, string: bytes, _: Numbers) -> None:
        if self.font is None or not self.matrix:
            raise ReadError(message(Page.NO_PLACE))
        said = words(string, self.font.letters)
        pen = _WORD_PENS.get((self.fill_grey, self.font.face))
        if pen is None:
            raise ReadError(message(Page.GREY_WORDS, grey=self.fill_grey))
        if self.said_in is None:
            a, b, x, y = (self.matrix[k] for k in (0, 1, 4, 5))
            at, angle = Point(x * MM, y * MM), math.degrees(math.atan2(b, a))
            self.shapes.append(Text(at, self.size, said, angle, pen))
        else:  # a font holds 256 characters: words with more go on in a font of the same size
            begun = self.shapes[-1]
            if (
                not isinstance(begun, Text)
                or self.font_name == self.said_in
                or (self.size, pen) != (begun.size, begun.pen)
            ):
                raise ReadError(message(Page.HANGING))
            self.shapes[-1] = begun._replace(words=begun.words + said)
        self.said_in = self.font_name

    def end_text(self, _: bytes, __: Numbers) -> None:
        self.place = _PAGE


_Act = Callable[[_Walk, bytes, Numbers], None]
_UNKNOWN: tuple[_Act, bytes, int] = (_Walk.end_text, b"", -1)  # no operator has that many numbers
_ALL: tuple[tuple[bytes, bytes, int, _Act, Sequence[_Place]], ...] = (
    (b"w", b"", 1, _Walk.set_width, [_PAGE]),
    (b"G", b"", 1, _Walk.set_line_grey, [_PAGE]),
    (b"g", b"", 1, _Walk.set_fill_grey, [_PAGE]),
    (b"rg", b"", 3, _Walk.set_fill_colour, [_PAGE]),
    (b"d", b"[", 1, _Walk.set_dash, [_PAGE]),
    (b"m", b"", 2, _Walk.move, [_PAGE, _OPEN, _SHUT]),
    (b"l", b"", 2, _Walk.line, [_MOVED, _OPEN]),
    (LINE, b"", 4, _Walk.move_and_line, [_PAGE, _OPEN, _SHUT]),
    (b"c", b"", 6, _Walk.curve, [_MOVED, _OPEN]),
    (b"h", b"", 0, _Walk.close, [_OPEN]),
    (b"re", b"", 4, _Walk.rectangle, [_PAGE, _OPEN, _SHUT]),
    (b"S", b"", 0, _Walk.stroke, [_OPEN, _SHUT]),
    (b"f", b"", 0, _Walk.fill, [_SHUT]),
    (b"BT", b"", 0, _Walk.begin_text, [_PAGE]),
    (b"Tm", b"", 6, _Walk.set_matrix, [_TEXT]),
    (b"Tf", b"/", 1, _Walk.set_font, [_TEXT]),
    (b"Tj", b"(", 0, _Walk.show, [_TEXT]),
    (b"ET", b"", 0, _Walk.end_text, [_TEXT]),
)
"""Each operator, how its one operand begins that is no number, how many numbers, what it does, where it may stand."""

for _operator, _other, _count, _act, _places in _ALL:
    for _place in _places:
        _place.operators[_operator] = _act, _other, _count

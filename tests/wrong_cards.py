"""Wrong builders of the cards of a box: rows lost, other amounts, cards too small, invented fibres, other links."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from wrong_builders import Patch, Spoil, Wrong, returns, swap, value

import layout.parts.cards.cards as cards_module
import layout.parts.cards.help_card as help_module
import layout.parts.cards.help_words as words_module
import layout.parts.cards.label as label_module
import layout.parts.cards.legal_card as legal_module
import layout.parts.cards.list_rows as rows_module
import layout.parts.cards.packing_list as list_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape
from layout.drawing.signs import scissors, small_arrow
from layout.messages.catalogue import Message
from layout.messages.roles.buying import Packed
from layout.messages.roles.cards import HelpCard
from layout.parts.cards import help_pictures as pictures
from layout.parts.contents import Line
from layout.parts.hanging import Hanging

LABEL = "label.pdf"
YARNS: Mapping[str, object] = {
    "warp": {"count": 300, "system": "tex", "fibre": "cotton"},
    "weft": {
        "strands": [{"number": 2, "count": 200, "system": "tex", "fibre": "wool"}],
        "colours": [{"name": "madder", "share": 60, "lengths": 4}, {"name": "indigo", "share": 40, "lengths": 4}],
    },
}
BOX: Mapping[str, object] = {
    "box": {"says": "Row by row.", "link": "https://example.org/weir"},
    "legal": {"maker": "Shop by the Weir", "care": "wash by hand"},
}
KIT = {**YARNS, **BOX}
FOLDED = {**YARNS, "box": {"fold": True}}


def contents(change: Callable[[list[Line]], list[Line]]) -> Spoil:
    """The lines of the list, changed."""
    return returns(list_module, "contents", lambda lines: tuple(change(list(lines))))


def more(lines: list[Line], role: Packed) -> list[Line]:
    """The amount of that line is one more."""
    return [line._replace(amount=_one_more(line.amount)) if _is(line, role) else line for line in lines]


def _is(line: Line, role: Packed) -> bool:
    return isinstance(line.name, Message) and line.name.role is role


def _one_more(amount: Message) -> Message:
    (name, figure), *_ = amount.values.items()
    if isinstance(figure, Message):
        return Message(amount.role, {**amount.values, name: _one_more(figure)})
    return Message(amount.role, {name: type(figure)(int(str(figure)) + 1)})  # type: ignore[call-arg]


def exchanged(lines: list[Line]) -> list[Line]:
    """Two colours with the amounts of each other."""
    one, other = (k for k, line in enumerate(lines) if _is(line, Packed.WEFT))
    lines[one], lines[other] = (
        lines[one]._replace(amount=lines[other].amount),
        lines[other]._replace(amount=lines[one].amount),
    )
    return lines


def without(row: Hanging, pen: Pen) -> Hanging:
    """A row without what one pen draws."""
    return row._replace(shapes=tuple(shape for shape in row.shapes if shape.pen is not pen))


def raised(row: Hanging) -> Hanging:
    """A row whose box stands 0.05 mm too high."""
    shapes = [shape if shape.pen is not Pen.OUTLINE else Placing(0, 0, 0.05).shapes([shape])[0] for shape in row.shapes]
    return row._replace(shapes=tuple(shapes))


def less(sides: tuple[float, float]) -> tuple[float, float]:
    """A card 1 mm narrower."""
    return sides[0] - 1, sides[1]


def legal(**words: str) -> Spoil:
    """The maker's words, changed."""
    return returns(
        legal_module, "rows", lambda rows: tuple(
            row._replace(said=(words[row.key],)) if row.key in words else row for row in rows
        )
    )  # fmt: skip


def turned(modules: tuple[str, ...]) -> tuple[str, ...]:
    """A code with one module turned."""
    row = modules[12]
    return (*modules[:12], row[:12] + (".#"[row[12] == "."]) + row[13:], *modules[13:])


def one_thread_less(shapes: list[Shape]) -> list[Shape]:
    """A band whose last piece of an upright is missing."""
    last = max(k for k, shape in enumerate(shapes) if shape.pen is Pen.END_MARK)
    return shapes[:last] + shapes[last + 1 :]


def mirrored(shapes: list[Shape]) -> list[Shape]:
    """A band whose first pick passes over where it should pass under: all pieces of picks joined."""
    whole = [shape for shape in shapes if shape.pen is not Pen.PICK]
    picks = [shape for shape in shapes if isinstance(shape, Curve) and shape.pen is Pen.PICK]
    return [*whole, *picks[1:], picks[0]._replace(steps=picks[1].steps)]


def smaller(region: Region) -> Region:
    """A code of 0.38 mm modules, about its corner."""
    return Region(tuple(_shrunk(contour) for contour in region.contours), region.pen)


def _shrunk(path: Any) -> Any:
    corner, share = (97.0, 24.5), 0.76
    points = [((x - corner[0]) * share + corner[0], (y - corner[1]) * share + corner[1]) for x, y in path.points()]
    start, *ends = (type(path.start)(*point) for point in points)
    return path._replace(
        start=start, steps=tuple(step._replace(end=end) for step, end in zip(path.steps, ends, strict=True))
    )


def both(one: Spoil, other: Spoil) -> Spoil:
    """Two things that are wrong together."""

    def spoil(patch: Patch) -> None:
        one(patch)
        other(patch)

    return spoil


HELP = "help.pdf"
HELPED = {
    **YARNS,
    "box": {"holds": ["help"]},
    "room": {"heading": "70 mm", "hand": "5 mm", "slope": 1},
    "weaving.height": "20 cm",
}
LOOPS = {**HELPED, "weaving.near_hold": "loose rod", "weaving.height": "60 cm"}


def picture(role: HelpCard, wrong: Callable[[], list[Shape]]) -> Spoil:
    """Another picture over that step."""
    return swap(help_module, "_FINISH_PICTURES", lambda right: right | {role: wrong})


def aside(shapes: list[Shape]) -> list[Shape]:
    """What is drawn in solid black stands 4.5 mm to the right."""
    return [Placing(0, 4.5, 0).shapes([each])[0] if each.pen is Pen.SOLID else each for each in shapes]


def scissors_aside() -> list[Shape]:
    """Scissors at the ends beside the middle ones."""
    cloth = [each for each in pictures.cut() if each.pen is not Pen.OUTLINE]
    return [*cloth, *scissors(Point(24.6, 10.3))]


def mirrored_arrows() -> list[Shape]:
    """Arrows that point inward."""
    arrows = [*small_arrow(Point(13, 15), Point(1, 0)), *small_arrow(Point(27, 15), Point(-1, 0))]
    return [*pictures.trimmed(), *arrows]


HELP_WRONG: Mapping[str, Wrong] = {
    "the width of the warp instead of the weaving": Wrong(HELPED | {"weaving.draw_in": "5 %"}, HELP, swap(
        words_module, "by_rule", lambda right: lambda mm, *given, **named: right(
            mm * 1.05 if mm > 150 else mm, *given, **named
        )
    )),
    "tails of another length": Wrong(HELPED, HELP, value(words_module, "_TAIL", 30)),
    "two troubles exchanged": Wrong(HELPED, HELP, returns(
        help_module, "help_words", lambda rows: [rows[1], rows[0], *rows[2:]]
    )),
    "two steps exchanged": Wrong(HELPED, HELP, returns(
        help_module, "finish_words", lambda steps: [*steps[:1], steps[2], steps[1], *steps[3:]]
    )),
    "ends needled that are long enough to knot": Wrong(HELPED, HELP, value(words_module, "_SHORT_FRINGE", 500.0)),
    "a knot beside the middle": Wrong(HELPED, HELP, picture(HelpCard.STEP_KNOT, lambda: aside(pictures.knotted()))),
    "a cut beside the middle": Wrong(HELPED, HELP, picture(HelpCard.STEP_CUT, scissors_aside)),
    "arrows inward": Wrong(HELPED, HELP, picture(HelpCard.STEP_OUTWARD, mirrored_arrows)),
    "a rod that is pushed in": Wrong(LOOPS, HELP, picture(HelpCard.STEP_DRAW, lambda: [
        *pictures.trimmed(), *small_arrow(Point(33, 10.2), Point(-1, 0))
    ])),
    "a help card 1 mm narrower": Wrong(HELPED, HELP, returns(help_module, "size_of", less)),
    "a help card without its fold": Wrong(HELPED, HELP, swap(
        help_module, "line", lambda right: lambda one, other, _: right(one, other, Pen.HELP)
    )),
}  # fmt: skip
"""By what is wrong."""

CARDS_WRONG: Mapping[str, Wrong] = {
    **HELP_WRONG,
    "a list that lacks a row": Wrong(KIT, LABEL, contents(lambda lines: lines[:-1])),
    "a row twice": Wrong(KIT, LABEL, contents(lambda lines: [*lines, lines[-1]])),
    "a metre of warp more": Wrong(KIT, LABEL, contents(lambda lines: more(lines, Packed.WARP))),
    "a metre of weft more": Wrong(KIT, LABEL, contents(lambda lines: more(lines, Packed.WEFT))),
    "a spare end more": Wrong(KIT, LABEL, contents(lambda lines: more(lines, Packed.SPARE_ENDS))),
    "two colours with each other's amounts": Wrong(KIT, LABEL, contents(exchanged)),
    "a folded list that lacks a row": Wrong(FOLDED, LABEL, contents(lambda lines: lines[:-1])),
    "boxes to tick that are not there": Wrong(
        KIT, LABEL, returns(rows_module, "list_row", lambda row: without(row, Pen.OUTLINE))
    ),
    "boxes a little too high": Wrong(KIT, LABEL, returns(rows_module, "list_row", raised)),
    "rows without a rule": Wrong(KIT, LABEL, returns(rows_module, "list_row", lambda row: without(row, Pen.HELP))),
    "a label 1 mm narrower": Wrong(KIT, LABEL, returns(label_module, "size_of", less)),
    "a list 1 mm narrower": Wrong(KIT, LABEL, returns(list_module, "size_of", less)),
    "a folded card 1 mm narrower": Wrong(FOLDED, LABEL, returns(cards_module, "size_of", less)),
    "a legal card 1 mm narrower": Wrong(KIT, LABEL, value(legal_module, "_SIZES", ((56.0, 74.0),))),
    "a fibre that the maker did not name": Wrong(KIT, LABEL, legal(**{"legal.warp_fibre": "100 % cotton"})),
    "another maker": Wrong(KIT, LABEL, legal(**{"legal.maker": "Shop by the Mill"})),
    "a line too many": Wrong(KIT, LABEL, returns(
        legal_module, "rows", lambda rows: tuple(row._replace(lines=row.lines + 1) for row in rows)
    )),
    "nothing to fill in": Wrong(KIT, LABEL, swap(legal_module, "_lines", lambda _: lambda *given: ([], given[4]))),
    "a link that says something else": Wrong(
        KIT, LABEL, swap(label_module, "modules_of", lambda right: lambda link: right(link[:-1] + "x"))
    ),
    "a module turned": Wrong(KIT, LABEL, returns(label_module, "modules_of", turned)),
    "a code with modules too small": Wrong(KIT, LABEL, returns(label_module, "qr", smaller)),
    "a code without its white": Wrong(
        KIT, LABEL, both(value(label_module, "_BESIDE", -3.0), value(label_module, "WHITE", 1))
    ),
    "a band with a thread missing": Wrong(KIT, LABEL, returns(label_module, "band", one_thread_less)),
    "a band whose pick passes over two": Wrong(KIT, LABEL, returns(label_module, "band", mirrored)),
    "a band of too few ends": Wrong(KIT, LABEL, value(label_module, "MOST_UPRIGHTS", 10)),
    "a fold aside": Wrong(FOLDED, LABEL, swap(
        cards_module, "line", lambda right: lambda one, other, pen: right(
            one._replace(y=one.y + 0.1), other._replace(y=other.y + 0.1), pen
        )
    )),
    "a label that says another size": Wrong(
        KIT, LABEL, returns(label_module, "facts_of", lambda facts: (lambda a, b, c, _: (a, b, c, c))(*facts))
    ),
}  # fmt: skip
"""By what is wrong."""

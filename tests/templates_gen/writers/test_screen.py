"""The SVG of a sheet on the screen: it comes back to the micrometre and to the letter, and what is spoiled is found."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest
from damage import damaged
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import KINDS, font_metrics, plan_of, sheets_of
from same import assert_same
from strategies import sheets

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Step, Text, circle, filled, line, polygon, rectangle
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError
from templates_gen.document import ReadError
from templates_gen.lettering import fonts
from templates_gen.readers.screen import read
from templates_gen.verify import LIMIT
from templates_gen.verify.compare import compare
from templates_gen.writers.screen import write

LETTERS = "".join(fonts.metrics().advances)
P = Point
PLATE = Sheet(
    "plate",
    60,
    40,
    (
        filled((P(10, 30), P(50, 30), P(50, 10)), Pen.TINT),
        Region((rectangle(5, 5, 9, 9, Pen.SOLID), rectangle(6, 8, 8, 6, Pen.SOLID)), Pen.SOLID),
        line(P(12.7, 35.5), P(12.7, 30.5), Pen.MARK),
        line(P(25.4, 35.5), P(25.4, 30.5), Pen.MARK),
        line(P(0, 20.25), P(60, 20.25), Pen.CENTRE),
        Curve(P(2, 2), (Step(P(30, 5)), Step(P(31, 4))), Pen.HELP),
        circle(P(30, 20), 5.5, Pen.CUT),
        Text(P(3, 4), 2.8, 'Breite & <Höhe> "24"', pen=Pen.TEXT),
        Text(P(3, 12), 3.3, "12", pen=Pen.STRONG),
        Text(P(3, 14), 3.3, "  two  blanks ", angle=37.5, pen=Pen.STRONG),
    ),
)
TYPED = write(PLATE, 'a "plate"', "de")


@settings(deadline=None)
@given(drawn=sheets(LETTERS))
def test_every_sheet_comes_back(drawn: Sheet) -> None:
    """Whatever is drawn is read back: shapes, order, pens and words exactly, places to a micrometre."""
    assert_same(drawn, read(write(drawn), drawn.name))


@pytest.mark.parametrize("name", KINDS)
def test_every_printed_sheet_comes_back(name: str) -> None:
    """Every sheet of every kind of frame: no shape is more than a micrometre off, no letter another."""
    for printed in sheets_of(plan_of(KINDS[name])):
        found = compare([printed.sheet], [read(write(printed.sheet), printed.sheet.name)])
        assert found.problems == ()
        assert found.deviation <= LIMIT


def test_sheets_are_lean() -> None:
    """Every printed sheet of a kit takes less than 40 kB: what is read while somebody types comes at once."""
    assert max(len(write(printed.sheet)) for printed in sheets_of(plan_of())) < 40_000


def test_many_may_stand_in_one_page() -> None:
    """A drawing has no name that another could have, no style of its own, no script, no link, and nothing loaded."""
    root = ElementTree.fromstring(TYPED)  # noqa: S314 - ours
    every = list(root.iter())
    keys = {key for part in every for key in part.attrib}
    assert {part.tag.rpartition("}")[2] for part in every} == {"svg", "g", "path", "text"}
    assert keys.isdisjoint({"id", "style", "class", "href", "{http://www.w3.org/1999/xlink}href", "src"})
    assert not any(key.startswith("on") for key in keys)


def test_names_cannot_leave_their_place() -> None:
    """A title or words that look like markup are letters."""
    hostile = "</text><script>alert(1)</script>\"' onload='x"
    sheet = Sheet("plate", 60, 40, (Text(P(1, 1), 3, hostile),))
    found = write(sheet, hostile, '"><b>')
    assert "<script" not in found
    assert read(found, "plate").shapes[0] == sheet.shapes[0]._replace(at=P(1, 1))
    assert ElementTree.fromstring(found).get("aria-label") == hostile  # noqa: S314 - ours


def test_words_are_as_long_as_on_paper() -> None:
    """Each says its length by the widths of the print font, in thousandths of a mm."""
    (length,) = re.findall(r'textLength="(\d+)">Breite', TYPED)
    assert int(length) == round(font_metrics().width(PLATE.shapes[7].words, 2.8) * 1000)  # type: ignore[union-attr]


def test_what_cannot_be_drawn_is_refused() -> None:
    """A letter that the font lacks, a place that is nowhere."""
    for shape in (Text(P(1, 1), 3, "織"), line(P(0, 0), P(float("nan"), 1), Pen.MARK)):
        with pytest.raises(LayoutError):
            write(Sheet("plate", 60, 40, (shape,)))


SPOILED = {
    "no end": ("</svg>", ""),
    "a document type": ("<svg ", '<!DOCTYPE svg [<!ENTITY a "b">]><svg '),
    "a comment": ("<g ", "<!-- --><g "),
    "another size": ('width="60mm"', 'width="61mm"'),
    "another view box": ('viewBox="0 0 60 40"', 'viewBox="0 0 30 40"'),
    "another scale": ("scale(.001)", "scale(.0011)"),
    "another font": ("Sheet,Open", "Serif,Open"),
    "a script": ("<path ", "<script>x</script><path "),
    "a handler": ('role="img"', 'role="img" onload="x()"'),
    "a name": ('<g data-pen="mark"', '<g id="a" data-pen="mark"'),
    "a style": ('<g data-pen="mark"', '<g style="stroke:red" data-pen="mark"'),
    "another pen": ('data-pen="mark"', 'data-pen="ten"'),
    "no pen": ('data-pen="mark"', 'data-pen="pencil"'),
    "another width": ('stroke-width="310"', 'stroke-width="300"'),
    "another dash": ('stroke-dasharray="2400 ', 'stroke-dasharray="2300 '),
    "a colour": ('data-pen="tint" fill="#e6e6e6"', 'data-pen="tint" fill="#e6e6e7"'),
    "light words": ('font-weight="600"', 'font-weight="400"'),
    "squeezed words": ('textLength="', 'textLength="1'),
    "words of no length": (' textLength="', ' data-length="'),
    "lost blanks": (' xml:space="preserve"', ""),
    "an element among words": ("Breite", "<b>Breite</b>"),
    "an open area": ("z", ""),
    "an oval": ("a5500 5500", "a5500 5501"),
    "a curve": ("h60000", "q1 1 60000 0"),
    "words outside": ("</svg>", "words</svg>"),
}


@pytest.mark.parametrize("what", SPOILED)
def test_a_spoiled_drawing_is_refused(what: str) -> None:
    """Each change that is none of ours is said in one sentence."""
    old, new = SPOILED[what]
    assert old in TYPED
    with pytest.raises(ReadError) as caught:
        read(TYPED.replace(old, new, 1), "plate")
    assert "\n" not in str(caught.value)


MOVED = {
    "a mark": ("M12700 4500", "M12702 4500"),
    "the end of a mark": ("v5000", "v5002"),
    "a corner": ("M10000 10000", "M10000 10002"),
    "a circle": ("M35500 20000", "M35503 20000"),
    "words": ('x="3000" y="36000"', 'x="3000" y="36002"'),
    "turned words": ("rotate(-37.5)", "rotate(-37.6)"),
    "larger words": ('font-size="3300"', 'font-size="3302"'),
    "another letter": (">12<", ">13<"),
    "a mark less": ("M25400 4500v5000", ""),
}


@pytest.mark.parametrize("what", MOVED)
def test_a_moved_shape_is_found(what: str) -> None:
    """What is off by two micrometres, turned by a tenth of a degree, or says something else, differs from the sheet."""
    old, new = MOVED[what]
    assert old in TYPED
    try:
        found = compare([PLATE], [read(TYPED.replace(old, new, 1), "plate")])
    except ReadError:
        return
    assert found.problems


def test_nothing_makes_the_reader_stumble() -> None:
    """Whatever happens to a drawing, it is read or refused in one sentence."""
    refused = []
    for data in damaged(TYPED.encode()):
        try:
            read(data.decode("utf-8", "replace"), "plate")
        except ReadError as error:
            refused.append(str(error))
    assert len(refused) > 150
    assert not any("\n" in sentence for sentence in refused)


@given(text=st.text(max_size=200))
def test_any_text_is_refused(text: str) -> None:
    """What is no drawing of ours is none."""
    with pytest.raises(ReadError):
        read("<svg " + text)


def test_a_polygon_stays_closed() -> None:
    """An outline that is closed is closed on the screen."""
    shape = polygon((P(1, 1), P(9, 1), P(5, 9)), Pen.CUT)
    assert read(write(Sheet("a", 10, 10, (shape,))), "a").shapes == (shape,)

"""The alarm for pictures: a winding picture or check sheet that is drawn wrong must ring, a right one must not."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest
from kits import font_metrics, kit_of
from pictures import EVERY, KINDS

import layout.frames.load as load_module
import layout.parts.frame_check as check_module
import layout.parts.frame_figure as figure_module
import layout.parts.winding.face as face_module
import layout.parts.winding.words as words_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, polygon
from layout.parts.winding.face import Face
from layout.parts.winding.kinds.picture_kind import Section
from layout.parts.winding.scale import FULL
from layout.parts.winding.shown_passes import ShownPass, ShownPasses, shown_passes
from layout.plan import Plan, plan
from layout.values.errors import LayoutError
from layout.values.quantity import Quantity
from templates_gen.files.outputs import Output, Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.verify.compare import compare

PATCH = pytest.MonkeyPatch
PAPERS = ("common", "letter", "a4", "148 x 210 mm", "600 x 900 mm")
CHECKED: dict[str, object] = {"frame.material": "beech", "frame.tension": "7 oz", "weaving.slant": "face straight"}


def alarm(planned: Plan, wanted: Output) -> str:
    """What the proof says against a file that came back just as it was drawn; nothing if it passes."""
    try:
        found = read(wanted, write(wanted))
        assert compare(wanted.sheets, found.sheets).sound
        result = findings(planned, wanted, found)
    except LayoutError as error:
        return str(error)
    assert result.sound == (not result.problems)
    return "; ".join(result.sentences)


@pytest.mark.parametrize("name", EVERY)
def test_right_pictures_do_not_ring(name: str, pytestconfig: pytest.Config) -> None:
    """Every kind of frame, in every turn, on papers in turn: the picture on paper and alone, and the check sheet.

    The usual run takes the picture alone, which is the same part, and the check sheet for some of all kinds and turns.
    """
    number, thorough = list(EVERY).index(name), pytestconfig.getoption("thorough")
    files = ["winding.pdf"]
    files += ["winding.svg"] if thorough or number.bit_count() % 2 else []
    files += ["frame-check.pdf"] if thorough or number % 3 == 0 else []
    paper = {"paper.size": PAPERS[number % len(PAPERS)]}
    planned = plan(kit_of(EVERY[name] | paper))
    outputs = Outputs(planned, font_metrics())
    for file in files:
        assert alarm(planned, outputs.output(file)) == "", file


@pytest.mark.parametrize(
    "changes",
    [
        {"frame.outer_width": "18 in", "frame.outer_height": "24 1/2 in"},
        {"frame.material": "steel", "frame.bar_bore": "12 mm", "weaving.doubled_warp": True},
        KINDS["flat ends"] | {"frame.material": "oak", "frame.end_width": "30 mm", "frame.tension": "3 N"},
        KINDS["notched ends"] | {"frame.material": "ash", "frame.end_width": "40 mm", "weaving.doubled_selvedges": 2},
        {"sett.given": "7.5 epi", "frame.outer_width": "1.2 m", "frame.outer_height": "3 m"},
        {"name": "12 12"},
        {"warp": {"count": 300, "system": "tex"}, "frame.tensioner": "none", "frame.left_warped": "months"},
        {"warp": {"count": 300, "system": "tex"}, "paper.size": "210 x 148 mm", "frame.material": "mdf"},
        {
            "warp": {"count": 295, "system": "tex", "fibre": "cotton"},
            "frame.dip": {"load": "20 g", "length": "40 cm", "depth": "6 mm"},
            "frame.pluck": {"hertz": 177, "length": "400 mm"},
            "frame.modulus": 12_500,
        },
    ],
)
def test_right_check_sheets_do_not_ring(changes: dict[str, object]) -> None:
    """In inches, with a tube, boards, doubled ends, long frames, a name of figures."""
    planned = plan(kit_of(changes))
    outputs = Outputs(planned, font_metrics())
    assert alarm(planned, outputs.output("frame-check.pdf")) == ""
    assert alarm(planned, outputs.output("kit.pdf")) == ""


# Builders that are wrong: the file is just as it was drawn, and only the kit's own numbers speak against it.


def _legs(patch: PATCH, change: Callable[[ShownPass], ShownPass]) -> None:
    def wrong(*values: object) -> ShownPasses:
        right = shown_passes(*values)  # type: ignore[arg-type]
        return replace(right, groups=tuple(tuple(map(change, group)) for group in right.groups))

    patch.setattr(face_module, "shown_passes", wrong)


def _mirrored(patch: PATCH) -> None:
    _legs(patch, lambda leg: leg._replace(near=-leg.near, far=-leg.far))


def _layers_swapped(patch: PATCH) -> None:
    _legs(patch, lambda leg: leg._replace(layer="back" if leg.layer == "face" else "face"))


def _one_layer_wrong(patch: PATCH) -> None:
    _legs(patch, lambda leg: leg._replace(layer="face") if leg.number == 3 else leg)


def _arrows_turned(patch: PATCH) -> None:
    _legs(patch, lambda leg: leg._replace(up=not leg.up))


def _one_pass_less(patch: PATCH) -> None:
    def wrong(*values: object) -> ShownPasses:
        right = shown_passes(*values)  # type: ignore[arg-type]
        return replace(right, groups=(right.groups[0][:-1], *right.groups[1:]))

    patch.setattr(face_module, "shown_passes", wrong)


def _slant_lost(patch: PATCH) -> None:
    _legs(patch, lambda leg: leg._replace(near=(leg.near + leg.far) / 2, far=(leg.near + leg.far) / 2))


def _one_pass_aside(patch: PATCH) -> None:
    _legs(patch, lambda leg: leg._replace(near=leg.near + 0.002) if leg.number == 4 else leg)


def _thread(patch: PATCH, change: Callable[[list[Shape]], list[Shape]]) -> None:
    right = Face.leg
    patch.setattr(Face, "leg", lambda face, leg: change(right(face, leg)))


def _no_arrows(patch: PATCH) -> None:
    _thread(patch, lambda shapes: shapes[:1])


def _knots(patch: PATCH, change: Callable[[Shape], Shape | None]) -> None:
    right = Face.tied

    def wrong(face: Face) -> list[Shape]:
        changed = (change(shape) for shape in right(face))
        return [shape for shape in changed if shape is not None]

    patch.setattr(Face, "tied", wrong)


def _knots_aside(patch: PATCH) -> None:
    _knots(patch, lambda shape: Placing(0, 0.01, 0).shapes([shape])[0])


def _no_knots(patch: PATCH) -> None:
    _knots(patch, lambda shape: None if isinstance(shape, Region) else shape)


def _knots_at_the_other_end(patch: PATCH) -> None:
    right = Face.knot
    patch.setattr(Face, "knot", lambda face, leg, end: right(face, leg, "far" if end == "near" else "near"))


def _ends_swapped(patch: PATCH) -> None:
    right = Face.outward
    patch.setattr(Face, "outward", lambda face, end: -right(face, end))


def _side_turned(patch: PATCH) -> None:
    import layout.parts.winding.side as side_module

    right = side_module._passes

    def wrong(face: Face, section: Section) -> list[Shape]:
        return [
            Region((_upside(shape.contours[0]),), Pen.SOLID) if isinstance(shape, Region) else shape
            for shape in right(face, section)
        ]

    patch.setattr(side_module, "_passes", wrong)


def _upside(head: Curve) -> Curve:
    """The same arrow head pointing back."""
    tip, *base = head.points()
    foot = Point((base[0].x + base[1].x) / 2, (base[0].y + base[1].y) / 2)
    turned = [Point(tip.x + foot.x - p.x, tip.y + foot.y - p.y) for p in head.points()]
    return polygon(turned, head.pen)


def _words(patch: PATCH, of: str, old: str, new: str) -> None:
    right = getattr(words_module, of)

    def wrong(*given: object) -> list[Shape]:
        return [
            shape._replace(words=shape.words.replace(old, new)) if hasattr(shape, "words") else shape
            for shape in right(*given)
        ]

    patch.setattr(words_module, of, wrong)


PICTURES: dict[str, Callable[[PATCH], None]] = {
    "mirrored": _mirrored,
    "layers swapped": _layers_swapped,
    "one layer wrong": _one_layer_wrong,
    "passes up and down swapped": _arrows_turned,
    "one pass less": _one_pass_less,
    "the slant lost": _slant_lost,
    "one pass 1 micrometre aside": _one_pass_aside,
    "no arrows": _no_arrows,
    "knots aside": _knots_aside,
    "no knots": _no_knots,
    "knots at the other end": _knots_at_the_other_end,
    "near and far end swapped": _ends_swapped,
    "turned as it is seen from the right": _side_turned,
}
SAID: dict[str, Callable[[PATCH], None]] = {
    "one more left out is said": lambda patch: _words(patch, "_left_out", "22", "23"),
    "nothing left out is said": lambda patch: patch.setattr(words_module, "_left_out", lambda *_: []),
    "winds numbered from 2": lambda patch: _words(patch, "_numbers", "1", "2"),
    "the last number left out": lambda patch: _words(patch, "_numbers", "25", "-"),
}


@cache
def slanted() -> dict[str, object]:
    """A kit that no mirror leaves as it is."""
    return {"weaving.slant": "face straight"}


@pytest.mark.parametrize("file", ["winding.pdf", "winding.svg", "kit.pdf"])
@pytest.mark.parametrize("name", PICTURES)
def test_a_wrong_picture_rings(name: str, file: str, monkeypatch: PATCH) -> None:
    """A picture of another warp than the kit's is found out, on paper and alone."""
    PICTURES[name](monkeypatch)
    planned = plan(kit_of(slanted()))
    assert "winding" in alarm(planned, Outputs(planned, font_metrics()).output(file))


@pytest.mark.parametrize("name", SAID)
def test_wrong_words_ring(name: str, monkeypatch: PATCH) -> None:
    """So are wrong counts, numbers and names, where words are real."""
    SAID[name](monkeypatch)
    planned = plan(kit_of(slanted()))
    assert "winding" in alarm(planned, Outputs(planned, font_metrics()).output("winding.pdf"))


@pytest.mark.parametrize("kind", ["notched ends", "notches in pairs", "pegged ends"])
@pytest.mark.parametrize(
    "name", ["passes up and down swapped", "one pass less", "knots aside", "near and far end swapped"]
)
def test_wrong_pictures_of_other_ends_ring(kind: str, name: str, monkeypatch: PATCH) -> None:
    """Between notches and pegs too."""
    PICTURES[name](monkeypatch)
    planned = plan(kit_of(KINDS[kind]))
    assert "winding" in alarm(planned, Outputs(planned, font_metrics()).output("winding.svg"))


def _diagonal(patch: PATCH) -> None:
    right = figure_module._between
    patch.setattr(figure_module, "_between", lambda begin, end, share: right(begin, end, share)._replace(x=begin.x))


def _bends_more(patch: PATCH) -> None:
    right = load_module.deflection

    def wrong(*values: object) -> Quantity:
        bent = right(*values)  # type: ignore[arg-type]
        return bent.scaled(2)

    patch.setattr(load_module, "deflection", wrong)


Checks = tuple[check_module.Check, ...]


def _checks(patch: PATCH, change: Callable[[Checks], Checks]) -> None:
    right = check_module.checks
    patch.setattr(check_module, "checks", lambda planned: change(right(planned)))


def _sentence(patch: PATCH, number: int, old: str, new: str) -> None:
    def wrong(found: Checks) -> Checks:
        said = found[number].sentences
        assert any(old in sentence for sentence in said)
        spoilt = found[number]._replace(sentences=tuple(sentence.replace(old, new) for sentence in said))
        return (*found[:number], spoilt, *found[number + 1 :])

    _checks(patch, wrong)


def _stretched(patch: PATCH) -> None:
    right = figure_module._frame
    patch.setattr(figure_module, "_frame", lambda plan, wide, high: right(plan, wide * 1.001, high))


def _dimension_wrong(patch: PATCH) -> None:
    right = figure_module.by_rule
    patch.setattr(figure_module, "by_rule", lambda *given, **named: right(*given, **named).replace("400", "40"))


SHEETS: dict[str, Callable[[PATCH], None]] = {
    "a diagonal that does not lead to its corner": _diagonal,
    "a bar that bends twice as far": _bends_more,
    "half a pitch said to be a pitch": lambda patch: _sentence(patch, 1, "At most 2 mm", "At most 4 mm"),
    "the middle at the whole width": lambda patch: _sentence(patch, 2, "200 mm", "400 mm"),
    "a diagonal 1 mm longer": lambda patch: _sentence(patch, 0, "680 mm", "681 mm"),
    "a number left out": lambda patch: _sentence(patch, 3, "At 0.5 mm", "Soon"),
    "a check left out": lambda patch: _checks(patch, lambda found: found[:3]),
    "another order of checks": lambda patch: _checks(patch, lambda found: found[::-1]),
    "a picture 0.1 % wide": _stretched,
    "a wrong dimension": _dimension_wrong,
}


@pytest.mark.parametrize("name", SHEETS)
def test_a_wrong_check_sheet_rings(name: str, monkeypatch: PATCH) -> None:
    """A check sheet that tells other numbers than the kit's, or draws another frame, is found out."""
    SHEETS[name](monkeypatch)
    planned = plan(kit_of(CHECKED))
    assert "frame check" in alarm(planned, Outputs(planned, font_metrics()).output("frame-check.pdf"))


def test_the_picture_that_is_spoilt_shows_a_gap() -> None:
    """The kit that the wrong builders spoil has passes left out, so that counting them matters."""
    face = Face.of(plan(kit_of(slanted())), FULL)
    assert (len(face.way.legs), face.way.left_out) == (12, 38)

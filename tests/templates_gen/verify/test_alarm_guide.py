"""The alarm of the spacing guides: what is wrong in drawing and plan alike must ring by the kit's numbers."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import cache

import pytest
from alarms import alarm_of
from kits import FLAT, NAILS, NOTCHED, PEGGED, font_metrics, kit_of

import layout.paper.choice as choice_module
import layout.paper.joined as joined_module
import layout.paper.leaves as leaves_module
import layout.paper.sheets as sheets_module
import layout.parts.guide_words as words_module
import layout.parts.spacing_guide as guide_module
import layout.warps.fan as fan_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Part
from layout.messages.catalogue import Catalogue, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Guide
from layout.paper.choice import Laying
from layout.parts.phrases import Phrase
from layout.parts.spacing_guide import _Draft
from layout.plan import Plan, plan
from layout.warps.warp import Warp
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write

TILED: dict[str, object] = {"frame.outer_width": "90 cm", "weaving.width": "70 cm", "paper.lay": "tiles"}
KITS: dict[str, dict[str, object]] = {
    "cm": {"sett": {"readings": [{"pairs": 13, "window": "5 cm"}], "marking_unit": "1 in"}, "weaving.start": "right"},
    "inch": {"sett": {"readings": [{"pairs": 9, "window": "1 in"}]}, "weaving.first_pass": "back"},
    "face straight": {"weaving.slant": "face straight", "weaving.near_end": "top"},
    "odd": {"weaving.tie_off": "far end", "weaving.start": "right", "name": "2026"},
    "low": {"weaving.width": "12 in", "frame.outer_width": "18 in", "sett.given": "8 epi"},
    "flat": FLAT | {"frame.edge_radius": "4 mm", "room": {"slope": 0.5, "heading": "4 mm"}},
    "tiled": TILED,
    "tiled inches": TILED | {"sett.given": "7.5 epi", "paper.size": "a4", "weaving.slant": "face straight"},
    "notched": NOTCHED,
    "two to a notch": NOTCHED | {"frame.notch_density": "2 per cm", "sett.given": "4 per cm"},
    "nails": NAILS,
    "nails as thick as the pitch": NAILS | {"frame.nail_diameter": "4 mm"},
    "pegged": PEGGED,
    "pegs as thick as the pitch": PEGGED | {"frame.peg_diameter": "4 mm"},
    "fine": {"sett.given": "12 ends/cm"},
    "finer": {"sett.given": "40 ends/cm", "sett.marking_unit": "1 cm"},
    "narrow": {"weaving.width": "20 mm", "frame.outer_width": "50 mm", "frame.side_width": "10 mm"}
    | {"frame.margin": "3 mm"},
}


@cache
def planned(name: str = "cm") -> Plan:
    """The plan of one of the kits."""
    return plan(kit_of(KITS[name]))


def alarm(form: str = "pdf", name: str = "cm") -> str:
    """What the proof says against the guides as they are drawn now; nothing if they pass."""
    return alarm_of(planned(name), f"spacing-guide.{form}")


@pytest.mark.parametrize("form", ["pdf", "svg"])
@pytest.mark.parametrize("name", KITS)
def test_what_is_right_does_not_ring(name: str, form: str) -> None:
    """The guides of every kit pass in both kinds of file."""
    assert alarm(form, name) == ""


Patch = Callable[[pytest.MonkeyPatch], None]


def drawn(method: str, change: Callable[[list[Curve]], list[Curve]]) -> Patch:
    """Lines that one method of the builder draws, changed."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = getattr(_Draft, method)
        patch.setattr(_Draft, method, lambda draft, *given: change(right(draft, *given)))

    return apply


def moved(path: Curve, dx: float) -> Curve:
    """An upright elsewhere."""
    return path._replace(
        start=Point(path.start.x + dx, path.start.y),
        steps=tuple(step._replace(end=Point(step.end.x + dx, step.end.y)) for step in path.steps),
    )


def lengthened(path: Curve, by: float) -> Curve:
    """An upright that reaches further."""
    (step,) = path.steps
    return path._replace(steps=(step._replace(end=Point(step.end.x, step.end.y * by)),))


def _swapped_layers(patch: pytest.MonkeyPatch) -> None:
    right = Warp.layers_at
    other = {"face": "back", "back": "face"}
    patch.setattr(Warp, "layers_at", lambda warp, end: tuple(other[each] for each in right(warp, end)))


def _swapped_ends(patch: pytest.MonkeyPatch) -> None:
    """The far guide where the near one is asked for: its edge is on the other side."""
    patch.setattr(_Draft, "up", property(lambda draft: -1 if draft.end == "near" else 1))


def _positions(change: Callable[[list[float]], list[float]]) -> Patch:
    def apply(patch: pytest.MonkeyPatch) -> None:
        patch.setattr(
            _Draft,
            "numbered",
            lambda draft: list(
                enumerate(change([float(x) for x in draft.plan.warp.end_positions[:: draft.plan.warp.toward]]), 1)
            ),
        )

    return apply


def _added_up(xs: list[float]) -> list[float]:
    return [xs[0] + k * round(xs[1] - xs[0], 2) for k in range(len(xs))]


def begun(mark: Curve, dx: float, y: float) -> Curve:
    """An upright that begins elsewhere."""
    return mark._replace(start=Point(mark.start.x + dx, y))


def ticked(change: Callable[[list[Fraction], list[Fraction]], tuple[list[Fraction], list[Fraction]]]) -> Patch:
    """Distances of units, changed."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = _Draft.ticks
        patch.setattr(_Draft, "ticks", lambda draft: change(*right(draft)))

    return apply


def turned(triangle: Region) -> Region:
    """A triangle on the other side of its upright."""
    (path,) = triangle.contours
    inner, outer, _ = path.points()
    step = path.steps[0]._replace(end=Point(2 * inner.x - outer.x, outer.y))
    return triangle._replace(contours=(path._replace(steps=(step, *path.steps[1:])),))


SWAPPED = {"near": "far", "far": "near"}
LINES: dict[str, Patch] = {
    "one end missing": drawn("ends", lambda marks: marks[:-1]),
    "one end twice": drawn("ends", lambda marks: [marks[0], *marks]),
    "one end 2 micrometres aside": drawn("ends", lambda marks: [moved(marks[0], 0.002), *marks[1:]]),
    "half a pitch aside": _positions(lambda xs: [x + (xs[0] - xs[1]) / 2 for x in xs]),
    "0.1 % long": _positions(lambda xs: [x * 1.001 for x in xs]),
    "pitches rounded and added up": _positions(
        lambda xs: [xs[0] + k * round(xs[1] - xs[0], 2) for k in range(len(xs))]
    ),
    "face and back swapped": _swapped_layers,
    "one mark of the back too long": drawn("ends", lambda m: [m[0], lengthened(m[1], 1.1), *m[2:]]),
    "all marks full": lambda patch: patch.setattr(
        guide_module, "_MARKS", {"face": (Pen.END_MARK, Pen.TEN), "back": (Pen.END_MARK, Pen.TEN)}
    ),
    "tens no longer than the others": lambda patch: patch.setattr(
        guide_module, "_FULL", replace(guide_module._FULL, ten=guide_module._FULL.mark)
    ),
    "marks that do not begin at the edge": drawn(
        "ends", lambda m: [m[0]._replace(start=Point(m[0].start.x, 0.5)), *m[1:]]
    ),
    "marks that lean": drawn("ends", lambda m: [m[0]._replace(start=Point(m[0].start.x + 0.01, 0.0)), *m[1:]]),
    "tens one end early": drawn(
        "ends", lambda m: [one._replace(pen=other.pen) for one, other in zip(m, [*m[1:], m[0]], strict=True)]
    ),
    "no tens": drawn("ends", lambda marks: [mark._replace(pen=Pen.END_MARK) for mark in marks]),
    "a unit missing": ticked(lambda large, small: (large[:-1], small)),
    "a small unit missing": ticked(lambda large, small: (large, small[1:])),
    "units 1 mm off": ticked(lambda large, small: ([d + 1 for d in large], small)),
    "small units counted by another size": lambda patch: patch.setattr(
        guide_module, "_SMALL_UNITS", {False: Fraction(11), True: Fraction(11)}
    ),
    "units counted from the other limit": lambda patch: patch.setattr(
        _Draft, "at", lambda draft, d: float(draft.plan.warp.toward * (draft.plan.warp.width / 2 - d))
    ),
    "a limit missing": drawn("limits", lambda two: [two[0], two[0]]),  # type: ignore[arg-type]
    "limits inside out": drawn("limits", lambda two: [turned(each) for each in two]),  # type: ignore[arg-type, list-item]
    "the thick edge half a millimetre in": lambda patch: patch.setattr(guide_module, "_BAND", 1.9),
    "the centre aside": drawn("centre", lambda marks: [moved(marks[0], 0.01)]),
    "near and far swapped": _swapped_ends,
}


@pytest.mark.parametrize("form", ["pdf", "svg"])
@pytest.mark.parametrize("name", LINES)
def test_wrong_lines_ring(name: str, form: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A mark that is not where and as long as the kit asks is found in both kinds of file."""
    LINES[name](monkeypatch)
    assert alarm(form)


def numbers(change: Callable[[list[Text]], list[Text]]) -> Patch:
    """Numbers changed."""
    return drawn("numbers", change)  # type: ignore[arg-type]


def says(role: Guide, **values: str) -> Patch:
    """Other values in what stands beside the guides."""

    class Other(Catalogue):
        def say(self, asked: Role, **given: object) -> str:
            return ENGLISH.say(asked, **given | values if asked is role else given)

    def apply(patch: pytest.MonkeyPatch) -> None:
        made, other = guide_module.guide_sheet, Other(ENGLISH.messages)
        patch.setattr(guide_module, "guide_sheet", lambda of, metrics: made(replace(of, words=other), metrics))

    return apply


def _never(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(fan_module.Fan, "needs_no_fingers", lambda _: None)


def _always(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(fan_module.Fan, "needs_no_fingers", lambda fan: (0.0, fan.high))


def _headings_swapped(patch: pytest.MonkeyPatch) -> None:
    right = words_module.heading_height
    patch.setattr(words_module, "heading_height", lambda kit, woven, end: right(kit, woven, SWAPPED[end]))


def _other_title(patch: pytest.MonkeyPatch) -> None:
    right = words_module.phrases_for
    patch.setattr(
        guide_module,
        "phrases_for",
        lambda of, end, *how, **more: right(of, SWAPPED[end], *how, **more),
    )


WORDS: dict[str, Patch] = {
    "a number wrong": numbers(lambda texts: [texts[0], texts[1]._replace(words="20"), *texts[2:]]),
    "a number too high by one": numbers(lambda texts: [texts[0], texts[1]._replace(words="11"), *texts[2:]]),
    "numbers counted from the other side": numbers(
        lambda texts: [text._replace(words=other.words) for text, other in zip(texts, texts[::-1], strict=True)]
    ),
    "a number missing": numbers(lambda texts: [texts[0], *texts[2:]]),
    "only every twentieth numbered": lambda patch: patch.setattr(guide_module, "_STEPS", (20,)),
    "no numbers": numbers(lambda _: []),
    "a number aside": numbers(
        lambda texts: [texts[0], texts[1]._replace(at=Point(texts[1].at.x + 5, texts[1].at.y)), *texts[2:]]
    ),
    "the fan wrong": says(Guide.OFF_NEAR, off="5 mm"),
    "the height wrong": says(Guide.OFF_NEAR, away="450 mm"),
    "the guide laid elsewhere": says(Guide.LAY_BOTH, far="450 mm"),
    "fingers not needed elsewhere": says(Guide.OFF_FAR, free="1 mm"),
    "fingers said to be needed everywhere": _never,
    "fingers said not to be needed": _always,
    "another tolerance": lambda patch: patch.setattr(fan_module, "TOLERANCE", fan_module.TOLERANCE * 2),
    "the fan of the other heading": _headings_swapped,
    "the words of the other heading": _other_title,
    "the fan of a frame half as high": lambda patch: patch.setattr(fan_module, "way_between", lambda _: 250.0),
    "the fan of the other slant": lambda patch: patch.setattr(
        fan_module, "_unrolled", lambda frame, warp: {(0.0, 2 * float(warp.pitch) / fan_module.way_between(frame))}
    ),
}


@pytest.mark.parametrize("name", WORDS)
def test_wrong_words_ring(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A number or a figure that does not follow from the kit is found where words are words."""
    WORDS[name](monkeypatch)
    assert alarm()


Phrases = Callable[[list[Phrase]], list[Phrase]]


def named(change: Phrases) -> Patch:
    """What the pieces are called, changed; a guide in one piece has no such names."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = words_module._pieces

        def changed(*given: object) -> list[Phrase]:
            names = right(*given)  # type: ignore[arg-type]
            return change(names) if names else []

        patch.setattr(words_module, "_pieces", changed)

    return apply


def _silent(patch: pytest.MonkeyPatch) -> None:
    """Sheets of pieces that have their head only."""
    right = leaves_module.leaves_of

    def bare(layings: Sequence[Laying], rest: leaves_module.Rest) -> list[leaves_module.Leaf]:
        return [each._replace(part=leaves_module.without_words(each.part)) for each in right(layings, rest)]

    patch.setattr(sheets_module, "leaves_of", bare)


def _shown(change: Callable[[list[Part]], list[Part]]) -> Patch:
    """Pieces changed after they are cut."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = choice_module.pieces
        patch.setattr(choice_module, "pieces", lambda *given: change(right(*given)))

    return apply


def without_edge(part: Part) -> Part:
    """A piece that has no thick edge."""
    return replace(part, shapes=tuple(shape for shape in part.shapes if shape.pen is not Pen.EDGE))


PIECES: dict[str, Patch] = {
    "a piece without a name": named(lambda names: names[1:]),
    "names of pieces swapped": named(
        lambda names: [one._replace(words=other.words) for one, other in zip(names, names[::-1], strict=True)]
    ),
    "a piece more than there are": named(
        lambda names: [names[0]._replace(words="Near guide, piece 1 of 9"), *names[1:]]
    ),
    "another distance over the joints": lambda patch: patch.setattr(joined_module, "proof_distance", lambda _: 700.0),
    "another tolerance of it": lambda patch: patch.setattr(joined_module, "proof_tolerance", lambda *_: 0.3),
    "nothing said beside the pieces": _silent,
    "a piece without its thick edge": _shown(lambda parts: [*parts[:-1], without_edge(parts[-1])]),
    "a piece missing": _shown(lambda parts: [*parts[:-1], parts[-2]]),
}


@pytest.mark.parametrize("name", PIECES)
def test_wrong_pieces_ring(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Names of pieces, the sentence that says how they are joined, and the thick edge of each are looked for."""
    PIECES[name](monkeypatch)
    assert alarm("pdf", "tiled")


def test_a_swapped_guide_rings() -> None:
    """The file with the sheets of both guides in the other order does not pass."""
    wanted = Outputs(planned("tiled"), font_metrics()).output("spacing-guide.pdf")
    turned = replace(wanted, sheets=wanted.sheets[::-1])
    assert findings(planned("tiled"), wanted, read(wanted, write(turned))).problems


@pytest.mark.parametrize("name", ["tiled", "tiled inches"])
def test_a_mark_on_no_piece_rings(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """In tiles too a mark, or a number, that is on no piece is missed."""
    with monkeypatch.context() as patch:
        LINES["one end missing"](patch)
        assert alarm("pdf", name)
    with monkeypatch.context() as patch:
        WORDS["a number missing"](patch)
        assert "numbered" in alarm("pdf", name)

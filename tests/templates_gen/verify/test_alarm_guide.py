"""The alarm of the spacing guides: what is wrong in drawing and plan alike must ring by the kit's numbers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest
from alarms import alarm_of
from kits import FLAT, NAILS, NOTCHED, PEGGED, font_metrics, kit_of

import layout.parts.guide_words as words_module
import layout.parts.spacing_guide as guide_module
import layout.warps.fan as fan_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
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
    "all marks of one length": lambda patch: patch.setattr(
        guide_module, "_FULL", replace(guide_module._FULL, back=guide_module._FULL.face)
    ),
    "marks that do not begin at the edge": drawn(
        "ends", lambda m: [m[0]._replace(start=Point(m[0].start.x, 0.5)), *m[1:]]
    ),
    "marks that lean": drawn("ends", lambda m: [m[0]._replace(start=Point(m[0].start.x + 0.01, 0.0)), *m[1:]]),
    "tens one end early": drawn(
        "ends", lambda m: [one._replace(pen=other.pen) for one, other in zip(m, [*m[1:], m[0]], strict=True)]
    ),
    "no tens": drawn("ends", lambda marks: [mark._replace(pen=Pen.MARK) for mark in marks]),
    "a unit line missing": drawn("units", lambda marks: marks[:-1]),
    "unit lines 1 mm off": drawn("units", lambda marks: [moved(mark, 1.0) for mark in marks]),
    "units counted from the other limit": drawn("units", lambda marks: [moved(m, -2 * m.start.x) for m in marks]),
    "a limit missing": drawn("limits", lambda marks: marks[:1]),
    "a limit aside": drawn("limits", lambda marks: [moved(marks[0], 0.01), marks[1]]),
    "the centre aside": drawn("centre", lambda marks: [moved(marks[0], 0.01), marks[1]]),
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


def says(old: str, new: str) -> Patch:
    """Other words on the fan."""

    def apply(patch: pytest.MonkeyPatch) -> None:
        right = words_module.fan_words
        patch.setattr(
            words_module, "fan_words", lambda *a, **k: tuple(words.replace(old, new) for words in right(*a, **k))
        )

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
        lambda of, end, **more: right(of, SWAPPED[end], **more),
    )


WORDS: dict[str, Patch] = {
    "a number wrong": numbers(lambda texts: [texts[0]._replace(words="20"), *texts[1:]]),
    "a number too high by one": numbers(lambda texts: [texts[0]._replace(words="11"), *texts[1:]]),
    "numbers counted from the other side": numbers(
        lambda texts: [text._replace(words=other.words) for text, other in zip(texts, texts[::-1], strict=True)]
    ),
    "a number missing": numbers(lambda texts: texts[1:]),
    "only every twentieth numbered": lambda patch: patch.setattr(guide_module, "_STEPS", (20,)),
    "no numbers": numbers(lambda _: []),
    "a number aside": numbers(
        lambda texts: [texts[0]._replace(at=Point(texts[0].at.x + 4, texts[0].at.y)), *texts[1:]]
    ),
    "the fan wrong": says(" off", "5 off"),
    "the fan left out": says("ends up to", "ends about"),
    "the height wrong": says("from the outer edge", "0 from the outer edge"),
    "fingers not needed elsewhere": says("needed from ", "needed from 1"),
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


def test_a_swapped_guide_rings() -> None:
    """The file with both guides in the other order does not pass."""
    wanted = Outputs(planned(), font_metrics()).output("spacing-guide.pdf")
    turned = replace(wanted, sheets=wanted.sheets[::-1])
    assert findings(planned(), wanted, read(wanted, write(turned))).problems


@pytest.mark.parametrize("name", ["tiled", "tiled inches"])
def test_a_mark_on_no_piece_rings(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """In tiles too a mark, or a number, that is on no piece is missed."""
    with monkeypatch.context() as patch:
        LINES["one end missing"](patch)
        assert alarm("pdf", name)
    with monkeypatch.context() as patch:
        WORDS["a number missing"](patch)
        assert "numbered" in alarm("pdf", name)

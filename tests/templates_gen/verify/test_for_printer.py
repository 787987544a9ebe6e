"""Sheets corrected for a printer: the proof knows what comes out of it, and rings where anything else would.

Each wrong way draws what is compared, too, so that only what is computed from the file alone can find it.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace

import pytest
from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD, font_metrics, kit_of
from printers import FAR, SLANTED, USUAL, printer_of

import layout.drawing.correction as correction
import layout.paper.printer_line as printer_line
import templates_gen.files.for_printer as made_for
from layout.drawing.correction import Scale, corrected
from layout.drawing.printer import Printer
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Sheet
from layout.plan import plan
from templates_gen.document import About
from templates_gen.files.for_printer import with_printer
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.files.proven import Made, ProofError, proven
from templates_gen.inputs import stock_file
from templates_gen.languages.catalogues import words_of
from templates_gen.verify.for_printer import sentence

Wrong = Callable[[Sheet, Scale], Sheet]


def made(printer: Printer, file: str = "strips.pdf", changes: dict[str, object] | None = None) -> Made:
    """One file of a kit for a printer, drawn, written, read and proven."""
    kit = kit_of(changes)
    planned = with_printer(plan(kit, words_of(kit)), printer)
    output = Outputs(planned, font_metrics()).output(file)
    return proven(planned, output, write(output))


def rings(file: str = "strips.pdf", printer: Printer = SLANTED) -> str:
    """What is said of that file."""
    with pytest.raises(ProofError) as refused:
        made(printer, file)
    return str(refused.value)


@pytest.mark.parametrize("printer", [USUAL, SLANTED, FAR[0]], ids=str)
@pytest.mark.parametrize("file", ["strips.pdf", "frame-check.pdf", "wrap-gauge.pdf"])
def test_what_is_right_passes(printer: Printer, file: str) -> None:
    """Lines, words, arrows, circles and long arcs."""
    assert made(printer, file).deviation < 0.001


LAID: tuple[dict[str, object], ...] = (
    {"paper.size": "letter", "frame.outer_width": "90 cm"},
    {"paper.size": "a4", "weaving.width": "12 in", "frame.bar_diameter": "12 mm", "frame.outer_width": "50 cm"},
    {**PEGGED, "paper.size": "148 x 210 mm", "paper.language": "fr"},
)


@pytest.mark.parametrize(("changes", "printer"), [(LAID[0], SLANTED), (LAID[1], FAR[1]), (LAID[2], USUAL)])
def test_pieces_and_parts_across_pass(changes: dict[str, object], printer: Printer) -> None:
    """Strips in tiles, across a sheet, and in French on small paper."""
    assert made(printer, "strips.pdf", changes).deviation < 0.001


ENDS = {"round": {}, "flat": FLAT, "notched": NOTCHED, "pegged": PEGGED, "nails": NAILS, "crossed": CROSSED, "rod": ROD}
PAPERS = ("common", "a4", "letter", "148 x 210 mm", "210 x 148 mm", "a3", "11x17")
LANGUAGES = ("en", "es", "de", "fr")
SWEEP = [
    (ends, PAPERS[k % len(PAPERS)], LANGUAGES[k % len(LANGUAGES)], FAR[k % len(FAR)])
    for k, ends in enumerate([*ENDS, *reversed(ENDS), *ENDS])
]


@pytest.mark.slow
@pytest.mark.parametrize(("ends", "paper", "language", "printer"), SWEEP)
def test_every_file_of_every_kind_passes(ends: str, paper: str, language: str, printer: Printer) -> None:
    """All kinds of frame ends on all papers in all languages, for printers that are as far off as is allowed."""
    kit = kit_of({**ENDS[ends], "paper.size": paper, "paper.language": language, "paper.lay": "auto"})
    planned = with_printer(plan(kit, words_of(kit)), printer)
    outputs = Outputs(planned, font_metrics(), stock=stock_file.built_in())
    files = [name for name in outputs.files if name.endswith(".pdf")]
    assert len(files) >= 5
    for name in files:
        output = outputs.output(name)
        assert proven(planned, output, write(output)).deviation < 0.001


def _swapped(sheet: Sheet, scale: Scale) -> Sheet:
    return corrected(sheet, Scale(scale.y, scale.x, scale.skew))


def _more(sheet: Sheet, scale: Scale) -> Sheet:
    """0.01 % off: 20 micrometres from end to end."""
    return corrected(sheet, Scale(scale.x * 1.0001, scale.y, scale.skew))


def _not_at_all(sheet: Sheet, _: Scale) -> Sheet:
    return sheet


def _twice(sheet: Sheet, scale: Scale) -> Sheet:
    return corrected(corrected(sheet, scale), scale)


def _other_way(sheet: Sheet, scale: Scale) -> Sheet:
    return corrected(sheet, Scale(1 / scale.x, 1 / scale.y, -scale.skew))


def _upright(sheet: Sheet, scale: Scale) -> Sheet:
    return corrected(sheet, Scale(scale.x, scale.y, 0.0))


def _leaning_up(sheet: Sheet, scale: Scale) -> Sheet:
    """The lean in the wrong row of the matrix."""
    turned = corrected(sheet, Scale(scale.x, scale.y, 0.0))
    return replace(turned, shapes=tuple(_tilted(shape, scale.skew) for shape in turned.shapes))


def _tilted(shape: object, skew: float) -> object:
    if not isinstance(shape, Text):
        return shape
    return shape._replace(at=Point(shape.at.x, shape.at.y - skew * shape.at.x))


def _large_words(sheet: Sheet, scale: Scale) -> Sheet:
    found = corrected(sheet, scale)
    return replace(
        found,
        shapes=tuple(
            shape._replace(size=shape.size / scale.y) if isinstance(shape, Text) else shape for shape in found.shapes
        ),
    )


def _about_a_corner(sheet: Sheet, scale: Scale) -> Sheet:
    """Every distance is right, and everything is moved."""
    found = corrected(replace(sheet, width=0.0, height=0.0), scale)
    return replace(found, width=sheet.width, height=sheet.height)


WAYS: tuple[Wrong, ...] = (
    _swapped,
    _more,
    _not_at_all,
    _twice,
    _other_way,
    _upright,
    _leaning_up,
    _large_words,
    _about_a_corner,
)


@pytest.mark.parametrize("wrong", WAYS, ids=lambda wrong: wrong.__name__.strip("_"))
def test_a_wrong_correction_is_found(wrong: Wrong, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever was drawn with it, and read back as it was drawn."""
    monkeypatch.setattr(made_for, "corrected", wrong)
    assert "sheet 1" in rings()


def test_circles_that_are_scaled_are_found(monkeypatch: pytest.MonkeyPatch) -> None:
    """Rings of targets keep their radius: they move as a whole."""
    monkeypatch.setattr(correction, "_centre", lambda _: None)
    assert "sheet 1" in rings()


def test_arcs_that_are_not_parted_are_found(monkeypatch: pytest.MonkeyPatch) -> None:
    """An arc through three points that moved is off the curve between them."""
    monkeypatch.setattr(correction, "CLOSE", 1.0)
    assert "sheet 1" in rings("wrap-gauge.pdf", FAR[0])


def _other_numbers(printer: Printer, words: object) -> str:
    return printer_line.printer_words(replace(printer, scale=Scale(0.9936, 1.0061, 0.004)), words)  # type: ignore[arg-type]


def _other_name(printer: Printer, words: object) -> str:
    return printer_line.printer_words(replace(printer, name="Attic"), words)  # type: ignore[arg-type]


def _surer(printer: Printer, words: object) -> str:
    within = Scale(0.00001, 0.00001, 0.00001)
    return printer_line.printer_words(replace(printer, within=within), words)  # type: ignore[arg-type]


def _half(printer: Printer, words: object) -> str:
    return printer_line.printer_words(printer, words)[:40]  # type: ignore[arg-type]


def _and_more(printer: Printer, words: object) -> str:
    return f"{printer_line.printer_words(printer, words)} Good."  # type: ignore[arg-type]


@pytest.mark.parametrize("wrong", [_other_numbers, _other_name, _surer, _half, _and_more])
def test_a_wrong_sentence_is_found(wrong: Callable[..., str], monkeypatch: pytest.MonkeyPatch) -> None:
    """Another printer, other numbers, too sure, cut short, or with anything behind it."""
    monkeypatch.setattr(made_for, "printer_words", wrong)
    assert "sheet 1" in rings()


def _placed(change: Callable[[Text], list[Text]]) -> Callable[..., Sheet | None]:
    def placed(sheet: Sheet, *said: object) -> Sheet | None:
        found = printer_line.with_printer_line(sheet, *said)  # type: ignore[arg-type]
        assert found is not None
        own = [shape for shape in found.shapes if shape not in sheet.shapes]
        shapes = []
        for shape in found.shapes:
            shapes += change(shape) if shape in own and isinstance(shape, Text) else [shape]
        return replace(found, shapes=tuple(shapes))

    return placed


@pytest.mark.parametrize(
    "change",
    [
        lambda _: [],
        lambda text: [text, text._replace(at=Point(text.at.x, text.at.y + 60))],
        lambda text: [text._replace(size=text.size * 0.9)],
        lambda text: [text._replace(at=Point(text.at.x, 5.0))],
    ],
    ids=["none", "twice", "smaller", "in the margin"],
)
def test_a_sentence_in_a_wrong_place_is_found(
    change: Callable[[Text], list[Text]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """It stands on each sheet once, in its size, inside the margins."""
    monkeypatch.setattr(made_for, "with_printer_line", _placed(change))
    assert "does not say once" in rings()


@pytest.mark.parametrize("key", ["x", "y", "skew", "name"])
def test_a_file_that_carries_another_printer_is_found(key: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """What it carries must be what it was corrected for: it is all that a check has."""
    carrying = made_for._carrying

    def other(about: About, printer: Printer) -> About:
        values = json.loads(carrying(about, printer).inputs)
        values["printer"][key] = "Attic" if key == "name" else values["printer"][key] + 0.0001
        return about._replace(inputs=json.dumps(values))

    monkeypatch.setattr(made_for, "_carrying", other)
    assert "sheet 1" in rings()


def test_the_sentence_is_the_same_computed_twice() -> None:
    """How it is drawn and how it is proven, with numbers that round up and down, in every language."""
    from templates_gen.inputs.printer_values import printer_values
    from templates_gen.languages.catalogues import catalogue_of

    for language in ("en", "es", "de", "fr"):
        words = catalogue_of(language)
        for printer in (USUAL, SLANTED, *FAR, printer_of(0.999999, 1.0000049, -0.0000001)):
            assert sentence(printer_values(printer), words) == printer_line.printer_words(printer, words)

"""From spans that were measured to a printer: simulated prints, refusals, mistakes, a sheet for a printer."""

from __future__ import annotations

import json
from fractions import Fraction
from pathlib import Path

import pytest
from commands import refused, run
from hypothesis import given
from hypothesis import strategies as st

import templates_gen
from layout.drawing.correction import Scale
from layout.drawing.printer import Printer
from layout.drawing.spans import spans_of
from layout.kit.paper_size import named_size
from layout.values.errors import FieldError
from templates_gen.inputs import printer_store
from templates_gen.inputs.measured_check import OPTIONS, CheckOptions, measured_check
from templates_gen.inputs.span_readings import EYE, read_span
from templates_gen.messages.errors import OptionError

SPANS = spans_of(*named_size("common").sides_mm)
scales = st.builds(Scale, st.floats(0.971, 1.029), st.floats(0.971, 1.029), st.floats(-0.02, 0.02))


def said(lengths: tuple[float, ...]) -> dict[str, str]:
    """Lengths as options would say them, to 1e-12 mm."""
    names = ("x", "y", "across", "across_2")
    return {name: f"{length:.12f} mm" for name, length in zip(names, lengths, strict=True)}


def typed(*lengths: str) -> list[str]:
    """The options of a command."""
    return [part for pair in zip(OPTIONS, lengths, strict=False) for part in pair]


@given(scales)
def test_a_simulated_print_gives_its_scale_back(scale: Scale) -> None:
    """Drawn, printed by a printer of that scale, its spans measured exactly: the scale to 1e-9."""
    found = measured_check(CheckOptions(**said(SPANS.made(scale))))
    assert found.scale == pytest.approx(scale, abs=1e-9)


def test_a_sheet_made_for_a_printer_gives_the_printer_itself() -> None:
    """What its correction leaves over, after that correction: found to 1e-9 whatever the printer was taken for."""
    true, taken = Scale(0.996, 1.004, 0.003), Scale(0.991, 1.002, -0.001)
    printer_store.store(Printer("office", taken, Scale(0.001, 0.001, 0.001), "common", "2026-03-01"))
    left = Scale(true.x / taken.x, true.y / taken.y, (true.skew - true.x / taken.x * taken.skew) / taken.y)
    found = measured_check(CheckOptions(**said(SPANS.made(left)), printer="office", store="better"))
    assert found.scale == pytest.approx(true, abs=1e-9)
    assert printer_store.load("better").scale == pytest.approx(true, abs=1e-6)  # six decimals are kept
    text = run("printer-check", *typed("190 mm", "250 mm", "306 mm"), "--printer", "office").stdout
    assert "made for office" in text
    assert "237.84 mm" in text  # 0.991 of 240 mm


@pytest.mark.parametrize(
    ("text", "within"),
    [
        ("189.9 mm", EYE),
        ("189.95 mm", EYE),
        ("189 mm", Fraction(1, 2)),
        ("19 cm", Fraction(5)),
        ("18.99 cm", EYE),
        ("7 15/32 in", Fraction(254, 640)),
        ("7 1/2 in", Fraction(254, 320)),
        ("7½ in", Fraction(254, 320)),
        ("7 in", Fraction(254, 320)),
        ("7.48 in", EYE),
        ("7.4 in", Fraction(127, 100)),
    ],
)
def test_how_well_a_rule_was_read(text: str, within: Fraction) -> None:
    """Half of the last digit, never better than the eye; inches in sixteenths at least."""
    assert read_span(text, "--x", "", None).within == pytest.approx(float(within))
    assert read_span(text, "--x", "", Fraction(1, 10)).within == pytest.approx(0.1)


def test_it_is_stored_and_said() -> None:
    """What comes out of 240 mm, in the words of the bench, and where the printer is kept."""
    spans = typed("189.62 mm", "250.5 mm", "306.2 mm", "306.2 mm")
    made = run("printer-check", *spans, "--within", "0.1 mm", "--store", "Office")
    assert made.exit_code == 0
    assert "240 mm come out 239.52 mm long (239.41 to 239.64)" in made.stdout
    assert 'make KIT --printer "Office"' in made.stdout
    kept = printer_store.load("office")
    assert kept.scale.x == pytest.approx(189.62 / 190, abs=1e-4)
    assert kept.paper == "common"


def test_a_correction_that_says_nothing_is_pointless() -> None:
    """Each smaller than how sure it is, or only some of them."""
    assert "pointless: it is off by less" in run("printer-check", *typed("189.9 mm", "250.1 mm", "306 mm")).stdout
    some = run("printer-check", *typed("189 mm", "250.0 mm", "305.4 mm")).stdout
    assert "Correcting lengths up is pointless" in some
    assert "Correcting lengths across" not in some


def test_over_one_per_cent_a_setting_is_likelier() -> None:
    """Said, with the mistake that makes such a sheet, and stored all the same where that is asked for."""
    text = run("printer-check", *typed("184.8 mm", "243.2 mm", "297.6 mm")).stdout
    assert "A print setting is the likelier cause" in text
    assert "It may be a Letter page fitted to A4 paper." in text
    values = json.loads(run("printer-check", *typed("184.8 mm", "243.2 mm", "297.6 mm"), "--json").stdout)
    assert values["print_setting_likely"] is True
    assert values["mistakes"][0] == "a Letter page fitted to A4 paper"
    assert "likelier" not in run("printer-check", *typed("188.5 mm", "248.0 mm", "303.6 mm")).stdout


@pytest.mark.parametrize(
    ("spans", "words"),
    [
        (
            ("178.74 mm", "235.19 mm", "288 mm"),
            "--x: needs a span within 3 % of 190 mm on this paper, got 178.74 mm, 94.07 %",
        ),
        (("178.74 mm", "235.19 mm", "288 mm"), "an A4 page fitted to Letter paper"),
        (("162.45 mm", "213.75 mm", "262 mm"), "a print queue that is set to Letter"),
        (
            ("190 mm", "240 mm", "300 mm"),
            "--y: needs a span within 3 % of 250 mm on this paper; more is no printer's own",
        ),
        (("190 mm", "250 mm", "295 mm"), "--across: needs a diagonal that goes with the other spans, about 306.0 mm"),
        (("190 mm", "250 mm", "306 mm", "310 mm"), "--across-2: needs a diagonal that goes with the other spans"),
        (("190 mm",), "--y: needs the span from C to D as you measured it, got nothing"),
        (("190 mm", "250 mm"), "--across: needs a diagonal, from E to F (--across) or from G to H (--across-2)"),
        (("190", "250 mm", "306 mm"), "--x: needs a length with its unit"),
        (("-190 mm", "250 mm", "306 mm"), "--x: needs a length longer than nothing"),
    ],
)
def test_what_cannot_be_is_refused(spans: tuple[str, ...], words: str) -> None:
    """One sentence, code 2, and an example that works behind the same option."""
    found = refused("printer-check", *typed(*spans))
    assert words in found
    option = found.split(":")[0]
    assert f"; for example {option} " in found


@pytest.mark.parametrize(
    ("options", "words"),
    [
        (("--within", "9 mm"), "--within: needs how far off a reading may be"),
        (("--within", "0 mm"), "--within: needs a length longer than nothing"),
        (("--paper", "a9"), "--paper: needs"),
        (("--printer", "nobody"), "--printer: needs a printer that was stored"),
        (("--store", ""), "--store: needs"),
        (("--store", "a/b"), "--store: needs"),
    ],
)
def test_other_options_are_refused(options: tuple[str, str], words: str) -> None:
    """Beside spans that are right."""
    assert words in refused("printer-check", *typed("190 mm", "250 mm", "306 mm"), *options)


def test_storing_needs_spans() -> None:
    """A name alone stores nothing."""
    assert "--x: needs the span from A to B" in refused("printer-check", "--store", "office")


def test_together_they_may_be_too_far_off() -> None:
    """A printer that is 2.9 % off beside a correction of 2 % in the same direction is none."""
    printer_store.store(Printer("office", Scale(0.98, 0.98), Scale(0.001, 0.001, 0.001), "common", "2026-03-01"))
    asked = CheckOptions(**said(SPANS.made(Scale(0.98, 0.98))), printer="office")
    with pytest.raises(OptionError, match="together with what it is corrected for"):
        measured_check(asked)


def test_from_python(tmp_path: Path) -> None:
    """The sheet, and the printer from its spans, kept under a name; what cannot be is refused as the command does."""
    made = templates_gen.printer_check(tmp_path, paper="a4", language="de")
    assert [each.file for each in made.made] == ["printer-check.pdf"]
    found = templates_gen.measured_printer("189.6 mm", "264.2 mm", "320.1 mm", paper="a4", store="python")
    assert found.scale.x == pytest.approx(189.6 / 190)
    assert found.pointless == (False, False, True)
    assert printer_store.load("python").paper == "a4"
    with pytest.raises(FieldError, match="--across: needs a diagonal"):
        templates_gen.measured_printer("189.6 mm", "264.2 mm")

"""The wrap gauge without a kit: made for any unit and frame ends, proven in the same run, found wrong where it is."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from pathlib import Path

import pypdf
import pytest
from cases import crossed
from commands import refused, run
from kits import font_metrics

import layout.parts.gauge_table as table_module
import layout.parts.wrap_gauge as gauge_module
import templates_gen.files.gauge as made_module
from layout.kit.inputs import BY_KEY
from layout.parts.gauge_form import Form
from layout.parts.gauge_table import any_table
from layout.sett.marking_units import SINGLY, WINDS
from layout.values.units import read_length
from templates_gen.files.gauge import GaugeAsked, make_gauge
from templates_gen.files.proven import ProofError

UNITS = ("4 cm", "1 in", "1/2 in", "7 cm", "1 mm", "30 in")


@pytest.mark.parametrize(("unit", "ends"), crossed(3, UNITS, BY_KEY["frame.ends"].choices))
def test_it_is_made_and_proven(unit: str, ends: str, tmp_path: Path) -> None:
    """For every unit and kind of frame end, both files, with the six edges of the windows within a micrometre."""
    report = make_gauge(GaugeAsked(read_length(unit), ends), tmp_path / "g", font_metrics())
    assert [made.file for made in report.made] == ["gauge.pdf", "gauge.svg"]
    assert report.marks == 12
    assert report.deviation < 0.001
    assert sorted(path.name for path in (tmp_path / "g").iterdir()) == ["gauge.pdf", "gauge.svg"]


@pytest.mark.parametrize(("by", "each"), [(WINDS, 2), (SINGLY, 1)])
@pytest.mark.parametrize("unit", ["4 cm", "1 in"])
def test_the_table_never_takes_more_than_was_counted(by: object, each: int, unit: str) -> None:
    """By hand in fractions: as many whole winds (or ends) as the sett counted holds in the unit."""
    table = any_table(read_length(unit), by)  # type: ignore[arg-type]
    window = read_length(table.over).mm
    for count, *fields in table.rows:
        for name, laid in zip(table.units, fields[1::2], strict=True):
            exact = Fraction(count) / window * read_length(name).mm / each
            assert (0 if laid == "\N{EN DASH}" else int(laid)) == int(exact)


def test_usual_setts_stand_in_it() -> None:
    """4 to 9 ends an inch, 2 to 4 per cm: the middle of what G. Christie and a supplier's article call usual."""
    inches, metric = any_table(read_length("1 in"), SINGLY), any_table(read_length("1 cm"), SINGLY)
    assert [Fraction(row[0]) / 2 for row in inches.rows] == [4, 5, 6, 7, 8, 9]
    assert [Fraction(row[0]) / 5 for row in metric.rows][::5] == [2, 4]


def test_the_sheet_says_what_it_is_for(tmp_path: Path) -> None:
    """No kit, no yarn: read by pypdf."""
    make_gauge(GaugeAsked(read_length("1 in"), "round bars"), tmp_path, font_metrics())
    said = pypdf.PdfReader(tmp_path / "gauge.pdf").pages[0].extract_text()
    assert "For any warp and weft" in said
    assert "until the window takes no more" in said


def _shifted(patch: pytest.MonkeyPatch) -> None:
    right = gauge_module.wide_form

    def wrong(half: float) -> Form:
        first, *others = right(half).windows
        return right(half)._replace(windows=(first._replace(start=first.start + 0.1, low=first.low + 0.1), *others))

    patch.setattr(gauge_module, "wide_form", wrong)


def _other_head(patch: pytest.MonkeyPatch) -> None:
    right = made_module.Head
    patch.setattr(made_module, "Head", lambda tile, name, _, *others: right(tile, name, "For wool", *others))


SPOILT: dict[str, Callable[[pytest.MonkeyPatch], None]] = {
    "a window too wide": _shifted,
    "no word for whom": _other_head,
    "other counts": lambda patch: patch.setattr(table_module, "ANY_COUNTS", {False: (9, 11, 13, 15, 17, 19)}),
    "ends for winds": lambda patch: patch.setattr(made_module, "counted_by", lambda _: SINGLY),
}


@pytest.mark.parametrize("spoilt", SPOILT)
def test_a_wrong_one_is_not_kept(spoilt: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each fault of the builder stops it, and the folder stays as it was."""
    SPOILT[spoilt](monkeypatch)
    with pytest.raises(ProofError):
        make_gauge(GaugeAsked(read_length("4 cm"), "round bars"), tmp_path / "g", font_metrics())
    assert not (tmp_path / "g").exists()


def test_the_command_makes_it(tmp_path: Path) -> None:
    """Both files, and what was proven."""
    result = run("gauge", "-o", tmp_path / "g", "--unit", "1 in", "--ends", "notched ends")
    assert result.exit_code == 0
    assert "Proven: 2 files read back, 12 marks" in result.stdout


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (("--unit", "1 kg"), "--unit: needs a length with its unit"),
        (("--unit", "2 m"), "--unit: needs"),
        (("--ends", "round"), '--ends: needs "round bars"'),
        (("--ends", ""), '--ends: needs "round bars"'),
    ],
)
def test_bad_options_are_refused(options: tuple[str, str], said: str, tmp_path: Path) -> None:
    """In one sentence, which names the option and what works; nothing is written."""
    found = refused("gauge", "-o", tmp_path / "g", *options)
    assert found.startswith(said)
    assert f"for example {options[0]} " in found
    assert not (tmp_path / "g").exists()


def test_check_says_why_it_cannot(tmp_path: Path) -> None:
    """Such a file carries no kit, and says so."""
    make_gauge(GaugeAsked(read_length("4 cm"), "round bars"), tmp_path, font_metrics())
    result = run("check", tmp_path / "gauge.pdf")
    assert result.exit_code != 0
    assert "carries no kit to check it against" in result.stdout

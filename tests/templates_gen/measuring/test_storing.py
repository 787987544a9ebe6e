"""From a measured sheet to a printer that is kept, and what is not kept."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from hand_seen import measured_sheet

from layout.drawing.correction import Scale
from layout.values.errors import FieldError
from templates_gen.inputs import printer_store
from templates_gen.measuring.outcome import Outcome
from templates_gen.measuring.scales import Distance, Reference
from templates_gen.measuring.storing import stored

BOTH = Reference((Distance("top", 190.2), Distance("left", 249.2)))


@pytest.fixture(autouse=True)
def _own_folder(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv(printer_store.FOLDER, str(tmp_path / "printers"))


def test_a_printer_is_kept_as_it_was_measured() -> None:
    """Its scale by the rule, how sure that is, its paper and the day; of the skew only how large it may be."""
    sheet = measured_sheet(Scale(1.001, 1.0, 0.0004), reference=BOTH)
    printer, file = stored(Outcome((sheet,)), "office", "2026-03-01")
    kept = printer_store.load("office")
    assert file.exists()
    assert kept == printer_store.load("Office")
    assert (kept.name, kept.paper, kept.day) == ("office", "common", "2026-03-01")
    assert kept.scale.x == pytest.approx(190.2 / 190.5028, abs=1e-6)
    assert kept.scale.y == pytest.approx(249.2 / 248.9944, abs=1e-5)
    assert kept.scale.skew == 0
    assert kept.within.skew == pytest.approx(0.0005)
    assert kept.within.x == pytest.approx(0.2 / 190.2, rel=0.01)
    assert printer.scale.x == pytest.approx(kept.scale.x, abs=1e-6)


def test_a_skew_by_diagonals_is_kept_too() -> None:
    """A print that leans 0.001 has diagonals that differ by that much."""
    known = (*BOTH.distances, Distance("rising", 313.66), Distance("falling", 313.35))
    printer, _ = stored(Outcome((measured_sheet(reference=Reference(known)),)), "office", "2026-03-01")
    assert printer.scale.skew == pytest.approx(0.001, abs=0.0001)


@pytest.mark.parametrize(
    ("reference", "scale", "needed"),
    [
        (Reference(), Scale(), "free of the scanner's own error"),
        (Reference((Distance("top", 190.2),)), Scale(), "free of the scanner's own error"),
        (Reference((Distance("top", 184.0), Distance("left", 249.0))), Scale(0.966, 1), "within 3 %"),
        (Reference(BOTH.distances, rule_within=0.5), Scale(), "sure to 0.2 %"),
    ],
)
def test_what_is_not_known_is_not_kept(reference: Reference, scale: Scale, needed: str) -> None:
    """A scale as a scanner sees it, one that is no printer's, one that would make prints no better."""
    with pytest.raises(FieldError, match=needed) as error:
        stored(Outcome((measured_sheet(scale, reference=reference),)), "office")
    assert error.value.field == "--store"
    assert printer_store.names() == ()


def test_one_sheet_is_one_printer() -> None:
    """Several sheets, and a sheet that was drawn for a printer, are refused."""
    sheet = measured_sheet(reference=BOTH)
    with pytest.raises(FieldError, match="one sheet"):
        stored(Outcome((sheet, sheet)), "office")
    assert sheet.sheet is not None
    drawn_for = replace(sheet, sheet=replace(sheet.sheet, corrected=True))
    with pytest.raises(FieldError, match="not made for a printer"):
        stored(Outcome((drawn_for,)), "office")
    with pytest.raises(FieldError, match="--store"):
        stored(Outcome((sheet,)), "a/b")
    assert printer_store.names() == ()

"""Who prints: the sheets for a box say nothing of printing, those of a download do, and the proof knows which."""

from __future__ import annotations

from dataclasses import replace

import pytest
from alarms import alarm_on
from kits import font_metrics, kit_of

from layout.drawing.shapes import Text
from layout.kit.kit import kit_values, read_kit
from layout.plan import plan
from layout.values.errors import FieldErrors
from templates_gen.files.outputs import Outputs

BOX: dict[str, object] = {"paper.for": "box", "weaving.width": "8 cm", "frame.outer_width": "20 cm"}
DOWNLOAD = BOX | {"paper.for": "download"}


def words_of(changes: dict[str, object], file: str) -> str:
    """All words of a file."""
    sheets = Outputs(plan(kit_of(changes)), font_metrics()).output(file).sheets
    return " ".join(shape.words for sheet in sheets for shape in sheet.shapes if isinstance(shape, Text))


@pytest.mark.parametrize("paper", ["common", "148 x 210 mm", "a3"])
def test_only_who_prints_reads_of_printing(paper: str) -> None:
    """The words "Print at 100 %" stand on no sheet of a box, and on every measured one of a download."""
    size: dict[str, object] = {"paper.size": paper}
    assert "100 %" not in words_of(BOX | size, "kit.pdf")
    assert "Check first" in words_of(BOX | size, "kit.pdf")
    assert "100 %" in words_of(DOWNLOAD | size, "wrap-gauge.pdf")


def test_the_choice_is_kept() -> None:
    """It is written back as it was read; left out it is a download; another word is refused with both."""
    values = kit_values(kit_of(BOX))
    assert values["paper"]["for"] == "box"  # type: ignore[index]
    assert read_kit(values, font_metrics()) == kit_of(BOX)
    assert kit_of(BOX | {"paper.for": None}) == kit_of(DOWNLOAD)
    with pytest.raises(FieldErrors, match=r"paper\.for.*download.*box"):
        kit_of({"paper.for": "shop"})


@pytest.mark.parametrize("changes", [BOX, DOWNLOAD])
def test_the_proof_knows_who_prints(changes: dict[str, object]) -> None:
    """The sheets of the other kind are an alarm."""
    other = BOX if changes is DOWNLOAD else DOWNLOAD
    planned, wrong = plan(kit_of(changes)), plan(kit_of(other))
    right = Outputs(planned, font_metrics()).output("wrap-gauge.pdf")
    assert alarm_on(planned, right) == ""
    drawn = Outputs(wrong, font_metrics()).output("wrap-gauge.pdf")
    assert "check scales" in alarm_on(planned, replace(drawn, about=right.about))

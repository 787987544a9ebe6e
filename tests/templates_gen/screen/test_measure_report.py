"""The report of measured scans, in words of the bench."""

from __future__ import annotations

from hand_seen import measured_sheet
from kits import kit_of

from layout.drawing.correction import Scale
from templates_gen.measuring.groups import Group, Mark
from templates_gen.measuring.joined import joined
from templates_gen.measuring.measured import MeasuredSheet
from templates_gen.measuring.outcome import Outcome
from templates_gen.measuring.scales import Distance, Reference
from templates_gen.screen.measure_report import measured_text
from templates_gen.screen.measure_values import measured_values


def off_by(numbers: dict[int, float]) -> object:
    """How far off marks with these numbers are."""

    def off(group: Group, mark: Mark) -> float:
        return numbers.get(mark.name.values["number"], 0.0)  # type: ignore[call-overload, no-any-return]

    return off


def said(*sheets: MeasuredSheet) -> str:
    """The report of these sheets."""
    return measured_text(Outcome(sheets, joined(sheets)))


def lines(*sheets: MeasuredSheet) -> list[str]:
    """Its lines, with one space between columns."""
    return [" ".join(line.split()) for line in said(*sheets).splitlines()]


def test_the_report_of_a_strip() -> None:
    """Which sheet, what comes out of its lengths, the worst mark and gap, and what a scan cannot know."""
    sheet = measured_sheet(Scale(0.9992, 0.9985, 0.0006), off=off_by({17: 0.04}))  # type: ignore[arg-type]
    found = lines(sheet)
    assert found[0] == (
        "scan.png: sheet 4 of 6 of kit.pdf, Willow frame, small (Near marking strip, Far marking strip)"
    )
    assert "Across 190.5 mm come out 190.33 to 190.37 mm long 99.92 %, sure to 0.01 %, as this scanner sees it" in found
    assert "Up 249 mm come out 248.57 to 248.67 mm long 99.85 %, sure to 0.02 %, as this scanner sees it" in found
    assert "Ratio across is 0.07 % larger than up sure to 0.02 %, as this scanner sees it" in found
    assert "Skew leans 0.06 mm to the right in 100 mm up sure to 0.01 mm, as this scanner sees it" in found
    assert "Evenness even: 5 micrometres are left that no scale explains" in found
    assert "Near marking strip: 31 of 31 marks, from wind 0 to wind 30" in found
    assert "Length 240 mm come out 239.59 to 239.69 mm long as this scanner sees it" in found
    assert "Worst mark wind 17 is 0.04 mm off its place, toward wind 30 sure to 0.01 mm" in found
    assert "Worst gap from wind 16 to wind 17 is 0.04 mm too wide sure to 0.01 mm" in found
    assert any(line.startswith("As this scanner sees it: the scanner's own error") for line in found)
    assert any(line.endswith('Give what it shows: --known "190.5 mm"') for line in found)
    assert any(line.endswith('--known "left 249 mm"') for line in found)


def test_marks_at_their_places_are_said_to_be() -> None:
    """No mark is called the worst where none is off."""
    found = lines(measured_sheet())
    assert found.count("Worst mark every mark is at its place to 0.01 mm sure to 0.01 mm") == 2
    assert "Ratio across and up are alike sure to 0.02 %, as this scanner sees it" in found
    assert "Skew upright sure to 0.01 mm, as this scanner sees it" in found


def test_a_distance_by_rule_is_said_beside_what_only_the_scanner_sees() -> None:
    """The length of a strip up the sheet stays as the scanner sees it while only the distance across is known."""
    known = Reference((Distance("top", 190.2),))
    found = lines(measured_sheet(Scale(0.9992, 0.9985), reference=known))
    assert any(line.startswith("Across 190.5 mm come out 190") and "own error taken out" in line for line in found)
    assert any(line.startswith("Up 249 mm come out") and line.endswith("as this scanner sees it") for line in found)
    assert any(line.startswith("One distance says nothing of the other direction") for line in found)
    both = Reference((Distance("top", 190.2), Distance("left", 248.8)))
    text = said(measured_sheet(Scale(0.9992, 0.9985), reference=both))
    assert "One distance" not in text
    assert "Two diagonals would tell" in text


def test_a_scale_far_off_names_the_setting() -> None:
    """A4 fitted on Letter is 94.07 %; 2 % off is no known mistake; 0.9 % may be the printer."""
    assert "More than 1 % off: a print setting is the likelier cause." in said(measured_sheet(Scale(0.9407, 0.9407)))
    assert "never corrected" in said(measured_sheet(Scale(0.9407, 0.9407)))
    assert "likelier cause than the printer" in said(measured_sheet(Scale(1.012, 1.018)))
    assert "never corrected" not in said(measured_sheet(Scale(1.012, 1.018)))
    assert "likelier" not in said(measured_sheet(Scale(0.991, 1.009)))


def test_a_sheet_that_is_not_even_is_said_to_be() -> None:
    """Above 20 micrometres, with what to do."""
    found = said(measured_sheet(uneven=0.034))
    assert "not even: 34 micrometres" in found
    assert "Scan it again" in found


def test_without_a_resolution_no_length_is_said() -> None:
    """Only the ratio, the skew and the places of marks."""
    found = said(measured_sheet(dpi=None))
    assert "come out" not in found
    assert "the scan does not say its resolution" in found
    assert "Worst mark" in found


def test_a_joined_strip_is_said_as_a_whole() -> None:
    """After the sheets: its length over all joints, and what these are counted as."""
    kit = kit_of({"frame.outer_width": "90 cm", "weaving.width": "70 cm", "paper.lay": "tiles"})
    found = lines(*(measured_sheet(kit=kit, number=number) for number in (4, 5)))
    begin = found.index("Near marking strip, all 4 pieces together: 88 of 88 marks, from wind 0 to wind 87")
    assert found[begin + 1].startswith("Length 696 mm come out 69")
    assert found[begin + 3].startswith("Joints 3 joints counted as 0.")


def test_values_for_programs_say_the_same() -> None:
    """Everything of a sheet, in mm and shares, that JSON can hold."""
    import json

    sheet = measured_sheet(Scale(0.9992, 0.9985), off=off_by({17: 0.04}))  # type: ignore[arg-type]
    values = json.loads(json.dumps(measured_values(Outcome((sheet,), (), ("one.png: no",))), allow_nan=False))
    (only,) = values["sheets"]
    assert (only["file"], only["number"], only["total"]) == ("kit.pdf", 4, 6)
    assert only["scale_x"] == {"value": 0.9992, "within": 0.0001, "free_of_scanner": False}
    assert [row["part"] for row in only["rows"]] == ["strip-near", "strip-far"]
    (mark,) = [each for each in only["rows"][0]["marks"] if each["off_mm"]]
    assert mark == {"name": "wind 17", "at_mm": 16.0, "off_mm": 0.04, "within_mm": 0.004, "beside_mm": 0.004}
    assert only["distances_mm"]["top"] == only["rectangle_mm"][0]
    assert values["refused"] == ["one.png: no"]

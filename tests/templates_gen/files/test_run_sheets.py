"""Sheets that are of a whole run: left out where the paper cannot hold them, and never made with money for a buyer."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from kits import font_metrics, kit_of

from layout.box.shop import Shop
from layout.values.errors import FieldError, FieldErrors
from templates_gen.files.class_file import CLASS_FILE
from templates_gen.files.manifest import MANIFEST
from templates_gen.files.overview_file import OVERVIEW_FILE
from templates_gen.files.price_file import PRICE_FILE
from templates_gen.files.proven import ProofError
from templates_gen.files.run import make_run
from templates_gen.files.run_outputs import RunFile, RunOutputs
from templates_gen.files.shop_card_file import CARD_FILE
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.screen.run_report import run_text
from templates_gen.verify.finding import NOTHING
from tests.templates_gen.verify.test_price_sheet import ALL

METRICS = font_metrics()
SOLD = replace(ALL, colours={})


def one(shop: Shop = SOLD, paper: str = "common") -> Range:
    """A range of one kit, of which ten are made."""
    kit = kit_of({"name": "Heron frame", "paper.size": paper})
    return Range("Heron frames", (RangeKit(kit, 10, 1, shop=shop),), shop, copies_said=True)


def test_paper_too_small_for_a_card_is_said(tmp_path: Path) -> None:
    """The rest of the run is made, and the card is named with what would work."""
    report = make_run(one(paper="148 x 210 mm"), tmp_path / "run", METRICS)
    assert PRICE_FILE in {each.file for each in report.made}
    assert CARD_FILE not in {each.file for each in report.made}
    said = "shop-card.pdf is not made: paper.size: needs a sheet that holds every part in one piece"
    assert said in run_text(report)


def test_money_in_a_file_for_a_buyer_stops_the_run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The prices under the name of a card: whatever its own proof passes, nothing is moved into place."""
    priced = RunOutputs.files.fget  # type: ignore[attr-defined]

    def swapped(self: RunOutputs) -> tuple[RunFile, ...]:
        prices = next(file for file in priced(self) if file.name == PRICE_FILE).draw()
        return (RunFile(CARD_FILE, lambda: replace(prices, file=CARD_FILE), lambda _, __: NOTHING),)

    monkeypatch.setattr(RunOutputs, "files", property(swapped))
    with pytest.raises(ProofError, match="carries what the maker buys and sells"):
        make_run(one(), tmp_path / "run", METRICS)
    assert not (tmp_path / "run" / MANIFEST).exists()


@pytest.mark.parametrize("sold", [SOLD, Shop(currency="EUR", people=6)], ids=["prices", "a currency alone, a class"])
def test_kits_of_several_languages_share_sheets_in_one(sold: Shop, tmp_path: Path) -> None:
    """Prices, overview and class sheet are in that of the first kit, whatever the others speak, and proven so."""
    kits = [
        kit_of({"name": f"Heron frame {code}", "paper.language": code, "frame.outer_width": "16 in"})
        for code in ("en", "de", "fr")
    ]
    each = tuple(RangeKit(kit, 2, number, shop=sold) for number, kit in enumerate(kits, 1))
    report = make_run(Range("Heron frames", each, sold, copies_said=True), tmp_path / "run", METRICS)
    assert {PRICE_FILE, OVERVIEW_FILE} <= {made.file for made in report.made}
    assert (CLASS_FILE in {made.file for made in report.made}) == bool(sold.people)


@pytest.mark.parametrize("only", [(), ("label",)], ids=["all", "labels alone"])
def test_what_paper_does_not_allow_is_said_with_its_kit(only: tuple[str, ...], tmp_path: Path) -> None:
    """As much as what a kit itself does not; nothing is made."""
    folded = {"name": "Heron frame, small", "paper.size": "210 x 148 mm", "box": {"fold": True}}
    kits = RangeKit(kit_of({"name": "Heron frame"}), 2, 1), RangeKit(kit_of(folded), 2, 2)
    with pytest.raises((FieldError, FieldErrors)) as caught:
        make_run(Range("Heron frames", kits, copies_said=True), tmp_path / "run", METRICS, only)
    assert str(caught.value).startswith('box.fold of "Heron frame, small": needs paper that holds')
    assert not (tmp_path / "run").exists()
    with pytest.raises(FieldError) as caught:
        make_run(replace(Range("Heron frame", kits[1:]), alone=True), tmp_path / "run", METRICS, only)
    assert str(caught.value).startswith("box.fold: needs paper that holds")

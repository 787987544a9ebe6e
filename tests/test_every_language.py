"""Sheets in every language: drawn, written, read back and proven in it, with no figure or word left to English.

English is the only language that a kit may ask for so far; here the others take its place, for what is drawn and for
what is proven alike.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from catalogues import LANGUAGES
from kits import KINDS, font_metrics, kit_of

from layout.drawing.shapes import Text
from layout.kit.kit import Kit
from templates_gen.files import kept
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs import kit_file, stock_file
from templates_gen.languages import catalogues
from templates_gen.languages.catalogues import catalogue_of

FILES = ("frame-check.pdf", "strip-near.pdf", "winding.pdf", "spacing-guide.pdf", "job.pdf")
HEADS = {"es": ("hilos por cm", "Hoja"), "de": ("Fäden pro cm", "Blatt"), "fr": ("fils au cm", "Feuille")}


@pytest.fixture(params=LANGUAGES)
def language(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> Iterator[str]:
    """Every kit is planned and proven in that language; nothing that was kept of another is left."""
    words = catalogue_of(request.param)
    monkeypatch.setattr(catalogues, "catalogue_of", lambda _: words)
    kept.forget()
    yield request.param
    kept.forget()


def proven(kit: Kit, file: str) -> set[str]:
    """The words of a file of a kit, once it is proven."""
    plan = kept.planned(kit)
    output = Outputs(plan, font_metrics(), stock=stock_file.built_in()).output(file)
    result = findings(plan, output, read(output, write(output)))
    assert result.sentences == ()
    return {shape.words for sheet in output.sheets for shape in sheet.shapes if isinstance(shape, Text)}


@pytest.mark.parametrize("file", FILES)
def test_a_file_of_the_demo_kit_is_proven_in_every_language(language: str, file: str) -> None:
    """Its head says sett and number of the sheet in that language, with a decimal comma."""
    words = proven(kit_file.demo(), file)
    sett, sheet = HEADS[language]
    assert any(said.startswith(f"2,5 {sett}") for said in words)
    assert any(said.startswith(f"{sheet} 1 ") for said in words)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_is_wound_in_every_language(language: str, kind: str) -> None:
    """The picture of the winding and its steps, for every kind of frame end and way of winding."""
    assert len(proven(kit_of(KINDS[kind]), "winding.pdf")) > 15

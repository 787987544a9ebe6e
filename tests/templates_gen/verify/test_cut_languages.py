"""Cut parts and job sheets in other languages, and in a made-up one with far longer words: each passes its proof."""

from __future__ import annotations

from dataclasses import replace

import pytest
from ink import meetings
from kits import KINDS, font_metrics, kit_of
from languages import made_up

from layout.drawing.pens import Pen
from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue
from layout.plan import plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs.stock_file import built_in
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.english import ENGLISH

STOCK = replace(built_in(), height=500.0, speeds={"engrave": 200.0, "score": 60.0, "cut": 12.0})
LANGUAGES = {"made up": made_up(ENGLISH), **{code: catalogue_of(code) for code in ("es", "de", "fr")}}
PRODUCTS = ["comb.svg", "winding-comb.svg", "wrap-gauge-cut.svg", "wrap-gauge-cut.pdf", "spacing-guide-cut.pdf",
            "shed-stick.pdf", "trial-cut.svg", "end-bars.svg", "peg-jig.pdf"]  # fmt: skip
ENDS = {"end-bars": KINDS["notched ends"], "peg-jig": KINDS["pegged ends"]}


def outputs(language: str, only: str, changes: dict[str, object]) -> Outputs:
    """The files of that name, said in a language."""
    return Outputs(plan(kit_of(changes), LANGUAGES[language]), font_metrics(), [only], STOCK)


def proven(made: Outputs) -> list[Sheet]:
    """The sheets of all files, which come back and pass."""
    sheets: list[Sheet] = []
    for file in made.files:
        output = made.output(file)
        result = findings(made.plan, output, read(output, write(output)))
        assert (result.sentences, result.sound) == ((), True), file
        sheets += output.sheets
    assert sheets
    return sheets


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", PRODUCTS)
def test_cut_parts_are_proven_in_every_language(language: str, name: str) -> None:
    """What is engraved is looked for in the words of the plan; what has no room is left out as it may be."""
    proven(outputs(language, name, dict(ENDS.get(name.partition(".")[0], {}))))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("paper", ["common", "148 x 210 mm"])
def test_job_sheets_are_proven_in_every_language(language: str, paper: str) -> None:
    """No words meet other ink, and none are left in English."""
    for sheet in proven(outputs(language, "job", {"paper.size": paper})):
        shapes = tuple(s for s in sheet.shapes if s.pen not in (Pen.PAPER, Pen.TINT, Pen.RING, Pen.ON_BLACK))
        assert meetings(replace(sheet, shapes=shapes), 0.3) == []
        said = {shape.words for shape in sheet.shapes if isinstance(shape, Text)}
        assert not said & _english_alone(LANGUAGES[language])


def _english_alone(words: Catalogue) -> set[str]:
    """Messages of the job sheet that have no values, where the language says them in another way."""
    roles = [
        role for role in ENGLISH.messages if role.startswith("jobsheet.") and "{" not in str(ENGLISH.messages[role])
    ]
    assert len(roles) > 20
    return {ENGLISH.say(role) for role in roles if words.say(role) != ENGLISH.say(role)}

"""Sheets in every language that a kit may ask for: drawn, written, read back and proven in it."""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO
from itertools import product

import pytest
from catalogues import LANGUAGES
from ink import Meeting, meetings
from kits import FLAT, INCHES, KINDS, NAILS, NOTCHED, PEGGED, ROD, font_metrics, kit_of
from languages import made_up
from pypdf import PdfReader

from layout.drawing.shapes import Text
from layout.kit.kit import Kit
from templates_gen.codes.digest import digest_of
from templates_gen.files import kept
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.inputs import stock_file
from templates_gen.languages import catalogues
from templates_gen.messages.english import ENGLISH

HEADS = {"es": ("hilos por cm", "Hoja"), "de": ("Fäden pro cm", "Blatt"), "fr": ("fils au cm", "Feuille")}
COMMON, SMALL = "common", "148 x 210 mm"
OTHERS: dict[str, dict[str, object]] = {
    "inches": INCHES,
    "inches, loose rod": INCHES | ROD,
    "inches, notched": INCHES | NOTCHED,
    "inches, flat ends on A3": INCHES | FLAT | {"paper.size": "a3"},
    "inches, units of a half": INCHES
    | {"sett.given": "8 epi", "sett.marking_unit": "1/2 in", "weaving.width": "7 1/2 in"},
    "inches, little weft": INCHES
    | {"weft": {"strands": [{"number": 2, "grams": 50, "length": "160 m"}], "wrap": {"turns": 11, "window": "2 cm"}}}
    | {"weaving.height": "1 1/4 in", "weaving.width": "5 in"},
    "small paper": {"paper.size": SMALL},
    "small paper lying": {"paper.size": "210 x 148 mm"},
    "small paper, inches, pegged": INCHES | PEGGED | {"paper.size": SMALL},
    "small paper, nails": NAILS | {"paper.size": SMALL},
    "small paper, pegs in two rows": PEGGED
    | {"frame.peg_diameter": "2.5 mm", "frame.row_distance": "12 mm", "frame.edge_distance": "10 mm"}
    | {"weaving.doubled_warp": True, "weaving.tie_off": "far end", "weaving.start": "right", "sett.given": "10 epi"}
    | {"weaving.width": "234.2 mm", "frame.outer_width": "394 mm", "paper.size": SMALL},
    "in a box, on 11x17": {"paper.size": "11x17", "paper.for": "box"},
}
"""Kits beside those of every kind: in inches, on other papers."""


def asked(changes: dict[str, object], language: str) -> Kit:
    """A kit whose sheets are in that language."""
    return kit_of(changes | {"paper.language": language})


def proven(kit: Kit, *files: str) -> set[str]:
    """The words of files of a kit, all of them if none is named, once they are proven."""
    plan = kept.planned(kit)
    outputs = Outputs(plan, font_metrics(), stock=stock_file.built_in())
    words: set[str] = set()
    for file in files or outputs.files:
        output = outputs.output(file)
        assert findings(plan, output, read(output, write(output))).sentences == (), file
        words |= {shape.words for sheet in output.sheets for shape in sheet.shapes if isinstance(shape, Text)}
    return words


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_file_is_proven_in_every_language(language: str) -> None:
    """Heads say sett and number of the sheet in it, with a decimal comma; what is printed and what is cut."""
    words = proven(asked({}, language))
    sett, sheet = HEADS[language]
    assert any(said.startswith(f"2,5 {sett}") for said in words)
    assert any(said.startswith(f"{sheet} 1 ") for said in words)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_cut_file_in_inches_is_proven_in_every_language(language: str) -> None:
    """What is engraved names inches as the language does."""
    kit = asked(INCHES, language)
    cut = Outputs(kept.planned(kit), font_metrics(), stock=stock_file.built_in())
    assert proven(kit, *(file for file in cut.files if "-kerf-" in file))


SHEETS = (COMMON, "a4", SMALL, "210 x 148 mm")
CODES = tuple(LANGUAGES)
SOME = [(kind, CODES[k % len(CODES)], SHEETS[k % len(SHEETS)]) for k, kind in enumerate(KINDS)]
ALL = [each for each in product(KINDS, LANGUAGES, SHEETS) if each not in SOME]


def meets(kind: str, language: str, size: str) -> list[Meeting]:
    """Words that come closer than 0.3 mm to anything on the printed sheets of a kind."""
    plan = kept.planned(asked(KINDS[kind] | {"paper.size": size}, language))
    return [each for sheet in Outputs(plan, font_metrics()).output("kit.pdf").sheets for each in meetings(sheet, 0.3)]


@pytest.mark.parametrize(("kind", "language", "size"), SOME)
def test_no_word_meets_anything_in_any_language(kind: str, language: str, size: str) -> None:
    """Longer words find their room in pictures too."""
    assert meets(kind, language, size) == []


@pytest.mark.parametrize("end", ["bottom", "top"])
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", ["figure eight", "figure eight, flat ends, odd", "loose rod"])
def test_low_pictures_hold_what_lies_between_both_ends(kind: str, language: str, end: str) -> None:
    """On small paper that lies, a crossing or a rod has room for its knots and rings, wherever the steps stand."""
    assert proven(asked(KINDS[kind] | {"paper.size": "210 x 148 mm", "weaving.near_end": end}, language), "winding.pdf")


@pytest.mark.slow
@pytest.mark.parametrize(("kind", "language", "size"), ALL)
def test_no_word_of_any_kind_meets_anything_in_any_language(kind: str, language: str, size: str) -> None:
    """The same for every kind in every language on every paper."""
    assert meets(kind, language, size) == []


TAGS = {"en": "en-GB", "es": "es", "de": "de", "fr": "fr"}
"""By ISO 639-1 and BCP 47."""


def test_a_pdf_names_its_language_and_its_code_carries_it() -> None:
    """As pypdf reads it; the digest in the code differs between files that differ in their language alone."""
    digests = set()
    for language, tag in TAGS.items():
        plan = kept.planned(asked({}, language))
        for file in ("frame-check.pdf", "job.pdf", "winding.svg"):
            output = Outputs(plan, font_metrics(), stock=stock_file.built_in()).output(file)
            if file.endswith(".pdf"):
                assert PdfReader(BytesIO(write(output))).root_object["/Lang"] == tag, file
            digests.add(digest_of(output.about.inputs))
    assert len(digests) == 3 * len(TAGS)


def cases() -> list[object]:
    """Every kind and every other kit, in one language each in the usual run."""
    found: list[object] = []
    for number, (name, changes) in enumerate((KINDS | OTHERS).items()):
        for place, language in enumerate(LANGUAGES):
            marks = [] if number % len(LANGUAGES) == place else [pytest.mark.slow]
            found.append(pytest.param(changes, language, marks=marks, id=f"{language}, {name}"))
    return found


@pytest.mark.parametrize(("changes", "language"), cases())
def test_every_kind_of_sheet_is_proven_in_every_language(changes: dict[str, object], language: str) -> None:
    """All sheets of the set and the job sheet, for every kind of frame end and way of warping."""
    assert len(proven(asked(changes, language), "kit.pdf", "job.pdf")) > 50


@pytest.fixture
def stretched(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """The made-up language in the place of German."""
    words, real = made_up(ENGLISH), catalogues.catalogue_of
    monkeypatch.setattr(catalogues, "catalogue_of", lambda code: words if code == "de" else real(code))
    kept.forget()
    yield
    kept.forget()


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_has_room_for_a_language_of_long_words(kind: str, stretched: None) -> None:
    """Sentences half as long again, single words four times as long: nothing is lost, broken or out of its place."""
    assert len(proven(asked(KINDS[kind], "de"), "kit.pdf")) > 50


@pytest.mark.slow
@pytest.mark.parametrize("changes", [*KINDS.values(), INCHES, INCHES | ROD], ids=[*KINDS, "inches", "inches, rod"])
def test_every_file_of_every_kind_has_room_for_long_words(changes: dict[str, object], stretched: None) -> None:
    """Printed and cut, each alone."""
    assert proven(asked(changes, "de"))


@pytest.mark.slow
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("changes", [*(KINDS | OTHERS).values()], ids=[*KINDS, *OTHERS])
def test_every_file_of_every_kind_is_proven_in_every_language(changes: dict[str, object], language: str) -> None:
    """Printed and cut, each alone."""
    assert proven(asked(changes, language))

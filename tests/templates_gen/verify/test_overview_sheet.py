"""The overview of a range: proven for any kits, terms and papers, and every figure that is changed is found."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from fractions import Fraction

import pytest
from kits import KINDS, font_metrics, kit_of
from languages import made_up

from layout.box.shop import Shop
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Shape, Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import read_kit
from layout.messages.english import ENGLISH
from templates_gen.files.output import Output
from templates_gen.files.overview_file import Overview, overview_findings, overview_output
from templates_gen.files.proof import read, write
from templates_gen.files.run_about import SoldKit
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.files.run_plans import plans_of
from templates_gen.inputs import stock_file
from templates_gen.inputs.range_file import Range, RangeKit, load_range, write_range
from templates_gen.verify.run.overview_sheet import Seen, prove_overview_sheet
from tests.templates_gen.verify.test_price_sheet import ALL

METRICS = font_metrics()
SOLD = replace(ALL, colours={}, also={})


def overview(found: Range, sheets: int = 40, boards: int = 0, *, cut: bool = False) -> Overview:
    """The overview of a range whose run takes so much."""
    outputs = RunOutputs(found, plans_of(found), METRICS, stock_file.built_in() if cut else None)
    sold = outputs.sold
    return Overview(found, sold, outputs.rows, sheets, boards, outputs._held, outputs.stock)


def of(*changes: dict[str, object], shop: Shop = SOLD) -> Range:
    """A range of kits that came from no file, each by what is changed in a plain one."""
    kits = [
        RangeKit(kit_of(dict(each, name=f"Heron frame {k}")), 3 * k, k, shop=shop) for k, each in enumerate(changes, 1)
    ]
    return Range("Heron frames", tuple(kits), shop, copies_said=True)


def problems(run: Overview) -> tuple[str, ...]:
    """What the proof says of the sheets as they are read back from their bytes."""
    output = overview_output(run, METRICS)
    return overview_findings(run, output, read(output, write(output))).sentences


@pytest.fixture(scope="module")
def weir(tmp_path_factory: pytest.TempPathFactory) -> Range:
    """The range to start from, as it is written."""
    file = tmp_path_factory.mktemp("range") / "weir.toml"
    write_range(file)
    return load_range(file)


INCHES = {"frame.outer_width": "16 in", "sett.given": "6 epi"}
WEFT = {"weft": {"strands": [{"number": 2, "grams": 50, "length": "160 m"}], "beads": {"number": 36, "over": "5 cm"}}}


@pytest.mark.parametrize("kind", KINDS)
def test_kits_of_every_kind_are_proven(kind: str) -> None:
    """Beside a kit in inches, in which not the same is known, with prices and without."""
    for shop in (SOLD, Shop()):
        assert problems(overview(of(KINDS[kind], INCHES | WEFT, shop=shop))) == ()


@pytest.mark.parametrize("paper", ["a4", "letter", "a3", "11x17", "148 x 210 mm", "210 x 148 mm"])
def test_on_every_paper(paper: str) -> None:
    """In inches, for one kit and for five with long names."""
    name = "frame whose name is as long as can be"
    for count in (1, 5):
        found = of(*({"paper": {"size": paper}, **INCHES, "weaving.width": f"{10 + k} cm"} for k in range(count)))
        long = tuple(replace(kit, kit=replace(kit.kit, name=f"{kit.number} {name}")) for kit in found.kits)
        assert problems(overview(replace(found, kits=long))) == ()


@pytest.mark.parametrize("language", ["es", "de", "fr", ""])
def test_in_every_language(language: str, weir: Range) -> None:
    """And in a language whose sentences are half as long again."""
    kits = tuple(
        replace(kit, kit=replace(kit.kit, paper=replace(kit.kit.paper, language=language))) if language else kit
        for kit in weir.kits
    )
    run = overview(replace(weir, kits=kits), boards=8, cut=True)
    if language:
        assert problems(run) == ()
        return
    plans = [replace(each.plan, words=made_up(ENGLISH)) for each in run.kits]
    sold = tuple(replace(each, plan=plan) for each, plan in zip(run.kits, plans, strict=True))
    rows, held = run.rows, run.held()
    own = [each._replace(boxed=each.boxed._replace(plan=plan)) for each, plan in zip(held, plans, strict=True)]
    assert problems(replace(run, kits=sold, rows=rows, held=lambda: own)) == ()


def test_twenty_four_kits(weir: Range) -> None:
    """As many as a range may have: on several sheets."""
    first = weir.kits[0]
    small = replace(first.kit, box=replace(first.kit.box, holds=("strips",), once=()))
    kits = tuple(replace(first, kit=replace(small, name=f"Weir frame, {k}"), number=k, copies=k) for k in range(1, 25))
    run = overview(replace(weir, kits=kits))
    assert problems(run) == ()
    assert len(overview_output(run, METRICS).sheets) >= 2


# What it says, by hand.


def words_of(output: Output) -> list[str]:
    """Every word of the sheets, from the top of the first on."""
    return [
        shape.words
        for sheet in output.sheets
        for shape in sorted(
            (shape for shape in sheet.shapes if isinstance(shape, Text)), key=lambda text: (-text.at.y, text.at.x)
        )
    ]


def test_where_values_come_from(weir: Range) -> None:
    """Sizes of frame and weaving are each kit's own; the large kit leaves out the draw-in that the range says."""
    words = words_of(overview_output(overview(weir), METRICS))
    at = [k for k, each in enumerate(words) if each == "weaving.draw_in"]
    assert words[at[0] + 1 : at[0] + 4] == ["2 %", "2 %", "left out"]
    assert words[at[1] + 1 : at[1] + 3] == ["2 %", "Weir frame, large"]
    at = [k for k, each in enumerate(words) if each == "weaving.width"]
    assert words[at[0] + 1 : at[0] + 4] == ["16 cm", "24 cm", "36 cm"]
    assert words[at[1] + 1] == "every kit"
    at = [k for k, each in enumerate(words) if each == "frame.bar_diameter"]
    assert len(at) == 1  # no kit differs in it
    assert words[at[0] + 1] == "15 mm"


def test_kits_are_made_of_the_values_that_are_shown(weir: Range) -> None:
    """What the file carries as the values of a kit is read as that very kit."""
    run = overview(weir)
    for each, sold in zip(run.source["kits"], run.kits, strict=True):
        assert read_kit(each["values"], METRICS) == sold.plan.kit


def test_sums_are_those_of_all_boxes() -> None:
    """Ends 30 at 2.5 per cm over 12 cm; 1 x 3 and 2 x 6 boxes: the sums of the columns, by hand from the rows.

    A price of one at half the margin is the cost twice over, rounded up to whole money.
    """
    shop = replace(SOLD, margin=Fraction(1, 2), round_to=Fraction(1))
    run = overview(of({"weaving.width": "12 cm"}, {"weaving.width": "20 cm"}, shop=shop))
    whole, rows = run.shown.whole, run.rows
    assert [row.ends for row in rows] == [30, 50]
    assert whole.boxes == 9
    assert whole.cost == 3 * rows[0].quote.cost.whole + 6 * rows[1].quote.cost.whole
    prices = [-(-2 * row.quote.cost.whole // 1) for row in rows]
    assert whole.price == 3 * prices[0] + 6 * prices[1]
    assert whole.warp_m is not None
    assert whole.warp_m.value == pytest.approx(3 * rows[0].warp_m.value + 6 * rows[1].warp_m.value)  # type: ignore[union-attr]


# Alarms.


_DRAWN: dict[int, tuple[Overview, Output, Seen]] = {}


def drawn(run: Overview) -> tuple[Output, Seen]:
    """The sheets, and what they are proven by; kept, since many damages are tried on the same."""
    if id(run) not in _DRAWN:
        kits = tuple((each["values"], each["own"]) for each in run.source["kits"])
        seen = Seen(run.found.name, tuple(run.held()), run.sheets, run.boards, run.shared, kits)
        _DRAWN[id(run)] = (run, overview_output(run, METRICS), seen)
    return _DRAWN[id(run)][1:]


def judged(run: Overview, change: Callable[[tuple[Shape, ...]], Sequence[Shape]]) -> tuple[str, ...]:
    """What the second proof finds of sheets that were changed."""
    output, seen = drawn(run)
    sheets = [Sheet(each.name, each.width, each.height, tuple(change(each.shapes))) for each in output.sheets]
    return prove_overview_sheet(sheets, output.laid, seen).sentences


def other(before: str, after: str) -> Callable[[tuple[Shape, ...]], Sequence[Shape]]:
    """Says `after` where `before` stood, once or more."""
    return lambda shapes: [
        shape._replace(words=after) if isinstance(shape, Text) and shape.words == before else shape for shape in shapes
    ]


def test_what_is_right_is_not_found(weir: Range) -> None:
    """The damages below are found for what they are."""
    run = overview(weir, boards=8, cut=True)
    assert judged(run, lambda shapes: shapes) == ()


def test_every_changed_word_is_found(weir: Range) -> None:
    """A figure one more, a word of a table or beside it changed or taken away: every other one of the sheets."""
    run = overview(weir, boards=8, cut=True)
    output, _ = drawn(run)
    texts = [shape for sheet in output.sheets for shape in sheet.shapes if isinstance(shape, Text)]
    for text in list(dict.fromkeys(texts))[::2]:
        digits = [k for k, letter in enumerate(text.words) if letter.isdigit()]
        spoilt = text.words + "x"
        if digits:
            k = digits[-1]
            spoilt = f"{text.words[:k]}{(int(text.words[k]) + 1) % 10}{text.words[k + 1 :]}"
        for wrong in (spoilt, ""):
            swap = lambda shapes, text=text, wrong=wrong: [  # noqa: E731
                shape._replace(words=wrong) if shape == text else shape for shape in shapes if wrong or shape != text
            ]
            if (not wrong or digits) and text.words.isdigit() and not _in_table(text):
                continue  # the number of a sheet alone is accounted for elsewhere
            assert judged(run, swap), (text.words, wrong)


def _in_table(text: Text) -> bool:
    return abs(text.size - 7.5 * 25.4 / 72) < 0.01


def test_cells_that_change_places_are_found(weir: Range) -> None:
    """Two rows' figures swapped, the values of two kits, a title with another; a rule that is gone."""
    run = overview(weir, boards=8, cut=True)

    def swapped(one: str, two: str) -> Callable[[tuple[Shape, ...]], Sequence[Shape]]:
        return lambda shapes: other("#", two)(tuple(other(two, one)(tuple(other(one, "#")(shapes)))))

    for one, two in (("40", "60"), ("30 cm", "40 cm"), ("Ends", "Winds"), ("2.5", "2.6"), ("every kit", "left out")):
        assert judged(run, swapped(one, two)), (one, two)
    assert judged(run, lambda shapes: [s for s in shapes if not (isinstance(s, Curve) and s.pen is Pen.OUTLINE)])


def test_another_number_of_sheets_or_boards_is_found(weir: Range) -> None:
    """That of the run, and that of a set made alone."""
    run = overview(weir, boards=8, cut=True)
    output = overview_output(run, METRICS)
    found = read(output, write(output))
    for wrong in (replace(run, sheets=41), replace(run, boards=9)):
        assert overview_findings(wrong, output, found).sentences
    less = [each._replace(once=each.once + 1) for each in run.held()]
    assert overview_findings(replace(run, held=lambda: less), output, found).sentences


def test_a_value_of_the_range_that_is_the_kits_own_is_found(weir: Range) -> None:
    """Whose a value is is told from what the file carries."""
    run = overview(weir)
    output = overview_output(run, METRICS)
    found = read(output, write(output))
    kit = weir.kits[0]
    own = {**kit.origins, "frame.margin": kit.origins["weaving.width"]._replace(key="frame.margin")}
    kits = (replace(kit, origins=own), *weir.kits[1:])
    wrong = replace(run, found=replace(weir, kits=kits))
    assert overview_findings(wrong, output, found).sentences


def test_kits_of_no_file_say_all_themselves() -> None:
    """A kit alone has a sheet too: nothing differs then."""
    run = overview(of({}))
    words = words_of(overview_output(run, METRICS))
    assert "What differs between the kits" not in words
    assert "every kit" in words
    assert isinstance(run.kits[0], SoldKit)

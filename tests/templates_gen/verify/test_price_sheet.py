"""The price sheet: proven for any kits and terms of sale, and every figure that is changed is found."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from functools import partial
from itertools import pairwise
from typing import Any

import pytest
from kits import font_metrics
from languages import made_up

from layout.box.quotes import Rates, Takes
from layout.box.shop import Pack, Shop, Step
from layout.box.shop_values import shop_values
from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import read_kit
from layout.messages.english import ENGLISH
from layout.plan import Plan, plan
from templates_gen.files.price_file import PriceRun, price_findings, price_output
from templates_gen.files.proof import read, write
from templates_gen.files.run_about import SoldKit
from templates_gen.verify.run.price_sheet import prove_prices
from templates_gen.verify.run.prices import Boxed, Together
from tests.plain_kits import METRICS, changed
from tests.templates_gen.verify.test_to_buy import KITS, SHOP
from tests.yarn_kits import STATED

ALL = replace(
    SHOP,
    also={
        name: Pack("", Fraction(1), "piece", Fraction(2))
        for name in ("beater", "tapestry needle", "rod for the leashes")
    },
    hour=Fraction(18),
    minutes=Fraction(25),
    margin=Fraction(2, 5),
    steps=(Step(1, Fraction(0)), Step(5, Fraction(1, 20)), Step(10, Fraction(1, 3))),
    round_to=Fraction(1, 2),
)
RATES = Rates(Fraction("4.50"), Fraction("0.80"))


def takes(place: int, boxes: int) -> Takes:
    """So many sheets and boards, a third of a minute for each box and one for the whole."""
    return Takes(4 * boxes + place, boxes, Fraction(boxes, 3) + 1)


def run_of(*kits: tuple[dict[str, Any], int, Shop], rates: Rates = RATES) -> PriceRun:
    """A run of these kits, by what is changed in a plain one."""
    sold = [SoldKit(planned(changes, f"kit {k}"), copies, shop) for k, (changes, copies, shop) in enumerate(kits)]
    return PriceRun("a range", tuple(sold), takes, rates)


def planned(changes: dict[str, Any], name: str) -> Plan:
    """The plan of a kit of that name."""
    return plan(read_kit(changed(STATED, **changes) | {"name": name}, METRICS))


def proven(run: PriceRun) -> tuple[str, ...]:
    """What the proof says of the sheet as it is read back from its bytes."""
    output = price_output(run, font_metrics())
    return price_findings(run, output, read(output, write(output))).sentences


NO_MARGIN, FINE = replace(ALL, margin=None), replace(ALL, round_to=None)
DEAR = replace(ALL, weft=Pack("ball", Fraction(1, 1000), "g", Fraction(1_000_000)), margin=Fraction(99, 100))
MANY = replace(ALL, steps=tuple(Step(k, Fraction(k, 100)) for k in range(1, 25)))
RUNS = {
    "one kit, all priced": run_of(({}, 10, ALL)),
    "three kits, three terms": run_of(({}, 10, ALL), (KITS[2], 3, NO_MARGIN), (KITS[4], 1, FINE)),
    "nothing priced": run_of(({}, 10, Shop()), rates=Rates()),
    "a margin alone": run_of(({}, 500, Shop("kr", margin=Fraction(1, 3)))),
    "no boards, no minutes": replace(run_of(({}, 4, ALL)), takes=lambda _, boxes: Takes(boxes)),
    "nothing printed": replace(run_of((KITS[9], 4, ALL)), takes=lambda _, __: Takes()),
    "ten colours": run_of((KITS[3], 10, replace(ALL, weft=None))),
    "dear": run_of(({}, 500, DEAR)),
    "many quantities": run_of(*[({}, 10, MANY)] * 5),
    "small paper": run_of(({"paper": {"size": "148 x 210 mm"}}, 10, ALL), ({}, 10, ALL)),
    "letter": run_of(({"paper": {"size": "letter"}}, 10, ALL)),
}


@pytest.mark.parametrize("name", RUNS)
def test_a_price_sheet_is_proven(name: str) -> None:
    """From one kit to several, with prices and without, whatever the paper."""
    assert proven(RUNS[name]) == ()


def test_it_speaks_the_language_of_the_first_kit() -> None:
    """In a language of long words too."""
    run = RUNS["three kits, three terms"]
    words = made_up(ENGLISH)
    kits = tuple(replace(each, plan=replace(each.plan, words=words)) for each in run.kits)
    assert proven(replace(run, kits=kits)) == ()


def spoiled(sheet: Sheet, old: str, new: str) -> Sheet:
    """The sheet with one of its words changed."""
    shapes = list(sheet.shapes)
    (place, *_) = (k for k, shape in enumerate(shapes) if isinstance(shape, Text) and shape.words == old)
    shapes[place] = shapes[place]._replace(words=new)  # type: ignore[call-arg]
    return replace(sheet, shapes=tuple(shapes))


def judged(run: PriceRun, sheets: list[Sheet]) -> tuple[str, ...]:
    """What the second computation alone says."""
    output = price_output(run, font_metrics())
    kits = [Boxed(each.plan, each.copies, shop_values(each.shop)) for each in run.kits]
    together = lambda place, boxes: Together(*run.takes(place, boxes), *run.rates)  # noqa: E731
    return prove_prices(sheets, output.laid, run.name, kits, together).sentences


def test_no_word_can_be_changed() -> None:
    """Each figure, name and sentence: another one in its place is found, and so are two that change places."""
    run = RUNS["one kit, all priced"]
    (sheet,) = price_output(run, font_metrics()).sheets
    assert judged(run, [sheet]) == ()
    texts = [shape.words for shape in sheet.shapes if isinstance(shape, Text)]
    for words in dict.fromkeys(texts):
        other = f"{words[:-1]}{(int(words[-1]) + 1) % 10}" if words[-1].isdigit() else f"{words}s"
        assert judged(run, [spoiled(sheet, words, other)]), words
    money = [words for words in dict.fromkeys(texts) if "." in words and words.replace(".", "").isdigit()]
    assert len(money) > 8
    for one, other in pairwise(money):
        assert judged(run, [spoiled(spoiled(spoiled(sheet, one, "?"), other, one), "?", other)]), (one, other)


WRONG = {
    "without its margin": partial(replace, margin=Fraction(0)),
    "without the work": partial(replace, minutes=Fraction(0)),
    "a cent less": partial(replace, round_to=Fraction("0.01")),
    "quantities at full price": partial(replace, steps=tuple(Step(k, Fraction(0)) for k in (1, 5, 10))),
    "another pack": partial(replace, warp=Pack("cone", Fraction(250), "g", Fraction("14.50"))),
}


@pytest.mark.parametrize("name", WRONG)
def test_other_terms_are_found(name: str) -> None:
    """A sheet drawn for other terms of sale than the file says is not passed."""
    run = RUNS["one kit, all priced"]
    (kit,) = run.kits
    other = replace(run, kits=(replace(kit, shop=WRONG[name](kit.shop)),))
    assert judged(run, list(price_output(other, font_metrics()).sheets))
    boards = replace(run, takes=lambda place, boxes: takes(place, boxes)._replace(boards=2 * boxes))
    assert judged(run, list(price_output(boards, font_metrics()).sheets))

"""Class sheets of every kind of frame: proven, and every damage of one found."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import pytest
from kits import KINDS, font_metrics, plan_of
from languages import made_up

from layout.box.shop import Shop
from layout.drawing.shapes import Curve, Shape, Text
from layout.drawing.sheet import Sheet
from layout.messages.english import ENGLISH
from layout.parts.class_sheet import Lesson
from templates_gen.files.class_file import class_findings, class_output
from templates_gen.files.formats import FORMATS
from templates_gen.files.output import Output
from templates_gen.files.proof import write
from templates_gen.files.run_about import SoldKit
from templates_gen.verify.finding import Findings
from templates_gen.verify.run.class_sheet import prove_class_sheet

METRICS = font_metrics()
LESSON = Lesson(10, 3)
INCHES = {"frame.outer_width": "16 in", "sett.given": "6 epi"}


def kits_of(*changes: dict[str, object]) -> list[SoldKit]:
    """So many kits, ten boxes of each."""
    plans = (plan_of(dict(each, name=f"Heron {number}")) for number, each in enumerate(changes, 1))
    return [SoldKit(plan, 10, Shop()) for plan in plans]


def made(kits: Sequence[SoldKit], lesson: Lesson = LESSON) -> Output:
    """The file, proven as it is read back."""
    output = class_output("Heron frames", kits, lesson, METRICS)
    found = FORMATS["pdf"].read(write(output))
    assert class_findings("Heron frames", kits, lesson, output, found).sentences == ()
    return output


@pytest.mark.parametrize("kind", KINDS)
def test_a_class_sheet_is_proven(kind: str) -> None:
    """Of every kind of frame and way of warping."""
    made(kits_of(KINDS[kind]))


@pytest.mark.parametrize("paper", ["a4", "letter", "a3", "11x17", "148 x 210 mm"])
def test_on_every_paper(paper: str) -> None:
    """In inches too, with another kit beside, for one person and for many."""
    kits = kits_of({"paper": {"size": paper}}, INCHES)
    for lesson in (Lesson(1, 1), Lesson(37, 4)):
        made(kits, lesson)


def test_in_another_language() -> None:
    """In longer words."""
    kits = kits_of({})
    made([replace(each, plan=replace(each.plan, words=made_up(ENGLISH))) for each in kits])


def test_tables_are_as_many_as_people_need() -> None:
    """Ten people, three at a table: four tables, one of them with a free place."""
    assert (Lesson(10, 3).tables, Lesson(9, 3).tables, Lesson(1, 4).tables) == (4, 3, 1)


def judged(change: Callable[[tuple[Shape, ...]], Sequence[Shape]], people: int = 10) -> Findings:
    """What the proof finds of sheets that were changed."""
    kits = kits_of({})
    output = made(kits)
    sheets = [Sheet(each.name, each.width, each.height, tuple(change(each.shapes))) for each in output.sheets]
    plans = [each.plan for each in kits]
    return prove_class_sheet(sheets, output.laid, ("Heron frames", 10), plans, people, 3)


def test_what_is_right_is_not_found() -> None:
    """The damages below are found for what they are."""
    assert judged(lambda shapes: shapes).sound


def words(shape: Shape) -> str:
    """What a shape says."""
    return shape.words if isinstance(shape, Text) else ""


def is_tick(shape: Shape) -> bool:
    """A box to tick."""
    if not isinstance(shape, Curve) or len(shape.points()) != 4:
        return False
    xs = [at.x for at in shape.points()]
    return abs(max(xs) - min(xs) - 3.8) < 1e-6


def is_length(shape: Shape) -> bool:
    """The amount of a thread."""
    return words(shape).endswith(" m")


DAMAGES: dict[str, Callable[[tuple[Shape, ...]], Sequence[Shape]]] = {
    "a row lost": lambda shapes: [each for each in shapes if words(each) != "Leash cord"],
    "a word besides": lambda shapes: [*shapes, *(each for each in shapes if words(each) == "Names")],
    "another amount": lambda shapes: [
        each._replace(words=each.words.replace(" m,", "9 m,")) if isinstance(each, Text) else each for each in shapes
    ],
    "an amount in another row": lambda shapes: [
        each._replace(at=each.at._replace(y=each.at.y - 6.4))
        if words(each).endswith(" m") and isinstance(each, Text)
        else each
        for each in shapes
    ],
    "a box to tick lost": lambda shapes: [
        each for k, each in enumerate(shapes) if not (is_tick(each) and not any(map(is_tick, shapes[:k])))
    ],
    "no title": lambda shapes: [each for each in shapes if words(each) != "Cut before the class"],
}


@pytest.mark.parametrize("damage", DAMAGES)
def test_every_damage_is_found(damage: str) -> None:
    """Each by a sentence of its own."""
    assert not judged(DAMAGES[damage]).sound


def test_another_number_of_people_is_found() -> None:
    """In the head, in what is cut, and in the names."""
    assert len(judged(lambda shapes: shapes, people=11).problems) >= 3

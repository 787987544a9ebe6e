"""The leaflet of a kit proven: its folds, its steps in the order of the panels, every word, and every picture."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Text
from layout.messages.roles import Leaflet, SheetName, Winding
from layout.messages.roles.order import OrderWord
from layout.plan import Plan
from templates_gen.messages.roles.proof_leaflet import Leaf, LeafPicture
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart, first_of
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.leaflet_facts import Facts, facts_of
from templates_gen.verify.printed.leaflet_leaves import LINE, OneLeaf, leaf_of, points_of, size_of, wrong_folds
from templates_gen.verify.printed.leaflet_numbers import Told, beside, told
from templates_gen.verify.printed.leaflet_pictures import CHECKS
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.said import Word, account

_APART = 10_000.0  # mm: the words of several leaves are looked at as if these lay one under the other
_TO_RING, _RING_DOWN = 41.4, 2.6  # from the left and the upper edge of a picture to the middle of the ring beside it
_WIDE, _HIGH, _PAST = 34.0, 26.0, 0.9  # of a picture, and how far its ink may reach past it
_WORDS_RIGHT, _TITLE_NEAR = (-3.5, 6.0), 3.0
_SAMPLE = 4.0  # so far a sample stands before its words at most


def prove_leaflet(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every leaf: nothing is said or drawn but the steps of this very kit."""
    if not on_paper:
        return Findings(0.0, ())
    facts = facts_of(plan)
    steps = told(plan, facts)
    leaves = [leaf_of(plan, seen) for seen in pieces]
    wrong = [each for leaf in leaves for each in wrong_folds(plan, leaf)]
    order = [ring for leaf in leaves for ring in sorted(leaf.rings, key=lambda at: (*leaf.panel(at.at), -at.at.y))]
    found, wanted = [ring.words for ring in order], [str(k) for k in range(1, len(steps) + 1)]
    if found != wanted:
        wrong.append(finding(Leaf.ORDER, found=", ".join(found), wanted=len(steps)))
    else:
        wrong += _unlike(plan, leaves, steps)
        wrong += [each for leaf in leaves for each in _pictures(facts, leaf, steps)]
    say = plan.words.say
    warp = said_of(plan.kit, plan.warp.sett.per_mm, plan.warp.sett.unit)
    total = Findings(0.0, tuple(wrong))
    for number, seen in enumerate(pieces, 1):
        several = say(Leaflet.LEAF, number=number, total=len(pieces))
        numbered = several if len(pieces) > 1 else say(Leaflet.INSIDE)
        about = About("", _purpose(plan, len(steps)), numbered=numbered)
        total += check_heads([seen], say(SheetName.NAME_LEAFLET), warp, [], joined=False, more=about)
    return total


def _purpose(plan: Plan, steps: int) -> str:
    """What the head says of a leaflet: its steps, and for whom it was made."""
    say, buyer = plan.words.say, plan.kit.order.buyer
    purpose = say(SheetName.PURPOSE_LEAFLET, count=steps)
    return say(OrderWord.LEAFLET, buyer=buyer, purpose=purpose) if buyer else purpose


def _unlike(plan: Plan, leaves: Sequence[OneLeaf], steps: Sequence[Told]) -> Iterator[Finding]:
    """What is not said, or said and not asked for, or beside another number than its own."""
    texts = [(k, leaf, at, said) for k, leaf in enumerate(leaves) for at, said in leaf.seen.words()]
    words: list[Word] = [(Point(at.x, at.y - k * _APART), said) for k, leaf, at, said in texts]
    rings = [(Point(r.at.x, r.at.y - k * _APART), r.words) for k, leaf in enumerate(leaves) for r in leaf.rings]
    say = plan.words.say
    legend = {say(role): _PENS[role] for role in truth_of(plan.kit).legend if role in _PENS}
    legend |= {say(Leaflet.FOLD): Pen.FOLD} if leaves[0].upright else {}
    every = [say(Leaflet.TENSION), *legend] * len(leaves)
    if leaves[0].block:
        warp = said_of(plan.kit, plan.warp.sett.per_mm, plan.warp.sett.unit)
        every += [say(Leaflet.TRIM), say(SheetName.NAME_LEAFLET), warp["name"], warp["facts"]] * len(leaves)
        buyer = plan.kit.order.buyer
        every += [say(OrderWord.FOR, buyer=buyer)] * len(leaves) if buyer else []
    every += [said for step in steps for said in step[1:]]
    ways = [account(words, [*every, *beside(plan) * times], (), plan.words) for times in sorted({1, len(leaves)})]
    accounted = min(ways, key=lambda way: len(way.wrong))  # once on each leaf, or once for all
    yield from accounted.wrong
    for number, step in enumerate(steps, 1):
        for said, below in ((step.title, False), (step.said, True)):
            places = accounted.places.get(said, [])
            if not any(_nearest(at, rings, below=below) == str(number) for at in places):
                yield finding(Leaf.ASIDE, words=said, number=number)
    for said, pen in legend.items():
        for at in accounted.places.get(said, []):
            leaf = leaves[min(len(leaves) - 1, round(-at.y / _APART))]
            if not _has_sample(leaf, Point(at.x, at.y + leaves.index(leaf) * _APART), pen):
                yield finding(Leaf.SAMPLE, words=said)


_PENS = {
    Winding.ON_FACE: Pen.THREAD,
    Winding.BEHIND: Pen.THREAD_BACK,
    Winding.BEHIND_TOOTH: Pen.THREAD_BACK,
}


def _nearest(at: Point, rings: Sequence[Word], *, below: bool) -> str:
    """The ring to which words belong: the next one above them in their column, or that beside them."""
    near = [(ring, said) for ring, said in rings if _WORDS_RIGHT[0] < at.x - ring.x < _WORDS_RIGHT[1]]
    if not below:
        return next((said for ring, said in near if abs(at.y - ring.y) < _TITLE_NEAR), "")
    above = [(ring.y - at.y, said) for ring, said in near if ring.y > at.y]
    return min(above, default=(0.0, ""))[1]


def _has_sample(leaf: OneLeaf, at: Point, pen: Pen) -> bool:
    lines = [each for each in leaf.seen.lines() if abs(each.start.y - each.steps[0].end.y) <= LIMIT]
    ends = [(each.pen, at.x - each.steps[0].end.x, each.start.y - at.y) for each in lines]
    return any(found is pen and 0 < off < _SAMPLE and 0 < up < 2 for found, off, up in ends)


def _pictures(facts: Facts, leaf: OneLeaf, steps: Sequence[Told]) -> Iterator[Finding]:
    """Every picture beside its own ring, and nothing else that is drawn."""
    rest = [shape for shape in leaf.seen.shapes() if not (isinstance(shape, Text) and shape.words.isdigit() is False)]
    for ring in leaf.rings:
        left, low = ring.at.x - _TO_RING, ring.at.y + _RING_DOWN - _HIGH
        box = left - _PAST, low - _PAST, left + _WIDE + _PAST, low + _HIGH + _PAST
        inside = [shape for shape in rest if _within(shape, box)]
        taken = set(map(id, inside))
        rest = [shape for shape in rest if id(shape) not in taken]
        step = steps[int(ring.words) - 1]
        shapes = Placing(0, -left, -low).shapes(inside)
        problems = [LeafPicture.NOTHING] if not shapes else list(CHECKS[step.picture](facts, shapes))
        yield from (finding(Leaf.STEP, number=ring.words, what=each) for each in problems)
    for shape in rest:
        if not isinstance(shape, Text) and not _of_the_sheet(shape):
            yield finding(Leaf.STRAY, pen=shape.pen.value)


def _within(shape: Shape, box: tuple[float, float, float, float]) -> bool:
    left, low, right, high = box
    x, y = first_of(shape)  # enough for most that lies elsewhere
    if not (left <= x <= right and low <= y <= high):
        return False
    return all(left <= x <= right and low <= y <= high for x, y in points_of(shape))


def _of_the_sheet(shape: Curve | Region) -> bool:
    """Rings with their white, folds, crosses, and the samples of the legend, which are level and 10 mm long."""
    if isinstance(shape, Region):
        return shape.pen is Pen.PAPER
    if shape.pen in (Pen.RING, Pen.FOLD, Pen.REGISTER):
        return True
    wide, high = size_of(shape)
    if shape.pen is Pen.HELP and not shape.closed:  # the marks of a block
        return True
    return high <= LIMIT and abs(wide - LINE) <= LIMIT

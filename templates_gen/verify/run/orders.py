"""How often each part of each order is in a print run: as often as there are boxes, by what each product must show."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from templates_gen.messages.roles.proof_run import RunProof
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.run.pages import RunKit, called
from templates_gen.verify.whole import WHOLE

Shown = Counter[tuple[int, str]]
"""How often a part of that name is shown of the order at that place."""


def wrong_parts(shown: Shown, kits: Sequence[RunKit], products: Sequence[Sequence[str]]) -> Iterator[Finding]:
    """What is missing or too often, by the `products` that each order prints."""
    wanted: Shown = Counter()
    for place, (kit, names) in enumerate(zip(kits, products, strict=True)):
        for name in names:
            parts = (*WHOLE[name].parts, *WHOLE[name].more(kit.plan.kit))
            wanted.update(dict.fromkeys(((place, part) for part in parts), kit.copies))
    for place, part in sorted({*shown, *wanted}):
        found, boxes = shown[place, part], wanted[place, part]
        if found != boxes:
            yield finding(RunProof.COPIES, part=part, kit=called(kits[place].plan), found=found, wanted=boxes)

"""Kits that tell their yarns: one to change in tests, and a Hypothesis strategy of all that a kit may say of them."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from layout.kit.kit import read_kit
from layout.plan import plan
from layout.yardage.amounts import Amounts
from layout.yarns.diameter import SPECIFIC_VOLUMES
from layout.yarns.thickness import Make, Wrapped
from tests.plain_kits import METRICS, ROUND, changed
from tests.strategies import length_texts, names

STATED: dict[str, Any] = ROUND | {
    "sett": {"given": "2.5 per cm"},  # a pitch of 4 mm
    "frame": ROUND["frame"] | {"bar_diameter": "20 mm", "outer_height": "60 cm"},
    "weaving": {"width": "24 cm", "height": "30 cm"},
    "warp": {"count": 10, "system": "tex", "plies": 100, "fibre": "cotton", "wrap": {"turns": 10, "window": "2 cm"}},
    "weft": {
        "strands": [{"count": 300, "system": "tex", "number": 2, "fibre": "wool"}],
        "wrap": {"turns": 10, "window": "2 cm"},
        "picks": {"number": 50, "over": "5 cm"},
    },
}
"""60 ends at 4 mm, a warp of 1000 tex, a weft of 600 tex, both 2 mm thick when soft, a pick a millimetre."""


def amounts_of(base: dict[str, Any] = STATED, **changes: object) -> Amounts:
    """The amounts of `base`, changed as in `changed`."""
    return plan(read_kit(changed(base, **changes), METRICS)).amounts


_shares = st.one_of(st.sampled_from(["5 %", "2,5 %", "0 %", 0, 0.02, 0.125]), st.floats(0, 0.4))
_wraps = st.fixed_dictionaries(
    {"turns": st.integers(3, 40), "window": st.sampled_from(["2 cm", "1 in", "50 mm"])},
    optional={"how": st.sampled_from(list(Wrapped))},
)


def _some(**leaves: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    """Any of these keys."""
    return st.fixed_dictionaries({}, optional=leaves)


_counted = st.sampled_from(
    [
        {"count": 8, "system": "ne", "plies": 2},
        {"count": "8/2", "system": "ne", "order": "count/plies"},
        {"count": "2/40", "system": "worsted", "order": "plies/count"},
        {"count": "7,5", "system": "nm"},
        {"count": 340.25, "system": "m/100g"},
        {"count": 3000, "system": "denier", "plies": 3},
    ]
)
_sold = st.builds(
    lambda grams, metres: {"grams": grams, "length": f"{metres} m"}, st.floats(10, 500), st.integers(50, 900)
)
_label = st.one_of(
    _counted,
    _sold,
    _sold.map(lambda stated: stated | {"weighed": True}),
    st.lists(_counted, min_size=1, max_size=3).map(lambda threads: {"threads": threads}),
)
_thread = st.builds(
    lambda label, more: label | more,
    _label,
    _some(
        fibre=st.sampled_from(list(SPECIFIC_VOLUMES)),
        wrap=_wraps,
        make=st.sampled_from(list(Make)),
        ball=st.sampled_from([50, 100, 12.5]),
    ),
)
_strand = st.builds(lambda thread, more: thread | more, _thread, _some(number=st.integers(1, 6), colour=names))


@st.composite
def colour_tables(draw: st.DrawFn) -> list[dict[str, Any]]:
    """Colours whose shares make 100."""
    cuts = sorted(draw(st.sets(st.integers(1, 99), max_size=3)))
    shares = [high - low for low, high in zip([0, *cuts], [*cuts, 100], strict=True)]
    called = draw(st.lists(names.map(str.strip), min_size=len(shares), max_size=len(shares), unique=True))
    return [
        {"name": name, "share": share} | draw(_some(lengths=st.integers(1, 90)))
        for name, share in zip(called, shares, strict=True)
    ]


_warp = st.builds(
    lambda thread, more: thread | more,
    st.one_of(st.just({}), _thread),
    _some(stretch=_shares, spare=_shares, knot=length_texts(0, 300), tail=length_texts(0, 400)),
)
_weft = _some(
    strands=st.lists(_strand, min_size=1, max_size=3),
    wrap=_wraps,
    beat=st.sampled_from([0, 0.5, 0.8, 1]),
    spare=_shares,
    pick=st.just({"straight": "118 mm", "woven": "100 mm"}),
    tail=length_texts(0, 60),
    colours=colour_tables(),
    sample=st.just({"grams": 9.25, "width": "4 in", "height": "12 cm"}),
)
_counts = st.sampled_from([{}, {"picks": {"number": 52, "over": "5 cm"}}, {"beads": {"number": 22, "over": "2 in"}}])
_room = _some(
    heading=length_texts(0, 20),
    hand=length_texts(0, 120),
    slope=st.sampled_from([0.2, 0.25, 0.5, 1]),
    stick_past=length_texts(0, 80),
    leash_reach=length_texts(20, 200),
    leash_knot=length_texts(0, 100),
)


@st.composite
def stated_kits(draw: st.DrawFn) -> dict[str, Any]:
    """A kit that tells anything of its yarns and its room, on a frame that is high enough for what it weaves."""
    values = changed(
        STATED,
        warp=draw(_warp),
        weft=draw(_weft) | draw(_counts),
        room=draw(_room),
        frame__outer_height=draw(length_texts(480, 1500)),
        weaving__height=draw(length_texts(20, 150)),
    )
    values["weaving"] |= draw(_some(draw_in=_shares, hem=length_texts(0, 60)))
    washed = st.just({"washed": {"before": "8 in", "after": "19,5 cm"}})
    values["weaving"] |= draw(st.one_of(_some(shrinkage=_shares), washed))
    return values

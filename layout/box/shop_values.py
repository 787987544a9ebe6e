"""How a maker buys and sells, read from the plain values of a range file, and written back as them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from functools import partial
from itertools import pairwise
from typing import Any

from layout.box.shop import ONE, Pack, Shop, Step, Unit
from layout.box.shop_inputs import ONE_PACK, SHOP, SHOP_TABLES
from layout.drawing.metrics import FontMetrics
from layout.kit.fields import example_of
from layout.kit.to_plain import to_plain
from layout.kit.unknown_keys import entry_example, short_key
from layout.kit.walk import Walk
from layout.messages.english import ENGLISH
from layout.messages.roles.buying import BuyNeed
from layout.values.errors import FieldError, FieldErrors, shown
from layout.values.units import WORDS, Length, exact_length

Leaves = Mapping[str, Any]
_SIZES: Mapping[str, Unit] = {"grams": "g", "length": "m", "sheets": "sheet", "number": "piece"}
"""The key that says how much is in a pack, and in what that counts."""

_UNITS = frozenset((*WORDS, "g", "kg", "oz", "lb", "n", "hz", "x", "%"))
"""What stands beside figures on sheets for a buyer, so that it can name no money."""


def read_shop(values: Mapping[str, object], metrics: FontMetrics) -> Shop:
    """What the tables [buy], [sell] and [class] say. Raises FieldErrors with every refusal at once, by its key."""
    walk = Walk(metrics, SHOP, _MAKERS)
    walk.over({table: values[table] for table in SHOP_TABLES if table in values})
    errors = [*walk.errors, *_currency_errors(walk.got), *_quantity_errors(walk.got)]
    if errors:
        raise FieldErrors(errors)
    got = walk.got
    return Shop(
        currency=got["buy.currency"] or "",
        **{name: got[f"buy.{name}"] for name in ("warp", "weft", "leash_cord", "paper", "hour", "minutes")},
        colours=dict(got["buy.colours"]),
        also=dict(got["buy.also"]),
        margin=got["sell.margin"],
        steps=tuple(got["sell.quantities"]) or ONE,
        round_to=got["sell.round_to"],
        people=got["class.people"],
        at_a_table=got["class.at_a_table"],
    )


def _pack(key: str, leaves: Leaves, *, usual: str, needed: bool = True) -> Pack:
    """A pack by the keys that say how much is in it; of yarns, a ball that the kit names may stand instead."""
    sizes = [name for name in _SIZES if name in leaves]
    if len(sizes) > 1:
        line = ONE_PACK if "[" in key else f"{key.rpartition('.')[2]} = {ONE_PACK}"
        raise FieldError(key, BuyNeed.ONE_SIZE, ENGLISH.listed(sizes), line)
    name = sizes[0] if sizes else usual
    if not sizes and needed:
        raise FieldError(f"{key}.{usual}", BuyNeed.SIZE, shown(None), _example(f"{key}.{usual}"))
    size = leaves.get(name)
    exact = size.mm / 1000 if isinstance(size, Length) else None if size is None else Fraction(size)
    return Pack(leaves.get("pack", ""), exact, _SIZES[name], leaves.get("price"))


def _yarn(key: str, leaves: Leaves) -> Pack | None:
    return _pack(key, leaves, usual="grams", needed=False) if leaves else None


def _named(key: str, leaves: Leaves, *, usual: str, needed: bool) -> tuple[str, Pack]:
    """A pack with the name of what is in it."""
    table = key.partition("[")[0]
    if "name" not in leaves:
        raise FieldError(key, BuyNeed.NAMED, _found(leaves), entry_example(f"{table}[]", SHOP))
    return leaves["name"], _pack(key, {"number": 1, **leaves} if needed else leaves, usual=usual, needed=needed)


def _found(leaves: Leaves) -> str:
    return ENGLISH.listed([short_key(leaf) for leaf in leaves]) if leaves else shown({})


def _step(key: str, leaves: Leaves) -> Step:
    if "from" not in leaves:
        raise FieldError(key, BuyNeed.FROM, _found(leaves), entry_example("sell.quantities[]", SHOP))
    return Step(leaves["from"], leaves.get("less", ONE[0].less))


_MAKERS: Mapping[str, Callable[[str, Leaves], Any]] = {
    "buy.warp": _yarn,
    "buy.weft": _yarn,
    "buy.leash_cord": partial(_pack, usual="length"),
    "buy.paper": partial(_pack, usual="sheets"),
    "buy.colours[]": partial(_named, usual="grams", needed=False),
    "buy.also[]": partial(_named, usual="number", needed=True),
    "sell.quantities[]": _step,
}


def _currency_errors(got: Leaves) -> Iterator[FieldError]:
    """Prices without a currency, and a currency that stands beside figures anyway."""
    packs = [got.get(f"buy.{name}") for name in ("warp", "weft", "leash_cord", "paper")]
    packs += [pack for name in ("colours", "also") for _, pack in got.get(f"buy.{name}") or ()]
    priced = any(pack is not None and pack.price is not None for pack in packs) or got.get("buy.hour") is not None
    said = got.get("buy.currency")
    if priced and "buy.currency" in got and not said:
        yield FieldError("buy.currency", BuyNeed.CURRENCY, shown(None), _example("buy.currency"))
    if said and (said.lower() in _UNITS or any(map(str.isdigit, said))):
        yield FieldError("buy.currency", BuyNeed.CURRENCY_WORD, shown(said), _example("buy.currency"))


def _quantity_errors(got: Leaves) -> Iterator[FieldError]:
    """Quantities that do not rise, and names that stand twice."""
    steps = got.get("sell.quantities") or ()
    if falls := [after.start for before, after in pairwise(steps) if after.start <= before.start]:
        yield FieldError("sell.quantities", BuyNeed.RISING, str(falls[0]), _example("sell.quantities"))
    for key in ("buy.colours", "buy.also"):
        names = [name for name, _ in got.get(key) or ()]
        if twice := [name for name in names if names.count(name) > 1]:
            yield FieldError(key, BuyNeed.TWICE, shown(twice[0]), _example(key))


def _example(key: str) -> str:
    return example_of(SHOP.by_key[key]) if key in SHOP.by_key else entry_example(key, SHOP)


def shop_values(shop: Shop) -> dict[str, dict[str, object]]:
    """Plain nested values that JSON and TOML can hold and that `read_shop` reads as the very same shop."""
    packs = {name: _pack_values(getattr(shop, name)) for name in ("warp", "weft", "leash_cord", "paper")}
    lists = {
        name: [{"name": each, **_pack_values(pack)} for each, pack in getattr(shop, name).items()]
        for name in ("colours", "also")
    }
    steps = [{"from": each.start, **({"less": to_plain(each.less)} if each.less else {})} for each in shop.steps]
    values: dict[str, dict[str, object]] = {
        "buy": {"currency": shop.currency, **packs, **lists, "hour": shop.hour, "minutes": shop.minutes},
        "sell": {"margin": shop.margin, "quantities": steps if shop.steps != ONE else None, "round_to": shop.round_to},
        "class": {"people": shop.people, "at_a_table": shop.at_a_table},
    }
    kept = {
        table: {key: to_plain(each) for key, each in leaves.items() if _said(each)} for table, leaves in values.items()
    }
    return {table: leaves for table, leaves in kept.items() if leaves}


def _said(value: object) -> bool:
    return value is not None and value not in ("", [], {})


def _pack_values(pack: Pack | None) -> dict[str, object]:
    """The keys of a pack; a length in m, as it is written."""
    if pack is None:
        return {}
    name = next(key for key, unit in _SIZES.items() if unit == pack.unit)
    size = (
        None
        if pack.size is None
        else exact_length(Length(1000 * pack.size, "m"))
        if pack.unit == "m"
        else to_plain(pack.size)
    )
    values = {"pack": pack.pack or None, name: size, "price": None if pack.price is None else to_plain(pack.price)}
    return {key: value for key, value in values.items() if value is not None}

"""Ranges of kits: shared values and each kit's own, and what cannot be a range."""

from __future__ import annotations

import copy
import random
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.kit.folder_names import LONGEST_FOLDER, RESERVED, folder_name, same_place
from layout.kit.kit import kit_values, read_kit
from layout.kit.merging import leaves_of, without
from layout.kit.range_errors import Refused, said_of_all
from layout.kit.range_values import MOST_COPIES, RANGE_INPUTS, Origin, ranged
from layout.messages.english import ENGLISH
from layout.messages.roles.ranges import RangeHelp
from layout.values.errors import FieldError, FieldErrors
from tests.plain_kits import FLAT, METRICS, ROUND, changed
from tests.strategies import kits, names

SHARED: dict[str, Any] = {key: value for key, value in ROUND.items() if key != "weaving"} | {"name": "Alder frames"}
SMALL = {"name": "Alder frame, small", "weaving": {"height": "20 cm"}}
LARGE = {"name": "Alder frame, large", "weaving": {"height": "30 cm"}}


def refused(values: dict[str, Any]) -> list[str]:
    """What a range is refused with, a line each."""
    with pytest.raises(FieldErrors) as caught:
        ranged(values, METRICS)
    return str(caught.value).split("\n")


def of_range(**changes: object) -> dict[str, Any]:
    """Two kits with these changes."""
    return copy.deepcopy(SHARED | {"kits": [SMALL, LARGE]} | changes)


def apart(values: dict[str, Any], rng: random.Random) -> tuple[dict[str, Any], dict[str, Any]]:
    """The values of a kit dealt to those shared and its own, key by key."""
    shared: dict[str, Any] = {}
    own: dict[str, Any] = {"name": values["name"]}
    for key, value in values.items():
        if isinstance(value, dict):
            for leaf, inner in value.items():
                rng.choice((shared, own)).setdefault(key, {})[leaf] = inner
        elif key != "name":
            shared[key] = value
    return shared, own


@given(kits(), kits(), st.randoms(use_true_random=False))
def test_a_kit_of_a_range_is_the_kit_written_out(one: dict[str, Any], two: dict[str, Any], rng: random.Random) -> None:
    """Values dealt in any way to the range and a kit, over another kit's values, read as that kit by itself."""
    one, two = (dict(each, name=name) for each, name in ((one, "first"), (two, "second")))
    shared, own = apart(two, rng)
    for key, value in one.items():  # what the first kit has and the second does not is shared, and taken out again
        if isinstance(value, dict):
            table = shared.setdefault(key, {})
            for leaf, inner in value.items():
                table.setdefault(leaf, inner)
    wanted = set(leaves_of(two))
    keys = [key for key in leaves_of(shared) if key != "version" and key not in wanted]
    before = copy.deepcopy(shared)
    values = shared | {"name": "range", "version": 1, "kits": [own | {"without": keys}]}
    entry = ranged(values, METRICS).entries[0]
    assert kit_values(read_kit(entry.values, METRICS)) == kit_values(read_kit(two, METRICS))
    assert {key for key, origin in entry.origins.items() if origin.table == "kit"} == set(leaves_of(own))
    assert {key for key, origin in entry.origins.items() if origin.table == "without"} == set(keys) - set(
        leaves_of(own)
    )
    assert shared == before


@given(kits())
def test_a_plain_kit_is_a_range_of_one(values: dict[str, Any]) -> None:
    """It has the very same values, and its copies are one."""
    found = ranged(values, METRICS)
    assert found.alone
    assert not found.copies_said
    assert [(each.values, each.copies) for each in found.entries] == [(values, 1)]


def test_what_is_replaced_whole() -> None:
    """Lists are; tables are merged key by key, however deep."""
    shared = SHARED | {"sett": {"readings": [{"pairs": 17, "window": "5 cm"}], "marking_unit": "4 cm"}}
    shared |= {"weft": {"beads": {"number": 36, "over": "5 cm"}}}
    own = SMALL | {"sett": {"readings": [{"pairs": 20, "window": "5 cm"}]}, "weft": {"beads": {"number": 40}}}
    entry = ranged(shared | {"kits": [own]}, METRICS).entries[0]
    assert entry.values["sett"] == {"readings": [{"pairs": 20, "window": "5 cm"}], "marking_unit": "4 cm"}
    assert entry.values["weft"] == {"beads": {"number": 40, "over": "5 cm"}}
    assert entry.origins["weft.beads.number"] == Origin("kit", "weft.beads.number")
    assert entry.origins["weft.beads.over"] == Origin("range", "weft.beads.over")


def test_copies_and_terms_of_sale() -> None:
    """Those of the range hold for each kit that says none; terms of sale go key by key."""
    sell = {"margin": "40 %", "round_to": 0.5}
    kits_of = [SMALL, LARGE | {"copies": 4, "sell": {"margin": "50 %"}}]
    found = ranged(SHARED | {"copies": 10, "sell": sell, "buy": {"hour": 1}, "kits": kits_of}, METRICS)
    assert [entry.copies for entry in found.entries] == [10, 4]
    assert [entry.sell for entry in found.entries] == [sell, {"margin": "50 %", "round_to": 0.5}]
    assert found.shop == {"buy": {"hour": 1}, "sell": sell}
    assert found.copies_said
    assert not {"copies", "sell", "buy", "kits", "without"} & set(found.entries[0].values)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"kits": []}, 'kits: needs a list of 1 to 24 kits, got []; for example [[kits]] name = "Weir frame, small"'),
        ({"kits": 5}, "kits: needs a list of 1 to 24 kits, got 5"),
        ({"kits": [SMALL, 5]}, "kits of kit 2: needs to be a table"),
        ({"kits": [{"weaving": {}}]}, "name of kit 1: needs a name, got nothing"),
        ({"kits": [dict(SMALL, name="a") for _ in range(25)]}, "kits: needs a list of 1 to 24 kits"),
        ({"copies": 0}, "copies: needs a whole number from 1 to 500, got 0; for example copies = 10"),
        ({"copies": 100_000}, "copies: needs a whole number from 1 to 500, got 100000; for example copies = 10"),
        ({"copies": 2.5}, "copies: needs a whole number from 1 to 500, got 2.5; for example copies = 10"),
        ({"copies": True}, "copies: needs a whole number from 1 to 500, got True"),
        ({"kits": [SMALL | {"copies": 0}]}, 'copies of "Alder frame, small": needs a whole number from 1 to 500'),
        ({"name": ""}, "name: needs a name of 1 to 40 characters"),
        ({"kits": [SMALL | {"name": "x" * 300}]}, "name of kit 1: needs a name of 1 to 40 characters in one line"),
        (
            {"kits": [SMALL | {"without": ["sett.given"]}]},
            (
                "without of \"Alder frame, small\": needs keys that the range says above its kits, got 'sett.given'; "
                'for example without = ["yarns.warp"]'
            ),
        ),
        ({"kits": [SMALL | {"without": "sett"}]}, 'without of "Alder frame, small": needs keys that the range says'),
        ({"kits": [SMALL | {"version": 1}]}, 'version of "Alder frame, small": needs to stand above the kits'),
        ({"kits": [SMALL | {"buy": {}}]}, 'buy of "Alder frame, small": needs to stand above the kits'),
        (
            {"kits": [SMALL, LARGE | {"name": "alder frame small"}]},
            (
                'name of kit 2: needs another name than kit 1 has ("Alder frame, small"; both would lie in '
                "alder-frame-small), got 'alder frame small'; for example name = \"alder frame small, 2\""
            ),
        ),
        (
            {"kits": [SMALL | {"name": "a/b"}]},
            "name of kit 1: needs a name that can be the name of a folder, without",
        ),
        ({"kits": [SMALL | {"name": "a\\b"}]}, "name of kit 1: needs a name that can be the name of a folder"),
        ({"kits": [SMALL | {"name": ".."}]}, "name of kit 1: needs a name that can be the name of a folder"),
        ({"kits": [SMALL | {"name": "!?"}]}, "name of kit 1: needs a name with letters or figures"),
        (
            {"kits": [SMALL | {"name": "CON"}]},
            (
                "name of kit 1: needs another name: Windows keeps \"con\" for itself, got 'CON'; "
                'for example name = "Con frame"'
            ),
        ),
    ],
)
def test_what_cannot_be_a_range(changes: dict[str, object], said: str) -> None:
    """One sentence, with the key and the kit, and an example."""
    values = of_range(**changes)
    lines = refused(values)
    assert len(lines) == 1
    assert lines[0].startswith(said)
    assert "; for example " in lines[0]


def test_all_refusals_come_at_once() -> None:
    """Of every kit."""
    values = of_range(copies=0, kits=[SMALL | {"name": "a/b"}, LARGE | {"copies": 0, "without": ["x"]}, 5])
    assert [line.split(":")[0] for line in refused(values)] == [
        "copies", "name of kit 1", 'copies of "Alder frame, large"', 'without of "Alder frame, large"', "kits of kit 3",
    ]  # fmt: skip


def test_examples_of_refusals_work() -> None:
    """The example of a folder that is taken names one that is free, also a third time."""
    same = [SMALL, dict(LARGE, name="alder frame small"), dict(LARGE, name="alder frame small, 2")]
    assert 'for example name = "alder frame small, 3"' in refused(of_range(kits=same))[0]
    for spec in RANGE_INPUTS:
        assert ENGLISH.say(spec.help)[0].islower()
    assert {spec.help for spec in RANGE_INPUTS} == set(RangeHelp)


# Microsoft, "Naming Files, Paths, and Namespaces" (from memory); typed here once more.
WINDOWS = (
    "con prn aux nul com0 com1 com2 com3 com4 com5 com6 com7 com8 com9 lpt0 lpt1 lpt2 lpt3 lpt4 lpt5 lpt6 lpt7 lpt8"
)
WINDOWS += " lpt9 com\u00b9 com\u00b2 com\u00b3 lpt\u00b9 lpt\u00b2 lpt\u00b3 conin$ conout$"


@pytest.mark.parametrize("word", WINDOWS.split())
@pytest.mark.parametrize("ending", ["", ".txt", ".", " .x", ".tar.gz"])
def test_names_that_windows_keeps_are_refused(word: str, ending: str) -> None:
    """In small letters and capitals, with any ending."""
    for name in (word, word.upper(), word.capitalize()):
        with pytest.raises(FieldError, match="Windows keeps"):
            folder_name(name + ending)


@pytest.mark.parametrize("name", ["Con frame", "console", "auxiliary", "com10", "null", "frame con"])
def test_other_names_are_taken(name: str) -> None:
    """A word that only begins like one is a name."""
    assert folder_name(name)


@given(names)
def test_folders_are_plain_names(name: str) -> None:
    """Small letters and figures with single strokes between them, or one sentence."""
    try:
        folder = folder_name(name.strip())
    except FieldError:
        assert (
            not any(sign.isalnum() for sign in name) or set(name) & set("/\\") or name.split(".")[0].lower() in WINDOWS
        )
        return
    assert folder == folder.lower()
    assert 1 <= len(folder) <= LONGEST_FOLDER
    assert all(part and part.isalnum() for part in folder.split("-"))
    assert folder not in RESERVED
    assert same_place(folder) == same_place(folder.upper())


def test_what_is_wrong_with_every_kit_is_said_once() -> None:
    """And what is wrong with one is said with its name; refusals of a single kit always are."""
    values = of_range(frame=SHARED["frame"] | {"outer_widht": "40 cm"})
    values["kits"][1]["weaving"] = {"height": "1 km"}
    errors = []
    for entry in ranged(values, METRICS).entries:
        with pytest.raises(FieldErrors) as caught:
            read_kit(entry.values, METRICS)
        errors.append(Refused(entry.name, caught.value.errors))
    found = said_of_all(errors)
    assert found is not None
    lines = [str(error).split(": ")[0] for error in found.errors]
    assert lines == ["frame.outer_widht", 'weaving.height of "Alder frame, large"']
    assert said_of_all([Refused("a", ()), Refused("b", ())]) is None
    alone = said_of_all(errors[:1])
    assert alone is not None
    assert str(alone).startswith('frame.outer_widht of "Alder frame, small": ')


def test_another_kind_of_frame_end_goes_without_shared_keys() -> None:
    """A kit on boards among kits on bars leaves out what bars have."""
    frame = {"ends": "flat ends", "thickness": "18 mm"}
    own = SMALL | {"frame": frame, "without": ["frame.bar_diameter"]}
    entry = ranged(SHARED | {"kits": [own]}, METRICS).entries[0]
    plain = changed(FLAT, name=SMALL["name"], weaving=SMALL["weaving"])
    plain["frame"].pop("edge_radius")
    assert read_kit(entry.values, METRICS) == read_kit(plain, METRICS)
    assert without(SHARED, ("frame",)).get("frame") is None
    assert MOST_COPIES == 500

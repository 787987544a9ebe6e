"""The alarm on templates and on kits that are not whole: what is spoilt there must ring, what is not must not."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from kits import NAILS, NOTCHED, PEGGED, font_metrics, parts_of, plan_of

import layout.parts.template.template as template_module
import layout.plan as plan_module
import templates_gen.files.outputs as outputs_module
import templates_gen.files.printed_records as printed_records
from layout.plan import Plan
from layout.products import PRODUCTS, made_by_default
from templates_gen.files.check import Against, check
from templates_gen.files.generate import make
from templates_gen.files.manifest import MANIFEST
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.files.proven import ProofError
from templates_gen.verify.compare import compare
from templates_gen.verify.whole import WHOLE, lacking

KINDS: dict[str, dict[str, object]] = {
    "notched": NOTCHED,
    "notched from the right, top": NOTCHED | {"weaving.start": "right", "weaving.near_end": "top"},
    "held, every second": NOTCHED | {"frame.notch_density": "5 per cm"},
    "held, every one": NOTCHED | {"frame.notch_density": "2.5 per cm"},
    "held, two ends": NOTCHED | {"frame.notch_density": "1.25 per cm"},
    "pegged": PEGGED,
    "pegged, odd, from the right": PEGGED | {"weaving.tie_off": "far end", "weaving.start": "right"},
    "nailed": NAILS | {"frame.nail_length": "12 mm"},
    "nailed, odd, from the right": NAILS | {"weaving.tie_off": "far end", "weaving.start": "right"},
    "tiles of nails": NAILS | {"paper.lay": "tiles", "weaving.near_end": "top"},
    "wound, odd": {"weaving.tie_off": "far end", "weaving.slant": "face straight", "weaving.first_pass": "back"},
    "tiles of notches": NOTCHED | {"paper.lay": "tiles"},
    "tiles of pegs": PEGGED | {"paper.lay": "tiles", "frame.peg_diameter": "6 mm"},
}


def alarm(planned: Plan, file: str) -> str:
    """What the proof says of a file of this plan that is exactly as it was drawn; nothing if it passes."""
    wanted = Outputs(planned, font_metrics()).output(file)
    data = write(wanted)
    found = read(wanted, data)
    assert compare(wanted.sheets, found.sheets).sound
    return "; ".join(findings(planned, wanted, found).sentences)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("file", ["kit.pdf", "strip-near.svg", "strip-far.svg"])
def test_what_is_right_does_not_ring(kind: str, file: str) -> None:
    """Every kind of frame passes, on paper and alone."""
    assert alarm(plan_of(KINDS[kind]), file) == ""


PATCH = pytest.MonkeyPatch


def openings(change: Callable[[list[Any]], list[Any]]) -> Callable[[PATCH], None]:
    """A builder that draws other notches, holes or nails."""
    right = template_module._Draft.openings
    return lambda patch: patch.setattr(template_module._Draft, "openings", lambda draft: change(right(draft)))


def laid(**changes: Callable[[Plan], object]) -> Callable[[PATCH], None]:
    """A warp that is other than the kit asks for."""
    right = plan_module.warp_on

    def wrong(*how: object) -> object:
        warp = right(*how)  # type: ignore[arg-type]
        return replace(warp, **{key: change(warp) for key, change in changes.items()})  # type: ignore[arg-type]

    return lambda patch: patch.setattr(plan_module, "warp_on", wrong)


def one_more(warp: Any) -> object:
    """The last pass for a second time."""
    return (*warp.passes, warp.passes[-1])


ON = ("kit.pdf", "strip-far.svg")
WRONG: dict[str, tuple[str, Callable[[PATCH], None]]] = {
    "no notches but one": ("notched", openings(lambda all_: all_[:1])),
    "notches drawn from the other edge": ("notched", openings(lambda all_: [o._replace(v=-o.v) for o in all_])),
    "rows too near the edge": ("pegged", openings(lambda all_: [o._replace(v=o.v + 0.01) for o in all_])),
    "a row of nails too near the edge": ("nailed", openings(lambda all_: [o._replace(v=o.v + 0.01) for o in all_])),
    "far nails where near ones belong": (
        "nailed",
        laid(far=lambda warp: tuple(x - 4 for x in warp.far)),  # type: ignore[attr-defined]
    ),
    "marks where notches stay empty": (
        "held, every second",
        laid(near=lambda warp: tuple(x + 2 for x in warp.near), far=lambda warp: tuple(x + 2 for x in warp.far)),  # type: ignore[attr-defined]
    ),
    "near and far notches swapped": ("held, two ends", laid(near=lambda w: w.far, far=lambda w: w.near)),  # type: ignore[attr-defined]
    "far pegs where near ones belong": (
        "pegged",
        laid(far=lambda warp: tuple(x - 4 for x in warp.far)),  # type: ignore[attr-defined]
    ),
    "an odd warp drawn even": (
        "wound, odd",
        laid(ends=lambda w: w.ends + 1, near=lambda w: (*w.near, w.near[-1] + 8), passes=one_more),  # type: ignore[attr-defined]
    ),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_template_rings(name: str, monkeypatch: PATCH) -> None:
    """A template that is drawn wrong, and written just so, is found out from the kit alone, on paper and alone."""
    kind, spoil = WRONG[name]
    spoil(monkeypatch)
    planned = plan_of(KINDS[kind])
    assert all(alarm(planned, file) for file in ON)


def test_a_hole_whole_on_no_piece_rings(monkeypatch: PATCH) -> None:
    """In tiles, an outline that every piece lost to the other is missed."""
    openings(lambda all_: [*all_[:12], *all_[13:]])(monkeypatch)
    assert "hole" in alarm(plan_of(KINDS["tiles of pegs"]), "strip-near.pdf")


# A kit that is not whole.


def test_every_product_stands_in_the_list_of_the_whole() -> None:
    """What can be made and what a whole kit must have are known apart, and name the same files.

    The first sheet has no file of its own: it stands in the kit's one file alone.
    """
    assert set(PRODUCTS) == {name for name, wanted in WHOLE.items() if wanted.forms}
    assert set(WHOLE) - set(PRODUCTS) == {"start-here"}


@pytest.mark.parametrize("kind", KINDS)
def test_a_whole_kit_lacks_nothing(kind: str) -> None:
    """The files of every kind of frame, and the parts in each, are those the second list asks for."""
    planned = plan_of(KINDS[kind])
    outputs = Outputs(planned, font_metrics())
    assert lacking(planned.kit, parts_of(outputs), outputs.without) == ()


@pytest.mark.parametrize("name", [name for name, wanted in WHOLE.items() if wanted.forms and not wanted.may])
def test_a_product_left_out_rings(name: str, monkeypatch: PATCH, tmp_path: Path) -> None:
    """A kit from which one product was dropped is refused before anything is kept."""
    boxed = plan_of({"box.says": "Woven on a frame."})
    rest = tuple(each for each in made_by_default(boxed) if each != name)
    monkeypatch.setattr(outputs_module, "made_by_default", lambda _: rest)
    with pytest.raises(ProofError, match=rf"would not be whole: .*{name}\.pdf is missing"):
        make(boxed, tmp_path, font_metrics())
    assert list(tmp_path.iterdir()) == []


def test_a_part_missing_on_paper_rings(monkeypatch: PATCH, tmp_path: Path) -> None:
    """The one file of every sheet must show each part, though every file is there."""
    right = printed_records._on_paper
    monkeypatch.setattr(printed_records, "_on_paper", lambda drawn, file, names: right(drawn, file, tuple(names)[:1]))
    with pytest.raises(ProofError, match=r"kit\.pdf shows strip-far 0 times where 1 was wanted"):
        make(plan_of(), tmp_path, font_metrics())


def test_a_folder_that_lost_a_file_and_its_line_rings(tmp_path: Path) -> None:
    """A file taken away together with its line in the manifest is missed all the same; `--only` asks for no more."""
    make(plan_of(), tmp_path, font_metrics())
    assert [each.problems for each in check([tmp_path], Against(), font_metrics()) if each.problems] == []
    (tmp_path / "strip-far.svg").unlink()
    stated = json.loads((tmp_path / MANIFEST).read_text("utf-8"))
    stated["files"] = [entry for entry in stated["files"] if entry["file"] != "strip-far.svg"]
    (tmp_path / MANIFEST).write_text(json.dumps(stated), "utf-8")
    (first, *_) = check([tmp_path], Against(), font_metrics())
    assert first.problems == ("strip-far.svg is missing, which this kit must have",)
    make(plan_of(), tmp_path / "one", font_metrics(), ["strip-near"])
    assert all(each.problems == () for each in check([tmp_path / "one"], Against(), font_metrics()))

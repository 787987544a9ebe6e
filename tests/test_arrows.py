"""The arrows of the project, read from the imports of every module: they point downward and nowhere else."""

from __future__ import annotations

import ast
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from graphlib import TopologicalSorter
from pathlib import Path
from types import FunctionType

import pytest

from layout.frames.kinds.frame_end import FrameEnd

ROOT = Path(__file__).resolve().parent.parent
HEAVY = ("reportlab", "svgwrite", "ezdxf", "pypdf", "pint", "fontTools", "segno")
HEAVY += (
    "numpy",
    "PIL",
    "zxingcpp",
    "pypdfium2",
    "flask",
    "werkzeug",
    "jinja2",
    "waitress",
    "tomlkit",
    "tqdm",
    "distributed",
)

RANKS: tuple[tuple[str, ...], ...] = (
    ("values", "messages"),
    ("drawing",),
    ("sett", "frames", "yarns"),
    ("yardage",),
    ("kit",),
    ("warps",),
    ("estimate",),
    ("plan",),
    ("box",),
    ("parts", "cutting", "nesting"),
    ("paper",),
    ("products",),
    ("run",),
)
"""From the ground up. A module imports from its own rank or a lower one; a folder is one rank for all its files."""


def modules(package: str) -> dict[str, Path]:
    """Every module of a package by its dotted name."""
    found = {}
    for path in sorted((ROOT / package).rglob("*.py")):
        parts = path.relative_to(ROOT).with_suffix("").parts
        found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


LAYOUT, OUTER = modules("layout"), modules("templates_gen")
EVERY = LAYOUT | OUTER


@cache
def imported(path: Path, *, top_only: bool = False) -> tuple[str, ...]:
    """The dotted names a module imports; of `from a import b` both a and a.b."""
    return tuple(_imported(path, top_only=top_only))


def _imported(path: Path, *, top_only: bool) -> Iterator[str]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for node in tree.body if top_only else ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative imports hide the arrow"
            yield node.module or ""
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def under(name: str, *packages: str) -> bool:
    """Whether a dotted name is one of these packages or lies in one."""
    return any(name == package or name.startswith(package + ".") for package in packages)


def rank(name: str) -> int:
    """The rank of a module of the layout."""
    part = name.split(".")[1]
    return next(k for k, names in enumerate(RANKS) if part in names)


@pytest.mark.parametrize("name", LAYOUT)
def test_the_layout_is_pure(name: str) -> None:
    """It imports nothing of the outer package, no writer, reader or font library, nothing that touches the world."""
    outer = ("templates_gen", "reportlab", "svgwrite", "pypdf", "click", "fontTools", "ezdxf")
    world = ("time", "datetime", "random", "os", "pathlib", "io", "sys", "tempfile", "shutil", "subprocess", "secrets")
    assert [each for each in imported(LAYOUT[name]) if under(each, *outer, *world)] == []


@pytest.mark.parametrize("name", LAYOUT)
def test_the_layout_neither_opens_nor_prints(name: str) -> None:
    """No module of the layout calls open, print or input."""
    nodes = ast.walk(ast.parse(LAYOUT[name].read_text("utf-8")))
    called = {node.func.id for node in nodes if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)}
    assert called.isdisjoint({"open", "print", "input"})


def test_pint_is_used_in_one_place() -> None:
    """Only the units know pint, and they import it when they need it."""
    users = [name for name, path in EVERY.items() if any(under(each, "pint") for each in imported(path))]
    assert users == ["layout.values.units"]
    assert not any(under(each, "pint") for each in imported(LAYOUT["layout.values.units"], top_only=True))


def test_every_module_has_a_rank() -> None:
    """The table of ranks names each module of the layout once, and nothing else."""
    named = [name for names in RANKS for name in names]
    assert sorted(named) == sorted({name.split(".")[1] for name in LAYOUT if "." in name})


@pytest.mark.parametrize("name", [name for name in LAYOUT if "." in name])
def test_arrows_point_downward(name: str) -> None:
    """A module imports from its own rank or from lower ones."""
    above = [each for each in imported(LAYOUT[name]) if each in LAYOUT and "." in each and rank(each) > rank(name)]
    assert above == []


def test_no_arrows_go_round() -> None:
    """The imports of both packages, wherever they stand in a module, form no circle."""
    graph = {
        name: {each for each in imported(path) if each in EVERY and each != name and "." in each}
        for name, path in EVERY.items()
    }
    order = list(TopologicalSorter(graph).static_order())
    assert len(order) >= len(EVERY) - 2


@pytest.mark.parametrize("name", [name for name in OUTER if under(name, "templates_gen.readers")])
def test_readers_know_no_writer(name: str) -> None:
    """A reader imports neither our writers nor the libraries that write."""
    writers = ("templates_gen.writers", "reportlab", "svgwrite", "ezdxf")
    assert [each for each in imported(OUTER[name]) if under(each, *writers)] == []


@pytest.mark.parametrize("name", [name for name in OUTER if under(name, "templates_gen.writers")])
def test_writers_know_no_reader(name: str) -> None:
    """A writer imports no reader and knows the layout by its shapes, sheets and pens alone."""
    known = ("layout.values.errors", "layout.drawing")
    bad = [each for each in imported(OUTER[name]) if under(each, "templates_gen.readers", "pypdf")]
    assert bad == []
    assert [each for each in imported(OUTER[name]) if under(each, "layout") and not under(each, *known)] == []


PROOFS = [name for name in OUTER if under(name, "templates_gen.verify")]
FOR_PROOFS = (
    "layout.drawing.pens",
    "layout.drawing.shapes",
    "layout.drawing.sheet",
    "layout.values.errors",
    "layout.values.forces",
    "layout.frames.frame",
    "layout.frames.kinds",
    "layout.frames.strength",
    "layout.kit.box",
    "layout.kit.kit",
    "layout.messages",
    "layout.values.numerals",
    "layout.plan",
    "layout.values.units",
)
"""What any proof may know of the layout: what a drawing is made of, the kit, how numbers are said, messages, and the
plan for what `OF_THE_PLAN` names. So no setting, warp, amount, load, part or paper that a proof checks.
"""
FOR_ONE_PROOF = {
    "bending": ("layout.frames.materials",),  # the table of materials
    "combs": ("layout.yarns.diameter",),  # how thick a cord is that was only weighed
    "cut_parts.job_amounts": ("layout.cutting.products",),  # a comparison with the parts that its boards must hold
}
OF_THE_PLAN = {
    "kit": None,
    "warp": {"sett"},
    "amounts": {"picks_per_cm"},
    "words": {"say", "listed", "figure", "paragraph", "all_of"},
    "refused": None,
}
REPEATED = {
    "woven_mm", "woven_rows", "warp_total_m", "weft_total_g", "weft_total_m",
    "warp_per_wind_mm", "weft_tails_m", "leashes", "shed_stick_mm", "bubble_rise",
    "fringe_near_mm", "fringe_far_mm",
}  # fmt: skip
"""What proofs of what is printed take from a plan: the sett, which is proven first, picks that may be a guess, and
what the stock refuses, which has no file in a whole kit."""


@pytest.mark.parametrize("name", PROOFS)
def test_a_proof_finds_what_must_be_on_its_own(name: str) -> None:
    """No proof imports what it checks; the stock, which is an input like the kit, is known to proofs of what is cut."""
    own = next((libraries for proof, libraries in FOR_ONE_PROOF.items() if name.endswith(f".{proof}")), ())
    allowed = (*FOR_PROOFS, *own, *(("layout.cutting.stock.stock",) if _is_of_cutting(name) else ()))
    found = [each for each in imported(OUTER[name]) if each in LAYOUT and each != "layout"]
    assert [each for each in found if not under(each, *allowed)] == []


CODES_READ = [name for name in OUTER if under(name, "templates_gen.verify", "templates_gen.readers")]


@pytest.mark.parametrize("name", CODES_READ)
def test_what_reads_and_proves_a_code_makes_none(name: str) -> None:
    """Neither a reader nor a proof imports what makes the codes of sheets."""
    assert [each for each in imported(OUTER[name]) if under(each, "templates_gen.codes")] == []


OF_FRAME_ENDS = (
    "half_turn_mm",
    "inset_mm",
    "deep_mm",
    "wide_mm",
    "pass_mm",
    "turn_mm",
    "beam",
    "notches",
    "cut_parts",
    "pulled_by",
)
"""What the layout computes from the sizes of a frame end; a proof finds these itself."""


@pytest.mark.parametrize("name", PROOFS)
def test_a_proof_takes_of_frame_ends_their_sizes_alone(name: str) -> None:
    """Only fields of a kind of frame end, nothing that the layout computes from them."""
    nodes = ast.walk(ast.parse(OUTER[name].read_text("utf-8")))
    assert [node.attr for node in nodes if isinstance(node, ast.Attribute) and node.attr in OF_FRAME_ENDS] == []


def test_what_frame_ends_compute_is_listed() -> None:
    """Every property and method of a kind of frame end stands in that list."""
    classes = [FrameEnd, *FrameEnd.__subclasses__()]
    found = {
        name for each in classes for name, value in vars(each).items() if isinstance(value, property | FunctionType)
    }
    assert {name for name in found if not name.startswith("_")} == set(OF_FRAME_ENDS)


def _is_of_cutting(name: str) -> bool:
    return ".cut_parts" in name or name.rpartition(".")[2].startswith("whole")


@pytest.mark.parametrize("name", [name for name in PROOFS if not _is_of_cutting(name)])
def test_a_proof_takes_of_the_plan_only_what_is_proven(name: str) -> None:
    """Kit, sett and picks; a proof that read the warp or a part from the plan would find what the builder found.

    The first sheet, the table of what to buy, the leaflet and the cards repeat figures whose formulas have tests of
    their own (`REPEATED`).
    """
    numbers = (
        ".start_numbers",
        ".overview_numbers",
        ".to_buy_numbers",
        ".leaflet_numbers",
        ".cards_numbers",
        ".help_numbers",
    )
    taken, repeats = set(), name.endswith(numbers)
    for node in ast.walk(ast.parse(OUTER[name].read_text("utf-8"))):
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id == "plan":
            taken.add(node.attr)
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Attribute):
            plan = node.value.value
            if isinstance(plan, ast.Name) and plan.id == "plan" and node.value.attr != "kit":
                known = (OF_THE_PLAN.get(node.value.attr) or set()) | (REPEATED if repeats else set())
                assert node.attr in known, f"plan.{node.value.attr}.{node.attr}"
    assert taken <= set(OF_THE_PLAN)


@pytest.mark.parametrize("name", [name for name in LAYOUT if under(name, "layout.messages")])
def test_messages_know_nothing_of_the_work(name: str) -> None:
    """A catalogue knows roles and words alone, no number, kit or part."""
    found = [each for each in imported(LAYOUT[name]) if each in LAYOUT and each != "layout"]
    assert [each for each in found if not under(each, "layout.messages")] == []


def test_the_command_line_starts_light() -> None:
    """Importing the commands loads none of the heavy libraries."""
    said = f"import sys, templates_gen.screen.cli; print([name for name in {HEAVY} if name in sys.modules])"
    run = subprocess.run([sys.executable, "-c", said], capture_output=True, text=True, cwd=ROOT, check=True)
    assert run.stdout.strip() == "[]"

"""Exact-scale templates for frame looms, from Python: load, plan, sheet, make, check.

    import templates_gen

    kit = templates_gen.load("demo.toml")
    numbers = templates_gen.plan(kit)
    svg = templates_gen.sheet(kit, "strip-near.svg")
    report = templates_gen.make(kit, "strips")
    checked = templates_gen.check("strips")
    seen = templates_gen.measure("scan.png", kit="strips")

Every file is read back and proven before you get it. All lengths are millimetres. What cannot be used is refused with a
LayoutError, whose text is one sentence for a person. Importing this module loads nothing else; each function imports
what it needs.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from concurrent.futures import Executor

    from layout.cutting.stock.stock import Stock
    from layout.drawing.printer import Printer
    from layout.kit.kit import Kit
    from layout.messages.catalogue import Catalogue
    from layout.plan import Plan
    from templates_gen.files.checked import Checked
    from templates_gen.files.generate import Report
    from templates_gen.files.run import RunReport
    from templates_gen.inputs.measured_check import Measured
    from templates_gen.inputs.range_file import Range
    from templates_gen.measuring.outcome import Outcome
    from templates_gen.ordering.result import Result

__all__ = [
    "check",
    "load",
    "load_printer",
    "load_range",
    "load_stock",
    "make",
    "make_run",
    "measure",
    "measured_printer",
    "orders",
    "plan",
    "printer_check",
    "sheet",
    "words",
]


def load(path: str | Path | None = None) -> Kit:
    """The kit that the TOML file at `path` describes; without a path, the built-in demo kit.

    Raises KitFileError where the file cannot be read, FieldErrors, which names every key at once, where it cannot be
    used. Both are LayoutErrors.
    """
    from templates_gen.inputs import kit_file

    return kit_file.demo() if path is None else kit_file.load(path)


def load_range(path: str | Path) -> Range:
    """The kits of the TOML file at `path`, which may list several under `[[kits]]`; a plain kit file is a range of one.

    Raises KitFileError or FieldErrors, as `load` does; refusals name the kit.
    """
    from templates_gen.inputs import range_file

    return range_file.load_range(path)


def load_stock(path: str | Path | None = None) -> Stock:
    """The stock (board, kerf, operations of a cutter) of the TOML file at `path`; without one, 3 mm birch plywood.

    Raises StockFileError or FieldErrors, as `load` does.
    """
    from templates_gen.inputs import stock_file

    return stock_file.built_in() if path is None else stock_file.load(path)


def plan(kit: Kit) -> Plan:
    """The numbers of a kit: its warp and sett, amounts of yarn, the pull on the frame, notes and warnings.

    `plan.warp` says where each end lies, in mm from the middle of the weaving, left negative; setts and marks are exact
    fractions. Raises FieldError, which names the key to change, where the kit cannot be woven.
    """
    from templates_gen.files.kept import planned

    return planned(kit)


def load_printer(name: str) -> Printer:
    """The printer that is kept under a name; FieldError where there is none, PrinterFileError for a file of no use."""
    from templates_gen.inputs import printer_store

    return printer_store.load(name, "name")


def sheet(kit: Kit, file: str, stock: Stock | None = None, printer: Printer | str | None = None) -> bytes:
    """One file of a kit, proven, without writing it: "strip-near.svg", "kit.pdf", "comb.dxf".

    `file` is the name of a product and the form, as `make --only` takes it; what is cut is cut from `stock` (without
    one, from 3 mm birch plywood). What is printed is corrected for a `printer`, or the one that is kept under a name.
    Only this file is drawn. What is not one file, such as several boards, is refused.

    Raises FieldError for a name that this kit has no file of, or a part that does not fit its paper or stock, and
    ProofError where the file does not come back as it was drawn.
    """
    from templates_gen.files.one_file import proven_bytes
    from templates_gen.lettering.fonts import metrics

    return proven_bytes(_printed_on(plan(kit), printer), file, lambda: stock or load_stock(), metrics())


def make(
    kit: Kit,
    folder: str | Path,
    only: Iterable[str] | None = None,
    stock: Stock | None = None,
    printer: Printer | str | None = None,
) -> Report:
    """Writes every file of a kit into `folder`, or those that `only` names, each read back from disk and proven.

    `only` holds names of products or files, as `make --only` takes them. What is printed is corrected for a `printer`,
    or the one that is kept under that name. All files are moved into place together, or none. The report lists the
    files with sheets, marks and the largest deviation in mm, and notes on what was left out.

    Raises FieldError where the kit cannot be laid out, ProofError where a file did not come back right, FaultError
    where the folder cannot be written.
    """
    from templates_gen.files import generate
    from templates_gen.inputs.families import products_of
    from templates_gen.lettering.fonts import metrics

    numbers = _printed_on(plan(kit), printer)
    names = products_of(numbers, tuple(only)) if only is not None else None
    return generate.make(numbers, Path(folder), metrics(), names, stock=stock or load_stock())


def _printed_on(numbers: Plan, printer: Printer | str | None) -> Plan:
    if printer is None:
        return numbers
    from templates_gen.files.for_printer import with_printer

    return with_printer(numbers, load_printer(printer) if isinstance(printer, str) else printer)


def make_run(
    kits: Range, folder: str | Path, stock: Stock | None = None, printer: Printer | str | None = None
) -> RunReport:
    """Writes every file of every kit of a range into a folder of its own below `folder`, and what is of all of them.

    Each is read back from disk and proven; no folder changes before all are. The report holds that of each kit. Raises
    what `make` raises; refusals name the kit.
    """
    from templates_gen.files import run
    from templates_gen.lettering.fonts import metrics

    known = load_printer(printer) if isinstance(printer, str) else printer
    return run.make_run(kits, Path(folder), metrics(), stock=stock or load_stock(), printer=known)


def orders(
    table: str | Path,
    kits: Range | str | Path,
    folder: str | Path,
    *,
    only: Iterable[str] = (),
    stock: Stock | None = None,
    printer: Printer | str | None = None,
    workers: int | None = None,
    executor: Executor | None = None,
    check: bool = False,
    print_run: int | None = None,
    tell: Callable[[str], None] = lambda _: None,
) -> Iterator[Result]:
    """Makes the orders that the rows of a CSV file ask for, and yields what became of each row as it comes.

    `kits` is a range, or the path of its file; each order has a folder of its own below `folder`, every file in it
    proven. What lies there unchanged is not made again. A `Result` has its `line`, order `number` and `kit`; `state` is
    "made", "unchanged" or "failed", and then `problems` are (column, sentence). With `check` rows are only read,
    nothing is written, and those that can be made are "readable". Results come in any order.

    Nothing is made before the first result is asked for. After the last one, report.csv, totals.csv and to-buy.csv are
    written into `folder`, and files of at most `print_run` sheets with the parts of all orders, where that is given.
    Whoever stops before (`break`, an error, Ctrl-C) leaves these as they were; what was made stays, and the same call
    goes on from there.

    `only` are names as `make` takes them; without any, strips, spacing guide and leaflet are made, as PDF. So many
    `workers` make them, processes of their own, by default one a core; with 1 this process does. Since they are begun
    anew, a script with several must keep what it does under `if __name__ == "__main__":`. Or they are made by an
    `executor` of `concurrent.futures`, also on other machines that have `folder` under the same path. `tell` hears
    sentences: of what a stopped run left and was put right, or that the table was changed meanwhile.

    Raises at once, as LayoutErrors, what a range, a stock or `only` cannot be, and a table that cannot be read; while
    results come, FaultError where the folder is that of another run, or cannot be written any more.
    """
    from templates_gen.ordering.order_run import RunOptions, checked_print_run, checked_workers, job_of, made
    from templates_gen.ordering.order_table import open_orders

    found = load_range(kits) if isinstance(kits, str | Path) else kits
    rows = open_orders(Path(table), found)
    known = load_printer(printer) if isinstance(printer, str) else printer
    job = job_of(found, Path(folder), only, stock, known)
    options = RunOptions(checked_workers(workers), executor, check, checked_print_run(print_run), tell)
    return made(rows, job, options)


def printer_check(
    folder: str | Path, paper: str = "common", language: str = "en", printer: Printer | str | None = None
) -> Report:
    """Writes printer-check.pdf into `folder`: a sheet to measure a printer by, read back and proven.

    `paper` and `language` are as in a kit file: "a4", "148 x 210 mm"; "en", "es", "de", "fr". With a `printer`, or the
    name of one that is kept, it is corrected for that one. Raises FieldError for what there is not, or a printer more
    than 3 % off, ProofError where the file did not come back right, FaultError where it cannot be written.
    """
    from templates_gen.files.for_printer import checked_printer
    from templates_gen.files.printer_check import CheckAsked, make_check
    from templates_gen.inputs.printer_check_options import check_paper
    from templates_gen.lettering.fonts import metrics

    known = load_printer(printer) if isinstance(printer, str) else printer
    asked = CheckAsked(check_paper(paper, language), checked_printer(known))
    return make_check(asked, Path(folder), metrics())


def measured_printer(
    x: str,
    y: str,
    across: str | None = None,
    across_2: str | None = None,
    *,
    within: str | None = None,
    paper: str = "common",
    made_for: str | None = None,
    store: str | None = None,
) -> Measured:
    """What a printer does, from the spans of its printer check as a rule shows them: "189.9 mm", "7 15/32 in".

    `x` is from A to B, `y` from C to D; of the diagonals `across` (E to F) and `across_2` (G to H) one is enough.
    `within` is how far off a reading may be; without it half of its last digit, at least 0.25 mm. `made_for` names the
    stored printer that the sheet was corrected for, `store` the name to keep this one under. Its `scale` is what comes
    out of one millimetre across, up and aslant, each within `within` at 95 % (formula: `layout.drawing.spans`).

    Raises FieldError, which names the option of the command, for what cannot be read, for spans that contradict each
    other, and for a printer that is more than 3 % off.
    """
    from templates_gen.inputs.measured_check import CheckOptions, measured_check

    return measured_check(CheckOptions(x, y, across, across_2, within, paper, made_for, store))


def words(language: str) -> Catalogue:
    """What is said of kits in a language: "en", "es", "de" or "fr".

    `words("de").again(note)` is a note, warning or reason of a plan in German, and `error.said(words("de"))` a refusal.
    What the language lacks is said in English. Raises CatalogueError, a LookupError, for a language that there is not.
    """
    from templates_gen.languages.catalogues import catalogue_of

    return catalogue_of(language)


def check(*paths: str | Path, kit: Kit | None = None, stock: Stock | None = None) -> list[Checked]:
    """Files, folders or their zips read back: each against the inputs that it carries, or the `kit` and `stock` given.

    One entry a file: its name, the largest deviation in mm, and `problems`, which is empty where the file is right.
    What cannot be read is an entry too; nothing is raised for it.
    """
    from templates_gen.files.check import Against
    from templates_gen.files.check import check as check_paths
    from templates_gen.lettering.fonts import metrics

    return check_paths(map(Path, paths), Against(kit, stock), metrics())


def measure(
    *scans: str | Path,
    kit: str | Path | Kit | None = None,
    dpi: float | None = None,
    known: Mapping[str, float] | None = None,
    known_within: float = 0.2,
    scanner_scale: tuple[float, float] | None = None,
    scanner_within: float = 0.001,
) -> Outcome:
    """Everything that is measured on flatbed scans of printed sheets; needs the extra `scan`.

    Marks are measured on sheets of `kit`: a kit, or the path of a kit file, a range, a folder of made files or one PDF
    file. `dpi` is for scans that do not say their resolution. `known` are distances in mm between two targets by a
    rule, read to `known_within` mm: by "top", "bottom", "left", "right", "rising" or "falling". `scanner_scale` is what
    the scanner makes of 1 mm across and along its bed, known to `scanner_within` as a share.

    Of each sheet in `sheets` you get its scale in both directions, ratio and skew, each with its 95 % and whether the
    scanner's own error is out of it (`sure`), and how far each mark is off, in mm; `joined` are parts that lie on
    several sheets. What gives no number to be trusted is a sentence in `refused`. Raises LayoutError for a kit that
    cannot be used, and for a distance that cannot be that of its targets.
    """
    from templates_gen.inputs.measure_options import reference_of
    from templates_gen.measuring.measuring import measured_on

    reference = reference_of(known or {}, known_within, scanner_scale, scanner_within)
    place = Path(kit) if isinstance(kit, str) else kit
    return measured_on([Path(scan) for scan in scans], place, reference, dpi)

"""Where measured printers are kept: one TOML file each, in the folder that the system has for what a person chose."""

from __future__ import annotations

import os
from pathlib import Path
from typing import NamedTuple

from layout.drawing.printer import Printer
from layout.kit.folder_names import folder_name, same_place
from layout.kit.likeness import closest
from layout.messages.roles.ranges import RangeNeed
from layout.values.errors import FieldError, LayoutError, shown, shown_path
from templates_gen.disk.exchange import LOCK, Exchange
from templates_gen.disk.faults import fault
from templates_gen.disk.locks import locked
from templates_gen.inputs.printer_values import (
    DECIMALS,
    VERSION,
    printer_values,
    read_printer,
    read_printer_name,
    rounded,
    without_version,
)
from templates_gen.inputs.toml_file import TomlFiles, named_file
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.printers import PrinterFile, PrinterNeed

FOLDER = "TEMPLATES_GEN_PRINTERS"
"""The variable of the environment that names another folder for them."""
MOST_PRINTERS = 200
"""More are not kept: nobody has so many, and all of them are read for a list."""
EXAMPLE = "office"
_SUFFIX = ".toml"
_NAMES = {
    RangeNeed.NO_PATH: PrinterNeed.NO_PATH,
    RangeNeed.RESERVED: PrinterNeed.RESERVED,
    RangeNeed.NO_LETTER: PrinterNeed.NO_LETTER,
}


class PrinterFileError(LayoutError):
    """A printer file that cannot be read or used; the sentence names it, and the key."""


_FILES = TomlFiles(File.PRINTER, "x = 0.9981", "", PrinterFileError)


def folder() -> Path:
    """The folder of the printers, which need not be there: that of `FOLDER`, else where the system keeps such files."""
    if named := os.environ.get(FOLDER):
        return Path(named)
    from platformdirs import user_config_path  # not needed before a printer is asked for

    return user_config_path("templates-gen", appauthor=False) / "printers"


def store(printer: Printer, field: str = "--store") -> Path:
    """Keeps a printer under its name, in the place of one with the same name, and says in which file.

    Shares are kept with six decimals. Raises FieldError at `field` for a name that no file can have, or where it is
    further off than 3 %; FaultError where the file cannot be written; then nothing has changed.
    """
    place = _place(printer.name, field)
    values = printer_values(rounded(printer))
    read_printer(values, metrics())
    if not place.exists() and len(_files()) >= MOST_PRINTERS:
        raise PrinterFileError(
            message(PrinterFile.TOO_MANY, folder=shown_path(place.parent), number=len(_files()), most=MOST_PRINTERS)
        )
    with Exchange(place.parent, place.name) as exchange:
        exchange.write(place.name, _text(values).encode())
        exchange.settle()
    return place


def load(name: str, field: str = "--printer") -> Printer:
    """The printer that is kept under a name; capitals do not count.

    Raises FieldError at `field` where there is none, with the name that was probably meant; PrinterFileError where its
    file cannot be used.
    """
    return _read(_known(name, field))


def names() -> tuple[str, ...]:
    """The names of all printers, in order; where a file cannot be used, that of the file."""
    return tuple(each.path.stem if isinstance(each.printer, LayoutError) else each.printer.name for each in kept())


class Kept(NamedTuple):
    """A file of a printer: what it says, or why it cannot be used."""

    path: Path
    printer: Printer | LayoutError


def kept() -> tuple[Kept, ...]:
    """Every file of a printer, in order of their names."""
    return tuple(Kept(path, _or_why(path)) for path in _files())


def place_of(name: str, field: str = "NAME") -> Path:
    """The file of the printer that is kept under a name; FieldError at `field` where there is none."""
    return _known(name, field)


def forget(name: str, field: str = "NAME") -> Path:
    """Takes a printer away, also one whose file cannot be used, and says which file that was.

    Raises FieldError at `field` where there is none, FaultError where the file cannot be taken away.
    """
    place = _known(name, field)
    with locked(place.with_name(LOCK), place):
        try:
            place.unlink()
        except OSError as error:
            raise fault(Fault.REPLACE, place, error) from error
    return place


def _files() -> list[Path]:
    """The files that are kept, in order; a folder that is not there holds none."""
    try:
        inside = [path for path in folder().iterdir() if path.suffix == _SUFFIX and not path.name.startswith(".")]
    except FileNotFoundError:
        return []
    except OSError as error:
        raise fault(Fault.READ, folder(), error, after="") from error
    return sorted(inside)[:MOST_PRINTERS]


def _or_why(path: Path) -> Printer | LayoutError:
    try:
        return _read(path)
    except LayoutError as error:
        return error


def _read(path: Path) -> Printer:
    try:
        printer = read_printer(without_version(_FILES.values(path)), metrics())
        if same_place(_file_name(printer.name, "name")) != same_place(path.stem):
            raise OptionError(
                "name", PrinterNeed.OTHER_NAME, shown(printer.name), f'name = "{path.stem}"', file=path.name
            )
    except FieldError as error:
        raise PrinterFileError(message(PrinterFile.WRONG, file=named_file(path), error=str(error))) from None
    return printer


def _known(name: str, field: str) -> Path:
    """The file that is there under a name."""
    wanted = same_place(_file_name(name, field))
    files = {same_place(path.stem): path for path in _files()}
    if wanted in files:
        return files[wanted]
    known = names()
    if not known:
        raise OptionError(field, PrinterNeed.NONE_YET, shown(name), _typed(field, EXAMPLE))
    values = {"known": listed([f'"{each}"' for each in known[:_MOST_NAMED]])}
    small = {each.lower(): each for each in known}
    if near := closest(name.lower(), small):
        meant = small[near]
        raise OptionError(field, PrinterNeed.KNOWN_MEANT, shown(name), _typed(field, meant), meant=meant, **values)
    raise OptionError(field, PrinterNeed.KNOWN, shown(name), _typed(field, known[0]), **values)


_MOST_NAMED = 10


def _place(name: str, field: str) -> Path:
    """The file of a name, the one that is there where it differs in capitals alone."""
    stem = _file_name(name, field)
    there = (path for path in _files() if same_place(path.stem) == same_place(stem))
    return next(there, folder() / f"{stem}{_SUFFIX}")


def _file_name(name: str, field: str) -> str:
    """The name of a file for a printer called `name`: small letters and figures, "-" for all else."""
    try:
        return folder_name(read_printer_name(name, metrics()))
    except FieldError as error:
        needed = _NAMES.get(error.needed.role)  # type: ignore[call-overload]
        if needed is None:
            raise error.at(field, _typed(field, EXAMPLE)) from None
        raise OptionError(field, needed, error.got, _typed(field, EXAMPLE), **error.needed.values) from None


def _typed(field: str, name: str) -> str:
    """A name as it is typed behind an option, or as a value of a file."""
    return f'{field} "{name}"' if field.startswith("--") else f'"{name}"'


def _text(values: dict[str, object]) -> str:
    """The TOML file that says these values."""
    lines = [f"version = {VERSION}", *(f"{key} = {_toml(value)}" for key, value in values.items())]
    return "\n".join([message(PrinterFile.HEAD), *lines, ""])


def _toml(value: object) -> str:
    if isinstance(value, dict):
        return "{" + ", ".join(f"{key} = {_toml(share)}" for key, share in value.items()) + "}"
    if isinstance(value, float):
        return f"{value:.{DECIMALS}f}".rstrip("0") + ("0" if value == round(value) else "")
    return '"' + str(value).replace("\\", "\\\\").replace('"', '\\"') + '"'

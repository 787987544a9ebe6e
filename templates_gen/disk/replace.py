"""Replacing one file: it is the old one or the new one at every moment."""

from __future__ import annotations

import shutil
from contextlib import suppress
from pathlib import Path

from templates_gen.disk.faults import fault
from templates_gen.disk.plain import token, write_new
from templates_gen.messages.roles.disk import Fault


def replace_file(path: Path, data: bytes, called: str = "") -> None:
    """Puts `data` in the place of the file at `path`; a link stays one, what it leads to is replaced.

    Raises FaultError where that cannot be, which names the file by its path, or as it is `called`; the old file stays.
    """
    place = path.resolve()
    new = place.with_name(f".{place.name}.{token()}.part")
    try:
        place.open("r+b").close()  # one that must not be written to is not replaced either
        write_new(new, data)
        shutil.copymode(place, new)
        new.replace(place)
    except OSError as error:
        raise fault(Fault.REPLACE, Path(called) if called else path, error) from error
    finally:
        with suppress(OSError):
            new.unlink(missing_ok=True)

"""The programs that stand between a PDF file and a printer, as systems call them; tests without one are skipped.

Where NEED_PROGRAMS is set, as `.ci/run` does, they fail instead. It names a file that is there once the programs are
installed, which may go on while other tests run.
"""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Callable, Mapping
from pathlib import Path
from time import monotonic, sleep

import pytest

PPD = Path(__file__).parent / "paper.ppd"
"""A printer that is nothing but its papers."""
_FILTERS = "/usr/lib/cups/filter"
_PATIENCE = 300  # seconds
_TABLOID = {"tabloid": "11x17"}


def program(name: str) -> str:
    """Where the program is; the test is skipped, or fails, where it is not."""
    needed = os.environ.get("NEED_PROGRAMS")
    end = monotonic() + _PATIENCE
    while needed and not Path(needed).exists() and monotonic() < end:
        sleep(1)
    found = shutil.which(name, path=f"{os.environ.get('PATH', '')}:{_FILTERS}")
    if found is None:
        packages = "cups-filters, ghostscript, poppler-utils, chromium-driver, shellcheck"
        said = f"{name} is not installed (Debian: {packages})"
        if needed:
            pytest.fail(said)
        pytest.skip(said)
    return found


def _run(*command: str | Path, **given: str) -> bytes:
    environment = {"PATH": os.environ["PATH"], **given}
    return subprocess.run(command, check=True, capture_output=True, env=environment, timeout=120).stdout


def pdftopdf(source: Path, paper: str, options: str = "") -> bytes:
    """What the CUPS filter sends to a printer with that paper: with the options that a print queue passes."""
    asked = f"media={paper} PageSize={paper} {options} finishings=3 number-up=1 job-originating-host-name=localhost"
    return _run(program("pdftopdf"), "1", "user", "sheets", "1", asked, source, PPD=str(PPD))


def ghostscript(source: Path, paper: str, *options: str, device: str = "pdfwrite") -> bytes:
    """Written again by Ghostscript, on its own page or (with a paper) on that, as printers with PostScript do."""
    name = paper.lower()
    fixed = [f"-sPAPERSIZE={_TABLOID.get(name, name)}", "-dFIXEDMEDIA"] if paper else []
    return _run(program("gs"), "-q", "-dSAFER", f"-sDEVICE={device}", *fixed, *options, "-o", "-", source)


def pdftocairo(source: Path, paper: str, *options: str) -> bytes:
    """Written again by poppler, as desktop viewers print, on its own page or on that paper."""
    on = ["-paper", {"Letter": "letter"}.get(paper, paper)] if paper else []
    return _run(program("pdftocairo"), "-pdf", *on, *options, source, "-")


WAYS: Mapping[str, Callable[..., bytes]] = {"pdftopdf": pdftopdf, "Ghostscript": ghostscript, "pdftocairo": pdftocairo}

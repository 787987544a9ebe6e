"""The files that come with the program, as text.

They lie beside this module. The library for files of packages would open archives too, and takes longer to load than
some commands to run.
"""

from __future__ import annotations

from pathlib import Path


def text_of(name: str) -> str:
    """The text of the file of that name."""
    return Path(__file__).with_name(name).read_text(encoding="utf-8")

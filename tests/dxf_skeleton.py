"""Makes templates_gen/data/skeleton.dxf again: what ezdxf writes round the outlines of a drawing, its places marked.

Run it after a new version of ezdxf writes something else; read the difference.
"""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

from cut_plates import ABOUT, plate
from dxf_by_ezdxf import exported

FILE = Path(__file__).parents[1] / "templates_gen" / "data" / "skeleton.dxf"
_WIDTH, _HEIGHT = 123.45678, 98.76543  # found nowhere else in the file


def made() -> str:
    """The skeleton, from a plate as ezdxf writes it."""
    sheet = replace(plate(), width=_WIDTH, height=_HEIGHT)
    operations = ABOUT.operations or {}
    text = exported(sheet, operations, {name: k for k, name in enumerate(operations, 1)})
    head, outline, rest = text.partition("0\nLWPOLYLINE\n")
    inside, end, tail = rest.partition("0\nENDSEC\n")
    count = (outline + inside).count("LWPOLYLINE")
    text = f"{head}<entities>\n{end}{tail}".replace(f"\n{_WIDTH}\n", "\n<width>\n").replace(
        f"\n{_HEIGHT}\n", "\n<height>\n"
    )
    for k, name in enumerate(("first", "second", "third", "seed")):
        text = re.sub(rf"(\n5\n|\n350\n){0x33 + count + k:X}\n", rf"\g<1><{name} handle>\n", text)
    for name in ABOUT.operations or ():
        layer = rf"(\n2\n{name}\n70\n0\n62\n)\d+\n420\n\d+\n(6\nContinuous\n370\n)\d+\n"
        text = re.sub(layer, rf"\g<1><{name} number>\n420\n<{name} colour>\n\g<2><{name} weight>\n", text)
    return text


if __name__ == "__main__":
    FILE.write_text(made(), encoding="utf-8")

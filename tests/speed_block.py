"""Puts what the benches print between the marks of the README's section on speed.

python tests/bench/whole.py --full | python tests/speed_block.py
"""

from __future__ import annotations

import sys

from pages import README, table_between


def with_speed(text: str, printed: str) -> str:
    """The README with these lines as its measured speed."""
    block = table_between(text, "speed")
    return f"{text[: block.start(2)]}```text\n{printed.strip()}\n```\n{text[block.end(2) :].lstrip()}"


if __name__ == "__main__":
    README.write_text(with_speed(README.read_text("utf-8"), sys.stdin.read()), encoding="utf-8")

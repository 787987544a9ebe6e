"""The command line as a process of its own: `templates-gen`, or `python -m templates_gen`."""

from __future__ import annotations

import gc

_ALLOCATIONS = 200_000


def main() -> None:
    """Runs one command; leaves with its exit code.

    A run makes millions of small values and hardly a circle of them, so that looking for circles often took a quarter
    of its time. This is for the process alone: whoever imports the library keeps their own collector.
    """
    gc.set_threshold(_ALLOCATIONS)
    from templates_gen.beside import allow
    from templates_gen.screen.cli import main as command

    gc.freeze()
    allow()
    command(prog_name="templates-gen")


if __name__ == "__main__":
    main()

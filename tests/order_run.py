"""A run of orders as a process of its own, to be killed: FOLDER, how many orders, how many workers."""

from __future__ import annotations

import sys

from order_tables import ONLY, orders

from templates_gen.disk.stopping import StoppedError
from templates_gen.ordering.job import Job
from templates_gen.ordering.running import run


def main(folder: str, number: str, workers: str) -> None:
    """Says each order as it comes."""
    try:
        with run(orders(int(number)), Job(folder, ONLY[:1]), workers=int(workers), tell=print) as going:
            for result in going:
                print(result.state, result.folder, flush=True)
    except StoppedError as error:
        sys.exit(128 + error.number)


if __name__ == "__main__":
    main(*sys.argv[1:])

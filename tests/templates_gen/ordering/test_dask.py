"""A real Dask cluster of three worker processes on this machine makes orders, also when one is killed in the middle."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from socket import socket
from typing import Any

import pytest
from order_tables import ONLY, Rows, files_below, made, order, orders

import templates_gen
from layout.values.errors import LayoutError
from templates_gen.ordering.job import Job
from templates_gen.ordering.running import run

distributed = pytest.importorskip("distributed", reason="Dask is not installed")
NUMBER = 12
TESTS = Path(__file__).parents[2]


@contextmanager
def cluster_of(workers: int) -> Iterator[Any]:
    """A client of so many worker processes, each of one thread; they end with the block."""
    config = {"distributed.worker.daemon": True, "distributed.admin.log-format": "%(message)s"}
    import dask

    with (
        dask.config.set(config),
        distributed.LocalCluster(
            n_workers=workers,
            threads_per_worker=1,
            processes=True,
            dashboard_address=None,
            silence_logs=50,
            env={"PYTHONPATH": os.pathsep.join([str(TESTS), str(TESTS.parent)])},
        ) as cluster,
        distributed.Client(cluster) as client,
    ):
        yield client


@pytest.fixture(scope="module")
def client() -> Iterator[Any]:
    """A cluster for all tests here."""
    with cluster_of(3) as found:
        yield found


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    """What this process makes alone."""
    folder = tmp_path_factory.mktemp("whole")
    made(orders(NUMBER), folder, ONLY[:1])
    return files_below(folder)


def processes(client: Any) -> dict[str, int]:
    """The process of each worker, by its address."""
    found: dict[str, int] = client.run(os.getpid)
    return found


@pytest.mark.slow
def test_a_cluster_makes_the_same_bytes(client: Any, tmp_path: Path, whole: dict[str, bytes]) -> None:
    """Several workers of a cluster make every order once, and the same files as one process."""
    with client.get_executor() as executor:
        found = made(orders(NUMBER), tmp_path, ONLY[:1], executor=executor, workers=3)
    assert [each.state for each in found] == ["made"] * NUMBER
    assert files_below(tmp_path) == whole
    assert [path.name for path in (tmp_path / ".orders").iterdir()] == ["journal.jsonl"]


def test_a_worker_is_killed_in_the_middle(client: Any, tmp_path: Path, whole: dict[str, bytes]) -> None:
    """With kill -9 of one of three workers in the middle none is lost, doubled or half, and each is proven."""
    victim = sorted(processes(client).values())[0]
    came = []
    with (
        client.get_executor() as executor,
        run(orders(NUMBER), Job(str(tmp_path), ONLY[:1]), executor=executor, workers=3) as going,
    ):
        for result in going:
            if not came:
                os.kill(victim, signal.SIGKILL)
            came.append((result.folder, result.state))
    assert sorted(came) == sorted((f"w-{k}", "made") for k in range(NUMBER))
    assert files_below(tmp_path) == whole
    for k in range(NUMBER):
        assert [each.problems for each in templates_gen.check(tmp_path / f"w-{k}") if each.problems] == []
    assert victim not in processes(client).values()


def test_a_bad_order_in_a_cluster(client: Any, tmp_path: Path) -> None:
    """What a worker refuses is said of that order, as here."""
    rows = Rows([order(0), order(1, weaving={"width": "60 cm"}), order(2)])
    with client.get_executor() as executor:
        there = made(rows, tmp_path / "there", ONLY[:1], executor=executor, workers=3)
    here = made(rows, tmp_path / "here", ONLY[:1])
    assert there == here
    assert [each.state for each in there] == ["made", "failed", "made"]


@pytest.mark.slow
def test_the_scheduler_dies(tmp_path: Path) -> None:
    """The run stops with a sentence, what came before is written down, and a run without Dask makes the others."""
    with socket() as free:
        free.bind(("127.0.0.1", 0))
        address = f"tcp://127.0.0.1:{free.getsockname()[1]}"
    options = ("--no-dashboard",)
    scheduler = begun("scheduler", "--host", address, *options)
    worker = begun("worker", address, "--nthreads", "1", "--local-directory", tmp_path / "local", *options)
    came: list[str] = []

    def until_it_dies(executor: Any) -> None:
        with run(orders(NUMBER), Job(str(tmp_path / "orders"), ONLY[:1]), executor=executor, workers=1) as going:
            for result in going:
                came.append(result.folder)
                scheduler.kill()

    try:
        with (
            distributed.Client(address, timeout="30s") as client,
            client.get_executor() as executor,
            pytest.raises(LayoutError, match="takes no more work"),
        ):
            until_it_dies(executor)
    finally:
        for process in (worker, scheduler):
            process.kill()
            process.wait()
    found = made(orders(NUMBER), tmp_path / "orders", ONLY[:1])
    assert {each.folder for each in found if each.state == "unchanged"} == set(came)
    assert 0 < len(came) < NUMBER


def begun(program: str, *arguments: object) -> subprocess.Popen[bytes]:
    """A program of Dask, which says nothing here."""
    paths = os.pathsep.join([str(TESTS), str(TESTS.parent)])
    command = [sys.executable, "-m", f"distributed.cli.dask_{program}", *map(str, arguments)]
    env = {**os.environ, "PYTHONPATH": paths}
    return subprocess.Popen(command, env=env, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)

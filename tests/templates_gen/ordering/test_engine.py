"""Few orders are in flight, none is lost or doubled, and one that ends its workers costs no other one."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from concurrent.futures import BrokenExecutor, Future
from queue import SimpleQueue
from random import Random
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from order_tables import order

from layout.values.errors import LayoutError
from templates_gen.ordering.engine import MOST_DEATHS, SIZE, WINDOW, Answer, Asked, Engine, chunked
from templates_gen.ordering.order import Order
from templates_gen.ordering.outcomes import failed
from templates_gen.ordering.result import Result
from templates_gen.ordering.work import Done


def asked(number: int) -> list[Asked]:
    """So many orders."""
    plain = order(0)
    return [Asked(k, Order(k, str(k), str(k), "", 1, plain.values, {}), str(k)) for k in range(number)]


def echo(orders: tuple[Order, ...]) -> tuple[Done, ...]:
    """Work that says which order it had."""
    return tuple(Done(ends=order.line) for order in orders)


class Pool:
    """Workers that end their work when they are waited for, by the will of the test; some orders kill whoever has them.

    Where one dies, everything in flight comes to nothing, as with a pool of processes.
    """

    def __init__(self, workers: int = 2, deadly: frozenset[int] = frozenset(), seed: int | None = None) -> None:
        self.workers, self.deadly = workers, deadly
        self.chance = Random(seed)  # noqa: S311 (a draw, no secret)
        self.flying: list[tuple[Future[Any], Callable[..., Any], tuple[Any, ...]]] = []
        self.most, self.renewed, self.begun = 0, 0, list[int]()

    def submit(self, work: Callable[..., Any], *args: Any) -> Future[Any]:
        """Work that waits for its step."""
        future: Future[Any] = Future()
        self.flying.append((future, work, args))
        self.most = max(self.most, len(self.flying))
        return future

    def step(self) -> None:
        """Ends one piece of work, or all of it where a worker dies."""
        future, work, args = self.flying.pop(self.chance.randrange(len(self.flying)))
        lines = {order.line for order in args[-1]}
        if lines & self.deadly:
            for each, *_ in [(future, work, args), *self.flying]:
                each.set_exception(BrokenExecutor())
            self.flying.clear()
        else:
            self.begun += lines
            future.set_result(work(*args))

    def renew(self, _why: str) -> None:
        """How often that was."""
        self.renewed += 1


@pytest.fixture(autouse=True)
def _waited(monkeypatch: pytest.MonkeyPatch) -> None:
    """Waiting for what ends lets the pool of the test take steps."""

    class Stepping(SimpleQueue[Any]):
        def get(self, block: bool = True, timeout: float | None = None) -> Any:
            pool = Pools.last
            while pool and pool.flying and timeout is None and self.empty():
                pool.step()
            return super().get(block, timeout)

    monkeypatch.setattr("templates_gen.ordering.engine.SimpleQueue", Stepping)


class Pools:
    """The pool of the test that runs."""

    last: Pool | None = None


def answers(pool: Pool, rows: list[Any]) -> list[Result | Answer]:
    """What comes of these rows."""
    Pools.last = pool
    found: list[Result | Answer] = []
    for item in Engine(pool, echo).answers(iter(rows)):
        found += [item] if isinstance(item, Result) else item
    return found


@pytest.mark.parametrize("seed", range(5))
@pytest.mark.parametrize("number", [0, 1, 7, 200])
def test_every_order_is_answered_once(number: int, seed: int) -> None:
    """In whatever order work ends, each order has its own answer, once."""
    found = answers(Pool(seed=seed), asked(number))
    assert all(isinstance(each, Answer) and each.done == Done(ends=each.asked.order.line) for each in found)
    assert sorted(each.asked.row for each in found if isinstance(each, Answer)) == list(range(number))


def test_few_are_in_flight() -> None:
    """However long the table is, so many chunks are given out at a time, and no more rows are read than they need."""
    pool, read = Pool(workers=2), list[int]()

    def rows() -> Iterator[Asked]:
        for each in asked(500):
            read.append(each.row)
            yield each

    Pools.last = pool
    coming = Engine(pool, echo).answers(rows())
    next(coming)
    assert pool.most == WINDOW * 2
    assert len(read) <= SIZE * (WINDOW * 2 + 1 + 2 * 2 + 1)


def test_results_pass_at_once() -> None:
    """What needs no work comes before the work of earlier rows is done."""
    result = failed(order(0))
    found = answers(Pool(), [*asked(20), result])
    assert found[0] is result
    assert len(found) == 21


@given(st.integers(0, 300), st.integers(1, 8))
def test_chunks_hold_every_row_once(number: int, workers: int) -> None:
    """In their order, none larger than the size, and of enough rows the last ones are alone."""
    chunks = [each for each in chunked(iter(asked(number)), workers) if not isinstance(each, Result)]
    assert [each.row for chunk in chunks for each in chunk] == list(range(number))
    assert all(1 <= len(chunk) <= SIZE for chunk in chunks)
    sizes = [len(chunk) for chunk in chunks]
    assert sizes == sorted(sizes, reverse=True)
    assert not sizes or sizes[-1] == 1


@pytest.mark.parametrize("seed", range(20))
def test_a_deadly_order_fails_alone(seed: int) -> None:
    """Orders that end their worker fail, after so many deaths; every other one is made, whoever was in flight."""
    deadly = frozenset(Random(seed).sample(range(60), 3))  # noqa: S311
    pool = Pool(deadly=deadly, seed=seed)
    found = [each for each in answers(pool, asked(60)) if isinstance(each, Answer)]
    assert sorted(each.asked.row for each in found) == list(range(60))
    assert {each.asked.row for each in found if each.done is None} == deadly
    assert sorted(pool.begun) == sorted(set(range(60)) - deadly)
    assert pool.renewed <= MOST_DEATHS * len(deadly)


def test_an_executor_that_refuses() -> None:
    """A piece of work that cannot even be sent fails its orders after some tries, and says why."""

    class Refusing(Pool):
        def submit(self, *_: Any) -> Future[Any]:
            future: Future[Any] = Future()
            future.set_exception(TypeError("cannot be sent"))
            return future

    found = answers(Refusing(), asked(5))
    assert [each.why for each in found if isinstance(each, Answer)] == ["TypeError: cannot be sent"] * 5


@pytest.mark.parametrize("heard", [True, False], ids=["by a worker", "when it is shut down"])
def test_an_executor_that_is_cancelled(heard: bool) -> None:
    """Where somebody takes the work back, the run stops with a sentence, also if no worker ever hears of it."""

    class Cancelling(Pool):
        def submit(self, *_: Any) -> Future[Any]:
            future: Future[Any] = Future()
            future.cancel()
            if heard:
                future.set_running_or_notify_cancel()
            return future

    with pytest.raises(LayoutError, match="takes no more work"):
        answers(Cancelling(), asked(5))


def test_a_worker_that_died_idle() -> None:
    """A pool that refuses new work is made anew when what is in flight has come, and that work is not held guilty."""

    class Dead(Pool):
        broken = True

        def submit(self, work: Callable[..., Any], *args: Any) -> Future[Any]:
            if self.broken and len(self.flying) == 2:
                raise BrokenExecutor
            return super().submit(work, *args)

        def renew(self, _why: str) -> None:
            super().renew(_why)
            self.broken = False

    pool = Dead()

    found = answers(pool, asked(100))
    assert sorted(each.asked.row for each in found if isinstance(each, Answer) and each.done) == list(range(100))

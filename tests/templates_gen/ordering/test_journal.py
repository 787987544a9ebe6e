"""The journal says what was written down, whole, whatever became of its end."""

from __future__ import annotations

import errno
import json
import os
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from order_tables import order

from templates_gen.disk.faults import FaultError
from templates_gen.ordering.entry import Entry
from templates_gen.ordering.journal import NAME, Journal
from templates_gen.ordering.order import Problem
from templates_gen.ordering.outcomes import came, failed
from templates_gen.ordering.result import Amount, OrderFile, Result
from templates_gen.ordering.result_lines import Spool, line_of, result_from, result_values
from templates_gen.ordering.work import Done


def entry(number: int, print_: str = "a") -> Entry:
    """What was made of an order."""
    files = (OrderFile("leaflet.pdf", "0" * 64, 2, 3, 1.25e-06),)
    done = Done(files=files, amounts=(Amount("warp", "linen", "", "m", 71.3),), ends=20, notes=("Søm: mind “it”.",))
    return Entry(print_, "1" * 64, came(order(number), done, "made"))


@contextmanager
def journal(folder: Path, heard: list[str] | None = None) -> Iterator[Journal]:
    """That of a folder, while the block runs."""
    with closing(Journal(folder, [].append if heard is None else heard.append)) as opened:
        yield opened


def filled(folder: Path, number: int = 3) -> bytes:
    """A journal of so many orders, as it lies on disk."""
    with journal(folder) as each:
        each.add([entry(k) for k in range(number)])
    return (folder / NAME).read_bytes()


def test_it_says_what_was_written_down(tmp_path: Path) -> None:
    """Another run reads the same entries; the last of an order counts."""
    filled(tmp_path)
    with journal(tmp_path) as one:
        one.add([entry(1, "b")])
    with journal(tmp_path) as again:
        assert [again.entry(f"w-{k}") for k in range(4)] == [entry(0), entry(1, "b"), entry(2), None]
        assert sorted(again.folders) == ["w-0", "w-1", "w-2"]


def test_every_line_is_json_of_its_own(tmp_path: Path) -> None:
    """Line by line json reads it: a header, then one order a line."""
    lines = [json.loads(line) for line in filled(tmp_path).splitlines()]
    assert lines[0]["orders"] == 1
    assert [line["folder"] for line in lines[1:]] == ["w-0", "w-1", "w-2"]


def test_torn_anywhere(tmp_path: Path) -> None:
    """Cut off anywhere, it holds the whole lines before the cut, says nothing, and takes new ones."""
    data = filled(tmp_path)
    ends = [k + 1 for k, byte in enumerate(data) if byte == ord("\n")]
    for cut in sorted(
        {*range(0, len(data) + 1, 17), *ends, *(end - 1 for end in ends), *(end + 1 for end in ends[:-1])}
    ):
        (tmp_path / NAME).write_bytes(data[:cut])
        heard: list[str] = []
        whole = max(0, sum(end <= cut for end in ends) - 1)
        with journal(tmp_path, heard) as torn:
            assert (sorted(torn.folders), heard) == ([f"w-{k}" for k in range(whole)], [])
            torn.add([entry(9)])
        with journal(tmp_path) as again:
            assert again.entry("w-9") == entry(9)


def test_any_bit(tmp_path: Path) -> None:
    """Whichever bit of it turns, no order is said to be what it was not."""
    data = filled(tmp_path)
    begins = data.index(b"\n") + 1
    for at in range(begins, len(data), 23):
        turned = bytearray(data)
        turned[at] ^= 1 << at % 8
        (tmp_path / NAME).write_bytes(turned)
        with journal(tmp_path) as each:
            assert all(each.entry(f"w-{k}") in (None, entry(k)) for k in range(3))
            assert len([*each.folders]) < 3


def test_damaged_meanwhile(tmp_path: Path) -> None:
    """An entry that is damaged after the journal was opened is not believed either."""
    data = filled(tmp_path)
    with journal(tmp_path) as each:
        (tmp_path / NAME).write_bytes(data.replace(b"71.3", b"71.2"))
        assert [each.entry(f"w-{k}") for k in range(3)] == [None] * 3


def test_zeros_at_the_end(tmp_path: Path) -> None:
    """What some disks leave after the power failed, a file longer than what was written, is cut off too."""
    data = filled(tmp_path)
    (tmp_path / NAME).write_bytes(data + bytes(500))
    with journal(tmp_path):
        pass
    assert (tmp_path / NAME).read_bytes() == data


@pytest.mark.parametrize(
    "spoil",
    [
        lambda data: b"my notes\n" + data,
        lambda data: data.replace(b'{"orders":1', b'{"orders":2'),
        lambda data: data.replace(b'"w-0"', b'"w-0'),
        lambda _: b"\x80" * 300,
        lambda _: b"[]\n",
        lambda _: b"[" * 100_000 + b"\n",
        lambda data: data.replace(b'"copies":1', b'"copies":7', 1),
        lambda data: data.replace(b"71.3", b"71.2", 1),
    ],
    ids=["no header", "another format", "damaged in its middle", "no text", "no table", "deep", "a count", "a figure"],
)
def test_kept_aside(spoil: object, tmp_path: Path) -> None:
    """A journal that cannot be read keeps its bytes under another name, which one sentence says, and begins anew."""
    spoilt = spoil(filled(tmp_path))  # type: ignore[operator]
    for number in (1, 2):
        (tmp_path / NAME).write_bytes(spoilt)
        heard: list[str] = []
        with journal(tmp_path, heard) as anew:
            assert list(anew.folders) == []
        other = f"{NAME}.unreadable-{number}"
        assert (tmp_path / other).read_bytes() == spoilt
        assert len(heard) == 1
        assert other in heard[0]


def test_it_stays_small(tmp_path: Path) -> None:
    """Where most lines are of orders that were made again, it is written anew, and says the same."""
    filled(tmp_path)
    for print_ in "bcdefgh":
        with journal(tmp_path) as each:
            each.add([entry(k, print_) for k in range(3)])
    lines = (tmp_path / NAME).read_bytes().splitlines()
    assert len(lines) <= 1 + 2 * 3
    with journal(tmp_path) as last:
        assert [last.entry(f"w-{k}") for k in range(3)] == [entry(k, "h") for k in range(3)]
    assert [path.name for path in tmp_path.iterdir()] == [NAME]


def test_a_link_is_not_followed(tmp_path: Path) -> None:
    """A link in its place is refused, and what it leads to stays as it is."""
    (tmp_path / "mine").write_text("mine")
    (tmp_path / "hidden").mkdir()
    (tmp_path / "hidden" / NAME).symlink_to(tmp_path / "mine")
    with pytest.raises(FaultError, match=NAME):
        Journal(tmp_path / "hidden", [].append)
    assert (tmp_path / "mine").read_text() == "mine"


def test_what_cannot_be_written_down(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the disk is full, a sentence says so, and the journal holds what it held."""
    data = filled(tmp_path)

    def full(_descriptor: int) -> None:
        raise OSError(errno.ENOSPC, "")

    with journal(tmp_path) as each:
        monkeypatch.setattr(os, "fsync", full)
        with pytest.raises(FaultError, match="the disk is full; orders that were made stay"):
            each.add([entry(8)])
        monkeypatch.undo()
        assert each.entry("w-8") is None
    assert (tmp_path / NAME).read_bytes() == data


texts = st.text(st.characters(exclude_categories=["Cs"]), max_size=20)


@given(texts, st.floats(allow_nan=False, allow_infinity=False), st.integers(0, 10**9))
def test_a_result_comes_back(text: str, figure: float, number: int) -> None:
    """Any result is the same after it was a line of JSON, and the line holds no line break."""
    result = Result(number, text, text, text, number, "failed", problems=(Problem(text, text),), notes=(text,))
    whole = entry(0).result
    amounts = (Amount("weft", text, text, "g", figure),)
    for each in (result, Result(1, text, "a", "b", 2, "made", whole.files, amounts=amounts, ends=number)):
        line = line_of(result_values(each))
        assert line.count(b"\n") == 1
        assert result_from(json.loads(line)) == each


@given(st.permutations(range(12)))
def test_the_order_of_the_rows(numbers: list[int]) -> None:
    """However results come, they are read in the order of their rows, at any time and again."""
    with Spool(None) as spool:
        for k, number in enumerate(numbers, 1):
            spool.add(number, failed(order(number)))
            assert [each.line - 2 for each in spool] == sorted(numbers[:k])

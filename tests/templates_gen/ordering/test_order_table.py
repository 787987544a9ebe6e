"""A table of orders as a file: read once, as often as asked for, and never waited for."""

from __future__ import annotations

import hashlib
import os
import pickle
from pathlib import Path

import pytest
from order_files import one_kit, opened, three_kits

from layout.values.errors import LayoutError
from templates_gen.inputs.range_file import range_of
from templates_gen.ordering import order_table
from templates_gen.ordering.order_table import open_orders
from templates_gen.ordering.table.kept import kept_file

TEXT = b"order,weaving.width\n1,20 cm\n\n2,x\n,\n3,\n"


def test_rows_can_be_asked_for_again(tmp_path: Path) -> None:
    """Every time the same, also while another reading is under way; blank rows are none."""
    table = opened(tmp_path, TEXT, one_kit())
    first, second = list(table.rows()), list(table.rows())
    assert first == second
    assert [each.line for each in first] == [2, 4, 6]
    assert table.count == 3
    assert list(zip(table.rows(), table.rows(), strict=True)) == list(zip(first, first, strict=True))


def test_rows_are_of_what_was_read(tmp_path: Path) -> None:
    """A file that changes meanwhile changes no order, and is noticed; so is one that is gone."""
    table = opened(tmp_path, TEXT, one_kit())
    before = list(table.rows())
    assert table.sha256 == hashlib.sha256(TEXT).hexdigest()
    assert not table.changed()
    table.path.write_bytes(TEXT + b"4,\n")
    assert table.changed()
    assert list(table.rows()) == before
    table.path.write_bytes(TEXT)
    assert not table.changed()
    table.path.unlink()
    assert table.changed()


def test_orders_can_be_sent(tmp_path: Path) -> None:
    """To another process or machine: an order is plain values."""
    orders = list(opened(tmp_path, TEXT, one_kit()).rows())
    assert pickle.loads(pickle.dumps(orders)) == orders  # noqa: S301 (our own bytes)


def test_a_kit_from_python_may_be_the_range(tmp_path: Path) -> None:
    """Its values are written out where it was read from no file."""
    kit = three_kits().kits[0].kit
    (found,) = opened(tmp_path, "order\n1\n", range_of(kit)).rows()
    assert found.kit == kit.name


def test_a_huge_file_is_not_read_to_its_end(tmp_path: Path) -> None:
    """Little more than what a table may have."""
    (tmp_path / "huge.csv").write_bytes(b"1\n" * 1_000_000)
    assert 1000 < kept_file(tmp_path / "huge.csv", 1000).size < 100_000


def bad_files(folder: Path) -> dict[Path, str]:
    """Places where no table of orders can be read, and what is said of them."""
    os.mkfifo(folder / "pipe.csv")
    (folder / "header.csv").write_text("order\n\n")
    (folder / "empty.csv").write_bytes(b"")
    (folder / "blank.csv").write_text("\n\n \n")
    (folder / "large.csv").write_text("order\n" + "1\n" * 100)
    (folder / "late.csv").write_bytes(b'order\n1\n2\n"3\n')
    return {
        folder: "it is a folder, not a file",
        folder / "absent.csv": "there is no such file",
        folder / "header.csv" / "x": "a part of that path is a file",
        folder / "a\0b.csv": "a character that no file name can hold",
        folder / "pipe.csv": "a pipe or a device",
        folder / "header.csv": "no order below",
        folder / "empty.csv": "is empty",
        folder / "blank.csv": "is empty",
        folder / "large.csv": "larger than",
        folder / "late.csv": "line 4 is never closed",
    }


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="pipes in folders are of POSIX systems")
def test_what_is_no_file_of_orders_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """At once, in one sentence that names it: folders, pipes, nothing, too much, and quotes open to the end."""
    monkeypatch.setattr(order_table, "LARGEST", 100)
    for path, said in bad_files(tmp_path).items():
        with pytest.raises(LayoutError, match=said) as error:
            open_orders(path, one_kit())
        assert str(error.value).isprintable()

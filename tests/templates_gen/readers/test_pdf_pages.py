"""The second opinion on the pages of a PDF."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from pypdf import PdfReader

import templates_gen
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, line
from layout.drawing.sheet import Sheet
from templates_gen.document import About, ReadError
from templates_gen.files.formats import FORMATS
from templates_gen.readers.pdf_pages import Page, confirm

MARK = line(Point(1, 1), Point(9, 9), Pen.MARK)
SHEETS = [Sheet("a", 90.0, 100.0, (MARK,)), Sheet("b", 80.0, 100.0, (MARK,))]
DATA = FORMATS["pdf"].write(SHEETS, About("Two pages", "{}"))
PAGES = [Page([0, 0, width * 72 / 25.4, 100 * 72 / 25.4], b"") for width in (90, 80)]


def true_pages() -> list[Page]:
    """The pages as a reader of the same library has them."""
    import io

    return [
        Page([float(side) for side in page.mediabox], page["/Contents"].get_object().get_data())  # type: ignore[attr-defined]
        for page in PdfReader(io.BytesIO(DATA)).pages
    ]


def test_our_own_files_are_confirmed() -> None:
    """Two pages of 90 and 80 x 100 mm: the boxes are right to a hundredth of a point."""
    confirm(DATA, true_pages())
    for page, wanted in zip(true_pages(), PAGES, strict=True):
        assert list(page.box) == pytest.approx(wanted.box, abs=0.01)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda pages: pages[:1], "2 pages for pypdf, and 1"),
        (lambda pages: [*pages, pages[0]], "2 pages for pypdf, and 3"),
        (lambda pages: [pages[0]._replace(box=[0, 0, 9, 9]), pages[1]], "page 1 .* another size"),
        (lambda pages: [pages[0], pages[1]._replace(content=pages[1].content + b" ")], "page 2 .* something else"),
    ],
)
def test_whatever_differs_is_refused(change: object, said: str) -> None:
    """Another count, box or content, by one byte."""
    with pytest.raises(ReadError, match=said):
        confirm(DATA, change(true_pages()))  # type: ignore[operator]


def test_what_it_cannot_read_is_refused() -> None:
    """In one sentence, whatever the library raises."""
    for data in (b"", b"%PDF-1.6\n", re.sub(rb"startxref\n\d+", b"startxref\n0", DATA), DATA[: len(DATA) // 2]):
        with pytest.raises(ReadError, match="pypdf"):
            confirm(data, true_pages())


def test_a_made_file_meets_it_when_it_is_checked(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """`make` reads what it wrote without the other library; `check` reports whatever that finds otherwise."""

    def refuse(data: bytes, pages: object) -> None:
        raise ReadError("pypdf reads other pages")

    monkeypatch.setattr("templates_gen.readers.pdf.confirm", refuse)
    made = templates_gen.make(templates_gen.load(), tmp_path, ["strip-near"])
    pdfs = [each.file for each in made.made if each.file.endswith(".pdf")]
    found = {Path(each.file).name: each.problems for each in templates_gen.check(tmp_path)}
    assert pdfs
    assert all(found[file] == ("pypdf reads other pages",) for file in pdfs)
    assert not any(problems for file, problems in found.items() if file not in pdfs)


def test_every_file_is_read_by_both(monkeypatch: pytest.MonkeyPatch) -> None:
    """The reader of PDF asks for the second opinion with the pages that it found itself."""
    asked = []
    monkeypatch.setattr("templates_gen.readers.pdf.confirm", lambda data, pages: asked.append((data, list(pages))))
    FORMATS["pdf"].read(DATA)
    ((data, pages),) = asked
    assert data == DATA
    assert [list(page.box) for page in pages] == [list(page.box) for page in true_pages()]
    assert [page.content for page in pages] == [page.content for page in true_pages()]

"""The one table of file formats: who writes or reads a file asks here; no other module knows formats by name."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from layout.drawing.sheet import Sheet
from templates_gen.document import About, Document, ReadError
from templates_gen.readers import dxf as dxf_reader
from templates_gen.readers import pdf as pdf_reader
from templates_gen.readers import svg as svg_reader
from templates_gen.writers import dxf as dxf_writer
from templates_gen.writers import pdf as pdf_writer
from templates_gen.writers import svg as svg_writer


@dataclass(frozen=True, slots=True)
class Format:
    """One kind of file.

    `suffix` begins with a dot. `write` turns sheets into bytes and refuses with `LayoutError` what the format cannot
    hold; `read` turns bytes back into a `Document` and refuses with `ReadError` what `write` never makes.
    `read_back` does the same for bytes that were written in this run; of a PDF from elsewhere, `read` also asks another
    library which pages there are. `words` tells whether the file holds real words: where it does not, sheets are
    outlined before they are written or compared.
    """

    suffix: str
    write: Callable[[Sequence[Sheet], About], bytes]
    read: Callable[[bytes], Document]
    read_back: Callable[[bytes], Document]
    words: bool


FORMATS: Mapping[str, Format] = MappingProxyType(
    {
        "pdf": Format(".pdf", pdf_writer.write, pdf_reader.read, pdf_reader.read_back, words=True),
        "svg": Format(".svg", svg_writer.write, svg_reader.read, svg_reader.read, words=False),
        "dxf": Format(".dxf", dxf_writer.write, dxf_reader.read, dxf_reader.read, words=False),
    }
)
"""Every format by its name."""

__all__ = ["FORMATS", "About", "Document", "Format", "ReadError"]

TABLE = ".csv"
"""The suffix of a table, which is no form of sheets."""

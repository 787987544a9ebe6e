"""How large a PDF page came out of another program: each point of its lines as pdfium reads it, before and after."""

from __future__ import annotations

import ctypes
from collections.abc import Callable, Iterator, Sequence
from typing import Any, NamedTuple

import numpy as np
import pypdfium2
import pypdfium2.raw as pdfium
from scipy.spatial import cKDTree

Points = np.ndarray[Any, Any]
_Matrix = tuple[float, float, float, float, float, float]
_NEAR, _SAME, _ROUNDS = 0.3, 0.03, 3  # in PDF units: while the fit is sought, and where a point is found again
_FEW = 30


class Came(NamedTuple):
    """What comes of a page: its scale along and up, how far it is skewed or turned, and where its origin lies.

    `found` is the share of its points that are there again, on the paper.
    """

    x: float
    y: float
    skew: float
    origin: tuple[float, float]
    found: float


def points_of(pdf: bytes) -> list[Points]:
    """The points of each page."""
    return [_points(page) for page in pypdfium2.PdfDocument(pdf)]


def came_out(before: Sequence[Points], after: bytes, numbers: Sequence[int] = ()) -> list[Came]:
    """Each page of `after`, or those of these numbers (0 the first), beside the points of the same page before."""
    pages = pypdfium2.PdfDocument(after)
    assert len(pages) == len(before)
    return [_came(before[k], pages[k]) for k in numbers or range(len(before))]


def _came(drawn: Points, page: Any) -> Came:
    there = _points(page)
    scale = np.ptp(there, axis=0) / np.ptp(drawn, axis=0)
    return fitted(drawn, page, np.vstack([np.diag(scale), there.min(0) - scale * drawn.min(0)]))


def fitted(drawn: Points, page: Any, fit: Points) -> Came:
    """What comes of points that were `drawn`, in PDF units, where a first guess of the `fit` is known."""
    there = _points(page)
    assert min(len(drawn), len(there)) >= _FEW
    with_one = np.c_[drawn, np.ones(len(drawn))]
    tree = cKDTree(there)
    for _ in range(_ROUNDS):
        away, which = tree.query(with_one @ fit)
        near = away < _NEAR
        fit = np.linalg.lstsq(with_one[near], there[which[near]], rcond=None)[0]
    away, which = tree.query(with_one @ fit)
    skew = max(abs(fit[0, 1]), abs(fit[1, 0]))
    within = (there >= -_SAME).all(1) & (there <= np.array(page.get_size()) + _SAME).all(1)
    found = float(((away < _SAME) & within[which]).mean())
    return Came(fit[0, 0], fit[1, 1], skew, (float(fit[2, 0]), float(fit[2, 1])), found)


def _points(page: Any) -> Points:
    """All points of all paths on a page, in PDF units, through whatever forms they lie in."""
    count = pdfium.FPDFPage_CountObjects(page.raw)
    found = _walk(count, lambda k: pdfium.FPDFPage_GetObject(page.raw, k), (1, 0, 0, 1, 0, 0))
    return np.array(list(found))


def _walk(count: int, get: Callable[[int], Any], outer: _Matrix) -> Iterator[tuple[float, float]]:
    for k in range(count):
        thing = get(k)
        kind = pdfium.FPDFPageObj_GetType(thing)
        if kind == pdfium.FPDF_PAGEOBJ_FORM:
            inner = pdfium.FPDFFormObj_CountObjects(thing)
            yield from _walk(inner, lambda n, form=thing: pdfium.FPDFFormObj_GetObject(form, n), _in(thing, outer))
        elif kind == pdfium.FPDF_PAGEOBJ_PATH:
            yield from _path(thing, _in(thing, outer))


def _in(thing: Any, outer: _Matrix) -> _Matrix:
    """The matrix of an object, and then that of the form it lies in."""
    own = pdfium.FS_MATRIX()
    assert pdfium.FPDFPageObj_GetMatrix(thing, own)
    a, b, c, d, e, f = outer
    return (
        own.a * a + own.b * c,
        own.a * b + own.b * d,
        own.c * a + own.d * c,
        own.c * b + own.d * d,
        own.e * a + own.f * c + e,
        own.e * b + own.f * d + f,
    )


def _path(path: Any, matrix: _Matrix) -> Iterator[tuple[float, float]]:
    a, b, c, d, e, f = matrix
    x, y = ctypes.c_float(), ctypes.c_float()
    for k in range(pdfium.FPDFPath_CountSegments(path)):
        assert pdfium.FPDFPathSegment_GetPoint(pdfium.FPDFPath_GetPathSegment(path, k), x, y)
        yield a * x.value + c * y.value + e, b * x.value + d * y.value + f

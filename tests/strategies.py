"""Hypothesis strategies shared by the tests."""

from __future__ import annotations

import math
from fractions import Fraction

from hypothesis import strategies as st

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Step, Text, arc
from layout.drawing.sheet import Sheet
from layout.frames.materials import MATERIALS
from layout.values.units import Sett, exact_sett, read_sett

# Numbers of the weaver's trade: yarns, diameters, quantities.
tex_values = st.fractions(min_value=Fraction(1), max_value=Fraction(50_000), max_denominator=1000)
plies = st.integers(min_value=1, max_value=12)
shares_below_one = st.fractions(min_value=Fraction(0), max_value=Fraction(99, 100), max_denominator=1000)
filled_shares = st.floats(min_value=0.001, max_value=1.0)  # D / p: warp and weft together, as a part of the pitch
_NOT_A_SIZE = (0, 0.0, -1, -0.5, Fraction(-1, 3), math.nan, math.inf, -math.inf, True, 10**400)
not_positive = st.sampled_from(_NOT_A_SIZE)

# Shapes and sheets, for every file format.
_places = st.floats(min_value=-3000, max_value=3000)
points = st.builds(Point, _places, _places)
line_pens = st.sampled_from([pen for pen in Pen if not pen.ink.fills])
solid_pens = st.sampled_from([pen for pen in Pen if pen.ink.fills and not (pen.ink.words or pen.ink.operation)])
word_pens = st.sampled_from([pen for pen in Pen if pen.ink.words])
angles = st.floats(min_value=-360, max_value=360)


@st.composite
def paths(draw: st.DrawFn, pens: st.SearchStrategy[Pen] = line_pens, closed: bool | None = None) -> Curve:
    """Straight steps of a tenth of a millimetre or more, and arcs, in any mixture."""
    start = at = draw(points)
    steps: list[Step] = []
    for _ in range(draw(st.integers(1, 4))):
        if draw(st.booleans()):
            radius, turned = draw(st.floats(0.2, 60)), draw(angles)
            centre = Point(at.x - radius * math.cos(turned), at.y - radius * math.sin(turned))
            sweep = draw(st.sampled_from([-1, 1])) * draw(st.floats(5, 360))
            steps += arc(centre, radius, math.degrees(turned), math.degrees(turned) + sweep)
        else:
            end = draw(points)
            if math.dist(at, end) > 0.1:
                steps.append(Step(end))
        at = steps[-1].end if steps else at
    if not steps:
        steps.append(Step(Point(at.x + 1, at.y)))
    return Curve(start, tuple(steps), draw(pens), draw(st.booleans()) if closed is None else closed)


@st.composite
def regions(draw: st.DrawFn) -> Region:
    """One to three closed contours under one pen."""
    pen = draw(solid_pens)
    return Region(tuple(draw(st.lists(paths(st.just(pen), closed=True), min_size=1, max_size=3))), pen)


def texts(letters: str) -> st.SearchStrategy[Text]:
    """Words of these letters, anywhere, at any angle, from 0.5 mm to 50 mm."""
    return st.builds(Text, points, st.floats(0.5, 50), st.text(letters, min_size=1, max_size=20), angles, word_pens)


def sheets(letters: str) -> st.SearchStrategy[Sheet]:
    """Any mixture of shapes, in an order of their own, on a sheet of any size."""
    sizes = st.floats(min_value=1, max_value=3500)
    shapes = st.lists(st.one_of(paths(), regions(), texts(letters)), max_size=12).map(tuple)
    return st.builds(Sheet, st.text(max_size=8).filter(_whole), sizes, sizes, shapes)


def _whole(text: str) -> bool:
    return not any(0xD800 <= ord(letter) < 0xE000 for letter in text)


# Kits as plain values, the way a kit file gives them.
NAME_LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 ,.-/()&äöüéèñøłŁßçČŽΩλЖльгаО"
names = st.text(NAME_LETTERS, min_size=1, max_size=40).filter(lambda name: name.strip())


@st.composite
def length_texts(draw: st.DrawFn, low_mm: float, high_mm: float) -> str:
    """A length from `low_mm` to `high_mm`, written in one of the ways people write lengths."""
    unit, in_mm, steps = draw(st.sampled_from([("mm", 1.0, 4), ("cm", 10.0, 20), ("in", 25.4, 16)]))
    least, most = math.ceil(low_mm / in_mm * steps - 1e-9), math.floor(high_mm / in_mm * steps + 1e-9)
    if least > most:  # no whole step of this unit lies between
        return f"{Fraction(low_mm)} mm"
    value = Fraction(draw(st.integers(least, most)), steps)
    if unit == "in":
        whole, rest = divmod(value, 1)
        return f"{whole} {rest} in" if whole and rest else f"{value} in"
    decimal = f"{float(value):.2f}"  # two places: never the three after a comma that would be ambiguous
    return f"{draw(st.sampled_from([decimal, decimal.replace('.', ',')]))} {unit}"


@st.composite
def sett_tables(draw: st.DrawFn) -> dict[str, object]:
    """The table [sett]: a sett given, or readings that are true of one sett, from 1 to 20 ends per cm."""
    table: dict[str, object] = {}
    if draw(st.booleans()):
        table["given"] = draw(
            st.sampled_from(["6 epi", "3 ends/cm", "30 per 10 cm", "7 1/2 epi", "2,7 per cm", "20/cm"])
        )
    else:
        sett = draw(st.fractions(min_value=Fraction(4, 10), max_value=2, max_denominator=500))  # ends per mm
        windows = [("2 cm", Fraction(20)), ("5 cm", Fraction(50)), ("1 in", Fraction(127, 5)), ("10 cm", Fraction(100))]
        chosen = draw(st.lists(st.sampled_from(windows), min_size=1, max_size=4))
        kinds = st.sampled_from(["window", "measure"])
        table["readings"] = [{"pairs": math.floor(sett * mm), draw(kinds): text} for text, mm in chosen]
        table |= {key: True for key in ("loosest", "as_measured") if draw(st.integers(0, 4)) == 0}
    if draw(st.booleans()):
        table["marking_unit"] = draw(st.sampled_from(["1 in", "2 in", "4 cm", "5 cm", "10 cm", "30 mm"]))
    return table


def densities(sett: dict[str, object]) -> st.SearchStrategy[str]:
    """Notches in a length on which a sett given falls, or of which every second one is no closer than any measured."""
    if "given" not in sett:
        return st.sampled_from(["1 per cm", "2 1/2 per inch", "30 per 10 cm"])
    given = read_sett(sett["given"])
    return st.sampled_from([1, 2, 4]).map(lambda k: exact_sett(Sett(given.per_mm * k / 2, given.unit)))


@st.composite
def frame_tables(draw: st.DrawFn, widest_mm: int) -> dict[str, object]:
    """The table [frame]: ends of every kind, with at least a third of the outer width left to weave in."""
    width = draw(st.integers(150, widest_mm))
    table = {
        "outer_width": f"{width} mm",
        "outer_height": draw(length_texts(400, 1500)),
        "side_width": draw(length_texts(0, width / 6)),
        "margin": draw(length_texts(3, width / 6)),
    }
    if draw(st.booleans()):
        table |= {"tensioner": draw(st.sampled_from(["rods", "wedges"])), "travel": draw(length_texts(1, 60))}
    kind = draw(st.sampled_from(["round bars", "flat ends", "notched ends", "pegged ends", "nails"]))
    if kind == "round bars":
        return {"ends": kind, "bar_diameter": draw(length_texts(4, 60)), **table}
    if kind == "notched ends":
        notch = {"notch_width": draw(length_texts(0.5, 20)), "notch_depth": draw(length_texts(1, 20))}
        return {"ends": kind, "thickness": draw(length_texts(3, 60)), **notch, **table}
    if kind == "pegged ends":
        pegs = {key: draw(length_texts(2, 20)) for key in ("row_distance", "edge_distance")}
        pegs |= {"thickness": draw(length_texts(3, 60)), "peg_diameter": draw(length_texts(1, 8))}
        return {"ends": kind, **pegs, **table}
    if kind == "nails":
        nails = {"edge_distance": draw(length_texts(2, 20)), "nail_diameter": draw(length_texts(0.5, 3))}
        nails |= {"nail_length": draw(length_texts(2, 30))} if draw(st.booleans()) else {}
        return {"ends": kind, "thickness": draw(length_texts(3, 60)), **nails, **table}
    edge = {"edge_radius": draw(length_texts(0, 6))} if draw(st.booleans()) else {}
    return {"ends": "flat ends", "thickness": draw(length_texts(12, 60)), **edge, **table}


def strength_keys() -> st.SearchStrategy[dict[str, object]]:
    """Any keys of [frame] about strength and pull that every frame may have, whatever its ends and its yarn."""
    return st.fixed_dictionaries(
        {},
        optional={
            "tension": st.sampled_from(["150 g", "2 N", "5 oz", "0,4 kg"]),
            "material": st.sampled_from(MATERIALS),
            "modulus": st.one_of(st.integers(100, 400_000), st.sampled_from([8_500.5, 12_000])),
            "left_warped": st.sampled_from(["days", "months"]),
            "side_thickness": length_texts(1, 200),
        },
    )


@st.composite
def dips(draw: st.DrawFn) -> dict[str, object]:
    """A load on a thread, which dips by a sixtieth at most."""
    length = draw(st.integers(50, 3000))
    depth = draw(st.floats(0.1, min(length / 60, 50)))
    loads = ["17 g", "0,5 N", "2 oz", f"{draw(st.floats(0.01, 10)):.3f} N"]
    return {
        "load": draw(st.sampled_from(loads)),
        "length": f"{length} mm",
        "depth": f"{max(depth - 0.005, 0.1):.2f} mm",
    }


plucks = st.fixed_dictionaries({"hertz": st.integers(10, 2000), "length": length_texts(50, 3000)})


def _wind(weaving: dict[str, object], how: str) -> None:
    """Keys of a weaving that is wound like that, without those that do not go with it."""
    if how == "figure eight":
        weaving["winding"], weaving["slant"] = how, "shared"
    if how == "loose rod":
        weaving |= {"near_hold": how, "rod_diameter": "3/8 in"}
        for key in ("slant", "first_pass", "tie_off"):
            weaving.pop(key, None)


@st.composite
def kits(
    draw: st.DrawFn, widest_mm: int = 1500, lays: tuple[str, ...] = ("auto", "straight", "diagonal", "tiles")
) -> dict[str, object]:
    """A valid kit as plain nested values. Whether its strips fit the sheet as `lay` wants them is another question."""
    frame = draw(frame_tables(widest_mm))
    widest = int(str(frame["outer_width"]).split()[0]) / 3
    weaving = {
        "width": draw(st.one_of(st.just("as wide as fits"), length_texts(45, widest))),
        "height": draw(length_texts(50, 270)),
        "near_end": draw(st.sampled_from(["bottom", "top"])),
        "slant": draw(st.sampled_from(["shared", "face straight"])),
        "start": draw(st.sampled_from(["left", "right"])),
        "first_pass": draw(st.sampled_from(["face", "back"])),
    }
    if frame["ends"] in ("notched ends", "pegged ends", "nails"):
        del weaving["slant"], weaving["first_pass"]
    weaving |= draw(
        st.fixed_dictionaries(
            {},
            optional={
                "tie_off": st.sampled_from(["near end", "far end", "either end"]),
                "doubled_selvedges": st.integers(0, 3),
                "doubled_warp": st.booleans(),
            },
        )
    )
    if frame["ends"] in ("round bars", "flat ends"):
        _wind(weaving, draw(st.sampled_from(["round", "figure eight", "loose rod"])))
    sett = draw(sett_tables())
    frame |= draw(strength_keys())
    if frame["ends"] == "notched ends" and draw(st.booleans()) and "as_measured" not in sett:
        frame["notch_density"] = draw(densities(sett))
    left_out = draw(st.sets(st.sampled_from(["width", "near_end", "slant", "start", "first_pass"])))
    sizes = ["common", "a4", "letter", "a3", "11x17", "210 x 297 mm", "8 1/2 x 14 in", "500 x 700 mm"]
    return {
        "version": 1,
        "name": draw(names),
        "yarns": {"warp": draw(names), "weft": draw(names)},
        "sett": sett,
        "frame": frame,
        "weaving": {key: value for key, value in weaving.items() if key not in left_out},
        "paper": {"size": draw(st.sampled_from(sizes)), "lay": draw(st.sampled_from(lays))},
    }

"""What is said of yarns: their weight, their thickness, how a pair goes together, and what is refused of them."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import (
    Conflict,
    Counts,
    Fibre,
    MakeWord,
    Pair,
    Thickness,
    ThicknessKind,
    YarnNeed,
    YarnNumber,
    YarnReason,
    YarnSystem,
)

_FOLD = "the take-up of the twist left out"
_MEANS = (
    "singles of count {first} folded {second}-ply, as today's craft labels write, or singles of count {second} folded "
    "{first}-ply, as older books write"
)
_APART = "count and plies stated apart, since this means " + _MEANS
_WARP = "The warp, about {thick} mm soft, is {part} of the pitch, "
_WEFT = "The weft, about {thick} mm soft, is {part} of the gap between the ends, "
_BOTH = " The figures that depend on this span both; "
_LADDER = "The sett of {inch} an inch ({cm} per cm) is off the usual ladder, so combs and patterns for it are rare; "

MESSAGES: dict[Role, str | Plural] = {
    YarnReason.LABEL: "From the label, {system}: {number}",
    YarnReason.LABEL_PLIES: Plural(
        "plies",
        "From the label, {system}: {number}, {plies} ply, " + _FOLD,
        "From the label, {system}: {number}, {plies} plies, " + _FOLD,
    ),
    YarnReason.BALL: "From the label, {grams} g in {metres} m",
    YarnReason.WEIGHED: "Weighed: {grams} g in {metres} m",
    YarnReason.FOLDED: "{threads} threads folded, " + _FOLD,
    YarnReason.FIBRE_BY_COUNT: "No fibre stated; {fibre} taken, since such counts are used for {fibre}.",
    YarnReason.FIBRE_WOOL: "No fibre stated; wool taken.",
    YarnNeed.PLIES_FINISHED: needs("to be left out, since the finished yarn is what is counted in {system}"),
    YarnNeed.THREADS: needs("at least one thread to fold"),
    YarnNeed.TWO_THREADS: "two threads of 8 Ne",
    YarnNeed.TWO_STRANDS: "2 strands of one yarn",
    YarnNeed.USUAL_YARN: "cotton count 8, 2 plies (148 tex)",
    YarnNeed.A_COUNT: "a count",
    YarnNeed.YARDS_IN_CUTS: '"3600 yd/lb" for 12 cuts of 300 yd',
    YarnNeed.STRANDS: needs("at least one strand"),
    YarnNeed.TEX: "needs a yarn of {finest} to {heaviest} tex, got {got} ({why}); for example {example}",
    YarnNeed.CUT: needs('yards in a pound, since "cut" means 300 yd a pound (American) or 200 yd a pound (Galashiels)'),
    YarnNeed.SYSTEM: needs("one of the systems {systems}"),
    YarnNeed.NUMBER: needs("a plain number above zero"),
    YarnNeed.STROKE: needs("count and plies with a stroke between them"),
    YarnNeed.TWO_MEANINGS: needs(_APART),
    YarnNeed.WHICH: needs("to say which is which: " + _APART),
    YarnNeed.FIRST_MEANING: "{line} for the first meaning",
    YarnNeed.FIBRE: needs("one of the fibres {fibres}"),
    YarnNeed.ONE_WAY: needs("one way of saying how heavy the yarn is"),
    YarnNeed.BESIDE: needs("to be given beside {other}"),
    YarnNeed.WEIGHED: needs("grams and a length beside it"),
    YarnNeed.SYSTEM_OF_COUNT: needs("the system that the count is in, since a bare number may mean any"),
    YarnNeed.BESIDE_THREADS: needs("to be left out beside threads, each of which has its own"),
    YarnNeed.GRAMS_AND_LENGTH: needs("both grams and a length"),
    YarnNeed.ONE_OF_THEM: "one of them",
    YarnNeed.LABEL: needs("a yarn as its label says it"),
    YarnNeed.LABEL_WEIGHED: needs("a weight and a length, where a yarn was weighed"),
    YarnNeed.LABEL_NO_PLIES: needs("no plies beside a weight and a length, which are of the finished yarn"),
    YarnNeed.PLIES_ONCE: needs("the plies said once only"),
    YarnNeed.COUNT_OR_BALL: needs("a count with its system, or a weight and a length"),
    YarnNeed.STROKE_FOR_ORDER: needs("a stroke between count and plies, where an order is said"),
    YarnNeed.COUNT_SYSTEM: needs("a count with its system (tex, dtex, denier, Nm, Ne, worsted, run or lea)"),
    YarnNeed.WEIGHT: needs("a weight with its unit (g, kg, grains, oz or lb)"),
    YarnNumber.COUNT: "a count",
    YarnNumber.PLIES: "the number of plies",
    YarnNumber.BALL_GRAMS: "the weight of the ball in grams",
    YarnNumber.BALL_METRES: "the length of the ball in metres",
    YarnNumber.GRAMS: "the weight in grams",
    YarnNumber.METRES: "the measured length in metres",
    YarnNumber.STRANDS: "the number of strands",
    YarnNumber.STRANDS_TOGETHER: "strands together",
    YarnNumber.TURNS: "the turns counted",
    YarnNumber.WINDOW: "the window in mm",
    YarnNumber.WRAPS: "wraps in an inch",
    YarnNumber.VOLUME: "a specific volume in cm3/g",
    YarnNumber.PITCH: "the pitch in mm",
    YarnNumber.SETT: "a sett in ends per mm",
    YarnSystem.NAMED: "{name} ({counts})",
    YarnSystem.TEX: "tex",
    YarnSystem.DTEX: "decitex",
    YarnSystem.DENIER: "denier",
    YarnSystem.NM: "metric count Nm",
    YarnSystem.NE: "cotton count Ne",
    YarnSystem.WORSTED: "worsted count",
    YarnSystem.RUN: "woollen run",
    YarnSystem.LEA: "linen lea",
    YarnSystem.M_100G: "metres in 100 g",
    YarnSystem.YD_LB: "yards in a pound",
    Counts.TEX: "grams in 1000 m",
    Counts.DTEX: "grams in 10 000 m",
    Counts.DENIER: "grams in 9000 m",
    Counts.NM: "metres in a gram",
    Counts.NE: "hanks of 840 yd in a pound",
    Counts.WORSTED: "hanks of 560 yd in a pound",
    Counts.RUN: "1600 yd in a pound",
    Counts.LEA: "300 yd in a pound",
    Fibre.COTTON: "cotton",
    Fibre.WOOL: "wool",
    Fibre.MOHAIR: "mohair",
    Fibre.ALPACA: "alpaca",
    Fibre.SILK: "silk",
    Fibre.LINEN: "linen",
    Fibre.HEMP: "hemp",
    Fibre.JUTE: "jute",
    Fibre.VISCOSE: "viscose",
    Fibre.POLYESTER: "polyester",
    Fibre.ACRYLIC: "acrylic",
    Fibre.NYLON: "nylon",
    ThicknessKind.SOFT: "soft",
    ThicknessKind.COMPRESSED: "compressed",
    Thickness.WRAPPED: "Wrapped by hand: {turns} turns in {window} mm; soft, not squeezed.",
    Thickness.VOLUME: (
        "Specific volume of {fibre} yarn: fibre density {density} g/cm3 from memory, packed as Peirce's cotton."
    ),
    Thickness.VOLUME_COTTON: "Specific volume 1.1 cm3/g for cotton yarn (Peirce 1937).",
    Thickness.PRESSED: "From {tex} tex at {volume} cm3/g, a solid round thread (Peirce 1937); compressed.",
    Thickness.ROUND: "Strands together are taken as one round thread of the sum of their areas.",
    Thickness.LOOSEST: (
        "At most: a cord of two plies of three is 1.76 times as wide as its threads pressed into one solid round."
    ),
    Thickness.LABEL_PRESSED: "Pressed in cloth, {tex} tex of {make}.",
    Thickness.LABEL_SOFT: "As it lies before it is pressed, {tex} tex of {make}.",
    Thickness.IN_USE: "Between pressed and soft, as a tight end lies.",
    Thickness.PUSHED: "{turns} turns pushed together in {window} mm.",
    Thickness.BESIDE_LAID: "{turns} turns laid side by side in {window} mm, which come out thicker than the yarn is.",
    Thickness.WRAPPED_SOMEHOW: "{turns} turns wrapped in {window} mm.",
    Thickness.WRAP_PRESSED: "A share of what was wrapped.",
    Thickness.STRANDS: Plural("strands", "{strands} strand.", "{strands} strands as one round bundle."),
    MakeWord.CORD: "a hard cord",
    MakeWord.FIRM: "a firm yarn",
    MakeWord.SOFT: "a soft yarn",
    MakeWord.FIRM_OR_SOFT: "a firm or a soft yarn",
    MakeWord.CORD_OR_FIRM: "a hard cord or a firm yarn",
    Conflict.WRAP_LABEL: (
        "{wrap} and the weight of the same yarn contradict each other: by its weight it lies {least} to {most} mm "
        "thick, wrapped {low} to {high} mm." + _BOTH + "wrap it once more, and look at its label."
    ),
    Conflict.BEADS_THICKNESS: (
        "{rows} and the thickness of the yarns contradict each other: by the yarns a bead stands {least} to {most} mm "
        "high, counted {low} to {high} mm." + _BOTH + "count beads up one end once more, and wrap the weft."
    ),
    Conflict.PICK_TAKE_UP: (
        "weft.pick and the thickness of the yarns contradict each other: by the yarns the weft takes up {least} to "
        "{most} %, drawn out {low} to {high} %." + _BOTH + "draw out another pick."
    ),
    Conflict.SAMPLE_COMPUTED: (
        "weft.sample and the weft computed pick by pick contradict each other: computed {least} to {most} g, by the "
        "sample {low} to {high} g." + _BOTH + "weigh the weft of another sample."
    ),
    Pair.FIRST_GUESS: "A first guess only: the wrap of both yarns together always counts for more.",
    Pair.SUM: "1 / (warp + weft) = 1 / ({warp} + {weft} mm), as they lie soft.",
    Pair.WARP_ALONE: (
        "A first guess only, since the weft is not known: at usual setts the warp takes 27 to 50 % of the pitch "
        "(our own choice)."
    ),
    Pair.WARP_SHARE: "From the warp alone, {warp} mm as it lies soft.",
    Pair.NEXT_WARP: "Wrap the warp next, pushed together until the window takes no more: that narrows the guess most.",
    Pair.NEXT_WEFT: (
        "Wrap the weft next, all its strands together, pushed together until the window takes no more: that narrows "
        "the guess most."
    ),
    Pair.NEXT_BOTH: "Wrap warp and weft together next, by turns: their pairs give the sett itself.",
    Pair.WARP_THIN: _WARP + "far too thin: it cuts into the weft and lets the cloth sag.",
    Pair.WARP_THIN_NOTE: _WARP + "thin for tapestry, though usual in rugs: the cloth will be softer.",
    Pair.WARP_THICK_NOTE: _WARP + "rather thick: the weft finds little room between the ends.",
    Pair.WARP_THICK: _WARP + "too thick: it leaves the weft no room between the ends.",
    Pair.NO_GAP: (
        "The weft ({thick} mm) has no gap to lie in: the ends touch, so the weft cannot pass down and cover them."
    ),
    Pair.WEFT_THIN: _WEFT + "too thin: it does not fill the gap, so the cloth is slack; add a strand.",
    Pair.WEFT_THIN_NOTE: _WEFT + "rather thin: another strand would make a firmer cloth.",
    Pair.WEFT_THICK_NOTE: _WEFT + "rather thick: beat hard, or it will not cover the warp.",
    Pair.WEFT_THICK: (
        _WEFT + "too thick: it cannot be beaten down to cover the warp and pushes the edges out; take less."
    ),
    Pair.LADDER_CM: _LADDER + "{usual} per cm is near.",
    Pair.LADDER_INCH: _LADDER + "{usual} an inch is near.",
}

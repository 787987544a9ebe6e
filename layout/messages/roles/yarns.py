"""The roles of what is said of yarns."""

from __future__ import annotations

from layout.messages.catalogue import Role


class YarnReason(Role):
    """Why a yarn weighs what it weighs."""

    LABEL = "yarnreason.label"
    LABEL_PLIES = "yarnreason.label_plies"
    BALL = "yarnreason.ball"
    WEIGHED = "yarnreason.weighed"
    FOLDED = "yarnreason.folded"
    FIBRE_BY_COUNT = "yarnreason.fibre_by_count"
    FIBRE_WOOL = "yarnreason.fibre_wool"


class YarnNeed(Role):
    """Refusals of yarns, counts and labels."""

    PLIES_FINISHED = "yarnneed.plies_finished"
    THREADS = "yarnneed.threads"
    TWO_THREADS = "yarnneed.two_threads"
    STRANDS = "yarnneed.strands"
    TWO_STRANDS = "yarnneed.two_strands"
    TEX = "yarnneed.tex"
    USUAL_YARN = "yarnneed.usual_yarn"
    CUT = "yarnneed.cut"
    SYSTEM = "yarnneed.system"
    NUMBER = "yarnneed.number"
    STROKE = "yarnneed.stroke"
    TWO_MEANINGS = "yarnneed.two_meanings"
    WHICH = "yarnneed.which"
    FIRST_MEANING = "yarnneed.first_meaning"
    A_COUNT = "yarnneed.a_count"
    YARDS_IN_CUTS = "yarnneed.yards_in_cuts"
    FIBRE = "yarnneed.fibre"
    ONE_WAY = "yarnneed.one_way"
    BESIDE = "yarnneed.beside"
    WEIGHED = "yarnneed.weighed"
    SYSTEM_OF_COUNT = "yarnneed.system_of_count"
    BESIDE_THREADS = "yarnneed.beside_threads"
    GRAMS_AND_LENGTH = "yarnneed.grams_and_length"
    ONE_OF_THEM = "yarnneed.one_of_them"
    LABEL = "yarnneed.label"
    LABEL_WEIGHED = "yarnneed.label_weighed"
    LABEL_NO_PLIES = "yarnneed.label_no_plies"
    PLIES_ONCE = "yarnneed.plies_once"
    COUNT_OR_BALL = "yarnneed.count_or_ball"
    STROKE_FOR_ORDER = "yarnneed.stroke_for_order"
    COUNT_SYSTEM = "yarnneed.count_system"
    WEIGHT = "yarnneed.weight"


class YarnNumber(Role):
    """Numbers of a yarn, as refusals of them name them."""

    COUNT = "yarnnumber.count"
    PLIES = "yarnnumber.plies"
    BALL_GRAMS = "yarnnumber.ball_grams"
    BALL_METRES = "yarnnumber.ball_metres"
    GRAMS = "yarnnumber.grams"
    METRES = "yarnnumber.metres"
    STRANDS = "yarnnumber.strands"
    STRANDS_TOGETHER = "yarnnumber.strands_together"
    TURNS = "yarnnumber.turns"
    WINDOW = "yarnnumber.window"
    WRAPS = "yarnnumber.wraps"
    VOLUME = "yarnnumber.volume"
    PITCH = "yarnnumber.pitch"
    SETT = "yarnnumber.sett"


class YarnSystem(Role):
    """The names of the systems of counts; `NAMED` says one with what it counts."""

    NAMED = "yarnsystem.named"
    TEX = "yarnsystem.tex"
    DTEX = "yarnsystem.dtex"
    DENIER = "yarnsystem.denier"
    NM = "yarnsystem.nm"
    NE = "yarnsystem.ne"
    WORSTED = "yarnsystem.worsted"
    RUN = "yarnsystem.run"
    LEA = "yarnsystem.lea"
    M_100G = "yarnsystem.m_100g"
    YD_LB = "yarnsystem.yd_lb"


class Counts(Role):
    """What is counted in a system of counts."""

    TEX = "counts.tex"
    DTEX = "counts.dtex"
    DENIER = "counts.denier"
    NM = "counts.nm"
    NE = "counts.ne"
    WORSTED = "counts.worsted"
    RUN = "counts.run"
    LEA = "counts.lea"


class Fibre(Role):
    """The names of fibres."""

    COTTON = "fibre.cotton"
    WOOL = "fibre.wool"
    MOHAIR = "fibre.mohair"
    ALPACA = "fibre.alpaca"
    SILK = "fibre.silk"
    LINEN = "fibre.linen"
    HEMP = "fibre.hemp"
    JUTE = "fibre.jute"
    VISCOSE = "fibre.viscose"
    POLYESTER = "fibre.polyester"
    ACRYLIC = "fibre.acrylic"
    NYLON = "fibre.nylon"


class ThicknessKind(Role):
    """Which of the two thicknesses of a yarn is meant."""

    SOFT = "thicknesskind.soft"
    COMPRESSED = "thicknesskind.compressed"


class Thickness(Role):
    """Why a yarn is as thick as it is."""

    WRAPPED = "thickness.wrapped"
    VOLUME = "thickness.volume"
    VOLUME_COTTON = "thickness.volume_cotton"
    PRESSED = "thickness.pressed"
    ROUND = "thickness.round"
    LOOSEST = "thickness.loosest"
    LABEL_PRESSED = "thickness.label_pressed"
    LABEL_SOFT = "thickness.label_soft"
    IN_USE = "thickness.in_use"
    PUSHED = "thickness.pushed"
    BESIDE_LAID = "thickness.beside_laid"
    WRAPPED_SOMEHOW = "thickness.wrapped_somehow"
    WRAP_PRESSED = "thickness.wrap_pressed"
    STRANDS = "thickness.strands"


class Pair(Role):
    """How warp and weft go together."""

    FIRST_GUESS = "pair.first_guess"
    SUM = "pair.sum"
    WARP_ALONE = "pair.warp_alone"
    WARP_SHARE = "pair.warp_share"
    NEXT_WARP = "pair.next_warp"
    NEXT_WEFT = "pair.next_weft"
    NEXT_BOTH = "pair.next_both"
    WARP_THIN = "pair.warp_thin"
    WARP_THIN_NOTE = "pair.warp_thin_note"
    WARP_THICK_NOTE = "pair.warp_thick_note"
    WARP_THICK = "pair.warp_thick"
    NO_GAP = "pair.no_gap"
    WEFT_THIN = "pair.weft_thin"
    WEFT_THIN_NOTE = "pair.weft_thin_note"
    WEFT_THICK_NOTE = "pair.weft_thick_note"
    WEFT_THICK = "pair.weft_thick"
    LADDER_CM = "pair.ladder_cm"
    LADDER_INCH = "pair.ladder_inch"


class MakeWord(Role):
    """What a yarn is, or may be."""

    CORD = "makeword.cord"
    FIRM = "makeword.firm"
    SOFT = "makeword.soft"
    FIRM_OR_SOFT = "makeword.firm_or_soft"
    CORD_OR_FIRM = "makeword.cord_or_firm"


class Conflict(Role):
    """Two facts of a kit that cannot both be true."""

    WRAP_LABEL = "conflict.wrap_label"
    BEADS_THICKNESS = "conflict.beads_thickness"
    PICK_TAKE_UP = "conflict.pick_take_up"
    SAMPLE_COMPUTED = "conflict.sample_computed"

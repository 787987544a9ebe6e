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
    STRANDS = "yarnneed.strands"
    TEX = "yarnneed.tex"
    CUT = "yarnneed.cut"
    SYSTEM = "yarnneed.system"
    NUMBER = "yarnneed.number"
    STROKE = "yarnneed.stroke"
    TWO_MEANINGS = "yarnneed.two_meanings"
    WHICH = "yarnneed.which"
    FIRST_MEANING = "yarnneed.first_meaning"
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


class Thickness(Role):
    """Why a yarn is as thick as it is."""

    WRAPPED = "thickness.wrapped"
    VOLUME = "thickness.volume"
    VOLUME_COTTON = "thickness.volume_cotton"
    PRESSED = "thickness.pressed"
    MIXED = "thickness.mixed"
    BESIDE = "thickness.beside"
    ROUND = "thickness.round"
    BUNCHED = "thickness.bunched"


class Pair(Role):
    """How warp and weft go together."""

    OFF_PRESSED = "pair.off_pressed"
    OFF_SOFT = "pair.off_soft"
    FIRST_GUESS = "pair.first_guess"
    SUM = "pair.sum"
    WARP_THIN = "pair.warp_thin"
    WARP_THICK = "pair.warp_thick"
    NO_GAP = "pair.no_gap"
    WEFT_THIN = "pair.weft_thin"
    WEFT_THIN_SWOLLEN = "pair.weft_thin_swollen"
    WEFT_THICK = "pair.weft_thick"
    LADDER_CM = "pair.ladder_cm"
    LADDER_INCH = "pair.ladder_inch"

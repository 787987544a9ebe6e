"""What is refused of one number, length or word, whatever key it stands at."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Entry, Known, SettUnit, Unit, Value

_SIZE = '{names} or a size such as "210 x 297 mm"'
_LANGUAGE = '"en" (English), "es" (Spanish), "de" (German) or "fr" (French)'
_LENGTH = "a length from {low} to {high}"
_SETT = "a number of ends per inch, per cm or per 10 cm"
_PULL = "a pull with its unit (N, cN, g, kg, oz or lb)"

MESSAGES: dict[Role, str | Plural] = {
    Value.LENGTH: needs("a length with its unit (mm, cm, m, in, ft or yd)"),
    Value.SETT: needs(_SETT),
    Value.SIZE: needs("a width and a height with their unit"),
    Value.SHORTER: needs("a shorter text, in at most {most} characters"),
    Value.PULL: needs(_PULL),
    Value.OVER_ZERO: needs("a fraction over something other than 0"),
    Value.PROPER: needs("a fraction of less than 1 after the whole number"),
    Value.ONE_WAY: needs(
        "a number that can be read in one way only (a comma before three digits may mean {thousands} or {decimal})"
    ),
    Value.DIGITS: needs("at most {whole} digits before the decimal sign and {decimals} after it"),
    Value.ABOVE_ZERO: needs("{what} above zero"),
    Value.ABOVE_ZERO_WITHIN: needs("{what} above zero ({least} to {most})"),
    Value.WHOLE: needs("{what}, a whole number from {least} to {most}"),
    Value.FAR_TOO_LARGE: "a number far too large",
    Value.NOT_SHOWN: "a value far too large to show",
    Unit.MM: "{number} mm",
    Unit.CM: "{number} cm",
    Unit.DM: "{number} dm",
    Unit.METRE: "{number} m",
    Unit.INCH: "{number} in",
    Unit.FOOT: "{number} ft",
    Unit.YARD: "{number} yd",
    Unit.NEWTON: "{number} N",
    Unit.CENTINEWTON: "{number} cN",
    Unit.GRAM: "{number} g",
    Unit.KILOGRAM: "{number} kg",
    Unit.OUNCE: "{number} oz",
    Unit.POUND: "{number} lb",
    Unit.PER_CENT: "{number} %",
    Known.MEASURED: "measured",
    Known.COMPUTED: "computed",
    Known.ASSUMED: "assumed",
    SettUnit.EPI: "{number} epi",
    SettUnit.PER_INCH: Plural("number", "{number} end per inch", "{number} ends per inch"),
    SettUnit.PER_CM: Plural("number", "{number} end per cm", "{number} ends per cm"),
    SettUnit.PER_10_CM: Plural("number", "{number} end per 10 cm", "{number} ends per 10 cm"),
    SettUnit.BOTH: "{first} ({second})",
    SettUnit.NOTCHES_PER_INCH: Plural("number", "{number} notch per inch", "{number} notches per inch"),
    SettUnit.NOTCHES_PER_CM: Plural("number", "{number} notch per cm", "{number} notches per cm"),
    SettUnit.NOTCHES_PER_10_CM: Plural("number", "{number} notch per 10 cm", "{number} notches per 10 cm"),
    Entry.VERSION: needs("{version}, the only version there is"),
    Entry.LENGTH_BETWEEN: needs(_LENGTH),
    Entry.LENGTH_BETWEEN_MEANT: needs(_LENGTH + ' (did you mean "{meant}"?)'),
    Entry.EASE_BETWEEN: needs("a slot whose ease is a length from {low} to {high}"),
    Entry.WIDTH: needs('a length with its unit (mm, cm, m, in, ft or yd), or "{word}"'),
    Entry.WIDTH_BETWEEN: needs(_LENGTH + ', or "{word}"'),
    Entry.WIDTH_BETWEEN_MEANT: needs(_LENGTH + ' (did you mean "{meant}"?), or "{word}"'),
    Entry.SETT_BETWEEN: needs("a sett from 0.1 to 60 ends per cm (0.254 to 152.4 epi)"),
    Entry.PULL_BETWEEN: needs("a pull from 0.01 to 100 N (about 1 g to 10 kg)"),
    Entry.DENSITY: needs("a number of notches per inch, per cm or per 10 cm"),
    Entry.DENSITY_BETWEEN: needs("notches 0.1 to 60 per cm (0.254 to 152.4 per inch)"),
    Entry.FLAG: needs("true or false, without quotes"),
    Entry.CHOICE: needs("{before} or {last}"),
    Entry.CHOICE_MEANT: needs("{before} or {last} (did you mean {meant}?)"),
    Entry.LANGUAGE: needs(_LANGUAGE),
    Entry.LANGUAGE_MEANT: needs(_LANGUAGE + ' (did you mean "{meant}"?)'),
    Entry.PAPER: needs(_SIZE),
    Entry.PAPER_MEANT: needs(_SIZE + " (did you mean {meant}?)"),
    Entry.PAPER_BETWEEN: needs("a sheet of at least 148 x 210 mm and at most 3500 mm along a side"),
    Entry.NUMBER: needs("a plain number above zero and at most {most}"),
    Entry.COLOUR: needs('a colour as "#" and six of 0-9 and a-f'),
    Entry.WHOLE: needs("a whole number from {least} to {most}"),
    Entry.AMOUNT: needs("a number from {least} to {most}, without quotes"),
    Entry.SHARE: needs('a share from 0 up to (not including) 1, such as 0.05 or "5 %"'),
    Entry.DEVIATION: needs('a deviation from {least} to {most} per cent, in quotes with the sign %, such as "0.21 %"'),
    Entry.COUNT: needs("a count above zero"),
    Entry.NAME: needs("a name of 1 to {most} characters in one line"),
    Entry.NAME_LONG: (
        "needs a name of 1 to {most} characters in one line, got {got} ({count} characters); for example {example}"
    ),
    Entry.NAME_SEEN: needs("letters, figures and signs that can be seen"),
    Entry.NAME_LEFT_TO_RIGHT: needs("letters that are written from left to right"),
    Entry.NAME_ACCENTS: needs("accents that are one character with their letter"),
    Entry.NAME_FONT: needs("characters that the print font has"),
    Entry.SIGN_IN_NAME: "'{sign}' ({point}) in {name}",
}

"""The plural rule of a gettext catalogue, for whole numbers and for fractions such as 1.5.

The rule is the C expression of its header (GNU gettext, "Plural forms"). The standard library evaluates it for whole
numbers alone.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from functools import cache

from layout.messages.catalogue import CatalogueError

Number = Fraction | int
Rule = Callable[[Number], int]
_Part = Callable[[Number], Number]

_TOKEN = re.compile(r"\s*(\|\||&&|[=!<>]=|\d{1,9}|[n?:<>+\-*/%!()])")
_LEVELS: tuple[dict[str, Callable[[Number, Number], Number]], ...] = (
    {"||": lambda a, b: int(bool(a) or bool(b))},
    {"&&": lambda a, b: int(bool(a) and bool(b))},
    {"==": lambda a, b: int(a == b), "!=": lambda a, b: int(a != b)},
    {
        "<": lambda a, b: int(a < b),
        ">": lambda a, b: int(a > b),
        "<=": lambda a, b: int(a <= b),
        ">=": lambda a, b: int(a >= b),
    },
    {"+": lambda a, b: a + b, "-": lambda a, b: a - b},
    {"*": lambda a, b: a * b, "/": lambda a, b: a // b, "%": lambda a, b: a % b},
)
"""The operators of two sides, by how weakly they bind. Division is that of whole numbers, as in C."""
_DEEPEST = 20


@cache
def rule(expression: str) -> Rule:
    """The form that a number takes, counted from 0, by an expression such as "n != 1". CatalogueError for any other."""
    parser = _Parser(expression)
    found = parser.choice(0)
    if parser.left:
        raise parser.wrong()
    return lambda number: int(found(number))


class _Parser:
    """What is left of an expression; each method takes away what it reads, and gives a function of n."""

    def __init__(self, expression: str) -> None:
        self.expression = expression
        self.left: list[str] = []
        at, text = 0, expression.rstrip()
        while at < len(text):
            match = _TOKEN.match(text, at)
            if match is None:
                raise self.wrong()
            self.left.append(match[1])
            at = match.end()
        self.left.reverse()

    def wrong(self) -> CatalogueError:
        return CatalogueError(f"no rule of plural forms: {self.expression!r}")

    def take(self, *wanted: str) -> str:
        """The next token, if it is one of those; else nothing is taken."""
        return self.left.pop() if self.left and self.left[-1] in wanted else ""

    def need(self, wanted: str) -> None:
        if not self.take(wanted):
            raise self.wrong()

    def choice(self, depth: int) -> _Part:
        """A condition with two outcomes, or what binds more strongly."""
        if depth > _DEEPEST:
            raise self.wrong()
        asked = self.sides(0, depth)
        if not self.take("?"):
            return asked
        yes = self.choice(depth + 1)
        self.need(":")
        no = self.choice(depth + 1)
        return lambda n: yes(n) if asked(n) else no(n)

    def sides(self, level: int, depth: int) -> _Part:
        """A row of operators of one level."""
        if level == len(_LEVELS):
            return self.single(depth)
        found, table = self.sides(level + 1, depth), _LEVELS[level]
        while sign := self.take(*table):
            found = _joined(table[sign], found, self.sides(level + 1, depth))
        return found

    def single(self, depth: int) -> _Part:
        """The number n, a number, a negation or something in brackets."""
        if depth > _DEEPEST:
            raise self.wrong()
        if self.take("!"):
            inner = self.single(depth + 1)
            return lambda n: int(not inner(n))
        if self.take("("):
            inner = self.choice(depth + 1)
            self.need(")")
            return inner
        if self.take("n"):
            return lambda n: n
        if not self.left or not self.left[-1].isdecimal():
            raise self.wrong()
        number = int(self.left.pop())
        return lambda _: number


def _joined(sign: Callable[[Number, Number], Number], first: _Part, second: _Part) -> _Part:
    return lambda n: sign(first(n), second(n))

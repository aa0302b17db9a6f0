"""Lengths in sentences, in the units that a pattern's makers measure in.

In: exact lengths in inches, how they are measured. Out: text.
Invariant: every number is written by `publish.units` or `publish.measures`; what leads stands
first and what follows it in parentheses; nothing is measured or added up here but the runs of
stitching that a total is told of.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.measures import INCHES, METRE, Measures
from publish.surd import Length, Surd
from publish.units import (
    YARD,
    cm_text,
    decimal_text,
    inches_text,
    maker_inches,
    metres_text,
    mm_text,
    on_ruler,
    round_near,
    round_up,
    yards_text,
)


@dataclass(frozen=True)
class LengthWords:
    """What a language puts round lengths; `{}` stands for what it is put round."""

    about: str
    square: str = ""
    """Of a square by its side; where it is empty, both sides are told."""


ENGLISH = LengthWords("about {}", "{} square")
"""The words of `en`, in which findings are told as well."""


@dataclass(frozen=True)
class Lengths:
    """The saying of lengths in a language, whose decimal mark is that of the measures."""

    measures: Measures = INCHES
    words: LengthWords = ENGLISH

    def measure(self, length: Length) -> str:
        """Return `18 1/2 in (47.0 cm)`, or `47 cm (18 1/2 in)`, or one of the two alone.

        A length that no ruler has is rounded and said to be: `about 17 in (43.2 cm)`.
        """
        said = f"{self.short(length)}{self._behind(self._other(length))}"
        return self._about(said, length)

    def short(self, length: Length) -> str:
        """Return a length in the unit that leads, alone: `18 1/2 in`, `47 cm`."""
        return self.measures.text(length)

    def rectangle(self, width: Length, length: Length) -> str:
        """Return `12 in × 18 in (30.5 cm × 45.7 cm)`; a square as `18 in (45.7 cm) square`."""
        if width == length and self.words.square:
            return self.words.square.format(self.measure(width))
        both = f"{self.short(width)} × {self.short(length)}"
        other = f"{self._other(width)} × {self._other(length)}"
        return self._about(f"{both}{self._behind(other)}", width, length)

    def to_buy(self, yards: Fraction, metres: Fraction) -> str:
        """Return a purchase, rounded up by each system's step: `1 3/8 yd (1.30 m)`; what leads
        alone where a difference is none in what follows."""
        first = self.measures.bought(yards, metres)
        if not (yards if self.measures.metric else metres):
            return first
        metric = self.measures.marked(metres_text(metres))
        return first + self._behind(yards_text(yards) if self.measures.metric else metric)

    def run(self, *lengths: float) -> str:
        """Return a long run of stitching, given in inches: `2 1/4 yd (2.1 m)`.

        It is told to the nearest quarter yard and tenth of a metre. Of several runs it is the
        sum of what is told of each, so that a total is the sum of the rows above it.
        """
        yards = sum((_near(n, YARD / 4) for n in lengths), Fraction(0))
        metres = sum((_near(n, METRE / 10) for n in lengths), Fraction(0)) / METRE
        return self._pair(yards_text(yards), f"{self.measures.marked(decimal_text(metres, 1))} m")

    def thread(self, length: Fraction) -> str:
        """Return thread, given in inches, rounded up to whole yards and metres."""
        metres = f"{round_up(length, METRE) / METRE} m"
        return self._pair(yards_text(round_up(length, YARD)), metres)

    def _pair(self, yards: str, metres: str) -> str:
        first, second = (metres, yards) if self.measures.metric else (yards, metres)
        return first + self._behind(second)

    def _behind(self, other: str) -> str:
        return f" ({other})" if self.measures.both else ""

    def _about(self, said: str, *lengths: Length) -> str:
        """Return a text, said to be rounded where one of the lengths in it is."""
        exact = all(map(self.measures.exact, lengths))
        return said if exact else self.words.about.format(said)

    def _other(self, length: Length) -> str:
        """Return a length as the system has it that does not lead."""
        if not self.measures.metric:
            return self.measures.marked(metric(length))
        near = self.measures.near(length)
        said = inches_text(near)
        if on_ruler(near) or not self.measures.exact(length):
            return said
        return self.words.about.format(said)


def metric(length: Length) -> str:
    """Return a length in inches as `6 mm` below one inch and `47.0 cm` above.

    A length on the diagonal is that of the inches beside it, so that the two agree.
    """
    read = maker_inches(length) if isinstance(length, Surd) else length
    return mm_text(read) if read < 1 else cm_text(read)


def _near(length: float, step: Fraction) -> Fraction:
    """Return the multiple of a step nearest to a length, at least one."""
    return max(step, round_near(Fraction(length), step))


def spools(length: Fraction, spool_metres: Fraction) -> int:
    """Return how many spools of so many metres hold a length in inches."""
    return max(1, int(round_up(length / (spool_metres * METRE), Fraction(1))))

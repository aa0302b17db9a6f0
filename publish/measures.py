"""How a pattern's makers measure: what cut sizes are rounded to, and how a length is told.

In: the pattern's key `units`. Out: `Measures`, a frozen value that the pattern carries and
that whatever rounds or tells a length is handed.
Invariant: the unit that leads decides every grid. Where centimetres lead, sizes are planned
on whole millimetres from the finished sizes and the seam, never converted from inches.

A metric ruler for quilting is marked in millimetres, so that cut sizes are rounded up to the
next one; what is trimmed or laid out larger than it need be (backing, batting, squares of web,
a bias square, cloth for a foundation) to 5 mm. A seam of 7.5 mm is usual, so that half a
millimetre is told as it is. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.surd import Exact, Surd
from publish.units import (
    EIGHTH,
    INCH_IN_MM,
    SIXTEENTH,
    decimal_text,
    fraction_text,
    inches_text,
    maker_inches,
    on_ruler,
    round_down,
    round_near,
    round_up,
    yards_text,
)

UNITS = ("inches, then metric", "inches", "metric", "metric, then inches")
"""What `units` may say, the default first."""
MM = 1 / INCH_IN_MM
"""Inches in a millimetre."""
CM = 10 * MM
METRE = 1000 * MM
_SHORT = 2 * CM
"""Inches below which a metric length is told in millimetres."""


@dataclass(frozen=True)
class Measures:
    """What leads, `inches` or `metric`, and whether the other follows in parentheses."""

    units: str = UNITS[0]
    mark: str = "."
    """Between whole and decimals, as the language of the pattern has it."""

    @property
    def metric(self) -> bool:
        """Return whether centimetres lead."""
        return self.units.startswith("metric")

    @property
    def both(self) -> bool:
        """Return whether the other system follows in parentheses."""
        return "then" in self.units

    @property
    def has_inches(self) -> bool:
        """Return whether an inch is told anywhere."""
        return not self.metric or self.both

    @property
    def names(self) -> tuple[str, ...]:
        """Return the units that lengths to cut and sew by are told in, as text has them."""
        return ("cm", "mm") if self.metric else ("in",)

    # Grids, in inches

    @property
    def grid(self) -> Fraction:
        """Return the step that cut sizes are rounded up to: 1/8 in or 1 mm."""
        return MM if self.metric else EIGHTH

    @property
    def rough(self) -> Fraction:
        """Return the step of what is trimmed later, or larger than it need be: 1/8 in or 5 mm."""
        return 5 * MM if self.metric else EIGHTH

    @property
    def coarse(self) -> Fraction:
        """Return the step of cloth that is trimmed on all sides: 1/4 in or 5 mm."""
        return 5 * MM if self.metric else 2 * EIGHTH

    @property
    def finest(self) -> Fraction:
        """Return the distance between two lines of a ruler: 1/16 in or 1 mm."""
        return MM if self.metric else SIXTEENTH

    @property
    def whole(self) -> Fraction:
        """Return what large squares are counted up in: whole inches or centimetres."""
        return CM if self.metric else Fraction(1)

    def up(self, length: Exact) -> Fraction:
        """Return the least length on the grid of cut sizes that is not below another."""
        return round_up(length, self.grid)

    def rough_up(self, length: Exact) -> Fraction:
        """Return a length rounded up to the step of what is trimmed later."""
        return round_up(length, self.rough)

    def down(self, length: Exact) -> Fraction:
        """Return the greatest length on the grid of cut sizes that is not above another."""
        return round_down(length, self.grid)

    def usual(self, inches: Fraction) -> Fraction:
        """Return a figure of the trade, known in inches, as makers who measure so have it.

        In metric it is the round figure nearest to it: whole millimetres below 1 cm, 5 mm
        below 10 cm, whole centimetres above. It is a rule of thumb in either system.
        """
        if not self.metric:
            return inches
        step = MM if inches < CM else 5 * MM if inches < 10 * CM else CM
        return max(step, round_near(inches, step))

    @property
    def checks(self) -> tuple[Fraction, Fraction]:
        """Return the sides of the two check squares on template sheets: 1 in, or where no inch
        is told 2.5 cm; and 5 cm."""
        return (Fraction(1) if self.has_inches else Fraction(5, 2) * CM), 5 * CM

    # Telling

    def exact(self, length: Exact) -> bool:
        """Return whether a length is told as it is, on a line of the ruler or, in metric, on
        half a millimetre."""
        if self.metric:
            return not isinstance(length, Surd) and length % (MM / 2) == 0
        return on_ruler(length)

    def near(self, length: Exact) -> Fraction:
        """Return the length that a maker reads, in inches: where `exact` is false, rounded."""
        if not self.metric:
            return maker_inches(length)
        return round_near(length, MM / 2 if self.exact(length) else MM)

    def text(self, length: Exact) -> str:
        """Return a length in the unit that leads: `2 1/2 in`, `6.4 cm`, `7.5 mm`."""
        return self.marked(metric_text(self.near(length))) if self.metric else inches_text(length)

    def marked(self, text: str) -> str:
        """Return a decimal number as text, with its unit, with the language's mark."""
        return text.replace(".", self.mark)

    def number(self, length: Exact) -> str:
        """Return the number of a length without its unit, in inches or in centimetres."""
        near = self.near(length)
        return self.marked(_decimal(near / CM)) if self.metric else fraction_text(near)

    @property
    def unit(self) -> str:
        """Return the unit of `number`."""
        return "cm" if self.metric else "in"

    def sides(self, width: Exact, height: Exact) -> str:
        """Return two sides with one unit: `2 1/2 × 4 in`, `6.4 × 10 cm`."""
        return f"{self.number(width)} × {self.number(height)} {self.unit}"

    def bought(self, yards: Fraction, metres: Fraction) -> str:
        """Return a purchase, given rounded up to each system's step, in what leads."""
        return self.marked(metre_text(metres)) if self.metric else yards_text(yards)


INCHES = Measures()
"""Inches, and metric in parentheses."""


def _decimal(value: Fraction) -> str:
    """Return a number that two decimals hold exactly, without needless zeros."""
    text = decimal_text(value, 2)
    return text.rstrip("0").rstrip(".")


def metric_text(length: Fraction) -> str:
    """Return a length of half millimetres: `7.5 mm`, `26.5 cm`, `3.25 cm`."""
    if abs(length) < _SHORT:
        return f"{_decimal(length / MM)} mm"
    return f"{_decimal(length / CM)} cm"


def metre_text(length: Fraction) -> str:
    """Return cloth by length in whole centimetres: `60 cm`, `1.30 m`, as a shop says it."""
    if length < METRE:
        return f"{decimal_text(length / CM, 0)} cm"
    return f"{decimal_text(length / METRE, 2)} m"

"""Exact numbers a + b√2: lengths along and across the diagonal of a square.

In: `Fraction`s. Out: `Surd`, and `Exact`, which is a `Fraction` or a `Surd`.
Invariant: arithmetic and comparison are exact, and a result without a root is a
`Fraction` again, so that where everything is rational nothing but `Fraction` is met.

The diagonal of a square of side 1 is √2, which no fraction is; blocks on point put
corners at multiples of such diagonals. Sums, products and quotients of numbers a + b√2
are such numbers again, so nothing on point needs to be rounded before a maker reads it.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from math import gcd, isqrt, sqrt
from typing import Any, TypeAlias, Union

Exact: TypeAlias = Union[Fraction, "Surd"]
"""A length that is known exactly."""

Length: TypeAlias = Fraction | Any
"""An `Exact` handed to code that may still say `Fraction`: a type checker lets it pass to
either. Every rational length is a `Fraction`; set this to `Exact` to find what is not yet
ready for a length on the diagonal."""

_NOTHING = Fraction(0)


@dataclass(frozen=True, eq=False)
class Surd:
    """The number `a + b√2`; equal to a `Fraction`, and with its hash, when `b` is 0."""

    a: Fraction
    b: Fraction

    def __add__(self, other: Exact | int) -> Exact:
        a, b = parts(other)
        return exact(self.a + a, self.b + b)

    __radd__ = __add__

    def __neg__(self) -> Exact:
        return exact(-self.a, -self.b)

    def __pos__(self) -> Exact:
        return exact(self.a, self.b)

    def __abs__(self) -> Exact:
        return -self if _sign(self) < 0 else +self

    def __sub__(self, other: Exact | int) -> Exact:
        a, b = parts(other)
        return exact(self.a - a, self.b - b)

    def __rsub__(self, other: Exact | int) -> Exact:
        return -(self - other)

    def __mul__(self, other: Exact | int) -> Exact:
        a, b = parts(other)
        if not b:
            return exact(self.a * a, self.b * a)
        if not a:
            return exact(2 * self.b * b, self.a * b)
        return exact(self.a * a + 2 * self.b * b, self.a * b + self.b * a)

    __rmul__ = __mul__

    def __truediv__(self, other: Exact | int) -> Exact:
        """Divide exactly; ZeroDivisionError for zero, as with fractions."""
        a, b = parts(other)
        norm = a * a - 2 * b * b  # zero only for zero: √2 is no fraction
        return self * exact(a / norm, -b / norm)

    def __rtruediv__(self, other: Exact | int) -> Exact:
        return exact(*parts(other)) * (1 / self.norm) * exact(self.a, -self.b)

    def __floordiv__(self, other: Exact | int) -> int:
        return floor(self / other)

    def __rfloordiv__(self, other: Exact | int) -> int:
        return floor(other / self)

    def __mod__(self, other: Exact | int) -> Exact:
        return self - other * (self // other)

    def __rmod__(self, other: Exact | int) -> Exact:
        return other - self * (other // self)

    def __divmod__(self, other: Exact | int) -> tuple[int, Exact]:
        return self // other, self % other

    def __rdivmod__(self, other: Exact | int) -> tuple[int, Exact]:
        return other // self, other % self

    def __floor__(self) -> int:
        return floor(self)

    def __ceil__(self) -> int:
        return -floor(-self)

    def __float__(self) -> float:
        """Return the nearest number that floats allow, or one of its neighbours."""
        return self._near

    @cached_property
    def _near(self) -> float:
        if (self.a >= 0) == (self.b >= 0):
            return float(self.a) + float(self.b) * sqrt(2)
        # Parts of opposite sign may all but cancel; the norm's quotient does not.
        return float(self.norm) / (float(self.a) - float(self.b) * sqrt(2))

    def __bool__(self) -> bool:
        return bool(self.a or self.b)

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Surd | Fraction | int):
            return (self.a, self.b) == parts(other)
        return NotImplemented

    def __hash__(self) -> int:
        return hash((self.a, self.b)) if self.b else hash(self.a)

    def __lt__(self, other: Exact | int) -> bool:
        return _sign(self - other) < 0

    def __le__(self, other: Exact | int) -> bool:
        return _sign(self - other) <= 0

    def __gt__(self, other: Exact | int) -> bool:
        return _sign(self - other) > 0

    def __ge__(self, other: Exact | int) -> bool:
        return _sign(self - other) >= 0

    def __str__(self) -> str:
        """Return `3 + 4√2`: for notes and tests; a maker reads `units.inches_text`."""
        root = f"{'' if abs(self.b) == 1 else abs(self.b)}√2"
        if not self.a:
            return f"-{root}" if self.b < 0 else root
        return f"{self.a} {'-' if self.b < 0 else '+'} {root}" if self.b else str(self.a)

    @property
    def norm(self) -> Fraction:
        """Return `a² - 2b²`, the product with the conjugate; zero only for zero."""
        return self.a * self.a - 2 * self.b * self.b


def exact(a: Fraction | int, b: Fraction | int = 0) -> Exact:
    """Return a + b√2, as a `Fraction` where b is 0."""
    return Surd(_fraction(a), _fraction(b)) if b else _fraction(a)


def _fraction(value: Fraction | int) -> Fraction:
    """Return a number as a fraction; one that is one already is not built again."""
    return value if type(value) is Fraction else Fraction(value)


def parts(value: Exact | int) -> tuple[Fraction, Fraction]:
    """Return a and b of a number a + b√2; TypeError for a float, which is not exact."""
    if isinstance(value, Surd):
        return value.a, value.b
    if isinstance(value, Fraction | int):
        return _fraction(value), _NOTHING
    raise TypeError(f"{value!r} is not an exact number")


def floor(value: Exact | int) -> int:
    """Return the greatest whole number that is not above `value`."""
    a, b = parts(value)
    below = a.denominator * b.denominator // gcd(a.denominator, b.denominator)
    whole, times = int(a * below), int(b * below)
    # (whole + times·√2) / below: the root's own floor will do, as `below` is whole.
    root = isqrt(2 * times * times) if times >= 0 else -isqrt(2 * times * times) - 1
    return (whole + root) // below


def root(square: Fraction) -> Exact | None:
    """Return the square root of a number where it is a + b√2: of 9/4, or of 8; else None."""
    for times, value in ((False, square), (True, square / 2)):
        above, below = isqrt(abs(value.numerator)), isqrt(value.denominator)
        if value >= 0 and above * above == value.numerator and below**2 == value.denominator:
            return exact(0, Fraction(above, below)) if times else Fraction(above, below)
    return None


def turned(point: tuple[Length, Length], degrees: int) -> tuple[Length, Length]:
    """Return a point turned clockwise on the page about the origin, by a multiple of 45."""
    x, y = point
    for _ in range(degrees // 90 % 4):
        x, y = -y, x
    if degrees % 90:
        half = Surd(Fraction(0), Fraction(1, 2))
        x, y = (x - y) * half, (x + y) * half
    return x, y


ROOT_2 = Surd(Fraction(0), Fraction(1))
"""The diagonal of a square of side 1."""


def _sign(value: Exact | int) -> int:
    """Return -1, 0 or 1."""
    a, b = parts(value)
    if a * b >= 0:
        return (a + b > 0) - (a + b < 0)
    larger = a if a * a > 2 * b * b else b
    return 1 if larger > 0 else -1

"""Exact lengths: text in, fractions of an inch inside, text out.

In: lengths as makers write them (`2 1/2 in`, `2½"`, `6.5 cm`, `1/4 yd`).
Out: `Fraction` inches, and the strings that a maker reads.
Invariant: no float passes through here on its way to a page; every rounding is one of
the named functions below, so that the rule that was used can be stated beside the number.

1 in = 2.54 cm and 1 yd = 36 in = 0.9144 m exactly (international yard and pound
agreement, 1959).

A length on the diagonal is `Exact`, a + b√2 (see `surd`); it is rounded only here, and
where a maker reads it: to the nearest 1/8 in (`maker_inches`), or to the last place of
a metric length.
"""

from __future__ import annotations

import re
from fractions import Fraction

from publish.surd import Exact, Surd, exact

INCH_IN_MM = Fraction(254, 10)
YARD = Fraction(36)
EIGHTH = Fraction(1, 8)
SIXTEENTH = Fraction(1, 16)
POINTS_PER_INCH = 72

UNITS: dict[str, Fraction] = {
    "in": Fraction(1),
    "ft": Fraction(12),
    "yd": YARD,
    "mm": 1 / INCH_IN_MM,
    "cm": 10 / INCH_IN_MM,
    "m": 1000 / INCH_IN_MM,
}
"""Inches in one of each unit that a pattern may use."""

INCH_UNITS = frozenset(("in", "ft", "yd"))
"""Those of them that are counted in inches."""

_SPELLINGS = {
    '"': "in",
    "″": "in",
    "”": "in",
    "inch": "in",
    "inches": "in",
    "'": "ft",
    "′": "ft",
    "foot": "ft",
    "feet": "ft",
    "yds": "yd",
    "yard": "yd",
    "yards": "yd",
    "metre": "m",
    "metres": "m",
    "meter": "m",
    "meters": "m",
}

_VULGAR = {
    "¼": "1/4",
    "½": "1/2",
    "¾": "3/4",
    "⅓": "1/3",
    "⅔": "2/3",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}

UNIT_WORDS: tuple[str, ...] = (*UNITS, *_SPELLINGS)
"""Every spelling of a unit that a pattern may use, in small letters."""

_NUMBER = re.compile(r"(?:(\d+)[ -])?(\d+)/(\d+)|(\d+(?:\.\d+)?|\.\d+)")

_ROOT = re.compile(r"(?:(-)?(\S+) )?(?:([+-]) ?)?(\S+)?√2")

# A vulgar fraction counts as a letter in Unicode's tables, so `2½in` needs it kept out.
_WITH_UNIT = re.compile(rf"(.*?)\s*([^\W\d_{''.join(_VULGAR)}]+|[\"'″′”])?\.?")


def parse_number(text: str) -> Fraction:
    """Return `2 1/2`, `2½`, `5/2`, `2.5` or `2` exactly; raise ValueError otherwise."""
    plain = text.strip().replace("⁄", "/")
    for sign, ascii_form in _VULGAR.items():
        plain = plain.replace(sign, f" {ascii_form} ")
    match = _NUMBER.fullmatch(" ".join(plain.split()))
    if match is None:
        raise ValueError(f"{text!r} is not a number")
    whole, above, below, decimal = match.groups()
    if decimal is not None:
        return Fraction(decimal)
    if int(below) == 0:
        raise ValueError(f"{text!r} divides by zero")
    return Fraction(int(whole or 0)) + Fraction(int(above), int(below))


def number_in_words(text: str) -> Fraction | None:
    """Return a number found in somebody's words; None for one that only looks like one,
    such as `1/0` or thousands of digits."""
    try:
        return parse_number(text)
    except ValueError:
        return None


def parse_exact(text: str) -> Exact:
    """Return a number as `str` writes an exact one, `3 + 4√2` or `1/2 - √2`, or as a maker
    writes it, `2 1/2`; raise ValueError otherwise."""
    match = _ROOT.fullmatch(text.strip())
    if match is None:
        return parse_number(text)
    below, rest, sign, times = match.groups()
    root = parse_number(times) if times else Fraction(1)
    whole = parse_number(rest) if rest else Fraction(0)
    return exact(-whole if below else whole, -root if sign == "-" else root)


def split_unit(text: str) -> tuple[str, str]:
    """Split `2 1/2 in` into (`2 1/2`, `in`); the unit is empty when there is none."""
    match = _WITH_UNIT.fullmatch(" ".join(text.split()))
    assert match is not None
    number, unit = match.group(1), match.group(2) or ""
    unit = unit.lower()
    return number, _SPELLINGS.get(unit, unit)


def parse_length(text: str) -> Fraction:
    """Return a length such as `2 1/2 in` in inches.

    Raises ValueError with a reason a designer can act on: no unit, an unknown unit, or
    no number.
    """
    number, unit = split_unit(text)
    if not unit:
        raise ValueError("the unit is missing")
    if unit not in UNITS:
        raise ValueError(f"{unit!r} is not a unit of length")
    return parse_number(number) * UNITS[unit]


def round_up(length: Exact, step: Fraction = EIGHTH) -> Fraction:
    """Return the least multiple of `step` that is not below `length`."""
    return -((-length) // step) * step


def round_down(length: Exact, step: Fraction = EIGHTH) -> Fraction:
    """Return the greatest multiple of `step` that is not above `length`."""
    return (length // step) * step


def round_near(length: Exact, step: Fraction = EIGHTH) -> Fraction:
    """Return the multiple of `step` nearest to `length`; halves go up."""
    return ((length + step / 2) // step) * step


def fraction_text(value: Fraction) -> str:
    """Return `2 1/2`, `3/8`, `4` or `0`: the exact value, as a maker writes it."""
    sign = "-" if value < 0 else ""
    whole, rest = divmod(abs(value), 1)
    if rest == 0:
        return f"{sign}{whole}"
    part = f"{rest.numerator}/{rest.denominator}"
    return f"{sign}{whole} {part}" if whole else f"{sign}{part}"


def decimal_text(value: Exact, places: int) -> str:
    """Return `value` rounded half up to `places` decimals, without float arithmetic."""
    scaled = round_near(value * 10**places, Fraction(1))
    digits = f"{abs(scaled.numerator):0{places + 1}d}"
    sign = "-" if scaled < 0 else ""
    return sign + (f"{digits[:-places]}.{digits[-places:]}" if places else digits)


def percent_text(share: float) -> str:
    """Return a share that was measured, such as 0.214, as `21 %`."""
    return f"{share * 100:.0f} %"


def maker_inches(length: Exact) -> Fraction:
    """Return the inches that a maker reads: as they are, where a ruler has them; a length on
    the diagonal to the nearest 1/8 in, one of whole millimetres to the nearest 1/16 in. What
    is rounded is to be called `about`: see `on_ruler`."""
    if isinstance(length, Surd):
        return round_near(length)
    return length if on_ruler(length) else round_near(length, SIXTEENTH)


def on_ruler(length: Exact) -> bool:
    """Return whether a length in inches is one that halving an inch over and over reaches."""
    return not isinstance(length, Surd) and length.denominator & (length.denominator - 1) == 0


def inches_text(length: Exact) -> str:
    """Return `2 1/2 in`; for a length that no ruler has, what `maker_inches` makes of it."""
    return f"{fraction_text(maker_inches(length))} in"


def cm_text(length: Exact) -> str:
    """Return a length in inches as centimetres to the nearest millimetre: `6.4 cm`."""
    return f"{decimal_text(length * INCH_IN_MM / 10, 1)} cm"


def mm_text(length: Exact) -> str:
    """Return a length in inches as whole millimetres: `6 mm`; below 5 mm, to 0.1 mm."""
    millimetres = length * INCH_IN_MM
    return f"{decimal_text(millimetres, 0 if millimetres >= 5 else 1)} mm"


def yards_text(length: Fraction) -> str:
    """Return a length in inches as yards: `1 3/8 yd`."""
    return f"{fraction_text(length / YARD)} yd"


def metres_text(length: Exact) -> str:
    """Return a length in inches as metres to the centimetre: `1.30 m`."""
    return f"{decimal_text(length * INCH_IN_MM / 1000, 2)} m"


def to_mm(length: Fraction) -> Fraction:
    """Return a length in inches in millimetres, exactly."""
    return length * INCH_IN_MM

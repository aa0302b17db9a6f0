"""A pattern written in inches for makers who measure in centimetres.

In: the values of a pattern, along the schema. Out: the same, on millimetres.
Invariant: a length that was written in inches and is drawn up by the designer (a block, a
border, a form) is taken at 25 mm to the inch, as metric patterns have it (common practice, no
source): 12 in are 30 cm, a nine patch divides evenly, and what fits in inches fits in
centimetres. What a shop sells and what a hand allows is taken to the nearest millimetre;
what names an inch product or the paper of a press stays as it is. A length that was written
in metric is not touched.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from publish.measures import MM
from publish.read.sections import Either, Many, Named, Section, Shape
from publish.read.special import InInches
from publish.units import round_near, round_up

PRODUCTS = frozenset(("squares", "strips", "paper_thickness"))
"""Keys whose lengths are somebody else's: cloth sold ready cut, a printer's paper."""

DRAWN_UP = frozenset(
    (
        *("block_size", "motif_size", "spacing", "sleeve", "form", "overlap", "hem", "overhang"),
        *("motif_margin", "ground_margin"),
    )
)
"""Keys of lengths that are the designer's own, wherever they stand."""

WIDTHS = frozenset(("borders", "border", "sashing"))
"""Keys whose `width` is the designer's own."""

ROUND_INCH = 25 * MM
"""What an inch of a design is in metric: 25 mm."""


def on_millimetres(shape: Shape, value: Any, under: tuple[str, ...] = ()) -> Any:
    """Return a value of a shape with its lengths on whole or half millimetres; `under` are the
    keys that it stands under."""
    if isinstance(shape, Section) and isinstance(value, Mapping):
        known = {key.name: key.shape for key in shape.keys if key.name not in PRODUCTS}
        return {
            k: on_millimetres(known[k], v, (*under, k)) if k in known else v
            for k, v in value.items()
        }
    if isinstance(shape, Named) and isinstance(value, Mapping):
        return {k: on_millimetres(shape.section, v, under) for k, v in value.items()}
    if isinstance(shape, Many) and isinstance(value, list):
        return [on_millimetres(shape.item, v, under) for v in value]
    if isinstance(shape, Either):
        plain = not isinstance(value, Mapping | list)
        return on_millimetres(shape.plain if plain else shape.other, value, under)
    if isinstance(value, InInches):
        return _converted(value, under)
    return value


def _converted(length: Fraction, under: tuple[str, ...]) -> Fraction:
    """Return a length that was written in inches as a metric pattern has it."""
    if under[-2:] == ("binding", "width"):
        # Never narrower: metric seams are wider than 1/4 in.
        return round_up(length, 5 * MM)
    if under[-1] in DRAWN_UP or (under[-1] == "width" and set(under) & WIDTHS):
        length = length * ROUND_INCH
    if length % (MM / 2) == 0:
        return length
    return max(MM, round_near(length, MM))

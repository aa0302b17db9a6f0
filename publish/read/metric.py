"""A pattern written in inches for makers who measure in centimetres.

In: the values of a pattern, along the schema. Out: the same, on millimetres.
Invariant: every length that the designer wrote is taken to the nearest millimetre, so that
finished sizes, allowances and margins are on a metric ruler and everything after them is
planned there; what names an inch product or the paper of a press stays as it is.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from publish.measures import MM
from publish.read.sections import Either, Many, Named, Section, Shape
from publish.read.special import Length
from publish.units import round_near

PRODUCTS = frozenset(("squares", "strips", "paper_thickness"))
"""Keys whose lengths are somebody else's: cloth sold ready cut, a printer's paper."""


def on_millimetres(shape: Shape, value: Any) -> Any:
    """Return a value of a shape with its lengths on whole or half millimetres."""
    if isinstance(shape, Section) and isinstance(value, Mapping):
        known = {key.name: key.shape for key in shape.keys if key.name not in PRODUCTS}
        return {k: on_millimetres(known[k], v) if k in known else v for k, v in value.items()}
    if isinstance(shape, Named) and isinstance(value, Mapping):
        return {k: on_millimetres(shape.section, v) for k, v in value.items()}
    if isinstance(shape, Many) and isinstance(value, list):
        return [on_millimetres(shape.item, v) for v in value]
    if isinstance(shape, Either):
        plain = not isinstance(value, Mapping | list)
        return on_millimetres(shape.plain if plain else shape.other, value)
    if isinstance(shape, Length) and value and value % (MM / 2):
        return max(MM, round_near(value, MM))
    return value

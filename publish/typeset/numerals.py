"""Room for the numbers of steps, which stand beside their words.

In: a layout with its fonts. Out: its settings with `compose.hang` as wide as two figures need.
Invariant: a layout's own `hang` is never made smaller.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from publish.typeset.layout import Layout
from publish.typeset.layout_file import FontFace


@dataclass(frozen=True)
class Number:
    """How the number of a step is set: its font's family and weight, its `size` and how far it
    keeps `apart` from the words, in points."""

    family: str
    weight: float
    size: float
    apart: float


def number(layout: Layout) -> Number | None:
    """Return what `settings.compose.number` says; None where it is missing or faulty."""
    found: Any = layout.settings.get("compose")
    found = found.get("number") if isinstance(found, Mapping) else None
    types: Any = layout.settings.get("type")
    if not isinstance(found, Mapping) or not isinstance(types, Mapping):
        return None
    family = layout.families.get(str(found.get("role")))
    given = (found.get("weight"), types.get(found.get("type")), found.get("apart"))
    values = [float(v) for v in given if isinstance(v, int | float) and v >= 0]
    return Number(family, *values) if family is not None and len(values) == len(given) else None


def with_room(layout: Layout) -> Layout:
    """Return a layout with room beside a step's words for two figures of its number, in
    whatever font they are set."""
    asked = number(layout)
    face = _face(layout, asked) if asked is not None else None
    compose = layout.settings.get("compose") or {}
    hang = compose.get("hang")
    if asked is None or face is None or not isinstance(hang, int | float):
        return layout
    room = round(2 * asked.size * _widest_figure(face.path) + asked.apart, 2)
    wider = {**layout.settings, "compose": {**compose, "hang": max(hang, room)}}
    return replace(layout, settings=wider)


def _face(layout: Layout, asked: Number) -> FontFace | None:
    """Return the upright face of the number's family that is nearest to its weight."""
    alike = [f for f in layout.fonts if f.family == asked.family and f.style == "normal"]
    return min(alike, key=lambda f: abs(f.weight - asked.weight)) if alike else None


def _widest_figure(path: Path) -> float:
    """Return the advance of a font's widest figure, in ems; 1 where it lacks one."""
    with TTFont(path, lazy=True) as font:
        names, advances, em = font.getBestCmap(), font["hmtx"], font["head"].unitsPerEm
        figures = [names.get(ord(sign)) for sign in "0123456789"]
        return max(float(advances[n][0]) / em if n else 1.0 for n in figures)

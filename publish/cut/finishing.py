"""Backing, batting, binding, sleeve, pillow backs: how large, and how they are cut.

In: pattern and size. Out: plans, and the needs of their fabrics.
Invariant: every join's loss is counted. Sources are named at the constants.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from math import isqrt

from publish.cut.needs import Need, Way, long_ways, plain
from publish.model.cutplan import BackingPlan, BattingPlan, BindingPlan, PillowPlan
from publish.model.pattern import Fabric, Pattern
from publish.model.size import Size
from publish.units import fraction_text, round_up

BACKING_SEAM = Fraction(1, 2)
"""Seam between panels, selvages off: a published worked example joins two 42 in lengths
to 83 in (reference back-3.75yd)."""

PACKAGES: tuple[tuple[str, int, int], ...] = (
    ("craft", 34, 45), ("crib", 45, 60), ("twin", 72, 90), ("full", 84, 96),
    ("queen", 90, 108), ("king", 120, 124),
)  # fmt: skip
"""Packaged batting in inches: standard quilt sizes, project12quilts, 2012 (list one)."""

SLEEVE_EXTRA = Fraction(1, 2)
SLEEVE_SHORTER = Fraction(1)
"""Hanging sleeve: strip = 2 x finished depth + 1/2 in, 1 in shorter than the quilt is
wide: Hill Country Quilt Guild, quilt show sleeve instructions, 2023."""

ZIP_EXTRA = Fraction(1)
"""A zip back is cut 1 in longer than the front: cushion cover tutorial, 2016."""


def backing(pattern: Pattern, size: Size) -> tuple[list[tuple[BackingPlan, Need]], Fabric | None]:
    """Return each way to make the backing with its need, and the fabric it is cut from."""
    if size.backing is None:
        return [], None
    fabric = pattern.fabrics[size.backing.fabric]
    overhang = size.backing.overhang
    width, height = size.width + 2 * overhang, size.height + 2 * overhang
    found = []
    for seams, across, along in (("vertical", width, height), ("horizontal", height, width)):
        if seams == "horizontal" and (fabric.directional or width == height):
            continue
        if across <= fabric.usable_width:
            found.append(_panels(fabric, (width, height), ("none", 1, across, along), overhang))
            continue
        lost = 2 * BACKING_SEAM
        panels = int(-(-(across - lost) // (fabric.usable_width - lost)))
        each = round_up((across + (panels - 1) * lost) / panels)
        each = min(each, fabric.usable_width)
        found.append(_panels(fabric, (width, height), (seams, panels, each, along), overhang))
    return found, fabric


def _panels(fabric: Fabric, whole: tuple[Fraction, Fraction],
            layout: tuple[str, int, Fraction, Fraction],
            overhang: Fraction) -> tuple[BackingPlan, Need]:  # fmt: skip
    seams, panels, across, along = layout
    across, along = round_up(across), round_up(along)
    plan = BackingPlan(fabric.key, *whole, panels, across, along, seams, overhang)
    words = {
        "none": "in one piece", "vertical": "with upright seams", "horizontal": "with level seams"
    }[seams]  # fmt: skip
    way = Way(across, along, panels, words=words)
    name = "backing" if panels == 1 else "backing panel"
    return plan, Need(name, "backing", fabric.key, across, along, panels, (way,))


def batting(size: Size) -> BattingPlan | None:
    """Return the batting to cut, and the smallest package that holds it, if any does."""
    if size.batting is None:
        return None
    width = size.width + 2 * size.batting.overhang
    height = size.height + 2 * size.batting.overhang
    short, long = sorted((width, height))
    held = (f"{n} {a} × {b} in" for n, a, b in PACKAGES if short <= a and long <= b)
    return BattingPlan(size.batting.name, width, height, next(held, None))


def binding(pattern: Pattern, size: Size) -> tuple[BindingPlan, Need] | None:
    """Return the binding and its need: strips across the width, or a square for bias.

    A diagonal join takes one strip width of length (from memory). Bias: side of the
    square = root of length times width, rounded up to whole inches (soft-furnishing FAQ,
    continuous bias).
    """
    spec = size.binding
    if spec is None:
        return None
    usable = pattern.fabrics[spec.fabric].usable_width
    length = size.perimeter + spec.allowance
    strips = int(-(-(length - spec.width) // (usable - spec.width)))
    strips = max(strips, 1)
    joined = strips * usable - (strips - 1) * spec.width
    plan = BindingPlan(spec.fabric, spec.cut, spec.width, length, strips, strips - 1, joined)
    if spec.cut == "straight":
        way = Way(usable, spec.width, strips)
        need = Need("binding strip", "binding", spec.fabric, usable, spec.width, strips, (way,))
        return plan, need
    side = _root_up(length * spec.width)
    plan = replace(plan, strips=1, joins=0, joined_length=side * side / spec.width, square=side)
    way = Way(side, side, 1)
    return plan, Need("bias binding square", "binding", spec.fabric, side, side, 1, (way,))


def _root_up(area: Fraction) -> Fraction:
    """Return the square root of an area, rounded up to a whole inch."""
    whole = -(-area.numerator // area.denominator)
    root = isqrt(whole)
    return Fraction(root if root * root >= area else root + 1)


def sleeve(pattern: Pattern, size: Size) -> Need | None:
    """Return the strip for the hanging sleeve, cut from the backing's fabric."""
    if size.sleeve is None or size.backing is None:
        return None
    fabric = pattern.fabrics[size.backing.fabric]
    depth = round_up(2 * size.sleeve + SLEEVE_EXTRA)
    length = round_up(size.width - SLEEVE_SHORTER)
    ways = long_ways(depth, length, 1, fabric.usable_width, 2 * pattern.sewing.seam,
                     fabric.directional)  # fmt: skip
    return Need("hanging sleeve", "sleeve", fabric.key, depth, length, 1, ways)


def pillow(pattern: Pattern, size: Size) -> tuple[PillowPlan, Need] | None:
    """Return a pillow's back and its need.

    Envelope: two pieces that overlap, (cut side + overlap) / 2 + hem each: 18 x 12 in
    twice for an 18 in form with 4 in overlap (House on Hill Road, pillow closures).
    """
    spec = size.pillow
    if spec is None:
        return None
    fabric = pattern.fabrics[spec.fabric]
    width, height = size.width + 2 * spec.seam, size.height + 2 * spec.seam
    if spec.back == "envelope":
        across, along, count = round_up((width + spec.overlap) / 2 + spec.hem), height, 2
        name = "envelope back"
    else:
        across, along, count, name = width + ZIP_EXTRA, height, 1, "zip back"
    across, along = round_up(across), round_up(along)
    plan = PillowPlan(spec.form, spec.back, spec.fabric, across, along, count, spec.overlap,
                      spec.hem)  # fmt: skip
    ways = plain(across, along, count, fabric.directional)
    note = f"for an {fraction_text(spec.form)} in form" if spec.form in (8, 11, 18) else ""
    note = note or f"for a {fraction_text(spec.form)} in form"
    return plan, Need(name, "pillow back", fabric.key, across, along, count, ways, note=note)

"""Backing, batting, binding, sleeve, pillow backs: how large, and how they are cut.

In: pattern and size. Out: plans, and the needs of their fabrics.
Invariant: every join's loss is counted. Sources are named at the constants.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction

from publish.cut.bias import lines, square_side, strip_length
from publish.cut.needs import (
    Cloth,
    Made,
    Need,
    Way,
    cloth_of,
    equal_lengths,
    long_ways,
    plain,
)
from publish.cut.words import piece_called
from publish.measures import INCHES, Measures
from publish.model.cutplan import BackingPlan, BattingPlan, BindingPlan, Package, Piece, PillowPlan
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.trade import BACKING_SEAM
from publish.surd import Exact, Surd
from publish.units import round_up
from publish.words.values import Length, said

LEAST_PANEL = Fraction(6)
"""No part of a backing is narrower: common practice, no source."""
BINDING = piece_called("binding strip")

PACKAGES: tuple[tuple[str, int, int], ...] = (
    ("craft", 34, 45),
    ("crib", 45, 60),
    ("twin", 72, 90),
    ("full", 84, 96),
    ("queen", 90, 108),
    ("king", 120, 124),
)
"""Packaged batting in inches: standard quilt sizes, project12quilts, 2012 (list one)."""

METRIC_PACKAGES: tuple[tuple[str, int, int], ...] = (
    ("cot", 90, 120),
    ("cot", 120, 150),
    ("single", 150, 200),
    ("single", 180, 230),
    ("double", 220, 240),
    ("double", 240, 280),
    ("king", 300, 300),
)
"""Packaged batting in centimetres: round sizes as they are sold, from memory; common practice,
no source."""

SLEEVE_SHORTER = Fraction(1)
"""Hanging sleeve: strip = 2 x finished depth and its seam, 1/2 in where that is 1/4 in; 1 in
shorter than the quilt is wide: Hill Country Quilt Guild, quilt show sleeve instructions,
2023."""

ZIP_EXTRA = Fraction(1)
"""A zip back is cut 1 in longer than the front: cushion cover tutorial, 2016."""


def backing(pattern: Pattern, size: Size) -> tuple[Need, tuple[BackingPlan, ...]] | None:
    """Return the need of a backing, a way for each direction of its seams, and the plan
    that goes with each way."""
    if size.backing is None:
        return None
    fabric = pattern.fabrics[size.backing.fabric]
    step, join = pattern.measures.rough, pattern.measures.usual(BACKING_SEAM)
    cloth, reach = cloth_of(fabric, step), 2 * size.backing.overhang
    whole = ruled(size.width, step) + reach, ruled(size.height, step) + reach
    blank = BackingPlan(fabric.key, *whole, 1, *whole, "none", size.backing.overhang)
    plans = _backings(blank, "vertical", cloth, join)
    if not cloth.directional and whole[0] != whole[1]:
        plans += _backings(blank, "horizontal", cloth, join)
    ways = tuple(map(_panels, plans))
    made = ways[0].made
    assert made is not None
    need = Need(made.called, "backing", fabric.key, made.width, made.length, made.count, ways)
    return need, tuple(plans)


def ruled(length: Exact, step: Fraction) -> Fraction:
    """Return a finished length as a ruler shows it: one on the diagonal rounded up."""
    return round_up(length, step) if isinstance(length, Surd) else length


def _backings(blank: BackingPlan, seams: str, cloth: Cloth, join: Fraction) -> list[BackingPlan]:
    """Return a backing in panels of one width, their seams running one way, each `join` deep.

    Where the panels come out even in number, a seam would run down the middle. To avoid
    it, one panel stays whole and one is split: a half is sewn to each side (BellaOnline,
    Quilt backings: fabric calculation). That way comes first, where the fabric is wide
    enough for its additional seam and no half is narrower than `LEAST_PANEL`.
    """
    across, along = (blank.width, blank.height)[:: 1 if seams == "vertical" else -1]
    along = round_up(along, cloth.step)
    if across <= cloth.across:
        return [replace(blank, panel_width=round_up(across, cloth.step), panel_length=along)]
    panels, each = equal_lengths(across, cloth.across, 2 * join, cloth.step)
    plan = replace(blank, panels=panels, panel_width=each, panel_length=along, seams=seams)
    wider = round_up((across + panels * 2 * join) / panels, 2 * cloth.step)
    if panels % 2 or wider > cloth.across or wider / 2 < LEAST_PANEL:
        return [plan]
    return [replace(plan, panel_width=wider, half=wider / 2), plan]


def _panels(plan: BackingPlan) -> Way:
    way = {"none": "", "vertical": "upright", "horizontal": "level"}[plan.seams]
    words = f"with {way} seams" if plan.panels > 2 else f"with one {way} seam, down the middle"
    if plan.half is not None:
        words = f"with {way} seams, none of them down the middle"
    elif plan.panels == 1:
        words = "in one piece"
    name = "backing" if plan.panels == 1 else "backing panel"
    made = Made(piece_called(name), plan.panel_width, plan.panel_length, plan.panels)
    return Way(plan.panel_width, plan.panel_length, plan.panels, words=words, made=made)


def batting(size: Size, measures: Measures = INCHES) -> BattingPlan | None:
    """Return the batting to cut, and the smallest package that holds it, if any does."""
    if size.batting is None:
        return None
    width = ruled(size.width, measures.rough) + 2 * size.batting.overhang
    height = ruled(size.height, measures.rough) + 2 * size.batting.overhang
    short, long = sorted((width, height))
    packages = METRIC_PACKAGES if measures.metric else PACKAGES
    unit = measures.whole
    sold = (Package(name, a * unit, b * unit) for name, a, b in packages)
    held = (p for p in sold if short <= p.short and long <= p.long)
    return BattingPlan(size.batting.name, width, height, next(held, None))


def binding(pattern: Pattern, size: Size, lengths: Iterable[Fraction] = ()) -> Need | None:
    """Return the need of a binding: strips across the width, strips along the length
    where the same fabric has pieces cut to `lengths`, or a square for bias.

    A diagonal join takes one strip width of length (from memory).
    """
    spec = size.binding
    if spec is None:
        return None
    measures, width = pattern.measures, spec.width
    cloth = cloth_of(pattern.fabrics[spec.fabric], measures.grid)
    length = bound_length(size, measures)
    if spec.cut != "straight":
        side = square_side(length, width, pattern.sewing.seam, measures)
        way = Way(side, side, 1)
        return Need(
            piece_called("bias binding square"), "binding", spec.fabric, side, side, 1, (way,)
        )
    count, _ = equal_lengths(length, cloth.across, width, cloth.step)
    reach = cloth.across
    words = "across the width"
    ways = [Way(reach, width, count, words=words, made=Made(BINDING, reach, width, count))]
    for along in sorted(set(lengths)) if not cloth.directional else ():
        count, each = equal_lengths(length, along, width, cloth.step)
        if cloth.along is None and each > reach:
            made = Made(BINDING, width, each, count)
            ways.append(
                Way(width, each, count, words="along the length, beside long pieces", made=made)
            )
    first = ways[0].count
    return Need(BINDING, "binding", spec.fabric, reach, width, first, tuple(dict.fromkeys(ways)))


def bound_length(size: Size, measures: Measures = INCHES) -> Fraction:
    """Return the length of binding that must be there after joining."""
    assert size.binding is not None
    return ruled(size.perimeter, measures.grid) + size.binding.allowance


def binding_plan(
    size: Size, piece: Piece, seam: Fraction, measures: Measures = INCHES
) -> BindingPlan:
    """Return the binding that a size's binding piece gives."""
    spec = size.binding
    assert spec is not None
    length, count = bound_length(size, measures), piece.count
    if spec.cut != "straight":
        cut = piece.width, spec.width, seam
        return BindingPlan(
            spec.fabric,
            spec.cut,
            spec.width,
            length,
            1,
            0,
            strip_length(*cut, measures.grid),
            piece.width,
            lines=lines(*cut),
        )
    each = piece.width if piece.length == spec.width else piece.length
    joined = count * each - (count - 1) * spec.width
    return BindingPlan(
        spec.fabric, spec.cut, spec.width, length, count, count - 1, joined, strip_length=each
    )


def sleeve(pattern: Pattern, size: Size) -> Need | None:
    """Return the strip for the hanging sleeve, cut from the backing's fabric."""
    if size.sleeve is None or size.backing is None:
        return None
    fabric = pattern.fabrics[size.backing.fabric]
    measures = pattern.measures
    depth = measures.up(2 * (size.sleeve + pattern.sewing.seam))
    length = measures.up(size.width - measures.usual(SLEEVE_SHORTER))
    cloth = cloth_of(fabric, measures.grid)
    ways = long_ways(depth, length, 1, cloth, 2 * pattern.sewing.seam, level=True)
    sides = (length, depth) if cloth.directional else (depth, length)
    return Need(piece_called("hanging sleeve"), "sleeve", fabric.key, *sides, 1, ways)


def pillow(pattern: Pattern, size: Size) -> tuple[PillowPlan, Need] | None:
    """Return a pillow's back and its need.

    Envelope: two pieces that overlap, (cut side + overlap) / 2 + hem each: 18 x 12 in
    twice for an 18 in form with 4 in overlap (House on Hill Road, pillow closures).
    """
    spec = size.pillow
    if spec is None:
        return None
    fabric, measures = pattern.fabrics[spec.fabric], pattern.measures
    width, height = size.width + 2 * spec.seam, size.height + 2 * spec.seam
    if spec.back == "envelope":
        across, along, count = measures.up((width + spec.overlap) / 2 + spec.hem), height, 2
        name = "envelope back"
    else:
        across, along, count, name = width + measures.usual(ZIP_EXTRA), height, 1, "zip back"
    across, along = measures.up(across), measures.up(along)
    plan = PillowPlan(
        spec.form, spec.back, spec.fabric, across, along, count, spec.overlap, spec.hem
    )
    ways = plain(across, along, count, fabric.directional)
    note = said("note-for-form", form=Length(spec.form))
    called = piece_called(name)
    return plan, Need(called, "pillow back", fabric.key, across, along, count, ways, note=note)

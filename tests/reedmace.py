"""A small pattern worked out by hand, whole and consistent, for tests to spoil.

`Reedmace`, one size: a 16 in block of linen with a 14 in motif of moss, a 2 in sandbar
border with butted corners, backing of linen, binding of moss. Every figure below was
added up by hand from the rules named beside it, so that nothing here is the code's own
answer.
"""

from __future__ import annotations

import math
from fractions import Fraction
from pathlib import Path
from typing import Any

from shapely.geometry import MultiLineString, MultiPolygon, Polygon, box

from publish.model.draft import (
    Draft,
    FoldEdge,
    MotifShape,
    Patch,
    Placement,
    QuiltingLines,
    Unit,
)
from publish.model.pattern import (
    BackingSpec,
    BattingSpec,
    BindingSpec,
    Block,
    BorderSpec,
    Fabric,
    Motif,
    PatchSpec,
    Pattern,
    Publication,
    QuiltingSpec,
    Sewing,
    SizeSpec,
)
from publish.model.size import Size
from publish.notes import Place


def f(text: str | int) -> Fraction:
    """Return `2 1/2` as a fraction."""
    return sum((Fraction(part) for part in str(text).split()), Fraction(0))


QUILTING = (
    QuiltingSpec("motif", "ditch"),
    QuiltingSpec("ground", "echo", f("1/2")),
    QuiltingSpec("border", "parallel", f(1)),
)
BORDER = BorderSpec(f(2), "sandbar")
BACKING = BackingSpec("linen", f(4))
BATTING = BattingSpec("Cotton", f(3), f(8))
BINDING = BindingSpec("moss", f("2 1/4"))


def pattern() -> Pattern:
    fabrics = {
        "linen": Fabric("linen", "Pale linen", "#f4efe6", f(40)),
        "sandbar": Fabric("sandbar", "Sandbar", "#dfd0b2", f(40)),
        "moss": Fabric("moss", "Deep moss", "#4f6b4a", f(40)),
    }
    motif = Motif("reedmace", "moss", 8, "mirror", "needle-turn", f("1/8"))
    one = f(1)
    ring = ((f(0), f(0)), (one, f(0)), (one, one), (f(0), one))
    block = Block("plume", 1, 1, (PatchSpec(ring, "linen"),), "reedmace")
    spec = SizeSpec(
        "mini",
        "Mini",
        "quilt",
        1,
        1,
        ("plume",),
        f(16),
        f(14),
        (BORDER,),
        None,
        None,
        None,
        None,
        (),
        None,
    )
    sewing = Sewing(
        f("1/4"),
        f("1 1/2"),
        f(1),
        f(1),
        f("4 1/2"),
        10 / Fraction("2.54"),
        f("2 1/2"),
        squaring=f(0),
        mis_cut=f(0),
    )
    places = {
        "": Place("pattern.yaml", 1, 1),
        "sizes.mini": Place("pattern.yaml", 20, 3, "sizes.mini"),
        "fabrics.moss": Place("pattern.yaml", 6, 3, "fabrics.moss"),
        "fabrics.linen": Place("pattern.yaml", 4, 3, "fabrics.linen"),
    }
    publication = Publication("Hollow Fen Studio", "HF-199", "First edition", 2026, "", "", "", "")
    return Pattern(
        "reedmace",
        Path("."),
        "Reedmace",
        "",
        publication,
        ("letter",),
        "tideline",
        fabrics,
        {"reedmace": motif},
        {"plume": block},
        {"mini": spec},
        sewing,
        places,
    )


def size() -> Size:
    return Size(
        "mini",
        "Mini",
        "quilt",
        1,
        1,
        (("plume",),),
        f(16),
        f(14),
        (BORDER,),
        f(16),
        f(16),
        f(20),
        f(20),
        None,
        BACKING,
        BATTING,
        BINDING,
        QUILTING,
        None,
    )


def patch(key: str, fabric: str, left: int, top: int, right: int, bottom: int) -> Patch:
    a, b, c, d = f(left), f(top), f(right), f(bottom)
    role = "ground" if fabric == "linen" else "border"
    return Patch(key, ((a, b), (c, b), (c, d), (a, d)), fabric, role)


def leaf(one: Patch, kind: str, name: str) -> Unit:
    return Unit(kind, name, one.box, patch=one)


def joined(kind: str, name: str, join: str, *parts: Unit, press: str = "out") -> Unit:
    lefts, tops, rights, bottoms = zip(*(p.box for p in parts), strict=True)
    return Unit(
        kind, name, (min(lefts), min(tops), max(rights), max(bottoms)), join, parts, press=press
    )


def shape(span: float = 14, folds: int = 8) -> MotifShape:
    """Return a motif: in each wedge a leaf on the upright fold, a notch on the other."""
    half = span / 2
    angle = math.pi * 2 / folds

    def at(radius: float, share: float) -> tuple[float, float]:
        return half * radius * math.cos(angle * share), half * radius * math.sin(angle * share)

    corners = [at(0.2, 0), at(1, 0), at(0.75, 0.45), at(0.5, 0.5), at(0.55, 1), at(0.25, 1)]
    wedge = Polygon(corners)
    ring = []
    for turn in range(folds):
        side = corners[1:5] if turn % 2 == 0 else [_mirror(p, angle) for p in corners[4:0:-1]]
        ring += [_turned(p, angle * turn) for p in side]
    hole = []
    for turn in range(folds):
        inner = [corners[0], corners[5]]
        if turn % 2:
            inner = [_mirror(p, angle) for p in reversed(inner)]
        hole += [_turned(p, angle * turn) for p in inner]
    whole = Polygon(ring, [hole]).buffer(0)
    cut = whole.buffer(0.125, join_style="mitre")
    edges = (
        FoldEdge("multiple", 0.0, "straight", ((half * 0.2, half),)),
        FoldEdge("single", math.degrees(angle), "bias", ((half * 0.25, half * 0.55),)),
    )
    return MotifShape(
        "reedmace",
        f(14),
        folds,
        MultiPolygon([wedge]),
        360 / folds,
        edges,
        _many(whole),
        _many(cut),
        MultiPolygon([wedge]),
        whole.area,
        whole.length,
        1,
        1,
        folds,
        folds,
        0.9,
        0.8,
        50.0,
    )


def _many(geometry: Any) -> MultiPolygon:
    return geometry if geometry.geom_type == "MultiPolygon" else MultiPolygon([geometry])


def _turned(point: tuple[float, float], angle: float) -> tuple[float, float]:
    x, y = point
    return x * math.cos(angle) - y * math.sin(angle), x * math.sin(angle) + y * math.cos(angle)


def _mirror(point: tuple[float, float], angle: float) -> tuple[float, float]:
    """Mirror within the wedge: the fold at 0 and the fold at `angle` change places."""
    return _turned((point[0], -point[1]), angle)


def draft() -> Draft:
    ground = patch("ground", "linen", 2, 2, 18, 18)
    left, right = (patch(k, "sandbar", x, 2, x + 2, 18) for k, x in (("left", 0), ("right", 18)))
    top, bottom = (patch(k, "sandbar", 0, y, 20, y + 2) for k, y in (("top", 0), ("bottom", 18)))
    centre = joined(
        "centre",
        "centre",
        "across",
        leaf(left, "side", "side border"),
        leaf(ground, "ground", "ground"),
        leaf(right, "side", "side border"),
    )
    root = joined(
        "top",
        "top",
        "down",
        leaf(top, "end", "top border"),
        centre,
        leaf(bottom, "end", "bottom border"),
    )
    lines = MultiLineString([[(0, y), (20, y)] for y in range(1, 13)])
    return Draft(
        "mini",
        f(20),
        f(20),
        (ground, left, right, top, bottom),
        root,
        {"reedmace": shape()},
        (Placement("reedmace", f(10), f(10), 0, 0),),
        (QuiltingLines("border", "parallel", f(1), lines, 240.0),),
        f(72),
        box(0, 0, 20, 20),
    )

"""Motifs, a pattern and a drawing context for the tests of sheets and folding figures."""

from __future__ import annotations

import math
from fractions import Fraction
from pathlib import Path
from xml.etree import ElementTree

import svgelements
from shapely.affinity import affine_transform, rotate
from shapely.geometry import MultiPolygon, Polygon, box
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from publish.draw.canvas.style import palette_of
from publish.draw.context import Context
from publish.draw.sheets.nesting import spreads
from publish.draw.sheets.sheets import template_sheets
from publish.draw.sheets.template import Template
from publish.draw.sheets.tiling import Tiling
from publish.model.book import LETTER, Paper
from publish.model.draft import Draft, FoldEdge, MotifShape, Placement, Unit
from publish.model.figure import Sheet
from publish.model.pattern import Block, Fabric, Motif, PatchSpec, Pattern, Publication, Sewing
from publish.model.size import Size
from publish.model.words import BackCover, Cover, FigureSpec, Manual
from publish.notes import Place

EIGHTH = Fraction(1, 8)
GRAIN = {4: "straight", 8: "bias"}
"""How the threads lie to the single fold, by the number of wedges."""


def sheets_of(context: Context, key: str, size: str, part: str, paper: Paper) -> tuple[Sheet, ...]:
    """Return the sheets of one template, printed by itself; raise what kept it from them."""
    found, failed = template_sheets(context, [(key, size, part)], paper)
    for reason in failed.values():
        raise reason
    return found[key, size, part]


def laid_out(
    context: Context, key: str, size: str, part: str, paper: Paper
) -> tuple[Template, Tiling]:
    """Return one template as it lies on sheets of its own, and the sheets."""
    (spread,), _ = spreads(context, [(key, size, part)], paper)
    return spread.lying[0].template, spread.tiling


def many(shape: BaseGeometry) -> MultiPolygon:
    """Return a geometry's polygons as one MultiPolygon."""
    parts = getattr(shape, "geoms", [shape])
    return MultiPolygon([p for p in parts if p.geom_type == "Polygon"])


def sector(folds: int, reach: float = 100.0) -> Polygon:
    """Return the wedge between the x axis and 360 / folds degrees clockwise on the page."""
    wedge = math.radians(360 / folds)
    turns = [wedge * i / 8 for i in range(9)]
    return Polygon([(0, 0), *((reach * math.cos(a), reach * math.sin(a)) for a in turns)])


def unfolded(wedge: BaseGeometry, folds: int) -> MultiPolygon:
    """Return a wedge mirrored across its folds all the way round."""
    mirrored = affine_transform(wedge, [1, 0, 0, -1, 0, 0])
    step = 2 * 360 / folds
    copies = [
        rotate(part, step * i, origin=(0, 0))
        for i in range(folds // 2)
        for part in (wedge, mirrored)
    ]
    return many(unary_union([c.buffer(1e-7, join_style="mitre") for c in copies]))


def motif_shape(
    wedge: Polygon,
    folds: int = 8,
    span: Fraction = Fraction(14),
    turn_under: Fraction = EIGHTH,
    key: str = "samphire",
) -> MotifShape:
    """Return a MotifShape for a wedge that lies between the x axis and its fold angle."""
    shape = many(wedge.intersection(sector(folds)))
    whole = unfolded(shape, folds)
    cut = many(whole.buffer(float(turn_under), join_style="mitre", mitre_limit=2))
    angle = 360 / folds

    def contact(at: float) -> tuple[tuple[float, float], ...]:
        level = rotate(shape, -at, origin=(0, 0))
        line = level.boundary.intersection(box(-1, -1e-6, 100, 1e-6))
        runs = [p.bounds for p in getattr(line, "geoms", [line]) if p.length > 1e-3]
        return tuple((left, right) for left, _, right, _ in sorted(runs))

    edges = (
        FoldEdge("multiple", 0.0, "straight", contact(0.0)),
        FoldEdge("single", angle, GRAIN.get(folds, "off grain"), contact(angle)),
    )
    return MotifShape(
        key=key,
        span=span,
        folds=folds,
        wedge=shape,
        wedge_angle=angle,
        edges=edges,
        whole=whole,
        cut_line=cut,
        wedge_cut_line=many(cut.intersection(sector(folds))),
        area=whole.area,
        perimeter=whole.length,
        pieces=1,
        holes=1,
        tips=folds,
        inside_corners=folds,
        narrowest_neck=0.5,
        narrowest_slit=0.5,
        sharpest_tip=40.0,
    )


def leaf_wedge(span: Fraction = Fraction(14), folds: int = 8) -> Polygon:
    """Return a made-up wedge: open centre, one leaf on each fold, a gap between them."""
    half, angle = float(span) / 2, math.radians(360 / folds)

    def at(radius: float, share: float) -> tuple[float, float]:
        return (half * radius * math.cos(angle * share), half * radius * math.sin(angle * share))

    return Polygon(
        [
            at(0.16, 0),
            at(0.96, 0),
            at(0.7, 0.3),
            at(0.4, 0.42),
            at(0.42, 0.6),
            at(0.7, 0.62),
            at(0.98, 1),
            at(0.2, 1),
            at(0.24, 0.5),
        ]
    )


def samphire_wedge(span: Fraction = Fraction(14)) -> Polygon:
    """Return the demo pattern's own wedge, its curves taken in 12 steps each."""
    source = Path(__file__).parents[2] / "projects" / "samphire" / "samphire.svg"
    path = next(e for e in ElementTree.parse(source).iter() if e.get("id") == "wedge")
    scale = float(span) / 200
    points: list[tuple[float, float]] = []
    for segment in svgelements.Path(path.get("d")):
        if isinstance(segment, svgelements.CubicBezier):
            curve = [segment.point(i / 12) for i in range(1, 13)]
            points += [(p.x * scale, p.y * scale) for p in curve]
        elif segment.end is not None and not isinstance(segment, svgelements.Close):
            points.append((segment.end.x * scale, segment.end.y * scale))
    return Polygon(points)


def context_for(*shapes: MotifShape, size: str = "throw", paper: Paper = LETTER) -> Context:
    """Return a context whose one size holds the motifs given."""
    fabrics = {
        "linen": Fabric("linen", "Salt linen", "#f0e9d9", Fraction(40)),
        "samphire": Fabric("samphire", "Samphire green", "#2f6152", Fraction(40)),
        "glasswort": Fabric("glasswort", "Glasswort red", "#93404a", Fraction(40)),
    }
    motifs = {
        s.key: Motif(s.key, "samphire", s.folds, "mirror", "needle-turn", EIGHTH) for s in shapes
    }
    one = Fraction(1)
    ring = ((Fraction(0), Fraction(0)), (one, Fraction(0)), (one, one), (Fraction(0), one))
    block = Block("sprig", 1, 1, (PatchSpec(ring, "linen"),), shapes[0].key)
    sewing = Sewing(
        Fraction(1, 4),
        Fraction(3, 2),
        one,
        one,
        Fraction(9, 2),
        Fraction(4),
        one,
        squaring=Fraction(0),
        mis_cut=Fraction(0),
    )
    publication = Publication("Hollow Fen Studio", "HF-101", "First edition", 2026, "", "", "", "")
    pattern = Pattern(
        "samphire",
        Path("."),
        "Samphire",
        "",
        publication,
        ("letter", "a4"),
        "tideline",
        fabrics,
        motifs,
        {"sprig": block},
        {},
        sewing,
        {"": Place("pattern.yaml")},
    )
    side, columns = Fraction(18), 3
    whole = side * columns
    grade = Size(
        size,
        size.capitalize(),
        "quilt",
        columns,
        columns,
        (("sprig",) * 3,) * 3,
        side,
        shapes[0].span,
        (),
        whole,
        whole,
        whole,
        whole,
        None,
        None,
        None,
        None,
        (),
        None,
    )
    places = tuple(
        Placement(shapes[0].key, side * (2 * c + 1) / 2, side * (2 * r + 1) / 2, r, c)
        for r in range(3)
        for c in range(3)
    )
    zero = Fraction(0)
    root = Unit("top", "top", (zero, zero, whole, whole))
    draft = Draft(
        size,
        whole,
        whole,
        (),
        root,
        {s.key: s for s in shapes},
        places,
        (),
        zero,
        box(0, 0, 54, 54),
    )
    spec = FigureSpec("cover", "quilt")
    manual = Manual(
        Cover("Samphire", "", "", "", (), spec), (), BackCover("", (), "", "", "", "", spec), ""
    )
    return Context(
        pattern,
        {size: grade},
        {size: draft},
        {},
        manual,
        paper,
        palette_of(f.colour for f in fabrics.values()),
    )

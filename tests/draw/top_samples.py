"""Three small sizes built by hand, as the stages before drawing would hand them over.

In: nothing. Out: a pattern with sizes and drafts (plans are in `top_plans`): a bordered
mini, a pillow, and a throw of pieced blocks. Every number here is written out, not
computed by a stage, so that figures are checked against figures, not their own sources.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

from shapely.affinity import rotate, scale, translate
from shapely.geometry import MultiLineString, MultiPolygon, Polygon, box
from shapely.ops import unary_union

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
    PillowSpec,
    Publication,
    QuiltingSpec,
    Sewing,
    SizeSpec,
)
from publish.model.size import Size
from publish.notes import Place

F = Fraction
LINEN, SAND, MOSS, RED, MIST = "linen", "sand", "moss", "red", "mist"

FABRICS = {
    LINEN: Fabric(LINEN, "Salt linen", "#f0e9d9", F(40)),
    SAND: Fabric(SAND, "Sandbar", "#dfd0b2", F(40)),
    MOSS: Fabric(MOSS, "Deep moss", "#2f6152", F(40)),
    RED: Fabric(RED, "Glasswort red", "#93404a", F(40)),
    MIST: Fabric(MIST, "Creek mist", "#b9c7c6", F(40)),
}


def _patch(x: int, y: int, w: int, h: int, fabric: str) -> PatchSpec:
    ring = ((F(x), F(y)), (F(x + w), F(y)), (F(x + w), F(y + h)), (F(x), F(y + h)))
    return PatchSpec(ring, fabric)


BLOCKS = {
    "sprig": Block("sprig", 1, 1, (_patch(0, 0, 1, 1, LINEN),), "fern"),
    "quartered": Block(
        "quartered",
        2,
        2,
        (
            _patch(0, 0, 1, 1, LINEN),
            _patch(1, 0, 1, 1, SAND),
            _patch(0, 1, 1, 1, SAND),
            _patch(1, 1, 1, 1, LINEN),
        ),
        "fern",
    ),
}

BACKING = BackingSpec(MIST, F(4))
WADDING = BattingSpec("Cotton", F(3), F(8))
BINDING = BindingSpec(RED, F(9, 4))
QUILTING = (
    QuiltingSpec("motif", "ditch"),
    QuiltingSpec("ground", "echo", F(1, 2)),
    QuiltingSpec("border", "parallel", F(1), 0),
)
PILLOW = PillowSpec(F(18), "envelope", RED, F(4), F(1), F(1, 2))
SEWING = Sewing(
    F(1, 4), F(3, 2), F(1), F(1), F(9, 2), F(10) / F(254, 100), F(5, 2), squaring=F(0), mis_cut=F(0)
)
"""Purchases in steps of 1/8 yd and 10 cm, in inches."""


def _spec(
    key: str,
    title: str,
    finish: str,
    count: int,
    block: str,
    side: int,
    span: F,
    borders: tuple[BorderSpec, ...],
    pillow: PillowSpec | None = None,
    sleeve: F | None = None,
) -> SizeSpec:
    return SizeSpec(
        key,
        title,
        finish,
        count,
        count,
        (block,),
        F(side),
        span,
        borders,
        pillow,
        None,
        None,
        None,
        (),
        sleeve,
    )


BORDERS = {
    "mini": (BorderSpec(F(2), SAND),),
    "pillow": (),
    "throw": (BorderSpec(F(1), RED), BorderSpec(F(4), LINEN)),
}
SPECS = {
    "mini": _spec(
        "mini", "Mini wall quilt", "quilt", 1, "sprig", 16, F(14), BORDERS["mini"], sleeve=F(3)
    ),
    "pillow": _spec("pillow", "Pillow", "pillow", 1, "sprig", 17, F(29, 2), (), PILLOW),
    "throw": _spec("throw", "Throw", "quilt", 3, "quartered", 18, F(31, 2), BORDERS["throw"]),
}

PATTERN = Pattern(
    "fern",
    Path("fern"),
    "Fern",
    "",
    Publication("Hollow Fen Studio", "HF-000", "", 0, "", "", "", ""),
    ("letter", "a4"),
    "tideline",
    FABRICS,
    {"fern": Motif("fern", MOSS, 8, "mirror", "needle-turn", F(1, 8), drawing=Path("fern.svg"))},
    BLOCKS,
    SPECS,
    SEWING,
    {"": Place("fern/pattern.yaml")},
)


def _size(key: str) -> Size:
    spec = SPECS[key]
    inner = spec.block_size * spec.columns
    edge = sum((b.width for b in spec.borders), F(0))
    quilt = spec.finish == "quilt"
    return Size(
        key,
        spec.title,
        spec.finish,
        spec.columns,
        spec.rows,
        tuple(tuple(spec.blocks * spec.columns) for _ in range(spec.rows)),
        spec.block_size,
        spec.motif_size,
        spec.borders,
        inner,
        inner,
        inner + 2 * edge,
        inner + 2 * edge,
        spec.pillow,
        BACKING,
        WADDING,
        BINDING if quilt else None,
        QUILTING,
        spec.sleeve,
    )


SIZES = {key: _size(key) for key in SPECS}


def motif(span: F) -> MotifShape:
    """Return an eight-fold leaf of a given span, with a hole on each mirror line."""
    half = float(span) / 2
    leaf = Polygon(
        [
            (0.2, 0),
            (1, 0),
            (0.86, 0.12),
            (0.7, 0.16),
            (0.62, 0.3),
            (0.8, 0.5),
            (0.99, 0.99),
            (0.5, 0.5),
            (0.3, 0.3),
            (0.25, 0.25),
            (0.2, 0.1),
        ]
    )
    leaf = scale(leaf, half, half, origin=(0, 0))
    pair = unary_union([leaf, Polygon([(y, x) for x, y in leaf.exterior.coords])])
    turned = [rotate(pair, 90 * i, origin=(0, 0)) for i in range(4)]
    whole = unary_union(turned)
    whole = MultiPolygon([whole]) if whole.geom_type == "Polygon" else whole
    cut = whole.buffer(0.125, join_style="mitre")
    cut = MultiPolygon([cut]) if cut.geom_type == "Polygon" else cut
    edges = (
        FoldEdge("multiple", 0.0, "straight", ((0.2 * half, half),)),
        FoldEdge("single", 45.0, "bias", ((0.35 * half, 1.4 * half),)),
    )
    return MotifShape(
        "fern",
        span,
        8,
        MultiPolygon([leaf]),
        45.0,
        edges,
        whole,
        cut,
        MultiPolygon([leaf.buffer(0.125)]),
        whole.area,
        whole.length,
        1,
        1,
        8,
        8,
        0.5,
        None,
        60.0,
    )


def _rect_patch(
    key: str,
    box_: tuple[F, F, F, F],
    fabric: str,
    role: str,
    block: str | None = None,
    row: int | None = None,
    column: int | None = None,
) -> Patch:
    left, top, right, bottom = box_
    ring = ((left, top), (right, top), (right, bottom), (left, bottom))
    return Patch(key, ring, fabric, role, block, row, column)


def _leaf(patch: Patch, kind: str, name: str) -> Unit:
    return Unit(kind, name, patch.box, patch=patch)


def _joined(kind: str, name: str, join: str, parts: list[Unit], press: str) -> Unit:
    if len(parts) == 1:
        return parts[0]
    lefts, tops, rights, bottoms = zip(*(p.box for p in parts), strict=True)
    return Unit(
        kind,
        name,
        (min(lefts), min(tops), max(rights), max(bottoms)),
        join,
        tuple(parts),
        None,
        press,
    )


def draft(key: str) -> Draft:
    """Return the finished geometry of a size."""
    size = SIZES[key]
    edge = sum((b.width for b in size.borders), F(0))
    patches: list[Patch] = []
    rows, places = [], []
    for r in range(size.rows):
        blocks = []
        for c in range(size.columns):
            left, top = edge + c * size.block_side, edge + r * size.block_side
            block = BLOCKS[size.arrangement[r][c]]
            step = size.block_side / block.columns
            lines = []
            for i in range(block.rows):
                line = []
                for j in range(block.columns):
                    spot = (left + j * step, top + i * step)
                    fabric = block.patches[i * block.columns + j].fabric
                    patch = _rect_patch(
                        f"r{r}c{c}p{i}{j}",
                        (*spot, spot[0] + step, spot[1] + step),
                        fabric,
                        "ground",
                        block.key,
                        r,
                        c,
                    )
                    patches.append(patch)
                    line.append(_leaf(patch, f"ground {fabric}", "ground"))
                lines.append(
                    _joined("half block", "half block", "across", line, ("left", "right")[i % 2])
                )
            blocks.append(_joined("block", "block", "down", lines, "down"))
            half = size.block_side / 2
            places.append(Placement("fern", left + half, top + half, r, c))
        joined = _joined("row", f"row {r + 1}", "across", blocks, ("left", "right")[r % 2])
        rows.append(replace(joined, series="row", number=r + 1) if len(blocks) > 1 else joined)
    unit = _joined("centre", "centre", "down", rows, "down")
    for number, border in enumerate(size.borders):
        unit = _bordered(unit, border, number, patches)
    motifs = {"fern": motif(size.motif_span or F(1))}
    outline = box(0, 0, float(size.width), float(size.height))
    return Draft(
        key,
        size.width,
        size.height,
        tuple(patches),
        unit,
        motifs,
        tuple(places),
        _quilting(size, motifs["fern"], places),
        F(0),
        outline,
    )


def _bordered(unit: Unit, border: BorderSpec, number: int, patches: list[Patch]) -> Unit:
    left, top, right, bottom = unit.box
    w = border.width
    boxes = {
        "left": (left - w, top, left, bottom),
        "right": (right, top, right + w, bottom),
        "top": (left - w, top - w, right + w, top),
        "bottom": (left - w, bottom, right + w, bottom + w),
    }
    made = {
        side: _rect_patch(f"border {number + 1} {side}", b, border.fabric, "border")
        for side, b in boxes.items()
    }
    patches += made.values()
    units = {
        s: _leaf(p, f"border {number + 1} {s}", f"border {number + 1}") for s, p in made.items()
    }
    sides = _joined(
        f"border {number + 1} sides",
        f"border {number + 1}",
        "across",
        [units["left"], unit, units["right"]],
        "out",
    )
    return _joined(
        f"border {number + 1}",
        f"border {number + 1}",
        "down",
        [units["top"], sides, units["bottom"]],
        "out",
    )


def _quilting(size: Size, shape: MotifShape, places: list[Placement]) -> tuple[QuiltingLines, ...]:
    ditch, echo = [], []
    for place in places:
        here = translate(shape.whole, float(place.x), float(place.y))
        half = float(size.block_side) / 2
        ground = box(-half, -half, half, half)
        around = translate(ground, float(place.x), float(place.y))
        ditch += _edges(here)
        for step in (1, 2):
            ring = here.buffer(0.5 * step).intersection(around)
            echo += _edges(MultiPolygon([ring]) if ring.geom_type == "Polygon" else ring)
    width = float(size.width)
    border = [[(0, y), (width, y)] for y in (0.5, width - 0.5)] if size.borders else []
    found = [("motif", "ditch", None, ditch), ("ground", "echo", F(1, 2), echo)]
    found += [("border", "parallel", F(1), border)] if border else []
    return tuple(
        QuiltingLines(area, style, gap, MultiLineString(lines), MultiLineString(lines).length)
        for area, style, gap, lines in found
    )


def _edges(geometry: MultiPolygon) -> list:
    return [ring.coords for part in geometry.geoms for ring in (part.exterior, *part.interiors)]


DRAFTS = {key: draft(key) for key in SIZES}

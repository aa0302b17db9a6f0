"""Patterns made up for the tests of the words: any mix of sizes, methods and finishes.

In: what a test wants. Out: pattern, sizes, drafts, plans, as the stages before would hand
them over. Shapes are a simple star; layouts put each piece in strips of its own.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from fractions import Fraction
from pathlib import Path

from shapely.geometry import LineString, MultiLineString, box
from write_planned import plan_of
from write_star import star

from publish import cut
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Patch, Placement, QuiltingLines, Unit
from publish.model.pattern import (
    EXTRAS,
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

COLOURS = {
    "linen": ("Salt linen", "#f0e9d9"),
    "sand": ("Sandbar", "#dfd0b2"),
    "moss": ("Deep moss", "#2f6152"),
    "red": ("Glasswort red", "#93404a"),
    "mist": ("Creek mist", "#b9c7c6"),
}
PUBLISHED = Publication(
    "Hollow Fen Studio",
    "HF-101",
    "First edition",
    2026,
    "Sew as many as you like.",
    "patterns@hollowfen.example",
    "Confident beginner",
    "It grows where the tide comes in.",
)
UNPUBLISHED = Publication("", "", "", 0, "", "", "", "")
QUILTING = (
    QuiltingSpec("motif", "ditch"),
    QuiltingSpec("ground", "echo", Fraction(1, 2)),
    QuiltingSpec("border", "parallel", Fraction(1), 0),
)


@dataclass(frozen=True)
class Wish:
    """One size that a test wants."""

    key: str
    title: str
    blocks: tuple[str, ...] = ("sprig",)
    count: int = 1
    side: Fraction = Fraction(16)
    span: Fraction | None = Fraction(14)
    borders: tuple[BorderSpec, ...] = ()
    sleeve: Fraction | None = None
    pillow: PillowSpec | None = None
    quilting: tuple[QuiltingSpec, ...] = QUILTING
    bias: bool = False


@dataclass(frozen=True)
class Made:
    """The stage's inputs."""

    pattern: Pattern
    sizes: dict[str, Size] = field(default_factory=dict)
    drafts: dict[str, Draft] = field(default_factory=dict)
    plans: dict[str, CutPlan] = field(default_factory=dict)


ENVELOPE = PillowSpec(Fraction(18), "envelope", "red", Fraction(4), Fraction(1), Fraction(1, 2))
ZIP = PillowSpec(Fraction(18), "zip", "red", Fraction(0), Fraction(1), Fraction(1, 2))
MINI = Wish(
    "mini", "Mini wall quilt", borders=(BorderSpec(Fraction(2), "sand"),), sleeve=Fraction(3)
)
PILLOW = Wish("pillow", "Pillow", side=Fraction(17), span=Fraction(29, 2), pillow=ENVELOPE)
THROW = Wish(
    "throw",
    "Throw",
    ("quartered",),
    3,
    Fraction(18),
    Fraction(31, 2),
    (BorderSpec(Fraction(1), "red"), BorderSpec(Fraction(4), "linen")),
)


def made(
    *wishes: Wish,
    method: str = "needle-turn",
    folds: int = 8,
    symmetry: str = "mirror",
    publication: Publication = PUBLISHED,
    motifs: tuple[Motif, ...] = (),
    fabrics: tuple[str, ...] = tuple(COLOURS),
) -> Made:
    """Return the inputs for some sizes; without any, for a mini, a pillow and a throw."""
    wishes = wishes or (MINI, PILLOW, THROW)
    under = Fraction(0) if method == "fusible" else Fraction(1, 8)
    used = motifs or (Motif("star", "moss", folds, symmetry, method, under),)
    pattern = Pattern(
        "samphire",
        Path("samphire"),
        "Samphire",
        "A paper-cut appliqué",
        publication,
        ("letter", "a4"),
        "tideline",
        {
            k: Fabric(k, name, colour, Fraction(40))
            for k, (name, colour) in COLOURS.items()
            if k in fabrics
        },
        {m.key: m for m in used},
        _blocks(used),
        {w.key: _spec(w) for w in wishes},
        Sewing(
            Fraction(1, 4),
            Fraction(3, 2),
            Fraction(1),
            Fraction(1),
            Fraction(9, 2),
            Fraction(1000, 254),
            Fraction(5, 2),
            squaring=Fraction(0),
            mis_cut=Fraction(0),
        ),
        {"": Place("samphire/pattern.yaml")},
        extras=EXTRAS,
    )
    result = Made(pattern)
    for wish in wishes:
        result.sizes[wish.key] = size = _size(wish)
        result.drafts[wish.key] = _draft(pattern, size)
    letters: dict[tuple[str, ...], str] = {}
    for key, size in result.sizes.items():
        result.plans[key] = plan_of(pattern, size, result.drafts[key], letters)
    constructed = cut.construct(pattern, result.sizes, result.drafts, result.plans)
    result.drafts.update(constructed)
    return result


def _square(x: int, y: int, fabric: str) -> PatchSpec:
    ring = tuple((Fraction(x + i), Fraction(y + j)) for i, j in ((0, 0), (1, 0), (1, 1), (0, 1)))
    return PatchSpec(ring, fabric)


def _blocks(motifs: tuple[Motif, ...]) -> dict[str, Block]:
    first, last = motifs[0].key, motifs[-1].key
    quarters = (
        _square(0, 0, "linen"),
        _square(1, 0, "sand"),
        _square(0, 1, "sand"),
        _square(1, 1, "linen"),
    )
    nine = tuple(_square(x, y, ("linen", "sand")[(x + y) % 2]) for y in range(3) for x in range(3))
    return {
        "sprig": Block("sprig", 1, 1, (_square(0, 0, "linen"),), first),
        "other": Block("other", 1, 1, (_square(0, 0, "sand"),), last),
        "quartered": Block("quartered", 2, 2, quarters, first),
        "nine": Block("nine", 3, 3, nine, None),
    }


def _spec(wish: Wish) -> SizeSpec:
    return SizeSpec(
        wish.key,
        wish.title,
        "pillow" if wish.pillow else "quilt",
        wish.count,
        wish.count,
        wish.blocks,
        wish.side,
        wish.span,
        wish.borders,
        wish.pillow,
        None,
        None,
        None,
        (),
        wish.sleeve,
    )


def _size(wish: Wish) -> Size:
    inner = wish.side * wish.count
    edge = sum((b.width for b in wish.borders), Fraction(0))
    turn = [wish.blocks[i % len(wish.blocks)] for i in range(wish.count**2)]
    rows = tuple(tuple(turn[r * wish.count : (r + 1) * wish.count]) for r in range(wish.count))
    whole = inner + 2 * edge
    binding = BindingSpec("red", Fraction(9, 4), "bias" if wish.bias else "straight")
    quilting = tuple(q for q in wish.quilting if q.area != "border" or wish.borders)
    return Size(
        wish.key,
        wish.title,
        "pillow" if wish.pillow else "quilt",
        wish.count,
        wish.count,
        rows,
        wish.side,
        wish.span,
        wish.borders,
        inner,
        inner,
        whole,
        whole,
        wish.pillow,
        BackingSpec("mist", Fraction(4)),
        BattingSpec("Cotton", Fraction(3), Fraction(8)),
        None if wish.pillow else binding,
        quilting,
        wish.sleeve,
    )


def _joined(kind: str, name: str, join: str, parts: list[Unit], press: str) -> Unit:
    if len(parts) == 1:
        return parts[0]
    lefts, tops, rights, bottoms = zip(*(p.box for p in parts), strict=True)
    left, top, right, bottom = min(lefts), min(tops), max(rights), max(bottoms)
    ring = (left, top), (right, top), (right, bottom), (left, bottom)
    return Unit(kind, name, (left, top, right, bottom), join, tuple(parts), None, press, ring=ring)


def _patch(
    key: str,
    corners: tuple[Fraction, Fraction, Fraction, Fraction],
    fabric: str,
    role: str,
    block: str | None = None,
    row: int | None = None,
    column: int | None = None,
) -> Patch:
    left, top, right, bottom = corners
    ring = ((left, top), (right, top), (right, bottom), (left, bottom))
    return Patch(key, ring, fabric, role, block, row, column)


def _leaf(patch: Patch) -> Unit:
    return Unit(f"{patch.role} {patch.fabric}", patch.role, patch.box, patch=patch)


def _draft(pattern: Pattern, size: Size) -> Draft:
    edge = sum((b.width for b in size.borders), Fraction(0))
    patches: list[Patch] = []
    rows, places = [], []
    for r, row in enumerate(size.arrangement):
        units = []
        for c, key in enumerate(row):
            corner = (edge + c * size.block_side, edge + r * size.block_side)
            block = pattern.blocks[key]
            units.append(_ground(block, corner, size.block_side, r, c, patches))
            if block.motif:
                half = size.block_side / 2
                places.append(Placement(block.motif, corner[0] + half, corner[1] + half, r, c))
        kind = "row " + " ".join(row)
        joined = _joined(kind, f"row {r + 1}", "across", units, ("left", "right")[r % 2])
        rows.append(replace(joined, series="row", number=r + 1) if len(units) > 1 else joined)
    whole = "centre" if size.borders else "top"
    unit = _joined(whole, whole, "down", rows, "down")
    for index, border in enumerate(size.borders):
        unit = _bordered(unit, border, index, patches)
    used = dict.fromkeys(p.motif for p in places)
    shapes = {m: star(pattern.motifs[m], size.motif_span or Fraction(1)) for m in used}
    lines = tuple(
        QuiltingLines(
            q.area,
            q.style,
            q.spacing,
            MultiLineString([LineString([(0, 0), (float(size.width), 0)])]),
            float(size.width) * (3 + i),
        )
        for i, q in enumerate(size.quilting)
    )
    return Draft(
        size.key,
        size.width,
        size.height,
        tuple(patches),
        unit,
        shapes,
        tuple(places),
        lines,
        Fraction(40),
        box(0, 0, float(size.width), float(size.height)),
    )


def _ground(
    block: Block,
    corner: tuple[Fraction, Fraction],
    side: Fraction,
    r: int,
    c: int,
    patches: list[Patch],
) -> Unit:
    step = side / block.columns
    lines = []
    for y in range(block.rows):
        line = []
        for x in range(block.columns):
            left, top = corner[0] + x * step, corner[1] + y * step
            patch = _patch(
                f"r{r}c{c}p{y}{x}",
                (left, top, left + step, top + step),
                block.patches[y * block.columns + x].fabric,
                "ground",
                block.key,
                r,
                c,
            )
            patches.append(patch)
            line.append(_leaf(patch))
        kinds = " ".join(p.kind for p in line)
        whole = "ground" if block.motif else "block"
        name = f"half {whole}" if block.rows == 2 else f"{whole} row"
        kind = name if block.rows == 2 else f"{name}, {kinds}"
        lines.append(_joined(kind, name, "across", line, ("left", "right")[y % 2]))
    whole = "ground" if block.motif else "block"
    return _joined(f"{whole} {block.key}", whole, "down", lines, "down")


def _bordered(unit: Unit, border: BorderSpec, index: int, patches: list[Patch]) -> Unit:
    left, top, right, bottom = unit.box
    w = border.width
    boxes = (
        (left - w, top, left, bottom),
        (right, top, right + w, bottom),
        (left - w, top - w, right + w, top),
        (left - w, bottom, right + w, bottom + w),
    )
    made_ = [
        _patch(f"border {index + 1} {i}", b, border.fabric, "border") for i, b in enumerate(boxes)
    ]
    patches += made_
    a, b, c, d = (_leaf(p) for p in made_)
    sides = _joined(f"sides {index}", "centre", "across", [a, unit, b], "out")
    return _joined(f"ends {index}", "centre", "down", [c, sides, d], "out")

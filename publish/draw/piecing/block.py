"""A block in colour, with its letters and its grid; and in the sections it is sewn in.

In: a size and `block`, a block's key. Out: the figures `block` and `sections`.
Invariant: the block lies as it is designed, not as it lies in the top; letters are those
of the pieces that the plan cuts for it.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

from shapely.affinity import translate

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import dimension, disc
from publish.draw.canvas.shapes import bounds_of, polygon_of
from publish.draw.canvas.style import (
    INK,
    LABEL,
    STEP_WIDTH,
    THIN,
    Stroke,
    mix,
    readable_on,
)
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.apart import finished
from publish.draw.piecing.table import letter_inside
from publish.model.draft import FoundationSection, Patch, Unit
from publish.model.figure import Figure
from publish.model.pattern import Block
from publish.model.size import Size
from publish.model.words import FigureSpec

SIDE = 1.9
LEFT = 0.3
"""Inches: the block on the page, and what is kept at its left for a dimension."""


def block_of(context: Context, key: str) -> Block:
    """Return a block by its key."""
    if key not in context.pattern.blocks:
        raise CannotDrawError(f"there is no block {key!r}")
    return context.pattern.blocks[key]


def side_of(size: Size, key: str) -> Fraction:
    """Return the finished side of a block at a size."""
    held = (*size.arrangement, *size.alternates)
    if any(key in row for row in held):
        return size.block_side
    for layer in size.layers:
        if layer.block_side is not None and any(b.block == key for b in layer.blocks):
            return layer.block_side
    raise CannotDrawError(f"there is no block {key!r} at this size")


def patches_in(block: Block, side: Fraction) -> tuple[Patch, ...]:
    """Return a block's patches, unturned, in inches from its top left corner."""
    across, down = side / block.columns, side / block.rows

    def at(point: tuple[Fraction, Fraction]) -> tuple[Fraction, Fraction]:
        return point[0] * across, point[1] * down

    return tuple(
        Patch(
            f"{block.key} {number}",
            tuple(at(p) for p in spec.ring),
            spec.fabric,
            "ground",
            block.key,
            arcs=tuple((i, at(t)) for i, t in spec.arcs),
            spec=number,
        )
        for number, spec in enumerate(block.patches)
    )


def letters_in(context: Context, spec: FigureSpec, key: str) -> dict[int, str]:
    """Return the letter of the piece of each patch of a block, by its position in it."""
    sources = context.plan(spec).sources
    found: dict[int, str] = {}
    for patch in context.draft(spec).patches:
        if patch.block == key and patch.spec is not None and patch.key in sources:
            found.setdefault(patch.spec, sources[patch.key])
    return found


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw a block with the letters of its pieces, its side and one square of its grid."""
    say = context.labels
    block, size = block_of(context, spec.get("block")), context.size(spec)
    side = side_of(size, block.key)
    patches, letters = patches_in(block, side), letters_in(context, spec, block.key)
    scale = SIDE / float(side)
    canvas = context.canvas(STEP_WIDTH, 3.0)
    frame = canvas.frame((STEP_WIDTH - SIDE) / 2, LEFT, scale)
    for number, patch in enumerate(patches):
        shape, colour = polygon_of(patch), context.colour(patch.fabric)
        frame.shape(shape, colour, Stroke(mix(colour, INK, 0.38), 0.4))
        if number in letters:
            letter_inside(frame, shape, letters[number], readable_on(colour))
    frame.rect(0, 0, side, side, None, Stroke(INK, 0.6))
    _grid(context.labels, frame, block, side)
    dimension(frame, (0, 0), (side, 0), say.length(side), 13)
    return canvas.figure(spec, _alt(context, block, side, letters))


def _grid(say: Labels, frame: Canvas, block: Block, side: Fraction) -> None:
    """Draw a tick at every line of the grid, and dimension its first square."""
    for count, across in ((block.columns, True), (block.rows, False)):
        for number in range(count + 1):
            at = side * number / count
            near, far = frame.inches(-1.5), frame.inches(-5.0)
            if across:
                frame.line((at, near), (at, far), THIN)
            else:
                frame.line((near, at), (far, at), THIN)
    square = side / block.rows
    if square != side and _plain(square):
        dimension(frame, (0, square), (0, 0), say.length(square), 11)


def _plain(length: Fraction) -> bool:
    """Return whether a ruler marked in eighths shows a length."""
    return (length * 8).denominator == 1


def _alt(context: Context, block: Block, side: Fraction, letters: dict[int, str]) -> str:
    say = context.labels
    counts = Counter((letters.get(i, ""), p.fabric) for i, p in enumerate(block.patches))
    named = [
        say.text(
            "figure-in",
            n=n,
            more=letter + " " if letter else "",
            name=context.pattern.fabrics[fabric].name,
        )
        for (letter, fabric), n in counts.items()
    ]
    return say.text(
        "figure-block-alt",
        key=block.key,
        side=say.spoken(side, side),
        columns=block.columns,
        rows=block.rows,
        patches=say.counted(len(block.patches), "patch"),
        named=say.listed(named),
    )


# --- sections ---------------------------------------------------------------------------


def sections(context: Context, spec: FigureSpec) -> Figure:
    """Draw a block's foundation sections pulled apart, then the order they are joined in."""
    say = context.labels
    key = spec.get("block")
    held = [s for s in context.draft(spec).foundations if s.block == key]
    if not held:
        raise CannotDrawError(f"the block {key!r} has no foundations at this size")
    side = side_of(context.size(spec), key)
    canvas = context.canvas(STEP_WIDTH, 6.0)
    low = _pulled_apart(canvas, context, held, side)
    steps = _steps(context, spec, key)
    for number, step in enumerate(steps):
        y = low + 0.2 + number * 0.17
        canvas.text((0.1, y), f"{number + 1}", LABEL, "semibold", level="middle")
        canvas.text((0.28, y), step, LABEL, level="middle")
    names = [
        say.text("figure-of-3", letter=s.letter, patches=say.counted(len(s.patches), "patch"))
        for s in held
    ]
    order = (
        say.text(
            "figure-join",
            value=say.text("figure-then").join(s.replace("+", "and") for s in steps),
        )
        if steps
        else ""
    )
    alt = say.text(
        "figure-block-sections",
        key=key,
        side=say.plain(side),
        held=say.counted(len(held), "section"),
        names=say.listed(names),
        order=order,
    )
    return canvas.figure(spec, alt)


def _pulled_apart(
    canvas: Canvas, context: Context, held: list[FoundationSection], side: Fraction
) -> float:
    """Draw sections away from each other, each with its letter; return where they end."""
    scale = 1.75 / float(side)
    units = [_as_unit(s) for s in held]
    apart = finished(units).at(0.1 / scale)
    left, top, right, bottom = bounds_of(apart.shapes())
    scale *= min(1.0, (STEP_WIDTH - 0.1) / ((right - left) * scale))
    frame = canvas.frame(
        (STEP_WIDTH - (right - left) * scale) / 2 - left * scale, 0.05 - top * scale, scale
    )
    for number, section in enumerate(held):
        for (patch, _), shape in zip(apart.parts[number], apart.part(number), strict=True):
            colour = context.colour(patch.fabric)
            frame.shape(shape, colour, Stroke(mix(colour, INK, 0.38), 0.35))
        outline = translate(
            polygon_of(replace(section.patches[0], ring=section.ring, arcs=())),
            *apart.moves[number],
        )
        frame.shape(outline, None, Stroke(INK, 0.8))
        middle = (
            outline.representative_point()
            if not outline.contains(outline.centroid)
            else (outline.centroid)
        )
        disc(frame, (middle.x, middle.y), section.letter)
    return 0.05 + (bottom - top) * scale


def _as_unit(section: FoundationSection) -> Unit:
    xs, ys = zip(*section.ring, strict=True)
    return Unit(
        section.key,
        section.letter,
        (min(xs), min(ys), max(xs), max(ys)),
        ring=section.ring,
        section=section.key,
        held=section.patches,
    )


def _steps(context: Context, spec: FigureSpec, key: str) -> list[str]:
    """Return the joins of the first such block in sewing order: `A + B`, `AB + C`."""
    for unit in context.draft(spec).assembly.outermost_first():
        held = [p.block for p in unit.patches]
        if unit.parts and set(held) == {key} and any(u.section for u in unit.outermost_first()):
            steps: list[str] = []
            _joins(context, unit, steps)
            return steps
    return []


def _joins(context: Context, unit: Unit, steps: list[str]) -> str:
    """Collect a unit's joins, innermost first; return what it is called."""
    if unit.section:
        return unit.section.rsplit(" ", 1)[-1]
    if not unit.parts:
        return unit.name
    names = [_joins(context, part, steps) for part in unit.parts]
    steps.append(" + ".join(names))
    short = "".join(names)
    return short if all(n.isupper() for n in names) else unit.name

"""The whole top before it is joined: rows apart, numbered.

In: a size. Out: the figure.
Invariant: the rows are the draft's own units, top to bottom, each block drawn once.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import accumulate

from publish.draw.canvas.marks import disc
from publish.draw.canvas.style import STEP_WIDTH
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.exploded import setting
from publish.draw.piecing.pressing import press_arrows
from publish.draw.piecing.table import holds, margins, paint_raw, together
from publish.model.draft import Draft, Patch, Unit
from publish.model.figure import Figure
from publish.model.words import FigureSpec

BLOCKS_APART = 0.05
ROWS_APART = 0.17
LEFT = 0.3


def row_units(draft: Draft) -> tuple[Unit, ...]:
    """Return the rows of blocks, top to bottom, each block a part from the left.

    How a row's seams are pressed is read from the seam tree's unit that covers the row.
    """
    blocks: dict[int, dict[int, list[Patch]]] = {}
    for patch in draft.patches:
        if patch.row is not None and patch.column is not None:
            blocks.setdefault(patch.row, {}).setdefault(patch.column, []).append(patch)
    found = []
    for number, row in sorted(blocks.items()):
        parts = tuple(together(row[column], "block") for column in sorted(row))
        whole = together([p for column in row.values() for p in column], f"row {number + 1}")
        press = [
            u.press for u in draft.assembly.outermost_first() if u.box == whole.box and u.parts
        ]
        found.append(replace(whole, join="across", parts=parts, press=press[0] if press else ""))
    return tuple(found)


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the rows one under the other with their numbers and pressing arrows."""
    draft, size = context.draft(spec), context.size(spec)
    if size.on_point or size.sashing is not None:
        return setting(context, spec)
    rows = row_units(draft)
    if not rows:
        raise CannotDrawError("this size has no blocks")
    seam = float(context.pattern.sewing.seam)
    most = max(len(r.parts) for r in rows)
    wide = max(float(r.width) + 2 * seam * len(r.parts) for r in rows)
    scale = (STEP_WIDTH - LEFT - 0.04 - BLOCKS_APART * (most - 1)) / wide
    canvas = context.canvas(STEP_WIDTH, 9.0)
    y = 0.04
    for number, row in enumerate(rows, 1):
        high = (float(row.height) + 2 * seam) * scale
        x = LEFT
        for part in row.parts:
            frame = canvas.frame(
                x - (float(part.box[0]) - seam) * scale,
                y - (float(part.box[1]) - seam) * scale,
                scale,
            )
            margin = margins(context, draft, part, trimmed=True)
            paint_raw(frame, context, draft, part, margin, holds(draft, (part,)))
            x += (float(part.width) + 2 * seam) * scale + BLOCKS_APART
        ends = list(
            accumulate((float(p.width) + 2 * seam) * scale + BLOCKS_APART for p in row.parts[:-1])
        )
        gaps = [(LEFT + end - BLOCKS_APART / 2, y + high / 2) for end in ends]
        press_arrows(canvas, row, context.palette.accent, gaps, 13.0)
        disc(canvas, (0.13, y + high / 2), str(number))
        y += high + ROWS_APART
    return canvas.figure(spec, _alt(context, spec, rows))


def _alt(context: Context, spec: FigureSpec, rows: tuple[Unit, ...]) -> str:
    size = context.size(spec)
    each = [
        context.labels.text(
            "figure-row-of", n=n, parts=context.labels.counted(len(r.parts), "block")
        )
        + (
            context.labels.text("figure-seams-pressed", press=r.press)
            if r.press and len(r.parts) > 1
            else ""
        )
        for n, r in enumerate(rows, 1)
    ]
    return context.labels.text(
        "figure-the-laid-out-in",
        title=size.title,
        rows=context.labels.counted(len(rows), "row"),
        each=context.labels.listed(each),
    )

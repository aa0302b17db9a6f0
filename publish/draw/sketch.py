"""A block whose patches leave a gap or overlap, drawn with the place marked.

In: notes of reading. Out: one figure for each note with a sketch.
Invariant: nothing is drawn but what the designer wrote: the grid, the patches' outlines,
and the area that the note is about. The figure is hers: no booklet prints it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import INK, RED_BROWN, SOFT, TINT, Stroke
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.notes import Note, Sketch

SIDE = 3.4
"""Inches: the longer side of the grid."""
EDGE = 0.25


def sketches(notes: Iterable[Note]) -> dict[str, str]:
    """Return SVG by name, `<block>-<code>-<n>`, n counting a block's findings of one code."""
    found: dict[str, str] = {}
    seen: Counter[str] = Counter()
    for note in notes:
        if note.sketch is not None:
            stem = f"{note.sketch.block}-{note.code}"
            seen[stem] += 1
            name = f"{stem}-{seen[stem]}"
            found[name] = _figure(name, note, note.sketch).svg
    return found


def _figure(name: str, note: Note, sketch: Sketch) -> Figure:
    scale = SIDE / max(sketch.columns, sketch.rows)
    canvas = Canvas(sketch.columns * scale + 2 * EDGE, 9.0)
    frame = canvas.frame(EDGE, EDGE, scale)
    whole = ((0, 0), (sketch.columns, 0), (sketch.columns, sketch.rows), (0, sketch.rows))
    frame.polygon(whole, TINT)
    for outline in sketch.outlines:
        frame.polygon(outline, None, Stroke(INK, 0.8))
    frame.polygon(sketch.area, RED_BROWN, Stroke(RED_BROWN, 1.6), opacity=0.45)
    faint = Stroke(SOFT, 0.25)
    for column in range(sketch.columns + 1):
        frame.line((column, 0), (column, sketch.rows), faint)
        frame.text((column, 0), str(column), anchor="middle", fill=SOFT, shift=(0.0, -4.0))
    for row in range(sketch.rows + 1):
        frame.line((0, row), (sketch.columns, row), faint)
        frame.text((0, row), str(row), anchor="end", level="middle", fill=SOFT, shift=(-4.0, 0.0))
    return canvas.figure(
        FigureSpec(name, "sketch"),
        f"The {sketch.block} block on its grid of {sketch.columns} by {sketch.rows}, the place "
        f"marked: {note.what}; {note.received}.",
    )

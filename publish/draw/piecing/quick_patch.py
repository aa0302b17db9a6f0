"""Flipped corners and strip sets.

In: a job of method `corners` or `strips`, a stage. Out: the picture, and its words.
Invariant: squares stand on the corners where the unit has its triangles; strips lie in
the order in which the unit has its patches.
"""

from __future__ import annotations

from fractions import Fraction

from shapely.geometry import Polygon, box

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import block_arrow, dimension
from publish.draw.canvas.shapes import XY, laid, polygon_of
from publish.draw.canvas.style import CUT, HAIR, HEAD, LABEL, PAPER, SMALL, Stroke, readable_on
from publish.draw.cloth import fabric, hatch
from publish.draw.piecing.quick_marks import DRAWN, Job, notes, stitched, trimmed
from publish.draw.piecing.table import piece_for
from publish.model.cutplan import Piece
from publish.model.draft import Patch

SIDE = 1.2
LEFT, TOP = 0.3, 0.3
OUTSIDE = 2.2
"""Points from the drawn line at which the stitching beside it shows."""
CORNERS = ((0, 0), (1, 0), (1, 1), (0, 1))


def corners(canvas: Canvas, job: Job, stage: str) -> str:
    """Draw squares sewn across the corners of a patch, and the unit they make."""
    say = job.context.labels
    base = _base(job)
    small = [i for i in range(len(job.pieces)) if i != base]
    names = say.listed(
        [
            say.text(
                "figure-of-5",
                each=say.counted(job.making.each[i], "square"),
                i=job.name(i),
                width=say.plain(job.pieces[i].width),
            )
            for i in small
        ]
    )
    if stage == "trim":
        trimmed(canvas, job, (LEFT + 0.3, TOP), SIDE)
        wide, high = job.making.trim
        return say.text("figure-quick-patch-corners", wide=say.spoken(wide, high))
    _on_corners(canvas, job, base, stage)
    seam = say.plain(job.context.pattern.sewing.seam)
    does = {
        "mark": say.text("figure-quick-patch-corners-2"),
        "sew": say.text("figure-quick-patch-corners-3"),
        "cut": say.text("figure-quick-patch-corners-4", seam=seam),
    }
    return say.text(
        "figure-quick-patch-corners-5",
        base=job.name(base),
        width=say.spoken(job.pieces[base].width, job.pieces[base].length),
        names=names,
        does=does[stage],
    )


def _base(job: Job) -> int:
    return max(
        range(len(job.pieces)), key=lambda i: float(job.pieces[i].width * job.pieces[i].length)
    )


def small_corners(job: Job) -> list[tuple[int, Patch]]:
    """Return which corners of the unit hold triangles, and the triangles.

    Corners count clockwise on the page from the top left.
    """
    left, top, right, bottom = (float(v) for v in job.unit.box)
    spots = [(left, top), (right, top), (right, bottom), (left, bottom)]
    found = []
    for patch in job.unit.patches:
        ring = laid(polygon_of(patch), job.unit.turn).exterior.coords[:-1]
        held = [
            i
            for i, (x, y) in enumerate(spots)
            if any(abs(a - x) + abs(b - y) < 1e-6 for a, b in ring)
        ]
        if len(ring) == 3 and len(held) == 1:
            found.append((held[0], patch))
    return found


def _on_corners(canvas: Canvas, job: Job, base: int, stage: str) -> None:
    say = job.context.labels
    seam = job.context.pattern.sewing.seam
    wide, high = float(job.unit.width + 2 * seam), float(job.unit.height + 2 * seam)
    scale = SIDE / max(wide, high)
    frame = canvas.frame(LEFT, TOP, scale)
    fabric(frame, box(0, 0, wide, high), job.colour(base), "right")
    pieces = {p.fabric: p for i, p in enumerate(job.pieces) if i != base}
    note: list[tuple[XY, str]] = []
    held = small_corners(job)
    crowded = any(
        2 * float(pieces[p.fabric].width) > min(wide, high) for _, p in held if p.fabric in pieces
    )
    for corner, patch in held:
        if crowded and len(held) > 2 and corner % 2:
            continue  # one pair of opposite corners is sewn before the other
        piece = pieces.get(patch.fabric)
        if piece is None:
            continue
        at = _one_corner(frame, job, (wide, high), corner, piece, stage)
        words = job.context.labels.text(f"figure-corner-{stage}")
        note = note or [(at, f"{piece.letter}: {words}")]
    dimension(frame, (0, 0), (wide, 0), say.length(job.unit.width + 2 * seam), 11)
    middle = (wide * 0.75, high * 0.25) if crowded and len(held) > 2 else (wide / 2, high / 2)
    frame.text(
        middle,
        job.letter(base),
        HEAD,
        "semibold",
        "middle",
        "middle",
        readable_on(job.colour(base)),
        halo=job.colour(base),
    )
    rows = [(at, words) for at, words in note]
    notes(canvas, frame, rows, LEFT + SIDE * wide / max(wide, high) + 0.14, TOP + 0.2)


def _one_corner(
    frame: Canvas, job: Job, sides: tuple[float, float], corner: int, piece: Piece, stage: str
) -> XY:
    """Draw a square on one corner; return a point on its line."""
    a, b = CORNERS[corner]
    s = float(piece.width)
    x, y = a * sides[0], b * sides[1]
    dx, dy = (1 if a == 0 else -1), (1 if b == 0 else -1)
    whole = box(min(x, x + dx * s), min(y, y + dy * s), max(x, x + dx * s), max(y, y + dy * s))
    fabric(frame, whole, context_colour(job, piece), "wrong")
    start, end = (x + dx * s, y), (x, y + dy * s)
    if stage == "cut":
        off = s - job.seam * 2**0.5
        gone = Polygon([(x, y), (x + dx * off, y), (x, y + dy * off)])
        frame.shape(gone, PAPER, None, opacity=0.75)
        hatch(frame, gone, Stroke(HAIR, 0.4), 2.6)
        frame.line((x + dx * off, y), (x, y + dy * off), CUT)
    else:
        frame.line(start, end, DRAWN)
    if stage != "mark":
        toward = 1 if dx == dy else -1
        stitched(frame, start, end, whole, toward * frame.inches(OUTSIDE))
    return ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)


def context_colour(job: Job, piece: Piece) -> str:
    return job.context.colour(piece.fabric)


# --- strip sets -------------------------------------------------------------------------

LONG = 1.75
"""Inches of a strip set that are shown of its length."""


def strips(canvas: Canvas, job: Job, stage: str) -> str:
    """Draw strips apart, joined, or cut across into segments."""
    say = job.context.labels
    run = _run(job)
    if stage == "trim":
        trimmed(canvas, job, (LEFT + 0.3, TOP), SIDE)
        return say.text("figure-quick-patch-strips", trim=say.spoken(*job.making.trim))
    seam = job.context.pattern.sewing.seam
    widths = [wide + 2 * seam for _, wide in run]
    named = say.listed(
        [
            say.text("figure-of-6", letter=letter, w=say.plain(w))
            for (letter, _), w in zip([(_letter(job, p), w) for p, w in run], widths, strict=True)
        ]
    )
    if stage == "mark":
        _strips_apart(canvas, job, run)
        return say.text("figure-quick-patch-strips-2", named=named)
    segment = job.making.segment
    _strip_set(canvas, job, run, cut=stage == "cut")
    if stage == "sew" or segment is None:
        return say.text("figure-quick-patch-strips-3", named=named)
    return say.text(
        "figure-quick-patch-strips-4",
        named=named,
        segment=say.plain(segment),
        each_batch=job.making.each_batch,
    )


def _run(job: Job) -> list[tuple[Patch, Fraction]]:
    """Return the patches of the segment in order, with their finished widths along it."""
    unit = job.unit
    across = unit.join == "across"
    return [(p.patches[0], Fraction(p.width if across else p.height)) for p in unit.parts]


def _letter(job: Job, patch: Patch) -> str:
    plan = job.context.plans[job.draft.size]
    piece = piece_for(plan, patch)
    return piece.letter if piece is not None else ""


def _strips_apart(canvas: Canvas, job: Job, run: list[tuple[Patch, Fraction]]) -> None:
    seam = job.context.pattern.sewing.seam
    total = float(sum(w + 2 * seam for _, w in run))
    scale = min(1.1 / total, 0.42)
    y = 0.1
    for patch, wide in run:
        high = float(wide + 2 * seam) * scale
        colour = job.context.colour(patch.fabric)
        _strip(canvas, (0.2, y), high, colour, _letter(job, patch))
        words = job.context.labels.length(wide + 2 * seam)
        canvas.text((0.2 + LONG + 0.08, y + high / 2), words, SMALL, level="middle")
        y += high + 0.09


def _strip(canvas: Canvas, at: XY, high: float, colour: str, letter: str) -> None:
    x, y = at
    fabric(canvas, box(x, y, x + LONG, y + high), colour, "right")
    _broken(canvas, (x + LONG, y), high)
    if high * 72 >= SMALL:
        size = HEAD if high * 72 > HEAD else SMALL
        canvas.text(
            (x + LONG / 2, y + high / 2),
            letter,
            size,
            "semibold",
            "middle",
            "middle",
            readable_on(colour),
        )


def _broken(canvas: Canvas, at: XY, high: float) -> None:
    """Draw the ragged end that says a strip goes on."""
    x, y = at
    steps = max(int(high / 0.06), 2)
    points = [(x + (0.03 if i % 2 else -0.03), y + high * i / steps) for i in range(steps + 1)]
    canvas.polygon([(x + 0.06, y - 0.01), *points, (x + 0.06, y + high + 0.01)], PAPER)
    canvas.polyline(points, Stroke(HAIR, 0.6))


def _strip_set(canvas: Canvas, job: Job, run: list[tuple[Patch, Fraction]], cut: bool) -> None:
    say = job.context.labels
    seam, segment = float(job.context.pattern.sewing.seam), job.making.segment
    total = float(sum(w for _, w in run)) + 2 * seam
    scale = min(1.1 / total, 0.42)
    top, y, middles = 0.32, 0.32, []
    for number, (patch, wide) in enumerate(run):
        ends = (number == 0) + (number == len(run) - 1)
        high = (float(wide) + ends * seam) * scale
        colour = job.context.colour(patch.fabric)
        _strip(canvas, (0.2, y), high, colour, "" if cut else _letter(job, patch))
        y += high
        middles.append(y)
    if cut and segment is not None:
        _segments(canvas, float(segment) * scale, (top, y), say.length(segment))
    else:
        for at in middles[:-1]:
            _press(canvas, job, at)
    bottom, width = y, sum((w for _, w in run), Fraction(0)) + 2 * job.context.pattern.sewing.seam
    dimension(canvas, (0.2 + LONG, top), (0.2 + LONG, bottom), say.length(width), 10)


def _press(canvas: Canvas, job: Job, y: float) -> None:
    """Draw the way a strip set's allowances go: the set lies turned like its segments."""
    up = job.unit.press in ("up", "left", "first")
    for x in (0.55, 0.2 + LONG - 0.35):
        ends = ((x, y + 0.09), (x, y - 0.12)) if up else ((x, y - 0.09), (x, y + 0.12))
        block_arrow(canvas, *ends, job.context.palette.accent, 7.0, rim=PAPER)


def _segments(canvas: Canvas, wide: float, across: tuple[float, float], words: str) -> None:
    """Draw the cuts across a strip set, one segment's width between them."""
    top, bottom = across
    x, over = 0.3, 0.07
    count = 0
    while x <= 0.2 + LONG - 0.06:
        canvas.line((x, top - over), (x, bottom + over), CUT)
        x += wide
        count += 1
    if count > 1:
        dimension(canvas, (0.3, top - over), (0.3 + wide, top - over), words, 6, extend=False)
    canvas.text((0.2, bottom + 0.2), canvas.labels.text("figure-quick-patch-segments"), LABEL)

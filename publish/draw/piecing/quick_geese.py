"""Four geese at once: small squares on the corners of a large one.

In: a job of method `geese`, a stage. Out: the picture on the canvas, and its words.
Invariant: the large square is the first of the pieces that is cut once for a batch, the
small one the piece that four are cut of.
"""

from __future__ import annotations

from shapely.geometry import Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import dimension
from publish.draw.canvas.shapes import XY
from publish.draw.canvas.style import CUT, HEAD, LABEL, readable_on, wrong_side
from publish.draw.cloth import fabric
from publish.draw.piecing.quick_marks import DRAWN, Job, halves, notes, square, stitched, trimmed

SIDE = 1.3
LEFT, TOP = 0.12, 0.3


def order(job: Job) -> tuple[int, int]:
    """Return the positions of the large and the small square among the pieces."""
    large = min(range(len(job.pieces)), key=lambda i: job.making.each[i])
    small = max(range(len(job.pieces)), key=lambda i: job.making.each[i])
    return large, small


def geese(canvas: Canvas, job: Job, stage: str) -> str:
    """Draw a stage; return its alternative text."""
    say = job.context.labels
    large, small = order(job)
    seam = say.plain(job.context.pattern.sewing.seam)
    base = say.text(
        "figure-quick-geese-geese",
        large=job.name(large),
        width=say.plain(job.pieces[large].width),
        small=job.name(small),
        width_2=say.plain(job.pieces[small].width),
    )
    if stage == "mark":
        _first(canvas, job, sewn=False)
        return f"{base}."
    if stage == "sew":
        _first(canvas, job, sewn=True)
        return say.text("figure-quick-geese-geese-2", base=base, seam=seam)
    if stage == "cut":
        _second(canvas, job)
        return say.text("figure-quick-geese-geese-3", small=job.name(small), seam=seam)
    trimmed(canvas, job, (LEFT + 0.3, TOP), SIDE + 0.2)
    wide, high = job.making.trim
    return say.text(
        "figure-quick-geese-geese-4", wide=say.spoken(wide, high), each_batch=job.making.each_batch
    )


def _first(canvas: Canvas, job: Job, sewn: bool) -> None:
    """Draw the large square with a small one on two opposite corners."""
    say = job.context.labels
    large, small = order(job)
    whole, part = job.side(large), job.side(small)
    frame = canvas.frame(LEFT, TOP, SIDE / whole)
    shape = square(frame, (0, 0), whole, job.colour(large), "right")
    square(frame, (0, 0), part, job.colour(small))
    square(frame, (whole - part, whole - part), part, job.colour(small))
    start, end = (0.0, 0.0), (whole, whole)
    frame.line(start, end, DRAWN)
    _letter(frame, (whole * 0.8, whole * 0.22), job, large, "right")
    _letter(frame, (part * 0.24, part * 0.74), job, small, "wrong")
    _letter(frame, (whole - part * 0.74, whole - part * 0.2), job, small, "wrong")
    rows: list[tuple[XY, str]] = [((whole * 0.22, whole * 0.22), say.text("figure-drawn-line"))]
    if sewn:
        stitched(frame, start, end, shape, job.seam, -job.seam)
        off = job.seam / 2**0.5
        words = say.text("figure-stitching", seam=say.length(job.context.pattern.sewing.seam))
        rows.append(((whole * 0.6 + off, whole * 0.6 - off), words))
        rows.append(((whole * 0.74 - off, whole * 0.74 + off), say.text("figure-on-both-sides")))
    dimension(frame, (0, 0), (whole, 0), say.length(job.pieces[large].width), 11)
    dimension(frame, (whole, whole), (whole - part, whole), say.length(job.pieces[small].width), 9)
    notes(canvas, frame, rows, LEFT + SIDE + 0.14, TOP + 0.14)


def _letter(frame: Canvas, at: XY, job: Job, number: int, face: str) -> None:
    colour = job.colour(number) if face == "right" else wrong_side(job.colour(number))
    frame.text(at, job.letter(number), HEAD, "semibold", "middle", "middle", readable_on(colour))


def _second(canvas: Canvas, job: Job) -> None:
    """Draw a half with its small triangles pressed out, and the third square on its corner.

    The half is the part above the drawn line; its corner is the square's own.
    """
    large, small = order(job)
    whole, part = job.side(large), job.side(small)
    scale = 1.2 / whole
    frame = canvas.frame(LEFT + 0.35, TOP + 0.12, scale)
    full = Polygon([(0, 0), (whole, 0), (whole, whole), (0, whole)])
    half = _larger_x(halves(full, (0.0, 0.0), (whole, whole)))
    fabric(frame, half, job.colour(large), "right")
    for flap in _flaps(job, whole, part):
        fabric(frame, flap, job.colour(small), "right")
    third = square(frame, (whole - part, 0), part, job.colour(small))
    corner, inner = (whole, 0.0), (whole - part, part)
    frame.line(corner, inner, DRAWN)
    stitched(frame, corner, inner, third, job.seam, -job.seam)
    over = 0.1 / scale
    frame.line((whole + over, -over), (whole / 2 - over, whole / 2 + over), CUT)
    rows = [
        (
            (whole - part * 0.3, part * 0.3),
            job.context.labels.text("figure-one-more", small=job.letter(small)),
        )
    ]
    notes(canvas, frame, rows, LEFT + 1.72, TOP + 0.2)
    x, y = frame.point((whole * 0.5, whole))
    canvas.page.text(
        (x, y + 16), job.context.labels.text("figure-quick-geese-second"), LABEL, anchor="middle"
    )


def _larger_x(parts: tuple[Polygon, Polygon]) -> Polygon:
    return max(parts, key=lambda p: float(p.centroid.x))


def _flaps(job: Job, whole: float, part: float) -> list[Polygon]:
    """Return the two small triangles, turned over along their seams.

    A small square's half above the drawn line is sewn one allowance from it, and folds
    out over that seam.
    """
    s = job.seam * 2**0.5  # of the seam, along the sides of the squares
    low = Polygon([(s, 0), (part, 0), (part, part - s)])
    high = Polygon([(whole - part + s, whole - part), (whole, whole - part), (whole, whole - s)])
    return [_over(low, s), _over(high, s)]


def _over(shape: Polygon, s: float) -> Polygon:
    """Return a shape mirrored across the line y = x - s."""
    return Polygon([(y + s, x - s) for x, y in shape.exterior.coords])

"""Units made several at once: marked, sewn, cut apart, pressed and trimmed.

In: a size; `method`, a quicker method of `Piecing`; `unit`, the kind that it makes;
`stage` mark, sew, cut or trim. Out: the figure.
Invariant: the squares, strips and sizes are those of the plan's making.
"""

from __future__ import annotations

from collections.abc import Callable

from shapely.geometry import Polygon

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import dimension
from publish.draw.canvas.shapes import XY
from publish.draw.canvas.style import CUT, LABEL, STEP_WIDTH
from publish.draw.cloth import fabric
from publish.draw.context import CannotDrawError, Context
from publish.draw.piecing.quick_geese import geese
from publish.draw.piecing.quick_marks import (
    DRAWN,
    Job,
    halves,
    moved,
    notes,
    pair,
    stitched,
    then,
    trimmed,
)
from publish.draw.piecing.quick_patch import corners, strips
from publish.model.figure import Figure
from publish.model.words import FigureSpec

STAGES = ("mark", "sew", "cut", "trim")
SIDE = 1.15
LEFT, TOP = 0.12, 0.3


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw one stage of a quicker method."""
    stage, method = spec.get("stage", "mark"), spec.get("method")
    if stage not in STAGES:
        raise CannotDrawError(f"there is no stage {stage!r}")
    drawing = METHODS.get(method)
    if drawing is None:
        raise CannotDrawError(f"there is no method {method!r}")
    canvas = context.canvas(STEP_WIDTH, 4.0)
    alt = drawing(canvas, Job.of(context, spec), stage)
    return canvas.figure(spec, alt)


def triangles(canvas: Canvas, job: Job, stage: str) -> str:
    """Two squares, sewn on both sides of the diagonal of one, give two units."""
    say = job.context.labels
    seam = say.plain(job.context.pattern.sewing.seam)
    if stage == "trim":
        return _open_and_trim(canvas, job, "unit", crossed=False)
    both = say.text(
        "figure-two-squares-upon",
        value=job.name(0),
        value_2=job.name(1),
        width=say.plain(job.pieces[0].width),
    )
    both += say.text("figure-quick-triangles")
    if stage == "cut":
        _apart(canvas, job, crossed=False)
        return say.text("figure-quick-triangles-2", both=both, seam=seam)
    _laid(canvas, job, crossed=False, sewn=stage == "sew")
    return (
        f"{both}."
        if stage == "mark"
        else (say.text("figure-quick-triangles-3", both=both, seam=seam))
    )


def hourglasses(canvas: Canvas, job: Job, stage: str) -> str:
    """The two units that two squares give, laid on each other, give two hourglasses."""
    say = job.context.labels
    seam = say.plain(job.context.pattern.sewing.seam)
    if stage == "trim":
        return _open_and_trim(canvas, job, "hourglass", crossed=True)
    if stage == "cut":
        _laid(canvas, job, crossed=True, sewn=True)
        return say.text("figure-quick-hourglasses", seam=seam)
    return triangles(canvas, job, stage)


def _laid(canvas: Canvas, job: Job, crossed: bool, sewn: bool) -> None:
    """Draw squares right sides together with the drawn line, and stitching beside it."""
    say = job.context.labels
    side = job.side(0)
    scale = SIDE / side
    frame = canvas.frame(LEFT, TOP, scale)
    shape = pair(frame, side, job.colour(1), job.colour(0))
    if crossed:
        first, last = halves(shape, (side, 0), (0, side))
        fabric(frame, first, job.colour(0), "wrong")
        fabric(frame, last, job.colour(1), "wrong")
        frame.line((side, 0), (0, side), CUT.but(weight=0.5))
    start, end = (0.0, 0.0), (side, side)
    frame.line(start, end, DRAWN)
    rows: list[tuple[XY, str]] = [((side * 0.3, side * 0.3), say.text("figure-drawn-line"))]
    if sewn:
        stitched(frame, start, end, shape, job.seam, -job.seam)
        off = job.seam / 2**0.5
        words = say.text("figure-stitching", seam=say.length(job.context.pattern.sewing.seam))
        rows.append(((side * 0.55 + off, side * 0.55 - off), words))
        rows.append(((side * 0.72 - off, side * 0.72 + off), say.text("figure-on-both-sides")))
    if not crossed:
        dimension(frame, (0, 0), (side, 0), say.length(job.pieces[0].width), 11)
        _under(canvas, frame, job, side)
    notes(canvas, frame, rows, LEFT + SIDE + 0.16, TOP + 0.18)


def _under(canvas: Canvas, frame: Canvas, job: Job, side: float) -> None:
    """Say which piece lies on top and which under it."""
    x, y = frame.point((0, side))
    words = job.context.labels.text(
        "figure-on-right-sides-together", value=job.letter(0), value_2=job.letter(1)
    )
    canvas.page.text((x, y + 14), words, LABEL, "semibold")


def _apart(canvas: Canvas, job: Job, crossed: bool) -> Polygon:
    """Draw the sewn squares cut on the line, the halves apart; return the first."""
    side = job.side(0)
    scale = SIDE / side
    frame = canvas.frame(LEFT + 0.1, TOP, scale)
    shape = Polygon([(0, 0), (side, 0), (side, side), (0, side)])
    start, end = (0.0, 0.0), (side, side)
    gap = 0.1 / scale
    for part, sign in zip(halves(shape, start, end), (-1, 1), strict=True):
        by = (sign * gap / 2, -sign * gap / 2)
        half = moved(part, by)
        fabric(frame, half, job.colour(0), "wrong")
        inner = (start[0] + by[0], start[1] + by[1]), (end[0] + by[0], end[1] + by[1])
        stitched(frame, *inner, half, -sign * job.seam)
    over = 0.12 / scale
    frame.line((-over, -over), (side + over, side + over), CUT)
    notes(
        canvas,
        frame,
        [((side * 0.62, side * 0.62), job.context.labels.text("figure-cut-on-the-line"))],
        LEFT + SIDE + 0.3,
        TOP + 0.3,
    )
    return shape


def _open_and_trim(canvas: Canvas, job: Job, called: str, crossed: bool) -> str:
    """Draw a half as it is cut off, and the unit that it opens to, with its size."""
    say = job.context.labels
    side = job.side(0)
    scale = 0.8 / side
    frame = canvas.frame(LEFT, TOP + 0.15, scale)
    half = Polygon([(0, 0), (side, side), (0, side)])
    fabric(frame, half, job.colour(0), "wrong")
    stitched(frame, (0, 0), (side, side), half, job.seam)
    frame.line((0, 0), (side, side), DRAWN)
    middle = TOP + 0.15 + 0.4
    then(canvas, (LEFT + 0.88, middle), (LEFT + 1.12, middle))
    trimmed(canvas, job, (LEFT + 1.26, TOP), SIDE - 0.1)
    canvas.text(
        (LEFT + 0.4, TOP + 1.18), say.text("figure-open-and-press"), LABEL, "regular", "middle"
    )
    wide, high = job.making.trim
    made = job.making.each_batch
    return say.text(
        "figure-quick-open-and-trim", called=called, wide=say.spoken(wide, high), made=made
    )


METHODS: dict[str, Callable[[Canvas, Job, str], str]] = {
    "triangles": triangles,
    "hourglasses": hourglasses,
    "geese": geese,
    "corners": corners,
    "strips": strips,
}

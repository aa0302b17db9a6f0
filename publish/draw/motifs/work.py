"""The folded wedge at work: basted, the template laid on, marked, cut.

In: a motif at one size. Out: the figures `wedge-baste`, `wedge-align`, `wedge-mark` and
`wedge-cut`.
Invariant: the wedge stands in all of them as it does on the template sheet; the motif is
the drafted one, the cloth the square that is cut for it.
"""

from __future__ import annotations

from shapely.geometry import Point, box

from publish.colour import contrast
from publish.draw.canvas.letters import Labels
from publish.draw.canvas.marks import disc, leader
from publish.draw.canvas.style import (
    BASTE,
    CUT,
    FINISHED,
    FOLD,
    INK,
    LABEL,
    PAPER,
    RED_BROWN,
    SMALL,
    STEP_WIDTH,
    Stroke,
    edge_of,
    mix,
)
from publish.draw.context import Context
from publish.draw.motifs.cuts import CutRun, cut_order
from publish.draw.motifs.wedge import (
    Wedge,
    draw_cloth,
    name_edges,
    set_out,
)
from publish.draw.sheets.labels import Room, readable_angle, size_of, words
from publish.draw.sheets.template import polar
from publish.model.basting import on_wedge
from publish.model.figure import Figure
from publish.model.words import FigureSpec

LENS = 0.3
"""Inches: the radius of the enlarged view."""
TIMES = 4.0
"""How much it enlarges."""
ARROW_EVERY = 34.0
"""Points between the arrowheads along a cut."""


def wedge_baste(context: Context, spec: FigureSpec) -> Figure:
    """Draw the marked wedge, basted inside the finished line and through the waste."""
    wedge = set_out(context, spec)
    draw_cloth(wedge)
    frame, template = wedge.frame, wedge.template
    frame.lines(template.finished, FINISHED.but(colour=wedge.ink, weight=0.9))
    frame.lines(template.cut, CUT.but(colour=wedge.ink, weight=0.8))
    thread = BASTE if contrast(RED_BROWN, wedge.colour) >= 2.5 else BASTE.but(colour=PAPER)
    found = on_wedge(template.body, template.cut_body, wedge.cloth, wedge.angles)
    for row in found.rows:
        frame.lines(row, thread)
    name_edges(wedge)
    lowest = max(found.rows, key=lambda row: row.bounds[3])
    end = lowest.interpolate(lowest.project(Point(lowest.bounds[2], lowest.bounds[3])))
    px, py = frame.point((end.x, end.y))
    leader(frame.page, (px, py), (px + 38, py + 12), context.labels.text("figure-basting"))
    waste = context.labels.text("figure-work-wedge-baste") if found.waste.geoms else ""
    alt = context.labels.text("figure-work-wedge-baste-2", folds=wedge.shape.folds, waste=waste)
    return wedge.canvas.figure(spec, alt)


def wedge_align(context: Context, spec: FigureSpec) -> Figure:
    """Draw the paper template on the folded wedge, its edges on the folds."""
    wedge = set_out(context, spec)
    draw_cloth(wedge)
    frame, template = wedge.frame, wedge.template
    frame.shape(template.cut_body, PAPER, Stroke(INK, 0.6), opacity=0.94)
    frame.lines(template.finished, FINISHED.but(weight=0.5))
    for fold in template.folds:
        for start, end in fold.contact:
            frame.line(fold.at(start), fold.at(end), FOLD)
    _pins(wedge)
    name_edges(wedge)
    _paper_words(wedge)
    alt = context.labels.text("figure-work-wedge-align")
    return wedge.canvas.figure(spec, alt)


def _paper_words(wedge: Wedge) -> None:
    """Write on the paper, along its fold edges, what the template sheet says there."""
    frame, template = wedge.frame, wedge.template
    room = Room(frame.to_page(template.body), frame.to_page(template.lines), 1.5)
    for fold, inward in zip(template.folds, (1, -1), strict=True):
        line = frame.to_page(fold.line)
        text = frame.labels.text(f"figure-{fold.kind}-fold")
        place = room.along(line, *size_of(text, SMALL), offsets=(6.5 * inward, 9 * inward))
        if place is not None:
            words(frame, room, place[0], text, SMALL, "regular", place[1])


def _pins(wedge: Wedge) -> None:
    """Draw two pins that hold the paper, across its broadest parts."""
    frame = wedge.frame
    body = frame.to_page(wedge.template.body)
    room = Room(body, frame.to_page(wedge.template.lines), 2.0)
    bisector = sum(wedge.angles) / 2
    angle = readable_angle(bisector + 90)
    for _ in range(2):
        spot = room.spot(20, 9, angle=angle) or room.spot(14, 5, angle=angle)
        if spot is None:
            return
        dx, dy = polar(11, angle)
        start, end = (spot[0] - dx, spot[1] - dy), (spot[0] + dx, spot[1] + dy)
        frame.page.line(start, end, Stroke(INK, 0.7, (), "round"))
        frame.page.circle(start, 1.9, RED_BROWN, Stroke(INK, 0.4))
        room.take(Point(spot).buffer(26))


def wedge_mark(context: Context, spec: FigureSpec) -> Figure:
    """Draw the finished line and the cut line on the wedge, and a part of them enlarged."""
    wedge = set_out(context, spec)
    draw_cloth(wedge)
    frame, template = wedge.frame, wedge.template
    frame.lines(template.finished, FINISHED.but(colour=wedge.ink))
    frame.lines(template.cut, CUT.but(colour=wedge.ink))
    name_edges(wedge)
    under = _lens(context.labels, wedge)
    alt = context.labels.text("figure-work-wedge-mark")
    alt += context.labels.text("figure-work-wedge-mark-2", under=under) if under else "."
    return wedge.canvas.figure(spec, alt + context.labels.text("figure-work-wedge-mark-3"))


def _lens(say: Labels, wedge: Wedge) -> str:
    """Enlarge a stretch of both lines at the bottom right; return the distance in words."""
    frame, template = wedge.frame, wedge.template
    if template.cut.is_empty:
        return ""
    finished = max(template.finished.geoms, key=lambda line: float(line.length))
    spot = finished.interpolate(0.55, normalized=True)
    page = frame.page
    radius = LENS * 72
    centre = _lens_place(wedge, radius)
    round_page = Point(centre).buffer(radius, 32)
    unit = frame.unit * TIMES
    view = page.frame(centre[0] - spot.x * unit, centre[1] - spot.y * unit, unit)
    seen = spot.buffer(radius / unit, 32)
    page.circle(frame.point((spot.x, spot.y)), radius / TIMES, None, Stroke(wedge.ink, 0.6))
    page.shape(round_page, wedge.colour)
    view.lines(template.finished.intersection(seen), FINISHED.but(colour=wedge.ink, weight=1.2))
    view.lines(template.cut.intersection(seen), CUT.but(colour=wedge.ink, weight=1.0))
    page.circle(centre, radius, None, Stroke(INK, 0.8))
    distance = say.length(wedge.motif.turn_under)
    below = centre[1] + radius + 9
    page.text(
        (centre[0], below),
        say.text("figure-apart-2", distance=distance),
        LABEL,
        "regular",
        "middle",
    )
    return distance


def _lens_place(wedge: Wedge, radius: float) -> tuple[float, float]:
    """Return where the enlarged view lies clear of the cloth: beside its foot, or below."""
    cloth = wedge.frame.to_page(wedge.cloth)
    foot = cloth.bounds[3]
    wide = STEP_WIDTH * 72
    room = Room(box(0, 0, wide - 2, foot + 4 * radius), cloth.buffer(13))
    near = (wide - radius - 4, foot - radius + 22)
    side = 2 * radius
    spot = room.spot(side, side, near=near)
    return spot or (near[0], foot + radius + 18)


def wedge_cut(context: Context, spec: FigureSpec) -> Figure:
    """Draw where to start each cut and which way it runs, numbered in order."""
    wedge = set_out(context, spec)
    draw_cloth(wedge)
    frame, template = wedge.frame, wedge.template
    waste = wedge.cloth.difference(template.cut_body.buffer(1e-9))
    frame.shape(waste, mix(wedge.colour, PAPER, 0.72), Stroke(edge_of(wedge.colour), 0.4))
    runs = cut_order(template)
    for run in runs:
        frame.lines(run.line, CUT)
        _heads(wedge, run)
    for number, run in enumerate(runs, start=1):
        disc(frame, run.line.coords[0], str(number), RED_BROWN, SMALL)
    name_edges(wedge)
    order = "; ".join(
        f"{number} {context.labels.text(run.says)}" for number, run in enumerate(runs, start=1)
    )
    return wedge.canvas.figure(spec, context.labels.text("figure-work-wedge-cut", order=order))


def _heads(wedge: Wedge, run: CutRun) -> None:
    """Draw arrowheads along a cut, the last at its end."""
    line = wedge.frame.to_page(run.line)
    count = max(1, int(line.length // ARROW_EVERY))
    for index in range(count):
        end = line.length * (index + 1) / count
        tip, tail = line.interpolate(end), line.interpolate(end - 7)
        dx, dy = (tip.x - tail.x) * 0.38, (tip.y - tail.y) * 0.38
        head = [(tip.x, tip.y), (tail.x - dy, tail.y + dx), (tail.x + dy, tail.y - dx)]
        wedge.frame.page.polygon(head, RED_BROWN, Stroke(PAPER, 0.7))

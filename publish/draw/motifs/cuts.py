"""The order in which a folded wedge is cut.

In: a template laid on its folds. Out: `CutRun`s in order.
Invariant: every stretch of the cut line is in exactly one run, none lies on a fold, and
the layers stay held as long as they can be: the openings inside the wedge first, then
what is cut out of a fold, then the outer edge from the multiple folds to the single fold,
and the opening round the centre last (common practice, no source).
"""

from __future__ import annotations

from dataclasses import dataclass

from shapely.geometry import LineString, Point, Polygon

from publish.draw.sheets.template import Fold, Template

NEAR = 0.02
"""Inches: a cut that ends this near to a fold ends on it."""
KINDS = ("opening", "notch", "outer", "centre")


@dataclass(frozen=True)
class CutRun:
    """One cut: its line in the direction of cutting, and the message that tells it."""

    kind: str
    line: LineString
    says: str


def cut_order(template: Template) -> tuple[CutRun, ...]:
    """Return the cuts of a wedge in order."""
    lines = template.finished if template.cut.is_empty else template.cut
    multiple, single = template.folds
    crossing = [line for line in lines.geoms if _crosses(line, multiple, single)]
    inmost = min((_distance(line) for line in crossing), default=0.0)
    runs = [_run(line, template, inmost, len(crossing)) for line in lines.geoms]
    return tuple(sorted(runs, key=lambda run: (KINDS.index(run.kind), -_distance(run.line))))


def _run(line: LineString, template: Template, inmost: float, crossing: int) -> CutRun:
    multiple, single = template.folds
    if line.is_ring:
        return CutRun("opening", line, "figure-cut-opening")
    if not _crosses(line, multiple, single):
        fold = multiple if _touches(line, multiple) else single
        return CutRun("notch", line, f"figure-cut-notch-{fold.kind}")
    if Point(line.coords[0]).distance(multiple.line) > NEAR:
        line = LineString(line.coords[::-1])
    if _distance(line) <= inmost + 1e-9 and _open_centre(line, template, crossing):
        return CutRun("centre", line, "figure-cut-centre")
    return CutRun("outer", line, "figure-cut-outer")


def _crosses(line: LineString, multiple: Fold, single: Fold) -> bool:
    """Return whether a cut runs from one fold to the other."""
    if line.is_ring:
        return False
    ends = [Point(line.coords[0]), Point(line.coords[-1])]
    return any(
        a.distance(multiple.line) <= NEAR and b.distance(single.line) <= NEAR
        for a, b in (ends, ends[::-1])
    )


def _touches(line: LineString, fold: Fold) -> bool:
    return bool(Point(line.coords[0]).distance(fold.line) <= NEAR)


def _distance(line: LineString) -> float:
    """Return how far a cut's ends lie from the centre, on average."""
    ends = (line.coords[0], line.coords[-1])
    return sum(float(Point(end).distance(Point(0, 0))) for end in ends) / 2


def _open_centre(line: LineString, template: Template, crossing: int) -> bool:
    """Return whether the innermost cut leaves the centre open rather than held."""
    inner = Polygon([(0, 0), *line.coords]).buffer(0)
    covered = inner.intersection(template.cut_body).area
    return crossing > 1 and covered < inner.area / 2

"""Templates laid over each other: how much they differ, and where most.

In: two editions under the same keys. Out: changes, each with its `Overlay`.
Invariant: equal records are equal templates; what differs is measured between the outlines
that a maker cuts along, or, where only the finished line differs, between those.

The largest distance is Hausdorff's: each point of either outline has a nearest one on the
other, and of those distances it is the largest.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

import shapely
from shapely.geometry import Point
from shapely.geometry.base import BaseGeometry
from shapely.ops import nearest_points

from publish.compare.model import (
    COSMETIC,
    CUT,
    Change,
    Edition,
    Overlay,
    SizeEdition,
    Template,
)
from publish.units import decimal_text, mm_text

SEEN = 0.005
"""Inches: outlines that lie nearer than this cannot be told apart on paper, where a line is
wider. Common practice, no source."""
STEP = 0.05
"""Inches between the points of an outline that are measured."""


def find(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield every template that is gone, new or of another shape."""
    for key in (k for k in new.sizes if k in old.sizes):
        before, after = old.sizes[key], new.sizes[key]
        for was, is_ in _pairs(before.templates, after.templates):
            if was is None or is_ is None:
                yield _one(after, was, is_)
            elif was.text != is_.text:
                yield _both(after, was, is_, overlaid(f"{key}-{is_.key}", was, is_))


def _pairs(
    old: tuple[Template, ...], new: tuple[Template, ...]
) -> Iterator[tuple[Template | None, Template | None]]:
    """Yield templates of one kind and key; of those with another key, equal ones.

    Where one motif gave way to one other, they are a pair: a maker sees no key.
    """
    idents = [{(t.kind, t.key) for t in templates} for templates in (old, new)]
    left = list(old)
    gone = [t for t in old if (t.kind, t.key) not in idents[1]]
    fresh = [t for t in new if (t.kind, t.key) not in idents[0]]
    alone = [t.kind for t in gone] == [t.kind for t in fresh] == ["motif"]
    for template in new:
        same = [t for t in left if (t.kind, t.key) == (template.kind, template.key)]
        if template in fresh:
            same = gone if alone else [t for t in gone if t in left and _alike(t, template)]
        if same:
            left.remove(same[0])
        yield (same[0] if same else None), template
    yield from ((template, None) for template in left)


def _alike(one: Template, other: Template) -> bool:
    return (one.kind, one.text) == (other.kind, other.text)


def _called(template: Template) -> str:
    name = template.key.replace("-", " ").replace("_", " ")
    if template.kind == "motif":
        return f"the {name} motif"
    return f"{'foundation' if template.kind == 'foundation' else 'piece'} {template.letter or name}"


def _one(size: SizeEdition, was: Template | None, is_: Template | None) -> Change:
    if is_ is not None:
        return Change(
            CUT, "template", f"{size.title}: the template of {_called(is_)} is new.", "", size.key
        )
    assert was is not None
    return Change(
        CUT,
        "template",
        f"{size.title}: the template of {_called(was)} is no longer used.",
        "",
        size.key,
    )


def _both(size: SizeEdition, was: Template, is_: Template, laid: Overlay) -> Change:
    if laid.distance < SEEN and not laid.lines:
        return Change(
            COSMETIC,
            "template",
            f"{size.title}: the template of {_called(is_)} is drawn anew, nowhere more than "
            f"{decimal_text(Fraction(SEEN), 3)} in from where it was.",
            "",
            size.key,
            overlay=laid,
        )
    apart = Fraction(laid.distance)
    moved = "its seam lines have" if laid.lines else "its outline has"
    differs = "" if laid.lines else f", and {decimal_text(Fraction(laid.area), 2)} sq in differ"
    sentence = (
        f"{size.title}: print the template of {_called(is_)} again; {moved} moved by up to "
        f"{decimal_text(apart, 2)} in ({mm_text(apart)}){differs}."
    )
    return Change(CUT, "template", sentence, _fits(was, is_), size.key, overlay=laid)


def _fits(was: Template, is_: Template) -> str:
    """Return what can be made of cloth that was cut by the old template."""
    if is_.cut.difference(was.cut.buffer(SEEN)).is_empty:
        return "What you have cut by the old one can be trimmed to it."
    if is_.finished.difference(was.cut.buffer(SEEN)).is_empty:
        return (
            "What you have cut by the old one holds the new shape with less to turn under or sew."
        )
    return "What you have cut by the old one is too small in places: finish it by the old one."


def overlaid(name: str, was: Template, is_: Template) -> Overlay:
    """Return two templates laid over each other on their common centre or corner."""
    one, other = (was.cut, is_.cut)
    if shapely.equals(one, other):
        one, other = was.finished, is_.finished
    if shapely.equals(one, other) and was.lines is not None and is_.lines is not None:
        distance, at = farthest(was.lines, is_.lines)
        return Overlay(name, was, is_, 0.0, distance, at, lines=True)
    distance, at = farthest(one.boundary, other.boundary)
    area = float(one.symmetric_difference(other).area)
    return Overlay(name, was, is_, area, distance, at)


def farthest(
    one: BaseGeometry, other: BaseGeometry
) -> tuple[float, tuple[tuple[float, float], tuple[float, float]]]:
    """Return the Hausdorff distance of two lines, and the two points that have it."""
    best: tuple[float, tuple[tuple[float, float], tuple[float, float]]] = (0.0, ((0, 0), (0, 0)))
    for line, against in ((one, other), (other, one)):
        points = shapely.points(shapely.get_coordinates(shapely.segmentize(line, STEP)))
        shapely.prepare(against)
        apart = shapely.distance(points, against)
        if len(points) and float(apart.max()) > best[0]:
            point: Point = points[int(apart.argmax())]
            near = nearest_points(point, against)[1]
            best = (float(apart.max()), ((point.x, point.y), (near.x, near.y)))
    return best

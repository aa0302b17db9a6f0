"""A star to appliqué: an open centre and a point on every fold."""

from __future__ import annotations

import math
from fractions import Fraction

from shapely.geometry import MultiPolygon, Point, Polygon

from publish.model.draft import FoldEdge, MotifShape
from publish.model.pattern import Motif


def star(motif: Motif, span: Fraction) -> MotifShape:
    """Return an open-centred star with a point on every fold."""
    half, n = float(span) / 2, motif.folds
    step = 360 / n
    points = []
    for i in range(2 * n):
        reach = half if i % 2 == 0 else half * 0.7
        angle = math.radians(i * step / 2)
        points.append((reach * math.cos(angle), reach * math.sin(angle)))
    whole = MultiPolygon([Polygon(points, [Point(0, 0).buffer(half / 5).exterior.coords])])
    sector = Polygon(
        [
            (0, 0),
            (99, 0),
            *[
                (
                    99 * math.cos(math.radians(step * i / 4)),
                    99 * math.sin(math.radians(step * i / 4)),
                )
                for i in range(1, 5)
            ],
        ]
    )
    wedge = MultiPolygon([whole.intersection(sector)])
    edges = (
        None
        if motif.symmetry != "mirror"
        else (
            FoldEdge("multiple", 0.0, "straight", ((half / 5, half),)),
            FoldEdge("single", step, "bias" if n == 8 else "straight", ((half / 5, half),)),
        )
    )
    return MotifShape(
        motif.key,
        span,
        n,
        wedge,
        step,
        edges,
        whole,
        whole,
        wedge,
        whole.area,
        whole.length,
        1,
        1,
        n,
        n,
        0.6,
        None,
        60.0,
    )

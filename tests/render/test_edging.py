"""Stitches in pictures are as long and as far apart as the steps say, and lie where they are
sewn."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import shapely
from shapely.geometry import MultiPolygon, Point, Polygon

from publish import draft, grade, read
from publish.render import edging, relief
from publish.render.edging import LENGTH, OFF, WIDTH, zigzag
from publish.render.paint import Window
from publish.render.subject import Subject, subject
from publish.sew import applique, fusing, quilting

PROJECTS = Path(__file__).parents[2] / "projects"


def test_stitches_are_as_the_steps_say() -> None:
    assert pytest.approx(float(quilting.STITCH)) == relief.STITCH
    assert pytest.approx(float(applique.STITCH_APART)) == relief.APART
    assert pytest.approx(float(fusing.ZIGZAG_LENGTH)) == edging.LENGTH
    assert pytest.approx(float(fusing.ZIGZAG_WIDTH)) == edging.WIDTH


def ring(wide: float) -> Polygon:
    """A round piece with a round hole, both 64-sided."""
    outer, inner = Point(0, 0).buffer(wide), Point(0, 0).buffer(wide / 3)
    return Polygon(outer.exterior.coords, [inner.exterior.coords])


@pytest.mark.parametrize("turned", [False, True])
def test_a_zigzag_swings_from_beside_the_edge_into_the_motif(turned: bool) -> None:
    """Whichever way round the rings are written; every other end lies in the ground."""
    shape = ring(3.0)
    if turned:
        shape = shapely.reverse(shape)
    lines = zigzag(MultiPolygon([shape]))
    edges = [shape.exterior, *shape.interiors]
    assert len(lines.geoms) == len(edges)
    for line, edge in zip(lines.geoms, edges, strict=True):
        points = [Point(p) for p in line.coords[:-1]]
        off = np.array([p.distance(edge) for p in points])
        within = np.array([shape.contains(p) for p in points])
        assert within.tolist() == [n % 2 == 1 for n in range(len(points))]
        assert off[within] == pytest.approx(WIDTH - OFF, rel=0.03)
        assert off[~within] == pytest.approx(OFF, rel=0.1)
        stitches = len(points) / 2
        assert edge.length / stitches == pytest.approx(LENGTH, rel=0.02)


def made(method: str) -> Subject:
    pattern, _, _ = read.load(PROJECTS / "millrace" / "pattern.yaml")
    assert pattern is not None
    motifs = {key: replace(motif, method=method) for key, motif in pattern.motifs.items()}
    pattern = replace(pattern, motifs=motifs)
    size, _ = grade.grade(pattern, "mini")
    assert size is not None
    shapes, _ = draft.draft(pattern, size)
    assert shapes is not None
    return subject(pattern, size, shapes)


def test_thread_shows_on_raw_edges_alone() -> None:
    assert not made("needle-turn").edging and not made("prepared edge").edging
    fused = made("fusible")
    (edge,) = fused.edging
    assert edge.fabric == fused.motifs[0].fabric
    left, top, right, bottom = fused.bound.bounds
    fine = 300 / (right - left)
    window = Window(left, top, fine, 300, round((bottom - top) * fine))
    thread = relief.relief(fused, window).thread[-1]
    from_edge = shapely.distance(
        shapely.points(*np.meshgrid(*(a.ravel() for a in window.across()))),
        fused.motifs[0].shape.boundary,
    )
    assert thread[from_edge < 0.5 / fine].mean() > 0.1
    assert thread[from_edge > WIDTH + 2 / fine].max() == 0

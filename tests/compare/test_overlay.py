"""Templates laid over each other, against shapes whose differences are known exactly.

Two discs with one centre differ by the ring between them, pi (R^2 - r^2), and their
outlines lie R - r apart everywhere; a square moved by d along a side differs by two strips,
2 s d, and by d in Hausdorff's distance (all by definition).
"""

import math
from xml.etree import ElementTree

import pytest
from editions import changes, demo, edited
from shapely import to_wkt
from shapely.affinity import scale, translate
from shapely.geometry import Point, box

from publish.compare import compare, overlays, page
from publish.compare.model import Template
from publish.compare.templates import farthest, overlaid

BIGGER = ("motif_size: 15 1/2 in", "motif_size: 15.81 in")
"""Exactly 2 % more: 15.5 x 1.02."""


def template(shape):
    return Template("piece", "wing", "K", shape, shape, None, to_wkt(shape))


@pytest.mark.parametrize("share", [1.02, 0.98])
def test_concentric_discs(share):
    disc = Point(0, 0).buffer(5, quad_segs=256)
    laid = overlaid("d", template(disc), template(scale(disc, share, share, origin=(0, 0))))
    assert laid.area == pytest.approx(math.pi * 25 * abs(share**2 - 1), rel=1e-4)
    assert laid.distance == pytest.approx(5 * abs(share - 1), rel=1e-3)


def test_a_square_that_moved():
    square = box(0, 0, 4, 4)
    laid = overlaid("s", template(square), template(translate(square, 0.25, 0)))
    assert laid.area == pytest.approx(2 * 4 * 0.25)
    assert laid.distance == pytest.approx(0.25)


def test_a_notch_is_found_where_it_is():
    square = box(0, 0, 4, 4)
    notched = square.difference(Point(2, 4).buffer(0.5, quad_segs=64))
    distance, ((_, y), _) = farthest(square.boundary, notched.boundary)
    assert distance == pytest.approx(0.5, abs=1e-3)
    assert 3.4 < y <= 4


def test_the_demo_two_percent_larger():
    found = [c for c in changes(BIGGER) if c.subject == "template"]
    assert [c.size for c in found] == ["throw"]
    (change,) = found
    # The finished tip lies at the corner of the motif's square: sqrt(2) x 15 1/2 / 2 in from
    # the centre, and moves by 2 % of that; the cut line keeps its distance from it.
    most = 0.02 * math.sqrt(2) * 15.5 / 2
    assert most * 0.95 < change.overlay.distance <= most + 0.002
    assert "by up to 0.22 in" in change.sentence and change.consequence == "cut"
    old = demo().sizes["throw"].templates[0].finished.area
    assert change.overlay.area > old * (1.02**2 - 1)
    assert change.advice.startswith("What you have cut by the old one is too small")


def test_back_again_it_can_be_trimmed_or_turned_under():
    (change,) = [c for c in compare(edited(BIGGER), demo()) if c.subject == "template"]
    assert not change.advice.startswith("What you have cut by the old one is too small: cut")
    assert "by up to 0.22 in" in change.sentence


def test_the_picture_is_svg_with_both_outlines():
    (svg,) = overlays(changes(BIGGER)).values()
    root = ElementTree.fromstring(svg)
    assert "0.22 in" in root.get("aria-label")
    paths = [e for e in root.iter("{http://www.w3.org/2000/svg}path") if e.get("d")]
    assert any(p.get("stroke-dasharray") for p in paths)
    words = " ".join(root.itertext())
    assert "old only" in words and "new only" in words


def test_the_page_holds_each_sentence_and_picture():
    found = changes(BIGGER)
    html = page(demo(), edited(BIGGER), found)
    root = ElementTree.fromstring(html.replace("<!DOCTYPE html>", ""))
    words = " ".join(" ".join(root.itertext()).replace("\u00a0", " ").split())
    for change in found:
        assert change.sentence in words
        assert change.advice in words
    assert len(list(root.iter("img"))) == sum(c.overlay is not None for c in found) == 1
    assert "http://" not in html and "https://" not in html

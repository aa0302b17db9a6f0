"""Corners, curves and copies that stray, against shapes that are known.

A corner is drawn at nine times the size and blurred as a lens blurs, so that the truth is
the corner itself. Distances are in pixels.
"""

import math

import contourpy
import cv2
import numpy as np
import pytest
from shapely.geometry import Point

from publish.trace.aligned import moves
from publish.trace.apex import apex
from publish.trace.consensus import MARGIN, Wedge
from publish.trace.corners import Blur, Stretch, stretches
from publish.trace.outline import SMOOTH, outlined

SIDE = 160
SPREAD = 1.6
FINE = 9


def parted(points: np.ndarray) -> list[Stretch]:
    """Return the stretches of a blurred shape's outline, from its corners on."""
    mask = np.zeros((SIDE * FINE, SIDE * FINE), np.uint8)
    fixed = np.round(((points + 0.5) * FINE - 0.5) * 256).astype(np.int32)
    cv2.fillPoly(mask, [fixed], 255, shift=8)
    small = cv2.resize(mask, (SIDE, SIDE), interpolation=cv2.INTER_AREA).astype(np.float32)
    field = cv2.GaussianBlur(small / 255, (0, 0), SPREAD)
    even = cv2.GaussianBlur(field, (0, 0), SMOOTH)
    lines = contourpy.contour_generator(z=even).lines(0.5)
    blur = Blur(np.pad(field, MARGIN), SPREAD)
    return stretches(max(lines, key=len), True, blur, (None, None))


def corners(parts: list[Stretch]) -> np.ndarray:
    return np.array([p.points[0] for p in parts if p.sharp[0]])


@pytest.mark.parametrize("angle", [20, 35, 60, 90, 120])
@pytest.mark.parametrize("turn", [0.3, 1.1])
def test_a_corner_that_a_lens_has_rounded_is_found_again(angle: int, turn: float) -> None:
    tip = np.array([80.3, 78.8])
    ways = [turn, turn + math.radians(angle)]
    others = [tip + 65 * np.array([math.cos(a), math.sin(a)]) for a in ways]
    found = corners(parted(np.array([tip, *others])))
    assert len(found) == 3
    assert np.hypot(*(found - tip).T).min() < 0.4


@pytest.mark.parametrize("long", [10, 12, 14])
def test_corners_close_to_one_another_are_told_by_what_lies_between(long: int) -> None:
    """A tooth with short sides on one side of a square: no side is taken for a bend."""
    tooth = [(40, 80 - long), (40 - long * 0.75, 80), (40, 80 + long)]
    square = [(40, 120), (120, 120), (120, 40), (40, 40)]
    truth = np.array([*tooth, *square]) + 0.37
    found = corners(parted(truth))
    gaps = np.hypot(*(found[:, None] - truth[None]).transpose(2, 0, 1))
    assert len(found) == len(truth)
    assert gaps.min(axis=0).max() < 1.2


def test_a_speck_on_the_centre_is_no_opening() -> None:
    """A wedge of an eighth, all paper to a circle, but for a shine where the folds meet."""
    unit, origin, angle = 1000.0, np.array([-MARGIN, -MARGIN]) / 1000, math.pi / 4
    y, x = np.mgrid[0:760, 0:960] / unit + origin[1]
    field = (np.hypot(x, y) < 0.9).astype(np.float32)
    spotted = np.where(np.hypot(x, y) < 0.0035, 0, field).astype(np.float32)
    clean, shone = (outlined(Wedge(f, unit, origin, angle)) for f in (field, spotted))
    assert (clean.specks, shone.specks) == (0, 1)
    assert shone.area.symmetric_difference(clean.area).area < 1e-5
    wide = np.where(np.hypot(x, y) < 0.1, 0, field).astype(np.float32)
    assert outlined(Wedge(wide, unit, origin, angle)).area.distance(Point(0, 0)) > 0.09


def test_a_tip_between_two_arcs_is_found_again() -> None:
    """A leaf: two arcs of 60 pixels' radius that meet at 71 degrees."""
    half = math.acos(1 - 30 / 60 * 0.375)
    t = np.linspace(-half, half, 200)
    arc = np.column_stack([60 * np.sin(t), 60 * (np.cos(t) - math.cos(half))])
    leaf = np.vstack([arc, (arc * [1, -1])[::-1]]) + np.array([80.2, 79.7])
    found = corners(parted(leaf))
    tips = np.array([leaf[0], leaf[199]])
    assert len(found) == 2
    for tip in tips:
        assert np.hypot(*(found - tip).T).min() < 0.5


@pytest.mark.parametrize("radius", [6, 12, 40])
def test_a_circle_has_no_corner(radius: int) -> None:
    t = np.linspace(0, 2 * math.pi, 400)[:-1]
    parts = parted(radius * np.column_stack([np.cos(t), np.sin(t)]) + 80.3)
    assert len(corners(parts)) == 0


def test_sides_go_on_straight_or_round() -> None:
    """A line along y = 0 and a circle of radius 20 about the origin meet at (20, 0)."""
    line = np.column_stack([np.arange(26.0, 46), np.zeros(20)])
    t = np.linspace(0.3, 1.3, 21)
    circle = 20 * np.column_stack([np.cos(t), np.sin(t)])
    met = apex(line, circle, 20)
    assert met is not None
    assert met.place == pytest.approx([20, 0], abs=0.02)
    assert math.degrees(met.angle) == pytest.approx(90, abs=1)
    assert apex(line, circle, 3) is None


def test_copies_that_stray_are_laid_on_one_another_and_a_slip_is_not_followed() -> None:
    """The copies' edge strays by a wave of known size; one copy has a slip besides."""
    t = np.linspace(0.15, 0.95, 160)
    edge = np.column_stack([t, 0.25 + 0.1 * np.sin(5 * t)])
    along = np.gradient(edge, axis=0)
    inward = np.column_stack([-along[:, 1], along[:, 0]]) / np.hypot(*along.T)[:, None]
    phases = np.linspace(0, 2 * math.pi, 9)[:-1]

    def wave(points: np.ndarray, phase: float) -> np.ndarray:
        return 0.003 * np.column_stack(
            [np.sin(5 * points[:, 1] + phase), np.cos(4 * points[:, 0] + phase)]
        )

    gaps = np.stack([(wave(edge, p) * inward).sum(axis=1) for p in phases])
    gaps[3, 70:78] += 0.02
    gaps[5, 10:14] = np.inf
    for move, phase in zip(moves(gaps, edge, inward), phases, strict=True):
        off = ((move(edge) - edge - wave(edge, phase)) * inward).sum(axis=1)
        assert np.abs(off).max() < 0.0006

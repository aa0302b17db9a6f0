"""What in a picture has a known size: printed markers, a sheet of known paper, and, by
`ruler`, a ruler.

In: a picture, its cover. Out: `Known`s, and what is left of the picture without them.
Invariant: a known shape lies in the plane of the cut paper; only lengths are taken from it,
measured in the plane that the motif's own symmetry gives, so that one marker is enough.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Protocol

import contourpy
import cv2
import numpy as np

from publish.trace.image import Floats, Pixels, Points
from publish.trace.paper import linear
from publish.trace.plane import project
from publish.trace.target import COLUMNS, MARKERS, PIECE, ROWS, SIDE

LEAST = 40
"""Pixels of a marker's side below which its corners tell too little."""

AROUND = 0.2
"""Inches round a piece that its shadow may darken."""

MARGIN = 16
"""Pixels round a rectangle that show what is beside it."""

BESIDE = 5
"""Pixels from its sides at which it and what is beside it are themselves."""

SMALL = 800
"""Pixels of the longer side on which a sheet is looked for."""

LEVELS = 12
"""Brightnesses that may part a sheet from what it lies on."""

LARGE = 2e-3
"""Share of the picture that a sheet covers at least."""

COARSE = 8
"""How many times fewer pixels the ground is thought on under a piece with."""

ALIKE = 0.02
"""Share by which known lengths may disagree before none is believed: 1/4 in on 14 in."""

SOLID = 0.95
"""Share of its rough corners' quadrilateral that a sheet fills, and that fills of it."""


@dataclass(frozen=True)
class Known:
    """A rectangle in the picture: its corners in pixels, in order round it, shape (4, 2), and
    its sides in inches. Which of a sheet's sides is which is not known before it is seen
    straight."""

    corners: Points
    sides: tuple[float, float]

    @property
    def marker(self) -> bool:
        """Return whether it is a printed marker, on a piece of paper larger than itself."""
        return self.sides == (SIDE, SIDE)

    @property
    def lengths(self) -> list[Points]:
        """Return what its four sides and two diagonals measure, for either way it may lie."""
        one, two = self.sides
        across = math.hypot(one, two)
        ways = [(one, two)] if one == two else [(one, two), (two, one)]
        return [np.array([a, b, a, b, across, across]) for a, b in ways]

    @property
    def outline(self) -> Points:
        """Return the corners of the paper that it is on, its shadow with it, in pixels."""
        wide, high = self.sides
        edge = AROUND + ((PIECE - SIDE) / 2 if self.marker else 0)
        box = np.array([[0, 0], [wide, 0], [wide, high], [0, high]])
        grown = box + edge * np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]])
        carry = cv2.getPerspectiveTransform(box.astype(np.float32), self.corners.astype(np.float32))
        return project(np.asarray(carry, np.float64), grown)

    def ratios(self, matrix: Points) -> Points:
        """Return inches to a unit of the plane that `matrix` carries to the picture, as each
        of its lengths tells it."""
        seen = np.hypot(*_vectors(self, matrix).T)
        best: Points = min(self.lengths, key=lambda true: float(np.ptp(true / seen))) / seen
        return best


class Measure(Protocol):
    """What a true size is taken from."""

    def ratios(self, matrix: Points) -> Points:
        """Return inches to a unit of the plane that `matrix` carries to the picture, as each
        of its lengths tells it."""
        ...


def markers(pixels: Pixels) -> list[Known]:
    """Return the printed markers of a picture."""
    settings = cv2.aruco.DetectorParameters()
    settings.cornerRefinementMethod = cv2.aruco.CORNER_REFINE_SUBPIX
    settings.errorCorrectionRate = 0.0
    grey = cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY)
    corners, numbers, _ = cv2.aruco.ArucoDetector(MARKERS, settings).detectMarkers(grey)
    if numbers is None:
        return []
    found = []
    for four, number in zip(corners, np.ravel(numbers), strict=True):
        points = np.asarray(four, np.float64).reshape(4, 2)
        long = np.hypot(*np.diff(points, axis=0, append=points[:1]).T)
        if number < COLUMNS * ROWS and long.min() >= LEAST:
            sharp = _sharp(pixels, points)
            found.append(Known(points if sharp is None else sharp, (SIDE, SIDE)))
    return found


def _sharp(pixels: Pixels, corners: Points) -> Points | None:
    """Return corners where straight sides cross, found to a small part of a pixel; inside
    and outside of them are of different brightness.

    Corners as such are drawn inwards or outwards by as much as the lens blurs.
    """
    low = np.maximum(np.floor(corners.min(axis=0) - MARGIN).astype(int), 0)
    high = np.ceil(corners.max(axis=0) + MARGIN).astype(int)
    light = linear(pixels[low[1] : high[1], low[0] : high[0]]).mean(axis=2)
    rim = np.zeros(light.shape, np.uint8)
    fixed = np.round(corners - low).astype(np.int32)
    cv2.polylines(rim, [fixed], True, 255, 2 * BESIDE)
    solid = cv2.fillConvexPoly(np.zeros_like(rim), fixed, 255) > 0
    near = cv2.dilate(rim, np.ones((2 * BESIDE + 1, 2 * BESIDE + 1), np.uint8)) > 0
    band = near & (rim == 0)
    if not (band & solid).any() or not (band & ~solid).any():
        return None
    inner, outer = (float(np.median(light[band & part])) for part in (solid, ~solid))
    if abs(inner - outer) < 0.02:
        return None
    found = _crossed((light - outer) / (inner - outer), corners - low)
    return None if found is None else found + low


def without(pixels: Pixels, outlines: Iterable[Points]) -> Pixels:
    """Return a picture in which what lies within outlines has become ground."""
    rows, columns = pixels.shape[:2]
    mask = np.zeros((rows, columns), np.uint8)
    for outline in outlines:
        cv2.fillConvexPoly(mask, np.round(outline).astype(np.int32), 255)
    if not mask.any():
        return pixels
    small = (max(8, columns // COARSE), max(8, rows // COARSE))
    few = cv2.resize(pixels, small, interpolation=cv2.INTER_AREA)
    under = (cv2.resize(mask, small, interpolation=cv2.INTER_AREA) > 0).astype(np.uint8)
    ground = cv2.resize(cv2.inpaint(few, under, 3, cv2.INPAINT_TELEA), (columns, rows))
    return np.where(mask[..., None] > 0, ground, pixels).astype(np.uint8)


def sheet(pixels: Pixels, sides: tuple[float, float]) -> Known | None:
    """Return the sheet of paper in a picture: the largest part of one brightness with four
    straight sides, all of it to be seen."""
    light = linear(np.asarray(cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY), np.uint8))
    grain = max(1.0, max(light.shape) / SMALL)
    few = cv2.resize(light, None, fx=1 / grain, fy=1 / grain, interpolation=cv2.INTER_AREA)
    dark, pale = (float(v) for v in np.percentile(few, (1, 99)))
    found: list[Points] = []
    for level in np.linspace(dark, pale, LEVELS + 2)[1:-1]:
        for mask in (few > level, few < level):
            found += _quadrilaterals(mask.astype(np.uint8))
    for four in sorted(found, key=_area, reverse=True):
        corners = _sharp(pixels, (four + 0.5) * grain - 0.5)
        if corners is not None:
            return Known(corners, sides)
    return None


def _quadrilaterals(mask: Pixels) -> list[Points]:
    """Return the rough corners of the parts of a mask with four straight sides."""
    count, labels, stats, _ = cv2.connectedComponentsWithStats(mask)
    found = []
    for label in range(1, count):
        left, top, wide, high, area = stats[label]
        inside = left > 0 and top > 0 and left + wide < mask.shape[1] and top + high < mask.shape[0]
        if not inside or area < LARGE * mask.size:
            continue
        part = np.asarray(labels == label, np.uint8)
        outlines, _ = cv2.findContours(part, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
        outline = max(outlines, key=len)
        rough = cv2.approxPolyDP(outline, 0.03 * cv2.arcLength(outline, True), True)
        full = cv2.contourArea(rough)
        if len(rough) == 4 and SOLID * full < area < full / SOLID:
            found.append(rough.reshape(4, 2).astype(np.float64))
    return found


def _area(corners: Points) -> float:
    return float(cv2.contourArea(corners.astype(np.float32)))


def _crossed(field: Floats, four: Points) -> Points | None:
    """Return where the straight sides between four rough corners cross, at the half level."""
    outlines = [np.asarray(line) for line in contourpy.contour_generator(z=field).lines(0.5)]
    edge: Points = np.concatenate([np.zeros((0, 2)), *outlines])
    sides = [_side(edge, four[k], four[(k + 1) % 4]) for k in range(4)]
    lines = [side for side in sides if side is not None]
    if len(lines) < 4:
        return None
    crossed = np.stack([np.cross(lines[k - 1], lines[k]) for k in range(4)])
    found: Points = crossed[:, :2] / crossed[:, 2:]
    return found


def _side(edge: Points, one: Points, two: Points) -> Points | None:
    """Return the line, as a x + b y + c, of the edge between two rough corners."""
    way = two - one
    long = float(np.hypot(*way))
    way /= long
    across = np.array([-way[1], way[0]])
    along, off = (edge - one) @ way, (edge - one) @ across
    here = edge[(along > 0.1 * long) & (along < 0.9 * long) & (np.abs(off) < 0.03 * long)]
    if len(here) < 10:
        return None
    _, _, axes = np.linalg.svd(here - here.mean(axis=0), full_matrices=False)
    normal = axes[1]
    gap = float(np.median(here @ normal))
    bent = np.abs(here @ normal - gap)
    if float(np.percentile(bent, 90)) > 0.01 * long:
        return None
    return np.array([normal[0], normal[1], -gap])


def scale(known: Iterable[Measure], matrix: Points) -> tuple[float, float]:
    """Return inches to a unit of the plane that `matrix` carries to the picture, and the
    share by which the known lengths disagree about that."""
    every = np.concatenate([one.ratios(matrix) for one in known])
    found = float(np.median(every))
    return found, float(np.ptp(every)) / found


def stretched(known: Sequence[Known], matrix: Points, likely: float) -> float:
    """Return how many times longer a unit along x is than one along y, in the plane.

    `likely` is about that: a sheet along the folds may lie either way for its lengths alone.
    """
    found = []
    for one in known:
        squares = _vectors(one, matrix) ** 2
        ways = [np.linalg.lstsq(squares, true**2, rcond=None)[0] for true in one.lengths]
        ratios = [math.sqrt(float(a / b)) for a, b in ways if a > 0 and b > 0]
        found += sorted(ratios, key=lambda r: abs(math.log(r / likely)))[:1]
    return float(np.median(found)) if found else likely


def _vectors(one: Known, matrix: Points) -> Points:
    """Return its sides and diagonals in the plane, shape (6, 2)."""
    at = project(np.asarray(np.linalg.inv(matrix)), one.corners)
    return np.stack([*(at[(k + 1) % 4] - at[k] for k in range(4)), at[2] - at[0], at[3] - at[1]])

"""Made-up photos of cut paper whose true outline is known.

In: an icon's shape, a seed. Out: a picture as bytes, and the motif that was cut, opened.
Invariant: all that a photo does to the motif (slips of the scissors, camera, light, table,
noise) comes from the seed, and the truth is the motif before any of it.

An icon is laid aslant into one wedge, cut by both folds, so that the motif has no more
folds than it was given. What no scissors could cut is left out by `cuttable`.
"""

import io
import math
from dataclasses import dataclass
from pathlib import Path

import cv2
import numpy as np
import shapely
from PIL import Image
from shapely.geometry import MultiPolygon, Polygon, box

from publish.draft.drawing import read_drawing
from publish.draft.fill import cloth, polygons
from publish.draft.unfold import images, moved, sector, unfold
from publish.trace import Traced
from publish.trace.cubics import flat

PAPERS = [
    (246, 244, 238),
    (250, 250, 250),
    (40, 44, 52),
    (178, 40, 48),
    (60, 96, 70),
    (232, 206, 120),
]
TABLES = [(120, 84, 52), (62, 66, 74), (206, 196, 180), (36, 60, 84), (168, 172, 170), (24, 22, 22)]
NARROW = 0.008
"""Share of the width: necks and slits below it are not cut from paper (4 mm in 500)."""


POINT = math.radians(10)
"""What narrows to a point of a smaller angle is a crack in the drawing, not a cut."""


@dataclass(frozen=True)
class Cut:
    """A motif as it was meant: opened, its half span 1, and its number of wedges."""

    whole: MultiPolygon
    folds: int


@dataclass(frozen=True)
class Taking:
    """How a photo is taken. Angles in degrees; lengths in shares of the motif's width."""

    tilt: float = 18.0
    jitter: float = 0.001
    blur: float = 1.5
    noise: float = 4.0
    shadow: bool = True
    texture: bool = True
    width: int = 1600


def icon_cut(path: Path, folds: int, seed: int) -> Cut | None:
    """Return the motif of an icon laid into a wedge; None when paper cannot show it."""
    drawing, _ = read_drawing(path, path.name, None, "")
    if drawing is None:
        return None
    area, _ = cloth(drawing, 0.01)
    if area.is_empty:
        return None
    random = np.random.default_rng(seed)
    area = shapely.affinity.rotate(area, random.uniform(15, 75) + 90 * random.integers(4))
    half = math.pi / folds
    points = shapely.get_coordinates(area)
    across, along = math.cos(half), math.sin(half)
    left = float((-points[:, 1] * across - points[:, 0] * along).max())
    right = float((points[:, 1] * across - points[:, 0] * along).max())
    size = float(np.hypot(*np.ptp(points, axis=0)))
    x = -(right + left) / (2 * along) + 0.22 * size / max(0.6, math.tan(half) ** 0.2)
    y = (right - left) / (2 * across)
    laid = shapely.affinity.translate(area, -x, -y)
    laid = shapely.affinity.rotate(laid, math.degrees(half), origin=(0, 0))
    wedge = polygons(laid.intersection(sector(folds, 100 * size)))
    if wedge.is_empty:
        return None
    whole = unfold(wedge, folds, "mirror")
    reach = float(np.abs(shapely.get_coordinates(whole)).max())
    whole = polygons(shapely.affinity.scale(whole, 1 / reach, 1 / reach, origin=(0, 0)))
    return Cut(whole, folds) if cuttable(whole, folds) else None


def cuttable(whole: MultiPolygon, folds: int) -> bool:
    """Say whether a motif is one for scissors: nothing too thin, no further symmetry."""
    if not 0.3 < whole.area < 3.2 or len(whole.geoms) > 3 * folds:
        return False
    rings = [r for part in whole.geoms for r in (part.exterior, *part.interiors)]
    if min(Polygon(r).area for r in rings) < 4 * NARROW**2:
        return False
    near = NARROW
    frame = box(-1.2, -1.2, 1.2, 1.2)
    for area in (whole, frame.difference(whole)):
        kept = area.buffer(-near).buffer(1.02 * near)
        if area.difference(kept).area > 2e-3 or _ties(area) != _ties(area.buffer(-near / 2)):
            return False
        if _cracked(area):
            return False
    step = math.pi / folds
    turned = moved(
        whole,
        np.array(
            [[math.cos(2 * step), -math.sin(2 * step)], [math.sin(2 * step), math.cos(2 * step)]]
        ),
    )
    return bool(whole.symmetric_difference(turned).area > 0.12 * whole.area)


def _cracked(area: shapely.Geometry) -> bool:
    """Say whether an area narrows to a point that is too sharp to cut: what a circle of
    radius r does not reach of a point of angle a is r / sin(a / 2) - r deep."""
    r = NARROW / 4
    kept = area.buffer(-r).buffer(1.02 * r)
    lost = shapely.points(shapely.get_coordinates(area.difference(kept)))
    deep = r / math.sin(POINT / 2) - r
    return bool(len(lost)) and float(shapely.distance(lost, kept).max()) > deep


def _ties(area: shapely.Geometry) -> tuple[int, int]:
    """Return how many parts and holes an area has: a thin neck or slit changes it."""
    parts = [p for p in shapely.get_parts(area) if p.area > 1e-6]
    return len(parts), sum(len(p.interiors) for p in parts)


def _slipped(cut: Cut, jitter: float, random: np.random.Generator) -> list[Polygon]:
    """Return the parts of a motif, each wedge's edge strayed by a smooth random amount."""
    region = sector(cut.folds, 3)
    wide = shapely.segmentize(polygons(cut.whole.intersection(region.buffer(0.03))), 0.01)
    copies = []
    for matrix in images(cut.folds, "mirror"):
        waves = random.normal(size=(6, 2))
        ways = random.uniform(-9, 9, size=(6, 2))
        phases = random.uniform(0, 2 * math.pi, 6)

        def stray(p: np.ndarray, waves=waves, ways=ways, phases=phases) -> np.ndarray:
            size = 2 * jitter / math.sqrt(6)
            return p + size * np.sin(p @ ways.T + phases) @ waves

        copy = shapely.make_valid(shapely.transform(wide, stray)).intersection(region)
        copies.append(moved(copy, matrix))
    joined = polygons(shapely.union_all(copies, grid_size=1e-6).buffer(1e-5, join_style="mitre"))
    return list(joined.geoms)


def _camera(
    taking: Taking, reach: float, random: np.random.Generator
) -> tuple[np.ndarray, tuple[int, int]]:
    """Return the matrix from the motif's plane to the picture, and the picture's size."""
    width, height = taking.width, taking.width * 3 // 4
    focal = 28 / 43.27 * math.hypot(width, height)
    tilt, way, roll = math.radians(taking.tilt), *random.uniform(0, 2 * math.pi, 2)

    def turn(a: float, axis: int) -> np.ndarray:
        m = np.eye(3)
        i, j = [(1, 2), (0, 2), (0, 1)][axis]
        m[i, i] = m[j, j] = math.cos(a)
        m[i, j], m[j, i] = -math.sin(a), math.sin(a)
        return m

    pose = turn(way, 2) @ turn(tilt, 0) @ turn(-way, 2) @ turn(roll, 2)
    distance = focal * reach / (random.uniform(0.35, 0.40) * height)
    plane = np.stack([pose[:, 0], pose[:, 1], [0, 0, distance]], axis=1)
    shift = random.uniform(-0.03, 0.03, 2) * height
    lens = np.array(
        [[focal, 0, width / 2 + shift[0]], [0, focal, height / 2 + shift[1]], [0, 0, 1]]
    )
    return lens @ plane, (width, height)


def _field(random: np.random.Generator, size: tuple[int, int], grain: float, stretch: float):
    """Return smooth random values of spread 1: noise of a grain, stretched along rows."""
    width, height = size
    small = random.normal(size=(max(4, int(height / grain)), max(4, int(width / grain / stretch))))
    wide = cv2.resize(small.astype(np.float32), size, interpolation=cv2.INTER_CUBIC)
    return (wide - wide.mean()) / np.float32(max(float(wide.std()), 1e-6))


def photo(cut: Cut, seed: int, taking: Taking = Taking(), suffix: str = "JPEG") -> bytes:
    """Return the picture of a motif cut from paper and laid on a table."""
    random = np.random.default_rng(seed)
    reach = float(np.hypot(*shapely.get_coordinates(cut.whole).T).max())
    matrix, size = _camera(taking, reach, random)
    over = 3
    mask = np.zeros((size[1] * over, size[0] * over), np.uint8)
    for part in _slipped(cut, taking.jitter, random):
        rings = []
        for ring in (part.exterior, *part.interiors):
            points = shapely.get_coordinates(shapely.segmentize(ring, 0.01))
            seen = np.column_stack([points, np.ones(len(points))]) @ matrix.T
            at = (seen[:, :2] / seen[:, 2:] + 0.5) * over - 0.5
            rings.append(np.round(at * 16).astype(np.int32))
        cv2.fillPoly(mask, rings, 255, shift=4)
    share = cv2.resize(mask, size, interpolation=cv2.INTER_AREA).astype(np.float32) / 255
    seen = _lit(share, size, taking, random)
    seen = cv2.GaussianBlur(seen, (0, 0), taking.blur) if taking.blur else seen
    coded = np.clip(
        cv2.pow(np.maximum(seen, 1e-6).astype(np.float32), 1 / 2.4) * 1.055 - 0.055, 0, 1
    )
    noise = random.standard_normal(coded.shape, np.float32)
    coded = coded * 255 + taking.noise * noise
    image = Image.fromarray(np.clip(coded, 0, 255).astype(np.uint8))
    stream = io.BytesIO()
    exif = Image.Exif()
    exif.get_ifd(0x8769)[0xA405] = 28  # FocalLengthIn35mmFilm, Exif 2.32
    options = {"quality": 90, "exif": exif.tobytes()} if suffix == "JPEG" else {}
    image.save(stream, suffix, **options)
    return stream.getvalue()


def _lit(share: np.ndarray, size: tuple[int, int], taking: Taking, random) -> np.ndarray:
    """Return paper on its table under uneven light, in linear light."""

    def linear(colour: tuple[int, int, int]) -> np.ndarray:
        return ((np.array(colour, np.float32) / 255) ** 2.2).astype(np.float32)

    while True:
        paper, table = PAPERS[random.integers(6)], TABLES[random.integers(6)]
        if abs(np.mean(linear(paper)) - np.mean(linear(table))) > 0.1:
            break
    under = np.ones((size[1], size[0]), np.float32)
    over = np.ones_like(under)
    if taking.texture:
        grain = _field(random, size, random.uniform(2, 6), random.uniform(1, 25))
        under = (under + np.float32(random.uniform(0.03, 0.12)) * grain).clip(0.5, 1.6)
        over = over + np.float32(0.02) * _field(random, size, 3, 1)
    cast = cv2.GaussianBlur(share, (0, 0), random.uniform(2, 8))
    moved_by = np.float32([[1, 0, random.uniform(-5, 5)], [0, 1, random.uniform(-5, 5)]])
    cast = cv2.warpAffine(cast, moved_by, size)
    under = under * (1 - np.float32(random.uniform(0.1, 0.35)) * cast)
    y = np.linspace(-0.5, 0.5, size[1], dtype=np.float32)[:, None]
    x = np.linspace(-0.5, 0.5, size[0], dtype=np.float32)[None]
    way = random.uniform(0, 2 * math.pi)
    along = x * np.float32(math.cos(way)) + y * np.float32(math.sin(way))
    light = 0.9 + np.float32(random.uniform(0.1, 0.45)) * along
    if taking.shadow and random.random() < 0.6:
        soft = np.float32(random.uniform(0.02, 0.25))
        edge = 1 / (1 + np.exp(-(along - np.float32(random.uniform(-0.3, 0.3))) / soft))
        light = light * (1 - np.float32(random.uniform(0.15, 0.5)) * edge)
    ground, front = under * (1 - share) * light, over * share * light
    return np.dstack(
        [g * ground + f * front for g, f in zip(linear(table), linear(paper), strict=True)]
    )


def traced_whole(found: Traced) -> MultiPolygon:
    """Return a traced motif opened."""
    parts = [
        Polygon(flat(list(p[0].curves)), [flat(list(h.curves)) for h in p[1:]])
        for p in found.drawn.parts
    ]
    wedge = shapely.union_all([shapely.make_valid(p) for p in parts])
    return polygons(unfold(polygons(wedge), found.folds, "mirror"))


def outlines_apart(whole: MultiPolygon, cut: Cut) -> tuple[float, float]:
    """Return the greatest and the mean distance between a motif and the true one, both
    ways, in percent of its width; laid on it by the best scale and by turns of a wedge."""
    scale = math.sqrt(cut.whole.area / whole.area)
    whole = shapely.affinity.scale(whole, scale, scale, origin=(0, 0))
    laid = [
        shapely.affinity.rotate(whole, 360 * k / cut.folds, origin=(0, 0))
        for k in range(2 if cut.folds > 4 else 1)
    ] + ([shapely.affinity.rotate(whole, 90, origin=(0, 0))] if cut.folds == 4 else [])
    best = min(laid, key=lambda w: w.symmetric_difference(cut.whole).area)
    for _ in range(3):
        points = shapely.get_coordinates(shapely.segmentize(best.boundary, 0.02))
        near = shapely.shortest_line(shapely.points(points), cut.whole.boundary)
        on = shapely.get_coordinates(near).reshape(-1, 2, 2)[:, 1]
        scale = float((on * points).sum() / (points * points).sum())
        best = shapely.affinity.scale(best, scale, scale, origin=(0, 0))
    gaps = []
    for one, two in ((best, cut.whole), (cut.whole, best)):
        points = shapely.get_coordinates(shapely.segmentize(one.boundary, 0.005))
        lines = shapely.get_parts(two.boundary)
        sides = np.concatenate(
            [np.stack([c[:-1], c[1:]], axis=1) for c in map(shapely.get_coordinates, lines)]
        )
        tree = shapely.STRtree(shapely.linestrings(sides))
        gaps.append(
            tree.query_nearest(shapely.points(points), return_distance=True, all_matches=False)[1]
        )
    every = np.concatenate(gaps)
    width = float(np.ptp(shapely.get_coordinates(cut.whole)[:, 0]))
    return 100 * float(every.max()) / width, 100 * float(every.mean()) / width

"""Where quilts are pictured: on a wall, lying flat, a pillow on a bench. Scenes are data.

In: a scene, faces and their places in the frame. Out: the whole picture as linear light.
Invariant: nothing stands in a scene whose size a reader would compare with the quilt's.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from publish.render.arrays import Grey, Light, blurred, clouds, light_of, resized


@dataclass(frozen=True)
class Scene:
    """One scene. Lengths are shares of the picture's longer side."""

    says: str
    """The message by which the alternative text says where it is."""
    ground: str
    """`#rrggbb` of the wall or the floor."""
    fills: float
    """How much of the frame's shorter way the quilt takes."""
    depth: float
    """How far the quilt stands off what is behind it: how far its shadow falls."""
    shade: float
    """How dark its shadow is, 0 to 1."""
    rough: float
    """How uneven the ground is."""
    falloff: float
    """How much darker the corner furthest from the light is."""
    bench: str = ""
    """Colour of the bench that it stands on; empty for none."""
    horizon: float = 1.0
    """Where the bench begins, from the top."""
    rise: float = 0.0
    """How far above the middle it hangs."""


SCENES = {
    "wall": Scene("figure-on-a-wall", "#d3cec4", 0.73, 0.011, 0.55, 0.010, 0.20, rise=0.004),
    "flat": Scene("figure-lying-flat", "#c6c0b5", 0.76, 0.005, 0.58, 0.014, 0.12),
    "bench": Scene(
        "figure-on-a-bench",
        "#cfcac0",
        0.70,
        0.045,
        0.42,
        0.010,
        0.24,
        bench="#9c8468",
        horizon=0.83,
        rise=0.012,
    ),
}
"""By key. Common practice, no source.

Over a chair's back is none of them: it hides half of the quilt, and a chair tells a size.
"""


@dataclass(frozen=True)
class Place:
    """Where a face lies in the frame, in pixels."""

    left: int
    top: int


@dataclass(frozen=True)
class Lying:
    """A face in its place: its light, how much of each pixel it covers, and how many pixels it
    stands off what is behind it."""

    light: Light
    inside: Grey
    place: Place
    depth: float


def composed(scene: Scene, lying: Sequence[Lying], shape: tuple[int, int]) -> Light:
    """Return the picture: the ground in the lamp's light, shadows on it, the faces."""
    found = _ground(scene, shape)
    for each in lying:
        mask = np.zeros(shape, np.float32)
        _part(mask, each)[...] = each.inside
        foot = each.place.top + each.inside.shape[0]
        found *= _shadow(scene, mask, each.depth / max(shape), foot)
    for each in lying:
        for plane, light in zip(found, each.light, strict=True):
            here = _part(plane, each)
            here += each.inside * (light - here)
    return found


def _part(plane: Grey, each: Lying) -> Grey:
    """Return the part of a plane that a face lies on, to be written to."""
    rows, columns = each.inside.shape
    top, left = each.place.top, each.place.left
    return plane[top : top + rows, left : left + columns]


def _ground(scene: Scene, shape: tuple[int, int]) -> Light:
    """Return the wall or floor, and the bench, lit from the upper left."""
    rows, columns = shape
    y = np.linspace(-1, 1, rows, dtype=np.float32)[:, None]
    x = np.linspace(-1, 1, columns, dtype=np.float32)[None, :]
    even = 1 - np.float32(scene.falloff) * (0.5 + 0.28 * x + 0.22 * y + 0.12 * (x * x + y * y))
    longest = max(shape)
    even *= 1 + np.float32(scene.rough) * clouds(shape, longest / 7, 61)
    even *= 1 + np.float32(0.7 * scene.rough) * clouds(shape, longest / 200, 62)
    found = even * light_of(scene.ground)[:, None, None]
    if scene.bench:
        low = round(scene.horizon * rows)
        found[:, low:] = _bench(scene, even[low:])
    return found


def _bench(scene: Scene, even: Grey) -> Light:
    """Return the bench's top: grain along it, lighter towards the viewer."""
    rows, columns = even.shape
    long_ = float(columns)
    shape = (rows, columns)
    grain = 0.055 * clouds(shape, long_ / 2.5, 63, max(2.0, long_ / 260))
    grain += 0.035 * clouds(shape, long_ / 5, 64, max(1.5, long_ / 700))
    near = np.linspace(0.80, 1.12, rows, dtype=np.float32)[:, None]
    return ((even * near) * (1 + grain)) * light_of(scene.bench)[:, None, None]


def _shadow(scene: Scene, mask: Grey, depth: float, foot: int) -> Grey:
    """Return 1 where the lamp and the sky reach the ground freely, less in the shadow.

    `depth` is a share of the picture's longer side, `foot` the row that a face ends at.
    """
    shape = (mask.shape[0], mask.shape[1])
    longest = max(shape)
    small = max(1, longest // 640)
    coarse = (shape[0] // small, shape[1] // small)
    thin = resized(mask, coarse)
    far = depth * max(coarse)
    found = np.zeros(coarse, np.float32)
    for share, weight in ((0.35, 0.5), (1.0, 0.5)):
        reach = far * share
        moved = _moved(thin, reach * 0.75, reach * 0.9)
        found += np.float32(weight) * blurred(moved, max(0.8, reach * 0.55))
    close = blurred(thin, max(1.0, far * 0.6))
    dark = np.float32(scene.shade) * np.clip(found, 0, 1)
    dark = np.maximum(dark, np.float32(0.30) * close)
    if scene.bench:
        dark = np.maximum(dark, _contact(scene, thin, foot / small))
    return 1 - resized(np.clip(dark, 0, 0.9), shape)


def _contact(scene: Scene, thin: Grey, foot: float) -> Grey:
    """Return the shadow that lies on the bench under and behind what stands on it."""
    rows, columns = thin.shape
    low = round(scene.horizon * rows)
    wide = thin[max(0, round(foot) - rows // 12) : round(foot)].max(axis=0)
    found = np.zeros_like(thin)
    end = min(rows, round(foot + 0.012 * rows))
    found[low:end] = wide[None, :]
    soft = blurred(_moved(found, 0.02 * columns, 0), 0.012 * rows) * np.float32(0.62)
    soft[:low] *= np.float32(0.35)
    touching = np.zeros_like(thin)
    reach = max(1, round(0.006 * rows))
    touching[max(0, round(foot) - 3 * reach) : round(foot) + reach] = wide[None, :]
    dark: Grey = np.maximum(soft, np.float32(0.6) * blurred(touching, 0.005 * rows))
    return dark


def _moved(values: Grey, right: float, down: float) -> Grey:
    """Return values moved by whole pixels, 0 where nothing came from."""
    x, y = round(right), round(down)
    found = np.zeros_like(values)
    rows, columns = values.shape
    found[y:, x:] = values[: rows - y, : columns - x]
    return found

"""Light on a quilt's face: one soft key light, a sky, shadow in the ditches.

In: heights in inches, a window, a `Lamp`. Out: how much light each pixel gets, 1 for flat
cloth in the open.
Invariant: the light is evened so that the face's mean is 1: colours stay true.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from publish.render.arrays import Grey, blurred


@dataclass(frozen=True)
class Lamp:
    """Where light comes from: `left` and `up` along the wall, `out` towards the viewer."""

    left: float
    up: float
    out: float
    soft: float
    """How far it wraps round, 0 for a point to 1 for a sky."""
    sky: float
    """Share of light that comes from everywhere."""


DAYLIGHT = Lamp(left=0.50, up=0.58, out=0.64, soft=0.25, sky=0.38)
"""A window high at the left."""
RAKING = Lamp(left=0.70, up=0.45, out=0.50, soft=0.22, sky=0.40)


def lit(height: Grey, inside: Grey, fine: float, lamp: Lamp = DAYLIGHT) -> tuple[Grey, Grey]:
    """Return the light of the lamp and of the sky at each pixel; together 1 on average.

    `fine` is pixels to the inch.
    """
    across, down = _slopes(height, fine)
    for slope in (across, down):  # a picture's steepest edges are finer than its pixels
        slope /= 1 + np.float32(0.45) * np.abs(slope)
    length = 1 / np.sqrt(1 + across * across + down * down)
    facing = (lamp.left * across + lamp.up * down + lamp.out) * length
    key = np.maximum(facing + lamp.soft * lamp.out, 0) / ((1 + lamp.soft) * lamp.out)
    key *= _shadow(height, fine, lamp)
    sky = _open(height, fine) * (0.5 + 0.5 * length)
    key *= np.float32(1 - lamp.sky)
    sky *= np.float32(lamp.sky)
    weight = float(inside.sum()) or 1.0
    mean = float(((key + sky) * inside).sum()) / weight
    return key / np.float32(mean), sky / np.float32(mean)


def _slopes(height: Grey, fine: float) -> tuple[Grey, Grey]:
    """Return how steeply the height rises to the right and downwards."""
    half = np.float32(fine / 2)
    across, down = np.zeros_like(height), np.zeros_like(height)
    across[:, 1:-1] = (height[:, 2:] - height[:, :-2]) * half
    down[1:-1] = (height[2:] - height[:-2]) * half
    return across, down


def _shadow(height: Grey, fine: float, lamp: Lamp) -> Grey:
    """Return 1 in the lamp's light, less where something nearer to it stands higher."""
    flat = float(np.hypot(lamp.left, lamp.up))
    rise = lamp.out / flat
    found = np.zeros_like(height)
    for inches in (0.015, 0.03, 0.05, 0.08, 0.13):
        x, y = (max(0, round(inches * fine * part / flat)) for part in (lamp.left, lamp.up))
        if x == y == 0:
            continue
        over = np.zeros_like(height)
        rows, columns = height.shape
        over[y:, x:] = height[: rows - y, : columns - x] - height[y:, x:]
        over -= np.float32(rise * float(np.hypot(x, y)) / fine)
        np.maximum(found, over, out=found)
    soft = np.float32(1 / 0.02)
    shade = 1 - np.float32(0.75) * np.minimum(found * soft, 1)
    return blurred(shade, 0.5)


def _open(height: Grey, fine: float) -> Grey:
    """Return how open to the sky each pixel is: less the further it lies below what is round
    it, near by and further off."""
    found = np.zeros_like(height)
    for inches, strength in ((0.05, 16.0), (0.2, 6.0)):
        below = blurred(height, inches * fine) - height
        found += np.float32(strength) * np.maximum(below, 0)
    return 1 / (1 + found)

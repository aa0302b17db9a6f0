"""Arrays of a picture, colours as light, and noise that is the same on every machine.

In: `#rrggbb` colours, shapes, seeds. Out: float32 arrays.
Invariant: light is linear, 1 for what white cloth returns; noise comes from an integer
hash alone, so that the same picture has the same bytes whenever it is computed.

sRGB to light and back: IEC 61966-2-1.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import numpy.typing as npt
from PIL import Image
from scipy import ndimage

Grey = npt.NDArray[np.floating[Any]]
"""One value to a pixel, row by row; single precision in pictures."""
Light = npt.NDArray[np.floating[Any]]
"""Planes of red, green and blue, linear: 3 x rows x columns."""
Bytes = npt.NDArray[np.uint8]

_LEVELS = 4096


def light_of(colour: str) -> npt.NDArray[np.float32]:
    """Return `#rrggbb` as three numbers: linear red, green and blue."""
    values = np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)], np.float64) / 255
    return linear(values).astype(np.float32)


def planes_of(painted: Bytes) -> Light:
    """Return sRGB bytes, rows x columns x 3, as planes of light."""
    return _LINEAR[np.ascontiguousarray(painted.transpose(2, 0, 1))]


def linear(values: npt.NDArray[np.float64]) -> npt.NDArray[np.float64]:
    """Return sRGB values between 0 and 1 as light."""
    return np.where(values <= 0.04045, values / 12.92, ((values + 0.055) / 1.055) ** 2.4)


def encoded(light: npt.NDArray[np.float64]) -> npt.NDArray[np.float64]:
    """Return light between 0 and 1 as sRGB values."""
    clipped = np.clip(light, 0, 1)
    return np.where(clipped <= 0.0031308, clipped * 12.92, 1.055 * clipped ** (1 / 2.4) - 0.055)


_LINEAR = linear(np.arange(256) / 255).astype(np.float32)
_TABLE = (encoded(np.linspace(0, 1, _LEVELS) ** 2) * 255).astype(np.float32)
"""sRGB by the square root of light, which a table of this length holds to a tenth of a step."""


def to_bytes(light: Light, grain: Grey) -> Bytes:
    """Return light as sRGB bytes, rows x columns x 3; `grain` (bytes' steps) is added before
    rounding."""
    found = np.empty((*grain.shape, 3), np.uint8)
    shift = grain + np.float32(0.5)
    for channel, plane in enumerate(light):
        step = np.sqrt(np.clip(plane, 0, 1))
        step *= _LEVELS - 1
        values = _TABLE[step.astype(np.int16)]
        values += shift
        found[..., channel] = np.clip(values, 0, 255)
    return found


def hashed(shape: tuple[int, ...], seed: int) -> Grey:
    """Return noise evenly spread between -1 and 1, one value for each place."""
    n = np.arange(int(np.prod(shape)), dtype=np.uint32)
    n = n * np.uint32(2654435761) + np.uint32((seed * 40503 + 12345) & 0xFFFFFFFF)
    for shift, factor in ((15, 2246822519), (13, 3266489917)):
        n ^= n >> np.uint32(shift)
        n *= np.uint32(factor)
    n ^= n >> np.uint32(16)
    return (n.astype(np.float32) / np.float32(2**31) - 1).reshape(shape)


def clouds(shape: tuple[int, int], across: float, seed: int, down: float | None = None) -> Grey:
    """Return smooth noise of unit spread whose bumps are `across` by `down` pixels."""
    steps = (down if down is not None else across, across)
    coarse = [max(4, math.ceil(n / step) + 3) for n, step in zip(shape, steps, strict=True)]
    knots = hashed((coarse[0], coarse[1]), seed)
    knots *= np.float32(1 / 0.47)
    return resized(knots, shape)


def resized(values: Grey, shape: tuple[int, int]) -> Grey:
    """Return values on another number of pixels, by cubic pieces."""
    if values.shape == shape:
        return values
    image = Image.fromarray(values.astype(np.float32, copy=False))
    size = (shape[1], shape[0])
    return np.array(image.resize(size, Image.Resampling.BICUBIC), np.float32)


def blurred(values: Grey, sigma: float) -> Grey:
    """Return values blurred by a Gaussian of `sigma` pixels; a wide one on fewer pixels."""
    if sigma < 0.2:
        return values
    if sigma > 6:
        small = halved(values)
        return enlarged_twice(blurred(small, sigma / 2), (values.shape[0], values.shape[1]))
    found: Grey = ndimage.gaussian_filter(values, sigma, mode="nearest", truncate=2.5)
    return found


def halved(values: Grey) -> Grey:
    """Return the means of two by two pixels; an odd last row or column is repeated."""
    rows, columns = values.shape
    if rows % 2 or columns % 2:
        values = np.pad(values, ((0, rows % 2), (0, columns % 2)), mode="edge")
    found = values[::2, ::2] + values[1::2, ::2]
    found += values[::2, 1::2]
    found += values[1::2, 1::2]
    found *= np.float32(0.25)
    return found


def enlarged_twice(values: Grey, shape: tuple[int, int]) -> Grey:
    """Return values on twice as many pixels each way, bilinear between their centres."""
    for axis in (0, 1):
        low, high = np.roll(values, 1, axis), np.roll(values, -1, axis)
        if axis == 0:
            low[0], high[-1] = values[0], values[-1]
            found = np.empty((2 * values.shape[0], values.shape[1]), values.dtype)
            even, odd = found[::2], found[1::2]
        else:
            low[:, 0], high[:, -1] = values[:, 0], values[:, -1]
            found = np.empty((values.shape[0], 2 * values.shape[1]), values.dtype)
            even, odd = found[:, ::2], found[:, 1::2]
        body = values * np.float32(0.75)
        low *= np.float32(0.25)
        high *= np.float32(0.25)
        np.add(body, low, out=even)
        np.add(body, high, out=odd)
        values = found
    return values[: shape[0], : shape[1]]

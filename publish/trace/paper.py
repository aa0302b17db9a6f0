"""Where the paper is: how much of each pixel it covers.

In: a picture. Out: `Cover`, from 0 (ground) to 1 (paper), or None.
Invariant: the half level is where the paper's edge is, to a fraction of a pixel: light is
added up as it falls, before it is coded into grey values.

The border of the picture is taken for ground. Light falls off slowly, so that the ground
is one colour times a smooth amount of light; what differs from it is paper. Both colours
are then followed over the picture, and each pixel is placed between the two.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from publish.trace.image import Floats, Pixels, Points

SMALL = 320
"""Pixels of the longer side on which the paper is first looked for."""

ROUNDS = 4
REACH = 0.10
"""Share of the picture over which a colour is averaged."""

CLEAR = 5.0
"""Spreads by which brightness alone must part paper from ground to be enough."""

BESIDE = 5
"""Pixels from an edge at which paper and ground are themselves, past the lens's blur."""

COARSE = 4
"""How many times fewer pixels such an average is worked out on."""

Mask = NDArray[np.bool_]


@dataclass(frozen=True)
class Cover:
    """How much of each pixel is paper, and how far the two stand apart from the noise."""

    share: Floats
    apart: float
    """Difference of paper and ground, in spreads of either."""


def linear(pixels: Pixels) -> Floats:
    """Return the light of sRGB pixels, 0 to 1 (IEC 61966-2-1)."""
    table = np.arange(256) / 255
    table = np.where(table <= 0.04045, table / 12.92, ((table + 0.055) / 1.055) ** 2.4)
    return np.asarray(cv2.LUT(pixels, table.astype(np.float32)), np.float32)


def covers(pixels: Pixels) -> Iterator[Cover]:
    """Yield where the paper may be, the likeliest first."""
    wide = max(pixels.shape[:2])
    scale = min(1.0, SMALL / wide)
    few = cv2.resize(pixels, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA)
    small = np.asarray(few, np.uint8)
    colour, bright = linear(small), _brightness(small)
    for first in _guesses(colour):
        told = _told_apart(bright, first)
        bend = None if told is None or told.apart < CLEAR else _halfway(colour, bright, told)
        if told is not None and bend is not None:
            yield _near_edges(_at_full_size(_brightness(pixels), told, bend))
            continue
        told = _told_apart(colour, first)
        if told is not None:
            yield _near_edges(_at_full_size(linear(pixels), told, 0.5))


def _brightness(pixels: Pixels) -> Floats:
    """Return the light of the grey value alone, one channel.

    JPEG keeps colours at half the picture's size, which moves edges that are told by them.
    """
    return linear(np.asarray(cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY), np.uint8))[..., None]


def _guesses(light: Floats) -> list[Mask]:
    """Return first guesses at the paper."""
    tones = np.log(light + 0.004)
    away = _away(tones)
    spread = np.clip(away / max(float(np.percentile(away, 99.5)), 1e-6), 0, 1)
    guesses = [_split(spread)]
    grey = np.log(light.mean(axis=2) + 0.004)
    low, high = np.percentile(grey, (1, 99))
    level = np.clip((grey - low) / max(high - low, 1e-6), 0, 1)
    bright = _split(level.astype(np.float32))
    edge = _frame(bright)
    guesses.append(~bright if bright[edge].mean() > 0.5 else bright)
    return guesses


def _split(values: Floats) -> Mask:
    """Return what lies above the level that parts values from 0 to 1 best (Otsu 1979)."""
    coded = (values * 255).astype(np.uint8)
    level, _ = cv2.threshold(coded, 0, 255, cv2.THRESH_BINARY | cv2.THRESH_OTSU)
    found: Mask = coded > level
    return found


def _frame(like: Mask | Floats) -> Mask:
    """Return the border of a picture."""
    edge = np.zeros(like.shape[:2], bool)
    wide = max(3, round(0.035 * max(like.shape[:2])))
    edge[:wide] = edge[-wide:] = True
    edge[:, :wide] = edge[:, -wide:] = True
    return edge


def _away(tones: Floats) -> Floats:
    """Return how far each pixel is from the ground, whose light is a smooth surface that
    is fitted to the border (squares of the place, outliers weighed down)."""
    rows, columns = tones.shape[:2]
    y, x = np.mgrid[-1 : 1 : rows * 1j, -1 : 1 : columns * 1j]
    terms = np.stack([np.ones_like(x), x, y, x * x, x * y, y * y], axis=-1)
    edge = _frame(tones)
    base, seen = terms[edge], tones[edge].astype(np.float64)
    weight: Points = np.ones(len(base))
    fitted: Points = np.zeros((6, 3))
    for _ in range(6):
        scaled = base * weight[:, None]
        fitted[:] = np.linalg.lstsq(scaled, seen * weight[:, None], rcond=None)[0]
        gap = np.linalg.norm(seen - base @ fitted, axis=1)
        unit = 2 * float(np.median(gap)) + 1e-6
        weight = 1 / np.sqrt(1 + (gap / unit) ** 2)
    found = np.linalg.norm(tones - terms @ fitted, axis=2)
    return np.asarray(cv2.GaussianBlur(found, (0, 0), 1.0), np.float32)


@dataclass(frozen=True)
class _Told:
    """The axis of colour that parts paper from ground, where on it the ground lies over
    the picture and how far the paper from there, how far apart that is in spreads, and
    where the two surely are."""

    axis: Points
    low: Floats
    span: Floats
    apart: float
    inner: Mask
    outer: Mask


def _told_apart(light: Floats, paper: Mask) -> _Told | None:
    """Return the colour axis that parts paper from ground best, and where each of the two
    lies on it over the picture."""
    unit = REACH * max(light.shape[:2])
    core = np.ones((3, 3), np.uint8)
    result = None
    for _ in range(ROUNDS):
        inner = cv2.erode(paper.astype(np.uint8), core).astype(bool)
        outer = ~cv2.dilate(paper.astype(np.uint8), core).astype(bool)
        if inner.sum() < 40 or outer.sum() < 40:
            return None
        front, back = _followed(light, inner, unit), _followed(light, outer, unit)
        gap = (front - back).reshape(-1, light.shape[2]).mean(axis=0)
        rest = np.concatenate([(light - front)[inner], (light - back)[outer]])
        scatter = rest.T @ rest / len(rest) + 1e-6 * np.eye(light.shape[2])
        axis = np.linalg.solve(scatter, gap)
        length = float(np.sqrt(max(gap @ axis, 1e-12)))
        high, low = front @ axis, back @ axis
        least = 0.15 * float(np.median(high - low))
        if least <= 0:
            return None
        span = np.maximum(high - low, least)
        share = (light @ axis - low) / span
        paper = cv2.GaussianBlur(share.astype(np.float32), (0, 0), 0.6) > 0.5
        result = _Told(axis, low.astype(np.float32), span.astype(np.float32), length, inner, outer)
    return result


def _followed(light: Floats, where: Mask, unit: float) -> Floats:
    """Return the colour of a region, followed smoothly over the whole picture."""
    weight = where.astype(np.float32)
    total = light[where].mean(axis=0)
    size = (max(8, where.shape[1] // COARSE), max(8, where.shape[0] // COARSE))
    both = np.concatenate([light * weight[..., None], weight[..., None]], axis=2)
    few = cv2.resize(both, size, interpolation=cv2.INTER_AREA)
    few = cv2.GaussianBlur(few, (0, 0), unit / COARSE)
    faint = np.float32(0.01)
    around = (few[..., :-1] + faint * total) / (few[..., -1:] + faint)
    full = (where.shape[1], where.shape[0])
    wide = cv2.resize(around, full, interpolation=cv2.INTER_LINEAR)
    return np.asarray(wide, np.float32).reshape(light.shape)


def _halfway(colour: Floats, bright: Floats, told: _Told) -> float | None:
    """Return how bright, from ground to paper, a pixel is that is half of each.

    Grey values of two colours mixed are not the grey values in the middle. None where they
    lie so near the ends that they tell nothing.
    """
    paper, ground = colour[told.inner].mean(axis=0), colour[told.outer].mean(axis=0)
    mixed = np.stack([ground, (paper + ground) / 2, paper])[None]
    coded = np.where(mixed <= 0.0031308, 12.92 * mixed, 1.055 * mixed ** (1 / 2.4) - 0.055)
    grey = coded @ np.array([0.299, 0.587, 0.114])
    low, half, high = np.where(grey <= 0.04045, grey / 12.92, ((grey + 0.055) / 1.055) ** 2.4)[0]
    if abs(high - low) < 0.02:
        return None
    found = float((half - low) / (high - low))
    return found if 0.3 < found < 0.7 else None


def _at_full_size(light: Floats, told: _Told, bend: float) -> Cover:
    """Return the cover of every pixel; `bend` is what a pixel shows that is half covered."""
    size = (light.shape[1], light.shape[0])
    base = cv2.resize(told.low, size, interpolation=cv2.INTER_LINEAR)
    wide = cv2.resize(told.span, size, interpolation=cv2.INTER_LINEAR)
    axis = told.axis.astype(np.float32)[None]
    level = cv2.transform(light, axis).reshape(light.shape[:2])
    share = np.clip((level - base) / wide, -0.5, 1.5)
    if bend != 0.5:
        below, above = 0.5 / bend, 0.5 / (1 - bend)
        share = np.where(share < bend, share * below, 0.5 + (share - bend) * above)
    return Cover(share.astype(np.float32), told.apart)


def _near_edges(cover: Cover) -> Cover:
    """Return the cover measured against paper and ground close to each edge, where the
    paper's own shadow darkens the ground."""
    share = cover.share
    size = (share.shape[1], share.shape[0])
    inside = (cv2.GaussianBlur(share, (0, 0), 1.0) > 0.5).astype(np.uint8)
    core = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * BESIDE + 1, 2 * BESIDE + 1))
    sides = []
    for part, far in ((cv2.erode(inside, core), 1.0), (1 - cv2.dilate(inside, core), 0.0)):
        weight = part.astype(np.float32)
        half = (size[0] // 2, size[1] // 2)
        both = cv2.resize(np.dstack([share * weight, weight]), half, interpolation=cv2.INTER_AREA)
        both = cv2.GaussianBlur(both, (0, 0), 0.6 * BESIDE)
        near = (both[..., 0] + 0.02 * far) / (both[..., 1] + 0.02)
        sides.append(cv2.resize(near, size, interpolation=cv2.INTER_LINEAR))
    edge = cv2.morphologyEx(inside, cv2.MORPH_GRADIENT, np.ones((3, 3), np.uint8)) > 0
    if not edge.any() or float(np.median((sides[0] - sides[1])[edge])) < 0.7:
        return cover  # the lens's blur reaches farther than that: nothing here is itself
    span = np.maximum(sides[0] - sides[1], 0.4)
    found = np.clip((share - sides[1]) / span, -0.5, 1.5)
    return Cover(found.astype(np.float32), cover.apart)

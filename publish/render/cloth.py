"""The colour of each pixel of a quilt's face in even light: fabric, weave, thread.

In: a subject, its relief, colours by fabric. Out: linear light.
Invariant: the weave's mean is nothing, so that a fabric keeps its colour; nothing in it is
finer than the pixels can carry, so that it neither shimmers nor makes moiré when reduced.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import lru_cache

import numpy as np
import numpy.typing as npt
from scipy import fft

from publish.render.arrays import Grey, Light, clouds, hashed, light_of, planes_of
from publish.render.paint import Window, coloured, numbers
from publish.render.prints import Print, tile
from publish.render.relief import Relief
from publish.render.subject import Subject

Whole = npt.NDArray[np.int32]

TILE = 1024
SLUB = 0.55
"""Inches that an uneven thread runs on."""
THREADS = 42.0
"""Threads to the inch of the weave that a close look shows: quilting cotton has more, but
the eye reads its slubs."""
SHOWS = 0.052
"""Spread of the weave's lightness at 100 pixels to the inch."""
CARRIED = 0.36
"""Cycles to a pixel up to which a picture carries detail through being reduced."""
MOST_EVENED = 1.2
"""How much lighter or darker a fabric is made at most, so that its colour stays true."""
STRAY = 1.3
"""Degrees by which a patch lies off its grain, since people cut by eye."""


def cloth(
    subject: Subject,
    window: Window,
    face: Relief,
    colours: Mapping[str, str],
    ground: str,
    prints: Mapping[str, Print] | None = None,
    light: Grey | None = None,
) -> Light:
    """Return the face in even light; `ground` is what lies beyond its edge.

    `light` is what will fall on each pixel: a fabric that gets more or less than the whole
    face, since it lies in few places, is evened by that, as an eye does that sees it there.

    `prints` are the photographs of printed fabrics, by their keys.
    """
    pieces = [(p.shape, p.fabric, p.grain) for p in subject.patches]
    if subject.binding:
        pieces.insert(0, (subject.bound, subject.binding, 45.0))
    pieces += [(m.shape, m.fabric, m.grain) for m in subject.motifs]
    window.place(s for s, _, _ in pieces)
    found = planes_of(coloured(window, ((s, colours[f]) for s, f, _ in pieces), ground))
    number = numbers(window, [s for s, _, _ in pieces])
    across, down = _laid(window, number, [g for _, _, g in pieces])
    found *= 1 + _woven(window, number, across, down)
    if light is not None:
        found *= _evening([f for _, f, _ in pieces], number, light)[number]
    for key, shown in (prints or {}).items():
        here = np.array([False, *(f == key for _, f, _ in pieces)])[number]
        planes = tile(shown, window.fine)
        _, high, wide = planes.shape
        found[:, here] *= planes[:, down[here] % high, across[here] % wide]
    for stitching, thread in zip(subject.threads, face.thread, strict=True):
        if thread.size > 1:
            colour = _lifted(light_of(colours[stitching.fabric]))
            share = thread * np.float32(0.9)
            for plane, value in zip(found, colour, strict=True):
                plane += share * (value - plane)
    found *= 1 - np.float32(0.45) * face.holes
    return found


def _evening(fabrics: Sequence[str], number: Whole, light: Grey) -> Grey:
    """Return by how much each piece is to be lighter, by its number."""
    index = {"": 0} | {key: n for n, key in enumerate(dict.fromkeys(fabrics), start=1)}
    which = np.array([0, *(index[key] for key in fabrics)])
    some = number[::2, ::2]
    weights = np.bincount(which[some].ravel(), light[::2, ::2].ravel(), len(index))
    counts = np.bincount(which[some].ravel(), minlength=len(index))
    factors = np.where(weights > 0, counts / np.maximum(weights, 1e-6), 1)
    factors[0] = 1
    even: Grey = np.clip(factors, 1 / MOST_EVENED, MOST_EVENED).astype(np.float32)
    pieces: Grey = even[which]
    return pieces


def _lifted(light: Light) -> Light:
    """Return a thread's colour: its fabric's, with the sheen of a twisted thread."""
    return light + np.float32(0.06) * (1 - light)


def _laid(window: Window, number: Whole, grains: Sequence[float]) -> tuple[Whole, Whole]:
    """Return where on its cloth each pixel lies, in pixels across and down the grain.

    Each piece lies turned with its grain, a little askew, and is cut from elsewhere.
    """
    count = len(grains) + 1
    turn = np.zeros(count)
    turn[1:] = np.radians(grains) + np.radians(STRAY) * hashed((count - 1,), 5)
    shift = (hashed((2, count), 6) + 9) * TILE
    cos, sin = (part.astype(np.float32)[number] for part in (np.cos(turn), np.sin(turn)))
    x = np.arange(window.columns, dtype=np.float32)[None, :]
    y = np.arange(window.rows, dtype=np.float32)[:, None]
    across = x * cos + y * sin + shift[0][number]
    down = y * cos - x * sin + shift[1][number]
    return across.astype(np.int32), down.astype(np.int32)


def _woven(window: Window, number: Whole, across: Whole, down: Whole) -> Grey:
    """Return by what share weave and dye make each pixel lighter or darker."""
    found: Grey = weave(window.fine)[down & (TILE - 1), across & (TILE - 1)]
    dye = np.float32(0.006) * hashed((int(number.max()) + 1,), 7)[number]
    found += dye
    found += np.float32(0.008) * clouds(window.shape, 2.2 * window.fine, 8)
    return found


@lru_cache(maxsize=2)
def weave(fine: float) -> Grey:
    """Return a square of weave, `TILE` pixels a side, that joins itself on all sides.

    Made of its spectrum: threads one way and the other, long along themselves and as fine
    across as the pixels carry, crossing over and under each other.
    """
    down, right = np.abs(fft.fftfreq(TILE)), fft.rfftfreq(TILE)
    across, along = _band(down, fine), _band(right, fine)
    slub = [np.exp(-((cycles * SLUB * fine) ** 2) * 2) for cycles in (down, right)]
    weft, warp = across[:, None] * slub[1][None, :], slub[0][:, None] * along[None, :]
    found = np.zeros((TILE, TILE), np.float32)
    for seed, spectrum in ((51, weft), (52, warp)):
        noise = fft.rfft2(hashed((TILE, TILE), seed))
        threads = fft.irfft2(noise * spectrum.astype(np.float32))
        found += threads / threads.std()
    found -= found.mean()
    shows = SHOWS * min(1.0, fine / 100) ** 0.35
    found *= np.float32(shows) / found.std()
    return found


def _band(cycles: Grey, fine: float) -> Grey:
    """Return how much of each frequency threads have across themselves."""
    pitch = min(THREADS / fine, CARRIED)
    found: Grey = np.exp(-((cycles / pitch - 0.62) ** 2) * 1.5)
    found *= np.clip((CARRIED - cycles) / 0.08 + 0.5, 0, 1) ** 0.5
    return found

"""The colour of each pixel of a quilt's face in even light: fabric, weave, thread.

In: a subject, its relief, colours by fabric. Out: linear light.
Invariant: the weave's mean is nothing, so that a fabric keeps its colour; nothing in it is
finer than the pixels can carry, so that it neither shimmers nor makes moiré when reduced.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from publish.render.arrays import Grey, Light, clouds, hashed, light_of, linear
from publish.render.paint import Window, coloured, numbers
from publish.render.relief import Relief
from publish.render.subject import Subject

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
STRAY = 1.3
"""Degrees by which a patch lies off its grain, since people cut by eye."""

_LINEAR = linear(np.arange(256) / 255).astype(np.float32)


def cloth(
    subject: Subject, window: Window, face: Relief, colours: Mapping[str, str], ground: str
) -> Light:
    """Return the face in even light; `ground` is what lies beyond its edge."""
    pieces = [(p.shape, p.fabric, p.grain) for p in subject.patches]
    if subject.binding:
        pieces.insert(0, (subject.bound, subject.binding, 45.0))
    pieces += [(m.shape, m.fabric, m.grain) for m in subject.motifs]
    painted = coloured(window, ((s, colours[f]) for s, f, _ in pieces), ground)
    found = _LINEAR[painted]
    found *= (1 + _woven(window, pieces))[..., None]
    for stitching, thread in zip(subject.stitching, face.thread, strict=True):
        if thread.size > 1:
            colour = _lifted(light_of(colours[stitching.fabric]))
            share = (thread * np.float32(0.9))[..., None]
            found += share * (colour - found)
    found *= (1 - 0.45 * face.holes)[..., None]
    return found


def _lifted(light: Light) -> Light:
    """Return a thread's colour: its fabric's, with the sheen of a twisted thread."""
    return light + np.float32(0.06) * (1 - light)


def _woven(window: Window, pieces: list[tuple]) -> Grey:  # type: ignore[type-arg]
    """Return by what share the weave makes each pixel lighter or darker."""
    number = numbers(window, [s for s, _, _ in pieces])
    count = len(pieces) + 1
    turn = np.zeros(count)
    turn[1:] = np.radians([g for _, _, g in pieces]) + np.radians(STRAY) * hashed((len(pieces),), 5)
    shift = (hashed((2, count), 6) + 1) * TILE / 2
    tile = weave(window.fine)
    rows, columns = window.shape
    x = np.arange(columns, dtype=np.float32)[None, :]
    y = np.arange(rows, dtype=np.float32)[:, None]
    cos, sin = np.cos(turn).astype(np.float32)[number], np.sin(turn).astype(np.float32)[number]
    u = (x * cos + y * sin + shift[0][number] + 8 * TILE).astype(np.int32) & (TILE - 1)
    v = (y * cos - x * sin + shift[1][number] + 8 * TILE).astype(np.int32) & (TILE - 1)
    found: Grey = tile[v, u]
    dye = np.float32(0.006) * hashed((count,), 7)[number]
    found += dye + np.float32(0.008) * clouds(window.shape, 2.2 * window.fine, 8)
    return found


def weave(fine: float) -> Grey:
    """Return a square of weave, `TILE` pixels a side, that joins itself on all sides.

    Made of its spectrum: threads one way and the other, long along themselves and as fine
    across as the pixels carry, crossing over and under each other.
    """
    cycles = np.abs(np.fft.fftfreq(TILE))
    along = np.exp(-((cycles * SLUB * fine) ** 2) * 4)
    pitch = THREADS / fine
    across = np.exp(-((cycles / min(pitch, CARRIED) - 0.62) ** 2) * 3.0)
    across *= np.clip((CARRIED - cycles) / 0.08 + 0.5, 0, 1)
    weft = np.sqrt(across[:, None] * along[None, :])
    found = np.zeros((TILE, TILE))
    for seed, spectrum in ((51, weft), (52, weft.T)):
        noise = np.fft.fft2(hashed((TILE, TILE), seed).astype(np.float64))
        threads = np.fft.ifft2(noise * spectrum).real
        found += threads / threads.std()
    found -= found.mean()
    shows = SHOWS * min(1.0, fine / 100) ** 0.35
    tile: Grey = (found * shows / found.std()).astype(np.float32)
    return tile

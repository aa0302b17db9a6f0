"""A row of regular ticks in a strip of a picture.

In: a strip that was taken along a straight edge. Out: `Row`, or None.
Invariant: ticks follow one another as evenly spaced lines do from any side: their places
are those of a projective map of their numbers, to a small part of the gap.
"""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np

from publish.trace.image import Floats, Points

LEAST = 24
"""Ticks that make a row."""

THICK = 2
"""Rows of the strip on either side that are averaged with one, against noise."""

REGULAR = 0.75
"""Share of the gaps beside which the next is much the same, in a row of ticks."""

SEEN = 0.85
"""Share of the ticks of a row that are seen."""

EXACT = 0.12
"""Share of a gap by which ticks lie off their places on average."""

LEANING = np.linspace(-0.5, 0.5, 41)
"""Columns to a row by which ticks may lean in the strip, and by how much more at its end
than at its beginning."""

NEAR = 40
"""Rows from the strip's middle within which ticks begin."""


@dataclass(frozen=True)
class Row:
    """Where ticks are along a strip, in columns, the number of each and how long it is, in
    rows; the row that all of them cross, the way that longer ones go (1 or -1), and the
    middle gap."""

    places: Points
    numbers: Points
    lengths: Points
    base: int
    side: int
    gap: float

    @classmethod
    def nothing(cls) -> Row:
        """Return a row of no ticks."""
        none = np.zeros(0)
        return cls(none, none, none, 0, 1, 1.0)


def row_of(strip: Floats) -> Row | None:
    """Return the row of ticks in a strip, dark on pale or pale on dark."""
    smooth = cv2.GaussianBlur(strip, (0, 0), 0.7, sigmaY=0.7)
    flat = smooth - cv2.blur(smooth, (41, 1))
    best: tuple[float, Points, int, Floats] | None = None
    for ink in (-flat, flat):
        middle = len(strip) // 2
        for base in range(middle - NEAR, middle + NEAR + 1, 2):
            line = ink[base - THICK : base + THICK + 1].mean(axis=0)
            peaks = _peaks(line)
            start = _regular(peaks)
            chain = None if start is None else _chained(peaks, start)
            if chain is None:
                continue
            # Of rows with as many ticks the clearest is taken, where all are equally dark.
            value = len(chain) * float(np.clip(_at(line, chain[:, 1]), 0, None).mean())
            if best is None or value > best[0]:
                best = value, chain, base, ink
    return None if best is None else _measured(*best[1:])


def _peaks(line: Floats) -> Points:
    """Return where a line of values stands out, to a part of a pixel."""
    wide = np.ones((1, 9), np.uint8)
    row = line[None].astype(np.float32)
    low = np.maximum(0, row - cv2.erode(row, wide))[0]
    top = (line[1:-1] > line[:-2]) & (line[1:-1] >= line[2:])
    at = np.nonzero(top)[0] + 1
    if len(at) < LEAST:
        return np.zeros(0)
    at = at[low[at] > 0.3 * np.percentile(low[at], 95)]
    left, here, right = line[at - 1], line[at], line[at + 1]
    bend = np.maximum(2 * here - left - right, 1e-6)
    found: Points = at + 0.5 * (right - left) / bend
    return found


def _regular(peaks: Points) -> int | None:
    """Return the first of a stretch of peaks that are evenly spaced."""
    if len(peaks) <= LEAST:
        return None
    gaps = np.diff(peaks)
    even = np.abs(gaps[1:] - gaps[:-1]) < 0.2 * np.minimum(gaps[1:], gaps[:-1])
    count = np.convolve(even, np.ones(16), "valid")
    best = int(count.argmax()) if len(count) else 0
    return best if len(count) and count[best] >= REGULAR * 16 else None


def _chained(peaks: Points, start: int) -> Points | None:
    """Return number and place of the ticks that go on evenly from a stretch of peaks, shape
    (n, 2), or None where they do not lie as evenly spaced lines are seen."""
    gaps = np.diff(peaks[start : start + 17])
    gap = float(np.median(gaps))
    middle = start + 1 + int(np.abs(gaps[1:-1] - gap).argmin())
    on = _followed(peaks, middle, gap)
    back = [(-n, -x) for n, x in _followed(-peaks[::-1], len(peaks) - 1 - middle, gap)]
    chain = np.array(sorted([*on, *back[1:]]))
    for _ in range(3):
        if len(chain) < LEAST:
            return None
        off = np.abs(chain[:, 1] - _fitted(chain)) / gap
        if off.max() < 0.3:
            break
        chain = chain[off < max(0.3, 0.5 * float(off.max()))]
    seen = len(chain) / (chain[-1, 0] - chain[0, 0] + 1)
    exact = float(np.sqrt(np.mean(off**2)))
    return chain if len(chain) >= LEAST and seen >= SEEN and exact <= EXACT else None


def _followed(peaks: Points, start: int, gap: float) -> list[tuple[int, float]]:
    """Return number and place of ticks from one on, numbered from 0."""
    chain = [(0, float(peaks[start]))]
    number, expected, missed = 0, float(peaks[start]), 0
    while missed < 4 and expected + gap < peaks[-1] + gap:
        number, expected = number + 1, expected + gap
        near = int(np.searchsorted(peaks, expected))
        some = peaks[max(0, near - 1) : near + 1]
        place = float(some[np.abs(some - expected).argmin()])
        if abs(place - expected) > 0.25 * gap:
            missed += 1
            continue
        missed, expected = 0, place
        chain.append((number, place))
        if len(chain) > 4:
            first = chain[max(0, len(chain) - 12)]
            gap = (place - first[1]) / (number - first[0])
    return chain


def _fitted(chain: Points) -> Points:
    """Return where the ticks are by the projective map of their numbers that fits best."""
    number, place = chain.T
    k = (number - number.mean()) / max(float(np.ptp(number)), 1.0)
    terms = np.column_stack([k, np.ones_like(k), -k * place])
    a, b, c = np.linalg.lstsq(terms, place, rcond=None)[0]
    found: Points = (a * k + b) / (1 + c * k)
    return found


def _at(line: Floats, places: Points) -> Points:
    found: Points = np.interp(places, np.arange(len(line)), line)
    return found


def _measured(chain: Points, base: int, ink: Floats) -> Row:
    """Return the row with the length of each tick: how far it goes on from the base."""
    places = _fitted(chain)
    gap = float(np.median(np.diff(places) / np.diff(chain[:, 0])))
    dark = _straight(ink, places, base, gap)
    full = np.maximum(np.median(dark[base - THICK : base + THICK + 1], axis=0), 1e-3)
    full = np.maximum(full, 0.5 * np.median(full))
    shown = cv2.blur(dark, (1, 3)) > 0.45 * full[None]
    ways = {side: _reach(shown[base::side]) for side in (1, -1)}
    side = max(ways, key=lambda s: float(np.std(np.minimum(ways[s], 60))))
    return Row(places, chain[:, 0], ways[1] + ways[-1], base, side, gap)


def _straight(ink: Floats, places: Points, base: int, gap: float) -> Floats:
    """Return the ink along each tick, a column each, over what lies between the ticks; the
    ticks' own lean is found, which from aslant is not the same along the row."""
    down = np.arange(len(ink))[:, None] - base
    along = (places - places.mean()) / max(float(np.ptp(places)), 1.0)
    y = np.repeat(np.arange(len(ink), dtype=np.float32)[:, None], len(places), axis=1)

    def inks(lean: float, more: float) -> Floats:
        x = places + (lean + more * along) * down
        at, one, two = (
            cv2.remap(ink, np.asarray(x + by, np.float32), y, cv2.INTER_LINEAR)
            for by in (0.0, -gap / 2, gap / 2)
        )
        return np.asarray(at - (one + two) / 2, np.float32)

    def dark(lean: float, more: float) -> float:
        return float(np.clip(inks(lean, more), 0, None).sum())

    lean, more = 0.0, 0.0
    for _ in range(2):
        lean = float(max(LEANING, key=lambda v: dark(v, more)))
        more = float(max(LEANING, key=lambda v: dark(lean, v)))
    return inks(lean, more)


def _reach(shown: Points) -> Points:
    """Return how many rows each column is shown for without a break."""
    found: Points = np.cumprod(shown, axis=0).sum(axis=0).astype(np.float64)
    return found

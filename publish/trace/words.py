"""What was measured on a traced picture, in lines.

In: a `Traced`. Out: text.
Invariant: shares are of the opened motif's width; true lengths are told only where the
picture tells its scale.
"""

from __future__ import annotations

import math

import numpy as np

from publish.model.trade import SLIP, SQUARE
from publish.trace.drawn import TOLERANCE
from publish.trace.tracing import Traced


def told(found: Traced) -> list[str]:
    """Return the report, a line each."""
    lines = [
        f"paper       {'opened out' if found.opened else 'the folded wedge'}, {found.folds} folds"
    ]
    if found.inches is not None:
        lines.append(
            f"width       {found.inches:.2f} in ({found.inches * 25.4:.0f} mm), by {found.told_by}"
        )
    if found.strays:
        lines += _copies(found)
    parts = len(found.drawn.parts)
    openings = sum(len(p) - 1 for p in found.drawn.parts)
    lines.append(
        f"drawing     {found.drawn.nodes} points a wedge, in {_count(parts, 'part')} with "
        f"{_count(openings, 'opening')}; within {_share(TOLERANCE / found.half / 2)} "
        "of the traced edge"
    )
    if found.outline.specks:
        lines.append(f"left out    {_count(found.outline.specks, 'speck')}")
    for m in found.drawn.meetings:
        fold = ("first", "second")[m.fold]
        at = _share(m.reach / found.half / 2)
        lines.append(f"at a fold   {_meeting(m.off)}, on the {fold} fold, {at} from the centre")
    return lines


def _copies(found: Traced) -> list[str]:
    width = 2 * found.half
    usual = float(np.mean([s.usual for s in found.strays])) / width
    worst = max(s.greatest for s in found.strays) / width
    each = ", ".join(_length(found, s.usual / width) for s in found.strays)
    return [
        f"copies      stray by {_length(found, usual)} on average, {_length(found, worst)} at most",
        f"each        {each}",
    ]


def _length(found: Traced, share: float) -> str:
    if found.inches is None:
        return _share(share)
    return f"{share * found.inches * 25.4:.2f} mm"


def _meeting(off: float) -> str:
    if abs(off) <= SQUARE:
        return "square, runs on round"
    way = "outwards" if off > 0 else "inwards"
    if abs(off) <= SLIP:
        return f"nearly square, {abs(off):.0f} degrees off {way}: a slip?"
    return f"a point of {2 * (90 - abs(off)):.0f} degrees, leaning {way}"


def _share(share: float) -> str:
    digits = max(0, min(2, 1 - math.floor(math.log10(max(share, 1e-4) * 100))))
    return f"{share * 100:.{digits}f} %"


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}{'' if number == 1 else 's'}"

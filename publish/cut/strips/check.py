"""Whether strips can be cut and hold what was asked for, seen without the solver.

In: parts, the usable width, strips. Out: what is wrong, in words.
Invariant: this looks only at parts and strips in inches; nothing of the grid, the
patterns or the method that found them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from fractions import Fraction

from publish.cut.strips.problem import Part
from publish.model.cutplan import Strip

Size = tuple[str, Fraction, Fraction]


def faults(parts: Iterable[Part], width: Fraction, strips: Sequence[Strip]) -> list[str]:
    """Return every fault: strips and sections too narrow or shallow, pieces missing, extra or
    turned."""
    found: list[str] = []
    held: Counter[Size] = Counter()
    for strip in strips:
        _look(strip, width, strip.count, found, held)
        for section in strip.sections:
            if sum((s.depth * s.count for s in section.strips), Fraction(0)) > strip.depth:
                found.append(f"a section's strips are deeper than its strip of {strip.depth}")
            for inner in section.strips:
                _look(inner, section.width, strip.count * inner.count, found, held)
                if inner.sections:
                    found.append("a section is parted into sections")
    wanted: Counter[Size] = Counter()
    free = set()
    for part in parts:
        wanted[part.letter, part.across, part.along] += part.count
        if part.may_turn:
            free.add(part.letter)
    found += [
        f"{size[0]} is cut {held[size]} times, not {wanted[size]}"
        for size in sorted({*held, *wanted})
        if held[size] != wanted[size]
    ]
    found += [
        f"{cut.letter} is turned"
        for strip in strips
        for cut in strip.held
        if cut.turned and cut.letter not in free
    ]
    return found


def _look(strip: Strip, width: Fraction, times: int, found: list[str], held: Counter[Size]) -> None:
    """Look at what lies side by side in one strip, and count its own pieces."""
    edge = sum((section.width for section in strip.sections), Fraction(0))
    for cut in strip.cuts:
        edge += cut.across * cut.count
        if cut.along > strip.depth or cut.across <= 0 or cut.along <= 0:
            found.append(f"{cut.letter} does not fit a strip {strip.depth} deep")
        size = (cut.along, cut.across) if cut.turned else (cut.across, cut.along)
        held[cut.letter, *size] += cut.count * times
    if edge > width:
        found.append(f"a strip uses {edge} of {width}")

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
    """Return every fault: strips too narrow or shallow, pieces missing, extra or turned."""
    found = []
    held: Counter[Size] = Counter()
    for strip in strips:
        edge = Fraction(0)
        for cut in strip.cuts:
            edge += cut.across * cut.count
            if cut.along > strip.depth or cut.across <= 0 or cut.along <= 0:
                found.append(f"{cut.letter} does not fit a strip {strip.depth} deep")
            if cut.turned:
                held[cut.letter, cut.along, cut.across] += cut.count * strip.count
            else:
                held[cut.letter, cut.across, cut.along] += cut.count * strip.count
        if edge > width:
            found.append(f"a strip uses {edge} of {width}")
    wanted: Counter[Size] = Counter()
    free = set()
    for part in parts:
        wanted[part.letter, part.across, part.along] += part.count
        if part.may_turn:
            free.add(part.letter)
    found += [f"{size[0]} is cut {held[size]} times, not {wanted[size]}"
              for size in sorted({*held, *wanted}) if held[size] != wanted[size]]  # fmt: skip
    found += [f"{cut.letter} is turned" for strip in strips for cut in strip.cuts
              if cut.turned and cut.letter not in free]  # fmt: skip
    return found

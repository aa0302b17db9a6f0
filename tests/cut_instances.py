"""Published rectangle instances and made-up cut lists, for tests and the benchmark.

Sources: tests/data/packing/README.md.
"""

from __future__ import annotations

import json
import random
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from publish.cut.purchase import Purchase
from publish.cut.strips import Part

RECT = Path(__file__).parent / "data" / "packing" / "rect"
F = Fraction
SHOP = Purchase(F(1), F(0), F(0), F(9, 2), F(1000, 254))
"""An inch to straighten, eighths of a yard, 10 cm."""


class Whole:
    """Every whole unit of length counts: one unit less is bought for less."""

    def below(self, length: Fraction) -> Fraction:
        return length - 1

    def room(self, length: Fraction) -> Fraction:
        return length


@dataclass(frozen=True)
class Instance:
    """One instance with or without turning; `best` and `bound` of strips across."""

    name: str
    width: Fraction
    parts: tuple[Part, ...]
    best: int
    first_fit: int
    proven: bool


def instances(folder: Path = RECT) -> Iterator[Instance]:
    """Yield each instance that has a computed value, fixed and turning."""
    for path in sorted(folder.glob("*.json")):
        for found in json.loads(path.read_text(encoding="utf-8"))["instances"]:
            for way, level in (found.get("computed_level") or {}).items():
                parts = tuple(
                    Part(str(i), F(x["w"]), F(x["h"]), x["n"], way == "rotation")
                    for i, x in enumerate(found["items"])
                )
                yield Instance(
                    f"{found['name']} {way}",
                    F(found["strip_width"]),
                    parts,
                    level["best_height"],
                    level["ffdh"],
                    level["proven_optimal"],
                )


def cut_list(seed: int) -> tuple[Fraction, tuple[Part, ...]]:
    """Return a usable width and up to 12 kinds of pieces such as quilts are cut from."""
    rng = random.Random(seed)
    directional = rng.random() < 0.25
    parts = []
    for i in range(rng.randint(1, 12)):
        step = rng.choice([F(1), F(1, 2), F(1, 2), F(1, 4), F(1, 8)])
        kind = rng.random()
        spans = [(10, 20)] if kind < 0.1 else [(1, 9)] if kind < 0.55 else [(1, 8), (2, 18)]
        if kind > 0.95:  # a border
            spans = [(1, 5), (20, 38)]
        sides = [F(rng.randint(int(a / step), int(b / step))) * step + F(1, 2) for a, b in spans]
        across, along = sides[0], sides[-1]
        count = rng.choice([1, 2, 4, 4, 8, 8, 12, 16, 20, 24, 32, 36, 48, 64, 72, 96])
        if across * along > 60:
            count = min(count, rng.choice([1, 2, 4, 6, 9, 12]))
        turns = not directional and rng.random() < 0.9
        parts.append(Part(chr(65 + i), across, along, count, turns))
    return rng.choice([F(40), F(41), F(42), F(43), F(85, 2)]), tuple(parts)

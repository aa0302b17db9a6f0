"""The hanging sleeve of a size that asks for one, and the label of every one.

In: the sleeve's piece, the quilt as it lies on the table. Out: operations.
Invariant: both come last, when the edges are done.
"""

from __future__ import annotations

from fractions import Fraction

from publish.operations.operation import Where
from publish.operations.sleeve import (
    HemSleeve,
    JoinSleeve,
    SewLabel,
    SewSleeveBottom,
    SewSleeveTop,
    SewTube,
)
from publish.sew.bench import Bench, heap

CHAPTER, QUILT, STRIP = "sleeve", "quilt", "sleeve strip"
EXHIBITED = Fraction(4)
"""Inches: the depth of sleeve that exhibitions often ask for: common practice, no source."""


def plan(bench: Bench) -> None:
    """Make a sleeve and sew it on, where the size asks for one."""
    piece, depth, seam = bench.plan.sleeve, bench.size.sleeve, bench.seam
    if piece is None or depth is None:
        return
    strip = heap(piece)
    if piece.joined_from > 1:
        one: Where = {"chapter": CHAPTER, "step": "join"}
        strip = STRIP
        bench.add(
            JoinSleeve(
                **one,
                piece=heap(piece),
                strip=STRIP,
                letter=piece.letter,
                each=piece.count * piece.joined_from,
                seam=seam,
            )
        )
    two: Where = {"chapter": CHAPTER, "step": "hem"}
    three: Where = {"chapter": CHAPTER, "step": "tube"}
    four: Where = {"chapter": CHAPTER, "step": "top-edge"}
    five: Where = {"chapter": CHAPTER, "step": "bottom-edge"}
    bench.add(
        HemSleeve(**two, strip=strip, letter=piece.letter, seam=seam),
        SewTube(**three, strip=strip, seam=seam, asked=depth),
        SewSleeveTop(**four, quilt=QUILT, strip=strip),
        SewSleeveBottom(
            **five, quilt=QUILT, shallow=depth < EXHIBITED, exhibited=bench.usual(EXHIBITED)
        ),
    )


def label(bench: Bench) -> None:
    """Sew a label on."""
    bench.add(SewLabel(chapter="label-and-care", step="label", quilt=QUILT))

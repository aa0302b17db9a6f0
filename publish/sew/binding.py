"""How a quilt is bound: where the binding begins, how long the gap is, how it is closed.

In: a size's binding plan, the quilt as it lies on the table. Out: operations.
Invariant: the gap lies within one side, away from both of its corners.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import BindingPlan
from publish.operations.binding import (
    CloseBinding,
    SewDownBinding,
    StartBinding,
    TrimLevel,
    TurnCorner,
)
from publish.operations.binding_strips import (
    CutBiasSquare,
    CutBiasTube,
    JoinOnDiagonal,
    PressInHalf,
    RuleBias,
    SewBiasTube,
)
from publish.operations.operation import Where
from publish.operations.parts import BOTTOM
from publish.sew.bench import Bench, heap
from publish.surd import Length
from publish.units import round_down

CHAPTER, QUILT, BINDING = "binding", "quilt", "binding"

GAP, TAIL, CLEAR = Fraction(10), Fraction(6), Fraction(2)
"""Inches of edge left open between the last and the first stitch; of binding left loose; and
of edge that is sewn between a corner and either: common practice, no source."""
BESIDE = Fraction(4)
"""Inches of gap, beside the overlap, that a diagonal join needs to lie under a needle:
common practice, no source."""


def plan(bench: Bench) -> None:
    """Bind a size that is bound."""
    plan = bench.plan.binding
    if plan is None:
        return
    bench.add(TrimLevel(chapter=CHAPTER, step="trim", quilt=QUILT))
    _make(bench, plan)
    _sew(bench, plan)


def _make(bench: Bench, plan: BindingPlan) -> None:
    piece, seam = bench.pieces("binding")[0], bench.seam
    if plan.square is None:
        bench.add(
            JoinOnDiagonal(
                chapter=CHAPTER,
                step="join",
                piece=heap(piece),
                letter=piece.letter,
                binding=BINDING,
                count=piece.count,
                seam=seam,
                least=plan.length,
            )
        )
    else:
        one: Where = {"chapter": CHAPTER, "step": "bias"}
        two: Where = {"chapter": CHAPTER, "step": "bias-tube"}
        bench.add(
            CutBiasSquare(
                **one, piece=heap(piece), letter=piece.letter, sheared="bias shape", seam=seam
            ),
            RuleBias(**one, sheared="bias shape", width=plan.strip_width),
            SewBiasTube(**two, sheared="bias shape", tube="bias tube", seam=seam),
            CutBiasTube(
                **two,
                tube="bias tube",
                binding=BINDING,
                width=plan.strip_width,
                seam=seam,
                least=plan.length,
            ),
        )
    bench.add(PressInHalf(chapter=CHAPTER, step="press", binding=BINDING))


def _sew(bench: Bench, plan: BindingPlan) -> None:
    quilt, seam = bench.look(QUILT), bench.seam
    side = max(range(4), key=lambda n: (quilt.edges[n].length.exact, n == BOTTOM))
    start, at, way = where_to_begin(quilt.edges[side].length.exact, plan.strip_width)
    least = plan.strip_width + (BESIDE if way == "diagonal" else 0)
    tail = min(TAIL, max(at - start, plan.strip_width))
    one: Where = {"chapter": CHAPTER, "step": "start"}
    two: Where = {"chapter": CHAPTER, "step": "close"}
    bench.add(
        StartBinding(**one, quilt=QUILT, binding=BINDING, side=side, at=at, tail=tail, seam=seam)
    )
    for turn in range(1, 5):
        until, then = start if turn == 4 else None, (side + turn) % 4
        corner: Where = {"chapter": CHAPTER, "step": "corner"}
        bench.add(
            TurnCorner(**corner, tag=f"{turn}", quilt=QUILT, side=then, until=until, seam=seam)
        )
    gap = start, at
    bench.add(
        CloseBinding(
            **two, quilt=QUILT, binding=BINDING, side=side, gap=gap, seam=seam, way=way, least=least
        ),
        SewDownBinding(
            chapter=CHAPTER, step="finish", quilt=QUILT, width=plan.strip_width, seam=seam
        ),
    )


def where_to_begin(side: Length, width: Fraction) -> tuple[Fraction, Fraction, str]:
    """Return from where to where on a side the gap is, and how it is closed.

    The binding begins at its end: in the middle of the side where that leaves room.
    """
    long = round_down(side)
    gap, way = opening(long, width)
    middle = round_down(long / 2)
    at = middle if middle - gap >= CLEAR else round_down((long + gap) / 2)
    return at - gap, at, way


def opening(side: Length, width: Fraction) -> tuple[Fraction, str]:
    """Return how long the gap is on a side, and how it is closed.

    It leaves `CLEAR` sewn beside both corners. Where no room is left for a diagonal join
    under a needle, one tail is tucked into the other.
    """
    gap = min(GAP, round_down(side - 2 * CLEAR, Fraction(1, 2)))
    if gap >= width + BESIDE:
        return gap, "diagonal"
    return max(width, min(gap, round_down(side / 2, Fraction(1, 2)))), "tucked"

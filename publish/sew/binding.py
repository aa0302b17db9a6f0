"""How a quilt is bound: where the binding begins, how long the gap is, how it is closed.

In: a size's binding plan, the quilt as it lies on the table. Out: operations.
Invariant: where it begins is `binding_start`'s; a side is the quilt's own, as it lies there.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import BindingPlan
from publish.operations.binding import (
    JoinTails,
    MeetTails,
    SewDownBinding,
    StartBinding,
    TrimLevel,
    TuckTail,
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
from publish.operations.parts import BOTTOM, RIGHT
from publish.sew.bench import Bench, heap
from publish.sew.binding_start import Start, start_of
from publish.surd import Length

CHAPTER, QUILT, BINDING = "binding", "quilt", "binding"

BESIDE = Fraction(3)
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
    sides = [edge.length.exact for edge in quilt.edges]
    start = start_of(sides[0], sides[1], bench.pattern.measures)
    wanted = max(sides) if start.longer else min(sides)
    side = max(n for n in (BOTTOM, RIGHT) if sides[n] == wanted)
    at = wanted - start.before
    tucked = start.ends == "tucked"
    gap = at - (start.tail if tucked else start.opening), at
    one: Where = {"chapter": CHAPTER, "step": "start-tucked" if tucked else "start"}
    bench.add(
        StartBinding(
            **one,
            quilt=QUILT,
            binding=BINDING,
            side=side,
            at=at,
            tail=start.tail,
            seam=seam,
            middle=start.where == "middle",
            longer=start.longer,
            tucked=tucked,
            ruler=bench.pattern.measures.grid,
        )
    )
    for turn in range(1, 5):
        two: Where = {"chapter": CHAPTER, "step": "corner"}
        until, then = gap[0] if turn == 4 else None, (side + turn) % 4
        bench.add(TurnCorner(**two, tag=f"{turn}", quilt=QUILT, side=then, until=until, seam=seam))
    _close(bench, plan, start, side, gap)
    last: Where = {"chapter": CHAPTER, "step": "finish"}
    bench.add(SewDownBinding(**last, quilt=QUILT, width=plan.strip_width, seam=seam))


def _close(
    bench: Bench, plan: BindingPlan, start: Start, side: int, gap: tuple[Length, Length]
) -> None:
    if start.ends == "tucked":
        tuck: Where = {"chapter": CHAPTER, "step": "close-tucked"}
        bench.add(
            TuckTail(**tuck, quilt=QUILT, binding=BINDING, side=side, gap=gap, inside=start.inside)
        )
        return
    meet: Where = {"chapter": CHAPTER, "step": "close"}
    join: Where = {"chapter": CHAPTER, "step": "close-join"}
    bench.add(
        MeetTails(
            **meet,
            quilt=QUILT,
            binding=BINDING,
            side=side,
            gap=gap,
            least=plan.strip_width + bench.usual(BESIDE),
        ),
        JoinTails(**join, quilt=QUILT, binding=BINDING, side=side, gap=gap, seam=bench.seam),
    )

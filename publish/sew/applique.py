"""How motifs are prepared, laid on their grounds, sewn down by hand, and trimmed.

In: the motifs of a size, its grounds. Out: operations.
Invariant: only such places of an edge are turned as the drafted motif has; a block that is a
pillow's whole front is left large, and one at a pillow's edge keeps the closing seam there.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from publish.model.trade import STITCH_APART, STITCH_INTERVAL
from publish.operations.applique import (
    PLACES,
    BeginAtCentre,
    FastenOff,
    PinStabiliser,
    PressBlock,
    StitchEdge,
    SweepEdge,
    TearStabiliser,
    ThreadNeedle,
    TurnOpenings,
)
from publish.operations.fusing import said_squares
from publish.operations.handwork import Heaps, laid_heap
from publish.operations.operation import Where
from publish.operations.preparing import ClipEdge, CutPaperShape, IronPaper, PeelPaper, PressEdge
from publish.sew.bench import Bench
from publish.sew.motifs import BlockAt, MotifAt, grounds, laid, threads, unders
from publish.sew.openings import openings_bend_both_ways
from publish.sew.placing import place
from publish.sew.trimming import trim

PREPARING, PLACING = "preparing-the-edge", "placing"
NEEDLE_TURN, PREPARED = "applique", "applique-prepared"
THREAD_LENGTH = Fraction(18)
"""Inches of hand-sewing thread to cut: common practice, no source."""
TURN_AHEAD = Fraction(1, 2)
"""Inches ahead of the needle that an edge is turned: common practice, no source."""


def plan(bench: Bench) -> None:
    """Prepare, lay down and sew every motif whose edge is turned under."""
    motifs = laid(bench)
    turned = [m for m in motifs if m.motif.method != "fusible"]
    prepared = [m for m in turned if m.motif.method == "prepared edge"]
    if prepared:
        _prepare(bench, prepared)
    if not turned:
        return
    place(bench, PLACING, turned)
    rest = [m for m in turned if m not in prepared]
    if rest:
        _needle_turn(bench, rest)
    if prepared:
        _prepared(bench, prepared)


def _prepare(bench: Bench, motifs: list[MotifAt]) -> None:
    for one in motifs:
        where: Where = {"chapter": PREPARING, "step": f"paper-{one.key}"}
        bench.add(
            CutPaperShape(
                **where,
                motif=one.key,
                name=one.name,
                folds=one.motif.folds if one.folded else 0,
                side=(one.piece.width, one.piece.length),
            )
        )
    on = tuple((m.heap, m.count) for m in motifs)
    iron, clip, press, peel = (
        Where(chapter=PREPARING, step=step) for step in ("iron-on", "clip", "press-over", "peel")
    )
    holes = any(m.shape.holes for m in motifs)
    bench.add(
        IronPaper(**iron, on=on, under=unders(motifs), holes=holes),
        ClipEdge(**clip, on=on),
        PressEdge(**press, on=on, under=tuple(m.motif.turn_under for m in motifs)),
        PeelPaper(**peel, on=on),
    )


def blocks_on(blocks: Sequence[BlockAt]) -> Heaps:
    """Return the heaps of blocks whose motif is sewn on."""
    return tuple((laid_heap(b.key), b.count) for b in blocks)


def edges(motifs: Sequence[MotifAt]) -> Fraction:
    """Return how long all edges of some motifs are, in inches."""
    return sum(
        (Fraction(m.shape.perimeter).limit_denominator(8) * m.count for m in motifs), Fraction(0)
    )


def _needle_turn(bench: Bench, motifs: list[MotifAt]) -> None:
    blocks = grounds(bench, motifs)
    on = blocks_on(blocks)
    thread, order, sweep, stitch, end, press = (
        Where(chapter=NEEDLE_TURN, step=step)
        for step in ("thread", "order", "sweep", "stitch", "fasten-off", "press")
    )
    first = "centre" if any(m.open for m in motifs) else "openings"
    if not any(m.shape.holes for m in motifs):
        first = "edge"
    bench.add(
        ThreadNeedle(
            **thread,
            on=on,
            fabric=threads(bench, motifs),
            long=bench.usual(THREAD_LENGTH),
            prepared=False,
        ),
        BeginAtCentre(**order, on=on, first=first),
        SweepEdge(**sweep, on=on, under=unders(motifs), ahead=bench.usual(TURN_AHEAD)),
        StitchEdge(
            **stitch,
            on=on,
            apart=bench.usual(STITCH_APART),
            most=bench.usual(STITCH_INTERVAL),
            length=edges(motifs),
        ),
    )
    places = _places(bench, motifs, on)
    bench.add(FastenOff(**end, on=on, places=places), PressBlock(**press, on=on))
    trim(bench, NEEDLE_TURN, blocks)


_STEPS = {"points": "tips"}
"""Steps that are not called as the places that they turn."""


def _places(bench: Bench, motifs: list[MotifAt], on: Heaps) -> tuple[str, ...]:
    """Turn each kind of place that some motif's edge has, and return which."""
    shapes = [m.shape for m in motifs]
    there = {
        "points": any(s.tips for s in shapes),
        "corners": any(s.inside_corners for s in shapes),
        "curves": True,
        "openings": any(s.holes for s in shapes),
    }
    for name, verb in PLACES.items():
        if not there[name]:
            continue
        where: Where = {"chapter": NEEDLE_TURN, "step": _STEPS.get(name, name)}
        if verb is TurnOpenings:
            bent = any(openings_bend_both_ways(s.whole) for s in shapes)
            bench.add(TurnOpenings(**where, on=on, bent=bent))
        else:
            bench.add(verb(**where, on=on))  # type: ignore[call-arg]
    return tuple(name for name in PLACES if there[name])


def _prepared(bench: Bench, motifs: list[MotifAt]) -> None:
    blocks = grounds(bench, motifs)
    on = blocks_on(blocks)
    thread, stitch, end, press = (
        Where(chapter=PREPARED, step=step) for step in ("thread", "stitch", "fasten-off", "press")
    )
    stabilised = stabilise(bench, PREPARED, on)
    bench.add(
        ThreadNeedle(
            **thread,
            on=on,
            fabric=threads(bench, motifs),
            long=bench.usual(THREAD_LENGTH),
            prepared=True,
        ),
        StitchEdge(
            **stitch,
            on=on,
            apart=bench.usual(STITCH_APART),
            most=bench.usual(STITCH_INTERVAL),
            length=edges(motifs),
            prepared=True,
        ),
        FastenOff(**end, on=on),
    )
    if stabilised:
        bench.add(TearStabiliser(**press, on=on))
    bench.add(PressBlock(**press, on=on))
    trim(bench, PREPARED, blocks)


def stabilise(bench: Bench, chapter: str, on: Heaps) -> bool:
    """Put stabilizer behind blocks where it is planned, and return whether it is."""
    roll = bench.plan.stabiliser
    if roll is None:
        return False
    where: Where = {"chapter": chapter, "step": "stabiliser"}
    bench.add(
        PinStabiliser(
            **where,
            on=on,
            squares=said_squares(roll.squares, roll.side),
            wide=roll.side > roll.width,
        )
    )
    return True

"""How a pillow is made up, with a back that overlaps or one with a zipper.

In: a size's pillow and its plan, the quilted front as it lies on the table. Out: operations.
Invariant: nothing is sewn to the front before it is trimmed and its layers are held.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import PillowPlan
from publish.operations.operation import Where
from publish.operations.pillow import (
    FillCover,
    FinishAllowances,
    HemBacks,
    LayBacks,
    SewCover,
    SewRoundFront,
    TrimFront,
    TurnCover,
)
from publish.operations.zipper import LayZippedBack, OpenZipSeam, SewZipper, SewZipSeam
from publish.sew.bench import Bench, heap
from publish.units import INCH_IN_MM

CHAPTER, QUILT, BACK = "pillow", "quilt", "back"
TURNING_SPARE = Fraction(1, 4)
"""Inches: cloth trimmed across a corner stops this far from the stitching; common practice, no
source."""
EAR_IN, EAR_OVER = Fraction(1, 2), Fraction(3)
"""Inches: a pillow's seam is taken in by so much at its corners, over so much of it; common
practice, no source."""
BASTING_STITCH = 4 / INCH_IN_MM
"""Inches: one machine stitch in a seam that is picked out again (4 mm): easysewingtechniques
blog, stitch length table."""


def plan(bench: Bench) -> None:
    """Make up a pillow."""
    plan, pillow, size = bench.plan.pillow, bench.size.pillow, bench.size
    if plan is None or pillow is None:
        return
    trim: Where = {"chapter": CHAPTER, "step": "trim"}
    carrying = [b for b in bench.counts if bench.pattern.blocks[b].motif is not None]
    single = size.block_count == 1 and bool(bench.draft.placements)
    bench.add(
        TrimFront(
            **trim,
            quilt=QUILT,
            drafted=(size.width + 2 * pillow.seam, size.height + 2 * pillow.seam),
            centred="motif" if single else "all",
            block=next(iter(bench.counts)) if carrying else "",
        ),
        SewRoundFront(**trim, quilt=QUILT),
    )
    if plan.back == "zip":
        _zip(bench, pillow.seam)
    else:
        _envelope(bench, plan, pillow.seam)
    turn: Where = {"chapter": CHAPTER, "step": "turn"}
    bench.add(
        FinishAllowances(**turn, quilt=QUILT, spare=bench.usual(TURNING_SPARE)),
        TurnCover(
            **turn,
            quilt=QUILT,
            ear_in=bench.usual(EAR_IN),
            ear_over=bench.usual(EAR_OVER),
            shown=plan.back != "zip",
        ),
        FillCover(**turn, quilt=QUILT, form=plan.form),
    )


def _envelope(bench: Bench, plan: PillowPlan, seam: Fraction) -> None:
    (piece,) = bench.pieces("pillow back")
    hemmed = plan.hem > 0
    hem: Where = {"chapter": CHAPTER, "step": "hem" if hemmed else "edge"}
    layer: Where = {"chapter": CHAPTER, "step": "layer"}
    sew: Where = {"chapter": CHAPTER, "step": "sew"}
    bench.add(
        HemBacks(
            **hem, piece=heap(piece), letter=piece.letter, count=plan.count, fold=plan.hem / 2
        ),
        LayBacks(**layer, quilt=QUILT, piece=heap(piece), overlap=plan.overlap, hemmed=hemmed),
        SewCover(**sew, quilt=QUILT, seam=seam, zipped=False, hemmed=hemmed),
    )


def _zip(bench: Bench, seam: Fraction) -> None:
    (piece,) = bench.pieces("pillow back")
    front = bench.look(QUILT)
    steps: list[Where] = [
        {"chapter": CHAPTER, "step": step} for step in ("zip", "zip-sew", "zip-open", "zip-close")
    ]
    # What the back is cut longer than the front is taken up by the seam of the zipper.
    more = (bench.look(heap(piece)).width.told - front.width.told) / 2
    assert isinstance(more, Fraction)
    bench.add(
        SewZipSeam(
            **steps[0],
            piece=heap(piece),
            back=BACK,
            letter=piece.letter,
            seam=more,
            stitch=BASTING_STITCH,
        ),
        SewZipper(**steps[1], back=BACK),
        OpenZipSeam(**steps[2], back=BACK),
        LayZippedBack(**steps[3], quilt=QUILT, back=BACK),
        SewCover(**steps[3], quilt=QUILT, seam=seam, zipped=True, hemmed=False),
    )

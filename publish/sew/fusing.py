"""How fused motifs are made: web, cloth, fusing, stitching the raw edge.

In: the fused motifs of a size, plans of web and stabilizer. Out: operations.
Invariant: web is traced in mirror image exactly when the motif is not its own mirror image;
heat, time and steam are left to the maker of the web.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.trade import WEB_APART
from publish.operations.applique import TearStabiliser
from publish.operations.fusing import (
    WEB,
    CutOut,
    CutWeb,
    FuseCloth,
    Fused,
    FuseGround,
    JoinWeb,
    RoughCut,
    StitchRawEdge,
    TraceWeb,
    traced,
)
from publish.operations.operation import Where
from publish.sew.applique import blocks_on, edges, stabilise
from publish.sew.bench import Bench, heap
from publish.sew.motifs import MotifAt, grounds, laid, one_of
from publish.sew.placing import place
from publish.sew.trimming import trim
from publish.units import INCH_IN_MM
from publish.words.values import Letter, Named, Value, said

CHAPTER = "fusing"
FUSED_SPARE = Fraction(3, 16)
"""Inches outside its line at which web is cut out: Quiltmaker magazine (F+W), Piecing and
applique."""
ZIGZAG_LENGTH = Fraction(3, 2) / INCH_IN_MM
"""Inches: length of a zigzag round a raw edge (1.5 mm), close enough to cover it: common
practice, no source."""
ZIGZAG_WIDTH = Fraction(5, 2) / INCH_IN_MM
"""Inches: width of that zigzag, and length of a blanket stitch (2.5 mm): common practice, no
source."""


def plan(bench: Bench) -> None:
    """Cut, fuse and stitch every motif that is fused."""
    motifs = [m for m in laid(bench) if m.motif.method == "fusible"]
    if not motifs:
        return
    _web(bench, motifs)
    _cloth(bench, motifs)
    place(bench, CHAPTER, motifs)
    blocks = grounds(bench, motifs)
    on = blocks_on(blocks)
    fuse, stitch = (Where(chapter=CHAPTER, step=step) for step in ("fuse-ground", "stitch-edge"))
    bench.add(FuseGround(**fuse, on=on))
    stabilised = stabilise(bench, CHAPTER, on)
    bench.add(
        StitchRawEdge(
            **stitch,
            on=on,
            long=ZIGZAG_LENGTH,
            wide=ZIGZAG_WIDTH,
            length=edges(motifs),
            stabilised=stabilised,
        )
    )
    if stabilised:
        bench.add(TearStabiliser(**stitch, on=on))
    trim(bench, CHAPTER, blocks)


def _web(bench: Bench, motifs: list[MotifAt]) -> None:
    web = bench.plan.web
    count = sum(m.count for m in motifs)
    wide = False
    if web is not None:
        nested = bool(web.placements)
        wide = not nested and web.side > web.width
        step = f"nest-web-{bench.size.key}" if nested else "cut-web"
        where: Where = {"chapter": CHAPTER, "step": step}
        bench.add(
            CutWeb(
                **where,
                count=count,
                side=max(m.shape.span for m in motifs) if nested else web.side,
                length=web.length if nested else None,
                apart=bench.usual(WEB_APART),
            )
        )
        if wide:
            bench.add(JoinWeb(**where, on=((WEB, count),)))
    for one in motifs:
        trace: Where = {"chapter": CHAPTER, "step": f"trace-{one.key}"}
        bench.add(
            TraceWeb(
                **trace,
                motif=one.key,
                name=one.name,
                count=one.count,
                folds=one.motif.folds,
                mirrored=one.motif.symmetry == "mirror",
                open=one.open,
                joined=wide,
            )
        )
    rough: Where = {"chapter": CHAPTER, "step": "rough-cut"}
    on = tuple((traced(m.key), m.count) for m in motifs)
    bench.add(RoughCut(**rough, on=on, spare=bench.usual(FUSED_SPARE)))


def _cloth(bench: Bench, motifs: list[MotifAt]) -> None:
    stretch = any(s.placements for f in bench.plan.fabrics.values() for s in f.strips)
    fuse, cut = (
        Where(chapter=CHAPTER, step=step)
        for step in ("fuse-stretch" if stretch else "fuse-cloth", "cut-out")
    )
    squares: list[Value] = [
        said(
            "letter-of",
            letter=Letter(m.piece.letter),
            fabric=Named(bench.pattern.fabrics[m.motif.fabric].name),
        )
        for m in motifs
    ]
    bench.add(
        FuseCloth(
            **fuse,
            pairs=tuple(Fused(m.key, heap(m.piece), m.count) for m in motifs),
            squares=one_of(squares),
            stretch=stretch,
        ),
        CutOut(
            **cut,
            on=tuple((m.heap, m.count) for m in motifs),
            span=max(m.shape.span for m in motifs),
            holes=any(m.shape.holes for m in motifs),
        ),
    )

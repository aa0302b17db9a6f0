"""How motifs are folded, marked and cut, or traced and cut flat.

In: the motifs of a size that are turned under. Out: operations.
Invariant: motifs that are folded alike are folded, marked and cut together, one of each first;
the others are made once that one is done.
"""

from __future__ import annotations

from fractions import Fraction

from publish.operations.flat import WHOLE, CutFlat, JoinTemplate, TraceMotif
from publish.operations.folding import SEQUENCE, FoldSquare, MarkCentre, PrepareSquare
from publish.operations.marking import (
    LINES,
    AlignTemplate,
    BasteWedge,
    CutTemplates,
    CutWedge,
    MakeMotifs,
    MarkCutLine,
    MarkFinishedLine,
    MarkWedges,
    OpenMotif,
    PrintTemplates,
    Wanted,
)
from publish.operations.operation import Where
from publish.sew.bench import Bench, heap
from publish.sew.motifs import MotifAt, laid
from publish.words.values import Value, said

FOLDING, MARKING = "folding", "marking-and-cutting-the-motif"
WEDGE_BASTING = Fraction(1, 4)
"""Inches inside the finished line at which a folded wedge is basted: common practice, no source."""


def plan(bench: Bench) -> None:
    """Fold, mark and cut every motif whose edge is turned under."""
    turned = [m for m in laid(bench) if m.motif.method != "fusible"]
    groups: dict[int, list[MotifAt]] = {}
    for one in turned:
        if one.folded:
            groups.setdefault(one.motif.folds, []).append(one)
    for folds, motifs in groups.items():
        _fold(bench, folds, motifs)
    for folds, motifs in groups.items():
        _mark(bench, folds, motifs)
        _cut(bench, folds, motifs)
    for one in turned:
        if not one.folded:
            _flat(bench, one)


def _fold(bench: Bench, folds: int, motifs: list[MotifAt]) -> None:
    for one in motifs:
        where: Where = {"chapter": FOLDING, "step": f"square-{one.key}"}
        bench.add(
            PrepareSquare(
                **where,
                piece=heap(one.piece),
                motif=one.key,
                letter=one.piece.letter,
                fabric=bench.pattern.fabrics[one.motif.fabric].name,
                name=one.name,
                least=one.across,
            )
        )
    on = tuple((m.heap, 1) for m in motifs)
    sequence = SEQUENCE[folds]
    for number, fold in enumerate(sequence, 1):
        step: Where = {"chapter": FOLDING, "step": f"{fold}-{folds}"}
        last = number == len(sequence)
        if fold == "third":
            _print(bench, step, motifs)
        bench.add(
            FoldSquare(
                **step, on=on, fold=fold, folds=folds, number=number, last=last, shown=motifs[0].key
            )
        )
        if last:
            edges = motifs[0].shape.edges or ()
            grain = next((e.grain for e in edges if e.kind == "multiple"), "off grain")
            bench.add(MarkCentre(**step, on=on, folds=folds, grain=grain))


def _print(bench: Bench, step: Where, motifs: list[MotifAt]) -> None:
    bench.add(PrintTemplates(**step, motifs=_keys(motifs), name=_name(motifs)))


def _keys(motifs: list[MotifAt]) -> tuple[str, ...]:
    return tuple(m.key for m in motifs)


def _name(motifs: list[MotifAt]) -> Value:
    return motifs[0].name if len(motifs) == 1 else said("each-motif")


def _mark(bench: Bench, folds: int, motifs: list[MotifAt]) -> None:
    first, on = motifs[0], tuple((m.heap, 1) for m in motifs)
    align: Where = {"chapter": MARKING, "step": f"align-{folds}"}
    cut: Where = {"chapter": MARKING, "step": f"cut-line-{folds}"}
    finished: Where = {"chapter": MARKING, "step": f"finished-line-{folds}"}
    under = max(m.motif.turn_under for m in motifs)
    printed = "third" in SEQUENCE[folds]
    if not printed:
        _print(bench, align, motifs)
    bench.add(
        CutTemplates(**align, motifs=_keys(motifs), name=_name(motifs), start=printed),
        AlignTemplate(
            **align, on=on, shown=first.key, open=first.open, turns=first.shape.edges is not None
        ),
        MarkCutLine(**cut, on=on),
        MarkFinishedLine(**finished, on=on, shown=first.key, under=under),
    )


def _cut(bench: Bench, folds: int, motifs: list[MotifAt]) -> None:
    first, on = motifs[0], tuple((m.heap, 1) for m in motifs)
    shape, shown = first.shape, first.key
    baste, cut, unfold, line = (
        Where(chapter=MARKING, step=f"{step}-{folds}")
        for step in ("baste-wedge", "cut", "unfold", "line")
    )
    bench.add(
        BasteWedge(**baste, on=on, inside=bench.usual(WEDGE_BASTING), folds=folds, shown=shown),
        CutWedge(
            **cut,
            on=on,
            folds=folds,
            holes=any(m.shape.holes for m in motifs),
            first=shape.holes > first.open,
            open=first.open,
            whole=shape.pieces == 1,
            across=tuple(m.across for m in motifs),
            shown=shown,
        ),
        OpenMotif(**unfold, on=on, folds=folds, pieces=shape.pieces, shown=shown),
    )
    turned = tuple((m.heap, 1) for m in motifs if m.motif.method == "needle-turn")
    if turned:
        bench.add(MarkWedges(**line, on=turned, shown=shown, others=folds - 1))
    _others(bench, f"make-{folds}", motifs, LINES)


def _others(bench: Bench, step: str, motifs: list[MotifAt], papers: tuple[str, ...]) -> None:
    if all(m.count == 1 for m in motifs):
        return
    wanted = tuple(
        Wanted(m.key, heap(m.piece), m.count, m.name, m.motif.method == "needle-turn")
        for m in motifs
    )
    where: Where = {"chapter": MARKING, "step": step}
    bench.add(MakeMotifs(**where, wanted=wanted, papers=papers, folded=papers == LINES))


def _flat(bench: Bench, one: MotifAt) -> None:
    join, trace, cut = (
        Where(chapter=MARKING, step=f"{step}-{one.key}") for step in ("join", "trace", "cut")
    )
    bench.add(
        JoinTemplate(**join, motif=one.key, name=one.name),
        TraceMotif(
            **trace,
            piece=heap(one.piece),
            motif=one.key,
            letter=one.piece.letter,
            fabric=bench.pattern.fabrics[one.motif.fabric].name,
            under=one.motif.turn_under,
            turning=one.motif.symmetry != "mirror",
        ),
        CutFlat(
            **cut,
            on=((one.heap, 1),),
            across=one.across,
            holes=bool(one.shape.holes),
            pieces=one.shape.pieces,
        ),
    )
    _others(bench, f"make-{one.key}", [one], (WHOLE,))

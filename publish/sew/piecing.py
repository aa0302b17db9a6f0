"""From the cut pieces to the middle of the top: work that is trusted until it has moved.

In: plans, sizes. Out: trusted operations: cutting, piecing.
Invariant: every piece that is cut lies on the table; what is pieced takes all that is not
a border, a backing, a binding or for finishing.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from publish.model.cutplan import Piece
from publish.operations.borders import PRESSED
from publish.operations.handwork import ground_heap
from publish.operations.parts import Measure, Part, measured, sheet
from publish.operations.trusted import Trusted
from publish.sew.bench import Bench, heap
from publish.sew.motifs import BlockAt, grounds, homes_of, laid, whole_unit
from publish.sew.trimming import done
from publish.surd import Length

LATER = ("border", "backing", "binding", "pillow", "sleeve")
"""First words of the purposes of pieces that are no part of the middle of the top."""


def plan(bench: Bench) -> None:
    """Cut everything, and piece the grounds that are laid under motifs."""
    cut = tuple(part for piece in bench.plan.pieces for part in _cut(bench, piece))
    batting = bench.plan.batting
    if batting is not None:
        cut += ((sheet("batting", measured(batting.width), measured(batting.height)), 1),)
    bench.add(Trusted(chapter="cutting", step="cut", gives=cut))
    pieced = [b for b in grounds(bench, laid(bench)) if b.ground is None]
    if pieced:
        bench.add(Trusted(chapter="piecing", step="grounds", gives=_grounds(bench, pieced)))


def _grounds(bench: Bench, blocks: list[BlockAt]) -> tuple[tuple[Part, int], ...]:
    """Return the pieced grounds that motifs are laid on."""
    found = []
    for block in blocks:
        unit = whole_unit(bench, homes_of(bench, block.key)[0])
        assert unit.sewn is not None
        pairs = zip(unit.sewn.exact, unit.sewn.told, strict=True)
        width, height = (Measure(exact, told) for exact, told in pairs)
        found.append((sheet(ground_heap(block.key), width, height, PRESSED), block.count))
    return tuple(found)


def assemble(bench: Bench) -> None:
    """Piece what lies inside the borders and rounds, with the blocks that carry motifs."""
    inner = [p for p in bench.plan.pieces if p.purpose.split()[0] not in LATER]
    motifs = laid(bench)
    blocks = grounds(bench, motifs)
    gone = Counter({heap(m.piece): m.count for m in motifs})
    for block in blocks:
        if block.ground is not None:
            gone[heap(block.ground)] += block.count
    cut = ((heap(p), count) for p in inner for _, count in _cut(bench, p))
    takes = [(key, left) for key, count in cut if (left := count - gone[key])]
    takes += [(one.key, one.count) for one in done(bench, blocks)]
    size = bench.size
    around = bench.seam if size.layers else bench.edge
    width, height = (measured(side + 2 * around) for side in (size.inner_width, size.inner_height))
    paper = frozenset({"foundations"} if bench.draft.foundations else ())
    top = replace(sheet("top", width, height, PRESSED), paper=paper)
    bench.add(Trusted(chapter="assembling", step="centre", takes=tuple(takes), gives=((top, 1),)))


def _cut(bench: Bench, piece: Piece) -> tuple[tuple[Part, int], ...]:
    """Return the parts that a piece is cut as; a strip's width is how deep it is."""
    width = _measure(piece.width, piece.exact_width)
    length = _measure(piece.length, piece.exact_length)
    if _lies_across(bench, piece):
        width, length = length, width
    if piece.joined_from > 1:
        each = _each(bench, piece)
        return ((sheet(heap(piece), width, measured(each)), piece.count * piece.joined_from),)
    return ((sheet(heap(piece), width, length), piece.count),)


def _measure(told: Length, exact: Length | None) -> Measure:
    return Measure(told if exact is None else exact, told)


def _lies_across(bench: Bench, piece: Piece) -> bool:
    """Return whether a strip's length is what the plan calls its width."""
    if piece.purpose == "sleeve":
        return piece.width > piece.length
    if piece.purpose == "binding" and bench.size.binding is not None:
        return piece.length == bench.size.binding.width
    if piece.purpose.startswith("border "):
        number = int(piece.purpose.split()[1]) - 1
        return piece.finished_width != bench.size.borders[number].width
    return False


def _each(bench: Bench, piece: Piece) -> Length:
    """Return how long each length of a joined strip is cut."""
    for strip in bench.plan.fabrics[piece.fabric].strips:
        for cut in strip.held:
            if cut.letter == piece.letter:
                return max(cut.across, cut.along)
    return piece.length

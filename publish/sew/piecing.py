"""From the cut pieces to the blocks: work that is trusted until it has moved.

In: plans, sizes. Out: trusted operations: cutting, piecing.
Invariant: every piece that is cut lies on the table; what is pieced takes all that is sewn
into blocks.
"""

from __future__ import annotations

from dataclasses import replace

from publish.model.cutplan import Piece
from publish.model.draft import Unit
from publish.operations.borders import PRESSED
from publish.operations.parts import Measure, Part, measured, sheet
from publish.operations.trusted import Trusted
from publish.sew.bench import Bench, heap
from publish.sew.names import Names
from publish.surd import Length

LATER = ("border", "backing", "binding", "pillow", "sleeve")
"""First words of the purposes of pieces that are no part of the middle of the top."""


def plan(bench: Bench) -> None:
    """Cut everything, and piece what lies inside the borders and rounds."""
    cut = tuple(part for piece in bench.plan.pieces for part in _cut(bench, piece))
    batting = bench.plan.batting
    if batting is not None:
        cut += ((sheet("batting", measured(batting.width), measured(batting.height)), 1),)
    several = tuple(heap(p) for p in bench.plan.pieces if p.yields > 1)
    bench.add(Trusted(chapter="cutting", step="cut", gives=cut, spare=several))
    _piece(bench)


def _piece(bench: Bench) -> None:
    """Piece the blocks, as far as that is trusted: every block that is not cut whole."""
    names = Names(bench)
    made: dict[str, list[Unit]] = {}
    for unit in bench.draft.assembly.outermost_first():
        if names.is_block(unit) and not _cut_whole(names, unit):
            made.setdefault(names.key(unit), []).append(unit)
    taken = _sewn_on(names, [u for units in made.values() for u in units])
    inner = [p for p in bench.plan.pieces if p.purpose.split()[0] not in LATER]
    takes = tuple(
        (heap(p), count if p.yields == 1 else _patches(bench, p))
        for p in inner
        if p.letter not in taken
        for _, count in _cut(bench, p)
    )
    paper = frozenset({"foundations"} if bench.draft.foundations else ())
    gives = tuple((_block(bench, names, units, paper), len(units)) for units in made.values())
    bench.add(Trusted(chapter="piecing", step="blocks", takes=takes, gives=gives))


def _patches(bench: Bench, piece: Piece) -> int:
    """Return how many patches are cut as a piece."""
    return sum(letter == piece.letter for letter in bench.plan.sources.values())


def _cut_whole(names: Names, unit: Unit) -> bool:
    """Return whether a block is one piece as it is cut."""
    return names.key(unit).startswith("piece ")


def _sewn_on(names: Names, blocks: list[Unit]) -> set[str]:
    """Return the letters of the pieces that are in no block: sashing, whole blocks."""
    inside = {p.key for unit in blocks for p in unit.patches}
    sources = names.bench.plan.sources
    return {sources[p.key] for p in names.root.patches if p.key not in inside and p.key in sources}


def _block(bench: Bench, names: Names, units: list[Unit], paper: frozenset[str]) -> Part:
    """Return a block as it is when it is sewn to others: of a motif's ground, trimmed."""
    unit = units[0]
    assert unit.sewn is not None
    wide, high = (
        Measure(exact, told) for exact, told in zip(unit.sewn.exact, unit.sewn.told, strict=True)
    )
    block = unit.patches[0].block
    if block is not None and bench.pattern.blocks[block].motif is not None:
        margin = bench.pattern.sewing.ground_margin
        wide, high = (measured(m.exact - margin) for m in (wide, high))
    if names.quarters(unit) % 2:
        wide, high = high, wide
    return replace(sheet(names.key(unit), wide, high, PRESSED), paper=paper)


def _cut(bench: Bench, piece: Piece) -> tuple[tuple[Part, int], ...]:
    """Return the parts that a piece is cut as; a strip's width is how deep it is."""
    width = _measure(piece.width, piece.exact_width)
    length = _measure(piece.length, piece.exact_length)
    if _lies_across(bench, piece):
        width, length = length, width
    if piece.joined_from > 1:
        each = _each(bench, piece)
        return ((sheet(heap(piece), width, measured(each)), piece.count * piece.joined_from),)
    # Shapes are known by the square or strip that they are cut from.
    return ((sheet(heap(piece), width, length), piece.count * piece.yields),)


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
        for cut in strip.cuts:
            if cut.letter == piece.letter:
                return max(cut.across, cut.along)
    return piece.length

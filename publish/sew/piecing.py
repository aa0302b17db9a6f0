"""From the cut pieces to the blocks: work that is trusted until it has moved.

In: plans, sizes. Out: trusted operations: cutting, piecing.
Invariant: every piece that is cut lies on the table; what is pieced takes all that is sewn
into blocks.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

from publish.model.cutplan import Piece
from publish.model.draft import Unit
from publish.operations.borders import PRESSED
from publish.operations.parts import Measure, Part, measured, sheet
from publish.operations.trusted import Trusted
from publish.sew import units
from publish.sew.bench import Bench, heap
from publish.sew.names import Names
from publish.surd import Length


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
    """Piece the blocks, and the grounds of motifs; what is sewn on foundations is trusted."""
    names = Names(bench)
    _whole(bench, names)
    units.plan(bench, names)
    made: dict[str, list[Unit]] = {}
    for unit in bench.draft.assembly.outermost_first():
        if names.is_block(unit):
            made.setdefault(names.key(unit), []).append(unit)
    _foundations(bench, names, made)


def _whole(bench: Bench, names: Names) -> None:
    """Take a top of one plain piece for the top that it is."""
    piece = names.piece(names.centre)
    if piece is None or names.carries(names.centre):
        return
    size = bench.size
    around = bench.seam if size.layers else bench.edge
    width, height = (measured(side + 2 * around) for side in (size.inner_width, size.inner_height))
    top = sheet(names.key(names.centre), width, height, PRESSED)
    bench.add(
        Trusted(chapter="cutting", step="whole", takes=((heap(piece), 1),), gives=((top, 1),))
    )


def _foundations(bench: Bench, names: Names, made: dict[str, list[Unit]]) -> None:
    """Sew what is sewn on paper, and blocks that are joined from it."""
    takes: Counter[str] = Counter()
    gives = []
    for those in made.values():
        if not any(leaf.section for leaf in units.leaves(those[0])):
            continue
        for unit in those:
            takes += _sewn_from(names, unit)
        gives.append((_block(names, those), len(those)))
    if gives:
        bench.add(
            Trusted(
                chapter="foundation",
                step="blocks",
                takes=tuple(takes.items()),
                gives=tuple(gives),
                ready=frozenset({PRESSED}),
            )
        )


def _sewn_from(names: Names, unit: Unit) -> Counter[str]:
    """Return what a unit with foundation sections takes: pieces, and units pieced before."""
    sources = names.bench.plan.sources
    if unit.section:
        return Counter(f"piece {sources[p.key]}" for p in unit.patches if p.key in sources)
    if not unit.parts or not any(leaf.section for leaf in units.leaves(unit)):
        return Counter([names.key(unit)])
    return sum((_sewn_from(names, part) for part in unit.parts), Counter())


def _block(names: Names, those: list[Unit]) -> Part:
    """Return a block that is joined on foundations, with its paper."""
    sewn = those[0].sewn
    assert sewn is not None
    wide, high = (Measure(e, t) for e, t in zip(sewn.exact, sewn.told, strict=True))
    if names.lies(those[0]) % 2:
        wide, high = high, wide
    block = sheet(names.made(those[0]), wide, high, PRESSED)
    return replace(block, paper=frozenset({"foundations"}))


def _cut(bench: Bench, piece: Piece) -> tuple[tuple[Part, int], ...]:
    """Return the parts that a piece is cut as; a strip's width is how deep it is."""
    width = _measure(piece.width, piece.exact_width)
    length = _measure(piece.length, piece.exact_length)
    if _lies_across(bench, piece):
        width, length = length, width
    if piece.joined_from > 1:
        narrow, each = min(width, length, key=lambda side: side.exact), _each(bench, piece)
        return ((sheet(heap(piece), narrow, measured(each)), piece.count * piece.joined_from),)
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
    cuts = (c for strip in bench.plan.fabrics[piece.fabric].strips for c in strip.held)
    return next(max(c.across, c.along) for c in cuts if c.letter == piece.letter)

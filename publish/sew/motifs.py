"""The motifs of a size: what each is cut from, how many, and the blocks that they lie on.

In: a bench. Out: `MotifAt`, `BlockAt`.
Invariant: motifs come in the pattern's order, blocks in the order in which they are laid.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from shapely.geometry import Point

from publish.model.cutplan import Piece
from publish.model.draft import MotifShape, Patch, Unit
from publish.model.homes import BlockHome
from publish.model.pattern import Block, Motif
from publish.operations.folding import is_folded
from publish.operations.handwork import ground_heap, motif_heap
from publish.sew.bench import Bench, heap
from publish.words.values import Length, Named, Said, Several, Value, said

ORIGIN = Point(0, 0)


@dataclass(frozen=True)
class MotifAt:
    """A motif at one size."""

    motif: Motif
    shape: MotifShape
    piece: Piece
    count: int
    name: Value

    @property
    def key(self) -> str:
        return self.motif.key

    @property
    def heap(self) -> str:
        return motif_heap(self.key)

    @property
    def across(self) -> Fraction:
        """Return its width with the turn-under on both sides."""
        return self.shape.span + 2 * self.motif.turn_under

    @property
    def folded(self) -> bool:
        return is_folded(self.motif.symmetry, self.motif.method, self.motif.folds)

    @property
    def open(self) -> bool:
        """Return whether it has an opening at its centre."""
        return self.shape.holes > 0 and not self.shape.whole.covers(ORIGIN)


@dataclass(frozen=True)
class BlockAt:
    """A block that carries a motif, at one size."""

    key: str
    block: Block
    motif: MotifAt
    count: int
    ground: Piece | None
    """What its ground is cut as; None for one that is pieced."""

    @property
    def source(self) -> str:
        """Return what its grounds are called before they are creased."""
        return heap(self.ground) if self.ground is not None else ground_heap(self.key)


def plain(key: str) -> str:
    """Return a key of the pattern as words."""
    return key.replace("_", " ").replace("-", " ")


def laid(bench: Bench) -> tuple[MotifAt, ...]:
    """Return the motifs that a size lays down."""
    counts = Counter(p.motif for p in bench.draft.placements)
    carried = {b.motif for b in bench.pattern.blocks.values()} - {None}
    several = len(carried) > 1
    return tuple(
        MotifAt(
            motif,
            bench.draft.motifs[key],
            _square(bench, motif),
            counts[key],
            said("motif-named", name=Named(plain(key))) if several else said("the-motif"),
        )
        for key, motif in bench.pattern.motifs.items()
        if counts[key]
    )


def _square(bench: Bench, motif: Motif) -> Piece:
    """Return what a motif is cut from: squares of one fabric come in the order in which
    their motifs are first laid down."""
    order = dict.fromkeys(p.motif for p in bench.draft.placements)
    alike = [m for m in order if bench.pattern.motifs[m].fabric == motif.fabric]
    squares = [p for p in bench.pieces("motif") if p.fabric == motif.fabric]
    return squares[alike.index(motif.key)]


def grounds(bench: Bench, motifs: Sequence[MotifAt]) -> tuple[BlockAt, ...]:
    """Return the blocks that carry some motifs."""
    by_key = {m.key: m for m in motifs}
    homes: dict[str, list[BlockHome]] = {}
    for home, patches in _patches(bench).items():
        block = patches[0].block
        if block is not None and bench.pattern.blocks[block].motif in by_key:
            homes.setdefault(block, []).append(home)
    found = []
    for key, places in homes.items():
        carrying = bench.pattern.blocks[key]
        patch = _patches(bench)[places[0]][0]
        ground = _piece(bench, patch) if len(carrying.patches) == 1 else None
        found.append(BlockAt(key, carrying, by_key[carrying.motif or ""], len(places), ground))
    return tuple(found)


def homes_of(bench: Bench, block: str) -> tuple[BlockHome, ...]:
    """Return the places of a block in the top."""
    return tuple(home for home, ps in _patches(bench).items() if ps[0].block == block)


def whole_unit(bench: Bench, home: BlockHome) -> Unit:
    """Return the unit that is the whole block at a place."""
    count = len(_patches(bench)[home])
    return next(
        u
        for u in bench.draft.assembly.outermost_first()
        if len(u.patches) == count and all(p.place == home for p in u.patches)
    )


def _patches(bench: Bench) -> dict[BlockHome, list[Patch]]:
    found: dict[BlockHome, list[Patch]] = {}
    for patch in bench.draft.patches:
        if patch.place is not None and patch.block is not None:
            found.setdefault(patch.place, []).append(patch)
    return found


def _piece(bench: Bench, patch: Patch) -> Piece:
    """Return the piece that a ground is cut as; without a source the one of its size."""
    letter = bench.plan.sources.get(patch.key)
    left, top, right, bottom = patch.box
    finished = {right - left, bottom - top}
    pieces = [p for p in bench.plan.pieces if p.fabric == patch.fabric]
    own = [p for p in pieces if p.letter == letter]
    alike = [p for p in pieces if {p.finished_width, p.finished_length} == finished]
    return next(iter([*own, *alike, *pieces]))


def one_of(values: Sequence[Value]) -> Value:
    """Return the one value that there is, or several."""
    each = tuple(dict.fromkeys(values))
    return each[0] if len(each) == 1 else Several(each)


def unders(motifs: Sequence[MotifAt]) -> Value:
    """Return the turn-under of some motifs: one length, or each with its motif."""
    lengths = dict.fromkeys(m.motif.turn_under for m in motifs)
    if len(lengths) == 1:
        return Length(motifs[0].motif.turn_under)
    return Several(
        tuple(said("under-of", under=Length(m.motif.turn_under), motif=m.name) for m in motifs)
    )


def threads(bench: Bench, motifs: Sequence[MotifAt]) -> Said | Named:
    """Return what thread is matched to: the one fabric, or each motif's own."""
    names = {bench.pattern.fabrics[m.motif.fabric].name for m in motifs}
    return Named(next(iter(names))) if len(names) == 1 else said("each-motif")

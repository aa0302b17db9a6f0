"""What every section asks about the pattern: sizes, motifs, names, values side by side.

In: pattern, sizes, drafts, plans, making. Out: `Book`, a read-only view.
Invariant: only sizes that have been graded, drafted and planned are written about, in
the pattern's order; the only sums made here are finished size plus seams (`raw`, `front`).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft, MotifShape
from publish.model.pattern import Block, Motif, Pattern, QuiltingSpec
from publish.model.size import Size
from publish.operations.rehearsal import Making
from publish.surd import Length
from publish.words import Language
from publish.words.lengths import Lengths
from publish.words.values import Count, Named, Said, Titles, Value, Word, said


@dataclass(frozen=True)
class Book:
    """The inputs of the stage, and the questions that sections ask of them."""

    pattern: Pattern
    sizes: Mapping[str, Size]
    drafts: Mapping[str, Draft]
    plans: Mapping[str, CutPlan]
    making: Making = field(default_factory=lambda: Making({}))

    @property
    def words(self) -> Language:
        """Return the language that the booklet is told in."""
        return self.pattern.words

    @property
    def say(self) -> Lengths:
        """Return how lengths are said in this booklet."""
        return self.words.lengths

    def text(self, message: str, part: str = "", /, **values: Value) -> str:
        """Return a message of the booklet's language, or its part, as text."""
        return self.words.text(message, values, part)

    def usual(self, inches: Fraction) -> str:
        """Return a figure of the trade as these makers have it."""
        return self.say.measure(self.pattern.measures.usual(inches))

    @property
    def keys(self) -> tuple[str, ...]:
        """Return the sizes that can be written about, in the pattern's order."""
        return tuple(
            k
            for k in self.pattern.sizes
            if k in self.sizes and k in self.drafts and k in self.plans
        )

    @property
    def your_size(self) -> str:
        """Return ` for your size`, or nothing when there is only one."""
        return " for your size" if len(self.keys) > 1 else ""

    def title(self, key: str) -> str:
        return self.sizes[key].title

    def called(self, keys: Iterable[str]) -> Titles:
        """Return sizes by their titles, as a value."""
        return Titles(tuple(self.title(k) for k in keys))

    def titles(self, keys: Iterable[str]) -> str:
        """Return `**Mini** and **Throw**`."""
        return self.words.value(self.called(keys))

    def fabric(self, key: str) -> str:
        """Return a fabric's name as the text prints it."""
        return self.pattern.fabrics[key].name

    @property
    def fabrics(self) -> tuple[str, ...]:
        """Return the fabrics that some size uses, in the pattern's order."""
        used = {f for k in self.keys for f in self.plans[k].fabrics}
        return tuple(f for f in self.pattern.fabrics if f in used)

    @property
    def quilts(self) -> tuple[str, ...]:
        return tuple(k for k in self.keys if self.sizes[k].finish != "pillow")

    @property
    def pillows(self) -> tuple[str, ...]:
        return tuple(k for k in self.keys if self.sizes[k].finish == "pillow")

    @property
    def largest(self) -> str | None:
        """Return the size with the greatest area; the first of equals."""
        return max(
            self.keys, key=lambda k: self.sizes[k].width * self.sizes[k].height, default=None
        )

    def raw(self, finished: Length) -> Length:
        """Return a finished length with a seam allowance at both ends."""
        return finished + 2 * self.pattern.sewing.seam

    def front(self, key: str) -> tuple[Length, Length]:
        """Return a pillow front as trimmed: the cover with the closing seam all round."""
        size = self.sizes[key]
        assert size.pillow is not None
        return size.width + 2 * size.pillow.seam, size.height + 2 * size.pillow.seam

    # Blocks and motifs

    def blocks(self, key: str) -> dict[str, int]:
        """Return the blocks of a size and how many of each, in order of appearance.

        Those between the rows of blocks on point and those of rounds count as well.
        """
        size = self.sizes[key]
        found = [b for row in (*size.arrangement, *size.alternates) for b in row]
        found += [b.block for r in size.rounds for b in r.blocks]
        return dict(Counter(found))

    def sides(self, key: str, block: str) -> dict[Fraction, int]:
        """Return the finished sides that a block has in a size, and how many of each."""
        size = self.sizes[key]
        middle = sum(row.count(block) for row in (*size.arrangement, *size.alternates))
        found: Counter[Fraction] = Counter({size.block_side: middle} if middle else {})
        for layer in size.rounds:
            if layer.block_side is not None:
                found[layer.block_side] += sum(b.block == block for b in layer.blocks)
        return {side: count for side, count in found.items() if count}

    def on_foundations(self, key: str, block: str) -> bool:
        """Return whether every patch of a block is sewn on a foundation."""
        held = sum(len(f.patches) for f in self.drafts[key].foundations if f.block == block)
        return held == len(self.block(block).patches)

    def side(self, key: str, block: str) -> Fraction:
        """Return the finished side of a block; of one in several sizes, the first's."""
        return next(iter(self.sides(key, block)), self.sizes[key].block_side)

    def block(self, key: str) -> Block:
        return self.pattern.blocks[key]

    def pieced(self, block: str) -> bool:
        return len(self.block(block).patches) > 1

    @property
    def used_blocks(self) -> tuple[str, ...]:
        """Return the blocks that some size shows."""
        return tuple(dict.fromkeys(b for k in self.keys for b in self.blocks(k)))

    def carries(self, block: str) -> bool:
        """Return whether a motif is laid on a block, so that its patches are a ground."""
        return self.block(block).motif is not None

    def ground_kind(self, blocks: Iterable[str]) -> str:
        """Return what these blocks are cut and sewn as: `ground`, `blocks` or `both`."""
        kinds = {self.carries(b) for b in blocks}
        if len(kinds) == 2:
            return "both"
        return "ground" if kinds == {True} else "blocks"

    def block_called(self, block: str) -> Said:
        """Return `block`, or `sprig block` where the pattern has more than one kind."""
        if len(self.used_blocks) == 1:
            return said("name-block")
        return said("name-block-of", block=Named(_plain(block)))

    def block_name(self, block: str) -> str:
        """Return what a block is called in words."""
        return self.words.value(self.block_called(block))

    def sized_called(self, key: str, block: str, side: Length) -> Said:
        """Return a block's name, `small sprig block` where a size has it in several sides."""
        sides, name = sorted(self.sides(key, block)), self.block_called(block)
        if len(sides) < 2 or side not in sides:
            return name
        words = ("small", "large") if len(sides) == 2 else ("small", "medium", "large")
        at = sides.index(side)
        word = words[at] if len(sides) <= len(words) else "smallest"
        return said("name-sized", place=Word(word), number=Count(at + 1), name=name)

    def sized_name(self, key: str, block: str, side: Length) -> str:
        """Return what a block of some side is called in words."""
        return self.words.value(self.sized_called(key, block, side))

    @property
    def motifs(self) -> tuple[Motif, ...]:
        """Return the motifs that some size lays down, in the pattern's order."""
        used = {p.motif for k in self.keys for p in self.drafts[k].placements}
        return tuple(m for key, m in self.pattern.motifs.items() if key in used)

    def motif_of(self, block: str) -> Motif:
        """Return the motif of a block that carries one."""
        key = self.block(block).motif
        assert key is not None
        return self.pattern.motifs[key]

    def motif_called(self, motif: str) -> Said:
        """Return `motif`, or `bulrush motif` where the pattern has more than one."""
        if len(self.motifs) == 1:
            return said("name-motif")
        return said("name-motif-of", motif=Named(_plain(motif)))

    def with_motif(self, *motifs: str) -> tuple[str, ...]:
        """Return the sizes that lay down any of these motifs."""
        return tuple(k for k in self.keys if any(self.motif_count(k, m) for m in motifs))

    def motif_count(self, key: str, motif: str) -> int:
        return sum(p.motif == motif for p in self.drafts[key].placements)

    def shape(self, key: str, motif: str) -> MotifShape:
        return self.drafts[key].motifs[motif]

    def motif_blocks(self, key: str) -> tuple[str, ...]:
        """Return the blocks of a size that carry a motif."""
        return tuple(b for b in self.blocks(key) if self.block(b).motif is not None)

    def pieces(self, key: str, start: str, fabric: str | None = None) -> tuple[Piece, ...]:
        """Return the pieces of a size whose purpose starts with a word."""
        return tuple(
            p
            for p in self.plans[key].pieces
            if (p.purpose == start or p.purpose.startswith(f"{start} "))
            and fabric in (None, p.fabric)
        )

    def quilted(self, key: str) -> tuple[QuiltingSpec, ...]:
        """Return the quilting of a size that has lines, or is left to the maker."""
        drawn = {(q.area, q.style, q.spacing) for q in self.drafts[key].quilting}
        return tuple(q for q in self.sizes[key].quilting if (q.area, q.style, q.spacing) in drawn)

    # Values side by side

    def only(self, keys: Sequence[str], scope: Sequence[str] | None = None) -> tuple[str, ...]:
        """Return the sizes a step is for, or nothing when that is all in its scope."""
        everything = self.keys if scope is None else tuple(scope)
        return () if tuple(keys) == everything else tuple(keys)

    def only_for(self, sizes: Sequence[str]) -> str:
        """Return what a step begins with that is for some sizes only; nothing for no size."""
        return self.text("only-for", sizes=self.called(sizes)) if sizes else ""

    def each(self, keys: Sequence[str], value: Callable[[str], str]) -> str:
        """Return a value, or, where sizes differ, each value and the sizes it is for.

        `16 in for the **Mini** and 18 in for the **Pillow** and **Throw**`.
        """
        return self.words.by_size([(value(key), (self.title(key),)) for key in keys])


def _plain(key: str) -> str:
    return key.replace("_", " ").replace("-", " ")

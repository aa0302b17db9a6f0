"""What the words call units and their parts, as values.

In: the seam tree of a size, its plan, the blocks of the pattern. Out: `Said` names.
Invariant: a name stands for one kind of unit in its size. Units inside blocks keep the draft's
own names where these are few and differ, and are numbered otherwise.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from itertools import chain, groupby, starmap

from publish.model.draft import Patch, Unit
from publish.model.nouns import noun
from publish.model.tree import BLOCK, level, only_sections, runs, sections
from publish.sew.heaps import Heaps
from publish.sew.leaves import shape_of, word
from publish.surd import Length
from publish.words.values import Count, Letter, Named, Said, Several, Value, Word, said

_FEW = 3
"""So many units that have names of their own are called by them."""
_SIZES = {2: ("small", "large"), 3: ("small", "medium", "large")}


class Names(Heaps):
    """What each unit of a size is called."""

    def key(self, unit: Unit) -> str:
        """Return the heap that a unit lies on: of a numbered unit, what it is called."""
        name = self._called.get(unit.kind)
        if name is not None and name.message == "name-unit":
            return self.step(unit).replace("-", " ")
        return super().key(unit)

    def called(self, unit: Unit) -> Said:
        """Return what the text calls a unit: `unit 3`, `half ground`, `lock block`, `row 2`."""
        if self.is_block(unit):
            return self.block_name(unit)
        if unit.section:
            return said("name-sections", letters=Several((self.section(unit),)), count=Count(1))
        if unit.kind in self._called:
            return self._called[unit.kind]
        if unit.number:
            return said("name-row", series=Word(word(unit.series)), number=Count(unit.number))
        return said("name-part", part=Word(word(unit.name)))

    def marked(self, unit: Unit) -> bool:
        """Return whether a unit's name ends in a number or a letter and takes no article."""
        return self.called(unit).message in (
            "name-unit",
            "name-numbered",
            "name-row",
            "name-sections",
        )

    def the(self, unit: Unit) -> Said:
        """Return a unit's name with its article: `unit 3`, `the half ground`."""
        name = self.called(unit)
        return name if self.marked(unit) else said("the", name=name)

    @cached_property
    def _called(self) -> dict[str, Said]:
        """Return what each kind of inner unit is called."""
        paper = {g.unit.kind: g.unit for g in self.inner if only_sections(g.unit)}
        own = {g.unit.kind: g.unit.name for g in self.inner if g.unit.kind not in paper}
        plain = len(set(own.values())) == len(own) <= _FEW and not any(
            "column" in name or name == "unit" for name in own.values()
        )
        found = {
            kind: said("name-part", part=Word(word(name)))
            if plain
            else said("name-unit", number=Count(at))
            for at, (kind, name) in enumerate(own.items(), 1)
        }
        for kind, unit in paper.items():
            letters = tuple(self.section(u) for u in sections(unit))
            joined = said("joined", letters=Several(letters))
            found[kind] = joined
        return found

    def step(self, unit: Unit) -> str:
        """Return the step of a unit: the number that it is called by, or its kind."""
        name = self._called.get(unit.kind)
        if name is not None and name.message == "name-unit":
            (number,) = (v for _, v in name.values if isinstance(v, Count))
            return f"unit-{number.number}"
        return word(unit.kind)

    def section(self, unit: Unit) -> Named:
        found = self.bench.draft.foundations
        return Named(next((f.letter for f in found if f.key == unit.section), unit.section))

    def block_name(self, unit: Unit) -> Said:
        """Return `block` or `lock block`; a ground that waits for its motif is a ground."""
        return self._variants.get(unit.kind) or self._whole_name(unit)

    def _whole_name(self, unit: Unit) -> Said:
        block = unit.patches[0].block
        if block is None or (unit.name == "ground" and len(self.bench.counts) == 1):
            return said("name-part", part=Word(word(unit.name)))
        return self.sized_name(block, unit.width)

    @cached_property
    def _variants(self) -> dict[str, Said]:
        """Return `block 2` for each kind of a pieced block that is made in several ways, by
        what lies beyond its edges where they are the outside of the top."""
        found: dict[Said, list[str]] = {}
        for group in self.at(BLOCK):
            if self.is_block(group.unit):
                found.setdefault(self._whole_name(group.unit), []).append(group.unit.kind)
        return {
            kind: said("name-numbered", name=name, number=Count(number))
            for name, kinds in found.items()
            if len(kinds) > 1
            for number, kind in enumerate(kinds, 1)
        }

    def name_of_block(self, block: str) -> Said:
        """Return `block`, or `sprig block` where the pattern has more than one kind."""
        if len(self.bench.blocks) == 1:
            return said("name-block")
        return said("name-block-of", block=Named(" ".join(word(block).split("-"))))

    def sized_name(self, block: str, side: Length) -> Said:
        """Return a block's name, `small sprig block` where a size has it in several sides."""
        sides = sorted(self.bench.sides(block))
        name = self.name_of_block(block)
        if len(sides) < 2 or side not in sides:
            return name
        at = sides.index(side)
        words = _SIZES.get(len(sides), ())
        place = words[at] if at < len(words) else "smallest"
        return said("name-sized", place=Word(place), number=Count(at + 1), name=name)

    def trade(self, unit: Unit) -> str:
        """Return the trade's noun for a unit inside a block, where it has one."""
        return "" if self.is_block(unit) else noun(unit)

    # Parts

    def part(self, part: Unit, count: int, *, blocks: bool) -> Said:
        """Return `two Salt linen pieces **A**`, `a lock block`, `two of unit 3`.

        `blocks` says that the parts are whole blocks or larger, so that a block of a single
        patch is called a block and not a piece of cloth.
        """
        many = Count(count)
        if part.patch is not None and not (blocks and part.patch.role == "ground"):
            return self.leaf(part, count)
        if blocks and self._numbered(part):
            return said("some-marked", count=many, name=self._variants[part.kind])
        if blocks and self.is_block(part):
            name = self.name_of_block(part.patches[0].block or "")
            mark = self._mark(part.patches[0])
            if mark is not None:
                return said("some-lettered", count=many, name=name, letter=mark)
            return said("some", count=many, name=name)
        name = self.called(part)
        if name.message == "joined":
            return said("the", name=name)
        if self.marked(part):
            return said("some-marked", count=many, name=name)
        return said("some", count=many, name=name)

    def _mark(self, patch: Patch) -> Letter | None:
        """Return the letter of a patch that is a block by itself."""
        block = self.bench.pattern.blocks[patch.block or ""]
        if block.motif or len(block.patches) > 1:
            return None
        letter = self.bench.plan.sources.get(patch.key)
        return Letter(letter) if letter is not None else None

    def leaf(self, part: Unit, count: int) -> Said:
        """Return cut patches: `a Sedge side triangle **M**`."""
        assert part.patch is not None
        piece = self.piece(part)
        return said(
            "some-pieces",
            count=Count(count),
            fabric=Named(self.bench.pattern.fabrics[part.patch.fabric].name),
            shape=Word(shape_of(piece, part)),
            letter=Letter(piece.letter if piece is not None else ""),
        )

    def in_short(self, unit: Unit) -> Value:
        """Return the parts of a row in order: letters of pieces, names of made blocks, blocks
        that lie beside their like together (`J, five blocks and J`)."""
        runs = [(value, len(list(run))) for value, run in groupby(map(self._short, unit.parts))]
        return Several(tuple(chain.from_iterable(starmap(_run, runs))))

    def in_order(self, rows: Sequence[Unit]) -> tuple[Value, ...]:
        """Return rows one by one: letters of those that are one piece, names of the others."""
        return tuple(self.called(row) if row.parts else self._short(row) for row in rows)

    def _short(self, part: Unit) -> Value:
        piece = self.piece(part)
        if piece is not None and not (self.is_block(part) and self.carries(part)):
            return Letter(piece.letter)
        if self._numbered(part):
            return self._variants[part.kind]
        return self.name_of_block(part.patches[0].block or "")

    def _numbered(self, part: Unit) -> bool:
        """Return whether a part is a block that is made in several ways, each with a number."""
        return part.kind in self._variants and self.is_block(part) and not self.carries(part)

    def _some(self, part: Unit, count: int, unit: Unit) -> Said:
        """Return a part with its count; `two rows` for numbered ones that are sewn from parts."""
        if part.number and part.parts and level(unit) != BLOCK:
            series = said("name-part", part=Word(word(part.series)))
            return said("some", count=Count(count), name=series)
        return self.part(part, count, blocks=level(unit) != BLOCK)

    def _by_turns(self, unit: Unit) -> Said | None:
        """Return `three cornerstones **K** and two sashing strips **L** by turns`, where two
        kinds of part follow each other in turn."""
        first, second = unit.parts[::2], unit.parts[1::2]
        kinds = [{p.series or p.kind for p in parts} for parts in (first, second)]
        if len(second) < 2 or len(kinds[0]) > 1 or len(kinds[1]) > 1 or kinds[0] == kinds[1]:
            return None
        both = tuple(self._some(p[0], len(p), unit) for p in (first, second))
        ends = Word("both" if len(first) > len(second) else "first")
        return said("by-turns", parts=Several(both), ends=ends, first=self._some(first[0], 1, unit))

    def parts(self, unit: Unit) -> Value:
        """Return the parts of a unit in order: `a Linen piece **A** and a Moss piece **B**`.

        Numbered parts that come in order are taken together: `rows 1 to 3`.
        """
        series, count = unit.parts[0].series, len(unit.parts)
        in_order = [(p.series, p.number) for p in unit.parts] == [
            (series, n + 1) for n in range(count)
        ]
        if series and count > 2 and in_order:
            return said("rows-to", series=Word(word(series)), count=Count(count))
        if count == 2 and all(p.number for p in unit.parts):
            return Several(tuple(map(self.called, unit.parts)))
        turns = self._by_turns(unit)
        if turns is not None:
            return turns
        blocks = level(unit) != BLOCK
        return Several(tuple(self.part(p, n, blocks=blocks) for p, n in runs(unit)))


def _run(value: Value, count: int) -> tuple[Value, ...]:
    """Return like parts beside each other: pieces letter by letter, blocks by their count."""
    if count == 1 or isinstance(value, Letter):
        return (value,) * count
    return (said("some", count=Count(count), name=value),)

"""Blocks joined from sections on paper, and from what is pieced without.

In: the seam tree of a size. Out: operations.
Invariant: what is joined is the draft's; a join is told in full once in a block, and in short
from then on.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from fractions import Fraction

from publish.model.draft import Unit
from publish.model.tree import BLOCK, Group, holds_sections, only_sections, sections
from publish.operations.foundation import LengthenStitch
from publish.operations.foundation_sections import (
    LeavePaper,
    Of,
    PinSections,
    PressSections,
    SewSections,
    TearAllowances,
)
from publish.operations.joining import Taken
from publish.operations.operation import Where
from publish.sew.bench import Bench
from publish.sew.leaves import word
from publish.sew.names import Names
from publish.sew.pressing import press_value
from publish.units import INCH_IN_MM
from publish.words.values import Named, Said, Several, Value, said

CHAPTER = "foundation"
SEAM_STITCH = Fraction(5, 2) / INCH_IN_MM
"""Length of one machine stitch in a seam (2.5 mm): melgeecrafts.com, stitch length table."""
NOTHING = said("nothing")


def _where(step: str) -> Where:
    return {"chapter": CHAPTER, "step": step}


def join(bench: Bench, names: Names) -> None:
    """Join sections into blocks, set the stitch back first, and leave the rest of the paper."""
    groups = [g for g in names.at(BLOCK) if g.unit.parts and holds_sections(g.unit)]
    stitch = LengthenStitch(**_where("stitch"), stitch=SEAM_STITCH, sections=bool(groups))
    bench.add(stitch)
    told: set[str] = set()
    for block in dict.fromkeys(f.block for f in bench.draft.foundations):
        for group in groups:
            if block == group.blocks[0]:
                _Joined(bench, names, group, block, again=block in told).plan()
                told.add(block)
    blocks = Counter(
        names.made(u)
        for u in bench.draft.assembly.outermost_first()
        if names.is_block(u) and holds_sections(u)
    )
    papers = sum(f.count for f in bench.draft.foundations)
    bench.add(LeavePaper(**_where("paper"), blocks=tuple(blocks.items()), papers=papers))


@dataclass
class _Joined:
    """One kind of unit that is joined from sections, and what its operations share."""

    bench: Bench
    names: Names
    group: Group
    block: str
    again: bool
    unit: Unit = field(init=False)

    def __post_init__(self) -> None:
        self.unit = self.group.unit

    def plan(self) -> None:
        unit, names = self.unit, self.names
        where = _where(word(unit.kind))
        of: Of = {
            "block": self.block,
            "unit": names.made(unit),
            "count": len(self.group.units),
            "several": len(unit.parts) > 2,
        }
        one = unit.height if unit.join == "across" else unit.width
        done = names.is_block(unit)
        self.bench.add(
            self._pin(where, of),
            SewSections(
                **where,
                **of,
                length=one * (len(unit.parts) - 1),
                again=self.again,
                whole=names.the(unit) if done else NOTHING,
                block_done=done,
            ),
            TearAllowances(**where, **of),
            self._press(where, of),
        )

    def _pin(self, where: Where, of: Of) -> PinSections:
        unit, names = self.unit, self.names
        assert unit.sewn is not None
        return PinSections(
            **where,
            **of,
            parts=tuple(Taken(names.key(p), names.quarters(p)) for p in unit.parts),
            join=unit.join or "",
            seam=self.bench.seam,
            drafted=unit.sewn.exact,
            told=unit.sewn.told,
            quarters=names.lies(unit),
            again=self.again,
            opener=self._opener(),
            those=self._parts(),
        )

    def _press(self, where: Where, of: Of) -> PressSections:
        unit, names = self.unit, self.names
        assert unit.sewn is not None
        wide, high = unit.sewn.exact
        return PressSections(
            **where,
            **of,
            seams=len(unit.parts) - 1 if unit.join != "set in" else 2,
            way=press_value(names, self.group),
            the=self._called(unit) or names.the(unit),
            drafted=(high, wide) if names.lies(unit) % 2 else (wide, high),
            eased=len(unit.patches),
            box=unit.is_box,
        )

    def _opener(self) -> Said:
        """Return the first word of a step: `For the heron block, join`."""
        several = len({f.block for f in self.bench.draft.foundations}) > 1
        if several:
            return said("join-for", block=self.names.name_of_block(self.block))
        return said("join-plainly")

    def _parts(self) -> Value:
        """Return what is joined: `sections A and B`; `AB, C and D`; `section A and a piece`."""
        parts = self.unit.parts
        letters = tuple(self._called(p) for p in parts)
        if all(p.section for p in parts):
            named = Several(tuple(one for one in letters if one is not None))
            return said("sections-named", letters=named)
        alone = not all(map(only_sections, parts))
        return Several(
            tuple(self._part(p, one, alone) for p, one in zip(parts, letters, strict=True))
        )

    def _part(self, part: Unit, letters: Named | None, alone: bool) -> Value:
        if part.section and alone:
            return self.names.called(part)
        return letters if letters is not None else self.names.part(part, 1, blocks=False)

    def _called(self, unit: Unit) -> Named | None:
        """Return the letters of the sections that a unit is joined from, as its figure has
        them; None for a whole block, and for what holds anything else."""
        if self.names.is_block(unit) or not only_sections(unit):
            return None
        return Named("".join(self.names.section(u).name for u in sections(unit)))

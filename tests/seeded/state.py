"""What a fault is put into: a pattern as the stages made it, and how one thing in it is changed.

In: a prepared pattern. Out: `State`, and changed copies of it.
Invariant: a change that changes nothing fails, so that no fault can be an empty one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from publish import proof
from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Draft, Unit
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Box, Bullets, Manual, Paragraph, Section, Step, Steps, Table
from publish.notes import Note
from publish.operations.rehearsal import Making


@dataclass(frozen=True)
class State:
    """What the checks before typesetting are given."""

    pattern: Pattern
    sizes: Mapping[str, Size]
    drafts: Mapping[str, Draft]
    plans: Mapping[str, CutPlan]
    manual: Manual
    making: Making

    def notes(self) -> tuple[Note, ...]:
        return proof.check(
            self.pattern, self.sizes, self.drafts, self.plans, self.manual, self.making
        )

    def size(self, key: str, **changes: Any) -> State:
        return replace(self, sizes={**self.sizes, key: replace(self.sizes[key], **changes)})

    def draft(self, key: str, **changes: Any) -> State:
        return replace(self, drafts={**self.drafts, key: replace(self.drafts[key], **changes)})

    def plan(self, key: str, **changes: Any) -> State:
        return replace(self, plans={**self.plans, key: replace(self.plans[key], **changes)})

    def part(self, key: str, name: str, **changes: Any) -> State:
        """Change a part of a plan, such as its `backing`."""
        return self.plan(key, **{name: replace(getattr(self.plans[key], name), **changes)})

    def fabric(self, key: str, fabric: str, **changes: Any) -> State:
        fabrics = dict(self.plans[key].fabrics)
        fabrics[fabric] = replace(fabrics[fabric], **changes)
        return self.plan(key, fabrics=fabrics)

    def piece(self, key: str, named: str, everywhere: bool = True, **changes: Any) -> State:
        """Change a piece: in the size's list, and, `everywhere`, in its fabric's plan too."""
        plan = self.plans[key]
        found = next(p for p in plan.pieces if p.letter == named)
        new = replace(found, **changes)

        def swapped(pieces: tuple[Piece, ...]) -> tuple[Piece, ...]:
            return tuple(new if p == found else p for p in pieces)

        fabrics = {k: replace(f, pieces=swapped(f.pieces)) for k, f in plan.fabrics.items()}
        return self.plan(
            key, pieces=swapped(plan.pieces), fabrics=fabrics if everywhere else plan.fabrics
        )

    def cut(self, key: str, letter: str, **changes: Any) -> State:
        """Change every cut of a piece in the strips of its fabric."""
        fabrics = {}
        for name, fabric in self.plans[key].fabrics.items():
            strips = tuple(
                replace(
                    s,
                    cuts=tuple(replace(c, **changes) if c.letter == letter else c for c in s.cuts),
                )
                for s in fabric.strips
            )
            fabrics[name] = replace(fabric, strips=strips)
        return self.plan(key, fabrics=fabrics)

    def words(
        self, old: str, new: str, section: str = "", step: str = "", times: int = -1
    ) -> State:
        """Change words of the manual, in one section or step or in all."""
        manual = reworded(self.manual, lambda t: t.replace(old, new, times), section, step)
        assert manual != self.manual, f"{old!r} stands nowhere"
        return replace(self, manual=manual)

    def step(self, key: str, **changes: Any) -> State:
        own = bool(changes.keys() & {"text", "right", "tip", "caution"})
        return self.steps(
            lambda s: (replace(s, own=s.own or own, **changes),) if s.key == key else (s,)
        )

    def steps(self, change: Callable[[Step], tuple[Step, ...]]) -> State:
        def made(section: Section) -> Section:
            blocks = tuple(
                replace(b, items=tuple(n for s in b.items for n in change(s)))
                if isinstance(b, Steps)
                else b
                for b in section.blocks
            )
            return replace(section, blocks=blocks)

        return self.sections(lambda s: (made(s),))

    def sections(self, change: Callable[[Section], tuple[Section, ...]]) -> State:
        sections = tuple(n for s in self.manual.sections for n in change(s))
        assert sections != self.manual.sections, "nothing was changed"
        return replace(self, manual=replace(self.manual, sections=sections))

    def blocks(self, section: str, change: Callable[[Any], tuple[Any, ...]]) -> State:
        """Change the blocks of a section."""
        return self.sections(
            lambda s: (
                (replace(s, blocks=tuple(n for b in s.blocks for n in change(b))),)
                if s.key == section
                else (s,)
            )
        )

    def rows(self, table: str, without: str) -> State:
        """Take out the rows of a table that have a cell with these words."""
        return self.sections(
            lambda s: (
                replace(
                    s,
                    blocks=tuple(
                        replace(
                            b,
                            rows=tuple(r for r in b.rows if not any(without in c for c in r.cells)),
                        )
                        if isinstance(b, Table) and b.key == table
                        else b
                        for b in s.blocks
                    ),
                ),
            )
        )

    def cover(self, **changes: Any) -> State:
        return replace(
            self, manual=replace(self.manual, cover=replace(self.manual.cover, **changes))
        )

    def back(self, **changes: Any) -> State:
        return replace(self, manual=replace(self.manual, back=replace(self.manual.back, **changes)))


def _said(step: Step, said: Callable[[str], str]) -> Step:
    """Return a step with its words changed: they are then the designer's own."""
    new = replace(step, text=said(step.text), right=said(step.right), tip=said(step.tip))
    return step if new == step else replace(new, own=True)


def reworded(
    manual: Manual, said: Callable[[str], str], section: str = "", step: str = ""
) -> Manual:
    """Return a manual with its words changed, in one section or step or in all."""

    def block(b: Any) -> Any:
        if isinstance(b, Steps):
            return replace(
                b, items=tuple(_said(s, said) if step in ("", s.key) else s for s in b.items)
            )
        if step:
            return b
        if isinstance(b, Table):
            rows = tuple(replace(r, cells=tuple(map(said, r.cells))) for r in b.rows)
            return replace(b, rows=rows, notes=tuple(map(said, b.notes)))
        if isinstance(b, Paragraph):
            return replace(b, text=said(b.text))
        if isinstance(b, Box | Bullets):
            return replace(b, items=tuple(map(said, b.items)))
        return b

    return replace(
        manual,
        sections=tuple(
            replace(
                s, blocks=tuple(map(block, s.blocks)), lead=said(s.lead) if not step else s.lead
            )
            if section in ("", s.key)
            else s
            for s in manual.sections
        ),
    )


def tree(unit: Unit, change: Callable[[Unit], Unit | None]) -> Unit:
    """Return a seam tree with its units changed, the innermost first; None takes one out."""
    parts = tuple(n for p in unit.parts if (n := _inside(p, change)) is not None)
    return replace(unit, parts=parts)


def _inside(unit: Unit, change: Callable[[Unit], Unit | None]) -> Unit | None:
    return change(tree(unit, change))

"""Booklets of patchwork patterns, made by the stages themselves and read once.

In: a pattern of the demo studio, or one written here. Out: `Patchwork`: what the writing
stage got and the manual it made.
"""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import demos
from rehearsed import write

from publish import cut, draft, grade, read
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Unit
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual, Section, Step, Steps
from publish.notes import Note
from publish.write.collect import section_strings

SAMPLER = """
title: Sluice sampler
fabrics:
  mist: {name: Morning mist, colour: "#ece5d6"}
  water: {name: Still water, colour: "#2f4a5c"}
  brick: {name: Lock brick, colour: "#a4553f"}
piecing: {triangles: two at once, hourglasses: two at once, corners: flipped}
blocks:
  sail: {traditional: half-square triangle, fabrics: {dark: water, light: mist}}
  glass: {traditional: hourglass, fabrics: {dark: water, light: mist}}
  window: {traditional: attic windows, fabrics: {window: mist, sill: water, side: brick}}
  snow: {traditional: snowball, fabrics: {corners: water, ball: mist}}
  star: {traditional: ohio star, fabrics: {star: water, background: mist, centre: brick}}
backing: {fabric: mist}
binding: {fabric: brick, width: 2 1/4 in}
sizes:
  lap:
    title: Lap quilt
    block: [sail, glass, window, snow, star, sail]
    columns: 3
    rows: 2
    block_size: 9 in
    borders:
      - {width: 2 in, fabric: brick, corners: mitred}
"""
RING = """
title: Mill ring
fabrics:
  mist: {name: Morning mist, colour: "#ece5d6"}
  water: {name: Still water, colour: "#2f4a5c"}
  brick: {name: Lock brick, colour: "#a4553f"}
blocks:
  plain: {ground: mist}
  four: {traditional: four patch, fabrics: {dark: water, light: brick}}
backing: {fabric: mist}
binding: {fabric: brick, width: 2 1/4 in}
sizes:
  wall:
    title: Wall hanging
    block: plain
    block_size: 12 in
    rounds:
      - {border: {width: 2 in, fabric: brick}}
      - {blocks: [four, plain], block_size: 4 in}
      - {border: {width: 1 in, fabric: water}}
"""


@dataclass(frozen=True)
class Patchwork:
    """One pattern's stages, and its booklet."""

    pattern: Pattern
    sizes: dict[str, Size]
    drafts: dict[str, Draft]
    plans: dict[str, CutPlan]
    manual: Manual
    notes: tuple[Note, ...]

    def section(self, key: str) -> Section:
        return {s.key: s for s in self.manual.sections}[key]

    def steps(self, start: str = "") -> list[Step]:
        """Return the steps of every section whose key starts with a word."""
        return [
            step
            for s in self.manual.sections
            if s.key.startswith(start)
            for b in s.blocks
            if isinstance(b, Steps)
            for step in b.items
        ]

    def text(self, start: str = "") -> str:
        """Return every string of the sections whose key starts with a word."""
        found = [s for s in self.manual.sections if s.key.startswith(start)]
        return "\n".join(t for s in found for t in section_strings(s) if t)

    def units(self, size: str) -> Iterator[Unit]:
        """Yield every unit of a size's seam tree, parts before wholes."""
        yield from _units(self.drafts[size].assembly)


def _units(unit: Unit) -> Iterator[Unit]:
    for part in unit.parts:
        yield from _units(part)
    yield unit


@cache
def demo(name: str, *sizes: str) -> Patchwork:
    """Return a demo pattern's booklet, for some of its sizes only where they are named."""
    work = demos.demo(name)
    keys = sizes or tuple(work.sizes)
    parts = [{k: of[k] for k in keys} for of in (work.sizes, work.drafts, work.plans)]
    manual, notes = write(work.pattern, *parts)
    return Patchwork(work.pattern, *parts, manual, notes)


@cache
def sampler(text: str = SAMPLER) -> Patchwork:
    """Return the booklet of a pattern written as text."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pattern.yaml"
        path.write_text(text, encoding="utf-8")
        return _made(path)


_UNUSED = ("R144",)
"""Something is declared and never used: small patterns share their fabrics and blocks."""


def _made(path: Path) -> Patchwork:
    pattern, notes, _ = read.load(path)
    found = [n for n in notes if n.code not in _UNUSED]
    assert pattern is not None and not found, found
    sizes, drafts = {}, {}
    for key in pattern.sizes:
        size, notes = grade.grade(pattern, key)
        assert size is not None, notes
        drafted, notes = draft.draft(pattern, size)
        assert drafted is not None, notes
        sizes[key], drafts[key] = size, drafted
    plans, _ = cut.cut(pattern, sizes, drafts)
    drafts = cut.construct(pattern, sizes, drafts, plans)
    manual, notes = write(pattern, sizes, drafts, plans)
    return Patchwork(pattern, sizes, drafts, dict(plans), manual, notes)


SLANT = """
title: Slant sampler
fabrics:
  mist: {name: Morning mist, colour: "#ece5d6"}
  water: {name: Still water, colour: "#2f4a5c"}
  brick: {name: Lock brick, colour: "#a4553f"}
blocks:
  arrow:
    grid: [4, 4]
    patches:
      - {fabric: water, points: [[0, 0], [2, 0], [4, 2], [2, 2]]}
      - {fabric: mist, triangle: [[2, 0], [4, 0], [4, 2]]}
      - {fabric: mist, triangle: [[0, 0], [2, 2], [0, 2]]}
      - {fabric: brick, points: [[2, 2], [4, 2], [2, 4], [0, 4]]}
      - {fabric: mist, triangle: [[0, 2], [2, 2], [0, 4]]}
      - {fabric: mist, triangle: [[4, 2], [4, 4], [2, 4]]}
backing: {fabric: mist}
binding: {fabric: brick, width: 2 1/4 in}
sizes:
  lap:
    title: Lap quilt
    block: arrow
    columns: 3
    rows: 2
    block_size: 8 in
    sashing: {width: 1 in, fabric: brick}
steps:
  - {step: piecing-unit-1, text: "Sew the blue arrows, {{ lap.blocks }} in all."}
  - {after: assembling-row, text: "Have a cup of tea."}
"""

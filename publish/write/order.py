"""Where steps stand in sections: finding one, putting others in its place, numbering.

In: sections. Out: sections, changed only where asked.
Invariant: blocks other than steps stay where they are.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from publish.model.words import Block, Paragraph, Section, Step, Steps

Sections = tuple[Section, ...]


@dataclass(frozen=True)
class Spot:
    """A step and where it stands: its section, block and place, each counted from 0."""

    step: Step
    section: int
    block: int
    place: int


def steps_of(section: Section) -> Iterator[Step]:
    """Yield the steps of a section in order."""
    for block in section.blocks:
        if isinstance(block, Steps):
            yield from block.items


def find(sections: Sequence[Section], key: str) -> Spot | None:
    """Return where the step of a key stands, or None."""
    for at, section in enumerate(sections):
        for number, block in enumerate(section.blocks):
            for place, step in enumerate(block.items if isinstance(block, Steps) else ()):
                if step.key == key:
                    return Spot(step, at, number, place)
    return None


def put(sections: Sections, spot: Spot, steps: Sequence[Step]) -> Sections:
    """Return the sections with `steps` in the place of the one at a spot."""
    section = sections[spot.section]
    block = section.blocks[spot.block]
    assert isinstance(block, Steps)
    items = (*block.items[: spot.place], *steps, *block.items[spot.place + 1 :])
    blocks = (*section.blocks[: spot.block], Steps(items), *section.blocks[spot.block + 1 :])
    changed = replace(section, blocks=blocks)
    return (*sections[: spot.section], changed, *sections[spot.section + 1 :])


def without_empty(sections: Sections, before: Sequence[Section]) -> Sections:
    """Return the sections without empty blocks of steps, and without those that have lost
    all of their steps and hold nothing else than paragraphs."""
    cleared = tuple(replace(s, blocks=tuple(b for b in s.blocks if not _bare(b))) for s in sections)
    had = {s.key for s in before if any(steps_of(s))}
    kept = [s for s in cleared if s.key not in had or any(steps_of(s)) or not _thin(s)]
    parents = {s.parent for s in kept}
    had_children = {s.parent for s in before}
    return tuple(
        s
        for s in kept
        if s.key in parents or s.key not in had_children or not _thin(s) or any(steps_of(s))
    )


def _bare(block: Block) -> bool:
    return isinstance(block, Steps) and not block.items


def _thin(section: Section) -> bool:
    return all(isinstance(b, Paragraph) for b in section.blocks)


def numbered(sections: Sections) -> Sections:
    """Return the sections with the steps of each numbered from 1."""
    found = []
    for section in sections:
        number = 0
        blocks: list[Block] = []
        for block in section.blocks:
            if isinstance(block, Steps):
                items = tuple(replace(s, number=number + n) for n, s in enumerate(block.items, 1))
                number += len(items)
                blocks.append(Steps(items))
            else:
                blocks.append(block)
        found.append(replace(section, blocks=tuple(blocks)))
    return tuple(found)

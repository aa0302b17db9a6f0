"""What a booklet's pages are composed of: its sections as one run of items.

In: a manual, the photographs of its opening section. Out: `Item`s in reading order.
Invariant: every block of every section is in exactly one item, a table or list in a run of
them; an item knows what it must stay with, not where it stands.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from publish.model.words import (
    Block,
    Box,
    Bullets,
    FigureBlock,
    FigureGrid,
    Manual,
    Paragraph,
    Section,
    Steps,
    Table,
    TemplateSheets,
)


@dataclass(frozen=True)
class Item:
    """One thing that stands whole on a page. `kind` is what a layout has a place for:
    `contents`, `title`, `part`, `small`, `words`, `points`, `box`, `step`, `told`, `table`,
    `figure`, `grid`, `where`, `photo`.
    """

    number: int
    kind: str
    section: Section | None
    block: Any = None
    """What it shows: a block, a step, a photograph; of `told` a paragraph."""
    figure: Any = None
    """The figure block beside a paragraph that is `told` with it."""
    heads: bool = False
    """Whether what follows must stand right below it."""
    follows: bool = False
    """Whether it must stand right below what is before it."""
    fresh: bool = False
    """Whether it begins a page in any case."""
    brief: bool = False
    """Whether a page should not end before it: its section is short."""

    @property
    def gap(self) -> str:
        """Return the kind of distance that it keeps from what is before it."""
        return _GAPS.get(self.kind, self.kind)


_GAPS = {
    "contents": "title",
    "points": "words",
    "where": "words",
    "told": "step",
    "grid": "figure",
    "photo": "figure",
}


@dataclass(frozen=True)
class Sheets:
    """Template sheets, each a page of its own, at their place in the run of items."""

    blocks: tuple[TemplateSheets, ...]


def flow(manual: Manual, photos: Sequence[Any], contents: bool) -> list[Item | Sheets]:
    """Return a manual's items; sheets stand after the words of their whole group."""
    found: list[Item | Sheets] = []
    waiting: list[TemplateSheets] = []
    if contents:
        found.append(Item(0, "contents", None, manual, fresh=True))
    for at, section in enumerate(manual.sections):
        if not section.parent and waiting:
            found.append(Sheets(tuple(waiting)))
            waiting = []
        found += list(_section(section, len(found)))
        waiting += [b for b in section.blocks if isinstance(b, TemplateSheets)]
        if at == 0 and contents:
            found += [Item(len(found) + n, "photo", section, p) for n, p in enumerate(photos)]
    if waiting:
        found.append(Sheets(tuple(waiting)))
    return found


def _section(section: Section, first: int) -> Iterator[Item]:
    """Yield a section's heading and blocks; `first` is the number of its heading."""
    kind = "part" if section.parent else "title"
    number = first
    yield Item(number, kind, section, section, heads=True, fresh=section.new_page)
    brief = all(isinstance(b, Paragraph) for b in section.blocks) or _kept(section.blocks)
    opening = True
    for block, *more in _told(section.blocks):
        for made in _items(block, more, section):
            number += 1
            heads = made.heads or (opening and made.kind == "words")
            short = brief and not opening
            yield Item(
                number,
                made.kind,
                section,
                made.block,
                made.figure,
                heads,
                made.follows,
                brief=short,
            )
            opening = False


def _kept(blocks: Sequence[Block]) -> bool:
    """Return whether blocks are one step and a list: its last words would stand alone."""
    return (
        [type(b) for b in blocks] == [Steps, Bullets]
        and isinstance(blocks[0], Steps)
        and len(blocks[0].items) == 1
    )


def _told(blocks: Sequence[Block]) -> Iterator[tuple[Block, ...]]:
    """Yield blocks, a small figure together with the paragraph before it."""
    pairs = [*pairwise(blocks), (blocks[-1], None)] if blocks else []
    skip = False
    for block, after in pairs:
        if skip:
            skip = False
        elif isinstance(block, Paragraph) and _small(after):
            skip = True
            yield block, after  # type: ignore[misc]
        else:
            yield (block,)


def _small(block: Block | None) -> bool:
    return isinstance(block, FigureBlock) and block.width == "half"


def _items(block: Block, more: Sequence[Block], section: Section) -> Iterator[Item]:
    """Yield what one block is set as, numbered later."""
    if isinstance(block, Paragraph) and more:
        yield Item(0, "told", section, block, more[0])
    elif isinstance(block, Paragraph):
        text = block.text.strip()
        bold = text.startswith("**") and text.endswith("**") and text.count("**") == 2
        yield Item(0, "small" if bold else "words", section, block, heads=bold)
    elif isinstance(block, Steps):
        yield from (Item(0, "step", section, step) for step in block.items)
    elif isinstance(block, TemplateSheets):
        yield Item(0, "where", section, block, follows=True)
    else:
        yield Item(0, _KINDS[type(block)], section, block)


_KINDS: dict[type, str] = {
    Bullets: "points",
    Box: "box",
    Table: "table",
    FigureBlock: "figure",
    FigureGrid: "grid",
}

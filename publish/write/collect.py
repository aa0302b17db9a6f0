"""Every string of a block, for the parts of the booklet that depend on the rest.

In: blocks and sections. Out: their text.
Invariant: nothing that a reader sees is left out; captions count as text.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from publish.model.words import (
    Block,
    Box,
    Bullets,
    FigureBlock,
    FigureGrid,
    Paragraph,
    Section,
    Steps,
    Table,
)


def strings(block: Block) -> Iterator[str]:
    """Yield every string of a block that is printed."""
    if isinstance(block, Paragraph):
        yield block.text
    elif isinstance(block, Bullets):
        yield from block.items
    elif isinstance(block, Box):
        yield block.title
        yield from block.items
    elif isinstance(block, Steps):
        for step in block.items:
            yield from (step.text, step.right, step.tip, step.caution)
            if step.figure is not None:
                yield step.figure.caption
    elif isinstance(block, Table):
        yield block.title
        yield from block.head
        for row in block.rows:
            yield from row.cells
        yield from block.notes
    elif isinstance(block, FigureBlock):
        yield block.figure.caption
    elif isinstance(block, FigureGrid):
        yield from (f.caption for f in block.figures)


def section_strings(section: Section) -> Iterator[str]:
    """Yield every string of a section that is printed."""
    yield section.title
    yield section.lead
    for block in section.blocks:
        yield from strings(block)


def text(sections: Iterable[Section]) -> str:
    """Return the text of sections, a line for each string."""
    return "\n".join(s for section in sections for s in section_strings(section) if s)

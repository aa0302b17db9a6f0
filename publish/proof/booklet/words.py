"""The words of a manual, each with where they stand and the sizes they are about.

In: a manual. Out: `Passage`s in reading order.
Invariant: every word that the typesetter will set is in one passage, figure captions
included, words drawn inside figures not. The words of steps made from operations are there
when the whole is asked for, to be looked for in print; nothing else reads them again.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from publish.model.words import (
    Block,
    Box,
    Bullets,
    FigureBlock,
    FigureGrid,
    FigureSpec,
    Manual,
    Paragraph,
    Section,
    Step,
    Steps,
    Table,
)


@dataclass(frozen=True)
class Passage:
    """Some words. `sizes` are the sizes they speak of; empty when they may be all."""

    text: str
    section: str
    where: str
    """For a finding: `step 3 of Folding`."""
    sizes: tuple[str, ...] = ()
    kind: str = "text"
    """`text`, `step`, `cell` or `caption`."""
    number: str = ""
    """Of the step that says it."""
    step: str = ""
    """Its key."""
    instead: bool = False
    """Whether it stands for operations, which `prose` holds it against."""


def passages(
    manual: Manual, titles: Mapping[str, str] | None = None, *, whole: bool = False
) -> Iterator[Passage]:
    """Yield the passages that somebody wrote; `whole` brings those made from operations too,
    which are read only to see whether they are printed.

    `titles` are size keys by title: with them, a cell in a size's own column, or under a
    size's own heading in a table, speaks of that size alone.
    """
    titles = titles or {}
    for section in manual.sections:
        yield Passage(section.title, section.key, f"the heading {section.title}", section.sizes)
        if section.lead:
            yield Passage(section.lead, section.key, f"the lead of {section.title}", section.sizes)
        for block in section.blocks:
            yield from _block(section, block, titles, whole)
    back = manual.back
    for text in (back.blurb, *back.materials, *(f"{t}: {size}" for t, size in back.sizes)):
        yield Passage(text, "back", "the back cover")
    for title, size in manual.cover.sizes:
        yield Passage(f"{title}: {size}", "cover", "the cover")


def _block(
    section: Section, block: Block, titles: Mapping[str, str], whole: bool
) -> Iterator[Passage]:
    if isinstance(block, Steps):
        for step in block.items:
            if whole or not step.generated:
                yield from _step(section, step)
    elif isinstance(block, Table):
        yield from _table(section, block, titles)
    elif isinstance(block, FigureBlock):
        yield from _caption(section, block.figure)
    elif isinstance(block, FigureGrid):
        for figure in block.figures:
            yield from _caption(section, figure)
    else:
        for text in _plain(block):
            yield Passage(text, section.key, section.title, section.sizes)


def _plain(block: Block) -> tuple[str, ...]:
    if isinstance(block, Paragraph):
        return (block.text,)
    if isinstance(block, Bullets):
        return block.items
    if isinstance(block, Box):
        return (block.title, *block.items)
    return ()


def _step(section: Section, step: Step) -> Iterator[Passage]:
    where = f"step {step.number} of {section.title}"
    sizes = step.sizes or section.sizes
    for text in (step.text, step.right, step.tip, step.caution):
        if text:
            yield Passage(
                text,
                section.key,
                where,
                sizes,
                "step",
                str(step.number),
                step.key,
                bool(step.covers),
            )
    if step.figure is not None:
        yield from _caption(section, step.figure)


def _table(section: Section, table: Table, titles: Mapping[str, str]) -> Iterator[Passage]:
    where = f"the table {table.title or table.key} of {section.title}"
    for text in (table.title, *table.head, *table.notes):
        yield Passage(text, section.key, where, section.sizes)
    group: tuple[str, ...] = ()
    for row in table.rows:
        if row.kind == "group":
            group = (titles[row.cells[0]],) if row.cells[0] in titles else ()
        for number, cell in enumerate(row.cells):
            head = table.head[number] if number < len(table.head) else ""
            own = (titles[head],) if head in titles else group
            yield Passage(cell, section.key, where, own or section.sizes, "cell")


def _caption(section: Section, figure: FigureSpec) -> Iterator[Passage]:
    if figure.caption:
        sizes = (figure.size,) if figure.size else section.sizes
        yield Passage(
            figure.caption, section.key, f"a caption of {section.title}", sizes, "caption"
        )

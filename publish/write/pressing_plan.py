"""The pressing plan: where the seams of every unit and row go, in one table for each size.

In: seam trees. Out: the section, or nothing where few seams are sewn before the rows.
Invariant: the ways are those that the steps name, in the order in which units are made.
"""

from __future__ import annotations

from publish.model.tree import BLOCK, BORDER, TOP, Group
from publish.model.words import Block, FigureGrid, Row, Section, Table
from publish.words.en.phrase import capital, listed
from publish.write.bench import Bench
from publish.write.context import Book
from publish.write.pressing import ways_text
from publish.write.steps import figure
from publish.write.tree import together

_FEW = 4
"""So many groups of seams are told well enough by their own steps."""
_HEAD = ("", "How many", "Press the seams")
_PICTURES = 4


def sections(book: Book) -> tuple[Section, ...]:
    """Return the section; none where every size has only few seams."""
    benches = [b for k in book.keys if len(_groups(b := Bench(book, k))) > _FEW]
    if not benches:
        return ()
    lead = "Which way to press each seam, so that seams lock where they meet."
    blocks: list[Block] = []
    for bench in benches:
        blocks.append(_table(bench))
        shown = _pictures(bench)
        if shown.figures:
            blocks.append(shown)
    only = book.only([b.key for b in benches])
    return (Section("pressing-plan", "Pressing plan", tuple(blocks), lead, sizes=only),)


def _groups(bench: Bench) -> list[Group]:
    """Return what has seams of its own that are pressed one way or the other."""
    strips = [g for g in bench.at(BORDER) if g.unit.name.startswith("round ")]
    found = [
        *bench.inner,
        *(g for g in bench.at(BLOCK) if bench.is_block(g.unit)),
        *bench.at(TOP),
        *strips,
    ]
    return [g for g in found if g.unit.press]


def _table(bench: Bench) -> Table:
    rows = [Row(_row(bench, group)) for group in _groups(bench)]
    loose = [_name(bench, g) for g in _groups(bench) if not all(u.nests for u in g.units)]
    notes = (
        (f"Some seams of {listed(loose)} meet others that are pressed the same way: pin them.",)
        if loose
        else ()
    )
    return Table(
        f"pressing-{bench.key}",
        f"Pressing the {bench.book.title(bench.key)}",
        _HEAD,
        tuple(rows),
        "lrl",
        notes,
    )


def _row(bench: Bench, group: Group) -> tuple[str, str, str]:
    return capital(_name(bench, group)), str(len(group.units)), ways_text(bench, group)


def _name(bench: Bench, group: Group) -> str:
    """Return what a group is called: `unit 3, a four-patch`, `rows 1 and 3`."""
    unit = group.unit
    if unit.number and len(group.names) > 1:
        return together(group)
    kind = bench.trade(unit)
    return f"{bench.called(unit)}, {kind}" if kind else bench.called(unit)


def _pictures(bench: Bench) -> FigureGrid:
    """Return the wrong sides of the blocks that are sewn from units."""
    blocks = [g.unit for g in bench.at(BLOCK) if bench.is_block(g.unit) and g.unit.parts]
    shown = [u for u in blocks if all(p.section == "" for p in u.parts)][:_PICTURES]
    specs = tuple(
        figure(
            "press",
            bench.key,
            f"{bench.book.title(bench.key)}, {bench.called(u)}: the wrong side.",
            unit=u.kind,
        )
        for u in shown
    )
    return FigureGrid(specs, 2)

"""Cloth sold ready cut: what to buy, what else would do, how its sheets are cut.

In: fabric plans. Out: cells, a table.
Invariant: every count is the plan's; a cell that says no names the piece that does not
fit.
"""

from __future__ import annotations

from publish.model.cloth import SoldAs
from publish.model.cutplan import Alternative, FabricPlan, PrecutPlan
from publish.model.words import Row, Table
from publish.words.values import (
    Count,
    Length,
    Named,
    Purchase,
    Rectangle,
    Said,
    Several,
    Value,
    Word,
    said,
)
from publish.write.context import Book
from publish.write.steps import slug

NOBODY_LOOKED = "–"


def sold(count: int, kind: SoldAs) -> Said:
    """Return `three fat quarters`, `31 squares of 10 in (25.4 cm)`, `two strips 2 1/2 in
    (6.4 cm) wide`."""
    pieces = Count(count, slug(kind.kind))
    if kind.kind == "piece":
        return said("sold-piece", pieces=pieces, size=Rectangle(kind.width, kind.length))
    if kind.kind == "square":
        return said("sold-square", pieces=pieces, side=Length(kind.width))
    if kind.kind == "strip":
        return said("sold-strip", pieces=pieces, width=Length(kind.length))
    return said("sold-fat", pieces=pieces, size=Rectangle(kind.length, kind.width))


def to_get(plan: PrecutPlan) -> Said:
    """Return what to buy of a fabric sold ready cut, and how many of it are cut into."""
    each = plan.sold_as
    if each.packet == 1:
        return sold(plan.used, each)
    packets = Count(plan.packets, "packet")
    return said("packets-of", packets=packets, each=sold(each.packet, each), used=Count(plan.used))


def purchase(plan: FabricPlan) -> Value:
    """Return what to buy of a fabric: by length, or ready cut and what length would do."""
    length = Purchase(plan.buy, plan.buy_metric)
    if plan.precut is None:
        return length
    return said("precut-or-length", ready=to_get(plan.precut), length=length)


def alternatives(book: Book) -> Table | None:
    """Return the table of what else each fabric can be cut from, a group for each size."""
    first = [p for k in book.keys for p in book.plans[k].fabrics.values() if p.alternatives]
    if not first:
        return None
    kinds = [book.words.value(_head(a.sold_as)) for a in first[0].alternatives]
    rows: list[Row] = []
    for key in book.keys:
        mine = {f: p for f, p in book.plans[key].fabrics.items() if p.alternatives}
        if len(book.keys) > 1 and mine:
            rows.append(Row((book.title(key),), "group"))
        rows += [
            Row(
                (f"**{book.fabric(f)}**", *(_answer(book, a) for a in plan.alternatives)),
                fabric=f,
            )
            for f, plan in mine.items()
        ]
    return Table(
        "precuts",
        book.text("table-precuts"),
        ("", *kinds),
        tuple(rows),
        "l" + "r" * len(kinds),
        _notes(book, first),
    )


def _head(kind: SoldAs) -> Said:
    if kind.kind == "square":
        return said("precut-squares", side=Length(kind.width))
    if kind.kind == "strip":
        return said("precut-strips", width=Length(kind.length))
    return said(f"precut-{slug(kind.kind)}s")


def _answer(book: Book, found: Alternative) -> str:
    if found.count is None:
        larger = Named(found.larger)
        return book.text("precut-no", piece=larger) if found.larger else NOBODY_LOOKED
    return book.text(
        "precut-joined",
        count=Count(found.count),
        joins=Word("some" if found.joined else "none"),
        joined=Several(tuple(map(Named, found.joined))),
    )


def _notes(book: Book, plans: list[FabricPlan]) -> tuple[str, ...]:
    found = [a for p in plans for a in p.alternatives]
    fat = {a.sold_as.kind: a.sold_as for a in found if a.sold_as.kind.startswith("fat")}
    sizes = tuple(
        said(f"one-{slug(k)}", length=Length(s.length), width=Length(s.width))
        for k, s in fat.items()
    )
    notes = [book.text("precut-vary", sizes=Several(sizes))]
    if any(a.larger for a in found):
        notes.append(book.text("precut-says-no"))
    if any(a.count is None and not a.larger for a in found):
        notes.append(book.text("precut-not-looked", sign=Named(NOBODY_LOOKED)))
    if any(a.joined for a in found):
        notes.append(book.text("precut-says-joined"))
    return tuple(notes)

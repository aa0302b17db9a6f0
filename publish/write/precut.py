"""Cloth sold ready cut: what to buy, what else would do, how its sheets are cut.

In: fabric plans. Out: cells, a table.
Invariant: every count is the plan's; a cell that says no names the piece that does not
fit.
"""

from __future__ import annotations

from publish.model.cloth import SoldAs
from publish.model.cutplan import Alternative, FabricPlan, PrecutPlan
from publish.model.words import Row, Table
from publish.words.en.lengths import Lengths
from publish.words.en.phrase import capital, counted, listed, number
from publish.write.context import Book

NOBODY_LOOKED = "–"


def sold(tell: Lengths, count: int, kind: SoldAs, sizes: bool = True) -> str:
    """Return `three fat quarters`, `31 squares of 10 in (25.4 cm)`, `two strips 2 1/2 in
    (6.4 cm) wide`."""
    noun = counted(count, kind.kind)
    if kind.kind == "piece":
        return f"{noun} of {tell.rectangle(kind.width, kind.length)}"
    if not sizes:
        return noun
    if kind.kind == "square":
        return f"{noun} of {tell.measure(kind.width)}"
    if kind.kind == "strip":
        return f"{noun} {tell.measure(kind.length)} wide"
    return f"{noun}, {tell.rectangle(kind.length, kind.width)}"


def to_get(tell: Lengths, plan: PrecutPlan) -> str:
    """Return what to buy of a fabric sold ready cut, and how many of it are cut into."""
    each = plan.sold_as
    if each.packet == 1:
        return sold(tell, plan.used, each)
    packets = counted(plan.packets, "packet")
    return f"{packets} of {sold(tell, each.packet, each)}; {number(plan.used)} are used"


def purchase(tell: Lengths, plan: FabricPlan) -> str:
    """Return what to buy of a fabric: by length, or ready cut and what length would do."""
    length = tell.to_buy(plan.buy, plan.buy_metric)
    return length if plan.precut is None else f"{capital(to_get(tell, plan.precut))}; or {length}"


def alternatives(book: Book) -> Table | None:
    """Return the table of what else each fabric can be cut from, a group for each size."""
    first = [p for k in book.keys for p in book.plans[k].fabrics.values() if p.alternatives]
    if not first:
        return None
    kinds = [_head(book.say, a.sold_as) for a in first[0].alternatives]
    rows: list[Row] = []
    for key in book.keys:
        mine = {f: p for f, p in book.plans[key].fabrics.items() if p.alternatives}
        if len(book.keys) > 1 and mine:
            rows.append(Row((book.title(key),), "group"))
        rows += [
            Row((f"**{book.fabric(f)}**", *map(_answer, plan.alternatives)), fabric=f)
            for f, plan in mine.items()
        ]
    return Table(
        "precuts",
        "Using precuts",
        ("", *kinds),
        tuple(rows),
        "l" + "r" * len(kinds),
        _notes(book.say, first),
    )


def _head(tell: Lengths, kind: SoldAs) -> str:
    if kind.kind == "square":
        return f"{capital(tell.short(kind.width))} squares"
    if kind.kind == "strip":
        return f"{capital(tell.short(kind.length))} strips"
    return f"{capital(kind.kind)}s"


def _answer(found: Alternative) -> str:
    if found.count is None:
        return f"no: {found.larger}" if found.larger else NOBODY_LOOKED
    joined = f", {listed(found.joined)} joined" if found.joined else ""
    return f"{found.count}{joined}"


def _notes(tell: Lengths, plans: list[FabricPlan]) -> tuple[str, ...]:
    found = [a for p in plans for a in p.alternatives]
    fat = {a.sold_as.kind: a.sold_as for a in found if a.sold_as.kind.startswith("fat")}
    sizes = [f"a {k} {tell.short(s.length)} × {tell.short(s.width)}" for k, s in fat.items()]
    notes = [f"{capital(listed(sizes))}: measure yours, sizes vary."]
    if any(a.larger for a in found):
        notes.append("**No** names the piece that is larger than what is sold.")
    if any(a.count is None and not a.larger for a in found):
        notes.append(
            f"**{NOBODY_LOOKED}**: more pieces of different sizes than anyone cuts from "
            "these. Buy it by length."
        )
    if any(a.joined for a in found):
        notes.append("**Joined**: those strips are then sewn together from more, shorter lengths.")
    return tuple(notes)

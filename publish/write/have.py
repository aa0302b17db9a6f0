"""Cloth that is there: what it suffices for, and how it is cut first.

In: fabric plans. Out: two tables for the section on materials.
Invariant: a row for every fabric of which some is there; a row for every piece of cloth that
is cut into, and for what is then bought; nothing where none is there.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.model.cloth import SoldAs
from publish.model.cutplan import FabricPlan, HavePlan, Sheet, Strip, Used
from publish.model.words import Row, Table
from publish.words.values import Count, Length, Letter, Purchase, Said, Several, Value, Word, said
from publish.write.context import Book
from publish.write.precut import sold, to_get

_NOTHING = said("nothing-at-all")


def tables(book: Book) -> list[Table]:
    """Return the answer for each size and fabric, and how that is cut."""
    rows: list[Row] = []
    cuts: list[Row] = []
    for key in book.keys:
        plans = {f: p.have for f, p in book.plans[key].fabrics.items() if p.have is not None}
        if len(book.keys) > 1 and plans:
            rows.append(Row((book.title(key),), "group"))
        for fabric, plan in plans.items():
            cells = (_told(book, _uses(plan)), _told(book, _still(plan.rest)))
            rows.append(Row((f"**{book.fabric(fabric)}**", *cells), fabric=fabric))
            if any(used.count for used in plan.used):
                size = f"{book.title(key)}: " if len(book.keys) > 1 else ""
                cuts.append(Row((f"{size}{book.fabric(fabric)}",), "group", fabric=fabric))
                cuts += [
                    Row((_told(book, cloth), _told(book, strips)))
                    for cloth, strips in [*_there(plan), *_bought(plan.rest)]
                ]
    found = []
    if rows:
        head: tuple[str, ...] = (
            "",
            book.text("table-at-hand", "uses"),
            book.text("table-at-hand", "still"),
        )
        found.append(_table(book, "at-hand", head, rows))
    if cuts:
        of, how = (book.text("table-cutting-at-hand", part) for part in ("from", "cut"))
        found.append(_table(book, "cutting-at-hand", (of, how), cuts))
    return found


def _table(book: Book, key: str, head: tuple[str, ...], rows: Sequence[Row]) -> Table:
    name = f"table-{key}"
    notes = (book.text(name, "note"),)
    return Table(key, book.text(name), head, tuple(rows), "l" * len(head), notes)


def _told(book: Book, value: Value) -> str:
    """Return a cell in words, with a capital."""
    return book.words.capital(book.words.value(value))


def _uses(plan: HavePlan) -> Value:
    """Return what of the cloth that is there is cut into."""
    found = tuple(_of(used) for used in plan.used if used.count)
    return Several(found) if found else _NOTHING


def _of(used: Used) -> Said:
    have, kind = used.have, _kind(used)
    if used.count == have.count:
        return sold(used.count, kind)
    return said("some-of", count=Count(used.count), all=sold(have.count, kind))


def _still(rest: FabricPlan | None) -> Value:
    if rest is None:
        return _NOTHING
    if rest.precut is not None:
        return to_get(rest.precut)
    length = Purchase(rest.buy, rest.buy_metric)
    return said("at-hand", bought=length, stock=rest.stock) if rest.stock else length


def _kind(used: Used) -> SoldAs:
    return SoldAs(used.have.kind, used.have.width, used.have.length)


def _there(plan: HavePlan) -> list[tuple[Value, Value]]:
    """Return each piece of cloth that is there, and how it is cut."""
    return [
        (sold(sheet.count, _kind(used)), _sheet(sheet))
        for used in plan.used
        for sheet in used.sheets
    ]


def _bought(rest: FabricPlan | None) -> list[tuple[Value, Value]]:
    """Return what is then bought, and how it is cut."""
    if rest is None:
        return []
    if rest.precut is not None:
        each = rest.precut.sold_as
        return [
            (said("then-bought", what=sold(sheet.count, each)), _sheet(sheet))
            for sheet in rest.precut.sheets
        ]
    length = Purchase(rest.buy, rest.buy_metric)
    return [(said("then-bought", what=length), _strips(rest.strips))]


def _sheet(sheet: Sheet) -> Said:
    strips = _strips(sheet.strips, "length" if sheet.lengthwise else "width")
    return said("each-sheet", sheets=Count(sheet.count), strips=strips)


def _strips(strips: Sequence[Strip], way: str = "width") -> Several:
    """Return `two strips 2 1/2 in deep, with three **A** in each; one strip ...`."""
    return Several(
        tuple(
            said(
                "strips-of-sheet",
                strips=Count(s.count, "strip"),
                depth=Length(s.depth),
                way=Word(way),
                holds=_holds(s),
            )
            for s in strips
        ),
        ";",
    )


def _holds(strip: Strip) -> Several:
    """Return what one strip holds, the parts that are cut into strips again last."""
    pieces = [said("cut-count", count=Count(c.count), letter=Letter(c.letter)) for c in strip.cuts]
    sections = [
        said("section-of-sheet", width=Length(s.width), strips=_strips(s.strips))
        for s in strip.sections
    ]
    return Several((*pieces, *sections))

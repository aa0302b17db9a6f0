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
from publish.words.en.lengths import Lengths
from publish.words.en.phrase import capital, counted, listed, number
from publish.write.context import Book
from publish.write.precut import sold, to_get

NOTHING = "nothing"


def tables(book: Book) -> list[Table]:
    """Return the answer for each size and fabric, and how that is cut."""
    rows: list[Row] = []
    cuts: list[Row] = []
    for key in book.keys:
        plans = {f: p.have for f, p in book.plans[key].fabrics.items() if p.have is not None}
        if len(book.keys) > 1 and plans:
            rows.append(Row((book.title(key),), "group"))
        for fabric, plan in plans.items():
            rows.append(
                Row(
                    (
                        f"**{book.fabric(fabric)}**",
                        _uses(book.say, plan),
                        _still(book.say, plan.rest),
                    ),
                    fabric=fabric,
                )
            )
            if any(used.count for used in plan.used):
                size = f"{book.title(key)}: " if len(book.keys) > 1 else ""
                cuts.append(Row((f"{size}{book.fabric(fabric)}",), "group", fabric=fabric))
                cuts += [*_there(book.say, plan), *_bought(book.say, plan.rest)]
    if not rows:
        return []
    head = ("", "Cut from it", "Still to buy")
    note = "Cut what is there before you buy: the lengths above are for buying all of it."
    found = [
        Table("at-hand", "What the fabric at hand suffices for", head, tuple(rows), "lll", (note,))
    ]
    if cuts:
        found.append(
            Table(
                "cutting-at-hand",
                "Cutting the fabric at hand first",
                ("From", "Cut"),
                tuple(cuts),
                "ll",
                ("The tables of pieces give the size of each letter.",),
            )
        )
    return found


def _uses(tell: Lengths, plan: HavePlan) -> str:
    """Return what of the cloth that is there is cut into."""
    return capital(listed([_of(tell, used) for used in plan.used if used.count])) or capital(
        NOTHING
    )


def _of(tell: Lengths, used: Used) -> str:
    have = used.have
    some = sold(tell, used.count, _kind(used))
    return (
        some
        if used.count == have.count
        else f"{number(used.count)} of {sold(tell, have.count, _kind(used))}"
    )


def _still(tell: Lengths, rest: FabricPlan | None) -> str:
    if rest is None:
        return capital(NOTHING)
    if rest.precut is not None:
        return capital(to_get(tell, rest.precut))
    length = tell.to_buy(rest.buy, rest.buy_metric)
    return f"{length}; at hand: {rest.stock}" if rest.stock else length


def _kind(used: Used) -> SoldAs:
    return SoldAs(used.have.kind, used.have.width, used.have.length)


def _there(tell: Lengths, plan: HavePlan) -> list[Row]:
    """Return how each piece of cloth that is there is cut."""
    return [
        Row((capital(sold(tell, sheet.count, _kind(used))), _sheet(tell, sheet)))
        for used in plan.used
        for sheet in used.sheets
    ]


def _bought(tell: Lengths, rest: FabricPlan | None) -> list[Row]:
    """Return how what is then bought is cut."""
    if rest is None:
        return []
    if rest.precut is not None:
        as_sold = rest.precut.sold_as
        return [
            Row((f"{capital(sold(tell, sheet.count, as_sold))}, bought", _sheet(tell, sheet)))
            for sheet in rest.precut.sheets
        ]
    return [Row((f"{tell.to_buy(rest.buy, rest.buy_metric)}, bought", _strips(tell, rest.strips)))]


def _sheet(tell: Lengths, sheet: Sheet) -> str:
    each = "each: " if sheet.count > 1 else ""
    return f"{each}{_strips(tell, sheet.strips, ' along its length' if sheet.lengthwise else '')}"


def _strips(tell: Lengths, strips: Sequence[Strip], way: str = "") -> str:
    """Return `two strips 2 1/2 in deep, with three **A** in each; one strip ...`."""
    return "; ".join(
        f"{counted(s.count, 'strip')} {tell.measure(s.depth)} deep{way}, with {_holds(tell, s)}"
        f"{' in each' if s.count > 1 else ''}"
        for s in strips
    )


def _holds(tell: Lengths, strip: Strip) -> str:
    """Return what one strip holds, the parts that are cut into strips again last."""
    parts = [f"{number(c.count)} **{c.letter}**" for c in strip.cuts]
    parts += [
        f"a section {tell.measure(s.width)} wide for {_strips(tell, s.strips)}"
        for s in strip.sections
    ]
    return listed(parts)

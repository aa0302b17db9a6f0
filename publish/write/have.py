"""Cloth that is there: what it suffices for, and how it is cut first.

In: fabric plans. Out: a table and a list for the section on materials.
Invariant: a row for every fabric of which some is there, a paragraph for every piece of
cloth that is cut into and for what is then bought; nothing where none is there.
"""

from __future__ import annotations

from dataclasses import replace

from publish.model.cloth import SoldAs
from publish.model.cutplan import FabricPlan, HavePlan, PrecutPlan, Used
from publish.model.words import Block, Bullets, Row, Table
from publish.words.en.phrase import capital, listed, number, to_buy
from publish.write.context import Book
from publish.write.cutting_strips import strip_words
from publish.write.precut import sheet_steps, sold, to_get

NOTHING = "nothing"


def blocks(book: Book) -> list[Block]:
    """Return the answer for each size and fabric, and how that is cut."""
    rows: list[Row] = []
    cuts: list[str] = []
    for key in book.keys:
        plans = {f: p.have for f, p in book.plans[key].fabrics.items() if p.have is not None}
        if len(book.keys) > 1 and plans:
            rows.append(Row((book.title(key),), "group"))
        for fabric, plan in plans.items():
            name = book.fabric(fabric)
            rows.append(Row((f"**{name}**", _uses(plan), _still(plan.rest)), fabric=fabric))
            size = f"{book.title(key)}, " if len(book.keys) > 1 else ""
            told = [*_there(plan), *_bought(plan.rest)]
            cuts.append(f"{size}**{name}**: {' '.join(told)}")
    if not rows:
        return []
    head = ("", "Cut from it", "Still to buy")
    note = "Cut what is there before you buy: the lengths above are for buying all of it."
    return [
        Table("at-hand", "What the fabric at hand suffices for", head, tuple(rows), "lll", (note,)),
        Bullets(tuple(cuts)),
    ]


def _uses(plan: HavePlan) -> str:
    """Return what of the cloth that is there is cut into."""
    return capital(listed([_of(used) for used in plan.used if used.count])) or capital(NOTHING)


def _of(used: Used) -> str:
    have = used.have
    some = sold(used.count, _kind(used))
    return (
        some
        if used.count == have.count
        else f"{number(used.count)} of {sold(have.count, _kind(used))}"
    )


def _still(rest: FabricPlan | None) -> str:
    if rest is None:
        return capital(NOTHING)
    if rest.precut is not None:
        return capital(to_get(rest.precut))
    length = to_buy(rest.buy, rest.buy_metric)
    return f"{length}; at hand: {rest.stock}" if rest.stock else length


def _kind(used: Used) -> SoldAs:
    return SoldAs(used.have.kind, used.have.width, used.have.length)


def _there(plan: HavePlan) -> list[str]:
    """Return how each piece of cloth that is there is cut."""
    return [
        words
        for used in plan.used
        for sheet in used.sheets
        for words in sheet_steps(PrecutPlan(_kind(used), (sheet,), sheet.count, 0, 0))
    ]


def _bought(rest: FabricPlan | None) -> list[str]:
    """Return how what is then bought is cut."""
    if rest is None:
        return []
    if rest.precut is not None:
        return [
            words
            for sheet in rest.precut.sheets
            for words in sheet_steps(replace(rest.precut, sheets=(sheet,)))
        ]
    strips = [
        words
        for strip in rest.strips
        for words in strip_words(replace(rest, strips=(strip,)), strip, 1)
    ]
    return [f"Then, from {to_buy(rest.buy, rest.buy_metric)}:", *strips]

"""What to buy: fabrics, batting, web, forms and thread, a column for each size.

In: plans. Out: the section, and the short list for the back cover.
Invariant: lengths to buy are the plans', already rounded to the purchase step; nothing is
rounded again except thread, which is counted up to whole yards and metres.
"""

from __future__ import annotations

from fractions import Fraction
from functools import partial

from publish.model.cutplan import CutPlan, FabricPlan, Piece
from publish.model.words import Block, Bullets, Paragraph, Row, Section, Table
from publish.operations.borders import border_called
from publish.words.values import (
    Length,
    Named,
    Rectangle,
    Said,
    Several,
    Value,
    Word,
    said,
    yes,
)
from publish.write import have, threads
from publish.write.columns import NONE, Cell, rows_of, table_of
from publish.write.context import Book
from publish.write.precut import purchase
from publish.write.steps import slug


def section(book: Book) -> Section:
    """Return the section on materials."""
    blocks: list[Block] = [Paragraph(_assumes(book)), _fabrics(book)]
    blocks += have.tables(book)
    blocks += [_rest(book), threads.table(book)]
    hints = _hints(book)
    blocks += [Bullets(hints)] if hints else []
    title, lead = (book.text("chapter-materials", part) for part in ("", "lead"))
    return Section("materials", title, tuple(blocks), lead)


def _assumes(book: Book) -> str:
    """State the usable width that the fabric requirements assume."""
    found: dict[Fraction, list[Value]] = {}
    for key in book.fabrics:
        width = book.pattern.fabrics[key].usable_width
        found.setdefault(width, []).append(Named(book.fabric(key)))
    widths: Value = Several(
        tuple(
            said("width-of", width=Length(w), fabrics=Several(tuple(names)))
            for w, names in found.items()
        )
    )
    if len(found) == 1:
        widths = Length(next(iter(found)))
    sewing = book.pattern.sewing
    parts = {
        "straightening": sewing.straightening,
        "squaring": sewing.squaring,
        "mis-cut": sewing.mis_cut,
    }
    included = tuple(said(f"include-{k}", length=Length(v)) for k, v in parts.items() if v > 0)
    return book.text(
        "fabric-assumes",
        differs=yes(len(found) > 1),
        widths=widths,
        includes=Word("some" if included else "none"),
        included=Several(included),
    )


def uses(book: Book, key: str) -> tuple[str, ...]:
    """Return what a fabric is used for in words, over all sizes, in sewing order."""
    found: dict[str, int] = {}
    for size in book.keys:
        plan = book.plans[size].fabrics.get(key)
        for piece in plan.pieces if plan is not None else ():
            for name, use in _uses_of(book, size, piece):
                place = _ORDER.index(name) if name in _ORDER else len(_ORDER)
                found.setdefault(book.words.value(use), place)
    return tuple(sorted(found, key=lambda use: found[use]))


_ORDER = (
    "ground",
    "blocks",
    "foundation",
    "motif",
    "sashing",
    "cornerstone",
    "side-triangle",
    "corner-triangle",
    "border",
    "backing",
    "binding",
    "pillow-back",
    "sleeve",
)


def _uses_of(book: Book, size: str, piece: Piece) -> list[tuple[str, Said]]:
    """Return what a piece is for, each with its place in `_ORDER`: of blocks, `ground` where a
    motif is laid on them."""
    words = piece.purpose.split(" ")
    if words[0] == "border" and len(words) > 1 and words[1].isdigit():
        called = border_called(int(words[1]) - 1, len(book.sizes[size].borders))
        return [("border", called)]
    names = [next((o for o in _ORDER if slug(piece.purpose).startswith(o)), words[0])]
    if piece.purpose == "ground":
        plan = book.plans[size]
        blocks = {
            p.block
            for p in book.drafts[size].patches
            if p.block is not None and plan.sources.get(p.key) == piece.letter
        } or set(book.blocks(size))
        carried = sorted({book.carries(b) for b in blocks}, reverse=True)
        names = ["ground" if one else "blocks" for one in carried]
    return [(name, said("use", use=Word(name))) for name in names]


def _fabrics(book: Book) -> Table:
    rows = []
    for key in book.fabrics:
        cells = []
        for size in book.keys:
            plan = book.plans[size].fabrics.get(key)
            there = plan is not None and plan.buy > 0
            cells.append(book.words.value(_bought(plan)) if plan and there else NONE)
        name = Named(book.fabric(key))
        row = book.text("fabric-row", fabric=name, uses=Several(tuple(map(Named, uses(book, key)))))
        rows.append(Row((row, *cells), fabric=key))
        rows += _shares(book, key)
    return table_of(book, "fabric", rows)


def _shares(book: Book, key: str) -> list[Row]:
    """Return a row for each use of a fabric that has several, as if it were bought alone."""
    plans = {k: book.plans[k].fabrics.get(key) for k in book.keys}
    by_use: dict[str, dict[str, str]] = {}
    for size, plan in plans.items():
        for share in plan.shares if plan is not None and plan.precut is None else ():
            by_use.setdefault(share.use, {})[size] = book.say.to_buy(share.buy, share.buy_metric)
    return [
        Row(
            (
                book.text("use-alone", use=Word(slug(use))),
                *(cells.get(k, NONE) for k in book.keys),
            ),
            "part",
        )
        for use, cells in by_use.items()
    ]


def _bought(plan: FabricPlan) -> Value:
    """Return what to buy, and what the length at hand already does for it."""
    bought = purchase(plan)
    return said("at-hand", bought=bought, stock=plan.stock) if plan.stock else bought


def _rest(book: Book) -> Table:
    return table_of(book, "other-materials", rows_of(book, _other(book)))


def _other(book: Book) -> list[tuple[Said, Cell]]:
    return [
        *(
            (said("material-batting", name=Named(name)), partial(_batting, name))
            for name in _battings(book)
        ),
        (said("material-web"), partial(_roll, "web")),
        (said("material-stabilizer"), partial(_roll, "stabilizer")),
        (said("material-form"), _form),
        (said("material-zipper"), _zipper),
    ]


def _battings(book: Book) -> list[str]:
    return list(
        dict.fromkeys(b.name for k in book.keys if (b := book.plans[k].batting) is not None)
    )


def _batting(name: str, plan: CutPlan) -> Value | None:
    found = plan.batting
    if found is None or found.name != name:
        return None
    package: Value = found.package.called if found.package else Named("")
    size = Rectangle(found.width, found.height)
    return said("batting-cell", size=size, packed=yes(found.package), package=package)


def _roll(what: str, plan: CutPlan) -> Value | None:
    roll = plan.web if what == "web" else plan.stabiliser
    if roll is None:
        return None
    return said(f"{what}-cell", length=Length(roll.buy), width=Length(roll.width))


def _form(plan: CutPlan) -> Value | None:
    return Rectangle(plan.pillow.form, plan.pillow.form) if plan.pillow else None


def _zipper(plan: CutPlan) -> Value | None:
    return said("zipper-cell") if plan.pillow and plan.pillow.back == "zip" else None


def _hints(book: Book) -> tuple[str, ...]:
    hints = ["hint-weave"] if book.motifs else []
    if any(p.package for k in book.keys if (p := book.plans[k].batting) is not None):
        hints.append("hint-package")
    return tuple(map(book.text, hints))


def short_list(book: Book) -> tuple[str, ...]:
    """Return the materials in brief, for the back cover."""
    found: list[Said] = []
    for key in book.fabrics:
        bought: dict[str, Value] = {
            book.title(k): purchase(plan)
            for k in book.keys
            if (plan := book.plans[k].fabrics.get(key)) is not None and plan.buy > 0
        }
        if bought:
            each = [
                said("short-size", size=Named(title), bought=what) if len(book.keys) > 1 else what
                for title, what in bought.items()
            ]
            fabric = Named(book.fabric(key))
            found.append(said("short-fabric", fabric=fabric, bought=Several(tuple(each), ";")))
    word = book.text("short-batting-word")
    found += [
        said("short-batting", name=Named(name), said=yes(word in name.lower()))
        for name in _battings(book)
    ]
    found += [
        said("short-form", form=Length(p.form))
        for k in book.keys
        if (p := book.plans[k].pillow) is not None
    ]
    if any(book.plans[k].web is not None for k in book.keys):
        found.append(said("short-web"))
    if any(book.plans[k].stabiliser is not None for k in book.keys):
        found.append(said("short-stabilizer"))
    return tuple(dict.fromkeys(map(book.words.value, found)))

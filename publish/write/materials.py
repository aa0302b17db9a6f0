"""What to buy: fabrics, batting, web, forms and thread, a column for each size.

In: plans. Out: the section, and the short list for the back cover.
Invariant: lengths to buy are the plans', already rounded to the purchase step; nothing is
rounded again except thread, which is counted up to whole yards and metres.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import partial

from publish.model.cutplan import CutPlan, FabricPlan, Piece
from publish.model.words import Block, Bullets, Paragraph, Row, Section, Table
from publish.operations.borders import border_called
from publish.units import round_up
from publish.words.lengths import spools
from publish.words.values import (
    Count,
    Length,
    Named,
    Rectangle,
    Said,
    Several,
    Thread,
    Value,
    Word,
    said,
    yes,
)
from publish.write import have
from publish.write.context import Book
from publish.write.practice import BOBBIN, SPOOL_METRES
from publish.write.precut import purchase
from publish.write.steps import slug

NONE = "–"
Cell = Callable[[CutPlan], Value | None]
"""What a table says of a size, from its plan; None where the size has none."""


def section(book: Book) -> Section:
    """Return the section on materials."""
    blocks: list[Block] = [Paragraph(_assumes(book)), _fabrics(book)]
    blocks += have.tables(book)
    blocks += [_rest(book), _threads(book)]
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
    return _table(book, "fabric", rows)


def _table(book: Book, key: str, rows: list[Row], notes: tuple[str, ...] = ()) -> Table:
    """Return a table with a column for each size."""
    head = ("", *(book.title(k) for k in book.keys))
    columns = "l" + "r" * len(book.keys)
    return Table(key, book.text(f"table-{key}"), head, tuple(rows), columns, notes)


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
    return _table(book, "other-materials", _rows(book, _other(book)))


def _rows(book: Book, each: list[tuple[Said, Cell]]) -> list[Row]:
    """Return a row for each of what some size has."""
    rows = []
    for name, value in each:
        cells = [value(book.plans[k]) for k in book.keys]
        if any(c is not None for c in cells):
            told = (book.words.value(c) if c is not None else NONE for c in cells)
            rows.append(Row((book.words.value(name), *told)))
    return rows


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


def _thread_rows(book: Book) -> list[tuple[Said, Cell]]:
    """Return each use of thread with what it is matched to, and how to read its length."""
    around = Word(book.ground_kind(book.used_blocks))
    motifs = dict.fromkeys(m.fabric for m in book.motifs)
    bindings = dict.fromkeys(
        b.fabric for k in book.keys if (b := book.plans[k].binding) is not None
    )
    alone = len(motifs) == 1
    rows: list[tuple[Said, Callable[[CutPlan], Fraction]]] = [
        (said("thread-piecing", pillows=yes(book.pillows)), lambda p: p.thread.piecing),
        *(
            (said("thread-applique", fabric=Named(book.fabric(f))), partial(_sewn_on, f, alone))
            for f in motifs
        ),
        (said("thread-quilting", around=around), lambda p: p.thread.quilting),
        *(
            (said("thread-binding", fabric=Named(book.fabric(f))), partial(_bound, f))
            for f in bindings
        ),
    ]
    return [(name, partial(_thread, read)) for name, read in rows]


def _sewn_on(fabric: str, alone: bool, plan: CutPlan) -> Fraction:
    """Return the thread that sews the motifs of a fabric on."""
    return plan.thread.applique if alone else plan.thread.motifs.get(fabric, Fraction(0))


def _bound(fabric: str, plan: CutPlan) -> Fraction:
    """Return the thread of a binding of this fabric."""
    mine = plan.binding is not None and plan.binding.fabric == fabric
    return plan.thread.binding if mine else Fraction(0)


def _thread(read: Callable[[CutPlan], Fraction], plan: CutPlan) -> Value | None:
    length = read(plan)
    if length <= 0:
        return None
    count = spools(length, SPOOL_METRES.value)
    return said("thread-cell", thread=Thread(length), spools=Count(count, "spool"))


def _threads(book: Book) -> Table:
    rows = _rows(book, _thread_rows(book))
    notes = [book.text("thread-spool", metres=Count(int(SPOOL_METRES.value)))]
    filled = _rows(book, [(said("thread-bobbins"), _bobbins)])
    if filled:
        notes.append(book.text("thread-bobbin", length=Thread(BOBBIN.value)))
    return _table(book, "thread", [*rows, *filled], tuple(notes))


def _bobbins(plan: CutPlan) -> Value | None:
    length = plan.thread.quilting
    return Count(bobbins(length), "bobbin") if length > 0 else None


def bobbins(length: Fraction) -> int:
    """Return how many full bobbins hold the bobbin's half of a lockstitch's thread."""
    return int(round_up(length / 2 / BOBBIN.value, Fraction(1)))


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

"""What to buy: fabrics, batting, web, forms and thread, a column for each size.

In: plans. Out: the section, and the short list for the back cover.
Invariant: lengths to buy are the plans', already rounded to the purchase step; nothing is
rounded again except thread, which is counted up to whole yards and metres.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import partial

from publish.model.cutplan import CutPlan, FabricPlan, Piece, WebPlan
from publish.model.words import Block, Bullets, Paragraph, Row, Section, Table
from publish.operations.borders import border_called
from publish.units import round_up
from publish.words import language
from publish.words.en.lengths import Lengths, spools
from publish.words.en.phrase import capital, counted, listed
from publish.write import have
from publish.write.context import Book
from publish.write.practice import BOBBIN, SPOOL_METRES
from publish.write.precut import purchase

NONE = "–"


def section(book: Book) -> Section:
    """Return the section on materials."""
    blocks: list[Block] = [Paragraph(_assumes(book)), _fabrics(book)]
    blocks += have.tables(book)
    blocks += [_rest(book), _threads(book)]
    hints = _hints(book)
    blocks += [Bullets(hints)] if hints else []
    lead = "Lengths to buy, rounded up to what a shop cuts."
    return Section("materials", "Materials", tuple(blocks), lead)


def _assumes(book: Book) -> str:
    """State the usable width that the fabric requirements assume."""
    widths: dict[Fraction, list[str]] = {}
    for key in book.fabrics:
        widths.setdefault(book.pattern.fabrics[key].usable_width, []).append(book.fabric(key))
    step = book.say.short(book.pattern.sewing.straightening)
    if len(widths) == 1:
        assume = (
            f"Fabric requirements assume {book.say.measure(next(iter(widths)))} of usable width"
        )
    else:
        assume = "Fabric requirements assume a usable width of " + listed(
            [f"{book.say.measure(w)} for {listed(names)}" for w, names in widths.items()]
        )
    sewing = book.pattern.sewing
    included = [f"{step} for straightening the cut end"] if sewing.straightening > 0 else []
    if sewing.squaring > 0:
        included.append(f"{book.say.short(sewing.squaring)} a strip for keeping its edge straight")
    if sewing.mis_cut > 0:
        included.append(f"{book.say.short(sewing.mis_cut)} for a strip that goes wrong")
    straight = f" and include {listed(included)}" if included else ""
    return f"{assume}, measured between the selvages,{straight}.".replace(",.", ".")


def uses(book: Book, key: str) -> tuple[str, ...]:
    """Return what a fabric is used for, over all sizes, in sewing order."""
    found: dict[str, None] = {}
    for size in book.keys:
        plan = book.plans[size].fabrics.get(key)
        for piece in plan.pieces if plan is not None else ():
            found.update(dict.fromkeys(uses_of(book, size, piece)))
    last = len(_ORDER)
    return tuple(
        sorted(found, key=lambda u: next((i for i, o in enumerate(_ORDER) if o in u), last))
    )


def uses_of(book: Book, size: str, piece: Piece) -> tuple[str, ...]:
    """Return what a piece is for: of blocks, `ground` where a motif is laid on them."""
    if piece.purpose != "ground":
        return (use_of(book, size, piece.purpose),)
    plan = book.plans[size]
    blocks = {
        p.block
        for p in book.drafts[size].patches
        if p.block is not None and plan.sources.get(p.key) == piece.letter
    } or set(book.blocks(size))
    carried = sorted({book.carries(b) for b in blocks}, reverse=True)
    return tuple("ground" if one else "blocks" for one in carried)


_ORDER = (
    "ground",
    "blocks",
    "foundation",
    "motif",
    "sashing",
    "cornerstone",
    "triangle",
    "border",
    "backing",
    "binding",
    "pillow back",
    "sleeve",
)


def use_of(book: Book, size: str, purpose: str) -> str:
    """Return a piece's purpose as the text says it: `border 1 side` is `inner border`."""
    words = purpose.split(" ")
    if words[0] == "border" and len(words) > 1 and words[1].isdigit():
        return language(measures=book.pattern.measures).value(
            border_called(int(words[1]) - 1, len(book.sizes[size].borders))
        )
    if purpose.startswith("pillow back"):
        return "pillow back"
    if purpose.startswith(_OF_TOP):
        return {"foundation": "foundation piecing"}.get(
            purpose, f"{purpose}s" if not purpose.endswith("ing") else purpose
        )
    return words[0]


_OF_TOP = ("ground", "foundation", "sashing", "cornerstone", "side triangle", "corner triangle")


def _fabrics(book: Book) -> Table:
    rows = []
    for key in book.fabrics:
        cells = []
        for size in book.keys:
            plan = book.plans[size].fabrics.get(key)
            cells.append(_bought(book.say, plan) if plan is not None and plan.buy > 0 else NONE)
        use = listed(list(uses(book, key)))
        rows.append(Row((f"**{book.fabric(key)}**: {use}", *cells), fabric=key))
        rows += _shares(book, key)
    return Table(
        "fabric",
        "Fabric",
        ("", *(book.title(k) for k in book.keys)),
        tuple(rows),
        "l" + "r" * len(book.keys),
    )


def _shares(book: Book, key: str) -> list[Row]:
    """Return a row for each use of a fabric that has several, as if it were bought alone."""
    plans = {k: book.plans[k].fabrics.get(key) for k in book.keys}
    by_use: dict[str, dict[str, str]] = {}
    for size, plan in plans.items():
        for share in plan.shares if plan is not None and plan.precut is None else ():
            by_use.setdefault(share.use, {})[size] = book.say.to_buy(share.buy, share.buy_metric)
    return [
        Row((f"for the {use} alone", *(cells.get(k, NONE) for k in book.keys)), "part")
        for use, cells in by_use.items()
    ]


def _bought(tell: Lengths, plan: FabricPlan) -> str:
    """Return what to buy, and what the length at hand already does for it."""
    return f"{purchase(tell, plan)}; at hand: {plan.stock}" if plan.stock else purchase(tell, plan)


def _rest(book: Book) -> Table:
    rows = []
    for name, value in _other(book):
        cells = [value(book.plans[k]) for k in book.keys]
        if any(c != NONE for c in cells):
            rows.append(Row((name, *cells)))
    return Table(
        "other-materials",
        "Other materials",
        ("", *(book.title(k) for k in book.keys)),
        tuple(rows),
        "l" + "r" * len(book.keys),
    )


def _other(book: Book) -> list[tuple[str, Callable[[CutPlan], str]]]:
    names = list(
        dict.fromkeys(b.name for k in book.keys if (b := book.plans[k].batting) is not None)
    )
    return [
        *((f"**Batting**: {name}", partial(_batting, book.say, name)) for name in names),
        ("**Fusible web**", lambda p: _roll(book.say, p.web, "web")),
        ("**Tear-away stabilizer**", lambda p: _roll(book.say, p.stabiliser, "stabilizer")),
        (
            "**Pillow form**",
            lambda p: f"{book.say.measure(p.pillow.form)} square" if p.pillow else NONE,
        ),
        (
            "**Zipper**, to fit the back",
            lambda p: "One" if p.pillow and p.pillow.back == "zip" else NONE,
        ),
    ]


def _batting(tell: Lengths, name: str, plan: CutPlan) -> str:
    if plan.batting is None or plan.batting.name != name:
        return NONE
    size = tell.rectangle(plan.batting.width, plan.batting.height)
    return f"{size}; package: {plan.batting.package}" if plan.batting.package else size


def _roll(tell: Lengths, plan: WebPlan | None, what: str) -> str:
    if plan is None:
        return NONE
    return f"{tell.measure(plan.buy)} of {tell.measure(plan.width)} wide {what}"


def thread_rows(book: Book) -> list[tuple[str, Callable[[CutPlan], Fraction]]]:
    """Return each use of thread with what it is matched to, and how to read its length."""
    around = book.ground_word(book.used_blocks)
    motifs = dict.fromkeys(m.fabric for m in book.motifs)
    bindings = dict.fromkeys(
        b.fabric for k in book.keys if (b := book.plans[k].binding) is not None
    )
    return [
        (
            f"Piecing{' and making up' if book.pillows else ''}: grey or beige",
            lambda p: p.thread.piecing,
        ),
        *(
            (f"Appliqué, to match {book.fabric(f)}", partial(_sewn_on, f, len(motifs) == 1))
            for f in motifs
        ),
        (f"Quilting: matching the {around} or contrasting", lambda p: p.thread.quilting),
        *((f"Binding, to match {book.fabric(f)}", partial(_bound, f)) for f in bindings),
    ]


def _sewn_on(fabric: str, alone: bool, plan: CutPlan) -> Fraction:
    """Return the thread that sews the motifs of a fabric on."""
    return plan.thread.applique if alone else plan.thread.motifs.get(fabric, Fraction(0))


def _bound(fabric: str, plan: CutPlan) -> Fraction:
    """Return the thread of a binding of this fabric."""
    mine = plan.binding is not None and plan.binding.fabric == fabric
    return plan.thread.binding if mine else Fraction(0)


def _threads(book: Book) -> Table:
    rows = []
    for name, value in thread_rows(book):
        lengths = [value(book.plans[k]) for k in book.keys]
        if any(lengths):
            rows.append(Row((name, *(_thread(book.say, n) if n > 0 else NONE for n in lengths))))
    notes = [f"One spool is {SPOOL_METRES.value} m."]
    quilting = [book.plans[k].thread.quilting for k in book.keys]
    if any(quilting):
        filled = (counted(bobbins(n), "bobbin") if n > 0 else NONE for n in quilting)
        rows.append(Row(("Full bobbins for quilting, wound from its thread", *filled)))
        notes.append(
            f"One full class 15 bobbin holds about {book.say.thread(BOBBIN.value)} of 50 wt thread."
        )
    return Table(
        "thread",
        "Thread",
        ("", *(book.title(k) for k in book.keys)),
        tuple(rows),
        "l" + "r" * len(book.keys),
        tuple(notes),
    )


def bobbins(length: Fraction) -> int:
    """Return how many full bobbins hold the bobbin's half of a lockstitch's thread."""
    return int(round_up(length / 2 / BOBBIN.value, Fraction(1)))


def _thread(tell: Lengths, length: Fraction) -> str:
    return f"{tell.thread(length)}: {counted(spools(length, SPOOL_METRES.value), 'spool')}"


def _hints(book: Book) -> tuple[str, ...]:
    weave = (
        "Choose closely woven quilting cotton for the motif: it holds a crease and frays little."
    )
    hints = [weave] if book.motifs else []
    if any(p.package for k in book.keys if (p := book.plans[k].batting) is not None):
        hints.append("Package sizes of batting vary; check the label.")
    return tuple(hints)


def short_list(book: Book) -> tuple[str, ...]:
    """Return the materials in brief, for the back cover."""
    items = []
    for key in book.fabrics:
        bought = {
            k: plan
            for k in book.keys
            if (plan := book.plans[k].fabrics.get(key)) is not None and plan.buy > 0
        }
        if bought:
            each = [
                (f"{book.title(k)} " if len(book.keys) > 1 else "") + purchase(book.say, plan)
                for k, plan in bought.items()
            ]
            items.append(f"{book.fabric(key)}: {'; '.join(each)}")
    battings = dict.fromkeys(b.name for k in book.keys if (b := book.plans[k].batting) is not None)
    items += [f"{name} batting" if "batting" not in name.lower() else name for name in battings]
    items += [
        f"{capital(book.say.short(p.form))} pillow form"
        for k in book.keys
        if (p := book.plans[k].pillow) is not None
    ]
    if any(book.plans[k].web is not None for k in book.keys):
        items.append("Fusible web")
    if any(book.plans[k].stabiliser is not None for k in book.keys):
        items.append("Tear-away stabilizer")
    return tuple(dict.fromkeys(items))

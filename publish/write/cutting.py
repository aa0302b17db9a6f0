"""Cutting: a table of pieces for each size, and each fabric's strips in cutting order.

In: fabric plans. Out: a section with a child for each size, or one section.
Invariant: every piece of the plan is in its fabric's table and in a step; the strips of a
fabric are listed in the order of its cutting layout.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import FabricPlan, Piece, PrecutPlan
from publish.model.spare import left_long
from publish.model.words import Block, Paragraph, Row, Section, Table
from publish.words.en.lengths import Lengths
from publish.words.en.phrase import capital, counted, listed, number
from publish.write.context import Book
from publish.write.cutting_shapes import add_steps, afterwards, becomes, exact_notes
from publish.write.cutting_strips import strip_words
from publish.write.precut import sheet_steps, sold, source
from publish.write.steps import StepList, figure
from publish.write.trimming import trim_note

_HEAD = ("", "Piece", "Cut size", "How many", "From")


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on cutting."""
    steps = StepList(book, "cutting")
    _general(book, steps)
    intro: list[Block] = [Paragraph(_how_to_read(book)), steps.block()]
    lead = "Seam allowances are already in every cut size."
    if len(book.keys) == 1:
        key = book.keys[0]
        blocks = [*intro, *_size(book, key, steps)]
        return (Section("cutting", "Cutting", tuple(blocks), lead),)
    found = [Section("cutting", "Cutting", tuple(intro), lead)]
    for key in book.keys:
        steps = StepList(book, f"cutting-{key}", [key])
        found.append(
            Section(
                f"cutting-{key}",
                f"Cutting: {book.title(key)}",
                tuple(_size(book, key, steps)),
                sizes=(key,),
                parent="cutting",
            )
        )
    return tuple(found)


def _how_to_read(book: Book) -> str:
    one = " A letter stands for the same part in every size." if len(book.keys) > 1 else ""
    return (
        "The letters name the pieces in the tables, the layouts and the steps."
        f"{one} Sizes are given across the fabric first, then along it; a piece that lies turned "
        "in another strip is given turned there. Strips run across the usable width, from selvage "
        "to selvage, and are cut in the order of the layout: what needs fabric in one long piece "
        "first, then the largest pieces, so that a slip can be made good from what is left."
        f"{_sections_told(book)}"
    )


def _sections_told(book: Book) -> str:
    plans = [p for k in book.keys for p in book.plans[k].fabrics.values()]
    if not any(strip.sections for plan in plans for strip in plan.strips):
        return ""
    return (
        " Where a strip has sections, cut those off across it as well, in one piece, and then cut "
        "each section into strips of its own, across the section."
    )


def _general(book: Book, steps: StepList) -> None:
    steps.add(
        "straighten",
        "Press the fabric, fold it selvage to selvage and trim one end at a right angle to the "
        "fold.",
        right="Opened out, the cut edge is straight, without a bend at the fold.",
    )
    off = book.say.measure(book.pattern.measures.finest)
    steps.add(
        "strips",
        "Cut the strips in the order given, trim off the selvages, and cut the pieces from each "
        "strip. Label each stack with its letter.",
        right=f"Each piece is within {off} of its cut size.",
        tip="Measure the first piece of each letter before you cut the rest. Square the end of the "
        f"fabric again after every few strips.{_by_hand(book)}",
    )
    add_steps(book, steps)


def _by_hand(book: Book) -> str:
    """Say how lengths are cut that are too deep for a cutting mat."""
    depths = [s.depth for k in book.keys for p in book.plans[k].fabrics.values() for s in p.strips]
    if max(depths, default=Fraction(0)) <= MAT:
        return ""
    return (
        f" What is deeper than {book.usual(MAT)} does not lie on a cutting mat: mark it, and cut "
        "it with scissors or tear it across the grain."
    )


MAT = Fraction(24)
"""Inches: about the depth of a large cutting mat. Common practice, no source."""


def _size(book: Book, key: str, steps: StepList) -> list[Block]:
    blocks: list[Block] = [_table(book, key)]
    for fabric, plan in book.plans[key].fabrics.items():
        if plan.precut is not None:
            _ready_cut(book, key, fabric, plan.precut, steps)
        elif plan.strips:
            _fabric(book, key, fabric, plan, steps)
    return [*blocks, steps.block()]


def _fabric(book: Book, key: str, fabric: str, plan: FabricPlan, steps: StepList) -> None:
    """Add the one step that cuts a fabric: its strips in order, its layout beside them."""
    long = left_long(book.plans[key])
    strips = [
        words
        for at, strip in enumerate(plan.strips, start=1)
        for words in strip_words(book.say, plan, strip, at, long)
    ]
    caption = (
        f"{book.title(key)}, {book.fabric(fabric)}: {book.say.measure(plan.length)} of cloth is "
        f"cut, strip by strip in this order.{_left(book.say, plan)}"
    )
    steps.add(
        fabric,
        "\n\n".join(
            [
                f"**{book.fabric(fabric)}.** {strips[0]}",
                *strips[1:],
                *afterwards(book.say, book.plans[key], plan),
            ]
        ),
        sizes=[key],
        figure=figure("cutting-layout", key, caption, fabric=fabric),
    )


def _left(tell: Lengths, plan: FabricPlan) -> str:
    """Say how large a piece is left, unless the fabric is at hand and its table says so."""
    if plan.left is None or plan.spare is not None:
        return ""
    return f" A piece of {tell.rectangle(*plan.left)} is left."


def _ready_cut(book: Book, key: str, fabric: str, plan: PrecutPlan, steps: StepList) -> None:
    """Add the one step that cuts a fabric bought as fat quarters, squares or strips."""
    bought = sold(book.say, plan.used, plan.sold_as, sizes=False)
    caption = f"{book.title(key)}, {book.fabric(fabric)}: how {bought} are cut."
    more = afterwards(book.say, book.plans[key], book.plans[key].fabrics[fabric])
    steps.add(
        fabric,
        "\n\n".join(
            [
                f"**{book.fabric(fabric)}.** {first}" if at == 0 else first
                for at, first in enumerate([*sheet_steps(book.say, plan), *more])
            ]
        ),
        sizes=[key],
        figure=figure("cutting-layout", key, caption, fabric=fabric),
    )


def _table(book: Book, key: str) -> Table:
    rows: list[Row] = []
    notes: list[str] = []
    for fabric, plan in book.plans[key].fabrics.items():
        rows.append(Row((book.fabric(fabric),), "group", fabric=fabric))
        rows += [Row(_row(book, key, piece, plan)) for piece in plan.pieces]
        notes += [f"{book.fabric(fabric)}: {choice}." for choice in plan.choices]
    rounded = exact_notes(book.say, book.plans[key].pieces)
    return Table(
        f"cutting-{key}",
        f"Pieces for the {book.title(key)}",
        _HEAD,
        tuple(rows),
        "lllrl",
        (*notes, *rounded),
    )


def _row(book: Book, key: str, piece: Piece, plan: FabricPlan) -> tuple[str, ...]:
    name = capital(piece.name)
    if piece.joined_from > 1:
        name += f", joined from {number(piece.joined_from)}"
    trimmed = piece.note.startswith("trim to") and piece.purpose == "ground"
    note = trim_note(book, key) if trimmed else piece.note
    shape = becomes(book.plans[key], piece)
    name += "".join(f"; {words}" for words in (shape, note) if words)
    strips: dict[tuple[Fraction, bool], int] = {}
    for strip in plan.strips:
        if any(c.letter == piece.letter for c in strip.held):
            within = all(c.letter != piece.letter for c in strip.cuts)
            strips[strip.depth, within] = strips.get((strip.depth, within), 0) + strip.count
    from_ = listed(
        [
            f"{'sections of ' if within else ''}{counted(n, 'strip')} {book.say.measure(d)} deep"
            for (d, within), n in strips.items()
        ]
    )
    if plan.precut is not None:
        from_ = source(book.say, plan.precut, piece.letter)
    cut = book.say.rectangle(*plan.lies(piece))
    return f"**{piece.letter}**", name, cut, str(piece.count), capital(from_) or "–"

"""Cutting: a table of pieces for each size, and each fabric's strips in cutting order.

In: fabric plans, the moments of cutting. Out: a section with a child for each size, or one.
Invariant: every piece of the plan is in its fabric's table, with its size and number; the
steps give the order of the layout beside them, and how many come from a strip.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from publish.model.cutplan import FabricPlan, Piece
from publish.model.words import Paragraph, Row, Section, Table
from publish.operations.cutting import SetOutCutting, StraightenCloth
from publish.operations.operation import Moment
from publish.operations.piece_templates import MakeTemplates
from publish.operations.trusted import Trusted
from publish.words.values import Count, Length, Named, Said, Values, Word
from publish.write import order
from publish.write.context import Book
from publish.write.cutting_shapes import add_steps, becomes
from publish.write.steps import StepList, slug
from publish.write.tell import Asked, Teller
from publish.write.trimming import TRIM, trim_note

CHAPTER = "cutting"
GENERAL = (StraightenCloth, SetOutCutting, MakeTemplates)
MAT = Fraction(24)
"""Inches: about the depth of a large cutting mat. Common practice, no source."""


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on cutting."""
    speak = book.words
    deep = Word("yes" if _deepest(book) > MAT else "no")
    values: Values = {
        "deep": deep,
        "mat": Length(book.pattern.measures.usual(MAT)),
        "sizes": Count(len(book.keys)),
    }
    title, lead = (speak.text("chapter-cutting", part=part) for part in ("", "lead"))
    made = {k: m for k, m in book.making.chapter(CHAPTER).items() if k in book.keys}
    general = {k: [m for m in ms if isinstance(m.operation, GENERAL)] for k, ms in made.items()}
    apart = (*GENERAL, Trusted)
    fabrics = {k: [m for m in ms if not isinstance(m.operation, apart)] for k, ms in made.items()}
    how = _how(book, values)
    shapes = StepList(book, CHAPTER)
    add_steps(book, shapes)
    if len(book.keys) == 1:
        (key,) = book.keys
        teller = Teller(book, CHAPTER, Asked(values=values))
        told = (
            *teller.blocks(CHAPTER, book.keys, general),
            shapes.block(),
            _table(book, key),
            *teller.blocks(CHAPTER, book.keys, fabrics),
        )
        return order.numbered((Section(CHAPTER, title, (how, *told), lead),))
    teller = Teller(book, CHAPTER, Asked(values=values))
    blocks = (how, *teller.blocks(CHAPTER, book.keys, general), shapes.block())
    found = [Section(CHAPTER, title, blocks, lead), *(_size(book, k, fabrics[k]) for k in made)]
    return order.numbered(tuple(found))


def _deepest(book: Book) -> Fraction:
    plans = (p for k in book.keys for p in book.plans[k].fabrics.values())
    return max((s.depth for p in plans for s in p.strips), default=Fraction(0))


def _how(book: Book, values: Values) -> Paragraph:
    """Say where sizes and where the order stand."""
    plans = [p for k in book.keys for p in book.plans[k].fabrics.values()]
    told = ["cutting-how"]
    if any(strip.sections for plan in plans for strip in plan.strips):
        told.append("cutting-sections")
    return Paragraph(" ".join(book.words.text(name, values) for name in told))


def _size(book: Book, key: str, moments: Sequence[Moment]) -> Section:
    """Return a size's own section: its table, and a step for each fabric."""
    name = slug(CHAPTER, key)
    title = book.words.text("cutting-size", {"size": Named(book.title(key))})
    told = Teller(book, CHAPTER, Asked()).blocks(name, (key,), {key: moments})
    return Section(name, title, (_table(book, key), *told), sizes=(key,), parent=CHAPTER)


def _table(book: Book, key: str) -> Table:
    speak = book.words
    rows: list[Row] = []
    for fabric, plan in book.plans[key].fabrics.items():
        rows.append(Row((book.fabric(fabric),), "group", fabric=fabric))
        rows += [Row(_row(book, key, piece, plan)) for piece in plan.pieces]
    return Table(
        f"cutting-{key}",
        speak.text("cutting-pieces", {"size": Named(book.title(key))}),
        ("", *(book.text("chapter-cutting", part) for part in ("piece", "size", "count"))),
        tuple(rows),
        "lllr",
    )


def _row(book: Book, key: str, piece: Piece, plan: FabricPlan) -> tuple[str, ...]:
    name = book.text("piece-row", name=piece.called, joined=Count(piece.joined_from))
    note = piece.note
    if isinstance(note, Said) and note.message == TRIM and piece.purpose == "ground":
        note = trim_note(book, key)
    shape = becomes(book, book.plans[key], piece)
    said = (shape, book.words.value(note) if note is not None else "")
    name += "".join(f"; {words}" for words in said if words)
    cut = book.say.rectangle(*plan.lies(piece))
    return f"**{piece.letter}**", name, cut, str(piece.count)

"""The quilting plan: areas, styles and lengths in a table, the lines in pictures.

In: quilting lines, sizes. Out: what stands amid the steps of the chapter.
Invariant: the spacing and length of each area's lines are the drafted ones; the batting's
own label decides how far apart lines may be.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import QuiltingLines
from publish.model.words import Block, Box, FigureBlock, Row, Table
from publish.words.en.lengths import Lengths
from publish.words.en.phrase import capital
from publish.words.values import Titles, Value, Word
from publish.write.context import Book
from publish.write.steps import figure
from publish.write.tell import Asked


def asked(book: Book) -> Asked:
    """Return how the chapter is told: the quilting plan stands before quilting begins."""
    finishes = "quilts" if not book.pillows else "mixed" if book.quilts else "pillows"
    pillows = Titles(tuple(book.title(k) for k in book.pillows))
    box = _label(book)
    amid = (_table(book), *_plans(book), *((box,) if box is not None else ()))
    values: dict[str, Value] = {"finishes": Word(finishes), "pillows": pillows}
    return Asked(values=values, amid=("begin", amid))


AREAS = {"motif": "the motif", "ground": "the ground", "border": "the borders"}


def area_name(book: Book, area: str) -> str:
    """Return what an area is called; without motifs the ground is the patchwork."""
    return "the patchwork" if area == "ground" and not book.motifs else AREAS[area]


def _spacing(tell: Lengths, lines: QuiltingLines) -> str:
    return tell.measure(lines.spacing) if lines.spacing is not None else "–"


def style_text(lines: QuiltingLines) -> str:
    """Return a style of quilting in words, for a table."""
    return {
        "ditch": "in the ditch, beside the edge",
        "echo": "echo lines",
        "parallel": "parallel lines",
        "grid": "a grid",
    }.get(lines.style, "as you like")


def _table(book: Book) -> Table:
    rows: list[Row] = []
    for key in book.keys:
        drafted = book.drafts[key].quilting
        if len(book.keys) > 1 and drafted:
            rows.append(Row((book.title(key),), "group"))
        for lines in drafted:
            length = book.say.run(lines.length) if lines.length > 0 else "–"
            cells = (
                capital(area_name(book, lines.area)),
                capital(style_text(lines)),
                _spacing(book.say, lines),
                length,
            )
            rows.append(Row(cells))
        told = [q.length for q in drafted if q.length > 0]
        if len(told) > 1:
            rows.append(Row(("Together", "", "", book.say.run(*told)), "total"))
    nearest = "10 cm" if book.pattern.measures.metric else "quarter yard"
    return Table(
        "quilting-plan",
        "The quilting plan",
        ("Where", "How", "Apart", "Length of the lines"),
        tuple(rows),
        "lllr",
        (f"Lengths are of the lines themselves, each to the nearest {nearest}.",),
    )


def _plans(book: Book) -> list[Block]:
    return [
        FigureBlock(figure("quilting", k, f"{book.title(k)}: the quilting lines."))
        for k in book.keys
        if book.drafts[k].quilting
    ]


def _label(book: Book) -> Block | None:
    """Say what the batting's label must allow, by batting."""
    gaps: dict[str, Fraction] = {}
    for key in book.keys:
        batting = book.sizes[key].batting
        if batting is not None and batting.largest_gap is not None:
            gaps[batting.name] = batting.largest_gap
    text = "The label of your batting says how far apart lines of quilting may be. Read it first."
    items = [text]
    items += [
        f"This plan was made for **{name}**, with lines no more than {book.say.measure(gap)} apart."
        for name, gap in gaps.items()
    ]
    items.append("If your batting asks for closer lines, add lines between those drawn.")
    return Box("note", "How far apart", tuple(items))

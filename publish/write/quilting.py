"""The quilting plan: areas, styles and lengths in a table, the lines in pictures.

In: quilting lines, sizes. Out: what stands amid the steps of the chapter.
Invariant: the spacing and length of each area's lines are the drafted ones; the batting's
own label decides how far apart lines may be.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import QuiltingLines
from publish.model.words import Block, Box, FigureBlock, Row, Table
from publish.words.values import Length, Named, Run, Value, Word
from publish.write.context import Book
from publish.write.steps import figure, slug
from publish.write.tell import Asked

_NONE = "–"
_TABLE, _NOTE = "table-quilting", "note-apart"


def asked(book: Book) -> Asked:
    """Return how the chapter is told: the quilting plan stands before quilting begins."""
    finishes = "quilts" if not book.pillows else "mixed" if book.quilts else "pillows"
    box = _label(book)
    amid = (_table(book), *_plans(book), *((box,) if box is not None else ()))
    values: dict[str, Value] = {
        "finishes": Word(finishes),
        "pillows": book.called(book.pillows),
    }
    return Asked(values=values, amid=("begin", amid))


def _area(book: Book, area: str) -> str:
    """Return what an area is called; without motifs the ground is the patchwork."""
    patchwork = area == "ground" and not book.motifs
    return book.text("quilted-area", area=Word("patchwork" if patchwork else area))


def _cells(book: Book, lines: QuiltingLines) -> tuple[str, ...]:
    """Return where lines lie, how, how far apart and how long they are."""
    style = book.text("quilted-style", style=Word(slug(lines.style)))
    return (
        book.words.capital(_area(book, lines.area)),
        book.words.capital(style),
        book.say.measure(lines.spacing) if lines.spacing is not None else _NONE,
        book.say.run(lines.length) if lines.length > 0 else _NONE,
    )


def _table(book: Book) -> Table:
    rows: list[Row] = []
    for key in book.keys:
        drafted = book.drafts[key].quilting
        if len(book.keys) > 1 and drafted:
            rows.append(Row((book.title(key),), "group"))
        rows += [Row(_cells(book, lines)) for lines in drafted]
        told = tuple(q.length for q in drafted if q.length > 0)
        if len(told) > 1:
            together = book.text(_TABLE, "together")
            rows.append(Row((together, "", "", book.words.value(Run(told))), "total"))
    unit = Word("metric" if book.pattern.measures.metric else "yards")
    return Table(
        "quilting-plan",
        book.text(_TABLE),
        tuple(book.text(_TABLE, part) for part in ("where", "how", "apart", "length")),
        tuple(rows),
        "lllr",
        (book.text(_TABLE, "note", unit=unit),),
    )


def _plans(book: Book) -> list[Block]:
    return [
        FigureBlock(figure("quilting", k, book.text(_TABLE, "caption", size=Named(book.title(k)))))
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
    items = [
        book.text(_NOTE, "label"),
        *(
            book.text(_NOTE, "made-for", batting=Named(name), gap=Length(gap))
            for name, gap in gaps.items()
        ),
        book.text(_NOTE, "closer"),
    ]
    return Box("note", book.text(_NOTE), tuple(items))

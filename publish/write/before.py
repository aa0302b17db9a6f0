"""Before you start: printing, seams, width, pressing, washing, abbreviations.

In: pattern. Out: the section.
Invariant: the units listed are those that lengths are told in.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.words import Block, Box, Paragraph, Row, Section, Table
from publish.words.values import (
    Length,
    Named,
    Percent,
    Purchase,
    Several,
    Stitch,
    Value,
    Word,
    said,
    yes,
)
from publish.write.context import Book
from publish.write.practice import PIECING_STITCH
from publish.write.steps import StepList
from publish.write.templates import add_printing, printed

_KEY = "before-you-start"
_INCHES = (("in", "inch"), ("yd", "yard"))
_METRIC = (("mm", "millimetre"), ("cm", "centimetre"), ("m", "metre"))
"""Signs of units, the same in every language, with the messages that explain them."""


def section(book: Book) -> Section:
    """Return the section."""
    steps = StepList(book, _KEY)
    if printed(book):
        add_printing(book, steps)
    blocks: list[Block] = []
    printing = steps.block()
    if printing.items:
        blocks += [Paragraph(f"**{book.text('printing-at-full-size')}**"), printing]
    blocks.append(Box("note", book.text("note-seams"), _seams(book)))
    for name in ("note-width", "note-pressing"):
        blocks.append(Box("note", book.text(name), (book.text(name, "text"),)))
    blocks.append(Box("note", book.text("note-washing"), _washing(book)))
    blocks.append(Box("note", book.text("note-sides"), (book.text("note-sides", "text"),)))
    blocks.append(_abbreviations(book))
    lead = book.text(f"chapter-{_KEY}", "lead", your=yes(len(book.keys) > 1))
    return Section(_KEY, book.text(f"chapter-{_KEY}"), tuple(blocks), lead)


def _seams(book: Book) -> tuple[str, ...]:
    seam = book.pattern.sewing.seam
    middle = book.pattern.measures.usual(Fraction(1))
    values: dict[str, Value] = {
        "seam": Length(seam),
        "stitch": Stitch(PIECING_STITCH.value),
        "wide": Length(middle + 2 * seam),
        "middle": Length(middle),
    }
    return tuple(book.text("note-seams", part, **values) for part in ("sew", "test"))


def _washing(book: Book) -> tuple[str, ...]:
    shrinking: dict[Fraction, list[Value]] = {}
    for key in book.fabrics:
        share = book.pattern.fabrics[key].shrinkage
        if share > 0:
            shrinking.setdefault(share, []).append(Named(book.fabric(key)))
    sewing = book.pattern.sewing
    if shrinking:
        shares = tuple(
            said("shrinks-by", share=Percent(share), fabrics=Several(tuple(names)))
            for share, names in shrinking.items()
        )
        first = book.text("note-washing", "shrinks", shares=Several(shares))
    else:
        first = book.text(
            "note-washing",
            "keeps",
            unit=Word("metres" if book.pattern.measures.metric else "yards"),
            more=Purchase(sewing.yard_step, sewing.metric_step),
        )
    return (first, *(book.text("note-washing", part) for part in ("all", "colours")))


def _abbreviations(book: Book) -> Table:
    """Return the signs of the units that lengths are told in, and the others in use."""
    measures = book.pattern.measures
    signs = [
        *(_INCHES if measures.has_inches else ()),
        *(_METRIC if measures.metric or measures.both else ()),
        ("×", "by"),
    ]
    if printed(book) or any(book.pattern.fabrics[k].shrinkage for k in book.fabrics):
        signs.append(("%", "per-cent"))
    rows = tuple(Row((f"**{sign}**", book.text(f"sign-{name}"))) for sign, name in signs)
    head = (book.text("table-signs", "sign"), book.text("table-signs", "meaning"))
    return Table("abbreviations", book.text("table-signs"), head, rows)

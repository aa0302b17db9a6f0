"""The full-size templates: how to print them, how sheets join, and the sheets.

In: motifs by size. Out: a section with a child for each size, or one section.
Invariant: every motif has the template that its method asks for at every size; a wedge
for motifs that mirror, the whole motif for those that turn.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.model.words import Block, FigureBlock, Paragraph, Section, TemplateSheets
from publish.units import INCH_IN_MM, decimal_text, inches_text
from publish.write.context import Book
from publish.write.phrase import capital, measure
from publish.write.practice import SCALE_CM, SCALE_INCH
from publish.write.steps import StepList, figure


def part_of(motif: Motif) -> str:
    """Return which template a motif is cut or traced from: `wedge` or `whole`."""
    return "wedge" if motif.symmetry == "mirror" else "whole"


def add_printing(book: Book, steps: StepList) -> None:
    """Add the steps that print a template sheet true to size."""
    steps.add(
        "print",
        f"Print the template sheets{book.your_size} single-sided at **100 %**, or *actual size*. "
        "Switch off *fit to page*, *shrink* and every other scaling.",
        tip="Print one sheet first and check it before you print the rest.",
    )
    steps.add(
        "check",
        "Measure the check square on every sheet with the ruler that you cut with. One square is "
        f"{inches_text(SCALE_INCH.value)} on each side, the other "
        f"{decimal_text(SCALE_CM.value * INCH_IN_MM / 10, 0)} cm.",
        right="Both squares measure true in both directions. If they do not, change the printer's "
        "settings and print again.",
        figure=figure("scale", None, "The check square, measured both ways."),
    )


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections that hold the template sheets; none without motifs."""
    if not book.motifs:
        return ()
    lead = "Full size. Print at 100 % and check the square on every sheet before you cut the paper."
    fused = [m.method == "fusible" for m in book.motifs]
    lines = (
        "The solid line is the finished edge and the dashed line is the cut edge. "
        if not all(fused)
        else ""
    ) + ("A motif with a raw edge has one line only, its edge. " if any(fused) else "")
    intro: list[Block] = [Paragraph(
        f"{lines}Where a template takes more than one sheet, cut a sheet on the line that is "
        "marked for cutting, lay it on its neighbour so that the round marks meet, and tape the "
        "two together, in the order of the small plan."
    )]  # fmt: skip
    if len(book.keys) == 1:
        return (Section("templates", "Templates", (*intro, *_size(book, book.keys[0])), lead,
                        new_page=True),)  # fmt: skip
    found = [Section("templates", "Templates", tuple(intro), lead, new_page=True)]
    found += [
        Section(f"templates-{key}", f"Templates: {book.title(key)}", tuple(_size(book, key)),
                sizes=(key,), parent="templates")
        for key in book.with_motif(*(m.key for m in book.motifs))
    ]  # fmt: skip
    return tuple(found)


def _size(book: Book, key: str) -> list[Block]:
    blocks: list[Block] = []
    for motif in book.motifs:
        if not book.motif_count(key, motif.key):
            continue
        part = part_of(motif)
        span = book.shape(key, motif.key).span
        name = capital(f"the {part} template of the {book.motif_name(motif.key)}")
        blocks.append(Paragraph(f"{name} for the **{book.title(key)}**: the finished motif is "
                                f"{measure(span)} across."))  # fmt: skip
        blocks.append(FigureBlock(
            figure("tile-map", key, "How the sheets of the template join.", motif=motif.key,
                   part=part), "half",
        ))  # fmt: skip
        blocks.append(TemplateSheets(motif.key, key, part))
    return blocks

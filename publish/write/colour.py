"""Swatches, and the order of the fabrics from light to dark.

In: fabric colours. Out: the section.
Invariant: advice follows from computed lightness and contrast only (`publish.colour`).
"""

from __future__ import annotations

from publish.colour import lightness, lightness_step
from publish.model.words import Block, Bullets, FigureBlock, Paragraph, Row, Section, Table
from publish.words.values import Count, Length, Named, Several
from publish.write.context import Book
from publish.write.practice import CUT_AWAY
from publish.write.steps import figure

_CHAPTER = "chapter-colour-and-fabric"
_WAYS = "table-colourways"


def section(book: Book) -> Section:
    """Return the section on colour and fabric."""
    swatches = figure("swatches", None, book.text(_CHAPTER, "swatches"))
    blocks: list[Block] = [FigureBlock(swatches)]
    if len(book.fabrics) > 1:
        blocks.append(Paragraph(_order(book)))
    hints = _pairs(book)
    if hints:
        blocks.append(Bullets(hints))
    if len(book.fabrics) > 2:
        blocks.append(FigureBlock(figure("pairs", None, book.text(_CHAPTER, "pairs"))))
    blocks += _colourways(book)
    count = Count(len(book.fabrics), "fabric")
    lead = book.text(_CHAPTER, "lead", fabrics=count) if len(book.fabrics) > 1 else ""
    return Section("colour-and-fabric", book.text(_CHAPTER), tuple(blocks), lead)


def _colourways(book: Book) -> list[Block]:
    """Show the pattern's other palettes, and say what is swapped in each."""
    ways = book.pattern.colourways.values()
    if not ways:
        return []
    rows: list[Row] = []
    for way in ways:
        swaps = [(k, f.name) for k, f in way.fabrics.items() if k in book.fabrics]
        if swaps:
            rows.append(Row((way.title,), "group"))
            rows += [Row((book.fabric(key), name)) for key, name in swaps]
    caption = book.text(_WAYS, "caption", size=Named(book.title(book.keys[0])))
    head = (book.text(_WAYS, "instead"), book.text(_WAYS, "use"))
    return [
        FigureBlock(figure("colourways", book.keys[0], caption)),
        Table("colourways", book.text(_WAYS), head, tuple(rows)),
    ]


def _order(book: Book) -> str:
    light_first = sorted(
        book.fabrics, key=lambda f: lightness(book.pattern.fabrics[f].colour), reverse=True
    )
    names = tuple(Named(book.fabric(f)) for f in light_first)
    return book.text("light-to-dark", fabrics=Several(names))


def _pairs(book: Book) -> tuple[str, ...]:
    """Say, for each motif and the ground under it, which is lighter and what follows."""
    pairs = dict.fromkeys(
        (book.motif_of(b).fabric, patch.fabric)
        for k in book.keys
        for b in book.motif_blocks(k)
        for patch in book.block(b).patches
    )
    hints = [_pair(book, motif, ground) for motif, ground in pairs]
    grounds = {
        patch.fabric for k in book.keys for b in book.blocks(k) for patch in book.block(b).patches
    }
    hints += [
        book.text("fabric-directional", fabric=Named(book.fabric(f)))
        for f in book.fabrics
        if book.pattern.fabrics[f].directional
    ]
    if len(grounds) > 1 and pairs:
        hints.append(book.text("check-every-ground"))
    return tuple(hints)


def _pair(book: Book, motif: str, ground: str) -> str:
    over, under = book.pattern.fabrics[motif], book.pattern.fabrics[ground]
    how = "darker"
    if motif == ground:
        how = "same"
    elif lightness_step(under.colour, over.colour).close:
        how = "close"
    elif lightness(over.colour) > lightness(under.colour):
        how = "lighter"
    return book.text(
        f"pair-{how}",
        motif=Named(over.name),
        ground=Named(under.name),
        inside=Length(book.pattern.measures.usual(CUT_AWAY.value)),
    )

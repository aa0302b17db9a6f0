"""Swatches, and the order of the fabrics from light to dark.

In: fabric colours. Out: the section.
Invariant: advice follows from computed lightness and contrast only (`publish.colour`).
"""

from __future__ import annotations

from publish.colour import lightness, lightness_step
from publish.model.words import Block, Bullets, FigureBlock, Paragraph, Row, Section, Table
from publish.words.en.phrase import capital, counted, listed
from publish.write.context import Book
from publish.write.practice import CUT_AWAY
from publish.write.steps import figure


def section(book: Book) -> Section:
    """Return the section on colour and fabric."""
    blocks: list[Block] = [FigureBlock(figure("swatches", None, "The fabrics and their places."))]
    if len(book.fabrics) > 1:
        blocks.append(Paragraph(_order(book)))
    hints = _pairs(book)
    if hints:
        blocks.append(Bullets(hints))
    if len(book.fabrics) > 2 and "pairs" in book.pattern.extras:
        caption = (
            "Each fabric beside each other fabric. The number is the difference in lightness, "
            "with an exclamation mark where it is small. A disc estimates what shows through."
        )
        blocks.append(FigureBlock(figure("pairs", None, caption)))
    blocks += _colourways(book)
    lead = f"{capital(counted(len(book.fabrics), 'fabric'))}." if len(book.fabrics) > 1 else ""
    return Section("colour-and-fabric", "Colour and fabric", tuple(blocks), lead)


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
    caption = f"The {book.title(book.keys[0])} as shown and in other colours."
    return [
        FigureBlock(figure("colourways", book.keys[0], caption)),
        Table("colourways", "Other colours", ("Instead of", "Use"), tuple(rows)),
    ]


def _order(book: Book) -> str:
    light_first = sorted(
        book.fabrics, key=lambda f: lightness(book.pattern.fabrics[f].colour), reverse=True
    )
    names = [book.fabric(f) for f in light_first]
    return (
        f"Light to dark: {listed(names)}. If you choose other fabrics, keep this order: take a "
        "photo of them in black and white."
    )


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
        f"{book.fabric(f)} has a direction: keep the top of its print to the top of the quilt."
        for f in book.fabrics
        if book.pattern.fabrics[f].directional
    ]
    if len(grounds) > 1 and pairs:
        hints.append("Check the motif against every fabric of the ground.")
    return tuple(hints)


def _pair(book: Book, motif: str, ground: str) -> str:
    over, under = book.pattern.fabrics[motif], book.pattern.fabrics[ground]
    if motif == ground:
        return (
            f"The motif and its ground are both {over.name}: the quilting alone will draw the "
            "outline."
        )
    if lightness_step(under.colour, over.colour).close:
        return (
            f"{over.name} and {under.name} are close in lightness: the motif will be subtle. "
            "Choose a lighter or a darker fabric for one if it is to stand out."
        )
    if lightness(over.colour) > lightness(under.colour):
        return (
            f"{over.name} is lighter than {under.name} beneath it. Hold one over the other in "
            "daylight. If the ground shows through, choose a closer weave, line the motif with "
            "thin white cotton, or cut the ground away behind it "
            f"{book.usual(CUT_AWAY.value)} inside the stitches."
        )
    return f"{over.name} is darker than {under.name} beneath it: no show-through."

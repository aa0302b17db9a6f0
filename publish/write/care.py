"""Label, washing, and the page to colour in; the last page with edition and licence.

In: pattern, batting, fabrics. Out: three sections.
Invariant: washing defers to the makers' labels; nothing is printed that the designer left
empty.
"""

from __future__ import annotations

from publish.model.words import Block, Bullets, FigureBlock, Paragraph, Section
from publish.words.en.phrase import listed
from publish.write.context import Book
from publish.write.motifs import flat, folded
from publish.write.steps import figure
from publish.write.tell import Asked


def asked(book: Book) -> Asked:
    """Return how the chapter is told: how to wash the piece stands after its label."""
    care = [
        "Wash as the labels of your fabrics and batting say; where they differ, follow the "
        "gentler one. A cool, gentle wash and drying flat in the shade suit most cotton pieces.",
        "Test strong colours before the first wash: press a damp white cloth on each fabric and "
        "look for dye.",
        "Do not wring, and do not iron the quilted surface flat.",
    ]
    if folded(book) or flat(book):
        care.append(
            "Remove every mark, then wash the starch out: it yellows, and it draws insects in "
            "storage."
        )
    if book.pillows:
        care.append("Take the form out of the cover before washing.")
    care.append(
        "Store it rolled or loosely folded, out of the sun and not in plastic. Refold it "
        "now and then."
    )
    return Asked(closing=(Bullets(tuple(care)),))


def colouring(book: Book) -> Section | None:
    """Return the page to colour in, where it is asked for: the largest size in outline."""
    if "colouring" not in book.pattern.extras:
        return None
    key = book.largest
    caption = f"The {book.title(key)} in outline." if key is not None and len(book.keys) > 1 else ""
    block = FigureBlock(figure("colouring", key, caption), "page")
    lead = "Copy this page and try your own colours before you buy."
    return Section("colouring-page", "Colouring page", (block,), lead, new_page=True)


def edition(book: Book) -> Section:
    """Return the last page: edition, licence, where to report a mistake."""
    out = book.pattern.publication
    named = ", ".join(t for t in (out.stock_number, out.edition, str(out.year or "")) if t)
    blocks: list[Block] = [
        Paragraph(f"**{book.pattern.title}**" + (f", {out.studio}" if out.studio else "") + ".")
    ]
    if named:
        blocks.append(Paragraph(f"{named}."))
    if out.licence:
        blocks.append(Paragraph(out.licence))
    mistake = (
        "Every number in this booklet is computed from one drawing and checked. If you find a "
        "mistake all the same, please tell us: name the edition, the size and the step."
    )
    if out.contact:
        mistake += f" Write to {out.contact}."
    elif out.studio:
        mistake += f" Write to {out.studio}."
    blocks.append(Paragraph(mistake))
    blocks += _computed(book)
    return Section("edition", "This edition", tuple(blocks))


def _computed(book: Book) -> list[Block]:
    """Say which pictures are computed, so that nobody takes them for photographs."""
    pattern = book.pattern
    if pattern.cover == "drawn":
        return []
    named = [] if any(p.place == "cover" for p in pattern.photos) else ["on the front cover"]
    named += ["of all sizes" if len(book.keys) > 1 else "of the whole"]
    named += ["of other colours"] if pattern.colourways else []
    return [
        Paragraph(
            f"The pictures {listed(named)} are computed, not photographed: the pattern's own "
            "shapes, seams and lines of quilting, in the colours of its fabrics."
        )
    ]

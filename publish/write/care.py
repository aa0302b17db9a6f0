"""Label, washing, and the page to colour in; the last page with edition and licence.

In: pattern, batting, fabrics. Out: three sections.
Invariant: washing defers to the makers' labels; nothing is printed that the designer left
empty.
"""

from __future__ import annotations

from publish.model.words import Block, Bullets, FigureBlock, Paragraph, Section
from publish.words.values import Count, Named, Several, said
from publish.write.context import Book
from publish.write.motifs import flat, folded
from publish.write.steps import figure
from publish.write.tell import Asked


def asked(book: Book) -> Asked:
    """Return how the chapter is told: how to wash the piece stands after its label."""
    care = ["wash", "colours", "wring"]
    if folded(book) or flat(book):
        care.append("starch")
    if book.pillows:
        care.append("form")
    care.append("store")
    return Asked(closing=(Bullets(tuple(book.text(f"care-{name}") for name in care)),))


def colouring(book: Book) -> Section:
    """Return the page to colour in: the largest size in outline."""
    key, chapter = book.largest, "chapter-colouring-page"
    caption = ""
    if key is not None and len(book.keys) > 1:
        caption = book.text(chapter, "caption", size=Named(book.title(key)))
    block = FigureBlock(figure("colouring", key, caption), "page")
    title, lead = (book.text(chapter, part) for part in ("", "lead"))
    return Section("colouring-page", title, (block,), lead, new_page=True)


def edition(book: Book) -> Section:
    """Return the last page: edition, licence, where to report a mistake."""
    out, chapter = book.pattern.publication, "chapter-edition"
    named = ", ".join(t for t in (out.stock_number, out.edition, str(out.year or "")) if t)
    blocks: list[Block] = [
        Paragraph(f"**{book.pattern.title}**" + (f", {out.studio}" if out.studio else "") + ".")
    ]
    if named:
        blocks.append(Paragraph(f"{named}."))
    if out.licence:
        blocks.append(Paragraph(out.licence))
    mistake = [book.text(chapter, "mistake")]
    address = out.contact or out.studio
    if address:
        mistake.append(book.text(chapter, "write", address=Named(address)))
    blocks.append(Paragraph(" ".join(mistake)))
    blocks += _computed(book)
    return Section("edition", book.text(chapter), tuple(blocks))


def _computed(book: Book) -> list[Block]:
    """Say which pictures are computed, so that nobody takes them for photographs."""
    pattern = book.pattern
    if pattern.cover == "drawn":
        return []
    named = [] if any(p.place == "cover" for p in pattern.photos) else [said("picture-cover")]
    named.append(said("picture-sizes", sizes=Count(len(book.keys))))
    named += [said("picture-colours")] if pattern.colourways else []
    return [Paragraph(book.text("chapter-edition", "computed", pictures=Several(tuple(named))))]

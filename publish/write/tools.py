"""The tools, as a list to tick.

In: which methods and finishes the pattern uses. Out: the section.
Invariant: a tool is listed only when a step asks for it.
"""

from __future__ import annotations

from publish.model.words import Block, Bullets, Paragraph, Section
from publish.write.context import Book
from publish.write.cutting_shapes import with_triangles
from publish.write.foundation import on_foundations
from publish.write.motifs import by_method, flat, folded


def section(book: Book) -> Section:
    """Return the checklist of tools."""
    blocks: list[Block] = [
        Paragraph("**For cutting and piecing**"),
        Bullets(_machine(book), check=True),
    ]
    if book.motifs:
        blocks += [Paragraph("**For the motif**"), Bullets(_motif(book), check=True)]
    paper = _paper(book)
    if paper:
        blocks += [Paragraph("**For templates and foundations**"), Bullets(paper, check=True)]
    blocks += [Paragraph("**For quilting and finishing**"), Bullets(_finish(book), check=True)]
    return Section("tools", "Tools", tuple(blocks), "Lay them out before you begin.")


def _machine(book: Book) -> tuple[str, ...]:
    seam = book.say.short(book.pattern.sewing.seam)
    marked = (
        ("A fine pencil or a removable marker for lines on the wrong side",)
        if "marker" in _used(book)
        or any(book.plans[k].makings or book.plans[k].templates for k in book.keys)
        else ()
    )
    angled = any(p.shape != "rectangle" for k in book.keys for p in book.plans[k].pieces)
    line = " with a line at 45 degrees" if angled else ""
    starch = ("Spray or liquid starch",) if with_triangles(book) and not _turned(book) else ()
    return (
        "Rotary cutter with a fresh blade, self-healing mat and a long quilter's ruler",
        f"A large square ruler{line} for trimming",
        f"Sewing machine in good order, new needles in size 80/12 for piecing and 90/14 for "
        f"quilting, 50 wt cotton thread, and a foot or guide for a {seam} seam",
        "Iron, a firm pressing surface and a thick towel",
        "Straight pins, seam ripper and scissors for thread",
        *marked,
        *starch,
    )


def _used(book: Book) -> set[str]:
    """Return the tools that operations take."""
    made = book.making.sizes.values()
    return {tool for size in made for operation in size.operations for tool in operation.uses}


def _paper(book: Book) -> tuple[str, ...]:
    """Return what templates of pieces and foundations ask for."""
    cut = any(book.plans[k].templates for k in book.keys)
    paper = bool(on_foundations(book))
    if not cut and not paper:
        return ()
    items = [] if book.motifs else ["A printer and plain paper"]
    if cut:
        items.append("Thin card and a glue stick, or template plastic, and scissors for paper")
    if _curved(book):
        items.append("Many fine pins for curved seams")
    if paper:
        items += [
            "Thin paper for foundations that tears easily and may go through the printer",
            "A stout machine needle, such as size 90/14, and tweezers",
        ]
    return tuple(items)


def _turned(book: Book) -> bool:
    return bool(folded(book) or flat(book))


def _curved(book: Book) -> bool:
    return any(p.arcs for k in book.keys for p in book.drafts[k].patches)


def _motif(book: Book) -> tuple[str, ...]:
    turned = _turned(book)
    items = ["A printer, plain paper of light weight, and scissors for paper"]
    if any(m.symmetry != "mirror" for m in book.motifs):
        items.append("Clear tape, and a light box or a bright window")
    items.append("Small scissors that are sharp to the tip, and larger ones for many layers")
    if turned:
        items += [
            "A fine marker for fabric, such as a chalk or white pencil, that shows on the motif, "
            "survives the iron and washes out",
            "Spray or liquid starch",
            "Hand needle and contrasting thread for basting",
        ]
    if by_method(book, "needle-turn"):
        items.append("Fine appliqué needles, long and thin, such as straw needles in size 10 or 11")
    if by_method(book, "prepared edge"):
        items += [
            "Freezer paper, a stapler, a small brush and a pointed wooden stick",
            "A fine hand needle",
        ]
    if by_method(book, "fusible"):
        items += ["A pencil", "A protective cloth for the pressing surface"]
    items.append("Short, fine pins that do not catch the thread")
    return tuple(items)


def _finish(book: Book) -> tuple[str, ...]:
    items = [
        "Walking foot, or a short quilting needle, size 9 or 10, and a thimble for quilting by "
        "hand",
        "Safety pins, or thread, for basting the layers, and tape for the backing",
    ]
    styles = {q.style for k in book.keys for q in book.quilted(k)}
    if any(q.area == "motif" and q.style == "ditch" for k in book.keys for q in book.quilted(k)):
        items.append("A free-motion foot for tight curves")
    if styles & {"parallel", "grid", "echo"}:
        items.append(
            "Chalk, or a marker that washes out, for the first lines of quilting, and a guide bar "
            "for the foot or tape for the others"
        )
    if [k for k in book.keys if book.plans[k].binding is not None]:
        items.append("Clips for the binding and a hand needle for finishing it")
    if any(p.back == "zip" for k in book.keys if (p := book.plans[k].pillow) is not None):
        items.append("A zipper foot")
    if book.pillows:
        items.append("A blunt point for turning corners, such as a knitting needle")
    items.append("A permanent fabric pen or embroidery thread for the label")
    return tuple(items)

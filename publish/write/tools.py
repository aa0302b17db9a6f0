"""The tools, as a list to tick.

In: which methods and finishes the pattern uses. Out: the section.
Invariant: a tool is listed only when a step asks for it.
"""

from __future__ import annotations

from publish.model.words import Block, Bullets, Paragraph, Section
from publish.words.values import Length, yes
from publish.write.context import Book
from publish.write.cutting_shapes import with_triangles
from publish.write.foundation import on_foundations
from publish.write.motifs import by_method, flat, folded

_CHAPTER = "chapter-tools"


def section(book: Book) -> Section:
    """Return the checklist of tools."""
    lists = {
        "piecing": _machine(book),
        "motif": _motif(book) if book.motifs else [],
        "paper": _paper(book),
        "finishing": _finish(book),
    }
    blocks: list[Block] = []
    for part, tools in lists.items():
        if tools:
            said = tuple(_tool(book, name) for name in tools)
            blocks += [Paragraph(f"**{book.text(_CHAPTER, part)}**"), Bullets(said, check=True)]
    return Section("tools", book.text(_CHAPTER), tuple(blocks), book.text(_CHAPTER, "lead"))


def _tool(book: Book, name: str) -> str:
    angled = any(p.shape != "rectangle" for k in book.keys for p in book.plans[k].pieces)
    seam = Length(book.pattern.sewing.seam)
    return book.text(f"tool-{name}", angled=yes(angled), seam=seam)


def _machine(book: Book) -> list[str]:
    """Return what cutting and piecing ask for."""
    marked = "marker" in _used(book) or any(
        book.plans[k].makings or book.plans[k].templates for k in book.keys
    )
    starched = with_triangles(book) and not _turned(book)
    return [
        *("cutter", "square", "machine", "iron", "pins"),
        *(["marker"] if marked else []),
        *(["starch"] if starched else []),
    ]


def _used(book: Book) -> set[str]:
    """Return the tools that operations take."""
    made = book.making.sizes.values()
    return {tool for size in made for operation in size.operations for tool in operation.uses}


def _paper(book: Book) -> list[str]:
    """Return what templates of pieces and foundations ask for."""
    cut = any(book.plans[k].templates for k in book.keys)
    paper = bool(on_foundations(book))
    if not cut and not paper:
        return []
    return [
        *([] if book.motifs else ["paper-printer"]),
        *(["paper-card"] if cut else []),
        *(["paper-pins"] if _curved(book) else []),
        *(["paper-foundations", "paper-needle"] if paper else []),
    ]


def _turned(book: Book) -> bool:
    return bool(folded(book) or flat(book))


def _curved(book: Book) -> bool:
    return any(p.arcs for k in book.keys for p in book.drafts[k].patches)


def _motif(book: Book) -> list[str]:
    """Return what marking, cutting and sewing motifs ask for."""
    found = ["motif-printer"]
    if any(m.symmetry != "mirror" for m in book.motifs):
        found.append("motif-tape")
    found.append("motif-scissors")
    if _turned(book):
        found += ["motif-marker", "starch", "motif-basting"]
    if by_method(book, "needle-turn"):
        found.append("motif-needles")
    if by_method(book, "prepared edge"):
        found += ["motif-freezer", "motif-hand-needle"]
    if by_method(book, "fusible"):
        found += ["motif-pencil", "motif-cloth"]
    return [*found, "motif-pins"]


def _finish(book: Book) -> list[str]:
    """Return what layering, quilting and finishing ask for."""
    found = ["quilting", "basting"]
    styles = {q.style for k in book.keys for q in book.quilted(k)}
    if any(q.area == "motif" and q.style == "ditch" for k in book.keys for q in book.quilted(k)):
        found.append("free-motion")
    if styles & {"parallel", "grid", "echo"}:
        found.append("lines")
    if any(book.plans[k].binding is not None for k in book.keys):
        found.append("binding")
    if any(p.back == "zip" for k in book.keys if (p := book.plans[k].pillow) is not None):
        found.append("zipper-foot")
    if book.pillows:
        found.append("point")
    return [*found, "label"]

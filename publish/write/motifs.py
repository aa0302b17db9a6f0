"""What other sections ask about motifs, and how the chapters on them are told.

In: motifs in use. Out: motifs by how they are cut and applied; `Asked` for the chapters.
Invariant: motifs come in the pattern's order.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.model.words import Section
from publish.operations.folding import is_folded
from publish.words.values import Values, yes
from publish.write.context import Book
from publish.write.tell import Asked, chapter

CHAPTERS = (
    "folding",
    "marking-and-cutting-the-motif",
    "preparing-the-edge",
    "placing",
    "applique",
    "applique-prepared",
    "fusing",
)
"""In reading order."""


def by_method(book: Book, method: str) -> tuple[Motif, ...]:
    """Return the motifs in use that are applied in one way."""
    return tuple(m for m in book.motifs if m.method == method)


def folded(book: Book) -> tuple[Motif, ...]:
    """Return the motifs that are cut from folded cloth."""
    return tuple(m for m in book.motifs if is_folded(m.symmetry, m.method, m.folds))


def flat(book: Book) -> tuple[Motif, ...]:
    """Return the motifs that are turned under but marked and cut on flat cloth."""
    wedges = folded(book)
    return tuple(m for m in book.motifs if m.method != "fusible" and m not in wedges)


def sections(book: Book) -> tuple[Section, ...]:
    """Return every chapter on motifs, in reading order."""
    return tuple(s for name in CHAPTERS for s in chapter(book, name, _asked(book, name)))


def _asked(book: Book, name: str) -> Asked:
    fused = name == "fusing"
    used = dict.fromkeys(b for k in book.keys for b in book.motif_blocks(k))
    mine = [b for b in used if (book.motif_of(b).method == "fusible") == fused]
    wholes = sum(not book.pieced(b) for b in mine)
    counts = (book.motif_count(k, m.key) for k in book.keys for m in book.motifs)
    pieced = any(book.pieced(b) for k in book.keys for b in book.motif_blocks(k))
    values: Values = {
        "several": yes(len(book.motifs) > 1),
        "your": yes(len(book.keys) > 1),
        "folded": yes(bool(folded(book))),
        "many": yes(max(counts, default=0) > 1),
        "pieced": yes(pieced),
        "wholes": yes(wholes > 1),
        "pieceds": yes(len(mine) - wholes > 1),
    }
    return Asked(values=values)

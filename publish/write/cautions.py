"""The usual cautions, where the work or the finished piece could hurt someone.

In: which tools the pattern asks for, the designer's own cautions. Out: the section.
Invariant: nothing here replaces a maker's instructions, a local code or a trained eye, and
the text says so.

Sources, for the facts alone: American Academy of Pediatrics, Sleep-Related Infant Deaths:
Updated 2022 Recommendations, Pediatrics 150(1) e2022057990, abstract, and summaries of it
(soft bedding out of a baby's sleep space in the first year); 16 CFR 1501.4 (small parts
under three years); NDSU Extension CB111, Quilting for Fun, and a contest safety guide
(rotary cutter, iron); ventilation for sprays is common practice, no source.
"""

from __future__ import annotations

from publish.model.words import Box, Section
from publish.words.values import Word
from publish.write.context import Book
from publish.write.cutting_shapes import with_triangles
from publish.write.motifs import by_method

_PARTS = {
    "rotary": ("lock", "away", "blades"),
    "iron": ("stand", "steam", "unplug"),
    "machine": ("fingers", "off"),
    "sprays": ("fumes", "flames"),
    "glue": ("text",),
    "pins": ("count", "close"),
    "babies": ("text",),
    "small-parts": ("text",),
    "fire": ("burns", "rules"),
    "makers": ("text",),
}
"""Each caution with the parts of its message, in reading order; the designer's own stand
before the last."""


def section(book: Book) -> Section:
    """Return the section of cautions."""
    left_out = {
        *(() if _sprays(book) else ("sprays",)),
        *(() if any(book.plans[k].templates for k in book.keys) else ("glue",)),
    }
    *usual, last = (_box(book, name) for name in _PARTS if name not in left_out)
    boxes = (*usual, *_own(book), last)
    title, lead = (book.text("chapter-cautions", part) for part in ("", "lead"))
    return Section("cautions", title, boxes, lead)


def _box(book: Book, name: str) -> Box:
    what = Word(_sprays(book))
    title, *items = (book.text(f"caution-{name}", part, what=what) for part in ("", *_PARTS[name]))
    return Box("caution", title, tuple(items))


def _own(book: Book) -> list[Box]:
    """Return the designer's own cautions."""
    return [
        Box("caution", c.title, tuple(p.strip() for p in c.text.split("\n\n") if p.strip()))
        for c in book.pattern.cautions
    ]


def _sprays(book: Book) -> str:
    """Return what gives off fumes: `starch`, `web`, `both` or nothing."""
    turned = bool(with_triangles(book)) or any(m.method != "fusible" for m in book.motifs)
    if not by_method(book, "fusible"):
        return "starch" if turned else ""
    return "both" if turned else "web"

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
from publish.write.context import Book
from publish.write.cutting_shapes import with_triangles
from publish.write.motifs import by_method


def section(book: Book) -> Section:
    """Return the section of cautions."""
    boxes = [
        _ROTARY,
        _IRON,
        _MACHINE,
        _sprays(book),
        _glue(book),
        _PINS,
        _BABIES,
        _SMALL,
        _FIRE,
        *_own(book),
        _MAKERS,
    ]
    lead = "Please read this page before you cut, and again before you give the piece away."
    return Section("cautions", "Working safely", tuple(b for b in boxes if b), lead)


def _own(book: Book) -> list[Box]:
    """Return the designer's own cautions."""
    return [
        Box("caution", c.title, tuple(p.strip() for p in c.text.split("\n\n") if p.strip()))
        for c in book.pattern.cautions
    ]


def _sprays(book: Book) -> Box | None:
    turned = bool(with_triangles(book)) or any(m.method != "fusible" for m in book.motifs)
    fused = bool(by_method(book, "fusible"))
    if not turned and not fused:
        return None
    if turned and fused:
        title, what = "Starch, web and adhesives", "Starch, fusible web and spray adhesives"
    elif fused:
        title, what = "Fusible web and adhesives", "Fusible web and spray adhesives"
    else:
        title, what = "Starch and adhesives", "Starch and spray adhesives"
    return Box(
        "caution",
        title,
        (
            f"{what} give off fumes or mist. Use them in a well-ventilated room and do not breathe "
            "them in.",
            "Keep sprays away from flames, heaters and a hot iron. Put the can down and let "
            "the mist "
            "settle before you pick up the iron.",
        ),
    )


def _glue(book: Book) -> Box | None:
    if not any(book.plans[k].templates for k in book.keys):
        return None
    return Box(
        "caution",
        "Glue",
        ("Keep glue away from eyes and out of children's reach, and follow what its packet says.",),
    )


_ROTARY = Box(
    "caution",
    "Rotary cutter",
    (
        "Close and lock the blade every time you put the cutter down. Wear closed shoes.",
        "Cut away from your body, standing up, with your fingers clear of the edge of the ruler.",
        "Wrap old blades before you throw them away, and keep the cutter out of children's reach.",
    ),
)
_IRON = Box(
    "caution",
    "Iron",
    (
        "Stand the iron on a steady surface, on its heel or its rest, with the cord out of the "
        "way.",
        "Steam burns: keep your fingers clear of folds you are pressing.",
        "Unplug the iron when you leave the room.",
    ),
)
_MACHINE = Box(
    "caution",
    "Sewing machine",
    (
        "Keep your fingers clear of the needle and the presser foot while the machine runs.",
        "Switch the machine off to change the needle or the foot.",
    ),
)
_PINS = Box(
    "caution",
    "Pins, needles and scissors",
    (
        "Count pins and needles before and after each sitting, and run a magnet over the finished "
        "piece before it is used.",
        "Close scissors when they are out of your hand. Take breaks when you cut many layers.",
    ),
)
_BABIES = Box(
    "caution",
    "Babies",
    (
        "Keep quilts, pillows and all other loose or soft bedding out of the place where a "
        "baby under "
        "one year old sleeps. Hang a baby's quilt on the wall until then.",
    ),
)
_SMALL = Box(
    "caution",
    "Small parts",
    (
        "This pattern has no buttons or beads. Do not add any to a piece that a child under "
        "three may "
        "handle: small parts can choke.",
    ),
)
_FIRE = Box(
    "caution",
    "Fire",
    (
        "Cloth and batting burn. Keep the finished piece away from flames, candles and heaters.",
        "If you sell what you make, ask which rules on flammability, fibre labels and children's "
        "goods hold where you live.",
    ),
)
_MAKERS = Box(
    "caution",
    "Before all of this",
    (
        "The instructions that come with your tools, machine, fabrics, batting and sprays come "
        "first, "
        "and so do the laws and codes where you live. Where this booklet says something different, "
        "follow them. If you are unsure of a tool or a cord, ask someone qualified.",
    ),
)

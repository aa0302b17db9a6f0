"""From rectangles to patches: triangles, shapes from strips, templates, oversize squares.

In: pieces, the operations that cut shapes. Out: phrases for the cutting tables, steps.
Invariant: how many patches a piece gives is its count times what each of it yields.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.cutplan import CutPlan, Piece, PieceTemplate
from publish.operations.cutting import CutShapes
from publish.words.values import Count, Named, Said, Value, Values, Word
from publish.write.context import Book
from publish.write.steps import StepList

ONCE, TWICE, OVERSIZE = "once-cut triangle", "twice-cut triangle", "oversize"
STRIPS = ("parallelogram", "diamond", "hexagon", "equilateral triangle")
DIAGONAL = {ONCE: "once", TWICE: "twice"}


def template_of(plan: CutPlan, piece: Piece) -> PieceTemplate | None:
    """Return the template that a piece is cut with, or None."""
    return next((t for t in plan.templates if t.key == piece.template), None)


def becomes(book: Book, plan: CutPlan, piece: Piece) -> str:
    """Return what the cutting table says of a piece's shape: `cut once ...: 10 triangles`."""
    speak = book.words
    made = piece.count * piece.yields
    if piece.shape in DIAGONAL:
        used = sum(letter == piece.letter for letter in plan.sources.values())
        spare = made - used if 0 < used < made else 0
        values: Values = {"made": Count(made, "triangle"), "spare": Count(spare)}
        return speak.text(f"becomes-{DIAGONAL[piece.shape]}", values)
    template = template_of(plan, piece)
    if template is not None:
        over = Count(template.mirrored)
        values = {"made": Count(made, "piece-in-figures"), "over": over}
        return speak.text("becomes-template", {**values, "template": Named(template.letter)})
    if piece.shape == OVERSIZE:
        return speak.text("becomes-whole")
    if piece.shape in STRIPS:
        count = Count(made, piece.shape.replace(" ", "-"))
        return speak.text("becomes-strip", {"made": count, "leans": Word(_leans(piece))})
    return ""


def _leans(piece: Piece) -> str:
    """Return to which side a parallelogram leans: `left`, `right` or `no`."""
    keys = {value.key for value in _within(piece.called) if isinstance(value, Word)}
    return next(
        (w for w in ("left", "right") if any(k.endswith(f"leaning-{w}") for k in keys)), "no"
    )


def _within(value: Value) -> Iterator[Value]:
    """Yield a value and every value inside it."""
    yield value
    for _, inner in value.values if isinstance(value, Said) else ():
        yield from _within(inner)


def with_triangles(book: Book) -> list[str]:
    """Return the sizes in which squares are starched and cut into triangles."""
    return [k for k in book.keys if any(p.shape in DIAGONAL for p in book.plans[k].pieces)]


def _cutting(book: Book, *shapes: str) -> list[str]:
    """Return the sizes in which some operation cuts one of these shapes."""
    made = book.making.chapter("cutting")
    return [
        k
        for k in book.keys
        if any(
            isinstance(m.operation, CutShapes) and m.operation.shape in shapes
            for m in made.get(k, ())
        )
    ]


def add_steps(book: Book, steps: StepList) -> None:
    """Add the steps on cutting triangles and with templates, where operations do so."""
    twice = Word("yes" if _cutting(book, "twice") else "no")
    templates = [t for k in book.keys for t in book.plans[k].templates]
    over = Word("yes" if any(t.mirrored for t in templates) else "no")
    _add(
        book, steps, "triangles", "cut-triangles", _cutting(book, "once", "twice"), {"twice": twice}
    )
    _add(book, steps, "use-templates", "use-templates", _cutting(book, "template"), {"over": over})


def _add(
    book: Book, steps: StepList, key: str, message: str, sizes: list[str], values: Values
) -> None:
    if not sizes:
        return
    speak = book.words
    right, tip = (speak.text(message, values, part) for part in ("right", "tip"))
    steps.add(key, speak.text(message, values), sizes=sizes, right=right, tip=tip)

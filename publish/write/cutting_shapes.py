"""From rectangles to patches: triangles, shapes from strips, templates, oversize squares.

In: pieces. Out: phrases for the cutting tables, sentences and steps for cutting.
Invariant: how many patches a piece gives is its count times what each of it yields.
"""

from __future__ import annotations

from publish.model.cutplan import CutPlan, Piece, PieceTemplate
from publish.words import english
from publish.words.en.phrase import plural
from publish.write.context import Book
from publish.write.steps import StepList

ONCE, TWICE, OVERSIZE = "once-cut triangle", "twice-cut triangle", "oversize"
STRIPS = ("parallelogram", "diamond", "hexagon", "equilateral triangle")
_CUTS = {ONCE: "once on the diagonal", TWICE: "twice on the diagonal, in an X"}


def template_of(plan: CutPlan, piece: Piece) -> PieceTemplate | None:
    """Return the template that a piece is cut with, or None."""
    return next((t for t in plan.templates if t.key == piece.template), None)


def becomes(plan: CutPlan, piece: Piece) -> str:
    """Return what the cutting table says of a piece's shape: `cut once ...: 10 triangles`."""
    made = piece.count * piece.yields
    if piece.shape in _CUTS:
        used = sum(letter == piece.letter for letter in plan.sources.values())
        spare = f", {made - used} to spare" if 0 < used < made else ""
        return f"cut {_CUTS[piece.shape]}: {counted_figures(made, 'triangle')}{spare}"
    template = template_of(plan, piece)
    if template is not None:
        over = f", {template.mirrored} of them with it turned over" if template.mirrored else ""
        return f"cut {counted_figures(made, 'piece')} with template {template.letter}{over}"
    if piece.shape == OVERSIZE:
        return "left whole"
    if piece.shape in STRIPS:
        name = english(piece.called)
        leaning = name.removeprefix(piece.shape) if name.startswith(piece.shape) else ""
        return f"{counted_figures(made, piece.shape)}{leaning}"
    return ""


def counted_figures(count: int, noun: str) -> str:
    """Return `10 triangles`: for tables, in figures."""
    return f"{count} {plural(count, noun)}"


def with_triangles(book: Book) -> list[str]:
    """Return the sizes in which squares are starched and cut into triangles."""
    return [k for k in book.keys if any(p.shape in _CUTS for p in book.plans[k].pieces)]


def add_steps(book: Book, steps: StepList) -> None:
    """Add the steps on cutting triangles, shapes and with templates, where there are any."""
    shapes = {p.shape for k in book.keys for p in book.plans[k].pieces}
    cut = with_triangles(book)
    if cut:
        both = " from corner to corner"
        steps.add(
            "triangles",
            f"Cut a square into two triangles with one cut{both}"
            + (
                "; cut it into four with a second cut across the first, before you move the parts"
                if TWICE in shapes
                else ""
            )
            + ".",
            sizes=cut,
            right="The cut runs through both corners.",
            tip="The long side of a triangle cut once, and the short sides of one cut twice, are "
            "bias edges and stretch. Press the square with starch before you cut it, and handle "
            "the triangles as little as you can.",
        )
    with_template = [k for k in book.keys if book.plans[k].templates]
    if with_template:
        _template_steps(book, steps, with_template)


def _template_steps(book: Book, steps: StepList, keys: list[str]) -> None:
    over = any(t.mirrored for k in keys for t in book.plans[k].templates)
    steps.add(
        "make-templates",
        "Glue the printed piece templates to thin card or trace them on template plastic, with the "
        "grain line, the letter and the notches, and cut them out on the outer line.",
        sizes=keys,
        right="Laid on its sheet, each template covers its outer line and no more.",
    )
    steps.add(
        "use-templates",
        "Lay a template on the wrong side of the cloth, its grain line along the threads, draw "
        "round it and cut on the line. Mark every notch in the allowance with a short pencil "
        "line."
        + (
            " Where the table says so, turn the template over: those pieces are mirror images."
            if over
            else ""
        ),
        sizes=keys,
        right="The pieces lie on each other edge to edge.",
    )

"""From rectangles to patches: triangles, shapes from strips, templates, oversize squares.

In: pieces. Out: phrases for the cutting tables, sentences and steps for cutting.
Invariant: how many patches a piece gives is its count times what each of it yields.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.measures import CM
from publish.model.cutplan import CutPlan, FabricPlan, Piece, PieceTemplate
from publish.surd import Exact
from publish.units import decimal_text
from publish.words.en.lengths import Lengths
from publish.words.en.phrase import counted, listed, number, plural
from publish.write.context import Book
from publish.write.steps import StepList

ONCE, TWICE, TEMPLATE, OVERSIZE = "once-cut triangle", "twice-cut triangle", "template", "oversize"
STRIPS = ("parallelogram", "diamond", "hexagon", "equilateral triangle")
_CUTS = {ONCE: "once on the diagonal", TWICE: "twice on the diagonal, in an X"}
_PLACES = 4


def template_of(plan: CutPlan, piece: Piece) -> PieceTemplate | None:
    """Return the template that a piece is cut with, or None."""
    return next((t for t in plan.templates if t.key == piece.template), None)


def becomes(plan: CutPlan, piece: Piece) -> str:
    """Return what the cutting table says of a piece's shape: `cut once ...: 10 triangles`."""
    made = piece.count * piece.yields
    if piece.shape in _CUTS:
        return f"cut {_CUTS[piece.shape]}: {counted_figures(made, 'triangle')}"
    template = template_of(plan, piece)
    if template is not None:
        over = f", {template.mirrored} of them with it turned over" if template.mirrored else ""
        return f"cut {counted_figures(made, 'piece')} with template {template.letter}{over}"
    if piece.shape == OVERSIZE:
        return "left whole"
    if piece.shape in STRIPS:
        return counted_figures(made, piece.shape)
    return ""


def counted_figures(count: int, noun: str) -> str:
    """Return `10 triangles`: for tables, in figures."""
    return f"{count} {plural(count, noun)}"


def afterwards(tell: Lengths, plan: CutPlan, fabric: FabricPlan) -> list[str]:
    """Return what is done to a fabric's rectangles once they are cut, a sentence each."""
    found = []
    for shape, cut in _CUTS.items():
        mine = [p for p in fabric.pieces if p.shape == shape]
        if mine:
            each = listed([f"**{p.letter}**" for p in mine])
            gives = listed([_triangles(plan, p) for p in mine])
            found.append(f"Cut each square {each} {cut}: {gives}.")
    for piece in fabric.pieces:
        template = template_of(plan, piece)
        if template is not None:
            found.append(_with_template(piece, template))
        elif piece.shape in STRIPS:
            found.append(_from_strip(tell, piece))
    return found


def _triangles(plan: CutPlan, piece: Piece) -> str:
    """Return `12 triangles **M**, two of them to spare`: squares cut in four may give too many."""
    made = piece.count * piece.yields
    used = sum(letter == piece.letter for letter in plan.sources.values())
    spare = f", {number(made - used)} of them to spare" if 0 < used < made else ""
    return f"{counted(made, 'triangle')} **{piece.letter}**{spare}"


def _with_template(piece: Piece, template: PieceTemplate) -> str:
    made = counted(piece.count * piece.yields, "piece")
    over = (
        f", {number(template.mirrored)} of them with the template turned over"
        if template.mirrored
        else ""
    )
    return f"Cut each **{piece.letter}** to shape with template {template.letter}: {made}{over}."


def _from_strip(tell: Lengths, piece: Piece) -> str:
    """Return how a strip with slanting ends, or a hexagon, is cut."""
    leaning = piece.name.removeprefix(piece.shape) if piece.name.startswith(piece.shape) else ""
    made = counted(piece.count * piece.yields, piece.shape) + leaning
    each = "each strip" if piece.count > 1 else "the strip"
    if piece.shape == "hexagon":
        return (
            f"Mark the middle of both short sides of each **{piece.letter}** and cut from the "
            f"marks to the long sides, with the 60-degree line of the ruler on the long side: "
            f"{made}."
        )
    if piece.apart is None:
        return (
            f"Trim one end of {each} **{piece.letter}** at 60 degrees, then cut it at 60 degrees "
            f"to one side and to the other, in turn: {made}."
        )
    lean = (
        " Lay it right side up in a single layer, since they all lean one way."
        if piece.shape == "parallelogram"
        else ""
    )
    return (
        f"Trim one end of {each} **{piece.letter}** at {piece.angle} degrees, then cut it at the "
        f"same slant every {tell.measure(piece.apart)}, measured square to the cut: {made}.{lean}"
    )


def exact_notes(tell: Lengths, pieces: Sequence[Piece]) -> list[str]:
    """Say which pieces were rounded up to what a ruler shows, and from what."""
    told = [t for p in pieces if (t := _exact(tell, p))]
    if not told:
        return []
    which = plural(len(told), "This size was", "These sizes were")
    step, unit = (
        ("millimetre", "centimetres") if tell.measures.metric else ("eighth of an inch", "inches")
    )
    return [f"{which} rounded up to the next {step}. Exact, in {unit}: {listed(told)}."]


def _exact(tell: Lengths, piece: Piece) -> str:
    """Return `**C** 4.2426`, or both sides where they differ; empty for what is exact."""
    wide = piece.width if piece.exact_width is None else piece.exact_width
    long = piece.length if piece.exact_length is None else piece.exact_length
    if (wide, long) == (piece.width, piece.length):
        return ""
    sides = [_decimal(tell, side) for side in ((wide,) if wide == long else (wide, long))]
    return f"**{piece.letter}** {' × '.join(sides)}"


def _decimal(tell: Lengths, length: Exact) -> str:
    """Return inches to four places, or centimetres to as many less one, without zeros that
    say nothing."""
    if tell.measures.metric:
        return decimal_text(length / CM, _PLACES - 1).rstrip("0").rstrip(".")
    return decimal_text(length, _PLACES).rstrip("0").rstrip(".")


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
            + ". The tables say which squares are cut, and how.",
            sizes=cut,
            right="The ruler's edge ran through both corners exactly.",
            tip="The long side of a triangle cut once, and the short sides of one cut twice, are "
            "bias edges and stretch. Press the square with starch before you cut it, and handle "
            "the triangles little.",
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

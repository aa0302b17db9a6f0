"""Stage 6, draw: figures and template sheets as SVG, in one drawing vocabulary.

In: the pattern with its sizes, drafts and plans, the manual that asks for figures, the
paper. Out: `Artwork` and notes.
Invariant: every figure and every template sheet the manual asks for is drawn, or a note
says why not; a figure's alternative text is made from its own data.
"""

from __future__ import annotations

from collections.abc import Mapping

from publish.draw import barcode, colouring, colours, quilt, sizes, swatches
from publish.draw.canvas.style import palette
from publish.draw.context import CannotDrawError, Context, Drawing
from publish.draw.cutting import fabric as cutting
from publish.draw.finding import finding_figures
from publish.draw.finishing import binding, layers, pillow, quilting, sandwich, sleeve
from publish.draw.motifs import creases, folding
from publish.draw.motifs import place as motifwork_place
from publish.draw.motifs import stitch as motifwork_stitch
from publish.draw.motifs import work as motifwork
from publish.draw.piecing import (
    block,
    borders,
    curves,
    exploded,
    foundation,
    quick,
    rows,
    trim,
    units,
    wrong_side,
)
from publish.draw.sheets import scale, sheets
from publish.draw.sketch import sketches
from publish.model.book import LETTER, Paper, full_size
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.figure import Artwork, Asked, Figure, Picture
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import FigureSpec, Manual, TemplateSheets
from publish.notes import Note, error

__all__ = ["CODES", "DRAWINGS", "colour_preview", "draw", "finding_figures", "sketches"]

CODES = {
    "F601": "The manual asks for a kind of figure that is not known",
    "F602": "A figure asks for something that this pattern or size does not have",
    "F603": "Template sheets are asked for something that this size does not have",
}
"""What each note of this stage means."""

DRAWINGS: dict[str, Drawing] = {
    "barcode": barcode.draw,
    "binding": binding.draw,
    "block": block.draw,
    "borders": borders.draw,
    "colouring": colouring.draw,
    "colourways": colours.colourways,
    "crease-ground": creases.draw,
    "curve": curves.curve,
    "cutting-layout": cutting.draw,
    "fold": folding.fold,
    "foundation": foundation.draw,
    "layers": layers.draw,
    "pairs": colours.pairs,
    "pillow": pillow.draw,
    "place-motif": motifwork_place.place_motif,
    "press": wrong_side.draw,
    "quick": quick.draw,
    "quilt": quilt.draw,
    "quilting": quilting.draw,
    "rounds": exploded.rounds,
    "rows": rows.draw,
    "sandwich": sandwich.draw,
    "scale": scale.draw,
    "sections": block.sections,
    "set-in": curves.set_in,
    "setting": exploded.setting,
    "sizes": sizes.draw,
    "sleeve": sleeve.draw,
    "stitch": motifwork_stitch.stitch,
    "swatches": swatches.draw,
    "trim": trim.draw,
    "unfold": motifwork_place.unfold,
    "units": units.draw,
    "visions": colours.visions,
    "wedge-align": motifwork.wedge_align,
    "wedge-baste": motifwork.wedge_baste,
    "wedge-cut": motifwork.wedge_cut,
    "wedge-mark": motifwork.wedge_mark,
}
"""The drawing of each kind of figure."""


def draw(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    manual: Manual,
    paper: Paper,
    pictures: Mapping[str, Picture] | None = None,
) -> tuple[Artwork, tuple[Note, ...]]:
    """Draw every figure of a manual for one paper, and its template sheets; those of a
    half-size paper are drawn for the whole one. `pictures` are shown in place of drawings."""
    pictures = pictures or {}
    context = Context(pattern, sizes, drafts, plans, manual, paper, palette(pattern), pictures)
    figures: dict[str, Figure] = {}
    notes: list[Note] = []
    for spec in manual.figures():
        drawn = _figure(context, spec)
        if isinstance(drawn, Note):
            notes.append(drawn)
        else:
            figures[spec.key] = drawn
    asked = [(b.motif, b.size, b.part) for b in _templates(manual)]
    printed, failed = sheets.template_sheets(context, asked, full_size(paper))
    notes += [_no_sheets(context, key, reason) for key, reason in failed.items()]
    return Artwork(figures, printed, pictures), tuple(notes)


def barcode_figure(digits: str) -> Figure:
    """Draw a barcode by itself, at its nominal size: it depends on its number alone."""
    return barcode.drawn(FigureSpec("barcode", "barcode"), digits)


def described(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    manual: Manual,
) -> dict[str, str]:
    """Return what a computed picture of each size shows, for readers who cannot see it."""
    context = Context(pattern, sizes, drafts, plans, manual, LETTER, palette(pattern))
    computed = context.labels.text("figure-computed")
    return {key: f"{quilt.described(context, size)} {computed}" for key, size in sizes.items()}


def colour_preview(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
    manual: Manual,
) -> Figure:
    """Draw the first size in grey and as colour-vision deficiencies show it, for the
    designer: it does not depend on paper, and no booklet needs to ask for it."""
    context = Context(pattern, sizes, drafts, plans, manual, LETTER, palette(pattern))
    return colours.visions(context, FigureSpec("visions", "visions", next(iter(sizes))))


def _figure(context: Context, spec: FigureSpec) -> Figure | Note:
    place = context.pattern.place("sizes", spec.size or "")
    drawing = DRAWINGS.get(spec.kind)
    if drawing is None:
        return error(
            "F601",
            place,
            f"there is no figure of kind {spec.kind!r}",
            expected=f"one of {', '.join(sorted(DRAWINGS))}",
            received=spec.kind,
            help=f"the figure {spec.key!r} in the manual needs another kind",
        )
    try:
        return drawing(context, spec)
    except CannotDrawError as reason:
        return error("F602", place, f"the figure {spec.key!r} cannot be drawn: {reason}")


def _templates(manual: Manual) -> tuple[TemplateSheets, ...]:
    """Return the template sheets asked for, in reading order, once each."""
    blocks = (b for section in manual.sections for b in section.blocks)
    return tuple(dict.fromkeys(b for b in blocks if isinstance(b, TemplateSheets)))


def _no_sheets(context: Context, asked: Asked, reason: Exception) -> Note:
    motif, size, part = asked
    place = context.pattern.place("sizes", size)
    what = f"the {part} template of {motif!r} cannot be printed"
    return error("F603", place, what, received=str(reason))

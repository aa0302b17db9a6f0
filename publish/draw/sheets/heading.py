"""What a template sheet says at its head: what it is, how many, of what.

In: the context and which template. Out: `Heading`, and the words for who cannot see it.
Invariant: counts and sizes are the draft's and the plan's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import CUT, FINISHED, LABEL
from publish.draw.context import CannotDrawError, Context
from publish.draw.sheets.page import Heading
from publish.draw.sheets.template import Template
from publish.draw.sheets.tiling import Tiling, Window
from publish.draw.words import listed
from publish.model.alike import with_foundation, with_template
from publish.model.cutplan import PieceTemplate
from publish.model.draft import FoundationSection

Asked = tuple[str, str, str]
"""The key of a motif, piece template or foundation section; a size; the part."""
PARTS = {"wedge": "wedge", "whole": "whole motif"}
PIECE_LINES = ((FINISHED, "sewing line"), (CUT, "cut line"))
FOUNDATION_LINES = ((FINISHED, "sewing line"), (CUT, "trim line"))
BESIDE_MAP = 190.0
"""Points for words at the left of the small plan of a template's sheets."""


def piece_of(context: Context, key: str, size: str) -> PieceTemplate:
    """Return a size's piece template by its key."""
    for template in context.plans[size].templates:
        if template.key == key:
            return template
    raise CannotDrawError(f"there is no piece template {key!r} at this size")


def section_of(context: Context, key: str, size: str) -> FoundationSection:
    """Return a size's foundation section by its key."""
    for section in context.drafts[size].foundations:
        if section.key == key:
            return section
    raise CannotDrawError(f"there is no foundation {key!r} at this size")


def heading(
    context: Context, asked: Asked, template: Template, tiling: Tiling, window: Window
) -> Heading:
    """Return the words at the head of one sheet."""
    sheet = f"Sheet {window.label} of {len(tiling.windows)}"
    if template.part == "piece":
        found = _piece(context, asked, sheet)
    elif template.part == "foundation":
        found = _foundation(context, asked, sheet)
    else:
        found = _motif(context, asked, template, sheet)
    return replace(found, measures=context.pattern.measures)


def _motif(context: Context, asked: Asked, template: Template, sheet: str) -> Heading:
    say = context.labels
    key, size, _ = asked
    pattern = context.pattern
    motif, shape = pattern.motifs[key], context.drafts[size].motifs[key]
    count = sum(p.motif == key for p in context.drafts[size].placements)
    name = f"{motif_name(key)} {PARTS[template.part]}, {context.sizes[size].title}"
    turned = not template.cut.is_empty
    lines = [
        f"Cut {count} from {pattern.fabrics[motif.fabric].name}",
        f"Finished motif {say.length(shape.span)} across",
        sheet,
    ]
    if turned:
        lines.insert(2, f"Turn-under {say.length(motif.turn_under)}")
    return Heading(pattern.title, name, tuple(lines), turned, bool(template.folds))


def _piece(context: Context, asked: Asked, sheet: str) -> Heading:
    say = context.labels
    piece = piece_of(context, asked[0], asked[1])
    fabric = context.pattern.fabrics[piece.fabric].name
    narrow = say.length(min(piece.allowances, default=context.pattern.sewing.seam))
    wide = f", {say.length(piece.allowances[-1])} at wider edges" if piece.allowances[1:] else ""
    notches = ("Short lines across the sewing line are notches",) if piece.notches else ()
    alike = with_template(context.plans, piece)
    counts = {key: f"{t.count}{_over(t, 'turned over')}" for key, t in alike.items()}
    one = f"Cut {piece.count} from {fabric}{_over(piece, 'with the template turned over')}"
    lines = (
        one if len(alike) == 1 else _each(context, f"Cut from {fabric}", counts),
        f"Seam allowance {narrow}, from line to line{wide}",
        *notches,
        sheet,
    )
    name = f"Template {piece.letter}, {_titles(context, alike)}"
    return Heading(context.pattern.title, name, lines, True, False, PIECE_LINES)


def _foundation(context: Context, asked: Asked, sheet: str) -> Heading:
    say = context.labels
    section = section_of(context, asked[0], asked[1])
    seam = say.length(context.pattern.sewing.seam)
    alike = with_foundation(context.drafts, section)
    counts = {key: str(f.count) for key, f in alike.items()}
    one = "Print once" if section.count == 1 else f"Print {section.count} times"
    prints = one if len(alike) == 1 else _each(context, "Prints", counts)
    lines = (
        f"{prints}. Mirror image of the block",
        f"Sew on the lines in the order {section.letter}1, {section.letter}2 ...",
        f"Trim on the dashed line, {seam} outside the sewing line",
        sheet,
    )
    block = motif_name(section.block)
    name = f"{block}, foundation {section.letter}, {_titles(context, alike)}"
    return Heading(context.pattern.title, name, lines, True, False, FOUNDATION_LINES)


def _each(context: Context, what: str, counts: Mapping[str, str]) -> str:
    """Return how many of a sheet that sizes share each takes, where there is room for it."""
    each = ", ".join(f"{context.sizes[key].title} {count}" for key, count in counts.items())
    said = f"{what}: {each}"
    return said if text_width(said, LABEL) <= BESIDE_MAP else f"{what} as the booklet says"


def _over(piece: PieceTemplate, how: str) -> str:
    """Return how many more are cut with the template turned over."""
    return f", and {piece.mirrored} {how}" if piece.mirrored else ""


def _titles(context: Context, keys: Iterable[str]) -> str:
    return listed([context.sizes[key].title for key in keys])


def alt_words(template: Template, said: Heading) -> str:
    """Return what a piece or foundation sheet holds besides its lines."""
    names = listed([" ".join(n.lines[:2]) for n in template.names])
    what = "Mirrored, with patches" if template.part == "foundation" else "Piece"
    return f"{what} {names}. {said.lines[0]}."


def motif_name(key: str) -> str:
    """Return a motif's key as words: `Sea lavender`."""
    words = key.replace("_", " ").replace("-", " ")
    return words[:1].upper() + words[1:]

"""What a template sheet says at its head: what it is, how many, of what.

In: the context and which template. Out: `Heading`, and the words for who cannot see it.
Invariant: counts and sizes are the draft's and the plan's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from publish.draw.canvas.letters import Labels, text_width
from publish.draw.canvas.style import CUT, FINISHED, FOLD, Stroke
from publish.draw.context import Context
from publish.draw.sheets.counts import BESIDE_MAP, cut, motif_name, piece_of, section_of, titles
from publish.draw.sheets.names import named_inside
from publish.draw.sheets.page import NAME_SIZE, Heading, legend
from publish.draw.sheets.spread import Lying, Spread
from publish.draw.sheets.template import Template
from publish.draw.sheets.windows import Window
from publish.model.alike import with_foundation, with_template
from publish.model.cutplan import PieceTemplate
from publish.model.figure import Asked

PARTS = ("wedge", "whole")
"""Templates of a motif; `sheet-wedge` and `sheet-whole` name them."""
PIECE_LINES = ((FINISHED, "sheet-sewing-line"), (CUT, "figure-cut-line"))
FOUNDATION_LINES = ((FINISHED, "sheet-sewing-line"), (CUT, "sheet-trim-line"))
"""Strokes, and the messages of what they mean."""
BESIDE_BAR = 300.0
"""Points for words at the left of the 5 cm bar."""


def heading(context: Context, spread: Spread, window: Window) -> Heading:
    """Return the words at the head of one sheet: of its template, or of all on it."""
    said = _said(context, spread, window)
    return replace(said, labels=context.labels)


def _said(context: Context, spread: Spread, window: Window) -> Heading:
    count = len(spread.tiling.windows)
    sheet = (context.labels.text("figure-sheet-of", label=window.label, count=count),)
    if not spread.alone:
        return _several(context, spread, window, sheet if count > 1 else ())
    lying = spread.lying[0]
    said = _own(context, lying)
    first, *more = said.lines
    # The head has room for four lines.
    return replace(said, lines=(". ".join([first, *_prints(context, spread)]), *more, *sheet))


def _own(context: Context, lying: Lying) -> Heading:
    part = lying.asked[2]
    if part == "piece":
        return _piece(context, lying)
    if part == "foundation":
        return _foundation(context, lying.asked)
    return _motif(context, lying.asked, lying.template)


def _several(context: Context, spread: Spread, window: Window, sheet: tuple[str, ...]) -> Heading:
    """Return the words at the head of a sheet that several templates share: what is said of
    all of them; what is one's own stands beside it."""
    say = context.labels
    here = [g for g in spread.lying if g.on(window)]
    each = {g.asked: _own(context, g) for g in here}
    parts = {part for _, _, part in each}
    pieces = [piece_of(context, k, s) for k, s, part in each if part == "piece"]
    used = dict.fromkeys(size for g in here for size in _sizes(context, g.asked))
    sizes = titles(context, used)
    lines = [". ".join([say.text("figure-for-the", sizes=sizes), *_prints(context, spread)])]
    if pieces:
        lines.append(_allowance(context, *pieces))
        lines += _notched(context.labels, pieces)
    if "foundation" in parts:
        seam = context.labels.length(context.pattern.sewing.seam)
        lines.append(say.text("figure-mirror-images-of-the-block"))
        lines.append(say.text("figure-heading-several", seam=seam))
    meanings: dict[Stroke, list[str]] = {}
    for said in each.values():
        for stroke, words in legend(replace(said, labels=context.labels)):
            if words not in meanings.setdefault(stroke, []):
                meanings[stroke].append(words)
    return Heading(
        context.pattern.title,
        _brief(context.labels, _named(context, list(each)), len(each), bool(sheet)),
        (*lines, *sheet),
        any(said.turned for said in each.values()),
        any(said.folds for said in each.values()),
        tuple((stroke, say.or_(words)) for stroke, words in meanings.items()),
    )


def _named(context: Context, each: Sequence[Asked]) -> str:
    """Return what templates are called together: `Templates A and B, Lily wedge`."""
    letters = [piece_of(context, k, s).letter for k, s, part in each if part == "piece"]
    blocks: dict[str, list[str]] = {}
    for key, size, part in each:
        if part == "foundation":
            section = section_of(context, key, size)
            blocks.setdefault(section.block, []).append(section.letter)
    motifs = dict.fromkeys(
        context.labels.text(f"sheet-{part}", motif=motif_name(key))
        for key, _, part in each
        if part in PARTS
    )
    say, first = context.labels, "" if motifs else "-first"
    return ", ".join(
        [
            *motifs,
            *([_templates(say, f"sheet-templates{first}", letters)] if letters else []),
            *(
                say.text(
                    "sheet-foundations",
                    block=motif_name(block),
                    letters=say.listed(found),
                    count=len(found),
                )
                for block, found in blocks.items()
            ),
        ]
    )


def _templates(say: Labels, message: str, letters: Sequence[str]) -> str:
    return say.text(message, letters=say.listed(letters), count=len(letters))


def _brief(say: Labels, named: str, count: int, joined: bool) -> str:
    """Return the names of templates, or how many there are where the names are too long."""
    room = BESIDE_MAP if joined else BESIDE_BAR
    return (
        named
        if text_width(named, NAME_SIZE, "semibold") <= room
        else say.text("figure-templates", count=count)
    )


def _sizes(context: Context, asked: Asked) -> tuple[str, ...]:
    """Return the sizes that use a template."""
    key, size, part = asked
    if part == "piece":
        return tuple(with_template(context.plans, piece_of(context, key, size)))
    if part == "foundation":
        return tuple(with_foundation(context.drafts, section_of(context, key, size)))
    return (size,)


def caption_lines(context: Context, asked: Asked, template: Template) -> tuple[str, ...]:
    """Return the words beside a template on a sheet that it shares; none where they stand
    inside it, as a piece's do."""
    key, size, part = asked
    if part == "piece":
        if named_inside(template):
            return ()
        piece = piece_of(context, key, size)
        return (context.labels.text("figure-template", letter=piece.letter), cut(context, piece))
    if part == "foundation":
        section = section_of(context, key, size)
        first, second = (f"{section.letter}{n}" for n in (1, 2))
        order = context.labels.text("figure-sew-in-the-order", first=first, second=second) + (
            " ..." if section.patches[2:] else ""
        )
        return (
            context.labels.text(
                "figure-foundation", block=motif_name(section.block), letter=section.letter
            ),
            order,
        )
    said = _motif(context, asked, template)
    return (said.name, *said.lines)


def _prints(context: Context, spread: Spread) -> tuple[str, ...]:
    """Return how often a sheet is printed, where it is not once."""
    counts = spread.prints
    if not counts:
        return ()
    one = dict.fromkeys(counts.values())
    say = context.labels
    if len(one) == 1:
        (count,) = one
        return (say.text("sheet-print", count=count),)
    each = [
        say.text("sheet-print-of-size", size=context.sizes[k].title, count=n)
        for k, n in counts.items()
    ]
    return (say.text("figure-print-this-sheet", each=", ".join(each)),)


def _motif(context: Context, asked: Asked, template: Template) -> Heading:
    key, size, _ = asked
    pattern = context.pattern
    motif, shape = pattern.motifs[key], context.drafts[size].motifs[key]
    count = sum(p.motif == key for p in context.drafts[size].placements)
    named = context.labels.text(f"sheet-{template.part}", motif=motif_name(key))
    name = f"{named}, {context.sizes[size].title}"
    turned = not template.cut.is_empty
    lines = [
        context.labels.text(
            "figure-cut-from", count=count, name=pattern.fabrics[motif.fabric].name
        ),
        context.labels.text("figure-finished-motif-across", span=context.labels.length(shape.span)),
    ]
    if turned:
        lines.append(
            context.labels.text(
                "figure-turn-under", turn_under=context.labels.length(motif.turn_under)
            )
        )
    return Heading(pattern.title, name, tuple(lines), turned, bool(template.folds))


def _piece(context: Context, lying: Lying) -> Heading:
    piece = piece_of(context, lying.asked[0], lying.asked[1])
    lines = (cut(context, piece), _allowance(context, piece), *_notched(context.labels, [piece]))
    alike = with_template(context.plans, piece)
    half = context.labels.text("figure-half") if lying.fold is not None else ""
    name = context.labels.text(
        "figure-template-2", letter=piece.letter, half=half, context=titles(context, alike)
    )
    marks = ((FOLD, "sheet-fold-of-the-paper"),) if lying.fold is not None else ()
    meant = _meant(context.labels, (*PIECE_LINES, *marks))
    return Heading(context.pattern.title, name, lines, True, False, meant)


def _meant(say: Labels, lines: Iterable[tuple[Stroke, str]]) -> tuple[tuple[Stroke, str], ...]:
    """Return strokes with what they mean in words."""
    return tuple((stroke, say.text(message)) for stroke, message in lines)


def _allowance(context: Context, *pieces: PieceTemplate) -> str:
    """Return the seam allowance, and the widest where edges differ."""
    seam = context.pattern.sewing.seam
    narrow = min(min(piece.allowances, default=seam) for piece in pieces)
    widest = max(max(piece.allowances, default=seam) for piece in pieces)
    wide = (
        context.labels.text("figure-at-wider-edges", widest=context.labels.length(widest))
        if widest > narrow
        else ""
    )
    return context.labels.text(
        "figure-heading-allowance", narrow=context.labels.length(narrow), wide=wide
    )


def _notched(say: Labels, pieces: Sequence[PieceTemplate]) -> tuple[str, ...]:
    notched = any(piece.notches for piece in pieces)
    return (say.text("sheet-notches"),) if notched else ()


def _foundation(context: Context, asked: Asked) -> Heading:
    section = section_of(context, asked[0], asked[1])
    seam = context.labels.length(context.pattern.sewing.seam)
    lines = (
        context.labels.text("figure-mirror-image-of-the-block"),
        context.labels.text("figure-heading-foundation", letter=section.letter)
        + (" ..." if section.patches[2:] else ""),
        context.labels.text("figure-heading-foundation-2", seam=seam),
    )
    block = motif_name(section.block)
    alike = with_foundation(context.drafts, section)
    name = context.labels.text(
        "figure-foundation-2", block=block, letter=section.letter, context=titles(context, alike)
    )
    return Heading(
        context.pattern.title, name, lines, True, False, _meant(context.labels, FOUNDATION_LINES)
    )


def alt_words(say: Labels, template: Template, said: Heading | None) -> str:
    """Return what a piece's or foundation's template holds besides its lines, and what the
    head of its sheet says first where that is about it alone."""
    names = say.listed([" ".join(n.lines[:2]) for n in template.names])
    what = "foundation" if template.part == "foundation" else "piece"
    first = f" {said.lines[0]}." if said is not None else ""
    return say.text(f"sheet-names-of-{what}", names=names) + first

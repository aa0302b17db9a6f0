"""What a template sheet says at its head: what it is, how many, of what.

In: the context and which template. Out: `Heading`, and the words for who cannot see it.
Invariant: counts and sizes are the draft's and the plan's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from publish.draw.canvas.letters import text_width
from publish.draw.canvas.style import CUT, FINISHED, FOLD, LABEL, Stroke
from publish.draw.context import CannotDrawError, Context
from publish.draw.sheets.names import named_inside
from publish.draw.sheets.page import NAME_SIZE, Heading, legend
from publish.draw.sheets.spread import Lying, Spread
from publish.draw.sheets.template import Template
from publish.draw.sheets.windows import Window
from publish.draw.words import listed
from publish.model.alike import with_foundation, with_template
from publish.model.cutplan import PieceTemplate
from publish.model.draft import FoundationSection
from publish.model.figure import Asked

PARTS = {"wedge": "wedge", "whole": "whole motif"}
PIECE_LINES = ((FINISHED, "sewing line"), (CUT, "cut line"))
FOUNDATION_LINES = ((FINISHED, "sewing line"), (CUT, "trim line"))
BESIDE_BAR = 300.0
"""Points for words at the left of the 5 cm bar."""
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


def heading(context: Context, spread: Spread, window: Window) -> Heading:
    """Return the words at the head of one sheet: of its template, or of all on it."""
    said = _said(context, spread, window)
    return replace(said, measures=context.pattern.measures)


def _said(context: Context, spread: Spread, window: Window) -> Heading:
    count = len(spread.tiling.windows)
    sheet = (f"Sheet {window.label} of {count}",)
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
    here = [g for g in spread.lying if g.on(window)]
    each = {g.asked: _own(context, g) for g in here}
    parts = {part for _, _, part in each}
    pieces = [piece_of(context, k, s) for k, s, part in each if part == "piece"]
    used = dict.fromkeys(size for g in here for size in _sizes(context, g.asked))
    sizes = _titles(context, used)
    lines = [". ".join([f"For the {sizes}", *_prints(context, spread)])]
    if pieces:
        lines.append(_allowance(context, *pieces))
        lines += _notched(pieces)
    if "foundation" in parts:
        seam = context.labels.length(context.pattern.sewing.seam)
        lines.append("Mirror images of the block")
        lines.append(f"Trim on the dashed line, {seam} outside the sewing line")
    meanings: dict[Stroke, list[str]] = {}
    for said in each.values():
        for stroke, words in legend(said):
            if words not in meanings.setdefault(stroke, []):
                meanings[stroke].append(words)
    return Heading(
        context.pattern.title,
        _brief(_named(context, list(each)), len(each), bool(sheet)),
        (*lines, *sheet),
        any(said.turned for said in each.values()),
        any(said.folds for said in each.values()),
        tuple((stroke, " or ".join(words)) for stroke, words in meanings.items()),
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
        f"{motif_name(key)} {PARTS[part]}" for key, _, part in each if part in PARTS
    )
    return ", ".join(
        [
            *motifs,
            *([f"template{'s' * (len(letters) > 1)} {listed(letters)}"] if letters else []),
            *(
                f"{motif_name(block)}, foundation{'s' * (len(found) > 1)} {listed(found)}"
                for block, found in blocks.items()
            ),
        ]
    ).replace("template", "Template", not motifs)


def _brief(named: str, count: int, joined: bool) -> str:
    """Return the names of templates, or how many there are where the names are too long."""
    room = BESIDE_MAP if joined else BESIDE_BAR
    return named if text_width(named, NAME_SIZE, "semibold") <= room else f"{count} templates"


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
        return (f"Template {piece.letter}", _cut(context, piece))
    if part == "foundation":
        section = section_of(context, key, size)
        first, second = (f"{section.letter}{n}" for n in (1, 2))
        order = f"Sew in the order {first}, {second}" + (" ..." if section.patches[2:] else "")
        return (f"{motif_name(section.block)}, foundation {section.letter}", order)
    said = _motif(context, asked, template)
    return (said.name, *said.lines)


def _prints(context: Context, spread: Spread) -> tuple[str, ...]:
    """Return how often a sheet is printed, where it is not once."""
    counts = spread.prints
    if not counts:
        return ()
    one = dict.fromkeys(counts.values())
    often = {1: "once", 2: "twice"}
    if len(one) == 1:
        (count,) = one
        return (f"Print this sheet {often.get(count, f'{count} times')}",)
    each = [f"{context.sizes[k].title} {often.get(n, f'{n} times')}" for k, n in counts.items()]
    return (f"Print this sheet: {', '.join(each)}",)


def _motif(context: Context, asked: Asked, template: Template) -> Heading:
    key, size, _ = asked
    pattern = context.pattern
    motif, shape = pattern.motifs[key], context.drafts[size].motifs[key]
    count = sum(p.motif == key for p in context.drafts[size].placements)
    name = f"{motif_name(key)} {PARTS[template.part]}, {context.sizes[size].title}"
    turned = not template.cut.is_empty
    lines = [
        f"Cut {count} from {pattern.fabrics[motif.fabric].name}",
        f"Finished motif {context.labels.length(shape.span)} across",
    ]
    if turned:
        lines.append(f"Turn-under {context.labels.length(motif.turn_under)}")
    return Heading(pattern.title, name, tuple(lines), turned, bool(template.folds))


def _piece(context: Context, lying: Lying) -> Heading:
    piece = piece_of(context, lying.asked[0], lying.asked[1])
    lines = (_cut(context, piece), _allowance(context, piece), *_notched([piece]))
    alike = with_template(context.plans, piece)
    half = " (half)" if lying.fold is not None else ""
    name = f"Template {piece.letter}{half}, {_titles(context, alike)}"
    marks = ((FOLD, "fold of the paper"),) if lying.fold is not None else ()
    return Heading(context.pattern.title, name, lines, True, False, (*PIECE_LINES, *marks))


def _cut(context: Context, piece: PieceTemplate) -> str:
    """Return how many are cut with a template, and of what."""
    fabric = context.pattern.fabrics[piece.fabric].name
    alike = with_template(context.plans, piece)
    if len(alike) == 1:
        return f"Cut {piece.count} from {fabric}{_over(piece, 'with the template turned over')}"
    counts = {key: f"{t.count}{_over(t, 'turned over')}" for key, t in alike.items()}
    return _each(context, f"Cut from {fabric}", counts)


def _allowance(context: Context, *pieces: PieceTemplate) -> str:
    """Return the seam allowance, and the widest where edges differ."""
    seam = context.pattern.sewing.seam
    narrow = min(min(piece.allowances, default=seam) for piece in pieces)
    widest = max(max(piece.allowances, default=seam) for piece in pieces)
    wide = f", {context.labels.length(widest)} at wider edges" if widest > narrow else ""
    return f"Seam allowance {context.labels.length(narrow)}, from line to line{wide}"


def _notched(pieces: Sequence[PieceTemplate]) -> tuple[str, ...]:
    notched = any(piece.notches for piece in pieces)
    return ("Short lines across the sewing line are notches",) if notched else ()


def _foundation(context: Context, asked: Asked) -> Heading:
    section = section_of(context, asked[0], asked[1])
    seam = context.labels.length(context.pattern.sewing.seam)
    lines = (
        "Mirror image of the block",
        f"Sew on the lines in the order {section.letter}1, {section.letter}2"
        + (" ..." if section.patches[2:] else ""),
        f"Trim on the dashed line, {seam} outside the sewing line",
    )
    block = motif_name(section.block)
    alike = with_foundation(context.drafts, section)
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


def alt_words(template: Template, said: Heading | None) -> str:
    """Return what a piece's or foundation's template holds besides its lines, and what the
    head of its sheet says first where that is about it alone."""
    names = listed([" ".join(n.lines[:2]) for n in template.names])
    what = "Mirrored, with patches" if template.part == "foundation" else "Piece"
    first = f" {said.lines[0]}." if said is not None else ""
    return f"{what} {names}.{first}"


def motif_name(key: str) -> str:
    """Return a motif's key as words: `Sea lavender`."""
    words = key.replace("_", " ").replace("-", " ")
    return words[:1].upper() + words[1:]

"""What templates are called and how many are cut with each, over the sizes that share them.

In: the context and which template. Out: short phrases for the heads of sheets.
Invariant: counts are the draft's and the plan's own.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from publish.draw.canvas.letters import Labels, text_width
from publish.draw.canvas.style import LABEL
from publish.draw.context import CannotDrawError, Context
from publish.model.alike import with_template
from publish.model.cutplan import PieceTemplate
from publish.model.draft import FoundationSection

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


def cut(context: Context, piece: PieceTemplate) -> str:
    """Return how many are cut with a template, and of what."""
    fabric = context.pattern.fabrics[piece.fabric].name
    alike = with_template(context.plans, piece)
    if len(alike) == 1:
        return context.labels.text(
            "figure-cut-from-2",
            count=piece.count,
            fabric=fabric,
            labels=_over(
                context.labels, piece, context.labels.text("figure-with-the-template-turned-over")
            ),
        )
    counts = {
        key: f"{t.count}{_over(context.labels, t, context.labels.text('figure-turned-over'))}"
        for key, t in alike.items()
    }
    return _each(context, context.labels.text("figure-cut-from-3", fabric=fabric), counts)


def _each(context: Context, what: str, counts: Mapping[str, str]) -> str:
    """Return how many of a sheet that sizes share each takes, where there is room for it."""
    each = ", ".join(f"{context.sizes[key].title} {count}" for key, count in counts.items())
    said = f"{what}: {each}"
    return (
        said
        if text_width(said, LABEL) <= BESIDE_MAP
        else context.labels.text("figure-as-the-booklet-says", what=what)
    )


def _over(say: Labels, piece: PieceTemplate, how: str) -> str:
    """Return how many more are cut with the template turned over."""
    return say.text("figure-and-2", mirrored=piece.mirrored, how=how) if piece.mirrored else ""


def titles(context: Context, keys: Iterable[str]) -> str:
    return context.labels.listed([context.sizes[key].title for key in keys])


def motif_name(key: str) -> str:
    """Return a motif's key as words: `Sea lavender`."""
    words = key.replace("_", " ").replace("-", " ")
    return words[:1].upper() + words[1:]

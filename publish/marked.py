"""A finding's place on the quilt top, for findings that are not about a point of a motif.

In: pattern, drafts, a way through the YAML. Out: SVG with the parts marked that stand
there, or None.
Invariant: what is marked is found by its key in the draft, never guessed from words.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from html import escape

from shapely.affinity import rotate, translate
from shapely.geometry.base import BaseGeometry

from publish.arcs import outline
from publish.colour import laid_over
from publish.model.draft import Draft, Patch, Placement
from publish.model.pattern import Pattern

SIDE, EDGE = 260.0, 8.0
"""Points: the longer side of the top, and the room round it."""
PAPER, INK, MARK = "#ffffff", "#3a3733", "#a8321f"
FINE = 0.04
"""Inches: how far a motif's outline may be simplified in so small a picture."""

Part = Patch | Placement
Wanted = Callable[[Part], bool]


def marked(pattern: Pattern, drafts: Mapping[str, Draft], way: str) -> tuple[str, str] | None:
    """Return a size's title and its top with what stands at `way` marked; None for nothing."""
    parts = way.split(".")
    within = parts[0] == "sizes" and len(parts) > 2 and parts[1] in drafts
    keys = [parts[1]] if within else list(drafts)
    wanted = _wanted(pattern, parts[2:] if within else parts)
    if wanted is None:
        return None
    for key in keys:
        draft = drafts[key]
        found = [p for p in _parts(draft) if wanted(p)]
        if found:
            title = pattern.sizes[key].title
            return title, _picture(pattern, draft, found, f"{title}: the places are outlined")
    return None


def _wanted(pattern: Pattern, way: list[str]) -> Wanted | None:
    """Return what is marked for a way below a size or at the top of the file."""
    name, rest = way[0], [*way[1:], ""]
    if name == "borders" and rest[0].isdigit():
        return lambda p: isinstance(p, Patch) and p.key.startswith(f"border {int(rest[0]) + 1} ")
    if name == "sashing":
        return lambda p: isinstance(p, Patch) and p.role in ("sashing", "cornerstone")
    if name in ("block_size", "block"):
        return lambda p: isinstance(p, Patch) and p.role == "ground"
    if name == "blocks" and rest[0]:
        return lambda p: isinstance(p, Patch) and p.block == rest[0]
    if name == "motif_size":
        return lambda p: isinstance(p, Placement)
    if name == "motifs":
        return lambda p: isinstance(p, Placement) and p.motif == rest[0]
    if name == "fabrics":
        return lambda p: _fabric(pattern, p) == rest[0]
    return None


def _fabric(pattern: Pattern, part: Part) -> str:
    return part.fabric if isinstance(part, Patch) else pattern.motifs[part.motif].fabric


def _parts(draft: Draft) -> list[Part]:
    return [*draft.patches, *draft.placements]


def _shape(draft: Draft, part: Part) -> BaseGeometry:
    if isinstance(part, Patch):
        return outline(part.ring, part.arcs)
    whole = draft.motifs[part.motif].whole.simplify(FINE)
    return translate(rotate(whole, part.turn, origin=(0, 0)), float(part.x), float(part.y))


def _picture(pattern: Pattern, draft: Draft, found: list[Part], alt: str) -> str:
    width, height = float(draft.width), float(draft.height)
    scale = SIDE / max(width, height)
    body = [
        *(_drawn(pattern, draft, p, scale) for p in _parts(draft)),
        *_outlines(draft, found, scale),
    ]
    wide, high = (side * scale + 2 * EDGE for side in (width, height))
    said = escape(alt, quote=True)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="{said}" '
        f'width="{wide:.1f}" height="{high:.1f}" viewBox="{-EDGE} {-EDGE} {wide:.1f} {high:.1f}">'
        f"{''.join(body)}</svg>"
    )


def _drawn(pattern: Pattern, draft: Draft, part: Part, scale: float) -> str:
    colour = laid_over(pattern.fabrics[_fabric(pattern, part)].colour, PAPER, 0.55)
    path = _path(_shape(draft, part), scale)
    return (
        f'<path d="{path}" fill="{colour}" fill-rule="evenodd" stroke="{INK}" stroke-width=".3"/>'
    )


def _outlines(draft: Draft, found: list[Part], scale: float) -> Iterator[str]:
    """Yield a line round each part, with a pale rim that shows on any colour."""
    paths = [_path(_shape(draft, part), scale) for part in found]
    for colour, wide in ((PAPER, 3.4), (MARK, 1.8)):
        for path in paths:
            yield (
                f'<path d="{path}" fill="none" stroke="{colour}" stroke-width="{wide}" '
                'stroke-linejoin="round"/>'
            )


def _path(shape: BaseGeometry, scale: float) -> str:
    rings = [r for p in getattr(shape, "geoms", [shape]) for r in (p.exterior, *p.interiors)]
    return "".join(
        "M" + "L".join(f"{x * scale:.1f} {y * scale:.1f}" for x, y in ring.coords[:-1]) + "Z"
        for ring in rings
    )

"""What pages need to be printed in a print shop and trimmed: bleed, and opaque drawings.

In: a paper; recorded drawings. Out: the bleed; the same drawings without transparency.
Invariant: an opaque drawing looks as the transparent one does on white paper: under a
see-through area, everything drawn before it is drawn again, cut to the area, in the
colours that the two give together.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from publish.model.book import BLEED, Paper
from publish.model.drawing import Circle, Drawing, Lettering, Path, Primitive, Seen
from publish.model.figure import Artwork
from publish.units import POINTS_PER_INCH

WHITE = "#ffffff"


def bleed_of(paper: Paper) -> float:
    """Return a paper's bleed in points."""
    return float(BLEED[paper.key] * POINTS_PER_INCH)


def opaque_artwork(artwork: Artwork) -> Artwork:
    """Return artwork whose drawings need no transparency."""
    figures = {
        k: replace(f, drawing=opaque(f.drawing)) if f.drawing is not None else f
        for k, f in artwork.figures.items()
    }
    sheets = {
        k: tuple(replace(s, drawing=opaque(s.drawing)) if s.drawing is not None else s for s in g)
        for k, g in artwork.sheets.items()
    }
    return replace(artwork, figures=figures, sheets=sheets)


def opaque(drawing: Drawing) -> Drawing:
    """Return a drawing without see-through areas."""
    done: list[Primitive] = []
    for item in drawing.items:
        if isinstance(item, Path) and item.fill and item.opacity < 1:
            done += _laid(item, item.fill, tuple(done))
        else:
            done.append(item)
    return replace(drawing, items=tuple(done))


def _laid(veil: Path, colour: str, before: tuple[Primitive, ...]) -> Iterator[Primitive]:
    """Yield what takes the place of a see-through area drawn over `before`."""
    area = Path(veil.rings, closed=True)
    ground = Path(veil.rings, True, _mixed(WHITE, colour, veil.opacity))
    yield Seen(area, (ground, *(_tinted(p, colour, veil.opacity) for p in before)))
    if veil.stroke is not None:
        yield replace(veil, fill=None, opacity=1.0)


def _tinted(item: Primitive, colour: str, share: float) -> Primitive:
    """Return an item as it is seen through a veil of a colour and its share."""
    if isinstance(item, Seen):
        return Seen(item.area, tuple(_tinted(p, colour, share) for p in item.items))
    if isinstance(item, Lettering):
        return replace(item, fill=_mixed(item.fill, colour, share))
    fill = _mixed(item.fill, colour, share) if item.fill else item.fill
    stroke = item.stroke
    if stroke is not None:
        stroke = replace(stroke, colour=_mixed(stroke.colour, colour, share))
    found: Path | Circle = replace(item, fill=fill, stroke=stroke)
    return found


def _mixed(under: str, over: str, share: float) -> str:
    """Return a colour under a veil, channel by channel, as PDF lays one over another."""
    pairs = [(int(under[i : i + 2], 16), int(over[i : i + 2], 16)) for i in (1, 3, 5)]
    return "#" + "".join(f"{round(a + (b - a) * share):02x}" for a, b in pairs)

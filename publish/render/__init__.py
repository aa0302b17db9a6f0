"""The quilt as it will look: pictures computed from the pattern itself.

In: pattern, sizes, drafts. Out: `Picture`s, JPEG in sRGB.
Invariant: what is pictured is the draft's own geometry in its fabrics' colours; the same
values give the same bytes. Nothing is computed for a pattern whose cover is `drawn`.

Between the drafts and the figures that show them; no stage knows of it.
"""

from __future__ import annotations

import hashlib
import io
from collections.abc import Mapping
from functools import lru_cache

import shapely
from PIL import Image

from publish.model.draft import Draft
from publish.model.figure import Picture
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.render.faces import Face, face_of, picture, scene_of
from publish.render.prints import Print, print_of
from publish.render.subject import Subject, subject

COVER = "cover"
OWN = "own"
"""Name of the colourway that the pattern itself is written in."""
COVER_PIXELS = 2640
"""Along each side: 300 to the inch across 8.5 in and its bleed."""
WAY_PIXELS = 640
"""300 to the inch across a third of a column."""
SHOP_PIXELS = 1600
_QUALITY = 88
_DOTS = (300, 300)


def way_name(way: str) -> str:
    """Return the name of a colourway's picture."""
    return f"way-{way}"


def for_booklet(
    pattern: Pattern, sizes: Mapping[str, Size], drafts: Mapping[str, Draft], cover: str, ways: str
) -> dict[str, Picture]:
    """Return what a booklet shows: the cover's picture, and one for each colourway.

    `cover` and `ways` are keys of the sizes that are shown. Without a picture where a
    photograph of the designer's stands.
    """
    found: dict[str, Picture] = {}
    if pattern.cover == "drawn":
        return found
    if not any(photo.place == COVER for photo in pattern.photos):
        shown = subject(pattern, sizes[cover], drafts[cover])
        found[COVER] = _made(shown, own_colours(pattern), _prints(pattern), COVER_PIXELS)
    if pattern.colourways:
        shown = subject(pattern, sizes[ways], drafts[ways])
        for way, colours in all_colours(pattern).items():
            found[way_name(way)] = _made(shown, colours, _prints(pattern, way), WAY_PIXELS)
    return found


def for_shop(
    pattern: Pattern, sizes: Mapping[str, Size], drafts: Mapping[str, Draft]
) -> dict[str, Picture]:
    """Return a picture of each size, by its key, for a shop's page."""
    if pattern.cover == "drawn":
        return {}
    colours, prints = own_colours(pattern), _prints(pattern)
    return {
        key: _made(subject(pattern, sizes[key], drafts[key]), colours, prints, SHOP_PIXELS)
        for key in drafts
    }


def _prints(pattern: Pattern, way: str = OWN) -> tuple[tuple[str, Print], ...]:
    """Return the prints of the fabrics that a colourway leaves as they are."""
    fabrics = dict(pattern.fabrics)
    if way != OWN:
        fabrics |= pattern.colourways[way].fabrics
    found = ((key, print_of(fabric)) for key, fabric in fabrics.items())
    return tuple((key, each) for key, each in found if each is not None)


def own_colours(pattern: Pattern) -> dict[str, str]:
    """Return the colours of the pattern's fabrics by their keys."""
    return {key: fabric.colour for key, fabric in pattern.fabrics.items()}


def all_colours(pattern: Pattern) -> dict[str, dict[str, str]]:
    """Return the colours of each colourway by its key, the pattern's own first."""
    own = own_colours(pattern)
    found = {OWN: own}
    for key, way in pattern.colourways.items():
        found[key] = own | {k: f.colour for k, f in way.fabrics.items()}
    return found


class _Asked:
    """A subject that is told from others by its content."""

    def __init__(self, shown: Subject) -> None:
        self.shown = shown
        shapes = [p.shape for p in shown.patches] + [m.shape for m in shown.motifs]
        shapes += [s.lines for s in shown.stitching] + [shown.bound]
        told = repr(
            (
                [(p.fabric, p.grain) for p in shown.patches],
                [(m.fabric, m.method, m.turn_under, m.grain) for m in shown.motifs],
                [(s.fabric, s.hidden) for s in shown.stitching],
                (shown.pillow, shown.binding, shown.edge),
            )
        ).encode()
        digest = hashlib.sha256(told)
        for shape in shapes:
            digest.update(shapely.to_wkb(shape))
        self._digest = digest.digest()

    def __hash__(self) -> int:
        return hash(self._digest)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Asked) and self._digest == other._digest


Prints = tuple[tuple[str, Print], ...]


def _made(shown: Subject, colours: Mapping[str, str], prints: Prints, side: int) -> Picture:
    return _kept(_Asked(shown), tuple(sorted(colours.items())), prints, side)


@lru_cache(maxsize=24)
def _kept(
    asked: _Asked, colours: tuple[tuple[str, str], ...], prints: Prints, side: int
) -> Picture:
    """Return a square picture; one that was made before in this run is not made again."""
    scene = scene_of(asked.shown)
    pixels = picture(_lit(asked, side), dict(colours), scene, (side, side), dict(prints))
    stream = io.BytesIO()
    Image.fromarray(pixels).save(stream, "JPEG", quality=_QUALITY, subsampling=0, dpi=_DOTS)
    return Picture(stream.getvalue(), side, side, scene.words)


@lru_cache(maxsize=1)
def _lit(asked: _Asked, side: int) -> Face:
    """Return the relief in its light, kept for the next colourway of the same size."""
    return face_of(asked.shown, scene_of(asked.shown), (side, side))

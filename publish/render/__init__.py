"""The quilt as it will look: pictures computed from the pattern itself.

In: pattern, sizes, drafts. Out: `Picture`s, JPEG in sRGB.
Invariant: what is pictured is the draft's own geometry in its fabrics' colours; the same
values give the same bytes. Nothing is computed for a pattern whose cover is `drawn`.

Between the drafts and the figures that show them; no stage knows of it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from publish.kept import NOWHERE, Store
from publish.model.draft import Draft
from publish.model.figure import COVER, Picture, row_name, way_name
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.render.faces import scene_of
from publish.render.making import Asked, Colours, Told, rows_of
from publish.render.prints import Print, print_of
from publish.render.scenes import SCENES
from publish.render.subject import Subject, subject

OWN = "own"
"""Name of the colourway that the pattern itself is written in."""
COVER_PIXELS = 2640
"""Along each side: 300 to the inch across 8.5 in and its bleed."""
ROW_PIXELS = 2250
"""300 to the inch across 7 1/2 in, wider than the words of any back cover."""
WAYS_PIXELS, WAYS_ABREAST = 2160, 3
"""300 to the inch across the words of a page, for the colourways that stand in a row, up to
three."""
SHOP_PIXELS = 1600


@dataclass(frozen=True)
class Shown:
    """Keys of the sizes that are pictured on the cover and in every colourway."""

    cover: str
    ways: str


def for_booklet(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    shown: Shown,
    store: Store = NOWHERE,
) -> dict[str, Picture]:
    """Return what a booklet shows: the cover, all sizes together, and each colourway.

    Without a cover where a photograph of the designer's stands.
    """
    if pattern.cover == "drawn":
        return {}
    subjects = {key: subject(pattern, sizes[key], drafts[key]) for key in drafts}
    own = _colours(pattern)
    found: dict[str, Picture] = {}
    if not any(photo.place == COVER for photo in pattern.photos):
        found[COVER] = _asked(pattern, subjects[shown.cover], own, COVER_PIXELS).made(store)
    rows = rows_of(subjects, own, SCENES["flat"], ROW_PIXELS, store)
    found |= {row_name(number): row for number, row in enumerate(rows)}
    if pattern.colourways:
        ways = (OWN, *pattern.colourways)
        side = WAYS_PIXELS // min(len(ways), WAYS_ABREAST)
        for way in ways:
            asked = _asked(pattern, subjects[shown.ways], _colours(pattern, way), side)
            found[way_name(way)] = asked.made(store)
    return found


def for_shop(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    shown: Shown,
    store: Store = NOWHERE,
) -> dict[str, Picture]:
    """Return what a shop's page shows: each size by its key, and each colourway."""
    if pattern.cover == "drawn":
        return {}
    subjects = {key: subject(pattern, sizes[key], drafts[key]) for key in drafts}
    bar = pattern.shop.scale == "bar"
    found = {}
    for key, each in subjects.items():
        made = _asked(pattern, each, _colours(pattern), SHOP_PIXELS, bar).made(store)
        found[key] = replace(made, size=key)
    for way in pattern.colourways:
        asked = _asked(pattern, subjects[shown.ways], _colours(pattern, way), SHOP_PIXELS, bar)
        made = asked.made(store)
        found[f"colourway-{way}"] = replace(made, size=shown.ways, colourway=way)
    return found


def _asked(
    pattern: Pattern, shown: Subject, colours: Colours, side: int, bar: bool = False
) -> Asked:
    return Asked(Told(shown), colours, scene_of(shown, pattern.scene), side, bar)


def _colours(pattern: Pattern, way: str = OWN) -> Colours:
    """Return what the fabrics look like in a colourway."""
    return Colours(tuple(sorted(all_colours(pattern)[way].items())), _prints(pattern, way))


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

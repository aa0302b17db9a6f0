"""The strips of borders: of a plain top, and those among a medallion's rounds.

In: pattern, size, draft. Out: needs.
Invariant: butted, the sides are as long as what they are sewn to, and the top and bottom
cover the sides; mitred, every strip is as long as the finished border outside, and one
border width more. A length on the diagonal is kept exact and cut rounded up.
"""

from __future__ import annotations

from fractions import Fraction

from publish.cut.needs import Need, cloth_of, long_ways
from publish.model.draft import Draft
from publish.model.pattern import BorderSpec, Pattern
from publish.model.size import Round, Size
from publish.surd import Length
from publish.words.values import Count, Word, said

ENDS = {"left": "side", "right": "side", "top": "top", "bottom": "top"}
"""Which strips a border patch is cut from, by the last word of its key."""


def borders(pattern: Pattern, size: Size, draft: Draft | None = None) -> list[Need]:
    """Return each border's strips: sides first, then top and bottom.

    With a draft, each need knows the patches that are cut from it. Where strips are cut wider
    than they need be, by rounding, those sewn on after them are longer by as much.
    """
    found, wider = [], Fraction(0)
    seams = size.seams_beyond(pattern.sewing.seam)
    layers = [pair for pair in zip(size.layers, seams, strict=True) if pair[0].border is not None]
    for number, (layer, outer) in enumerate(layers, start=1):
        for part in ("side", "top"):
            keys = _patches(draft, number, part) if draft else ()
            which = number, part, len(layers)
            found.append(_border(pattern, layer, (outer, wider), which, keys))
            assert layer.border is not None
            broad = layer.border.width + pattern.sewing.seam + outer
            if part == ("top" if layer.border.corners == "mitred" else "side"):
                wider += 2 * (pattern.measures.up(broad) - broad)
    return found


def _border(
    pattern: Pattern,
    layer: Round,
    beyond: tuple[Fraction, Fraction],
    which: tuple[int, str, int],
    keys: tuple[str, ...],
) -> Need:
    """Return the strips of one border; `beyond` are the seam beyond its outside edge, and by
    how much what it is sewn to is larger than drafted."""
    (number, part, of), spec, seam = which, layer.border, pattern.sewing.seam
    (outer, wider), up = beyond, pattern.measures.up
    assert spec is not None
    mitred = spec.corners == "mitred"
    reach = _reach(layer, spec, part, mitred)
    exact: tuple[Length, Length] = (
        spec.width + seam + outer,
        reach + 2 * (outer if part == "top" or mitred else seam) + (spec.width if mitred else 0),
    )
    cut, finished = (up(exact[0]), up(exact[1] + wider)), (spec.width, reach)
    cloth = cloth_of(pattern.fabrics[spec.fabric], pattern.measures.grid)
    ways = long_ways(*cut, 2, cloth, 2 * seam, level=part == "top")
    if cloth.directional and part == "top":  # the strip's length runs across the fabric
        cut, exact, finished = cut[::-1], exact[::-1], finished[::-1]
    place = Word("only" if of == 1 else _place(number, of))
    called = said("piece-border", place=place, number=Count(number), part=Word(part))
    return Need(
        called,
        f"border {number} {part}",
        spec.fabric,
        *cut,
        2,
        ways,
        *finished,
        *exact,
        patches=keys,
    )


def _reach(layer: Round, spec: BorderSpec, part: str, mitred: bool) -> Length:
    """Return the finished length of a strip."""
    inside = layer.inner_height if part == "side" else layer.inner_width
    return inside + (2 * spec.width if mitred or part == "top" else Fraction(0))


def _place(number: int, of: int) -> str:
    if number == 1:
        return "inner"
    return "outer" if number == of else "middle" if of == 3 else "other"


def _patches(draft: Draft, number: int, part: str) -> tuple[str, ...]:
    """Return the keys of a border's patches on the sides, or at top and bottom."""
    found = []
    for patch in draft.patches:
        words = patch.key.split()
        own = int(words[1]) if len(words) == 3 and words[1].isdigit() else 1
        if patch.role == "border" and own == number and ENDS.get(words[-1]) == part:
            found.append(patch.key)
    return tuple(found)

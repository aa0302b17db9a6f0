"""Lengths in words and lengths in the model, so that one can be looked for in the other.

In: text; a case. Out: `Said` lengths with their units; every length that the stages have
settled for a size.
Invariant: nothing is computed but a finished size plus its seams and what is left beside a
motif; few of the lengths that a ruler shows are settled, so a slip rarely meets one.
"""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from shapely.geometry.base import BaseGeometry

from publish.model.cutplan import CutPlan, Piece
from publish.model.draft import Unit
from publish.proof.case import Case
from publish.proof.values.pieces import Kind, is_patch, patch_kind
from publish.surd import Exact, Surd
from publish.units import INCH_IN_MM, UNITS, YARD, decimal_text, number_in_words

NUMBER = r"\d+ \d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?"
"""A number as text has it, with a decimal point or comma."""
_SAID = re.compile(
    rf"(?<![\d.,/-])(?<!unit )({NUMBER}|\d*[¼½¾⅓⅔⅛⅜⅝⅞])[ \u00a0]?"
    r"(inches|inch|yards?|in|ft|yd|mm|cm|m|\"|″)(?!\w)"
)
"""A number with a unit of length; `unit 2 in the middle` is none."""
_SPELLED = {"inch": "in", "inches": "in", '"': "in", "″": "in", "yard": "yd", "yards": "yd"}

_PRACTICE = {
    "1/16": "a mark further off is worth doing again",
    "1/8": "the most between two hand stitches",
    "3/16": "left round fused shapes",
    "1/4": "raw edge left across a trimmed corner; the usual seam",
    "1/2": "basting inside a raw edge; turning ahead of the needle; seam of a joined backing",
    "1": "the check square; a marked inch on a ruler; a binding's end tucked into its beginning",
    "2": "from the first stitch of a binding to the corner ahead, on a short side",
    "3": "over which a pillow's corner is drawn inward",
    "4": "between rows of basting",
    "6": "binding left loose before the first stitch",
    "8": "edge left open for the closing join, on a shorter side",
    "10": "edge left open for the closing join",
    "18": "hand-sewing thread",
    "24": "the depth of a large cutting mat",
    "36": "a yard, in the table of abbreviations",
}
PRACTICE = frozenset(Fraction(*map(int, n.split("/"))) for n in _PRACTICE)
"""Inches that the booklet may name without computing them: common practice."""
NEAR = Fraction(1, 16)
"""Inches: how far a rounded length of a curve may lie from the computed one."""
_WORDS = frozenset({str, int, bool, type(None)})
_NO_LENGTHS = frozenset(
    {
        "ring",
        "box",
        "placements",
        "outline",
        "area",
        "angle",
        "wedge_angle",
        "sharpest_tip",
        "shrinkage",
        "waste",
        "ratio",
        "tension_ratio",
        "thread",
    }
)
"""Fields that hold places on the top, angles, areas and shares."""


@dataclass(frozen=True)
class Said:
    """A length as the text says it; `inches` is its exact value."""

    text: str
    inches: Fraction
    unit: str
    number: str
    """As written, without the unit, with a decimal point."""


Settled = tuple[set[Exact], set[float]]
"""Exact lengths, and lengths of curves and of thread, in inches."""


def said(text: str) -> Iterator[Said]:
    """Yield each length with a unit in a text."""
    for match in _SAID.finditer(text):
        number, unit = match[1].replace(",", "."), _SPELLED.get(match[2], match[2])
        length = number_in_words(number)
        if length is not None:
            yield Said(match.group(), length * UNITS[unit], unit, number)


def _together(runs: list[float]) -> list[float]:
    """Return what runs of stitching are together as they are told: in quarter yards, and in
    tenths of a metre, each run at least one."""
    steps = (float(YARD) / 4, 100 / float(INCH_IN_MM))
    return [sum(max(1, round(n / step)) * step for n in runs) for step in steps]


def settled(case: Case, sizes: tuple[str, ...]) -> Settled:
    """Return the exact lengths, and those of curves, of some sizes and of the pattern."""
    exact: set[Exact] = set()
    curved: set[float] = set()
    parts: list[object] = [case.pattern.sewing, *case.pattern.fabrics.values()]
    parts += case.pattern.motifs.values()
    for key in sizes:
        parts += [case.pattern.sizes[key], case.sizes[key], case.plans[key], case.drafts[key]]
        exact.update(_beside_seams(case, key))
        exact.update(_in_words(case, case.plans[key]))
        for unit in case.drafts[key].assembly.outermost_first():
            exact.update(*as_cut(case, key, unit))
        curved.update(_together([q.length for q in case.drafts[key].quilting if q.length]))
        thread = case.plans[key].thread
        curved.update(float(v) for v in (*values(thread), thread.total))
    for part in parts:
        for value in values(part):
            if isinstance(value, float):
                curved.add(value)
            else:
                exact.add(value)
    # A length on the diagonal is told to the nearest 1/8 in, and in centimetres as it is.
    return exact | {case.near(v) for v in exact}, curved


def _beside_seams(case: Case, key: str) -> Iterator[Fraction]:
    """Yield every unit's side finished and with its seams, and the blank margins."""
    size = case.sizes[key]
    for unit in case.drafts[key].assembly.outermost_first():
        for side in (unit.width, unit.height):
            yield from (side, side + 2 * case.seam)
    yield from (size.perimeter, size.block_side + 2 * case.seam)
    yield 1 + 2 * case.seam  # strips of the test of a seam, 1 in wide when they are sewn
    sleeve = case.plans[key].sleeve
    if sleeve is not None:
        yield max(sleeve.width, sleeve.length) - 4 * case.seam  # hemmed twice at both ends
    yield size.block_side + 2 * case.seam + case.pattern.sewing.ground_margin
    if size.motif_span is not None:
        yield size.block_side - size.motif_span
        yield (size.block_side - size.motif_span) / 2
    if size.pillow is not None:
        for unit in case.drafts[key].assembly.outermost_first():
            yield from (side + case.seam + size.pillow.seam for side in (unit.width, unit.height))
        for side in (size.width, size.height):
            whole = side + 2 * size.pillow.seam
            yield from (whole, whole + case.pattern.sewing.ground_margin)
    for border in size.borders:
        yield border.width + 2 * case.seam


def as_cut(case: Case, key: str, unit: Unit) -> tuple[set[Fraction], set[Fraction]]:
    """Return the widths and heights a unit can have when it is sewn from its cut pieces.

    Cut sizes are rounded up to 1/8 in, so they add up to a little more than the finished
    sizes do. Patches alike may be cut in more than one size: at the edge of a block that
    is trimmed later, and inside it.
    """
    place = "as cut", key, id(unit)
    if place not in case.memory:
        case.memory[place] = _as_cut(case, key, unit)
    found: tuple[set[Fraction], set[Fraction]] = case.memory[place]
    return found


def _as_cut(case: Case, key: str, unit: Unit) -> tuple[set[Fraction], set[Fraction]]:
    if unit.patch is not None:
        kind = patch_kind(unit.patch)
        alike = [p for p in case.plans[key].pieces if kind is not None and _kind_of(p) == kind]
        sides = [
            (p.width, p.length) if p.finished_width == unit.width else (p.length, p.width)
            for p in alike
        ]
        return {width for width, _ in sides}, {height for _, height in sides}
    parts = [as_cut(case, key, part) for part in unit.parts]
    if unit.join not in ("across", "down") or any(not w for w, _ in parts):
        return set(), set()
    joined, level = (0, 1) if unit.join == "across" else (1, 0)
    sums = {Fraction(0)}
    for part in parts:
        sums = {total + side for total in sums for side in part[joined]}
    lost = 2 * case.seam * (len(parts) - 1)
    along, aside = {s - lost for s in sums}, {side for part in parts for side in part[level]}
    return (along, aside) if unit.join == "across" else (aside, along)


def _kind_of(piece: Piece) -> Kind | None:
    if piece.finished_width is None or piece.finished_length is None or not is_patch(piece):
        return None
    shorter, longer = sorted((piece.finished_width, piece.finished_length))
    return piece.fabric, shorter, longer


def _in_words(case: Case, plan: CutPlan) -> Iterator[Fraction]:
    """Yield the lengths that a plan itself says in words: what a choice saves, a package."""
    for fabric in plan.fabrics.values():
        for choice in fabric.choices:
            yield from (length.inches for length in said(choice))
    if plan.batting is not None and plan.batting.package is not None:
        yield from (plan.batting.package.short, plan.batting.package.long)


def values(part: object) -> Iterator[Exact | float]:
    """Yield every number inside a value of the model, geometries left out."""
    if type(part) in _WORDS:  # most of what there is, told apart soonest
        return
    if isinstance(part, Fraction | Surd | float):
        yield part
    elif isinstance(part, str | bytes | int | BaseGeometry) or part is None:
        return
    elif isinstance(part, Mapping):
        for value in part.values():
            yield from values(value)
    elif isinstance(part, tuple | list | frozenset | set):
        for value in part:
            yield from values(value)
    elif dataclasses.is_dataclass(part):
        for field in dataclasses.fields(part):
            if field.name not in _NO_LENGTHS:
                yield from values(getattr(part, field.name))
        for name in ("perimeter", "gap"):
            yield from values(getattr(part, name, None))


def written(inches: Exact, unit: str, places: int) -> str:
    """Return a length as text has it in one of `UNITS`, rounded half up to decimal places."""
    return decimal_text(inches / UNITS[unit], places)

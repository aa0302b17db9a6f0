"""Whether backing, batting, binding and pillow back reach as far as they must.

In: a case. Out: notes.
Invariant: backing and batting reach past every edge by what the pattern asks; the binding
goes round; an envelope back covers the cover and overlaps.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import sqrt

from publish.model.cutplan import BackingPlan, BattingPlan, BindingPlan, Piece, PillowPlan
from publish.model.size import Size
from publish.model.trade import BACKING_SEAM
from publish.notes import Note, Place, error
from publish.proof.case import Case, Code
from publish.words import english

CODES = {
    "P841": Code(
        "The backing does not reach",
        "the quilt cannot be basted flat",
        "a backing of 66 in for a top of 64 in and an overhang of 4 in",
        "72 in",
    ),
    "P842": Code(
        "The batting does not reach",
        "the edge of the quilt is empty",
        "a batting of 64 in, or a package that does not hold it",
        "70 in, from a package of 72 × 90 in",
    ),
    "P843": Code(
        "The binding does not go round",
        "the maker runs out at the last corner",
        "six strips that join to 226 in for 266 in",
        "seven strips",
    ),
    "P844": Code(
        "The pillow back does not close",
        "the form shows through the opening",
        "two backs of 10 in behind a cover of 17 in",
        "two backs of 12 in, which overlap by 4 in",
    ),
    "P849": Code(
        "A hanging sleeve is too short or too shallow",
        "the quilt sags at its corners",
        "a sleeve of 12 in on a quilt of 20 in",
        "a sleeve of 19 in",
    ),
    "P845": Code(
        "Quilting lines lie further apart than the batting allows",
        "the batting shifts",
        "`spacing: 9 in` under `largest_gap: 8 in`",
        "`spacing: 3/4 in`",
    ),
}
SLEEVE_SHORTER = Fraction(2)
"""Inches by which a sleeve may fall short of its quilt's width, an inch at each end: common
practice, no source."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each finishing part that is too small."""
    for key in case.keys:
        size, plan = case.sizes[key], case.plans[key]
        if plan.backing is not None:
            yield from _backing(case, size, plan.backing)
        if plan.batting is not None and size.batting is not None:
            reach = 2 * size.batting.overhang
            place = case.size_place(key, "batting")
            for name, side, top in _sides(size, plan.batting.width, plan.batting.height):
                yield from _least(case, "P842", place, f"batting's {name}", side, top + reach)
        if plan.batting is not None and plan.batting.package is not None:
            yield from _package(case, size, plan.batting)
        if plan.binding is not None:
            yield from _binding(case, size, plan.binding)
        if plan.sleeve is not None and size.sleeve is not None:
            yield from _sleeve(case, size, size.sleeve, plan.sleeve)
        if plan.pillow is not None and size.pillow is not None:
            yield from _pillow(case, size, plan.pillow)
        yield from _gaps(case, size)


def _sides(
    size: Size, width: Fraction, height: Fraction
) -> tuple[tuple[str, Fraction, Fraction], ...]:
    return ("width", width, size.width), ("height", height, size.height)


def _least(
    case: Case, code: str, place: Place, what: str, given: Fraction, least: Fraction
) -> Iterator[Note]:
    if given < least:
        yield error(
            code,
            place,
            f"the {what} is too small",
            expected=f"at least {case.text(least)}",
            received=case.text(given),
        )


def _backing(case: Case, size: Size, plan: BackingPlan) -> Iterator[Note]:
    place = case.size_place(size.key, "backing")
    for name, side, top in _sides(size, plan.width, plan.height):
        yield from _least(case, "P841", place, f"backing's {name}", side, top + 2 * plan.overhang)
    if plan.half is not None:
        half = plan.panel_width / 2
        yield from _least(case, "P841", place, "half panel of the backing", plan.half, half)
    if plan.seams == "none":
        return
    # Panels lie side by side: each seam takes its allowance from both of its panels.
    across, along = (
        (plan.width, plan.height) if plan.seams == "vertical" else (plan.height, plan.width)
    )
    # A panel that is split to keep a seam from the middle makes one seam more.
    joins = plan.panels - 1 if plan.half is None else plan.panels
    joined = plan.panels * plan.panel_width - joins * 2 * case.pattern.measures.usual(BACKING_SEAM)
    yield from _least(case, "P841", place, "joined width of the backing's panels", joined, across)
    yield from _least(
        case, "P841", place, "length of the backing's panels", plan.panel_length, along
    )


def _binding(case: Case, size: Size, plan: BindingPlan) -> Iterator[Note]:
    place = case.size_place(size.key, "binding")
    allowance = Fraction(0) if size.binding is None else size.binding.allowance
    least = size.perimeter + allowance
    joins = Fraction(plan.strips - 1)
    if plan.square is None and plan.joins != joins:
        yield error(
            "P843",
            place,
            "the binding's joins are not one fewer than its strips",
            expected=str(joins),
            received=str(plan.joins),
        )
    yield from _least(case, "P843", place, "length of the binding", plan.length, least)
    given = plan.joined_length
    if plan.square is not None:
        given = min(given, _spiral(plan.square, plan.strip_width, case.seam))
    yield from _least(case, "P843", place, "joined length of the binding", given, plan.length)


def _spiral(side: Fraction, width: Fraction, seam: Fraction) -> Fraction:
    """Return what a square gives as continuous bias: it is laid out line after line between
    the bias edges of its two sewn triangles, each line as long as the tube is round."""
    room, total = float(side - 2 * seam) / sqrt(2), Fraction(0)
    for _ in range(int((room + 1e-9) / float(width))):
        total += Fraction(float(side - 2 * seam) * sqrt(2))
    return total


def _package(case: Case, size: Size, plan: BattingPlan) -> Iterator[Note]:
    """The smaller side of the package holds the smaller of the batting's, the larger the other."""
    if plan.package is None:
        return
    place = case.size_place(size.key, "batting")
    what = f"batting package ({english(plan.package.called, case.pattern.measures)})"
    sides = sorted((plan.package.short, plan.package.long))
    for side, needed in zip(sides, sorted((plan.width, plan.height)), strict=True):
        yield from _least(case, "P842", place, what, side, needed)


def _sleeve(case: Case, size: Size, depth: Fraction, piece: Piece) -> Iterator[Note]:
    place = case.size_place(size.key, "sleeve")
    needed = 2 * (depth + case.seam)
    # Which side becomes the depth is the cloth's affair: the one that is meant for it.
    sides = sorted((piece.width, piece.length), key=lambda side: abs(side - needed))
    yield from _least(case, "P849", place, "depth of the sleeve's strip", sides[0], needed)
    short = size.width - SLEEVE_SHORTER
    yield from _least(case, "P849", place, "length of the sleeve", sides[1], short)


def _pillow(case: Case, size: Size, plan: PillowPlan) -> Iterator[Note]:
    if plan.back != "envelope" or size.pillow is None:
        return
    place = case.size_place(size.key, "pillow")
    side = size.width + 2 * size.pillow.seam
    # Two hemmed pieces cover the cut side once and their overlap twice.
    overlap = 2 * (min(plan.piece_width, plan.piece_length) - plan.hem) - side
    yield from _least(
        case, "P844", place, "overlap of the pillow back", overlap, size.pillow.overlap
    )
    yield from _least(case, "P844", place, "overlap that the plan tells", overlap, plan.overlap)
    yield from _least(case, "P844", place, "cloth for the back's hem", plan.hem, size.pillow.hem)
    tall = size.height + 2 * size.pillow.seam
    longer = max(plan.piece_width, plan.piece_length)
    yield from _least(case, "P844", place, "length of the pillow back", longer, tall)


def _gaps(case: Case, size: Size) -> Iterator[Note]:
    limit = None if size.batting is None else size.batting.largest_gap
    asked = case.pattern.sizes[size.key].quilting  # what these ask for, grade has told of
    for index, quilting in enumerate(size.quilting):
        if quilting in asked:
            continue
        if limit is not None and quilting.spacing is not None and quilting.spacing > limit:
            yield error(
                "P845",
                case.size_place(size.key, "quilting", index, "spacing"),
                f"the quilting of the {quilting.area} lies further apart than the batting allows",
                expected=f"at most {case.text(limit)}",
                received=case.text(quilting.spacing),
                help="quilt closer, or choose a batting whose label allows more",
            )

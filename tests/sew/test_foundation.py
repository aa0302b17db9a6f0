"""Foundations on the table: cover, whole sides, allowances, paper; all worked out by hand.

A patch is laid along its seam and reaches past its area by a seam all round: common practice,
no source. The triangle is the right one of sides 3, 4 and 5 (Euclid, Elements I.47).
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from sewing_cases import failings, sewn

from publish.operations.foundation import (
    Area,
    Foundation,
    LayFirstPatch,
    PatchWork,
    PrintFoundations,
)
from publish.operations.foundation_sections import PressSections, TearAllowances, TrimSection
from publish.operations.outline import glued, plain, root_up
from publish.operations.parts import measured, sheet
from publish.operations.table import Table

SEAM = Fraction(1, 4)
ON = {"chapter": "foundation", "step": "x"}


def ring(*points: tuple[int, int]) -> tuple[tuple[Fraction, Fraction], ...]:
    return tuple((Fraction(x), Fraction(y)) for x, y in points)


SQUARE = ring((0, 0), (1, 0), (1, 1), (0, 1))
BESIDE = ring((1, 0), (2, 0), (2, 1), (1, 1))
TALLER = ring((1, 0), (2, 0), (2, 2), (1, 2))
TRIANGLE = ring((0, 0), (3, 0), (3, 4))
LONG_SIDE = (TRIANGLE[2], TRIANGLE[0])


def test_two_squares_side_by_side_are_a_rectangle() -> None:
    both = glued(SQUARE, BESIDE)
    assert both is not None
    assert both.ring == plain(ring((0, 0), (2, 0), (2, 1), (0, 1)))
    assert both.line == (SQUARE[1], SQUARE[2])


def test_a_side_that_is_longer_than_its_seam_is_no_whole_side() -> None:
    both = glued(SQUARE, TALLER)
    assert both is not None
    assert both.line is None
    assert glued(SQUARE, ring((5, 5), (6, 5), (6, 6))) is None


def test_a_root_is_rounded_up_exactly() -> None:
    assert root_up(Fraction(2), 8) == Fraction(12, 8)  # √2 = 1.41..., 11/8 = 1.375
    assert root_up(Fraction(25), 8) == 5


def laid(cloth: tuple[Fraction, Fraction], *, may_turn: bool = True) -> Table:
    """Lay cloth on the triangle, along its side of 5 in: it is 12/5 in deep from there."""
    paper = Foundation("A", "A", 1, TRIANGLE, 1)
    area = Area(1, TRIANGLE, (), LONG_SIDE, "piece A", may_turn)
    table = Table()
    table.put(sheet("piece A", *map(measured, cloth)))
    table.carry_out(PrintFoundations(**ON, papers=(paper,), spare=SEAM, seam=SEAM))
    table.carry_out(LayFirstPatch(**ON, paper=paper, area=area, seam=SEAM, around=SEAM))
    return table


@pytest.mark.parametrize(
    ("wide", "high", "fits"),
    [
        (Fraction(11, 2), Fraction(47, 16), True),  # 2.4375 in is left of 12/5 in
        (Fraction(11, 2), Fraction(23, 8), False),  # 2.375 in
        (Fraction(43, 8), Fraction(4), False),  # 4.875 in of 5 in
        (Fraction(47, 16), Fraction(11, 2), True),
    ],
)
def test_cloth_must_cover_its_area_with_a_seam_all_round(
    wide: Fraction, high: Fraction, fits: bool
) -> None:
    found = laid((wide, high)).failings
    assert [f.expected for f in found] == ([] if fits else ["5 1/2 in × 3 in"])


def test_a_print_with_a_direction_is_not_turned_to_fit() -> None:
    assert laid((Fraction(47, 16), Fraction(11, 2)), may_turn=False).failings


def test_blocks_of_a_pillow_keep_its_wider_seam_on_the_outside() -> None:
    """8 in blocks, two by two: an inner seam of 1/4 in and a closing seam of 1/2 in make each
    8 3/4 in, and the front 17 in square, as the form of 16 in asks for."""
    (made,) = sewn("on paper, the blocks of a pillow").making.sizes.values()
    blocks = [m for m in made.moments if isinstance(m.operation, PressSections)]
    sides = {(p.width.told, p.height.told) for m in blocks for p, _ in m.gave}
    trimmed = [m for m in made.moments if isinstance(m.operation, TrimSection)]
    assert len({one.allow for m in trimmed for one in m.operation.results}) > 1
    assert all(abs(side - Fraction(35, 4)) <= Fraction(1, 8) for pair in sides for side in pair)


@pytest.mark.parametrize("name", ["on paper, joined to strips", "on paper, joined on a slant"])
def test_paper_comes_off_a_seam_before_it_is_pressed(name: str) -> None:
    (made,) = sewn(name).making.sizes.values()
    order = list(made.operations)
    at = next(i for i, o in enumerate(order) if isinstance(o, TearAllowances))
    order[at], order[at + 1] = order[at + 1], order[at]
    assert any("torn off" in f.what for f in failings(made, tuple(order)))


def test_an_area_that_no_fabric_covers_is_found_when_the_section_is_trimmed() -> None:
    (made,) = sewn("on paper, whole").making.sizes.values()
    patches = [o for o in made.operations if isinstance(o, PatchWork)]
    last = max(o.area.number for o in patches)
    gone = {o.key for o in patches if o.area.number == last}
    order = tuple(o for o in made.operations if o.key not in gone)
    assert any("flat on its area" in f.what for f in failings(made, order))
    covered = [f for f in failings(made, order) if f.what == "all of its areas covered"]
    assert covered


def test_a_section_of_another_size_does_not_fit_its_neighbour() -> None:
    (made,) = sewn("on paper, joined on a slant").making.sizes.values()
    trim = next(o for o in made.operations if isinstance(o, TrimSection))
    larger = replace(
        trim, paper=replace(trim.paper, ring=tuple((x * 2, y) for x, y in trim.paper.ring))
    )
    order = tuple(larger if o is trim else o for o in made.operations)
    assert failings(made, order)

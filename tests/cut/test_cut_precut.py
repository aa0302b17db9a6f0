"""Fat quarters, squares and strips: published counts, bounds, and what always holds."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction
from itertools import product

import pytest
import reedmace
from cut_cases import framed, pattern, planned
from hypothesis import given, settings
from hypothesis import strategies as st

from publish import cut
from publish.cut.fabric import Lettered
from publish.cut.needs import Need, plain
from publish.cut.precut import ready_cut
from publish.cut.sheets import Kind, Problem, fewest, totals
from publish.model.cloth import FAT_EIGHTH, FAT_QUARTER, SoldAs
from publish.model.pattern import BindingSpec
from publish.words.values import Named

F = Fraction
SQUARES = SoldAs("square", F(10), F(10), 42)
STRIPS = SoldAs("strip", F(40), F(5, 2), 40)

NONE = F(0)


def plan(pieces, sold=FAT_QUARTER, directional=False, shrinkage=NONE):
    """Return how pieces (width, length, count) are cut from what is sold ready cut."""
    fabric = replace(
        reedmace.pattern().fabrics["linen"],
        sold_as=sold,
        directional=directional,
        shrinkage=shrinkage,
    )
    needs = [
        Lettered(
            chr(65 + i),
            Need(
                Named("piece"), "ground", "linen", F(w), F(h), n, plain(F(w), F(h), n, directional)
            ),
        )
        for i, (w, h, n) in enumerate(pieces)
    ]
    return ready_cut(fabric, needs).plan


# Measurements, quiltersresources.com: squares from a fat quarter of 18 x 22 in.
@pytest.mark.parametrize(("side", "squares"), [(2, 99), (3, 42), (4, 20), (6, 9), (F(13, 2), 6)])
def test_squares_from_fat_quarters(side, squares):
    one = plan([(side, side, squares)])
    assert (one.used, one.bound, one.packets) == (1, 1, 1)
    more = plan([(side, side, squares + 1)])
    assert (more.used, more.bound) == (2, 2)
    assert plan([(side, side, 3 * squares)]).used == 3


# Meters, yards, inches and fat quarter, tilkkunen.com: a fat eighth is a quarter yard of
# half the width, 9 in deep, half a fat quarter.
def test_a_fat_eighth_is_half_a_fat_quarter():
    assert FAT_EIGHTH.length * 2 == FAT_QUARTER.length
    assert FAT_EIGHTH.width == FAT_QUARTER.width
    assert plan([(3, 3, 21)], FAT_EIGHTH).used == 1
    assert plan([(3, 3, 22)], FAT_EIGHTH).used == 2


# Arithmetic done here (from memory).
def test_packets_of_squares_and_strips():
    assert plan([(5, 5, 100)], SQUARES).used == 25
    assert plan([(5, 5, 100)], SQUARES).packets == 1
    assert plan([(5, 5, 169)], SQUARES).packets == 2
    assert plan([(F(5, 2), F(5, 2), 17)], STRIPS).used == 2  # 16 to a strip of 40 in


def test_strips_of_a_sheet_may_run_along_it():
    """Two pieces of 18 x 11 in fill a fat quarter only when it is cut along its length."""
    made = plan([(11, 18, 4)], directional=True)
    assert made.used == 2
    assert plan([(8, 18, 5)]).used == 3


def test_direction_and_shrinkage_cost_sheets():
    assert plan([(12, 20, 1)]).used == 1  # lies level
    with pytest.raises(AssertionError):
        plan([(12, 20, 1)], directional=True)  # 20 in do not fit along 18
    assert plan([(6, 6, 9)], shrinkage=F(3, 100)).used == 2  # 3 x 6 in no longer fit


SIDES = st.integers(8, 140).map(lambda n: F(n, 8))
PIECES = st.lists(st.tuples(SIDES, SIDES, st.integers(1, 9)), min_size=1, max_size=4)


@settings(max_examples=40, deadline=None)
@given(PIECES, st.booleans())
def test_every_piece_is_cut_once_and_the_bound_holds(pieces, directional):
    made = plan(pieces, directional=directional)  # `_checked` has looked at every sheet
    area = sum(w * h * n for w, h, n in pieces)
    assert area / (18 * 22) <= made.bound <= made.used
    held = Counter()
    for sheet in made.sheets:
        taken = sum((s.area * s.count for s in sheet.strips), F(0))
        assert taken <= 18 * 22
        for strip in sheet.strips:
            for c in strip.cuts:
                held[c.letter] += c.count * strip.count * sheet.count
    assert held == {chr(65 + i): n for i, (_, _, n) in enumerate(pieces)}


@settings(max_examples=25, deadline=None)
@given(PIECES, st.tuples(SIDES, SIDES, st.integers(1, 4)))
def test_more_pieces_never_have_a_lower_bound_than_fewer_need(pieces, more):
    assert plan([*pieces, more]).used >= plan(pieces).bound


def every_sheet(problem):
    """Yield what each two-stage sheet can hold, by trying everything."""
    for side in problem.sides:
        strips = []
        for d, depth in enumerate(side.depths):
            ranges = [
                range(min(k.count, side.long // run) + 1) if run else range(1)
                for k, run in zip(problem.kinds, side.run[d], strict=True)
            ]
            strips += [
                (depth, counts)
                for counts in product(*ranges)
                if any(counts)
                and sum(n * r for n, r in zip(counts, side.run[d], strict=True)) <= side.long
            ]
        open_ = [(0, (0,) * len(problem.kinds))]
        while open_:
            used, held = open_.pop()
            yield held
            for depth, counts in strips:
                if used + depth <= side.room:
                    more = tuple(a + b for a, b in zip(held, counts, strict=True))
                    open_.append((used + depth, more))


def least(problem):
    """Return the fewest sheets by searching over what is still to be cut."""
    counts = tuple(k.count for k in problem.kinds)
    sheets = {
        tuple(min(n, c) for n, c in zip(held, counts, strict=True)) for held in every_sheet(problem)
    }
    front, done = {counts}, 0
    while not any(not any(left) for left in front):
        front = {
            tuple(max(0, a - b) for a, b in zip(left, held, strict=True))
            for left in front
            for held in sheets
        }
        done += 1
    return done


SMALL = st.lists(
    st.tuples(st.integers(2, 6), st.integers(2, 6), st.integers(1, 3)), min_size=1, max_size=2
)


@settings(max_examples=30, deadline=None)
@given(SMALL, st.booleans())
def test_small_problems_against_trying_everything(pieces, turning):
    kinds = tuple(
        Kind(tuple(sorted({(w, h), (h, w)} if turning else {(w, h)})), n) for w, h, n in pieces
    )
    problem = Problem(7, 6, kinds)
    found = fewest(problem)
    assert found.bound <= least(problem) <= found.count
    held = [0] * len(kinds)
    for pattern_, times in found.patterns:
        for i, n in enumerate(totals(pattern_)):
            held[i] += n * times
    assert all(h >= k.count for h, k in zip(held, kinds, strict=True))


# Through the stage.


def test_a_fabric_sold_as_fat_quarters_is_planned_from_them():
    """A 2 in border round 16 in: two pieces 16 1/2 and two 20 1/2 in long, 2 1/2 in wide."""
    made = planned(pattern(sandbar={"sold_as": FAT_QUARTER}), framed(20, 20, border=2))
    fabric = made.fabrics["sandbar"]
    assert (fabric.precut.used, fabric.precut.bound) == (1, 1)
    assert fabric.buy > 0 and fabric.alternatives == ()


def test_long_borders_are_joined_from_what_a_fat_quarter_holds():
    made = planned(pattern(sandbar={"sold_as": FAT_QUARTER}), framed(44, 60))
    side, top = made.piece("border 1 side"), made.piece("border 1 top")
    assert (side.joined_from, top.joined_from) == (3, 3)  # 52 1/2 and 44 1/2 in, 22 at most
    for piece, parts in ((side, 3), (top, 3)):
        each = {
            c.across
            for s in made.fabrics["sandbar"].precut.sheets
            for x in s.strips
            for c in x.cuts
            if c.letter == piece.letter
        }
        assert max(each) * parts - (parts - 1) * F(1, 2) >= piece.length


def test_border_and_binding_from_strips_as_sold():
    """Binding of 266 in: 7 strips of 40. A 2 in border of 60 1/2 and 64 1/2 in, joined from
    two: four lengths of 30 1/2 in and four of 32 1/2 in, one to a strip."""
    size = framed(64, 64, border=2, binding=BindingSpec("sandbar", F(9, 4)))
    made = planned(pattern(sandbar={"sold_as": STRIPS}), size)
    assert (made.binding.strip_length, made.binding.strips) == (40, 7)
    found = made.fabrics["sandbar"].precut
    assert (found.used, found.bound, found.packets) == (15, 15, 1)


def cut_notes(made, size):
    return cut.cut(made, {"mini": size}, {"mini": reedmace.draft()})[1]


def test_a_piece_larger_than_what_is_sold_is_a_note():
    notes = cut_notes(pattern(linen={"sold_as": FAT_QUARTER}), framed(20, 20, border=2))
    assert {n.code for n in notes} == {"C404"}  # the backing; the ground of 17 1/2 in fits
    assert "backing" in notes[0].what and "fat quarter" in notes[0].what
    assert notes[0].place.path == "fabrics.linen"


def test_alternatives_answer_for_every_fabric_sold_by_length():
    made = planned(pattern(), framed(20, 20, border=2))
    answers = {
        key: {
            a.sold_as.kind: a.count if a.count is not None else a.larger for a in plan.alternatives
        }
        for key, plan in made.fabrics.items()
    }
    backing = made.piece("backing").letter
    motif = made.piece("motif").letter
    ground = made.piece("ground").letter
    assert answers["sandbar"] == {"fat quarter": 1, "fat eighth": 2, "square": 3, "strip": 2}
    assert answers["linen"]["fat quarter"] == backing
    assert answers["linen"]["strip"] == ground
    assert answers["moss"]["square"] == motif
    for plan_ in made.fabrics.values():
        for found in plan_.alternatives:
            assert found.count is None or 0 < found.bound <= found.count


def test_an_alternative_says_which_pieces_are_then_joined():
    made = planned(pattern(), framed(44, 60))
    quarter = next(a for a in made.fabrics["sandbar"].alternatives if a.sold_as == FAT_QUARTER)
    letters = {made.piece("border 1 side").letter, made.piece("border 1 top").letter}
    assert set(quarter.joined) == letters


def test_nobody_cuts_many_sizes_from_sheets_but_a_piece_too_large_is_named(monkeypatch):
    """The table answers for every fabric, also where there is nothing to work out."""
    monkeypatch.setattr(cut, "MOST_SIZES", 0)
    made = planned(pattern(), framed(20, 20, border=2))
    found = made.fabrics["linen"].alternatives[0]
    assert (found.count, found.larger) == (None, made.piece("backing").letter)
    assert [(a.count, a.larger) for a in made.fabrics["sandbar"].alternatives] == [(None, "")] * 4

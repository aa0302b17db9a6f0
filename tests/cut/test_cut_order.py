"""The cutting order, and long pieces along or across the fabric.

Common practice, no source: cut what needs an unbroken length first, then the largest.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import permutations

import pytest
import reedmace
from cut_cases import cuts, framed, pattern, planned
from hypothesis import given, settings
from hypothesis import strategies as st

from publish import cut as cut_stage
from publish.cut.fabric import Lettered, plan_fabric
from publish.cut.order import cutting_order
from publish.cut.patches import gather
from publish.model.cutplan import Cut, Strip
from publish.model.pattern import BindingSpec

F = Fraction


def strip(*cuts, count=1):
    made = tuple(Cut(letter, F(across), F(along), n) for letter, across, along, n in cuts)
    return Strip(max(c.along for c in made), made, count)


LONG = strip(("K", 4, 65, 2), ("J", 4, 57, 2))
SHORTER_LONG = strip(("P", 10, 50, 1))
BACKING = strip(("L", 37, 44, 1), count=2)
BLOCKS = strip(("B", 10, 10, 4))
PATCHES = strip(("C", 3, 3, 13))
BINDING = strip(("M", 40, 2, 1), count=7)


def test_long_pieces_then_large_ones_then_the_rest_whatever_comes_in():
    wanted = (LONG, SHORTER_LONG, BLOCKS, BINDING, PATCHES)
    for shuffled in permutations(wanted):
        assert cutting_order(shuffled, F(40)) == wanted
    assert cutting_order((BLOCKS, BACKING, LONG), F(40)) == (LONG, BACKING, BLOCKS)


SIZES = st.tuples(st.integers(4, 40), st.integers(4, 90), st.integers(1, 3))


@settings(max_examples=50)
@given(st.lists(SIZES, min_size=1, max_size=8))
def test_no_strip_waits_behind_a_smaller_one(sizes):
    strips = [strip((chr(65 + i), *size)) for i, size in enumerate(sizes)]
    ordered = cutting_order(strips, F(40))
    assert sorted(map(repr, ordered)) == sorted(map(repr, strips))
    long = [s for s in ordered if max(c.along for c in s.cuts) > 40]
    assert ordered[: len(long)] == tuple(long)
    depths = [max(c.along for c in s.cuts) for s in long]
    assert depths == sorted(depths, reverse=True)
    areas = [max(c.across * c.along for c in s.cuts) for s in ordered[len(long) :]]
    assert areas == sorted(areas, reverse=True)


def test_a_plan_is_in_cutting_order():
    plan = planned(pattern(), framed(64, 90, fabric="linen"))
    strips = plan.fabrics["linen"].strips
    assert strips == cutting_order(strips, F(40))


@pytest.mark.parametrize("size", [(44, 60), (64, 90), (90, 108)])
def test_the_way_chosen_buys_no_more_than_any_other_way_alone(size):
    """Each need cut in each of its ways by itself never beats the plan."""
    made = pattern()
    size, draft = framed(*size), reedmace.draft()
    needs = cut_stage._needs(made, size, draft, gather(made, size, draft))
    for key in ("linen", "sandbar", "moss"):
        own = [Lettered(chr(65 + i), n) for i, n in enumerate(needs) if n.fabric == key]
        best = plan_fabric(made.fabrics[key], own, made.sewing)
        for i, lettered in enumerate(own):
            for way in lettered.need.ways:
                fixed = Lettered(lettered.letter, replace(lettered.need, ways=(way,)))
                others = [*own[:i], fixed, *own[i + 1 :]]
                assert best.buy <= plan_fabric(made.fabrics[key], others, made.sewing).buy


def test_binding_is_cut_beside_lengthwise_borders_where_that_buys_less():
    """Four 6 in borders along the cloth are cut 26 in wide and leave 14 in for binding."""
    spec = BindingSpec("sandbar", F(9, 4))
    plan = planned(pattern(), framed(48, 60, border=6, binding=spec))
    assert all(c.along > 40 for c, _ in cuts(plan, "border 1 side"))
    assert plan.binding.strip_length > 40
    assert plan.binding.joined_length >= plan.binding.length == 2 * (48 + 60) + 10
    shared = [s for c, s in cuts(plan, "binding") if any(x.letter != c.letter for x in s.cuts)]
    assert shared, "no binding strip shares its stretch of cloth with a border"
    said = " ".join(plan.fabrics["sandbar"].choices)
    assert "(binding strip) cut along the length, beside long pieces: buys" in said

"""Seams that meet are pressed opposite ways where any pressing can, and said where not.

What is pressed where is common practice, no source; that seams nest is checked seam by
seam, on the line that two of them share.
"""

from collections import Counter, defaultdict
from dataclasses import replace
from fractions import Fraction
from itertools import combinations, pairwise
from math import hypot

import pytest
import shapely
from draft_builders import grid
from draft_tops import every, four, library, tree
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.arcs import outline
from publish.model.block import Piecing
from publish.model.pattern import BorderSpec, RoundSpec, SashingSpec
from publish.surd import turned

F = Fraction
FABRICS = ("linen", "moss", "sand")


def meetings(unit):
    """Return the pairs of upright, and of level, seams that carry each other on."""
    found = []
    for join in ("across", "down"):
        ends, starts = defaultdict(list), defaultdict(list)
        for u in every(unit):
            if u.join == join:
                along, aside = (0, 1) if join == "across" else (1, 0)
                for part in u.parts[:-1]:
                    at = part.box[along + 2]
                    starts[at, u.box[aside]].append(u)
                    ends[at, u.box[aside + 2]].append(u)
        found += [
            (a, b) for spot in ends.keys() & starts.keys() for a in ends[spot] for b in starts[spot]
        ]
    return found


@settings(max_examples=25)
@given(st.integers(1, 4), st.integers(1, 4), st.integers(1, 4), st.integers(1, 4))
def test_meeting_seams_nest(columns, rows, across, down):
    cells = [[FABRICS[(x + y) % 2] for x in range(across)] for y in range(down)]
    unit = tree(grid("plain", cells), columns=columns, rows=rows)
    assert all(u.nests for u in every(unit))
    pairs = meetings(unit)
    assert bool(pairs) == (
        max(columns * across, rows * down) > 1 < min(columns * across, rows * down)
    )
    for one, two in pairs:
        assert {one.press, two.press} in ({"left", "right"}, {"up", "down"})


def pressed(unit):
    """Yield each straight seam of a unit, by shapely: its ends, and the way it is pressed."""
    for number, (one, two) in enumerate(pairwise(unit.parts)):
        areas = [outline(p.ring, p.arcs, 1e-5) for p in (one, two)]
        shared = shapely.intersection(areas[0].exterior, areas[1].exterior, grid_size=1e-6)
        seam = shapely.line_merge(shared)
        if unit.join in ("mitred", "set in", "curve") or seam.geom_type != "LineString":
            continue
        (a, b), (c, d) = seam.coords[0], seam.coords[-1]
        across, down = d - b, a - c  # at right angles to the seam
        far = max(
            areas[1].exterior.coords, key=lambda p: abs((p[0] - a) * across + (p[1] - b) * down)
        )
        if (far[0] - a) * across + (far[1] - b) * down < 0:
            across, down = -across, -down  # towards the second of the two
        if unit.press in ("left", "right", "up", "down"):
            x, y = {"left": (-1, 0), "right": (1, 0), "up": (0, -1), "down": (0, 1)}[unit.press]
            u, v = (float(w) for w in turned((F(x), F(y)), unit.turn))
            forwards = u * across + v * down > 0
        elif unit.press == "out":
            forwards = number > 0
        elif unit.press == "sashing":
            forwards = (two.patch is not None and two.patch.role == "sashing") or (
                two.name.startswith("sashing row")
            )
        else:
            forwards = unit.press == "last"
        sign = 1 if forwards else -1
        yield ((a, b), (c, d)), (sign * across, sign * down)


def assert_nested(unit):
    """Of two seams in one line that end in one point, each is pressed away from the other."""
    ends = defaultdict(list)
    for part in every(unit):
        if part.nests:
            for (a, b), way in pressed(part):
                for (x, y), (u, v) in ((a, b), (b, a)):
                    ends[round(x, 6), round(y, 6)].append(((u - x, v - y), way, part.name))
    met = 0
    for heads in ends.values():
        for (one, press, _), (two, other, _) in combinations(heads, 2):
            size = hypot(*one) * hypot(*two)
            if one[0] * two[0] + one[1] * two[1] < -size * (1 - 1e-9):
                met += 1
                assert press[0] * other[0] + press[1] * other[1] < 0
    return met


def test_the_check_of_nesting_can_fail():
    unit = tree(four())
    upper, lower = unit.parts
    same = replace(unit, parts=(upper, replace(lower, press=upper.press)))
    assert assert_nested(unit)
    with pytest.raises(AssertionError):
        assert_nested(same)


TOPS = {
    "straight": {},
    "turned": {"turns": (0, 90, 180, 270)},
    "on point": {"setting": "on point", "setting_fabric": "linen"},
    "sashing": {"sashing": SashingSpec(F(1), "moss", "sand", True)},
    "sashing on point": {
        "sashing": SashingSpec(F(1), "moss", "sand", True),
        "setting": "on point",
        "setting_fabric": "linen",
    },
}


@pytest.mark.parametrize("how", TOPS)
@pytest.mark.parametrize("name", ["four patch", "sawtooth star", "pinwheel", "snail's trail"])
def test_seams_nest_in_every_direction(name, how):
    unit = tree(library()[name], columns=2, rows=2, **TOPS[how])
    assert all(u.nests for u in every(unit))
    assert assert_nested(unit)


@pytest.mark.parametrize("name", library())
def test_the_seams_of_every_block_nest(name):
    unit = tree(library()[name])
    assert all(u.nests for u in every(unit))
    for one, two in meetings(unit):
        assert "out" in (one.press, two.press) or one.press != two.press


def test_blocks_alike_are_pressed_alike_where_that_nests():
    """Three seams across a block: its last and its neighbour's first differ by themselves."""
    cells = [["linen", "sand", "linen"]] * 3
    unit = tree(grid("nine", cells), columns=4, rows=4)
    found = Counter((u.name, u.press) for u in every(unit) if u.name == "block")
    assert all(u.nests for u in every(unit)) and len(found) <= 2


def test_seams_of_a_round_cannot_all_nest():
    """The seams of a strip all go one way, and the two that meet the sides, which are pressed
    out, ask for two."""
    half = grid("half", [["linen", "sand"]])
    rounds = (RoundSpec(None, ("half",), F(4), (0,)),)
    unit = tree(grid("plain", [["sand"]]), side=F(8), rounds=rounds, others=[half])
    loose = {u.name for u in every(unit) if not u.nests}
    assert loose == {"round 1 top", "round 1 sides", "round 1 bottom"}


def test_borders_go_out_and_sashing_to_its_strips():
    sashing = SashingSpec(F(1), "moss", "sand", False)
    unit = tree(four(), columns=2, rows=2, sashing=sashing, borders=(BorderSpec(F(2), "moss"),))
    press = {u.name: u.press for u in every(unit) if u.parts}
    assert press["top"] == press["border 1 sides"] == "out"
    assert press["centre"] == press["row 1"] == press["sashing row 1"] == "sashing"
    assert all(u.nests for u in every(unit))


def test_corners_are_pressed_out_and_curves_opposite():
    snowball = tree(library()["snowball"])
    assert {u.press for u in every(snowball) if u.parts} == {"out"}
    bends = tree(library()["drunkard's path"], columns=2, rows=2, turns=(180, 270, 90, 0))
    ways = [u.press for u in every(bends) if u.join == "curve"]
    assert sorted(ways) == ["first", "first", "last", "last"]  # round the circle in turn
    assert ways[0] == ways[3] != ways[1]


def towards(unit):
    """Return the fabric that a unit's one seam is pressed towards."""
    first, last = (part.patch.fabric for part in unit.parts)
    return first if unit.press in ("left", "up", "first") else last


def test_allowances_go_to_the_darker_fabric_where_nesting_leaves_the_choice():
    """`linen` is the darkest of the cloth, `rust` the palest."""
    for pair in (["linen", "rust"], ["rust", "linen"]):
        assert towards(tree(grid("two", [pair]))) == "linen"
        assert towards(tree(grid("two", [[pair[0]], [pair[1]]]))) == "linen"
    unit = tree(four())
    assert {towards(u) for u in unit.parts} == {"linen"}


@settings(max_examples=10)
@given(
    st.integers(1, 4),
    st.integers(1, 4),
    st.lists(st.sampled_from([0, 90, 180, 270]), min_size=1, max_size=4),
)
def test_what_is_cut_from_one_strip_set_is_pressed_one_way(columns, rows, turns):
    block = replace(library()["double four patch"], piecing=Piecing(strips="strip sets"))
    unit = tree(block, columns=columns, rows=rows, turns=tuple(turns))
    sets = [u for u in every(unit) if u.made == "strips"]
    assert len(sets) == 4 * columns * rows
    assert len({towards(u) for u in sets}) == 1

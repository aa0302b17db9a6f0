"""A cutting layout is its plan: every piece drawn once, to scale, nothing overlapping.

The drawing is read back from the SVG; the plans are written out in `top_plans`.
"""

from collections import Counter
from dataclasses import replace
from fractions import Fraction
from itertools import combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import box
from shapely.ops import unary_union
from top_figures import CONTEXT, figure, filled, illegible, texts
from top_plans import PLANS

from publish.draw.cutting import fabric as cutting
from publish.draw.cutting.layout import groups, lay, size_of, spread
from publish.model.cutplan import Cut, FabricPlan, Strip
from publish.model.words import FigureSpec

FABRICS = [(s, f) for s, plan in PLANS.items() for f in plan.fabrics]


def plan_of(size: str, fabric: str) -> FabricPlan:
    return PLANS[size].fabrics[fabric]


def cuts(plan: FabricPlan) -> list[Cut]:
    """Return every cut of a plan, one for each piece."""
    return [c for s in plan.strips for _ in range(s.count) for c in s.cuts for _ in range(c.count)]


@pytest.mark.parametrize(("size", "fabric"), FABRICS)
def test_pieces_laid_are_the_plans(size: str, fabric: str) -> None:
    plan = plan_of(size, fabric)
    laid = lay(plan)
    assert Counter((p.letter, p.width, p.length) for p in laid) == Counter(
        (c.letter, c.across, c.along) for c in cuts(plan)
    )
    assert sum(p.width * p.length for p in laid) == sum(c.across * c.along for c in cuts(plan))
    boxes = [
        box(float(p.across), float(p.along), float(p.across + p.width), float(p.along + p.length))
        for p in laid
    ]
    assert not any(a.intersection(b).area for a, b in combinations(boxes, 2))
    assert all(p.across + p.width <= plan.usable_width for p in laid)
    assert all(p.along + p.length <= plan.length for p in laid)


@pytest.mark.parametrize(("size", "fabric"), FABRICS)
def test_areas_drawn_are_the_pieces(size: str, fabric: str) -> None:
    plan = plan_of(size, fabric)
    drawn = filled(figure(f"cutting-layout-{size}-{fabric}").svg, CONTEXT.colour(fabric))
    laid = cuts(plan)
    assert len(drawn) == len(laid)
    total = float(sum(c.across * c.along for c in laid))
    scale = sum(p.area for p in drawn) / total
    shapes, areas = sorted(p.area for p in drawn), sorted(float(c.across * c.along) for c in laid)
    assert [shape / scale for shape in shapes] == pytest.approx(areas, rel=5e-3)
    assert unary_union(drawn).area == pytest.approx(sum(p.area for p in drawn), rel=1e-3)


@pytest.mark.parametrize(("size", "fabric"), FABRICS)
def test_every_letter_and_cut_number_is_printed(size: str, fabric: str) -> None:
    plan = plan_of(size, fabric)
    words = [e.text for e in texts(figure(f"cutting-layout-{size}-{fabric}").svg)]
    for piece in plan.pieces:
        assert any(piece.letter in word.split(", ") for word in words), piece.letter
    for number in range(1, len(plan.strips) + 1):
        assert str(number) in words
    assert "40 in usable width" in words


def test_strips_follow_each_other_in_the_plans_order() -> None:
    plan = plan_of("throw", "linen")
    starts = [g.start for g in groups(plan)]
    assert starts == [0, Fraction(129, 2), Fraction(129, 2) + 40]
    assert sum(g.length for g in groups(plan)) == plan.length


def test_a_size_is_given_as_the_cutting_table_gives_it() -> None:
    plan = plan_of("pillow", "red")
    assert size_of(plan, plan.strips[0].cuts[0]) == (18, 12)
    # a cut that is only a part of a joined border keeps its own size
    strip = plan_of("throw", "red").strips[0]
    assert size_of(plan_of("throw", "red"), strip.cuts[0]) == (40, Fraction(3, 2))


def test_tiny_pieces_are_named_beside_the_cloth() -> None:
    """Strips too thin for a letter get it at the edge, with a line to them."""
    plan = plan_of("throw", "mist")
    thin = replace(
        plan,
        strips=(*plan.strips, Strip(Fraction(1), (Cut("Z", Fraction(30), Fraction(1), 1),))),
        length=plan.length + 1,
    )
    plans = {**CONTEXT.plans, "throw": replace(PLANS["throw"], fabrics={"mist": thin})}
    spec = FigureSpec("thin", "cutting-layout", "throw", (("fabric", "mist"),))
    drawn = cutting.draw(replace(CONTEXT, plans=plans), spec)
    assert [e.text for e in texts(drawn.svg)].count("Z") == 1


@pytest.mark.parametrize("eighths", range(1, 9))
def test_the_length_to_buy_is_never_clipped(eighths: int) -> None:
    """Of a short piece of cloth its words are longer than it is."""
    depth = Fraction(9 * eighths, 2) - 2
    plan = plan_of("throw", "mist")
    strips = (Strip(depth, (Cut("G", Fraction(30), depth, 1),)),)
    short = replace(plan, strips=strips, length=depth, needed=depth + 1, buy=depth + 2)
    plans = {**CONTEXT.plans, "throw": replace(PLANS["throw"], fabrics={"mist": short})}
    spec = FigureSpec("short", "cutting-layout", "throw", (("fabric", "mist"),))
    drawn = cutting.draw(replace(CONTEXT, plans=plans), spec)
    assert any(e.text.startswith("buy ") for e in texts(drawn.svg))
    assert not illegible(drawn.svg)


@given(st.lists(st.floats(0, 100), max_size=8).map(sorted), st.floats(1, 10))
def test_labels_are_spread_in_order(wanted: list[float], gap: float) -> None:
    places = spread(wanted, gap, -10, 110)
    assert len(places) == len(wanted)
    if gap * (len(wanted) - 1) <= 120:
        assert all(b - a >= gap - 1e-9 for a, b in pairwise(places))
        assert all(-10 - 1e-9 <= p <= 110 + 1e-9 for p in places)
    if all(b - a >= gap for a, b in pairwise(wanted)):
        assert places == pytest.approx(wanted)

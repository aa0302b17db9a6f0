"""Layouts of cloth sold ready cut, of nested motifs, of web, and of a split backing.

The drawing is read back from the SVG; the plans are written out here.
"""

from dataclasses import replace
from fractions import Fraction
from itertools import combinations

import pytest
from shapely.affinity import rotate
from shapely.geometry import MultiPolygon, Polygon
from top_figures import CONTEXT, elements, filled, illegible, texts
from top_plans import PLANS

from publish.draw.canvas.style import INK, PAPER
from publish.draw.cutting import fabric as cutting
from publish.draw.finishing import layers
from publish.model.cloth import FAT_QUARTER, SoldAs
from publish.model.cutplan import Cut, Placed, PrecutPlan, Sheet, Strip, WebPlan
from publish.model.words import FigureSpec

F = Fraction
FLAG = Polygon([(0, 0), (14, 0), (14, 4), (4, 4), (4, 14), (0, 14)])
"""Not its own mirror image under translation: its corner is at the top left."""


def context(size, **changes):
    return replace(CONTEXT, plans={**CONTEXT.plans, size: replace(PLANS[size], **changes)})


def layout(made, size, **values):
    return cutting.draw(made, FigureSpec("made", "cutting-layout", size, tuple(values.items())))


def placed(count, beside):
    at = [(0.5 + n % beside * 15, 0.5 + n // beside * 15) for n in range(count)]
    return tuple(
        Placed("B", MultiPolygon([Polygon([(x + a, y + b) for a, b in FLAG.exterior.coords])]), 0.0)
        for x, y in at
    )


def shape_of(polygon):
    """Return a polygon moved to the origin and scaled to the flag's area."""
    left, top, *_ = polygon.bounds
    scale = (FLAG.area / polygon.area) ** 0.5
    return Polygon([((x - left) * scale, (y - top) * scale) for x, y in polygon.exterior.coords])


def same(one, other):
    return one.symmetric_difference(other).area < 0.02 * other.area


@pytest.mark.parametrize(("count", "beside", "down"), [(4, 2, True), (9, 2, False)])
def test_nested_outlines_are_drawn_once_each_and_never_mirrored(count, beside, down):
    plan = PLANS["throw"].fabrics["moss"]
    depth = F(15 * -(-count // beside) + 1)
    strip = Strip(depth, (Cut("B", F(14), F(14), count),), 1, placed(count, beside))
    bought = -(-(depth + 1) // F(9, 2)) * F(9, 2)
    nested = replace(plan, strips=(strip,), length=depth, needed=depth + 1, buy=bought)
    drawn = layout(context("throw", fabrics={"moss": nested}), "throw", fabric="moss")
    found = [p for p in filled(drawn.svg, CONTEXT.colour("moss")) if len(p.exterior.coords) > 6]
    assert len(found) == count
    assert not any(a.intersection(b).area for a, b in combinations(found, 2))
    wanted = FLAG if down else shape_of(rotate(FLAG, -90, origin=(0, 0)))
    assert all(same(shape_of(p), wanted) for p in found)
    assert [e.text for e in texts(drawn.svg)].count("B") == count
    assert f"a stretch {depth} in deep, holding {count} B of 14 × 14 in nested" in drawn.alt
    assert not illegible(drawn.svg)


@pytest.mark.parametrize(("count", "length"), [(1, 15), (4, 61)])
def test_web_is_drawn_with_every_motif_and_its_centre(count, length):
    web = WebPlan(F(17), F(length), F(63), count, F(16), placed(count, 1))
    drawn = layout(context("throw", web=web), "throw", material="web")
    found = [p for p in filled(drawn.svg, PAPER) if len(p.exterior.coords) > 6]
    assert len(found) == count
    scale = {round((p.area / FLAG.area) ** 0.5, 2) for p in found}
    assert len(scale) == 1, "all to one scale"
    assert f"{count} motif{'s' * (count > 1)} B nested, on {length} in of web 17 in" in drawn.alt
    assert not illegible(drawn.svg)


def precut(sold, *sheets):
    used = sum(s.count for s in sheets)
    return PrecutPlan(sold, sheets, used, used, used)


QUARTERS = precut(
    FAT_QUARTER,
    Sheet((Strip(F(10), (Cut("A", F(10), F(10), 2),)),), 8),
    Sheet(
        (
            Strip(F(10), (Cut("A", F(10), F(10), 1), Cut("C", F(7), F(3), 1))),
            Strip(F(4), (Cut("C", F(7), F(4), 2),), 2),
        ),
        1,
        lengthwise=True,
    ),
)
STRIPS = precut(
    SoldAs("strip", F(40), F(5, 2), 20),
    Sheet((Strip(F(9, 4), (Cut("E", F(40), F(9, 4), 1),)),), 7),
    Sheet((Strip(F(3, 2), (Cut("C", F(28), F(3, 2), 1),)),), 4),
)


@pytest.mark.parametrize("made", [QUARTERS, STRIPS], ids=["fat quarters", "strips"])
def test_every_kind_of_sheet_is_drawn_with_its_pieces(made):
    plan = replace(PLANS["throw"].fabrics["red"], precut=made)
    drawn = layout(context("throw", fabrics={"red": plan}), "throw", fabric="red")
    pieces = [
        (c.across, c.along)
        for sheet in made.sheets
        for s in sheet.strips
        for _ in range(s.count)
        for c in s.cuts
        for _ in range(c.count)
    ]
    found = filled(drawn.svg, CONTEXT.colour("red"))
    assert len(found) == len(pieces)
    scale = sum(p.area for p in found) / float(sum(a * b for a, b in pieces))
    assert sorted(p.area / scale for p in found) == pytest.approx(
        sorted(float(a * b) for a, b in pieces), rel=0.02
    )
    assert not any(a.intersection(b).area > 0.01 for a, b in combinations(found, 2))
    words = [e.text for e in texts(drawn.svg)]
    for number, sheet in enumerate(made.sheets, start=1):
        assert str(number) in words
        noun = made.sold_as.kind + ("s" if sheet.count > 1 else "")
        assert any(word.startswith(f"{sheet.count} {noun}") for word in words)
        for letter in {c.letter for s in sheet.strips for c in s.cuts}:
            assert any(letter in word.split(", ") for word in words)
    assert f"from {made.used} {made.sold_as.kind}s" in drawn.alt
    assert not illegible(drawn.svg)


def test_pieces_of_a_sheet_lie_inside_it():
    plan = replace(PLANS["throw"].fabrics["red"], precut=QUARTERS)
    drawn = layout(context("throw", fabrics={"red": plan}), "throw", fabric="red")
    sheets = [p for p in filled(drawn.svg, "#f7f4ee") if p.area > 1000]
    assert len(sheets) == len(QUARTERS.sheets)
    for piece in filled(drawn.svg, CONTEXT.colour("red")):
        assert any(sheet.buffer(0.1).covers(piece) for sheet in sheets)
    # 22 in across and 18 in along
    left, top, right, bottom = sheets[0].bounds
    assert (right - left) / (bottom - top) == pytest.approx(22 / 18, rel=0.01)


# Quilt backings: fabric calculation, BellaOnline: one full panel, one split in two.
@pytest.mark.parametrize(("half", "seams"), [(None, 1), (F(20), 2)])
def test_a_split_panel_has_a_seam_at_either_side(half, seams):
    made = context("throw", backing=replace(PLANS["throw"].backing, half=half))
    drawn = layers.draw(made, FigureSpec("made", "layers", "throw"))
    lines = [
        e
        for e in elements(drawn.svg)
        if e.tag == "path"
        and e.values.get("stroke-width") == "0.6"
        and "fill" in e.values
        and e.values["fill"] == "none"
        and e.values["stroke"] != INK
    ]
    straight = [e for e in lines if "Z" not in e.values["d"] and e.values["stroke"] == "#5f5b55"]
    assert len(straight) == seams

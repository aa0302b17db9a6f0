"""A cutting layout with a section: a plan worked out by hand, its drawing read back.

One square of 28 in beside a section 10 in wide that is cut into ten strips of four
squares of 2 1/2 in, on cloth 40 in wide.
"""

from dataclasses import replace
from fractions import Fraction
from itertools import combinations

from shapely.geometry import box
from top_figures import CONTEXT, filled, illegible, spec
from top_plans import PLANS

from publish.draw.cutting import fabric as cutting
from publish.draw.cutting.layout import lay
from publish.model.cutplan import Cut, Piece, Section, Strip
from publish.words.values import Named

F = Fraction
SMALL = F(5, 2)
INNER = Strip(SMALL, (Cut("B", SMALL, SMALL, 4),), 10)
STRIP = Strip(F(28), (Cut("A", F(28), F(28), 1),), sections=(Section(F(10), (INNER,)),))
PLAN = replace(
    PLANS["throw"].fabrics["red"],
    strips=(STRIP,),
    pieces=(
        Piece("A", Named("square"), "ground", "red", F(28), F(28), 1),
        Piece("B", Named("square"), "patch", "red", SMALL, SMALL, 40),
    ),
    length=F(28),
    needed=F(29),
    buy=F(63, 2),
)
FIGURE = cutting.draw(
    replace(
        CONTEXT,
        plans={**PLANS, "throw": replace(PLANS["throw"], fabrics={"red": PLAN})},
    ),
    spec("cutting-layout", "throw", fabric="red"),
)


def test_every_piece_lies_in_its_section():
    laid = lay(PLAN)
    boxes = [box(p.across, p.along, p.across + p.width, p.along + p.length) for p in laid]
    assert len(boxes) == 41
    assert not any(a.intersection(b).area for a, b in combinations(boxes, 2))
    small = [p for p in laid if p.letter == "B"]
    assert {(min(p.across for p in small), min(p.along for p in small))} == {(28, 0)}
    assert max(p.across + p.width for p in small) == 38
    assert max(p.along + p.length for p in small) == 25


def test_every_piece_is_drawn_and_can_be_read():
    assert len(filled(FIGURE.svg, CONTEXT.colour("red"))) == 41
    assert not illegible(FIGURE.svg)


def test_the_section_is_told_where_the_drawing_is_not_seen():
    assert "a section 10 in wide, cut into 10 strips 2 1/2 in deep, each giving 4 B" in FIGURE.alt

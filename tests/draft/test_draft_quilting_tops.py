"""Quilting of tops on point, with sashing, and of medallions: which cloth is which area.

Lengths are worked out by hand from the shapes.
"""

import math
from fractions import Fraction

import pytest
from draft_builders import grid
from draft_tops import library, top
from shapely.geometry import MultiPolygon, box

from publish.draft.quilting import Top, quilt
from publish.draft.topmap import placements, top_patches
from publish.model.pattern import BorderSpec, QuiltingSpec, RoundSpec, SashingSpec

F = Fraction
SQUARE = MultiPolygon([box(-2, -2, 2, 2)])
ROUNDS = (
    RoundSpec(BorderSpec(F(1), "moss")),
    RoundSpec(BorderSpec(F(1), "sand", "mitred")),
    RoundSpec(None, ("half",), F(2), (0,)),
    RoundSpec(BorderSpec(F(3), "moss")),
)


def quilted(spec, *blocks, **more):
    pat, one = top(*blocks, quilting=(spec,), **more)
    patches, _ = top_patches(pat, one)
    made = Top(one, {"fen": SQUARE}, placements(pat, one), patches)
    (found,), notes = quilt(pat, made)
    assert not notes
    return found, made


def medallion(spec):
    return quilted(
        spec,
        grid("plain", [["linen"]]),
        side=F(8),
        rounds=ROUNDS,
        others=[grid("half", [["linen", "sand"]])],
    )


def test_the_borders_of_a_medallion_are_its_border():
    """8 in of blocks; borders to 12; a round to 16; a border to 22."""
    _, made = medallion(QuiltingSpec("border", "parallel", F(1)))
    assert made.frame.area == pytest.approx(12**2 - 8**2 + 22**2 - 16**2)
    assert made.inside.area == pytest.approx(8**2 + 16**2 - 12**2)
    assert [(float(a[0]), float(b[0])) for a, b in made.frames] == [(7, 5), (3, 0)]


def test_lines_follow_each_frame_of_borders():
    """One inch apart: round 8 + 2, then round 16 + 2 and 16 + 4."""
    found, made = medallion(QuiltingSpec("border", "parallel", F(1)))
    assert made.frame.buffer(1e-9).covers(found.lines)
    assert found.length == pytest.approx(4 * (10 + 18 + 20))


def test_the_ditch_of_a_medallions_borders():
    """Butted round 8: 2 x 8, 2 x 10. Mitred round 10: 4 x 10, four corners of 1 in, and the
    seam with the round, 4 x 12. Butted round 16: 2 x 16, 2 x 22, plus 2 x 3 of its ends."""
    found, _ = medallion(QuiltingSpec("border", "ditch"))
    inner = 4 * 8 + 4 * 1 + 4 * 10 + 4 * math.sqrt(2) + 4 * 12
    outer = 4 * 16 + 4 * 3
    assert found.length == pytest.approx(inner + outer, abs=1e-4)


def test_the_ground_of_a_medallion_has_its_rounds_too():
    """In the ditch: nothing in the middle; twenty-eight halves of 2 in and as many blocks."""
    found, made = medallion(QuiltingSpec("ground", "ditch"))
    assert made.inside.buffer(1e-4).covers(found.lines)
    assert found.length == pytest.approx(28 * 2 + 28 * 2, abs=1e-3)


@pytest.mark.parametrize("sashed", [False, True])
def test_setting_and_sashing_are_ground(sashed):
    sashing = SashingSpec(F(1), "moss", "sand", True) if sashed else None
    found, made = quilted(
        QuiltingSpec("ground", "parallel", F(1, 2), 45),
        grid("plain", [["linen"]]),
        columns=2,
        rows=3,
        setting="on point",
        setting_fabric="moss",
        sashing=sashing,
        borders=(BorderSpec(F(2), "sand"),),
    )
    inner = float(made.size.inner_width) * float(made.size.inner_height)
    assert made.inside.area == pytest.approx(inner)
    assert made.inside.buffer(1e-6).covers(found.lines)
    assert found.length == pytest.approx(2 * inner, rel=0.05)  # area over distance


def test_seams_on_point_are_drawn_once():
    """A block of 6 in between four corners: four seams of 6 in."""
    found, _ = quilted(
        QuiltingSpec("ground", "ditch"),
        grid("plain", [["linen"]]),
        side=F(6),
        setting="on point",
        setting_fabric="moss",
    )
    assert found.length == pytest.approx(24, abs=1e-3)


def test_curved_seams_are_followed():
    found, _ = quilted(QuiltingSpec("ground", "ditch"), library()["drunkard's path"], side=F(8))
    assert found.length == pytest.approx(3 * math.pi, rel=1e-3)


def test_a_motif_lies_turned_with_its_block():
    """A square of 4 in on point reaches the root of 8 to each side."""
    found, made = quilted(
        QuiltingSpec("motif", "ditch"),
        grid("plain", [["linen"]], "fen"),
        side=F(8),
        setting="on point",
        setting_fabric="moss",
        motif_size=F(4),
    )
    middle, reach = float(made.size.width) / 2, math.sqrt(8)
    assert found.lines.bounds == pytest.approx((*[middle - reach] * 2, *[middle + reach] * 2))
    assert found.length == pytest.approx(16)

"""The whole stage: a pure function, complete, and exact on the demo pattern."""

import math
from fractions import Fraction

import pytest
from draft_builders import codes, grid, motif, outline, pattern, polygon_svg, size, svg
from helpers import DEMO, assert_no_notes

from publish import draft, grade, read
from publish.draft.limits import CHORD
from publish.model.pattern import BorderSpec, QuiltingSpec

F = Fraction


@pytest.fixture(scope="module")
def demo():
    pat, notes, _ = read.load(DEMO)
    assert_no_notes(notes)
    made = {}
    for key in pat.sizes:
        one, notes = grade.grade(pat, key)
        assert one is not None
        made[key] = (one, *draft.draft(pat, one))
    return pat, made


def test_the_demo_pattern_drafts_without_a_note(demo):
    for _, drafted, notes in demo[1].values():
        assert_no_notes(notes)
        assert drafted is not None


def test_the_demo_motif_is_one_piece_of_the_said_size(demo):
    for one, drafted, _ in demo[1].values():
        shape = drafted.motifs["samphire"]
        half = float(one.motif_span) / 2
        assert shape.whole.bounds == pytest.approx((-half, -half, half, half), abs=1e-6)
        assert (shape.pieces, shape.holes) == (1, 1)
        assert shape.area == pytest.approx(8 * shape.wedge.area, rel=1e-6)
        assert shape.cut_line.contains(shape.whole)
        assert shape.edges[0].contact and shape.edges[1].contact
        tip = shape.edges[1].contact[-1][1]
        assert tip == pytest.approx(half * math.sqrt(2), rel=1e-6)  # at the block's corner


def test_the_demo_scales(demo):
    """The same drawing at two spans: areas as the squares, lengths as the spans."""
    one, two = (demo[1][k][1].motifs["samphire"] for k in ("mini", "throw"))
    ratio = float(two.span / one.span)
    assert two.area / one.area == pytest.approx(ratio**2, rel=2e-3)
    assert two.perimeter / one.perimeter == pytest.approx(ratio, rel=2e-3)
    assert two.narrowest_neck / one.narrowest_neck == pytest.approx(ratio, rel=2e-2)
    assert two.narrowest_slit / one.narrowest_slit == pytest.approx(ratio, rel=2e-2)
    assert (two.tips, two.inside_corners) == (one.tips, one.inside_corners)


def test_drafting_again_gives_the_same(demo):
    pat, made = demo
    one, first, notes = made["mini"]
    again, more = draft.draft(pat, one)
    assert more == notes and again.assembly == first.assembly
    assert again.motifs["samphire"].whole.equals_exact(first.motifs["samphire"].whole, 0)


def test_the_cut_line_lies_at_the_turn_under(demo):
    shape = demo[1]["mini"][1].motifs["samphire"]
    outer = shape.cut_line.geoms[0].exterior
    far = [shape.whole.distance(outer.interpolate(k / 200, normalized=True)) for k in range(200)]
    assert max(far) <= 0.125 + 1e-6 and min(far) >= 0.125 - CHORD


def test_raw_edges_have_no_turn_under(tmp_path):
    kind = motif(
        drawing=None,
        method="fusible",
        turn_under=F(0),
        outline=outline([(0, 0, 1), (100, 0, 1), (60, 60, 1), (0, 0, 1)]),
    )
    drafted, _ = draft.draft(pattern(motifs=[kind]), size())
    shape = drafted.motifs["fen"]
    assert shape.cut_line.equals(shape.whole)


def star(points: int) -> str:
    """A wedge whose outer edge is a gentle wave of many points."""
    turns = [math.pi / 4 * k / points for k in range(points + 1)]
    reach = [90 + 8 * math.cos(24 * t) for t in turns]
    ring = [(r * math.cos(t), r * math.sin(t)) for r, t in zip(reach, turns, strict=True)]
    return polygon_svg([(0, 0), *ring])


def test_five_thousand_points_are_drafted(tmp_path):
    (tmp_path / "wedge.svg").write_text(star(5000))
    lines = (QuiltingSpec("motif", "ditch"), QuiltingSpec("ground", "echo", F(1, 2)))
    drafted, notes = draft.draft(pattern(tmp_path, [motif()]), size(quilting=lines))
    assert drafted is not None and not notes


def test_faults_of_the_drawing_stop_the_draft(tmp_path):
    (tmp_path / "wedge.svg").write_text(svg("<text>fen</text>"))
    drafted, notes = draft.draft(pattern(tmp_path, [motif()]), size())
    assert drafted is None and codes(notes) == ["D307", "D310"]
    assert notes[1].place.file == "wedge.svg"


def test_a_missing_drawing_is_a_note(tmp_path):
    drafted, notes = draft.draft(pattern(tmp_path, [motif()]), size())
    assert drafted is None and codes(notes) == ["D301"]


def test_a_motif_without_a_size_is_a_note(tmp_path):
    drafted, notes = draft.draft(pattern(tmp_path, [motif()]), size(span=None))
    assert drafted is None and codes(notes) == ["D360"]


def test_findings_come_with_a_draft():
    """A motif that falls apart is drafted all the same, so that a figure can show it."""
    ring = [(20, 0, 1), (100, 0, 1), (80, 20, 1), (40, 15, 1), (20, 0, 1)]
    kind = motif(drawing=None, outline=outline(ring), sharpest_tip=1)
    drafted, notes = draft.draft(pattern(motifs=[kind]), size())
    assert drafted is not None and "D330" in codes(notes)
    assert drafted.motifs["fen"].pieces == 4


def test_a_pattern_without_motifs():
    pat = pattern(blocks=[grid("nine", [["linen", "sand", "linen"]] * 3)])
    one = size(
        2,
        2,
        blocks=("nine",),
        span=None,
        borders=(BorderSpec(F(2), "moss"),),
        quilting=(QuiltingSpec("ground", "parallel", F(1), 45),),
    )
    drafted, notes = draft.draft(pat, one)
    assert not notes and not drafted.motifs and not drafted.placements
    assert drafted.edge_outline.area == float(one.width * one.height)


def test_every_code_has_a_title():
    assert all(code.startswith("D3") and title for code, title in draft.CODES.items())

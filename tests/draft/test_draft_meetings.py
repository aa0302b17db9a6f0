"""How outlines meet their folds, on shapes whose angles elementary geometry gives.

A circle of radius r whose middle lies h beside a line meets it at the angle whose cosine is
h / r. Up to which angle an edge was meant to be square is common practice, no source.
"""

import math
from fractions import Fraction

import pytest
from draft_builders import codes, drafted, motif, pattern, polygon_svg, size, svg

from publish import cli, meetings, pipeline
from publish.draft.makeable import makeable
from publish.draft.motif import draft_motif
from publish.model.draft import Draft

MARKS = 'data-centre="0 0" data-start="0"'
SIZES = """\
title: Fen
fabrics:
  linen: {name: Linen, colour: "#f0e9d9"}
  moss: {name: Moss, colour: "#2f6152"}
motifs:
  fen: {drawing: wedge.svg, folds: 8, fabric: moss, method: fusible}
blocks:
  plain: {ground: linen}
  sprig: {ground: linen, motif: fen}
sizes:
  bare: {block: plain, block_size: 16 in}
  mini: {block: sprig, block_size: 16 in, motif_size: 14 in}
  large: {block: sprig, block_size: 20 in, motif_size: 18 in}
"""


def met(folder, inside, **changes):
    """Return the meetings of a marked wedge by fold: shares of the span, degrees."""
    shape = drafted(folder, svg(f"<g {MARKS}>{inside}</g>"), **changes).shape
    return {
        edge: [(m.reach / 14, m.angle) for m in shape.meetings if m.edge == edge]
        for edge in ("multiple", "single")
    }


def test_a_ring_round_the_centre_is_square_to_every_fold(tmp_path):
    a = 100 * math.sqrt(0.5)
    b = 0.4 * a
    ring = f'<path d="M40 0L100 0A100 100 0 0 1 {a!r} {a!r}L{b!r} {b!r}A40 40 0 0 0 40 0Z"/>'
    for found in met(tmp_path, ring).values():
        assert [reach for reach, _ in found] == pytest.approx([0.2, 0.5], abs=1e-3)
        assert [angle for _, angle in found] == pytest.approx([90, 90], abs=0.5)


@pytest.mark.parametrize("beside", [-3, 0, 2, 6])
def test_a_circle_meets_a_fold_as_far_from_square_as_it_lies_beside_it(tmp_path, beside):
    """Cut off at the fold, or only touching it from one side: cos angle = beside / 10."""
    solid = f'<circle cx="80" cy="{beside}" r="10"/><path d="M10 0L80 0L80 5L10 10Z"/>'
    solid += '<circle cx="60" cy="30" r="20"/>'  # most of the drawing lies in the wedge
    text = svg(f"<g {MARKS}>{solid}</g>")
    (tmp_path / "wedge.svg").write_text(text)
    found, _ = draft_motif(pattern(tmp_path, [motif()]), motif(), 14, "mini")
    last = [m for m in found.shape.meetings if m.edge == "multiple"][-1]
    # With its middle beyond the fold, less than a half circle is left: a point.
    assert last.angle == pytest.approx(90 + math.degrees(math.asin(beside / 10)), abs=0.6)


@pytest.mark.parametrize("angle", [20, 60, 84, 96, 130])
def test_a_straight_side_meets_a_fold_at_its_angle(tmp_path, angle):
    x, y = 70 - 10 / math.tan(math.radians(angle)), 10
    points = [(20, 0), (70, 0), (x, y), (95, 60), (60, 60), (15, 15)]
    shape = drafted(tmp_path, polygon_svg(points, MARKS)).shape
    last = [m for m in shape.meetings if m.edge == "multiple"][-1]
    assert last.angle == pytest.approx(angle, abs=1e-6)
    told = meetings.met(last)
    if abs(angle - 90) < 12:
        assert told == "nearly square, 6 degrees off"
    else:
        kind = "a point" if angle < 90 else "an inside corner"
        assert told == f"{kind} of {2 * angle if angle < 90 else 360 - 2 * angle} degrees"


def test_the_other_fold_is_measured_alike(tmp_path):
    """The same wedge mirrored in its halving line: the folds change places."""
    points = [(20, 0), (70, 0), (75, 20), (60, 60), (15, 15)]
    turn = math.sqrt(0.5)
    mirrored = [(turn * (x + y), turn * (x - y)) for x, y in points]
    one, two = (drafted(tmp_path, polygon_svg(p, MARKS)).shape for p in (points, mirrored))
    sides = [
        {e: [m.angle for m in s.meetings if m.edge == e] for e in ("multiple", "single")}
        for s in (one, two)
    ]
    assert sides[0]["multiple"] == pytest.approx(sides[1]["single"], abs=1e-6)
    assert sides[0]["single"] == pytest.approx(sides[1]["multiple"], abs=1e-6)


@pytest.mark.parametrize(
    ("off", "said"), [(0, False), (2, False), (5, True), (11, True), (14, False)]
)
def test_nearly_square_is_said_with_its_place(tmp_path, off, said):
    x = 70 + 20 * math.tan(math.radians(off))
    points = [(20, 0), (70, 0), (x, 20), (90, 40), (100, 100), (20, 20)]
    made = drafted(tmp_path, polygon_svg(points, MARKS))
    pat = pattern(tmp_path, [motif()], places=("motifs", "motifs.fen"))
    notes = [n for n in makeable(pat, size(), made) if n.code == "D379" and "multiple" in n.what]
    assert codes(notes) == ["D379"] * said
    if said:
        assert notes[0].received == f"{off} degrees off, 35 % of the width from the centre"
        assert (notes[0].spot.x, notes[0].spot.y) == pytest.approx((4.9, 0), abs=0.01)


def test_a_turning_motif_has_no_folds_to_meet(tmp_path):
    points = [(0, 0), (100, 0), (70, 20), (100, 100)]
    shape = drafted(tmp_path, polygon_svg(points, MARKS), symmetry="turning").shape
    assert shape.meetings == ()
    assert meetings.lines([_draft(shape)]) == []


def _draft(shape):
    return Draft("mini", Fraction(16), Fraction(16), (), None, {"fen": shape}, (), (), 0, None)


def test_check_tells_each_motif_once_and_a_slip_once(tmp_path, capsys):
    points = [(20, 0), (70, 0), (73, 20), (90, 40), (100, 100), (20, 20)]
    (tmp_path / "wedge.svg").write_text(polygon_svg(points, MARKS))
    (tmp_path / "pattern.yaml").write_text(SIZES)
    report = pipeline.examine(tmp_path).report
    assert [n.spot.size for n in report if n.code == "D379"] == ["mini"]
    cli.main(["check", str(tmp_path)])
    out = capsys.readouterr().out.splitlines()
    assert [line.split(":")[0] for line in out if line.startswith("fen at")] == [
        "fen at the multiple fold",
        "fen at the single fold",
    ]
    assert "nearly square, 9 degrees off, 35 % of the width" in out[0]

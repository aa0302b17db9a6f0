"""Each check speaks when it should, at the right place, and is silent otherwise.

Widths are those of shapes drawn with known sizes. The rooms that a method needs are common
practice, no source.
"""

import math
from fractions import Fraction

import pytest
from draft_builders import SIDE, SPAN, codes, drafted, motif, outline, pattern, polygon_svg, size

from publish.draft.makeable import in_wedge, makeable
from publish.draft.motif import draft_motif
from publish.notes import Severity

F = Fraction
PLACES = ("motifs", "motifs.fen", "sizes", "sizes.mini", "sizes.mini.motif_size")

PLAIN = [(0, 0), (90, 0), (70, 20), (100, 100)]
"""A solid motif with nothing to find."""


def wedge(points, **changes):
    """Return a motif whose wedge is a polygon in hundredths of the half span."""
    corner = [(x, y, 1) for x, y in [*points, points[0]]]
    return motif(drawing=None, outline=outline(corner), **changes)


def findings(kind, span=SPAN, side=SIDE):
    pat = pattern(motifs=[kind], places=PLACES)
    made, notes = draft_motif(pat, kind, span, "mini")
    assert made is not None and not notes, notes
    return made, makeable(pat, size(side=side, span=span), made)


def test_a_plain_motif_gives_no_findings():
    assert findings(wedge(PLAIN))[1] == ()


def waisted(width):
    """An arm along the x axis with a waist: half of it in the wedge, half in its image."""
    return [
        (0, 0),
        (100, 0),
        (100, 20),
        (70, 20),
        (70, width / 2),
        (60, width / 2),
        (60, 30),
        (30, 30),
    ]


@pytest.mark.parametrize(("width", "said"), [(4, True), (4.4, True), (4.6, False), (8, False)])
def test_necks(width, said):
    """At a span of 14 in a hundredth is 0.07 in; needle-turn asks for 5/16 in, 4.46 of them."""
    made, notes = findings(wedge(waisted(width)))
    assert made.shape.narrowest_neck == pytest.approx(min(width, 15) * 0.07, rel=1e-6)
    assert codes(notes) == ["D332"] * said
    if said:
        note = notes[0]
        assert note.severity is Severity.WARNING and note.place.path == "sizes.mini.motif_size"
        assert note.spot.measure == pytest.approx(width * 0.07) and note.spot.needed == 0.3125
        assert 0.6 * 7 <= note.spot.x <= 0.7 * 7 and note.spot.y == pytest.approx(0, abs=0.2)


def test_the_size_that_mends_a_neck_is_the_least_one():
    """4 hundredths are 5/16 in when the half span is 7 13/16 in: a span of 15 5/8 in."""
    _, notes = findings(wedge(waisted(4)))
    assert "at least 15 5/8 in" in notes[0].help
    assert findings(wedge(waisted(4)), span=F(125, 8), side=F(18))[1] == ()
    assert codes(findings(wedge(waisted(4)), span=F(31, 2), side=F(18))[1]) == ["D332"]


def test_a_pattern_may_ask_for_other_necks():
    assert codes(findings(wedge(waisted(8), smallest_neck=F(3, 4)))[1]) == ["D332"]
    assert codes(findings(wedge(waisted(4), smallest_neck=F(1, 4)))[1]) == []


def slot(width):
    """A solid wedge whose outer edge is cut in by a slot of parallel sides."""
    return [(0, 0), (100, 0), (100, 40), (60, 40), (60, 40 + width), (100, 40 + width), (100, 100)]


@pytest.mark.parametrize(
    ("width", "severity"),
    [(3.4, Severity.ERROR), (3.7, Severity.WARNING), (4.4, Severity.WARNING), (4.6, None)],
)
def test_slits(width, severity):
    """Twice the turn-under is 1/4 in, 3.57 hundredths; with room for the needle 5/16 in."""
    made, notes = findings(wedge(slot(width)), side=F(18))
    assert made.shape.narrowest_slit == pytest.approx(width * 0.07, rel=1e-6)
    assert [n.severity for n in notes if n.code == "D333"] == [severity] * (severity is not None)
    if severity is Severity.ERROR:
        assert "too narrow" in notes[0].what and notes[0].spot.needed == 0.25
        assert 0.6 * 7 <= notes[0].spot.x <= 7


def test_raw_edges_need_less():
    kind = wedge(slot(1.5), method="fusible", turn_under=F(0))
    assert codes(findings(kind, side=F(18))[1]) == []
    assert codes(findings(wedge(slot(0.8), method="fusible", turn_under=F(0)), side=F(18))[1]) == [
        "D333"
    ]
    assert codes(findings(wedge(slot(4.6), method="prepared edge"), side=F(18))[1]) == ["D333"]


def spike(angle):
    """A wedge with a spike along the x axis that comes to a point of a given angle."""
    half = 60 * math.tan(math.radians(angle / 2))
    return [(0, 0), (100, 0), (40, half), (40, 40)]


@pytest.mark.parametrize(("angle", "said"), [(20, True), (29, True), (31, False), (60, False)])
def test_tips(angle, said):
    made, notes = findings(wedge(spike(angle)))
    assert made.shape.sharpest_tip == pytest.approx(angle, abs=0.01)
    assert [n.code for n in notes] == ["D334"] * said
    if said:
        assert (notes[0].spot.x, notes[0].spot.y) == pytest.approx((7, 0), abs=1e-6)
    assert codes(findings(wedge(spike(angle), sharpest_tip=61))[1]) == ["D334"]


@pytest.mark.parametrize(("angle", "said"), [(20, True), (29, True), (31, False)])
def test_inside_corners(angle, said):
    """A notch cut in from the right, its sides meeting at the angle."""
    half = 50 * math.tan(math.radians(angle / 2))
    points = [(0, 0), (100, 0), (100, 45 - half), (50, 45), (100, 45 + half), (100, 100)]
    _, notes = findings(wedge(points), side=F(18))
    assert codes(notes) == ["D335"] * said


@pytest.mark.parametrize(
    ("points", "kind"),
    [
        ([(20, 0), (100, 0), (80, 20), (40, 15)], "single"),
        ([(30, 30), (100, 100), (80, 50), (60, 30)], "multiple"),
    ],
)
def test_a_motif_that_misses_a_fold_falls_apart(points, kind):
    made, notes = findings(wedge(points, sharpest_tip=1))
    assert made.shape.pieces == 4
    note = next(n for n in notes if n.code == "D330")
    assert note.severity is Severity.ERROR and note.received.startswith("4 pieces")
    assert f"does not touch the {kind} fold" in note.help and note.place.path == "motifs.fen"
    assert "D330" not in codes(findings(wedge(points, sharpest_tip=1, pieces=4))[1])


def test_touching_at_a_point_is_falling_apart():
    points = [(20, 0), (100, 0), (80, 20), (60, 60), (40, 15)]
    made, notes = findings(wedge(points, sharpest_tip=1))
    assert made.shape.pieces > 1 and "D330" in codes(notes)


def test_hanging_by_a_thread():
    """The diagonal is touched along half a hundredth: 0.035 in."""
    points = [(20, 0), (100, 0), (80, 20), (60, 60), (59.75, 59.75), (40, 15)]
    _, notes = findings(wedge(points, sharpest_tip=1))
    note = next(n for n in notes if n.code == "D331")
    assert note.severity is Severity.ERROR and "single fold" in note.what
    assert note.spot.measure == pytest.approx(0.25 * 2**0.5 * 0.07, rel=1e-3)
    assert (note.spot.x, note.spot.y) == pytest.approx((4.19, 4.19), abs=0.02)


def test_fewer_pieces_than_said():
    assert codes(findings(wedge(PLAIN, pieces=3))[1]) == ["D337"]


@pytest.mark.parametrize(
    ("side", "severity"),
    [
        (F(29, 2), None),
        (F(115, 8), Severity.WARNING),
        (F(14), Severity.WARNING),
        (F(27, 2), Severity.ERROR),
    ],
)
def test_ground_beside_the_motif(side, severity):
    _, notes = findings(wedge(PLAIN), side=side)
    assert [n.severity for n in notes] == ([] if severity is None else [severity])
    if severity is not None:
        assert codes(notes) == ["D336"]


def test_one_note_for_all_images_of_a_place():
    """Each place of the opened motif is told once, where it lies in the wedge."""
    _, notes = findings(wedge(waisted(4)))
    assert len(notes) == 1
    for symmetry in ("mirror", "turning"):
        for turn in range(0, 360, 7):
            x, y = 3 * math.cos(math.radians(turn)), 3 * math.sin(math.radians(turn))
            a, b = in_wedge(x, y, 8, symmetry)
            assert 0 <= math.degrees(math.atan2(b, a)) <= 45 + 1e-9
            assert math.hypot(a, b) == pytest.approx(3)


def test_a_drawing_in_a_file_has_the_same_findings(tmp_path):
    text = polygon_svg([(x, y) for x, y in waisted(4)])
    made = drafted(tmp_path, text)
    notes = makeable(pattern(motifs=[motif()], places=PLACES), size(), made)
    assert codes(notes) == ["D332"]

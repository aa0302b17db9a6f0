"""What is drawn is what the draft holds: patches, motifs, rows, strips, layers, lines."""

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
from shapely.geometry import Polygon
from shapely.ops import unary_union
from top_figures import CONTEXT, elements, figure, filled, rings, texts
from top_samples import DRAFTS, PATTERN, SIZES

from publish.draw.canvas.style import PAPER, wrong_side
from publish.draw.finishing.layers import top_size
from publish.draw.piecing.borders import split
from publish.draw.piecing.rows import row_units
from publish.draw.piecing.table import ground_of, holds, laid_size, margins, piece_for
from publish.draw.piecing.units import find_unit
from publish.draw.top import placed
from publish.model.words import FigureSpec

MOSS = CONTEXT.colour("moss")


@pytest.mark.parametrize("size", SIZES)
def test_the_quilt_shows_every_patch_and_motif(size: str) -> None:
    svg = figure(f"quilt-{size}-no").svg
    draft = DRAFTS[size]
    for fabric in {p.fabric for p in draft.patches}:
        patches = sum(p.fabric == fabric for p in draft.patches)
        extra = 1 if fabric == "red" and SIZES[size].finish == "quilt" else 0  # the binding
        assert len(filled(svg, CONTEXT.colour(fabric))) == patches + extra
    paths = [e for e in elements(svg) if e.values.get("fill") == MOSS]
    assert len(paths) == len(draft.placements)


@pytest.mark.parametrize("size", SIZES)
def test_the_quilt_is_to_scale(size: str) -> None:
    """Areas on the page are areas of cloth: the motifs against the whole top."""
    svg, draft = figure(f"quilt-{size}-no").svg, DRAFTS[size]
    grounds = {p.fabric for p in draft.patches} - {"red"}
    linen = unary_union([p for f in grounds for p in filled(svg, CONTEXT.colour(f))])
    cloth = sum(
        float((p.box[2] - p.box[0]) * (p.box[3] - p.box[1]))
        for p in draft.patches
        if p.fabric != "red"
    )
    motif = 0.0
    for path in (e for e in elements(svg) if e.values.get("fill") == MOSS):
        shape = unary_union([])
        for ring in rings(path):
            shape = shape.symmetric_difference(Polygon(ring))
        motif += shape.area
    drawn = sum(placed(draft, p).area for p in draft.placements)
    assert motif / linen.area == pytest.approx(drawn / cloth, rel=0.01)


def test_all_sizes_share_one_scale() -> None:
    svg = figure("sizes-").svg
    paths = [e for e in elements(svg) if e.values.get("fill") == MOSS]
    assert len(paths) == sum(len(d.placements) for d in DRAFTS.values())
    widths = []
    for path in paths:
        xs = [x for ring in rings(path) for x, _ in ring]
        widths.append(max(xs) - min(xs))
    spans = [float(DRAFTS[k].motifs["fern"].span) for k in SIZES for _ in DRAFTS[k].placements]
    ratios = [w / s for w, s in zip(widths, spans, strict=True)]
    assert max(ratios) / min(ratios) == pytest.approx(1, abs=0.01)
    bar = [e for e in texts(svg) if "cm)" in e.text]
    assert [e.text for e in bar] == ["36 in (91.4 cm)"]
    lines = [rings(e)[0] for e in elements(svg) if e.tag == "path" and len(rings(e)[0]) == 2]
    lengths = [abs(b[0] - a[0]) for a, b in lines]
    assert any(n == pytest.approx(36 * ratios[0], rel=0.02) for n in lengths)


def test_the_check_squares_are_true() -> None:
    """1 in is 72 pt and 5 cm is 5 / 2.54 in exactly (1959 agreement: 1 in = 2.54 cm)."""
    drawn = figure("scale-")
    squares = [e for e in elements(drawn.svg) if e.values.get("stroke-width") == "0.9"]
    sides = sorted(abs(r[1][0] - r[0][0]) for e in squares for r in rings(e))
    assert sides == pytest.approx([72, 5 / 2.54 * 72], abs=0.01)
    assert not drawn.scalable


def test_swatches_hold_every_fabric_that_is_cut() -> None:
    svg = figure("swatches-").svg
    for key in PATTERN.fabrics:
        assert len(filled(svg, CONTEXT.colour(key))) == 1
    words = {e.text for e in texts(svg)}
    assert {"Salt", "Salt linen"} & words and "motif" in words


@pytest.mark.parametrize(("size", "blocks"), [("mini", [1]), ("throw", [3, 3, 3])])
def test_rows_hold_their_blocks(size: str, blocks: list[int]) -> None:
    found = row_units(DRAFTS[size])
    assert [len(r.parts) for r in found] == blocks
    motifs = [e for e in elements(figure(f"rows-{size}").svg) if e.values.get("fill") == MOSS]
    assert len(motifs) == sum(blocks)
    numbers = [e.text for e in texts(figure(f"rows-{size}").svg)]
    assert numbers == [str(n + 1) for n in range(len(blocks))]


def test_rows_are_pressed_in_turn() -> None:
    assert [r.press for r in row_units(DRAFTS["throw"])] == ["left", "right", "left"]


def test_a_ground_is_laid_at_its_cut_size() -> None:
    """Quarters of a ground that carries a motif are cut 10 in for 9 in finished: seams of
    1/4 in and half of the 1 in margin on the outer edges."""
    unit = ground_of(DRAFTS["throw"], "quartered")
    half = find_unit(CONTEXT, FigureSpec("u", "units", "throw", (("unit", "half block"),)))
    quarter = half.parts[0]
    for part, size in (
        (quarter, (10, 10)),
        (half, (Fraction(39, 2), 10)),
        (unit, (Fraction(39, 2), Fraction(39, 2))),
    ):
        margin = margins(CONTEXT, DRAFTS["throw"], part, trimmed=False)
        assert laid_size(part, margin) == size
    assert laid_size(unit, margins(CONTEXT, DRAFTS["throw"], unit, trimmed=True)) == (
        Fraction(37, 2),
        Fraction(37, 2),
    )


def test_a_motif_is_shown_once_its_ground_is_whole() -> None:
    draft = DRAFTS["throw"]
    block = find_unit(CONTEXT, FigureSpec("u", "units", "throw", (("unit", "block"),)))
    assert holds(draft, (block,)) and not holds(draft, block.parts)
    joined = [e for e in elements(figure("units-throw-block").svg) if e.values.get("fill") == MOSS]
    row = [e for e in elements(figure("units-throw-row").svg) if e.values.get("fill") == MOSS]
    assert not joined and len(row) == 6


def test_patches_find_their_pieces() -> None:
    plan = CONTEXT.plans["throw"]
    letters = {p.key: piece_for(plan, p) for p in DRAFTS["throw"].patches}
    assert letters["r0c0p00"].letter == "A" and letters["r0c0p01"].letter == "I"
    assert letters["border 1 left"].letter == "C" and letters["border 2 top"].letter == "K"


@pytest.mark.parametrize(
    ("size", "index", "inner"), [("mini", 0, 1), ("throw", 0, 36), ("throw", 1, 40)]
)
def test_a_border_has_four_strips_round_what_is_done(size: str, index: int, inner: int) -> None:
    strips, done = split(SIZES[size], DRAFTS[size], index)
    assert set(strips) == {"left", "right", "top", "bottom"} and len(done) == inner
    numbers = sorted(
        e.text for e in texts(figure(f"borders-{size}-{index}").svg) if e.text.isdigit()
    )
    assert numbers == ["1", "1", "2", "2"]


def test_layers_show_the_backing_wrong_side_up() -> None:
    for key in ("layers-mini", "sandwich-mini"):
        assert filled(figure(key).svg, wrong_side(CONTEXT.colour("mist")))


def test_the_top_of_a_pillow_is_shown_as_it_is_before_quilting() -> None:
    """A bare ground is trimmed later: 17 in finished, twice 1/2 in to close the cover and 1 in
    to trim. A border ends in the seam that closes it: 20 in finished and twice 1/2 in."""
    pillow = SIZES["pillow"]
    assert top_size(CONTEXT, FigureSpec("l", "layers", "pillow")) == (19, 19)
    bordered = replace(SIZES["mini"], pillow=pillow.pillow)
    context = replace(CONTEXT, sizes={**SIZES, "mini": bordered})
    assert top_size(context, FigureSpec("l", "layers", "mini")) == (21, 21)


@pytest.mark.parametrize("size", SIZES)
def test_all_quilting_is_drawn(size: str) -> None:
    """The length of the lines on the page is the draft's, at the figure's scale."""
    svg, draft = figure(f"quilting-{size}").svg, DRAFTS[size]
    drawn = [
        e
        for e in elements(svg)
        if e.tag == "path" and e.values["fill"] == "none" and len(rings(e)) > 1
    ]
    assert len(drawn) == len(draft.quilting)
    lengths = [sum(_length(r) for r in rings(e)) for e in drawn]
    scales = [n / q.length for n, q in zip(lengths, draft.quilting, strict=True)]
    assert max(scales) / min(scales) == pytest.approx(1, abs=0.02)
    words = [e.text for e in texts(svg)]
    assert any("½ in apart" in w for w in words) and "in the ditch, beside the edge" in words


def _length(ring: list[tuple[float, float]]) -> float:
    return sum(((a - c) ** 2 + (b - d) ** 2) ** 0.5 for (a, b), (c, d) in pairwise(ring))


def test_colouring_fills_nothing() -> None:
    svg = figure("colouring-throw").svg
    assert {e.values["fill"] for e in elements(svg)} == {PAPER}
    expected = len(DRAFTS["throw"].patches) + len(DRAFTS["throw"].placements) + 1
    assert len([e for e in elements(svg) if e.tag == "path"]) == expected


def test_units_yield_every_patch() -> None:
    for draft in DRAFTS.values():
        found = [u.patch for u in draft.assembly.outermost_first() if u.patch is not None]
        assert sorted(p.key for p in found) == sorted(p.key for p in draft.patches)
        assert len(draft.assembly.patches) == len(draft.patches)

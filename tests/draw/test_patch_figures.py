"""Figures for patchwork: legible, told in words, and true to the pieces they show."""

import math
import re

import pytest
from patch_figures import BY_KEY, MADE, context, drawn, figure, spec
from patch_samples import CONTEXT, PLAN, SIZE
from shapely.ops import unary_union
from top_figures import elements, filled, illegible, rings, texts, view_box

from publish.draw import DRAWINGS
from publish.draw.canvas.shapes import polygon_of
from publish.draw.canvas.style import STITCH, wrong_side
from publish.draw.context import CannotDrawError
from publish.units import fraction_text

KEYS = sorted(BY_KEY)


@pytest.mark.parametrize("key", KEYS)
def test_nothing_is_clipped_or_overlaid(key: str) -> None:
    svg = figure(key).svg
    assert illegible(svg) == []
    assert all(e.number("font-size") >= 7 for e in texts(svg))


@pytest.mark.parametrize("key", KEYS)
def test_it_fits_beside_a_step(key: str) -> None:
    left, _, right, _ = view_box(figure(key).svg)
    assert (right - left) / 72 == pytest.approx(2.6, abs=1e-3)
    assert figure(key).height < 4.0 and figure(key).caption == f"caption of {key}"


@pytest.mark.parametrize("key", KEYS)
def test_alternative_text_is_plain(key: str) -> None:
    alt = figure(key).alt
    assert 20 < len(alt) < 900 and alt.endswith(".") and "  " not in alt
    assert not re.search("[*_`<>½¼¾⅛⅜⅝⅞⁄⁰-⁹₀-₉]", alt)


@pytest.mark.parametrize(
    ("key", "said"),
    [
        ("units-goose", ["3 parts", "2 slanting seams", "pressed outward", "4 1/2 × 2 1/2 in"]),
        ("units-bend", ["1 curved seam", "pressed toward the last part"]),
        ("units-corner", ["2 set-in seams", "pressed open"]),
        (
            "quick-triangles-half square-sew",
            ["A in Salt linen", "B in Deep moss", "3 7/8 in", "1/4 in"],
        ),
        ("quick-triangles-half square-trim", ["3 1/2 × 3 1/2 in", "gives 2"]),
        ("quick-hourglasses-hourglass-cut", ["across the seam", "1/4 in"]),
        ("quick-geese-goose-mark", ["C in Salt linen, 5 1/4 in", "D in Deep moss, 2 7/8 in"]),
        ("quick-geese-goose-trim", ["4 1/2 × 2 1/2 in", "gives 4"]),
        ("quick-corners-snowball-sew", ["E in Sandbar", "2 squares G in Glasswort red of 1 1/2"]),
        ("quick-strips-segment-cut", ["every 1 1/2 in", "11 segments"]),
        ("curve-bend-pin", ["1 the middles, 2 the ends, 3 between"]),
        ("set-in-corner", ["along 2 sides", "1 point", "1/4 in"]),
        ("press-segment", ["wrong side", "2 seams", "pressed left"]),
        ("foundation-heron A-place", ["printed side", "A1 to A4", "Glasswort red"]),
        ("foundation-heron A-sew", ["right sides together", "between A1 and A2", "1/4 in past"]),
        ("foundation-heron A-trim", ["folded back", "1/4 in beyond"]),
        ("foundation-heron A-done", ["mirror image", "A3 Creek mist"]),
        ("sections-heron", ["2 sections", "A of 4 patches", "B of 2 patches"]),
        ("block-heron", ["5 × 5 in finished", "6 patches"]),
    ],
)
def test_it_says_what_it_shows(key: str, said: list[str]) -> None:
    for words in said:
        assert words in figure(key).alt


@pytest.mark.parametrize("method", MADE)
def test_a_quicker_method_shows_the_size_to_trim_to(method: str) -> None:
    (making,) = (m for m in PLAN.makings if m.method == method)
    alt = figure(f"quick-{method}-{MADE[method]}-trim").alt
    for side in making.trim:
        assert fraction_text(side) in alt


def test_the_small_squares_of_geese_are_to_scale() -> None:
    svg = figure("quick-geese-goose-mark").svg
    (large,) = filled(svg, CONTEXT.colour("linen"))
    small = [p for p in filled(svg, wrong_side(CONTEXT.colour("moss"))) if p.area > 100]
    assert len(small) == 2
    for square in small:
        assert square.area / large.area == pytest.approx((2.875 / 5.25) ** 2, rel=0.01)


def test_stitching_lies_a_seam_from_the_drawn_line() -> None:
    svg = figure("quick-triangles-half square-sew").svg
    lines = [
        rings(e)[0]
        for e in elements(svg)
        if e.tag == "path" and e.values.get("stroke") == STITCH.colour
    ]
    assert len(lines) == 2
    per_inch = 72 * 1.15 / 3.875  # the square's 3 7/8 in are 1.15 in wide on the page
    gaps = [(y - x) for (x, y), *_ in lines]
    assert abs(gaps[0] - gaps[1]) / math.sqrt(2) / per_inch == pytest.approx(0.5, abs=0.01)


def test_a_unit_keeps_its_fabrics_in_proportion_when_joined() -> None:
    """A half square: both fabrics cover the same area of the joined unit."""
    svg = figure("units-half square").svg
    linen, moss = (filled(svg, CONTEXT.colour(f)) for f in ("linen", "moss"))
    assert linen[-1].area == pytest.approx(moss[-1].area, rel=0.01)
    assert linen[0].area == pytest.approx(moss[0].area, rel=0.01)
    assert linen[0].area / linen[-1].area == pytest.approx(3.8536**2 / 3.5**2, rel=0.01)


@pytest.mark.parametrize(
    ("kind", "values", "says"),
    [
        ("quick", {"method": "triangles", "unit": "half square", "stage": "fold"}, "stage"),
        ("quick", {"method": "magic", "unit": "half square", "stage": "sew"}, "method"),
        ("quick", {"method": "geese", "unit": "half square", "stage": "sew"}, "geese"),
        ("curve", {"unit": "goose", "stage": "pin"}, "curve"),
        ("curve", {"unit": "bend", "stage": "iron"}, "stage"),
        ("set-in", {"unit": "bend"}, "set in"),
        ("press", {"unit": "nonsense"}, "nonsense"),
        ("foundation", {"section": "heron Z", "stage": "sew"}, "heron Z"),
        ("foundation", {"section": "heron A", "stage": "iron"}, "stage"),
        ("sections", {"block": "goose"}, "foundations"),
        ("block", {"block": "goose"}, "goose"),
        ("setting", {}, "rows"),
        ("rounds", {}, "rounds"),
    ],
)
def test_what_cannot_be_drawn_is_said(kind: str, values: dict[str, str], says: str) -> None:
    with pytest.raises(CannotDrawError, match=says):
        DRAWINGS[kind](CONTEXT, spec(kind, SIZE, **values))


# --- drafted patterns -------------------------------------------------------------------


TOPS = [("towpath", "throw"), ("towpath", "mini"), ("millrace", "throw"), ("heronry", "throw")]


@pytest.mark.parametrize(("name", "size"), TOPS)
def test_a_top_is_drawn_patch_by_patch_to_scale(name: str, size: str) -> None:
    """On point, with arcs, or in rounds: each patch has its share of the top's area."""
    top = context(name).drafts[size]
    edge, *shapes = filled(drawn(name, "colouring", size).svg, "#ffffff")
    scale = edge.area / ((float(top.width) + 0.5) * (float(top.height) + 0.5))
    for patch, shape in zip(top.patches, shapes, strict=False):
        assert shape.area == pytest.approx(polygon_of(patch).area * scale, rel=0.03, abs=0.5)
    assert len(shapes) >= len(top.patches) + len(top.placements)


@pytest.mark.parametrize("kind", ["quilt", "quilting", "layers", "colouring", "sandwich"])
def test_the_whole_top_is_legible_on_point(kind: str) -> None:
    values = {"dimensions": "yes"} if kind == "quilt" else {}
    assert illegible(drawn("towpath", kind, "throw", **values).svg) == []


def test_a_top_on_point_says_so() -> None:
    alt = drawn("towpath", "quilt", "throw").alt
    assert "18 blocks of 12 in set on point" in alt and "setting triangles in Sedge" in alt
    sashed = drawn("towpath", "quilt", "mini").alt
    assert "4 blocks of 8 in" in sashed and "sashing of 1 in in Still water" in sashed


def test_diagonal_rows_are_pulled_apart_and_numbered() -> None:
    """Three columns and four rows on point make 6 diagonal rows and 2 loose corners."""
    shown = drawn("towpath", "setting", "throw")
    assert illegible(shown.svg) == []
    assert [e.text for e in texts(shown.svg)] == ["1", "2", "3", "4", "5", "6"]
    assert "6 of 1 block and 2 setting triangles; 2 corner triangles apart" in shown.alt
    rows = [int(n) for n in re.findall(r"of (\d+) blocks?", shown.alt)]
    assert sum(rows) == 12 + 6


def test_rounds_are_pulled_apart() -> None:
    shown = drawn("heronry", "rounds", "throw")
    assert illegible(shown.svg) == []
    assert [e.text for e in texts(shown.svg)] == ["1", "2", "3", "4", "5", "6"]
    assert "20 blocks, to 36 × 36 in" in shown.alt and "24 blocks, to 56 × 56 in" in shown.alt


def test_sections_are_joined_in_the_order_of_sewing() -> None:
    shown = drawn("heronry", "sections", "throw", block="heron")
    lines = [e.text for e in texts(shown.svg) if "+" in e.text]
    assert lines[0] == "A + B" and lines[-1].endswith("+ G")
    assert illegible(shown.svg) == []


def test_a_border_of_a_medallion_goes_round_what_is_inside_it() -> None:
    """The third border of the throw surrounds 36 in of blocks: 36 1/2 in with seams."""
    alt = drawn("heronry", "borders", "throw", border="2").alt
    assert alt.startswith("The top, 36 1/2 × 36 1/2 in, with 4 strips")


def test_seams_from_the_wrong_side_lie_within_the_block() -> None:
    shown = drawn("towpath", "press", "mini", unit="block lock")
    assert illegible(shown.svg) == []
    assert "32 seams" in shown.alt
    whole = unary_union([p for p in filled(shown.svg, "#f8f5ef") if p.is_valid])
    left, top, right, bottom = whole.bounds
    assert right - left <= 2.0 * 72 + 0.1 and bottom - top <= 2.1 * 72 + 0.1

"""Sheets of pieces and foundations: true to size, mirrored where they must be, complete.

Paper: US Letter 8 1/2 x 11 in (ANSI/ASME Y14.1 size A), as in `test_sheets_print`. A
foundation is sewn from its printed side with the fabric under it, so that it is printed
as the mirror image of the block: common practice, no source.
"""

import math
from dataclasses import replace

import pytest
from patch_samples import CONTEXT, NECK, PIE, SECTION, SIZE, TEMPLATE
from shapely.affinity import affine_transform, rotate, scale, translate
from shapely.geometry import LineString, MultiLineString, Point, Polygon, box
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union
from sheet_print import printed, raster
from sheet_samples import sheets_of
from top_figures import elements, rings, texts

from publish.draw import draw
from publish.draw.canvas.style import CUT, FINISHED
from publish.draw.context import Context
from publish.model.book import A4, LETTER
from publish.model.cutplan import PieceTemplate
from publish.model.figure import Sheet
from publish.model.words import BackCover, Cover, FigureSpec, Manual, Section, TemplateSheets

DPI = 300


ONCE = replace(
    CONTEXT,
    drafts={
        SIZE: replace(
            CONTEXT.drafts[SIZE],
            foundations=tuple(replace(f, count=1) for f in CONTEXT.drafts[SIZE].foundations),
        )
    },
)
"""The same sampler with one of every foundation, so that no sheet holds it twice."""


def sheets(key: str, part: str, context: Context = ONCE) -> tuple[Sheet, ...]:
    return sheets_of(context, key, SIZE, part, LETTER)


def with_template(template: PieceTemplate) -> Context:
    plan = replace(CONTEXT.plans[SIZE], templates=(template,))
    return replace(CONTEXT, plans={SIZE: plan})


def lines_of(sheet: Sheet, weight: float, dashed: bool) -> MultiLineString:
    """Return the lines of one weight on a sheet, in the template's own coordinates."""
    found = []
    for e in elements(sheet.svg):
        if e.tag != "path" or e.number("stroke-width") != weight:
            continue
        if ("stroke-dasharray" in e.values) == dashed:
            found += [LineString([(x / 72, y / 72) for x, y in ring]) for ring in rings(e)]
    found = [
        g for g in found if g.bounds[1] >= sheet.shown[0].at[1] - 0.01
    ]  # below the title strip
    moved = translate(
        MultiLineString(found),
        sheet.shown[0].x - sheet.shown[0].at[0],
        sheet.shown[0].y - sheet.shown[0].at[1],
    )
    level = rotate(moved, -sheet.shown[0].turn, origin=(0, 0))
    return scale(level, -1, 1, origin=(0, 0)) if sheet.shown[0].mirrored else level


def unlike(one: BaseGeometry, other: BaseGeometry) -> float:
    """Return the length of the lines that only one of two drawings has."""
    alone = (a.difference(b.buffer(0.003)).length for a, b in ((one, other), (other, one)))
    return float(sum(alone))


def sewing(sheet: Sheet) -> MultiLineString:
    return lines_of(sheet, FINISHED.weight, dashed=False)


def test_a_piece_is_printed_at_its_size() -> None:
    (sheet,) = sheets("pool", "piece")
    assert sewing(sheet).hausdorff_distance(PIE.exterior) < 0.25 + 0.002  # notches cross it
    assert sewing(sheet).bounds == pytest.approx((0, 0, 6, 6), abs=0.25)
    cut = lines_of(sheet, CUT.weight, dashed=True)
    ring = max(cut.geoms, key=lambda g: g.length)
    assert Polygon(ring).area == pytest.approx(TEMPLATE.cut.area, rel=1e-3)
    assert ring.hausdorff_distance(TEMPLATE.cut.exterior) < 0.002


def test_a_piece_says_what_is_cut_with_it() -> None:
    (sheet,) = sheets("pool", "piece")
    words = [e.text for e in texts(sheet.svg)]
    for said in (
        "P",
        "Creek mist",
        "cut 24",
        "and 12 turned over",
        "straight grain",
        "Cut 24 from Creek mist, and 12 with the template turned over",
        "Template P, Sampler",
    ):
        assert said in words
    assert "Piece P Creek mist" in sheet.alt
    assert "Cut 24 from Creek mist, and 12 with the template turned over" in sheet.alt


def test_a_notch_crosses_the_sewing_line_at_its_place() -> None:
    (sheet,) = sheets("pool", "piece")
    notch = min(sewing(sheet).geoms, key=lambda g: g.length)
    # from 1/8 in inside the line to the edge that is cut, 1/4 in outside it
    assert notch.length == pytest.approx(0.375, abs=1e-3)
    assert notch.distance(Point(TEMPLATE.notches[0])) < 0.002
    assert notch.distance(TEMPLATE.cut.exterior) < 0.002
    (ax, ay), (bx, by) = notch.coords
    assert abs(bx - ax) == pytest.approx(0.2652, abs=0.002)
    assert (bx - ax) == pytest.approx(by - ay, abs=0.002)


@pytest.mark.parametrize(("grain", "wanted"), [(0.0, 90.0), (90.0, 0.0), (45.0, 135.0)])
def test_the_grain_arrow_turns_clockwise_from_upright(grain: float, wanted: float) -> None:
    (sheet,) = sheets("pool", "piece", with_template(replace(TEMPLATE, grain=grain)))
    arrows = [
        rings(e)[0]
        for e in elements(sheet.svg)
        if e.tag == "path"
        and e.number("stroke-width") == 0.7
        and "stroke-dasharray" not in e.values
        and len(rings(e)[0]) == 2
    ]
    (shaft,) = (a for a in arrows if math.dist(*a) > 30)
    (ax, ay), (bx, by) = shaft
    # On a page whose y points down, 45 degrees clockwise from upright leans to the right.
    angle = math.degrees(math.atan2(ay - by, bx - ax)) % 180
    leaning = {90.0: 90.0, 0.0: 0.0, 135.0: 45.0}[wanted]
    assert angle == pytest.approx(leaning, abs=0.5) or angle == pytest.approx(leaning + 180)


@pytest.mark.parametrize("section", [SECTION, NECK])
def test_a_foundation_is_the_mirror_image_of_its_section(section) -> None:
    (sheet,) = sheets(section.key, "foundation")
    ring = LineString([*section.ring, section.ring[0]])
    drafted = unary_union([ring, *(LineString(s) for s in section.seams)])
    assert sheet.shown[0].mirrored
    assert unlike(sewing(sheet), drafted) < 0.01
    # As it lies on the paper it is not the section: it is turned over.
    shown = scale(sewing(sheet), -1, 1, origin=(0, 0))
    left = translate(shown, -shown.bounds[0], 0)
    same_way = translate(drafted, -drafted.bounds[0], 0)
    assert unlike(left, same_way) > 2


def test_a_foundation_has_its_allowance_and_its_numbers() -> None:
    (sheet,) = sheets("heron A", "foundation")
    (outer,) = (g for g in lines_of(sheet, CUT.weight, dashed=True).geoms if g.length > 10)
    assert Polygon(outer).area == pytest.approx(3.5 * 5.5, abs=0.01)
    words = [e.text for e in texts(sheet.svg)]
    assert [w for w in words if w in ("A1", "A2", "A3", "A4")] == ["A1", "A2", "A3", "A4"]
    for fabric in ("Glasswort red", "Salt linen", "Creek mist"):
        assert fabric in words
    assert "Mirror image of the block" in words
    assert not any("grain" in w for w in words)


def test_a_sheet_holds_as_many_copies_as_fit_and_says_how_often_it_is_printed() -> None:
    """Four foundations of 3 1/2 x 5 1/2 in: two lie side by side on Letter, so two prints."""
    (sheet,) = sheets("heron A", "foundation", CONTEXT)
    assert len(sheet.shown) == 2 and sheet.prints == {SIZE: 2}
    words = [e.text for e in texts(sheet.svg)]
    assert words.count("A1") == 2 and any("Print this sheet twice" in w for w in words)


def test_a_number_stands_in_its_own_patch() -> None:
    (sheet,) = sheets("heron A", "foundation")
    for number, held in enumerate(SECTION.patches, 1):
        (word,) = (e for e in texts(sheet.svg) if e.text == f"A{number}")
        x = word.number("x") / 72 + sheet.shown[0].x - sheet.shown[0].at[0]
        y = word.number("y") / 72 + sheet.shown[0].y - sheet.shown[0].at[1]
        shape = scale(Polygon(held.ring), -1, 1, origin=(0, 0))
        assert (
            rotate(shape, sheet.shown[0].turn, origin=(0, 0))
            .buffer(0.05)
            .contains(LineString([(x, y), (x + 0.05, y)]))
        )


def test_a_long_piece_is_joined_from_sheets() -> None:
    long = Polygon([(0, 0), (20, 0), (20, 2), (1, 2)])
    big = replace(TEMPLATE, finished=long, cut=long.buffer(0.25, join_style="mitre"), notches=())
    found = sheets("pool", "piece", with_template(big))
    assert len(found) > 1 and len({s.key for s in found}) == len(found)
    joined = unary_union([sewing(s) for s in found])
    assert unlike(joined, long.exterior) < 0.01
    assert joined.length == pytest.approx(long.exterior.length, rel=0.12)  # overlaps twice


def test_a_long_piece_that_folds_on_itself_is_printed_as_its_half() -> None:
    """20 in and its allowance take three sheets of 8 3/4 in; half of it takes two."""
    long = Polygon([(0, 0), (20, 0), (20, 2), (0, 2)])
    big = replace(TEMPLATE, finished=long, cut=long.buffer(0.25, join_style="mitre"), notches=())
    found = sheets("pool", "piece", with_template(big))
    assert len(found) == 2
    (fold,) = {s.shown[0].fold for s in found}
    assert sorted(x for x, _ in fold) == pytest.approx([10, 10])
    half = long.exterior.intersection(box(0, -1, 10, 3))
    other = long.exterior.intersection(box(10, -1, 20, 3))
    seen = unary_union([sewing(s) for s in found])
    assert min(unlike(seen, half), unlike(seen, other)) < 0.01
    assert any("folded paper" in e.text for s in found for e in texts(s.svg))


def test_the_printed_page_shows_the_piece_at_its_size() -> None:
    """Measured in the PDF's dots: six inches from side to side of the quarter circle."""
    (sheet,) = sheets("pool", "piece")
    document = printed(sheet.svg, LETTER.width, LETTER.height)
    dots = raster(document, DPI)
    left, top = sheet.shown[0].at[0] - sheet.shown[0].x, sheet.shown[0].at[1] - sheet.shown[0].y
    row = dots[int((top + 3) * DPI)] < 128
    columns = [i / DPI - left for i in range(len(row)) if row[i]]
    upright = [c for c in columns if -0.1 < c < 0.1]
    curve = [c for c in columns if abs(c - math.sqrt(36 - 9)) < 0.05]
    assert sum(upright) / len(upright) == pytest.approx(0, abs=0.01)
    assert sum(curve) / len(curve) == pytest.approx(math.sqrt(27), abs=0.02)


def _asked(*wanted: TemplateSheets) -> Manual:
    cover = FigureSpec("cover", "block", SIZE, (("block", "heron"),))
    return Manual(
        Cover("S", "", "", "", (), cover),
        (Section("t", "T", wanted),),
        BackCover("", (), "", "", "", "", cover),
        "",
    )


def test_the_stage_prints_pieces_and_foundations() -> None:
    book = _asked(
        TemplateSheets("pool", SIZE, "piece"),
        TemplateSheets("heron A", SIZE, "foundation"),
        TemplateSheets("heron Z", SIZE, "foundation"),
        TemplateSheets("x", SIZE, "piece"),
    )
    artwork, notes = draw(CONTEXT.pattern, CONTEXT.sizes, CONTEXT.drafts, CONTEXT.plans, book, A4)
    assert [n.code for n in notes] == ["F603", "F603"]
    assert list(artwork.sheets) == [("pool", SIZE, "piece"), ("heron A", SIZE, "foundation")]
    assert all(" " not in s.key for group in artwork.sheets.values() for s in group)


def test_motif_editions_leave_other_templates_out() -> None:
    book = _asked(TemplateSheets("pool", SIZE, "piece"), TemplateSheets("fern", SIZE, "wedge"))
    (section,) = book.whole_templates().sections
    assert section.blocks == (TemplateSheets("fern", SIZE, "whole"),)
    assert _asked(TemplateSheets("pool", SIZE, "piece")).whole_templates().sections == ()


def test_the_samples_are_as_they_say() -> None:
    turned = affine_transform(PIE, [-1, 0, 0, 1, 0, 0])
    assert turned.area == pytest.approx(PIE.area)

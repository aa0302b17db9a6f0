"""What a template sheet says, and that its sheets together are the template."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from functools import cache
from itertools import pairwise

import pytest
import shapely
import svgelements
from shapely.affinity import affine_transform, rotate
from shapely.geometry import LineString, MultiLineString, Polygon, box
from shapely.ops import unary_union
from sheet_print import printed, text_boxes, words_on
from sheet_samples import (
    context_for,
    laid_out,
    leaf_wedge,
    many,
    motif_shape,
    samphire_wedge,
    sheets_of,
    unfolded,
)

from publish.draw.canvas.style import CUT, FINISHED, FOLD
from publish.draw.context import CannotDrawError
from publish.draw.sheets.template import stood, template_of
from publish.model.book import A4, LETTER
from publish.model.draft import FoldEdge

TENTH_MM = 0.1 / 25.4
MINI, THROW = Fraction(14), Fraction(31, 2)
PAPERS = pytest.mark.parametrize("paper", [LETTER, A4], ids=["letter", "a4"])


@cache
def samphire(span=THROW):
    return motif_shape(samphire_wedge(span), 8, span)


def drawn(svg, stroke):
    """Return the runs of points drawn with one stroke, in points of the page."""
    dash = " ".join(f"{d:g}" for d in stroke.dash)
    wanted = f'stroke="{stroke.colour}" stroke-width="{stroke.weight:g}" stroke-linejoin="round"'
    wanted += f' stroke-dasharray="{dash}"' if dash else ""
    runs = []
    for found in re.finditer(r'<(path|g) fill="none" ([^>]*?)(?: d="([^"]*)"/)?>', svg):
        if found[2].strip() != wanted:
            continue
        own = found[3] or "".join(re.findall(r'd="([^"]*)"', svg[found.end() :].split("</g>")[0]))
        for part in svgelements.Path(own).as_subpaths():
            ends = [segment.end for segment in part if segment.end is not None]
            runs.append([(float(end.x), float(end.y)) for end in ends])
    return runs


def on_template(sheet, stroke):
    """Return what a sheet draws with one stroke, in the template's own inches."""
    dx, dy = sheet.shown[0].x - sheet.shown[0].at[0], sheet.shown[0].y - sheet.shown[0].at[1]
    lines = [
        LineString([(x / 72 + dx, y / 72 + dy) for x, y in run])
        for run in drawn(sheet.svg, stroke)
        if len(run) > 1
    ]
    left, top = sheet.shown[0].x - 1e-3, sheet.shown[0].y - 1e-3
    window = box(
        left, top, left + sheet.shown[0].window[0] + 2e-3, top + sheet.shown[0].window[1] + 2e-3
    )
    return MultiLineString([line for line in lines if window.covers(line)])


def farthest(lines, others):
    """Return how far `lines`, sampled every 1/50 in, stray from `others`."""
    points = shapely.points(shapely.get_coordinates(shapely.segmentize(lines, 0.02)))
    pieces = [LineString(pair) for g in others.geoms for pair in pairwise(g.coords)]
    _, distances = shapely.STRtree(pieces).query_nearest(
        points, return_distance=True, all_matches=False
    )
    assert len(distances) == len(points)
    return distances.max()


@PAPERS
@pytest.mark.parametrize("part", ["wedge", "whole"])
def test_the_sheets_joined_are_the_template_to_a_tenth_of_a_millimetre(paper, part):
    shape = samphire()
    template, tiling = laid_out(context_for(shape), "samphire", "throw", part, paper)
    assert len(tiling.windows) > 1
    sheets = sheets_of(context_for(shape), "samphire", "throw", part, paper)
    for stroke, line in ((FINISHED, template.finished), (CUT, template.cut)):
        joined = MultiLineString([g for s in sheets for g in on_template(s, stroke).geoms])
        assert farthest(joined, line) < TENTH_MM
        assert farthest(line, joined) < TENTH_MM


def test_the_finished_line_is_the_motif_and_never_lies_on_a_fold():
    shape = samphire(MINI)
    template = template_of(shape)
    folds = unary_union([fold.line for fold in template.folds])
    for line in (template.finished, template.cut):
        assert line.intersection(folds.buffer(1e-3)).length < 0.02
    on_folds = sum(end - start for fold in template.folds for start, end in fold.contact)
    assert template.finished.length + on_folds == pytest.approx(shape.wedge.length, abs=1e-6)


def mirrored(shape):
    """The same wedge drawn the other way round: its single fold counterclockwise."""
    multiple, single = shape.edges

    def flip(geometry):
        return many(affine_transform(geometry, [1, 0, 0, -1, 0, 0]))

    return replace(
        shape,
        wedge=flip(shape.wedge),
        wedge_cut_line=flip(shape.wedge_cut_line),
        edges=(multiple, FoldEdge("single", -single.angle, "bias", single.contact)),
    )


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize("folds", [4, 6, 8, 12, 16])
def test_every_wedge_stands_alike_and_unfolds_to_its_motif(folds, turned):
    shape = motif_shape(leaf_wedge(MINI, folds), folds, MINI)
    template = template_of(mirrored(shape) if turned else shape)
    multiple, single = template.folds
    assert template.mirrored is turned
    assert (multiple.kind, single.kind) == ("multiple", "single")
    assert (multiple.angle, single.angle) == pytest.approx((-90, -90 + 360 / folds))
    # Unfold what the sheet shows, from the multiple folds' edge round the circle.
    level = rotate(template.body, 90, origin=(0, 0))
    whole = rotate(unfolded(level, folds), -90, origin=(0, 0))
    expected = stood(shape.whole, template.turn, template.mirrored)
    assert whole.symmetric_difference(expected).area < 1e-3


def test_a_wedge_that_fits_takes_one_sheet_and_a_larger_one_as_few_as_it_can():
    counts = {}
    for span in (MINI, THROW):
        for paper in (LETTER, A4):
            sheets = sheets_of(context_for(samphire(span)), "samphire", "throw", "wedge", paper)
            counts[span, paper.key] = len(sheets)
    assert counts == {(MINI, "letter"): 1, (MINI, "a4"): 1, (THROW, "letter"): 2, (THROW, "a4"): 2}


def test_a_sheet_says_what_it_is_and_how_it_is_used():
    first, second = sheets_of(context_for(samphire()), "samphire", "throw", "wedge", LETTER)
    said = re.findall(r">([^<>]+)</text>", first.svg)
    for words in (
        "Samphire",
        "Samphire wedge, Throw",
        "Cut 9 from Samphire green",
        "Sheet 1 of 2",
        "finished line",
        "cut line",
        "Place on the single fold (bias)",
        "Place on the multiple folds (straight grain)",
        "straight grain",
        "centre",
        "cut out",
        "Join to sheet 2 here",
        "Print at 100 %.",
    ):
        assert words in said, words
    assert said.count("This square must") == 2
    assert {"1 in.", "5 cm."} <= set(said)
    assert "Cut here and join to sheet 1" in re.findall(r">([^<>]+)</text>", second.svg)
    assert drawn(first.svg, FOLD)
    assert (first.key, second.key) == ("samphire-throw-wedge-1", "samphire-throw-wedge-2")
    assert second.shown[0].x > first.shown[0].x and second.shown[0].y == first.shown[0].y
    assert "Joins right to sheet 2." in first.alt


@PAPERS
@pytest.mark.parametrize("part", ["wedge", "whole"])
def test_words_never_lie_on_the_template_or_outside_the_margins(paper, part):
    shape = samphire()
    template, _ = laid_out(context_for(shape), "samphire", "throw", part, paper)
    for sheet in sheets_of(context_for(shape), "samphire", "throw", part, paper):
        left, top = sheet.shown[0].at
        to_page = [72, 0, 0, 72, 72 * (left - sheet.shown[0].x), 72 * (top - sheet.shown[0].y)]
        lines = template.lines.difference(template.guides.buffer(1e-6))
        lines = affine_transform(lines, to_page)
        window = box(
            72 * left,
            72 * top,
            72 * (left + sheet.shown[0].window[0]),
            72 * (top + sheet.shown[0].window[1]),
        )
        lines = lines.intersection(window)
        page = box(27, 36, 72 * paper.width - 27, 72 * paper.height - 36).buffer(0.6)
        words = words_on(printed(sheet.svg, paper.width, paper.height))
        assert len(words) > 10
        boxes = [place for place, _ in text_boxes(sheet.svg)]
        for index, place in enumerate(boxes):
            assert not any(place.intersects(other) for other in boxes[index + 1 :])
        for *sides, text in words:
            place = box(*sides)
            assert page.covers(place), text
            if not text.strip().isdecimal():  # a diamond's number may have to meet a line
                assert not lines.intersects(place.buffer(-0.8)), (sheet.key, text)


@pytest.mark.parametrize(
    ("folds", "grain"), [(4, "straight grain"), (6, "off grain"), (8, "bias"), (16, "off grain")]
)
def test_fold_edges_say_how_the_threads_lie(folds, grain):
    shape = motif_shape(leaf_wedge(MINI, folds), folds, MINI)
    (sheet,) = sheets_of(context_for(shape), "samphire", "throw", "wedge", LETTER)
    said = [text for _, text in text_boxes(sheet.svg)]
    assert f"Place on the single fold ({grain})" in said
    assert "Place on the multiple folds (straight grain)" in said
    assert f"single fold ({grain})" in sheet.alt


def test_the_check_square_stays_off_the_template():
    shape = samphire()
    for sheet in sheets_of(context_for(shape), "samphire", "throw", "whole", LETTER):
        _, top, side = sheet.square
        assert top + side < sheet.shown[0].at[1]


def test_raw_edges_have_one_line_only():
    shape = motif_shape(leaf_wedge(MINI), 8, MINI, Fraction(0))
    raw = replace(shape, cut_line=shape.whole, wedge_cut_line=shape.wedge)
    (sheet,) = sheets_of(context_for(raw), "samphire", "throw", "wedge", LETTER)
    assert drawn(sheet.svg, FINISHED)
    assert ">cut line<" not in sheet.svg
    assert "cut line" not in sheet.alt
    said = [text for _, text in text_boxes(sheet.svg)]
    assert said.count("Turn the paper over along this edge") == 2
    assert "wedge edge" in said
    assert not any("fold" in text for text in said)


def test_a_motif_without_folds_is_printed_whole():
    shape = replace(motif_shape(leaf_wedge(MINI), 8, MINI), edges=None)
    sheets = sheets_of(context_for(shape), "samphire", "throw", "wedge", LETTER)
    assert all("whole" in sheet.key for sheet in sheets)
    assert ">centre line<" in sheets[0].svg


def test_holes_inside_a_wedge_are_lettered():
    wedge = Polygon(
        [(1, 0), (7, 0), (7, 7), (1, 1)], [[(3, 0.6), (4.4, 0.6), (4.4, 1.8), (3, 1.8)]]
    )
    template = template_of(motif_shape(wedge, 8, MINI))
    assert len(template.openings) == 1
    (sheet,) = sheets_of(
        context_for(motif_shape(wedge, 8, MINI)), "samphire", "throw", "wedge", LETTER
    )
    assert sheet.svg.count(">cut out<") == 2  # the hole, and the open centre


def test_the_key_map_names_every_sheet_in_the_order_of_joining():
    sheets = sheets_of(context_for(samphire()), "samphire", "throw", "whole", LETTER)
    for number, sheet in enumerate(sheets, start=1):
        assert f"Sheet {number} of 6" in re.findall(r">([^<>]+)</text>", sheet.svg)
        said = re.findall(r">(\d)</text>", sheet.svg)
        assert said[-6:] == ["1", "2", "3", "4", "5", "6"]


def test_a_missing_motif_is_refused():
    with pytest.raises(CannotDrawError, match="sedge"):
        sheets_of(context_for(samphire()), "sedge", "throw", "wedge", LETTER)


def test_sheets_are_the_same_in_every_run():
    one, two = (
        sheets_of(context_for(samphire()), "samphire", "throw", "wedge", A4) for _ in range(2)
    )
    assert one == two

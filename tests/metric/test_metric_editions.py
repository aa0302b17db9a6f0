"""Editions for makers who measure in centimetres: nothing of inches is left in them.

The search knows no unit but those of the international yard and pound agreement (1959): inch,
foot, yard, and the fractions that such rulers are read in. The sizes of sewing machine needles
(80/12, metric and American) are none.
"""

import re

import pypdfium2
import pytest
from small import NINE, STAR, findings, prepared, written

from publish import draw
from publish.editions import Job
from publish.model.book import PAPERS
from publish.pipeline import examine
from publish.units import parse_length
from publish.words import english
from publish.work import print_jobs
from publish.write.collect import text

NEEDLES = ("80/12", "90/14")
OF_INCHES = re.compile(
    r"(?<!\w)\d+\s*(?:in|yd|yds|ft)(?!\w)|\binch(?:es)?\b|\byards?\b|[″¼½¾⅛⅜⅝⅞⁄]|\d/\d",
    re.IGNORECASE,
)
METRIC = "units: metric\n"
QUILT = "throw: {columns: 2, rows: 3, block_size: 24 cm, borders: [{width: 6 cm, fabric: mist}]}"
POINT = "throw: {setting: on point, columns: 2, rows: 2, block_size: 24 cm, setting_fabric: mist}"
PILLOW = "cushion: {finish: pillow, block_size: 40 cm, pillow: {form: 40 cm, back: zip}}"
INCHES = "throw: {columns: 2, rows: 2, block_size: 9 in, borders: [{width: 2 in, fabric: mist}]}"


def left_of_inches(words):
    """Return what a text still says in inches."""
    for needle in NEEDLES:
        words = words.replace(needle, "")
    return [words[max(0, m.start() - 30) : m.end() + 20] for m in OF_INCHES.finditer(words)]


@pytest.mark.parametrize("words", ["2 1/2 in", "9 in", "1 yd", "an inch", "2½", "three yards"])
def test_the_search_finds_inches(words):
    assert left_of_inches(words)


@pytest.mark.parametrize("words", ["25.5 cm in the middle", "1.30 m", "size 80/12", "7.5 mm"])
def test_the_search_passes_over_metric(words):
    assert not left_of_inches(words)


@pytest.mark.parametrize(
    ("sizes", "blocks"),
    [(QUILT, NINE), (POINT, NINE), (PILLOW, NINE), (INCHES, NINE), (QUILT, STAR)],
    ids=["quilt", "on point", "pillow", "in inches", "star"],
)
def test_a_metric_booklet_holds_no_inch(tmp_path, sizes, blocks):
    work = prepared(tmp_path, sizes, blocks, METRIC)
    assert findings(work) == []
    paper = PAPERS[work.pattern.papers[0]]
    made = (work.pattern, work.sizes, work.drafts, work.plans, work.manual)
    artwork, notes = draw.draw(*made, paper, {})
    assert not notes and paper.key == "a4"
    figures = " ".join(f"{f.alt} {re.sub('<[^>]*>', ' ', f.svg)}" for f in artwork.figures.values())
    assert left_of_inches(text(work.manual.sections)) == []
    assert left_of_inches(re.sub(r"\bin (?=[a-z])", "", figures)) == []


def test_the_printed_pages_hold_no_inch(tmp_path):
    work = prepared(tmp_path, QUILT, NINE, METRIC)
    print_jobs(work, [Job("booklet", PAPERS["a4"])])
    (edition,) = work.editions
    pages = pypdfium2.PdfDocument(edition.pdf)
    words = " ".join(page.get_textpage().get_text_range() for page in pages)
    assert "7.5 mm" in words and left_of_inches(words) == []


def test_cut_sizes_are_on_the_metric_grid(tmp_path):
    """Nine patch of 24 cm: squares of 8 cm and two seams of 7.5 mm are 9.5 cm, as geometry
    has it; usable width 105 cm of cloth 110 cm wide holds 11 of them."""
    work = prepared(tmp_path, QUILT, NINE, METRIC)
    plan = work.plans["throw"]
    squares = [p for p in plan.pieces if english(p.called) == "square"]
    assert {p.width for p in squares} == {parse_length("9.5 cm")}
    millimetre, ten = parse_length("1 mm"), parse_length("10 cm")
    for piece in plan.pieces:
        assert piece.width % millimetre == piece.length % millimetre == 0
    for fabric in plan.fabrics.values():
        assert fabric.buy_metric % ten == 0 and fabric.buy == fabric.buy_metric
        assert int(fabric.usable_width / parse_length("9.5 cm")) == 11


def test_a_pattern_in_inches_is_planned_anew(tmp_path):
    """9 in are 22.86 cm, told and planned as 22.9 cm: squares of 7.633 + 1.5 cm, so 9.2 cm."""
    work = prepared(tmp_path, INCHES, NINE, METRIC)
    assert work.sizes["throw"].block_side == parse_length("22.9 cm")
    squares = [p for p in work.plans["throw"].pieces if english(p.called) == "square"]
    assert {p.width for p in squares} == {parse_length("9.2 cm")}


def test_inches_follow_in_parentheses(tmp_path):
    work = prepared(tmp_path, QUILT, NINE, "units: metric, then inches\n")
    assert findings(work) == []
    words = text(work.manual.sections)
    assert "24 cm (about 9 7/16 in)" in words  # 9.4488 in
    assert re.search(r"\d m \([\d /]+ yd\)|\d cm \([\d /]+ yd\)", words)


def test_inches_may_stand_alone(tmp_path):
    size = "throw: {columns: 2, rows: 2, block_size: 9 in}"
    work = prepared(tmp_path, size, NINE, "units: inches\n")
    assert findings(work) == []
    assert not re.search(r"\(\d[\d.]* (?:cm|mm|m)\b", text(work.manual.sections))


def test_an_unknown_way_to_measure_is_a_finding(tmp_path):
    notes = examine(written(tmp_path, QUILT, NINE, "units: centimetres\n")).report
    assert [n.code for n in notes] == ["R125"]

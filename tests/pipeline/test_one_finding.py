"""One cause is one finding, where the designer can mend it; her own names are no fault.

No source: what a designer is told is the point.
"""

import pytest
from small import NINE, prepared, written

from publish import pipeline
from publish.notes import PublishError, Severity

GRID = "quilting: [{area: ground, style: grid, spacing: 1 1/2 in}]\n"
LAYERS = "backing: {fabric: mist}\nbinding: {fabric: amber}\n"


def sizes(*titles):
    """Return a size for each title, one row longer than the one before."""
    return "\n".join(
        f"k{n}: {{block: nine, columns: 3, rows: {n + 3}, block_size: 9 in, title: {title}}}"
        for n, title in enumerate(titles)
    )


def found(folder, said, more=GRID):
    """Return the code and the way of every finding of a check that is no mere hint."""
    try:
        report = pipeline.prepare(written(folder, said, NINE, more)).report
    except PublishError as stopped:
        report = stopped.report
    return [(n.code, n.place.path) for n in report if n.severity is not Severity.INFO]


def test_two_sizes_of_one_title_are_one_finding(tmp_path):
    assert found(tmp_path, sizes("Bed", "Bed"), GRID + LAYERS) == [("W502", "sizes.k1.title")]


@pytest.mark.parametrize("titles", [("S", "M", "L"), ("XS", "LC", "XL")])
def test_a_title_of_capitals_is_neither_a_piece_nor_an_abbreviation(tmp_path, titles):
    assert found(tmp_path, sizes(*titles), GRID + LAYERS) == []


def test_a_title_that_is_a_letter_of_a_piece_is_said(tmp_path):
    assert ("W510", "sizes.k0.title") in found(tmp_path, sizes("B", "Bed"))


def test_a_gap_wider_than_the_batting_allows_is_one_finding(tmp_path):
    narrow = GRID + "batting: {name: Wool, largest_gap: 1 in}\n"
    assert found(tmp_path, sizes("Bed"), narrow) == [("G207", "quilting.0.spacing")]


@pytest.mark.parametrize(
    "text",
    [
        "Baste with safety pins about a hand apart.",
        "Pin-baste from the middle outwards.",
        "Baste the layers with long stitches.",
    ],
)
def test_basting_in_her_own_words_is_basting(tmp_path, text):
    steps = f"steps: [{{step: quilting-baste, text: {text}}}]\n"
    assert found(tmp_path, sizes("Bed"), GRID + steps) == []


def test_what_her_own_words_get_wrong_is_found_where_she_wrote_it(tmp_path):
    own = (
        "subtitle: A quilt in seven sizes\n"
        "steps:\n"
        "  - {before: quilting-baste, text: Press the top and trim the HSTs.}\n"
        "  - {step: quilting-unpin, text: Take out the basting and cut 7 3/16 in off. Look the "
        "back over for tucks.}\n"
    )
    assert set(found(tmp_path, sizes("Bed"), GRID + own)) == {
        ("P840", "subtitle"),
        ("P863", "steps.0"),
        ("P809", "steps.1"),  # none of what is done there
    }


def test_work_is_silent(tmp_path):
    assert prepared(tmp_path, sizes("Bed"), NINE, GRID).report.notes == ()


def test_a_sleeve_deeper_than_half_its_quilt_is_judged_by_its_depth(tmp_path):
    """20 in wide and 10 in deep: the strip of 19 by 20 1/2 in has its depth on its longer side."""
    said = "k0: {block: nine, columns: 2, rows: 2, block_size: 10 in, title: Mini, sleeve: 10 in}"
    assert not {"P849", "G210"} & {code for code, _ in found(tmp_path, said, GRID + LAYERS)}

"""Colour measures against published figures.

Sources: Sharma, Wu, Dalal, Color Research & Application 30(1):21-30, 2005, supplementary
test data; W3C working group consensus of 27 Oct 2016 on threshold colours as quoted by
D. MacDonald; WCAG 2.0 contrast formula.
"""

from pathlib import Path

import pytest
from coloraide import Color

from publish import colour

PAIRS = Path(__file__).parent / "data" / "ciede2000.csv"
SHARMA = [
    [float(cell) for cell in line.split(",")]
    for line in PAIRS.read_text(encoding="utf-8").splitlines()
    if not line.startswith("#")
]


def test_all_pairs_are_here():
    assert len(SHARMA) == 34


@pytest.mark.parametrize("row", SHARMA)
def test_the_library_reproduces_the_published_pairs(row):
    first, second = Color("lab-d65", row[0:3]), Color("lab-d65", row[3:6])
    assert first.delta_e(second, method="2000") == pytest.approx(row[6], abs=1e-4)
    assert second.delta_e(first, method="2000") == pytest.approx(row[6], abs=1e-4)


# W3C working group threshold colours (D. MacDonald, 2016): #777777 is 4.48 and fails AA,
# #595959 is 7.00; black on white is the maximum, 21 (WCAG 2.0).
@pytest.mark.parametrize(
    ("grey", "ratio"), [("#777777", 4.48), ("#595959", 7.0), ("#000000", 21.0)]
)
def test_contrast_against_white(grey, ratio):
    assert colour.contrast(grey, "#ffffff") == pytest.approx(ratio, abs=0.005)


def test_ink_reads_on_both_ends():
    assert colour.ink_on("#ffffff") == "#2b2a28"
    assert colour.ink_on("#1a1a1a") == "#ffffff"


def test_only_a_paler_fabric_is_shown_through():
    pale, dark = "#f0e9d9", "#2f6152"
    seen, change = colour.show_through(pale, dark)
    assert colour.lightness(dark) < colour.lightness(seen) < colour.lightness(pale)
    assert change > 1
    assert colour.show_through(dark, pale) == (dark, 0.0)


def test_vision_previews_keep_greys_and_merge_red_with_green():
    for vision in colour.VISIONS:
        assert colour.difference(colour.seen_by("#808080", vision), "#808080") < 1
    red, green = "#b04a3a", "#6f7f2e"
    for vision in ("protan", "deutan"):
        merged = colour.difference(colour.seen_by(red, vision), colour.seen_by(green, vision))
        assert merged < colour.difference(red, green) / 2


def test_a_lightness_step_looks_at_lightness_alone():
    """CIEDE2000 of greys (Sharma and others, 2005): chroma and hue take no part."""
    assert colour.lightness_step("#b04a3a", colour.grey("#b04a3a")).value < 0.5
    black_and_white = colour.lightness_step("#000000", "#ffffff")
    assert black_and_white.value == pytest.approx(100, abs=0.1)
    assert not black_and_white.close
    assert colour.lightness_step("#777777", "#7f7f7f").close

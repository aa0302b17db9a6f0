"""How two triangles are trimmed where the seam round a pillow is wider than the others.

The unit keeps its seam on the corners of the finished square. A 2 in finished square with a 1/4 in
seam inside and 1/2 in outside has its seam 1/4 in beside the cut corners that have the wider
allowance (worked by hand, no source).
"""

import pytest

from space import rules_sewn
from space.case import case

PILLOW = 8
"""A pillow of three by three blocks of 6 in without a border, in the walk."""
FRAMED = 239
"""A pillow whose blocks lie inside a border."""
METRIC_FOUNDATION = 32


def steps(seed, key="piecing"):
    return {
        line.key: line.text
        for line in case(seed).lines
        if line.section.startswith(key) and line.kind == "text"
    }


@pytest.mark.parametrize(
    ("step", "told"),
    [
        ("piecing-unit-1", "so that both short sides of **B** measure 2 1/2 in (6.4 cm)"),
        ("piecing-unit-3", "as you trimmed unit 1"),
        ("piecing-unit-8", "so that the seam ends in two corners"),
    ],
)
def test_the_seam_lies_where_the_outer_allowance_lets_it(step, told):
    assert told in steps(PILLOW)[step]


def test_blocks_inside_a_border_end_in_two_corners():
    assert "so that the seam ends in two corners" in steps(FRAMED)["piecing-unit-1"]


def test_rule_finds_a_seam_in_the_wrong_corners(monkeypatch):
    made = case(PILLOW)
    assert not list(rules_sewn.half_squares_are_trimmed_on_their_seam(made))
    wrong = {**made.sizes["pillow"]}
    wrong["pieces"] = [{**p, "width": "3"} if p["letter"] == "B" else p for p in wrong["pieces"]]
    monkeypatch.setattr(type(made), "sizes", {"pillow": wrong})
    assert list(rules_sewn.half_squares_are_trimmed_on_their_seam(made))


def test_the_first_patch_of_a_foundation_reaches_past_by_the_seam():
    """What lies beyond a sewing line is trimmed to the seam: less than that cannot be."""
    told = steps(METRIC_FOUNDATION, "foundation")["foundation-place"]
    assert "at least 7.5 mm past its lines" in told

"""The demos and 200 random patterns, reckoned a second time from the rules of the trade.

The rules and their sources stand in `trade.py`; where none is named they are geometry or
common practice, no source.
"""

import pytest
import yaml
from helpers import PROJECTS

from independent import patterns, reckoning, trade

DEMOS = ("samphire", "towpath", "millrace", "heronry")
QUICK = patterns.SEEDS[:10]


@pytest.mark.parametrize("demo", DEMOS)
def test_demo_agrees(demo, numbers_of):
    path = PROJECTS / demo / "pattern.yaml"
    pattern = yaml.safe_load(path.read_text(encoding="utf-8"))
    numbers = numbers_of(demo)
    assert reckoning.differences(pattern, numbers) == []


METRIC_DEFAULTS = {
    "sewing": {"seam": "7.5 mm", "motif_margin": "4 cm", "ground_margin": "2.5 cm"},
    "backing": {"overhang": "10 cm"},
    "batting": {"overhang": "8 cm"},
    "binding": {"width": "6 cm", "allowance": "25 cm"},
}
"""What a pattern in centimetres leaves out, as the reference says."""
METRIC_PILLOW = {"overlap": "10 cm", "hem": "2.5 cm", "seam": "1.5 cm"}


def test_metric_demo_agrees(numbers_of):
    path = PROJECTS / "lantern" / "pattern.yaml"
    pattern = yaml.safe_load(path.read_text(encoding="utf-8"))
    for name, usual in METRIC_DEFAULTS.items():
        pattern[name] = {**usual, **pattern.get(name, {})}
    for size in pattern["sizes"].values():
        if "pillow" in size:
            size["pillow"] = {**METRIC_PILLOW, **size["pillow"]}
    numbers = numbers_of("lantern")
    assert numbers["units"] == "metric"
    assert reckoning.differences(pattern, numbers) == []


def agree(seed, numbers_of):
    pattern = patterns.pattern(seed)
    found = reckoning.differences(pattern, numbers_of(pattern))
    assert not found, "\n".join([*found, yaml.safe_dump(pattern, sort_keys=False)])


@pytest.mark.parametrize("seed", QUICK)
def test_random_pattern_agrees(seed, numbers_of):
    agree(seed, numbers_of)


@pytest.mark.thorough
@pytest.mark.parametrize("seed", patterns.SEEDS[10:])
def test_every_random_pattern_agrees(seed, numbers_of):
    agree(seed, numbers_of)


@pytest.mark.parametrize(
    ("rule", "given", "published"),
    [
        (trade.rectangle, (3, 0.25), 3.5),
        (trade.once_cut, (3, 0.25), 3.875),
        (trade.once_cut, (2, 0.25), 2.875),
        (trade.twice_cut, (3, 0.25), 4.25),
        (trade.side_triangle, (6, 0.25), 9.75),
        (trade.side_triangle, (9, 0.25), 14),
        (trade.side_triangle, (12, 0.25), 18.25),
        (trade.side_triangle, (15, 0.25), 22.5),
        (trade.corner_triangle, (6, 0.25), 5.125),
        (trade.corner_triangle, (9, 0.25), 7.25),
        (trade.corner_triangle, (12, 0.25), 9.375),
        (trade.corner_triangle, (15, 0.25), 11.5),
        (trade.envelope_back, (18, 4, 1), 12),
    ],
)
def test_rule_gives_what_is_published(rule, given, published):
    """The worked examples that stand beside each rule in `trade.py`."""
    assert trade.rounded_up(rule(*given), published)


def test_geese_give_what_is_published():
    """8x4: 9 1/4, 4 7/8; 6x3: 7 1/4, 3 7/8; 4x2: 5 1/4, 2 7/8 (Beverly's page, grade C)."""
    for size, published in {
        (8, 4): (9.25, 4.875),
        (6, 3): (7.25, 3.875),
        (4, 2): (5.25, 2.875),
    }.items():
        exact = trade.geese_at_once(*size, 0.25)
        assert all(trade.rounded_up(a, b) for a, b in zip(exact, published, strict=True))


def test_counts_on_point_are_the_published_ones():
    assert trade.on_point_counts(4, 4) == (9, 12, 4)


def test_binding_strips_are_the_published_ones():
    """180 / 40 -> 5; 238 / 42 -> 6, joins and all (grade C)."""
    assert trade.straight_binding(180, 2, 40) == 5
    assert trade.straight_binding(238, 2, 42) == 6

"""How lengths are rounded and told where inches lead and where centimetres do.

1 in = 2.54 cm exactly: international yard and pound agreement, 1959.
"""

from fractions import Fraction

import pytest

from publish.cut.classify import once_cut, twice_cut
from publish.measures import CM, INCHES, MM, UNITS, Measures
from publish.model.book import A4, A5
from publish.model.cloth import METRIC_FAT_QUARTER
from publish.surd import ROOT_2
from publish.units import parse_length
from publish.words.lengths import Lengths

METRIC, METRIC_FIRST, ONLY_INCHES = (Measures(units) for units in ("metric", UNITS[3], "inches"))


def cm(text: str) -> Fraction:
    return parse_length(f"{text} cm")


@pytest.mark.parametrize(
    ("measures", "length", "said"),
    [
        (INCHES, "18 1/2 in", "18 1/2 in (47.0 cm)"),
        (ONLY_INCHES, "18 1/2 in", "18 1/2 in"),
        (METRIC, "26.5 cm", "26.5 cm"),
        (METRIC, "50 cm", "50 cm"),
        (METRIC, "7.5 mm", "7.5 mm"),
        (METRIC, "3.25 cm", "3.25 cm"),
        (METRIC, "18 1/2 in", "about 47 cm"),  # 46.99 cm
        (METRIC_FIRST, "25.4 cm", "25.4 cm (10 in)"),
        (METRIC_FIRST, "26.5 cm", "26.5 cm (about 10 7/16 in)"),  # 10.4331 in
    ],
)
def test_a_length_is_told_as_its_makers_measure(measures: Measures, length: str, said: str) -> None:
    assert Lengths(measures).measure(parse_length(length)) == said


def test_a_length_on_the_diagonal_is_told_to_the_millimetre() -> None:
    # 30 cm x √2 = 42.426 cm
    assert Lengths(METRIC).measure(cm("30") * ROOT_2) == "about 42.4 cm"


def test_purchases_and_runs_are_in_metres() -> None:
    assert Lengths(METRIC).to_buy(Fraction(54), cm("130")) == "1.30 m"
    assert Lengths(METRIC).to_buy(Fraction(54), cm("60")) == "60 cm"
    assert Lengths(METRIC_FIRST).to_buy(Fraction(54), cm("130")) == "1.30 m (1 1/2 yd)"
    assert Lengths(METRIC).thread(Fraction(40)) == "2 m"  # 40 in = 1.016 m
    assert Lengths(METRIC).run(90.0) == "2.3 m"  # 2.286 m


def test_cut_sizes_are_rounded_up_to_whole_millimetres() -> None:
    assert METRIC.up(cm("25.75")) == cm("25.8")
    assert METRIC.up(cm("25.7")) == cm("25.7")
    assert METRIC.rough_up(cm("25.7")) == cm("26")


def test_extras_of_quick_methods_follow_from_the_metric_seam() -> None:
    """A square cut once is larger by (2 + √2) seams, one cut twice by (2 + 2√2).

    With 7.5 mm that is 25.6 and 36.2 mm. A published metric rule for four flying geese of
    10 x 5 cm says 13.5 and 7.5 cm (weednstitch blog, Metric flying geese, 2012), which its own
    geometry shows to be 1.2 and 0.6 mm short.
    """
    seam = parse_length("7.5 mm")
    assert METRIC.up(once_cut(cm("5"), seam)) == cm("7.6")
    assert METRIC.up(twice_cut(cm("10"), seam)) == cm("13.7")


@pytest.mark.parametrize(
    ("inches", "metric"),
    [("1/16", "2 mm"), ("1/4", "6 mm"), ("1/2", "15 mm"), ("1", "25 mm"), ("4", "10 cm")],
)
def test_figures_of_the_trade_are_round(inches: str, metric: str) -> None:
    length = parse_length(f"{inches} in")
    assert METRIC.usual(length) == parse_length(metric)
    assert INCHES.usual(length) == length


def test_papers_are_those_of_iso_216() -> None:
    assert (A4.width * 25.4, A4.height * 25.4) == pytest.approx((210, 297))
    assert (A5.width * 25.4, A5.height * 25.4) == pytest.approx((148, 210))


def test_a_metric_fat_quarter() -> None:
    """50 x 55 cm: lonesockproductions blog, Cot quilt with metric maths, 2010."""
    assert (METRIC_FAT_QUARTER.length, METRIC_FAT_QUARTER.width) == (50 * CM, 55 * CM)


def test_check_squares_are_on_the_ruler_that_is_used() -> None:
    assert METRIC.checks == (25 * MM, 5 * CM)
    assert METRIC_FIRST.checks == INCHES.checks == (1, 5 * CM)

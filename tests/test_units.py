"""Lengths: parsed, printed, rounded, converted, exactly.

Published sources: 1 yd = 0.9144 m exactly and 1 in = 2.54 cm exactly (international
yard and pound agreement, 1959; tilkkunen.com fabric-size note); fractions of a yard in
inches from Scissortail Quilting, Convert fabric measurements, and Catbird Quilts blog,
Fraction conversions, 2014; a seam of 2.5 mm stitches has 10.16 to the inch,
melgeecrafts.com.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from publish import units
from publish.surd import ROOT_2

F = Fraction

eighths = st.integers(0, 8000).map(lambda n: F(n, 8))
fractions = st.fractions(min_value=0, max_value=1000, max_denominator=64)
on_rulers = st.integers(0, 64_000).map(lambda n: Fraction(n, 64))


@pytest.mark.parametrize(
    ("yards", "inches"),
    [("1/8", "4.5"), ("1/4", "9"), ("1/3", "12"), ("3/8", "13.5"), ("1/2", "18"), ("3/4", "27")],
)
def test_published_fractions_of_a_yard(yards, inches):
    assert units.parse_length(f"{yards} yd") == F(inches)
    assert units.yards_text(F(inches)) == f"{yards} yd"


def test_published_definitions():
    assert units.parse_length("1 yd") == units.parse_length("0.9144 m")
    assert units.parse_length("1 in") == units.parse_length("2.54 cm")
    assert units.parse_length("1 in") == units.parse_length("25.4 mm")
    assert units.parse_length("1 ft") * 3 == units.parse_length("1 yd")
    assert units.parse_length("1 in") / units.parse_length("2.5 mm") == F("10.16")
    assert units.to_mm(F(1)) == F("25.4")


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("2", F(2)),
        ("2.5", F(5, 2)),
        (".5", F(1, 2)),
        ("5/2", F(5, 2)),
        ("2 1/2", F(5, 2)),
        ("2-1/2", F(5, 2)),
        ("2½", F(5, 2)),
        ("2 ½", F(5, 2)),
        ("½", F(1, 2)),
        (" 2 1/2 ", F(5, 2)),
        ("2 1⁄2", F(5, 2)),
        ("⅓", F(1, 3)),
        ("1⅞", F(15, 8)),
        ("0", F(0)),
        ("2  1/2", F(5, 2)),
    ],
)
def test_numbers_as_makers_write_them(text, value):
    assert units.parse_number(text) == value


@pytest.mark.parametrize(
    "text",
    [
        "",
        " ",
        "two",
        "1:30",
        "1,5",
        "2 1/0",
        "1/2/3",
        "½2",
        "½½",
        "1½5",
        "-2",
        "+2",
        "2 1/2 1/2",
        "1e3",
        "2..5",
        "2.5.1",
        "0x10",
        "nan",
        "inf",
        "1_000",
        "2.1/2",
        "1/2.5",
        "\n",
        "½ 2",
    ],
)
def test_what_is_no_number(text):
    with pytest.raises(ValueError, match=r"is not a number|divides by zero"):
        units.parse_number(text)


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("2 1/2 in", F(5, 2)),
        ('2½"', F(5, 2)),
        ("2½in", F(5, 2)),
        ("½in", F(1, 2)),
        ("2½ Inches", F(5, 2)),
        ("2 in.", F(2)),
        ("1′", F(12)),
        ("1 foot", F(12)),
        ("3 feet", F(36)),
        ("1/4 yd", F(9)),
        ("2 yards", F(72)),
        ("6.5 cm", F("6.5") / F("2.54")),
        ("1 m", F(5000, 127)),
        ("1 metre", F(5000, 127)),
        ("2\n1/2\tin", F(5, 2)),
        ("10 mm", F(50, 127)),
        ("3″", F(3)),
    ],
)
def test_lengths_as_makers_write_them(text, inches):
    assert units.parse_length(text) == inches


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("2 1/2", "the unit is missing"),
        ("", "the unit is missing"),
        ("2½", "the unit is missing"),
        ("2 kg", "'kg' is not a unit of length"),
        ("2 inchs", "'inchs' is not a unit of length"),
        ("in", "is not a number"),
        ("two in", "is not a number"),
        ("-2 in", "is not a number"),
        ("2 in in", "is not a number"),
        ("1/0 in", "divides by zero"),
        ("16 x 16 in", "is not a number"),
    ],
)
def test_a_length_that_is_none_says_why(text, reason):
    with pytest.raises(ValueError, match=reason):
        units.parse_length(text)


@given(on_rulers)
def test_what_is_printed_is_read_back(value):
    assert units.parse_number(units.fraction_text(value)) == value
    assert units.parse_length(units.inches_text(value)) == value
    assert units.parse_length(units.yards_text(value)) == value


@given(fractions, st.integers(0, 4))
def test_a_decimal_is_within_half_its_last_place(value, places):
    printed = units.decimal_text(value, places)
    assert abs(F(printed) - value) <= F(1, 2 * 10**places)
    assert len(printed.partition(".")[2]) == places


@given(fractions, st.sampled_from(["in", "ft", "yd", "mm", "cm", "m"]))
def test_units_are_exact(value, unit):
    length = units.parse_length(f"{units.fraction_text(value)} {unit}")
    assert length == value * units.UNITS[unit]


@given(
    st.fractions(-100, 100, max_denominator=640), st.sampled_from([F(1, 8), F(1, 4), F(9, 2), F(1)])
)
def test_rounding_goes_to_the_nearest_step_on_its_side(value, step):
    up, down, near = (f(value, step) for f in (units.round_up, units.round_down, units.round_near))
    assert {up % step, down % step, near % step} == {0}
    assert value <= up < value + step
    assert value - step < down <= value
    assert abs(near - value) <= step / 2
    assert near in (up, down)


@given(eighths)
def test_a_multiple_of_an_eighth_is_left_alone(value):
    assert units.round_up(value) == units.round_down(value) == units.round_near(value) == value


def test_halves_round_up():
    assert units.round_near(F(1, 16)) == F(1, 8)
    assert units.decimal_text(F(1, 20), 1) == "0.1"
    assert units.decimal_text(F(5, 2), 0) == "3"


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (F(0), "0"),
        (F(4), "4"),
        (F(3, 8), "3/8"),
        (F(5, 2), "2 1/2"),
        (F(-1, 8), "-1/8"),
        (F(-5, 2), "-2 1/2"),
        (F(10, 3), "3 1/3"),
    ],
)
def test_fractions_as_makers_write_them(value, text):
    assert units.fraction_text(value) == text


def test_lengths_are_printed_in_each_unit():
    assert units.inches_text(F(5, 2)) == "2 1/2 in"
    assert units.cm_text(F(5, 2)) == "6.4 cm"  # 6.35 cm
    assert units.mm_text(F(1, 4)) == "6 mm"  # 6.35 mm
    assert units.mm_text(F(1, 8)) == "3.2 mm"  # 3.175 mm
    assert units.mm_text(F(1)) == "25 mm"
    assert units.yards_text(F(99, 2)) == "1 3/8 yd"
    assert units.metres_text(F(36)) == "0.91 m"
    assert units.decimal_text(F(-1, 3), 2) == "-0.33"


def test_the_spellings_of_a_unit():
    for word in units.UNIT_WORDS:
        assert units.parse_length(f"1 {word}") == units.parse_length(f"1{word.upper()}")
        assert units.split_unit(f"2½ {word}")[1] in units.UNITS


@pytest.mark.parametrize(
    ("side", "inches"),
    [(6, F(17, 2)), (5, F(57, 8)), (12, F(17)), (15, F(85, 4))],
)
def test_a_diagonal_is_read_to_the_nearest_eighth(side, inches):
    # Published: the diagonal of a 6 in block is called 8 1/2 in, Moonlight Quilters (guild),
    # Tip: on-point settings. The others are side x 1.4142 rounded by hand.
    assert units.maker_inches(side * ROOT_2) == inches
    assert units.inches_text(side * ROOT_2) == units.inches_text(inches)


@given(on_rulers)
def test_a_length_without_a_root_is_read_as_it_is(value):
    assert units.maker_inches(value) == value


@given(st.integers(0, 5000))
def test_millimetres_are_read_to_the_nearest_sixteenth(millimetres):
    value = Fraction(millimetres * 10, 254)
    read = units.maker_inches(value)
    assert read.denominator in (1, 2, 4, 8, 16)
    assert abs(read - value) <= Fraction(1, 32)


def test_a_diagonal_in_each_unit():
    assert units.cm_text(10 * ROOT_2) == "35.9 cm"  # 35.921 cm
    assert units.mm_text(ROOT_2 / 8) == "4.5 mm"  # 4.490 mm
    assert units.metres_text(60 * ROOT_2) == "2.16 m"  # 2.1553 m
    assert units.decimal_text(-ROOT_2, 3) == "-1.414"

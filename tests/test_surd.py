"""Numbers a + b√2: exact, in order, and fractions again where the root drops out.

Published sources: an eight-pointed star's block is 3.41 times the side of its diamonds
(exactly 2 + √2), Karen Combs Studio, Formulas for Quilters, 2002; the seams of
half-square and quarter-square triangles add 7/8 and 1 1/4 in (exactly (2 + √2)/4 and
(2 + 2√2)/4 in for seams of 1/4 in), North Hampshire Quilters, block notes hblk402b.
Decimal arithmetic to 60 places is the standard library's (General Decimal Arithmetic).
"""

import math
from decimal import Decimal, getcontext
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from publish import units
from publish.surd import ROOT_2, Surd, exact, floor, parts, root

F = Fraction
getcontext().prec = 80

fractions = st.fractions(-1000, 1000, max_denominator=64)
surds = st.builds(Surd, fractions, fractions)
numbers = fractions | surds
TINY = Decimal(10) ** -55


def decimal(value):
    """Return a number to 60 places or more."""
    a, b = parts(value)
    below = [Decimal(x.numerator) / Decimal(x.denominator) for x in (a, b)]
    return below[0] + below[1] * Decimal(2).sqrt()


def near(value, expected):
    return abs(decimal(value) - expected) <= TINY * max(1, abs(expected))


def test_published_multiples():
    assert units.decimal_text(2 + ROOT_2, 2) == "3.41"
    assert units.round_up((2 + ROOT_2) / 4) == F(7, 8)
    assert units.round_up((2 + 2 * ROOT_2) / 4) == F(5, 4)


def test_the_diagonal_of_a_square():
    assert ROOT_2 * ROOT_2 == 2
    assert isinstance(ROOT_2 * ROOT_2, Fraction)
    assert float(ROOT_2) == math.sqrt(2)
    assert str(3 - 2 * ROOT_2) == "3 - 2√2"
    assert [str(x) for x in (ROOT_2, -ROOT_2, F(1, 2) + ROOT_2 / 4)] == ["√2", "-√2", "1/2 + 1/4√2"]


@given(numbers, numbers)
def test_arithmetic_agrees_with_decimals(one, two):
    assert near(one + two, decimal(one) + decimal(two))
    assert near(one - two, decimal(one) - decimal(two))
    assert near(one * two, decimal(one) * decimal(two))
    assume(two != 0)
    assert near(one / two * two, decimal(one))
    assert one / two * two == one


@given(surds, st.integers(-50, 50))
def test_whole_numbers_mix_in(one, whole):
    assert one + whole == whole + one == one + F(whole)
    assert one - whole == -(whole - one) == one - F(whole)
    assert one * whole == whole * one == one * F(whole)
    assume(whole and one)
    assert one / whole == one / F(whole)
    assert (whole / one) * one == whole


@given(numbers, numbers)
def test_order_agrees_with_decimals(one, two):
    below = decimal(one) < decimal(two) and one != two
    assert (one < two) == below == (two > one)
    assert (one <= two) == (below or one == two) == (two >= one)
    assert max(one, two) in (one, two)
    assert max(one, two) >= min(one, two)


@given(numbers, fractions.filter(bool) | surds.filter(bool))
def test_floor_division_leaves_less_than_the_divisor(one, two):
    count, rest = one // two, one % two
    assert isinstance(count, int)
    assert count * two + rest == one
    assert 0 <= rest < two if two > 0 else two < rest <= 0
    assert divmod(one, two) == (count, rest)


@given(numbers)
def test_floor_and_ceiling(one):
    assert floor(one) <= one < floor(one) + 1
    assert floor(one) == math.floor(decimal(one)) == math.floor(one)
    assert math.ceil(one) == -floor(-one)
    assert abs(one) == max(one, -one)


@given(fractions, fractions)
def test_without_a_root_it_is_a_fraction(a, b):
    assert Surd(a, F(0)) == a == exact(a)
    assert hash(Surd(a, F(0))) == hash(a)
    assert isinstance(exact(a, b), Surd) == (b != 0)
    assert isinstance(Surd(a, b) - Surd(F(0), b), Fraction)
    assert isinstance(Surd(a, b) * Surd(a, -b), Fraction)
    assert {Surd(a, F(0)), a} == {a}
    assert (Surd(a, b) == a) == (b == 0)
    assert bool(Surd(a, b)) == bool(a or b)


@given(surds)
def test_equal_numbers_have_equal_hashes(one):
    other = one + 1 - 1
    assert other == one
    assert hash(other) == hash(one)
    assert len({one, other}) == 1
    assert one != "a number"


@given(surds)
def test_floats_are_near(one):
    expected = float(decimal(one))
    assert abs(float(one) - expected) <= 8 * math.ulp(expected)


def test_floats_survive_cancelling():
    small = Surd(F(-1393), F(985))  # 985√2 - 1393 is about 0.000359
    assert float(small) == pytest.approx(float(decimal(small)), rel=1e-15)
    assert small > 0


@given(st.fractions(0, 1000, max_denominator=50))
def test_roots(value):
    assert root(value * value) == value
    assert root(2 * value * value) == value * ROOT_2
    found = root(value)
    assert found is None or found * found == value


def test_what_has_no_root_here():
    assert root(F(3)) is None
    assert root(F(-4)) is None


@pytest.mark.parametrize("divide", [lambda x: x / F(0), lambda x: x // 0, lambda x: x % F(0)])
def test_division_by_nothing(divide):
    with pytest.raises(ZeroDivisionError):
        divide(ROOT_2)
    with pytest.raises(ZeroDivisionError):
        1 / Surd(F(0), F(0))


def test_floats_are_kept_out():
    for operation in (lambda: ROOT_2 + 0.5, lambda: 0.5 * ROOT_2, lambda: ROOT_2 < 0.5):
        with pytest.raises(TypeError):
            operation()


@given(numbers, st.sampled_from([F(1, 8), F(1, 4), F(9, 2), F(1)]))
def test_rounding_takes_them(one, step):
    up, down, near_ = (f(one, step) for f in (units.round_up, units.round_down, units.round_near))
    assert all(isinstance(x, Fraction) and x % step == 0 for x in (up, down, near_))
    assert one <= up < one + step
    assert one - step < down <= one
    assert abs(near_ - one) <= step / 2

"""The membrane: closed solutions from textbooks, and how fast the multigrid comes near them.

Sources: S. Timoshenko and J. N. Goodier, Theory of Elasticity, 3rd edition, McGraw-Hill
1970: the stretched membrane under even pressure (section 103); for the square the series
of section 109 and the greatest value 0.1473 q (2a)²/2 of its table, from memory; for the
disc (R² - r²) q/4, which follows from it by two integrations. On a springy bed: the strip
by cosh, the disc by the modified Bessel function I0 (M. Abramowitz and I. A. Stegun,
Handbook of Mathematical Functions, 9.6.1), which SciPy computes.
"""

from itertools import pairwise

import numpy as np
import pytest
from scipy import special

from publish.render.membrane import height, lack

Array = np.ndarray
FAST = 1e7
"""How firmly what is fixed is held in these tests."""


def square_series(x: float, y: float, terms: int = 60) -> float:
    """Return the height of a membrane over a unit square under unit pressure."""
    total = 0.0
    for m in range(1, 2 * terms, 2):
        for n in range(1, 2 * terms, 2):
            part = np.sin(m * np.pi * x) * np.sin(n * np.pi * y)
            total += 16 * part / (np.pi**4 * m * n * (m * m + n * n))
    return float(total)


def square(count: int, cycles: int = 12) -> Array:
    """Return the height over a unit square by `count` points each way inside its edge."""
    push = np.full((count, count), (1 / (count + 1)) ** 2)
    return height(push, np.zeros_like(push), cycles)


def test_a_square_under_even_pressure() -> None:
    found = square(63)
    assert found[31, 31] == pytest.approx(0.1473 / 2, rel=1e-3)  # Timoshenko's table
    for row, column in ((31, 31), (15, 31), (15, 15), (7, 47)):
        expected = square_series((column + 1) / 64, (row + 1) / 64)
        assert found[row, column] == pytest.approx(expected, rel=5e-3)


def test_the_square_comes_nearer_by_the_square_of_the_pixel() -> None:
    """The five-point formula is of second order: half the pixel, a quarter of the error."""
    exact = square_series(0.5, 0.5, 200)
    errors = [abs(square(n, 24)[n // 2, n // 2] - exact) for n in (31, 63, 127)]
    orders = [np.log2(a / b) for a, b in pairwise(errors)]
    assert orders == pytest.approx([2, 2], abs=0.1)


@pytest.mark.parametrize("bed", [0.0, 4.0, 60.0])
def test_a_strip(bed: float) -> None:
    """Between two lines at x = ±1: p (1 - x²)/2, and on a bed of stiffness k²
    p/k² (1 - cosh kx / cosh k)."""
    count = 63
    pixel = 2 / (count + 1)
    rows = 7 * count  # long enough for its middle to know nothing of the ends
    push = np.full((rows, count), pixel**2)
    found = height(push, np.full_like(push, bed * pixel**2), 10)[rows // 2]
    x = (np.arange(count) + 1) * pixel - 1
    k = np.sqrt(bed)
    exact = (1 - np.cosh(k * x) / np.cosh(k)) / bed if bed else (1 - x * x) / 2
    assert np.abs(found - exact).max() < 4e-3 * exact.max()


@pytest.mark.parametrize("bed", [0.0, 25.0])
def test_a_disc(bed: float) -> None:
    """Inside a circle of radius 1: p (1 - r²)/4, and on a bed p/k² (1 - I0(kr)/I0(k)).

    The circle is held by whole pixels, so that it is known to half of one.
    """
    count = 161
    pixel = 2.2 / count
    axis = (np.arange(count) - count // 2) * pixel
    r = np.hypot(axis[:, None], axis[None, :])
    push = np.full((count, count), pixel**2)
    found = height(push, np.where(r >= 1, FAST, bed * pixel**2), 14)
    inside = r < 0.97
    k = np.sqrt(bed)
    plain = (1 - r * r) / 4
    exact = (1 - special.i0(k * r) / special.i0(k)) / bed if bed else plain
    assert np.abs(found - exact)[inside].max() < 0.75 * pixel * float(0.5 if not bed else 0.2)
    middle = found[count // 2, count // 2]
    assert middle == pytest.approx(exact[count // 2, count // 2], rel=0.02)


def test_every_cycle_brings_it_nearer() -> None:
    """With lines across each other, held but not fixed, as quilting holds cloth."""
    held = np.zeros((130, 170))
    held[::25] = held[:, ::40] = 14.0
    push = np.full(held.shape, 1e-3)
    left = [np.abs(lack(height(push, held, n), push, held)).max() for n in (1, 3, 5, 7)]
    assert all(b < 0.5 * a for a, b in pairwise(left)), left


def test_what_picture_precision_is_enough_for() -> None:
    """One cycle in single precision, as pictures use, is within a tenth everywhere."""
    held = np.full((150, 150), 0.01, np.float32)
    held[::20] = 14.0
    push = np.full(held.shape, 1e-3, np.float32)
    exact = height(push.astype(np.float64), held.astype(np.float64), 12)
    found = height(push, held)
    assert found.dtype == np.float32
    assert np.abs(found - exact).max() < 0.1 * exact.max()

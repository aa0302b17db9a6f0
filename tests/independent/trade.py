"""The rules of the trade, as formulas on exact lengths.

Sources stand beside each; grade B is a book or magazine, C a guild handout, a teacher's
page or a forum. What has none is common practice or geometry.
"""

import re
from fractions import Fraction
from math import ceil, floor, sqrt

ROOT = sqrt(2)
EIGHTH = Fraction(1, 8)
INCHES = {"in": 1, "ft": 12, "yd": 36, "cm": Fraction(100, 254), "mm": Fraction(10, 254)}


def length(text):
    """Return inches from `2 1/2 in`, `2 1/2`, `12 cm`. 1 in is 25.4 mm exactly."""
    number, unit = re.fullmatch(r"([\d /.]+?)\s*(in|ft|yd|cm|mm)?", str(text).strip()).groups()
    return sum((Fraction(part) for part in number.split()), Fraction(0)) * INCHES[unit or "in"]


def value(text):
    """Return a length of numbers.json as a float: `2 1/2`, `5/2 + 36√2`, `12√2`."""
    total = 0.0
    for term in re.split(r"\s\+\s", text):
        plain, root, _ = term.partition("√")
        amount = float(sum(Fraction(p) for p in plain.split())) if plain else 1.0
        total += amount * (ROOT if root else 1)
    return total


def rectangle(finished, seam):
    """Cut = finished + 2 seams: 3 -> 3 1/2 (teaching handout, Lesson 1, grade C)."""
    return finished + 2 * seam


def fits_sheet(wide, high, seam):
    """Return whether a foundation with its seams goes on one sheet of Letter and of A4.

    Both leave 7 1/2 x 8 3/4 in beside margins, title and ruler: the project's own figure.
    """
    short, long = sorted((rectangle(wide, seam), rectangle(high, seam)))
    return short <= Fraction(15, 2) and long <= Fraction(35, 4)


def once_cut(leg, seam):
    """Square cut once on the diagonal, for two triangles with this leg.

    Finished + 7/8 at a 1/4 in seam: 3 -> 3 7/8 (North Hampshire Quilters, block notes
    hblk402b, grade C); exactly leg + (2 + √2) seam, geometry.
    """
    return float(leg) + (2 + ROOT) * float(seam)


def twice_cut(long_side, seam):
    """Square cut twice, for four triangles with this long side.

    Finished + 1 1/4 at a 1/4 in seam: 3 -> 4 1/4 (North Hampshire Quilters; Karen Combs
    Studio, Formulas for Quilters, 2002; both grade C); exactly + (2 + 2√2) seam, geometry.
    """
    return float(long_side) + (2 + 2 * ROOT) * float(seam)


def geese_at_once(wide, high, seam):
    """Large square and small square for four geese: width + 1 1/4, height + 7/8.

    6 x 3: 7 1/4 and 3 7/8 (Beverly's quilting page; livinginstitches blog, 2009; grade C).
    """
    return twice_cut(wide, seam), once_cut(high, seam)


def side_triangle(block, seam):
    """Square for four side triangles, geometry: the block's diagonal, cut twice.

    Handbooks say block x 1.414 + 1 1/4, a little more: 12 -> 18 1/4 (chart, grade C).
    """
    return twice_cut(float(block) * ROOT, seam)


def corner_triangle(block, seam):
    """Square for two corner triangles: block / √2, cut once.

    Handbooks say block / 1.414 + 7/8, a little more: 12 -> 9 3/8 (chart, grade C).
    """
    return once_cut(float(block) / ROOT, seam)


def on_point_counts(columns, rows):
    """Alternates, side triangles, corner triangles of a top on point.

    4 x 4: 9 alternates, 12 sides, 4 corners (Krista Moser, Quilt math made easy, grade C).
    """
    return (columns - 1) * (rows - 1), 2 * (columns - 1) + 2 * (rows - 1), 4


def straight_binding(needed, width, usable):
    """Strips = the least number that is long enough once joined (grade C: 180 / 40 -> 5).

    A join at 45 degrees takes one strip width of length (geometry, from memory).
    """
    strips = 1
    while strips * usable - (strips - 1) * width < needed:
        strips += 1
    return strips


def bias_from_square(side, width, seam):
    """Length that a square sewn into a tube gives, line by line (geometry, no source).

    The published bound without losses is side² / width: 20 in square, 2 in strip -> 200
    (soft-furnishing FAQ, grade C). Two seams are lost from the side; only whole lines count.
    """
    left = float(side) - 2 * float(seam)
    return floor(left / (ROOT * float(width)) + 1e-9) * left * ROOT


def envelope_back(form, overlap, hem):
    """Depth of each of two backs: half of form and overlap, and the hem.

    18 form: two of 18 x 12 (House on Hill Road blog, grade C).
    """
    return (form + overlap) / 2 + hem


def rounded_up(exact, told, more=0.0):
    """Return whether a cut size is the exact one, rounded up by less than an eighth.

    Up to the next 1/8 (on-point chart; Dalmeny Quilters; grade C). `more` is what a
    handbook's rule of thumb may add before that.
    """
    return -1e-9 <= float(told) - float(exact) < 0.125 + more


def eighths(exact):
    """Return a size rounded up to the next 1/8 in."""
    return Fraction(ceil(float(exact) * 8 - 1e-9), 8)

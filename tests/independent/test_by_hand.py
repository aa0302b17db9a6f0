"""Five tops worked out by hand: plain numbers, with the working beside them.

Seams 1/4 in; cut = finished + 1/2; a square for two triangles + 7/8, for four + 1 1/4, up
to the next 1/8 (grade C handbook rules, sources in `trade.py`).
"""

from fractions import Fraction

import pytest

from independent.trade import length, value

CLOTHS = {
    "oat": {"name": "Oat cloth", "colour": "#f4ecd8"},
    "fern": {"name": "Fern cloth", "colour": "#1f4a3a"},
    "madder": {"name": "Madder cloth", "colour": "#9a4038"},
}


def pattern(pieced, **size):
    made = {
        "title": "By hand",
        "fabrics": CLOTHS,
        "backing": {"fabric": "oat"},
        "binding": {"fabric": "fern"},
        "quilting": [{"area": "ground", "style": "grid", "spacing": "2 in"}],
    }
    blocks = {"one": pieced} if "traditional" in pieced else pieced
    return {**made, "blocks": blocks, "sizes": {"only": size}}


def traditional(name, *cloths, roles=("dark", "light")):
    return {"traditional": name, "fabrics": dict(zip(roles, cloths, strict=True))}


def cut(size):
    """Return how often each size of each cloth is cut: `{(cloth, width, length): count}`."""
    return {
        (p["fabric"], *sorted((length(p["width"]), length(p["length"])))): p["count"]
        for p in size["pieces"]
    }  # each size of a cloth is one letter in these tops


def measured(size, kind):
    """Return a unit's size on the table."""
    unit = next(u for u in size["units"] if u["kind"] == kind)
    return value(unit["before"]["width"]), value(unit["before"]["height"])


@pytest.fixture(scope="module")
def made(numbers_of):
    def of(pieced, **size):
        return numbers_of(pattern(pieced, **size))["sizes"]["only"]

    return of


def test_straight_bordered_top(made):
    """Four patch, 3 across and 4 down, 6 in, with a 2 in border of madder.

    Top 3 x 6 = 18 by 4 x 6 = 24; with the border 22 x 28, once round 100. Squares finish 3,
    cut 3 1/2; 12 blocks x 2 of each cloth = 24. Sides 2 1/2 x 24 1/2, ends 2 1/2 x 22 1/2.
    Binding 100 + 10 = 110: two strips of 40 give 77 3/4, three give 3 x 40 - 2 x 2 1/4 =
    115 1/2. Backing 22 + 8 = 30 by 28 + 8 = 36, one panel; batting 28 by 34.
    """
    size = made(
        traditional("four patch", "fern", "oat"),
        columns=3,
        rows=4,
        block_size="6 in",
        borders=[{"width": "2 in", "fabric": "madder"}],
    )
    assert cut(size) == {
        ("fern", Fraction(7, 2), Fraction(7, 2)): 24,
        ("oat", Fraction(7, 2), Fraction(7, 2)): 24,
        ("madder", Fraction(5, 2), Fraction(49, 2)): 2,
        ("madder", Fraction(5, 2), Fraction(45, 2)): 2,
        ("oat", Fraction(30), Fraction(36)): 1,
        ("fern", Fraction(9, 4), Fraction(40)): 3,
    }
    assert (size["perimeter"], size["binding"]["length"]) == ("100", "110")
    assert size["binding"]["joined_length"] == "115 1/2"
    assert (size["batting"]["width"], size["batting"]["height"]) == ("28", "34")
    assert measured(size, "centre") == (18.5, 24.5)
    assert measured(size, "top") == (22.5, 28.5)
    # 12 squares in a row need 42 in, 11 need 38 1/2: 24 are three strips of 3 1/2. Madder:
    # 22 1/2 across leaves 17 1/2, so the four borders are four strips of 2 1/2 in = 10 in.
    assert size["fabrics"]["madder"]["length"] == "10"
    assert size["fabrics"]["madder"]["buy_yards"] == "3/8"  # 10 + 1 = 11, of 4 1/2: three


def test_nine_patch_of_ten_inches(made):
    """Nine patch, 10 in, 2 x 2: a third of 10 is 3 1/3, + 1/2 = 3 5/6, up to 3 7/8.

    4 blocks: 5 dark and 4 light squares each. The block finishes 10, with seams 10 1/2.
    """
    size = made(traditional("nine patch", "fern", "oat"), columns=2, rows=2, block_size="10 in")
    assert cut(size)["fern", Fraction(31, 8), Fraction(31, 8)] == 20
    assert cut(size)["oat", Fraction(31, 8), Fraction(31, 8)] == 16
    assert measured(size, "block one") == (10.5, 10.5)
    assert measured(size, "top") == (20.5, 20.5)


def test_bordered_pillow(made):
    """A nine patch of 12 in, a 2 1/2 in border, for an 18 in form with a 1/2 in closing seam.

    Squares 4 + 1/2. The front finishes 12 + 5 = 17 and is sewn 18. A border strip has a 1/4 in
    seam inside and the 1/2 in seam outside: 2 1/2 + 3/4 = 3 1/4. Sides 12 1/2 long; ends
    17 + 2 x 1/2 = 18. Backs (18 + 4) / 2 + 1 = 12 by 18.
    """
    size = made(
        traditional("nine patch", "fern", "oat"),
        finish="pillow",
        block_size="12 in",
        borders=[{"width": "2 1/2 in", "fabric": "madder"}],
        pillow={"form": "18 in", "fabric": "fern"},
    )
    got = cut(size)
    assert got["fern", Fraction(9, 2), Fraction(9, 2)] == 5
    assert got["oat", Fraction(9, 2), Fraction(9, 2)] == 4
    assert got["madder", Fraction(13, 4), Fraction(25, 2)] == 2
    assert got["madder", Fraction(13, 4), Fraction(18)] == 2
    assert got["fern", Fraction(12), Fraction(18)] == 2
    assert measured(size, "top") == (18, 18)


def test_turned_log_cabin(made):
    """Log cabin, 7 in, 2 x 2, turned by quarters: a log an inch wide, so 1 1/2 cut.

    Round a square of 1: light logs 1, 2, 3, 4, 5, 6 and dark logs 2, 3, 4, 5, 6, 7 long,
    each + 1/2; one of each for each of four blocks, however a block is turned.
    """
    block = {
        "traditional": "log cabin",
        "fabrics": {"centre": "madder", "light": "oat", "dark": "fern"},
    }
    size = made(block, columns=2, rows=2, block_size="7 in", turns=[0, 90, 270, 180])
    got = cut(size)
    assert got["madder", Fraction(3, 2), Fraction(3, 2)] == 4
    for long in range(1, 7):
        assert got["oat", *sorted((Fraction(3, 2), Fraction(long) + Fraction(1, 2)))] == 4
    for long in range(2, 8):
        assert got["fern", Fraction(3, 2), Fraction(long) + Fraction(1, 2)] == 4
    assert measured(size, "top") == (14.5, 14.5)


def test_medallion(made):
    """A sawtooth star of 12 in, a 2 in border, and sixteen four patches of 4 in round it.

    Star: corners 3 + 1/2, four; goose 6 long: 6 + 1 1/4 = 7 1/4 in X, one square for four;
    points 3 + 7/8 = 3 7/8, four squares for eight; centre 6 1/2. Border: 12 1/2 and 16 1/2.
    Round: 16 / 4 = 4 along each side, + 4 corners = 20 blocks; squares 2 + 1/2, 40 of each
    cloth. Top 12 + 4 + 8 = 24.
    """
    blocks = {
        "star": traditional(
            "sawtooth star", "fern", "madder", "oat", roles=("star", "centre", "background")
        ),
        "small": traditional("four patch", "fern", "oat"),
    }
    rounds = [
        {"border": {"width": "2 in", "fabric": "madder"}},
        {"blocks": "small", "block_size": "4 in"},
    ]
    size = made(blocks, block="star", block_size="12 in", rounds=rounds)
    got = cut(size)
    assert got["oat", Fraction(7, 2), Fraction(7, 2)] == 4
    assert got["oat", Fraction(29, 4), Fraction(29, 4)] == 1
    assert got["fern", Fraction(31, 8), Fraction(31, 8)] == 4
    assert got["madder", Fraction(13, 2), Fraction(13, 2)] == 1
    assert got["madder", Fraction(5, 2), Fraction(25, 2)] == 2
    assert got["madder", Fraction(5, 2), Fraction(33, 2)] == 2
    assert got["fern", Fraction(5, 2), Fraction(5, 2)] == 40
    assert got["oat", Fraction(5, 2), Fraction(5, 2)] == 40
    assert size["finished"] == {"width": "24", "height": "24"}
    assert measured(size, "top") == (24.5, 24.5)

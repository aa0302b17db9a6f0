"""Yardage by a plan of its own: shelves filled first-fit, and the area as a lower bound.

In: the pieces of one fabric as `numbers.json` lists them, its usable width. Out: inches.
First-fit decreasing height, the textbook way to lay rectangles on a strip (Coffman, Garey,
Johnson, Tarjan, 1980; from memory): any planner worth its name needs no more.
"""

from fractions import Fraction

from independent.trade import length


def parts(size, fabric, seam):
    """Return the rectangles that are cut of a fabric: `(across, along, may turn)`."""
    found = []
    for piece in size["pieces"]:
        if piece["fabric"] != fabric:
            continue
        wide, long = length(piece["width"]), length(piece["length"])
        joined = piece["joined_from"]
        if joined > 1:
            one = (max(wide, long) + (joined - 1) * 2 * seam) / joined
            wide, long = one, min(wide, long)  # joined because they are cut across
        turns = piece["may_turn"]
        found += [(wide, long, turns)] * (piece["count"] * joined)
    return found


def area_bound(rectangles, usable):
    """Return the length below which no plan can be."""
    return sum((a * b for a, b, _ in rectangles), Fraction(0)) / usable


def first_fit(rectangles, usable, squaring=Fraction(0)):
    """Return the length of the better of two first-fit plans: long sides across, or along.

    `squaring` is lost for each strip.
    """
    return min(_shelves(rectangles, usable, across, squaring) for across in (True, False))


def _shelves(rectangles, usable, across, squaring):
    laid = []
    for wide, high, turns in rectangles:
        if turns and (wide < high) == across and max(wide, high) <= usable:
            wide, high = high, wide
        if turns and wide > usable:
            wide, high = high, wide
        laid.append((high, wide))
    shelves = []
    for high, wide in sorted(laid, reverse=True):
        shelf = next((s for s in shelves if s[1] + wide <= usable), None)
        if shelf is None:
            shelves.append([high, wide])
        else:
            shelf[1] += wide
    return sum((s[0] + squaring for s in shelves), Fraction(0))

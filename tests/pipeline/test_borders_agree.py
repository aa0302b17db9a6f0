"""What a border is cut to, measured, sewn and told at is one length everywhere.

Expected values are worked out here: a strip covers its finished length with a seam at both
ends, and at the edge of a pillow the seam is the pillow's own (common practice, no source).
"""

from fractions import Fraction
from itertools import accumulate, product

import pytest
from small import PLAIN, findings, prepared

from publish.deliver.numbers import numbers

F = Fraction
SEAM, CLOSING = F(1, 4), F(1, 2)
WIDTHS = (F(3, 2), F(4), F(5, 2))

HOW = [
    pytest.param(*how, marks=pytest.mark.thorough if how[1] == 2 else ())
    for how in product(("quilt", "pillow"), (1, 2, 3), ("butted", "mitred"))
]


def top(finish, count, corners):
    """Return a size of three by three 6 in blocks with borders of `WIDTHS`."""
    each = ", ".join(
        f"{{width: {float(w)} in, fabric: mist, corners: {corners}}}" for w in WIDTHS[:count]
    )
    cover = float(18 + 2 * sum(WIDTHS[:count]))
    pillow = f", pillow: {{form: {cover:g} in}}" if finish == "pillow" else ""
    return (
        f"one: {{finish: {finish}, block: plain, columns: 3, rows: 3, block_size: 6 in, "
        f"borders: [{each}]{pillow}}}"
    )


@pytest.mark.parametrize(("finish", "count", "corners"), HOW)
def test_a_border_has_one_length(tmp_path, finish, count, corners):
    work = prepared(tmp_path, top(finish, count, corners), PLAIN)
    assert [line for line in findings(work) if line[:3] in ("P81", "P82", "P84")] == []
    closing = CLOSING if finish == "pillow" else SEAM
    plan = work.plans["one"]
    outer = list(accumulate((2 * w for w in WIDTHS[:count]), initial=F(0)))
    told = numbers(work.pattern, work.sizes, work.drafts, work.plans)["sizes"]["one"]
    for number, width in enumerate(WIDTHS[:count], 1):
        beyond = closing if number == count else SEAM
        wide = 18 + outer[number]
        deep = width + SEAM + beyond
        side, end = (plan.piece(f"border {number} {part}") for part in ("side", "top"))
        if corners == "mitred":
            sides = {wide + 2 * beyond + width}, {wide + 2 * beyond + width}
        else:
            sides = {18 + outer[number - 1] + 2 * SEAM}, {wide + 2 * beyond}
        assert ({side.length}, {end.length}) == sides
        assert {side.width, end.width} == {deep}
        (unit,) = [
            u
            for u in told["units"]
            if u["name"] == ("top" if number == count else f"border {number}")
        ]
        assert unit["before"] == {
            "width": mixed(wide + 2 * beyond),
            "height": mixed(wide + 2 * beyond),
        }
    if finish == "pillow":
        assert plan.pillow.piece_length == 18 + outer[-1] + 2 * CLOSING


def mixed(value):
    """Return a length as numbers.json writes it."""
    whole, rest = divmod(value, 1)
    return f"{whole} {rest}" if rest and whole else str(rest or whole)

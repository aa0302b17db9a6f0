"""What a pattern asks for is done, or there is a finding that says why it is not.

Common practice, no source: flying geese are twice as long as wide; blocks of a checkerboard
alternate along rows and columns; pieces made several at once come out every way round.
"""

import pytest
import small
from small import HEAD, NINE, PLAIN, STAR, findings, prepared

from publish.model.block import Piecing

GEESE = "  goose: {traditional: flying geese, fabrics: {geese: fern, background: oat}}\n"


def pair(size):
    at = f"{{block: goose, at: [0, 0], size: {size}}}, {{block: goose, at: [0, 2], size: {size}}}"
    return f"{GEESE}  pair: {{grid: [4, 4], patches: [{at}]}}\n"


def codes(work):
    return [line.split()[0] for line in findings(work)]


def test_a_stretched_pair_of_geese_is_not_four_at_once(tmp_path):
    top = "a: {block: pair, columns: 2, rows: 2, block_size: 8 in}"
    work = prepared(tmp_path, top, pair("[4, 2]"), "piecing: {geese: four at once}\n")
    assert codes(work).count("R166") == 2
    assert codes(work).count("C406") == 1


@pytest.mark.parametrize("field", sorted(Piecing.__dataclass_fields__))
def test_every_method_that_makes_nothing_is_said(tmp_path, field):
    ways = {"corners": "flipped", "geese": "four at once", "strips": "strip sets"}
    asked = f"piecing: {{{field}: {ways.get(field, 'two at once')}}}\n"
    work = prepared(
        tmp_path, "a: {block: plain, columns: 2, rows: 2, block_size: 8 in}", PLAIN, asked
    )
    assert codes(work).count("C406") == 1


@pytest.mark.parametrize("directional", [True, False])
def test_a_print_with_a_direction_is_not_made_four_at_once_in_silence(
    tmp_path, monkeypatch, directional
):
    cloth = "name: Oat cloth, directional: true," if directional else "name: Oat cloth,"
    monkeypatch.setattr(small, "HEAD", HEAD.replace("name: Oat cloth,", cloth))
    top = "a: {block: star, columns: 2, rows: 2, block_size: 8 in}"
    work = prepared(tmp_path, top, STAR, "piecing: {geese: four at once}\n")
    assert codes(work).count("C407") == directional


@pytest.mark.parametrize(("columns", "rows"), [(1, 4), (2, 2), (3, 4), (4, 3)])
def test_alternate_blocks_of_a_straight_top_make_a_checkerboard(tmp_path, columns, rows):
    top = (
        f"a: {{block: nine, alternate: plain, columns: {columns}, rows: {rows}, block_size: 9 in}}"
    )
    work = prepared(tmp_path, top, NINE + PLAIN)
    assert work.sizes["a"].arrangement == tuple(
        tuple(("nine", "plain")[(row + column) % 2] for column in range(columns))
        for row in range(rows)
    )


def test_strips_sold_singly_are_counted_in_words(tmp_path, monkeypatch):
    sold = "name: Amber cloth, sold_as: {strips: 2 1/2 in},"
    monkeypatch.setattr(small, "HEAD", HEAD.replace("name: Amber cloth,", sold))
    blocks = NINE.replace("oat", "amber")
    cloth = "backing: {fabric: fern}, binding: {fabric: fern}"
    top = f"a: {{block: nine, columns: 4, rows: 4, block_size: 6 in, {cloth}}}"
    work = prepared(tmp_path, top, blocks)
    assert "P807" not in codes(work)

"""How columns are set: our own rules, common practice in print, no source."""

from __future__ import annotations

from publish.model.words import Row, Table
from publish.typeset.tables import columns

LONG = "26 in (66.0 cm) square; packaged as 34 in × 45 in, or cut from a wide roll"


def table(align: str, *rows: tuple[str, ...]) -> Table:
    return Table("t", "", ("A",) * len(rows[0]), tuple(Row(r) for r in rows), align)


def setting(align: str, *rows: tuple[str, ...]) -> str:
    """Return each column's side, in capitals where it is kept whole."""
    found = columns(table(align, *rows))
    return "".join(c.side.upper() if c.whole else c.side for c in found)


def test_short_columns_are_all_kept_whole() -> None:
    assert setting("lrr", ("Pale linen", "1 1/8 yd", "3 yd")) == "LRR"


def test_the_longest_column_wraps_when_there_is_no_room() -> None:
    size = "2 1/2 in × 56 1/2 in (6.4 cm × 143.5 cm)"
    assert setting("llrl", ("A", "long words " * 9, "2", size)) == "LlRL"


def test_a_column_of_long_cells_is_not_set_to_the_right() -> None:
    assert setting("lrr", ("Batting", LONG, LONG)) == "Lll"


def test_its_neighbours_follow_but_counts_stay_to_the_right() -> None:
    rows = ("Cotton", LONG, LONG, "18 in (45.7 cm)", "3")
    assert setting("lrrrr", rows) == "LllLR"


def test_marks_take_no_room_and_a_fraction_takes_one_letter() -> None:
    assert setting("ll", ("**" + "x" * 118 + "**", "1/16 in")) == "LL"
    assert setting("ll", ("x" * 119, "1/16 in")) == "lL"


def test_no_alignment_means_left() -> None:
    assert setting("", ("Word", "Meaning")) == "LL"

"""What a letter is called at several sizes. No source: a name must not say what is not so."""

from dataclasses import replace
from fractions import Fraction

from publish.cut.letters import Letters
from publish.cut.needs import Need, plain
from publish.words import english
from publish.words.values import Named


def strip(name: str, rank: str, width: int, place: int) -> Need:
    cut = Fraction(width), Fraction(10)
    made = Need(Named(name), "sashing", "oat", *cut, 2, plain(*cut, 2, False))
    return replace(
        made,
        serves=frozenset({("a", place)}),
        key=f"sashing {place}",
        rank=rank,
        sized=Named(f"strip, {width} in × 10 in"),
    )


def named(one, other):
    """Return letters and names at both sizes; the strip of place 1 comes first at each."""
    letters = Letters()
    letters.give({"one": one, "other": other})
    return [
        [(letter, english(need.called)) for letter, need in letters.of(key, needs)]
        for key, needs in (("one", one), ("other", other))
    ]


def test_rank_that_holds_at_every_size_is_said():
    one = [strip("large strip", "large", 4, 1), strip("small strip", "small", 2, 2)]
    assert named(one, one) == [[("A", "large strip"), ("B", "small strip")]] * 2


def test_rank_that_turns_round_gives_way_to_the_size():
    one = [strip("large strip", "large", 4, 1), strip("small strip", "small", 2, 2)]
    other = [strip("small strip", "small", 2, 1), strip("large strip", "large", 4, 2)]
    assert named(one, other) == [
        [("A", "strip, 4 in × 10 in"), ("B", "strip, 2 in × 10 in")],
        [("A", "strip, 2 in × 10 in"), ("B", "strip, 4 in × 10 in")],
    ]

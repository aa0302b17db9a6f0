"""The rules themselves: each finds the faults that it is for, and is silent on sound words.

The sentences are made up for the purpose, common practice of print, no source.
"""

from types import SimpleNamespace

import pytest

from space import rules_sewn, rules_words, told
from space.sewing import Sewn, _parts


def case(text, is_metric=False):
    line = told.Line("piecing", "text", "piecing-unit-1", text)
    return SimpleNamespace(lines=[line], own_words=set(), is_metric=is_metric)


FAULTS = {
    "nothing_counted": "Lay them out with the no side triangles along the edges.",
    "doubled_words": "Press the the seam flat.",
    "empty_ranges": "Sew the rows together, row 1 to row 1.",
    "plural_of_one": "Cut one strips 2 in deep.",
    "singular_of_many": "Take the two strip, and sew.",
    "articles": "Lay out an fern square.",
    "leaks": "Cut None strips.",
    "punctuation": "Press , and turn.",
    "sentences": "press the seam. then turn it",
    "fractions": "It measures 3 1/6 in × 4 in.",
    "metric": "It measures 3 in (7.9 cm).",
    "metric_alone": "It measures 3 in.",
    "by_turns": "Sew two blocks and two blocks, by turns, beginning with a block.",
    "one_alone": "Lay out one row of one block.",
    "lists": "Sew A and and B.",
}
SOUND = (
    "Cut one strip 2 1/2 in (6.4 cm) deep, and from it cut two **A**, 2 1/2 in (6.4 cm) square.",
    "Sew two blocks and one strip, by turns, beginning and ending with a block.",
    "Lay out an Oat cloth piece **A**, a unit and an eight-pointed star; row 1 to row 3 follow.",
    "Make 18. Press the seams to the left in row 1.",
)


@pytest.mark.parametrize("name", FAULTS)
def test_rule_finds_its_fault(name):
    assert list(getattr(rules_words, name)(case(FAULTS[name], name == "metric_alone")))


def test_every_rule_of_words_is_tried():
    assert {rule.__name__ for rule in rules_words.RULES} == set(FAULTS)


@pytest.mark.parametrize("text", SOUND)
def test_sound_words_pass(text):
    found = {r.__name__: list(r(case(text))) for r in rules_words.RULES}
    assert not any(found.values()), found


def test_an_article_before_a_name_is_found():
    assert list(rules_words.articles(case("First comes a Amber cloth border.")))


def test_metric_words_pass():
    text = "Press toward **H** in four and toward unit 11 in two: 7.5 mm, a needle of size 80/12."
    assert not list(rules_words.metric_alone(case(text, is_metric=True)))


def test_sides_are_read_in_either_system():
    """25.4 mm to the inch (ISO 31-1; NIST SP 811)."""
    assert told.boxes("9 cm × 65 mm, not 2 in square") == [
        (told.inches("2"), told.inches("2")),
        (told.Fraction(90) / told.Fraction("25.4"), told.Fraction(65) / told.Fraction("25.4")),
    ]


def test_parts_are_read_in_order():
    sewn = Sewn("piecing-unit-2")
    _parts(sewn, "unit 1, two of unit 3 and an Oat cloth piece **A**")
    assert sewn.order == ["1", "3", "3", "A"]


def test_lengths_on_the_diagonal_are_read():
    """12√2 is 16.97, and 5/2 + 36√2 is 53.41 (a calculator)."""
    assert told.inches("12√2") == pytest.approx(16.9706, abs=1e-4)
    assert told.inches("5/2 + 36√2") == pytest.approx(53.4117, abs=1e-4)


def test_parts_lie_level():
    assert rules_sewn._lie_level([(3, 2), (2, 3)], (3, 3), 0) is False
    assert rules_sewn._lie_level([(3, 2), (2, 3)], (4, 3), 0) is True

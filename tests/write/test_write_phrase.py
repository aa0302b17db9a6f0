"""Numbers, plurals, lists, articles and lengths in words."""

from __future__ import annotations

from fractions import Fraction

import pytest

from publish.words import language
from publish.words.en import phrase
from publish.words.lengths import Lengths, spools
from publish.words.values import Stitch


def test_counts_are_words_up_to_twelve() -> None:
    assert [phrase.number(n) for n in (0, 1, 9, 12, 13, 240)] == [
        "no",
        "one",
        "nine",
        "twelve",
        "13",
        "240",
    ]


@pytest.mark.parametrize(
    ("place", "word"),
    [
        (1, "first"),
        (8, "eighth"),
        (12, "twelfth"),
        (13, "13th"),
        (21, "21st"),
        (22, "22nd"),
        (23, "23rd"),
        (111, "111th"),
        (112, "112th"),
    ],
)
def test_ordinals(place: int, word: str) -> None:
    assert phrase.ordinal(place) == word


def test_nouns_agree_with_their_count() -> None:
    assert phrase.counted(1, "strip") == "one strip"
    assert phrase.counted(9, "square") == "nine squares"
    assert phrase.counted(13, "half block", "half blocks") == "13 half blocks"


def test_lists_have_one_and() -> None:
    assert phrase.listed([]) == ""
    assert phrase.listed(["a"]) == "a"
    assert phrase.listed(["a", "b"]) == "a and b"
    assert phrase.listed(["a", "b", "c"], "or") == "a, b or c"


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("block", "a block"),
        ("eighth", "an eighth"),
        ("8 in tail", "an 8 in tail"),
        ("18 in form", "an 18 in form"),
        ("11 in square", "an 11 in square"),
        ("1/8 in seam", "a 1/8 in seam"),
        ("1 1/2 in hem", "a 1 1/2 in hem"),
        ("80 in strip", "an 80 in strip"),
        ("110 in strip", "a 110 in strip"),
        ("uniform edge", "a uniform edge"),
        ("one-piece motif", "a one-piece motif"),
        ("hour", "an hour"),
        ("**Almond** piece", "an **Almond** piece"),
    ],
)
def test_articles_follow_the_sound(words: str, said: str) -> None:
    assert phrase.article(words) == said


def test_capitals_skip_marks() -> None:
    assert phrase.capital("**two** strips") == "**Two** strips"
    assert phrase.capital("1 strip") == "1 strip"
    assert phrase.capital("") == ""


# 1 in = 2.54 cm and 1 yd = 0.9144 m exactly (international yard and pound agreement, 1959;
# the yard is also given by tilkkunen.com, Meters, yards, inches and fat quarter).


@pytest.mark.parametrize(
    ("length", "said"),
    [
        (Fraction(37, 2), "18 1/2 in (47.0 cm)"),
        (Fraction(1, 4), "1/4 in (6 mm)"),
        (Fraction(1, 8), "1/8 in (3.2 mm)"),
        (Fraction(1), "1 in (2.5 cm)"),
        (Fraction(40), "40 in (101.6 cm)"),
        (Fraction(1, 2), "1/2 in (13 mm)"),
    ],
)
def test_a_length_is_inches_first(length: Fraction, said: str) -> None:
    assert Lengths().measure(length) == said


def test_a_rectangle_says_square_when_it_is_one() -> None:
    assert Lengths().rectangle(Fraction(12), Fraction(18)) == "12 in × 18 in (30.5 cm × 45.7 cm)"
    assert Lengths().rectangle(Fraction(18), Fraction(18)) == "18 in (45.7 cm) square"


def test_purchases_and_runs() -> None:
    assert Lengths().to_buy(Fraction(36), Fraction(1000, 254) * 9) == "1 yd (0.90 m)"
    assert Lengths().run(90.0) == "2 1/2 yd (2.3 m)"
    assert Lengths().run(1.0) == "1/4 yd (0.1 m)"


def test_thread_is_rounded_up_and_counted_in_spools() -> None:
    yard_and_a_bit = Fraction(36) + Fraction(1, 10)
    assert Lengths().thread(yard_and_a_bit) == "2 yd (1 m)"
    metre = 1000 / Fraction(254, 10)
    assert Lengths().thread(metre) == "2 yd (1 m)"
    assert Lengths().thread(metre + Fraction(1, 100)) == "2 yd (2 m)"
    assert [spools(metre * n, Fraction(200)) for n in (1, 200, 201, 400)] == [1, 1, 2, 2]


def test_stitch_lengths_read_like_a_machine_dial() -> None:
    assert language().value(Stitch(Fraction(25, 254))) == "2.5 mm"
    assert language().value(Stitch(Fraction(30, 254))) == "3 mm"

"""How fabrics are sold, widths of web and stabiliser: what a file may say of them.

Fat quarter 18 x 22 in: common practice, no source. Fat eighth, a quarter yard of half the
width, about 9 x 22 in: Meters, yards, inches and fat quarter, tilkkunen.com.
"""

from fractions import Fraction

import pytest
from helpers import changed, loaded, pattern

from publish import read
from publish.model.cloth import SoldAs

F = Fraction
LINEN = 'linen: {name: Pale linen, colour: "#f4efe6"'


def notes(tmp_path, text):
    return [(n.code, n.severity.value) for n in read.load(pattern(tmp_path, text))[1]]


def linen(tmp_path, sold, more=""):
    """Return the fabric of the smallest pattern, sold so."""
    text = changed(LINEN, f"{LINEN}{more}, sold_as: {sold}")
    return loaded(tmp_path, text).fabrics["linen"]


@pytest.mark.parametrize(
    ("sold", "wanted"),
    [
        ("yardage", None),
        ("fat quarter", SoldAs("fat quarter", F(22), F(18))),
        ("fat eighth", SoldAs("fat eighth", F(22), F(9))),
        ("{squares: 10 in, count: 42}", SoldAs("square", F(10), F(10), 42)),
        ("{squares: 5 in}", SoldAs("square", F(5), F(5), 1)),
        ("{strips: 2 1/2 in, count: 40}", SoldAs("strip", F(40), F(5, 2), 40)),
    ],
)
def test_how_a_fabric_is_sold(tmp_path, sold, wanted):
    assert linen(tmp_path, sold).sold_as == wanted


def test_strips_are_as_long_as_the_usable_width(tmp_path):
    found = linen(tmp_path, "{strips: 2 1/2 in}", ", usable_width: 42 in").sold_as
    assert (found.width, found.length) == (42, F(5, 2))


def test_a_colourway_is_sold_as_its_fabric_is(tmp_path):
    text = changed(LINEN, f"{LINEN}, sold_as: fat quarter").replace(
        "motifs:",
        "colourways:\n  dusk: {title: Dusk, swaps: [{fabric: linen, name: Night, "
        'colour: "#26343c"}]}\nmotifs:',
        1,
    )
    swapped = loaded(tmp_path, text).colourways["dusk"].fabrics["linen"]
    assert (swapped.name, swapped.sold_as.kind) == ("Night", "fat quarter")


@pytest.mark.parametrize(
    ("swaps", "codes"),
    [
        ("{fabric: linen, name: Deep moss}", ["R149"]),
        ("{fabric: linen, name: Deep moss}, {fabric: moss, name: Pale linen}", []),
        ("{fabric: linen, name: Night}, {fabric: moss, name: Night}", ["R149"]),
        ("{fabric: linen, name: Night}", []),
    ],
)
def test_two_fabrics_of_a_colourway_have_two_names(tmp_path, swaps, codes):
    swaps = swaps.replace("}", ', colour: "#26343c"}')
    ways = f"colourways:\n  dusk: {{title: Dusk, swaps: [{swaps}]}}\nmotifs:"
    text = changed(LINEN, LINEN).replace("motifs:", ways, 1)
    assert [c for c, _ in notes(tmp_path, text) if c == "R149"] == codes


@pytest.mark.parametrize(
    ("sold", "code"),
    [
        ("fat half", "R125"),
        ("{count: 42}", "R111"),
        ("{squares: 10 in, strips: 2 in}", "R140"),
        ("{squares: 10}", "R121"),
        ("{strips: 30 in}", "R123"),
        ("{squares: 10 in, count: 0}", "R124"),
        ("[10 in]", "R112"),
    ],
)
def test_faults_in_how_a_fabric_is_sold(tmp_path, sold, code):
    text = changed(LINEN, f"{LINEN}, sold_as: {sold}")
    assert notes(tmp_path, text) == [(code, "error")]


def test_a_length_at_hand_has_no_effect_on_fat_quarters(tmp_path):
    text = changed(LINEN, f"{LINEN}, owned: 1 yd, sold_as: fat quarter")
    assert notes(tmp_path, text) == [("R143", "warning")]


def test_widths_of_rolls_and_stabiliser(tmp_path):
    text = changed("folds: 8", "folds: 8, method: fusible, stabiliser: yes")
    found = loaded(tmp_path, text + "sewing: {web_width: 20 in, stabiliser_width: 12 in}\n")
    assert (found.sewing.web_width, found.sewing.stabiliser_width) == (20, 12)
    assert found.motifs["bulrush"].stabiliser


def test_needle_turn_needs_no_stabiliser(tmp_path):
    text = changed("folds: 8", "folds: 8, stabiliser: yes")
    assert notes(tmp_path, text) == [("R143", "warning")]

"""Alternative text says what the figure shows, with the figure's own numbers."""

import re

import pytest
from top_figures import BY_KEY, figure, texts
from top_plans import PLANS
from top_samples import PATTERN, SIZES

from publish.units import fraction_text, inches_text, yards_text

KEYS = sorted(BY_KEY)


@pytest.mark.parametrize("key", KEYS)
def test_it_is_one_paragraph_of_plain_sentences(key: str) -> None:
    alt = figure(key).alt
    assert 20 < len(alt) < 900 and alt.endswith(".")
    assert alt[0].isupper() or alt[0].isdigit()
    assert not re.search(r"[*_`<>\n]|  ", alt)
    assert f'aria-label="{alt}"' in figure(key).svg or "&" in alt or '"' in alt


@pytest.mark.parametrize("key", KEYS)
def test_it_writes_fractions_in_plain_digits(key: str) -> None:
    """A reader for the ear speaks `1 1/2`; raised digits are often skipped."""
    assert not re.search("[½¼¾⅛⅜⅝⅞⅓⅔⁄⁰-⁹₀-₉²³¹]", figure(key).alt)


@pytest.mark.parametrize("size", SIZES)
def test_the_quilt_gives_its_sizes_and_fabrics(size: str) -> None:
    alt, it = figure(f"quilt-{size}-no").alt, SIZES[size]
    assert it.title in alt
    assert f"{fraction_text(it.width)} × {fraction_text(it.height)} in" in alt
    assert inches_text(it.block_side) in alt and "8-fold" in alt and "Deep moss" in alt
    for border in it.borders:
        assert inches_text(border.width) in alt


@pytest.mark.parametrize(("size", "fabric"), [(s, f) for s, p in PLANS.items() for f in p.fabrics])
def test_a_layout_gives_every_cut(size: str, fabric: str) -> None:
    alt, plan = figure(f"cutting-layout-{size}-{fabric}").alt, PLANS[size].fabrics[fabric]
    assert PATTERN.fabrics[fabric].name in alt and yards_text(plan.buy) in alt
    assert inches_text(plan.usable_width) in alt
    for strip in plan.strips:
        assert f"{strip.count} strip" in alt and f"{inches_text(strip.depth)} deep" in alt
        for cut in strip.cuts:
            assert f"{cut.count} {cut.letter} of " in alt


@pytest.mark.parametrize(
    ("key", "numbers"),
    [
        ("sizes-", ["20 × 20 in", "17 × 17 in", "64 × 64 in"]),
        ("layers-mini", ["20 1/2 × 20 1/2 in", "26 × 26 in", "28 × 28 in"]),
        ("sandwich-throw", ["64 1/2 × 64 1/2 in", "70 × 70 in", "72 × 72 in", "4 in"]),
        ("trim-mini", ["17 1/2 × 17 1/2 in", "trim to 16 1/2 × 16 1/2 in"]),
        ("trim-pillow", ["trim to 18 × 18 in"]),
        ("crease-ground-mini-sprig", ["17 1/2 × 17 1/2 in"]),
        ("units-throw-half block", ["10 × 10 in", "19 1/2 × 10 in", "pressed left"]),
        ("units-throw-row", ["18 1/2 × 18 1/2 in", "54 1/2 × 18 1/2 in"]),
        ("rows-throw", ["3 rows", "3 blocks"]),
        ("borders-mini-0", ["C 2 1/2 × 16 1/2 in", "D 2 1/2 × 20 1/2 in"]),
        ("quilting-mini", ["1/2 in apart", "1 in apart", "in the ditch"]),
        ("binding-mini-join", ["2 1/4 in wide", "1/4 in"]),
        ("binding-mini-press", ["2 1/4 in", "1 1/8 in"]),
        ("binding-throw-bias", ["25 in", "2 1/4 in apart"]),
        ("sleeve-mini-make", ["18 × 6 1/2 in", "3 in deep", "1/4 in"]),
        ("sleeve-mini-attach", ["3 in deep"]),
        ("pillow-pillow-hem", ["18 × 12 in", "1/2 in twice", "11 in deep"]),
        ("pillow-pillow-layer", ["18 × 18 in", "overlap by 4 in"]),
        ("pillow-pillow-sew", ["1/2 in"]),
        ("pillow-pillow-turn", ["17 × 17 in", "18 in square"]),
        ("scale-", ["1 in", "5 cm"]),
        ("colouring-throw", ["44 patches", "9 motifs"]),
    ],
)
def test_it_holds_the_numbers(key: str, numbers: list[str]) -> None:
    for number in numbers:
        assert number in figure(key).alt


@pytest.mark.parametrize(
    "key", [k for k in KEYS if k.startswith(("layers", "sandwich", "pillow", "sleeve", "trim"))]
)
def test_a_length_printed_in_the_figure_is_in_its_text(key: str) -> None:
    """Whoever cannot see the figure misses no number."""
    spoken = figure(key).alt
    for element in texts(figure(key).svg):
        for number in re.findall(r"\d*[½¼¾⅛⅜⅝⅞]|\d+", element.text):
            assert _plain(number) in spoken, (number, spoken)


def _plain(number: str) -> str:
    vulgar = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
    for sign, words in vulgar.items():
        number = number.replace(sign, f" {words}")
    return number.strip()

"""Colours from fabrics, against WCAG 2.0.

W3C, Web Content Accessibility Guidelines 2.0, success criterion 1.4.3 (4.5:1 for ordinary
text) and the definitions of relative luminance and contrast ratio, worked out here anew.
"""

from __future__ import annotations

import bulrush
import pytest
from hypothesis import given
from hypothesis import strategies as st

from publish.model.pattern import Fabric
from publish.typeset.palette import Palette, palette

COLOURS = st.lists(
    st.integers(0, 0xFFFFFF).map(lambda n: f"#{n:06x}"), min_size=1, max_size=5, unique=True
)


def luminance(colour: str) -> float:
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def of(*colours: str) -> Palette:
    forty = bulrush.pattern().fabrics["linen"].usable_width
    fabrics = {f"f{n}": Fabric(f"f{n}", "Cloth", c, forty) for n, c in enumerate(colours)}
    return palette(bulrush.pattern(fabrics=fabrics))


def test_the_published_extremes() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)


@given(COLOURS)
def test_all_text_reads_on_its_ground(colours: list[str]) -> None:
    p = of(*colours)
    pairs = [
        (p.ink, p.paper),
        (p.ink, p.tint),
        (p.ink, p.wash),
        (p.quiet, p.paper),
        (p.accent, p.paper),
        (p.accent, p.wash),
        (p.accent, p.tint),
        (p.paper, p.accent),
        (p.second, p.paper),
    ]
    assert [(a, b) for a, b in pairs if contrast(a, b) < 4.5] == []


def test_a_dark_fabric_is_the_accent_as_it_is() -> None:
    assert of("#f4efe6", "#3f5a3c", "#a8552f").accent == "#3f5a3c"


def test_pale_fabrics_get_ink_mixed_in() -> None:
    p = of("#f4efe6", "#e8d9a0")
    assert p.accent not in ("#f4efe6", "#e8d9a0")
    assert luminance(p.accent) < luminance("#e8d9a0")


def test_the_second_accent_is_another_colour() -> None:
    assert of("#f4efe6", "#3f5a3c", "#a8552f").second == "#a8552f"
    assert of("#3f5a3c").second == of("#3f5a3c").accent


def test_a_grey_fabric_gives_grey_tints() -> None:
    tint = of("#555555").wash
    assert len({tint[1:3], tint[3:5], tint[5:7]}) == 1

"""The barcode on paper: silent at its nominal size, loud when resized, crowded or gone.

The bars are encoded by ZXing (zxing-cpp), whose code has nothing in common with what draws
or measures. The number is the worked example of GS1, How to calculate a check digit
manually. Nominal sizes (GS1 General Specifications, EAN-13 at 100 %) are from memory.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import zxingcpp
from printing import edition, page_svg, pdf_of
from reedmace import pattern
from reedmace_case import only

from publish.model.figure import Artwork
from publish.notes import Note
from publish.proof import measure

EXAMPLE = "6291041500213"
MODULE = 0.33 / 25.4 * 72
"""Points."""
TALL = 24.5 / 0.33
"""Modules: the first bar."""


def bars(digits: str, scale: float = 1.0, squeeze: float = 1.0, inner: str = "") -> str:
    """Return a barcode on a dark ground, white for 11 and 7 modules beside it."""
    drawn = np.array(zxingcpp.write_barcode(zxingcpp.BarcodeFormat.EAN13, digits, 0, 10, 0))
    dark = np.flatnonzero(drawn[0] < 128)
    assert dark[-1] - dark[0] + 1 == 95, "one dot to a module"
    body = "".join(
        f'<rect x="{11 + at - dark[0]}" y="4" width="1" height="{TALL}"/>' for at in dark
    )
    size = MODULE * scale
    return (
        '<rect x="60" y="560" width="400" height="160" fill="#2f6152"/>'
        f'<g transform="translate(200 600) scale({size * squeeze} {size})">'
        f'<rect width="113" height="{TALL + 12}" fill="#fff"/>{body}{inner}</g>'
    )


def found(body: str, number: str = f"EAN-13 {EXAMPLE}", name: str = "booklet-letter") -> list[Note]:
    made = pattern()
    made = replace(made, publication=replace(made.publication, barcode=number))
    book = pdf_of([page_svg('<rect x="99" y="99" width="9" height="9"/>'), page_svg(body)])
    notes = measure(made, {}, Artwork({}, {}), edition(book, (), name))
    return [n for n in notes if n.code == "P890"]


def test_a_barcode_at_its_nominal_size_is_silent() -> None:
    assert found(bars(EXAMPLE)) == []


def test_a_pattern_without_a_number_needs_no_barcode() -> None:
    assert found("", "") == []
    assert found("", name="templates-letter") == [], "only booklets have a back cover"


@pytest.mark.parametrize("scale", [0.8, 0.97, 1.03])
def test_a_resized_barcode_is_found(scale: float) -> None:
    notes = found(bars(EXAMPLE, scale))
    assert [n.expected for n in notes] == ["bars 31.35 mm wide", "bars 24.50 mm tall"]
    assert float(notes[0].received.split()[0]) == pytest.approx(31.35 * scale, abs=0.1)


def test_a_squeezed_barcode_is_found() -> None:
    assert only(found(bars(EXAMPLE, squeeze=0.95)), "P890").expected == "bars 31.35 mm wide"


@pytest.mark.parametrize("at", [3, 109])
def test_something_dark_in_a_quiet_zone_is_found(at: int) -> None:
    crowd = f'<rect x="{at}" y="0" width="1.5" height="80"/>'
    assert "modules of white" in only(found(bars(EXAMPLE, inner=crowd)), "P890").expected


def test_another_number_or_none_is_found() -> None:
    # GS1 Sweden, Calculating the check digit
    for body in (bars("7300011000017"), ""):
        assert only(found(body), "P890").received == "nothing like them"

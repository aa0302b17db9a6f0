"""A template or a foundation that sizes share is printed once, and says for which.

Common practice, no source: the same drawing serves both.
"""

from __future__ import annotations

import re

import pytest
from small import prepared
from space import told

from publish import draw
from publish.model.book import LETTER
from publish.model.words import TemplateSheets

PATH = "  bend: {traditional: drunkard's path, fabrics: {path: fern, background: oat}}\n"
CABIN = "{traditional: log cabin, fabrics: {centre: fern, light: oat, dark: madder}, "
FOUNDATION = f"  bend: {CABIN}foundation: derived}}\n"


def sizes(side):
    return f"""
mini: {{block: bend, columns: 2, rows: 2, block_size: 6 in}}
throw: {{block: bend, columns: 3, rows: 3, block_size: {side}}}
"""


def drawn(work):
    """Return the words of each template's first sheet, by key and size."""
    made = (work.pattern, work.sizes, work.drafts, work.plans, work.manual, LETTER)
    found = draw.draw(*made)[0].sheets
    return {
        (key, size): re.findall(r">([^<>]+)</text>", first.svg)
        for (key, size, _), (first, *_) in found.items()
    }


@pytest.mark.parametrize(("side", "shared"), [("6 in", True), ("7 in", False)])
def test_a_template_is_printed_once_for_the_sizes_that_share_it(tmp_path, side, shared):
    work = prepared(tmp_path, sizes(side), PATH)
    asked = [b for s in work.manual.sections for b in s.blocks if isinstance(b, TemplateSheets)]
    words = drawn(work)
    assert [b.size for b in asked] == ["mini"] * 2 + ["throw"] * 2 * (not shared)
    for (key, _), found in words.items():
        piece = next(t for t in work.plans["mini"].templates if t.key == key)
        both = f"Template {piece.letter}, Mini and Throw"
        assert (both in found) == shared
        assert any(": Mini 4, Throw 9" in line for line in found) == shared
    said = [line.text for line in told.lines(work.manual)]
    assert any(x.endswith("the same as that of the Mini: use its sheets.") for x in said) == shared


@pytest.mark.parametrize(("side", "shared"), [("6 in", True), ("7 in", False)])
def test_a_foundation_is_printed_once_for_the_sizes_that_share_it(tmp_path, side, shared):
    work = prepared(tmp_path, sizes(side), FOUNDATION)
    words = drawn(work)
    here = {section.key for section in work.drafts["mini"].foundations}
    both = {(key, "mini") for key in here}
    assert set(words) == (both if shared else both | {(key, "throw") for key in here})
    for found in words.values():
        assert any("Mini and Throw" in line for line in found) == shared
    said = " ".join(line.text for line in told.lines(work.manual))
    assert ("Foundations for the **Throw** are the same as those of the Mini" in said) == shared

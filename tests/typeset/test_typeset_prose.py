"""Markdown as HTML, against CommonMark 0.31 (emphasis, lists, escaping).

How lengths are set is a rule of our own: common practice in print, no source.
"""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from publish.typeset.prose import inline, lengths, plain, prose


def bare(html: str) -> str:
    """Return what a reader copies: the words without the tags."""
    return re.sub(r"<[^>]+>", "", html)


@pytest.mark.parametrize(
    ("text", "html"),
    [
        ("2 1/2 in", '<span class="length mixed">2 <span class="fraction">1/2</span> in</span>'),
        ("1/4 in", '<span class="length"><span class="fraction">1/4</span> in</span>'),
        ("13/16", '<span class="length"><span class="fraction">13/16</span></span>'),
        ("6.4 cm", '<span class="length">6.4 cm</span>'),
        ("100 %", '<span class="length">100 %</span>'),
        ("18 in × 12 in", '<span class="length">18 in ×</span> <span class="length">12 in</span>'),
        ("5/6 yd", '<span class="length"><span class="fraction">5/6</span> yd</span>'),
    ],
)
def test_lengths_are_kept_together(text: str, html: str) -> None:
    assert lengths(text) == html


@pytest.mark.parametrize(
    "text",
    [
        "12/5/2026",
        "2026-1/2",
        "1/12",
        "3/2",
        "and/or",
        "page 1/2/3",
        "v1/2",
        "1/2a",
        "24/7",
        "40 inches",
        "1/2-3",
        "7 days",
        "1/0",
    ],
)
def test_what_only_looks_like_a_length_is_left_alone(text: str) -> None:
    assert lengths(text) == text


def test_addresses_are_never_touched() -> None:
    html = inline("See <https://fen.example/a/1/2> or [half of it: 1/2](https://fen.example/3/4).")
    assert 'href="https://fen.example/a/1/2">https://fen.example/a/1/2</a>' in html
    assert 'href="https://fen.example/3/4"' in html
    assert html.count('class="fraction"') == 1


def test_code_is_never_touched() -> None:
    assert inline("`1/2`") == "<code>1/2</code>"


def test_markup_in_the_text_stays_text() -> None:
    assert inline("<b>1/8</b>").startswith("&lt;b&gt;")
    assert "<img" not in prose("![a picture](https://fen.example/p.png)")
    assert plain("Reed & Rush <i>") == "Reed &amp; Rush &lt;i&gt;"


def test_emphasis_and_lists_are_commonmark() -> None:
    assert inline("a **bold** and *quiet* word") == (
        "a<span> </span><strong>bold</strong> and<span> </span><em>quiet</em> word"
    )
    assert prose("- one\n- two") == "<ul>\n<li>one</li>\n<li>two</li>\n</ul>\n"


def test_apostrophes_curl() -> None:
    assert inline("don't") == "don’t"


@given(st.text(alphabet="0123456789/ .,-()×incmydft½&<", max_size=40))
def test_a_reader_copies_what_was_written(text: str) -> None:
    assert bare(lengths(text)) == text.replace("&", "&amp;").replace("<", "&lt;")

"""Findings on a terminal: what a file says can neither steer it nor turn the reading order.

ECMA-48 names the controls; Unicode Standard Annex 9 those of bidirectional text, whose
misuse in source is described by Boucher and Anderson, "Trojan Source" (2021).
"""

import json
import unicodedata

import pytest
from helpers import changed, pattern

from publish.cli import main
from publish.notes import Place, Report, error
from publish.report import as_json, concise, marked, visible

BIDIRECTIONAL = "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"
"""Every character with the property Bidi_Control (UAX 9, table 1)."""
CONTROLS = "".join(map(chr, [*range(0x20), *range(0x7F, 0xA0)]))
"""C0, DEL and C1 (ECMA-48, 5.2 and 5.3)."""


@pytest.mark.parametrize(
    "sign", [*BIDIRECTIONAL, *CONTROLS, "\u2028", "\ufeff", "\ud800", "\U000e0001"]
)
def test_what_is_not_seen_is_shown_as_json_escapes_it(sign):
    shown = visible(f"a{sign}b")
    assert json.loads(f'"{shown}"') == f"a{sign}b"
    assert shown.isascii() and shown.isprintable()


@pytest.mark.parametrize("text", ["plain", "Größe 2 1/2 in, “fen” – 日本語 עברית", "🧵 ’"])
def test_what_is_seen_stays(text):
    assert visible(text) == text


def test_a_finding_is_one_line_and_its_mark_stands_below_its_column():
    said = f"{CONTROLS}{BIDIRECTIONAL}"
    note = error(
        "R105", Place(f"a{said}.yaml", 1, 4), said, expected=said, received=said, help=said
    )
    assert not set(concise(note)) & set(said)
    source = "a\u202eb: x"
    lines = marked(note, {note.place.file: source}).split("\n")
    assert len(lines) == 3
    column = lines[1].index("b: x") + 1
    assert lines[2].index("^") == column


def test_nothing_from_a_file_reaches_the_terminal_unescaped(tmp_path, capsys):
    text = changed("title: Bulrush", 'title: "Bul\\x1b[31m\\u202erush"')
    path = pattern(tmp_path, changed("folds: 8", "folds: 8\u202e\u200f", text))
    for options in ([], ["--json"], ["--report", str(tmp_path / "page")]):
        main(["check", str(path), *options])
    page = (tmp_path / "page" / "report.html").read_text(encoding="utf-8")
    said = capsys.readouterr()
    for shown in (said.out, said.err, page):
        assert not [c for c in shown if unicodedata.category(c) in ("Cc", "Cf") and c != "\n"]
    assert "\\u202e" in said.out and "\\u202e" in page


def test_json_says_the_same():
    note = error("R105", Place("a.yaml"), "\u202e", received="\x1b")
    (plain,) = json.loads(as_json(Report((note,))))["findings"]
    assert (plain["what"], plain["received"]) == ("\u202e", "\x1b")

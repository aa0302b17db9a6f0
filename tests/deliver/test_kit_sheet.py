"""The kit sheet as pages: the same tables as in Markdown, and the command that makes it.

25 kits of 1 3/8 yd are 34 3/8 yd: by hand.
"""

from __future__ import annotations

import json
from pathlib import Path

import pypdfium2
import pytest
from reedmace import pattern
from reedmace_case import manual, plan

from publish import cli
from publish.deliver.kit_pages import kit_manual
from publish.deliver.kits import kits, kits_text
from publish.model.words import Table
from publish.starting import start
from publish.words import language


def test_the_printed_sheet_holds_the_tables_of_the_markdown() -> None:
    found = kits(pattern(), {"mini": plan()}, {"mini": 25})
    made = kit_manual(language(), manual(), found)
    mini = found["sizes"]["mini"]["title"]
    assert [s.title for s in made.sections] == ["Reedmace: kits to cut", f"{mini}: 25 kits"]
    markdown = kits_text(language(), found)
    tables = [b for s in made.sections for b in s.blocks if isinstance(b, Table)]
    rows = [row for table in tables for row in table.rows]
    assert len(rows) > 10
    for row in rows:
        assert "| " + " | ".join(row.cells) + " |" in markdown
    assert "34 3/8 yd (30.00 m)" in [row.cells[1] for row in tables[0].rows]


def started(folder: Path) -> Path:
    start(folder)
    return folder


def test_the_command_writes_pdf_markdown_and_json(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = started(tmp_path / "bulrush")
    out = tmp_path / "out"
    assert cli.main(["kits", str(folder), "mini=20", "mini=5", "--out", str(out)]) == cli.CLEAN
    made = out / "bulrush-kits"
    names = {p.name for p in made.iterdir()}
    assert names == {"kits-letter.pdf", "kits-a4.pdf", "kits.md", "kits.json", "manifest.json"}
    bolts = json.loads((made / "kits.json").read_text())["bolts"]
    document = pypdfium2.PdfDocument(made / "kits-letter.pdf")
    words = "".join(page.get_textpage().get_text_bounded() for page in document)
    assert "25 kits" in words
    for bolt in bolts.values():
        assert bolt["name"] in words and f"({bolt['metres']} m)" in words
    assert "kits-letter.pdf" in capsys.readouterr().out


@pytest.mark.parametrize("wanted", ["mini", "mini=", "mini=0", "mini=x", "mini=-3", "bed=2"])
def test_what_cannot_be_cut_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], wanted: str
) -> None:
    folder = started(tmp_path / "bulrush")
    out = tmp_path / "out"
    assert cli.main(["kits", str(folder), wanted, "--out", str(out)]) == cli.USAGE
    assert wanted.split("=")[0] in capsys.readouterr().err
    assert not out.exists()

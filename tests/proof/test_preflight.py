"""What is said of finished PDFs: counts from the file itself, and a build that fails.

The number of the barcode is the worked example of GS1, How to calculate a check digit
manually.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from printing import SHEET, edition, page_svg, pdf_of, sheet_svg, text
from reedmace import draft, pattern
from test_barcode_printed import EXAMPLE, bars

from publish import cli
from publish.model.figure import Artwork
from publish.notes import Place, error, warning
from publish.proof import preflight, preflight_text
from publish.proof.printed.paper import Printed
from publish.starting import start


def test_counts_come_from_the_file() -> None:
    cover = page_svg(text("Reedmace", 200, 300, 30))
    book = pdf_of(
        [sheet_svg(), cover, page_svg(bars(EXAMPLE) + text("small", 99, 99, 6.5))],
        ("Templates", "Reedmace"),
    )
    made = pattern()
    made = replace(made, publication=replace(made.publication, barcode=f"EAN-13 {EXAMPLE}"))
    artwork = Artwork({}, {SHEET.leads: (SHEET,)})
    place = Place("pattern.yaml")
    notes = (error("P871", place, "one"), warning("P891", place, "two"))
    printed = edition(book, (SHEET,), "booklet-letter")
    with Printed(made, {"mini": draft()}, artwork, printed, {}) as opened:
        found = preflight(opened, notes)
    assert (found.pages, found.width, found.height) == (3, 8.5, 11.0)
    assert (found.sheets, found.bookmarks, found.pictures, found.fonts) == (1, 2, 0, 1)
    assert found.smallest == pytest.approx(6.5, abs=0.01)
    assert found.barcode == pytest.approx(31.35, abs=0.1)
    said = preflight_text([found])
    assert said.startswith("preflight: 1 PDF, 3 pages: 1 error\n")
    assert "1 template sheet at 100 %" in said and "type from 6.5 points" in said
    assert "1 ERROR, 1 WARNING" in said
    whole = preflight_text([replace(found, errors=0, warnings=0)])
    assert "3 pages: sound" in whole and "ERROR" not in whole


def test_fullness_counts_half_inch_cells_that_carry_ink() -> None:
    """A letter page's body is 7.31 in x 9.46 in (its margins are 7 % at the sides, 6 % above and
    8 % below): 14 x 18 cells of half an inch. Black over the upper nine rows fills a half of it;
    a page of one dot is under 0.4."""
    top, left = 0.06 * 792, 0.07 * 612
    half = f'<rect x="{left}" y="{top}" width="510" height="{9 * 36 - 4}" fill="#000"/>'
    dot = '<rect x="300" y="400" width="4" height="4" fill="#000"/>'
    book = pdf_of([page_svg(b) for b in (half, half, dot, half)])
    printed = edition(book, (), "booklet-letter")
    with Printed(pattern(), {}, Artwork({}, {}), printed, {}) as opened:
        found = preflight(opened, ())
    assert found.full == pytest.approx((0.5 + 1 / (14 * 18)) / 2, abs=0.01)
    assert found.airy == 1
    assert "pages 25 % full, 1 under 40 %" in preflight_text([found])


@pytest.mark.parametrize("spoiled", [False, True])
def test_a_build_prints_the_result_and_fails_on_an_error(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], spoiled: bool
) -> None:
    folder, out = tmp_path / "bulrush", tmp_path / "out"
    start(folder)
    own = folder / "layouts" / "small"
    own.mkdir(parents=True)
    (own / "layout.yaml").write_text("about: As the other.\nextends: tideline\n")
    style = ".code img { width: 80pt !important }" if spoiled else ".code { color: black }"
    (own / "style.css").write_text(style)
    file = folder / "pattern.yaml"
    written = file.read_text().split("\n")
    at = next(n for n, line in enumerate(written) if line.startswith("publication:"))
    written.insert(at + 1, '  barcode: "6291041500213"')
    file.write_text("\n".join(["layout: small", *written]))
    run = ["build", str(folder), "--out", str(out), "--paper", "letter", "--only", "booklet"]
    assert cli.main(run) == (cli.ERRORS if spoiled else cli.CLEAN)
    printed = capsys.readouterr()
    assert printed.out.startswith("preflight: 1 PDF")
    if spoiled:
        assert "error P890" in printed.err and "ERROR" in printed.out
        assert not (out / "bulrush").exists(), "nothing is written"
    else:
        said = (out / "bulrush" / "preflight.txt").read_text()
        assert "sound" in said and ("barcode at 99.9 %" in said or "barcode at 100.0 %" in said)
        assert said in printed.out

"""How long typesetting takes beside WeasyPrint alone, on the same pages in one run.

Run from the checkout: `python tests/benchmarks/typeset.py [PATTERN] [LAYOUT ...]`.
Exit code 1 where typesetting takes more than `MOST` times what WeasyPrint takes by itself.

"WeasyPrint alone" is given the HTML, style sheets, fonts and drawings that typesetting has
made, and makes the PDF in its default way: no tags, no notes, nothing checked. Each side
runs `ROUNDS` times, in turn, and the shortest time of each counts, since whatever else the
machine does only makes a run longer.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

from publish import draw, pipeline, typeset
from publish.model.book import LETTER
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.model.words import Manual
from publish.typeset import house, layout, pages
from publish.typeset.shelf import LAYOUT, Shelf
from publish.typeset.styled import drawings as drawn_as_svg

MOST = 1.3
ROUNDS = 3
LAYOUTS = ("tideline", "washland")


def shortest(*runs: Callable[[], object]) -> list[float]:
    """Return the shortest of `ROUNDS` times of each run, in seconds, taken in turn."""
    times = [float("inf")] * len(runs)
    for _ in range(ROUNDS):
        for at, run in enumerate(runs):
            started = time.perf_counter()
            run()
            times[at] = min(times[at], time.perf_counter() - started)
    return times


def alone(pattern: Pattern, manual: Manual, artwork: Artwork) -> Callable[[], bytes]:
    """Return a run of WeasyPrint by itself over the pages of a booklet."""
    found, notes = layout.find(pattern, LETTER)
    assert found is not None, notes
    found = house.dressed(found, pattern)
    composed, notes = pages.compose(found, pattern, manual, artwork, LETTER, "booklet")
    assert composed is not None, notes
    drawings = drawn_as_svg(artwork)

    def run() -> bytes:
        fonts = FontConfiguration()
        shelf = Shelf(found, drawings, composed.pictures)
        given = {"base_url": f"{LAYOUT}:", "url_fetcher": shelf}
        styles = [CSS(string=s.css, font_config=fonts, **given) for s in composed.styles]
        html = HTML(string=composed.html, **given)
        pdf: bytes = html.write_pdf(stylesheets=styles, font_config=fonts)
        return pdf

    return run


def measured(pattern: Pattern, manual: Manual, artwork: Artwork) -> float:
    """Print both times of one booklet and return how many times longer ours is."""

    def whole() -> None:
        edition, notes = typeset.typeset(pattern, manual, artwork, LETTER)
        assert edition is not None, notes

    ours, theirs = shortest(whole, alone(pattern, manual, artwork))
    share = ours / theirs
    verdict = "ok" if share <= MOST else f"more than {MOST}"
    print(
        f"{pattern.layout:10} typeset {ours:6.2f} s  WeasyPrint {theirs:6.2f} s  "
        f"{share:.2f} times  {verdict}"
    )
    return share


def main(arguments: list[str]) -> int:
    path = Path(arguments[0]) if arguments else ROOT / "projects" / "samphire"
    work = pipeline.prepare(path)
    assert work.manual is not None
    artwork, notes = draw.draw(
        work.pattern, work.sizes, work.drafts, work.plans, work.manual, LETTER
    )
    assert not notes
    names = arguments[1:] or LAYOUTS
    shares = [measured(replace(work.pattern, layout=name), work.manual, artwork) for name in names]
    return 0 if max(shares) <= MOST else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

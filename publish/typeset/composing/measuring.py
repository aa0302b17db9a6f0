"""How high every item is in each of its forms, measured through WeasyPrint's own layout.

In: items with their forms, a layout's style sheets as parsed, what sets one as HTML. Out: a
`Measured` for each.
Invariant: one rendering measures everything; pictures stand in it as empty boxes of their
size, so nothing is drawn. A form whose words do not fit its width is told apart.

The boxes of a laid-out page are inner objects of WeasyPrint (`Page._page_box`); all of it is
in `_found`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from weasyprint import CSS, HTML
from weasyprint.formatting_structure import boxes
from weasyprint.text.fonts import FontConfiguration

PIXELS = 4 / 3
"""CSS pixels in a point."""
SLACK = 0.6
"""Points by which a table's columns may miss its width."""
_LONG = 10_000_000
"""Points: a page on which everything stands below each other."""
_STYLE = """
@page {
  size: 2000pt SIDEpt; margin: 0;
  @bottom-left { content: none } @bottom-right { content: none }
  @top-left { content: none } @top-right { content: none }
}
a::before, a::after { content: none !important }
a:empty::after { content: "000" !important }
* { string-set: none !important; bookmark-level: none !important }
.measured { display: flow-root }
""".replace("SIDE", str(_LONG))


_TIES = re.compile(r' (?:id|href)="[^"]*"')
"""What ties HTML to other pages, which are not there while it is measured."""


@dataclass(frozen=True)
class Measured:
    """Heights in points of one item in one form, its figure at the form's usual scale."""

    height: float
    told: float = 0.0
    """Of the words with a figure, without it: what stands beside it if it is not below."""
    shown: float = 0.0
    """Of the figure with them, its caption included."""
    both: float = 0.0
    """Of the words, the figure below them and what parts the two."""
    head: float = 0.0
    """Of a table: its heading, which each part of it repeats."""
    rows: tuple[float, ...] = ()
    notes: float = 0.0
    columns: tuple[float, ...] = ()
    """Of a table: how wide its columns are."""
    fits: bool = True


class _Blank:
    """Any picture, for a page that is only measured."""

    def get_intrinsic_size(self, *_: object) -> tuple[float, float, float]:
        return 1.0, 1.0, 1.0


class _Blanks(dict[str, object]):
    """A cache of pictures that has every one."""

    def __contains__(self, _: object) -> bool:
        return True

    def __getitem__(self, _: object) -> object:
        return _Blank()


def measure(
    fragments: Sequence[tuple[str, float]],
    styles: Sequence[CSS],
    fonts: FontConfiguration,
    fetch: Any,
) -> list[Measured]:
    """Return how high each piece of HTML is in a box of so many points."""
    parts = [
        f'<div class="measured" id="{n}" style="width:{width:.3f}pt">{_TIES.sub("", html)}</div>'
        for n, (html, width) in enumerate(fragments)
    ]
    own = CSS(string=_STYLE, font_config=fonts, url_fetcher=fetch)
    page = HTML(string=f"<body>{''.join(parts)}</body>", base_url="layout:", url_fetcher=fetch)
    document = page.render(font_config=fonts, stylesheets=[*styles, own], cache=_Blanks())
    found: dict[int, Measured] = {}
    for each in document.pages:
        for number, box in _found(each._page_box):
            found[number] = _read(box, fragments[number][1])
    return [found[n] for n in range(len(fragments))]


def _found(box: Any) -> Iterator[tuple[int, Any]]:
    """Yield the boxes of what is measured, with their numbers."""
    for inner in getattr(box, "children", ()):
        if _has(inner, "measured"):
            yield int(inner.element.get("id")), inner
        else:
            yield from _found(inner)


def _has(box: Any, name: str) -> bool:
    element = getattr(box, "element", None)
    return element is not None and name in (element.get("class") or "").split()


def _below(box: Any) -> Iterator[Any]:
    yield box
    for inner in getattr(box, "children", ()):
        yield from _below(inner)


def _read(box: Any, width: float) -> Measured:
    every = list(_below(box))
    told = next((b for b in every if _has(b, "told")), None)
    shown = next((b for b in every if _has(b, "shown")), None)
    table = next((b for b in every if _has(b, "ruled") and isinstance(b, boxes.TableBox)), None)
    if table is None:
        if told is None or shown is None:
            return Measured(_points(box.height))
        below = any(b is shown for b in _below(told))
        words = told.height - (shown.margin_height() if below else 0.0)
        both = told.height if below else max(told.height, shown.height)
        return Measured(_points(box.height), _points(words), _points(shown.height), _points(both))
    groups = [g for g in table.children if isinstance(g, boxes.TableRowGroupBox)]
    rows = tuple(_points(r.height) for g in groups if not g.is_header for r in g.children)
    notes = next((b for b in every if _has(b, "table-notes")), None)
    above = _points(notes.margin_height()) if notes is not None else 0.0
    total = _points(box.height)
    widths = table.column_widths
    return Measured(
        total,
        head=total - above - sum(rows),
        rows=rows,
        notes=above,
        columns=tuple(_points(w) for w in widths),
        fits=sum(widths) / PIXELS <= width + SLACK,
    )


def _points(pixels: float) -> float:
    return pixels / PIXELS

"""The barcode of a published pattern, at its nominal size.

In: the spec's `digits`, a number as the publication states it. Out: the figure, which no
layout may resize.
Invariant: one SVG unit is one module, so every bar lies on whole units and is exact; the
quiet zones are part of the figure; bars and digits are black on white. The encoding is
the library's (python-barcode).

Sizes are those of the GS1 General Specifications for EAN-13 and UPC-A at 100 %, from
memory: module 0.33 mm, 113 modules with quiet zones (37.29 mm), bars 22.85 mm, 25.93 mm
with the digits, guard bars 5 modules longer.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby

from barcode.ean import EuropeanArticleNumber13

from publish.draw.canvas.letters import CAP_HEIGHT, ENGLISH, Labels, text_width
from publish.draw.canvas.style import FONT
from publish.draw.context import CannotDrawError, Context
from publish.gtin import UPC, Gtin, parse_gtin
from publish.model.figure import Figure
from publish.model.words import FigureSpec
from publish.units import INCH_IN_MM, POINTS_PER_INCH

MODULE = 0.33
"""Millimetres."""
MODULES = 113
BARS, WHOLE = 22.85 / MODULE, 25.93 / MODULE
"""Heights in modules: of the bars, and of bars and digits."""
GUARD = 5
POINT = float(INCH_IN_MM) / POINTS_PER_INCH / MODULE
"""Modules in one point."""
DIGIT = 2.75 / MODULE
"""Height of a digit in modules."""
SMALL = 0.7
"""Share of it that the digits outside a UPC-A's bars have."""
HEADING = 11.0
"""Modules above the bars for the line over an ISBN; its letters are 7.5 points."""
BLACK, WHITE = "#000000", "#ffffff"


@dataclass(frozen=True)
class _Plan:
    """Where the parts of one kind lie: modules from the first bar, except `quiet`."""

    quiet: int
    tall: tuple[tuple[int, int], ...]
    """Where bars are as long as guards."""
    groups: tuple[tuple[int, int, int], ...]
    """First digit, last digit and first module of each group under the bars."""


_EAN = _Plan(11, ((0, 3), (45, 50), (92, 95)), ((1, 7, 3), (7, 13, 50)))
_UPC = _Plan(9, ((0, 10), (45, 50), (85, 95)), ((1, 6, 10), (6, 11, 50)))


def draw(context: Context, spec: FigureSpec) -> Figure:
    """Draw the bars of the number in `digits`, with the digits under them."""
    del context
    return drawn(spec, spec.get("digits"))


def drawn(spec: FigureSpec, digits: str, say: Labels = ENGLISH) -> Figure:
    """Draw a number's bars; raises CannotDrawError for one that is none."""
    try:
        gtin = parse_gtin(digits)
    except ValueError as reason:
        raise CannotDrawError(f"the barcode's number is not one: {reason}") from reason
    plan = _UPC if gtin.kind == UPC else _EAN
    top = HEADING if gtin.heading else 0.0
    body = [_bars(gtin, plan, top), *_digits(gtin, plan, top)]
    if gtin.heading:
        body.append(_heading(gtin))
    width, height = MODULES * MODULE, (WHOLE + top) * MODULE
    alt = say.text("figure-barcode", kind=gtin.kind, digits=gtin.digits)
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="{alt}" '
        f'width="{width:.3f}mm" height="{height:.3f}mm" '
        f'viewBox="0 0 {MODULES} {WHOLE + top:.4f}">'
        f'<path fill="{WHITE}" d="M0 0h{MODULES}v{WHOLE + top:.4f}H0z"/>{"".join(body)}</svg>'
    )
    inch = float(INCH_IN_MM)
    return Figure(spec.key, svg, width / inch, height / inch, alt, spec.caption, scalable=False)


def _bars(gtin: Gtin, plan: _Plan, top: float) -> str:
    """Return every bar as one path of rectangles."""
    code = EuropeanArticleNumber13(gtin.digits.zfill(13), no_checksum=True).build()[0]
    at, steps = 0, []
    for mark, run in groupby(code):
        wide = len(list(run))
        if mark == "1":
            tall = any(first <= at < last for first, last in plan.tall)
            deep = BARS + (GUARD if tall else 0)
            steps.append(f"M{plan.quiet + at} {top:g}h{wide}v{deep:.4f}h-{wide}z")
        at += wide
    return f'<path fill="{BLACK}" d="{"".join(steps)}"/>'


def _digits(gtin: Gtin, plan: _Plan, top: float) -> list[str]:
    """Return the digits: one in each 7 modules under the bars, the others beside them."""
    size = DIGIT / CAP_HEIGHT
    base = top + BARS + 0.5 + DIGIT
    found = []
    for first, last, module in plan.groups:
        words = gtin.digits[first:last]
        wide = text_width("0", size / POINT) * POINT
        start = plan.quiet + module + (7 - wide) / 2
        found.append(_text(words, start, base, size, 7 - wide))
    outer = size * (SMALL if gtin.kind == UPC else 1)
    wide = text_width("0", outer / POINT) * POINT
    found.insert(0, _text(gtin.digits[0], plan.quiet - 2 - wide, base, outer))
    if gtin.kind == UPC:
        found.append(_text(gtin.digits[-1], plan.quiet + 97, base, outer))
    return found


def _heading(gtin: Gtin) -> str:
    size = 7.5 * POINT
    wide = text_width(gtin.heading, 7.5) * POINT
    return _text(gtin.heading, (MODULES - wide) / 2, HEADING - 2.5, size)


def _text(words: str, x: float, y: float, size: float, gap: float = 0.0) -> str:
    return (
        f'<text x="{x:.3f}" y="{y:.3f}" font-family="{FONT}" font-size="{size:.3f}" '
        f'letter-spacing="{gap:.3f}" fill="{BLACK}">{words}</text>'
    )

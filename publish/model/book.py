"""Stage 7 output: a typeset edition.

In: manual and artwork. Out: `Edition`, PDF bytes with what proof needs to measure it.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from publish.units import INCH_IN_MM


@dataclass(frozen=True)
class Paper:
    """A page size. Letter is 8.5 x 11 in (ANSI A); A4 is 210 x 297 mm (ISO 216)."""

    key: str
    name: str
    width: float
    """Inches."""
    height: float
    parent: str = ""
    """Of a half-size paper: the paper that it is half of, which its template sheets and
    other things at full size are printed on."""


LETTER = Paper("letter", "US Letter", 8.5, 11.0)
A4 = Paper("a4", "A4", 210 / 25.4, 297 / 25.4)
HALF_LETTER = Paper("half-letter", "Half Letter", 5.5, 8.5, "letter")
"""US Letter across its longer side: 5.5 x 8.5 in."""
A5 = Paper("a5", "A5", 148 / 25.4, 210 / 25.4, "a4")
"""148 x 210 mm (ISO 216)."""
PAPERS: dict[str, Paper] = {p.key: p for p in (LETTER, A4, HALF_LETTER, A5)}
TEMPLATE_SHEET = (Fraction(15, 2), Fraction(35, 4))
"""Inches across and down: what one template sheet holds on any whole paper, with its margins
and its heading; what must not depend on the paper is made to fit it."""
_IN, _MM = Fraction(1, 8), 3 / INCH_IN_MM
BLEED: dict[str, Fraction] = {"letter": _IN, "a4": _MM, "half-letter": _IN, "a5": _MM}
"""By paper: inches by which colour runs over an edge that a print shop trims; common
practice, no source."""
A0 = Paper("a0", "A0", 841 / 25.4, 1189 / 25.4)
"""What a copy shop prints: 841 x 1189 mm (ISO 216)."""
ROLL_WIDTH = 36.0
"""Inches: the roll that wide-format printers take."""


def full_size(paper: Paper) -> Paper:
    """Return the paper for template sheets: a half-size paper's parent, or the paper."""
    return PAPERS[paper.parent] if paper.parent else paper


def roll(length: float) -> Paper:
    """Return a sheet cut from the roll, `length` inches long."""
    return Paper("roll-36", "36 in roll", ROLL_WIDTH, length)


@dataclass(frozen=True)
class Edition:
    """One finished PDF."""

    name: str
    """File name without extension: `booklet-letter`."""
    paper: Paper
    pdf: bytes
    html: str
    sheet_pages: dict[str, int]
    """Page number (from 1) of each template sheet, by sheet key."""
    kind: str = ""
    """Of the edition: `booklet`, `templates`, `full-size` or `kits`."""
    size: str = ""
    """Key of the size that it is about; empty for all."""

    @property
    def is_booklet(self) -> bool:
        """Return whether it is a whole booklet with covers, for home or for a print shop."""
        return self.kind == "booklet" and not self.size

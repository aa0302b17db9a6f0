"""What a pattern has from its studio, and where each of its shared values comes from.

In: nothing. Out: frozen types, parts of a `Pattern`.
Invariant: only what the files say, and where.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path

from publish.model.house import StepChange
from publish.notes import Place


@dataclass(frozen=True)
class Studio:
    """The file that says what patterns share."""

    path: Path
    steps: tuple[StepChange, ...] = ()
    """Standard wording: made in every pattern that has the step, before the pattern's own."""

    @property
    def folder(self) -> Path:
        return self.path.parent


@dataclass(frozen=True)
class Origin:
    """One value that patterns may share: the way to it, what is written, and where.

    `place` is None where nobody says it, and `written` is then what stands in for it.
    `replaced` is where the studio's file says what the pattern says otherwise.
    """

    path: str
    written: str
    place: Place | None
    replaced: Place | None = None


@dataclass(frozen=True)
class Caution:
    """A caution of the designer's own; `text` is Markdown."""

    title: str
    text: str


@dataclass(frozen=True)
class Price:
    """What the pattern costs in one currency (ISO 4217), with its decimals as written."""

    currency: str
    retail: Decimal
    wholesale: Decimal | None = None

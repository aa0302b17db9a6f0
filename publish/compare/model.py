"""Two editions as they are compared, and a change between them.

In: nothing. Out: frozen types. Lengths are exact inches.
Invariant: an `Edition` holds whatever a maker acts on and nothing else, so that two equal
ones are the same to a maker.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from shapely.geometry.base import BaseGeometry

from publish.surd import Exact

SAFETY, BOUGHT, CUT, SEWN, COSMETIC = "safety", "bought", "cut", "sewn", "cosmetic"
CONSEQUENCES: dict[str, str] = {
    SAFETY: "Read first, whatever you have done so far",
    BOUGHT: "If you have already bought",
    CUT: "If you have already cut",
    SEWN: "If you have already sewn",
    COSMETIC: "Looks and wording: nothing to do",
}
"""What a change means for a maker, the costliest first, with its heading."""


@dataclass(frozen=True)
class Looks:
    """A fabric as the booklet calls and shows it."""

    name: str
    colour: str


@dataclass(frozen=True)
class Piece:
    """Pieces cut alike; as `publish.model.pieces.Piece`."""

    letter: str
    name: str
    purpose: str
    fabric: str
    width: Fraction
    length: Fraction
    count: int
    joined_from: int
    may_turn: bool
    note: str


@dataclass(frozen=True)
class Cloth:
    """What is bought of one fabric. `said` is what the booklet says; empty for nothing.

    `layout` is its cutting plan, strip by strip.
    """

    usable_width: Fraction
    needed: Fraction
    buy: Fraction
    metres: Fraction
    """Of `buy`, rounded up by the metric step."""
    said: str
    layout: tuple[Any, ...]
    precut: bool = False


@dataclass(frozen=True)
class Border:
    width: Fraction
    fabric: str
    corners: str


@dataclass(frozen=True)
class Template:
    """An outline at full size. `text` is its exact record: equal texts, equal templates."""

    kind: str
    """`motif`, `piece` or `foundation`."""
    key: str
    letter: str
    finished: BaseGeometry = field(compare=False)
    cut: BaseGeometry = field(compare=False)
    lines: BaseGeometry | None = field(compare=False)
    text: str = field(repr=False)


@dataclass(frozen=True)
class SizeEdition:
    """One size of an edition."""

    key: str
    title: str
    finish: str
    finished: tuple[Exact, Exact]
    block_side: Fraction
    grid: tuple[int, int]
    """Columns and rows of blocks."""
    arrangement: tuple[tuple[int, ...], ...]
    """Which block stands where, row by row: blocks are numbered as they first come."""
    turns: Mapping[str, tuple[tuple[int, ...], ...]]
    """How the blocks, and those between them, are turned: degrees, row by row."""
    makeup: Mapping[str, str]
    """Of each unit by what it is called, the key of its recipe: equal for what is put together
    alike."""
    motif_span: Fraction | None
    borders: tuple[Border, ...]
    pieces: tuple[Piece, ...]
    fabrics: Mapping[str, Cloth]
    backing: Mapping[str, Any] | None
    batting: Mapping[str, Any] | None
    binding: Mapping[str, Any] | None
    pillow: Mapping[str, Any] | None
    quilting: tuple[tuple[str, str, str], ...]
    """Area, style and spacing."""
    other: Mapping[str, str]
    """What else is bought, as the booklet says it, by what it is."""
    thread: Mapping[str, str]
    templates: tuple[Template, ...]


@dataclass(frozen=True)
class Step:
    """A step as it is printed, with the section that it stands in."""

    key: str
    section: str
    title: str
    """Of the section."""
    number: int
    text: str
    caution: str
    sizes: tuple[str, ...]
    """Keys of the sizes that it is for; empty for all."""

    @property
    def called(self) -> str:
        return f"{self.title}, step {self.number}"


@dataclass(frozen=True)
class Prose:
    """A text beside the steps, by its section's title; `sizes` as in `Step`."""

    section: str
    text: str
    sizes: tuple[str, ...]


@dataclass(frozen=True)
class Edition:
    """One edition of a pattern: from a build, or prepared from its file."""

    source: str
    """How the command named it."""
    pattern: str
    title: str
    edition: str
    studio: str
    contact: str
    licence: str
    skill: str
    seam: Fraction
    fabrics: Mapping[str, Looks]
    colourways: Mapping[str, Mapping[str, Looks]]
    tools: tuple[str, ...]
    cautions: Mapping[str, str]
    """By title."""
    steps: tuple[Step, ...]
    prose: tuple[Prose, ...]
    sizes: Mapping[str, SizeEdition]


@dataclass(frozen=True)
class Overlay:
    """Two outlines of one template, and how far apart they are. Inches."""

    name: str
    """Of its picture: `throw-samphire`."""
    old: Template
    new: Template
    area: float
    """Of the symmetric difference, in square inches."""
    distance: float
    """The largest between the outlines: Hausdorff's."""
    at: tuple[tuple[float, float], tuple[float, float]]
    """Where it is: from the one outline to the other."""
    lines: bool = False
    """Whether only the seam lines of a foundation differ, and are what is measured."""


Words = tuple[tuple[str, str], ...]
"""A word difference: `same`, `gone` or `new`, each with its words."""


@dataclass(frozen=True)
class Change:
    """One change. `sentence` says it to a maker; `advice` what follows for work begun."""

    consequence: str
    subject: str
    """`fabric`, `piece`, `template`, `step` ..."""
    sentence: str
    advice: str = ""
    size: str = ""
    """Key of the size, the older edition's where it has it; empty for all."""
    old: Mapping[str, str] = field(default_factory=dict)
    """Exact values, lengths in inches: `{"buy": "76 1/2"}`."""
    new: Mapping[str, str] = field(default_factory=dict)
    words: Words = ()
    overlay: Overlay | None = None

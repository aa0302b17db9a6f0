"""Stage 5 output: the booklet as words: sections of blocks, with figures asked for.

In: pattern, sizes, drafts, plans. Out: `Manual`.
Invariant: text is Markdown without HTML; lengths in text are written by `publish.units`
(`2 1/2 in`), so the typesetter can set true fractions and proof can find them. No block
knows how it will look.
"""

from __future__ import annotations

from dataclasses import dataclass, replace


@dataclass(frozen=True)
class FigureSpec:
    """A figure that a block asks for: its kind, the size it shows, what varies.

    `key` is unique in the manual; `values` are plain pairs that the drawing of that
    kind understands. `caption` is Markdown and may be empty.
    """

    key: str
    kind: str
    size: str | None = None
    values: tuple[tuple[str, str], ...] = ()
    caption: str = ""

    def get(self, name: str, default: str = "") -> str:
        return dict(self.values).get(name, default)


@dataclass(frozen=True)
class Paragraph:
    text: str


@dataclass(frozen=True)
class Bullets:
    items: tuple[str, ...]
    check: bool = False
    """A box to tick before each item."""


@dataclass(frozen=True)
class Box:
    """A set-off box: `caution`, `tip` or `note`."""

    kind: str
    title: str
    items: tuple[str, ...]


@dataclass(frozen=True)
class Step:
    """One numbered step. `right` says how the work looks when it is right."""

    key: str
    number: int
    text: str
    right: str = ""
    tip: str = ""
    caution: str = ""
    figure: FigureSpec | None = None
    sizes: tuple[str, ...] = ()
    """Size keys the step applies to; empty for all."""
    covers: tuple[str, ...] = ()
    """Keys of the operations that it tells; empty while its chapter has none."""
    own: bool = False
    """Whether its words are the designer's."""
    aliases: tuple[tuple[str, str], ...] = ()
    """Other keys that it answers to, each for one size alone: key, size."""

    @property
    def generated(self) -> bool:
        """Return whether its words were made from operations: nothing reads them again."""
        return bool(self.covers) and not self.own


@dataclass(frozen=True)
class Steps:
    items: tuple[Step, ...]


@dataclass(frozen=True)
class Row:
    """A table row. `kind` is `body`, `group` (one cell, a heading inside the table),
    `part` (a part of the row before it) or `total`. `fabric` is the key of a fabric whose
    colour a swatch shows beside the first cell.
    """

    cells: tuple[str, ...]
    kind: str = "body"
    fabric: str | None = None


@dataclass(frozen=True)
class Table:
    key: str
    title: str
    head: tuple[str, ...]
    rows: tuple[Row, ...]
    align: str = ""
    """One letter per column: `l`, `r` or `c`; empty for all left."""
    notes: tuple[str, ...] = ()


@dataclass(frozen=True)
class FigureBlock:
    """A figure on its own: `width` is `text` (full measure), `half` or `page`."""

    figure: FigureSpec
    width: str = "text"


@dataclass(frozen=True)
class FigureGrid:
    """Figures side by side."""

    figures: tuple[FigureSpec, ...]
    columns: int


@dataclass(frozen=True)
class TemplateSheets:
    """The full-size sheets of one template; the typesetter gives each a page."""

    motif: str
    """Key of the motif, of the `PieceTemplate` or of the `FoundationSection`."""
    size: str
    part: str
    """`wedge` or `whole` of a motif, `piece` or `foundation`."""


Block = Paragraph | Bullets | Box | Steps | Table | FigureBlock | FigureGrid | TemplateSheets


@dataclass(frozen=True)
class Section:
    """A section of the booklet with its own heading, bookmark and contents entry."""

    key: str
    title: str
    blocks: tuple[Block, ...]
    lead: str = ""
    """One sentence under the heading."""
    new_page: bool = False
    sizes: tuple[str, ...] = ()
    parent: str | None = None
    """Key of the section that holds this one in the contents."""


@dataclass(frozen=True)
class Cover:
    title: str
    subtitle: str
    studio: str
    skill: str
    sizes: tuple[tuple[str, str], ...]
    """Title and finished size in words."""
    figure: FigureSpec


@dataclass(frozen=True)
class BackCover:
    blurb: str
    sizes: tuple[tuple[str, str], ...]
    stock_number: str
    edition: str
    licence: str
    contact: str
    figure: FigureSpec
    materials: tuple[str, ...] = ()
    barcode: FigureSpec | None = None
    """Printed at its own size, whatever the layout."""


@dataclass(frozen=True)
class Manual:
    """The booklet in words, in reading order."""

    cover: Cover
    sections: tuple[Section, ...]
    back: BackCover
    running_foot: str

    def figures(self) -> tuple[FigureSpec, ...]:
        """Return every figure asked for, in reading order, once each."""
        found: dict[str, FigureSpec] = {self.cover.figure.key: self.cover.figure}
        for section in self.sections:
            for block in section.blocks:
                for spec in _specs(block):
                    found.setdefault(spec.key, spec)
        found.setdefault(self.back.figure.key, self.back.figure)
        if self.back.barcode is not None:
            found.setdefault(self.back.barcode.key, self.back.barcode)
        return tuple(found.values())

    def templates_only(self) -> Manual:
        """Return the manual with nothing but its template sheets."""
        kept = []
        for section in self.sections:
            blocks = tuple(b for b in section.blocks if isinstance(b, TemplateSheets))
            if blocks:
                kept.append(replace(section, blocks=blocks, lead="", parent=None))
        return replace(self, sections=tuple(kept))

    def whole_templates(self) -> Manual:
        """Return the template sections with each motif's whole outline in place of parts.

        Templates of pieces and foundations are left out.
        """
        kept = []
        for section in self.templates_only().sections:
            sheets = dict.fromkeys(
                replace(b, part="whole")
                for b in section.blocks
                if isinstance(b, TemplateSheets) and b.part in ("wedge", "whole")
            )
            if sheets:
                kept.append(replace(section, blocks=tuple(sheets)))
        return replace(self, sections=tuple(kept))


def _specs(block: Block) -> tuple[FigureSpec, ...]:
    if isinstance(block, Steps):
        return tuple(s.figure for s in block.items if s.figure is not None)
    if isinstance(block, FigureBlock):
        return (block.figure,)
    if isinstance(block, FigureGrid):
        return block.figures
    return ()

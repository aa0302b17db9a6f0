"""The computed values that a designer may name in the text of a step.

In: nothing. Out: `VALUES`, the names with what they mean and an example.
Invariant: these are all the names there are; writing gives each of them a text, and the
reference lists each of them.
"""

from __future__ import annotations

from dataclasses import dataclass

SIZE, EACH, PATTERN, FABRIC = "size", "each", "pattern", "fabric"
"""Where a name stands: after a size's key or `each`, after `pattern`, after `fabric`."""


@dataclass(frozen=True)
class ValueName:
    """A name, such as `block`, or `cut.LETTER` where a key of the pattern's follows."""

    where: str
    name: str
    meaning: str
    example: str


VALUES: tuple[ValueName, ...] = (
    ValueName(SIZE, "title", "the size's title", "Throw"),
    ValueName(SIZE, "finished", "the finished width and height", "64 in (162.6 cm) square"),
    ValueName(SIZE, "width", "the finished width", "64 in (162.6 cm)"),
    ValueName(SIZE, "height", "the finished height", "64 in (162.6 cm)"),
    ValueName(SIZE, "perimeter", "once round the finished edge", "256 in (650.2 cm)"),
    ValueName(SIZE, "block", "the finished side of a block", "18 in (45.7 cm)"),
    ValueName(SIZE, "blocks", "how many blocks", "nine"),
    ValueName(SIZE, "columns", "how many blocks side by side", "three"),
    ValueName(SIZE, "rows", "how many rows of blocks", "three"),
    ValueName(SIZE, "motif", "the finished width of the motif", "15 1/2 in (39.4 cm)"),
    ValueName(SIZE, "motifs", "how many motifs are laid down", "nine"),
    ValueName(
        SIZE, "motif_square", "the square that a motif is cut from", "17 in (43.2 cm) square"
    ),
    ValueName(
        SIZE,
        "border.NUMBER",
        "the finished width of a border, counted from the inside",
        "1 in (2.5 cm)",
    ),
    ValueName(
        SIZE, "cut.LETTER", "the cut size of a piece, by its letter", "10 in (25.4 cm) square"
    ),
    ValueName(SIZE, "count.LETTER", "how many of a piece are cut", "18"),
    ValueName(SIZE, "buy.FABRIC", "the length of a fabric to buy, by its key", "2 1/2 yd (2.30 m)"),
    ValueName(SIZE, "backing", "the backing as it is joined", "72 in (182.9 cm) square"),
    ValueName(SIZE, "batting", "the batting as it is cut", "70 in (177.8 cm) square"),
    ValueName(SIZE, "binding_strips", "how many binding strips", "seven"),
    ValueName(SIZE, "binding_width", "the cut width of the binding", "2 1/4 in (5.7 cm)"),
    ValueName(SIZE, "binding_length", "the binding that is needed", "266 in (675.6 cm)"),
    ValueName(SIZE, "pillow_form", "the side of the pillow form", "18 in (45.7 cm)"),
    ValueName(SIZE, "sleeve", "the finished depth of the hanging sleeve", "3 in (7.6 cm)"),
    ValueName(SIZE, "thread", "all the thread together", "466 yd (427 m)"),
    ValueName(PATTERN, "title", "the pattern's title", "Samphire"),
    ValueName(PATTERN, "studio", "the studio's name", "Hollow Fen Studio"),
    ValueName(PATTERN, "contact", "where to report a mistake", "patterns@hollowfen.example"),
    ValueName(PATTERN, "skill", "how much experience the pattern asks for", "Confident beginner"),
    ValueName(PATTERN, "seam", "the seam allowance", "1/4 in (6 mm)"),
    ValueName(PATTERN, "sizes", "how many sizes", "three"),
    ValueName(FABRIC, "FABRIC", "the name of a fabric, by its key", "Salt linen"),
)

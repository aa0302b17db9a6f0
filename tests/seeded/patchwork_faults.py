"""Slips in patchwork: sizes told of units and of the growing top, seams and blocks counted.

In: nothing. Out: `FAULTS`: the demo, what is wrong, the change, and the code that has to say so.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from draft_faults import patch
from state import State

Change = Callable[[State], State]


def halved(size: str) -> Change:
    """The seams of a size are half as long as they are."""
    return lambda s: s.draft(size, seam_length=s.drafts[size].seam_length / 2)


def foundations_left_out(s: State) -> State:
    """The seams inside a block on foundations are forgotten: only the borders' are counted."""
    size = s.sizes["mini"]
    inner = sum(
        (2 * (layer.inner_width + layer.inner_height) for layer in size.layers[1:]),
        2 * (size.inner_width + size.inner_height),
    )
    return s.draft("mini", seam_length=inner + 4 * sum(b.width for b in size.borders))


def exchanged(s: State) -> State:
    """Two patches of a block that lies turned change their fabrics."""
    dark, light = (
        next(
            p
            for p in s.drafts["throw"].patches
            if p.block == "path" and p.turn and p.fabric == fabric
        )
        for fabric in ("brick", "mist")
    )
    half = patch(s, "throw", lambda p: p.key == dark.key, fabric="mist")
    return patch(half, "throw", lambda p: p.key == light.key, fabric="brick")


FAULTS: tuple[tuple[str, str, Change, str], ...] = (
    (
        "towpath",
        "a row of patches is a quarter inch long",
        lambda s: s.step(
            "piecing-lock-unit-4",
            right="Unit 4 measures 8 3/4 in × 2 1/2 in for the **Mini wall quilt**.",
        ),
        "P826",
    ),
    (
        "towpath",
        "a block is told as square and is not",
        lambda s: s.step(
            "piecing-lock-unit-6",
            right="Unit 6 measures 8 1/2 in (21.6 cm) square for the **Mini wall quilt**.",
        ),
        "P826",
    ),
    (
        "towpath",
        "geese are trimmed to the wrong size",
        lambda s: s.words(
            "its size in the table",
            "4 1/4 in × 2 1/2 in for the **Mini wall quilt**",
            step="piecing-lock-unit-3-trim",
        ),
        "P826",
    ),
    (
        "towpath",
        "a sashing row is as deep as a row",
        lambda s: s.words(
            "19 1/2 in × 1 1/2 in", "19 1/2 in × 8 1/2 in", step="assembling-mini-sashing-row"
        ),
        "P826",
    ),
    (
        "towpath",
        "the centre on point is a quarter inch off",
        lambda s: s.words("68 3/8 in", "68 5/8 in", step="assembling-throw-square"),
        "P826",
    ),
    (
        "towpath",
        "the pillow's border has the usual seam",
        lambda s: s.words(
            "18 in (45.7 cm) square", "17 1/2 in (44.5 cm) square", step="borders-pillow-ends-2"
        ),
        "P826",
    ),
    ("towpath", "seams on the slant are half as long", halved("throw"), "P838"),
    (
        "towpath",
        "a block of one kind is told as another",
        lambda s: s.words(
            "Twelve lock blocks, 12 in (30.5 cm); six",
            "Thirteen lock blocks, 12 in (30.5 cm); five",
            "what-you-will-make",
        ),
        "P840",
    ),
    (
        "towpath",
        "there is a side triangle too few",
        lambda s: s.words("ten side", "nine side", step="assembling-throw-lay-out"),
        "P808",
    ),
    ("towpath", "two patches of a turned block are exchanged", exchanged, "P820"),
    (
        "millrace",
        "a ground is told as trimmed",
        lambda s: s.words(
            "19 1/2 in (49.5 cm) square",
            "18 1/2 in (47.0 cm) square",
            step="piecing-throw-millpool-ground-millpool",
        ),
        "P826",
    ),
    (
        "millrace",
        "a curved unit is a quarter inch small",
        lambda s: s.words(
            "its size in the table",
            "8 3/4 in (22.2 cm) square for the **Mini wall quilt**",
            step="piecing-mini-pillow-millpool-unit-1",
        ),
        "P826",
    ),
    (
        "millrace",
        "a pillow's ground has the usual seam",
        lambda s: s.words(
            "its size in the table",
            "18 1/2 in (47.0 cm) square for the **Pillow**",
            step="piecing-mini-pillow-millpool-ground-millpool",
        ),
        "P826",
    ),
    ("millrace", "curved seams are half as long", halved("mini"), "P838"),
    (
        "millrace",
        "a pieced ground is cut without its margin",
        lambda s: s.piece("throw", "B", width=Fraction(19, 2), length=Fraction(19, 2)),
        "P816",
    ),
    (
        "millrace",
        "a block of a kind is missing",
        lambda s: s.words("Five millpool", "Four millpool", "what-you-will-make"),
        "P840",
    ),
    (
        "heronry",
        "joined sections are a quarter inch high",
        lambda s: s.step(
            "foundation-mini-block-row", right="ABCDEF measures 12 1/2 in × 11 1/4 in."
        ),
        "P826",
    ),
    (
        "heronry",
        "the top after a round is without it",
        lambda s: s.words(
            "36 1/2 in (92.7 cm) square", "36 in (91.4 cm) square", step="borders-throw-round-3-on"
        ),
        "P826",
    ),
    (
        "heronry",
        "a round's strips are a corner block too long",
        lambda s: s.words(
            "6 1/2 in × 24 1/2 in", "6 1/2 in × 30 1/2 in", step="borders-throw-round-3-strips"
        ),
        "P826",
    ),
    (
        "heronry",
        "the top is measured before the wrong round",
        lambda s: s.words(
            "it should be 56 1/2 in", "it should be 40 1/2 in", step="borders-throw-sides-4"
        ),
        "P826",
    ),
    ("heronry", "seams on foundations are not counted", foundations_left_out, "P838"),
    (
        "heronry",
        "a round has a block too few",
        lambda s: s.words("20 blocks of", "19 blocks of", step="borders-throw-order"),
        "P808",
    ),
    (
        "heronry",
        "a round's blocks are missing from the sizes",
        lambda s: s.words("20 geese blocks, 6 in", "18 geese blocks, 6 in", "what-you-will-make"),
        "P840",
    ),
)

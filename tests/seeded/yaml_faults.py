"""Slips of a designer: one edit each to the YAML of the demo.

In: nothing. Out: `FAULTS`: what is wrong, words to find in the file, what stands there
instead, and the code that has to say so.
"""

from __future__ import annotations

STEPS = "papers: [letter, a4]\n"
"""Where changes of steps are put in."""


def step(change: str) -> tuple[str, str]:
    return STEPS, f"{STEPS}steps:\n  - {change}\n"


def inserted(text: str, after: str = "cutting-strips", more: str = "") -> tuple[str, str]:
    return step(f'{{after: {after}, text: "{text}"{more}}}')


_REST = "Then the stitching: an evening or two for the Mini, a season for the Throw."

FAULTS: tuple[tuple[str, tuple[str, str], str], ...] = (
    ("the blurb tells another finished size", (_REST, "The throw is 66 in square."), "P861"),
    ("the blurb's centimetres are not its inches", (_REST, "The mini is 20 in (51.8 cm)."), "P862"),
    (
        "a new step names a size that nothing has",
        inserted("Trim **A** to 16 1/4 in square."),
        "P861",
    ),
    ("a new step rounds a seam wrongly", inserted("Sew with a 1/4 in (5 mm) seam."), "P862"),
    (
        "a tip asks for a binding that is too short",
        step('{step: binding-press, tip: "Check that you have 250 in of it."}'),
        "P809",
    ),
    (
        "a reworded step tells another cut size",
        step(
            '{step: folding-square-samphire, text: "Take the motif square **A** of Samphire green, '
            '16 3/4 in (42.5 cm) square, and starch it."}'
        ),
        "P828",
    ),
    (
        "a new step asks for more motifs than are cut",
        inserted("For the **Throw** you need ten **A**.", "folding-square-samphire"),
        "P808",
    ),
    ("the top and bottom border are never sewn on", step("{remove: borders-mini-ends-1}"), "P804"),
    ("the outer side border is never sewn on", step("{remove: borders-throw-sides-2}"), "P804"),
    ("the backing is never laid down", step("{remove: quilting-layer}"), "P857"),
    ("the sleeve strip is never hemmed", step("{remove: sleeve-hem}"), "P857"),
    ("the binding strips are never joined", step("{remove: binding-join}"), "P857"),
    ("the pieced ground loses its first unit", step("{remove: piecing-half-ground}"), "P804"),
    ("the layers are never basted", step("{remove: quilting-baste}"), "P857"),
    ("the binding is never finished on the back", step("{remove: binding-finish}"), "P857"),
    ("the last of three folds is left out", step("{remove: folding-diagonal-8}"), "P857"),
    ("inside corners are never explained", step("{remove: applique-corners}"), "P857"),
    ("the motif is never laid on its ground", step("{remove: placing-centre}"), "P857"),
    ("the wedge is never cut", step("{remove: marking-and-cutting-the-motif-cut-8}"), "P857"),
    (
        "the basting comes out before anything is quilted",
        step("{move: quilting-unpin, before: quilting-begin}"),
        "P859",
    ),
    (
        "blocks are trimmed before anything is sewn on",
        step("{move: applique-trim, before: applique-thread}"),
        "P859",
    ),
    (
        "the strip is pressed in half before strips are joined",
        step("{move: binding-join, after: binding-press}"),
        "P859",
    ),
    ("the last fold has no picture", step("{step: folding-diagonal-8, figure: none}"), "P866"),
    (
        "laying the template on the folds has no picture",
        step("{step: marking-and-cutting-the-motif-align-8, figure: none}"),
        "P866",
    ),
    (
        "a step speaks of a picture that it does not have",
        step("{step: marking-and-cutting-the-motif-cut-8, figure: none}"),
        "P866",
    ),
    ("a new step uses a short form", inserted("Trim the HSTs."), "P863"),
    (
        "a new step uses a term that nothing explains",
        inserted("Stay-stitch the long edges."),
        "P865",
    ),
    (
        "a new step uses another term",
        inserted("Fussy-cut the centres.", "folding-square-samphire"),
        "P865",
    ),
    (
        "a new step uses a tool that is not listed",
        inserted("Trace the motif over a light box.", "folding-square-samphire"),
        "P868",
    ),
    (
        "a new step uses glue that is not listed",
        inserted("Hold it with a fabric glue stick.", "placing-align"),
        "P868",
    ),
    (
        "a new step brings in a blade without a caution",
        inserted("Cut the paper with a craft knife.", "folding-square-samphire"),
        "P869",
    ),
    (
        "a new step brings in a flame without a caution",
        inserted("Melt the ends with a lighter.", "sleeve-hem"),
        "P869",
    ),
    (
        "a new step sews a piece that there is not",
        inserted("Sew **Q** to the top.", "borders-mini-sides-1"),
        "P805",
    ),
    (
        "a reworded step takes the wrong letter",
        step(
            '{step: borders-mini-sides-1, text: "Sew the two side strips **E** to the top and '
            'press."}'
        ),
        "P804",
    ),
    (
        "the licence is left out",
        (
            "  licence: >-\n    You may sew as many pieces from this pattern as you like, to keep, "
            "give or sell by\n    your own hand. Please do not copy or share the pattern itself.\n",
            "",
        ),
        "W504",
    ),
    ("there is no address for mistakes", ("  contact: patterns@hollowfen.example\n", ""), "W505"),
    ("the stock number is left out", ("  stock_number: HF-101\n", ""), "P854"),
    (
        "the motif is cut from the ground's own fabric",
        ("    folds: 8\n    fabric: samphire", "    folds: 8\n    fabric: linen"),
        "P848",
    ),
    (
        "the ground is as dark as the motif",
        ('name: Salt linen\n    colour: "#f0e9d9"', 'name: Salt linen\n    colour: "#3d6a5c"'),
        "P848",
    ),
    (
        "two fabrics of the ground look the same",
        ('name: Sandbar\n    colour: "#dfd0b2"', 'name: Sandbar\n    colour: "#efe8d8"'),
        "P848",
    ),
    (
        "one colourway loses the motif",
        ('name: Shell, colour: "#f3ece6"', 'name: Shell, colour: "#8a3b44"'),
        "P848",
    ),
    ("a motif is too fine at one size", ("motif_size: 14 in\n", "motif_size: 3 in\n"), "D332"),
    (
        "a motif runs to the edge of its block",
        ("motif_size: 14 in\n", "motif_size: 15 7/8 in\n"),
        "D336",
    ),
    (
        "a turn-under is wider than the slits allow",
        ("turn_under: 1/8 in", "turn_under: 1/2 in"),
        "D333",
    ),
    (
        "a border is narrower than its seams",
        ("{width: 1 in, fabric: glasswort}", "{width: 3/8 in, fabric: glasswort}"),
        "G203",
    ),
    (
        "quilting lies further apart than the batting allows",
        ("style: echo, spacing: 3/4 in", "style: echo, spacing: 9 in"),
        "G207",
    ),
    (
        "a pillow is given a sleeve",
        ("    finish: pillow\n", "    finish: pillow\n    sleeve: 3 in\n"),
        "G206",
    ),
    (
        "the backing ends where the batting does",
        ("  overhang: 4 in\n", "  overhang: 2 in\n"),
        "G209",
    ),
    ("a pillow's form is far too large", ("form: 18 in", "form: 26 in"), "G205"),
    (
        "the binding names a fabric that there is not",
        ("  fabric: glasswort\n  width: 2 1/4 in", "  fabric: glaswort\n  width: 2 1/4 in"),
        "R130",
    ),
    (
        "a fabric is declared and never used",
        ("  mist:\n    name", '  reed:\n    name: Reed\n    colour: "#998844"\n  mist:\n    name'),
        "R144",
    ),
    ("two sizes carry one title", ("title: Pillow", "title: Throw"), "W502"),
    (
        "a fabric is too narrow for its piece",
        ("name: Salt linen\n", "name: Salt linen\n    usable_width: 16 in\n"),
        "C401",
    ),
    ("a length has no unit", ("block_size: 17 in", "block_size: 17"), "R121"),
    ("a size has lost its motif's size", ("    motif_size: 14 1/2 in\n", ""), "R111"),
    (
        "the fabric at hand is too short",
        ("name: Creek mist\n", "name: Creek mist\n    owned: 1 yd\n"),
        "C403",
    ),
)

"""The schema of the design: motifs, blocks, and the sizes they are made in.

In: forms, shapes and the cloth's sections. Out: sections for `schema`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.read.forms import Choice, Number, Text, Whole
from publish.read.schema_cloth import BACKING, BATTING, BINDING, FABRIC_KEY, QUILTING
from publish.read.sections import Either, Idle, Key, Many, Needs, Row, Section
from publish.read.special import Drawing, Length, Ref

FOLDS = (4, 6, 8, 12, 16)
TURN_UNDER = "1/8 in"
"""Where edges are turned. Common practice, no source."""

POINT = Row(
    (Number(-100, 100), Number(-100, 100), Choice(("corner",))),
    least=2,
    words="a point `[x, y]`, or `[x, y, corner]` where the line turns sharply",
)

MOTIF = Section(
    "motif",
    "A paper-cut motif: what it looks like, how the cloth is folded, how it is applied.",
    (
        Key("drawing", Drawing(), "The SVG file that shows the motif.", "bulrush.svg"),
        Key("outline", Many(POINT, 3, 400), "The motif's outline written out, in hundredths of "
            "half its span from the centre, y downwards.",
            "[[0, 0, corner], [60, 0], [90, 30], [40, 40, corner]]"),
        Key("element", Text(80, blank=False), "The id of the shape in the drawing, where there "
            "are others.", "wedge", default="none"),
        Key("covers", Choice(("wedge", "whole")), "Whether the drawing shows one wedge of the "
            "folded cloth or the whole motif, opened out.", "whole", default="wedge"),
        Key("folds", Whole(4, 16, only=FOLDS), "How many wedges the cloth is folded into.",
            "8", required=True),
        Key("symmetry", Choice(("mirror", "turning")), "Whether neighbouring wedges mirror each "
            "other, as folded cloth does, or turn about the centre.", "turning",
            default="mirror"),
        Key("method", Choice(("needle-turn", "prepared edge", "fusible")), "How the motif is "
            "applied: edges turned with the needle, turned beforehand, or fused and left raw.",
            "fusible", default="needle-turn"),
        Key("fabric", FABRIC_KEY, "The fabric that the motif is cut from.", "moss",
            required=True),
        Key("turn_under", Length("0 in", "1/2 in"), "The allowance turned under round the motif.",
            "3/16 in", derived=f"`{TURN_UNDER}`; `0 in` for `fusible`"),
        Key("smallest_neck", Length("0 in", "4 in", above=True), "The narrowest bridge of cloth "
            "that may be left.", "3/8 in", derived="what the method allows"),
        Key("smallest_slit", Length("0 in", "4 in", above=True), "The narrowest gap that may be "
            "cut.", "3/8 in", derived="what the method allows"),
        Key("sharpest_tip", Whole(1, 180, unit="degrees"), "The sharpest point that may be "
            "turned.", "30", derived="what the method allows"),
        Key("pieces", Whole(1, 100), "How many separate pieces the motif is meant to fall into.",
            "1", default="1"),
    ),
    one_of=("drawing", "outline"),
)  # fmt: skip

GROUND = Section(
    "ground",
    "A pieced ground: a grid of equal patches.",
    (
        Key("rows", Many(Many(FABRIC_KEY, 1, 24), 1, 24), "The fabrics of the patches, row by "
            "row from the top; every row has as many.", "[[linen, sand], [sand, linen]]",
            required=True),
    ),
)  # fmt: skip

BLOCK = Section(
    "block",
    "A square block: its ground, and the motif laid over it.",
    (
        Key("ground", Either(FABRIC_KEY, GROUND), "The fabric behind the motif, or a grid of "
            "fabrics.", "linen", required=True),
        Key("motif", Ref("motifs", "motif"), "The motif laid over the ground.", "bulrush",
            default="none"),
    ),
)  # fmt: skip

BORDER = Section(
    "border",
    "A border; the list goes from the blocks outwards.",
    (
        Key("width", Length("0 in", "60 in", above=True), "The finished width.", "2 in",
            required=True),
        Key("fabric", FABRIC_KEY, "The fabric of the border.", "linen", required=True),
        Key("corners", Choice(("butted", "mitred")), "How the corners meet: sides first and then "
            "top and bottom, or on the diagonal.", "mitred", default="butted"),
    ),
)  # fmt: skip

PILLOW = Section(
    "pillow",
    "How a pillow is finished.",
    (
        Key("form", Length("4 in", "60 in"), "The side of the square pillow form.", "18 in",
            required=True),
        Key("back", Choice(("envelope", "zip")), "Two overlapping backs, or one with a zip.",
            "zip", default="envelope"),
        Key("fabric", FABRIC_KEY, "The fabric of the back.", "moss",
            derived="the backing's fabric"),
        Key("overlap", Length("0 in", "30 in", above=True), "The finished overlap of an envelope "
            "back.", "5 in", default="4 in"),
        Key("hem", Length("0 in", "4 in"), "What the hem on the inner edge of each envelope back "
            "takes up.", "1 in", default="1 in"),
        Key("seam", Length("1/8 in", "1 in"), "The seam that joins front and back.", "3/8 in",
            default="1/2 in"),
    ),
    idle=(Idle("back", ("zip",), "overlap"), Idle("back", ("zip",), "hem")),
)  # fmt: skip

_LIKE = "As under the pattern's own `{0}`, for this size alone; keys left out are taken from there."

SIZE = Section(
    "size",
    "A size the pattern is made in. Its key is your own short name for it.",
    (
        Key("title", Text(40, blank=False), "What the booklet calls the size.", "Mini wall quilt",
            derived="the size's key with a capital"),
        Key("finish", Choice(("quilt", "pillow")), "What is made.", "pillow", default="quilt"),
        Key("block", Either(Ref("blocks", "block"), Many(Ref("blocks", "block"), 1, 100)),
            "The block, or several used in turn along each row and on through the rows.",
            "[bulrush, plain]", derived="the first block"),
        Key("columns", Whole(1, 50), "How many blocks stand side by side.", "3", default="1"),
        Key("rows", Whole(1, 50), "How many rows of blocks there are.", "4", default="1"),
        Key("block_size", Length("1 in", "120 in"), "The finished side of a block.", "16 in",
            required=True),
        Key("motif_size", Length("1/2 in", "120 in"), "The finished width and height of the "
            "motif; needed where a block has one.", "14 in", default="none"),
        Key("borders", Many(BORDER, 0, 12), "The borders, from the blocks outwards.",
            "[{width: 2 in, fabric: linen}]", default="[]"),
        Key("sleeve", Length("1 in", "12 in"), "The finished depth of a hanging sleeve.", "4 in",
            default="none"),
        Key("pillow", PILLOW, "How the pillow is finished.", "{form: 18 in}", derived="no pillow"),
        Key("backing", BACKING, _LIKE.format("backing"), "{overhang: 2 in}",
            derived="the pattern's own"),
        Key("batting", BATTING, _LIKE.format("batting"), "{name: Wool}",
            derived="the pattern's own"),
        Key("binding", BINDING, _LIKE.format("binding"), "{width: 2 1/2 in}",
            derived="the pattern's own"),
        Key("quilting", Many(QUILTING, 1, 12), "As the pattern's own `quilting`, for this size "
            "alone; the whole list takes its place.",
            "[{area: ground, style: echo, spacing: 3/4 in}]", derived="the pattern's own"),
    ),
    needs=(Needs("finish", ("pillow",), "pillow"),),
    idle=(Idle("finish", ("quilt",), "pillow"),),
)  # fmt: skip

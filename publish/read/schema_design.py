"""The schema of the design: motifs, and the sizes that blocks are made in.

In: forms, shapes and the cloth's sections. Out: sections for `schema`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.model.trade import FOLDS
from publish.read.files import Drawing
from publish.read.forms import Choice, Number, Whole, YesNo
from publish.read.schema_blocks import BLOCK_KEY, TURN
from publish.read.schema_cloth import BACKING, BATTING, BINDING, FABRIC_KEY, QUILTING
from publish.read.sections import Either, Idle, Key, Many, Needs, Only, Row, Section
from publish.read.special import Length
from publish.read.texts import Text

TURN_UNDER = "1/8 in"
"""Where edges are turned. Common practice, no source."""

POINT = Row(
    (Number(-100, 100), Number(-100, 100), Choice(("corner",))),
    least=2,
    words="a point `[x, y]`, or `[x, y, corner]` where the line turns sharply",
)

LAY = Section(
    "lay",
    "How an ornament lies in the wedge: a leaf, a letter, an icon that was drawn for no folds. "
    "Its top points away from the centre. The motif is made to its finished size whatever is "
    "said, so `distance` and `size` count one against the other.",
    (
        Key("along", Choice(("halving line", "first fold", "second fold")), "The line of the "
            "wedge that its middle lies on.", "first fold", default="halving line"),
        Key("distance", Number(-100, 99), "How far from the centre its near end lies, in "
            "hundredths of the motif's half span; below 0, beyond the centre.", "20",
            derived="what `size` leaves; without that, as far as both folds still hold it"),
        Key("size", Number(1, 300), "How long it is along its line, in hundredths of the motif's "
            "half span.", "80", derived="what `distance` leaves"),
        Key("turn", Whole(0, 359, unit="degrees"), "How far it is turned clockwise about its own "
            "middle.", "180", default="0"),
    ),
)  # fmt: skip

MOTIF = Section(
    "motif",
    "A paper-cut motif: what it looks like, how the cloth is folded, how it is applied.",
    (
        Key("drawing", Drawing(), "The SVG file that shows the motif, or a photo or "
            "scan of the cut paper, which is traced.", "bulrush.svg"),
        Key("outline", Many(POINT, 3, 400), "The motif's outline written out, in hundredths of "
            "half its span from the centre, y downwards.",
            "[[0, 0, corner], [60, 0], [90, 30], [40, 40, corner]]"),
        Key("element", Text(80, blank=False), "The id of the shape in the drawing, where there "
            "are others.", "wedge", default="none"),
        Key("covers", Choice(("wedge", "whole")), "Whether the drawing shows one wedge of the "
            "folded cloth or the whole motif, opened out.", "whole", default="wedge"),
        Key("lay", LAY, "How the drawing lies in the wedge, where it is an ornament and shows no "
            "wedge.", "{along: first fold, distance: 20}",
            derived="along the halving line, cut by both folds, where no wedge is found"),
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
        Key("stabiliser", YesNo(), "Whether stabiliser goes under the ground while the motif's "
            "edge is stitched.", "yes", default="no"),
    ),
    one_of=("drawing", "outline"),
    needs=(Needs("lay", (), "drawing"),),
    idle=(Idle("method", ("needle-turn",), "stabiliser"), Idle("covers", ("whole",), "lay")),
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

SASHING = Section(
    "sashing",
    "Strips between the blocks.",
    (
        Key("width", Length("0 in", "24 in", above=True), "The finished width.", "2 in",
            required=True),
        Key("fabric", FABRIC_KEY, "The fabric of the strips.", "linen", required=True),
        Key("cornerstones", FABRIC_KEY, "The fabric of the squares where strips cross; without "
            "them the strips between rows run through.", "moss", default="none"),
        Key("outer", YesNo(), "Whether strips also go round the outside; on point they always "
            "do, and the edge of the top runs through the middle of the outermost crossings.",
            "yes", default="no"),
    ),
)  # fmt: skip

_BLOCKS = Either(BLOCK_KEY, Many(BLOCK_KEY, 1, 100))
_TURNS = Many(TURN, 1, 100)

ROUND = Section(
    "round",
    "One round of a medallion: a border, or a round of blocks; the list goes from the centre "
    "outwards. What a round of blocks surrounds must be a whole number of its blocks wide and "
    "high.",
    (
        Key("border", BORDER, "A border.", "{width: 2 in, fabric: linen}"),
        Key("blocks", _BLOCKS, "A block for the whole round, or several used in turn along each "
            "side, clockwise, beginning anew at each corner. A block of a round has no motif.",
            "[corner, goose]"),
        Key("block_size", Length("1 in", "120 in"), "The finished side of the round's blocks.",
            "4 in", derived="given with `blocks`"),
        Key("turns", _TURNS, "How far the blocks are turned, used in turn as `blocks` are, and "
            "added to the turn of their side: none at the top, 90 on the right, 180 below, 270 "
            "on the left.", "[0, 90]", default="[0]"),
    ),
    one_of=("border", "blocks"),
    needs=(Needs("blocks", (), "block_size"),),
    only=(Only("block_size", ("blocks",)), Only("turns", ("blocks",))),
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
        Key("title", Text(40, blank=False, name=True), "What the booklet calls the size.",
            "Mini wall quilt", derived="the size's key with a capital"),
        Key("finish", Choice(("quilt", "pillow")), "What is made.", "pillow", default="quilt"),
        Key("block", _BLOCKS, "The block, or several used in turn along each row "
            "and on through the rows.", "[bulrush, plain]", derived="the first block"),
        Key("turns", _TURNS, "How far the blocks are turned, used in turn as `block` is.",
            "[0, 90]", default="[0]"),
        Key("setting", Choice(("straight", "on point")), "Whether blocks stand side by side, or "
            "on point: turned a further 45 degrees clockwise, so that their top left corner "
            "stands uppermost, with other blocks between them and triangles at the edges.",
            "on point", default="straight"),
        Key("alternate", _BLOCKS, "On point, the block between the rows; straight, that of every "
            "other place, as on a checkerboard. Several are used in turn along each row and on "
            "through the rows.", "plain",
            derived="on point, the blocks of `block` from the first; straight, none"),
        Key("alternate_turns", _TURNS, "How far the blocks of `alternate` are turned, used in "
            "turn.", "[0, 90]", default="[0]"),
        Key("setting_fabric", FABRIC_KEY, "On point: the fabric of the triangles along the sides "
            "and at the corners.", "linen", derived="given with `on point`"),
        Key("sashing", SASHING, "Strips between the blocks.", "{width: 2 in, fabric: linen}",
            derived="no sashing"),
        Key("columns", Whole(1, 50), "How many blocks stand side by side.", "3", default="1"),
        Key("rows", Whole(1, 50), "How many rows of blocks there are.", "4", default="1"),
        Key("block_size", Length("1 in", "120 in"), "The finished side of a block.", "16 in",
            required=True),
        Key("motif_size", Length("1/2 in", "120 in"), "The finished width and height of the "
            "motif; needed where a block has one.", "14 in", default="none"),
        Key("borders", Many(BORDER, 0, 12), "The borders, from the blocks outwards.",
            "[{width: 2 in, fabric: linen}]", default="[]"),
        Key("rounds", Many(ROUND, 1, 20), "In place of `borders`, for a medallion: borders and "
            "rounds of blocks, from the centre outwards.", "[{border: {width: 1 in, fabric: "
            "linen}}, {blocks: plain, block_size: 3 in}]", derived="no rounds"),
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
    needs=(Needs("finish", ("pillow",), "pillow"),
           Needs("setting", ("on point",), "setting_fabric")),
    idle=(Idle("finish", ("quilt",), "pillow"),
          Idle("setting", ("straight",), "setting_fabric")),
    apart=("borders", "rounds"),
)  # fmt: skip

"""The schema of the design: motifs, and the sizes that blocks are made in.

In: forms, shapes and the cloth's sections. Out: sections for `schema`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.model.trade import FOLDS
from publish.read.files import Drawing
from publish.read.forms import Choice, Number, Whole, YesNo
from publish.read.schema_blocks import BLOCK_KEY, TURN
from publish.read.schema_cloth import FABRIC_KEY
from publish.read.sections import Either, Idle, Key, Many, Needs, Only, Row, Section
from publish.read.special import Length
from publish.read.texts import Text

TURN_UNDER, METRIC_TURN_UNDER = "1/8 in", "3 mm"
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
        Key(
            "along",
            Choice(("halving line", "first fold", "second fold")),
            "The line of the wedge that its middle lies on.",
            "first fold",
            default="halving line",
        ),
        Key(
            "distance",
            Number(-100, 99),
            "How far from the centre its near end lies, in "
            "hundredths of the motif's half span; below 0, beyond the centre.",
            "20",
            derived="what `size` leaves; without that, as far as both folds still hold it",
        ),
        Key(
            "size",
            Number(1, 300),
            "How long it is along its line, in hundredths of the motif's half span.",
            "80",
            derived="what `distance` leaves",
        ),
        Key(
            "turn",
            Whole(0, 359, unit="degrees"),
            "How far it is turned clockwise about its own middle.",
            "180",
            default="0",
        ),
    ),
)

MOTIF = Section(
    "motif",
    "A paper-cut motif: what it looks like, how the cloth is folded, how it is applied.",
    (
        Key(
            "drawing",
            Drawing(),
            "The SVG file that shows the motif, or a photo or "
            "scan of the cut paper, which is traced.",
            "bulrush.svg",
        ),
        Key(
            "outline",
            Many(POINT, 3, 400),
            "The motif's outline written out, in hundredths of "
            "half its span from the centre, y downwards.",
            "[[0, 0, corner], [60, 0], [90, 30], [40, 40, corner]]",
        ),
        Key(
            "element",
            Text(80, blank=False),
            "The id of the shape in the drawing, where there are others.",
            "wedge",
            default="none",
        ),
        Key(
            "covers",
            Choice(("wedge", "whole")),
            "Whether the drawing shows one wedge of the "
            "folded cloth or the whole motif, opened out.",
            "whole",
            default="wedge",
        ),
        Key(
            "lay",
            LAY,
            "How the drawing lies in the wedge, where it is an ornament and shows no wedge.",
            "{along: first fold, distance: 20}",
            derived="along the halving line, cut by both folds, where no wedge is found",
        ),
        Key(
            "folds",
            Whole(4, 16, only=FOLDS),
            "How many wedges the cloth is folded into.",
            "8",
            required=True,
        ),
        Key(
            "symmetry",
            Choice(("mirror", "turning")),
            "Whether neighbouring wedges mirror each "
            "other, as folded cloth does, or turn about the centre.",
            "turning",
            default="mirror",
        ),
        Key(
            "method",
            Choice(("needle-turn", "prepared edge", "fusible")),
            "How the motif is "
            "applied: edges turned with the needle, turned beforehand, or fused and left raw.",
            "fusible",
            default="needle-turn",
        ),
        Key("fabric", FABRIC_KEY, "The fabric that the motif is cut from.", "moss", required=True),
        Key(
            "turn_under",
            Length("0 in", "1/2 in"),
            "The allowance turned under round the motif.",
            "3/16 in",
            derived=f"`{TURN_UNDER}`, in metric `{METRIC_TURN_UNDER}`; `0 in` for `fusible`",
        ),
        Key(
            "smallest_neck",
            Length("0 in", "4 in", above=True),
            "The narrowest bridge of cloth that may be left.",
            "3/8 in",
            derived="what the method allows",
        ),
        Key(
            "smallest_slit",
            Length("0 in", "4 in", above=True),
            "The narrowest gap that may be cut.",
            "3/8 in",
            derived="what the method allows",
        ),
        Key(
            "sharpest_tip",
            Whole(1, 180, unit="degrees"),
            "The sharpest point that may be turned.",
            "30",
            derived="what the method allows",
        ),
        Key(
            "pieces",
            Whole(1, 100),
            "How many separate pieces the motif is meant to fall into.",
            "1",
            default="1",
        ),
        Key(
            "stabiliser",
            YesNo(),
            "Whether stabiliser goes under the ground while the motif's edge is stitched.",
            "yes",
            default="no",
        ),
    ),
    one_of=("drawing", "outline"),
    needs=(Needs("lay", (), "drawing"),),
    idle=(Idle("method", ("needle-turn",), "stabiliser"), Idle("covers", ("whole",), "lay")),
)

BORDER = Section(
    "border",
    "A border; the list goes from the blocks outwards.",
    (
        Key(
            "width",
            Length("0 in", "60 in", above=True),
            "The finished width.",
            "2 in",
            required=True,
        ),
        Key("fabric", FABRIC_KEY, "The fabric of the border.", "linen", required=True),
        Key(
            "corners",
            Choice(("butted", "mitred")),
            "How the corners meet: sides first and then top and bottom, or on the diagonal.",
            "mitred",
            default="butted",
        ),
    ),
)

SASHING = Section(
    "sashing",
    "Strips between the blocks.",
    (
        Key(
            "width",
            Length("0 in", "24 in", above=True),
            "The finished width.",
            "2 in",
            required=True,
        ),
        Key("fabric", FABRIC_KEY, "The fabric of the strips.", "linen", required=True),
        Key(
            "cornerstones",
            FABRIC_KEY,
            "The fabric of the squares where strips cross; without "
            "them the strips between rows run through.",
            "moss",
            default="none",
        ),
        Key(
            "outer",
            YesNo(),
            "Whether strips also go round the outside; on point they always "
            "do, and the edge of the top runs through the middle of the outermost crossings.",
            "yes",
            default="no",
        ),
    ),
)

BLOCKS = Either(BLOCK_KEY, Many(BLOCK_KEY, 1, 100))
TURNS = Many(TURN, 1, 100)

ROUND = Section(
    "round",
    "One round of a medallion: a border, or a round of blocks; the list goes from the centre "
    "outwards. What a round of blocks surrounds must be a whole number of its blocks wide and "
    "high.",
    (
        Key("border", BORDER, "A border.", "{width: 2 in, fabric: linen}"),
        Key(
            "blocks",
            BLOCKS,
            "A block for the whole round, or several used in turn along each "
            "side, clockwise, beginning anew at each corner. A block of a round has no motif.",
            "[corner, goose]",
        ),
        Key(
            "block_size",
            Length("1 in", "120 in"),
            "The finished side of the round's blocks.",
            "4 in",
            derived="given with `blocks`",
        ),
        Key(
            "turns",
            TURNS,
            "How far the blocks are turned, used in turn as `blocks` are, and "
            "added to the turn of their side: none at the top, 90 on the right, 180 below, 270 "
            "on the left.",
            "[0, 90]",
            default="[0]",
        ),
    ),
    one_of=("border", "blocks"),
    needs=(Needs("blocks", (), "block_size"),),
    only=(Only("block_size", ("blocks",)), Only("turns", ("blocks",))),
)

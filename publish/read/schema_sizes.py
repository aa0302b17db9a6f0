"""The schema of sizes: a quilt of so many blocks, with all that its own keys can change.

In: forms, shapes and the design's sections. Out: sections for `schema`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.read.forms import Choice, Whole
from publish.read.schema_cloth import FABRIC_KEY
from publish.read.schema_design import BLOCKS, BORDER, ROUND, SASHING, TURNS
from publish.read.schema_sewing import BACKING, BATTING, BINDING, QUILTING
from publish.read.sections import Idle, Key, Many, Needs, Section
from publish.read.special import Length
from publish.read.texts import Text

PILLOW = Section(
    "pillow",
    "How a pillow is finished.",
    (
        Key(
            "form",
            Length("4 in", "60 in"),
            "The side of the square pillow form.",
            "18 in",
            required=True,
        ),
        Key(
            "back",
            Choice(("envelope", "zip")),
            "Two overlapping backs, or one with a zip.",
            "zip",
            default="envelope",
        ),
        Key(
            "fabric", FABRIC_KEY, "The fabric of the back.", "moss", derived="the backing's fabric"
        ),
        Key(
            "overlap",
            Length("0 in", "30 in", above=True),
            "The finished overlap of an envelope back.",
            "5 in",
            default="4 in",
            metric="10 cm",
        ),
        Key(
            "hem",
            Length("0 in", "4 in"),
            "What the hem on the inner edge of each envelope back takes up.",
            "1 in",
            default="1 in",
            metric="2.5 cm",
        ),
        Key(
            "seam",
            Length("1/8 in", "1 in"),
            "The seam that joins front and back.",
            "3/8 in",
            default="1/2 in",
            metric="1.5 cm",
        ),
    ),
    idle=(Idle("back", ("zip",), "overlap"), Idle("back", ("zip",), "hem")),
)


_LIKE = "As under the pattern's own `{0}`, for this size alone; keys left out are taken from there."


SIZE = Section(
    "size",
    "A size the pattern is made in. Its key is your own short name for it.",
    (
        Key(
            "title",
            Text(40, blank=False, name=True),
            "What the booklet calls the size.",
            "Mini wall quilt",
            derived="the size's key with a capital",
        ),
        Key("finish", Choice(("quilt", "pillow")), "What is made.", "pillow", default="quilt"),
        Key(
            "block",
            BLOCKS,
            "The block, or several used in turn along each row and on through the rows.",
            "[bulrush, plain]",
            derived="the first block",
        ),
        Key(
            "turns",
            TURNS,
            "How far the blocks are turned, used in turn as `block` is.",
            "[0, 90]",
            default="[0]",
        ),
        Key(
            "setting",
            Choice(("straight", "on point")),
            "Whether blocks stand side by side, or "
            "on point: turned a further 45 degrees clockwise, so that their top left corner "
            "stands uppermost, with other blocks between them and triangles at the edges.",
            "on point",
            default="straight",
        ),
        Key(
            "alternate",
            BLOCKS,
            "On point, the block between the rows; straight, that of every "
            "other place, as on a checkerboard. Several are used in turn along each row and on "
            "through the rows.",
            "plain",
            derived="on point, the blocks of `block` from the first; straight, none",
        ),
        Key(
            "alternate_turns",
            TURNS,
            "How far the blocks of `alternate` are turned, used in turn.",
            "[0, 90]",
            default="[0]",
        ),
        Key(
            "setting_fabric",
            FABRIC_KEY,
            "On point: the fabric of the triangles along the sides and at the corners.",
            "linen",
            derived="given with `on point`",
        ),
        Key(
            "sashing",
            SASHING,
            "Strips between the blocks.",
            "{width: 2 in, fabric: linen}",
            derived="no sashing",
        ),
        Key("columns", Whole(1, 50), "How many blocks stand side by side.", "3", default="1"),
        Key("rows", Whole(1, 50), "How many rows of blocks there are.", "4", default="1"),
        Key(
            "block_size",
            Length("1 in", "120 in"),
            "The finished side of a block.",
            "16 in",
            required=True,
        ),
        Key(
            "motif_size",
            Length("1/2 in", "120 in"),
            "The finished width and height of the motif; needed where a block has one.",
            "14 in",
            default="none",
        ),
        Key(
            "borders",
            Many(BORDER, 0, 12),
            "The borders, from the blocks outwards.",
            "[{width: 2 in, fabric: linen}]",
            default="[]",
        ),
        Key(
            "rounds",
            Many(ROUND, 1, 20),
            "In place of `borders`, for a medallion: borders and "
            "rounds of blocks, from the centre outwards.",
            "[{border: {width: 1 in, fabric: linen}}, {blocks: plain, block_size: 3 in}]",
            derived="no rounds",
        ),
        Key(
            "sleeve",
            Length("1 in", "12 in"),
            "The finished depth of a hanging sleeve.",
            "4 in",
            default="none",
        ),
        Key("pillow", PILLOW, "How the pillow is finished.", "{form: 18 in}", derived="no pillow"),
        Key(
            "backing",
            BACKING,
            _LIKE.format("backing"),
            "{overhang: 2 in}",
            derived="the pattern's own",
        ),
        Key(
            "batting", BATTING, _LIKE.format("batting"), "{name: Wool}", derived="the pattern's own"
        ),
        Key(
            "binding",
            BINDING,
            _LIKE.format("binding"),
            "{width: 2 1/2 in}",
            derived="the pattern's own",
        ),
        Key(
            "quilting",
            Many(QUILTING, 1, 12),
            "As the pattern's own `quilting`, for this size alone; the whole list takes its place.",
            "[{area: ground, style: echo, spacing: 3/4 in}]",
            derived="the pattern's own",
        ),
    ),
    needs=(
        Needs("finish", ("pillow",), "pillow"),
        Needs("setting", ("on point",), "setting_fabric"),
    ),
    idle=(Idle("finish", ("quilt",), "pillow"), Idle("setting", ("straight",), "setting_fabric")),
    apart=("borders", "rounds"),
)

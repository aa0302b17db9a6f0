"""The schema of blocks: grounds, patches, blocks within blocks, how units are pieced.

In: forms and shapes. Out: sections for `schema` and for the library of traditional blocks.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.read.forms import Choice, Name, Number, Whole, YesNo
from publish.read.schema_cloth import FABRIC_KEY
from publish.read.sections import Either, Key, Many, Needs, Only, Pairs, Row, Section
from publish.read.special import Ref
from publish.read.texts import Text
from publish.read.trade_names import TradeName

LARGEST_GRID = 96
QUARTERS = (0, 90, 180, 270)
BLOCK_KEY = Ref("blocks", "block")

TURN = Whole(0, 270, only=QUARTERS, unit="degrees clockwise")
_PLACE = Number(-LARGEST_GRID, LARGEST_GRID)
_EXTENT = Number(0, LARGEST_GRID)

GRID = Row(
    (Whole(1, LARGEST_GRID), Whole(1, LARGEST_GRID)),
    least=2,
    words=f"`[columns, rows]`, whole numbers from 1 to {LARGEST_GRID}",
    example="[3, 3]",
)
CORNER = Row((_PLACE, _PLACE), least=2, words="a grid point `[x, y]`", example="[1, 0]")
BEND = Row(
    (_PLACE, _PLACE, Choice(("arc",))),
    least=2,
    words="a grid point `[x, y]`, or `[x, y, arc]` for a point that a curved edge runs through",
    example="[1, 0]",
)

_SHAPES = ("square", "rectangle", "triangle", "points")

PATCH = Section(
    "patch",
    "A patch of a block, or another block set into it. Coordinates count grid squares from "
    "the block's top left corner, x to the right and y downwards; halves and thirds are "
    "written as fractions. Patches meet edge to edge and fill the grid. Of the blocks "
    "within a block their patches count, not their motifs or their piecing.",
    (
        Key(
            "fabric",
            FABRIC_KEY,
            "The fabric of the patch.",
            "linen",
            derived="given for every patch with a shape of its own",
        ),
        Key(
            "square",
            Row((_PLACE, _PLACE, _EXTENT), 3, "`[x, y, side]`", "[0, 0, 1]"),
            "A square: its top left corner and its side.",
            "[0, 0, 1]",
        ),
        Key(
            "rectangle",
            Row((_PLACE, _PLACE, _EXTENT, _EXTENT), 4, "`[x, y, width, height]`", "[0, 0, 1, 2]"),
            "A rectangle: its top left corner, width and height.",
            "[0, 0, 1, 1/2]",
        ),
        Key(
            "triangle",
            Many(CORNER, 3, 3),
            "A triangle: its three corners.",
            "[[0, 0], [1, 0], [0, 1]]",
        ),
        Key(
            "points",
            Many(BEND, 2, 100),
            "Any other shape: its corners in order round it. A "
            "point marked `arc` is no corner: the edge between the corners on either side of it "
            "runs through it as part of a circle.",
            "[[0, 0], [5, 0], [3, 4, arc], [0, 5]]",
        ),
        Key(
            "name",
            Name(),
            "Your name for the patch, for use in `foundation`.",
            "wing",
            derived="no name",
        ),
        Key("block", BLOCK_KEY, "Another block that stands here.", "goose"),
        Key(
            "at",
            Row((_PLACE, _PLACE), 2, "a grid point `[x, y]`", "[0, 0]"),
            "The top left corner of that block.",
            "[2, 0]",
            derived="given for every block within the block",
        ),
        Key(
            "size",
            Row((_EXTENT, _EXTENT), 2, "`[width, height]` in grid squares", "[2, 1]"),
            "The width and height that the block fills, once turned.",
            "[2, 1]",
            derived="as many squares as its own grid has, turned with it",
        ),
        Key("turn", TURN, "How far the block is turned.", "90", default="0"),
        Key(
            "mirror",
            YesNo(),
            "Whether the block is mirrored, left for right, before it is turned.",
            "yes",
            default="no",
        ),
        Key(
            "fabrics",
            Pairs(FABRIC_KEY, "fabric of the block that stands here"),
            "Fabrics that take the place of the block's own.",
            "{linen: moss}",
            derived="the block's own fabrics",
        ),
    ),
    one_of=(*_SHAPES, "block"),
    needs=(*(Needs(shape, (), "fabric") for shape in _SHAPES), Needs("block", (), "at")),
    only=(
        Only("fabric", _SHAPES),
        *(Only(key, ("block",)) for key in ("at", "size", "turn", "mirror", "fabrics")),
    ),
)

PATCHES = Many(PATCH, 1, 400)

GROUND = Section(
    "ground",
    "A pieced ground: a grid of equal patches.",
    (
        Key(
            "rows",
            Many(Many(FABRIC_KEY, 1, 24), 1, 24),
            "The fabrics of the patches, row by row from the top; every row has as many.",
            "[[linen, sand], [sand, linen]]",
            required=True,
        ),
    ),
)

_PAIR = Choice(("singly", "two at once"))

PIECING = Section(
    "piecing",
    "How units that repeat are cut and sewn: `singly`, from patches cut to their own size, or "
    "several at once, which is quicker and has no bias edges to handle.",
    (
        Key(
            "triangles",
            _PAIR,
            "Squares of two triangles; `two at once`: from two squares, sewn "
            "on both sides of a diagonal and cut apart on it.",
            "two at once",
            default="singly",
        ),
        Key(
            "hourglasses",
            _PAIR,
            "Squares of four triangles that meet in the middle; `two at "
            "once`: from two squares of two triangles each.",
            "two at once",
            default="singly",
        ),
        Key(
            "geese",
            Choice(("singly", "four at once")),
            "Rectangles of one large triangle and "
            "two small ones; `four at once`: from one large square and four small ones.",
            "four at once",
            default="singly",
        ),
        Key(
            "corners",
            Choice(("singly", "flipped")),
            "Small triangles on the corners of a "
            "square or rectangle; `flipped`: squares sewn across the corners and folded "
            "out.",
            "flipped",
            default="singly",
        ),
        Key(
            "strips",
            Choice(("singly", "strip sets")),
            "Rectangles side by side that repeat; "
            "`strip sets`: long strips are joined and cut across.",
            "strip sets",
            default="singly",
        ),
    ),
)

BLOCK = Section(
    "block",
    "A square block: its ground, or the patches it is pieced from, and the motif laid over it.",
    (
        Key(
            "ground",
            Either(FABRIC_KEY, GROUND),
            "One fabric for the whole block, or a grid of fabrics.",
            "linen",
        ),
        Key(
            "patches",
            PATCHES,
            "The patches of the block, each with a shape and a fabric.",
            "[{fabric: linen, triangle: [[0, 0], [1, 0], [0, 1]]}, "
            "{fabric: moss, triangle: [[1, 0], [1, 1], [0, 1]]}]",
        ),
        Key(
            "traditional",
            TradeName(),
            "The trade name of a block in general use; its "
            "construction is known, and its roles are listed under [traditional "
            "blocks](#traditional-blocks).",
            "ohio star",
        ),
        Key(
            "grid",
            GRID,
            "How many grid squares the block is wide and high, for `patches`; a "
            "grid that is not square is stretched to fill the square block, or fills the `size` "
            "it is given within another.",
            "[3, 3]",
            derived="given with `patches`",
        ),
        Key(
            "fabrics",
            Pairs(FABRIC_KEY, "role of the traditional block"),
            "The fabric of each role, for `traditional`.",
            "{star: moss, background: linen}",
            derived="given with `traditional`",
        ),
        Key(
            "motif",
            Ref("motifs", "motif"),
            "The motif laid over the block.",
            "bulrush",
            default="none",
        ),
        Key(
            "foundation",
            Either(Choice(("derived",)), Many(Many(Text(60), 1, 60), 1, 40)),
            "For foundation piecing: `derived` finds sections and order from the shapes; a list "
            "of sections names the patches of each in the order of sewing, those of a block "
            "within the block with its name and a point before theirs. Patches in no section "
            "are pieced as usual; a derived section that is larger than a sheet leaves out "
            "rectangles at its edges, while a section of yours is printed as you list it.",
            "[[beak, brow, head]]",
            derived="no foundation",
        ),
        Key(
            "piecing",
            PIECING,
            "As the pattern's own `piecing`, for this block alone; keys left "
            "out are taken from there.",
            "{geese: four at once}",
            derived="the pattern's own",
        ),
    ),
    one_of=("ground", "patches", "traditional"),
    needs=(Needs("patches", (), "grid"), Needs("traditional", (), "fabrics")),
    only=(
        Only("grid", ("patches",)),
        Only("fabrics", ("traditional",)),
        Only("foundation", ("patches", "traditional")),
    ),
)

TRADITIONAL = Section(
    "traditional",
    "A traditional block of the library: as a block, with roles where a block has fabrics and "
    "trade names where it has keys.",
    (
        Key("name", Text(40, blank=False), "Its trade name.", "ohio star", required=True),
        Key(
            "also",
            Many(Text(40, blank=False), 1, 6),
            "Other trade names for it.",
            "[variable star]",
            derived="no other name",
        ),
        Key(
            "roles",
            Pairs(Text(80, blank=False), "role"),
            "What each fabric is for.",
            "{star: the points}",
            required=True,
        ),
        Key("grid", GRID, "Its grid squares.", "[3, 3]", required=True),
        Key(
            "patches", PATCHES, "Its patches.", "[{fabric: star, square: [0, 0, 1]}]", required=True
        ),
    ),
)

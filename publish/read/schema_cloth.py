"""The schema of cloth: fabrics, what there is of them, colourways.

In: forms and shapes. Out: sections for `schema`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.read.files import PHOTO
from publish.read.forms import Choice, Percent, Whole, YesNo
from publish.read.sections import Either, Idle, Key, Many, Needs, Section
from publish.read.special import Colour, Length, Ref
from publish.read.texts import Text

FABRIC_KEY = Ref("fabrics", "fabric")

PRECUT = Section(
    "precut",
    "A fabric sold ready cut, in packets of one size. It is not washed before it is cut.",
    (
        Key("squares", Length("2 in", "36 in"), "The side of the squares.", "10 in"),
        Key(
            "strips",
            Length("1 in", "12 in"),
            "The width of the strips, which are as long as the fabric's usable width.",
            "2 1/2 in",
        ),
        Key("count", Whole(1, 1000), "How many are sold together.", "42", default="1"),
    ),
    one_of=("squares", "strips"),
)

HAVE = Section(
    "have",
    "Cloth of one of the fabrics that is there already: a piece by its size, as it can be used "
    "once it is washed and its edges are straight, or fat quarters, squares or strips.",
    (
        Key("fabric", FABRIC_KEY, "The fabric.", "linen", required=True),
        Key(
            "width",
            Length("1 in", "130 in"),
            "What there is across the fabric, in the direction from selvage to selvage.",
            "22 in",
        ),
        Key(
            "length",
            Length("1 in", "100 yd"),
            "What there is along the fabric.",
            "18 in",
            derived="beside `width`, as that; nothing beside `precut`",
        ),
        Key(
            "precut",
            Either(Choice(("fat quarter", "fat eighth")), PRECUT),
            "What it was sold as, instead of its size.",
            "fat quarter",
        ),
        Key(
            "count",
            Whole(1, 1000),
            "How many of them there are; with the `count` of a packet, how many packets.",
            "3",
            default="1",
        ),
    ),
    one_of=("width", "precut"),
    needs=(Needs("width", (), "length"),),
    apart=("length", "precut"),
)

SWATCH = Section(
    "swatch",
    "A photograph of a printed fabric, taken straight on. It is laid at its true scale in the "
    "computed pictures and turned with each patch; the fabric keeps its `colour`.",
    (
        Key("file", PHOTO, "The picture, in the pattern's folder.", "reeds.jpg", required=True),
        Key(
            "width",
            Length("1/4 in", "130 in"),
            "How wide the cloth is that it shows.",
            "6 in",
            required=True,
        ),
    ),
)

FABRIC = Section(
    "fabric",
    "A fabric of the quilt. Its key is your own short name for it, used throughout the file.",
    (
        Key(
            "name",
            Text(60, blank=False, name=True),
            "What the booklet calls the fabric.",
            "Pale linen",
            required=True,
        ),
        Key(
            "colour",
            Colour(),
            "The colour it has in every figure, in quotes because a bare # begins a comment.",
            '"#f4efe6"',
            required=True,
        ),
        Key(
            "usable_width",
            Length("6 in", "130 in"),
            "The width left between the selvages; left out, that of `cloth`.",
            "42 in",
            default="40 in",
            metric="105 cm",
        ),
        Key(
            "directional",
            YesNo(),
            "Whether the print has an up and a down, so that no piece may be turned.",
            "yes",
            default="no",
        ),
        Key(
            "shrinkage",
            Percent(25),
            "The share of its length that the fabric loses in the "
            "wash; more is bought to make up for it. Left out, that of `cloth`.",
            "3%",
            default="0%",
        ),
        Key(
            "owned",
            Length("0 in", "100 yd", above=True),
            "The length you have already; a warning says when it is too little.",
            "1 1/2 yd",
            default="none",
        ),
        Key(
            "sold_as",
            Either(Choice(("yardage", "fat quarter", "fat eighth")), PRECUT),
            "How the fabric is bought: by length, as fat quarters (18 × 22 in, in metric "
            "50 × 55 cm), as fat eighths (half of that), or in squares or strips of a given size. "
            "Long strips are then joined from what fits.",
            "fat quarter",
            default="yardage",
        ),
        Key(
            "swatch",
            SWATCH,
            "A photograph of the fabric, if it is printed.",
            "{file: reeds.jpg, width: 6 in}",
            derived="plain cloth of its colour",
        ),
    ),
    idle=(Idle("sold_as", ("fat quarter", "fat eighth"), "owned"),),
)

CLOTH = Section(
    "cloth",
    "What holds for every fabric that does not say otherwise.",
    (
        Key(
            "usable_width",
            FABRIC.key("usable_width").shape,
            "The width left between the selvages.",
            "42 in",
            default="40 in",
            metric="105 cm",
        ),
        Key(
            "shrinkage",
            FABRIC.key("shrinkage").shape,
            "The share of its length that a fabric loses in the wash.",
            "3%",
            default="0%",
        ),
    ),
)

SWAP = Section(
    "swap",
    "One fabric of a colourway: which of the pattern's fabrics it replaces, and its look.",
    (
        Key("fabric", FABRIC_KEY, "The fabric it stands in for.", "linen", required=True),
        Key(
            "name",
            Text(60, blank=False, name=True),
            "What the booklet calls the fabric.",
            "Night water",
            required=True,
        ),
        Key(
            "colour",
            Colour(),
            "The colour it has in the figure, in quotes.",
            '"#26343c"',
            required=True,
        ),
    ),
)

COLOURWAY = Section(
    "colourway",
    "Another palette over the same design. Its key is your own short name for it.",
    (
        Key(
            "title",
            Text(40, blank=False, name=True),
            "What the booklet calls the colourway.",
            "Dusk",
            required=True,
        ),
        Key(
            "swaps",
            Many(SWAP, 1, 40),
            "The fabrics that differ; the others stay.",
            '[{fabric: linen, name: Night water, colour: "#26343c"}]',
            required=True,
        ),
    ),
)

"""The schema of sewing: allowances, backing, batting, binding, quilting.

In: forms and shapes. Out: sections for `schema`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.read.forms import Choice, Number, Whole
from publish.read.schema_cloth import FABRIC_KEY
from publish.read.sections import Idle, Key, Needs, Section
from publish.read.special import Length
from publish.read.texts import Text

SEWING = Section(
    "sewing",
    "What holds for every seam and every purchase of the pattern.",
    (
        Key(
            "seam",
            Length("1/16 in", "1 in"),
            "The seam allowance.",
            "1/4 in",
            default="1/4 in",
            metric="7.5 mm",
        ),
        Key(
            "motif_margin",
            Length("0 in", "12 in"),
            "How much larger than the motif its square of cloth is cut, in each direction.",
            "2 in",
            default="1 1/2 in",
            metric="4 cm",
        ),
        Key(
            "ground_margin",
            Length("0 in", "6 in"),
            "How much larger than finished size and "
            "seams a ground is cut, in each direction, to be trimmed after appliqué.",
            "1 in",
            default="1 in",
            metric="2.5 cm",
        ),
        Key(
            "straightening",
            Length("0 in", "18 in"),
            "The length added to every purchase for straightening the end that the shop cut.",
            "2 in",
            default="1 in",
            metric="2.5 cm",
        ),
        Key(
            "squaring",
            Length("0 in", "1 in"),
            "The length added for each strip, for squaring "
            "up the edge every few cuts (common practice, no source).",
            "1/4 in",
            default="1/8 in",
            metric="3 mm",
        ),
        Key(
            "mis_cut",
            Length("0 in", "36 in"),
            "The length added to every purchase for a strip that goes wrong.",
            "2 1/2 in",
            default="0 in",
        ),
        Key(
            "purchase_step",
            Length("0 in", "1 yd", above=True),
            "What lengths to buy in yards are rounded up to.",
            "1/4 yd",
            default="1/8 yd",
        ),
        Key(
            "metric_step",
            Length("0 in", "1 m", above=True),
            "What lengths to buy in metres are rounded up to.",
            "25 cm",
            default="10 cm",
        ),
        Key(
            "tension_ratio",
            Number(1, 6),
            "The thread used for each length of seam sewn in lockstitch.",
            "3",
            default="2.5",
        ),
        Key(
            "web_width",
            Length("5 in", "130 in"),
            "The width of the fusible web that raw-edge motifs are traced on.",
            "20 in",
            default="17 in",
            metric="45 cm",
        ),
        Key(
            "stabiliser_width",
            Length("5 in", "130 in"),
            "The width of the stabiliser that motifs ask for.",
            "12 in",
            default="20 in",
            metric="50 cm",
        ),
    ),
)


BACKING = Section(
    "backing",
    "The back of the quilt.",
    (
        Key(
            "fabric",
            FABRIC_KEY,
            "The fabric of the back.",
            "mist",
            derived="the ground of the size's first block (its first patch)",
        ),
        Key(
            "overhang",
            Length("0 in", "24 in"),
            "How far the backing reaches past each edge of the top.",
            "4 in",
            default="4 in",
            metric="10 cm",
        ),
    ),
)


BATTING = Section(
    "batting",
    "The layer between the top and the back.",
    (
        Key(
            "name",
            Text(60, blank=False, name=True),
            "What the booklet calls the batting.",
            "Needle-punched cotton",
            default="Cotton",
        ),
        Key(
            "overhang",
            Length("0 in", "24 in"),
            "How far the batting reaches past each edge of "
            "the top; not more than the backing does.",
            "2 in",
            default="3 in",
            metric="8 cm",
        ),
        Key(
            "largest_gap",
            Length("0 in", "24 in", above=True),
            "The widest distance between lines of quilting that the batting's label allows.",
            "8 in",
            default="none",
        ),
    ),
)


BINDING = Section(
    "binding",
    "The double-fold binding round a quilt.",
    (
        Key(
            "fabric",
            FABRIC_KEY,
            "The fabric of the binding.",
            "moss",
            derived="the fabric of the size's first motif, or else the backing's",
        ),
        Key(
            "width",
            Length("1 in", "6 in"),
            "The cut width of the strips.",
            "2 1/2 in",
            default="2 1/4 in",
            metric="6 cm",
        ),
        Key(
            "cut",
            Choice(("straight", "bias")),
            "Whether the strips are cut on the straight grain or on the bias.",
            "bias",
            default="straight",
        ),
        Key(
            "allowance",
            Length("0 in", "60 in"),
            "The length beyond the perimeter, for corners and the closing join.",
            "12 in",
            default="10 in",
            metric="25 cm",
        ),
    ),
)


STYLES = ("echo", "parallel", "grid", "ditch", "as desired")


QUILTING = Section(
    "quilting",
    "How one area is quilted; the list has an item for each area.",
    (
        Key(
            "area",
            Choice(("motif", "ground", "border")),
            "What is quilted.",
            "ground",
            required=True,
        ),
        Key(
            "style",
            Choice(STYLES),
            "Lines that echo the motif, parallel lines, a grid, lines "
            "in the ditch, or whatever the maker likes.",
            "echo",
            required=True,
        ),
        Key(
            "spacing",
            Length("1/16 in", "24 in"),
            "The distance between lines.",
            "1/2 in",
            default="none",
        ),
        Key(
            "angle",
            Whole(-90, 90, unit="degrees"),
            "The turn of parallel lines, clockwise "
            "from the horizontal (in a border, from its own length); a grid is diagonal and is "
            "turned by as much.",
            "45",
            default="0",
        ),
    ),
    needs=(Needs("style", ("echo", "parallel", "grid"), "spacing"),),
    idle=(
        Idle("style", ("ditch", "as desired"), "spacing"),
        Idle("style", ("ditch", "as desired", "echo"), "angle"),
    ),
)

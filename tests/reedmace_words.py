"""The booklet of `Reedmace`, written by hand: see reedmace.py.

In: nothing. Out: a `Manual` that says everything that the pattern's maker needs, once.
"""

from __future__ import annotations

from publish.model.words import (
    BackCover,
    Box,
    Bullets,
    Cover,
    FigureBlock,
    FigureSpec,
    Manual,
    Paragraph,
    Row,
    Section,
    Step,
    Steps,
    Table,
    TemplateSheets,
)

SIZES = (("Mini", "20 in × 20 in"),)
_CUT = Table(
    "cutting-mini",
    "Pieces",
    ("", "Piece", "Cut size", "How many"),
    (
        Row(("Pale linen",), "group", "linen"),
        Row(("**A**", "Ground", "17 1/2 in square", "1")),
        Row(("**E**", "Backing", "28 in square", "1")),
        Row(("Sandbar",), "group", "sandbar"),
        Row(("**C**", "Side border", "16 1/2 in × 2 1/2 in", "2")),
        Row(("**D**", "Top border", "20 1/2 in × 2 1/2 in", "2")),
        Row(("Deep moss",), "group", "moss"),
        Row(("**B**", "Motif square", "15 1/2 in square", "1")),
        Row(("**F**", "Binding", "40 in × 2 1/4 in", "3")),
    ),
)
_FOLD = "You have eight layers."
_WORK = (
    ("fold", "Fold the square **B** in half, and in half again, and once on the diagonal.", _FOLD),
    ("mark", "Draw round the template: this is the **finished line**.", ""),
    ("cut-wedge", "Baste it and cut along the line through all eight layers.", ""),
    ("open", "Open the motif and press it.", ""),
    ("place", "Lay the motif on the ground **A** and baste it.", ""),
    (
        "sew",
        "Sweep the edge under with a needle. At a point take one more stitch; clip each "
        "inside corner with scissors, and turn the edge of each opening outwards.",
        "",
    ),
    ("sides", "Sew the two side borders **C** on with pins, then the two **D**.", ""),
    ("layer", "Lay the backing **E** down, then batting and top, and baste the layers.", ""),
    ("quilt", "Quilt the motif in the ditch.", ""),
    ("quilt-ground", "Quilt echo lines 1/2 in apart in the ground.", ""),
    ("quilt-border", "Quilt the border with lines 1 in apart.", ""),
    ("bind", "Sew the three binding strips **F** together; the join takes them to 90 in.", ""),
    ("corner", "Stop before the corner, fold the binding up and down, and start again.", ""),
    ("close", "Join the two ends, turn the binding over to the back and sew it down.", ""),
)


def manual(text: str = "Lay **A** out, 17 1/2 in (44.5 cm) square.") -> Manual:
    """Return the booklet; `text` is the first step of its section `Making`."""
    figure = FigureSpec("cover", "quilt", "mini")
    steps = Steps((Step("lay", 1, text, figure=FigureSpec("lay", "fold", "mini")),))
    sections = (
        Section("materials", "Materials", (_materials(), _short(), *_before())),
        Section(
            "making",
            "Making",
            (
                Paragraph("Sew with a 1/4 in (6 mm) seam."),
                steps,
                FigureBlock(FigureSpec("quilting", "quilting", "mini", caption="The quilting.")),
            ),
        ),
        Section("cutting-mini", "Cutting", (_CUT,), sizes=("mini",)),
        Section(
            "work",
            "Folding, sewing and finishing",
            (
                Steps(
                    tuple(
                        Step(key, number, words, right, figure=FigureSpec(key, "fold", "mini"))
                        for number, (key, words, right) in enumerate(_WORK, start=1)
                    )
                ),
            ),
        ),
        Section("templates", "Templates", (TemplateSheets("reedmace", "mini", "wedge"),)),
        Section("glossary", "Glossary", (_terms(),)),
    )
    back = BackCover("", SIZES, "HF-199", "First edition, 2026", "", "", figure)
    return Manual(
        Cover("Reedmace", "", "Hollow Fen Studio", "", SIZES, figure),
        sections,
        back,
        "Reedmace · Hollow Fen Studio",
    )


def _materials() -> Table:
    return Table(
        "materials",
        "What to buy",
        ("Fabric", "Mini"),
        (
            Row(("Pale linen", "1 3/8 yd (1.20 m)"), fabric="linen"),
            Row(("Sandbar", "1/4 yd (0.20 m)"), fabric="sandbar"),
            Row(("Deep moss", "3/4 yd (0.60 m)"), fabric="moss"),
            Row(("**Batting**: Cotton", "26 in square")),
        ),
    )


def _short() -> Table:
    return Table(
        "abbreviations",
        "Short forms",
        ("Short", "Long"),
        (
            Row(("in", "inch")),
            Row(("cm, mm, m", "metric")),
            Row(("yd", "yard")),
            Row(("WOF", "width of fabric")),
        ),
    )


def _before() -> tuple[Paragraph | Bullets | Box, ...]:
    return (
        Paragraph("Lengths are for a usable width of 40 in."),
        Bullets(("Iron", "Pins", "Needles", "Scissors"), check=True),
        Box(
            "caution",
            "Care",
            (
                "Stand the iron on its heel. Count pins and needles. Close scissors.",
                "Keep quilts out of a baby's bed and away from fire.",
                "The makers' instructions come first.",
            ),
        ),
    )


def _terms() -> Table:
    names = (
        "appliqué",
        "backing",
        "baste",
        "batting",
        "bias",
        "binding",
        "template",
        "echo",
        "in the ditch",
        "usable width",
    )
    rows = tuple(Row((f"**{name}**", "as usual")) for name in names)
    return Table("glossary", "Terms", ("Term", "Meaning"), rows)

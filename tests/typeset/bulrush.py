"""A small booklet to typeset: the Bulrush pattern of Hollow Fen Studio, all invented.

It holds every kind of block, a table that runs over two pages, captions, boxes, notes,
step asides, fractions, and template sheets. Its drawings are in `bulrush_drawn`.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

from publish.model.pattern import Fabric, Pattern, Publication, Sewing, SizeSpec
from publish.model.words import (
    BackCover,
    Box,
    Bullets,
    Cover,
    FigureBlock,
    FigureGrid,
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
from publish.notes import Place

FOOT = "Bulrush · Hollow Fen Studio"


def pattern(**changes: object) -> Pattern:
    """Return the pattern; `changes` replace fields of it."""
    forty = Fraction(40)
    fabrics = (
        Fabric("linen", "Pale linen", "#f4efe6", forty),
        Fabric("moss", "Deep moss", "#3f5a3c", forty),
        Fabric("clay", "Bank clay", "#a8552f", forty),
    )
    made = Pattern(
        key="bulrush",
        folder=Path("projects/bulrush"),
        title="Bulrush",
        subtitle="A four-fold paper-cut appliqué in two sizes",
        publication=Publication(
            studio="Hollow Fen Studio",
            stock_number="HF-140",
            edition="First edition",
            year=2026,
            licence="Sew as many as you like. Please do not copy the pattern itself.",
            contact="patterns@hollowfen.example",
            skill="Confident beginner",
            blurb="Bulrushes stand where the lode runs slow.",
        ),
        papers=("letter", "a4"),
        layout="tideline",
        fabrics={f.key: f for f in fabrics},
        motifs={},
        blocks={},
        sizes={k: _size(k, t) for k, t in (("mini", "Mini quilt"), ("throw", "Throw"))},
        sewing=_sewing(),
        places={"": Place("pattern.yaml"), "title": Place("pattern.yaml", 1, 8)},
    )
    return replace(made, **changes)  # type: ignore[arg-type]


def _sewing() -> Sewing:
    return Sewing(
        seam=Fraction(1, 4),
        motif_margin=Fraction(3, 2),
        ground_margin=Fraction(1),
        straightening=Fraction(1),
        purchase_step=Fraction(9, 2),
        metric_step=Fraction(1000, 254),
        tension_ratio=Fraction(5, 2),
        squaring=Fraction(0),
        mis_cut=Fraction(0),
    )


def _size(key: str, title: str) -> SizeSpec:
    return SizeSpec(
        key=key,
        title=title,
        finish="quilt",
        columns=1,
        rows=1,
        blocks=("bulrush",),
        block_size=Fraction(16),
        motif_size=Fraction(14),
        borders=(),
        pillow=None,
        backing=None,
        batting=None,
        binding=None,
        quilting=(),
        sleeve=None,
    )


SIZES = (
    ("Mini quilt", "20 1/2 in × 20 1/2 in (52.1 cm × 52.1 cm)"),
    ("Throw", "58 in × 58 in (147.3 cm × 147.3 cm)"),
)


def spec(key: str, caption: str = "") -> FigureSpec:
    return FigureSpec(key=key, kind="quilt", caption=caption)


def manual() -> Manual:
    cover = Cover(
        title="Bulrush",
        subtitle="A four-fold paper-cut appliqué in two sizes",
        studio="Hollow Fen Studio",
        skill="Confident beginner",
        sizes=SIZES,
        figure=spec("cover"),
    )
    back = BackCover(
        blurb="Bulrushes stand where the lode runs slow. Fold a square in four, cut one "
        "quarter, and open it out: the whole bank is there.\n\nA week of quiet evenings.",
        sizes=SIZES,
        stock_number="HF-140",
        edition="First edition, 2026",
        licence="Sew as many as you like, to keep, give or sell. Please do not copy the pattern.",
        contact="patterns@hollowfen.example",
        figure=spec("cover"),
        materials=("Pale linen, 1 1/8 yd", "Deep moss, 5/8 yd", "Cotton batting, 24 in × 24 in"),
    )
    sections = (
        _making(),
        _materials(),
        _start(),
        _cutting(),
        _folding(),
        _joining(),
        _finishing(),
        _templates(),
        _more_templates(),
        _colouring(),
        _words(),
    )
    return Manual(cover, sections, back, FOOT)


def _making() -> Section:
    return Section(
        key="making",
        title="What you will make",
        lead="One spray of bulrushes, cut from a single square folded in four.",
        blocks=(
            Paragraph(
                "The mini hangs in a hall; the throw repeats the block nine times. Both are "
                "sewn with a **1/4 in seam** and the *same* four folds.\n\nRead each section "
                "through before you cut. The second printing, of 12/5/2026, corrected page 3; "
                "see <https://hollowfen.example/errata/1/2> for later changes."
            ),
            FigureBlock(spec("sizes", "Both sizes, drawn to one scale.")),
        ),
    )


def _materials() -> Section:
    rows = [
        Row(("Pale linen", "ground", "5/8 yd (0.60 m)", "3 1/4 yd (3.00 m)"), fabric="linen"),
        Row(("Deep moss", "motif", "1/2 yd (0.50 m)", "2 7/8 yd (2.70 m)"), fabric="moss"),
        Row(("Bank clay", "binding", "1/4 yd (0.30 m)", "5/8 yd (0.60 m)"), fabric="clay"),
        Row(("All fabrics", "", "1 3/8 yd (1.40 m)", "6 3/4 yd (6.30 m)"), kind="total"),
    ]
    return Section(
        key="materials",
        title="Materials & tools",
        blocks=(
            Table(
                "materials",
                "Fabric to buy",
                ("Fabric", "Use", "Mini quilt", "Throw"),
                tuple(rows),
                "llrr",
                ("Amounts allow 40 in of usable width.",),
            ),
            Bullets(
                (
                    "fabric scissors, and scissors for paper",
                    "appliqué needles",
                    "basting thread in a pale colour",
                    "a ruler that shows 1/8 in",
                ),
                check=True,
            ),
            FigureGrid(
                (spec("linen", "Pale linen"), spec("moss", "Deep moss"), spec("clay", "Bank clay")),
                3,
            ),
        ),
    )


def _start() -> Section:
    return Section(
        key="start",
        title="Before you start",
        blocks=(
            Paragraph("Wash, dry and press every fabric, and let it rest flat overnight."),
            Bullets(("RST: right sides together", "WOF: width of fabric, 40 in usable")),
            Box(
                "caution",
                "Blades and heat",
                (
                    "A rotary cutter is sharp enough to cut to the bone: close it whenever you put "
                    "it down.",
                    "Follow the maker's instructions for your iron, and keep the cord out of "
                    "reach.",
                ),
            ),
            Box("tip", "Press, do not push", ("Lift the iron between one place and the next.",)),
            Box("note", "", ("Sizes are finished sizes unless a table says *cut*.",)),
        ),
    )


def _cutting() -> Section:
    rows = []
    for group, fabric in (("Pale linen", "linen"), ("Deep moss", "moss"), ("Bank clay", "clay")):
        rows.append(Row((group,), kind="group", fabric=fabric))
        rows += [
            Row(
                (
                    chr(65 + n % 26),
                    f"{group.split()[1]} piece {n + 1}",
                    str(n % 9 + 1),
                    f"{n + 3} 1/2 in × {2 * n + 4} 5/8 in",
                    "trim after appliqué" if n % 4 else "",
                )
            )
            for n in range(16)
        ]
    return Section(
        key="cutting",
        title="Cutting",
        lead="Cut the largest pieces first, and letter each stack.",
        new_page=True,
        blocks=(
            Table(
                "cutting",
                "Pieces to cut",
                ("", "Piece", "Cut", "Size", "Note"),
                tuple(rows),
                "llrll",
            ),
            FigureBlock(spec("plan", "How the linen is cut, strip by strip."), "half"),
        ),
    )


def _folding() -> Section:
    long = (
        "Fold the square in half, right side in, and press the fold with the flat of your hand. "
        "Fold it again the other way, so that all four corners meet and the centre of the cloth "
        "is a single point. The raw edges should lie within 1/16 in of one another."
    )
    items = (
        Step(
            "fold",
            1,
            long,
            right="Four layers, one point, no bubbles.",
            figure=spec("step-1", "Folded once, then twice."),
        ),
        Step(
            "baste",
            2,
            "Baste around the shape, 3/8 in inside the edge.",
            tip="Light thread shows on moss; start with the knot on top.",
            figure=spec("step-2"),
        ),
        Step(
            "cut",
            3,
            "Cut on the dashed line through all four layers, starting at the folds.",
            caution="Keep your other hand behind the blades.",
            figure=spec("step-3", "Cut from the folds outwards, in the order shown."),
        ),
        Step("open", 4, "Open the motif and press it lightly.", sizes=("mini",)),
    )
    return Section(key="folding", title="Folding and cutting the motif", blocks=(Steps(items),))


def _joining() -> Section:
    items = tuple(
        Step(
            f"row-{n}",
            n,
            f"Join row {n - 4}: sew three blocks side by side, and press the "
            "seams towards the darker block. The row measures 18 1/2 in × 54 1/2 in.",
            figure=spec(f"step-{n}", f"Row {n - 4}.") if n != 9 else spec("wide", "All rows."),
        )
        for n in range(5, 10)
    )
    return Section(
        key="joining",
        title="Joining the rows",
        parent="folding",
        sizes=("throw",),
        blocks=(Steps(items),),
    )


def _finishing() -> Section:
    return Section(
        key="finishing",
        title="Finishing",
        blocks=(
            Paragraph("Layer backing, batting and top, and baste them every 6 in."),
            Steps(
                (Step("bind", 10, "Sew the binding 1/4 in from the edge, mitring each corner."),)
            ),
        ),
    )


def _templates() -> Section:
    return Section(
        key="templates",
        title="Templates",
        new_page=True,
        blocks=(
            Paragraph("Print at 100 % and measure the square on every sheet: 1 in each way."),
            TemplateSheets("bulrush", "mini", "wedge"),
        ),
    )


def _more_templates() -> Section:
    return Section(
        key="templates-throw",
        title="Templates for the throw",
        parent="templates",
        sizes=("throw",),
        blocks=(
            Paragraph("The throw uses the same wedge, a little larger."),
            FigureBlock(spec("tile", "How the sheet lies."), "half"),
            TemplateSheets("bulrush", "throw", "wedge"),
        ),
    )


def _colouring() -> Section:
    return Section(
        key="colouring",
        title="Colouring page",
        new_page=True,
        blocks=(FigureBlock(spec("colouring", "Try your own fabrics."), "page"),),
    )


def _words() -> Section:
    rows = tuple(
        Row((w, m))
        for w, m in (
            ("Appliqué", "Sewing one fabric onto the face of another."),
            ("Ground", "The fabric that the motif lies on."),
            ("Wedge", "The part of the motif that is cut through every layer."),
        )
    )
    return Section(
        key="words", title="Words", blocks=(Table("words", "", ("Word", "Meaning"), rows),)
    )

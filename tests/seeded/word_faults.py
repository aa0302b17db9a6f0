"""Slips of writing: one word, number, row, box, step or figure of the booklet changed.

In: nothing. Out: `FAULTS`: what is wrong, the change, and the code that has to say so.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from state import State

from publish.model.words import Box, Bullets, FigureBlock, Steps, Table, TemplateSheets

Change = Callable[[State], State]


def no_box(section: str, title: str) -> Change:
    return lambda s: s.blocks(
        section, lambda b: () if isinstance(b, Box) and b.title == title else (b,)
    )


def no_tool(words: str) -> Change:
    """Take the tools with these words off the list."""

    def kept(block: Any) -> tuple[Any, ...]:
        if not isinstance(block, Bullets):
            return (block,)
        return (replace(block, items=tuple(i for i in block.items if words not in i)),)

    return lambda s: s.blocks("tools", kept)


def no_sheets(s: State) -> State:
    return s.sections(
        lambda section: (
            replace(
                section,
                blocks=tuple(
                    b
                    for b in section.blocks
                    if not (isinstance(b, TemplateSheets) and b.size == "throw")
                ),
            ),
        )
    )


def borrowed_sheets(s: State) -> State:
    """The pillow is told to use the mini's template."""
    return s.sections(
        lambda section: (
            replace(
                section,
                blocks=tuple(
                    replace(b, size="mini")
                    if isinstance(b, TemplateSheets) and b.size == "pillow"
                    else b
                    for b in section.blocks
                ),
            ),
        )
    )


def skipped_number(s: State) -> State:
    return s.steps(lambda x: (replace(x, number=x.number + 1),) if x.number >= 3 else (x,))


def figureless(key: str) -> Change:
    return lambda s: s.step(key, figure=None)


def mute(s: State) -> State:
    return s.blocks(
        "quilting",
        lambda b: (
            (replace(b, figure=replace(b.figure, caption="")),)
            if isinstance(b, FigureBlock)
            else (b,)
        ),
    )


def without_section(key: str) -> Change:
    return lambda s: s.sections(lambda x: () if x.key == key else (x,))


def other_size(s: State) -> State:
    """A step that is for the throw alone shows the mini."""

    def shown(step: Any) -> tuple[Any, ...]:
        if step.key != "placing-crease-quartered":
            return (step,)
        return (replace(step, figure=replace(step.figure, size="mini")),)

    return s.steps(shown)


def swapped(one: str, other: str, step: str) -> Change:
    def change(s: State) -> State:
        return (
            s.words(one, "@@", step=step).words(other, one, step=step).words("@@", other, step=step)
        )

    return change


def told_twice(s: State) -> State:
    return s.steps(lambda x: (x, x) if x.key == "binding-press" else (x,))


def no_steps(s: State) -> State:
    return s.blocks("sleeve", lambda b: () if isinstance(b, Steps) else (b,))


def no_table(section: str, key: str) -> Change:
    return lambda s: s.blocks(
        section, lambda b: () if isinstance(b, Table) and b.key == key else (b,)
    )


FAULTS: tuple[tuple[str, Change, str], ...] = (
    (
        "too little of a fabric in the materials",
        lambda s: s.words("2 1/2 yd (2.30 m)", "2 1/4 yd (2.10 m)", "materials"),
        "P807",
    ),
    (
        "metres that are not enough in the materials",
        lambda s: s.words("4 1/8 yd (3.70 m)", "4 1/8 yd (3.20 m)", "materials"),
        "P807",
    ),
    ("a fabric is missing from the materials", lambda s: s.rows("fabric", "Creek mist"), "P807"),
    (
        "the batting is missing from the materials",
        lambda s: s.rows("other-materials", "**Batting**"),
        "P807",
    ),
    (
        "the materials tell a smaller batting",
        lambda s: s.words("70 in (177.8 cm) square", "64 in (162.6 cm) square", "materials"),
        "P807",
    ),
    (
        "the back cover tells less of a fabric",
        lambda s: s.back(
            materials=tuple(
                m.replace("Throw 2 1/2 yd (2.30 m)", "Throw 2 1/8 yd (2.00 m)")
                for m in s.manual.back.materials
            )
        ),
        "P861",
    ),
    (
        "the cutting table counts too few",
        lambda s: s.words("18", "16", "cutting-throw", times=1),
        "P806",
    ),
    (
        "the cutting table tells another size in inches",
        lambda s: s.words("10 in (25.4 cm) square", "10 1/2 in (25.4 cm) square", "cutting-throw"),
        "P806",
    ),
    (
        "the cutting table tells another size in both units",
        lambda s: s.words(
            "16 1/2 in × 2 1/2 in (41.9 cm × 6.4 cm)",
            "16 in × 2 1/2 in (40.6 cm × 6.4 cm)",
            "cutting-mini",
        ),
        "P806",
    ),
    (
        "a piece is missing from the cutting table",
        lambda s: s.rows("cutting-mini", "**F**"),
        "P806",
    ),
    (
        "a cutting step counts one strip too few",
        lambda s: s.words("Cut four strips 10 in", "Cut three strips 10 in", "cutting-throw"),
        "P808",
    ),
    (
        "a cutting step takes too few from each strip",
        lambda s: s.words("gives four **B**", "gives three **B**", "cutting-throw"),
        "P808",
    ),
    (
        "a cutting step names another letter",
        lambda s: s.words("one **D**", "one **E**", "cutting-mini"),
        "P805",
    ),
    (
        "a step makes too few units",
        lambda s: s.words("Make 18.", "Make 16.", step="piecing-half-ground"),
        "P808",
    ),
    (
        "a later step makes too few units",
        lambda s: s.words("Make nine.", "Make eight.", step="piecing-ground-quartered"),
        "P808",
    ),
    (
        "a unit measures what it cannot",
        lambda s: s.words(
            "19 1/2 in × 10 in (49.5 cm × 25.4 cm)",
            "18 1/2 in × 10 in (47.0 cm × 25.4 cm)",
            step="piecing-half-ground",
        ),
        "P826",
    ),
    (
        "the top is measured before its border",
        lambda s: s.words(
            "it should be 56 1/2 in (143.5 cm)",
            "it should be 54 1/2 in (138.4 cm)",
            step="borders-throw-ends-1",
        ),
        "P826",
    ),
    (
        "the top comes out smaller than it is",
        lambda s: s.words(
            "64 1/2 in (163.8 cm) square", "64 in (162.6 cm) square", step="borders-throw-ends-2"
        ),
        "P826",
    ),
    (
        "the rows measure what the blocks do not",
        lambda s: s.words(
            "54 1/2 in × 18 1/2 in (138.4 cm × 47.0 cm)",
            "56 1/2 in × 18 1/2 in (143.5 cm × 47.0 cm)",
            step="assembling-row",
        ),
        "P826",
    ),
    (
        "the seam is not stated",
        lambda s: (
            no_box("before-you-start", "Seams")(s)
            .words("1/4 in seam", "seam", "tools")
            .words("with a 1/4 in (6 mm) seam", "on the line")
        ),
        "P864",
    ),
    (
        "the usable width is not stated",
        lambda s: s.words(
            "Fabric requirements assume 40 in (101.6 cm) of usable width",
            "Lengths are as cut",
            "materials",
        ),
        "P864",
    ),
    ("there is no caution for the rotary cutter", no_box("cautions", "Rotary cutter"), "P869"),
    ("there is no caution for the iron", no_box("cautions", "Iron"), "P869"),
    ("there is no caution for starch", no_box("cautions", "Starch and adhesives"), "P869"),
    ("nothing is said of a baby's bed", no_box("cautions", "Babies"), "P869"),
    ("nothing is said of pins left in", no_box("cautions", "Pins, needles and scissors"), "P869"),
    ("there are no cautions at all", without_section("cautions"), "P869"),
    ("the small scissors are not listed", no_tool("Small scissors"), "P868"),
    ("the walking foot is not listed", no_tool("Walking foot"), "P868"),
    ("the marker is not listed", no_tool("marker"), "P868"),
    ("the starch is not listed", no_tool("starch"), "P868"),
    ("yards are not explained", lambda s: s.rows("abbreviations", "**yd**"), "P863"),
    ("nothing is explained", no_table("before-you-start", "abbreviations"), "P863"),
    ("a term is not in the glossary", lambda s: s.rows("glossary", "**in the ditch**"), "P865"),
    ("another term is not in the glossary", lambda s: s.rows("glossary", "**selvage**"), "P865"),
    ("a fold has no picture", figureless("folding-diagonal-8"), "P866"),
    ("the corner of the binding has no picture", figureless("binding-corner"), "P866"),
    ("laying out the blocks has no picture", figureless("assembling-lay-out"), "P866"),
    ("a cutting step has no layout", figureless("cutting-throw-linen"), "P866"),
    ("the throw has no template", no_sheets, "P847"),
    ("the pillow is cut with the mini's template", borrowed_sheets, "P847"),
    ("figures have no captions", mute, "P852"),
    ("a step for one size shows another", other_size, "P867"),
    (
        "the cover tells another size",
        lambda s: s.cover(
            sizes=tuple(
                (t, v.replace("64 in (162.6 cm)", "62 in (157.5 cm)"))
                for t, v in s.manual.cover.sizes
            )
        ),
        "P809",
    ),
    ("the back cover leaves a size out", lambda s: s.back(sizes=s.manual.back.sizes[:2]), "P809"),
    (
        "the table of sizes tells another motif",
        lambda s: s.words("15 1/2 in (39.4 cm)", "14 1/2 in (36.8 cm)", "what-you-will-make"),
        "P861",
    ),
    ("the licence is not printed", lambda s: s.back(licence=""), "P855"),
    ("the edition is not printed", lambda s: s.back(edition=""), "P855"),
    ("the stock number is another", lambda s: s.back(stock_number="HF-102"), "P855"),
    ("the cover carries another title", lambda s: s.cover(title="Samphires"), "P855"),
    ("nobody is told where mistakes go", lambda s: s.back(contact=""), "P855"),
    ("the binding has no section", without_section("binding"), "P857"),
    ("the templates have no section", without_section("templates"), "P856"),
    ("the materials have no section", without_section("materials"), "P807"),
    ("the sleeve has no steps", no_steps, "P804"),
    (
        "a heading is empty",
        lambda s: s.sections(lambda x: (replace(x, title=" "),) if x.key == "folding" else (x,)),
        "P856",
    ),
    (
        "two sections carry one heading",
        lambda s: s.sections(
            lambda x: (replace(x, title="Binding"),) if x.key == "sleeve" else (x,)
        ),
        "P856",
    ),
    ("step numbers skip one", skipped_number, "P858"),
    ("a step stands there twice", told_twice, "P858"),
    (
        "a border step takes the other border's strips",
        swapped("**D**", "**F**", "borders-mini-sides-1")
        if False
        else lambda s: s.words("**D**", "**F**", step="borders-mini-sides-1"),
        "P804",
    ),
    (
        "a step names another fabric",
        lambda s: s.words(
            "The inner border is Glasswort red",
            "The inner border is Salt linen",
            step="borders-throw-sides-1",
        ),
        "P810",
    ),
    (
        "a piecing step names another fabric",
        lambda s: s.words(
            "a Salt linen piece **B**", "a Creek mist piece **B**", step="piecing-half-ground"
        ),
        "P810",
    ),
    (
        "the cutting table lists a piece under another fabric",
        lambda s: s.words("**Samphire green.** Cut", "**Sandbar.** Cut", "cutting-mini"),
        "P810",
    ),
    (
        "the backing is laid down smaller than it is joined",
        lambda s: s.words(
            "72 in (182.9 cm) square for the **Throw**",
            "70 in (177.8 cm) square for the **Throw**",
            step="quilting-layer",
        ),
        "P828",
    ),
    (
        "too few binding strips in the steps",
        lambda s: s.words("seven strips", "six strips", step="binding-join"),
        "P808",
    ),
    (
        "too few lengths to join",
        lambda s: s.words("two lengths of **E**", "three lengths of **E**", "borders-throw"),
        "P808",
    ),
    (
        "too few motifs to make",
        lambda s: s.words("nine motifs", "eight motifs", "marking-and-cutting-the-motif"),
        "P808",
    ),
    (
        "the wedge has another number of layers",
        lambda s: s.words("all eight layers", "all six layers", "marking-and-cutting-the-motif"),
        "P808",
    ),
    (
        "a millimetre off in the steps",
        lambda s: s.words("1/8 in (3.2 mm)", "1/8 in (4 mm)", step="applique-sweep"),
        "P862",
    ),
    (
        "another turn-under in the steps",
        lambda s: s.words(
            "1/8 in (3.2 mm)", "1/4 in (6 mm)", step="marking-and-cutting-the-motif-finished-line-8"
        ),
        "P828",
    ),
    (
        "another spacing in the quilting plan",
        lambda s: s.words("3/4 in (19 mm)", "1/2 in (13 mm)", "quilting"),
        "P830",
    ),
    (
        "the form is another in the materials",
        lambda s: s.words("18 in (45.7 cm) square", "16 in (40.6 cm) square", "materials"),
        "P807",
    ),
    (
        "the binding is shorter in the steps",
        lambda s: s.words("266 in (675.6 cm)", "256 in (650.2 cm)", step="binding-join"),
        "P809",
    ),
)

"""The terms of the trade that the glossary can explain.

In: nothing. Out: `TERMS`.
Invariant: `form` is a regular expression that finds the term in running text, in any of
the shapes it takes there.
"""

from __future__ import annotations

from dataclasses import dataclass

from publish.measures import Measures


@dataclass(frozen=True)
class Term:
    name: str
    form: str
    meaning: str
    metric: str = ""
    """Its meaning where cloth is bought by the metre, if that is another."""

    def told(self, measures: Measures) -> str:
        """Return the meaning for makers who measure so."""
        return self.metric if self.metric and measures.metric else self.meaning


TERMS: tuple[Term, ...] = (
    Term("appliqué", r"\bappliqué\b", "Cloth shapes sewn on top of a ground."),
    Term(
        "backstitch",
        r"\bback[- ]?stitch(es)?\b",
        "A few stitches sewn backwards to lock the end of a seam.",
    ),
    Term(
        "backing",
        r"\bbacking\b",
        "The cloth on the back of a quilt, the lowest of the three layers.",
    ),
    Term(
        "baste",
        r"\bbast(e|ed|ing)\b",
        "To hold layers together temporarily, with long stitches or safety pins.",
    ),
    Term("batting", r"\bbatting\b", "The soft middle layer of a quilt."),
    Term(
        "bias",
        r"\bbias\b",
        "The direction at 45 degrees to the threads of the cloth, in which it stretches most.",
    ),
    Term("binding", r"\bbinding\b", "The strip that covers the raw edges all round a quilt."),
    Term("blind stitch", r"\bblind stitch(es)?\b", "A small hand stitch hidden in a fold."),
    Term(
        "block",
        r"\bblocks?\b",
        "A square that is made by itself and sewn to others, or finished alone.",
    ),
    Term("crease", r"\bcreases?\b", "A line pressed into the cloth by folding it."),
    Term(
        "cut line",
        r"\bcut line\b",
        "The dashed line on a template or a foundation, on which it is cut.",
    ),
    Term(
        "ease",
        r"\bease\b",
        "To spread a little fullness along a seam or an edge so that no pleat forms.",
    ),
    Term("echo lines", r"\becho lines\b", "Quilting that repeats an outline at equal distances."),
    Term(
        "envelope back",
        r"\bhems overlap\b",
        "A pillow back of two hemmed pieces that overlap and need no fastening.",
    ),
    Term(
        "fat eighth",
        r"\bfat eighths?\b",
        "A quarter yard of fabric cut in half along the fold: about 9 in × 22 in.",
        "25 cm of fabric cut in half along the fold: about 25 cm × 55 cm.",
    ),
    Term(
        "fat quarter",
        r"\bfat quarters?\b",
        "A half yard of fabric cut in half along the fold: about 18 in × 22 in.",
        "Half a metre of fabric cut in half along the fold: about 50 cm × 55 cm.",
    ),
    Term(
        "finished line",
        r"\bfinished line\b",
        "The solid line on a template: the line that the finished edge lies on.",
    ),
    Term("finished size", r"\bfinished size\b", "The size after sewing, without seam allowances."),
    Term(
        "finger-press",
        r"\bfinger-press\b",
        "To crease cloth by running a finger or a nail along the fold.",
    ),
    Term(
        "free-motion",
        r"\bfree-motion\b",
        "Quilting with the feed dogs lowered, the hands moving the quilt in any direction.",
    ),
    Term(
        "freezer paper",
        r"\bfreezer paper\b",
        "Paper with a waxed side that sticks lightly to cloth when it is ironed.",
    ),
    Term(
        "fusible web",
        r"\bfusible web\b",
        "A thin sheet of glue on paper that bonds two cloths under a hot iron.",
    ),
    Term("ground", r"\bground\b", "The cloth that a motif is sewn to, pieced or whole."),
    Term(
        "in the ditch",
        r"\bin the ditch\b",
        "Quilting right beside a seam or a turned edge, where it hardly shows.",
    ),
    Term("mitre", r"\bmitre[ds]?\b", "A corner whose two sides meet on the diagonal."),
    Term("motif", r"\bmotifs?\b", "The shape that is cut from one cloth and sewn to the ground."),
    Term(
        "multiple folds",
        r"\bmultiple folds\b",
        "The edge of a folded wedge where the earlier folds lie together.",
    ),
    Term(
        "needle-turn",
        r"\bneedle-turn\b",
        "Appliqué in which the needle turns the raw edge under as the sewing goes along.",
    ),
    Term("pillow form", r"\bpillow form\b", "The filled inner pillow that a cover is made for."),
    Term(
        "press",
        r"\bpress(ed|ing)?\b",
        "To set an iron down and lift it up again without sliding it.",
    ),
    Term("raw edge", r"\braw edges?\b", "A cut edge that is neither turned under nor sewn in."),
    Term(
        "rotary cutter",
        r"\brotary cutter\b",
        "A round blade in a handle, used with a ruler on a mat.",
    ),
    Term(
        "seam allowance",
        r"\b(seam )?allowances?\b",
        "The strip of cloth between a seam and the cut edge.",
    ),
    Term("selvage", r"\bselvages?\b", "The firm woven edge of a fabric; it is cut off."),
    Term("single fold", r"\bsingle fold\b", "The edge of a folded wedge that the last fold made."),
    Term("sleeve", r"\bsleeve\b", "A flat tube on the back of a quilt for a hanging rod."),
    Term(
        "straight grain",
        r"\bstraight grain\b",
        "The direction of the threads of the cloth, in which it stretches least.",
    ),
    Term(
        "stabilizer",
        r"\bstabilizer\b",
        "A stiff sheet laid under cloth to keep stitching from puckering it, and torn away.",
    ),
    Term("strip", r"\bstrips?\b", "A length cut across the fabric from which pieces are cut."),
    Term("tail", r"\btails?\b", "The end of a binding that is left loose for joining."),
    Term("template", r"\btemplates?\b", "A full-size printed shape to draw round."),
    Term(
        "turn-under", r"\bturn-under\b", "The width of cloth folded under at the edge of a motif."
    ),
    Term("usable width", r"\busable width\b", "The width of a fabric between its selvages."),
    Term(
        "walking foot",
        r"\bwalking foot\b",
        "A machine foot that feeds the upper layer at the same pace as the lower.",
    ),
    Term(
        "wedge",
        r"\bwedges?\b",
        "The slice of a motif between two folds; all its wedges make the whole.",
    ),
    Term(
        "bias edge", r"\bbias edges?\b", "A cut edge on the bias; it stretches when it is pulled."
    ),
    Term(
        "chain piecing",
        r"\bas a chain\b",
        "Sewing pair after pair without cutting the thread between them.",
    ),
    Term("cornerstone", r"\bcornerstones?\b", "A small square where strips of sashing cross."),
    Term(
        "corner triangle",
        r"\bcorner triangles?\b",
        "One of the four triangles at the corners of a top whose blocks stand on point.",
    ),
    Term(
        "flying geese",
        r"\bflying geese\b",
        "A unit twice as long as it is wide: a large triangle between two small ones.",
    ),
    Term(
        "foundation piecing",
        r"\bfoundation piecing\b",
        "Sewing patches to printed paper, on its lines and in the order of its numbers.",
    ),
    Term(
        "foundation",
        r"\bfoundations?\b",
        "The printed paper that patches are sewn to; it is torn away in the end.",
    ),
    Term("four-patch", r"\bfour-patch(es)?\b", "Four squares sewn two by two."),
    Term(
        "half-square triangle",
        r"\bhalf-square triangles?\b",
        "A square of two triangles; also each of the two triangles.",
    ),
    Term(
        "hourglass",
        r"\bhourglass(es)?\b",
        "A square of four triangles whose points meet in the middle.",
    ),
    Term(
        "lock",
        r"\block\b(?! block)",
        "Seams that meet lock when their allowances lie opposite ways; they are said to nest.",
    ),
    Term("nine-patch", r"\bnine-patch(es)?\b", "Nine squares sewn three by three."),
    Term(
        "notch",
        r"\bnotch(es)?\b",
        "A short mark on an edge that is matched with one on its neighbour.",
    ),
    Term("on point", r"\bon point\b", "Set with the blocks standing on a corner."),
    Term("scant", r"\bscant\b", "Of a seam: a thread or two narrower than its measure."),
    Term("sashing", r"\bsashing\b", "Strips of cloth between blocks."),
    Term(
        "section", r"\bsections? (?-i:[A-Z])\b", "A part of a block that is sewn on one foundation."
    ),
    Term(
        "set in",
        r"\b(set in|set the next part in)\b",
        "To sew a seam that turns at an inside corner.",
    ),
    Term(
        "side triangle",
        r"\bside triangles?\b",
        "A triangle between two blocks at the edge of a top whose blocks stand on point.",
    ),
    Term(
        "square up",
        r"\bsquar(e|ed|ing) up\b",
        "To trim an edge straight and at a right angle to the next.",
    ),
    Term(
        "square in a square",
        r"\bsquare in a square\b",
        "A square standing on its corners, with a triangle on each side.",
    ),
    Term(
        "strip set",
        r"\bstrip sets?\b",
        "Long strips sewn side by side and cut across into segments.",
    ),
    Term("unit", r"\bunits?\b", "Some patches that are sewn together before they go into a block."),
)

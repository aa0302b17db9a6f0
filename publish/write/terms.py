"""The terms of the trade that the glossary can explain.

In: nothing. Out: `TERMS`.
Invariant: `form` is a regular expression that finds the term in running text, in any of
the shapes it takes there.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Term:
    name: str
    form: str
    meaning: str


TERMS: tuple[Term, ...] = (
    Term("appliqué", r"\bappliqué\b",
         "Cloth shapes sewn on top of a ground."),
    Term("back-stitch", r"\bback[- ]stitch(es)?\b",
         "A few stitches sewn backwards to lock the end of a seam."),
    Term("backing", r"\bbacking\b",
         "The cloth on the back of a quilt, the lowest of the three layers."),
    Term("baste", r"\bbast(e|ed|ing)\b",
         "To hold layers together for a while, with long stitches or safety pins that are taken "
         "out later."),
    Term("batting", r"\bbatting\b",
         "The soft middle layer of a quilt."),
    Term("bias", r"\bbias\b",
         "The direction at 45 degrees to the threads of the cloth, in which it stretches most."),
    Term("binding", r"\bbinding\b",
         "The strip that covers the raw edges all round a quilt."),
    Term("blind stitch", r"\bblind stitch(es)?\b",
         "A small hand stitch hidden in a fold."),
    Term("block", r"\bblocks?\b",
         "A square that is made by itself and sewn to others, or finished alone."),
    Term("crease", r"\bcreases?\b",
         "A line pressed into the cloth by folding it."),
    Term("cut line", r"\bcut line\b",
         "The dashed line on a template: the raw edge, turn-under included."),
    Term("ease", r"\bease\b",
         "To spread a little fullness along a seam or an edge so that no pleat forms."),
    Term("echo lines", r"\becho lines\b",
         "Quilting that repeats the outline of the motif at equal distances."),
    Term("envelope back", r"\bhems overlap\b",
         "A pillow back of two hemmed pieces that overlap and need no fastening."),
    Term("fat eighth", r"\bfat eighths?\b",
         "A quarter yard of fabric cut in half across: half as long as a fat quarter."),
    Term("fat quarter", r"\bfat quarters?\b",
         "A half yard of fabric cut in half across, wider than a quarter yard off the bolt."),
    Term("finished line", r"\bfinished line\b",
         "The solid line on a template: where the edge lies once it is turned under."),
    Term("finished size", r"\bfinished size\b",
         "The size after sewing, without seam allowances."),
    Term("finger-press", r"\bfinger-press\b",
         "To crease cloth by running a finger or a nail along the fold."),
    Term("freezer paper", r"\bfreezer paper\b",
         "Paper with a waxed side that sticks lightly to cloth when it is ironed."),
    Term("fusible web", r"\bfusible web\b",
         "A thin sheet of glue on paper that bonds two cloths under a hot iron."),
    Term("ground", r"\bground\b",
         "The cloth that a motif is sewn to."),
    Term("in the ditch", r"\bin the ditch\b",
         "Quilting right beside a seam or a turned edge, where it hardly shows."),
    Term("mitre", r"\bmitre[ds]?\b",
         "A corner whose two sides meet on the diagonal."),
    Term("motif", r"\bmotifs?\b",
         "The shape that is cut from one cloth and sewn to the ground."),
    Term("multiple folds", r"\bmultiple folds\b",
         "The edge of a folded wedge where the earlier folds lie together."),
    Term("needle-turn", r"\bneedle-turn\b",
         "Appliqué in which the needle turns the raw edge under as the sewing goes along."),
    Term("pillow form", r"\bpillow form\b",
         "The filled inner pillow that a cover is made for."),
    Term("press", r"\bpress(ed|ing)?\b",
         "To set an iron down and lift it up again without sliding it."),
    Term("raw edge", r"\braw edges?\b",
         "A cut edge that is neither turned under nor sewn in."),
    Term("rotary cutter", r"\brotary cutter\b",
         "A round blade in a handle, used with a ruler on a mat."),
    Term("seam allowance", r"\b(seam )?allowances?\b",
         "The strip of cloth between a seam and the cut edge."),
    Term("selvage", r"\bselvages?\b",
         "The firm woven edge of a fabric; it is cut off."),
    Term("single fold", r"\bsingle fold\b",
         "The edge of a folded wedge that the last fold made."),
    Term("sleeve", r"\bsleeve\b",
         "A flat tube on the back of a quilt for a hanging rod."),
    Term("straight grain", r"\bstraight grain\b",
         "The direction of the threads of the cloth, in which it stretches least."),
    Term("stabiliser", r"\bstabiliser\b",
         "A stiff sheet laid under cloth to keep stitching from puckering it, and torn away."),
    Term("strip", r"\bstrips?\b",
         "A length cut across the fabric from which pieces are cut."),
    Term("tail", r"\btails?\b",
         "The end of a binding that is left loose for joining."),
    Term("template", r"\btemplates?\b",
         "A full-size printed shape to draw round."),
    Term("turn-under", r"\bturn-under\b",
         "The width of cloth folded under at the edge of a motif."),
    Term("usable width", r"\busable width\b",
         "The width of a fabric between its selvages."),
    Term("walking foot", r"\bwalking foot\b",
         "A machine foot that feeds the upper layer at the same pace as the lower."),
    Term("wedge", r"\bwedges?\b",
         "The slice of a motif between two folds; all its wedges make the whole."),
)  # fmt: skip

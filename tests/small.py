"""Small patterns beside the demos, of which tests say only what they are about.

In: lines of YAML. Out: a folder with a pattern, and what the stages make of it.
"""

import re

from helpers import pattern

from publish import pipeline

HEAD = """title: Withy Drain
publication:
  studio: Hollow Fen Studio
  stock_number: HF-311
  licence: Quilts made from this pattern may be sold.
  contact: patterns@hollowfen.example
fabrics:
  oat: {name: Oat cloth, colour: "#efe6d2"}
  fern: {name: Fern cloth, colour: "#3f6b4a"}
  madder: {name: Madder cloth, colour: "#93404a"}
  mist: {name: Mist cloth, colour: "#b9c7c9"}
  amber: {name: Amber cloth, colour: "#c98a2b"}
  drift: {name: Drift print, colour: "#8fa9a0", directional: yes}
"""
"""Six fabrics, one that may not be turned, the studio: what stands before a pattern's own lines."""

NINE = "  nine: {traditional: nine patch, fabrics: {dark: fern, light: oat}}\n"
STAR = (
    "  star: {traditional: sawtooth star, fabrics: {star: fern, background: oat, centre: madder}}\n"
)
PLAIN = "  plain: {ground: oat}\n"
MOTIF = "motifs:\n  m: {drawing: bulrush.svg, folds: 8, fabric: fern}\n"
CARRIES = "  carries: {ground: oat, motif: m}\n"


def text(sizes, blocks=NINE, more=""):
    """Return a pattern with blocks, sizes `KEY: {...}` line by line, and more keys."""
    lines = "".join(f"  {line.strip()}\n" for line in sizes.strip().splitlines())
    used = set(re.findall(r"\w+", f"{sizes}{blocks}{more}"))
    kept = [
        line
        for line in HEAD.splitlines(keepends=True)
        if "{name:" not in line or line.split(":")[0].strip() in used
    ]
    return f"{''.join(kept)}{more}blocks:\n{blocks}sizes:\n{lines}"


def written(folder, sizes, blocks=NINE, more=""):
    """Write a small pattern and return its path."""
    return pattern(folder, text(sizes, blocks, more))


def prepared(folder, sizes, blocks=NINE, more=""):
    """Return what the stages before drawing make of a small pattern."""
    return pipeline.prepare(written(folder, sizes, blocks, more))


def findings(work):
    """Return every finding as a line."""
    return [f"{n.code} {n.what}; {n.expected}; {n.received}" for n in work.report]

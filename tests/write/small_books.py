"""Booklets of small patterns, put together from a few lines of YAML each.

In: sizes as YAML flow mappings, and whatever else a pattern holds. Out: `Patchwork`, a
booklet made by the stages themselves.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from types import MappingProxyType

from patchwork_books import Patchwork, sampler

FABRICS = """\
fabrics:
  oat: {name: Oat, colour: "#ece5d6"}
  fern: {name: Fern, colour: "#2f5a4c"}
  madder: {name: Madder, colour: "#a4553f"}
  mist: {name: Mist, colour: "#c9d4d8"}
  amber: {name: Amber, colour: "#d9a441"}
"""
NINE = "nine: {traditional: nine patch, fabrics: {dark: fern, light: oat}}"
STAR = "star: {traditional: sawtooth star, fabrics: {star: fern, background: oat, centre: madder}}"
PLAIN = "plain: {ground: oat}"
LEAF = "leaf: {ground: oat, motif: leaf}"
WEDGE = (
    "[[28, 0, corner], [90, 0, corner], [50, 30], [50, 50, corner], [20, 20, corner], [26, 10.7]]"
)
"""A wedge of eight with an opening round the centre."""
SOLID = "[[0, 0], [90, 0], [50, 20]]"
"""A wedge of eight that is whole at the centre, and no part of which is apart."""


def motif(
    method: str = "needle-turn", wedge: str = SOLID, fabric: str = "fern", folds: int = 8
) -> str:
    """Return the one motif `leaf`, as YAML."""
    return f"leaf: {{outline: {wedge}, folds: {folds}, fabric: {fabric}, method: {method}}}"


def booklet(
    *sizes: str,
    blocks: str = NINE,
    motifs: str = "",
    more: str = "",
    fabrics: Mapping[str, str] = MappingProxyType({}),
) -> Patchwork:
    """Return the booklet of sizes such as `lap: {block: nine, block_size: 9 in}`.

    `fabrics` adds keys to fabrics.
    """

    def listed(key: str, text: str) -> str:
        return "".join([f"{key}:\n", *(f"  {line}\n" for line in text.splitlines())])

    cloth = FABRICS
    for key, keys in fabrics.items():
        cloth = re.sub(rf"(  {key}: .*)}}", rf"\1, {keys}}}", cloth)
    text = "title: Small\n" + cloth + (listed("motifs", motifs) if motifs else "")
    text += listed("blocks", blocks) + "backing: {fabric: mist}\nbinding: {fabric: amber}\n"
    return sampler(text + more + listed("sizes", "\n".join(sizes)))


def plain(text: str) -> str:
    """Return a text without its metric lengths in brackets and without Markdown's marks."""
    return re.sub(r"\*\*|\*", "", re.sub(r" \([^()]*\d (?:mm|cm|m)[^()]*\)", "", text))

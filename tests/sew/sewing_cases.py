"""The demos and some made-up patterns, sewn: what the tests of the making run over.

In: the demos' files, `write_made`. Out: each by name: pattern, sizes, drafts, plans, making.
"""

from __future__ import annotations

import sys
import tempfile
from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from pathlib import Path

from publish import cut, draft, grade, read
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import BorderSpec, Motif, Pattern
from publish.model.size import Size
from publish.operations.operation import Operation
from publish.operations.rehearsal import Making, SizeMaking, rehearse
from publish.operations.table import Failing
from publish.sew import sew

ROOT = Path(__file__).parents[2]
sys.path.append(str(ROOT / "tests" / "write"))
import demos  # noqa: E402
import small  # noqa: E402
import write_made as w  # noqa: E402
from write_material import facts  # noqa: E402

DEMOS = ("samphire", "towpath", "millrace", "heronry")


@dataclass(frozen=True)
class Sewn:
    """A pattern that is sewn."""

    pattern: Pattern
    sizes: dict[str, Size]
    drafts: dict[str, Draft]
    plans: dict[str, CutPlan]
    making: Making


def of(
    pattern: Pattern, sizes: dict[str, Size], drafts: dict[str, Draft], plans: dict[str, CutPlan]
) -> Sewn:
    return Sewn(pattern, sizes, drafts, plans, sew(pattern, sizes, drafts, plans)[0])


@cache
def sewn(name: str) -> Sewn:
    if name in MADE:
        made = MADE[name]()
        return of(made.pattern, dict(made.sizes), dict(made.drafts), dict(made.plans))
    if name in DEMOS:
        work = demos.demo(name)
        return Sewn(work.pattern, work.sizes, work.drafts, dict(work.plans), work.making)
    with tempfile.TemporaryDirectory() as folder:
        path = small.written(Path(folder), *WRITTEN[name])
        pattern, notes, _ = read.load(path)
    assert pattern is not None, notes
    sizes, drafts = {}, {}
    for key in pattern.sizes:
        size, _ = grade.grade(pattern, key)
        assert size is not None
        found, _ = draft.draft(pattern, size)
        assert found is not None
        sizes[key], drafts[key] = size, found
    plans, _ = cut.cut(pattern, sizes, drafts)
    return of(pattern, sizes, dict(cut.construct(pattern, sizes, drafts, plans)), plans)


MITRED = (BorderSpec(Fraction(1), "sand", "mitred"), BorderSpec(Fraction(4), "sand", "mitred"))
FOUR = replace(w.PILLOW, count=2, side=Fraction(17, 2), span=Fraction(6))
TWO = (
    Motif("star", "linen", 8, "mirror", "needle-turn", Fraction(1, 8)),
    Motif("rush", "red", 12, "mirror", "prepared edge", Fraction(3, 16)),
)
BOTH = w.Wish("wall", "Wall", ("quartered", "other"), 2, Fraction(9), Fraction(7))
MADE: dict[str, Callable[[], w.Made]] = {
    "bias": lambda: w.made(replace(w.MINI, bias=True)),
    "mitred": lambda: w.made(replace(w.MINI, borders=MITRED)),
    "pillow": lambda: w.made(w.PILLOW),
    "four on a pillow": lambda: w.made(FOUR),
    "fused": lambda: w.made(w.MINI, method="fusible"),
    "stabilised": facts,
    "prepared, flat": lambda: w.made(w.MINI, symmetry="turning", method="prepared edge"),
    "traced": lambda: w.made(w.THROW, folds=6, symmetry="turning"),
    "two methods, pale over dark": lambda: w.made(BOTH, motifs=TWO),
}
SASHED = "block_size: 12 in, sashing: {width: 2 in, fabric: mist}"
"""Strips that are longer than the cloth is wide."""


def on_paper(block: str, fabrics: str) -> str:
    """Return a traditional block whose foundation is derived."""
    return f"  b: {{traditional: {block}, foundation: derived, fabrics: {{{fabrics}}}}}\n"


CABIN = on_paper("log cabin", "centre: madder, light: oat, dark: fern")
PUZZLE = on_paper("dutchman's puzzle", "geese: fern, background: oat")
DASH = on_paper("churn dash", "dash: fern, centre: madder, background: oat")
ECONOMY = on_paper("economy patch", "centre: madder, sides: oat, corners: drift")
COVER = "finish: pillow, pillow: {form: 16 in, back: envelope, fabric: oat}"
POINTED = "setting: on point, setting_fabric: oat"
WRITTEN = {
    "one plain piece": ("a: {block: plain, block_size: 20 in}", small.PLAIN),
    "one plain piece, bordered": (
        "a: {block: plain, block_size: 20 in, borders: [{width: 3 in, fabric: fern}]}",
        small.PLAIN,
    ),
    "long sashing": (f"a: {{block: nine, columns: 4, rows: 5, {SASHED}}}", small.NINE),
    "long sashing on point": (
        f"a: {{block: nine, columns: 4, rows: 4, {POINTED}, {SASHED}}}",
        small.NINE,
    ),
    "long sashing along the cloth": (
        f"a: {{block: nine, columns: 7, rows: 2, {SASHED.replace('mist', 'drift')}}}",
        small.NINE,
    ),
    "on paper, joined to strips": ("a: {block: b, columns: 2, rows: 2, block_size: 8 in}", CABIN),
    "on paper, the blocks of a pillow": (
        f"q: {{block: b, columns: 2, rows: 2, block_size: 8 in, {COVER}}}",
        CABIN,
    ),
    "on paper, joined on a slant": ("a: {block: b, columns: 2, rows: 1, block_size: 8 in}", PUZZLE),
    "on paper and without": ("a: {block: b, columns: 2, rows: 2, block_size: 9 in}", DASH),
    "on paper, whole": ("a: {block: b, columns: 2, rows: 2, block_size: 6 in}", ECONOMY),
    "on paper, on point": (
        f"a: {{block: b, columns: 2, rows: 2, block_size: 6 in, {POINTED}}}",
        ECONOMY,
    ),
}
"""Sizes and blocks of small patterns, by name."""
CASES = (*DEMOS, *MADE, *WRITTEN)


def makings(name: str) -> list[SizeMaking]:
    return list(sewn(name).making.sizes.values())


def failings(made: SizeMaking, operations: tuple[Operation, ...]) -> tuple[Failing, ...]:
    return rehearse(operations, made.goals).failings

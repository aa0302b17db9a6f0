"""Whether the parts that have no letter are told at their sizes: batting, block, cover, sleeve.

In: a case. Out: notes.
Invariant: a length in a step's sentence about such a part is that part's, at each size that
the sentence is about, or one of the trade's own figures.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from fractions import Fraction

from publish.model.trade import BACKING_SEAM
from publish.notes import Note, warning
from publish.proof.booklet.claims import fragments, letters, sentences, step_place, told
from publish.proof.booklet.lengths import PRACTICE, said
from publish.proof.case import Case, Code
from publish.surd import Length

CODES = {
    "P830": Code(
        "A part is told at a size that it does not have",
        "the maker trims or cuts to it",
        "`Trim the quilted front to 19 in`, where the cover is 18 in with 1/4 in seams",
        "`Trim the quilted front to 18 1/2 in`",
    ),
}

TAIL = Fraction(6)
"""Inches of binding left loose before the first stitch: common practice, no source."""

Lengths = Callable[[Case, str], tuple[Length | None, ...]]


def _batting(case: Case, key: str) -> tuple[Length | None, ...]:
    plan, spec = case.plans[key].batting, case.sizes[key].batting
    sides = () if plan is None else (plan.width, plan.height)
    return sides if spec is None else (*sides, spec.overhang, spec.largest_gap)


def _backing(case: Case, key: str) -> tuple[Length | None, ...]:
    plan = case.plans[key].backing
    return () if plan is None else (plan.width, plan.height, plan.panel_width, plan.half)


def _cover(case: Case, key: str) -> tuple[Length | None, ...]:
    return case.sizes[key].width, case.sizes[key].height


def _quilt(case: Case, key: str) -> tuple[Length | None, ...]:
    return tuple(v + 2 * case.seam for v in _cover(case, key) if v)


def _strip(case: Case, key: str) -> tuple[Length | None, ...]:
    plan = case.plans[key].binding
    return () if plan is None else (plan.strip_width,)


def _spacing(case: Case, key: str, style: str) -> tuple[Length | None, ...]:
    return tuple(q.spacing for q in case.sizes[key].quilting if q.style == style)


def _panels(case: Case, key: str) -> tuple[Length | None, ...]:
    plan = case.plans[key].backing
    join = case.pattern.measures.usual(BACKING_SEAM)
    return () if plan is None else (join, plan.panel_width, plan.half)


_PARTS: tuple[tuple[str, Lengths], ...] = (
    (r"\bsmooth the batting\b|\bbatting measures\b", _batting),
    (r"\bbacking measures\b", _backing),
    (r"\bquilt measures\b", _quilt),
    (r"\boverlap by the width of the strip\b", _strip),
    (r"\bsew them together along their long sides\b", _panels),
    (r"^(?:\*\*.*only: )?quilt echo lines\b", lambda c, k: _spacing(c, k, "echo")),
    (
        r"^(?:\*\*.*only: )?quilt the .* with lines that run\b",
        lambda c, k: _spacing(c, k, "parallel"),
    ),
    (r"\btail loose\b", lambda case, key: (TAIL, case.seam)),
    (r"\bflat sleeve is\b", lambda case, key: (case.sizes[key].sleeve,)),
)


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each length that its part does not have."""
    for one in told(case):
        for sentence in sentences(one.words):
            lengths = next(
                (f for form, f in _PARTS if re.search(form, sentence, re.IGNORECASE)), None
            )
            if lengths is None or letters(case, sentence):
                continue
            for text, sizes in fragments(case, sentence, one.sizes):
                known = {case.near(v) for k in sizes for v in lengths(case, k) if v is not None}
                wrong = [
                    v
                    for v in said(text)
                    if v.unit in case.units
                    and known
                    and v.inches not in known | _aside(case, known)
                ]
                for length in wrong:
                    yield warning(
                        "P830",
                        step_place(case, one),
                        f"{length.text} in {one.where} is not the size of what it tells",
                        expected=" or ".join(map(case.text, sorted(known))),
                        received=length.text,
                    )


def _aside(case: Case, known: set[Fraction]) -> frozenset[Fraction]:
    """Return the trade's figures, where what is told is larger than they are."""
    return case.practice(PRACTICE) if min(known) > max(case.practice(PRACTICE)) else frozenset()

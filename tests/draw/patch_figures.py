"""Every figure for patchwork: of the hand-built sampler, and of drafted patterns.

In: `patch_samples`, the demo patterns. Out: `SPECS` and `figure` for
the sampler, `context` for a pattern with its plan.
"""

from __future__ import annotations

from functools import cache

from demos import demo
from patch_samples import CONTEXT, SIZE

from publish.draw import DRAWINGS
from publish.draw.canvas.style import palette
from publish.draw.context import Context
from publish.model.book import LETTER
from publish.model.figure import Figure
from publish.model.words import FigureSpec

MADE = {
    "triangles": "half square",
    "hourglasses": "hourglass",
    "geese": "goose",
    "corners": "snowball",
    "strips": "segment",
}
STAGES = ("mark", "sew", "cut", "trim")


def spec(kind: str, size: str = SIZE, **values: str) -> FigureSpec:
    key = "-".join([kind, *values.values()])
    return FigureSpec(key, kind, size, tuple(values.items()), f"caption of {key}")


SPECS = [
    *(spec("units", unit=u) for u in (*MADE.values(), "bend", "corner")),
    *(spec("quick", method=m, unit=u, stage=s) for m, u in MADE.items() for s in STAGES),
    *(spec("curve", unit="bend", stage=s) for s in ("pin", "press")),
    spec("set-in", unit="corner"),
    *(spec("press", unit=u) for u in ("half square", "bend", "corner", "segment")),
    *(
        spec("foundation", section=k, stage=s)
        for k in ("heron A", "heron B")
        for s in ("place", "sew", "trim", "done")
    ),
    spec("sections", block="heron"),
    spec("block", block="heron"),
]
BY_KEY = {s.key: s for s in SPECS}


@cache
def figure(key: str) -> Figure:
    """Return one of the sampler's figures, drawn once."""
    wanted = BY_KEY[key]
    return DRAWINGS[wanted.kind](CONTEXT, wanted)


@cache
def context(name: str, *cutting: str) -> Context:
    """Return the context of a pattern: every size drafted, with the plans of `cutting`."""
    work = demo(name)
    plans = {k: work.plans[k] for k in cutting}
    return Context(
        work.pattern,
        work.sizes,
        work.drafts,
        plans,
        None,
        LETTER,  # type: ignore[arg-type]
        palette(work.pattern),
    )


PLANNED = ("cutting-layout", "borders", "layers", "sandwich", "press")
"""Kinds of figures that read the plan."""


def drawn(name: str, kind: str, size: str, **values: str) -> Figure:
    """Return a figure of a drafted pattern."""
    held = context(name, size) if kind in PLANNED else context(name)
    return DRAWINGS[kind](held, spec(kind, size, **values))

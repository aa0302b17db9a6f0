"""The patterns that faults are put into, each prepared once in a run.

In: the demo's files. Out: `State` of the whole demo, and a printed booklet of its smallest
size; the demo's text with one edit, checked.
"""

from __future__ import annotations

import shutil
import tempfile
from dataclasses import dataclass, field, replace
from functools import cache
from pathlib import Path
from types import SimpleNamespace
from unittest.mock import patch

import demos
from print_faults import Print
from state import State

from publish import draft, draw, pipeline, typeset, write
from publish.model.book import LETTER, Edition
from publish.model.draft import Draft
from publish.model.pattern import EXTRAS, Pattern
from publish.model.size import Size
from publish.notes import Note, PublishError
from publish.work import Work

ROOT = Path(__file__).parents[2]
SAMPHIRE = ROOT / "projects" / "samphire"
VARIETY = ROOT / "tests" / "proof" / "variety"
SHORT = (
    "what-you-will-make",
    "materials",
    "cautions",
    "cutting",
    "folding",
    "marking-and-cutting-the-motif",
    "applique",
    "binding",
    "sleeve",
    "templates",
    "glossary",
)
"""Sections of the booklet that faults are printed into."""
DRAWING = "samphire.svg"


def text() -> str:
    return (SAMPHIRE / "pattern.yaml").read_text(encoding="utf-8")


@dataclass(frozen=True)
class _Drafted:
    """Drafting, which is a pure function, remembered: most edits leave the geometry alone."""

    known: dict[str, tuple[Draft | None, tuple[Note, ...]]] = field(default_factory=dict)

    def __call__(self, pattern: Pattern, size: Size) -> tuple[Draft | None, tuple[Note, ...]]:
        motifs = [replace(m, drawing=None) for m in pattern.motifs.values()]
        asked = repr((motifs, pattern.blocks, pattern.sewing, pattern.fabrics, size))
        if asked not in self.known:
            made = draft.draft(pattern, size)
            if made[1]:  # notes hold places in this very text
                return made
            self.known[asked] = made
        return self.known[asked]


DRAFTED = SimpleNamespace(draft=_Drafted(), CODES=draft.CODES)


def notes_on(source: str) -> tuple[Note, ...]:
    """Return everything that checking says about a pattern written as `source`."""
    with tempfile.TemporaryDirectory() as folder:
        where = Path(folder) / "samphire"
        where.mkdir()
        (where / "pattern.yaml").write_text(source, encoding="utf-8")
        shutil.copy(SAMPHIRE / DRAWING, where)
        try:
            with patch.object(pipeline, "draft", DRAFTED):
                return pipeline.prepare(where).report.notes
        except PublishError as stopped:
            return stopped.report.notes


def state_of(work: Work) -> State:
    assert work.manual is not None
    return State(work.pattern, work.sizes, work.drafts, work.plans, work.manual, work.making)


@cache
def samphire() -> State:
    """Return the demo with every extra, so that faults can be put into those too."""
    work = demos.demo("samphire")
    pattern = replace(work.pattern, extras=EXTRAS)
    manual, _ = write.write(pattern, work.sizes, work.drafts, work.plans, work.making)
    return State(pattern, work.sizes, work.drafts, work.plans, manual, work.making)


@cache
def demo(name: str) -> State:
    """Return one of the demo patterns, by its folder."""
    return state_of(demos.demo(name))


@cache
def printed() -> Print:
    """Return a short booklet of the demo's smallest size, set on Letter."""
    source = text()
    small = source[: source.index("  pillow:\n    title")]
    start, end = small.index("  quartered:\n"), small.index("sewing:\n")
    with tempfile.TemporaryDirectory() as folder:
        where = Path(folder)
        (where / "pattern.yaml").write_text(small[:start] + small[end:], encoding="utf-8")
        shutil.copy(SAMPHIRE / DRAWING, where)
        state = state_of(pipeline.prepare(where))
    kept = tuple(s for s in state.manual.sections if s.key in SHORT)
    state = replace(state, manual=replace(state.manual, sections=kept))
    artwork, _ = draw.draw(
        state.pattern, state.sizes, state.drafts, state.plans, state.manual, LETTER
    )

    def reset(changed: State) -> Edition:
        edition, said = typeset.typeset(changed.pattern, changed.manual, artwork, LETTER)
        assert edition is not None, said
        return edition

    return Print(state, artwork, reset(state), reset)

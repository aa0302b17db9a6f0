"""A booklet on half-size paper: its template sheets come separately, at full size.

In: a manual, a half-size paper. Out: the same manual without template sheets, its
templates section saying where they are.
Invariant: nothing else changes; on other papers nothing changes at all.
"""

from __future__ import annotations

from dataclasses import replace

from publish.model.book import Paper, full_size
from publish.model.words import Box, Manual, Section, TemplateSheets


def half_size(manual: Manual, paper: Paper) -> Manual:
    """Return the manual for a paper: on half-size paper, one without template sheets."""
    if not paper.parent:
        return manual
    holding = [s for s in manual.sections if any(_is_sheets(b) for b in s.blocks)]
    if not holding:
        return manual
    first = holding[0].parent or holding[0].key
    sections = tuple(_without(s, first, paper) for s in manual.sections)
    return replace(manual, sections=sections)


def _is_sheets(block: object) -> bool:
    return isinstance(block, TemplateSheets)


def _without(section: Section, first: str, paper: Paper) -> Section:
    """Return a section without sheets; the one with the key `first` says where they are."""
    blocks = tuple(b for b in section.blocks if not _is_sheets(b))
    if section.key == first:
        blocks = (_where(paper), *blocks)
    return replace(section, blocks=blocks)


def _where(paper: Paper) -> Box:
    whole = full_size(paper)
    return Box("note", "The sheets come separately", (
        "The template sheets are at full size and too large for this booklet. They are in the "
        f"file **templates-{whole.key}**, for {whole.name} paper. Print them from there at "
        "100 %.",
    ))  # fmt: skip

"""A booklet without template sheets: they come separately, at full size.

In: a manual; a half-size paper, or any paper for a print shop; the language. Out: the same
manual without template sheets, its templates section saying where they are.
Invariant: nothing else changes; a booklet for whole paper at home does not change at all.
"""

from __future__ import annotations

from dataclasses import replace

from publish.model.book import Paper, full_size
from publish.model.words import Box, Manual, Section, TemplateSheets
from publish.words import Language
from publish.words.values import Named

_APART = "sheets-apart"


def half_size(manual: Manual, paper: Paper, words: Language) -> Manual:
    """Return the manual for a paper: on half-size paper, one without template sheets."""
    if not paper.parent:
        return manual
    whole = full_size(paper)
    values = {"file": Named(f"templates-{whole.key}"), "paper": Named(whole.name)}
    said = words.text(_APART, values, "file")
    return _sheetless(manual, Box("note", words.text(_APART), (said,)))


def for_print_shop(manual: Manual, words: Language) -> Manual:
    """Return the manual of a booklet that a print shop folds and trims, which would spoil
    template sheets: they are printed beside it."""
    said = words.text(_APART, part="loose")
    return _sheetless(manual, Box("note", words.text(_APART), (said,)))


def _sheetless(manual: Manual, where: Box) -> Manual:
    holding = [s for s in manual.sections if any(_is_sheets(b) for b in s.blocks)]
    if not holding:
        return manual
    first = holding[0].parent or holding[0].key
    return replace(manual, sections=tuple(_without(s, first, where) for s in manual.sections))


def _is_sheets(block: object) -> bool:
    return isinstance(block, TemplateSheets)


def _without(section: Section, first: str, where: Box) -> Section:
    """Return a section without sheets; the one with the key `first` says where they are."""
    blocks = tuple(b for b in section.blocks if not _is_sheets(b))
    if section.key == first:
        blocks = (where, *blocks)
    return replace(section, blocks=blocks)

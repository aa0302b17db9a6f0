"""Steps that several patterns tell in the same words: told once, and referred to by page.

In: the sections of several patterns. Out: sections of techniques; the patterns' sections
with a reference in place of each run of steps that stands there.
Invariant: a step is told once only where two patterns or more tell it word for word, and at
least two of such steps follow each other; a reference names exactly the steps that stood in
its place, in their order.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from publish.model.words import Block, Section, Step, Steps
from publish.words import Language
from publish.words.values import Named, Values, Word

Sections = tuple[Section, ...]
Told = tuple[str, str, str, str, str, str]
"""Chapter, words and kind of figure of a step: what makes two steps the same."""

LEAST_STEPS, LEAST_PATTERNS = 2, 2
ROOT = "techniques"
PRINTING = "before-you-start"
"""A chapter that is called otherwise in a book, where its own title stands over more."""


@dataclass(frozen=True)
class Techniques:
    """What is told once: its steps by chapter, and each chapter's title."""

    chapters: Mapping[str, tuple[Told, ...]]
    steps: Mapping[Told, Step]
    titles: Mapping[str, str]
    words: Language

    def sections(self) -> Sections:
        """Return the techniques as sections, under one heading."""
        if not self.chapters:
            return ()
        title, lead = (self.words.text("chapter-techniques", part=part) for part in ("", "lead"))
        found = [Section(ROOT, title, (), lead, new_page=True)]
        for chapter, told in self.chapters.items():
            steps = tuple(
                replace(self.steps[t], key=f"{ROOT}--{chapter}-{n}", number=n, sizes=())
                for n, t in enumerate(told, 1)
            )
            found.append(Section(key(chapter), self.titles[chapter], (Steps(steps),), parent=ROOT))
        return tuple(found)

    def referring(self, sections: Sections) -> Sections:
        """Return a pattern's sections with references in place of what is told here."""
        return tuple(self._referring(s, sections) for s in sections)

    def _referring(self, section: Section, sections: Sections) -> Section:
        blocks: list[Block] = []
        for block in section.blocks:
            if isinstance(block, Steps):
                chapter = chapter_of(section)
                block = Steps(tuple(self._steps(chapter, section, block.items)))
            blocks.append(block)
        return replace(section, blocks=tuple(blocks))

    def _steps(self, chapter: str, section: Section, steps: Sequence[Step]) -> Iterator[Step]:
        told = self.chapters.get(chapter, ())
        at = 0
        while at < len(steps):
            numbers = _following(chapter, steps[at:], told)
            if len(numbers) < LEAST_STEPS:
                yield steps[at]
                at += 1
                continue
            text = self._reference(chapter, numbers)
            yield Step(steps[at].key, steps[at].number, text, sizes=steps[at].sizes)
            at += len(numbers)

    def _reference(self, chapter: str, numbers: Sequence[int]) -> str:
        values: Values = {
            "first": Named(str(numbers[0])),
            "last": Named(str(numbers[-1])),
            "many": Word("two" if len(numbers) == 2 else "more"),
            "title": Named(self.titles[chapter]),
            "page": Named(f"[](#{key(chapter)})"),
        }
        return self.words.text("work-steps", values)


def key(chapter: str) -> str:
    """Return the key of a chapter's section of techniques."""
    return f"{ROOT}--{chapter}"


def chapter_of(section: Section) -> str:
    """Return the chapter that a section belongs to, whatever its size."""
    return section.parent or section.key


def told(chapter: str, step: Step) -> Told:
    """Return what makes a step the same as another's."""
    figure = step.figure.kind if step.figure is not None else ""
    return (chapter, step.text, step.right, step.tip, step.caution, figure)


def _following(chapter: str, steps: Sequence[Step], found: Sequence[Told]) -> list[int]:
    """Return the numbers, one after another, under which steps are told from the first on."""
    numbers: list[int] = []
    for step in steps:
        one = told(chapter, step)
        if one not in found or (numbers and found.index(one) + 1 != numbers[-1] + 1):
            break
        numbers.append(found.index(one) + 1)
    return numbers


def techniques(manuals: Sequence[Sections], words: Language) -> Techniques:
    """Return what several manuals tell alike. Their sections have their own keys still."""
    kept = _shared(manuals)
    chapters: dict[str, list[Told]] = defaultdict(list)
    steps: dict[Told, Step] = {}
    titles: dict[str, str] = {}
    for sections in manuals:
        names = {s.key: s.title for s in sections}
        for section, run in _runs(sections, kept):
            chapter = chapter_of(section)
            title = names.get(chapter, section.title)
            if chapter == PRINTING:
                title = words.text("chapter-techniques", part="printing")
            titles.setdefault(chapter, title)
            _insert(chapters[chapter], [told(chapter, s) for s in run])
            for step in run:
                steps.setdefault(told(chapter, step), step)
    return Techniques({c: tuple(t) for c, t in chapters.items()}, steps, titles, words)


def _insert(line: list[Told], run: Sequence[Told]) -> None:
    """Put the steps of a run into the order of a chapter: each after the one before it."""
    at = 0
    for one in run:
        if one in line:
            at = line.index(one) + 1
        else:
            line.insert(at, one)
            at += 1


def _shared(manuals: Sequence[Sections]) -> set[Told]:
    """Return the steps that stand, in runs that are long enough, in enough patterns."""
    kept = {
        told(chapter_of(s), step)
        for sections in manuals
        for s in sections
        for block in s.blocks
        if isinstance(block, Steps)
        for step in block.items
    }
    while True:
        counts: dict[Told, set[int]] = defaultdict(set)
        for number, sections in enumerate(manuals):
            for section, run in _runs(sections, kept):
                for step in run:
                    counts[told(chapter_of(section), step)].add(number)
        fewer = {t for t, where in counts.items() if len(where) >= LEAST_PATTERNS}
        if fewer == kept:
            return kept
        kept = fewer


def _runs(sections: Sections, kept: set[Told]) -> Iterator[tuple[Section, list[Step]]]:
    """Yield each run of steps, long enough, of which all are among those to keep."""
    for section in sections:
        for block in section.blocks:
            run: list[Step] = []
            for step in (*(block.items if isinstance(block, Steps) else ()), None):
                if step is not None and told(chapter_of(section), step) in kept:
                    run.append(step)
                    continue
                if len(run) >= LEAST_STEPS:
                    yield section, run
                run = []

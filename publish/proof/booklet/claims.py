"""What the steps claim: how many, of which piece, at which size.

In: a case. Out: `Told` steps, counts as numbers, sentences with the sizes they are about.
Invariant: a claim that says `for the **Throw**` is about the throw alone; words that name no
size are about every size of their step.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from publish.model.words import Section, Step, Steps
from publish.notes import Place
from publish.proof.booklet.words import Passage
from publish.proof.case import Case
from publish.words.en.phrase import NUMBERS

COUNT = rf"(?:(?<![\w./])(?:{'|'.join(NUMBERS)}|\d+)(?![\w/]|\.\d| in\b| cm\b| mm\b| m\b| \d))"
"""A count in words or figures, not part of a length."""
LETTER = re.compile(r"\*\*([A-Z]{1,2})\*\*")
"""A piece's letter, as the booklet sets it."""
_SENTENCE = re.compile(r"(?<=[.?!])(?:\*\*)?\s+|\n+")


@dataclass(frozen=True)
class Told:
    """A step with the section it stands in and the sizes it is for."""

    section: Section
    step: Step
    sizes: tuple[str, ...]

    @property
    def where(self) -> str:
        return f"step {self.step.number} of {self.section.title}"

    @property
    def words(self) -> str:
        """Return everything the step says."""
        return "\n".join((self.step.text, self.step.right, self.step.tip, self.step.caution))


def told(case: Case) -> Iterator[Told]:
    """Yield every step in reading order; one that was made from operations without words."""
    for section in case.manual.sections:
        for block in section.blocks:
            if isinstance(block, Steps):
                for each in block.items:
                    step = each
                    sizes = tuple(k for k in step.sizes or section.sizes if k in case.keys)
                    if step.generated:
                        step = replace(step, text="", right="", tip="", caution="")
                    yield Told(section, step, sizes or case.keys)


def letters(case: Case, text: str) -> list[str]:
    """Return the letters of pieces that a text names; a size may be titled `S` or `XL`."""
    titles = {case.sizes[k].title for k in case.keys}
    titles -= {p.letter for k in case.keys for p in case.plans[k].pieces}
    return [found for found in LETTER.findall(text) if found not in titles]


def is_cutting(section: Section) -> bool:
    """Return whether a section cuts cloth, so that naming a piece there is not sewing it."""
    return section.key.split("-")[0] == "cutting"


def number(word: str) -> int:
    """Return a count as a number: `nine`, `9`."""
    return int(word) if word.isdigit() else NUMBERS.index(word.lower())


def sentences(text: str) -> list[str]:
    return [s for s in _SENTENCE.split(text) if s.strip()]


def fragments(
    case: Case, text: str, sizes: tuple[str, ...]
) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Yield the parts of a text, each with the sizes that it is about.

    In `17 in for the **Wall** and 16 in for the **Mini**` each length is about one size.
    """
    titles = {f"**{case.sizes[k].title}**": k for k in sizes}
    name = "|".join(re.escape(t) for t in sorted(titles, key=len, reverse=True))
    about = re.compile(_about(case, name))
    for sentence in sentences(text):
        at = 0
        for match in about.finditer(sentence) if titles else ():
            named = tuple(titles[t] for t in re.findall(name, match[1]))
            yield sentence[at : match.start()], named
            at = match.end()
        if sentence[at:].strip():
            yield sentence[at:], sizes


def _about(case: Case, name: str) -> str:
    """Return a form that finds what a language says of a value for some sizes: `for the **Wall**
    and **Mini**`, `für **Wand** und **Mini**`."""
    grammar, mark = case.words.grammar, "\0"
    before = grammar.by_size([("", (mark,))]).split(f"**{mark}**")[0].strip()
    word = re.escape(grammar.listed([mark, mark]).strip(mark).strip())
    article = "(?:the )?" if before.endswith(" the") else ""
    return rf"{re.escape(before)} ((?:{name})(?:(?:, | {word} ){article}(?:{name}))*)"


def step_place(case: Case, told_step: Told) -> Place:
    """Return where a step's words come from: the designer's own change of it, if any."""
    return _place(case, told_step.step.key)


def _place(case: Case, step: str) -> Place:
    for root, number_, change in reversed(case.pattern.changes()):
        sizes = "-".join(["", *change.sizes])
        mine = change.step and step in (change.step, change.step + sizes)
        whose = "own" if len(root) == 1 else root[0]
        if mine or step.endswith(f"-{whose}-{number_ + 1}"):
            return case.pattern.place(*root, number_)
    return case.pattern.place("steps")


def said_at(case: Case, passage: Passage) -> Place:
    """Return where the words of a passage come from: a change of a step, the blurb or a
    title, or for the program's own words the nearest thing that they are about."""
    if passage.step:
        return _place(case, passage.step)
    if passage.section == "back" and passage.text == case.pattern.publication.blurb:
        return case.pattern.place("publication", "blurb")
    if len(passage.sizes) == 1:
        return case.size_place(passage.sizes[0])
    return case.pattern.place("title")

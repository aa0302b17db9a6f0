"""A chapter told from its operations: messages with their values, sizes that are alike merged.

In: a book, the moments of a chapter at each size. Out: sections with steps.
Invariant: a step tells what was carried out, in that order, at each size that it is for;
every length and count in it was read off the table or is an operand.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from publish.model.words import Block, FigureSpec, Paragraph, Section
from publish.operations.operation import Moment
from publish.operations.trusted import Trusted
from publish.words import Language, language
from publish.words.values import (
    Count,
    Length,
    Named,
    Rectangle,
    Span,
    Spans,
    Titles,
    Value,
    Values,
    side_by_side,
    text,
)
from publish.write.context import Book
from publish.write.steps import StepList, figure, slug

_SPACE: Spans = (Span(" "),)
PARTS = ("right", "tip", "caution")
OldWords = Callable[[Book, str, StepList, Trusted], None]
"""Adds the steps of a trusted operation, in the words of a chapter that has not moved."""


@dataclass(frozen=True)
class Told:
    """One step: what it covers, for which sizes, and its words in spans."""

    key: str
    """Of the step, without the chapter's."""
    covers: tuple[str, ...]
    sizes: tuple[str, ...]
    words: Mapping[str, Spans]
    """By `text`, `right`, `tip` and `caution`."""
    figure: FigureSpec | None
    trusted: Trusted | None = None


Step = Mapping[str, Sequence[Moment]]
"""The moments of one step by size."""


def chapter(book: Book, name: str, *, apart: bool = False, values: Values | None = None,
            trusted: OldWords | None = None,
            opening: Sequence[Block] = ()) -> tuple[Section, ...]:  # fmt: skip
    """Return the sections of a chapter; none where no size has it.

    `apart` sets sizes that are made differently in sections of their own; else a step says
    for which sizes it is. `values` are those of the chapter's title and lead.
    """
    speak = language()
    chapters = book.making.chapter(name)
    made = {k: chapters[k] for k in book.keys if k in chapters}
    if not made:
        return ()
    groups = _alike(made) if apart else [tuple(made)]
    title = speak.text(f"chapter-{name}", values or {})
    lead = speak.text(f"chapter-{name}", values or {}, "lead")
    teller = Teller(book, speak, name, apart, trusted)
    if len(groups) == 1:
        keys = groups[0]
        only = book.only(keys)
        first = (Paragraph(speak.text("part-only", {"sizes": _titles(book, keys)})),)
        blocks = (*(first if only and apart else ()), *opening, teller.block(name, keys, made))
        return (Section(name, title, blocks, lead, sizes=only),)
    found = [Section(name, title, tuple(opening), lead)]
    for keys in groups:
        child = slug(name, *keys)
        names = speak.value(Titles(tuple(book.title(k) for k in keys))).replace("**", "")
        block = teller.block(child, keys, made)
        found.append(Section(child, f"{title}: {names}", (block,), sizes=keys, parent=name))
    return tuple(found)


def _titles(book: Book, keys: Sequence[str]) -> Titles:
    return Titles(tuple(book.title(k) for k in keys))


def _alike(made: Step) -> list[tuple[str, ...]]:
    """Return the sizes in groups that are made alike but for lengths and counts."""
    groups: dict[object, list[str]] = {}
    for key, moments in made.items():
        groups.setdefault(tuple(_form(key, m) for m in moments), []).append(key)
    return [tuple(keys) for keys in groups.values()]


def _form(key: str, moment: Moment) -> object:
    """Return what must be equal for two sizes to be told in one."""
    operation = moment.operation
    if isinstance(operation, Trusted):
        return key, operation.key
    values = operation.values(moment).items()
    numbers = (Length, Rectangle, Count)
    return operation.key, operation.says, tuple(p for p in values if not isinstance(p[1], numbers))


class Teller:
    """Tells the steps of one chapter."""

    def __init__(
        self, book: Book, speak: Language, name: str, apart: bool, trusted: OldWords | None
    ) -> None:
        self.book, self.speak, self.name, self.trusted = book, speak, name, trusted
        self.apart = apart

    def block(self, section: str, keys: tuple[str, ...], made: Step) -> Block:
        """Return the steps of a section for these sizes."""
        steps = StepList(self.book, section, keys)
        for told in self.told({k: made[k] for k in keys}):
            if told.trusted is not None and self.trusted is not None:
                self.trusted(self.book, told.sizes[0], steps, told.trusted)
                continue
            said = {part: text(spans) for part, spans in told.words.items()}
            steps.add(told.key, said["text"], sizes=told.sizes, right=said["right"],
                      tip=said["tip"], caution=said["caution"], figure=told.figure,
                      covers=told.covers, aliases=self._aliases(section, told))  # fmt: skip
        return steps.block()

    def _aliases(self, section: str, told: Told) -> tuple[tuple[str, str], ...]:
        """Return the keys that a step has where each size has a section of its own."""
        own = slug(section, told.key)
        sizes = told.sizes if self.apart else ()
        each = ((slug(self.name, size, told.key), size) for size in sizes)
        return tuple(pair for pair in each if pair[0] != own)

    def told(self, made: Step) -> Iterator[Told]:
        """Yield every step in order, each for the sizes that are told alike."""
        for step in _merged([_steps_of(moments) for moments in made.values()]):
            mine = {
                size: found
                for size, moments in made.items()
                if (found := [m for m in moments if m.operation.step == step])
            }
            forms: dict[object, list[str]] = {}
            for size, moments in mine.items():
                forms.setdefault(tuple(m.operation.says for m in moments), []).append(size)
            for number, sizes in enumerate(forms.values()):
                key = step if number == 0 else slug(step, *sizes)
                yield self._told(key, {size: mine[size] for size in sizes})

    def _told(self, key: str, moments: Step) -> Told:
        sizes = tuple(moments)
        first = moments[sizes[0]]
        covers = tuple(dict.fromkeys(m.operation.key for ms in moments.values() for m in ms))
        trusted = first[0].operation
        if isinstance(trusted, Trusted):
            return Told(key, covers, sizes, {}, None, trusted)
        words: dict[str, list[Spans]] = {part: [] for part in ("text", *PARTS)}
        shown = None
        for at, values in _told_once(self.book, moments):
            message = first[at].operation.says
            for part, found in words.items():
                spans = self.speak.say(message, values, "" if part == "text" else part)
                if text(spans):
                    found.append(spans)
            shown = shown or self._figure(sizes[0], first[at], values)
        return Told(key, covers, sizes, {p: _joined(s) for p, s in words.items()}, shown)

    def _figure(self, size: str, moment: Moment, values: Values) -> FigureSpec | None:
        asked = moment.operation.figure(moment)
        if asked is None:
            return None
        said = moment.operation.says
        values = {**values, "size": Named(self.book.title(size))}
        caption = self.speak.text(said, values, "caption")
        return figure(asked.kind, size if asked.sized else None, caption, asked.name,
                      **dict(asked.values))  # fmt: skip


def _steps_of(moments: Sequence[Moment]) -> list[str]:
    return list(dict.fromkeys(m.operation.step for m in moments))


def _merged(orders: Sequence[Sequence[str]]) -> list[str]:
    """Return one order that agrees with each: what is new goes after what it follows."""
    found: list[str] = []
    for order in orders:
        at = 0
        for step in order:
            if step in found:
                at = found.index(step) + 1
            else:
                found.insert(at, step)
                at += 1
    return found


def _told_once(book: Book, moments: Step) -> Iterator[tuple[int, Values]]:
    """Yield the place of each operation that is told, with its values for all sizes.

    What is done again in the same words, as at the next corner, is told once.
    """
    before: tuple[str, Values] | None = None
    lengths = {len(ms) for ms in moments.values()}
    for at in range(min(lengths)):
        each = {size: ms[at].operation.values(ms[at]) for size, ms in moments.items()}
        said = next(iter(moments.values()))[at].operation.says
        values = {
            name: _side_by_side(book, {size: vs[name] for size, vs in each.items() if name in vs})
            for name in dict.fromkeys(n for vs in each.values() for n in vs)
        }
        if said and (said, values) != before:
            yield at, values
        before = (said, values)


def _side_by_side(book: Book, values: Mapping[str, Value]) -> Value:
    return side_by_side({book.title(size): value for size, value in values.items()})


def _joined(said: Sequence[Spans]) -> Spans:
    """Return the sentences of a step one after another."""
    found: list[Spans] = []
    for spans in said:
        found += [_SPACE, spans] if found else [spans]
    return tuple(span for spans in found for span in spans)

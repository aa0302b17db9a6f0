"""A chapter told from its operations: messages with their values, sizes that are alike merged.

In: a book, the moments of a chapter at each size. Out: sections with steps.
Invariant: a step tells what was carried out, in that order, at each size that it is for;
every length and count in it was read off the table or is an operand.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from publish.model.words import Block, FigureSpec, Paragraph, Section
from publish.operations.operation import Moment
from publish.operations.trusted import Trusted
from publish.words.values import (
    BySize,
    Count,
    Length,
    Named,
    Rectangle,
    Span,
    Spans,
    Titles,
    Value,
    Values,
    Word,
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


@dataclass(frozen=True)
class Asked:
    """How a chapter is told."""

    apart: bool = False
    """Whether sizes that are made differently have sections of their own; else a step says
    for which sizes it is."""
    values: Values = field(default_factory=dict)
    """Of the chapter as a whole: its title, its lead and every message may choose by them."""
    trusted: OldWords | None = None
    opening: Sequence[Block] = ()
    amid: tuple[str, Sequence[Block]] = ("", ())
    """Blocks that stand before the step of this key."""
    closing: Sequence[Block] = ()
    aliases: Mapping[str, str] = field(default_factory=dict)
    """By size: the key that its own section would have, for steps told for several sizes."""


def chapter(book: Book, name: str, asked: Asked = Asked()) -> tuple[Section, ...]:
    """Return the sections of a chapter; none where no size has it."""
    speak = book.words
    chapters = book.making.chapter(name)
    made = {k: chapters[k] for k in book.keys if k in chapters}
    if not made:
        return ()
    groups = _alike(made) if asked.apart else [tuple(made)]
    title, lead = (speak.text(f"chapter-{name}", asked.values, part) for part in ("", "lead"))
    teller = Teller(book, name, asked)
    if len(groups) == 1:
        keys = groups[0]
        only = book.only(keys)
        first = (Paragraph(speak.text("part-only", {"sizes": titles(book, keys)})),)
        told = teller.blocks(name, keys, made)
        blocks = (*(first if only else ()), *asked.opening, *told, *asked.closing)
        return (Section(name, title, blocks, lead, sizes=only),)
    found = [Section(name, title, tuple(asked.opening), lead)]
    for keys in groups:
        child = slug(name, *keys)
        names = speak.value(titles(book, keys)).replace("**", "")
        blocks = teller.blocks(child, keys, made)
        found.append(Section(child, f"{title}: {names}", blocks, sizes=keys, parent=name))
    return tuple(found)


def titles(book: Book, keys: Sequence[str]) -> Titles:
    """Return the titles of sizes as a value."""
    return Titles(tuple(book.title(k) for k in keys))


def alike(forms: Mapping[str, Mapping[str, object]]) -> list[tuple[str, ...]]:
    """Return sizes in groups, in order: those of a group have some key of their forms in common,
    and the same form at every key that they share."""
    groups: list[tuple[dict[str, object], list[str]]] = []
    for size, own in forms.items():
        for known, sizes in groups:
            shared = known.keys() & own.keys()
            if shared and all(known[k] == own[k] for k in shared):
                known.update(own)
                sizes.append(size)
                break
        else:
            groups.append((dict(own), [size]))
    return [tuple(sizes) for _, sizes in groups]


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

    def __init__(self, book: Book, name: str, asked: Asked) -> None:
        self.book, self.name, self.speak = book, name, book.words
        self.apart, self.trusted, self.amid = asked.apart, asked.trusted, asked.amid
        self.values, self.own = asked.values, asked.aliases

    def blocks(self, section: str, keys: tuple[str, ...], made: Step) -> tuple[Block, ...]:
        """Return the steps of a section for these sizes, and what stands amid them."""
        steps = StepList(self.book, section, keys)
        found: list[Block] = []
        before, amid = self.amid
        for told in self.told({k: made[k] for k in keys}):
            if amid and told.key == before:
                found += [steps.block(), *amid]
            if told.trusted is not None:
                if self.trusted is not None:
                    self.trusted(self.book, told.sizes[0], steps, told.trusted)
                continue
            said = {part: text(spans).strip() for part, spans in told.words.items()}
            steps.add(
                told.key,
                said["text"],
                sizes=told.sizes,
                right=said["right"],
                tip=said["tip"],
                caution=said["caution"],
                figure=told.figure,
                covers=told.covers,
                aliases=self._aliases(section, told),
            )
        return (*found, steps.block())

    def _aliases(self, section: str, told: Told) -> tuple[tuple[str, str], ...]:
        """Return the keys that a step has where each size has a section of its own."""
        own = slug(section, told.key)
        sizes = told.sizes if self.apart else ()
        each = [(slug(self.name, size, told.key), size) for size in sizes]
        first = told.covers[0].split(".")[1] if told.covers else told.key
        each += [(slug(self.own[k], first), k) for k in told.sizes if k in self.own]
        return tuple(pair for pair in each if pair[0] != own)

    def told(self, made: Step) -> Iterator[Told]:
        """Yield every step in order, each for the sizes that are told alike."""
        for step in _merged([_steps_of(moments) for moments in made.values()]):
            mine = {
                size: found
                for size, moments in made.items()
                if (found := [m for m in moments if m.operation.step == step])
            }
            for number, sizes in enumerate(self._alike(mine)):
                key = step if number == 0 else slug(step, *sizes)
                yield self._told(key, {size: mine[size] for size in sizes})

    def _alike(self, step: Step) -> list[tuple[str, ...]]:
        """Return the sizes in groups in which each operation is told by one message, with the
        same sentences of it."""
        return alike(
            {
                size: {m.operation.key: self._form(m) for m in moments}
                for size, moments in step.items()
            }
        )

    def _form(self, moment: Moment) -> object:
        """Return what two sizes must have alike to be told in one step: the message, and the
        sentences that it chooses."""
        if isinstance(moment.operation, Trusted):
            return moment.operation.says
        says = self.speak.in_full(moment.operation.says)
        return says, self.speak.sentences(says, moment.operation.values(moment))

    def _told(self, key: str, moments: Step) -> Told:
        sizes = tuple(moments)
        first = moments[sizes[0]]
        covers = tuple(dict.fromkeys(m.operation.key for ms in moments.values() for m in ms))
        trusted = first[0].operation
        if isinstance(trusted, Trusted):
            return Told(key, covers, sizes, {}, None, trusted)
        words: dict[str, list[Spans]] = {part: [] for part in ("text", *PARTS)}
        shown = None
        for says, own, mine in _told_once(self.book, moments):
            having = tuple(mine)
            part = "all" if having == sizes else "some"
            values = {**self.values, **own, "part": Word(part), "sizes": titles(self.book, having)}
            for name, found in words.items():
                spans = self._said(says, values, name)
                if text(spans):
                    found.append(spans)
            figures = (self._figure(size, moment, values) for size, moment in mine.items())
            shown = shown or next((f for f in figures if f is not None), None)
        return Told(key, covers, sizes, {p: _joined(s) for p, s in words.items()}, shown)

    def _said(self, message: str, values: Values, part: str) -> Spans:
        """Return a message or its part; one that is for some sizes says for which."""
        spans = self.speak.say(message, values, "" if part == "text" else part)
        if values["part"] == Word("all") or "$sizes" in self.speak.sources[message]:
            return spans
        return (*self.speak.say("for-sizes", values), *spans) if text(spans) else ()

    def _figure(self, size: str, moment: Moment, values: Values) -> FigureSpec | None:
        asked = moment.operation.figure(moment)
        if asked is None:
            return None
        said = moment.operation.says
        values = {**values, "size": Named(self.book.title(size))}
        caption = self.speak.text(said, values, "caption")
        return figure(
            asked.kind, size if asked.sized else None, caption, asked.name, **dict(asked.values)
        )


def _steps_of(moments: Sequence[Moment]) -> list[str]:
    return list(dict.fromkeys(m.operation.step for m in moments))


def _merged(orders: Sequence[Sequence[str]]) -> list[str]:
    """Return one order that agrees with each: what is new goes right before what it is
    followed by, so that an earlier order stays together."""
    found: list[str] = []
    for order in orders:
        for at, step in enumerate(order):
            if step not in found:
                after = (found.index(later) for later in order[at + 1 :] if later in found)
                found.insert(next(after, len(found)), step)
    return found


def _told_once(book: Book, moments: Step) -> Iterator[tuple[str, Values, Mapping[str, Moment]]]:
    """Yield the message of each operation that is told, its values and its moment at each size
    that has it.

    What is done again in the same words, as at the next corner, is told once; what some size
    tells in full is told in full.
    """
    by_key = {size: {m.operation.key: m for m in ms} for size, ms in moments.items()}
    before: tuple[str, Values] | None = None
    for key in _merged([list(keys) for keys in by_key.values()]):
        mine = {size: found[key] for size, found in by_key.items() if key in found}
        each = {size: m.operation.values(m) for size, m in mine.items()}
        values = {
            name: _side_by_side(book, {size: vs[name] for size, vs in each.items() if name in vs})
            for name in dict.fromkeys(n for vs in each.values() for n in vs)
        }
        differs = {
            f"{n}-differs": Word("yes" if isinstance(v, BySize) else "no")
            for n, v in values.items()
        }
        values = {**values, **differs}
        forms = list(dict.fromkeys(m.operation.says for m in mine.values()))
        said = min(forms, key=len)
        if said and (said, values) != before:
            yield said, values, mine
        before = (said, values)


def _side_by_side(book: Book, values: Mapping[str, Value]) -> Value:
    return side_by_side({book.title(size): value for size, value in values.items()})


def _joined(said: Sequence[Spans]) -> Spans:
    """Return the sentences of a step one after another."""
    found: list[Spans] = []
    for spans in said:
        found += [_SPACE, spans] if found else [spans]
    return tuple(span for spans in found for span in spans)

"""Steps in the designer's own voice: the changes of `steps`, made in turn.

In: the pattern as a book, generated sections. Out: sections with the changes made, notes.
Invariant: a change that cannot be made leaves everything as it was and is a note; one of
the studio's, which is for every pattern, is passed over where its step is not; the
steps of a section are numbered from 1 without gaps; a step for some sizes only says so in
its first words, whoever wrote it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from publish.model.pattern import StepChange
from publish.model.words import Section, Step
from publish.notes import Note, Place, Severity, error
from publish.write import order
from publish.write.context import Book
from publish.write.filling import filled, nearest
from publish.write.order import Sections, Spot
from publish.write.values import values

_WORDS = ("text", "right", "tip", "caution")
_OWN = ("steps",)
"""The way to the pattern's own changes."""


def said(book: Book, sections: Sequence[Section]) -> str:
    """Return every text of the designer's, filled in for all sizes: what it speaks of."""
    known = values(book, book.keys)
    made = [
        change
        for root, _, change in book.pattern.changes()
        if root == _OWN or order.find(sections, change.step or change.beside) is not None
    ]
    texts = [t for c in made for w in _WORDS if (t := getattr(c, w))]
    return "\n".join(filled(text, known)[0] for text in texts)


def voiced(book: Book, sections: Sequence[Section]) -> tuple[Sections, tuple[Note, ...]]:
    """Return the sections with the studio's and the pattern's changes made, and what could
    not be done."""
    changes = book.pattern.changes()
    if not changes:
        return tuple(sections), ()
    hand = _Hand(book, tuple(sections))
    for root, number, change in changes:
        hand.make(root, number, change)
    return order.numbered(order.without_empty(hand.sections, sections)), tuple(hand.notes)


@dataclass
class _Hand:
    """Makes changes one after another, and takes down what it cannot do."""

    book: Book
    sections: Sections

    def __post_init__(self) -> None:
        self.notes: list[Note] = []
        self._root: tuple[str, ...] = _OWN
        self._followers: dict[str, str] = {}
        """The last step inserted after a step: the next one goes after that."""

    def make(self, root: tuple[str, ...], number: int, change: StepChange) -> None:
        self._root = root
        change = self._renamed(change)
        made = {
            "replace": self._replace,
            "insert": self._insert,
            "remove": self._remove,
            "move": self._move,
        }[change.action]
        made(number, change)

    def _renamed(self, change: StepChange) -> StepChange:
        """Return a change with the keys that its steps have now: one that a step had while
        each size was told apart stands for that step at this size."""
        steps = [s for section in self.sections for s in order.steps_of(section)]
        known = {s.key for s in steps}
        others = {alias: (s.key, size) for s in steps for alias, size in s.aliases}
        if change.step in others and change.step not in known and change.action != "insert":
            key, size = others[change.step]
            change = replace(change, step=key, sizes=change.sizes or (size,))
        if change.beside in others and change.beside not in known:
            change = replace(change, beside=others[change.beside][0])
        return change

    def _place(self, number: int, *names: str) -> Place:
        return self.book.pattern.place(*self._root, number, *names)

    def _find(self, number: int, key: str, *names: str) -> Spot | None:
        """Return where a step is; note the nearest key when there is none."""
        spot = order.find(self.sections, key)
        if spot is None and self.book.pattern.others:
            return None  # a step of a size that this booklet is not about
        if spot is None and self._root != _OWN:
            what = f"the studio's wording of `{key}` is not used: this pattern has no such step"
            self.notes.append(
                Note(
                    "W511",
                    Severity.INFO,
                    self._place(number, *names),
                    what,
                    received=key,
                    help="nothing, if another pattern has it",
                )
            )
        elif spot is None:
            known = [s.key for section in self.sections for s in order.steps_of(section)]
            near = nearest(key, known)
            help_ = f"write `{near}`" if near else "`foldwork steps` lists the key of every step"
            self.notes.append(
                error(
                    "W506",
                    self._place(number, *names),
                    f"there is no step `{key}`",
                    expected="the key of a step",
                    received=key,
                    help=help_,
                )
            )
        return spot

    def _scope(self, spot: Spot) -> tuple[str, ...]:
        """Return the sizes that a section speaks of."""
        return self.sections[spot.section].sizes or self.book.keys

    def _sizes(
        self, number: int, change: StepChange, whole: tuple[str, ...]
    ) -> tuple[str, ...] | None:
        """Return the sizes that a change is for, or None where the step is not for them."""
        others = self.book.pattern.others
        if change.sizes and set(change.sizes) <= set(others):
            return None
        strange = [k for k in change.sizes if k not in (*whole, *others)]
        if not strange:
            return tuple(k for k in whole if k in change.sizes) if change.sizes else whole
        self.notes.append(
            error(
                "W509",
                self._place(number, "sizes"),
                "the step is not for this size",
                expected=" or ".join(f"`{k}`" for k in whole),
                received=strange[0],
                help="name only sizes that the step is for, or leave `sizes` out",
            )
        )
        return None

    def _fill(self, number: int, change: StepChange, sizes: tuple[str, ...]) -> dict[str, str]:
        """Return the change's texts with their values, by field; slips become notes."""
        known = values(self.book, sizes)
        found: dict[str, str] = {}
        for word in _WORDS:
            text = getattr(change, word)
            if text is None:
                continue
            found[word], slips = filled(text, known)
            for slip in slips:
                code = "W507" if slip.kind == "name" else "W508"
                what = (
                    "the text names a value that there is not"
                    if slip.kind == "name"
                    else ("the text's braces cannot be read")
                )
                self.notes.append(
                    error(
                        code,
                        self._place(number, word),
                        what,
                        expected="a value of the pattern's by its name",
                        received=slip.received,
                        help=slip.help,
                    )
                )
        return found

    def _only(self, step: Step, sizes: tuple[str, ...], scope: tuple[str, ...]) -> Step:
        """Return a step for these sizes, its first words saying which where they differ."""
        plain = step.text.removeprefix(self.book.only_for(step.sizes))
        only = self.book.only(sizes, scope)
        return replace(step, text=self.book.only_for(only) + plain, sizes=only)

    def _replace(self, number: int, change: StepChange) -> None:
        spot = self._find(number, change.step, "step")
        if spot is None:
            return
        scope, old = self._scope(spot), spot.step
        whole = old.sizes or scope
        sizes = self._sizes(number, change, whole)
        if sizes is None:
            return
        bare = replace(old, text=old.text.removeprefix(self.book.only_for(old.sizes)), sizes=())
        new = _reworded(bare, self._fill(number, change, sizes))
        new = replace(new, figure=old.figure if change.figure else None)
        rest = tuple(k for k in whole if k not in sizes)
        both = [self._only(new, sizes, scope)]
        if rest:
            own = replace(both[0], key="-".join([old.key, *sizes]))
            both = [self._only(old, rest, scope), own]
        self.sections = order.put(self.sections, spot, both)

    def _insert(self, number: int, change: StepChange) -> None:
        spot = self._find(number, change.beside, "before" if change.before else "after")
        if spot is None:
            return
        scope = self._scope(spot)
        sizes = self._sizes(number, change, scope)
        if sizes is None:
            return
        words = self._fill(number, change, sizes)
        whose = "own" if self._root == _OWN else self._root[0]
        key = change.step or f"{self.sections[spot.section].key}-{whose}-{number + 1}"
        step = _reworded(Step(key, 0, ""), words)
        self._lay(change, self._only(step, sizes, scope))

    def _lay(self, change: StepChange, step: Step) -> None:
        """Put a step before the one that a change names, or after it and its followers."""
        beside = change.beside
        if not change.before:
            beside = self._followers.get(change.beside, change.beside)
        spot = order.find(self.sections, beside) or order.find(self.sections, change.beside)
        assert spot is not None  # looked up before
        pair = [step, spot.step] if change.before else [spot.step, step]
        self.sections = order.put(self.sections, spot, pair)
        if not change.before:
            self._followers[change.beside] = step.key

    def _remove(self, number: int, change: StepChange) -> None:
        spot = self._find(number, change.step, "remove")
        if spot is None:
            return
        scope = self._scope(spot)
        whole = spot.step.sizes or scope
        sizes = self._sizes(number, change, whole)
        if sizes is None:
            return
        rest = tuple(k for k in whole if k not in sizes)
        kept = [self._only(spot.step, rest, scope)] if rest else []
        self.sections = order.put(self.sections, spot, kept)

    def _move(self, number: int, change: StepChange) -> None:
        spot = self._find(number, change.step, "move")
        target = self._find(number, change.beside, "before" if change.before else "after")
        if spot is None or target is None or change.step == change.beside:
            return
        before, after = self._scope(spot), self._scope(target)
        step = self._only(spot.step, spot.step.sizes or before, after)
        self.sections = order.put(self.sections, spot, [])
        self._lay(change, step)


def _reworded(step: Step, words: Mapping[str, str]) -> Step:
    """Return a step with some of its words replaced, by field."""
    return replace(
        step,
        text=words.get("text", step.text),
        right=words.get("right", step.right),
        tip=words.get("tip", step.tip),
        caution=words.get("caution", step.caution),
        own=True,
    )


def listing(sections: Sequence[Section]) -> tuple[tuple[Section, tuple[Step, ...]], ...]:
    """Return each section that has steps, with them, in reading order."""
    found = ((s, tuple(order.steps_of(s))) for s in sections)
    return tuple((section, steps) for section, steps in found if steps)


def step_list(sections: Sequence[Section]) -> str:
    """Return the key of every step with its number and first words, a line each."""
    lines: list[str] = []
    for section, steps in listing(sections):
        lines += [*([""] if lines else []), section.title]
        width = max(len(s.key) for s in steps)
        for step in steps:
            words = " ".join(step.text.split())
            first = words if len(words) <= 60 else words[:57].rstrip() + "..."
            lines.append(f"  {step.number:>2}  {step.key:<{width}}  {first}")
    return "\n".join(lines)

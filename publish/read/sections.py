"""The shapes that the schema is declared in: keys, sections, lists.

In: forms. Out: `Key`, `Section` and the other shapes.
Invariant: a key is declared once, and its check, its JSON Schema and its line in the
reference are made from that declaration.
"""

from __future__ import annotations

from dataclasses import dataclass

from publish.read.forms import Form


@dataclass(frozen=True)
class Key:
    """One key: its name, the shape of its value, one sentence of meaning, an example.

    `default` is written as a designer would write it; `none` is a value then. `derived`
    says in words what stands in for a key left out, when that depends on other keys.
    `metric` is the default where the pattern's `units` begin with `metric`, if another.
    """

    name: str
    shape: Shape
    meaning: str
    example: str
    default: str | None = None
    required: bool = False
    derived: str = ""
    metric: str = ""

    @property
    def may_be_none(self) -> bool:
        return self.default == "none"


@dataclass(frozen=True)
class Needs:
    """Where `key` has one of `values`, or is written at all if there are none, `other`
    must stand beside it."""

    key: str
    values: tuple[str, ...]
    other: str


@dataclass(frozen=True)
class Idle:
    """Where `key` has one of `values`, `other` has no effect."""

    key: str
    values: tuple[str, ...]
    other: str


@dataclass(frozen=True)
class Only:
    """Where none of `beside` is written, `key` has no effect."""

    key: str
    beside: tuple[str, ...]


@dataclass(frozen=True)
class Section:
    """A mapping with known keys. Of the keys in `one_of`, exactly one is written; of those
    in `apart`, at most one."""

    name: str
    meaning: str
    keys: tuple[Key, ...]
    one_of: tuple[str, ...] = ()
    needs: tuple[Needs, ...] = ()
    idle: tuple[Idle, ...] = ()
    only: tuple[Only, ...] = ()
    apart: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        return f"the keys of {self.name}, indented below or between braces"

    @property
    def example(self) -> str:
        """The required keys with their examples, between braces."""
        first = self.one_of[:1]
        along = [n.other for n in self.needs if not n.values and n.key in first]
        keys = [k for k in self.keys if k.required or k.name in (*first, *along)]
        return "{" + ", ".join(f"{k.name}: {k.example}" for k in keys) + "}"

    def key(self, name: str) -> Key:
        """Return the key called `name`; KeyError when there is none."""
        return {k.name: k for k in self.keys}[name]


@dataclass(frozen=True)
class Named:
    """A mapping from the designer's own names to sections."""

    section: Section
    noun: str
    most: int = 100

    @property
    def words(self) -> str:
        return f"your own key for each {self.noun}, and {self.section.words}"


@dataclass(frozen=True)
class Many:
    """A list. `distinct` lists hold no item twice."""

    item: Shape
    least: int
    most: int
    distinct: bool = False

    @property
    def words(self) -> str:
        inner = self.item.name if isinstance(self.item, Section) else self.item.words
        return f"a list of {self.counts} items, each {inner}"

    @property
    def counts(self) -> str:
        """Return how many items there may be."""
        return f"{self.least} to {self.most}" if self.least < self.most else str(self.least)

    def item_example(self, example: str) -> str:
        """Return an example of one item, from an example of the list."""
        if isinstance(self.item, Section):
            return self.item.example
        if isinstance(self.item, Row):
            return self.item.example
        inner = example.removeprefix("[").removesuffix("]")
        return inner.split("], ")[0] + "]" if isinstance(self.item, Many) else inner.split(",")[0]


@dataclass(frozen=True)
class Row:
    """A short list whose items have each their own form; those past `least` may be left out."""

    forms: tuple[Form, ...]
    least: int
    words: str
    example: str = "[60, 0]"

    def form_example(self, number: int) -> str:
        """Return an example of the item at a position."""
        items = self.example.strip("[]").split(", ")
        return items[min(number, len(items) - 1)]


@dataclass(frozen=True)
class Pairs:
    """A mapping from names to plain values. `noun` is what each name is the name of."""

    form: Form
    noun: str
    most: int = 40

    @property
    def words(self) -> str:
        return f"for each {self.noun}, {self.form.words}"


@dataclass(frozen=True)
class Either:
    """A plain value, or something larger: told apart by how it is written."""

    plain: Form
    other: Section | Many

    @property
    def words(self) -> str:
        return f"{self.plain.words}, or {self.other.words}"


Shape = Form | Section | Named | Many | Row | Pairs | Either
"""What a value can look like."""


def homes(root: Section) -> dict[str, list[str]]:
    """Return, for each key's name, the sections below `root` that have such a key."""
    found: dict[str, list[str]] = {}
    for section in sections_of(root):
        for key in section.keys:
            found.setdefault(key.name, []).append(section.name)
    return found


def sections_of(shape: Shape) -> list[Section]:
    """Return every section in `shape`, itself included, in the order of declaration."""
    if isinstance(shape, Section):
        inner = [s for key in shape.keys for s in sections_of(key.shape)]
        return list(dict.fromkeys([shape, *inner]))
    if isinstance(shape, Named):
        return sections_of(shape.section)
    if isinstance(shape, Many):
        return sections_of(shape.item)
    if isinstance(shape, Either):
        return sections_of(shape.other)
    return []

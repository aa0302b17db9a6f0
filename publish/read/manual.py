"""The written reference of every key, as Markdown.

In: the declarations. Out: the text of REFERENCE.md.
Invariant: nothing is said of a key here that the schema does not declare.
"""

from __future__ import annotations

from collections.abc import Iterable

from publish.model.names import SIZE, VALUES
from publish.read.blocks import trade_block
from publish.read.forms import Form, listed
from publish.read.library import trade_blocks
from publish.read.schema import PATTERN, SMALLEST
from publish.read.schema_book import BOOK, BOOK_FILE
from publish.read.schema_studio import FILE_NAME, OWN, STUDIO, STUDIO_EXAMPLE
from publish.read.sections import (
    Either,
    Idle,
    Key,
    Many,
    Named,
    Needs,
    Section,
    Shape,
    sections_of,
)
from publish.units import UNITS

_OPENING = f"""\
# Reference of pattern.yaml

This file is written by `foldwork reference`; the same declarations check the patterns.
One file describes one pattern. The least that is a pattern:

```yaml
{SMALLEST}```

Lengths are written as makers write them, always with a unit: `2 1/2 in`, `2½"`, `6.5 cm`,
`1/4 yd`. The units are {", ".join(UNITS)}. Fractions stay exact from here to the page.

Values are read as they are written: `1:30` is no number, and `no` is a word. A colour
goes in quotes, because a bare # begins a comment. Each key is written once. Anchors,
aliases, merge keys and tags are not used: a size takes what it leaves out from the
pattern.

Names of your own (fabrics, motifs, blocks, sizes) are small letters, digits, `-` and `_`,
at most 40 of them. `none` is no name: it stands for a value that is not wanted.
"""


_STUDIO = f"""\
What the patterns of one studio share is written once, in `{FILE_NAME}` beside them or in a
folder above: the first one found upwards from a pattern's folder is used. It has the keys
of a pattern, those above, with the same forms and defaults; paths, such as those of a logo or of
fonts, are from its own folder.

```yaml
{STUDIO_EXAMPLE}```

A pattern's own key wins. Sections are merged key by key, so that a pattern may have its own
`publication.year` and take the rest; lists are replaced whole. `steps` is the one
exception: the studio's changes are made first, in every pattern that has the step, and the
pattern's own after them. `report.html` lists where each of these values came from.
"""


_BOOK = f"""\
## {BOOK_FILE}

A book of several patterns stands in `{BOOK_FILE}` beside them or above them; `foldwork book`
makes it. What is left out of `layout`, `papers`, `style` and `publication` is the studio's.

```yaml
title: A Year of Fens
patterns: [samphire, towpath]
```
"""


def reference() -> str:
    """Return the reference of every key, section by section."""
    sections = map(_section, sections_of(PATTERN))
    return "\n".join([_OPENING, *sections, _studio(), *_book(), _values(), _library()])


def _studio() -> str:
    """Return what studio.yaml may say, by the keys of a pattern."""
    lines = ["## studio.yaml", "", _STUDIO, "| key | form |", "|---|---|"]
    lines += [f"| `{key.name}` | {_form(key)}{_without(key.shape)} |" for key in STUDIO.keys]
    return "\n".join([*lines, ""])


def _book() -> list[str]:
    """Return what book.yaml may say: its sections that no pattern has."""
    own = [s for s in sections_of(BOOK) if s not in sections_of(PATTERN)]
    return [_BOOK, *map(_section, own)]


def _without(shape: Shape) -> str:
    """Return which keys of a section are left to each pattern."""
    own = sorted(OWN.get(_held(shape)[0].name, ())) if _held(shape) else []
    return f", without {listed(own)}" if own else ""


def _values() -> str:
    """Return the computed values that the text of a step may name."""
    lines = [
        "## Values for steps",
        "",
        "Texts in [step](#step) may name these in double braces. A size stands under its key,",
        "with `_` for `-`: `{{ mini.block }}`. `each` stands for all the sizes that a step is",
        "for, and says which is which where they differ: `{{ each.block }}` gives",
        "`16 in (40.6 cm) for the **Mini** and 18 in (45.7 cm) for the **Throw**`. Words in",
        "capitals stand for a key, letter or number of the pattern's: `{{ throw.cut.A }}`. A size",
        "has only the values that there are for it. `{{ each.blocks | capital }}` begins with a",
        "capital. Nothing else is read between braces.",
        "",
        "| value | meaning | example |",
        "|---|---|---|",
    ]
    for value in VALUES:
        where = "SIZE" if value.where == SIZE else value.where
        lines.append(f"| `{where}.{value.name}` | {value.meaning} | {value.example} |")
    return "\n".join([*lines, ""])


def _library() -> str:
    """Return the traditional blocks with their roles."""
    lines = [
        "## Traditional blocks",
        "",
        "Blocks in general use, by their trade names, for `traditional` in [block](#block). Each",
        "role is given a fabric under `fabrics`; two roles may have the same one.",
        "",
        "| name | other names | roles | grid | patches |",
        "|---|---|---|---|---|",
    ]
    for values in trade_blocks():
        block = trade_block(values["name"])
        assert block is not None
        roles = "; ".join(f"`{role}`: {words}" for role, words in values["roles"].items())
        also = ", ".join(f"`{name}`" for name in values.get("also", ())) or "none"
        curved = " (curved seams)" if block.curved else ""
        lines.append(
            f"| `{values['name']}` | {also} | {roles} | {block.columns} x {block.rows} "
            f"| {len(block.patches)}{curved} |"
        )
    return "\n".join([*lines, ""])


def _section(section: Section) -> str:
    lines = [f"## {_title(section).capitalize()}", "", section.meaning, *_where(section), ""]
    lines += ["| key | meaning | form | default | example |", "|---|---|---|---|---|"]
    lines += [_line(key, section) for key in section.keys]
    return "\n".join([*lines, *_rules(section), ""])


def _where(section: Section) -> list[str]:
    """Return where a section is written, for those that are not at the top."""
    homes = [
        f"`{key.name}` in [{_title(outer)}](#{_anchor(outer)})"
        for outer in sections_of(PATTERN)
        for key in outer.keys
        if section in _held(key.shape)
    ]
    return ["", f"Written under {', and under '.join(homes)}."] if homes else []


def _held(shape: Shape) -> list[Section]:
    """Return the sections that a value of this shape is made of directly."""
    if isinstance(shape, Section):
        return [shape]
    if isinstance(shape, Named):
        return [shape.section]
    if isinstance(shape, Many):
        return _held(shape.item)
    return _held(shape.other) if isinstance(shape, Either) else []


def _title(section: Section) -> str:
    return "the file" if section is PATTERN else section.name


def _anchor(section: Section) -> str:
    return _title(section).replace(" ", "-")


def _line(key: Key, section: Section) -> str:
    default, example = _default(key, section), f"`{key.example}`"
    cells = [f"`{key.name}`", key.meaning, _form(key), default, example]
    return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def _form(key: Key) -> str:
    held = _held(key.shape)
    if not held:
        return key.shape.words + (", or `none`" if key.may_be_none else "")
    link = f"[{held[0].name}](#{_anchor(held[0])})"
    if isinstance(key.shape, Named):
        return f"your own key for each {key.shape.noun}, with the keys of {link}"
    if isinstance(key.shape, Many):
        return f"a list of {key.shape.counts}, each with the keys of {link}"
    if isinstance(key.shape, Either) and isinstance(key.shape.plain, Form):
        return f"{key.shape.plain.words}, or the keys of {link}"
    return f"the keys of {link}"


def _default(key: Key, section: Section) -> str:
    """Return what stands in for a key left out."""
    if key.required:
        return "**required**"
    if key.name in section.one_of:
        others = [f"`{name}`" for name in section.one_of if name != key.name]
        return f"**required**, or {' or '.join(others)}"
    if key.derived:
        return key.derived
    if key.metric:
        return f"`{key.default}`; in metric `{key.metric}`"
    return "nothing" if key.default in ('""', "[]") else f"`{key.default}`"


def _rules(section: Section) -> list[str]:
    rules = [f"`{n.other}` is required where {_valued(n)}." for n in section.needs if n.values]
    written = [n for n in section.needs if not n.values]
    for other in dict.fromkeys(n.other for n in written):
        keys = [n.key for n in written if n.other == other]
        rules.append(f"`{other}` is required where {_or(keys)} is written.")
    rules += [f"`{i.other}` has no effect where {_valued(i)}." for i in section.idle]
    for beside in dict.fromkeys(o.beside for o in section.only):
        keys = [o.key for o in section.only if o.beside == beside]
        verb = "have" if len(keys) > 1 else "has"
        rules.append(f"{listed(keys)} {verb} no effect without {_or(beside)}.")
    if section.apart:
        rules.insert(0, f"At most one of {listed(section.apart)} stands.")
    if section.one_of:
        rules.insert(0, f"Exactly one of {listed(section.one_of)} stands.")
    return ["", *(f"- {rule}" for rule in rules)] if rules else []


def _valued(rule: Needs | Idle) -> str:
    return f"`{rule.key}` is {_or(rule.values)}"


def _or(names: Iterable[str]) -> str:
    return " or ".join(f"`{name}`" for name in names)

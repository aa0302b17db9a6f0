"""Layouts: folders of templates, style and settings that say how a booklet looks.

In: the name that a pattern gives. Out: `Layout`, or notes that say what is wrong.
Invariant: a name that Foldwork has is Foldwork's layout whatever lies beside the pattern,
for a pattern that is passed on must not change what a name means; a layout from beside the
pattern is used only when the pattern names it, and a note says so. What a layout says
itself goes before what it takes from the layout that it extends.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from itertools import product
from pathlib import Path
from typing import Any

from publish.model.book import Paper
from publish.model.pattern import Pattern
from publish.notes import Note, Severity, error, warning
from publish.typeset.layout_file import (
    DEFAULT_STYLE,
    DEFAULT_TEMPLATE,
    FILE,
    FontFace,
    Written,
    fault,
    our_homes,
    read,
    shared,
    within,
)


@dataclass(frozen=True)
class Layout:
    """A layout's folders and what their `layout.yaml`s say together."""

    name: str
    folders: tuple[Path, ...]
    """The layout's own, then that of the layout it extends, and so on."""
    template: str
    styles: tuple[Path, ...]
    """Style sheets in the order in which they are laid over each other."""
    fonts: tuple[FontFace, ...]
    families: Mapping[str, str]
    """By role: `titles`, `text`, `labels`."""
    settings: Mapping[str, Any] = field(default_factory=dict)
    """Plain values for the templates; what a paper says has been laid over the rest."""

    @property
    def folder(self) -> Path:
        return self.folders[0]

    @property
    def searched(self) -> tuple[Path, ...]:
        """The folders that its files are looked for in: its own, then what all layouts share."""
        return (*self.folders, shared())

    def file(self, name: str) -> Path | None:
        """Return a file of the layout, or of one that it extends; None for any other path."""
        return next((p for f in self.searched if (p := within(f, name)) is not None), None)


def homes(pattern: Pattern) -> tuple[Path, ...]:
    """Return the folders that layouts are looked for in, in this order: ours, `layouts/` in
    the pattern's own folder, then in its studio's."""
    return (*our_homes(), *_own_homes(pattern))


def _own_homes(pattern: Pattern) -> tuple[Path, ...]:
    """Return the folders of the designer's own layouts."""
    folders = [pattern.folder]
    if pattern.studio is not None:
        folders.append(pattern.studio.folder)
    return tuple(folder / "layouts" for folder in dict.fromkeys(folders))


def known(pattern: Pattern) -> tuple[str, ...]:
    """Return the names of the layouts that a pattern can name."""
    found = [
        p.parent.name
        for home in homes(pattern)
        if home.is_dir()
        for p in sorted(home.glob(f"*/{FILE}"))
    ]
    return tuple(dict.fromkeys(found))


def find(pattern: Pattern, paper: Paper) -> tuple[Layout | None, tuple[Note, ...]]:
    """Return the layout that a pattern names, with its settings for one paper."""
    folder = _folder(pattern, pattern.layout)
    if folder is None:
        note = error(
            "T701",
            pattern.place("layout"),
            "there is no layout of this name",
            expected=" or ".join(known(pattern)) or "a folder with a layout.yaml",
            received=pattern.layout,
            help="name one of these, or put a folder of your own in layouts/ beside pattern.yaml "
            "or studio.yaml",
        )
        return None, (note,)
    chain, notes = _chain(pattern, folder)
    return (None, notes) if notes else _together(chain, paper)


def _folder(pattern: Pattern, name: str) -> Path | None:
    """Return the folder of the layout that a name means."""
    for home in homes(pattern):
        folder = home / name
        if name == folder.name and (folder / FILE).is_file():
            return folder
    return None


def origin(pattern: Pattern, layout: Layout) -> Iterator[Note]:
    """Yield where a layout comes from: that it is the designer's own, or that one of its
    name lies beside the pattern or its studio's file and is passed over."""
    place, designers = pattern.place("layout"), _own_homes(pattern)
    for folder, own in product(layout.folders, designers):
        beside, name = own / folder.name, f"{own.name}/{folder.name}"
        if folder == beside:
            whose = "pattern's own" if own.parent == pattern.folder else "studio's"
            what = f"the booklet is set in a layout from the {whose} folder"
            yield Note(
                "T720",
                Severity.INFO,
                place,
                what,
                received=name,
                help="it can arrange what the booklet says and nothing else",
            )
        elif folder.parent in designers:
            continue
        elif (beside / FILE).is_file() and not beside.samefile(folder):
            yield warning(
                "T719",
                place,
                "a layout of a name that Foldwork has is not used",
                expected="another name for a layout of your own",
                received=name,
                help=f"rename its folder, and write that name at `layout`; "
                f"`{folder.name}` is always Foldwork's",
            )


def _chain(pattern: Pattern, folder: Path) -> tuple[tuple[Written, ...], tuple[Note, ...]]:
    """Return a layout and those it extends, itself first, or what is wrong with any."""
    chain: list[Written] = []
    while True:
        written, notes = read(folder)
        if written is None:
            return (), notes
        chain.append(written)
        if not written.extends:
            return tuple(chain), ()
        base = _folder(pattern, written.extends)
        if base is None or base in [w.folder for w in chain]:
            what = "there is no layout of the name that this one extends"
            if base is not None:
                what = "this layout extends one that extends it"
            others = " or ".join(
                n for n in known(pattern) if n not in {w.folder.name for w in chain}
            )
            return (), (fault(written.path, what, expected=others, received=written.extends),)
        folder = base


def _together(chain: tuple[Written, ...], paper: Paper) -> tuple[Layout | None, tuple[Note, ...]]:
    """Return what the layouts of a chain say together for one paper."""
    own, base_first = chain[0], chain[::-1]
    settings: dict[str, Any] = {}
    faces: dict[tuple[str, int, str], FontFace] = {}
    families: dict[str, str] = {}
    named = any(paper.key in w.papers for w in chain)
    for each in base_first:
        # A paper that no layout names, such as a roll, gets the settings of the first one.
        key = paper.key if named else next(iter(each.papers), "")
        settings |= {**each.settings, **each.papers.get(key, {})}
        faces |= {(f.family, f.weight, f.style): f for f in each.fonts}
        families |= each.families
    fonts = tuple(faces.values())
    template = next((w.template for w in chain if w.template), DEFAULT_TEMPLATE)
    notes = [*_lacking(chain, template), *_unset(chain, paper), *_unlisted(own, families, fonts)]
    if notes:
        return None, tuple(notes)
    families.setdefault("text", fonts[0].family)
    families.setdefault("titles", families["text"])
    families.setdefault("labels", fonts[-1].family)
    styles = [w.folder / (w.style or DEFAULT_STYLE) for w in base_first]
    return Layout(
        own.folder.name,
        tuple(w.folder for w in chain),
        template,
        tuple(p for p in styles if p.is_file()),
        fonts,
        families,
        settings,
    ), ()


def _unset(chain: tuple[Written, ...], paper: Paper) -> list[Note]:
    """Return a note when a half-size paper would be set with the settings of a whole one."""
    if not paper.parent or any(paper.key in w.papers for w in chain):
        return []
    what = f"the layout has no settings for {paper.name}"
    return [fault(chain[0].path, what, expected=f"papers: {{{paper.key}: …}}")]


def _lacking(chain: tuple[Written, ...], template: str) -> list[Note]:
    """Return a note when no layout of the chain has the page template."""
    if any((folder / template).is_file() for folder in (*(w.folder for w in chain), shared())):
        return []
    return [fault(chain[0].path, "the layout lacks a file that it names", received=template)]


def _unlisted(own: Written, families: Mapping[str, str], fonts: tuple[FontFace, ...]) -> list[Note]:
    """Return a note for each role whose family has no font file."""
    listed = {f.family for f in fonts}
    return [
        fault(
            own.path,
            f"families.{role} has no font file",
            expected=" or ".join(sorted(listed)),
            received=family,
        )
        for role, family in families.items()
        if family not in listed
    ]

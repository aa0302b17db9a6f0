"""Layouts: folders of templates, style and settings that say how a booklet looks.

In: the name that a pattern gives. Out: `Layout`, or notes that say what is wrong.
Invariant: a layout is found beside the pattern first, then beside the package, so the
same search serves a checkout and an installed wheel.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import yaml

import publish
from publish.model.book import PAPERS, Paper
from publish.model.pattern import Pattern
from publish.notes import Note, Place, error

DEFAULT_TEMPLATE = "booklet.html"
DEFAULT_STYLE = "style.css"
_KEYS = {"about", "template", "style", "fonts", "settings", "papers"}


@dataclass(frozen=True)
class FontFace:
    """One font file: the family, weight and style that CSS asks for it by."""

    family: str
    weight: int
    style: str
    path: Path


@dataclass(frozen=True)
class Layout:
    """A layout's folder and what its `layout.yaml` says."""

    name: str
    folder: Path
    template: str
    style: str
    fonts: tuple[FontFace, ...]
    settings: Mapping[str, Any] = field(default_factory=dict)
    """Plain values for the templates; what a paper says has been laid over the rest."""


def homes(pattern: Pattern) -> tuple[Path, ...]:
    """Return the folders that layouts are looked for in, nearest first.

    `layouts/` in the pattern's own folder; `layouts/` inside the package, where a wheel
    puts it; `layouts/` beside the package, where a checkout has it.
    """
    package = Path(publish.__file__).resolve().parent
    return tuple(p / "layouts" for p in (pattern.folder, package, package.parent))


def find(pattern: Pattern, paper: Paper) -> tuple[Layout | None, tuple[Note, ...]]:
    """Return the layout that a pattern names, with its settings for one paper."""
    known: list[str] = []
    for home in homes(pattern):
        if home.is_dir():
            known += sorted(p.parent.name for p in home.glob("*/layout.yaml"))
        folder = home / pattern.layout
        if pattern.layout == folder.name and (folder / "layout.yaml").is_file():
            return _read(folder, paper)
    note = error(
        "T701",
        pattern.place("layout"),
        "there is no layout of this name",
        expected=" or ".join(dict.fromkeys(known)) or "a folder with a layout.yaml",
        received=pattern.layout,
        help="name one of these, or put a folder of your own in layouts/ beside pattern.yaml",
    )
    return None, (note,)


def _read(folder: Path, paper: Paper) -> tuple[Layout | None, tuple[Note, ...]]:
    """Read `layout.yaml`, collecting everything that is wrong in it."""
    path = folder / "layout.yaml"
    try:
        data = yaml.safe_load(path.read_text(encoding="utf-8"))
    except yaml.MarkedYAMLError as fault:
        mark = fault.problem_mark
        line, column = (mark.line + 1, mark.column + 1) if mark else (1, 1)
        what = f"the layout's settings are not YAML: {fault.problem or 'unreadable'}"
        return None, (error("T702", Place(shown(path), line, column), what),)
    except (OSError, UnicodeDecodeError) as fault:
        return None, (_fault(path, f"the layout's settings cannot be read: {fault}"),)
    if not isinstance(data, dict):
        return None, (_fault(path, "the layout's settings are not a set of keys"),)
    fonts, notes = _fonts(data.get("fonts"), path)
    settings, more = _settings(data, paper, path)
    notes += more
    notes += [_fault(path, "unknown key", received=str(k)) for k in data if k not in _KEYS]
    template = str(data.get("template", DEFAULT_TEMPLATE))
    style = str(data.get("style", DEFAULT_STYLE))
    notes += [
        _fault(path, "the layout lacks a file that it names", received=name)
        for name in (template, style)
        if not (folder / name).is_file()
    ]
    if notes:
        return None, tuple(notes)
    return Layout(folder.name, folder, template, style, fonts, settings), ()


def _settings(data: dict[str, Any], paper: Paper, path: Path) -> tuple[dict[str, Any], list[Note]]:
    """Return the settings for a paper, or what is wrong with them."""
    common, papers = data.get("settings", {}), data.get("papers", {})
    for name, value in (("settings", common), ("papers", papers)):
        if not isinstance(value, dict):
            return {}, [_fault(path, f"{name} is not a set of keys")]
    unknown = [_fault(path, "unknown paper", received=str(k)) for k in papers if k not in PAPERS]
    # A paper that the layout does not know, such as a roll, gets the first one's settings.
    own = papers.get(paper.key, next(iter(papers.values()), {}))
    if not isinstance(own, dict):
        return {}, [_fault(path, f"papers.{paper.key} is not a set of keys")]
    return {**common, **own}, unknown


def _fonts(entries: object, path: Path) -> tuple[tuple[FontFace, ...], list[Note]]:
    """Return the font files that a layout lists, or what is wrong with the list."""
    if not isinstance(entries, list) or not entries:
        return (), [_fault(path, "the layout lists no fonts", expected="fonts: a list")]
    faces, notes = [], []
    for entry in entries:
        try:
            family, weight = str(entry["family"]), int(entry.get("weight", 400))
            style, file = str(entry.get("style", "normal")), str(entry["file"])
        except (AttributeError, KeyError, TypeError, ValueError):
            expected = "family, file, and if need be package, weight and style"
            notes.append(_fault(path, "a font is not described", expected=expected))
            continue
        found = _font_file(path.parent, entry.get("package"), file)
        if found is None:
            notes.append(_fault(path, "a font file is not there", received=file))
        else:
            faces.append(FontFace(family, weight, style, found))
    return tuple(faces), notes


def _font_file(folder: Path, package: str | None, file: str) -> Path | None:
    """Return a font's path: in the layout's folder, or in an installed font package."""
    if package is None:
        roots = [folder]
    else:
        # Beside the package rather than through an import: font packages hold only data.
        spec = find_spec(package) if package.isidentifier() else None
        roots = [Path(p) / "files" for p in (spec.submodule_search_locations or ())] if spec else []
    return next((r / file for r in roots if (r / file).is_file()), None)


def shown(path: Path) -> str:
    """Return a path as notes show it: from the working folder where that is shorter."""
    try:
        return str(path.relative_to(Path.cwd()))
    except ValueError:
        return str(path)


def _fault(path: Path, what: str, *, expected: str = "", received: str = "") -> Note:
    return error("T702", Place(shown(path)), what, expected=expected, received=received)

"""What one `layout.yaml` says, checked key by key.

In: a layout's folder. Out: `Written`, or notes with the file's name.
Invariant: only what this one file says; what it extends is laid under it in `layout`.
"""

from __future__ import annotations

from collections.abc import Mapping
from copy import deepcopy
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.util import find_spec
from pathlib import Path
from typing import Any

import yaml

import publish
from publish.model.book import PAPERS
from publish.notes import Note, Place, error, shown_path

FILE = "layout.yaml"
DEFAULT_TEMPLATE = "booklet.html"
DEFAULT_STYLE = "style.css"
SHARED = "shared"
"""The folder beside our layouts with the templates that all layouts share."""
ROLES = ("titles", "text", "labels")
"""What a layout sets type for, each in a family that a pattern may replace."""
_KEYS = {
    "about",
    "extends",
    "template",
    "style",
    "fonts",
    "families",
    "settings",
    "papers",
}
_WORDS = ("extends", "template", "style")


@dataclass(frozen=True)
class FontFace:
    """One font file: the family, weight and style that CSS asks for it by."""

    family: str
    weight: int
    style: str
    path: Path


@dataclass(frozen=True)
class Written:
    """A layout's own words. `template` and `style` are empty where it names none."""

    folder: Path
    extends: str
    template: str
    style: str
    fonts: tuple[FontFace, ...]
    families: Mapping[str, str]
    settings: Mapping[str, Any]
    papers: Mapping[str, Mapping[str, Any]]

    @property
    def path(self) -> Path:
        return self.folder / FILE


def our_homes() -> tuple[Path, ...]:
    """Return where layouts of ours may lie: inside the package, where a wheel puts them, and
    beside it, where a checkout has them."""
    package = Path(publish.__file__).resolve().parent
    return (package / "layouts", package.parent / "layouts")


@cache
def shared() -> Path:
    """Return the folder of the templates that every layout has unless it has its own."""
    return next(folder for home in our_homes() if (folder := home / SHARED).is_dir())


def read(folder: Path) -> tuple[Written | None, tuple[Note, ...]]:
    """Read a layout's settings, collecting everything that is wrong in them."""
    path = folder / FILE
    try:
        data = deepcopy(_parsed(path.read_text(encoding="utf-8")))
    except yaml.MarkedYAMLError as problem:
        mark = problem.problem_mark
        line, column = (mark.line + 1, mark.column + 1) if mark else (1, 1)
        what = f"the layout's settings are not YAML: {problem.problem or 'unreadable'}"
        return None, (error("T702", Place(shown_path(path), line, column), what),)
    except (OSError, ValueError, RecursionError, yaml.YAMLError) as problem:
        said = str(problem).splitlines()[0]
        return None, (fault(path, f"the layout's settings cannot be read: {said}"),)
    if not isinstance(data, dict):
        return None, (fault(path, "the layout's settings are not a set of keys"),)
    notes = [fault(path, "unknown key", received=str(k)) for k in data if k not in _KEYS]
    notes += [
        fault(path, f"{key} is not a word", received=type(data[key]).__name__)
        for key in _WORDS
        if not isinstance(data.get(key, ""), str)
    ]
    if notes:
        return None, tuple(notes)
    extends = data.get("extends", "")
    faces, more = _fonts(data.get("fonts"), path, alone=not extends)
    notes += more
    maps: dict[str, dict[str, Any]] = {}
    for name in ("families", "settings", "papers"):
        maps[name], more = _keys(data.get(name, {}), name, path)
        notes += more
    notes += _papers(maps["papers"], path) + _families(maps["families"], path)
    notes += _named(data, path, alone=not extends)
    if notes:
        return None, tuple(notes)
    template, style = data.get("template", ""), data.get("style", "")
    families = {role: str(family) for role, family in maps["families"].items()}
    written = Written(
        folder, extends, template, style, faces, families, maps["settings"], maps["papers"]
    )
    return written, ()


@lru_cache(maxsize=16)
def _parsed(text: str) -> Any:
    """Return what YAML says, read once: every check and every page of a run asks for it."""
    return yaml.safe_load(text)


def _named(data: Mapping[str, Any], path: Path, alone: bool) -> list[Note]:
    """Return a note for each file that a layout must have and has not.

    One that stands `alone` has both files, or the template that all share; one that extends
    another, those that it names.
    """
    names = [data["style"]] if "style" in data else [DEFAULT_STYLE] if alone else []
    if alone:
        names.insert(0, data.get("template", DEFAULT_TEMPLATE))
    what = "the layout lacks a file that it names"
    places = (path.parent, shared())
    lacking = [n for n in names if all(within(place, n) is None for place in places)]
    return [fault(path, what, received=n) for n in lacking]


def _keys(value: object, name: str, path: Path) -> tuple[dict[str, Any], list[Note]]:
    if isinstance(value, dict):
        return value, []
    return {}, [fault(path, f"{name} is not a set of keys")]


def _papers(papers: Mapping[str, Any], path: Path) -> list[Note]:
    notes = [fault(path, "unknown paper", received=str(k)) for k in papers if k not in PAPERS]
    notes += [
        fault(path, f"papers.{key} is not a set of keys")
        for key, values in papers.items()
        if not isinstance(values, dict)
    ]
    return notes


def _families(families: Mapping[str, Any], path: Path) -> list[Note]:
    return [
        fault(path, "unknown role of a family", expected=" or ".join(ROLES), received=str(role))
        for role in families
        if role not in ROLES
    ]


def _fonts(entries: object, path: Path, alone: bool) -> tuple[tuple[FontFace, ...], list[Note]]:
    """Return the font files that a layout lists, or what is wrong with the list.

    A layout that stands `alone` must list some; one that extends another may leave it to it.
    """
    if entries is None and not alone:
        return (), []
    if not isinstance(entries, list) or not entries:
        return (), [fault(path, "the layout lists no fonts", expected="fonts: a list")]
    faces, notes = [], []
    for entry in entries:
        try:
            family, weight = str(entry["family"]), int(entry.get("weight", 400))
            style, file = str(entry.get("style", "normal")), str(entry["file"])
        except (AttributeError, KeyError, TypeError, ValueError, RecursionError):
            expected = "family, file, and if need be package, weight and style"
            notes.append(fault(path, "a font is not described", expected=expected))
            continue
        found = _font_file(path.parent, entry.get("package"), file)
        if found is None:
            notes.append(fault(path, "a font file is not there", received=file))
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
    return next((r / file for r in roots if within(r, file) is not None), None)


def within(folder: Path, name: str) -> Path | None:
    """Return a file below a folder; None where there is none, or a link leads out of it."""
    try:
        path = (folder / name).resolve()
        return path if path.is_relative_to(folder.resolve()) and path.is_file() else None
    except (OSError, ValueError, RuntimeError):  # a circle of links, a zero byte, a long name
        return None


def stamp(path: Path) -> tuple[int, int]:
    """Return what changes when a file is written again, for what is kept between builds."""
    try:
        state = path.stat()
    except OSError:  # taken away since the pattern was read; opening it will say so
        return 0, 0
    return state.st_mtime_ns, state.st_size


def fault(path: Path, what: str, *, expected: str = "", received: str = "") -> Note:
    """Return a note that a layout's settings are faulty."""
    return error("T702", Place(shown_path(path)), what, expected=expected, received=received)

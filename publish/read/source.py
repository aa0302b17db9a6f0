"""The file itself: from a path to text, and from text to a tree of YAML nodes.

In: a path. Out: `Source`, the text with its shown name; PyYAML nodes that keep their
positions.
Invariant: whatever the bytes, the work is bounded and every refusal is a note. An alias
would let a small file stand for a huge one, so aliases are refused, not followed.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any

import yaml

from publish.notes import Note, Place, error, shown_path
from publish.read.forms import listed, nearest
from publish.read.syntax import syntax_notes

FILE_NAME = "pattern.yaml"
LARGEST_FILE = 256 * 1024
DEEPEST = 24
MOST_NODES = 20_000
MOST_REFUSALS = 50
REFUSED = "!refused"
"""Tag of a node that a note was made for already; nothing more is said about it."""


@dataclass(frozen=True)
class Source:
    """A pattern file that could be opened."""

    path: Path
    shown: str
    text: str

    @property
    def lines(self) -> list[str]:
        return self.text.splitlines()


def open_source(path: Path) -> Source | Note:
    """Return the text of a pattern file, or of `pattern.yaml` in a folder."""
    try:
        target = path / FILE_NAME if path.is_dir() else path
        place = Place(shown_path(target))
        if not target.is_file():
            return _not_there(path, target, place)
        return _read(target, place)
    except (OSError, ValueError) as problem:  # no permission, a name no system allows
        return _closed(path, problem, "the pattern", f"a folder holding {FILE_NAME}, or that file")


def open_beside(target: Path) -> Source | Note:
    """Return the text of a file that patterns are read with."""
    try:
        return _read(target, Place(shown_path(target)))
    except (OSError, ValueError) as problem:
        return _closed(target, problem, target.name, "a file that can be read")


def _read(target: Path, place: Place) -> Source | Note:
    if target.stat().st_size > LARGEST_FILE:
        return _too_much(place, f"{target.stat().st_size:,} bytes")
    return _decode(target, target.read_bytes(), place)


def _closed(path: Path, problem: OSError | ValueError, what: str, expected: str) -> Note:
    reason = problem.strerror if isinstance(problem, OSError) else str(problem)
    return error(
        "R101",
        Place(_printable(str(path))),
        f"{what} cannot be opened",
        expected=expected,
        received=str(reason),
        help="check the path and that you may read the file",
    )


def _printable(text: str) -> str:
    return "".join(c if c.isprintable() else "�" for c in text[:200])


def _not_there(path: Path, target: Path, place: Place) -> Note:
    """Say which pattern was likely meant by a path that leads nowhere."""
    if path.is_dir():
        others = sorted(p.name for p in path.iterdir() if p.suffix in (".yaml", ".yml"))
        help_ = (
            f"rename {others[0]} to {FILE_NAME}, or name it after the folder"
            if others
            else f"write {FILE_NAME} there, or start one with `foldwork new NAME`"
        )
        return error(
            "R101",
            place,
            f"the folder holds no {FILE_NAME}",
            expected=FILE_NAME,
            received=listed(others[:3]),
            help=help_,
        )
    if target.exists():
        return error(
            "R101",
            place,
            "the pattern is not a plain file",
            expected=f"a folder holding {FILE_NAME}, or that file",
            received="a device or a pipe",
            help="name the pattern's folder",
        )
    parent = path.parent
    names = [p.name for p in parent.iterdir()] if parent.is_dir() else []
    near = nearest(path.name, names)
    return error(
        "R101",
        place,
        "there is no such file or folder",
        expected=f"a folder holding {FILE_NAME}, or that file",
        received=place.file,
        help=f"write `{shown_path(parent / near)}`"
        if near
        else "check the path, or start a pattern with `foldwork new NAME`",
    )


def _decode(path: Path, data: bytes, place: Place) -> Source | Note:
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as problem:
        before = data[: problem.start].decode("utf-8", errors="replace")
        line, column = before.count("\n") + 1, len(before) - (before.rfind("\n") + 1) + 1
        wide = data[:2] in (b"\xff\xfe", b"\xfe\xff")
        return error(
            "R102",
            Place(place.file, line, column),
            "the file is not UTF-8 text",
            expected="UTF-8",
            received="UTF-16" if wide else f"the byte {data[problem.start]:02X}",
            help="save the file again with the encoding UTF-8",
        )
    return Source(path, place.file, text)


def _too_much(place: Place, received: str) -> Note:
    return error(
        "R104",
        place,
        "the file is too large to be a pattern",
        expected=f"at most {LARGEST_FILE:,} bytes, {MOST_NODES:,} values and "
        f"{DEEPEST} levels of nesting",
        received=received,
        help="give each pattern a file of its own, and put large outlines in a drawing",
    )


class _TooMuchError(Exception):
    def __init__(self, mark: yaml.Mark, received: str) -> None:
        self.mark, self.received = mark, received


class _Composer(yaml.SafeLoader):
    """Composes nodes with a limit on depth and number, refusing what would share them."""

    def __init__(self, text: str, file: str) -> None:
        super().__init__(text)
        self.file, self.notes = file, list[Note]()
        self.depth = self.count = 0

    def compose_node(self, parent: yaml.Node | None, index: int) -> yaml.Node | None:
        event: Any = self.peek_event()  # type: ignore[no-untyped-call]
        mark = event.start_mark
        self.count += 1
        if self.count > MOST_NODES:
            raise _TooMuchError(mark, f"more than {MOST_NODES:,} values")
        if self.depth >= DEEPEST:
            raise _TooMuchError(mark, f"more than {DEEPEST} levels")
        if isinstance(event, yaml.AliasEvent):
            self.get_event()  # type: ignore[no-untyped-call]
            self._refuse(
                event,
                "alias",
                f"*{event.anchor}",
                "write the value out here; text that begins with * goes in quotes",
            )
            return yaml.ScalarNode(REFUSED, "", mark, mark)
        if event.anchor is not None:
            self._refuse(
                event,
                "anchor",
                f"&{event.anchor}",
                "remove it; a size takes what "
                "it leaves out from the pattern; text that begins with & goes in quotes",
            )
            event.anchor = None
        tag, event.tag = event.tag, None
        if tag is not None:
            self._refuse(
                event, "tag", str(tag), "remove it; text that begins with ! goes in quotes"
            )
        self.depth += 1
        node = super().compose_node(parent, index)
        self.depth -= 1
        return node

    def _refuse(self, event: Any, kind: str, written: str, help_: str) -> None:
        if len(self.notes) >= MOST_REFUSALS:
            return
        mark = event.start_mark
        self.notes.append(
            error(
                "R107",
                Place(self.file, mark.line + 1, mark.column + 1),
                f"an {kind} is not used in patterns".replace("an tag", "a tag"),
                expected="a value written out",
                received=written[:60],
                help=help_,
            )
        )


def compose(source: Source) -> tuple[yaml.Node | None, tuple[Note, ...]]:
    """Return the tree of a pattern file, or None with the notes that say why not."""
    node, notes = tree(source)
    if node is None and not notes:
        nothing = error(
            "R103",
            Place(source.shown),
            "the file holds no pattern",
            expected="keys such as `title`, `fabrics` and `sizes`",
            received="nothing",
            help="start with `title:`, or let `foldwork new NAME` write a small pattern",
        )
        return None, (nothing,)
    return node, notes


def tree(source: Source) -> tuple[yaml.Node | None, tuple[Note, ...]]:
    """Return the tree of a file: None without notes where it says nothing, and None with
    the notes that say why where it cannot be read."""
    composer = None
    try:
        composer = _Composer(source.text, source.shown)
        node = composer.get_single_node()
    except _TooMuchError as stop:
        place = Place(source.shown, stop.mark.line + 1, stop.mark.column + 1)
        return None, (_too_much(place, stop.received),)
    except (yaml.YAMLError, ValueError, OverflowError) as problem:
        # ValueError and OverflowError: an escape or a version number out of all range.
        mark = composer.get_mark() if composer else None
        found = composer.notes if composer else []
        return None, (*found, *syntax_notes(source.text, source.shown, problem, mark))
    return node, tuple(composer.notes)

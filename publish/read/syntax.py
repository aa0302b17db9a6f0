"""What is wrong with a file that is not YAML, in a designer's words.

In: the text and PyYAML's complaint. Out: notes.
Invariant: the first fault that stops the reading gets a note at its place, and so does
each line that a tab indents; help names the mend, not the parser's state.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

import yaml

from publish.notes import Note, Place, error

MOST_TABS = 20


@dataclass(frozen=True)
class _Case:
    """A complaint that holds `sign`; `opening` puts the note where the unclosed thing opens."""

    sign: str
    what: str
    help: str
    opening: bool = False


_CASES = (
    _Case(
        "while scanning a quoted scalar",
        "a quotation mark is not closed",
        "close the text with the same quotation mark on the line it opens",
        opening=True,
    ),
    _Case(
        "mapping values are not allowed",
        "a colon stands where no key can stand",
        "line the key up with those above it; put text that holds a colon in quotes",
    ),
    _Case(
        "could not find expected ':'",
        "a key has no colon after it",
        "write `key: value`, with a space after the colon",
        opening=True,
    ),
    _Case(
        "expected ',' or ']'",
        "a list is not closed, or a comma is missing",
        "put a comma between items and ] at the end",
        opening=True,
    ),
    _Case(
        "expected ',' or '}'",
        "a brace is not closed, or a comma is missing",
        "put a comma between keys and } at the end",
        opening=True,
    ),
    _Case(
        "expected <block end>",
        "a line does not line up with those above it",
        "give the keys of one section the same number of spaces before them",
    ),
    _Case(
        "block sequence entries are not allowed",
        "a list item stands where none can stand",
        "begin the list on the line below its key, each item with `- `",
    ),
    _Case(
        "expected a single document",
        "a second document begins",
        "remove the line ---; a file holds one pattern",
    ),
    _Case(
        "found unknown escape",
        "a backslash means nothing here",
        "write / in paths, or use single quotation marks",
    ),
    _Case("while scanning an alias", "text begins with *", "put the text in quotes", opening=True),
    _Case("while scanning an anchor", "text begins with &", "put the text in quotes", opening=True),
    _Case(
        "that cannot start any token",
        "text begins with a character that YAML keeps for itself",
        "put the text in quotes",
    ),
    _Case(
        "unacceptable character",
        "the text holds a character that cannot be printed",
        "delete the character; it may not show in the editor",
    ),
)

_OTHER = _Case(
    "",
    "the text cannot be read as YAML",
    "compare the line with its neighbours: quotes, colons, brackets, spaces",
)
_FLOW = tuple(c for c in _CASES if c.sign.startswith("expected ','"))
_COMMENT = _Case(
    "",
    "a bare # begins a comment, and the rest of the line is lost",
    'put the colour in quotes, such as `"#f4efe6"`',
)


def syntax_notes(
    text: str, file: str, problem: Exception, mark: yaml.Mark | None
) -> tuple[Note, ...]:
    """Return a note for the fault that stopped the parser, and one for each tab."""
    tabs = [
        error(
            "R106",
            Place(file, number, line.index("\t") + 1),
            "a tab indents the line",
            expected="spaces",
            received="a tab",
            help="replace the tab with spaces; two for each step is usual",
        )
        for number, line in enumerate(text.splitlines(), 1)
        if re.match(r" *\t", line)
    ]
    tabs = tabs[:MOST_TABS]
    fault = _fault(text, file, problem, mark)
    if any(abs(tab.place.line - fault.place.line) <= 1 for tab in tabs):
        return tuple(tabs)
    return (*tabs, fault)


def _fault(text: str, file: str, problem: Exception, mark: yaml.Mark | None) -> Note:
    said = str(problem)
    case = next((c for c in _CASES if c.sign in said), _OTHER)
    line, column = _position(text, problem, mark, case.opening)
    lines = text.splitlines()
    if isinstance(problem, yaml.reader.ReaderError):
        return error(
            "R109",
            Place(file, line, column),
            case.what,
            expected="printable text",
            received=f"U+{problem.character:04X}",
            help=case.help,
        )
    swallowed = _comment_colour(lines, line) if case in _FLOW else None
    if swallowed:
        case, line, column = _COMMENT, *swallowed
    received = lines[line - 1].strip()[:60] if line <= len(lines) else "the end of the file"
    received = received or "an empty line"
    return error(
        "R105",
        Place(file, line, column),
        case.what,
        expected="well-formed YAML",
        received=received,
        help=case.help,
    )


def _comment_colour(lines: list[str], first: int) -> tuple[int, int] | None:
    """Return where a bare colour made the rest of its line a comment, a brace included."""
    for number, line in enumerate(lines[first - 1 : first + 20], first):
        match = re.search(r":\s+(#[0-9a-fA-F]{3,8}\b)", line)
        if match:
            return number, match.start(1) + 1
    return None


def _position(
    text: str, problem: Exception, mark: yaml.Mark | None, opening: bool
) -> tuple[int, int]:
    """Return line and column, from 1, of a complaint."""
    if isinstance(problem, yaml.reader.ReaderError):
        before = text[: problem.position]
        return before.count("\n") + 1, len(before) - (before.rfind("\n") + 1) + 1
    if isinstance(problem, yaml.MarkedYAMLError):
        there = problem.context_mark if opening else problem.problem_mark
        mark = there or problem.problem_mark or problem.context_mark or mark
    return (mark.line + 1, mark.column + 1) if mark else (1, 1)

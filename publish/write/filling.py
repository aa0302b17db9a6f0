"""A designer's text with the values that it names filled in.

In: Markdown with names in double braces (`{{ mini.block }}`), values by name. Out: the
text, or what is wrong with it.
Invariant: a text can only name values and begin one with a capital (`| capital`); it
runs no code, and what it cannot name is a `Slip` and never an exception.

Names are read by Jinja in a sandbox, after every node of the text has been looked at.
"""

from __future__ import annotations

import difflib
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from jinja2 import StrictUndefined, TemplateError, TemplateSyntaxError, nodes
from jinja2.sandbox import SandboxedEnvironment

from publish.model.names import EACH
from publish.words import language
from publish.write.values import Values, flat

_ALLOWED = (
    nodes.Template,
    nodes.Output,
    nodes.TemplateData,
    nodes.Name,
    nodes.Getattr,
    nodes.Getitem,
    nodes.Const,
    nodes.Filter,
)
FILTERS = {"capital": lambda text: language().capital(text)}
"""A capital is a capital in every language."""


@dataclass(frozen=True)
class Slip:
    """What is wrong with a text. `kind` is `name` or `braces`; `line` counts from 1."""

    kind: str
    line: int
    received: str
    help: str


class _Plain(SandboxedEnvironment):
    """Names lead to entries of dictionaries and nowhere else."""

    def getattr(self, obj: Any, attribute: str) -> Any:
        return obj[attribute]

    def getitem(self, obj: Any, argument: Any) -> Any:
        return obj[str(argument)]


def _environment() -> _Plain:
    made = _Plain(undefined=StrictUndefined, keep_trailing_newline=False)
    made.globals.clear()
    made.filters.clear()
    made.filters.update(FILTERS)
    return made


def filled(text: str, values: Values) -> tuple[str, tuple[Slip, ...]]:
    """Return the text with its values, and every slip in it; the text is then as written."""
    try:
        return _filled(text, values)
    except TemplateSyntaxError as problem:
        received = text.splitlines()[problem.lineno - 1 : problem.lineno]
        said = f"braces hold one name each, such as {{{{ each.block }}}}: {problem.message}"
        return text, (Slip("braces", problem.lineno, "".join(received).strip()[:60], said),)
    except RecursionError:
        said = "braces hold one name each, such as {{ each.block }}: this is nested too deeply"
        return text, (Slip("braces", 1, text[:60], said),)
    except (TemplateError, LookupError, TypeError, ValueError) as problem:
        return text, (Slip("braces", 1, text[:60], f"it cannot be filled in: {problem}"),)


def _filled(text: str, values: Values) -> tuple[str, tuple[Slip, ...]]:
    """Fill in a text. Raises what Jinja raises, and RecursionError where it is nested."""
    environment = _environment()
    slips = tuple(_slips(environment.parse(text), values))
    return (text, slips) if slips else (environment.from_string(text).render(values).strip(), ())


def _slips(node: nodes.Node, values: Values) -> Iterator[Slip]:
    """Yield what is wrong below a node: things that are not names, names that lead nowhere."""
    path = _path(node)
    if path is not None:
        yield from _missing(path, node.lineno, values)
        return
    wrong = not isinstance(node, _ALLOWED) or (
        isinstance(node, nodes.Filter) and (node.name not in FILTERS or bool(node.args))
    )
    if wrong or isinstance(node, nodes.Const | nodes.Getattr | nodes.Getitem):
        help_ = "write one name in double braces, such as {{ mini.block }}"
        yield Slip("braces", node.lineno, type(node).__name__.lower(), help_)
        return
    for child in node.iter_child_nodes():
        yield from _slips(child, values)


def _path(node: nodes.Node) -> list[str] | None:
    """Return the parts of a dotted name, or None for anything else."""
    if isinstance(node, nodes.Name):
        return [node.name]
    if isinstance(node, nodes.Getattr):
        before = _path(node.node)
        return None if before is None else [*before, node.attr]
    if isinstance(node, nodes.Getitem) and isinstance(node.arg, nodes.Const):
        before = _path(node.node)
        return None if before is None else [*before, str(node.arg.value)]
    return None


def _missing(path: list[str], line: int, values: Values) -> Iterator[Slip]:
    """Yield a slip when a name leads to no text."""
    found: Any = values
    for part in path:
        found = found.get(part) if isinstance(found, dict) else None
    if isinstance(found, str):
        return
    name = ".".join(path)
    if isinstance(found, dict):
        inner = [f"{name}.{n}" for n, _ in flat(found)][:4]
        yield Slip("name", line, name, f"go on with one of {', '.join(inner)}")
        return
    others = [n for n in values if n not in (path[0], EACH) and _has(values, n, path[1:])]
    if path[0] in values and others:
        help_ = f"there is no such value for {path[0]}, but for {language().listed(others)}"
        yield Slip("name", line, name, help_)
        return
    near = nearest(name, [n for n, _ in flat(values)])
    yield Slip("name", line, name, f"write {{{{ {near} }}}}" if near else _known(values))


def _has(values: Values, first: str, rest: list[str]) -> bool:
    found: Any = values[first]
    for part in rest:
        found = found.get(part) if isinstance(found, dict) else None
    return isinstance(found, str) and bool(rest)


def _known(values: Values) -> str:
    return f"names begin with {', '.join(values)}; the reference lists them"


def nearest(word: str, known: list[str]) -> str | None:
    """Return the known word that `word` most likely stands for, or None."""
    found = difflib.get_close_matches(word, known, 1, 0.6)
    return found[0] if found else None

"""Patterns that are nearly right: one of a few, changed a little.

In: `choose`, which picks one of several things: Hypothesis in the tests, a random number
generator with a seed in `run.py`. Out: text.
Invariant: the same choices give the same text. Patterns are changed along their own
structure and the schema's, so that most get past reading and reach the stages behind it.
"""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator, Sequence
from typing import Any

import yaml

from publish.read import SMALLEST, json_schema

Choose = Callable[[Sequence[Any]], Any]

SCHEMA = json_schema()
PIECED = """title: Lode
fabrics:
  mist: {name: Mist, colour: "#f4efe6"}
  moss: {name: Moss, colour: "#3f5a3c"}
blocks:
  goose: {traditional: flying geese, fabrics: {geese: moss, background: mist}}
  star: {traditional: friendship star, fabrics: {star: moss, background: mist}}
piecing: {geese: four at once, triangles: two at once}
sizes:
  mini: {block: [goose, star], columns: 2, rows: 2, block_size: 6 in, turns: [0, 90],
         borders: [{width: 2 in, fabric: moss}], sashing: {width: 1 in, fabric: mist}}
"""
SEEDS = (SMALLEST, SMALLEST, PIECED)
ODD: tuple[Any, ...] = (
    None,
    True,
    0,
    -1,
    1.5,
    10**30,
    float("nan"),
    float("inf"),
    "",
    " ",
    "0 in",
    "-1 in",
    "1/0 in",
    "99999 in",
    "1/1000000 in",
    "15,5 in",
    "½ in",
    "none",
    "mini",
    "bulrush",
    "bulrush.svg",
    "../x.svg",
    "/etc/hostname",
    "a" * 5000,
    "\u202e",
    "\x07",
    "\ud83e\uddf5",
    "{{ mini.block }}",
    "{{ a.b }}",
    "{{" * 400,
    "[" * 900,
    "**" * 300,
    "<b>&amp;</b>",
    "2026-99-99",
    [],
    {},
    [[]],
    [{}],
    {"a": {"a": {}}},
    [0, 90],
    [45],
    ["mini"] * 200,
    "#12",
    "#f4efe6",
    "12",
    "yes",
)
SIGNS = (
    "",
    " ",
    "\t",
    ":",
    "-",
    "[",
    "{",
    "'",
    '"',
    "#",
    "&a",
    "*a",
    "!!x",
    "|",
    "%",
    "\0",
    "é",
    "<",
    "/",
    "\u202e",
    "\ufeff",
    "9",
    "e9",
    "\n",
    "\r",
    "--- ",
    "\\",
)


def places(node: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Yield the way to every value below a node."""
    inner = (
        node.items()
        if isinstance(node, dict)
        else enumerate(node)
        if isinstance(node, list)
        else ()
    )
    for key, value in inner:
        yield (*path, key)
        yield from places(value, (*path, key))


def at(node: Any, path: Sequence[Any]) -> Any:
    for key in path:
        node = node[key]
    return node


def declared(path: Sequence[Any]) -> dict[str, Any]:
    """Return what the schema says of the value at a path; empty where it says nothing."""
    found: dict[str, Any] = SCHEMA
    for key in path:
        found = _resolved(found)
        inner = found.get("properties", {}).get(key) if isinstance(key, str) else None
        found = inner or found.get("additionalProperties") or found.get("items") or {}
        if not isinstance(found, dict):
            return {}
    return _resolved(found)


def _resolved(schema: dict[str, Any]) -> dict[str, Any]:
    for _ in range(5):
        for branch in (*schema.get("anyOf", ()), *schema.get("oneOf", ())):
            if isinstance(branch, dict) and "$ref" in branch:
                schema = branch
        if "$ref" not in schema:
            break
        schema = SCHEMA["$defs"][schema["$ref"].rsplit("/", 1)[1]]
    return schema


def suggested(schema: dict[str, Any]) -> list[Any]:
    """Return values that the schema itself names for a key."""
    found = [*schema.get("enum", ()), *schema.get("examples", ())]
    found += [schema[k] for k in ("const", "default", "minimum", "maximum") if k in schema]
    for branch in (*schema.get("anyOf", ()), *schema.get("oneOf", ())):
        found += suggested(branch)
    return found


def pattern(choose: Choose) -> str:
    """Return a pattern with a few things changed."""
    data = yaml.safe_load(choose(SEEDS))
    for _ in range(choose((1, 1, 2, 3, 5))):
        ways = list(places(data))
        if ways and isinstance(data, dict):
            choose((replaced, replaced, removed, doubled, added, added, moved))(data, ways, choose)
    text = yaml.safe_dump(data, sort_keys=False, allow_unicode=True, width=200)
    return slipped(text, choose) if choose((False, False, False, True)) else text


def replaced(data: Any, ways: list[tuple[Any, ...]], choose: Choose) -> None:
    way = choose(ways)
    values = suggested(declared(way)) or list(ODD)
    at(data, way[:-1])[way[-1]] = copy.deepcopy(choose([*values, choose(ODD)]))


def removed(data: Any, ways: list[tuple[Any, ...]], choose: Choose) -> None:
    way = choose(ways)
    del at(data, way[:-1])[way[-1]]


def doubled(data: Any, ways: list[tuple[Any, ...]], choose: Choose) -> None:
    way = choose(ways)
    home, value = at(data, way[:-1]), copy.deepcopy(at(data, way))
    if isinstance(home, list):
        home.insert(0, value)
    else:
        home[choose((f"{way[-1]}2", "extra", "none", "on"))] = value


def added(data: Any, ways: list[tuple[Any, ...]], choose: Choose) -> None:
    """Add a key that the schema knows and the pattern lacks, with a value of its own."""
    homes = [w for w in ((), *ways) if isinstance(at(data, w), dict)]
    home = choose(homes)
    known = declared(home).get("properties", {})
    lacking = [k for k in known if k not in at(data, home)]
    if lacking:
        key = choose(lacking)
        values = suggested(_resolved(known[key])) + suggested(known[key]) or list(ODD)
        at(data, home)[key] = copy.deepcopy(choose(values))


def moved(data: Any, ways: list[tuple[Any, ...]], choose: Choose) -> None:
    """Put a copy of one value in the place of another."""
    source, target = choose(ways), choose(ways)
    at(data, target[:-1])[target[-1]] = copy.deepcopy(at(data, source))


def slipped(text: str, choose: Choose) -> str:
    """Return text with a slip of the hand: signs put in, taken out, a line twice."""
    for _ in range(choose((1, 1, 2, 4))):
        where = choose(range(len(text) + 1))
        text = text[:where] + choose(SIGNS) + text[where + choose((0, 0, 1, 9)) :]
    return text

"""Drawings, step texts and files that are nearly right.

In: `choose`, as in `mutate`. Out: text or bytes.
Invariant: the same choices give the same input.
"""

from __future__ import annotations

from pathlib import Path

from helpers import DRAWING, PROJECTS
from mutate import Choose, slipped

NUMBERS = ("0", "-1", "1e9", "1e-9", "1e999", "nan", "50%", "", "5 5", "1em", "9" * 40)
ATTRIBUTES = {
    "d": (
        "",
        "M0 0",
        "M0 0L50 0 50 50Z",
        "M0 0H9V9H0zm2 2h5v5h-5z",
        "M0 0A5 5 0 1 1 9 9",
        "M0 0C1 2 3 4 5 6S7 8 9 9T1 1",
        "L5 5",
        "M0 0" + "L9 9 0 1" * 300,
    ),
    "points": ("0 0 9 0 9 9", "0 0 9", "x"),
    "transform": (
        "scale(0)",
        "scale(1e8)",
        "rotate(45)",
        "matrix(1 0 0 1)",
        "skewX(90)",
        "spin(2)",
    ),
    "viewBox": ("0 0 0 0", "0 0 100", "-50 -50 100 100", "0 0 1e9 1e9"),
    "style": ("fill:none", "fill:none;stroke:red;stroke-width:3", "a{" * 9, "fill:" + "(" * 2000),
    "href": (
        "#a",
        "#x",
        "file:///etc/hostname",
        "http://fen.example/a.svg",
        "data:image/png;base64,AA",
    ),
    "id": ("a", "centre", "x"),
    "class": ("a", "a b", "\u202e"),
    "fill": ("none", "red", "url(#a)"),
    "stroke": ("red", "none"),
    "fill-rule": ("evenodd", "odd"),
    "data-centre": ("0 0", "1", "x y"),
    "data-start": ("0", "45", "x"),
    "onload": ("x()",),
    **dict.fromkeys(("width", "height", "x", "y", "r", "rx", "cx", "cy", "stroke-width"), NUMBERS),
}
ELEMENTS = (
    "g",
    "path",
    "rect",
    "circle",
    "ellipse",
    "polygon",
    "polyline",
    "line",
    "use",
    "symbol",
    "svg",
    "text",
    "image",
    "style",
    "defs",
    "clipPath",
    "a",
    "switch",
    "script",
)


def drawing(choose: Choose) -> str:
    """Return a drawing: one of the project's with slips, or one put together."""
    if choose((True, False)):
        seeds = [
            DRAWING,
            *(p.read_text(encoding="utf-8") for p in sorted(PROJECTS.glob("*/*.svg"))),
        ]
        return slipped(choose(seeds), choose)
    head = choose(
        (
            "",
            '<?xml version="1.0" encoding="{}"?>'.format(choose(("utf-8", "foo", "utf-16"))),
            "<!DOCTYPE svg>",
            "<!DOCTYPE svg [<!ENTITY a 'b'>]>",
        )
    )
    return head + element("svg", choose, choose((1, 2, 4)), ' xmlns="http://www.w3.org/2000/svg"')


def element(name: str, choose: Choose, depth: int, more: str = "") -> str:
    """Return an element with a few attributes and what is in it."""
    names = [choose(tuple(ATTRIBUTES)) for _ in range(choose((1, 2, 4)))]
    held = "".join(f' {n}="{choose(ATTRIBUTES[n])}"' for n in dict.fromkeys(names))
    if name in ("path", "polygon") and choose((True, True, False)):
        key = {"path": "d", "polygon": "points"}[name]
        held += f' {key}="{choose(ATTRIBUTES[key])}"' if f" {key}=" not in held else ""
    if depth > 0:
        count = choose((1, 2, 3))
        inner = "".join(element(choose(ELEMENTS), choose, depth - 1) for _ in range(count))
    else:
        inner = choose(("", "a{fill:red}", "x", "&a;"))
    return f"<{name}{more}{held}>{inner}</{name}>"


WORDS = (
    "Fold ",
    "**it** ",
    "{{ mini.block }}",
    "{{ each.block }}",
    "{{ x }}",
    "{{",
    "}}",
    "{%",
    "%}",
    "{#",
    "[a](b)",
    "[" * 60,
    "]" * 60,
    "(" * 60,
    "`",
    "*",
    "_",
    "#",
    "\n",
    "\n\n",
    "- ",
    "1. ",
    "<b>",
    "&lt;",
    "| capital",
    "[0]",
    ".a",
    "2 1/2 in",
    "\\",
    "\u202e",
    "\0",
    ">" * 40,
    "![a](b)",
    "| a | b |\n|--|--|\n",
    "'",
    '"',
    "~",
    "1e999",
    "not ",
)


def words(choose: Choose) -> str:
    """Return a step's text."""
    return "".join(choose(WORDS) * choose((1, 1, 1, 50)) for _ in range(choose((1, 3, 8))))


def spoiled(data: bytes, choose: Choose) -> bytes:
    """Return a file with bytes changed, cut off or doubled."""
    for _ in range(choose((1, 2, 8))):
        where = (
            choose(range(min(len(data), 400) or 1))
            if choose((True, False))
            else choose(range(len(data) or 1))
        )
        put = choose((b"", b"\0", b"\xff", b"\x7f\xff\xff\xff", data[where : where + 64]))
        data = data[:where] + put + data[where + choose((0, 1, 4, 2000)) :]
    return data


def stored(folder: Path) -> list[Path]:
    """Return the inputs that were once answered with a traceback, or took too long."""
    return sorted(p for p in folder.iterdir() if p.is_file())

"""The shape of the code: who may import whom, and how long a file or a function may be.

The rule is the one that DEVELOPERS.md draws: cli, then pipeline, then the stages, then
model, then words, then notes and units. Every offence is listed at once.
"""

import ast
import sys
import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGE = ROOT / "publish"
NUMBERED = ("read", "grade", "draft", "cut", "sew", "write", "draw", "typeset", "proof", "deliver")
STAGES = (*NUMBERED, "render")
"""The pictures, between draft and draw, follow the rules of a stage."""
BOTTOM = ("notes", "units", "measures", "colour", "surd", "arcs", "gtin", "svgfile", "kept")
LIBRARIES = {"arcs": "shapely", "colour": "coloraide", "gtin": "stdnum"}
"""What a module at the bottom may import besides the standard library."""
BESIDE = {"words": ("words",), "operations": ("operations", "words"), "trace": ("trace", "model")}
"""What stands beside model, below the stages, and what of the package it may import."""
MAY_USE = {
    "words": ("fluent",),
    "trace": ("numpy", "scipy", "cv2", "contourpy", "PIL", "pillow_heif", "cairosvg"),
}
"""Libraries of what stands there."""
ABOVE = tuple(
    sorted(
        {p.stem for p in PACKAGE.iterdir() if p.suffix == ".py" or (p / "__init__.py").exists()}
        - {*STAGES, *BOTTOM, *BESIDE, "model", "__init__", "__main__"}
    )
)
"""What orders and shows the stages: none of them knows of it."""
FILE_LINES, FUNCTION_LINES = 320, 45
TABLE_LINES = 420
"""What the tests hold in tables (seeded faults, tops worked out by hand) may be longer."""

Tree = tuple[str, ast.Module]


@cache
def trees() -> list[Tree]:
    """Return every module of the package by its path below it."""
    paths = sorted(PACKAGE.rglob("*.py"))
    return [(p.relative_to(PACKAGE).as_posix(), ast.parse(p.read_text())) for p in paths]


def imported(path: str, tree: ast.AST) -> Iterator[tuple[int, str]]:
    """Yield line and full name of everything a module imports."""
    here = ["publish", *Path(path).parts[:-1]]
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from ((node.lineno, name.name) for name in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = here[: len(here) - node.level + 1] if node.level else []
            module = ".".join([*base, *([node.module] if node.module else [])])
            yield from ((node.lineno, f"{module}.{name.name}") for name in node.names)


def part(name: str) -> str | None:
    """Return the part of the package that a full name lies in: a stage, `model`, a module."""
    names = name.split(".")
    if names[0] != "publish":
        return None
    return names[1] if len(names) > 1 else ""


def strangers(path: str, tree: ast.AST) -> list[str]:
    """Return what a module imports against the rule."""
    home = Path(path).parts[0].removesuffix(".py")
    found = []
    for line, name in imported(path, tree):
        other = part(name)
        outside = other is None and name.split(".")[0] not in {*sys.stdlib_module_names, "shapely"}
        if home in STAGES:
            wrong = other in (*STAGES, *ABOVE) and other != home
        elif home == "model":
            wrong = outside or other not in (None, "model", "words", *BOTTOM)
        elif home in BESIDE:
            library = name.split(".")[0] in MAY_USE.get(home, ())
            wrong = (outside and not library) or other not in (None, *BESIDE[home], *BOTTOM)
        elif home in BOTTOM:
            library = home in LIBRARIES and name.startswith(LIBRARIES[home])
            wrong = (outside and not library) or other not in (None, *BOTTOM)
        else:
            wrong = other == "cli" and home != "__main__"
        if wrong:
            found.append(f"publish/{path}:{line}: {home} imports {name}")
    return found


def late(path: str, tree: ast.AST) -> list[str]:
    """Return the imports inside functions."""
    return [
        f"publish/{path}:{node.lineno}: an import inside {function.name}"
        for function in ast.walk(tree)
        if isinstance(function, ast.FunctionDef | ast.AsyncFunctionDef)
        for node in ast.walk(function)
        if isinstance(node, ast.Import | ast.ImportFrom)
    ]


def long_functions(path: str, tree: ast.AST) -> list[str]:
    """Return the functions that are too long, their docstring counted."""
    return [
        f"publish/{path}:{node.lineno}: {node.name} has {node.end_lineno - node.lineno + 1} lines"
        for node in ast.walk(tree)
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
        and node.end_lineno is not None
        and node.end_lineno - node.lineno + 1 > FUNCTION_LINES
    ]


def none(found: list[str]) -> None:
    """Fail with every offence, one a line."""
    assert not found, "\n" + "\n".join(found)


def test_imports_point_one_way() -> None:
    none([s for path, tree in trees() for s in strangers(path, tree)])


def test_only_the_command_line_imports_late() -> None:
    none([s for path, tree in trees() if path != "cli.py" for s in late(path, tree)])


def test_files_are_short() -> None:
    lengths = {
        p.relative_to(ROOT).as_posix(): len(p.read_text().splitlines())
        for p in sorted([*PACKAGE.rglob("*.py"), *(ROOT / "tests").rglob("*.py")])
    }
    most = {p: TABLE_LINES if p.startswith("tests/") else FILE_LINES for p in lengths}
    none([f"{p} has {n} lines" for p, n in lengths.items() if n > most[p]])


def test_functions_are_short() -> None:
    none([s for path, tree in trees() for s in long_functions(path, tree)])


def test_modules_say_what_they_are_for() -> None:
    none([f"publish/{p} has no docstring" for p, tree in trees() if not ast.get_docstring(tree)])


@pytest.mark.parametrize(
    ("path", "line", "wrong"),
    [
        ("cut/strips.py", "from publish.draft import outline", True),
        ("cut/strips.py", "from publish import draft", True),
        ("cut/strips.py", "import publish.write.context", True),
        ("cut/strips.py", "from ..draft import outline", True),
        ("cut/strips.py", "from . import counts", False),
        ("cut/strips.py", "from publish.cut.counts import many", False),
        ("cut/strips.py", "from publish.model.draft import Draft", False),
        ("cut/strips.py", "import highspy", False),
        ("cut/strips.py", "from publish import pipeline", True),
        ("proof/booklet/words.py", "from publish import compare", True),
        ("compare/words.py", "from publish.words.en.phrase import measure", False),
        ("operations/table.py", "from publish.words.values import Length", False),
        ("operations/table.py", "from publish.model.draft import Draft", True),
        ("operations/table.py", "from publish.sew.bench import Bench", True),
        ("words/language.py", "from fluent.syntax import ast", False),
        ("words/language.py", "from publish.operations.table import Table", True),
        ("sew/borders.py", "from publish.operations.borders import SewBorder", False),
        ("model/draft.py", "import numpy", True),
        ("model/pattern.py", "from publish.words import language", False),
        ("words/language.py", "from publish.model.pattern import Pattern", True),
        ("model/draft.py", "from shapely.geometry import Polygon", False),
        ("model/draft.py", "from publish.cut import cut", True),
        ("colour.py", "from coloraide import Color", False),
        ("colour.py", "import numpy", True),
        ("cut/strips.py", "from publish.colour import contrast", False),
        ("units.py", "from publish.model.size import Size", True),
        ("pipeline.py", "from publish import cut, draft", False),
        ("pipeline.py", "from publish import cli", True),
    ],
)
def test_the_rule_itself(path: str, line: str, wrong: bool) -> None:
    assert bool(strangers(path, ast.parse(line))) is wrong


def test_late_and_long_are_seen() -> None:
    body = "\n".join(["def slow():", "    import json", *["    x = 1"] * (FUNCTION_LINES - 1)])
    tree = ast.parse(body)
    assert late("a.py", tree) and long_functions("a.py", tree)
    assert not long_functions("a.py", ast.parse(body.rsplit("\n", 1)[0]))


def test_every_folder_of_the_package_is_installed():
    """With what lies in it besides modules, where it is a language's."""
    setup = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"][
        "setuptools"
    ]
    homes = [p.parent for p in PACKAGE.rglob("__init__.py")]
    names = {".".join(("publish", *home.relative_to(PACKAGE).parts)) for home in homes}
    assert names <= set(setup["packages"])
    for file in (PACKAGE / "words").glob("*/*.*"):
        if file.suffix != ".py":
            patterns = setup["package-data"][f"publish.words.{file.parent.name}"]
            assert any(file.match(pattern) for pattern in patterns), file

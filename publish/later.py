"""Modules that load when something in them is first used, not when they are imported.

In: names of modules. Out: nothing; importing one of them afterwards is all but free.
Invariant: only when a module is loaded changes, never what it does. For commands that go
through the pipeline's imports without printing anything.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from importlib.abc import MetaPathFinder
from importlib.machinery import ModuleSpec, PathFinder
from importlib.util import LazyLoader
from types import ModuleType

UNPRINTED = (
    "publish.deliver",
    "publish.draw",
    "publish.finished",
    "publish.site",
    "publish.typeset.pages",
    "publish.typeset.press",
    "publish.typeset.styled",
    "publish.report_page",
    "publish.compare",
    "publish.web",
    "publish.web_pdf",
    "publish.trace",
    "ezdxf",
    "pikepdf",
    "pypdfium2",
    "spyrrow",
)
"""Modules that only pages and files need, and that take long to load."""


class _Finder(MetaPathFinder):
    """Finds the chosen modules as Python does, and puts off running them."""

    def __init__(self, names: Sequence[str]) -> None:
        self.names = frozenset(names)

    def find_spec(
        self, name: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        spec = PathFinder.find_spec(name, path) if name in self.names else None
        if spec is None or spec.loader is None:
            return None
        spec.loader = LazyLoader(spec.loader)
        return spec


def later(*names: str) -> None:
    """Put off loading modules, by their full names, until something in them is used."""
    sys.meta_path.insert(0, _Finder([n for n in names if n not in sys.modules]))

"""What a template may do: read values, and call the few things that are meant for it.

In: folders of templates. Out: a Jinja environment.
Invariant: a layout that came with a pattern can read no file outside its folders, write
none, and call nothing but macros, the filters and functions of layouts/README.md, and
methods of texts and lists; what it may not do is an error with its line.

The sandbox is Jinja's own, made narrower: Jinja's allows every public method of every
value, and a value such as a photograph's path has methods that read and delete files.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path, PurePath
from types import ModuleType
from typing import Any

from jinja2 import BaseLoader, Environment, StrictUndefined, TemplateNotFound, nodes
from jinja2.exceptions import SecurityError
from jinja2.runtime import BlockReference, Context, LoopContext, Macro
from jinja2.sandbox import ImmutableSandboxedEnvironment
from jinja2.utils import Cycler, Joiner

from publish.typeset.layout_file import within
from publish.typeset.photos import PhotoPlate
from publish.typeset.plates import Plate

ROUNDS = 1_000_000
"""How many times the loops and macros of one template may go round together; a booklet of
a hundred pages takes some ten thousand."""
LARGEST = 1_000_000
"""Letters or entries of what `*` makes, and the largest exponent's result in bits."""
_FRAME = (Macro, LoopContext, BlockReference)
_PLAIN = (str, list, tuple, dict, Mapping)
_PLATES = (Plate, PhotoPlate)
"""Whose one method, `within`, makes a picture fit a box."""


class Folder(BaseLoader):
    """Templates of one folder, by name."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def get_source(
        self, environment: Environment, template: str
    ) -> tuple[str, str, Callable[[], bool]]:
        """Return a template's text and its path as the layout names it."""
        if within(self.folder, template) is None:
            raise TemplateNotFound(template)
        path = self.folder / template
        return path.read_text(encoding="utf-8"), str(path), lambda: True


class Sandbox(ImmutableSandboxedEnvironment):
    """Jinja without anything that reaches beyond the values it is given."""

    intercepted_binops = frozenset({"*", "**"})

    def __init__(self, loader: BaseLoader) -> None:
        super().__init__(loader=loader, undefined=StrictUndefined, autoescape=True)
        # The same input gives the same bytes.
        del self.globals["lipsum"], self.filters["random"]
        self._rounds = 0

    def is_safe_attribute(self, obj: Any, attr: str, value: Any) -> bool:
        """Return whether an attribute is plain information. A path is not: it would put
        the machine's folders on the page."""
        closed = isinstance(obj, PurePath | type | ModuleType) or isinstance(value, PurePath)
        return not closed and super().is_safe_attribute(obj, attr, value)

    def is_safe_callable(self, obj: Any) -> bool:
        """Return whether something is meant to be called from a template."""
        if isinstance(obj, _FRAME) or any(obj is known for known in self.globals.values()):
            return True
        # `str.format` comes here as the function that Jinja has put around it.
        bound = getattr(obj, "__wrapped__", obj)
        owner, name = getattr(bound, "__self__", None), getattr(bound, "__name__", "")
        if isinstance(owner, (*_PLAIN, LoopContext, Cycler, Joiner)):
            return True
        return (isinstance(owner, _PLATES) and name == "within") or obj == self.go_round

    def call(self, context: Context, obj: Any, /, *args: Any, **kwargs: Any) -> Any:
        """Call what a template may call; anything else is an error that names it."""
        if not self.is_safe_callable(obj):
            named = getattr(obj, "__name__", type(obj).__name__)
            raise SecurityError(f"a template may not call {named!r}")
        return context.call(obj, *args, **kwargs)

    def call_binop(self, context: Context, operator: str, left: Any, right: Any) -> Any:
        """Return left x right or left ** right, unless it would fill the memory."""
        if _size(operator, left, right) > LARGEST:
            raise SecurityError(f"the result of {operator} is too large")
        return super().call_binop(context, operator, left, right)

    def go_round(self) -> str:
        """Count one round of a loop, or one call of a macro."""
        self._rounds += 1
        if self._rounds > ROUNDS:
            raise SecurityError(f"loops and macros go round more than {ROUNDS:,} times")
        return ""

    def _generate(self, source: nodes.Template, *args: Any, **kwargs: Any) -> str:
        repeated: Iterable[Any] = source.find_all((nodes.For, nodes.Macro, nodes.CallBlock))
        for node in repeated:
            count = nodes.Call(nodes.EnvironmentAttribute("go_round"), [], [], None, None)
            node.body.insert(0, nodes.ExprStmt(count).set_lineno(node.lineno))
        return super()._generate(source, *args, **kwargs)


def _size(operator: str, left: Any, right: Any) -> int:
    """Return about how large a product is: entries of a text or list, bits of a number."""
    if operator == "**":
        whole = isinstance(left, int) and isinstance(right, int)
        return left.bit_length() * abs(right) if whole else 0
    for some, times in ((left, right), (right, left)):
        if isinstance(some, str | list | tuple) and isinstance(times, int):
            return len(some) * max(times, 0)
    return 0

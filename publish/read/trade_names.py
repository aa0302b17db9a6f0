"""The trade names of traditional blocks, and the files that hold their constructions.

In: the files in `traditional/`. Out: names, and the path behind each; the form `TradeName`.
Invariant: a file opens with `name:` and, where the block has other names in the trade,
`also:` on the line below; reading these lines alone keeps the list of names cheap.
"""

from __future__ import annotations

import functools
from collections.abc import Mapping
from dataclasses import dataclass
from importlib import resources
from importlib.resources.abc import Traversable
from typing import Any

from publish.read.forms import Choice, Form, Hint, Unfit, nearest


@functools.cache
def trade_names() -> Mapping[str, Traversable]:
    """Return the file behind every trade name, each block's own name before its others."""
    found: dict[str, Traversable] = {}
    folder = resources.files("publish") / "read" / "traditional"
    for file in sorted(folder.iterdir(), key=lambda f: f.name):
        if file.name.endswith(".yaml"):
            first, second, *_ = file.read_text(encoding="utf-8").splitlines()
            found[first.removeprefix("name: ")] = file
            if second.startswith("also: "):
                others = second.removeprefix("also: ").strip("[]").split(", ")
                found |= dict.fromkeys(others, file)
    return found


@dataclass(frozen=True)
class TradeName(Form):
    """The trade name of a traditional block."""

    @property
    def words(self) -> str:
        return "the trade name of a traditional block"

    def json(self) -> dict[str, Any]:
        return Choice(tuple(trade_names())).json()

    def read(self, text: str, hint: Hint) -> Any:
        name = " ".join(text.split())
        if name in trade_names():
            return name
        near = nearest(name, trade_names())
        help_ = "the names are listed in REFERENCE.md; or write the block's `patches`"
        return Unfit("R125", "is not a block of the library", f"write `{near}`" if near else help_)

"""One run of the nesting solver: its layouts as they come, kept for who asks again.

In: what the solver is asked, as JSON. Out: layouts, each shorter than the one before, and
None each time that it has come nearer to the next.
Invariant: every reader gets the same layouts from the first on. No process is left running
once its reader has stopped; who then asks for more than was read starts it anew.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import cast

SOLVER = Path(__file__).with_name("solver.py")

Placing = tuple[int, float, float, float]
"""Number of an item, its turn in degrees, and where its origin comes to: along, across."""
Line = tuple[float, list[Placing]]
"""One layout: its length, and every item's place."""


class Run:
    """What the solver answers to `asked`."""

    def __init__(self, asked: str) -> None:
        self.asked = asked
        self._known: list[Line | None] = []
        self._done = False

    def lines(self) -> Iterator[Line | None]:
        """Yield the layouts; raises RuntimeError where the solver ends without any."""
        yield from self._known
        if self._done:
            return
        first = len(self._known)
        for at, line in enumerate(self._solved()):
            if at >= first:
                self._known.append(line)
                yield line
        self._done = True
        if not self._known:
            raise RuntimeError("the nesting solver ended without a layout")

    def _solved(self) -> Iterator[Line | None]:
        """Start the solver, and end it when nobody asks on."""
        with subprocess.Popen(
            [sys.executable, "-P", str(SOLVER)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        ) as process:
            assert process.stdin is not None and process.stdout is not None
            try:
                process.stdin.write(self.asked)
                process.stdin.close()
                for line in process.stdout:
                    yield cast(Line | None, json.loads(line))
            finally:
                process.kill()

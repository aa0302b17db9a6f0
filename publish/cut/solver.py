"""The nesting solver in a process of its own, which its reader may end at any layout.

In: on standard input, JSON: the width, each item's corners, count and turns, a seed. Out: on
standard output a line of JSON for each layout, shorter than the one before: its length, then
every item with its turn and where its origin comes to; and `null` each time that shapes
which still overlap overlap less.
Invariant: one thread and one seed, and nothing in the search looks at a clock, so that the
layouts are the same sequence on every machine. The process ends when nobody reads on, and
at the latest after `MOST` seconds of its own processor time.

The solver starts from its first layout and shortens that by a share of its length at a time
(its compression; its exploration, which comes before, would stop by the clock). The share
is made smaller each time that the shapes cannot be moved apart again.
"""

from __future__ import annotations

import json
import os
import sys
import threading
import time
from typing import Any

import spyrrow

MOST = 40
"""Seconds of processor time: many times what it takes to layouts that are read."""
NEVER = 10**6
"""Seconds that the solver is told it has: longer than any process runs."""
PAUSE = 0.01
"""Seconds between two looks at what the solver has found."""
LAYOUTS = (spyrrow.ReportType.ExplFeas, spyrrow.ReportType.CmprFeas)


def settings(seed: int) -> spyrrow.StripPackingConfig:
    """Return settings under which nothing depends on the clock."""
    return spyrrow.StripPackingConfig(
        early_termination=True,
        exploration_time=0,
        compression_time=NEVER,
        total_computation_time=None,
        num_workers=1,
        seed=seed,
    )


def problem(asked: dict[str, Any]) -> spyrrow.StripPackingInstance:
    """Return the solver's problem; its x runs along the cloth."""
    items = [
        spyrrow.Item(
            str(i), [tuple(corner) for corner in item["corners"]], item["count"], item["turns"]
        )
        for i, item in enumerate(asked["items"])
    ]
    return spyrrow.StripPackingInstance("", asked["width"], items)


def told(found: spyrrow.StripPackingSolution) -> str:
    """Return one layout as a line."""
    spots = [[int(i.id), i.rotation, *i.translation] for i in found.placed_items]
    return json.dumps([found.width, spots])


def main() -> None:
    """Solve what is asked on standard input until it is done or nobody reads."""
    asked = json.load(sys.stdin)
    queue = spyrrow.ProgressQueue()
    solving = threading.Thread(
        target=problem(asked).solve, args=(settings(asked["seed"]), queue), daemon=True
    )
    solving.start()
    going = True
    try:
        while going:
            going = solving.is_alive() and time.process_time() < MOST
            for kind, found in queue.drain():
                print(told(found) if kind in LAYOUTS else "null", flush=True)
            time.sleep(PAUSE)
    except BrokenPipeError:
        pass
    os._exit(0)  # the solver itself cannot be stopped


if __name__ == "__main__":
    main()

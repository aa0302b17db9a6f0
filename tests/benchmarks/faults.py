"""How many seeded faults the checks catch, and how often they cry out over nothing.

    python tests/benchmarks/faults.py            all of the suite
    python tests/benchmarks/faults.py word plan  some of it

In: the suite of `tests/seeded`. Out: a line for each fault that is missed, then the rates.
"""

from __future__ import annotations

import sys
import time
from collections import Counter
from pathlib import Path

TESTS = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(TESTS.parent), str(TESTS), str(TESTS / "seeded")]

from bases import VARIETY
from suite import before, faults

from publish import pipeline


def main(kinds: list[str]) -> None:
    """Put in each fault and print what is missed."""
    started = time.process_time()
    chosen = [f for f in faults() if not kinds or f.kind in kinds]
    caught: Counter[str] = Counter()
    total = Counter(f.kind for f in chosen)
    for fault in chosen:
        codes = fault.new()
        caught[fault.kind] += fault.code in codes
        if fault.code not in codes:
            said = ", ".join(sorted(codes)) or "nothing"
            print(f"missed: {fault.kind}: {fault.name} (found {said}, not {fault.code})")
    for kind, number in total.items():
        print(f"{kind:6} {caught[kind]:4} of {number}")
    rate = 100 * caught.total() / max(1, total.total())
    print(f"caught {caught.total()} of {total.total()} faults: {rate:.1f} %")
    false = sum(len(before(kind)) for kind in total)
    if not kinds:
        notes = pipeline.prepare(VARIETY).report.notes
        false += sum(n.code.startswith("P") for n in notes)
    print(f"false alarms on correct patterns: {false}")
    print(f"{time.process_time() - started:.0f} s of processor time")


if __name__ == "__main__":
    main(sys.argv[1:])

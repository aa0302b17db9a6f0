"""Tries inputs for a time, or a number of them, and says what each cost.

    python tests/fuzz/run.py SECONDS [KIND ...] [--count N] [--seed N]

Each kind gets its share of the time. An input that is answered with an exception, takes
more than 5 s of processor time or makes the process need more than 500 MB is written to
`tests/fuzz/corpus`, where the tests find it; the exit code is then 1.
"""

from __future__ import annotations

import argparse
import hashlib
import logging
import random
import resource
import sys
import tempfile
import time
import traceback
import warnings
from collections import Counter
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parents[1]), str(HERE.parent), str(HERE)]

from trials import TRIALS  # noqa: E402

SECONDS, MEGABYTES = 5.0, 500
CORPUS = HERE / "corpus"


def megabytes() -> float:
    """Return the most memory that this process has needed so far."""
    unit = 1 if sys.platform == "darwin" else 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * unit / 1e6


def keep(kind: str, data: str | bytes) -> Path:
    """Write an input to the corpus."""
    held = data if isinstance(data, bytes) else data.encode("utf-8", "surrogatepass")
    path = CORPUS / f"{kind}-{hashlib.sha256(held).hexdigest()[:10]}"
    path.write_bytes(held)
    return path


def trial(kind: str, seed: int, folder: Path) -> tuple[float, list[str], str]:
    """Return seconds, codes and what went wrong with one input."""
    turn = random.Random(f"{kind} {seed}")
    data, attempt = TRIALS[kind](lambda several: several[turn.randrange(len(several))])
    begun, before = time.process_time(), megabytes()
    wrong, codes = "", []
    try:
        codes = attempt(folder)
    except Exception:
        wrong = traceback.format_exc(limit=-3)
    seconds = time.process_time() - begun
    if seconds > SECONDS:
        wrong = wrong or f"{seconds:.1f} s of processor time"
    if megabytes() > max(before, MEGABYTES):
        wrong = wrong or f"{megabytes():.0f} MB"
    if wrong:
        print(f"{keep(kind, data)}: seed {seed}: {wrong}", flush=True)
    return seconds, codes, wrong


def run(kind: str, seconds: float, count: int, seed: int) -> int:
    """Try one kind, print what it cost, and return how many inputs went wrong."""
    end, done, wrong, slowest, total = time.monotonic() + seconds, 0, 0, 0.0, 0.0
    codes: Counter[str] = Counter()
    clean = 0
    with tempfile.TemporaryDirectory() as folder:
        while time.monotonic() < end and done < count:
            spent, found, fault = trial(kind, seed + done, Path(folder))
            done, wrong, total = done + 1, wrong + bool(fault), total + spent
            slowest = max(slowest, spent)
            clean += not found
            codes.update(set(found))
    print(
        f"{kind}: {done:,} inputs, {wrong} wrong, {clean:,} without a finding, {len(codes)} "
        f"different codes; {total / max(done, 1):.3f} s each, {slowest:.2f} s at most, "
        f"{megabytes():.0f} MB",
        flush=True,
    )
    return wrong


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("seconds", type=float)
    parser.add_argument("kinds", nargs="*", choices=[*TRIALS, []], default=[])
    parser.add_argument("--count", type=int, default=10**9)
    parser.add_argument("--seed", type=int, default=0)
    asked = parser.parse_args()
    warnings.simplefilter("ignore")  # as the command does
    logging.lastResort = None
    kinds = asked.kinds or list(TRIALS)
    wrong = [run(k, asked.seconds / len(kinds), asked.count, asked.seed) for k in kinds]
    return 1 if any(wrong) else 0


if __name__ == "__main__":
    sys.exit(main())

"""Reads drawings that were made for something else, each within the limits.

    npm pack bootstrap-icons @tabler/icons     # both MIT: nothing of them is kept here
    python tests/benchmarks/drawings.py FOLDER ... [--most COUNT]

Every SVG below the folders is read, turned into cloth and put to the logo's check. Each must
end in cloth or in findings with a place, within 5 s of processor time and 500 MB; the exit
code is 1 where one does not.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
import traceback
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "tests"), str(ROOT / "tests" / "fuzz")]

import trials
from run import MEGABYTES, SECONDS, megabytes


def main() -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("folders", nargs="+", type=Path)
    parser.add_argument("--most", type=int, default=10**9)
    asked = parser.parse_args()
    paths = sorted(p for folder in asked.folders for p in folder.rglob("*.svg"))[: asked.most]
    seen: Counter[str] = Counter()
    slowest, spent, wrong = 0.0, 0.0, 0
    with tempfile.TemporaryDirectory() as folder:
        for path in paths:
            data, begun = path.read_bytes(), time.process_time()
            try:
                codes = trials.drawing(data, Path(folder))
                trials.logo(data, Path(folder))
                seen.update(set(codes) or {"cloth"})
            except Exception:
                wrong += 1
                print(f"{path}: {traceback.format_exc(limit=-2)}", flush=True)
            took = time.process_time() - begun
            slowest, spent = max(slowest, took), spent + took
            wrong += took > SECONDS
    wrong += megabytes() > MEGABYTES
    print(
        f"{len(paths):,} drawings, {wrong} wrong; {spent / max(len(paths), 1):.4f} s each, "
        f"{slowest:.2f} s at most, {megabytes():.0f} MB; {dict(seen.most_common())}"
    )
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())

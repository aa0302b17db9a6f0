"""Kills whole builds at random moments, and looks at what is left.

    python tests/benchmarks/kills.py [COUNT] [SEED]

A small pattern is built once. Then builds are begun COUNT times (100) and killed, with all
their processes, at a random moment of the time that one takes. After each the folder of
results must hold a whole set, old or new, or be put back by the next build. The exit code
is 1 where it does not.
"""

from __future__ import annotations

import hashlib
import json
import os
import random
import signal
import subprocess
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "tests")]

from helpers import pattern
from small import NINE, text

SIZE = "mini: {block: nine, columns: 2, rows: 2, block_size: 9 in}"


def begun(path: Path, out: Path) -> subprocess.Popen[bytes]:
    """Begin a build in a group of processes of its own."""
    command = [sys.executable, "-m", "publish", "build", str(path), "--out", str(out)]
    quiet = subprocess.DEVNULL
    return subprocess.Popen(command, cwd=ROOT, stdout=quiet, stderr=quiet, start_new_session=True)


def whole(folder: Path) -> bool:
    """Return whether a folder holds exactly what its manifest lists."""
    try:
        listed = json.loads((folder / "manifest.json").read_text())["files"]
    except (OSError, ValueError, KeyError):
        return False
    files = {p.relative_to(folder).as_posix(): p for p in folder.rglob("*") if p.is_file()}
    files.pop("manifest.json")
    return files.keys() == listed.keys() and all(
        hashlib.sha256(p.read_bytes()).hexdigest() == listed[n]["sha256"] for n, p in files.items()
    )


def state(out: Path) -> str:
    """Return what a kill has left."""
    (home,) = {p.name.strip(".").split(".")[0] for p in out.iterdir()} or {"nothing"}
    beside = sorted(p.name.rsplit(".", 1)[1] for p in out.iterdir() if p.name.startswith("."))
    if whole(out / home):
        return "whole" + "".join(f", .{b} beside" for b in beside)
    if not (out / home).exists() and whole(out / f".{home}.old"):
        return "missing, put back by the next build"
    return "BROKEN"


def main() -> int:
    count, seed = (int(a) for a in [*sys.argv[1:], "100", "0"][:2])
    turn, seen = random.Random(seed), Counter[str]()
    with tempfile.TemporaryDirectory() as folder:
        path = pattern(Path(folder), text(SIZE, NINE, ""), drawings=())
        out = Path(folder) / "out"
        start = time.monotonic()
        assert begun(path, out).wait() == 0
        length = time.monotonic() - start
        for _ in range(count):
            build = begun(path, out)
            time.sleep(turn.uniform(0, 1.05 * length))
            os.killpg(build.pid, signal.SIGKILL)
            build.wait()
            seen[state(out)] += 1
        assert begun(path, out).wait() == 0
        seen[f"after the next build: {state(out)}"] += 1
    print(f"{count} kills of a build of {length:.1f} s: {dict(seen)}")
    return 1 if any("BROKEN" in s for s in seen) else 0


if __name__ == "__main__":
    sys.exit(main())

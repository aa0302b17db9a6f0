"""Kills whole runs of the program at random moments, and looks at what is left.

    python tests/kills.py [--count 100] [--seed 0] [--small]

A pattern with a folded motif is built once. Then, in turn, a build in one process, a build
in two and a preview are begun and killed at a random moment of the time that a build takes:
all their processes at once, or the first alone, as a system short of memory does it. After
each, the folder of results must hold a whole set, old or new, or be put back by the next
build; a preview must have written nothing; no process may go on. The exit code is 1 where
that is not so.
"""

from __future__ import annotations

import argparse
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

ROOT = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(ROOT), str(ROOT / "tests")]

from helpers import pattern  # noqa: E402
from small import CARRIES, MOTIF, NINE, text  # noqa: E402

PATIENCE = 20.0
"""Seconds that a process may go on without the first one."""

MINI = text("mini: {block: nine, columns: 1, rows: 1, block_size: 9 in}", NINE)
WHOLE = text(
    "mini: {block: carries, columns: 2, rows: 2, block_size: 9 in, motif_size: 7 in}",
    CARRIES,
    MOTIF,
)


def commands(path: Path, out: Path) -> dict[str, list[str]]:
    """Return what is killed, by name."""
    publish = [sys.executable, "-m", "publish"]
    built = [*publish, "build", str(path), "--out", str(out), "--jobs"]
    shown = [*publish, "preview", str(path), "--port", "0"]
    return {"build": [*built, "1"], "build in two": [*built, "2"], "preview": shown}


def begun(command: list[str], temporary: Path) -> subprocess.Popen[bytes]:
    """Begin a command in a group of processes of its own."""
    quiet = subprocess.DEVNULL
    return subprocess.Popen(
        command,
        cwd=ROOT,
        stdout=quiet,
        stderr=quiet,
        start_new_session=True,
        env={**os.environ, "TMPDIR": str(temporary)},
    )


def killed(run: subprocess.Popen[bytes], alone: bool) -> bool:
    """Kill a run, its first process alone or all; return whether all of it has ended."""
    os.kill(run.pid, signal.SIGKILL) if alone else os.killpg(run.pid, signal.SIGKILL)
    run.wait()
    end = time.monotonic() + PATIENCE
    while _goes_on(run.pid):
        if time.monotonic() > end:
            os.killpg(run.pid, signal.SIGKILL)
            return False
        time.sleep(0.05)
    return True


def _goes_on(group: int) -> bool:
    try:
        os.killpg(group, 0)
    except (ProcessLookupError, PermissionError):
        return False
    return True


def whole(folder: Path) -> bool:
    """Return whether a folder holds exactly what its manifest lists."""
    try:
        listed = json.loads((folder / "manifest.json").read_text())["files"]
    except (OSError, ValueError, KeyError):
        return False
    files = held(folder)
    files.pop("manifest.json")
    return files.keys() == listed.keys() and all(
        hashlib.sha256(data).hexdigest() == listed[name]["sha256"] for name, data in files.items()
    )


def held(folder: Path) -> dict[str, bytes]:
    """Return every file of a folder."""
    every = (p for p in folder.rglob("*") if p.is_file())
    return {p.relative_to(folder).as_posix(): p.read_bytes() for p in every}


def state(out: Path) -> str:
    """Return what a kill has left."""
    (home,) = {p.name.strip(".").split(".")[0] for p in out.iterdir()} or {"nothing"}
    beside = sorted(p.name.rsplit(".", 1)[1] for p in out.iterdir() if p.name.startswith("."))
    if whole(out / home):
        return "whole" + "".join(f", .{b} beside" for b in beside)
    if not (out / home).exists() and whole(out / f".{home}.old"):
        return "missing, put back by the next build"
    return "BROKEN"


def kills(folder: Path, written: str, count: int, seed: int) -> tuple[Counter[str], float]:
    """Return what was left by each kill, and the seconds that a build takes."""
    turn, seen = random.Random(seed), Counter[str]()
    source, out, temporary = (folder / name for name in ("source", "out", "temporary"))
    for made in (source, out, temporary):
        made.mkdir()
    path = pattern(source, written)
    ways = commands(path, out)
    start = time.monotonic()
    assert begun(ways["build"], temporary).wait() == 0
    length = time.monotonic() - start
    given, results = held(source), held(out)
    for number in range(count):
        name = list(ways)[number % len(ways)]
        run = begun(ways[name], temporary)
        time.sleep(turn.uniform(0, 1.05 * length))
        ended = killed(run, alone=turn.random() < 0.5)
        found = state(out)
        if held(source) != given or (name == "preview" and held(out) != results):
            found = "BROKEN: written to"
        results = held(out)
        seen[f"{name}: {found if ended else 'BROKEN: goes on'}"] += 1
    assert begun(ways["build"], temporary).wait() == 0
    seen[f"after the next build: {state(out)}"] += 1
    return seen, length


def main() -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--count", type=int, default=100)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--small", action="store_true", help="a pattern without a motif")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        written = MINI if asked.small else WHOLE
        seen, length = kills(Path(folder), written, asked.count, asked.seed)
    print(f"{asked.count} kills, a build takes {length:.1f} s: {dict(seen)}")
    return 1 if any("BROKEN" in s for s in seen) else 0


if __name__ == "__main__":
    sys.exit(main())

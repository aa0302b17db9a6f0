"""Kills whole runs of the program at random moments, and looks at what is left.

    python tests/kills.py [--count 100] [--seed 0] [--ways WAY ...]

Two patterns with folded motifs stand in one studio. Then, in turn, a build in one process, a
build in two, a catalogue of both patterns, a book of both and a preview are begun after one
word of a pattern was changed, and killed at a random moment of the time that such a run
takes: all their processes at once, or the first alone, as a system short of memory does it.
What earlier runs have kept serves the later ones. After each kill every folder of results
must hold a whole set, old or new, or be put back by the next run; a preview must have
written nothing; no process may go on. At the end each way runs once more to its end, and its
results must be, byte for byte, those of a run that keeps nothing. The exit code is 1 where
that is not so.
"""

from __future__ import annotations

import argparse
import contextlib
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
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(ROOT), str(ROOT / "tests"), str(ROOT / "tests" / "studio")]

from houses import house  # noqa: E402

PATIENCE = 20.0
"""Seconds that a process may go on without the first one."""
NAMES = ("reedmace", "sedge")
BOOK = """\
title: A Year of Fens
isbn: "978-0-306-40615-7"
foreword: These quilts were made in one winter.
parts:
  - {title: Quiet water, patterns: [reedmace, sedge]}
papers: [letter]
"""
WAYS = {
    "build": ("build", "{home}/reedmace", "--jobs", "1"),
    "build in two": ("build", "{home}/reedmace", "--jobs", "2"),
    "catalogue": ("build", "{home}/reedmace", "{home}/sedge", "--jobs", "2"),
    "book": ("book", "{home}", "--jobs", "1"),
    "preview": ("preview", "{home}/reedmace", "--port", "0"),
}
"""What is killed, by name. A preview writes nothing and never ends."""


@dataclass(frozen=True)
class Place:
    """Where the runs of one trial stand: the studio, the results, what is kept, temporary files."""

    home: Path
    out: Path
    kept: Path
    temporary: Path

    def begun(self, way: str, out: Path | None = None, kept: Path | None = None) -> Run:
        """Begin a run in a group of processes of its own."""
        asked = [part.format(home=self.home) for part in WAYS[way]]
        written = [] if way == "preview" else ["--out", str(out or self.out / way)]
        quiet = subprocess.DEVNULL
        return subprocess.Popen(
            [sys.executable, "-m", "publish", *asked, *written],
            cwd=ROOT,
            stdout=quiet,
            stderr=quiet,
            start_new_session=True,
            env={
                **os.environ,
                "TMPDIR": str(self.temporary),
                "FOLDWORK_CACHE": str(kept or self.kept),
            },
        )


Run = subprocess.Popen[bytes]


def placed(folder: Path) -> Place:
    """Return a studio of two patterns and their book, with empty folders beside it."""
    place = Place(*(folder / name for name in ("home", "out", "kept", "temporary")))
    for made in (place.home, place.out, place.kept, place.temporary):
        made.mkdir()
    house(place.home, NAMES)
    (place.home / "book.yaml").write_text(BOOK, encoding="utf-8")
    return place


def edited(home: Path, number: int) -> None:
    """Change one word of the first pattern, so that the next run has something to make."""
    path = home / NAMES[0] / "pattern.yaml"
    first, _, rest = path.read_text(encoding="utf-8").partition("\n")
    assert first.startswith("title: ")
    path.write_text(f"title: {NAMES[0].title()} {number}\n{rest}", encoding="utf-8")


def killed(run: Run, alone: bool) -> bool:
    """Kill a run, its first process alone or all; return whether all of it has ended."""
    with contextlib.suppress(ProcessLookupError):  # it may have ended by itself
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
    """Return what a kill has left: the worst of all sets in a folder of results."""
    homes = {p.name.strip(".").split(".")[0] for p in out.iterdir()} if out.exists() else set()
    found = [_of_set(out, home) for home in sorted(homes)] or ["BROKEN: nothing"]
    broken = [f for f in found if "BROKEN" in f]
    return (broken or sorted(found, key=len))[-1]


def _of_set(out: Path, home: str) -> str:
    beside = sorted(p.name.rsplit(".", 1)[1] for p in out.glob(f".{home}.*"))
    if whole(out / home):
        return "whole" + "".join(f", .{b} beside" for b in beside)
    if not (out / home).exists() and whole(out / f".{home}.old"):
        return "missing, put back by the next run"
    return "BROKEN"


def kills(folder: Path, ways: tuple[str, ...], count: int, seed: int) -> Counter[str]:
    """Return what was left by each kill, and by the last run of each way."""
    turn, seen = random.Random(seed), Counter[str]()
    place = placed(folder)
    writes = [way for way in ways if way != "preview"]
    for way in writes:
        assert place.begun(way).wait() == 0
    edited(place.home, 0)
    length = {way: _seconds(place, way) for way in writes}
    length["preview"] = max(length.values())
    for number in range(count):
        way = ways[number % len(ways)]
        edited(place.home, number + 1)
        given, results = held(place.home), held(place.out)
        run = place.begun(way)
        time.sleep(turn.uniform(0, 1.05 * length[way]))
        ended = killed(run, alone=turn.random() < 0.5)
        found = state(place.out / way) if way in writes else "nothing written"
        if held(place.home) != given or (way == "preview" and held(place.out) != results):
            found = "BROKEN: written to"
        seen[f"{way}: {found if ended else 'BROKEN: goes on'}"] += 1
    for way in writes:
        seen[f"{way} at the end: {_end(place, way)}"] += 1
    return seen


def _seconds(place: Place, way: str) -> float:
    start = time.monotonic()
    assert place.begun(way).wait() == 0
    return time.monotonic() - start


def _end(place: Place, way: str) -> str:
    """Return what a last run leaves, and whether it is what a run leaves that keeps nothing."""
    new, kept = place.temporary / "new", place.temporary / "kept"
    assert place.begun(way).wait() == 0
    assert place.begun(way, new / way, kept / way).wait() == 0
    same = held(place.out / way) == held(new / way)
    return state(place.out / way) + ("" if same else ", BROKEN: other bytes")


def main() -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    parser.add_argument("--count", type=int, default=100)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--ways", nargs="+", choices=[*WAYS], default=[*WAYS])
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        seen = kills(Path(folder), tuple(asked.ways), asked.count, asked.seed)
    print(f"{asked.count} kills: {dict(sorted(seen.items()))}")
    return 1 if any("BROKEN" in s for s in seen) else 0


if __name__ == "__main__":
    sys.exit(main())

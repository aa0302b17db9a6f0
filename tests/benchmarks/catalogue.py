"""How a catalogue of patterns builds: `python tests/benchmarks/catalogue.py [--patterns 24]`.

Patterns are made from seeds, one of each kind in turn (tests/space), below one studio.yaml,
into a folder of their own that is removed again. The whole is built by one process and by
two, each time anew: printed are the seconds, how many times as fast two are, processor
seconds, and the most memory that any one process holds over the first and over the last
third of the run. Then one word of studio.yaml is changed that a third of the patterns
replace, and it is counted what `--changed` makes. `--keep FOLDER` leaves the patterns there.

Memory and processor seconds are read from /proc and left out where there is none; what else
the machine does makes the ratio of the seconds worthless, so its load is printed. Nothing
here passes or fails.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "tests")]

import yaml
from space import walk

STUDIO = {
    "publication": {
        "studio": "Hollow Fen Studio",
        "licence": "You may sew as many as you like, to keep or to sell.",
        "contact": "patterns@hollowfen.example",
    },
    "prices": [{"currency": "EUR", "retail": 14, "wholesale": 7}],
}
OWN_CONTACT = 3
"""Every so manieth pattern gives an address of its own."""
PAUSE = 0.1
"""Seconds between looks at the memory."""


def main() -> None:
    asked = arguments()
    with tempfile.TemporaryDirectory() as folder:
        home = Path(asked.keep or folder)
        made = catalogue(home, asked.patterns)
        print(f"{len(made)} patterns, {os.cpu_count()} processors, load {os.getloadavg()[0]:.1f}")
        seconds = {jobs: measured(home, jobs, asked) for jobs in (1, 2)}
        print(f"two processes are {seconds[1] / seconds[2]:.2f} times as fast as one")
        edited(home, asked)


def arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--patterns", type=int, default=24)
    parser.add_argument("--keep", default="")
    parser.add_argument("--only", default="booklet")
    parser.add_argument("--paper", default="letter")
    return parser.parse_args()


def catalogue(home: Path, count: int) -> list[Path]:
    """Write patterns and what they share; return their folders."""
    home.mkdir(parents=True, exist_ok=True)
    (home / "studio.yaml").write_text(yaml.safe_dump(STUDIO, sort_keys=False), encoding="utf-8")
    made = []
    for number in range(count):
        folder = home / "patterns" / f"lode-{number:03}"
        folder.mkdir(parents=True, exist_ok=True)
        text = yaml.dump(pattern(number), Dumper=walk.Plain, sort_keys=False, allow_unicode=True)
        (folder / "pattern.yaml").write_text(text, encoding="utf-8")
        made.append(folder)
    return made


def pattern(number: int) -> dict:
    """Return a pattern that leaves to its studio what it can."""
    said = walk.pattern(number)
    own = {"stock_number": f"HF-{number:03}", "skill": "Confident beginner", "year": 2026}
    if number % OWN_CONTACT == 0:
        own["contact"] = f"lode-{number}@hollowfen.example"
    return {**said, "title": f"Lode {number}", "publication": own}


def command(home: Path, jobs: int, asked: argparse.Namespace, out: str, *more: str) -> list[str]:
    return [
        sys.executable,
        "-m",
        "publish",
        "build",
        str(home / "patterns"),
        "--jobs",
        str(jobs),
        "--only",
        asked.only,
        "--paper",
        asked.paper,
        "--out",
        str(home / out),
        *more,
    ]


def measured(home: Path, jobs: int, asked: argparse.Namespace) -> float:
    """Build everything and print what it took; return the seconds."""
    started = time.monotonic()
    run = subprocess.Popen(
        command(home, jobs, asked, f"out-{jobs}"),
        cwd=ROOT,
        text=True,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
    )
    watch = Memory(run.pid)
    said, _ = run.communicate()
    seconds = time.monotonic() - started
    watch.stop()
    built = sum(" built " in line for line in said.splitlines())
    print(f"{jobs} at a time: {seconds:6.1f} s, {built} built{watch}", flush=True)
    for line in said.splitlines():
        if "not built" in line or "failed" in line:
            print(f"  {line}")
    return seconds


class Memory:
    """Looks at what a process and those below it hold and use, as long as they run."""

    def __init__(self, pid: int) -> None:
        self.pid, self.seen, self.over = pid, list[tuple[float, float]](), threading.Event()
        self.used: dict[int, float] = {}
        self.thread = threading.Thread(target=self._look, daemon=True)
        self.thread.start()

    def stop(self) -> None:
        self.over.set()
        self.thread.join()

    def _look(self) -> None:
        while Path("/proc").is_dir() and not self.over.wait(PAUSE):
            there = below(self.pid)
            self.used |= {pid: max(worked(pid), self.used.get(pid, 0)) for pid in there}
            held = [resident(pid) for pid in there]
            if held:
                self.seen.append((max(held), sum(held)))

    def __str__(self) -> str:
        third = len(self.seen) // 3
        if not third:
            return ""
        first, last = self.seen[:third], self.seen[-third:]
        one = [max(held for held, _ in part) for part in (first, last)]
        return (
            f", processor {sum(self.used.values()):.1f} s, largest process {one[0]:.0f} MB in the "
            f"first third and {one[1]:.0f} MB in the last, all together "
            f"{max(a for _, a in self.seen):.0f} MB"
        )


def below(pid: int) -> list[int]:
    """Return a process and every process that it has begun."""
    found = [pid]
    for each in found:
        try:
            for task in Path(f"/proc/{each}/task").iterdir():
                found += map(int, (task / "children").read_text().split())
        except OSError:  # gone by now
            continue
    return found


def worked(pid: int) -> float:
    """Return the processor seconds that a process has used."""
    try:
        said = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    except OSError:
        return 0.0
    return (int(said[11]) + int(said[12])) / os.sysconf("SC_CLK_TCK")


def resident(pid: int) -> float:
    """Return the megabytes of memory that a process holds."""
    try:
        pages = int(Path(f"/proc/{pid}/statm").read_text().split()[1])
    except (OSError, IndexError):
        return 0.0
    return pages * os.sysconf("SC_PAGE_SIZE") / 2**20


def edited(home: Path, asked: argparse.Namespace) -> None:
    """Change one word of what is shared, and print what is made anew."""
    path = home / "studio.yaml"
    path.write_text(path.read_text(encoding="utf-8").replace("patterns@", "mistakes@"), "utf-8")
    started = time.monotonic()
    run = subprocess.run(
        command(home, 2, asked, "out-2", "--changed"), cwd=ROOT, text=True, capture_output=True
    )
    lines = run.stdout.splitlines()
    built, same = (sum(f" {w} " in line for line in lines) for w in ("built", "unchanged"))
    seconds = time.monotonic() - started
    print(f"one word of studio.yaml changed: {built} built, {same} unchanged, {seconds:.1f} s")


if __name__ == "__main__":
    main()

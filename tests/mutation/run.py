"""Put faults into a copy of the program, one at a time, and see which the tests notice.

    python tests/mutation/run.py [--count 120] [--seed 1] [--seconds 60] [--workers 2]

The faults are drawn by a seed from all that `faults.py` makes of the stages that measure and
tell: grade, draft, cut, write. Each is tried against the tests named after its module, the
tops worked out by hand, the tests of its stage and the second reckoning, until one fails or
the processor's time is up. Prints the score, and each fault that nothing noticed.
"""

import argparse
import os
import resource
import shutil
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from random import Random

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT / "tests"))

from mutation.faults import fault, places

SHARES = {"grade": 0.12, "draft": 0.28, "cut": 0.35, "write": 0.25}
"""How many of the faults are put into each stage."""
BY_HAND = "tests/independent/test_by_hand.py"
LAST = ("tests/independent", "tests/deliver/test_numbers.py", "tests/space/test_space.py")
LIBRARIES = (
    "shapely",
    "shapely.ops",
    "yaml",
    "numpy",
    "pytest",
    "hypothesis",
    "coloraide",
    "svgelements",
    "highspy",
    "PIL",
    "jinja2",
    "markdown_it",
    "pikepdf",
    "weasyprint",
    "cairosvg",
    "ezdxf",
    "spyrrow",
    "stdnum",
    "pypdfium2",
    "jsonschema",
    "rich",
)
SILENT = ("-x", "-q", "-p", "no:cacheprovider", "-p", "no:xdist")


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=120)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--seconds", type=int, default=60)
    parser.add_argument("--workers", type=int, default=2)
    args = parser.parse_args()
    for name in LIBRARIES:  # imported once here; each trial is a fork
        __import__(name)
    chosen = drawn(args.count, args.seed)
    with tempfile.TemporaryDirectory() as folder:
        shares = [chosen[i :: args.workers] for i in range(args.workers)]
        copies = [copied(Path(folder) / f"program-{i}") for i in range(args.workers)]
        with ThreadPoolExecutor(args.workers) as pool:
            ways = {
                s: pool.submit(noticed, copies[i % args.workers], s, "", args.seconds)
                for i, s in enumerate(SHARES)
            }
            if wrong := [s for s, by in ways.items() if by.result() == "failed"]:
                sys.exit(f"without a fault these tests fail already: {', '.join(wrong)}")
            lots = list(pool.map(trials, copies, shares, [args.seconds] * args.workers))
    report([trial for lot in lots for trial in lot])


def copied(folder):
    """Return a copy of the program for one worker."""
    kept = shutil.ignore_patterns(".git", ".venv", "build", "__pycache__", ".*_cache")
    shutil.copytree(ROOT, folder, ignore=kept)
    return folder


def drawn(count, seed):
    """Return the faults to try, drawn alike on every run."""
    rng = Random(seed)
    found = []
    for stage, share in SHARES.items():
        sources = {
            str(path.relative_to(ROOT)): path.read_text(encoding="utf-8")
            for path in sorted((ROOT / "publish" / stage).rglob("*.py"))
        }
        every = [(m, n) for m, source in sources.items() for n in range(places(source))]
        chosen = rng.sample(every, min(round(count * share), len(every)))
        found += [(stage, fault(m, sources[m], n)) for m, n in chosen]
    rng.shuffle(found)
    return found


def trials(copy, chosen, seconds):
    """Return each fault and by what it was noticed."""
    found = []
    for stage, slip in chosen:
        path = copy / slip.module
        whole = path.read_text(encoding="utf-8")
        path.write_text(slip.source, encoding="utf-8")
        by = noticed(copy, stage, slip.module, seconds)
        path.write_text(whole, encoding="utf-8")
        found.append((stage, slip, by))
        word = {"failed": "noticed", "time up": "not noticed in time"}.get(by, "SURVIVED")
        print(f"{word}: {slip.module}:{slip.line} {slip.what}", flush=True)
    return found


def noticed(copy, stage, module, seconds):
    """Return what became of a fault: `failed` tests, `time up` before any failed, or nothing.

    The tests run in a fork, so that a fault cannot reach the next trial.
    """
    child = os.fork()
    if child == 0:
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds))
        os._exit(_tested(copy, order(copy, stage, module)))
    _, status = os.waitpid(child, 0)
    code = os.waitstatus_to_exitcode(status)
    return "" if code == 0 else "failed" if code > 0 else "time up"


def order(copy, stage, module):
    """Return the tests to try: those named after the module, by hand, the stage's, the rest."""
    words = {word.rstrip("s") for word in Path(module).stem.split("_")}
    words |= {part.rstrip("s") for part in Path(module).parts[2:-1]}
    named = [
        str(path.relative_to(copy))
        for path in sorted((copy / "tests" / stage).glob("test_*.py"))
        if any(word and word in path.stem for word in words)
    ]
    return [named, [BY_HAND], [f"tests/{stage}"], list(LAST)]


def _tested(copy, groups):
    import pytest

    os.chdir(copy)
    sys.dont_write_bytecode = True
    sys.path[:] = [str(copy), *(p for p in sys.path if not p.startswith(str(ROOT / "tests")))]
    for name in [m for m in sys.modules if m.split(".")[0] in ("mutation", "publish")]:
        del sys.modules[name]
    sink = os.open(os.devnull, os.O_WRONLY)
    os.dup2(sink, 1)
    os.dup2(sink, 2)
    for group in groups:
        there = [t for t in group if (copy / t).exists()]
        code = int(pytest.main([*SILENT, *there])) if there else 0
        if code not in (0, pytest.ExitCode.NO_TESTS_COLLECTED):
            return code
    return 0


def report(results):
    """Print the score of each stage and the survivors."""
    for stage in SHARES:
        mine = [by for s, _, by in results if s == stage]
        print(f"{stage}: {mine.count('failed')} of {len(mine)} noticed")
    every = [by for _, _, by in results]
    print(f"noticed: {every.count('failed')} of {len(every)}; time up for {every.count('time up')}")
    for _, slip, by in results:
        if by != "failed":
            print(f"  survived: {slip.module}:{slip.line}: {slip.what} {by}")


if __name__ == "__main__":
    main()

"""How much of the space of patterns is flawless, by rule and by kind; how much builds.

    python tests/benchmarks/space.py [--build 40] [--seeds FROM TO] [--tell FILE]

Every seed of the walk is prepared and read by the rules of tests/space. `--build` builds a
sample of those without findings, the booklet alone on one paper. `--tell` writes what was
wrong with each seed, with its pattern, as Markdown.
"""

import argparse
import sys
import tempfile
from collections import Counter
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2])]

from space import walk
from space.case import case
from space.flawless import wrong_in

from publish.notes import PublishError
from publish.pipeline import build


def main():
    args = arguments()
    seeds = walk.SEEDS[slice(*args.seeds)]
    wrong, clean = {}, []
    for seed in seeds:
        made = case(seed)
        wrong[seed] = wrong_in(made)
        if not made.findings:
            clean.append(seed)
    shares(seeds, wrong)
    print(f"without findings: {len(clean)} of {len(seeds)}")
    if args.build:
        built(clean[:: max(1, len(clean) // args.build)][: args.build])
    if args.tell:
        Path(args.tell).write_text("\n".join(story(wrong)), encoding="utf-8")


def arguments():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--build", type=int, default=0)
    parser.add_argument("--seeds", type=int, nargs=2, default=(0, None))
    parser.add_argument("--tell", default="")
    return parser.parse_args()


def shares(seeds, wrong):
    """Print the share flawless: of all, of each kind; and what each rule found."""
    good = [seed for seed in seeds if not wrong[seed]]
    print(f"flawless: {len(good)} of {len(seeds)}, {100 * len(good) / len(seeds):.1f} %")
    kinds, whole = Counter(map(walk.kind_of, seeds)), Counter(map(walk.kind_of, good))
    for kind in walk.KINDS:
        print(f"  {kind:16} {whole[kind]:3} of {kinds[kind]}")
    rules = Counter(rule for found in wrong.values() for rule in found)
    alone = Counter(next(iter(found)) for found in wrong.values() if len(found) == 1)
    for rule, count in rules.most_common():
        print(f"  {rule:28} {count:3} patterns, {alone[rule]:3} of them by it alone")


def built(seeds):
    """Build each booklet and print how many there are."""
    done = 0
    for seed in seeds:
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "pattern.yaml"
            path.write_text(walk.written(seed), encoding="utf-8")
            paper = walk.pattern(seed).get("papers", ["letter"])[0]
            try:
                build(path, Path(folder) / "out", [paper], "booklet")
                done += 1
            except PublishError as stopped:
                found = "; ".join(
                    f"{n.code} {n.what} ({n.received})" for n in stopped.report.errors
                )
                print(f"  seed {seed} ({walk.kind_of(seed)}) is not built: {found}", flush=True)
            except Exception as wrong:
                print(f"  seed {seed} ({walk.kind_of(seed)}): {wrong!r}", flush=True)
    print(f"built: {done} of {len(seeds)} without findings")


def story(wrong):
    """Yield what is wrong, rule by rule, with one pattern of each kind that it is wrong in."""
    rules = {}
    for seed, found in wrong.items():
        for rule, texts in found.items():
            rules.setdefault(rule, []).append((seed, texts))
    for rule, cases in sorted(rules.items(), key=lambda item: -len(item[1])):
        yield f"## {rule}: {len(cases)} patterns\n"
        yield "Seeds " + ", ".join(str(seed) for seed, _ in cases) + ".\n"
        shown = set()
        for seed, texts in cases:
            if walk.kind_of(seed) in shown:
                continue
            shown.add(walk.kind_of(seed))
            yield f"### seed {seed} ({walk.kind_of(seed)})\n"
            yield "\n".join(f"- {text}" for text in texts[:3])
            if len(shown) <= 2:
                yield f"\n```yaml\n{walk.written(seed)}```\n"


if __name__ == "__main__":
    main()

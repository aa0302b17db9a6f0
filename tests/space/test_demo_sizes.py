"""The demos with one size alone, its grid, block, border and sleeve changed at random.

No source: whatever is found must be about the pattern, never about the program's own words.
"""

import random
import shutil

import pytest
import yaml
from helpers import DEMO

from publish.pipeline import examine

DEMOS = sorted(path.parent.name for path in DEMO.parent.glob("*/pattern.yaml"))
OURS = ("P8", "S4", "W5")
"""What the checks say of words, operations and tables; the last of these of hers as well."""
HERS = ("P840",)
"""`Three sizes` stands in the subtitles, and one is left."""


def changed(demo, seed):
    """Return a demo's pattern with one size, changed in one to three ways."""
    rng = random.Random(f"one size of {demo} {seed}")
    pattern = yaml.safe_load((DEMO.parent / demo / "pattern.yaml").read_text("utf-8"))
    key = rng.choice(sorted(pattern["sizes"]))
    size = pattern["sizes"][key]
    for way in rng.choices(("grid", "border", "sleeve", "block"), k=rng.randint(1, 3)):
        if way == "grid" and "columns" in size:
            size.update(columns=rng.randint(1, 6), rows=rng.randint(1, 6))
        elif way == "border" and size.get("borders"):
            rng.choice(size["borders"])["width"] = f"{rng.choice((1, 2, 3, 5, 12, 25))} in"
        elif way == "sleeve" and size.get("finish") != "pillow":
            size["sleeve"] = f"{rng.choice((2, 4, 6))} in"
        elif way == "block":
            side = rng.choice((6, 8, 9, 10, 12, 15, 16, 18))
            size["block_size"] = f"{side} in"
            if "motif_size" in size:
                size["motif_size"] = f"{side - 2} in"
    return {**pattern, "sizes": {key: size}}


def found(tmp_path, demo, seed):
    folder = tmp_path / demo
    shutil.copytree(DEMO.parent / demo, folder)
    text = yaml.safe_dump(changed(demo, seed), sort_keys=False, allow_unicode=True)
    (folder / "pattern.yaml").write_text(text, encoding="utf-8")
    report = examine(folder).report
    return [f"{n.code} {n.what}" for n in report if n.code.startswith(OURS) and n.code not in HERS]


@pytest.mark.parametrize(
    "demo",
    [
        pytest.param(demo, marks=() if demo == "samphire" else pytest.mark.thorough)
        for demo in DEMOS
    ],
)
def test_one_size_of_a_demo_is_told_without_a_finding(tmp_path, demo):
    assert not found(tmp_path, demo, 1)


@pytest.mark.thorough
@pytest.mark.parametrize("seed", range(2, 48))
@pytest.mark.parametrize("demo", DEMOS)
def test_any_one_size_of_a_demo_is_told_without_a_finding(tmp_path, demo, seed):
    assert not found(tmp_path, demo, seed)

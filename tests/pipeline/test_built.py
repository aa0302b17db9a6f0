"""What `check` passes, `build` builds: the README's own pattern, and tops of few parts.

No source: that a build ends without a finding of its own is the point.
"""

import re

import pytest
from helpers import ROOT, pattern
from small import CARRIES, MOTIF, NINE, PLAIN, STAR, text

from publish import pipeline
from publish.kept import Store, users
from publish.notes import PublishError

README = re.findall(
    r"```yaml\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL
)
OF_PATTERN = [block for block in README if block.startswith("title:")]
OF_STUDIO = [block for block in README if block not in OF_PATTERN]
LOGO = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M0 0h4v4z"/></svg>'
TOPS = {
    "a long name of a backing": (
        "mini: {block: nine, columns: 2, rows: 2, block_size: 9 in, backing: {fabric: long}}",
        NINE,
        "",
    ),
    "a row with sashing": (
        "runner: {block: nine, columns: 3, rows: 1, block_size: 9 in, "
        "sashing: {width: 1 in, fabric: mist, outer: no}}",
        NINE,
        "",
    ),
    "in centimetres": (
        "throw: {block: nine, columns: 4, rows: 2, block_size: 24 cm, "
        "backing: {fabric: mist}, binding: {fabric: amber}}",
        NINE,
        "",
    ),
    "a column with sashing": (
        "runner: {block: nine, columns: 1, rows: 3, block_size: 9 in, "
        "sashing: {width: 1 in, fabric: mist, outer: no}}",
        NINE,
        "",
    ),
    "one size on foundations": (
        "mini: {block: star, columns: 2, rows: 2, block_size: 8 in}",
        STAR.replace("}}", "}, foundation: derived}"),
        "",
    ),
    "a fused motif at two sizes": (
        "one: {block: carries, block_size: 16 in, motif_size: 14 in}\n"
        "two: {block: carries, columns: 3, rows: 3, block_size: 18 in, motif_size: 15 in}",
        CARRIES,
        MOTIF.replace("fern}", "fern, method: fusible}"),
    ),
    "a pieced ground beside a plain block": (
        "mini: {block: [carries, plain], columns: 3, rows: 3, block_size: 16 in, "
        "motif_size: 14 in}",
        "  carries: {ground: {rows: [[oat, mist], [mist, oat]]}, motif: m}\n" + PLAIN,
        MOTIF,
    ),
}
"""Sizes, blocks and further keys."""
CHEAP = ("a row with sashing",)
"""The rest are left to the thorough run."""


def named(folder, key):
    """Write a pattern with a fabric `long` whose name has sixty letters."""
    said = text(*TOPS[key])
    long = '  long: {{name: "{}", colour: "#8a9a7b"}}\n'.format(("Reed-bed " * 7)[:60].strip())
    return pattern(
        folder, said.replace("fabrics:\n", f"fabrics:\n{long}") if "long" in key else said
    )


def built(path, folder):
    """Return the errors that refuse a pattern its booklet, on one paper."""
    try:
        pipeline.build(path, folder / "out", ("letter",), "booklet", store=Store(users()))
    except PublishError as stopped:
        return [f"{n.code} {n.what}; {n.expected}; {n.received}" for n in stopped.report.errors]
    return []


@pytest.mark.thorough  # the first of them is built with a studio of the README
@pytest.mark.parametrize("yaml", OF_PATTERN)
def test_every_pattern_of_the_readme_is_built(tmp_path, yaml):
    assert built(pattern(tmp_path, yaml), tmp_path) == []


@pytest.mark.parametrize(
    "yaml",
    [pytest.param(y, marks=pytest.mark.thorough if n else ()) for n, y in enumerate(OF_STUDIO)],
)
def test_the_readmes_pattern_is_built_with_every_studio_of_the_readme(tmp_path, yaml):
    (tmp_path / "studio.yaml").write_text(yaml, encoding="utf-8")
    (tmp_path / "logo.svg").write_text(LOGO, encoding="utf-8")
    own = tmp_path / "bulrush"
    own.mkdir()
    assert built(pattern(own, OF_PATTERN[0]), tmp_path) == []


@pytest.mark.thorough
@pytest.mark.parametrize(
    "blurb", ["A plain sentence.", '"Read [how it is sewn](https://hollowfen.example) first."']
)
def test_the_readmes_pattern_with_a_blurb_is_built(tmp_path, blurb):
    yaml = f"{OF_PATTERN[0]}publication: {{blurb: {blurb}}}\n"
    assert built(pattern(tmp_path, yaml), tmp_path) == []


@pytest.mark.parametrize(
    "key", [pytest.param(k, marks=() if k in CHEAP else pytest.mark.thorough) for k in TOPS]
)
def test_a_pattern_that_is_checked_is_built(tmp_path, key):
    assert built(named(tmp_path, key), tmp_path) == []


def test_only_what_a_pattern_does_not_have_is_said(tmp_path):
    path = named(tmp_path, "a row with sashing")
    for only in ("templates", "full-size"):
        with pytest.raises(PublishError) as stopped:
            pipeline.build(path, tmp_path / "out", ("letter",), only)
        assert [note.code for note in stopped.value.report.errors] == ["X906"]

"""A booklet for one size alone: only its own numbers, steps and sheets, with the letters of
the whole one.

Common practice, no source: a maker sews one size and prints no sheet of another.
"""

import pytest
from small import NINE, STAR, findings, prepared, written
from space import told

from publish import cli
from publish.editions import jobs_for

TOPS = """
mini: {block: star, columns: 1, rows: 1, block_size: 8 in, title: Mini quilt}
throw: {block: [star, nine], columns: 3, rows: 4, block_size: 12 in, title: Large throw}
"""


def by_size(folder, more=""):
    return prepared(folder, TOPS, STAR + NINE, "booklets: by size\n" + more)


def test_each_size_has_a_booklet_on_each_paper_beside_the_whole_one(tmp_path):
    work = by_size(tmp_path)
    assert findings(work) == []
    jobs = [
        (j.size, j.paper.key)
        for j in jobs_for(work.design, work.manual, ("letter", "a4"))
        if j.name == "booklet" and not j.press
    ]
    assert jobs == [(size, paper) for paper in ("letter", "a4") for size in ("", "mini", "throw")]


def test_words_of_one_size_name_no_other(tmp_path):
    work = by_size(tmp_path)
    mini, throw = (said(work, key) for key in ("mini", "throw"))
    assert "Large throw" not in mini and "Mini quilt" not in throw
    assert "Make twelve" not in mini
    letters = {p.letter for p in work.plans["mini"].pieces}
    for piece in work.plans["throw"].pieces:
        assert f"**{piece.letter}**" in throw
        assert (f"**{piece.letter}**" in mini) == (piece.letter in letters)


def said(work, key):
    """Return the words of one size's own booklet."""
    return "\n".join(line.text for line in told.lines(work.apart[key]))


def test_one_size_needs_no_second_booklet(tmp_path):
    work = prepared(tmp_path, TOPS.split("\n")[1], STAR, "booklets: by size\n")
    assert work.apart == {}
    jobs = jobs_for(work.design, work.manual, ("letter",), "booklet")
    assert [j.size for j in jobs] == [""]


def test_a_size_that_is_not_there_is_refused_in_one_line(tmp_path, capsys):
    path = written(tmp_path, TOPS, STAR + NINE)
    assert cli.main(["build", str(path), "--size", "cot", "--out", str(tmp_path / "out")]) == 2
    last = capsys.readouterr().err.splitlines()[-1]
    assert last == "foldwork: the pattern has no size 'cot': it has mini, throw"
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize("key", ["mini", pytest.param("throw", marks=pytest.mark.thorough)])
def test_one_size_alone_is_built_on_request(tmp_path, key):
    path = written(tmp_path, TOPS, STAR + NINE)
    asked = ["build", str(path), "--size", key, "--paper", "letter", "--out", str(tmp_path / "out")]
    assert cli.main(asked) == 0
    (folder,) = (tmp_path / "out").iterdir()
    assert [p.name for p in folder.glob("*.pdf")] == [f"booklet-{key}-letter.pdf"]


def test_own_words_for_one_size_stand_in_its_booklet_only(tmp_path):
    own = 'steps:\n- {after: label-and-care-label, text: "Hang it in the hall.", sizes: [throw]}\n'
    work = by_size(tmp_path, own)
    assert findings(work) == []
    assert "Hang it in the hall." in said(work, "throw")
    assert "Hang it in the hall." not in said(work, "mini")

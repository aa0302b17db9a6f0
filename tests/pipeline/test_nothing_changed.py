"""A build of what is up to date says so, and makes nothing; whatever differs is built."""

from small import PLAIN, text, written

from publish import cli

TOP = "a: {block: plain, block_size: 12 in}"


def built(folder, capsys, *more):
    """Build on one paper, and return the last line that is said."""
    asked = ["build", str(folder), "--paper", "letter", "--only", "booklet", *more]
    assert cli.main([*asked, "--out", str(folder.parent / "out")]) == 0
    return capsys.readouterr().out.splitlines()[-1]


def test_a_build_of_what_is_up_to_date_makes_nothing(tmp_path, capsys):
    folder = written(tmp_path, TOP, PLAIN)
    assert "booklet-letter.pdf" in built(folder, capsys)
    (target,) = (folder.parent / "out").iterdir()
    before = {p: p.stat().st_mtime_ns for p in target.rglob("*")}
    assert f"{target}: nothing has changed" in built(folder, capsys)
    assert {p: p.stat().st_mtime_ns for p in target.rglob("*")} == before
    assert "booklet-letter.pdf" in built(folder, capsys, "--fresh")
    (target / "booklet-letter.pdf").unlink()
    assert "booklet-letter.pdf" in built(folder, capsys)
    changed = text(TOP, PLAIN).replace("Withy Drain", "Withy Drove")
    folder.write_text(changed, encoding="utf-8")
    assert "booklet-letter.pdf" in built(folder, capsys)
    assert "booklet-a-letter.pdf" in built(folder, capsys, "--size", "a")

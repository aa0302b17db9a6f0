"""A build of what is up to date says so, and makes nothing; whatever differs is built."""

from small import CARRIES, MOTIF, text, written

from publish import cli

TOP = "a: {block: carries, block_size: 9 in, motif_size: 7 in}"


def built(folder, capsys, *more, only="templates"):
    """Build on one paper, and return the last line that is said."""
    asked = ["build", str(folder), "--paper", "letter", "--only", only, *more]
    assert cli.main([*asked, "--out", str(folder.parent / "out")]) == 0
    return capsys.readouterr().out.splitlines()[-1]


def test_a_build_of_what_is_up_to_date_makes_nothing(tmp_path, capsys):
    folder = written(tmp_path, TOP, CARRIES, MOTIF)
    assert "templates-letter.pdf" in built(folder, capsys)
    (target,) = (folder.parent / "out").iterdir()
    before = {p: p.stat().st_mtime_ns for p in target.rglob("*")}
    assert f"{target}: nothing has changed" in built(folder, capsys)
    assert {p: p.stat().st_mtime_ns for p in target.rglob("*")} == before
    assert "templates-letter.pdf" in built(folder, capsys, "--fresh")
    (target / "templates-letter.pdf").unlink()
    assert "templates-letter.pdf" in built(folder, capsys)
    changed = text(TOP, CARRIES, MOTIF).replace("Withy Drain", "Withy Drove")
    folder.write_text(changed, encoding="utf-8")
    assert "templates-letter.pdf" in built(folder, capsys)
    assert "booklet-a-letter.pdf" in built(folder, capsys, "--size", "a", only="booklet")

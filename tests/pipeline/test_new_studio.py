"""What `foldwork new` does beside patterns that are there already."""

from helpers import assert_no_notes

from publish import cli, read
from publish.starting import start


def test_the_first_pattern_stands_alone(tmp_path):
    start(tmp_path / "reed")
    assert not (tmp_path / "studio.yaml").exists()


def test_the_second_starts_what_both_share(tmp_path, capsys, monkeypatch):
    monkeypatch.chdir(tmp_path)
    start(tmp_path / "reed")
    before = read.load(tmp_path / "reed")[0].publication
    assert cli.main(["new", "sedge"]) == cli.CLEAN
    assert capsys.readouterr().out.splitlines()[0] == "studio.yaml"
    for name in ("reed", "sedge"):
        made, notes, _ = read.load(tmp_path / name)
        assert_no_notes(notes)
        assert made.publication == before
    assert "studio:" not in (tmp_path / "sedge" / "pattern.yaml").read_text(encoding="utf-8")


def says(folder, *facts):
    """Start a pattern that says these facts of its publication, without a studio's file."""
    start(folder)
    (folder.parent / "studio.yaml").unlink(missing_ok=True)
    path = folder / "pattern.yaml"
    text = path.read_text(encoding="utf-8").replace("  studio: Your studio\n", "")
    head, _, tail = text.partition("publication:\n")
    lines = "".join(f"  {fact}\n" for fact in facts)
    path.write_text(f"{head}publication:\n{lines}{tail}", encoding="utf-8")


def test_it_says_what_the_others_agree_on(tmp_path):
    both = ("studio: Hollow Fen Studio", "licence: Make many.")
    says(tmp_path / "reed", *both, "contact: a@fen.example")
    says(tmp_path / "sedge", *both, "contact: b@fen.example")
    start(tmp_path / "rush")
    made = read.load(tmp_path / "rush")[0].publication
    assert (made.studio, made.licence, made.contact) == ("Hollow Fen Studio", "Make many.", "")


def test_patterns_of_different_studios_share_nothing(tmp_path):
    says(tmp_path / "reed", "studio: Another Fen")
    says(tmp_path / "sedge", "studio: Hollow Fen Studio")
    start(tmp_path / "rush")
    assert not (tmp_path / "studio.yaml").exists()
    assert read.load(tmp_path / "rush")[0].publication.studio == "Your studio"


def test_a_studio_that_is_there_is_left_as_it_is(tmp_path):
    start(tmp_path / "reed")
    (tmp_path / "studio.yaml").write_text("papers: [a4]\n", encoding="utf-8")
    start(tmp_path / "sedge")
    assert (tmp_path / "studio.yaml").read_text(encoding="utf-8") == "papers: [a4]\n"
    made = read.load(tmp_path / "sedge")[0]
    assert (made.papers, made.publication.studio) == (("a4",), "Your studio")
